// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/importing/shapechoices.h"

#include "core/exchange/headings.h"
#include "core/exchange/proposal.h"

#include <algorithm>

namespace slopebook::ui {

using namespace exchange;

void ShapeChoices::set(const FileFacts& facts, const Shape& shape) {
    m_facts = facts;
    m_shape = shape;
    m_taken.clear();
}

std::optional<Tidy> ShapeChoices::roleOf(std::size_t column) const {
    for (const Tidy role : offeredRoles())
        for (const ColumnUse& use : m_shape.columns[role])
            if (use.at == column)
                return role;
    return {};
}

void ShapeChoices::setRole(std::size_t at, std::optional<Tidy> chosen) {
    const auto dateBefore = m_shape.columns[TidyDate];
    for (auto& uses : m_shape.columns)
        std::erase_if(uses, [at](const ColumnUse& use) { return use.at == at; });
    giveBack(at);
    if (chosen && m_shape.timeOfDay == at)
        m_shape.timeOfDay.reset();
    if (chosen) {
        auto& uses = m_shape.columns[*chosen];
        const bool several = (chosen == TidyVelocity && m_shape.rowIsSet) ||
                             (chosen == TidyAthlete && uses.size() == 1); // halves of a name
        if (!several && !uses.empty() && chosen == TidyVelocity)
            m_shape.rowIsSet = true; // a second column of velocities can mean nothing else
        else if (!several && !uses.empty()) {
            m_taken[at] = {*chosen, uses.front()};
            uses.clear();
        }
        uses.push_back({.at = at, .decimal = {}});
        std::ranges::sort(uses, {}, [&](const ColumnUse& use) {
            const auto part = namePartOf(m_facts.columns[use.at].heading);
            const bool family = chosen == TidyAthlete && part == NamePart::Family;
            return std::pair(family, use.at);
        });
        const ColumnFacts& column = m_facts.columns[at];
        if (chosen == TidyLoad || chosen == TidyBodyMass)
            (chosen == TidyLoad ? m_shape.load : m_shape.bodyMass) =
                massUnitOf(column.unit)
                    .value_or(massUnitOf(column.heading).value_or(MassUnit::Kilogram));
    }
    if (m_shape.columns[TidyDate] != dateBefore)
        m_shape.dates.reset(); // found again, or asked
    if (chosen == TidyVelocity && m_shape.columns[TidyVelocity].size() == 1)
        m_shape.speed.reset();
    if (chosen == TidyVelocity && m_facts.columns[at].isLists())
        m_shape.lists = m_shape.rowIsSet = true;
}

void ShapeChoices::setByTime(bool byTime) {
    m_shape.layout.byTime = byTime;
    const auto& dates = m_shape.columns[TidyDate];
    const bool moments = !dates.empty() && m_facts.columns[dates[0].at].moments > 0;
    if (byTime && !moments && !m_shape.timeOfDay)
        m_shape.timeOfDay = timesBeside(m_shape, m_facts, false);
}

void ShapeChoices::giveBack(std::size_t column) {
    const auto taken = m_taken.find(column);
    if (taken == m_taken.end())
        return;
    const auto [role, from] = taken->second;
    m_taken.erase(taken);
    if (!roleOf(from.at) && m_shape.columns[role].empty())
        m_shape.columns[role] = {from};
}

void ShapeChoices::setWritten(std::size_t at, int choice) {
    const auto role = roleOf(at);
    if (role == TidyDate) {
        m_shape.dates =
            choice == notSaid ? std::nullopt : std::optional(static_cast<DateOrder>(choice));
    } else if (role) {
        for (ColumnUse& use : m_shape.columns[*role])
            if (use.at == at)
                use.decimal =
                    choice == notSaid ? std::nullopt : std::optional(static_cast<Decimal>(choice));
    }
}

void ShapeChoices::setUnit(std::size_t at, int choice) {
    const auto role = roleOf(at);
    if (role == TidyVelocity)
        m_shape.speed =
            choice == notSaid ? std::nullopt : std::optional(static_cast<SpeedUnit>(choice));
    else if (role)
        (role == TidyLoad ? m_shape.load : m_shape.bodyMass) = static_cast<MassUnit>(choice);
}

void ShapeChoices::setRowIsSet(bool set, bool lists) {
    m_shape.rowIsSet = set;
    m_shape.lists = lists;
    auto& speeds = m_shape.columns[TidyVelocity];
    if (!set && speeds.size() > 1)
        speeds.resize(1);
}

void ShapeChoices::setFixed(Tidy role, const std::string& said) {
    m_shape.fixed[role] = m_shape.columns[role].empty() ? said : std::string();
}

void ShapeChoices::fillIn() {
    exchange::settle(m_shape, m_facts);
}

} // namespace slopebook::ui

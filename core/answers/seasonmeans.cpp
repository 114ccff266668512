// SPDX-License-Identifier: GPL-3.0-or-later
// Cells that are the mean of a block's days and are read with the noise of a day: what tests, RPE
// and body mass have in common.
#include "core/answers/profile.h"
#include "core/answers/seasonsource.h"
#include "core/model/phrases/answers.h"

#include <algorithm>
#include <cmath>

namespace slopebook::answers {

namespace {

class MeansReader {
public:
    MeansReader(MatrixRow& row, const MeansQuestion& question, double level, const Family& family)
        : m_row(row), m_question(question), m_level(level), m_family(family) {}

    CellChange change(std::size_t from, std::size_t to, const CriticalOf& critical) const {
        const MeanOfDays &a = *m_question.means[from], &b = *m_question.means[to];
        CellChange change{.from = from};
        change.read.change = b.value - a.value;
        change.read.smallest = m_row.smallest;
        const Under under = m_question.under ? m_question.under(from, to) : Under{};
        const auto noise = m_question.noise(from, to);
        if (!noise) {
            change.why = m_question.noNoise(from, to);
            setUnder(change.read, under);
            return change;
        }
        ChangeParts parts;
        parts.day = {varianceOfMeans(noise->sd, a.days, b.days), noise->df};
        const double found = change.read.change;
        const auto readBy = [&](const CriticalOf& by) {
            const auto interval = [&](double level) {
                const double half = std::sqrt(squaredHalfWidth(parts, by(level)));
                return stats::Interval{found - half, found + half};
            };
            ReadChange each = read(found, interval(m_level), interval(equivalenceLevel(m_level)),
                                   m_row.smallest, m_row.measure.higherIsBetter);
            each.at80 = interval(leaningLevel);
            return each;
        };
        change.read = readBy(critical);
        change.read.byItself = readBy(stats::tOf).reading;
        setUnder(change.read, under);
        if (!under.notComparable.empty()) {
            change.why = say("not comparable: %1", under.notComparable);
            return change;
        }
        change.byChance = chanceOfNothing(m_family, parts, change.read.interval);
        change.p = pOfNothing(m_family, parts, change.read.change);
        return change;
    }

    void figure(std::size_t column) const {
        MatrixCell& cell = m_row.cells[column];
        const auto& mean = m_question.means[column];
        if (!mean)
            return;
        cell.value = mean->value;
        cell.sessions = mean->days;
        cell.better = mean->better;
        if (const auto noise = m_question.noise(column, column)) {
            cell.se = noise->sd * std::sqrt(shareOfADay(mean->days));
            cell.interval = meanInterval(*mean, *noise, m_level);
        }
    }

private:
    MatrixRow& m_row;
    const MeansQuestion& m_question;
    double m_level;
    Family m_family;
};

} // namespace

void readMeans(MatrixRow& row, const MeansQuestion& question, std::size_t chosen, double level,
               const Family& family) {
    const MeansReader reader(row, question, level, family);
    std::vector<std::pair<std::size_t, std::size_t>> against, before;
    std::vector<BaselineShare> shares;
    for (std::size_t j = 0; j < row.cells.size(); ++j) {
        reader.figure(j);
        if (!row.cells[j].value)
            continue;
        if (j != chosen && question.means[chosen]) {
            against.emplace_back(chosen, j);
            shares.push_back(
                {shareOfADay(question.means[chosen]->days), shareOfADay(question.means[j]->days)});
        }
        if (const auto earlier = blockBefore(row, j))
            before.emplace_back(*earlier, j);
    }
    const CriticalOf one = againstOne(family, shares);
    const CriticalOf chain = ofAChain(family, static_cast<int>(before.size()));
    for (const auto& [from, to] : against)
        row.cells[to].against = reader.change(from, to, one);
    for (const auto& [from, to] : before)
        row.cells[to].before = reader.change(from, to, chain);
}

void addBodyMassRow(SeasonMatrix& matrix, const SeasonSource& source) {
    MatrixRow row{.measure = {.kind = Measure::Kind::BodyMass, .unit = "kg", .decimals = 1}};
    MeansQuestion question;
    for (const auto& sessions : source.batteries) {
        std::vector<double> days;
        for (const BatterySession& session : sessions)
            if (session.bodyMass)
                days.push_back(kilograms(*session.bodyMass));
        question.means.push_back(meanOf(days));
        row.cells.push_back(
            {.value = NoAnswer{NoAnswer::Why::NoBodyMass, say("not weighed in this block")}});
    }
    question.noise = [](std::size_t, std::size_t) { return std::nullopt; };
    question.noNoise = [](std::size_t, std::size_t) {
        return say("neither way is better, so no reading is made of it");
    };
    readMeans(row, question, source.chosen, source.level, std::make_shared<FamilyTables>());
    matrix.rows.push_back(std::move(row));
}

void addEffortRows(SeasonMatrix& matrix, const SeasonSource& source, const SeasonLift& lift,
                   const Family& family) {
    for (const Mass load : lift.checkLoads) {
        MatrixRow row{.measure = {.kind = Measure::Kind::Effort,
                                  .name = lift.lift.value.name,
                                  .lift = lift.lift.id,
                                  .load = load,
                                  .unit = "",
                                  .decimals = 1,
                                  .higherIsBetter = false}};
        std::vector<std::vector<double>> days;
        MeansQuestion question;
        for (std::size_t j = 0; j < source.blocks.size(); ++j) {
            const bool there = j < lift.efforts.size() && lift.efforts[j].contains(load);
            days.push_back(there ? lift.efforts[j].at(load) : std::vector<double>{});
            question.means.push_back(meanOf(days.back()));
            row.cells.push_back(
                {.value = NoAnswer{NoAnswer::Why::NotTested, say("no RPE at this load")}});
        }
        const auto noise = spreadOfDays(days);
        const bool alike = !noise && daysRepeat(days);
        question.noise = [noise](std::size_t, std::size_t) { return noise; };
        question.noNoise = [alike](std::size_t, std::size_t) {
            return alike ? say("RPE is read by how its own days differ, and no two days of a block "
                               "do")
                         : say("RPE is read by how its own days differ: a block needs several of "
                               "them");
        };
        readMeans(row, question, source.chosen, source.level, family);
        matrix.rows.push_back(std::move(row));
    }
}

} // namespace slopebook::answers

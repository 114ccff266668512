// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/identitycsv.h"

#include "core/exchange/identitycolumns.h"
#include "core/model/phrases/exchange.h"

#include <algorithm>
#include <utility>

namespace slopebook::exchange {

namespace {
constexpr Phrase uuidExpected = "a UUID, such as 6ba7b810-9dad-11d1-80b4-00c04fd430c8";

Cell uuidCell(const log::Sixteen& uuid) {
    return uuid == log::Sixteen{} ? Cell() : Cell(log::uuidText(uuid));
}

log::Sixteen uuidIn(const Cells& cells, IdentityColumn column) {
    if (!cells.said(column))
        return {};
    return need(cells, column, log::parseUuid(cells.raw(column)), uuidExpected);
}

bool isThing(const std::string& word) {
    const std::string_view words = identitySpec[IdentityThing].words;
    for (std::size_t from = 0; from < words.size();) {
        const std::size_t end = std::min(words.find('|', from), words.size());
        if (words.substr(from, end - from) == word)
            return true;
        from = end + 1;
    }
    return false;
}

constexpr Phrase trailExpected = "64 hexadecimal digits for each edit";
constexpr std::size_t stepsInRow = 400; // 25,600 digits: a cell of a workbook takes 32,767

std::string trailBytes(const Cells& cells) {
    return need(cells, IdentityTrail, log::parseHex(cells.raw(IdentityTrail)), trailExpected);
}

/// What one thing's rows say, until another's come.
class IdentityRows {
public:
    explicit IdentityRows(const std::function<void(const log::Identity&)>& take) : m_take(take) {}

    void row(const Cells& cells, const Where& where) {
        log::Identity one;
        one.uuid = uuidIn(cells, IdentityUuid);
        if (m_now && one.uuid == m_now->uuid && cells.said(IdentityTrail) &&
            goesOn(trailBytes(cells))) {
            m_lastRow = m_trail.size();
            m_trail += trailBytes(cells);
            return;
        }
        const auto failed = endedBefore();
        one.place.kind = cells.text(IdentityThing);
        if (!isThing(one.place.kind))
            cells.refuse(IdentityThing, "a kind of thing, such as athlete or set");
        if (one.uuid == log::Sixteen{})
            cells.refuse(IdentityUuid, uuidExpected);
        one.place.of = uuidIn(cells, IdentityOf);
        one.place.with = uuidIn(cells, IdentityWith);
        one.place.name = cells.text(IdentityName);
        if (const auto day = cells.date(IdentityDate))
            one.place.day = isoDate(*day);
        one.place.number = cells.count(IdentityNumber).value_or(0);
        if (const auto load = cells.mass(IdentityLoad, Mass{2'000'000},
                                         "a load in kg from 0 to 2000, such as 60"))
            one.place.grams = load->grams;
        if (one.uuid == m_last.uuid && one.place == m_last.place)
            cells.refuse(IdentityUuid, "a UUID that no row above has");
        m_last = one;
        m_trail = trailBytes(cells);
        m_lastRow = 0;
        m_where = where;
        m_now = std::move(one);
        if (failed)
            throw BadInput(*failed);
    }
    /// Throws what is wrong with the trail, at its first row.
    void end() {
        if (!m_now)
            return;
        log::Identity whole = *std::exchange(m_now, std::nullopt);
        try {
            if (!m_trail.empty())
                whole.trail = log::readTrail(m_trail);
        } catch (const BadInput& bad) {
            Where where = m_where;
            where.column = asIs(std::string(identityColumns[IdentityTrail]));
            throw BadInput(where, bad.found(), say(trailExpected));
        }
        m_take(whole);
    }

private:
    /// Whether those steps are more of the same trail: none of a row that stands there twice.
    bool goesOn(const std::string& steps) const {
        const std::string_view trail = m_trail;
        const auto begins = [&](std::size_t at) {
            return steps.starts_with(trail.substr(at, sizeof(log::Sixteen)));
        };
        return !trail.empty() && !begins(0) && !begins(m_lastRow);
    }
    /// What is wrong with it is told once this row is read.
    std::optional<BadInput> endedBefore() {
        try {
            end();
        } catch (const BadInput& bad) {
            return bad;
        }
        return std::nullopt;
    }

    const std::function<void(const log::Identity&)>& m_take;
    std::optional<log::Identity> m_now;
    std::string m_trail;
    std::size_t m_lastRow = 0; ///< where in it the last row's steps begin
    log::Identity m_last;      ///< that was begun last
    Where m_where;
};
} // namespace

void exportIdentities(const log::Log& log, TableOut& table) {
    log::visitIdentities(log, [&](const log::Identity& one) {
        std::array<Cell, IdentityCount> row;
        row[IdentityThing] = one.place.kind;
        row[IdentityUuid] = log::uuidText(one.uuid);
        row[IdentityOf] = uuidCell(one.place.of);
        row[IdentityWith] = uuidCell(one.place.with);
        row[IdentityName] = one.place.name;
        if (const auto day = parseIsoDate(one.place.day))
            row[IdentityDate] = *day;
        if (one.place.number > 0)
            row[IdentityNumber] = one.place.number;
        if (one.place.grams >= 0)
            row[IdentityLoad] = Mass{one.place.grams};
        const std::string trail = log::bytesOf(one.trail);
        constexpr std::size_t most = stepsInRow * sizeof(log::Step);
        for (std::size_t at = 0; at == 0 || at < trail.size(); at += most) {
            row[IdentityTrail] = log::hexOf(std::string_view(trail).substr(at, most));
            table.row(row);
        }
    });
}

std::vector<std::string> readIdentities(const std::filesystem::path& file,
                                        const std::function<void(const log::Identity&)>& take) {
    IdentityRows rows(take);
    auto notUsed =
        readTable(file, identityColumns, identityRequired,
                  [&](const Cells& cells, const Where& where) { rows.row(cells, where); });
    rows.end();
    return notUsed;
}

bool isIdentitiesHeader(const std::vector<std::string>& header) {
    return hasColumns(header, {"thing", "uuid"});
}

void KnownThings::add(const log::Log& log, const log::Identity& identity) {
    const log::ThingPlace& place = identity.place;
    if (place.kind != "session" && place.name.empty())
        return;
    const auto key = log::livingKey(log, place.kind, identity.uuid);
    if (!key)
        return;
    if (!place.name.empty()) {
        m_named[place.kind].emplace(place.name, *key);
        return;
    }
    const auto athlete = log::livingKey(log, "athlete", place.of);
    const auto day = parseIsoDate(place.day);
    if (athlete && day)
        m_sessions[AthleteId{*athlete}].emplace(std::pair{*day, std::max(place.number, 1)},
                                                SessionId{*key});
}

} // namespace slopebook::exchange

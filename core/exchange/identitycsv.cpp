// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/identitycsv.h"

#include "core/exchange/identitycolumns.h"
#include "core/model/phrases/exchange.h"

#include <algorithm>

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

log::Trail trailIn(const Cells& cells) {
    constexpr Phrase expected = "64 hexadecimal digits for each edit";
    const auto bytes =
        need(cells, IdentityTrail, log::parseHex(cells.raw(IdentityTrail)), expected);
    if (bytes.empty())
        return {};
    try {
        return log::readTrail(bytes);
    } catch (const BadInput&) {
        cells.refuse(IdentityTrail, expected);
    }
}
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
        row[IdentityTrail] = log::hexOf(log::bytesOf(one.trail));
        table.row(row);
    });
}

std::vector<std::string> IdentityTable::read(const std::filesystem::path& file) {
    const auto add = [&](const Cells& cells, const Where& /*where*/) {
        log::Identity one;
        one.place.kind = cells.text(IdentityThing);
        if (!isThing(one.place.kind))
            cells.refuse(IdentityThing, "a kind of thing, such as athlete or set");
        one.uuid = uuidIn(cells, IdentityUuid);
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
        one.trail = trailIn(cells);
        rows.push_back(std::move(one));
    };
    return readTable(file, identityColumns, identityRequired, add);
}

bool isIdentitiesHeader(const std::vector<std::string>& header) {
    return hasColumns(header, {"thing", "uuid"});
}

KnownThings::KnownThings(const log::Log& log, const IdentityTable& table) {
    for (const log::Identity& one : table.rows) {
        const log::ThingPlace& place = one.place;
        if (place.kind != "session" && place.name.empty())
            continue;
        const auto key = log::livingKey(log, place.kind, one.uuid);
        if (!key)
            continue;
        if (!place.name.empty()) {
            m_named[place.kind].emplace(place.name, *key);
            continue;
        }
        const auto athlete = log::livingKey(log, "athlete", place.of);
        const auto day = parseIsoDate(place.day);
        if (athlete && day)
            m_sessions[AthleteId{*athlete}].emplace(std::pair{*day, std::max(place.number, 1)},
                                                    SessionId{*key});
    }
}

} // namespace slopebook::exchange

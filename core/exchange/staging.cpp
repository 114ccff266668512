// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/staging.h"

#include "core/exchange/cells.h"
#include "core/exchange/tidycolumns.h"
#include "core/model/names.h"
#include "core/model/phrases/exchange.h"

#include <algorithm>
#include <array>

namespace slopebook::exchange {

namespace {

constexpr Phrase bodyMassWanted = "a body mass in kg, with a decimal point, such as 81.4";

constexpr Phrase ofSession = "%1, as %2 says of the session";

Words inQuotes(std::string_view text) {
    return say("\"%1\"", text);
}

/// A file from before has note for set_note.
ColumnMap withOldNames(const CsvRow& header, ColumnMap columns) {
    const std::string now(tidyColumns[TidyNote]);
    if (!columns.contains(now) && !columnOf(header.fields, now) &&
        columnOf(header.fields, oldSetNote))
        columns.emplace(now, oldSetNote);
    return columns;
}

} // namespace

Words asKilograms(Mass mass) {
    return say("%1 kg", figure(writeKilograms(mass)));
}

Words asSpeed(double speed) {
    return say("%1 m/s", figure(writeNumber(speed)));
}

std::vector<std::string> Staging::readTidy(const std::filesystem::path& file,
                                           const ColumnMap& columns, const Progress& progress) {
    begin(file);
    std::optional<Table> table;
    readCsv(
        file, ',',
        [&](const CsvRow& row) {
            if (!table) {
                table.emplace(file, row, tidyColumns, tidyRequired, withOldNames(row, columns));
                return;
            }
            orRefuse([&] {
                const Cells cells(*table, row);
                if (!cells.blankRow())
                    takeRow(cells);
            });
        },
        progress);
    return table ? table->notUsed() : std::vector<std::string>{};
}

std::vector<std::string> Staging::readSessions(const std::filesystem::path& file) {
    begin(file);
    // The columns of a session in a tidy row, so that one function reads both.
    std::array<std::string_view, TidyCount> asTidy{};
    for (const std::size_t column : {TidyDate, TidyAthlete, TidySession, TidyDevice, TidySite,
                                     TidyBodyMass, TidyRepeatOf, TidySessionNote})
        asTidy[column] = tidyColumns[column];
    std::optional<Table> table;
    readCsv(file, ',', [&](const CsvRow& row) {
        if (!table) {
            table.emplace(file, row, asTidy, 0, ColumnMap{});
            return;
        }
        orRefuse([&] {
            const Cells cells(*table, row);
            if (cells.blankRow())
                return;
            const int sessionAt = session(cells);
            takeHead(cells, sessionAt);
            StagedSession& head = sessions[static_cast<std::size_t>(sessionAt)];
            onceText(cells, TidyDevice, head.device, ofSession);
            onceText(cells, TidySite, head.site, ofSession);
        });
    });
    return table ? table->notUsed() : std::vector<std::string>{};
}

void Staging::takeRow(const Cells& cells) {
    if (m_aside) {
        putAside(cells);
        return;
    }
    ++rows;
    if (handOver && sets.size() >= std::max(m_handOverAt, setsHeld))
        handOverQuiet();
    try {
        const int sessionAt = session(cells);
        takeHead(cells, sessionAt);
        const Date date = sessions[static_cast<std::size_t>(sessionAt)].date;
        takeBlock(cells, date);
        const int liftAt = lift(cells);
        takeConditions(cells, sessionAt, liftAt);
        if (takeNotPossible(cells, sessionAt, liftAt))
            return;
        StagedSet& held = set(cells, sessionAt, liftAt);
        takeOutcome(cells, held);
        takeRep(cells, held);
    } catch (const BadInput& bad) {
        if (!refused)
            throw;
        refuseCells(cells, bad);
    }
}

// Of a row that is refused, each cell that cannot stand by itself; where there is none, what was
// found first: it contradicts another row.
void Staging::refuseCells(const Cells& cells, const BadInput& first) {
    bool any = false;
    const auto look = [&](const auto& work) {
        try {
            work();
        } catch (const BadInput& bad) {
            any = true;
            refused(bad);
        }
    };
    look([&] { need(cells, TidyDate, cells.date(TidyDate), isoDayExpected); });
    look([&] { athlete(cells); });
    look([&] { cells.count(TidySession); });
    if (cells.said(TidyDevice))
        look([&] { cells.name(TidyDevice); });
    look([&] { cells.mass(TidyBodyMass, storableLoadLimit, bodyMassWanted); });
    if (cells.said(TidyBlock))
        look([&] { cells.name(TidyBlock); });
    look([&] { cells.name(TidyLift); });
    if (cells.said(TidyKind) && !velocityKindFromWord(cells.raw(TidyKind)))
        look([&] { cells.refuse(TidyKind, "mean, propulsive or peak"); });
    const bool noSet = holdsNoSet(cells);
    if (noSet) {
        look([&] { requireNotPossible(cells); });
        look([&] { cells.mass(TidyLoad, storableLoadLimit, loadWanted); });
    } else {
        look([&] { need(cells, TidySet, cells.count(TidySet), setNumberExpected); });
        look([&] {
            need(cells, TidyLoad, cells.mass(TidyLoad, storableLoadLimit, loadWanted), loadWanted);
        });
    }
    look([&] { cells.flag(TidyMaximum); });
    if (!noSet && (cells.said(TidyRep) || cells.said(TidyVelocity))) {
        look([&] { need(cells, TidyRep, cells.count(TidyRep), repNumberExpected); });
        look([&] {
            need(cells, TidyVelocity,
                 cells.number(TidyVelocity, 0, storableVelocityLimit, true, speedWanted),
                 speedWanted);
        });
    }
    if (!any)
        refused(first);
}

int Staging::athlete(const Cells& cells) {
    const std::string spelled = cells.name(TidyAthlete);
    const auto at = athletes.index(who.saysNothing() ? spelled : who.named(spelled));
    if (!at)
        cells.refuse(TidyAthlete, "a name that one athlete of the log has, spelled as there");
    return *at;
}

int Staging::session(const Cells& cells) {
    if (m_run.session >= 0 && cells.raw(TidyDate) == m_run.date &&
        cells.raw(TidyAthlete) == m_run.athlete && cells.raw(TidySession) == m_run.ordinal) {
        sessions[static_cast<std::size_t>(m_run.session)].lastRow = rows;
        return m_run.session;
    }
    const Date date = need(cells, TidyDate, cells.date(TidyDate), isoDayExpected);
    const int athleteAt = athlete(cells);
    const int ordinal = cells.count(TidySession).value_or(1);
    const auto [it, isNew] = m_sessionAt.try_emplace(StagedDay{athleteAt, date, ordinal},
                                                     static_cast<int>(sessions.size()));
    if (isNew) {
        sessions.push_back({.athlete = athleteAt,
                            .date = date,
                            .ordinal = ordinal,
                            .place = here(cells),
                            .device = {},
                            .site = {},
                            .repeatOf = {},
                            .note = {},
                            .bodyMass = {},
                            .lastRow = 0});
        if (date.year() < std::chrono::year{1950} || date.year() > std::chrono::year{2100})
            flag(here(cells), say("the date is %1", date));
    }
    sessions[static_cast<std::size_t>(it->second)].lastRow = rows;
    m_run.date = cells.raw(TidyDate);
    m_run.athlete = cells.raw(TidyAthlete);
    m_run.ordinal = cells.raw(TidySession);
    return m_run.session = it->second;
}

void Staging::takeHead(const Cells& cells, int sessionAt) {
    StagedSession& head = sessions[static_cast<std::size_t>(sessionAt)];
    onceText(cells, TidyRepeatOf, head.repeatOf, ofSession);
    onceText(cells, TidySessionNote, head.note, ofSession);
    if (!cells.said(TidyBodyMass))
        return;
    const auto mass = cells.mass(TidyBodyMass, storableLoadLimit, bodyMassWanted);
    if (mass->grams == 0)
        cells.refuse(TidyBodyMass, bodyMassWanted);
    once(
        cells, TidyBodyMass, head.bodyMass, *mass,
        [](Mass held) { return figure(writeKilograms(held)); }, ofSession);
}

int Staging::lift(const Cells& cells) {
    if (m_run.liftAt >= 0 && cells.raw(TidyLift) == m_run.lift && cells.raw(TidyKind) == m_run.kind)
        return m_run.liftAt;
    m_run.liftAt = -1;
    const int at = newRunOfLift(cells);
    m_run.lift = cells.raw(TidyLift);
    m_run.kind = cells.raw(TidyKind);
    return m_run.liftAt = at;
}

int Staging::newRunOfLift(const Cells& cells) {
    const auto known = liftNames.index(cells.name(TidyLift));
    if (!known)
        cells.refuse(TidyLift, "a name that one lift of the log has, spelled as there");
    const int at = *known;
    lifts.resize(liftNames.names().size());
    StagedLift& held = lifts[static_cast<std::size_t>(at)];
    held.name = liftNames.names()[static_cast<std::size_t>(at)];
    if (!cells.said(TidyKind))
        return at;
    const auto kind = velocityKindFromWord(cells.raw(TidyKind));
    if (!kind)
        cells.refuse(TidyKind, "mean, propulsive or peak");
    if (held.kind && held.kind->value != *kind)
        cells.refuse(TidyKind, say("\"%1\", as %2 says of %3: a lift is measured in one kind of "
                                   "velocity, because values of different kinds are never put on "
                                   "one line",
                                   word(held.kind->value), lineOf(held.kind->place), held.name));
    if (!held.kind)
        held.kind = WithPlace<VelocityKind>{*kind, here(cells)};
    return at;
}

void Staging::takeBlock(const Cells& cells, Date date) {
    if (!cells.said(TidyBlock))
        return;
    const std::string name = cells.name(TidyBlock);
    if (name == m_lastBlock && date == m_lastBlockDay)
        return;
    m_lastBlock = name;
    m_lastBlockDay = date;
    if (m_blockDays[name].try_emplace(date, true).second)
        blocks.push_back({name, date});
}

int Staging::text(const std::string& value) {
    if (value.empty())
        return 0;
    const auto [it, isNew] = m_textAt.try_emplace(value, static_cast<int>(texts.size()));
    if (isNew)
        texts.push_back(value);
    return it->second;
}

void Staging::flag(const Place& place, const Words& what) {
    const auto at = std::ranges::upper_bound(flagged, place, {}, &std::pair<Place, Words>::first);
    const std::string name = files[static_cast<std::size_t>(place.file)].filename().string();
    flagged.emplace(at, place, say("%1, line %2: %3", name, place.line, what));
    if (flagged.size() <= flagsKept)
        return;
    flagged.pop_back();
    ++flaggedMore;
}

Place Staging::here(const Cells& cells) const {
    return {.file = m_file, .line = static_cast<int>(cells.line())};
}

Words Staging::lineOf(const Place& place) const {
    if (files.size() == 1)
        return say("line %1", place.line);
    return say("line %1 of %2", place.line,
               files[static_cast<std::size_t>(place.file)].filename().string());
}

void Staging::contradict(const Place& place, const char* column, const Words& foundWords,
                         const Words& expected) const {
    throw BadInput({.file = files[static_cast<std::size_t>(place.file)].string(),
                    .line = place.line,
                    .column = asIs(column)},
                   foundWords, expected);
}

void Staging::onceText(const Cells& cells, std::size_t column, MaybeWithPlace<std::string>& held,
                       Phrase otherwise) {
    if (!cells.said(column))
        return;
    const std::string value =
        column == TidyDevice ? tidyName(cells.name(column)).value() : cells.text(column);
    if (held && held->value != value && column == TidyDevice)
        cells.refuse(column, say("%1, as %2 says of the same lift: a lift has one device in a "
                                 "session (a column session, 1 or 2, tells two sessions of a day "
                                 "apart)",
                                 inQuotes(held->value), lineOf(held->place)));
    once(cells, column, held, value, inQuotes, otherwise);
}

} // namespace slopebook::exchange

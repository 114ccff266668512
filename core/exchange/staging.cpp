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

constexpr Phrase speedWanted =
    "a speed in m/s above 0 and under 10, with a decimal point, such as 0.92";
constexpr Phrase bodyMassWanted = "a body mass in kg, with a decimal point, such as 81.4";

constexpr Phrase isoDayExpected = "a date written year-month-day, such as 2026-03-14";
constexpr Phrase setNumberExpected = "the set's number, from 1 on";
constexpr Phrase repNumberExpected = "the rep's number, from 1 on";
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

template <class Work>
void Staging::orRefuse(const Work& work) {
    try {
        work();
    } catch (const BadInput& bad) {
        if (!refused)
            throw;
        refused(bad);
    }
}

std::vector<std::string> Staging::readTidy(const std::filesystem::path& file,
                                           const ColumnMap& columns, const Progress& progress) {
    files.push_back(file);
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
    files.push_back(file);
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
        held.kind = {*kind, here(cells)};
    return at;
}

StagedSet& Staging::set(const Cells& cells, int sessionAt, int liftAt) {
    constexpr Phrase ofSet = "%1, as %2 says of the set";
    const int number = need(cells, TidySet, cells.count(TidySet), setNumberExpected);
    const Mass load =
        need(cells, TidyLoad, cells.mass(TidyLoad, storableLoadLimit, loadWanted), loadWanted);
    const auto [it, isNew] =
        m_setAt.try_emplace(StagedPlace{sessionAt, liftAt, number}, static_cast<int>(sets.size()));
    if (isNew) {
        sets.push_back({.session = sessionAt,
                        .lift = liftAt,
                        .number = number,
                        .load = {load, here(cells)},
                        .maximum = {},
                        .excluded = {},
                        .outcome = {},
                        .reason = {},
                        .effort = {},
                        .notes = {},
                        .reps = {}});
        if (load >= plausibleLoadLimit)
            flag(here(cells), say("a load of %1", asKilograms(load)));
    }
    StagedSet& held = sets[static_cast<std::size_t>(it->second)];
    if (held.load.value != load)
        cells.refuse(TidyLoad, say("%1, as %2 says of the same set: a set has one load",
                                   asKilograms(held.load.value), lineOf(held.load.place)));
    if (const auto maximum = cells.flag(TidyMaximum))
        once(
            cells, TidyMaximum, held.maximum, *maximum,
            [](bool said) { return inWords(said ? 1 : 0); }, ofSet);
    onceText(cells, TidySetExcluded, held.excluded, ofSet);
    if (cells.said(TidyNote)) {
        WithPlace<std::string> note{cells.text(TidyNote), here(cells)};
        if (std::ranges::none_of(held.notes, [&](const auto& n) { return n.value == note.value; }))
            held.notes.push_back(std::move(note));
    }
    return held;
}

void Staging::takeRep(const Cells& cells, StagedSet& held) {
    if (!cells.said(TidyRep) && !cells.said(TidyVelocity)) {
        if (cells.said(TidyExcluded))
            cells.refuse(TidyRep, "the number of the rep that is excluded");
        return; // a set that was written down without a rep
    }
    const int number = need(cells, TidyRep, cells.count(TidyRep), repNumberExpected);
    const double velocity =
        need(cells, TidyVelocity,
             cells.number(TidyVelocity, 0, storableVelocityLimit, true, speedWanted), speedWanted);
    if (velocity >= plausibleVelocityLimit)
        flag(here(cells), say("a speed of %1", asSpeed(velocity)));
    held.reps.push_back({.number = number,
                         .excluded = text(cells.text(TidyExcluded)),
                         .velocity = velocity,
                         .place = here(cells)});
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

void Staging::finish() {
    for (StagedSet& held : sets)
        orRefuse([&] { finishSet(held); });
}

void Staging::finishSet(StagedSet& held) {
    const auto number = [](const StagedRep& rep) { return rep.number; };
    std::ranges::stable_sort(held.reps, {}, number);
    const auto sameRep = [&](const StagedRep& a, const StagedRep& b) {
        if (a.number != b.number)
            return false;
        // Two files of one import may overlap; within one file a rep stands once.
        const bool same = a.velocity == b.velocity && a.excluded == b.excluded;
        if (a.place.file == b.place.file || !same)
            contradict(
                b.place, same ? "rep" : "velocity",
                say("rep %1 of the same set again (%2)", b.number, asSpeed(b.velocity)),
                say("each rep once; %1 has it with %2", lineOf(a.place), asSpeed(a.velocity)));
        return true;
    };
    if (held.outcome && held.outcome->value == Outcome::NotLifted && !held.reps.empty())
        contradict(held.reps.front().place, "velocity", asSpeed(held.reps.front().velocity),
                   say("none: %1 says that the set was not lifted", lineOf(held.outcome->place)));
    held.reps.erase(std::unique(held.reps.begin(), held.reps.end(), sameRep), held.reps.end());
}

Set asSet(const Staging& staging, const StagedSet& staged) {
    std::string note;
    for (const auto& each : staged.notes)
        note += (note.empty() ? "" : "; ") + each.value;
    Set set{.load = staged.load.value,
            .trueMaximum = staged.maximum && staged.maximum->value,
            .outcome = staged.outcome ? staged.outcome->value : Outcome::Lifted,
            .reason = staged.reason ? staged.reason->value : std::string{},
            .effort = staged.effort ? std::optional(staged.effort->value) : std::nullopt,
            .excluded = staged.excluded ? staged.excluded->value : std::string{},
            .note = note,
            .reps = {}};
    set.reps.reserve(staged.reps.size());
    for (const StagedRep& rep : staged.reps)
        set.reps.push_back({rep.velocity, staging.texts[static_cast<std::size_t>(rep.excluded)]});
    return set;
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
    if (flagged.size() >= flagsKept)
        ++flaggedMore;
    else
        flagged.push_back(
            say("%1, line %2: %3", files.back().filename().string(), place.line, what));
}

Place Staging::here(const Cells& cells) const {
    return {.file = static_cast<int>(files.size()) - 1, .line = cells.line()};
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

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desks/merge.h"

#include "core/desks/otherlog.h"
#include "core/desks/reading.h"
#include "core/desks/taking.h"
#include "core/desks/writing.h"
#include "core/log/backups.h"
#include "core/log/hold.h"
#include "core/log/snapshot.h"

#include <algorithm>

namespace slopebook::desks {

MergeReport reportOf(Slots& known, const Desk& before, const Desk& after, const Taken& taken) {
    MergeReport report;
    report.nothingNew = taken.touched.empty();
    report.added = taken.added;
    report.changed = taken.changed;
    report.removed = taken.removed;
    report.becameOne = taken.joined;
    const auto named = [&](Slot slot) {
        return Named{.kind = std::string(kindOf(*after.at(slot).thing)),
                     .name = nameOnDesk(after, slot)};
    };
    for (const Told& told : taken.told)
        switch (told.what) {
        case Told::What::Joined:
            report.joined.push_back({named(told.about), named(told.into)});
            break;
        case Told::What::Revived:
            report.revived.push_back(named(told.about));
            break;
        case Told::What::Renamed:
        case Told::What::Renumbered:
            report.renamed.push_back({named(told.about), told.before});
            break;
        case Told::What::Listed:
            break;
        }
    for (const Slot slot : taken.touched)
        if (const Atom& atom = after.at(slot);
            atom.alive && std::holds_alternative<log::ConflictThing>(*atom.thing) &&
            !before.contains(slot))
            report.listed.push_back(shownConflict(known, after, slot));
    report.pastAlone = !report.nothingNew && std::ranges::all_of(taken.touched, [&](Slot slot) {
        const auto was = before.find(slot);
        const Atom& now = after.at(slot);
        return was == before.end() ? !now.alive
                                   : was->second.alive == now.alive &&
                                         (!now.alive || was->second.thing == now.thing);
    });
    return report;
}

namespace {
/// What both hold, and what the one holds once it has taken the other's.
struct Meant {
    Slots known;
    ReadDesk before;
    Desk after;
    Taken taken;
    MergeReport::Athletes athletes;
    bool noCommonPast = false;
};

/// Who is in both, and whether anything is.
void compare(Meant& meant, const Desk& theirs) {
    MergeReport::Athletes& athletes = meant.athletes;
    const Desk& mine = meant.before.desk;
    const auto isAthlete = [](const Atom& atom) {
        return atom.alive && std::holds_alternative<Athlete>(*atom.thing);
    };
    bool common = false;
    for (const auto& [slot, atom] : theirs) {
        const auto here = mine.find(slot);
        const bool everyLogs = atom.thing && std::holds_alternative<TestKind>(*atom.thing);
        common = common || (here != mine.end() && !everyLogs);
        athletes.there += isAthlete(atom) ? 1 : 0;
        athletes.both += isAthlete(atom) && here != mine.end() && isAthlete(here->second) ? 1 : 0;
    }
    for (const auto& [slot, atom] : mine)
        athletes.here += isAthlete(atom) ? 1 : 0;
    meant.noCommonPast = !common && athletes.here > 0 && athletes.there > 0;
}

MergeReport reportOf(Meant& meant) {
    MergeReport report = reportOf(meant.known, meant.before.desk, meant.after, meant.taken);
    report.athletes = meant.athletes;
    report.noCommonPast = meant.noCommonPast;
    return report;
}

// Steps of a merge, by what they take of 100,000 sets.
constexpr int steps = 100, opened = 15, readOther = 40, readMine = 65, settled = 75, written = 100;
} // namespace

struct ComingLog::Read {
    OtherLog log;
    Slots known{};
    Desk desk{};

    Read(const std::filesystem::path& file, const log::Log& mine) : log(file, mine) {}
    Meant with(const log::Log& mine, const Progress& progress) const {
        Meant meant;
        meant.known = known;
        meant.before = readDesk(meant.known, mine);
        tell(progress, readMine, steps);
        meant.after = meant.before.desk;
        compare(meant, desk);
        meant.taken = take(meant.known, meant.after, desk);
        tell(progress, settled, steps);
        return meant;
    }
};

ComingLog::ComingLog(const std::filesystem::path& other, const log::Log& mine,
                     const Progress& progress)
    : m_read(std::make_unique<Read>(other, mine)) {
    tell(progress, opened, steps);
    m_read->desk = readDesk(m_read->known, m_read->log.log()).desk;
    tell(progress, readOther, steps);
}

ComingLog::~ComingLog() = default;

MergeReport ComingLog::preview(const log::Log& log, const Progress& progress) const {
    const log::Moment moment(log);
    Meant meant = m_read->with(log, progress);
    return reportOf(meant);
}

MergeReport ComingLog::takeInto(log::Log& log, const Progress& progress) const {
    MergeReport report;
    log.together([&] {
        Meant meant = m_read->with(log, progress);
        report = reportOf(meant);
        if (!report.nothingNew)
            writeDesk(log, meant.known, meant.before, meant.after, meant.taken.touched);
        tell(progress, written, steps);
    });
    return report;
}

MergeReport ComingLog::mergeInto(log::Log& log, const Progress& progress) const {
    log::passHold(log);
    {
        const log::Moment moment(log);
        if (m_read->with(log, progress).taken.touched.empty())
            return {};
    }
    const std::filesystem::path backup = log::backUpBeforeMerge(log);
    MergeReport report = takeInto(log, progress); // somebody may have written since
    report.backup = backup;
    return report;
}

MergeReport previewMerge(const log::Log& log, const std::filesystem::path& other) {
    return ComingLog(other, log).preview(log);
}

MergeReport mergeInto(log::Log& log, const std::filesystem::path& other) {
    log::passHold(log);
    return ComingLog(other, log).mergeInto(log);
}

} // namespace slopebook::desks

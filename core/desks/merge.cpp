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

/// The other desk is read once, and in words of this meeting's slots.
class Other {
public:
    Other(const std::filesystem::path& file, const log::Log& mine) : m_log(file, mine) {
        m_desk = readDesk(m_known, m_log.log()).desk;
    }
    Meant with(const log::Log& mine) const {
        Meant meant;
        meant.known = m_known;
        meant.before = readDesk(meant.known, mine);
        meant.after = meant.before.desk;
        compare(meant, m_desk);
        meant.taken = take(meant.known, meant.after, m_desk);
        return meant;
    }

private:
    OtherLog m_log;
    Slots m_known;
    Desk m_desk;
};

MergeReport reportOf(Meant& meant) {
    MergeReport report;
    const Taken& taken = meant.taken;
    report.nothingNew = taken.touched.empty();
    report.added = taken.added;
    report.changed = taken.changed;
    report.removed = taken.removed;
    report.becameOne = taken.joined;
    report.athletes = meant.athletes;
    report.noCommonPast = meant.noCommonPast;
    const auto named = [&](Slot slot) {
        return Named{.kind = std::string(kindOf(*meant.after.at(slot).thing)),
                     .name = nameOnDesk(meant.after, slot)};
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
        if (const Atom& atom = meant.after.at(slot);
            atom.alive && std::holds_alternative<log::ConflictThing>(*atom.thing) &&
            !meant.before.desk.contains(slot))
            report.listed.push_back(shownConflict(meant.known, meant.after, slot));
    report.pastAlone = !report.nothingNew && std::ranges::all_of(taken.touched, [&](Slot slot) {
        const auto was = meant.before.desk.find(slot);
        const Atom& now = meant.after.at(slot);
        return was == meant.before.desk.end() ? !now.alive
                                              : was->second.alive == now.alive &&
                                                    (!now.alive || was->second.thing == now.thing);
    });
    return report;
}

MergeReport takeFrom(const Other& theirs, log::Log& log) {
    MergeReport report;
    log.together([&] {
        Meant meant = theirs.with(log);
        report = reportOf(meant);
        if (!report.nothingNew)
            writeDesk(log, meant.known, meant.before, meant.after, meant.taken.touched);
    });
    return report;
}
} // namespace

MergeReport previewMerge(const log::Log& log, const std::filesystem::path& other) {
    const Other theirs(other, log);
    const log::Moment moment(log);
    Meant meant = theirs.with(log);
    return reportOf(meant);
}

MergeReport mergeInto(log::Log& log, const std::filesystem::path& other) {
    log::passHold(log);
    const Other theirs(other, log);
    {
        const log::Moment moment(log);
        if (theirs.with(log).taken.touched.empty())
            return {};
    }
    const std::filesystem::path backup = log::backUpBeforeMerge(log);
    MergeReport report = takeFrom(theirs, log); // somebody may have written since
    report.backup = backup;
    return report;
}

MergeReport takeInto(log::Log& log, const std::filesystem::path& other) {
    return takeFrom(Other(other, log), log);
}

} // namespace slopebook::desks

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desks/merge.h"

#include "core/desks/otherlog.h"
#include "core/desks/reading.h"
#include "core/desks/taking.h"
#include "core/desks/writing.h"
#include "core/log/backups.h"
#include "core/log/hold.h"
#include "core/log/snapshot.h"

namespace slopebook::desks {

MergeReport reportOf(Slots& known, const Desk& before, const Desk& after, const Taken& taken) {
    MergeReport report;
    report.nothingNew = taken.touched.empty();
    report.added = taken.added;
    report.changed = taken.changed;
    report.removed = taken.removed;
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
    return report;
}

namespace {
/// What both hold, and what the one holds once it has taken the other's.
struct Meant {
    Slots known;
    ReadDesk before;
    Desk after;
    Taken taken;
};

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
        meant.taken = take(meant.known, meant.after, m_desk);
        return meant;
    }

private:
    OtherLog m_log;
    Slots m_known;
    Desk m_desk;
};

MergeReport reportOf(Meant& meant) {
    return reportOf(meant.known, meant.before.desk, meant.after, meant.taken);
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

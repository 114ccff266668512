// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/importreport.h"

#include "app/commands/ask.h"
#include "app/commands/terminal.h"
#include "core/answers/figures.h"
#include "core/model/few.h"

#include <algorithm>

namespace slopebook::app {

using answers::counted;

namespace {

constexpr std::size_t faultsShown = 50;

/// The first of them, a line each.
void complainOfEach(const std::vector<BadInput>& faults) {
    for (std::size_t i = 0; i < std::min(faults.size(), faultsShown); ++i)
        complain(faults[i].what());
}

std::string listed(const std::string& title, const std::vector<std::string>& entries) {
    return entries.empty() ? std::string() : title + english(few(entries)) + "\n";
}

/// A line each of the first ten, and how many more there are.
template <class List, class Text>
std::string lines(const std::string& title, const List& list, std::size_t total, const Text& text) {
    std::string all;
    for (std::size_t i = 0; i < std::min(list.size(), fewNamed); ++i)
        all += title + text(list[i]) + "\n";
    if (total > fewNamed)
        all += title + "and " + std::to_string(total - fewNamed) + " more\n";
    return all;
}

std::string batteryReport(const exchange::BatteryReport& r) {
    std::string text;
    if (r.attemptsAdded + r.gapsAdded > 0)
        text += "Of the battery: " + counted(r.attemptsAdded, "attempt") + ", " +
                counted(r.gapsAdded, "test") + " not possible" +
                (r.sessionsAdded > 0 ? ", " + counted(r.sessionsAdded, "new session") : "") + ".\n";
    if (r.attemptsAlreadyThere > 0)
        text += "Already there: " + counted(r.attemptsAlreadyThere, "attempt") + ".\n";
    return text + listed("New tests: ", r.testsMade) +
           listed("New athletes by their tests: ", r.athletesMade);
}

} // namespace

std::string reportText(const exchange::ImportReport& r, bool dryRun) {
    std::string text = counted(r.rows, "row") + " read.\n";
    if (r.rowsLeftOut > 0)
        text += "Left out as totals: " + counted(static_cast<int>(r.rowsLeftOut), "row") + ".\n";
    if (r.rowsWithoutLoad > 0)
        text += "Passed over, nothing under any load: " +
                counted(static_cast<int>(r.rowsWithoutLoad), "row") + ".\n";
    text += listed("Without a row below the header: ", r.withoutRows) +
            listed("Left, since it is worked out from the others: ", r.derived);
    if (r.addedNothing() && r.holdsNothing())
        text += std::string("Nothing to add: ") +
                (r.withoutRows.size() == 1 ? "the file holds" : "the files hold") + " no rows.\n";
    else if (r.addedNothing())
        text += "Nothing new: everything was in the log already.\n";
    else
        text += std::string(dryRun ? "Would add " : "Added ") + counted(r.setsAdded, "set") +
                " with " + counted(r.repsAdded, "rep") + " in " +
                counted(r.sessionsAdded, "new session") + ".\n";
    if (r.setsAlreadyThere > 0)
        text += "Already there: " + counted(r.setsAlreadyThere, "set") + ".\n";
    text += listed("New athletes: ", r.athletesMade) + listed("New lifts: ", r.liftsMade) +
            listed("New devices: ", r.devicesMade) + listed("New training blocks: ", r.blocksMade) +
            listed("New sets of equipment: ", r.equipmentMade) +
            listed("New stations: ", r.stationsMade);
    if (r.checkLoadsAdded > 0)
        text += "New check loads: " + std::to_string(r.checkLoadsAdded) + "\n";
    text += batteryReport(r.battery);
    text += listed("Columns not used: ", r.columnsNotUsed);
    text += lines("Filled in: ", r.filledIn, r.filledIn.size(),
                  [](const std::string& line) { return line; });
    text += lines("Taken, but worth a look: ", r.flagged, r.flagged.size() + r.flaggedMore,
                  [](const Words& line) { return english(line); });
    return dryRun ? text + "Dry run: nothing was written.\n" : text;
}

std::string reportJson(const exchange::ImportReport& r, const std::filesystem::path& log,
                       bool newLog, bool dryRun) {
    Json json;
    json.object()
        .field("log", log.string())
        .field("new_log", newLog)
        .field("dry_run", dryRun)
        .field("rows", r.rows);
    json.key("added")
        .object()
        .field("sessions", r.sessionsAdded + r.battery.sessionsAdded)
        .field("sets", r.setsAdded)
        .field("reps", r.repsAdded)
        .field("attempts", r.battery.attemptsAdded)
        .field("tests_not_possible", r.battery.gapsAdded)
        .field("check_loads", r.checkLoadsAdded)
        .field("rosters", r.rostersAdded)
        .endObject();
    json.key("already_there")
        .object()
        .field("sets", r.setsAlreadyThere)
        .field("attempts", r.battery.attemptsAlreadyThere)
        .endObject();
    std::vector<std::string> athletes = r.athletesMade, devices = r.devicesMade;
    athletes.insert(athletes.end(), r.battery.athletesMade.begin(), r.battery.athletesMade.end());
    devices.insert(devices.end(), r.battery.devicesMade.begin(), r.battery.devicesMade.end());
    json.key("made").object();
    namesJson(json, "athletes", athletes);
    namesJson(json, "lifts", r.liftsMade);
    namesJson(json, "devices", devices);
    namesJson(json, "blocks", r.blocksMade);
    namesJson(json, "tests", r.battery.testsMade);
    namesJson(json, "equipment", r.equipmentMade);
    namesJson(json, "stations", r.stationsMade);
    json.endObject();
    namesJson(json, "filled_in", r.filledIn);
    wordsJson(json, "worth_a_look", r.flagged);
    json.field("worth_a_look_more", static_cast<int>(r.flaggedMore));
    namesJson(json, "files_without_rows", r.withoutRows);
    namesJson(json, "files_left_as_derived", r.derived);
    namesJson(json, "columns_not_used", r.columnsNotUsed);
    json.endObject();
    return json.text();
}

void complain(const exchange::Faults& faults) {
    complainOfEach(faults.kept());
    const std::size_t shown = std::min(faults.kept().size(), faultsShown);
    complain((faults.total() > shown ? "and " + std::to_string(faults.total() - shown) + " more; "
                                     : std::string()) +
             std::to_string(faults.total()) + " faults; nothing was written.");
}

void complain(const exchange::ShapedReport& done) {
    complainOfEach(done.refused);
    if (done.refused.size() > faultsShown)
        complain("and " + std::to_string(done.refused.size() - faultsShown) + " more");
    complain(counted(static_cast<int>(done.rowsRefused), "row") + " of " +
             std::to_string(done.rowsRead) + " refused; nothing was written.");
}

void complain(const exchange::Undecided& open) {
    const auto& names = open.names();
    for (std::size_t i = 0; i < std::min(names.size(), fewNamed); ++i)
        complain("new athlete \"" + names[i].name + "\": nearly \"" + names[i].like +
                 "\", who is " + (names[i].inLog ? "in the log." : "new as well."));
    if (names.size() > fewNamed)
        complain("and " + std::to_string(names.size() - fewNamed) + " more");
    complain("nothing was written. Say who that is: --same \"" + names.front().name + "=" +
             names.front().like + "\" for the same athlete, --new \"" + names.front().name +
             "\" for somebody new (each may be repeated; --all-new: all of them).");
}

} // namespace slopebook::app

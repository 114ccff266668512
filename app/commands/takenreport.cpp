// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/takenreport.h"

#include "core/answers/figures.h"
#include "core/model/few.h"

#include <algorithm>

namespace slopebook::app {

namespace {
std::string called(const std::string& kind, const Words& name) {
    return english(desks::sayKind(kind)) + ", " + english(name);
}

/// The first ten, a line each, and how many more there are.
template <class List, class Text>
std::string someLines(const std::string& title, const List& list, const Text& text) {
    std::string all;
    for (std::size_t i = 0; i < std::min(list.size(), fewNamed); ++i)
        all += title + text(list[i]) + "\n";
    if (list.size() > fewNamed)
        all += title + "and " + std::to_string(list.size() - fewNamed) + " more\n";
    return all;
}

std::string sideText(bool there, const Words& value) {
    if (!there)
        return "removed";
    return value.empty() ? "nothing" : "\"" + english(value) + "\"";
}

std::string conflictText(const desks::ShownConflict& conflict) {
    std::string text =
        called(conflict.kind, conflict.about) + ": " + english(desks::sayWhy(conflict.why));
    if (conflict.stands != conflict.lived)
        return text + "\n    here " + sideText(conflict.stands, asIs("in the log")) +
               ", on the other side " + sideText(conflict.lived, asIs("in the log"));
    for (const desks::SideBySide& field : conflict.fields)
        text += "\n    " + english(field.field) + ": " + sideText(conflict.stands, field.stands) +
                " stands, " + sideText(conflict.lived, field.lost) + " does not";
    return text;
}

void conflictJson(Json& json, const desks::ShownConflict& conflict) {
    json.object()
        .field("id", log::hexOf(log::viewOf(conflict.uuid)))
        .field("kind", conflict.kind)
        .field("name", english(conflict.about))
        .field("why", std::string(desks::word(conflict.why)))
        .field("stands_removed", !conflict.stands)
        .field("lost_removed", !conflict.lived)
        .field("lost_known", conflict.known);
    json.key("fields").array();
    for (const desks::SideBySide& field : conflict.fields)
        json.object()
            .field("field", english(field.field))
            .field("stands", english(field.stands))
            .field("lost", english(field.lost))
            .endObject();
    json.endArray().endObject();
}
} // namespace

std::string takenText(const desks::MergeReport& report) {
    std::string text;
    text += someLines("Joined: ", report.joined, [](const desks::MergeReport::Joined& one) {
        return called(one.from.kind, one.from.name) + " is one with " + english(one.into.name);
    });
    text += someLines("Brought back, since it is used: ", report.revived,
                      [](const desks::Named& one) { return called(one.kind, one.name); });
    text += someLines("Renamed: ", report.renamed, [](const desks::MergeReport::Renamed& one) {
        return called(one.now.kind, one.now.name) + " (before: " + one.before + ")";
    });
    text += someLines("To choose: ", report.listed, conflictText);
    return text;
}

std::string openText(std::size_t open) {
    if (open == 0)
        return {};
    return answers::counted(static_cast<int>(open), "choice") + (open == 1 ? " waits" : " wait") +
           " in the log; the window shows both sides.\n";
}

void takenJson(Json& json, const desks::MergeReport& report) {
    json.key("joined").array();
    for (const auto& [from, into] : report.joined)
        json.object()
            .field("kind", from.kind)
            .field("name", english(from.name))
            .field("into", english(into.name))
            .endObject();
    json.endArray().key("revived").array();
    for (const desks::Named& one : report.revived)
        json.object().field("kind", one.kind).field("name", english(one.name)).endObject();
    json.endArray().key("renamed").array();
    for (const auto& [now, before] : report.renamed)
        json.object()
            .field("kind", now.kind)
            .field("name", english(now.name))
            .field("before", before)
            .endObject();
    json.endArray().key("to_choose").array();
    for (const desks::ShownConflict& conflict : report.listed)
        conflictJson(json, conflict);
    json.endArray();
}

} // namespace slopebook::app

// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/ask.h"

#include "app/commands/commands.h"
#include "core/answers/figures.h"
#include "core/answers/method.h"
#include "core/exchange/cells.h"
#include "core/model/errors.h"
#include "core/model/few.h"
#include "core/model/names.h"

#include <chrono>
#include <ctime>

namespace slopebook::app {

using answers::fixed;
using answers::signedFixed;

std::string cautionText() {
    constexpr std::size_t width = 90;
    std::string text = "Caution:", line;
    for (const Words& sentence : answers::cautionWords(false))
        text += " " + english(sentence);
    text[9] = 'l'; // after the colon
    std::string lines;
    for (std::size_t from = 0; from < text.size();) {
        std::size_t to = text.size();
        if (to - from > width)
            to = text.rfind(' ', from + width);
        lines += text.substr(from, to - from) + "\n";
        from = to + 1;
    }
    return lines;
}

namespace {

template <class Id, class Value>
Stored<Id, Value> named(const std::vector<Stored<Id, Value>>& list, const std::string& name,
                        const std::string& what) {
    std::vector<std::string> names;
    names.reserve(list.size());
    for (const auto& stored : list)
        names.push_back(stored.value.name);
    if (const auto at = findName(names, name))
        return list[*at];
    throw BadInput(asIs("the " + what + " \"" + name + "\""),
                   asIs(names.empty() ? "a log that has one: this one has no " + what + " yet"
                                      : "one of: " + english(few(names))));
}

} // namespace

Stored<AthleteId, Athlete> athleteNamed(const log::Log& log, const std::string& name) {
    return named(log.athletes(), name, "athlete");
}

Stored<LiftId, Lift> liftNamed(const log::Log& log, const std::string& name) {
    return named(log.lifts(), name, "lift");
}

Stored<DeviceId, Device> deviceNamed(const log::Log& log, const std::string& name) {
    return named(log.devices(), name, "device");
}

log::Filter filterNamed(const log::Log& log, const std::string& athlete, const std::string& lift) {
    log::Filter filter;
    if (!athlete.empty())
        filter.athlete = athleteNamed(log, athlete).id;
    if (!lift.empty())
        filter.lift = liftNamed(log, lift).id;
    return filter;
}

Stored<BlockId, Block> blockNamed(const log::Log& log, const std::string& name,
                                  const std::optional<Date>& begins) {
    std::vector<Stored<BlockId, Block>> alike;
    std::string days;
    bool isNamed = false;
    for (const auto& block : log.blocks())
        if (nameKey(block.value.name) == nameKey(name)) {
            isNamed = true;
            days += (days.empty() ? "" : ", ") + isoDate(block.value.first);
            if (!begins || block.value.first == *begins)
                alike.push_back(block);
        }
    if (alike.empty() && begins && isNamed)
        throw BadInput(asIs("the block \"" + name + "\" of " + isoDate(*begins)),
                       asIs("one that begins on " + days));
    if (alike.empty())
        return named(log.blocks(), name, "block");
    if (alike.size() > 1)
        throw BadInput(asIs("several blocks called \"" + name + "\""),
                       asIs("the first day of one of them by --begins: " + days));
    return alike.front();
}

void addLevel(CLI::App& command, double& level) {
    command.add_option("--level", level, "Confidence level of intervals; 0.95 where left out")
        ->check(CLI::Range(0.5, 0.999));
}

questions::Background background(const log::Log& log, const About& about) {
    return questions::background(log, athleteNamed(log, about.athlete).id,
                                 liftNamed(log, about.lift).id);
}

Mass massFromOption(const std::string& text, MassUnit unit) {
    const bool pound = unit == MassUnit::Pound;
    const auto number = exchange::readNumber(text);
    if (!number || *number < 0 ||
        *number > (pound ? pounds(storableLoadLimit) : kilograms(storableLoadLimit)))
        throw BadInput(asIs("the load " + english(exchange::found(text))),
                       asIs(pound ? "pounds from 0 to 4409 with a decimal point, such as 135"
                                  : "kilograms from 0 to 2000 with a decimal point, such as "
                                    "62.5"));
    return pound ? massFromPounds(*number) : massFromKilograms(*number);
}

Date dayOrToday(const std::string& text) {
    if (text.empty()) {
        const std::time_t now = std::time(nullptr);
        std::tm local{};
        localtime_r(&now, &local);
        return Date{std::chrono::year{local.tm_year + 1900} / (local.tm_mon + 1) / local.tm_mday};
    }
    const auto day = parseIsoDate(text);
    if (!day)
        throw BadInput(asIs("\"" + text + "\""), asIs("a day such as 2026-03-14"));
    return *day;
}

int complainOfLeftOut(const std::vector<Words>& unread) {
    for (const Words& what : unread)
        complain("left out: " + english(what));
    return unread.empty() ? exitDone : exitBad;
}

int sayNoAnswer(const About& about, const NoAnswer& why) {
    return sayNoAnswer(about, why, about.json ? MassUnit::Kilogram : unitOf(about.pounds));
}

int sayNoAnswer(const About& about, const NoAnswer& why, MassUnit unit) {
    if (about.json) {
        Json json;
        json.object();
        if (!about.athlete.empty())
            json.field("athlete", about.athlete);
        if (!about.lift.empty())
            json.field("lift", about.lift);
        json.field("reason", english(why.reason, unit)).endObject();
        print(json.text());
    } else {
        print("No answer: " + english(why.reason, unit) + "\n");
    }
    return exitNoAnswer;
}

std::optional<std::string> deviceName(const log::Log& log, const LiftSession& session) {
    if (session.conditions.device)
        for (const auto& device : log.devices())
            if (device.id == *session.conditions.device)
                return device.value.name;
    return std::nullopt;
}

std::string interval(const stats::Interval& held, int decimals) {
    return fixed(held.low, decimals) + " to " + fixed(held.high, decimals);
}

std::string signedInterval(const stats::Interval& held, int decimals) {
    return signedFixed(held.low, decimals) + " to " + signedFixed(held.high, decimals);
}

std::string findingsText(const std::vector<Words>& findings) {
    std::string text;
    for (const Words& finding : findings)
        text += "  - " + english(finding) + "\n";
    return text;
}

void wordsJson(Json& json, const char* name, const std::vector<Words>& all) {
    json.key(name).array();
    for (const Words& words : all)
        json.value(english(words));
    json.endArray();
}

void namesJson(Json& json, const char* name, const std::vector<std::string>& all) {
    json.key(name).array();
    for (const std::string& each : all)
        json.value(each);
    json.endArray();
}

std::string notesText(const std::vector<answers::Note>& notes, const Masses& masses) {
    std::string text;
    for (const auto& note : notes)
        text += "  - " + masses.say(note.words) + "\n";
    return text.empty() ? text : "Notes:\n" + text;
}

void notesJson(Json& json, const std::vector<answers::Note>& notes) {
    json.key("notes").array();
    for (const auto& note : notes)
        json.value(english(note.words));
    json.endArray();
}

std::string percent(double level) {
    return answers::loadText(level * 100) + " %";
}

} // namespace slopebook::app

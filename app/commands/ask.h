// SPDX-License-Identifier: GPL-3.0-or-later
// What the commands share: opening the log, finding what a name or a date means, and saying that a
// question has no answer.
#pragma once

#include "app/commands/json.h"
#include "app/commands/masses.h"
#include "app/commands/terminal.h"
#include "core/questions/questions.h"

#include <CLI/CLI.hpp>

#include <filesystem>
#include <optional>
#include <string>

namespace slopebook::app {

/// The options of a question about one athlete and lift.
struct About {
    std::filesystem::path log;
    std::string athlete, lift;
    bool json = false, pounds = false;
    Masses masses() const { return Masses(unitOf(pounds)); }
};

/// By name: exactly, then by its key (core/model/names.h). BadInput lists the names that there are.
Stored<AthleteId, Athlete> athleteNamed(const log::Log& log, const std::string& name);
Stored<LiftId, Lift> liftNamed(const log::Log& log, const std::string& name);
Stored<DeviceId, Device> deviceNamed(const log::Log& log, const std::string& name);
/// Of that athlete and lift; an empty name: of all.
log::Filter filterNamed(const log::Log& log, const std::string& athlete, const std::string& lift);
/// The one of that name that begins on that day, where several bear it; BadInput lists those.
Stored<BlockId, Block> blockNamed(const log::Log& log, const std::string& name,
                                  const std::optional<Date>& begins);

/// --level: a share such as 0.9, from 0.5 to 0.999.
void addLevel(CLI::App& command, double& level);

questions::Background background(const log::Log& log, const About& about);

/// A load with a decimal point, from 0 kg to 2000; BadInput otherwise.
Mass massFromOption(const std::string& text, MassUnit unit = MassUnit::Kilogram);

/// A day such as 2026-03-14, BadInput otherwise; of an empty text today, where the program runs.
Date dayOrToday(const std::string& text);
/// What a side of a comparison may be, for the help.
inline constexpr const char* sideHelp =
    "A day (2026-03-14, or 2026-03-14#2 for the second session of that day), days "
    "(2026-03-01..2026-03-14), or the name of a block";

/// Prints the reason, as text or as {"athlete", "lift", "reason"}, of the first two what the
/// question names; the exit status to end with.
int sayNoAnswer(const About& about, const NoAnswer& why);
/// The same with loads in that unit.
int sayNoAnswer(const About& about, const NoAnswer& why, MassUnit unit);

/// Says on standard error what could not be read; the exit status to end with.
int complainOfLeftOut(const std::vector<Words>& unread);

/// "Encoder A", or nothing where the session names none.
std::optional<std::string> deviceName(const log::Log& log, const LiftSession& session);

std::string interval(const stats::Interval& interval, int decimals);
std::string signedInterval(const stats::Interval& interval, int decimals);
/// "Notes:" and one a line; nothing where there are none.
std::string notesText(const std::vector<answers::Note>& notes, const Masses& masses);
void notesJson(Json& json, const std::vector<answers::Note>& notes);
/// A list of sentences, of names, under that key.
void wordsJson(Json& json, const char* name, const std::vector<Words>& all);
void namesJson(Json& json, const char* name, const std::vector<std::string>& all);
/// What a log's check found, one a line.
std::string findingsText(const std::vector<Words>& findings);
/// "95 %".
std::string percent(double level);

/// The caution that goes with every estimate.
std::string cautionText();

} // namespace slopebook::app

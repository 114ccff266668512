// SPDX-License-Identifier: GPL-3.0-or-later
// What the commands share that change one thing of a log: add, change, remove, exclude, include.
// Each is one transaction, by the same functions of the log that the window's edits call.
#pragma once

#include "app/commands/ask.h"
#include "core/log/log.h"
#include "core/model/exactmass.h"

#include <CLI/CLI.hpp>

#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <string>

namespace slopebook::app {

struct Editing {
    std::filesystem::path log;
    bool json = false, unsoundToo = false, pounds = false;
    MassUnit unit() const { return pounds ? MassUnit::Pound : MassUnit::Kilogram; }
};

/// LOG, --json and --even-if-not-sound; with masses also --lb.
void addEditing(CLI::App& command, Editing& editing, bool masses = false);

/// A thing as it is: its fields under a key of the answer; nothing: null.
using ThingJson = std::function<void(Json& json)>;

/// What was done, for text and JSON.
struct Edited {
    std::string did;  ///< "add", "change", "remove", "exclude", "include"
    std::string what; ///< "athlete", ..., "set"
    std::string name; ///< of it, for the text
    ThingJson before{}, after{};
    bool same = false; ///< it was as it is to be: nothing was written
};

/// Opens the log for writing, does the work in it and says what was done; the exit status.
int runEdit(const Editing& editing, const std::function<Edited(log::Log& log)>& work);

/// The mass in that unit, above 0 (or from 0 on) and at most 2000 kg. BadInput otherwise.
Mass massTyped(const std::string& text, MassUnit unit, const char* what, bool zeroToo = false);
/// The name in its one spelling (core/model/names.h). BadInput where nothing of it can be seen.
std::string nameTyped(const std::string& text);
/// The day, BadInput otherwise.
Date dayTyped(const std::string& text);
/// A number in that range, its ends left out. BadInput otherwise.
double numberTyped(const std::string& text, double above, double below, const char* expected);

// Things as JSON.
void athleteJson(Json& json, const Athlete& athlete);
void deviceJson(Json& json, const Device& device);
void blockJson(Json& json, const Block& block);
void liftJson(Json& json, const Lift& lift);

/// What of the log's things each command is about, below add, change and remove.
struct Verbs {
    CLI::App &add, &change, &remove;
};
void addPeopleEdits(const Verbs& verbs, int& exit);    ///< athlete, device
void addBlockEdits(const Verbs& verbs, int& exit);     ///< block
void addLiftEdits(const Verbs& verbs, int& exit);      ///< lift, mvt
void addCheckLoadEdits(const Verbs& verbs, int& exit); ///< check-load

} // namespace slopebook::app

// SPDX-License-Identifier: GPL-3.0-or-later
// The commands: each adds itself to the command line and, when it is asked for, runs and sets the
// exit status. What prints is handed the pages, which must outlive the command line.
#pragma once

#include "app/commands/pages.h"

#include <CLI/CLI.hpp>

namespace slopebook::app {

constexpr int exitDone = 0;
constexpr int exitNoAnswer = 1; ///< the question has no answer; the reason is on standard output
constexpr int exitBad = 2;      ///< bad use or bad input; the message is on standard error

void addImport(CLI::App& app, int& exit);
void addExport(CLI::App& app, int& exit);
void addList(CLI::App& app, int& exit);
void addTable(CLI::App& app, int& exit);
void addProfile(CLI::App& app, int& exit);
void addCompare(CLI::App& app, int& exit, const Pages& pages);
void addFollow(CLI::App& app, int& exit);
void addSeason(CLI::App& app, int& exit);
void addSquad(CLI::App& app, int& exit, const Pages& pages);
void addReport(CLI::App& app, int& exit, const Pages& pages);
void addNoise(CLI::App& app, int& exit);
void addPlan(CLI::App& app, int& exit, const Pages& pages);
void addBattery(CLI::App& app, int& exit, const Pages& pages);
void addTrace(CLI::App& app, int& exit);
void addCheck(CLI::App& app, int& exit);
void addBackup(CLI::App& app, int& exit);
void addMerge(CLI::App& app, int& exit);
void addEdits(CLI::App& app, int& exit); ///< add, change, remove, exclude, include
void addStore(CLI::App& app, int& exit); ///< init, grant, status
void addSync(CLI::App& app, int& exit);
void addSchema(CLI::App& app, int& exit);

} // namespace slopebook::app

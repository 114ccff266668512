// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/commands.h"
#include "app/commands/importreport.h"
#include "app/commands/interrupt.h"
#include "app/commands/terminal.h"
#include "app/paintedpages.h"
#include "app/window.h"
#include "core/model/errors.h"

#include <csignal>
#include <exception>
#include <filesystem>
#include <new>
#include <optional>
#include <sstream>

namespace {

using namespace slopebook;

// With no command this opens the window; each command sets the exit status when it runs.
int run(int argc, char** argv) {
    CLI::App app{"Slopebook: a load-velocity log and profile for strength coaches.\n"
                 "With no command it opens the window.",
                 "slopebook"};
    app.set_version_flag("--version", SLOPEBOOK_VERSION);
    std::filesystem::path log;
    app.add_option("LOG", log, "The log to open in the window");
    int exit = app::exitDone;
    const app::PaintedPages pages;
    app::addImport(app, exit);
    app::addExport(app, exit);
    app::addList(app, exit);
    app::addTable(app, exit);
    app::addProfile(app, exit);
    app::addCompare(app, exit, pages);
    app::addFollow(app, exit);
    app::addSeason(app, exit);
    app::addSquad(app, exit, pages);
    app::addReport(app, exit, pages);
    app::addNoise(app, exit);
    app::addPlan(app, exit, pages);
    app::addBattery(app, exit, pages);
    app::addTrace(app, exit);
    app::addCheck(app, exit);
    app::addBackup(app, exit);
    app::addMerge(app, exit);
    app::addEdits(app, exit);
    app::addStore(app, exit);
    app::addSync(app, exit);
    app::addSchema(app, exit);
    app.require_subcommand(0, 1);
    try {
        app.parse(argc, argv);
    } catch (const CLI::ParseError& error) {
        std::ostringstream out, err;
        const int asked = app.exit(error, out, err);
        app::print(out.str());
        app::printError(err.str());
        return asked == 0 ? app::exitDone : app::exitBad;
    }
    if (!app.get_subcommands().empty())
        return exit;
    return app::openWindow(argc, argv, log.empty() ? std::nullopt : std::optional(log));
}

} // namespace

int main(int argc, char** argv) {
#ifdef SIGXFSZ
    std::signal(SIGXFSZ, SIG_IGN); // a full quota is then an error of writing, not the end
#endif
    try {
        return run(argc, argv);
    } catch (const exchange::Undecided& error) {
        app::complain(error);
    } catch (const exchange::Faults& error) {
        app::complain(error);
    } catch (const Cancelled& error) {
        app::complain(error.what());
        app::endByInterrupt();
    } catch (const std::bad_alloc&) {
        app::complain("there is not enough memory for this.");
    } catch (const std::exception& error) {
        app::complain(error.what());
    }
    return app::exitBad;
}

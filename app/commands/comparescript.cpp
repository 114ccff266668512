// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/comparescript.h"

#include "core/exchange/cells.h"
#include "core/exchange/comparisonscript.h"

namespace slopebook::app {

namespace {

std::string sideForR(const LiftSession& session) {
    return "list(date = \"" + isoDate(session.date) +
           "\", session = " + std::to_string(session.ordinal) + ")";
}

const char* forR(bool yes) {
    return yes ? "TRUE" : "FALSE";
}

} // namespace

std::string comparisonForR(const questions::Background& about,
                           const answers::Comparison& comparison) {
    std::string loads;
    for (const answers::ChangeAt& at : comparison.at)
        loads += (loads.empty() ? "" : ", ") + exchange::writeNumber(kilograms(at.load));
    const auto& bias = comparison.settings.deviceBias;
    const auto& mvt = comparison.from.mvt;
    const Lift& lift = about.lift.value;
    return "# Rscript THIS-FILE FOLDER, the folder written by: slopebook export LOG --into FOLDER\n"
           "athlete <- " +
           exchange::textForR(about.athlete.value.name) + "; lift <- " +
           exchange::textForR(lift.name) + "\nfrom <- " + sideForR(comparison.from.session) +
           "; to <- " + sideForR(comparison.to.session) + "\nloads <- c(" + loads + "); level <- " +
           exchange::writeNumber(comparison.settings.level) + "; mvt <- " +
           (mvt ? exchange::writeNumber(mvt->value) : "NA") + "; device_bias <- " +
           exchange::writeNumber(bias ? bias->first : 0) + "\nfastest <- " +
           forR(lift.rule == PointRule::Fastest) + "; moves_body <- " + forR(lift.movesBody) +
           "\n" + exchange::comparisonScript();
}

} // namespace slopebook::app

// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/answerstext.h"

#include "app/commands/ask.h"
#include "app/commands/texttable.h"
#include "core/answers/bendwords.h"
#include "core/answers/comparisonsentence.h"
#include "core/answers/figures.h"
#include "core/answers/followsummary.h"
#include "core/answers/maxwords.h"
#include "core/answers/readingwords.h"
#include "core/answers/sources.h"
#include "core/answers/squadsummary.h"
#include "core/answers/story.h"
#include "core/answers/threshold.h"

#include <cmath>
#include <map>
#include <utility>

namespace slopebook::app {

using namespace answers;

namespace {

using Align = TextTable::Align;

std::string shown(const std::optional<double>& value, int decimals) {
    return value ? fixed(*value, decimals) : std::string("-");
}

std::string keyOf(const LiftSession& session) {
    return dateKey(session.date, session.ordinal);
}

std::string lineText(const Profile& profile, const Masses& in) {
    const stats::Line& line = profile.line;
    const auto se = [&](double value, int decimals) {
        return line.hasInference() ? " (SE " + fixed(value, decimals) + ")" : std::string();
    };
    std::string text =
        "Line       " + counted(line.n, "point") + " at " + counted(line.distinct, "load") + ", " +
        in.range(profile.lightest, profile.heaviest) + " " + in.name() + "\n" + "  V0       " +
        fixed(line.intercept, 3) + " m/s" + se(line.interceptSe(), 3) + "\n" + "  Slope    " +
        fixed(in.per(line.slope), 5) + " m/s per " + in.name() + se(in.per(line.slopeSe()), 5) +
        "\n" + "  R2       " + fixed(line.r2, 4) + "\n";
    if (line.hasInference())
        text += "  Scatter  " + fixed(line.s(), 4) + " m/s (residual SD, " + fixed(line.df(), 0) +
                " degrees of freedom)\n";
    if (line.slope < 0)
        text += "  L0       " + in.fixed(profile.l0(), 1) + " " + in.name() +
                "; area under the line " + in.fixed(profile.area(), 1) + " " + in.name() + " m/s\n";
    return text;
}

/// The notes, and behind them what an MVT is published in.
std::vector<Note> withCitation(std::vector<Note> notes, const std::optional<Mvt>& mvt) {
    if (Words cited = mvt ? citationOf(asCited(*mvt)) : Words(); !cited.empty())
        notes.push_back({Note::Kind::Other, std::move(cited)});
    return notes;
}

std::string maximumText(const Profile& profile, const Masses& in) {
    std::string text;
    if (profile.mvt) {
        text += "MVT        " + fixed(profile.mvt->value, 3) + " m/s";
        if (profile.mvt->sd)
            text += " (SD " + fixed(*profile.mvt->sd, 3) + ")";
        text += ", " + english(sourceOf(*profile.mvt)) + "\n";
    }
    if (!profile.oneRm)
        return text + "1RM        no estimate: " + in.say(profile.oneRm.why().reason) + "\n";
    const OneRm& oneRm = *profile.oneRm;
    text += "1RM        " + in.fixed(oneRm.estimate, 1) + " " + in.name() + " estimated";
    if (oneRm.interval)
        text += ", " + percent(profile.level) + " interval " + in.interval(*oneRm.interval, 1) +
                " " + in.name();
    text += ", reach " + fixed(oneRm.reach, 2) + "\n";
    if (oneRm.withMvt)
        text += "           " + in.interval(*oneRm.withMvt, 1) + " " + in.name() +
                " with the MVT's own SD\n";
    using Line = std::pair<const char*, Words>;
    for (const auto& [label, words] :
         {Line{"To plan    ", planWithWords(profile)}, Line{"Bend       ", bendWords(profile)},
          Line{"           ", bendSource(profile.beyond.bend)},
          Line{"Lifted     ", liftedWords(profile)}})
        if (!words.empty())
            text += label + in.say(asSentence(words)) + "\n";
    return text;
}

std::string pointsText(const Profile& profile, const Masses& in) {
    TextTable table({{"Set"},
                     {"Load " + in.name()},
                     {"Speed m/s"},
                     {"Residual"},
                     {"Leverage"},
                     {"Studentised"},
                     {"Cook"}});
    for (const ProfilePoint& each : profile.points)
        table.row({std::to_string(each.point.set), in.load(each.point.load),
                   fixed(each.point.velocity, 3), signedFixed(each.residual, 4),
                   fixed(each.leverage, 3), shown(each.studentised, 2), shown(each.cook, 3)});
    return table.text();
}

} // namespace

std::string profileText(const log::Log& log, const questions::Background& about,
                        const Profile& profile, const std::string& which, const Masses& in) {
    const LiftSession& session = profile.session;
    std::string text = about.athlete.value.name + ", " + about.lift.value.name + ", " +
                       keyOf(session) + (which.empty() ? "" : " (" + which + ")") + "\n";
    text += "Speed      " + std::string(word(about.lift.value.kind)) + " velocity, " +
            (about.lift.value.rule == PointRule::Fastest ? "fastest rep" : "mean of the reps") +
            " of each set";
    if (const auto device = deviceName(log, session))
        text += ", " + *device;
    text += "\n" + lineText(profile, in) + maximumText(profile, in);
    if (session.measuredOneRm)
        text += "Measured   " + in.withName(*session.measuredOneRm) + " lifted\n";
    text += "\n" + pointsText(profile, in);
    if (const std::string notes = notesText(withCitation(profile.notes, profile.mvt), in);
        !notes.empty())
        text += "\n" + notes;
    return text + "\n" + cautionText();
}

namespace {

std::string sidesText(const log::Log& log, const Comparison& c, const Masses& in) {
    TextTable table({{"", Align::Left}, {keyOf(c.from.session)}, {keyOf(c.to.session)}});
    const auto both = [&](const std::string& title, const auto& tell) {
        table.row({title, tell(c.from), tell(c.to)});
    };
    both("Device", [&](const Profile& p) { return deviceName(log, p.session).value_or("-"); });
    if (c.settings.deviceBias) // in the speeds, the line and the estimate of its column
        table.row({"  bias taken off, m/s", "-", signedFixed(c.settings.deviceBias->first, 3)});
    both("Points", [](const Profile& p) { return std::to_string(p.line.n); });
    both("Loads, " + in.name(), [&](const Profile& p) { return in.range(p.lightest, p.heaviest); });
    both("V0, m/s", [](const Profile& p) { return fixed(p.line.intercept, 3); });
    both("Slope, m/s per " + in.name(),
         [&](const Profile& p) { return fixed(in.per(p.line.slope), 5); });
    both("Scatter, m/s", [](const Profile& p) { return fixed(p.line.s(), 4); });
    both("Estimated 1RM, " + in.name(),
         [&](const Profile& p) { return p.oneRm ? in.fixed(p.oneRm->estimate, 1) : "-"; });
    both("  its interval", [&](const Profile& p) {
        return p.oneRm ? in.intervalOrDash(p.oneRm->interval, 1) : std::string("-");
    });
    both("  with the MVT's SD", [&](const Profile& p) {
        return p.oneRm ? in.intervalOrDash(p.oneRm->withMvt, 1) : std::string("-");
    });
    both("  days and bend", [&](const Profile& p) {
        return p.oneRm ? in.intervalOrDash(p.oneRm->toPlan, 1) : std::string("-"); // as on paper
    });
    both("  reach", [](const Profile& p) { return p.oneRm ? fixed(p.oneRm->reach, 2) : "-"; });
    both("Measured 1RM, " + in.name(), [&](const Profile& p) {
        return p.session.measuredOneRm ? in.load(*p.session.measuredOneRm) : "-";
    });
    return table.text();
}

std::string changesText(const Comparison& c, const Masses& in) {
    TextTable table({{"Load " + in.name()},
                     {"Change m/s"},
                     {percent(c.settings.level) + " interval"},
                     {"As if straight"},
                     {"These two days only"},
                     {"Band"},
                     {"m"},
                     {"Reading", Align::Left},
                     {"", Align::Left}});
    for (const ChangeAt& at : c.at) {
        std::string remark = at.checkLoad ? "check load" : "";
        if (at.extrapolated)
            remark += std::string(remark.empty() ? "" : ", ") + "extrapolated";
        table.row({in.load(at.load), signedFixed(at.read.change, 3),
                   signedInterval(at.read.interval, 3),
                   at.read.straight ? signedInterval(*at.read.straight, 3) : "-",
                   signedInterval(at.interval, 3), signedInterval(at.readingBand, 3),
                   at.read.smallest ? fixed(at.read.smallest->value, 3) : "-",
                   english(sizedCell(at.read, saidSpeedDecimals)), remark});
    }
    if (table.empty())
        return "No check load is set, and no load was lifted on both days.\n";
    return table.text() +
           "The interval and the band (all loads at once) hold day-to-day noise and what bent "
           "lines "
           "may make\nwrong; 'as if straight' lacks the bend, 'these two days only' both. m: the "
           "smallest change that\nmatters.\n";
}

std::string linesText(const Comparison& c, const Masses& in) {
    std::string text;
    for (const Differs& each : c.differs)
        text += std::string("These two days only: ") +
                (each.stretch.sign > 0 ? "faster" : "slower") + " from " +
                in.fixed(each.stretch.from, 1) + " to " + in.fixed(each.stretch.to, 1) + " " +
                in.name() + (each.extrapolated ? " (extrapolated)" : "") + "\n";
    if (c.crossing)
        text += "The lines cross at " + in.fixed(c.crossing->x, 1) + " " + in.name() +
                (c.crossing->interval ? " (" + in.interval(*c.crossing->interval, 1) + ")"
                                      : " (no interval: they are not told from parallel)") +
                "\n";
    const auto test = [](const char* what, const stats::FTest& f) {
        return std::string(what) + "F(" + fixed(f.df1, 0) + ", " + fixed(f.df2, 0) +
               ") = " + fixed(f.f, 2) + ", " + answers::pText(f.p) + "\n";
    };
    return text + test("Parallel lines:  ", c.lines.parallel()) +
           test("One common line: ", c.lines.coincident());
}

std::string oneRmChangeText(const Comparison& c, const Masses& in) {
    if (!c.oneRm)
        return "Change of the 1RM: no figure: " + in.say(c.oneRm.why().reason) + "\n";
    const OneRmChange& change = *c.oneRm;
    std::string text =
        "Change of the estimated 1RM: " + in.signedFixed(change.estimate, 1) + " " + in.name();
    if (change.interval)
        text += " (" + in.signedInterval(change.read.interval, 1) + "; as if straight " +
                (change.read.straight ? in.signedInterval(*change.read.straight, 1) : "-") +
                "; these two days only " + in.signedInterval(*change.interval, 1) + ")";
    text += ", " + in.say(maxCell(change.read));
    if (change.read.smallest)
        text += " (m " + in.fixed(change.read.smallest->value, 1) + " " + in.name() + ")";
    text += "\n";
    if (change.measured)
        text += "Change of the measured 1RM:  " + in.signedFixed(*change.measured, 1) + " " +
                in.name() + "\n";
    return text;
}

} // namespace

namespace {

std::string unsettledText(const std::vector<Unsettled>& all, const Masses& in) {
    if (all.empty())
        return {};
    std::string text = "\nWhat would settle what is unclear:\n";
    for (const Unsettled& each : all)
        text += "  " + in.say(settlingWords(each)) + "\n";
    return text;
}

} // namespace

std::string storiesText(std::span<const Block> blocks, const Masses& in) {
    std::string text;
    for (const Block& block : blocks)
        if (const Words story = storyWords(block); !story.empty())
            text += "Block " + block.name + ": " + in.say(story) + "\n";
    return text.empty() ? text : "\n" + text;
}

std::string comparisonText(const log::Log& log, const questions::Background& about,
                           const Comparison& c, const Masses& in) {
    const bool several = c.ofSeveral();
    const auto named = [&](const LiftSession& session, const BlockSide* side) {
        return side ? side->name + " (" +
                          counted(static_cast<int>(side->sessions.size()), "session") + ")"
                    : keyOf(session);
    };
    std::string text = about.athlete.value.name + ", " + about.lift.value.name + ", " +
                       named(c.from.session, several ? &c.blocks->first : nullptr) + " against " +
                       named(c.to.session, several ? &c.blocks->second : nullptr) + "\n\n" +
                       in.say(c.sentence) + "\n\n" +
                       (several ? "Of each block the session that went heaviest, to show; the "
                                  "changes below are of all sessions:\n\n"
                                : "") +
                       sidesText(log, c, in) + "\n" + changesText(c, in) + "\n" +
                       (several ? "" : linesText(c, in)) + oneRmChangeText(c, in) +
                       unsettledText(unsettled(c), in);
    if (c.from.mvt)
        text += "MVT: " + fixed(c.from.mvt->value, 3) + " m/s, " + english(sourceOf(*c.from.mvt)) +
                "\n";
    if (const std::string notes = notesText(withCitation(c.notes, c.from.mvt), in); !notes.empty())
        text += "\n" + notes;
    return text + "\n" + cautionText();
}

std::string sharedLoadsText(const questions::Background& about, const LiftSession& from,
                            const LiftSession& to, const NoAnswer& why,
                            const std::vector<SharedLoadChange>& shared, const Masses& in) {
    TextTable table({{"Load " + in.name()},
                     {keyOf(from)},
                     {keyOf(to)},
                     {"Change m/s"},
                     {"95 % interval"},
                     {"m"},
                     {"Reading", Align::Left}});
    for (const SharedLoadChange& each : shared)
        table.row({in.load(each.load), fixed(each.seenFrom, 3), fixed(each.seenTo, 3),
                   signedFixed(each.read.change, 3), signedInterval(each.read.interval, 3),
                   each.read.smallest ? fixed(each.read.smallest->value, 3) : "-",
                   english(sizedCell(each.read, saidSpeedDecimals))});
    return about.athlete.value.name + ", " + about.lift.value.name + ", " + keyOf(from) +
           " against " + keyOf(to) + "\n\nNo line to judge by: " + in.say(why.reason) +
           ".\nWhat was seen at the loads of both days, from the typical error of a point:\n\n" +
           table.text();
}

std::string noiseText(const log::Log& log, const LiftNoise& noise, const Masses& in) {
    TextTable table({{"Load " + in.name()},
                     {"Pairs"},
                     {"Typical error m/s"},
                     {"95 % interval"},
                     {"CV %"},
                     {"CV % by logs"},
                     {"Smallest detectable m/s"}});
    const NoiseAtLoad* alike = nullptr;
    for (const NoiseAtLoad& each : noise.atLoads) {
        if (!answers::spreads(each.error, 4)) {
            alike = &each;
            table.row(
                {in.load(each.load), fixed(each.error.df + 1, 0), "no spread", "-", "-", "-", "-"});
            continue;
        }
        table.row({in.load(each.load), fixed(each.error.df + 1, 0), fixed(each.error.value, 4),
                   interval(each.error.interval, 4), fixed(each.error.cvPercent, 1),
                   each.error.cvLogPercent ? fixed(*each.error.cvLogPercent, 1) : "-",
                   fixed(each.error.smallestDetectable(), 3)});
    }
    std::string text = table.empty() ? std::string() : table.text();
    if (alike)
        text += english(noSpreadWords()) + "\n";
    if (noise.oneRm && !answers::spreads(*noise.oneRm, 2))
        text += "Estimated 1RM: no spread at this resolution\n";
    else if (noise.oneRm)
        text += "Estimated 1RM: typical error " + in.fixed(noise.oneRm->value, 2) + " " +
                in.name() + " (" + in.interval(noise.oneRm->interval, 2) +
                "), smallest detectable change " + in.fixed(noise.oneRm->smallestDetectable(), 1) +
                " " + in.name() + "\n";
    text += "Whole line: " + in.say(inUseWords(asCited(noise.day), 4)) + "\n";
    std::map<AthleteId, std::string> names;
    for (const auto& athlete : log.athletes())
        names[athlete.id] = athlete.value.name;
    text += "Repeat tests used:\n";
    for (const RepeatPair& pair : noise.used)
        text += "  " + names[pair.first.athlete] + ", " + keyOf(pair.first) + " and " +
                keyOf(pair.second) + "\n";
    return text;
}

} // namespace slopebook::app

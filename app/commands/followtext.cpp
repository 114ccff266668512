// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/answerstext.h"
#include "app/commands/ask.h"
#include "app/commands/texttable.h"
#include "core/answers/figures.h"
#include "core/answers/followsummary.h"
#include "core/answers/readingwords.h"
#include "core/answers/story.h"

namespace slopebook::app {

using namespace answers;

namespace {

std::string rangeOrDash(const std::optional<stats::Interval>& held, int decimals) {
    return held ? interval(*held, decimals) : std::string("-");
}

/// Of the latest session whose change from the baseline is unclear.
std::string unsettledText(const Follow& follow, const Masses& in) {
    for (auto each = follow.sessions.rbegin(); each != follow.sessions.rend(); ++each)
        if (const Words settling = settlingWords(*each); !settling.empty())
            return "What would settle the change of " +
                   dateKey(each->session.date, each->session.ordinal) + ":\n  " + in.say(settling) +
                   "\n";
    return {};
}

/// Of each block what all its sessions say together, and against the baseline.
std::string blocksText(const FollowedSeason& season, double level, bool trends, const Masses& in) {
    std::string text;
    for (const FollowedBlock& block : season.blocks) {
        text += in.say(blockWords(season, block)) + "\n";
        if (trends)
            text += "  " + in.say(blockTrendWords(block, level)) + "\n";
    }
    return text.empty() ? text : text + "\n";
}

} // namespace

std::string followText(const questions::Background& about, const FollowedSeason& season,
                       const std::vector<std::vector<Effort>>& feltOf,
                       std::span<const Stored<BlockId, Block>> blocks, double level, bool trends,
                       const Masses& in) {
    const Follow& follow = season.follow;
    using Align = TextTable::Align;
    TextTable table({{"Date", Align::Left},
                     {"Block", Align::Left},
                     {"Seen m/s"},
                     {"RPE"},
                     {"Line m/s"},
                     {percent(level) + " interval"},
                     {"Change"},
                     {"Its interval"},
                     {"Reading", Align::Left},
                     {"1RM " + in.name()},
                     {"Its interval"},
                     {"Measured"},
                     {"", Align::Left}});
    for (std::size_t i = 0; i < follow.sessions.size(); ++i) {
        const Followed& each = follow.sessions[i];
        std::string seen;
        for (const double velocity : each.seen)
            seen += (seen.empty() ? "" : " ") + fixed(velocity, 3);
        std::string felt;
        for (const Effort effort : feltOf.at(i))
            felt += (felt.empty() ? "" : " ") + fixed(effort.value(), effort.halves % 2);
        std::string remark = season.isBaseline(each) ? "baseline" : "";
        if (each.extrapolated)
            remark += std::string(remark.empty() ? "" : ", ") + "extrapolated";
        if (!each.line)
            remark += std::string(remark.empty() ? "" : ", ") + in.say(each.line.why().reason);
        if (each.bias)
            remark += std::string(remark.empty() ? "" : ", ") + "device bias " +
                      signedFixed(*each.bias, 3) + " taken off the change";
        if (each.seenChange)
            remark += std::string(remark.empty() ? "" : ", ") + "change as seen";
        const ReadChange* read = each.change       ? &each.change->read
                                 : each.seenChange ? &*each.seenChange
                                                   : nullptr;
        const auto block = questions::blockOn(blocks, each.session.date);
        const auto& measured = each.session.measuredOneRm;
        table.row({dateKey(each.session.date, each.session.ordinal), block ? block->name : "", seen,
                   felt, each.line ? fixed(*each.line, 3) : "-", rangeOrDash(each.interval, 3),
                   read ? signedFixed(read->change, 3) : "",
                   read ? signedInterval(read->interval, 3) : "",
                   read ? english(sizedCell(*read, saidSpeedDecimals)) : "",
                   each.oneRm ? in.fixed(each.oneRm->estimate, 1) : "-",
                   each.oneRm ? in.intervalOrDash(each.oneRm->interval, 1) : "",
                   measured ? in.load(*measured) : "", remark});
    }
    std::string text = about.athlete.value.name + ", " + about.lift.value.name + ", " +
                       in.withName(follow.load) + " through the season\n\n" +
                       in.say(followSentence(season)) + "\n\n" + table.text() + "\n";
    text += blocksText(season, level, trends, in);
    if (follow.trend)
        text += "Trend " + signedFixed(follow.trend->perWeek, 4) + " m/s per week" +
                (follow.trend->interval ? " (" + signedInterval(*follow.trend->interval, 4) + ")"
                                        : std::string()) +
                ", " + counted(follow.trend->sessions, "session") + "\n";
    else
        text += "No trend: " + in.say(follow.trend.why().reason) + "\n";
    if (follow.smallestDetectable)
        text += "Smallest detectable change " + fixed(*follow.smallestDetectable, 3) + " m/s\n";
    text += unsettledText(follow, in);
    for (const NotLifted& day : season.notLifted)
        text += in.say(asSentence(notLiftedWords(day))) + "\n";
    for (const auto& [id, block] : blocks) {
        const Words told = storyWords(block);
        text += "Block " + block.name + ", " + isoDate(block.first) + " to " + isoDate(block.last) +
                (told.empty() ? "" : ": " + in.say(told)) + "\n";
    }
    return text + notesText(follow.notes, in);
}

} // namespace slopebook::app

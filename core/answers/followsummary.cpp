// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/followsummary.h"

#include "core/answers/figures.h"
#include "core/answers/method.h"
#include "core/answers/readingwords.h"
#include "core/answers/testsneeded.h"
#include "core/model/phrases/answers.h"

namespace slopebook::answers {

namespace {

constexpr int followDecimals = 3;
constexpr double weeksOfAMonth = 365.25 / 12 / 7;

Words dayOfSession(const Followed& each) {
    return sessionWords(each.session.date, each.session.ordinal);
}

} // namespace

Words latestWords(const Follow& follow) {
    const Followed& last = follow.sessions.back();
    if (follow.baseline + 1 == follow.sessions.size())
        return say("%1 is the baseline: nothing later to compare with it.", dayOfSession(last));
    const Words base = dayOfSession(follow.sessions[follow.baseline]);
    if (!last.change)
        return say("%1 against %2: no figure.", dayOfSession(last), base);
    const ReadChange& read = last.change->read;
    return say("%1 against %2: %3 m/s (%4 to %5), %6.", dayOfSession(last), base,
               signedFigure(read.besideInterval(), followDecimals),
               signedFigure(read.interval.low, followDecimals),
               signedFigure(read.interval.high, followDecimals), speedReading(read));
}

Words trendWords(const Follow& follow, double level) {
    if (!follow.trend)
        return say("No trend: %1.", follow.trend.why().reason);
    const Trend& trend = *follow.trend;
    const auto change = [](double perWeek, double weeks) {
        return signedFigure(weeks * perWeek, followDecimals);
    };
    const Words week = change(trend.perWeek, 1), month = change(trend.perWeek, weeksOfAMonth);
    if (!trend.interval)
        return say("Trend over %1 sessions: %2 m/s per week, %3 m/s per month.", trend.sessions,
                   week, month);
    const auto& [low, high] = *trend.interval;
    return say("Trend over %1 sessions: %2 m/s per week (%4 % %5 to %6), %3 m/s per month (%4 % %7 "
               "to %8).",
               trend.sessions, week, month, figure(loadText(100 * level)), change(low, 1),
               change(high, 1), change(low, weeksOfAMonth), change(high, weeksOfAMonth));
}

Words settlingWords(const Followed& session) {
    if (!session.change || session.change->read.reading != Reading::Unclear)
        return {};
    return settlingWords(unsettled({session.change->load}, session.change->unsettled));
}

Words beyondLoadsWords() {
    return say("extrapolated: the load lies beyond that session's loads");
}

Words biasWords(const Followed& session) {
    return session.bias ? say("the device's bias against the baseline's, %1 m/s, is taken off in "
                              "change, trend and chart",
                              signedFigure(*session.bias, followDecimals))
                        : Words();
}

} // namespace slopebook::answers

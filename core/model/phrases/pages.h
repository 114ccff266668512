// SPDX-License-Identifier: GPL-3.0-or-later
// What core/answers says over and under an answer's figures, as a page has it: what leads, methods,
// sources, marks, cautions. A part of its list (answers.h).
#pragma once

#include "core/model/phrases/translate.h"

#include <string_view>

namespace slopebook::phrases {

inline constexpr std::string_view pages[]{
    translate("Phrases", "Outside the loads of the test: the line drawn on"),
    translate("Phrases", "%1: V0 %2 m/s, slope %3 m/s per %4, residual SD %5 m/s, R² %6, n %7"),
    translate("Phrases", "F(%1, %2) = %3, %4"),
    translate("Phrases", "%1 (no. %2)"),
    translate("Phrases", "One least-squares line of velocity on load a session (fastest rep of "
                         "each counting set). %1. %2."),
    translate("Phrases", "One least-squares line of velocity on load a session (mean of the reps "
                         "of each counting set). %1. %2."),
    translate("Phrases",
              "Change: both lines in one model, one residual variance (%1 df). Parallel: %2; one "
              "line for both: %3. Band over all loads: Working and Hotelling 1929."),
    translate(
        "Phrases",
        "Change: both lines, each with its own residual variance (Satterthwaite's df). Parallel: "
        "%1; one line for both: %2. Band over all loads: Working and Hotelling 1929."),
    translate("Phrases", "Estimated 1RM: the load at which a line reaches the MVT; interval: "
                         "Fieller 1954; of the change: variance recovery, Zou and Donner 2008."),
    translate("Phrases", "Change: of the sessions of a side that cover a load the mean, each "
                         "weighed by what its line and its day are known by; the later side less "
                         "the earlier one. The lines that are drawn are the heaviest day of each."),
    translate("Phrases", "Estimated 1RM: the load at which the mean of a side reaches the MVT; "
                         "interval of the change: delta method."),
    translate(
        "Phrases",
        "Better or worse: the %1 % interval with day-to-day noise and bend leaves out zero. Held: "
        "the %2 % interval lies within the smallest change that matters. Else unclear."),
    translate("Phrases", "MVT (minimal-velocity threshold): %1"),
    translate("Phrases", "† check load."),
    translate("Phrases", "* beyond the loads that both sessions lifted: extrapolated."),
    translate("Phrases",
              "The interval of each estimate includes the MVT's own SD; that of the change does "
              "not: both estimates use the same MVT, so it nearly cancels (what is left is %1)."),
    translate("Phrases", "No figure for the change: a slope is not certain enough to bound it."),
    translate("Phrases", "%1 m/s (SD %2; %3)"),
    translate("Phrases", "%1 m/s (%2)"),
    translate("Phrases",
              "The line is too flat, or its points too scattered, to say where it ends (it would "
              "read %1). Look at the typed speeds, or lift loads further apart."),
    translate("Phrases", "Two loads, the heavier under half of what their line would read (%1): "
                         "lift a third, heavier load."),
    translate("Phrases", "Loads are estimates, not clearance to lift."),
    translate("Phrases",
              "Near-maximal lifts need a competent spotter or safeties, and a coach's eye."),
    translate("Phrases", "Restricted-flow training needs screening for vascular, cardiac, clotting "
                         "and pressure problems, and trained supervision."),
    translate("Phrases", "Pain, illness or return from injury: a qualified practitioner decides."),
    translate("Phrases", "Local rules come first."),
    translate("Phrases", "No test of the battery was done on either side."),
    translate("Phrases", "in the chart %1"),
    translate("Phrases", "> m: by more than the smallest change that matters."),
    translate("Phrases", "< m: certain, but less than the smallest change that matters."),
    translate("Phrases", "Without a bar in the chart: %1."),
    translate("Phrases", "all blocks at once"),
    translate("Phrases", "all steps at once"),
    translate("Phrases", "each change alone"),
    translate("Phrases", "day against day, each change alone"),
    translate("Phrases", "block against block, each change alone"),
    translate("Phrases", "Each change alone, for what was asked before it was seen. Overview, "
                         "Whole season and Season read all blocks at once, for what stands out "
                         "among many: their readings may differ."),
    translate("Phrases", "All blocks at once, for what stands out among many; what is better or "
                         "worse alone is so by itself, for what was asked before it was seen."),
    translate("Phrases", "%1: typical error %2 %3, %4"),
    translate("Phrases", "%1: smallest change that matters %2 %3, %4"),
    translate("Phrases", "Left out, for it cannot be read: %1"),
    translate("Phrases",
              "Interval: change ± t √2 TE on the degrees of freedom of TE, the typical error. "
              "Better or worse: the interval excludes zero; held: the interval of two one-sided "
              "tests lies inside the smallest change that matters; else unclear."),
    translate("Phrases", "%1 is the baseline: nothing later to compare with it."),
    translate("Phrases", "%1 against %2: no figure."),
    translate("Phrases", "%1 against %2: %3 m/s (%4 to %5), %6."),
    translate("Phrases", "No trend: %1."),
    translate("Phrases", "the block %1"),
    translate("Phrases", "the day %1"),
    translate("Phrases", "%1 alone: %2 m/s (%3 to %4), %5"),
    translate("Phrases", "at %1 nothing is read against %2"),
    translate("Phrases", "at %1, of %2 sessions read against %3, %4 better, %5 worse, %6 held, %7 "
                         "unclear"),
    translate("Phrases", "at %1 against %2 (%3), %4"),
    translate("Phrases", "%1 m/s per week"),
    translate("Phrases", "%1 m/s per week (%2 % %3 to %4)"),
    translate("Phrases", "the blocks' readings hold together over the season at %1 % (Dunnett); so "
                         "do those of the sessions before the newest"),
    translate("Phrases", "no trend within %1: %2"),
    translate("Phrases", "trend within %1 over %2 sessions: %3"),
    translate("Phrases", "%1 unclear, better alone"),
    translate("Phrases", "%1 unclear, worse alone"),
    translate("Phrases", "%1 unclear, leaning to better"),
    translate("Phrases", "%1 unclear, leaning to worse"),
    translate("Phrases", "%1: no figure, %2"),
    translate("Phrases", "%1: %2 m/s, 1 session"),
    translate("Phrases", "%1: mean %2 m/s, %3 sessions"),
    translate("Phrases", "%1; the baseline"),
    translate("Phrases", "%1; no reading, %2"),
    translate("Phrases", "%1; against %2 (%7) %3 m/s (%4 to %5), %6"),
    translate("Phrases", "the lift"),
    translate("Phrases", "%1 was not possible on %2"),
    translate("Phrases", "Trend over %1 sessions: %2 m/s per week, %3 m/s per month."),
    translate("Phrases", "Trend over %1 sessions: %2 m/s per week (%4 % %5 to %6), %3 m/s per "
                         "month (%4 % %7 to %8)."),
    translate("Phrases", "extrapolated: the load lies beyond that session's loads"),
    translate("Phrases", "the device's bias against the baseline's, %1 m/s, is taken off in "
                         "change, trend and chart"),
    translate("Phrases",
              "Each change alone: %1 better, %2 worse, %3 held, %4 unclear, %5 without a figure."),
    translate(
        "Phrases",
        "Of a block or a stretch of days all sessions are made one, of a date the nearest that "
        "makes a line stands. Readings hold day-to-day noise; rows go better, worse, held, "
        "unclear, and by size in each. Drawn to all: an athlete's change moved towards the mean "
        "of all, the further the more of it the noise of tests may be."),
    translate("Phrases", "No clear bias between %1 and %2: %3 m/s (%4 % %5 to %6); of twenty sets "
                         "about nineteen differ by %7 to %8."),
    translate("Phrases", "%1 reads %2 m/s more than %3 (%4 % %5 to %6); of twenty sets about "
                         "nineteen differ by %7 to %8."),
    translate("Phrases", "%1 reads %2 m/s less than %3 (%4 % %5 to %6); of twenty sets about "
                         "nineteen differ by %7 to %8."),
    translate("Phrases",
              "No sets of this lift were measured by two devices at once. Enter the same sets as "
              "two sessions of one athlete and day, each with its device: then they are compared "
              "here."),
    translate("Phrases", "no day-to-day noise is known"),
    translate("Phrases", "none found beyond the scatter within a day"),
    translate("Phrases", "%1 m/s day to day"),
    translate("Phrases", "from one test to another a change is clear from about %1 m/s up"),
    translate("Phrases", "Rule of thumb: from one test to another a speed at a load has changed "
                         "clearly from about %1 m/s up, of %2 tests against %2 from about %3; all "
                         "blocks read at once ask for more."),
    translate("Phrases", "The rule of thumb is of days alone; beside a reading stands its own "
                         "figure. Where blocks are read, their days count as repeats too, and the "
                         "noise is a little other."),
    translate("Phrases", "No spread at this resolution: these repeat tests all differ alike, as "
                         "far as the speeds were written down. That is no error of zero."),
    translate("Phrases",
              "A repeat test is marked in the session's details: same conditions, within a few "
              "days. Readings use the athlete's own day-to-day noise from %1 repeat tests on, else "
              "the log's from as many, else the published figure."),
    translate(
        "Phrases",
        "The best ladder can be expected to give a change to ± %1 m/s (this session's: ± %2)."),
    translate("Phrases", "The best ladder can be expected to give a change to ± %1 m/s."),
    translate("Phrases", "No ladder of these loads can be expected to bound the estimated 1RM "
                         "(this session's: ± %1)."),
    translate("Phrases", "No ladder of these loads can be expected to bound the estimated 1RM."),
    translate("Phrases", "The best ladder can be expected to give the estimated 1RM to ± %1, were "
                         "lines straight (this session's: ± %2)."),
    translate("Phrases", "The best ladder can be expected to give the estimated 1RM to ± %1, were "
                         "lines straight."),
    translate("Phrases", "Both are as if the line were straight. To plan with it is ± %1 now: that "
                         "also holds what a bend may add."),
    translate("Phrases", "Both take the MVT as exact and the line as straight. To plan with it is "
                         "± %1 now: that also holds the MVT's own spread and what a bend may add."),
    translate("Phrases", "The line is of %1."),
    translate("Phrases", "The line is of %1, 1 day old."),
    translate("Phrases", "The line is of %1, %2 days old."),
    translate("Phrases", "The line is of %1, 1 week old."),
    translate("Phrases", "The line is of %1, %2 weeks old."),
    translate("Phrases", "That is old: over %1 weeks a line moves with training, so test again, or "
                         "go by the speeds (common practice)."),
    translate("Phrases", "Every load of this set of equipment."),
    translate("Phrases", "Lift %1."),
    translate("Phrases", "Lift one of %1."),
    translate("Phrases", "Lift %1; %2"),
    translate("Phrases", "by the lines slower at all %1 loads, by %2 m/s"),
    translate("Phrases", "by the lines faster at all %1 loads, by %2 m/s"),
    translate("Phrases", "by the lines faster at %1 of %2 loads, by %3 to %4 m/s"),
    translate("Phrases", "clear at all of them"),
    translate("Phrases", "clear at %1"),
    translate("Phrases", "held at all of them"),
    translate("Phrases", "held at %1"),
    translate("Phrases", "but clear beyond the noise at none of them (clear from %1 m/s)"),
    translate("Phrases", "unclear at %1 (clear from %2 m/s)"),
    translate("Phrases", "Not comparable with %1: %2."),
    translate("Phrases", "Against %1, %2: %3"),
    translate("Phrases", "tested %1"),
    translate("Phrases", "end a set %1 % under the day's fastest rep: at %2 m/s if that is the "
                         "expected %3 m/s"),
    translate("Phrases", "Lift %1; no stop speed: it would lie under the MVT."),
    translate("Phrases", "%1 lies over the estimated 1RM."),
    translate("Phrases", "The aim is %1."),
    translate("Phrases", "The aim is %1 to %2."),
    translate("Phrases", "The aim is %1 to %2; over the estimated 1RM: %3."),
    translate("Phrases", "A thrown or jumped lift has no 1RM to take a share of: aim at a speed."),
    translate("Phrases",
              "Beware, its loads: %1. No ladder without that was found under these settings: more "
              "steps, a heavier load or plates between them may give one."),
    translate("Phrases", "Half the sets at the lightest and half at the heaviest load would give "
                         "%1 times that, and could not show a bend."),
    translate("Phrases", "Scatter from %1 sessions: SD %2 m/s."),
    translate("Phrases", "The squad: %1 athletes, %2 points; one point scatters by %3 % of the 1RM "
                         "about the curve."),
    translate("Phrases", "Published: %1."),
    translate("Phrases", "No published equation is known for this lift and kind of velocity."),
    translate("Phrases", "People differ: such a share is of others, never of this athlete."),
    translate("Phrases", "%1 m/s"),
    translate("Phrases", "%1? Today's line says about %2 at that load."),
    translate("Phrases", "%1? Last time's line says about %2 at that load."),
    translate("Phrases", "%1? The set's fastest rep is %2, and a later rep is fast again."),
    translate("Phrases", "%1? The lighter %3 went up at %2 today: speed falls as load rises."),
    translate("Phrases", "%1? Today's heaviest load is %2."),
    translate("Phrases", "%1? The heaviest load of today and last time is %2."),
    translate("Phrases", "%1? Today's lightest load is %2."),
    translate("Phrases", "%1? The lightest load of today and last time is %2."),
    translate("Phrases", "without a figure: %1"),
    translate("Phrases", "%1 without a figure"),
    translate("Phrases", "of %1 readings (%2), %3"),
    translate("Phrases", "%1 (%2)"),
    translate("Phrases", "%1 (better alone: %2; clear from %3)"),
    translate("Phrases", "%1 (worse alone: %2; clear from %3)"),
    translate("Phrases", "%1 (leaning to better: %2; clear from %3)"),
    translate("Phrases", "%1 (leaning to worse: %2; clear from %3)"),
    translate("Phrases", "%1 (%2; clear from %3)"),
    translate("Phrases", "No measure was made in two of these blocks: nothing can be compared."),
    translate("Phrases", "from %1 to %2 no change can be read"),
    translate("Phrases", "from %1 to %2 (%3), %4"),
    translate("Phrases", "%1 of %2 readings are better or worse; chance alone gives %3. %4"),
    translate("Phrases", "Taken all as one question (Holm's rule), none of them stands."),
    translate("Phrases", "Taken all as one question (Holm's rule), these stand: %1."),
    translate("Phrases", "Taken all as one question (Holm's rule), these stand: %1 and %2 more."),
    translate("Phrases", "%1 (%2, stands among all)"),
    translate("Phrases", "%1 (%2, stands among all; tested %3)"),
    translate("Phrases", "1 session lies in none of these blocks"),
    translate("Phrases", "a change is of as many reps on both sides, and of what both blocks hold: "
                         "it need not be the difference of the two figures"),
    translate("Phrases", "%1 sessions lie in none of these blocks"),
    translate("Phrases",
              "a measure's readings against the chosen block hold together at %1 %, those from "
              "block to block likewise; not the two at once, and not over measures"),
    translate("Phrases",
              "the days of one block are taken as alike, 0.5 from one to the next; where they are "
              "as alike as 0.7, up to 15 % of what is no change is read as one, instead of 5 %"),
    translate("Phrases", "planned: %1"),
    translate("Phrases", "in this log 1 session with sets or tests"),
    translate("Phrases", "in this log %1 sessions with sets or tests"),
    translate("Phrases", "in this log 1 session with sets or tests, in %1 weeks"),
    translate("Phrases", "in this log %1 sessions with sets or tests, in %2 weeks"),
    translate("Phrases", "in this log 1 session with sets or tests, in %1 weeks: %2 a week"),
    translate("Phrases", "in this log %1 sessions with sets or tests, in %2 weeks: %3 a week"),
    translate("Phrases", "up to %1"),
    translate("Phrases", "%1, %2 to %3: %4"),
    translate("Phrases",
              "A season can show that a measure changed from block to block in this athlete, not "
              "what changed it: nobody trained otherwise beside them, so the work, the time of the "
              "season, growth or practice in the tests may be behind it."),
    translate("Phrases",
              "After a day of unusually bad tests the next ones tend to be better whatever is "
              "done, after unusually good ones worse: a block that was begun because of such a day "
              "is not judged by it."),
    translate("Phrases", "What was trained is not written down for every block: it stands in the "
                         "block's own form, and no reading says more than that."),
    translate("Phrases", "%1 went back to the work of %2: what changed in between and went back "
                         "with it speaks for the work; what did not may be time, growth or "
                         "practice."),
    translate("Phrases",
              "The blocks came in one order: what an earlier one did may show in a later one."),
    translate("Phrases",
              "More would be shown by going back to the first block's work and seeing the change "
              "go back too, or by a second athlete with the blocks in another order or begun on "
              "another day (single-case designs: Kazdin 2011)."),
    translate("Phrases", "better: %1"),
    translate("Phrases", "better: %1 and %2 more"),
    translate("Phrases", "worse: %1"),
    translate("Phrases", "worse: %1 and %2 more"),
    translate("Phrases", "held: %1"),
    translate("Phrases", "held: %1 and %2 more"),
    translate("Phrases", "unclear: %1"),
    translate("Phrases", "unclear: %1 and %2 more"),
    translate("Phrases", "%1 at %2"),
    translate("Phrases", "%1, left against right"),
    translate("Phrases", "%1, RPE at %2"),
    translate("Phrases", "not weighed in this block"),
    translate("Phrases", "neither way is better, so no reading is made of it"),
    translate("Phrases", "no RPE at this load"),
    translate("Phrases", "RPE is read by how its own days differ: a block needs several of them"),
    translate("Phrases", "RPE is read by how its own days differ, and no two days of a block do"),
    translate("Phrases", "%1 was tested %2 than %3, all or some of it: part of a change may be its "
                         "doing"),
    translate("Phrases", "all or some of %1 was tested under other conditions than %2 (%3): part "
                         "of a change may be their doing"),
    translate("Phrases", "not lifted"),
    translate("Phrases", "no day held %1, and none has a line to read it off"),
    translate("Phrases", "no day has a line that reaches a max"),
    translate("Phrases", "no figure in %1 to count from"),
    translate("Phrases", "body mass"),
    translate("Phrases",
              "Better or worse in something: %1 of %2 athletes (%3 of %4 readings; those of one "
              "athlete go together). Chance alone gives at most %5 such athletes."),
    translate("Phrases",
              "Mean change of %1 athletes %2 (%3 to %4): %5. With the noise of their own "
              "tests taken out, their changes still differ by an SD of %6."),
    translate("Phrases", "Mean change of %1 athletes %2 (%3 to %4): %5. Their changes differ by no "
                         "more than the noise of their own tests."),
};

} // namespace slopebook::phrases

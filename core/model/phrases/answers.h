// SPDX-License-Identifier: GPL-3.0-or-later
// Why core/answers has no answer, and what it refuses.
#pragma once

#include "core/model/phrases/pages.h"
#include "core/model/phrases/translate.h"
#include "core/model/words.h"

#include <algorithm>
#include <array>
#include <iterator>
#include <string_view>

namespace slopebook::phrases {

inline constexpr std::string_view reasons[]{
    translate("Phrases", "no day has a session of this lift on each of the two devices, with the "
                         "same loads"),
    translate("Phrases", "1 set seen by both devices: agreement needs three or more"),
    translate("Phrases", "%1 sets seen by both devices: agreement needs three or more"),
    translate("Phrases", "not possible: %1"),
    translate("Phrases", "the session has no body mass"),
    translate("Phrases", "unknown formula"),
    translate("Phrases", "not tested"),
    translate("Phrases", "the athlete's own, 1 repeat test"),
    translate("Phrases", "the athlete's own, %1 repeat tests"),
    translate("Phrases", "this log's, 1 repeat test"),
    translate("Phrases", "this log's, %1 repeat tests"),
    translate("Phrases", "%1, left"),
    translate("Phrases", "%1, right"),
    translate("Phrases", "on both sides %1"),
    translate("Phrases", "before: %1"),
    translate("Phrases", "after: %1"),
    translate("Phrases", "no typical error is known: repeat the test, or give the test one"),
    translate(
        "Phrases",
        "its attempts alone spread by %1 %2, a lower bound of its noise: the same test on two "
        "days of one week, the second marked as a repeat, gives the whole"),
    translate("Phrases", "%1: %2"),
    translate("Phrases", "%1: last in %2"),
    translate("Phrases", "the two days share no load"),
    translate("Phrases", "calibration needs three maxima lifted within days of an estimate"),
    translate("Phrases", "no smallest change that matters is known"),
    translate("Phrases", "left %1"),
    translate("Phrases", "right %1"),
    translate("Phrases", "%1, speed at %2"),
    translate("Phrases", "%1, estimated 1RM"),
    translate("Phrases", "the change cannot be bounded"),
    translate("Phrases", "a trend needs three sessions that cover the load"),
    translate("Phrases", "a trend needs sessions on more than one day"),
    translate("Phrases", "no session of this lift"),
    translate("Phrases", "the baseline is none of the sessions"),
    translate("Phrases", "sessions of two athletes"),
    translate("Phrases", "two sessions of one athlete"),
    translate("Phrases", "sessions of two lifts"),
    translate("Phrases", "two sessions of one lift"),
    translate("Phrases", "two points make a line without intervals, so no change can be judged: it "
                         "needs a third load"),
    translate("Phrases", "one session is not compared with itself"),
    translate("Phrases", "a thrown or jumped lift is followed by velocity at load only"),
    translate("Phrases",
              "%1: %2 sessions made one, by what each says of a load and of days that are alike"),
    translate("Phrases", "%1: %2 is left out (%3)"),
    translate("Phrases", "speed does not fall as load rises, so no maximum can be read off"),
    translate("Phrases", "the line starts under the MVT"),
    translate("Phrases", "a history to borrow from needs three sessions of the lift; there is 1 "
                         "session"),
    translate("Phrases", "a history to borrow from needs three sessions of the lift; there are %1 "
                         "sessions"),
    translate("Phrases", "the sessions hold too few loads to borrow from: two of them need two "
                         "loads, and points must scatter about the lines"),
    translate("Phrases", "%1 steps"),
    translate("Phrases", "2 to 8 steps of a ladder"),
    translate("Phrases", "%1 %"),
    translate("Phrases", "a heaviest load of 20 to 100 % of the estimated 1RM"),
    translate("Phrases", "no session shows the scatter of this athlete's points: it needs three "
                         "loads"),
    translate("Phrases",
              "speed does not fall as load rises, so no test can be planned on the line"),
    translate("Phrases", "there is no 1RM and no check load to judge a test by: set a check load"),
    translate("Phrases", "fewer than two loads can be built up to %1"),
    translate("Phrases", "repeat tests of several lifts or people"),
    translate("Phrases", "pairs of one lift, each of one athlete"),
    translate("Phrases", "no repeat test of this lift is marked as one"),
    translate("Phrases", "one repeat test is too few: noise needs two or more"),
    translate("Phrases", "a share of the 1RM above 0 and up to 120 %"),
    translate("Phrases", "a velocity above 0 and under 10 m/s"),
    translate("Phrases", "a velocity loss between 0 and 100 %"),
    translate("Phrases", "speed does not fall as load rises, so no load belongs to a speed"),
    translate("Phrases", "the line starts at V0 = %1 m/s: %2 m/s is not reached at any load"),
    translate("Phrases", "no load can be built under that ceiling"),
    translate("Phrases", "every load that can be built is too heavy for this athlete"),
    translate("Phrases", "the slope is not certain enough to bound the estimated 1RM, so nothing "
                         "is planned from this line: lift loads further apart, and heavier ones"),
    translate("Phrases", "the heaviest load lifted is %1 % of the 1RM that the line would read: "
                         "nothing is planned from so far away; lift heavier loads first"),
    translate("Phrases", "two loads, the heavier under half of the 1RM that their line would read: "
                         "lift a third, heavier load before planning from it"),
    translate("Phrases", "the interval of the estimated 1RM is wider than the estimate itself: "
                         "nothing is planned from it; lift loads further apart, and heavier ones"),
    translate("Phrases", "the aim lies above the estimated 1RM: no load is planned there"),
    translate("Phrases",
              "the aim lies beyond where the line gives any speed: no load is planned there"),
    translate("Phrases", "the aim lies more than a quarter beyond the heaviest load lifted: test "
                         "heavier loads first"),
    translate("Phrases", "the aim lies above the upper end of the estimated 1RM's interval: no "
                         "load is planned there"),
    translate("Phrases", "equipment that makes more than %1 loads"),
    translate("Phrases", "fewer kinds of plates and masses in one set of equipment"),
    translate("Phrases", "a confidence level between 0.5 and 1"),
    translate("Phrases", "the line starts at V0 = %1 m/s, not above the MVT of %2 m/s"),
    translate("Phrases", "no set of this session counts"),
    translate("Phrases", "every point is at %1: a line needs two loads"),
    translate("Phrases", "%1 reps"),
    translate("Phrases", "1 to 100 reps"),
    translate("Phrases", "a slope is not certain enough to bound its change"),
    translate("Phrases", "a smallest change of zero"),
    translate("Phrases", "a smallest change that matters above 0"),
    translate("Phrases", "no session of this lift in %1"),
    translate("Phrases", "%1 lies beyond the loads that both sessions cover"),
    translate("Phrases", "a slope is not certain enough to bound the change"),
    translate("Phrases", "no athlete has a session of this lift"),
    translate("Phrases", "a thrown or jumped lift has no 1RM to take shares of"),
    translate("Phrases", "a squad's relation needs sessions with a measured 1RM of at least three "
                         "athletes and six points; there are %1 and %2"),
    translate("Phrases", "1 athlete"),
    translate("Phrases", "%1 athletes"),
    translate("Phrases", "1 point"),
    translate("Phrases", "%1 points"),
    translate("Phrases", "no minimal-velocity threshold (MVT) is known for this lift"),
    translate("Phrases", "no published threshold (MVT) holds for peak velocity"),
    translate("Phrases", "surface: %1, then %2"),
    translate("Phrases", "device: %1, then %2"),
    translate("Phrases", "footwear: %1, then %2"),
    translate("Phrases", "technique: %1, then %2"),
    translate("Phrases", "%1 (%2 %3, %4 to %5; shows from %6)"),
    translate("Phrases", "%1 (leaning up: %2 %3, %4 to %5; shows from %6)"),
    translate("Phrases", "%1 (leaning down: %2 %3, %4 to %5; shows from %6)"),
    translate("Phrases", "%1 points (%2 to %3): less uneven"),
    translate("Phrases", "%1 points (%2 to %3): more uneven"),
    translate("Phrases", "%1 points (%2 to %3): no clear change; shows from %4"),
    translate("Phrases", "%1 points (%2 to %3): no clear change, leaning to more uneven; shows "
                         "from %4"),
    translate("Phrases", "%1 points (%2 to %3): no clear change, leaning to less uneven; shows "
                         "from %4"),
    translate("Phrases", "published, not yours"),
    translate("Phrases", "published day-to-day noise: %1"),
    translate("Phrases", "left by %1 %"),
    translate("Phrases", "right by %1 %"),
    translate("Phrases", "even"),
    translate("Phrases",
              "the later session's device reads %1 m/s against the earlier one's: taken off its "
              "speeds, line and estimate here, and its uncertainty (SE %2) added to the readings"),
    translate("Phrases",
              "the device of one session is not known: part of the change may be the device's"),
    translate("Phrases", "smallest change that matters, by load: %1"),
    translate("Phrases", "smallest change of speed that matters, other loads: %1 m/s (%2)"),
    translate("Phrases", "smallest change of the estimated max that matters: %1 (%2)"),
    translate("Phrases", "the points of one day scatter more than the other's (F = %1, %2): "
                         "separate variances may be asked for"),
    translate("Phrases", "the points of one day scatter more than the other's (F = %1, %2): each "
                         "line has its own variance here"),
    translate("Phrases", "no day-to-day noise is known: the readings are made from these two days "
                         "alone, which calls too much a change"),
    translate("Phrases", "no day-to-day noise was found beyond the scatter within a day (%1)"),
    translate("Phrases", "day-to-day SD of a whole line, %1 m/s, is part of every reading (%2)"),
    translate("Phrases", "smallest change of speed that matters: %1 m/s (%2)"),
    translate("Phrases", "intervals are at %1 %, not 95 %"),
    translate("Phrases",
              "the sessions share no stretch of loads: every change by load is extrapolated"),
    translate("Phrases", "the slope is not certain enough to bound the estimate"),
    translate("Phrases", "the heaviest load is under half of the estimate, which lies %1 beyond "
                         "the heaviest load of %2 (reach %3): read its interval first"),
    translate("Phrases",
              "extrapolated far: the estimate lies %1 beyond the heaviest load of %2 (reach %3)"),
    translate("Phrases", "one true maximum has no SD: no interval with the MVT's own"),
    translate("Phrases", "the SD of the MVT is not known: no interval with it"),
    translate(
        "Phrases",
        "%1 m/s at %2 lies far from the line of the other points (studentised %3): worth a look"),
    translate("Phrases", "%1 m/s at %2 is hard to believe: worth a look"),
    translate("Phrases", "two points make a line without intervals: it needs a third load"),
    translate("Phrases", "peak velocity at a maximum is no small steady figure: an MVT made for "
                         "mean velocity does not hold for it"),
    translate("Phrases", "the points bend (%1): a straight line misses their ends"),
    translate("Phrases", "the baseline session has no line, so no change is judged: %1"),
    translate(
        "Phrases",
        "the baseline's line has two points, so no change can be judged: it needs a third load"),
    translate("Phrases", "changes across devices and the trend have the device's bias taken off"),
    translate("Phrases", "some sessions were measured with another device than the baseline: part "
                         "of their change, and of the trend, may be the device's"),
    translate("Phrases", "sessions whose loads do not reach %1 are shown as extrapolated and take "
                         "no part in the trend"),
    translate("Phrases", "no day-to-day noise is known: no smallest detectable change is drawn"),
    translate(
        "Phrases",
        "shares of the 1RM marked so are by %1, not by this athlete's own line: people differ"),
    translate("Phrases",
              "of %1 athletes about %2 can be expected to read better or worse by chance alone"),
    translate("Phrases",
              "some were measured with two devices: part of their change may be the devices'"),
    translate("Phrases",
              "changes across devices have the device's bias taken off and its uncertainty added"),
    translate("Phrases",
              "After Patterson et al. 2019 (Front Physiol 10:533), Front Physiol 2022;13:808622 "
              "and the clinical literature: have a clinician review it before relying on it."),
    translate("Phrases", "This plan is not medical advice. Restricted-flow training needs medical "
                         "screening and trained, licensed supervision. Restriction pressure must "
                         "be set by a trained person from a measured occlusion pressure, never by "
                         "elastic wraps at a guessed tightness. Local rules come first."),
    translate("Phrases", "load 20 to 40 % of 1RM"),
    translate("Phrases", "pressure 40 to 80 % of the occlusion pressure measured on that limb, "
                         "with that cuff, in that posture; a wider cuff needs less"),
    translate("Phrases",
              "2 to 4 sets, often 30, 15, 15 and 15 reps, 1 to 2 s up and 1 to 2 s down"),
    translate(
        "Phrases",
        "30 to 60 s between sets; about 5 to 10 min of restriction for an exercise, then deflate"),
    translate("Phrases",
              "a deep-vein thrombosis, pulmonary embolism or clotting disorder, now or before"),
    translate("Phrases", "haemophilia; medicines that raise the risk of clots or of bleeding"),
    translate("Phrases", "anabolic steroids or other ergogenic medicines"),
    translate("Phrases", "pregnancy and the months after a birth"),
    translate("Phrases", "high blood pressure that is not under control"),
    translate("Phrases", "unstable heart disease, a recent heart attack or stroke"),
    translate("Phrases", "heart failure or atrial fibrillation"),
    translate("Phrases", "peripheral arterial disease or poor circulation; varicose veins"),
    translate("Phrases", "smoking"),
    translate("Phrases", "sickle-cell disease or trait"),
    translate("Phrases", "chronic kidney disease"),
    translate("Phrases", "rheumatoid arthritis"),
    translate("Phrases", "active cancer"),
    translate("Phrases", "an open wound, infection, recent fracture or surgery of the limb; a "
                         "vascular graft or dialysis access; lymphoedema or removed lymph nodes"),
    translate("Phrases", "diabetes with damage to vessels or nerves"),
    translate("Phrases", "severe obesity"),
    translate("Phrases", "long bed rest or recent long travel"),
    translate("Phrases", "rhabdomyolysis before"),
    translate("Phrases", "numbness or tingling"),
    translate("Phrases", "sharp pain"),
    translate("Phrases", "unusual swelling or colour"),
    translate("Phrases", "dizziness, chest pain or shortness of breath"),
    translate("Phrases", "nausea, headache or faintness"),
    translate("Phrases", "dark urine"),
    translate("Phrases", "soreness out of all proportion"),
    translate("Phrases", "squad: %1"),
    translate("Phrases", "the coach's own"),
    translate("Phrases", "published, not yours: %1"),
    translate("Phrases", "the athlete's own: 1 repeat test"),
    translate("Phrases", "the athlete's own: %1 repeat tests"),
    translate("Phrases", "this log's: 1 repeat test"),
    translate("Phrases", "this log's: %1 repeat tests"),
    translate("Phrases", "the athlete's own: one true maximum"),
    translate("Phrases", "the athlete's own: mean of %1 true maxima"),
    translate("Phrases", "the athlete's own: one true maximum, drawn towards the lift's figure"),
    translate("Phrases",
              "the athlete's own: mean of %1 true maxima, drawn towards the lift's figure"),
    translate("Phrases", "the coach's own: %1"),
    translate("Phrases", "both estimates use one MVT, so its uncertainty nearly cancels in their "
                         "change (what is left is %1) and is not in its interval"),
    translate("Phrases", "a slope is not certain enough to bound the change of the estimated max"),
    translate("Phrases", "the devices differ in proportion (least-products slope %1, its interval "
                         "leaves out 1): one bias for all speeds is too simple"),
    translate("Phrases", "1 set of one device has no partner and is left out"),
    translate("Phrases", "%1 sets of one device have no partner and are left out"),
    translate("Phrases", "%1 to %2"),
    translate("Phrases", "no estimated 1RM: %1"),
    translate("Phrases", "the estimated 1RM lies %1 beyond the heaviest load lifted (reach %2): "
                         "every percent here leans on that, so read the intervals first"),
    translate("Phrases", "the estimated 1RM lies %1 beyond the heaviest load lifted (reach %2): "
                         "every percent here leans on that"),
    translate("Phrases", "two points give no intervals: the line needs a third load"),
    translate("Phrases",
              "the slope is not certain enough to bound the 1RM, so its percents have no interval"),
    translate("Phrases", "no repeat tests are known: the expected speeds' intervals lack the "
                         "scatter from day to day and are too narrow"),
    translate("Phrases",
              "this lift's line is of set means: take the stop speed from the day's fastest rep"),
    translate("Phrases", "%1 is %2 % of this athlete's estimated 1RM: it may be more than the "
                         "athlete can lift that day"),
    translate("Phrases",
              "near-maximal lifts need a competent spotter or safeties, and a coach's eye"),
    translate("Phrases",
              "%1 lies outside the loads of the test (%2 to %3): its speed is the line drawn on"),
    translate("Phrases", "the stop speed of %1 m/s at %2 lies under the MVT of %3 m/s: the set "
                         "would end by failure; choose less loss"),
    translate("Phrases", "%1 is %2 % of this athlete's estimated 1RM; the target is %3"),
    translate("Phrases", "%1 is the heaviest load at hand; the target is %2"),
    translate("Phrases", "possible there: every rep of %1 as fast as it will go, the day judged by "
                         "its speed (expected %2 m/s, %3)"),
    translate("Phrases", "possible there: every rep of %1 as fast as it will go, the day judged by "
                         "its speed (expected %2 m/s)"),
    translate("Phrases", "or more reps of it, ending each set when speed has fallen by %1 % (about "
                         "%2 m/s): more work, not more load"),
    translate("Phrases", "the loads end at the upper end of the estimated 1RM (%1)"),
    translate("Phrases", "the loads end at the estimated 1RM (%1), which has no interval"),
    translate("Phrases", "the loads end where the line gives no speed any more (%1)"),
    translate(
        "Phrases",
        "without an estimated 1RM the loads end a quarter beyond the heaviest load lifted (%1)"),
    translate("Phrases", "the loads keep to the ceiling of the block %1 (%2)"),
    translate("Phrases", "the loads stay under %1, which was not lifted"),
    translate("Phrases", "restricted-flow work uses %1 to %2 % of 1RM, here %3 to %4: only after "
                         "screening and under trained, licensed supervision, as its caution says"),
    translate("Phrases", "%1 is the lightest load at hand; the target is %2"),
    translate("Phrases", "loads are estimates, not clearance to lift"),
    translate("Phrases", "pain, illness or return from injury: a qualified practitioner decides; "
                         "local rules come first"),
    translate("Phrases", "Not without medical clearance with: %1."),
    translate("Phrases", "Stop and deflate at once for: %1."),
    translate("Phrases", "To medical care for: %1."),
    translate("Phrases", "Usual practice: %1."),
    translate("Phrases", "faster at %1 (by %2 m/s, more than the smallest change that matters)"),
    translate("Phrases",
              "faster from %1 to %2 (by %3 m/s, more than the smallest change that matters)"),
    translate("Phrases", "faster at %1 (by %2 m/s, less than the smallest change that matters)"),
    translate("Phrases",
              "faster from %1 to %2 (by %3 m/s, less than the smallest change that matters)"),
    translate("Phrases", "faster at %1 (by %2 m/s)"),
    translate("Phrases", "faster from %1 to %2 (by %3 m/s)"),
    translate("Phrases", "slower at %1 (by %2 m/s, more than the smallest change that matters)"),
    translate("Phrases",
              "slower from %1 to %2 (by %3 m/s, more than the smallest change that matters)"),
    translate("Phrases", "slower at %1 (by %2 m/s, less than the smallest change that matters)"),
    translate("Phrases",
              "slower from %1 to %2 (by %3 m/s, less than the smallest change that matters)"),
    translate("Phrases", "slower at %1 (by %2 m/s)"),
    translate("Phrases", "slower from %1 to %2 (by %3 m/s)"),
    translate("Phrases", "no clear change at %1"),
    translate("Phrases", "no clear change from %1 to %2"),
    translate("Phrases", "no clear change above"),
    translate("Phrases", "no clear change up to %1"),
    translate("Phrases", "no figure at %1"),
    translate("Phrases", "no figure from %1 to %2"),
    translate("Phrases", "no figure above"),
    translate("Phrases", "no figure up to %1"),
    translate("Phrases", "speed held at %1 (%2 m/s)"),
    translate("Phrases", "speed held from %1 to %2 (%3 m/s)"),
    translate("Phrases", "%1 (reach %2 both times: extrapolations)"),
    translate("Phrases", "%1 (reach %2, then %3: extrapolations)"),
    translate("Phrases", "%1 (the earlier one's reach %2: an extrapolation)"),
    translate("Phrases", "%1 (the later one's reach %2: an extrapolation)"),
    translate("Phrases",
              "estimated max up: %1 (%2 to %3), more than the smallest change that matters"),
    translate("Phrases",
              "estimated max up: %1 (%2 to %3), less than the smallest change that matters"),
    translate("Phrases", "estimated max up: %1 (%2 to %3)"),
    translate("Phrases",
              "estimated max down: %1 (%2 to %3), more than the smallest change that matters"),
    translate("Phrases",
              "estimated max down: %1 (%2 to %3), less than the smallest change that matters"),
    translate("Phrases", "estimated max down: %1 (%2 to %3)"),
    translate("Phrases", "estimated max held: %1 (%2 to %3)"),
    translate("Phrases", "no clear change of the estimated max: %1 (%2 to %3)"),
    translate("Phrases", "the two sessions share no loads, so nothing is said by load"),
    translate("Phrases", "no clear change at any load from %1 to %2"),
    translate("Phrases", "no estimated max: %1"),
    translate("Phrases", "%1 to %2 %"),
    translate("Phrases", "estimated 1RM: a true change of %1 is seen with a chance of %2, none is "
                         "called held with %3"),
    translate(
        "Phrases",
        "%1: a true change of %2 m/s is seen with a chance of %3, none is called held with %4"),
    translate("Phrases", "the later ladder lifted %1 times on one day would settle it"),
    translate("Phrases", "the mean of %1 later tests on separate days would settle it"),
    translate("Phrases", "the earlier test was done once: from now on %1 tests before and %1 after "
                         "would settle such a change"),
    translate("Phrases", "the change may lie between none and that: do one more later test"),
    translate("Phrases", "not even %1 tests on each side would settle it"),
    translate("Phrases", "estimated 1RM: no smallest change that matters is known, so nothing can "
                         "be called held: set one with the lift"),
    translate("Phrases", "%1: no smallest change that matters is known, so nothing can be called "
                         "held: set one with the lift"),
    translate("Phrases", "better"),
    translate("Phrases", "worse"),
    translate("Phrases", "held"),
    translate("Phrases", "unclear"),
    translate("Phrases", "no figure"),
    translate("Phrases", "better, by over %1"),
    translate("Phrases", "worse, by over %1"),
    translate("Phrases", "better, but by less than matters (%1)"),
    translate("Phrases", "worse, but by less than matters (%1)"),
    translate("Phrases", "better, by more than matters"),
    translate("Phrases", "worse, by more than matters"),
    translate("Phrases", "better, but by less than matters"),
    translate("Phrases", "worse, but by less than matters"),
    translate("Phrases", "%1 + %2"),
    translate("Phrases", "%1 %2 %3"),
    translate("Phrases", "%1 %2"),
    translate("Phrases", "%1 x %2"),
    translate("Phrases", "mass"),
    translate("Phrases", "bar"),
    translate("Phrases", "no plates"),
    translate("Phrases", "%1, no plates"),
    translate("Phrases", "%1; per side %2"),
    translate("Phrases", "the published equation (%1)"),
    translate("Phrases", "a step of %1 % of the 1RM"),
    translate("Phrases", "a step of %1 % of the heaviest load lifted"),
    translate("Phrases", "too few spread loads to show a bend"),
    translate("Phrases", "the squad's own relation (%1, %2)"),
    translate("Phrases", "%1 (%2 to %3)"),
    translate("Phrases", "borrowing from the athlete's %1 sessions: none of them is this one"),
    translate("Phrases", "borrowing from the athlete's %1 sessions, no estimated 1RM: %2"),
    translate(
        "Phrases",
        "borrowing from the athlete's %1 sessions: estimated 1RM %2; from this session alone %3"),
    translate("Phrases", "borrowing from the athlete's %1 sessions: estimated 1RM %2"),
    translate("Phrases", "best for the 1RM"),
    translate("Phrases", "best for the check loads"),
    translate("Phrases", "two extremes"),
    translate("Phrases", "as last time"),
    translate("Phrases", "even steps"),
    translate("Phrases", "best without a great step"),
    translate("Phrases", "%1 m/s (%2 to %3; two such tests show changes from %4 up)"),
    translate("Phrases", "%1, leaning faster: %2"),
    translate("Phrases", "%1, leaning slower: %2"),
    translate("Phrases", "%1, leaning faster at %2: %3"),
    translate("Phrases", "%1, leaning slower at %2: %3"),
    translate("Phrases", "%1, most at %2: %3"),
    translate("Phrases", "no clear change of the estimated max: %1 (%2 to %3), leaning up; two "
                         "such tests show changes from %4 up"),
    translate("Phrases", "no clear change of the estimated max: %1 (%2 to %3), leaning down; two "
                         "such tests show changes from %4 up"),
    translate("Phrases", "no clear change of the estimated max: %1 (%2 to %3); two such tests show "
                         "changes from %4 up"),
    translate("Phrases",
              "the later day's light loads say nothing of the max (%1 to %2 %; reach %3)"),
    translate("Phrases",
              "the earlier day's light loads say nothing of the max (%1 to %2 %; reach %3)"),
    translate("Phrases", "where a session has no line to judge by, the change at a load is told of "
                         "what was seen there on both days, from the typical error of a point"),
    translate("Phrases", "leaning is no reading: of nothing, up to one in four such tests leans "
                         "one way or the other"),
    translate("Phrases",
              "the estimate lies under the %1 that were lifted that day: the line reads low"),
    translate("Phrases", "by %1 of an estimate and a maximum lifted (%2 of them the athlete's own) "
                         "such estimates read %3 %: plans take %4 in place of %5"),
    translate("Phrases", "1 pair"),
    translate("Phrases", "%1 pairs"),
    translate("Phrases",
              "the days differ in reps: at each load the fastest of as many reps is compared"),
    translate("Phrases", "unclear, leaning up"),
    translate("Phrases", "unclear, leaning to better"),
    translate("Phrases", "unclear, leaning to worse"),
    translate("Phrases", "unclear, leaning down"),
    translate("Phrases", "%1 % %2"),
    translate("Phrases", "sets of one athlete resemble each other: the limits and the interval of "
                         "the bias count athletes, not sets"),
    translate("Phrases", "sets of one session resemble each other: the limits and the interval of "
                         "the bias count sessions, not sets, and hold for these athletes alone"),
    translate(
        "Phrases",
        "the same loads each time, or one load near 80 % of the max, end that doubt in a change"),
    translate("Phrases", "the same loads each time end that doubt in a change"),
    translate("Phrases", "%1: such tests show from %2 m/s up"),
    translate("Phrases", "%1: such tests show from %2 up"),
    translate("Phrases", "as if lines were straight"),
    translate("Phrases", "bend allowance in"),
    translate(
        "Phrases",
        "lifts bend a little: a straight line through these loads may read the max %1 to %2 off"),
    translate("Phrases", "%1 own full ladders narrow it"),
    translate("Phrases",
              "both ladders reach alike: what lines may bend cancels in the change of the max"),
    translate("Phrases", "lines bend a little: the change of the max may look up to %1 better or "
                         "%2 worse than it is"),
    translate("Phrases",
              "lines bend a little: the change of the max may look up to %1 better than it is"),
    translate("Phrases",
              "lines bend a little: the change of the max may look up to %1 worse than it is"),
    translate("Phrases", "no bend allowance is made: lines are taken as straight"),
    translate("Phrases",
              "bend allowance: any of the shipped curves, for none is published for this lift"),
    translate("Phrases", "bend allowance: %1 to %2 times the published curve of the lift (%3), by "
                         "%4 own full ladders"),
    translate("Phrases", "bend allowance: none up to all of the published curve of the lift (%1)"),
    translate("Phrases", "days tilt a line as well: its slope by %1 % (SD), about 60 % of the max"),
    translate("Phrases", "%1 was lifted that day: the max is no less"),
    translate("Phrases", "estimated 1RM by the log's own maxima %1; to plan with %2 to %3"),
    translate(
        "Phrases",
        "estimated 1RM %1; to plan with not bounded: lift loads further apart, and heavier ones"),
    translate("Phrases", "estimated 1RM %1, without an interval"),
    translate("Phrases", "estimated 1RM %1; to plan with %2 to %3"),
    translate("Phrases",
              "estimated 1RM %1; to plan with %2 to %3, by the line and the MVT's own SD "
              "alone: days and bend leave it unbounded"),
    translate("Phrases",
              "estimated 1RM %1; to plan with %2 to %3, by the line alone: days and bend "
              "leave it unbounded"),
    translate("Phrases", "estimated 1RM %1; to plan with %2 to %3 (as if straight %4 to %5)"),
    translate("Phrases", "at %1 changes from %2 m/s up, of which the bend takes %3"),
    translate("Phrases", "at %1 changes from %2 m/s up"),
    translate("Phrases", "of the estimated 1RM changes from %1 up, of which the bend takes %2 (the "
                         "same loads both times: none)"),
    translate("Phrases", "of the estimated 1RM changes from %1 up"),
    translate("Phrases", "of the estimated 1RM none: it cannot be bounded"),
    translate("Phrases", "this test and one by the first ladder can show: %1; smaller changes will "
                         "stay unclear, whatever the athlete did"),
    translate("Phrases", "%1; shows from %2"),
    translate("Phrases", "the lift moves the body, and the session has no body mass"),
    translate("Phrases", "the surface changed (%1, then %2): part of the change may be its doing"),
    translate("Phrases", "the device changed (%1, then %2): part of the change may be its doing"),
    translate("Phrases", "the footwear changed (%1, then %2): part of the change may be its doing"),
    translate("Phrases", "the place changed (%1, then %2): part of the change may be its doing"),
    translate("Phrases",
              "the technique changed (%1, then %2): part of the change may be its doing"),
    translate("Phrases", "place: %1, then %2"),
    translate("Phrases", "on another surface"),
    translate("Phrases", "by another device"),
    translate("Phrases", "in other footwear"),
    translate("Phrases", "in another place"),
    translate("Phrases", "by another technique"),
    translate("Phrases", "sessions that are not comparable are shown, and take no part in the "
                         "trend"),
    translate("Phrases", "not comparable"),
    translate("Phrases", "not comparable: %1"),
    translate("Phrases", "compared %1"),
    translate("Phrases", "%1 was not lifted on %2"),
    translate("Phrases",
              "measured by another device (%1, then %2), and no study says how the two differ"),
    translate("Phrases", "some sets measured by both devices at once, a study of the two, make "
                         "such days comparable"),
    translate("Phrases", "the estimate is not under the %1 that were not lifted that day: the line "
                         "reads high, and plans keep under that load"),
    translate("Phrases", "%1 was lifted that day and %2 was not: the max lies between"),
    translate("Phrases", "%1, %2"),
};

inline constexpr auto answers = [] {
    std::array<std::string_view, std::size(reasons) + std::size(pages)> all;
    std::ranges::copy(pages, std::ranges::copy(reasons, all.begin()).out);
    return all;
}();

} // namespace slopebook::phrases

namespace slopebook::answers {

using Phrase = Listed<phrases::answers>;

/// A phrase of the list above, filled.
template <class... Parts>
Words say(Phrase phrase, Parts&&... parts) {
    return filled(phrase.english(), std::forward<Parts>(parts)...);
}

} // namespace slopebook::answers

// SPDX-License-Identifier: GPL-3.0-or-later
// Why core/answers has no answer, and what it refuses.
#pragma once

#include "core/model/phrases/translate.h"

#include <array>

namespace slopebook::phrases {

inline constexpr std::array answers{
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
    translate("Phrases",
              "its attempts alone spread by %1 %2, a lower bound of its noise: the same test on two "
              "days of one week, the second marked as a repeat, gives the whole"),
    translate("Phrases", "%1: %2"),
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
};

} // namespace slopebook::phrases

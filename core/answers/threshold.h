// SPDX-License-Identifier: GPL-3.0-or-later
// Which minimal-velocity threshold an estimate uses.
#pragma once

#include "core/model/answer.h"
#include "core/model/lift.h"
#include "core/model/session.h"

#include <span>

namespace slopebook::answers {

/// The athlete's own (mean of the velocities at singles flagged as true maxima, moderated towards
/// the lift's own, with the SD of one more such single and its df), else the lift's own (the
/// coach's, or the published default). maxima are the LiftSession::maxima of all the athlete's
/// sessions of the lift. Refused with the reason for a ballistic lift or where none is known.
Answer<Mvt> chooseMvt(const Lift& lift, std::span<const Point> maxima);
/// The same by the maxima of these sessions, all that the athlete has of the lift.
Answer<Mvt> mvtOf(const Lift& lift, std::span<const LiftSession> sessions);

} // namespace slopebook::answers

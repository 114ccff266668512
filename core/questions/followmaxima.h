// SPDX-License-Identifier: GPL-3.0-or-later
// The estimated 1RM of the sessions of a followed load.
#pragma once

#include "core/questions/questions.h"

namespace slopebook::questions {

struct LiftContext;

/// Each session's 1RM as it is planned with: by the noise of its own device and the log's
/// calibration of estimates (within() of liftcontext.h), whatever the changes are read by. So one
/// session has one interval to plan with, wherever it stands.
void takeMaxima(answers::Follow& follow, const LiftContext& context, const Background& about,
                const AskSettings& settings);

} // namespace slopebook::questions

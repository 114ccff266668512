// SPDX-License-Identifier: GPL-3.0-or-later
// The estimated max of a session in words: what was lifted that day, and what loads are planned
// with.
#pragma once

#include "core/answers/profile.h"

namespace slopebook::answers {

/// The bracket: "80 kg was lifted that day: its max is no less", "80 kg was lifted that day and 85
/// kg was not: that day's max lies between".
Words liftedWords(const Profile& profile);
/// The estimate that loads are planned with and its interval, beside that as if the line were
/// straight; empty without an estimate.
Words planWithWords(const Profile& profile);

} // namespace slopebook::answers

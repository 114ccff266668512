// SPDX-License-Identifier: GPL-3.0-or-later
// What the sentence of a comparison says of the estimated max.
#pragma once

#include "core/answers/comparisonsentence.h"

namespace slopebook::answers {

/// "estimated max up: +4.2 kg (+0.8 to +7.6)", with how far it lies beyond any load lifted; why
/// there is none.
Words maxClause(const SentenceParts& parts);

} // namespace slopebook::answers

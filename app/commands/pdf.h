// SPDX-License-Identifier: GPL-3.0-or-later
// The comparison as one page of PDF, painted without a display.
#pragma once

#include "core/answers/comparison.h"
#include "core/log/target.h"
#include "core/questions/questions.h"

namespace slopebook::app {

/// Throws LogError where the file cannot be written.
void writePdf(const log::Log& log, const ui::Background& about,
              const answers::Comparison& comparison, const log::Destination& to);

} // namespace slopebook::app

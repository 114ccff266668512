// SPDX-License-Identifier: GPL-3.0-or-later
// What the side of a comparison is called, to be read.
#pragma once

#include "core/model/words.h"

#include <string>

namespace slopebook {

/// A day ("2026-03-14", "2026-03-14#2") and a stretch of days ("2026-03-01..2026-03-14") as the
/// language writes days; the name of a block as it is.
Words periodWords(const std::string& name);

} // namespace slopebook

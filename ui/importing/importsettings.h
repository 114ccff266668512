// SPDX-License-Identifier: GPL-3.0-or-later
// What an import is given beside its file: published thresholds, built-in tests.
#pragma once

#include "core/exchange/tidyimport.h"

namespace slopebook::ui {

exchange::ImportSettings importSettings(bool dryRun, const Progress& progress);

} // namespace slopebook::ui

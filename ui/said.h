// SPDX-License-Identifier: GPL-3.0-or-later
// What core says (core/model/words.h) in the window's language.
#pragma once

#include "core/model/errors.h"

#include <QString>

#include <exception>

namespace slopebook::ui {

/// The words in the window's language: phrases looked up, numbers and days as it writes them.
QString said(const Words& words);
/// What went wrong: core's own errors in the window's language, any other as it tells it.
QString said(const std::exception& error);

} // namespace slopebook::ui

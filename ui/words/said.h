// SPDX-License-Identifier: GPL-3.0-or-later
// What core says (core/model/words.h) in the window's language.
#pragma once

#include "core/model/errors.h"
#include "ui/words/units.h"

#include <QString>
#include <QStringList>

#include <exception>
#include <vector>

namespace slopebook::ui {

/// The words in the window's language: phrases looked up, numbers and days as it writes them,
/// masses in the coach's unit.
QString said(const Words& words, LoadUnit unit);
/// The same where no unit is at hand, as in what went wrong with a file: a mass in both.
QString said(const Words& words);
/// Each of them.
QStringList said(const std::vector<Words>& all, LoadUnit unit);
/// What went wrong: core's own errors in the window's language (a mass in both units), any other as
/// it tells it.
QString said(const std::exception& error);

} // namespace slopebook::ui

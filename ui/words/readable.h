// SPDX-License-Identifier: GPL-3.0-or-later
// What the log keeps in one form for all, as a person reads it.
#pragma once

#include "core/model/date.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <string>

namespace slopebook::ui {

/// A test's name: in the window's language where the program knows the test.
QString testText(const std::string& name);
/// A side of a comparison: a block's name, a day, a stretch of days.
QString periodText(const std::string& name);
/// What lays text out breaks no unit at its stroke, nor a figure from its sign; of what leads a
/// page, nor a speed from its unit. The last one takes back what was put in for that.
QString withWholeUnits(QString text);
QString withWholeFigures(QString text);
QString asWritten(QString laidOut);
/// Of a line that tells what may be typed: what a sign stands for stays beside it ("# note"), and
/// so do the words of each of them (parted by two spaces), where no comma lists several.
QString withWholeCodes(const QString& text);
/// What was named by hand, in the text of a label, button or menu: an "&" of it marks no key.
QString asLabel(QString text);
/// Names one after another, as listed() of core/model/words.h joins them: where one of them has a
/// comma itself by dots, else by commas.
QString namesText(const QStringList& names);
/// What is typed, as an example: "60 0.92" with the language's decimal mark.
QString example(QString typed);
/// A day as dateText writes it; nothing of what is none.
std::optional<Date> dateFromText(const QString& written);

} // namespace slopebook::ui

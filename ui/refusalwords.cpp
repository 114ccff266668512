// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/wording.h"

#include <QCoreApplication>

#include <array>

namespace slopebook::ui {

namespace {

// core holds what it found and expected; what carries no figures or names is shown to lupdate here.
[[maybe_unused]] constexpr std::array fixedRefusals{
    QT_TRANSLATE_NOOP("Refusals", "a date written year-month-day, such as 2026-03-14"),
    QT_TRANSLATE_NOOP("Refusals", "a date written day, month, year, such as 14.3.2026"),
    QT_TRANSLATE_NOOP("Refusals", "a date written month, day, year, such as 3/14/2026"),
    QT_TRANSLATE_NOOP("Refusals", "a date written year, month, day, such as 2026-03-14"),
    QT_TRANSLATE_NOOP("Refusals",
                      "a speed in m/s above 0 and under 10, with a decimal point, such as 0.92"),
    QT_TRANSLATE_NOOP("Refusals",
                      "a load in kg from 0 to 2000, with a decimal point, such as 72.5"),
    QT_TRANSLATE_NOOP("Refusals", "a body mass in kg, with a decimal point, such as 81.4"),
    QT_TRANSLATE_NOOP("Refusals", "a weight in kg with a decimal point, such as 72.5"),
    QT_TRANSLATE_NOOP("Refusals", "yes or no, 1 or 0, or nothing"),
    QT_TRANSLATE_NOOP("Refusals", "a number of rows from 0 on"),
    QT_TRANSLATE_NOOP("Refusals",
                      "a header row such as date,athlete,lift,set,load_kg,rep,velocity"),
    QT_TRANSLATE_NOOP("Refusals", "an empty file"),
    QT_TRANSLATE_NOOP("Refusals", "a number"),
    QT_TRANSLATE_NOOP("Refusals", "no column of velocities"),
    QT_TRANSLATE_NOOP("Refusals", "one, or several side by side"),
    QT_TRANSLATE_NOOP("Refusals", "UTF-16 text that is cut in half"),
    QT_TRANSLATE_NOOP("Refusals", "whole text (save the file as CSV UTF-8)"),
    QT_TRANSLATE_NOOP("Refusals", "at most 500"),
    QT_TRANSLATE_NOOP("Refusals", "no name"),
    QT_TRANSLATE_NOOP("Refusals", "a name for the set of equipment"),
    QT_TRANSLATE_NOOP("Refusals", "nothing to lift"),
    QT_TRANSLATE_NOOP("Refusals", "a bar or another mass"),
    QT_TRANSLATE_NOOP("Refusals", "one row a plate"),
    QT_TRANSLATE_NOOP("Refusals", "a blank name"),
    QT_TRANSLATE_NOOP("Refusals", "the name of the test"),
    QT_TRANSLATE_NOOP("Refusals", "no unit"),
    QT_TRANSLATE_NOOP("Refusals", "1 to 50 attempts"),
    QT_TRANSLATE_NOOP("Refusals", "0 to 4 decimals"),
    QT_TRANSLATE_NOOP("Refusals", "a typical error above 0"),
    QT_TRANSLATE_NOOP("Refusals", "no source"),
    QT_TRANSLATE_NOOP("Refusals", "where the typical error comes from"),
    QT_TRANSLATE_NOOP("Refusals", "a smallest change that matters above 0"),
    QT_TRANSLATE_NOOP("Refusals",
                      "a value above 0; a test that was not possible is written down as such"),
    QT_TRANSLATE_NOOP("Refusals", "a contact time"),
    QT_TRANSLATE_NOOP("Refusals", "no contact time"),
    QT_TRANSLATE_NOOP("Refusals", "the contact time in s after the first number"),
    QT_TRANSLATE_NOOP("Refusals", "a contact time above 0 and below 10 s"),
    QT_TRANSLATE_NOOP("Refusals", "no reason"),
    QT_TRANSLATE_NOOP("Refusals", "why it was not possible"),
    QT_TRANSLATE_NOOP("Refusals", "a session of the same athlete"),
    QT_TRANSLATE_NOOP("Refusals", "a repeat of itself"),
    QT_TRANSLATE_NOOP("Refusals", "another session of the same athlete"),
    QT_TRANSLATE_NOOP("Refusals", "a name that no other set of equipment has"),
    QT_TRANSLATE_NOOP("Refusals", "a date that does not exist"),
    QT_TRANSLATE_NOOP("Refusals", "an SD of the MVT from 0 to below 10 m/s"),
    QT_TRANSLATE_NOOP("Refusals", "a load from 0 to 2000 kg"),
    QT_TRANSLATE_NOOP("Refusals", "a ceiling above 0 and up to 2000 kg, or none"),
    QT_TRANSLATE_NOOP("Refusals", "a smallest change that matters above 0 and up to 2000 kg"),
    QT_TRANSLATE_NOOP("Refusals", "a body mass above 0 and up to 2000 kg, or none"),
};

} // namespace

QString refusalWords(const std::string& english) {
    return english.empty() ? QString() : QCoreApplication::translate("Refusals", english.c_str());
}

} // namespace slopebook::ui

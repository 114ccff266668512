// SPDX-License-Identifier: GPL-3.0-or-later
// What is said of a squad's changes, of two devices on the same sets, and of repeat tests.
#pragma once

#include "core/answers/agreement.h"
#include "core/answers/squad.h"

#include <string>

namespace slopebook::answers {

/// "3 better, 0 worse, 1 held, 2 unclear, 0 without a figure."
Words countWords(const SquadPart& part);
/// How many were tested under other conditions on the later side, "3 of 12 were tested at another
/// place than before: part of their change may be its doing."; empty where nobody was.
Words squadUnderWords(const SquadPart& part);
/// Which sessions stand for a period, and how rows are read and ordered.
Words squadMethod();

/// What the first device reads against the second, and by how much sets differ.
Words agreementWords(const AgreementStudy& study, const std::string& first,
                     const std::string& second);
/// That two devices were never on the same sets, and how that is mended.
Words noAgreementWords();

/// The day-to-day noise in use and where it comes from, with so many decimals: "0.030 m/s day to
/// day (published, not yours)".
Words inUseWords(const DayNoise& noise, int decimals);
/// The same without where it comes from.
Words inUseFigure(const DayNoise& noise, int decimals);
/// What that comes to between two single tests; nothing where no noise is known.
Words clearBetweenTests(const DayNoise& noise, double level = 0.95);
/// What that comes to: from what size on a change between two single tests is clear, and one
/// between three and three, by the days alone (method: tests/README.md, 'Seasons'); nothing where
/// no noise is known.
Words ruleOfThumb(const DayNoise& noise, double level = 0.95);
/// Why a reading says another figure than the rule.
Words ruleOfThumbLimits();
/// That repeat tests which all differ alike are no error of zero.
Words noSpreadWords();
/// What a repeat test is, and from how many on whose noise is used.
Words repeatTestMethod();

} // namespace slopebook::answers

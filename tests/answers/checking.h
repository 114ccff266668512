// SPDX-License-Identifier: GPL-3.0-or-later
// Comparisons of figures that say what stood where when they fail.
#pragma once

#include <QtTest>

#include <cmath>

/// found agrees with expected within an absolute tolerance.
#define CHECK_NEAR(found, expected, tolerance)                                                     \
    do {                                                                                           \
        const double foundFigure = (found);                                                        \
        const double expectedFigure = (expected);                                                  \
        QVERIFY2(std::abs(foundFigure - expectedFigure) <= (tolerance),                            \
                 qPrintable(QStringLiteral(#found " is %1, not %2")                                \
                                .arg(foundFigure, 0, 'g', 17)                                      \
                                .arg(expectedFigure, 0, 'g', 17)));                                \
    } while (false)

/// The notes hold one of that kind.
template <class Notes, class Kind>
bool hasNote(const Notes& notes, Kind kind) {
    for (const auto& note : notes)
        if (note.kind == kind)
            return true;
    return false;
}

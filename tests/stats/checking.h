// SPDX-License-Identifier: GPL-3.0-or-later
// Comparisons for the figures of core/stats that say what was found when they fail.
#pragma once

#include "tests/support/rscript.h"

#include <QByteArray>
#include <QtTest>

#include <cmath>
#include <span>

namespace slopebook::tests {

inline QByteArray unlike(double found, double expected) {
    return "found " + QByteArray::number(found, 'g', 17) + ", expected " +
           QByteArray::number(expected, 'g', 17) + ", digits agreed " +
           QByteArray::number(digitsAgreed(found, expected), 'f', 2);
}

/// Same infinity, or so many digits in common.
inline bool alike(double found, double expected, double digits) {
    return found == expected || digitsAgreed(found, expected) >= digits;
}

/// One row "id x y" a point, as the R scripts read them.
inline void appendPoints(QByteArray& input, const QByteArray& id, std::span<const double> x,
                         std::span<const double> y) {
    for (std::size_t i = 0; i < x.size(); ++i)
        input += id + ' ' + QByteArray::number(x[i], 'g', 17) + ' ' +
                 QByteArray::number(y[i], 'g', 17) + '\n';
}

} // namespace slopebook::tests

/// At least so many significant digits in common.
#define CHECK_DIGITS(found, expected, digits)                                                      \
    QVERIFY2(                                                                                      \
        slopebook::tests::alike((found), (expected), (digits)),                                    \
        (QByteArray(#found) + ": " + slopebook::tests::unlike((found), (expected))).constData())
/// Within an absolute distance: for values that the source prints rounded.
#define CHECK_WITHIN(found, expected, distance)                                                    \
    QVERIFY2(                                                                                      \
        std::abs((found) - (expected)) <= (distance),                                              \
        (QByteArray(#found) + ": " + slopebook::tests::unlike((found), (expected))).constData())

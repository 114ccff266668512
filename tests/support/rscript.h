// SPDX-License-Identifier: GPL-3.0-or-later
// Runs an R script of tests/reference and reads back the figures it prints, one "name value" a
// line.
#pragma once

#include <QMap>
#include <QString>
#include <QStringList>

namespace slopebook::tests {

/// Whether Rscript is on this machine. Where it is not, a test skips with a loud line (QSKIP).
bool haveR();

/// Runs "Rscript --vanilla tests/reference/script arguments..." with input on its standard input.
/// Throws std::runtime_error with R's message when it fails. Names repeat? the last one stands. NA
/// reads as NaN.
QMap<QString, double> runR(const QString& script, const QStringList& arguments = {},
                           const QByteArray& input = {});

/// -log10 of the relative error (absolute where expected is 0), at most 17: the digits that agree.
double digitsAgreed(double found, double expected);

} // namespace slopebook::tests

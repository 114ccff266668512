// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/rscript.h"

#include <QProcess>
#include <QStandardPaths>

#include <cmath>
#include <limits>
#include <stdexcept>

namespace slopebook::tests {

bool haveR() {
    return !QStandardPaths::findExecutable(QStringLiteral("Rscript")).isEmpty();
}

QMap<QString, double> runR(const QString& script, const QStringList& arguments,
                           const QByteArray& input) {
    QProcess r;
    QStringList all{QStringLiteral("--vanilla"), QStringLiteral(SLOPEBOOK_TEST_DATA "/") + script};
    all += arguments;
    r.start(QStringLiteral("Rscript"), all);
    r.write(input);
    r.closeWriteChannel();
    if (!r.waitForFinished(600'000) || r.exitStatus() != QProcess::NormalExit || r.exitCode() != 0)
        throw std::runtime_error("R failed: " + r.readAllStandardError().toStdString());
    QMap<QString, double> figures;
    for (const QByteArray& line : r.readAllStandardOutput().split('\n')) {
        const qsizetype space = line.lastIndexOf(' ');
        if (space <= 0)
            continue;
        const QByteArray text = line.mid(space + 1);
        double value = std::numeric_limits<double>::quiet_NaN();
        if (text == "Inf" || text == "-Inf")
            value = text[0] == '-' ? -std::numeric_limits<double>::infinity()
                                   : std::numeric_limits<double>::infinity();
        else if (text != "NA" && text != "NaN")
            value = text.toDouble();
        figures.insert(QString::fromUtf8(line.left(space)), value);
    }
    return figures;
}

double digitsAgreed(double found, double expected) {
    const double error =
        expected == 0 ? std::abs(found) : std::abs(found - expected) / std::abs(expected);
    if (!(error > 0))
        return std::isnan(error) ? 0 : 17;
    return std::min(17.0, -std::log10(error));
}

} // namespace slopebook::tests

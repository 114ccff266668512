// SPDX-License-Identifier: GPL-3.0-or-later
// What another program reads in a PDF, and text as it reads wherever lines were broken.
#pragma once

#include <QProcess>
#include <QString>

namespace slopebook::test {

inline QString run(const QString& program, const QStringList& arguments) {
    QProcess process;
    process.start(program, arguments);
    process.waitForFinished();
    return QString::fromUtf8(process.readAllStandardOutput());
}

/// With plain blanks, one at a time.
inline QString flat(QString text) {
    return text.replace(QChar(QChar::Nbsp), QLatin1Char(' ')).simplified();
}

/// The same without any, and without the hyphens that pdftotext takes away at a line's end.
inline QString squeezed(QString text) {
    return flat(std::move(text)).remove(QLatin1Char(' ')).remove(QLatin1Char('-'));
}

} // namespace slopebook::test

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/readable.h"

#include "core/answers/testkinds.h"
#include "core/model/periodwords.h"
#include "ui/words/format.h"
#include "ui/words/said.h"

#include <QCoreApplication>
#include <QDate>
#include <QLocale>
#include <QRegularExpression>

#include <utility>
#include <vector>

namespace slopebook::ui {

QString testText(const std::string& name) {
    return said(answers::testName(name));
}

QString periodText(const std::string& name) {
    return said(periodWords(name));
}

QString asLabel(QString text) {
    return text.replace(u'&', QLatin1String("&&"));
}

QString namesText(const QStringList& names) {
    std::vector<Words> parts;
    for (const QString& name : names)
        parts.push_back(asIs(name.toStdString()));
    return said(listed(std::move(parts)));
}

QString example(QString typed) {
    return typed.replace(u'.', QLocale().decimalPoint());
}

std::optional<Date> dateFromText(const QString& written) {
    const QDate day =
        QLocale().toDate(written.simplified(), QCoreApplication::translate("Units", "d MMM yyyy"));
    return day.isValid() ? std::optional(modelDate(day)) : std::nullopt;
}

QString withWholeUnits(QString text) {
    text.replace(QLatin1String("m/s"), QStringLiteral("m/\u2060s"));
    text.replace(QLatin1String(" %"), QStringLiteral("\u00a0%"));
    return text.replace(QStringLiteral("\u00b1 "), QStringLiteral("\u00b1\u00a0"));
}

QString withWholeFigures(QString text) {
    return withWholeUnits(std::move(text))
        .replace(QStringLiteral(" m/\u2060s"), QStringLiteral("\u00a0m/\u2060s"));
}

QString withWholeCodes(const QString& text) {
    static const QRegularExpression sign(QStringLiteral("(?<![^ ])([^\\w\\s]+|\\w:) (?=[^ ])"));
    const QString apart = QStringLiteral("  ");
    QStringList pieces = text.split(apart);
    for (QString& piece : pieces)
        if (pieces.size() > 1 && !piece.contains(u','))
            piece.replace(u' ', QChar::Nbsp);
        else
            piece.replace(sign, QStringLiteral("\\1\u00a0"));
    return pieces.join(apart);
}

QString asWritten(QString laidOut) {
    laidOut.replace(QStringLiteral("\u00a0m/\u2060s"), QStringLiteral(" m/s"));
    laidOut.remove(QChar(0x2060));
    laidOut.replace(QStringLiteral("\u00a0%"), QStringLiteral(" %"));
    return laidOut.replace(QStringLiteral("\u00b1\u00a0"), QStringLiteral("\u00b1 "));
}

} // namespace slopebook::ui

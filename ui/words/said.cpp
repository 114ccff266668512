// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/said.h"

#include <QCoreApplication>
#include <QLocale>

#include <optional>

namespace slopebook::ui {

namespace {

QString figureText(const std::string& digits) {
    return QString::fromStdString(digits).replace(u'.', QLocale().decimalPoint());
}

QString toldIn(const Words& words, std::optional<LoadUnit> unit);

/// Each place once, so that what stands in one is never taken for a place itself.
QString filled(const QString& pattern, const std::vector<Words>& parts,
               std::optional<LoadUnit> unit) {
    QString text;
    for (qsizetype i = 0; i < pattern.size(); ++i) {
        const int place =
            pattern[i] == u'%' && i + 1 < pattern.size() ? pattern[i + 1].digitValue() : -1;
        if (place < 1 || place > static_cast<int>(parts.size())) {
            text += pattern[i];
            continue;
        }
        text += toldIn(parts[static_cast<std::size_t>(place) - 1], unit);
        ++i;
    }
    return text;
}

QString mass(double kilograms, std::optional<LoadUnit> unit) {
    if (unit)
        return loadWithUnit(kilograms, *unit);
    return loadWithUnit(kilograms, LoadUnit::Kilograms) + QStringLiteral(" (") +
           loadWithUnit(kilograms, LoadUnit::Pounds) + u')';
}

QString toldIn(const Words& words, std::optional<LoadUnit> unit) {
    switch (words.kind) {
    case Words::Kind::Said:
        return filled(QCoreApplication::translate("Phrases", words.text.c_str()), words.parts,
                      unit);
    case Words::Kind::Figure:
        return figureText(words.text);
    case Words::Kind::Day:
        if (const auto day = parseIsoDate(words.text))
            return dateText(*day);
        break;
    case Words::Kind::Mass:
        return mass(kilograms(words), unit);
    case Words::Kind::AsIs:
        break;
    }
    return QString::fromStdString(words.text);
}

} // namespace

QString said(const Words& words, LoadUnit unit) {
    return toldIn(words, unit);
}

QString said(const Words& words) {
    return toldIn(words, std::nullopt);
}

QString said(const std::exception& error) {
    if (const auto* ours = dynamic_cast<const Error*>(&error))
        return said(ours->words());
    return QString::fromUtf8(error.what());
}

} // namespace slopebook::ui

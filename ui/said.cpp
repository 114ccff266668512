// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/said.h"

#include "ui/units.h"

#include <QCoreApplication>
#include <QLocale>

namespace slopebook::ui {

namespace {

QString figureText(const std::string& digits) {
    return QString::fromStdString(digits).replace(u'.', QLocale().decimalPoint());
}

/// Each place once, so that what stands in one is never taken for a place itself.
QString filled(const QString& pattern, const std::vector<Words>& parts) {
    QString text;
    for (qsizetype i = 0; i < pattern.size(); ++i) {
        const int place =
            pattern[i] == u'%' && i + 1 < pattern.size() ? pattern[i + 1].digitValue() : -1;
        if (place < 1 || place > static_cast<int>(parts.size())) {
            text += pattern[i];
            continue;
        }
        text += said(parts[static_cast<std::size_t>(place) - 1]);
        ++i;
    }
    return text;
}

} // namespace

QString said(const Words& words) {
    switch (words.kind) {
    case Words::Kind::Said:
        return filled(QCoreApplication::translate("Phrases", words.text.c_str()), words.parts);
    case Words::Kind::Figure:
        return figureText(words.text);
    case Words::Kind::Day:
        if (const auto day = parseIsoDate(words.text))
            return dateText(*day);
        break;
    case Words::Kind::AsIs:
        break;
    }
    return QString::fromStdString(words.text);
}

QString said(const std::exception& error) {
    if (const auto* ours = dynamic_cast<const Error*>(&error))
        return said(ours->words());
    return QString::fromUtf8(error.what());
}

} // namespace slopebook::ui

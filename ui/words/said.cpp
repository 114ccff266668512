// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/said.h"

#include <QCoreApplication>
#include <QLocale>

#include <cmath>
#include <optional>

namespace slopebook::ui {

namespace {

using Unit = std::optional<LoadUnit>; // none: a mass is told in both

QString toldIn(const Words& words, Unit unit);

/// With the language's decimal point and a true minus; "–" for no number.
QString figureText(const std::string& digits) {
    if (digits == "-")
        return QStringLiteral("\u2013");
    QString text = QString::fromStdString(digits).replace(u'.', QLocale().decimalPoint());
    if (text.startsWith(u'-'))
        text[0] = QChar(0x2212);
    return text;
}

/// Each place once, so that what stands in one is never taken for a place itself.
template <class Part>
QString filledWith(const QString& pattern, std::size_t places, const Part& part) {
    QString text;
    for (qsizetype i = 0; i < pattern.size(); ++i) {
        const int place =
            pattern[i] == u'%' && i + 1 < pattern.size() ? pattern[i + 1].digitValue() : -1;
        if (place < 1 || place > static_cast<int>(places)) {
            text += pattern[i];
            continue;
        }
        text += part(static_cast<std::size_t>(place) - 1);
        ++i;
    }
    return text;
}

QString translated(const std::string& phrase) {
    return QCoreApplication::translate("Phrases", phrase.c_str());
}

QString massNumber(double kilograms, const MassForm& form, LoadUnit unit) {
    if (form.decimals < 0)
        return loadNumber(kilograms, unit);
    const double value = inUnit(kilograms, unit);
    if (form.sign)
        return signedNumber(value, form.decimals);
    if (form.padded)
        return number(value, form.decimals);
    const double power = std::pow(10.0, form.decimals);
    // Without needless zeros; the number is in its unit already.
    return loadNumber(std::round(value * power) / power, LoadUnit::Kilograms);
}

QString massText(double kilograms, const MassForm& form, LoadUnit unit) {
    return massNumber(kilograms, form, unit) + QChar(QChar::Nbsp) + unitName(unit);
}

QString massIn(const Words& mass, Unit unit) {
    const double kg = kilograms(mass);
    if (!unit)
        return massText(kg, mass.form, LoadUnit::Kilograms) + QStringLiteral(" (") +
               massText(kg, mass.form, LoadUnit::Pounds) + u')';
    return mass.form.bare ? massNumber(kg, mass.form, *unit) : massText(kg, mass.form, *unit);
}

QString listIn(const Words& list, Unit unit) {
    const QString joint = translated(list.text);
    QString text;
    for (std::size_t i = 0; i < list.parts.size(); ++i) {
        const QString next = toldIn(list.parts[i], unit);
        text = i == 0
                   ? next
                   : filledWith(joint, 2, [&](std::size_t place) { return place ? next : text; });
    }
    return text;
}

QString sentenceOf(QString text) {
    if (!text.isEmpty())
        text[0] = text[0].toUpper();
    if (!text.isEmpty() && !text.endsWith(u'.') && !text.endsWith(u'?'))
        text += u'.';
    return text;
}

QString toldIn(const Words& words, Unit unit) {
    switch (words.kind) {
    case Words::Kind::Said:
        return filledWith(translated(words.text), words.parts.size(),
                          [&](std::size_t place) { return toldIn(words.parts[place], unit); });
    case Words::Kind::Figure:
        return figureText(words.text);
    case Words::Kind::Day:
        if (const auto day = parseIsoDate(words.text))
            return dateText(*day);
        break;
    case Words::Kind::Mass:
        return massIn(words, unit);
    case Words::Kind::List:
        return listIn(words, unit);
    case Words::Kind::Sentence:
        return sentenceOf(toldIn(words.parts.front(), unit));
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

QStringList said(const std::vector<Words>& all, LoadUnit unit) {
    QStringList texts;
    for (const Words& one : all)
        texts << toldIn(one, unit);
    return texts;
}

QString said(const std::exception& error) {
    if (const auto* ours = dynamic_cast<const Error*>(&error))
        return said(ours->words());
    return QString::fromUtf8(error.what());
}

} // namespace slopebook::ui

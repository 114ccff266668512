// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/units.h"

#include "core/model/figures.h"

#include <QCoreApplication>
#include <QDate>
#include <QLocale>

#include <charconv>
#include <cmath>
#include <string>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

namespace {

const QChar trueMinus(0x2212);

QLocale showing() {
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    return locale;
}

double rounded(double value, int decimals) {
    if (!std::isfinite(value))
        return value;
    const std::string written = slopebook::fixed(value, decimals); // one rounding for all texts
    double r = 0;
    std::from_chars(written.data(), written.data() + written.size(), r);
    return r;
}

} // namespace

QString unitName(LoadUnit unit) {
    return unit == LoadUnit::Kilograms ? u"kg"_s : u"lb"_s;
}

double inUnit(double kilograms, LoadUnit unit) {
    return unit == LoadUnit::Kilograms ? kilograms : kilograms * 1000.0 / gramsPerPound;
}

stats::Interval inUnit(const stats::Interval& kilograms, LoadUnit unit) {
    return {inUnit(kilograms.low, unit), inUnit(kilograms.high, unit)};
}

QString number(double value, int decimals) {
    if (!std::isfinite(value))
        return u"–"_s;
    const double r = rounded(value, decimals);
    const QString digits = showing().toString(std::abs(r), 'f', decimals);
    return r < 0 ? trueMinus + digits : digits;
}

QString signedNumber(double value, int decimals) {
    const QString text = number(value, decimals);
    return std::isfinite(value) && rounded(value, decimals) > 0 ? u"+"_s + text : text;
}

QString loadNumber(double kilograms, LoadUnit unit) {
    const double value = inUnit(kilograms, unit);
    if (!std::isfinite(value))
        return u"–"_s;
    const int most = unit == LoadUnit::Kilograms ? 3 : 1;
    int decimals = 0;
    while (decimals < most &&
           std::abs(value - rounded(value, decimals)) > 0.5 * std::pow(10.0, -most - 1))
        ++decimals;
    return number(value, decimals);
}

QString loadWithUnit(double kilograms, LoadUnit unit) {
    return loadNumber(kilograms, unit) + QChar(QChar::Nbsp) + unitName(unit);
}

QString rangeText(const stats::Interval& interval, int decimals) {
    //: an interval: low to high
    return QCoreApplication::translate("Units", "%1 to %2")
        .arg(number(interval.low, decimals), number(interval.high, decimals));
}

QString signedRangeText(const stats::Interval& interval, int decimals) {
    return QCoreApplication::translate("Units", "%1 to %2")
        .arg(signedNumber(interval.low, decimals), signedNumber(interval.high, decimals));
}

QString dateText(Date date) {
    const QDate day(static_cast<int>(date.year()),
                    static_cast<int>(static_cast<unsigned>(date.month())),
                    static_cast<int>(static_cast<unsigned>(date.day())));
    //: how a date is written, in QLocale's letters; German: d. MMM yyyy
    return QLocale().toString(day, QCoreApplication::translate("Units", "d MMM yyyy"));
}

QString levelText(double level) {
    const double percent = 100 * level;
    const int decimals = std::abs(percent - std::round(percent)) < 1e-9 ? 0 : 1;
    return number(percent, decimals) + QChar(QChar::Nbsp) + u'%';
}

} // namespace slopebook::ui

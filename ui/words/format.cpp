// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/format.h"

#include "core/answers/method.h"
#include "ui/words/said.h"

#include <QCoreApplication>
#include <QFile>
#include <QStringList>

#include <cmath>

namespace slopebook::ui {

QString text(const std::string& utf8) {
    return QString::fromStdString(utf8);
}

std::string utf8(const QString& text) {
    return text.toStdString();
}

QString massText(Mass mass, LoadUnit unit) {
    if (unit == LoadUnit::Kilograms)
        return loadNumber(kilograms(mass), unit);
    // A mass is kept in grams: within half a gram of a rounder figure is that figure.
    const double shown = pounds(mass);
    int decimals = 0;
    while (decimals < 2 && massFromPounds(std::round(shown * std::pow(10, decimals)) /
                                          std::pow(10, decimals)) != mass)
        ++decimals;
    return number(shown, decimals);
}

QString massWithUnit(Mass mass, LoadUnit unit) {
    return massText(mass, unit) + QChar(QChar::Nbsp) + unitName(unit);
}

MassUnit massUnit(LoadUnit unit) {
    return unit == LoadUnit::Pounds ? MassUnit::Pound : MassUnit::Kilogram;
}

QString speedText(double velocity) {
    const bool thirdDecimal = std::abs(velocity * 100 - std::round(velocity * 100)) > 0.05;
    return number(velocity, thirdDecimal ? 3 : 2);
}

QString repsText(const Set& set) {
    QStringList reps;
    for (const Rep& rep : set.reps)
        reps << speedText(rep.velocity) + (rep.excluded.empty() ? QString() : QStringLiteral("x"));
    return reps.join(QLatin1Char(' '));
}

QDate qtDate(Date date) {
    return {static_cast<int>(date.year()), static_cast<int>(static_cast<unsigned>(date.month())),
            static_cast<int>(static_cast<unsigned>(date.day()))};
}

Date modelDate(const QDate& date) {
    return Date{std::chrono::year{date.year()},
                std::chrono::month{static_cast<unsigned>(date.month())},
                std::chrono::day{static_cast<unsigned>(date.day())}};
}

QString sessionText(Date date, int ordinal) {
    return said(answers::sessionWords(date, ordinal));
}
QString sessionText(const LiftSession& session) {
    return sessionText(session.date, session.ordinal);
}

QString kindText(VelocityKind kind) {
    switch (kind) {
    case VelocityKind::Mean:
        return QCoreApplication::translate("format", "mean velocity");
    case VelocityKind::Propulsive:
        return QCoreApplication::translate("format", "mean propulsive velocity");
    case VelocityKind::Peak:
        return QCoreApplication::translate("format", "peak velocity");
    }
    return {};
}

std::filesystem::path pathOf(const QString& file) {
    return QFile::encodeName(file).toStdString();
}

QString nameOf(const std::filesystem::path& file) {
    return QFile::decodeName(QByteArray::fromStdString(file.string()));
}

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/battery/attemptwords.h"

#include "core/answers/batterycomparison.h"
#include "ui/words/format.h"
#include "ui/words/readable.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QCoreApplication>

namespace slopebook::ui {

namespace {

struct Attempts {
    Q_DECLARE_TR_FUNCTIONS(Attempts)
};

/// A number as it was typed, with the desktop's decimal mark.
QString plain(double value) {
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    return locale.toString(value, 'g', 10);
}

/// "1.92 m".
QString testValueText(const TestKind& kind, double value) {
    return number(value, kind.decimals) + QLatin1Char(' ') + text(kind.unit);
}

} // namespace

QString sideText(BodySide side) {
    if (side == BodySide::Both)
        return {};
    return side == BodySide::Left ? Attempts::tr("left") : Attempts::tr("right");
}

QString attemptText(const Attempt& attempt) {
    QString typed = plain(attempt.value);
    if (attempt.contact)
        typed += QLatin1Char('/') + plain(*attempt.contact);
    if (!attempt.excluded.empty())
        return typed + QStringLiteral("x # ") + text(attempt.excluded);
    return attempt.note.empty() ? typed : typed + QStringLiteral(" # ") + text(attempt.note);
}

TextTable::Row attemptRow(const TestKind& kind, const Attempt& attempt,
                          const std::optional<Mass>& bodyMass, int number) {
    QString read = plain(attempt.value);
    if (attempt.contact)
        read += QStringLiteral(" / ") + plain(*attempt.contact);
    const auto value = answers::attemptValue(kind, attempt, bodyMass);
    QString remark = text(attempt.note);
    TextTable::Row row;
    if (!attempt.excluded.empty()) {
        remark = Attempts::tr("left out: %1").arg(text(attempt.excluded));
        row.quiet = {0, 1, 2, 3, 4, 5};
    }
    row.cells = {testText(kind.name),
                 kind.twoSided && attempt.side == BodySide::Both ? Attempts::tr("both")
                                                                 : sideText(attempt.side),
                 QString::number(number),
                 read,
                 value ? testValueText(kind, *value) : said(value.why().reason),
                 remark};
    return row;
}

std::optional<TextTable::Row> valueRow(const Stored<TestKindId, TestKind>& kind,
                                       const BatterySession& session) {
    TextTable::Row row;
    row.cells = {testText(kind.value.name), {}, {}, {}, {}, {}};
    bool any = false;
    QStringList counts;
    std::vector<double> values;
    for (const BodySide side : answers::sidesOf(kind.value)) {
        const auto value = answers::testValue(kind, session, side);
        const int column = side == BodySide::Both ? 1 : side == BodySide::Left ? 2 : 3;
        if (value) {
            any = true;
            row.cells[column] = testValueText(kind.value, value->value);
            counts << Attempts::tr("%1 of %2").arg(value->counted).arg(kind.value.attempts);
            values.push_back(value->value);
        } else if (value.why().why != NoAnswer::Why::NotTested) {
            any = true;
            row.cells[column] = said(value.why().reason);
            counts << QStringLiteral("\u2013");
        }
    }
    if (!any)
        return std::nullopt;
    if (kind.value.twoSided && values.size() == 2)
        row.cells[4] = said(answers::asymmetryWords(
            answers::asymmetry(values[0], values[1], kind.value.higherIsBetter)));
    row.cells[5] = counts.join(QStringLiteral("; "));
    return row;
}

} // namespace slopebook::ui

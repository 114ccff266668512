// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/batterywords.h"

#include "core/answers/batterysummary.h"
#include "core/answers/readingwords.h"
#include "ui/words/format.h"
#include "ui/words/readable.h"
#include "ui/words/said.h"

#include <QCoreApplication>

namespace slopebook::ui::page {

namespace {

/// Why a test has no reading; nothing where it has one.
QString noReadingText(const answers::TestChange& test) {
    return said(test.noReading);
}

const QString dash = QStringLiteral("\u2013");

struct BatteryWords {
    Q_DECLARE_TR_FUNCTIONS(BatteryWords)
};

/// "231.0"; of several sessions "231.0 (mean of 3: 225.1 to 236.9)".
QString seenText(const answers::SeenTest& seen, const TestKind& kind) {
    if (!seen.value)
        return said(seen.value.why().reason);
    const QString value = number(seen.value->value, kind.decimals);
    if (seen.sessions < 2)
        return value;
    if (!seen.interval)
        return BatteryWords::tr("%1 (mean of %2)").arg(value).arg(seen.sessions);
    return BatteryWords::tr("%1 (mean of %2: %3)")
        .arg(value)
        .arg(seen.sessions)
        .arg(rangeText(*seen.interval, kind.decimals));
}

QString asymmetryText(const Answer<answers::Asymmetry>& asymmetry) {
    return asymmetry ? said(answers::asymmetryWords(*asymmetry)) : said(asymmetry.why().reason);
}

QString testReading(const answers::TestChange& test) {
    QString words = said(test.read.reading == answers::Reading::Unclear
                             ? answers::sizedCell(test.read, test.kind.value.decimals)
                             : withUnder(test.read, answers::readingWords(test.read.reading)));
    if (test.read.beyondSmallest)
        words += QStringLiteral(" > m");
    else if (answers::surelySmall(test.read))
        words += QStringLiteral(" < m");
    return words;
}

} // namespace

std::vector<BatteryRow> batteryRows(const answers::BatteryComparison& battery) {
    std::vector<BatteryRow> rows;
    for (const answers::TestChange& test : battery.tests) {
        const TestKind& kind = test.kind.value;
        const int d = kind.decimals;
        BatteryRow row{
            .test = said(answers::testLabel(kind, test.side)) + QStringLiteral(" (") +
                    text(kind.unit) + QLatin1Char(')'),
            .before = seenText(test.before, kind),
            .after = seenText(test.after, kind),
            .change = test.change ? signedNumber(*test.change, d) : dash,
            .percent = test.percent ? signedNumber(*test.percent, 1) : dash,
            .interval = test.noReading.empty() ? signedRangeText(test.read.interval, d) : dash,
            .error = test.noise ? number(test.noise->te, d) : dash,
            .reading = testReading(test),
            .remark = noReadingText(test),
            .noFigure = !test.noReading.empty(),
            .changed = test.noReading.empty() && (test.read.reading == answers::Reading::Better ||
                                                  test.read.reading == answers::Reading::Worse)};
        for (const auto& change : test.conditions)
            row.remark += (row.remark.isEmpty() ? QString() : QStringLiteral("; ")) +
                          said(answers::changeWords(change));
        rows.push_back(std::move(row));
    }
    return rows;
}

std::vector<QStringList> leftRightRows(const answers::BatteryComparison& battery) {
    std::vector<QStringList> rows;
    for (const answers::LeftRight& row : battery.leftRight)
        rows.push_back({testText(row.kind.value.name), asymmetryText(row.before),
                        asymmetryText(row.after),
                        row.change ? said(answers::asymmetryChangeWords(row)) : dash});
    return rows;
}

std::vector<QStringList> missingRows(const answers::BatteryComparison& battery, LoadUnit unit) {
    std::vector<QStringList> rows;
    for (const answers::MissingTest& missing : battery.missing)
        rows.push_back({dateText(missing.date), periodText(missing.label), said(missing.what, unit),
                        text(missing.reason)});
    return rows;
}

QStringList liftSentences(const questions::BatteryAnswer& answer, LoadUnit unit) {
    QStringList lines;
    for (const questions::BatteryLift& lift : answer.lifts)
        lines << text(lift.lift.value.name) + QStringLiteral(": ") +
                     (lift.comparison ? said(lift.comparison->sentence, unit)
                                      : said(lift.comparison.why().reason, unit));
    for (const Words& what : answer.unread)
        lines << QStringLiteral("\u26a0 ") + said(answers::leftOutWords(what));
    return lines;
}

} // namespace slopebook::ui::page

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/batterywords.h"

#include "core/answers/readingwords.h"
#include "ui/words/format.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <cmath>

namespace slopebook::ui::page {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(BatteryWords)
};

/// Why a test has no reading; nothing where it has one.
QString noReadingText(const answers::TestChange& test) {
    return said(test.noReading);
}

const QString dash = QStringLiteral("\u2013");

QString seenText(const answers::SeenTest& seen, const TestKind& kind) {
    if (seen.value)
        return number(seen.value->value, kind.decimals);
    return said(seen.value.why().reason);
}

QString asymmetryText(const Answer<answers::Asymmetry>& asymmetry) {
    return asymmetry ? said(answers::asymmetryWords(*asymmetry)) : said(asymmetry.why().reason);
}

/// A change for certain, and for certain too small to matter.
bool surelySmall(const answers::TestChange& test) {
    return test.read.withinSmallest && (test.read.reading == answers::Reading::Better ||
                                        test.read.reading == answers::Reading::Worse);
}

QString testReading(const answers::TestChange& test) {
    QString words = said(test.read.reading == answers::Reading::Unclear
                             ? answers::sizedCell(test.read, test.kind.value.decimals)
                             : withUnder(test.read, answers::readingWords(test.read.reading)));
    if (test.read.beyondSmallest)
        words += QStringLiteral(" > m");
    else if (surelySmall(test))
        words += QStringLiteral(" < m");
    return words;
}

} // namespace

std::vector<BatteryRow> batteryRows(const answers::BatteryComparison& battery) {
    std::vector<BatteryRow> rows;
    for (const answers::TestChange& test : battery.tests) {
        const TestKind& kind = test.kind.value;
        const int d = kind.decimals;
        BatteryRow row{.test = said(answers::testLabel(kind, test.side)) + QStringLiteral(" (") +
                               text(kind.unit) + QLatin1Char(')'),
                       .before = seenText(test.before, kind),
                       .after = seenText(test.after, kind),
                       .change = test.change ? signedNumber(*test.change, d) : dash,
                       .percent = test.percent ? signedNumber(*test.percent, 1) : dash,
                       .interval =
                           test.noReading.empty() ? signedRangeText(test.read.interval, d) : dash,
                       .error = test.noise ? number(test.noise->te, d) : dash,
                       .reading = testReading(test),
                       .remark = noReadingText(test),
                       .noFigure = !test.noReading.empty()};
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
        rows.push_back({text(row.kind.value.name), asymmetryText(row.before),
                        asymmetryText(row.after),
                        row.change ? said(answers::asymmetryChangeWords(row)) : dash});
    return rows;
}

std::vector<QStringList> missingRows(const answers::BatteryComparison& battery) {
    std::vector<QStringList> rows;
    for (const answers::MissingTest& missing : battery.missing)
        rows.push_back({dateText(missing.date), text(missing.label), said(missing.what),
                        text(missing.reason)});
    return rows;
}

QStringList unreadSentences(const questions::BatteryAnswer& answer) {
    QStringList lines;
    for (const slopebook::Words& what : answer.unread)
        lines << QStringLiteral("\u26a0 ") +
                     Words::tr("Left out, for it cannot be read: %1").arg(said(what));
    return lines;
}

QStringList liftSentences(const questions::BatteryAnswer& answer, LoadUnit unit) {
    QStringList lines;
    for (const questions::BatteryLift& lift : answer.lifts)
        lines << text(lift.lift.value.name) + QStringLiteral(": ") +
                     (lift.comparison ? said(lift.comparison->sentence, unit)
                                      : said(lift.comparison.why().reason, unit));
    return lines + unreadSentences(answer);
}

QString batterySummary(const answers::BatteryComparison& battery) {
    using answers::Reading;
    constexpr std::array order{Reading::Better, Reading::Worse, Reading::Held, Reading::Unclear,
                               Reading::NoFigure};
    QStringList parts;
    for (const Reading reading : order) {
        QStringList names;
        for (const answers::TestChange& test : battery.tests)
            if (test.read.reading == reading)
                names << said(reading == Reading::Unclear
                                  ? answers::unclearTestWords(test)
                                  : answers::testLabel(test.kind.value, test.side));
        if (!names.isEmpty())
            parts << Words::tr("%1: %2").arg(said(answers::readingWords(reading)),
                                             names.join(QStringLiteral(", ")));
    }
    if (parts.isEmpty())
        return Words::tr("No test of the battery was done on either side.");
    for (QString& part : parts)
        part[0] = part[0].toUpper();
    return parts.join(QStringLiteral(". ")) + QLatin1Char('.');
}

QStringList batteryNotes(const answers::BatteryComparison& battery, LoadUnit unit) {
    QStringList lines;
    for (const auto& note : battery.notes)
        lines << said(asSentence(note.words), unit);
    const bool flagged = std::any_of(battery.tests.begin(), battery.tests.end(),
                                     [](const auto& test) { return !test.conditions.empty(); });
    if (flagged)
        lines << Words::tr("* compared over a changed context.");
    if (std::any_of(battery.tests.begin(), battery.tests.end(),
                    [](const auto& test) { return test.read.beyondSmallest; }))
        lines << Words::tr("> m: by more than the smallest change that matters.");
    if (std::any_of(battery.tests.begin(), battery.tests.end(), surelySmall))
        lines << Words::tr("< m: certain, but less than the smallest change that matters.");
    if (!battery.notDrawn.empty()) {
        QStringList names;
        for (const auto& one : battery.notDrawn)
            names << said(one, unit);
        lines << Words::tr("Not in the chart: %1.").arg(names.join(QStringLiteral("; ")));
    }
    return lines;
}

QStringList batterySources(const answers::BatteryComparison& battery) {
    QStringList lines;
    const auto add = [&](const QString& line) {
        if (!lines.contains(line))
            lines << line;
    };
    for (const answers::TestChange& test : battery.tests) {
        const TestKind& kind = test.kind.value;
        if (test.noise)
            add(Words::tr("%1: typical error %2 %3, %4")
                    .arg(text(kind.name), number(test.noise->te, kind.decimals), text(kind.unit),
                         said(test.noise->source)));
        if (test.read.smallest)
            add(Words::tr("%1: smallest change that matters %2 %3, %4")
                    .arg(text(kind.name), number(test.read.smallest->value, kind.decimals),
                         text(kind.unit), text(test.read.smallest->source)));
    }
    return lines;
}

} // namespace slopebook::ui::page

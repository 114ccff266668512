// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/batterywords.h"

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

// core/answers names what changed; here it is only shown to lupdate.
[[maybe_unused]] constexpr std::array contextNames{
    QT_TRANSLATE_NOOP("BatteryWords", "surface"), QT_TRANSLATE_NOOP("BatteryWords", "device"),
    QT_TRANSLATE_NOOP("BatteryWords", "footwear"), QT_TRANSLATE_NOOP("BatteryWords", "technique")};

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

QString asymmetryOrWhy(const Answer<answers::Asymmetry>& asymmetry) {
    return asymmetry ? ui::asymmetryText(*asymmetry) : said(asymmetry.why().reason);
}

/// A change for certain, and for certain too small to matter.
bool surelySmall(const answers::TestChange& test) {
    return test.read.withinSmallest && (test.read.reading == answers::Reading::Better ||
                                        test.read.reading == answers::Reading::Worse);
}

QString testReading(const answers::TestChange& test) {
    QString words = readingWord(test.read.reading);
    if (test.read.beyondSmallest)
        words += QStringLiteral(" > m");
    else if (surelySmall(test))
        words += QStringLiteral(" < m");
    if (!test.context.empty())
        words += QStringLiteral(" *");
    return words;
}

} // namespace

std::vector<BatteryRow> batteryRows(const answers::BatteryComparison& battery) {
    std::vector<BatteryRow> rows;
    for (const answers::TestChange& test : battery.tests) {
        const TestKind& kind = test.kind.value;
        const int d = kind.decimals;
        BatteryRow row{.test = testLabel(kind, test.side) + QStringLiteral(" (") + text(kind.unit) +
                               QLatin1Char(')'),
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
        for (const auto& change : test.context)
            row.remark +=
                (row.remark.isEmpty() ? QString() : QStringLiteral("; ")) +
                Words::tr("%1: %2, then %3")
                    .arg(contextName(change.what), text(change.before), text(change.after));
        rows.push_back(std::move(row));
    }
    return rows;
}

std::vector<QStringList> leftRightRows(const answers::BatteryComparison& battery) {
    std::vector<QStringList> rows;
    for (const answers::LeftRight& row : battery.leftRight)
        rows.push_back(
            {text(row.kind.value.name), asymmetryOrWhy(row.before), asymmetryOrWhy(row.after)});
    return rows;
}

std::vector<QStringList> missingRows(const answers::BatteryComparison& battery) {
    std::vector<QStringList> rows;
    for (const answers::MissingTest& missing : battery.missing)
        rows.push_back({dateText(missing.date), text(missing.label), said(missing.what),
                        text(missing.reason)});
    return rows;
}

QStringList unreadSentences(const BatteryAnswer& answer) {
    QStringList lines;
    for (const slopebook::Words& what : answer.unread)
        lines << QStringLiteral("\u26a0 ") +
                     Words::tr("Left out, for it cannot be read: %1").arg(said(what));
    return lines;
}

QStringList liftSentences(const BatteryAnswer& answer, LoadUnit unit) {
    QStringList lines;
    for (const BatteryLift& lift : answer.lifts)
        lines << text(lift.lift.value.name) + QStringLiteral(": ") +
                     (lift.comparison ? sentenceText(*lift.comparison, unit)
                                      : noAnswerClause(lift.comparison.why(), unit));
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
                names << testLabel(test.kind.value, test.side);
        if (!names.isEmpty())
            parts << Words::tr("%1: %2").arg(readingWord(reading),
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
        lines << (note.names.size() == 3
                      ? Words::tr("The %1 changed (%2, then %3): a difference may be its doing. "
                                  "Tests over that change are marked.")
                            .arg(contextName(note.names[0]), text(note.names[1]),
                                 text(note.names[2]))
                      : text(note.text));
    const bool flagged = std::any_of(battery.tests.begin(), battery.tests.end(),
                                     [](const auto& test) { return !test.context.empty(); });
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

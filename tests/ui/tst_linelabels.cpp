// SPDX-License-Identifier: GPL-3.0-or-later
// What is written among the lines: on no other words, on no threshold, and a point that is left out
// of its line says so.
#include "tests/ui/paintedtexts.h"
#include "ui/charts/linechart.h"

#include <QPainter>
#include <QRegularExpression>
#include <QTest>

#include <algorithm>
#include <optional>
#include <utility>
#include <vector>

using namespace slopebook;
using namespace slopebook::ui;
using namespace slopebook::ui::charts;
using namespace Qt::Literals::StringLiterals;

namespace {

/// An ordinary ladder; the MVT is as far over the axis as is asked for.
LineData ladder(int sessions, double mvt, bool leftOut) {
    LineData data;
    for (int i = 0; i < sessions; ++i) {
        const double faster = 0.03 * i;
        const LineSegment line{.intercept = 1.69 + faster,
                               .slope = -0.01425,
                               .from = 40,
                               .to = 80,
                               .start = 40,
                               .end = (1.69 + faster - mvt) / 0.01425};
        LineEntry entry{.key = QString::number(i),
                        .label = u"%1 Mar 2026"_s.arg(i + 3),
                        .role = {.index = i, .count = sessions},
                        .line = line};
        for (const double load : {40.0, 60.0, 80.0})
            entry.points.push_back({.load = load, .velocity = line.at(load)});
        if (leftOut)
            entry.points.push_back({.load = 70, .velocity = 0.4 + faster, .excluded = true});
        entry.oneRm = OneRmMark{.estimate = line.end,
                                .interval = stats::Interval{line.end - 4, line.end + 4},
                                .whole = stats::Interval{line.end - 9, line.end + 9}};
        data.sessions.push_back(entry);
    }
    data.mvt = mvt;
    return data;
}

QList<test::PaintedText> written(const LineData& data, const QSize& size) {
    LineChart chart;
    chart.setData(data);
    test::TextRecorder recorder(size);
    QPainter painter(&recorder);
    chart.paintPaper(painter, QRectF(QPointF(), QSizeF(size)), QSizeF(size));
    painter.end();
    return recorder.texts();
}

/// Where a velocity stands: between the figures of its axis, which are the leftmost.
std::optional<double> heightOf(double velocity, const QList<test::PaintedText>& texts) {
    static const QRegularExpression figure(u"^\\d+\\.\\d+$"_s);
    std::vector<std::pair<double, double>> ticks; // velocity, y
    for (const auto& text : texts)
        if (figure.match(text.text).hasMatch() && text.box.left() < 60)
            ticks.emplace_back(text.text.toDouble(), text.box.center().y());
    const auto [low, high] = std::ranges::minmax_element(ticks);
    if (low == high)
        return std::nullopt;
    return low->second +
           (velocity - low->first) / (high->first - low->first) * (high->second - low->second);
}

} // namespace

class TestLineLabels : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void theMaximaStandOnNeitherTheMvtNorItsName_data() {
        QTest::addColumn<double>("mvt");
        QTest::addColumn<int>("sessions");
        QTest::addColumn<QSize>("size");
        for (const double mvt : {0.15, 0.2, 0.24, 0.3, 0.4})
            for (const int sessions : {1, 2, 3})
                for (const QSize size : {QSize(480, 300), QSize(520, 200), QSize(800, 420)})
                    QTest::addRow("%.2f m/s, %d lines, %dx%d", mvt, sessions, size.width(),
                                  size.height())
                        << mvt << sessions << size;
    }
    void theMaximaStandOnNeitherTheMvtNorItsName() {
        QFETCH(double, mvt);
        QFETCH(int, sessions);
        QFETCH(QSize, size);
        const auto texts = written(ladder(sessions, mvt, false), size);
        const auto line = heightOf(mvt, texts);
        QVERIFY(line);
        int maxima = 0;
        for (const auto& text : texts)
            if (text.text.startsWith(u"est. 1RM"_s)) {
                ++maxima;
                QVERIFY2(text.box.bottom() <= *line || text.box.top() >= *line,
                         qPrintable(text.text + u" on the MVT's line"_s));
                for (const auto& other : texts)
                    QVERIFY2(&other == &text || !other.box.intersects(text.box),
                             qPrintable(text.text + u" on "_s + other.text));
            }
        QVERIFY(maxima > 0);
    }

    void aPointThatIsLeftOutSaysSo() {
        const auto said = [](bool leftOut) {
            const auto texts = written(ladder(1, 0.2, leftOut), QSize(600, 380));
            return static_cast<int>(
                std::ranges::count(texts, u"not in the line"_s, &test::PaintedText::text));
        };
        QCOMPARE(said(false), 0);
        QCOMPARE(said(true), 1);
    }

    // Told beside it, or where there is no room by nobody else's letters.
    void whatSaysSoStandsOnNothing() {
        for (const int sessions : {1, 2, 3, 4}) {
            const auto texts = written(ladder(sessions, 0.2, true), QSize(480, 300));
            int told = 0;
            for (const auto& text : texts)
                if (text.text == u"not in the line"_s) {
                    ++told;
                    for (const auto& other : texts)
                        QVERIFY2(&other == &text || !other.box.intersects(text.box),
                                 qPrintable(other.text));
                }
            QVERIFY(told > 0);
        }
    }
};

QTEST_MAIN(TestLineLabels)
#include "tst_linelabels.moc"

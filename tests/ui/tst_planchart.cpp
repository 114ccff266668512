// SPDX-License-Identifier: GPL-3.0-or-later
// The chart of a plan says what each of its marks is, in words that lie on no line, no hatching and
// no mark.
#include "tests/ui/paintedtexts.h"
#include "ui/athlete/plan/planchart.h"

#include <QPainter>
#include <QTest>

#include <algorithm>

using namespace slopebook;
using namespace slopebook::test;
using namespace slopebook::ui;

namespace {

/// Loads in steps of 2.5 kg from 20 kg on, one of them chosen.
PlanDrawing drawing(double mvt) {
    PlanDrawing data{.lightest = 40, .heaviest = 105, .intercept = 1.36, .slope = -0.0098};
    data.mvt = mvt;
    data.oneRm = 111.3;
    data.toPlan = stats::Interval{105, 134.2};
    for (double load = 20; load <= 134; load += 2.5) {
        PlanDrawing::Load one{.load = load, .speed = data.intercept + data.slope * load};
        one.expected = stats::Interval{one.speed - 0.1, one.speed + 0.1};
        if (0.8 * one.speed > mvt)
            one.stop = 0.8 * one.speed;
        one.chosen = load == 77.5;
        one.overMax = load > *data.oneRm;
        data.loads.push_back(one);
    }
    return data;
}

QList<PaintedText> textsOf(PlanChart& chart) {
    TextRecorder recorder(chart.size());
    {
        QPainter painter(&recorder);
        painter.setFont(chart.font());
        chart.render(&painter, QPoint(), QRegion(), QWidget::RenderFlags());
    }
    return recorder.texts();
}

int countOf(const QList<PaintedText>& texts, const QString& words) {
    return int(std::ranges::count_if(
        texts, [&](const PaintedText& text) { return text.text.contains(words); }));
}

} // namespace

class TestPlanChart : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void everyMarkIsNamedOnce() {
        PlanChart chart;
        for (const QSize size : {QSize(520, 270), QSize(760, 420), QSize(1000, 500)}) {
            chart.resize(size);
            chart.setData(drawing(0.24));
            const auto texts = textsOf(chart);
            for (const char* words :
                 {"stop the set here", "over the estimate", "MVT", "1RM", "stop at", "77.5 kg"})
                QVERIFY2(countOf(texts, QString::fromLatin1(words)) == 1, words);
        }
        PlanDrawing within = drawing(0.24); // nothing over it, nothing to say
        for (PlanDrawing::Load& one : within.loads)
            one.overMax = false;
        chart.setData(within);
        QCOMPARE(countOf(textsOf(chart), QStringLiteral("over the estimate")), 0);
    }

    void wordsKeepClear() {
        PlanChart chart;
        for (const double mvt : {0.15, 0.24, 0.3})
            for (int width = 400; width < 1100; width += 60) {
                chart.resize(width, 170 + width / 4);
                const PlanDrawing data = drawing(mvt);
                chart.setData(data);
                const auto texts = textsOf(chart);
                const auto find = [&](const QString& words) {
                    return std::ranges::find_if(
                        texts, [&](const PaintedText& text) { return text.text.contains(words); });
                };
                // Where a load stands is read from the axis.
                const auto at = [&](const QString& figure) {
                    return std::ranges::find_if(
                        texts, [&](const PaintedText& text) { return text.text == figure; });
                };
                const auto forty = at(QStringLiteral("40")), hundred = at(QStringLiteral("100"));
                QVERIFY(forty != texts.end() && hundred != texts.end());
                const double left = forty->box.center().x();
                const double right =
                    left + (hundred->box.center().x() - left) * (data.heaviest - 40) / 60;
                for (const char* each : {"MVT", "stop the set here", "can be built"})
                    if (const auto text = find(QString::fromLatin1(each)); text != texts.end()) {
                        QVERIFY2(text->box.left() >= left - 2, each);
                        QVERIFY2(text->box.right() <= right + 2, each);
                    }
                for (qsizetype i = 0; i < texts.size(); ++i)
                    for (qsizetype j = i + 1; j < texts.size(); ++j)
                        QVERIFY2(!texts[i]
                                      .box.adjusted(1, 1, -1, -1)
                                      .intersects(texts[j].box.adjusted(1, 1, -1, -1)),
                                 qPrintable(texts[i].text + QStringLiteral(" / ") + texts[j].text));
            }
    }
};

QTEST_MAIN(TestPlanChart)
#include "tst_planchart.moc"

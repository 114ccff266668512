// SPDX-License-Identifier: GPL-3.0-or-later
// An axis with one figure says nothing: however small a chart is and whatever it shows, two figures
// of each axis are read, and no load is less than nothing.
#include "tests/support/ladders.h"
#include "tests/ui/paintedtexts.h"
#include "ui/charts/linefigure.h"
#include "ui/charts/maxchart.h"
#include "ui/charts/plotframe.h"

#include <QPainter>
#include <QTest>

#include <algorithm>
#include <cmath>

using namespace slopebook;
using namespace slopebook::test;
using namespace slopebook::ui;
using namespace slopebook::ui::charts;

namespace {

bool isFigure(const QString& text) {
    bool good = false;
    QString plain = text;
    plain.replace(QChar(0x2212), u'-').remove(u'+').toDouble(&good);
    return good;
}

/// Figures at that side of what is drawn, that do not touch.
template <class Beside>
int figures(const QList<PaintedText>& texts, const Beside& beside) {
    QList<QRectF> boxes;
    for (const PaintedText& text : texts)
        if (isFigure(text.text) && beside(text.box) &&
            std::ranges::none_of(boxes,
                                 [&](const QRectF& box) { return box.intersects(text.box); }))
            boxes << text.box;
    return int(boxes.size());
}

/// A day of that many sets, with the whisker of its 1RM.
LineEntry dayOf(double lightest, double heaviest, double whisker) {
    LineEntry entry{.key = QStringLiteral("day"), .label = QStringLiteral("4 May 2026")};
    for (const double share : {0.0, 0.5, 1.0})
        entry.points.push_back(
            {.load = lightest + share * (heaviest - lightest), .velocity = 1.2 - 0.6 * share});
    entry.line = LineSegment{.intercept = 1.2 + 0.6 * lightest / (heaviest - lightest),
                             .slope = -0.6 / (heaviest - lightest),
                             .from = lightest,
                             .to = heaviest,
                             .start = lightest,
                             .end = whisker};
    return entry;
}

} // namespace

class TestAxes : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void aStepLeavesTwo() {
        for (const double from : {-61.0, 0.0, 0.3, 19.9, 51.0, 99.0})
            for (const double span : {0.02, 0.7, 9.0, 45.0, 160.0, 1000.0})
                for (const double step : {0.01, 5.0, 50.0, 200.0, 5000.0}) {
                    const double got = stepWithTwo(from, from + span, step);
                    const Scale scale{.from = from, .to = from + span, .step = got};
                    QVERIFY(got <= step);
                    QVERIFY(ticksOf(scale).size() >= 2);
                    if (ticksOf({.from = from, .to = from + span, .step = step}).size() >= 2)
                        QCOMPARE(got, step); // what says enough stays
                }
    }

    void aFrameSaysTwoOfEach() {
        for (const double from : {0.0, 17.0, 51.0, 104.0})
            for (const double span : {8.0, 45.0, 130.0, 400.0})
                for (const double step : {5.0, 10.0, 50.0, 100.0})
                    for (int width = 90; width < 700; width += 74) {
                        PlotFrame frame{.area = QRectF(70, 10, width, 0.3 * width),
                                        .from = from,
                                        .to = from + span,
                                        .y = {.from = 0.21, .to = 0.9, .step = 0.5},
                                        .ground = look::paperGround()};
                        TextRecorder recorder({width + 100, width});
                        {
                            QPainter painter(&recorder);
                            frame.paintXAxis(painter, QStringLiteral("Load"), step);
                            frame.paintYAxis(painter, QStringLiteral("Speed"));
                        }
                        const QByteArray which = QStringLiteral("%1 to %2 by %3 in %4")
                                                     .arg(from)
                                                     .arg(from + span)
                                                     .arg(step)
                                                     .arg(width)
                                                     .toUtf8();
                        QVERIFY2(figures(recorder.texts(),
                                         [&](const QRectF& box) {
                                             return box.top() > frame.area.bottom();
                                         }) >= 2,
                                 which);
                        QVERIFY2(figures(recorder.texts(),
                                         [&](const QRectF& box) {
                                             return box.right() < frame.area.left();
                                         }) >= 2,
                                 which);
                    }
    }

    // Names before the lines take room in which a load would be under nothing.
    void linesSayTwoLoads() {
        for (const double lightest : {2.5, 30.0, 140.0})
            for (const double heaviest : {1.2, 2.0, 4.0})
                for (const double whisker : {1.1, 1.8, 3.0})
                    for (int width = 240; width < 900; width += 110) {
                        LineFigure figure;
                        figure.resize(width, 160);
                        LineData data;
                        data.sessions = {
                            dayOf(lightest, heaviest * lightest, heaviest * whisker * lightest)};
                        data.checkLoads = {lightest};
                        figure.setData(data);
                        TextRecorder recorder({width, 160});
                        {
                            QPainter painter(&recorder);
                            figure.paintInto(painter, QRectF(0, 0, width, 160), QSizeF(width, 160));
                        }
                        const QByteArray which = QStringLiteral("%1 to %2 (%3) in %4")
                                                     .arg(lightest)
                                                     .arg(heaviest * lightest)
                                                     .arg(whisker)
                                                     .arg(width)
                                                     .toUtf8();
                        const QValueAxis& x = figure.xAxis();
                        const std::vector<double> ticks =
                            ticksOf({.from = x.min(), .to = x.max(), .step = x.tickInterval()});
                        QVERIFY2(ticks.size() >= 2, which);
                        QVERIFY2(ticks.front() > -1e-6, which);
                        QVERIFY2(x.min() < lightest, which);
                        const QRectF plot = figure.plot();
                        QVERIFY2(figures(recorder.texts(),
                                         [&](const QRectF& box) {
                                             return box.top() > plot.bottom();
                                         }) >= 2,
                                 which);
                        QVERIFY2(figures(recorder.texts(),
                                         [&](const QRectF& box) {
                                             return box.right() < plot.left() + 1;
                                         }) >= 2,
                                 which);
                    }
    }
};

QTEST_MAIN(TestAxes)
#include "tst_axes.moc"

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/errors.h"
#include "ui/charts/key.h"
#include "ui/charts/linechart.h"

#include <QFontMetricsF>
#include <QGraphicsScene>
#include <QPainter>
#include <QSignalSpy>
#include <QSvgRenderer>
#include <QTemporaryDir>
#include <QTest>

#include <array>
#include <limits>

using namespace slopebook;
using namespace slopebook::ui;
using namespace slopebook::ui::charts;
using namespace Qt::Literals::StringLiterals;

namespace {

LineEntry entry(const QString& key, const look::Role& role) {
    return {.key = key,
            .label = u"14 Mar 2026"_s,
            .role = role,
            .points = {{.load = 40, .velocity = 1.12},
                       {.load = 60, .velocity = 0.84},
                       {.load = 80, .velocity = 0.55},
                       {.load = 70, .velocity = 0.40, .excluded = true}},
            .line = LineSegment{.intercept = 1.69,
                                .slope = -0.01425,
                                .from = 40,
                                .to = 80,
                                .start = 40,
                                .end = 104},
            .band = {{.load = 40, .low = 1.05, .high = 1.19},
                     {.load = 80, .low = 0.49, .high = 0.61},
                     {.load = 104, .low = 0.10, .high = 0.24}},
            .oneRm = OneRmMark{
                .estimate = 104.2, .interval = stats::Interval{98, 112}, .measured = 101.0}};
}

LineData data(int sessions) {
    LineData d;
    for (int i = 0; i < sessions; ++i)
        d.sessions.push_back(entry(QString::number(i + 1), {.index = i, .count = sessions}));
    d.mvt = 0.2;
    d.checkLoads = {50};
    return d;
}

template <class Series>
Series* named(const LineChart& chart, const QString& name) {
    for (QAbstractSeries* s : chart.figure().series())
        if (s->objectName() == name)
            return qobject_cast<Series*>(s);
    return nullptr;
}

bool blank(const QImage& image) {
    const QRgb first = image.pixel(0, 0);
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x)
            if (image.pixel(x, y) != first)
                return false;
    return true;
}

} // namespace

class TestLineChart : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init() { QTest::failOnWarning(QRegularExpression(u"nan|NaN|QPainter|axis"_s)); }

    void seriesHoldWhatWasGiven() {
        LineChart chart;
        chart.setData(data(2));
        const auto* points = named<QScatterSeries>(chart, u"points:1"_s);
        QVERIFY(points);
        QCOMPARE(points->points(), (QList<QPointF>{{40, 1.12}, {60, 0.84}, {80, 0.55}}));
        QCOMPARE(named<QScatterSeries>(chart, u"excluded:1"_s)->points(),
                 (QList<QPointF>{{70, 0.40}}));
        const auto line = named<QLineSeries>(chart, u"line:2"_s)->points();
        QCOMPARE(line.size(), 2);
        QCOMPARE(line.last(), QPointF(80, 1.69 - 0.01425 * 80));
        QCOMPARE(named<QLineSeries>(chart, u"beyond:2"_s)->points().last().x(), 104.0);
        QCOMPARE(named<QAreaSeries>(chart, u"band:1"_s)->upperSeries()->count(), 3);
        QCOMPARE(named<QAreaSeries>(chart, u"band:1"_s)->lowerSeries()->at(1), QPointF(80, 0.49));
    }

    void fewerSessionsTakeTheirSeriesAway() {
        LineChart chart;
        chart.setData(data(5));
        QCOMPARE(chart.figure().series().size(), 5 * 6);
        chart.setData(data(1));
        QCOMPARE(chart.figure().series().size(), 6);
        chart.setData({});
        QVERIFY(chart.figure().series().isEmpty());
        chart.setData(data(3));
        QVERIFY(named<QScatterSeries>(chart, u"points:3"_s));
    }

    void onlyWhatDiffersIsReplaced() {
        LineChart chart;
        LineData d = data(3);
        chart.setData(d);
        QSignalSpy first(named<QScatterSeries>(chart, u"points:1"_s), &QXYSeries::pointsReplaced);
        QSignalSpy last(named<QScatterSeries>(chart, u"points:3"_s), &QXYSeries::pointsReplaced);
        d.sessions[2].points.push_back({.load = 90, .velocity = 0.41});
        chart.setData(d);
        QCOMPARE(first.count(), 0);
        QCOMPARE(last.count(), 1);
        QCOMPARE(named<QScatterSeries>(chart, u"points:3"_s)->count(), 4);
    }

    void pointsThatAreNoNumbersAreLeftOut() {
        LineChart chart;
        LineData d = data(1);
        const double nan = std::numeric_limits<double>::quiet_NaN();
        d.sessions[0].points.push_back({.load = 50, .velocity = nan});
        d.sessions[0].points.push_back({.load = nan, .velocity = 0.5});
        d.sessions[0].band.push_back({.load = 110, .low = nan, .high = 0.3});
        d.sessions[0].line->slope = nan;
        chart.setData(d);
        QCOMPARE(named<QScatterSeries>(chart, u"points:1"_s)->count(), 3);
        QCOMPARE(named<QAreaSeries>(chart, u"band:1"_s)->upperSeries()->count(), 3);
        QCOMPARE(named<QLineSeries>(chart, u"line:1"_s)->count(), 0);
        QVERIFY(std::isfinite(chart.figure().xAxis().max()));
        QVERIFY(!blank(picture(chart, {300, 200}, 1)));
    }

    void zeroSpansAreWidened_data() {
        QTest::addColumn<int>("points");
        QTest::addRow("no point") << 0;
        QTest::addRow("one point") << 1;
        QTest::addRow("the same point twice") << 2;
    }
    void zeroSpansAreWidened() {
        QFETCH(int, points);
        LineChart chart;
        LineData d;
        d.sessions.push_back({.key = u"1"_s, .label = u"today"_s});
        for (int i = 0; i < points; ++i)
            d.sessions[0].points.push_back({.load = 60, .velocity = 0.8});
        chart.setData(d);
        chart.setData(data(1));
        chart.setData(d);
        QVERIFY(chart.figure().xAxis().max() > chart.figure().xAxis().min());
        QVERIFY(chart.figure().yAxis().max() > chart.figure().yAxis().min());
        QVERIFY(!blank(picture(chart, {300, 200}, 1)));
    }

    void limitsHoldEveryPointAndEstimate() {
        LineChart chart;
        chart.resize(700, 400);
        chart.setData(data(2));
        QVERIFY(chart.figure().xAxis().min() < 40);
        QVERIFY(chart.figure().xAxis().max() > 112);
        QCOMPARE(chart.figure().yAxis().min(), 0.0);
        QVERIFY(chart.figure().yAxis().max() > 1.12);
    }

    void aWhiskerWithoutBoundIsCut() {
        LineChart chart;
        LineData d = data(1);
        d.sessions[0].oneRm->interval = stats::Interval{98, 5000};
        chart.setData(d);
        QVERIFY(chart.figure().xAxis().max() < 200);
    }

    // The lines of earlier sessions stand where they are while a session grows beside them.
    void scalesStayWhileTheyHaveRoom() {
        LineChart chart;
        chart.resize(700, 400);
        chart.show();
        const auto shown = [&](double whisker, int sheet = 1) {
            LineData d = data(1);
            d.sessions.front().oneRm->interval = stats::Interval{98, whisker};
            for (int i = 0; i < sheet; ++i) {
                d.sessions.insert(d.sessions.begin(), entry(QString::number(9 + i), {}));
                d.sessions.front().oneRm.reset();
                d.sessions.front().still = true;
            }
            return d;
        };
        const auto scales = [&] {
            const auto& x = chart.figure().xAxis();
            return std::array{x.min(), x.max(), chart.figure().yAxis().max()};
        };
        chart.setData(shown(118));
        const auto wide = scales();
        chart.setData(shown(106));
        QVERIFY(scales() == wide);
        chart.setData(shown(118));
        QVERIFY(scales() == wide);
        LineData further = shown(118);
        further.sessions.back().points.push_back({.load = 150, .velocity = 0.2});
        chart.setData(further); // has no room
        const auto wider = scales();
        QVERIFY(wider[1] > 150);
        LineData faster = further;
        faster.sessions.back().points.push_back({.load = 42, .velocity = 2.4});
        chart.setData(faster);
        QVERIFY(scales()[2] > 2.4);
        chart.setData(shown(106)); // stands in a corner
        const auto narrow = scales();
        QVERIFY(narrow[1] < wide[1] && narrow[2] < 2.4);
        chart.setData(shown(118));
        chart.setData(shown(106, 2)); // others' lines are drawn anew in any case
        QVERIFY(scales()[1] < wide[1]);
        chart.setData(shown(118));
        chart.resize(720, 400); // so does another size
        chart.setData(shown(106));
        QVERIFY(scales()[1] == wide[1]);
        chart.resize(700, 400);
        QVERIFY(scales()[1] < wide[1]);
    }

    // What comes with the next sets has its room before.
    void theScaleReachesAsFarAsAsked() {
        LineChart chart;
        chart.resize(700, 400);
        LineData d = data(1);
        d.reach = 140;
        chart.setData(d);
        QVERIFY(chart.figure().xAxis().max() > 140);
        d.reach = 20; // what is drawn counts
        chart.setData(d);
        QVERIFY(chart.figure().xAxis().max() > 112);
        d.sessions.clear();
        chart.setData(d);
        QCOMPARE(chart.figure().xAxis().max(), 100.0);
    }

    void poundsAreShownAsPounds() {
        LineChart chart;
        LineData d = data(1);
        chart.setData(d);
        d.unit = LoadUnit::Pounds;
        chart.setData(d);
        // 1 lb = 0.45359237 kg exactly: international agreement of 1959
        QVERIFY(qAbs(named<QScatterSeries>(chart, u"points:1"_s)->at(0).x() - 40 / 0.45359237) <
                1e-9);
        QVERIFY(chart.figure().xAxis().titleText().contains(u"lb"_s));
    }

    void paletteIsFollowedAndPaperIsNot() {
        LineChart chart;
        chart.setData(data(2));
        QPalette dark;
        dark.setColor(QPalette::Base, QColor(30, 30, 30));
        dark.setColor(QPalette::Text, Qt::white);
        const QColor before = named<QScatterSeries>(chart, u"points:2"_s)->brush().color();
        chart.setPalette(dark);
        QVERIFY(chart.figure().ground().dark);
        QCOMPARE(chart.figure().xAxis().labelsBrush().color(), QColor(Qt::white));
        QVERIFY(named<QScatterSeries>(chart, u"points:2"_s)->brush().color() != before);
        QCOMPARE(picture(chart, {300, 200}, 1).pixelColor(1, 1), QColor(Qt::white));
    }

    void aClickNamesItsPoint() {
        LineChart chart;
        chart.setData(data(2));
        QSignalSpy spy(&chart, &LineChart::pointClicked);
        auto* points = named<QScatterSeries>(chart, u"points:2"_s);
        Q_EMIT points->clicked(points->at(1));
        QCOMPARE(spy.count(), 1);
        QCOMPARE(spy[0][0].value<PointRef>(), (PointRef{.session = 1, .point = 1}));
        auto* hollow = named<QScatterSeries>(chart, u"excluded:1"_s);
        Q_EMIT hollow->clicked(hollow->at(0));
        QCOMPARE(spy[1][0].value<PointRef>(), (PointRef{.session = 0, .point = 3}));
        chart.setHighlight(PointRef{.session = 7, .point = 0}); // is not there: nothing is ringed
        chart.setHighlight(PointRef{.session = 0, .point = 0});
        QVERIFY(!blank(chart.grab().toImage()));
    }

    void goesOutAsPicture() {
        const QTemporaryDir folder;
        LineChart chart;
        chart.setData(data(3));
        const QString png = folder.filePath(u"a.png"_s), svg = folder.filePath(u"a.svg"_s);
        writePng(chart, png.toStdString());
        QCOMPARE(QImage(png).size(), QSize(1440, 900));
        QVERIFY(!blank(QImage(png)));
        writeSvg(chart, svg.toStdString(), u"Bench pull"_s);
        QVERIFY(QSvgRenderer(svg).isValid());
        const auto missing = folder.filePath(u"missing/a"_s).toStdString();
        QVERIFY_THROWS_EXCEPTION(LogError, writePng(chart, missing));
        QVERIFY_THROWS_EXCEPTION(LogError, writeSvg(chart, missing, {}));
    }

    void theSentenceIsSpoken() {
        LineChart chart;
        chart.setSpokenText(u"Faster from 40 to 65 kg"_s);
        QCOMPARE(chart.accessibleName(), u"Faster from 40 to 65 kg"_s);
    }

    void looksAreToldApartWithoutColour() {
        for (const look::Ground& g : {look::paperGround(), look::screenGround(QPalette())}) {
            const look::Role a{.kind = look::Role::Kind::Earlier},
                b{.kind = look::Role::Kind::Later};
            QVERIFY(look::marker(a) != look::marker(b));
            QVERIFY(look::linePen(a, g).dashPattern() != look::linePen(b, g).dashPattern());
            QVERIFY(qAbs(qGray(look::colour(a, g).rgb()) - qGray(look::colour(b, g).rgb())) > 25);
            int last = -1;
            for (int i = 0; i < 6; ++i) { // light to dark by date
                const look::Role r{.index = i, .count = 6};
                const int grey = 255 - qGray(look::colour(r, g).rgb());
                QVERIFY(g.dark || grey > last);
                last = grey;
                for (int j = 0; j < i; ++j)
                    QVERIFY(look::marker(r) != look::marker({.index = j, .count = 6}));
            }
        }
    }

    void everyColourStandsOutFromItsGround() {
        QPalette darkPalette;
        darkPalette.setColor(QPalette::Base, QColor(30, 30, 30));
        darkPalette.setColor(QPalette::Text, Qt::white);
        // W3C, Web Content Accessibility Guidelines 2.1, relative luminance and contrast ratio
        const auto luminance = [](const QColor& c) {
            const auto part = [](double v) {
                return v <= 0.03928 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4);
            };
            return 0.2126 * part(c.redF()) + 0.7152 * part(c.greenF()) + 0.0722 * part(c.blueF());
        };
        const auto contrast = [&](const QColor& x, const QColor& y) {
            const double l = luminance(x) + 0.05, m = luminance(y) + 0.05;
            return std::max(l, m) / std::min(l, m);
        };
        const auto laidOn = [](const QColor& under, const QBrush& veil) {
            const QColor c = veil.color();
            const auto mix = [&](float x, float y) { return x + (y - x) * c.alphaF(); };
            return QColor::fromRgbF(mix(under.redF(), c.redF()), mix(under.greenF(), c.greenF()),
                                    mix(under.blueF(), c.blueF()));
        };
        QPalette light; // the program's own, whose ink is no black
        light.setColor(QPalette::Base, Qt::white);
        light.setColor(QPalette::Text, QColor(0x1B, 0x20, 0x1D));
        QPalette dark;
        dark.setColor(QPalette::Base, QColor(0x1A, 0x1F, 0x1D));
        dark.setColor(QPalette::Text, QColor(0xE6, 0xEA, 0xE7));
        for (const look::Ground& g : {look::paperGround(), look::screenGround(darkPalette),
                                      look::screenGround(light), look::screenGround(dark)}) {
            const QColor band = laidOn(g.paper, look::smallestBrush(g));
            std::vector<look::Role> roles{{.kind = look::Role::Kind::Earlier},
                                          {.kind = look::Role::Kind::Later}};
            for (int i = 0; i < 4; ++i)
                roles.push_back({.index = i, .count = 4});
            for (const QColor& ground : {g.paper, band}) {
                for (const look::Role& r : roles)
                    QVERIFY2(contrast(look::colour(r, g), ground) >= 3, // success criterion 1.4.11
                             qPrintable(look::colour(r, g).name() + u" on "_s + ground.name()));
                QVERIFY(contrast(look::changeColour(g), ground) >= 3);
            }
            for (const QColor& ground : {g.paper, g.grid, band}) // 1.4.3, with some room
                QVERIFY2(contrast(g.quiet, ground) >= 5,
                         qPrintable(g.quiet.name() + u" on "_s + ground.name()));
        }
    }

    /// What is wider than the chart goes on below: nothing of a key is cut.
    void aKeyWiderThanItsChartIsBroken() {
        QFont font;
        font.setPixelSize(12);
        const QString text = u"change (later - earlier), interval with day-to-day noise"_s;
        const std::vector<KeyEntry> key{{text, [](QPainter&, const QRectF&) {}}};
        const double wide = QFontMetricsF(font).horizontalAdvance(text) + 60;
        const double one = keyHeight(key, font, wide);
        QCOMPARE(keyHeight(key, font, 0.6 * wide), 2 * one);
        QImage image(QSize(static_cast<int>(0.6 * wide) + 40, 60), QImage::Format_RGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        paintKey(painter, key, font, QRectF(0, 0, 0.6 * wide, 2 * one), Qt::black);
        painter.end();
        const int end = static_cast<int>(0.6 * wide);
        QVERIFY(blank(image.copy(end, 0, 40, 60)));
        QVERIFY(!blank(image.copy(0, static_cast<int>(one) + 1, end, static_cast<int>(one))));
    }
};

QTEST_MAIN(TestLineChart)
#include "tst_linechart.moc"

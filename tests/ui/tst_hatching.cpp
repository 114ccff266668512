// SPDX-License-Identifier: GPL-3.0-or-later
// What is not comparable is hatched wherever a change is drawn, on the screen and on paper
// (looks.md: hatching means beyond what was measured, or not comparable).
#include "tests/support/ladders.h"
#include "ui/athlete/season/seasonchart.h"
#include "ui/charts/changechart.h"
#include "ui/charts/forestchart.h"
#include "ui/charts/linechart.h"
#include "ui/charts/maxchart.h"
#include "ui/squad/changes/squadforest.h"

#include <QTest>

#include <algorithm>
#include <memory>
#include <vector>

using namespace slopebook;
using namespace slopebook::ui;
using namespace slopebook::ui::charts;

namespace {

/// With a later day on which the athlete felt ill.
answers::Comparison comparison() {
    LiftSession to = test::winter();
    to.conditions.notComparable = "felt ill";
    return test::usualComparison(test::autumn(), to);
}

/// One chart, with that day as it is drawn, and with its hatching alone left out.
struct Drawn {
    std::unique_ptr<QWidget> widget;
    const ChartOut* out = nullptr;
};

template <class Chart>
Drawn drawn(std::unique_ptr<Chart> chart) {
    const ChartOut* out = chart.get();
    return {std::move(chart), out};
}

using Drawing = Drawn (*)(bool);

Drawn lines(bool hatched) {
    auto chart = std::make_unique<LineChart>();
    LineData data = linesOf(comparison(), LoadUnit::Kilograms);
    data.notComparable = data.notComparable && hatched;
    chart->setData(data);
    return drawn(std::move(chart));
}

Drawn change(bool hatched) {
    auto chart = std::make_unique<ChangeChart>();
    ChangeData data = changeOf(comparison(), LoadUnit::Kilograms);
    data.notComparable = data.notComparable && hatched;
    chart->setData(data);
    return drawn(std::move(chart));
}

Drawn maxima(bool hatched) {
    auto chart = std::make_unique<MaxChart>();
    MaxChangeData data = maxChangeOf(comparison(), LoadUnit::Kilograms);
    data.notComparable = data.notComparable && hatched;
    chart->setData(data);
    return drawn(std::move(chart));
}

Drawn forest(bool hatched) {
    answers::BatteryComparison battery;
    answers::addLift(battery, test::benchPull(), comparison());
    for (answers::ForestRow& row : battery.forest)
        row.notComparable = row.notComparable && hatched;
    auto chart = std::make_unique<ForestChart>();
    chart->setRows(battery.forest, LoadUnit::Kilograms);
    return drawn(std::move(chart));
}

Drawn squad(bool hatched) {
    answers::SquadPart part{.load = Mass{40'000}};
    answers::SquadRow row{.name = "Lane 3"};
    row.read = NoAnswer{NoAnswer::Why::NotComparable, asIs(std::string("felt ill"))};
    part.rows.assign(6, row);
    SquadForest data = squadForest(part, 0.95, LoadUnit::Kilograms);
    for (SquadForestRow& each : data.rows)
        each.notComparable = each.notComparable && hatched;
    auto chart = std::make_unique<SquadForestChart>();
    chart->setData(data);
    return drawn(std::move(chart));
}

Drawn season(bool hatched) {
    LiftSession to = test::winter();
    to.conditions.notComparable = "felt ill";
    const std::vector<LiftSession> sessions{test::autumn(), to};
    const auto follow = answers::follow(test::benchPull(), *test::benchPull().mvt, sessions,
                                        Mass{60'000}, 0, test::usualSettings(), Mass{2'500});
    SeasonData data =
        seasonData({.follow = *follow}, {}, VelocityKind::Mean, 0.95, LoadUnit::Kilograms);
    for (SeasonPoint& point : data.points)
        point.notComparable = point.notComparable && hatched;
    auto chart = std::make_unique<SeasonChart>();
    chart->setData(data);
    return drawn(std::move(chart));
}

/// How much darker one in so many of the diagonals of a picture is than the lightest: hatching has
/// its lines that many pixels apart.
double hatching(const QImage& picture, int apart) {
    std::vector<double> ink(static_cast<std::size_t>(apart)), pixels(ink);
    for (int y = 0; y < picture.height(); ++y)
        for (int x = 0; x < picture.width(); ++x) {
            const auto diagonal = static_cast<std::size_t>((x + y) % apart);
            ink[diagonal] += 255 - qGray(picture.pixel(x, y));
            ++pixels[diagonal];
        }
    for (std::size_t i = 0; i < ink.size(); ++i)
        ink[i] /= pixels[i];
    const auto [least, most] = std::ranges::minmax(ink);
    return most - least;
}

QImage onScreen(const Drawn& chart) {
    chart.widget->resize(640, 400);
    return chart.widget->grab().toImage();
}

QImage onPaper(const Drawn& chart) {
    return picture(*chart.out, {480, 300}, 2);
}

} // namespace

class TestHatching : public QObject {
    Q_OBJECT
private Q_SLOTS:
    /// Why there is no bar is read on paper, not through the grey of what is too small.
    void noWordsStandOnTheGrey() {
        answers::ForestRow bar{.label = asIs(std::string("A")),
                               .change = 0,
                               .interval = {-0.3, 0.3}}; // within the band
        answers::ForestRow none{.label = asIs(std::string("B"))};
        none.noBar = asIs(std::string("a reason that is as long as it takes to pass the middle"));
        ForestChart chart;
        chart.resize(900, 200);
        chart.setRows({bar, none}, LoadUnit::Kilograms);
        const QImage picture = chart.grab().toImage();
        const QRgb grey = look::screenGround(chart.palette()).grid.rgb();
        std::vector<int> rows; // of pixels that the band is seen in: the key's box is smaller
        for (int y = 0; y < picture.height(); ++y) {
            int seen = 0;
            for (int x = 0; x < picture.width(); ++x)
                seen += picture.pixel(x, y) == grey;
            if (seen > 50)
                rows.push_back(y);
        }
        QVERIFY(rows.size() > 10);
        // In the row of the bar, the upper one, and not in the other.
        QCOMPARE(rows.back() - rows.front() + 1, int(rows.size()));
        QVERIFY2(rows.back() < picture.height() / 2 + 10, qPrintable(QString::number(rows.back())));
    }

    void everyChartHatchesIt_data() {
        QTest::addColumn<void*>("drawing");
        const auto row = [](const char* name, Drawing drawing) {
            QTest::newRow(name) << reinterpret_cast<void*>(drawing);
        };
        row("both lines", lines);
        row("change by load", change);
        row("change of the max", maxima);
        row("battery", forest);
        row("squad", squad);
        row("season", season);
    }
    void everyChartHatchesIt() {
        QFETCH(void*, drawing);
        const auto draw = reinterpret_cast<Drawing>(drawing);
        const Drawn plain = draw(false), hatched = draw(true);
        const double none = hatching(onScreen(plain), 7), some = hatching(onScreen(hatched), 7);
        QVERIFY2(some > 3 * none, qPrintable(QStringLiteral("%1, %2").arg(none).arg(some)));
        const double noneOnPaper = hatching(onPaper(plain), 8),
                     onPaperToo = hatching(onPaper(hatched), 8);
        QVERIFY2(onPaperToo > 3 * noneOnPaper,
                 qPrintable(QStringLiteral("paper: %1, %2").arg(noneOnPaper).arg(onPaperToo)));
    }

    /// Its figures stay in what is drawn and told; its word is not "no figure".
    void itsIntervalIsDrawnAllTheSame() {
        answers::BatteryComparison battery;
        answers::addLift(battery, test::benchPull(), comparison());
        QVERIFY(battery.forest.size() >= 3);
        for (const answers::ForestRow& row : battery.forest) {
            QVERIFY(row.notComparable && row.interval.low < row.interval.high);
            QCOMPARE(english(answers::forestReading(row)), std::string("not comparable"));
        }
        for (const QStringList& row : squad(true).out->figures().rows)
            QVERIFY(
                row.join(QLatin1Char(32)).contains(QLatin1String("felt ill"), Qt::CaseInsensitive));
    }
};

QTEST_MAIN(TestHatching)
#include "tst_hatching.moc"

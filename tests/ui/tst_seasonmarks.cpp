// SPDX-License-Identifier: GPL-3.0-or-later
// Marks, words and key of the season's chart on seasons made up: nothing lies on anything, the key
// is short and nothing goes unnamed, and a whisker that a frame cuts has an arrow, here and in the
// forests of changes.
#include "tests/ui/madeseason.h"
#include "tests/ui/paintedtexts.h"
#include "ui/athlete/season/seasonchart.h"
#include "ui/athlete/season/seasonlayout.h"
#include "ui/athlete/season/seasonmarks.h"
#include "ui/athlete/season/seasonnames.h"
#include "ui/charts/forestchart.h"
#include "ui/squad/changes/squadforest.h"

#include <QTest>

#include <cmath>
#include <limits>
#include <memory>

using namespace slopebook;
using namespace slopebook::test;
using namespace slopebook::ui;
using Of = SeasonName::Of;

namespace {

constexpr int rounds = 24;

SeasonData madeUp(std::mt19937& engine, int round) {
    return fullSeason(engine, 1 + round % 6, 1 + round % 7);
}

/// A whisker as it is to be seen: shaft first, then its two ends.
std::vector<QRectF> whisker(const charts::PlotFrame& f, double day, double low, double high) {
    const double x = f.x(day), cap = 0.3 * f.textSize;
    const double top = std::max(f.yOf(high), f.area.top());
    const double bottom = std::min(f.yOf(low), f.area.bottom());
    const double up = high > f.y.to ? cap : 0.5, down = low < f.y.from ? cap : 0.5;
    return {QRectF(x - 0.5, top, 1, bottom - top), QRectF(x - cap, top, 2 * cap, up),
            QRectF(x - cap, bottom - down, 2 * cap, down)};
}

struct MaxWhisker {
    std::size_t point = 0;
    std::vector<QRectF> boxes;
};

std::vector<MaxWhisker> maxWhiskers(const SeasonLayout& layout, const SeasonData& data) {
    std::vector<MaxWhisker> all;
    if (!layout.showsMax)
        return all;
    for (std::size_t i = 0; i < data.points.size(); ++i) {
        const SeasonPoint& p = data.points[i];
        if (const auto& held = p.oneRmToPlan ? p.oneRmToPlan : p.oneRmInterval)
            all.push_back({i, whisker(layout.oneRm, p.day, held->low, held->high)});
    }
    return all;
}

bool near(const QPointF& a, const QPointF& b) {
    return std::hypot(a.x() - b.x(), a.y() - b.y()) < 0.6;
}

/// Whether an arrow has its tip there, and points along outward.
bool hasArrow(const TextRecorder& painted, const QPointF& tip, const QPointF& outward) {
    return std::ranges::any_of(painted.arrows(), [&](const QPolygonF& arrow) {
        const QPointF back = (arrow.first() + arrow.last()) / 2;
        return near(arrow[1], tip) && QPointF::dotProduct(arrow[1] - back, outward) > 1;
    });
}

/// Whether a line stands across the whisker there.
bool hasStop(const TextRecorder& painted, const QPointF& end, bool upright) {
    return std::ranges::any_of(painted.strokes(), [&](const QLineF& stroke) {
        const double along = upright ? stroke.dy() : stroke.dx();
        return near(stroke.center(), end) && std::abs(along) < 0.1 && stroke.length() > 2 &&
               stroke.length() < 12;
    });
}

std::unique_ptr<TextRecorder> paintedSeason(const QSizeF& size, const SeasonData& data,
                                            double text) {
    auto painted = std::make_unique<TextRecorder>(size.toSize());
    QPainter painter(painted.get());
    paintSeason(painter, QRectF(QPointF(), size), data, look::paperGround(), text);
    painter.end();
    return painted;
}

void addSizes() {
    QTest::addColumn<QSizeF>("size");
    QTest::addColumn<double>("text");
    QTest::newRow("1280 x 720") << QSizeF(1040, 320) << 14.0;
    QTest::newRow("1920 x 1080") << QSizeF(1680, 560) << 14.0;
    QTest::newRow("853 x 480") << QSizeF(620, 340) << 14.0;
    QTest::newRow("paper") << QSizeF(523, 300) << 7.5;
}

} // namespace

class TestSeasonMarks : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void theKeyIsShortAndNothingGoesUnnamed_data() { addSizes(); }
    void theKeyIsShortAndNothingGoesUnnamed() {
        QFETCH(QSizeF, size);
        QFETCH(double, text);
        std::mt19937 engine(5);
        int named = 0, inKey = 0, told = 0;
        for (int round = 0; round < rounds; ++round) {
            const SeasonData data = madeUp(engine, round);
            const SeasonLayout layout =
                seasonLayout(QRectF(QPointF(), size), data, look::paperGround(), text);
            QVERIFY(layout.key.size() <= 6);
            std::set<Of> beside;
            for (const SeasonName& name : layout.names)
                QVERIFY(beside.insert(name.of).second); // once
            named += int(beside.size());
            for (const Of of : seasonNamesOf(layout, data)) {
                if (beside.contains(of) || of == Of::ToPlan) // the table has it
                    continue;
                QVERIFY(of != Of::Planned); // no tick without its words
                ++inKey;
                const auto alone = seasonKey(data, look::paperGround(), {of});
                const auto none = seasonKey(data, look::paperGround(), {});
                const auto entry = std::ranges::find_if(alone, [&](const auto& each) {
                    return std::ranges::find(none, each.text, &charts::KeyEntry::text) ==
                           none.end();
                });
                QVERIFY(entry != alone.end());
                const bool said = std::ranges::find(layout.key, entry->text,
                                                    &charts::KeyEntry::text) != layout.key.end();
                // Where there is room for neither it is what sentences over the chart say.
                told += said ? 0 : 1;
                QVERIFY2(said || of == Of::Alone || of == Of::Trend || of == Of::BlockTrend ||
                             of == Of::Matters,
                         qPrintable(u"round %1: %2"_s.arg(round).arg(entry->text)));
            }
        }
        qInfo("%d words in the charts; %d not, of which %d not in the key", named, inKey, told);
        // In the narrowest window half of them at the least.
        const bool narrow = size.width() < 45 * text;
        QVERIFY(named > (narrow ? 2 : 12) * told && named > (narrow ? 1 : 2) * inKey);
    }

    void noNameLiesOnAnything_data() { addSizes(); }
    void noNameLiesOnAnything() {
        QFETCH(QSizeF, size);
        QFETCH(double, text);
        std::mt19937 engine(6);
        for (int round = 0; round < rounds; ++round) {
            const SeasonData data = madeUp(engine, round);
            const QRectF target(QPointF(), size);
            const SeasonLayout layout = seasonLayout(target, data, look::paperGround(), text);
            std::vector<QRectF> taken;
            const double r = pointRadius(text);
            const charts::PlotFrame& f = layout.velocity;
            for (const SeasonPoint& p : data.points) {
                if (p.line)
                    taken.emplace_back(f.x(p.day) - r, f.yOf(*p.line) - r, 2 * r, 2 * r);
                for (const double seen : p.seen)
                    taken.emplace_back(f.x(p.day) - r, f.yOf(seen) - 1, 2 * r, 2);
                if (p.interval)
                    for (const QRectF& box : whisker(f, p.day, p.interval->low, p.interval->high))
                        taken.push_back(box);
            }
            for (const SeasonMark& mark : data.marks) {
                const QPointF at = markAt(layout, mark);
                taken.emplace_back(at.x() - r, at.y() - r, 2 * r, 2 * r);
            }
            for (const MaxMark& mark : layout.maxima)
                taken.push_back(mark.box);
            for (const MaxWhisker& each : maxWhiskers(layout, data))
                taken.insert(taken.end(), each.boxes.begin(), each.boxes.end());
            for (const SeasonLayout::Label& label : layout.labels)
                taken.push_back(label.box);
            if (layout.baselineWord)
                taken.push_back(*layout.baselineWord);
            for (const SeasonName& name : layout.names) {
                QVERIFY(target.contains(name.box));
                QVERIFY2(liesOnNone(name.box, taken),
                         qPrintable(u"round %1: %2"_s.arg(round).arg(name.text)));
                taken.push_back(name.box);
            }
            // They are painted where they are placed.
            const auto recorded = paintedSeason(size, data, text);
            const TextRecorder& painted = *recorded;
            for (const SeasonName& name : layout.names)
                QVERIFY2(std::ranges::any_of(
                             painted.texts(),
                             [&](const PaintedText& each) {
                                 return each.text == name.text &&
                                        name.box.adjusted(-2, -2, 2, 2).contains(each.box);
                             }),
                         qPrintable(name.text));
        }
    }

    void noMarkOfTheMaximaLiesOnAnother_data() { addSizes(); }
    void noMarkOfTheMaximaLiesOnAnother() {
        QFETCH(QSizeF, size);
        QFETCH(double, text);
        std::mt19937 engine(7);
        using Kind = MaxMark::Kind;
        int planned = 0, leftOut = 0, measured = 0, beside = 0;
        int overMark = 0, overWhisker = 0;
        for (int round = 0; round < rounds; ++round) {
            const SeasonData data = madeUp(engine, round);
            const SeasonLayout layout =
                seasonLayout(QRectF(QPointF(), size), data, look::paperGround(), text);
            if (!layout.showsMax) {
                QVERIFY(layout.maxima.empty());
                continue;
            }
            const auto recorded = paintedSeason(size, data, text);
            const TextRecorder& painted = *recorded;
            const auto whiskers = maxWhiskers(layout, data);
            for (std::size_t i = 0; i < layout.maxima.size(); ++i) {
                const MaxMark& mark = layout.maxima[i];
                const QString where = u"round %1, mark %2"_s.arg(round).arg(i);
                if (mark.kind == Kind::Estimate) {
                    const SeasonPoint& p = data.points[mark.point];
                    QVERIFY(near(mark.at, layout.oneRm.at(p.day, *p.oneRm)));
                } else {
                    planned += mark.kind == Kind::Planned ? 1 : 0;
                    bool onMark = false, onWhisker = false;
                    for (std::size_t j = 0; j < layout.maxima.size(); ++j)
                        onMark = onMark || (j != i && mark.box.intersects(layout.maxima[j].box));
                    for (const MaxWhisker& each : whiskers)
                        for (std::size_t part = 0; part < each.boxes.size(); ++part)
                            // A tick stands on its own whisker's shaft: it is a value of it.
                            if (mark.kind == Kind::Measured || each.point != mark.point || part > 0)
                                onWhisker = onWhisker || mark.box.intersects(each.boxes[part]);
                    QVERIFY2(mark.kind == Kind::Measured || !(onMark || onWhisker),
                             qPrintable(where));
                    overMark += onMark ? 1 : 0;
                    overWhisker += onWhisker ? 1 : 0;
                    // Ten days have room for everything.
                    QVERIFY2(data.points.size() > 10 || !(onMark || onWhisker), qPrintable(where));
                }
                if (mark.kind == Kind::Measured) {
                    ++measured;
                    const SeasonPoint& p = data.points[mark.point];
                    QCOMPARE(mark.at.y(), layout.oneRm.yOf(*p.measured));
                    const double away = std::abs(mark.at.x() - layout.oneRm.x(p.day));
                    beside += away > 0 ? 1 : 0;
                    QVERIFY2(away < 1.7 * text, qPrintable(where));
                }
                if (mark.kind == Kind::Planned)
                    QVERIFY2(hasStop(painted, mark.at, true), qPrintable(where));
                else
                    QVERIFY2(
                        std::ranges::any_of(painted.points(),
                                            [&](const QPointF& at) { return near(at, mark.at); }),
                        qPrintable(where));
            }
            const auto count = [&](Kind kind) {
                return std::ranges::count(layout.maxima, kind, &MaxMark::kind);
            };
            // No estimate and nothing measured is left out; a tick is.
            QCOMPARE(count(Kind::Estimate), std::ranges::count_if(data.points, [](const auto& p) {
                         return p.oneRm.has_value();
                     }));
            QCOMPARE(count(Kind::Measured), std::ranges::count_if(data.points, [](const auto& p) {
                         return p.measured.has_value();
                     }));
            leftOut += int(std::ranges::count_if(data.points, &SeasonPoint::plannedApart) -
                           count(Kind::Planned));
            // One line upright at each day, not two on one another.
            for (const MaxWhisker& each : whiskers) {
                const QRectF shaft = each.boxes.front();
                for (const QLineF& stroke : painted.strokes()) {
                    const bool here = std::abs(stroke.dx()) < 0.1 &&
                                      std::abs(stroke.x1() - shaft.center().x()) < 0.05 &&
                                      layout.oneRm.area.contains(stroke.center()) &&
                                      stroke.length() < layout.oneRm.area.height() - 1;
                    QVERIFY(!here || std::abs(stroke.length() - shaft.height()) < 0.1);
                }
            }
        }
        qInfo("%d ticks, %d left out; %d measured, %d beside their day, %d over a whisker, %d over "
              "a mark",
              planned, leftOut, measured, beside, overWhisker, overMark);
        QVERIFY(leftOut > 0 && beside > 0);
        QVERIFY(3 * overMark <= measured); // in the densest alone
    }

    void aCutWhiskerHasAnArrow_data() { addSizes(); }
    void aCutWhiskerHasAnArrow() {
        QFETCH(QSizeF, size);
        QFETCH(double, text);
        std::mt19937 engine(8);
        int arrows = 0, stops = 0;
        for (int round = 0; round < rounds; ++round) {
            const SeasonData data = madeUp(engine, round);
            const SeasonLayout layout =
                seasonLayout(QRectF(QPointF(), size), data, look::paperGround(), text);
            const auto recorded = paintedSeason(size, data, text);
            const TextRecorder& painted = *recorded;
            const auto end = [&](const charts::PlotFrame& f, double x, double v, bool upper) {
                const bool cut = upper ? v > f.y.to : v < f.y.from;
                const QPointF at(x, std::clamp(f.yOf(v), f.area.top(), f.area.bottom()));
                (cut ? arrows : stops) += 1;
                return cut ? hasArrow(painted, at, {0, upper ? -1.0 : 1.0}) &&
                                 !hasStop(painted, at, true)
                           : hasStop(painted, at, true);
            };
            for (const SeasonPoint& p : data.points) {
                const double x = layout.velocity.x(p.day);
                if (p.interval)
                    QVERIFY(end(layout.velocity, x, p.interval->low, false) &&
                            end(layout.velocity, x, p.interval->high, true));
                if (const auto held = shownInterval(p); held && layout.showsMax)
                    QVERIFY(end(layout.oneRm, x, held->low, false) &&
                            end(layout.oneRm, x, held->high, true));
            }
            // A block's interval is a box: open where it is cut.
            for (const auto& mean : data.means) {
                const QRectF box = *segmentBox(layout, *mean);
                const auto& f = layout.velocity;
                for (const bool upper : {true, false}) {
                    const double y = upper ? box.top() : box.bottom();
                    const bool cut =
                        upper ? mean->interval->high > f.y.to : mean->interval->low < f.y.from;
                    for (const double x : {box.left(), box.right()})
                        QCOMPARE(hasArrow(painted, {x, y}, {0, upper ? -1.0 : 1.0}), cut);
                    arrows += cut ? 2 : 0;
                }
            }
        }
        qInfo("%d arrows, %d stops", arrows, stops);
        QVERIFY(arrows > 50 && stops > 500);
    }

    void soItHasAmongManyAthletes() {
        constexpr double endless = std::numeric_limits<double>::infinity();
        SquadForest data{.scale = {.from = -0.2, .to = 0.4, .step = 0.1}};
        for (const stats::Interval& interval :
             {stats::Interval{-0.1, 0.3}, {-0.3, 0.3}, {-0.1, 0.5}, {-endless, endless}})
            data.rows.push_back({.name = u"Lane 1"_s, .change = 0.1, .interval = interval});
        data.all = data.rows[2];
        for (const double text : {7.5, 14.0}) {
            const QSizeF size(60 * text, squadForestHeight(data, text, 60 * text));
            TextRecorder painted(size.toSize());
            QPainter painter(&painted);
            paintSquadForest(painter, QRectF(QPointF(), size), data, look::paperGround(), text);
            painter.end();
            int left = 0, right = 0;
            for (const QPolygonF& arrow : painted.arrows()) {
                const double back = arrow.first().x();
                QCOMPARE(back, arrow.last().x());
                (back > arrow[1].x() ? left : right) += 1;
                QVERIFY(hasArrow(painted, arrow[1], {back > arrow[1].x() ? -1.0 : 1.0, 0}));
                QVERIFY(!hasStop(painted, arrow[1], false));
            }
            QCOMPARE(left, 2);
            QCOMPARE(right, 3);
        }
    }

    /// Each change has its place within the axis, however long the whiskers.
    void soItHasAmongManyTests() {
        constexpr double endless = std::numeric_limits<double>::infinity();
        for (const double change : {0.5, 3.0, 20.0, -20.0}) {
            std::vector<answers::ForestRow> rows;
            for (const stats::Interval& off :
                 {stats::Interval{-1, 1}, {-200, 1}, {-1, 200}, {-endless, endless}}) {
                answers::ForestRow row;
                row.change = change;
                row.interval = {change + off.low, change + off.high};
                row.reading = answers::Reading::Unclear;
                rows.push_back(row);
            }
            for (const double text : {7.5, 14.0}) {
                const QSizeF size(60 * text, forestHeight(rows, text));
                TextRecorder painted(size.toSize());
                QPainter painter(&painted);
                painter.setFont(charts::chartFont(text));
                paintForest(painter, QRectF(QPointF(), size), rows, LoadUnit::Kilograms,
                            look::paperGround(), text);
                painter.end();
                int left = 0, right = 0;
                for (const QPolygonF& arrow : painted.arrows()) {
                    const bool toLeft = arrow.first().x() > arrow[1].x();
                    (toLeft ? left : right) += 1;
                    QVERIFY(!hasStop(painted, arrow[1], false));
                }
                QVERIFY2(left >= 2 && right >= 2,
                         qPrintable(u"%1: %2, %3"_s.arg(change).arg(left).arg(right)));
            }
        }
    }
};

QTEST_MAIN(TestSeasonMarks)
#include "tst_seasonmarks.moc"

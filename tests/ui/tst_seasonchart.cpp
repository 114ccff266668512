// SPDX-License-Identifier: GPL-3.0-or-later
// The season's chart: no word lies on a point or on another, keys go through sessions and blocks,
// days not lifted have their mark, a block is chosen as the baseline, trends are drawn when asked.
#include "tests/log/builders.h"
#include "tests/ui/madeseason.h"
#include "ui/athlete/season/seasonchoices.h"
#include "ui/athlete/season/seasonlayout.h"
#include "ui/athlete/season/seasonpage.h"

#include <QComboBox>
#include <QFile>
#include <QHelpEvent>
#include <QLabel>
#include <QMenu>
#include <QSignalSpy>
#include <QTableView>
#include <QTest>
#include <QToolButton>
#include <QToolTip>

#include <algorithm>
#include <random>

using namespace slopebook;
using namespace slopebook::test;
using namespace slopebook::ui;
using namespace Qt::Literals::StringLiterals;

namespace {

/// A session's point and what was seen, as they are painted.
std::vector<QRectF> pointsOf(const SeasonLayout& layout, const SeasonData& data) {
    std::vector<QRectF> all;
    const double r = pointRadius(layout.velocity.textSize);
    const auto add = [&](const QPointF& at) {
        all.emplace_back(at.x() - r, at.y() - r, 2 * r, 2 * r);
    };
    for (const SeasonPoint& p : data.points)
        if (p.line)
            add(layout.velocity.at(p.day, *p.line));
    for (const SeasonPoint& p : data.points)
        for (const double seen : p.seen) {
            const QPointF at = layout.velocity.at(p.day, seen);
            all.emplace_back(at.x() - r, at.y() - 1, 2 * r, 2);
        }
    return all;
}

/// How far a session's and a block's figure may be off: whiskers, and the edges of boxes.
std::vector<QRectF> intervalsOf(const SeasonLayout& layout, const SeasonData& data) {
    std::vector<QRectF> all;
    const auto stroke = [&](const QPointF& from, const QPointF& to) {
        all.push_back(QRectF(from, to).adjusted(-0.5, -0.5, 0.5, 0.5));
    };
    for (const SeasonPoint& p : data.points)
        if (p.interval)
            stroke(layout.velocity.at(p.day, p.interval->high),
                   layout.velocity.at(p.day, p.interval->low));
    for (const auto& mean : data.means)
        if (const auto box = mean ? segmentBox(layout, *mean) : std::nullopt) {
            stroke(box->topLeft(), box->topRight());
            stroke(box->bottomLeft(), box->bottomRight());
            stroke(box->topLeft(), box->bottomLeft());
            stroke(box->topRight(), box->bottomRight());
        }
    return all;
}

/// A page on the sample log.
struct OnTheSample {
    Folder folder;
    std::unique_ptr<Logbook> book;
    std::unique_ptr<SeasonPage> page;

    explicit OnTheSample(const std::string& athlete = "Cora",
                         const std::string& lift = "Bench pull") {
        const auto file = folder.path("season.slopebook");
        if (!QFile::copy(QStringLiteral(SLOPEBOOK_SAMPLE_LOG),
                         QString::fromStdString(file.string())))
            qFatal("the sample log is not there");
        book = std::make_unique<Logbook>(log::Log::open(file));
        page = std::make_unique<SeasonPage>(*book);
        AthleteId who{};
        LiftId what{};
        for (const auto& each : book->log().athletes())
            if (each.value.name == athlete)
                who = each.id;
        for (const auto& each : book->log().lifts())
            if (each.value.name == lift)
                what = each.id;
        page->resize(1080, 640);
        page->setAthleteAndLift(who, what);
        page->show();
    }
    SeasonChart& chart() { return const_cast<SeasonChart&>(page->chart()); }
    QComboBox& box(const char* name) {
        for (auto* each : page->findChildren<QComboBox*>())
            if (each->accessibleName().startsWith(QLatin1String(name)))
                return *each;
        qFatal("no such box");
    }
    void choose(QComboBox& among, const QString& text) {
        among.setCurrentIndex(among.findText(text));
        Q_EMIT among.activated(among.currentIndex());
    }
    QStringList columnTexts(int column) {
        QStringList all;
        for (int row = 0; row < page->table().rowCount(); ++row)
            all << page->table().index(row, column).data().toString();
        return all;
    }
    QString told() {
        for (auto* label : page->findChildren<QLabel*>())
            if (label->accessibleDescription() == u"What the season says"_s)
                return label->text();
        return {};
    }
};

} // namespace

class TestSeasonChart : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void noWordLiesOnAPointOrAnInterval_data() {
        QTest::addColumn<QSizeF>("size");
        QTest::addColumn<double>("text");
        QTest::newRow("1280 x 720") << QSizeF(1040, 380) << 14.0;
        QTest::newRow("853 x 480") << QSizeF(620, 180) << 14.0;
        QTest::newRow("paper") << QSizeF(523, 300) << 7.5;
    }
    void noWordLiesOnAPointOrAnInterval() {
        QFETCH(QSizeF, size);
        QFETCH(double, text);
        const QRectF target(QPointF(), size);
        std::mt19937 engine(3);
        int apart = 0, labels = 0, words = 0;
        for (int round = 0; round < 24; ++round) {
            const int blocks = 1 + round % 6;
            const SeasonData data = madeSeason(engine, blocks, 1 + round % 9);
            const SeasonLayout layout = seasonLayout(target, data, look::paperGround(), text);
            std::vector<QRectF> boxes;
            for (const SeasonLayout::Label& label : layout.labels) {
                boxes.push_back(label.box);
                apart += label.apart ? 1 : 0;
                QVERIFY(target.contains(label.box));
            }
            labels += int(boxes.size());
            QCOMPARE(int(boxes.size()), blocks); // none is left out
            if (layout.baselineWord) {
                ++words;
                boxes.push_back(*layout.baselineWord);
            }
            const auto points = pointsOf(layout, data);
            const auto intervals = intervalsOf(layout, data);
            for (std::size_t i = 0; i < boxes.size(); ++i) {
                for (const QRectF& point : points)
                    QVERIFY2(!boxes[i].intersects(point),
                             qPrintable(u"round %1, word %2"_s.arg(round).arg(i)));
                for (const QRectF& interval : intervals)
                    QVERIFY2(!boxes[i].intersects(interval),
                             qPrintable(u"round %1, word %2, an interval"_s.arg(round).arg(i)));
                for (std::size_t j = 0; j < i; ++j)
                    QVERIFY2(!boxes[i].intersects(boxes[j]),
                             qPrintable(u"round %1, words %2 and %3"_s.arg(round).arg(i).arg(j)));
            }
            // Marks stand in their strip, under the speeds and above the maxima.
            for (const SeasonMark& mark : data.marks) {
                QVERIFY(layout.foot.contains(markAt(layout, mark)));
                QVERIFY(!layout.showsMax || layout.foot.bottom() < layout.oneRm.area.top());
            }
        }
        qInfo("%d labels, %d of them above the frame; the baseline's word %d times of 24", labels,
              apart, words);
        QVERIFY(words > 12);
    }

    void keysGoThroughSessionsAndBlocks() {
        OnTheSample sample;
        SeasonChart& chart = sample.chart();
        const SeasonData& data = chart.data();
        QCOMPARE(std::ranges::count(data.items, SeasonItem::Kind::Block, &SeasonItem::kind), 3);
        auto* view = sample.page->findChild<QTableView*>(u"season"_s);
        QTest::keyClick(&chart, Qt::Key_Home);
        QCOMPARE(view->currentIndex().row(), 0);
        for (int place = 1; place < int(data.items.size()); ++place) {
            QTest::keyClick(&chart, Qt::Key_Right);
            QCOMPARE(view->currentIndex().row(), place);
            QCOMPARE(chart.accessibleDescription(), data.told[place]);
            const SeasonItem& item = data.items[std::size_t(place)];
            if (item.kind == SeasonItem::Kind::Block)
                QVERIFY2(chart.accessibleDescription().contains(u"m/s"_s) &&
                             chart.accessibleDescription().startsWith(data.spans[item.index].name),
                         qPrintable(chart.accessibleDescription()));
        }
        QTest::keyClick(&chart, Qt::Key_Right); // there is no further
        QCOMPARE(view->currentIndex().row(), int(data.items.size()) - 1);
        QTest::keyClick(&chart, Qt::Key_Left);
        QCOMPARE(view->currentIndex().row(), int(data.items.size()) - 2);
        // The chart's figures, as they are copied: a row each.
        QCOMPARE(chart.figures().rows.size(), data.items.size());
    }

    /// What came before is the first block, until the coach says otherwise: one day says less.
    void theFirstBlockIsReadAgainst() {
        OnTheSample sample;
        QCOMPARE(sample.box("Session or block").currentText(), u"Autumn"_s);
        QVERIFY2(sample.told().contains(u"against the block Autumn "_s), qPrintable(sample.told()));
        const auto block = [](std::int64_t id, Date first, Date last) {
            return Stored<BlockId, Block>{BlockId{id}, {.name = "B", .first = first, .last = last}};
        };
        const auto on = [](Date date) {
            LiftSession session;
            session.date = date;
            return session;
        };
        const std::vector blocks{block(1, day(2026, 3, 1), day(2026, 3, 31)),
                                 block(2, day(2026, 1, 1), day(2026, 1, 31)),
                                 block(3, day(2025, 12, 1), day(2025, 12, 31))};
        const std::vector both{on(day(2026, 1, 5)), on(day(2026, 3, 5))};
        QCOMPARE(firstBlock(blocks, both), std::optional(BlockId{2})); // nothing lies in the third
        QVERIFY(!firstBlock(blocks, {both.front()})); // against itself nothing would be read
        QVERIFY(!firstBlock({}, both));
    }

    void aBlockIsTheBaseline() {
        OnTheSample sample;
        QComboBox& baselines = sample.box("Session or block");
        QVERIFY(baselines.findText(u"Winter flood"_s) >= 0);
        sample.choose(baselines, u"Autumn"_s);
        const SeasonData& data = sample.chart().data();
        QCOMPARE(data.baseline, -1);
        QVERIFY(data.means[0] && data.baselineValue == data.means[0]->value);
        QCOMPARE(data.means[0]->label, u"baseline"_s);
        QVERIFY(!data.means[2]->label.isEmpty());
        QVERIFY2(sample.told().contains(u"against the block Autumn (all blocks at once), "_s),
                 qPrintable(sample.told()));
        QCOMPARE(baselines.currentText(), u"Autumn"_s);
        // Clicked on its segment, another block takes its place.
        const double text = QFontInfo(sample.chart().font()).pixelSize();
        const QRectF whole = sample.chart().rect();
        const SeasonLayout layout = seasonLayout(whole, data, look::paperGround(), text);
        const QRectF segment = *segmentBox(layout, *data.means[1]);
        std::optional<QPoint> place;
        for (double x = segment.left() + 5; x < segment.right() && !place; x += 20) {
            const QPointF at(x, layout.velocity.yOf(data.means[1]->value));
            if (seasonItemAt(whole, data, text, at) == SeasonItem{SeasonItem::Kind::Block, 1})
                place = at.toPoint();
        }
        QVERIFY(place);
        QHelpEvent help(QEvent::ToolTip, *place, sample.chart().mapToGlobal(*place));
        QCoreApplication::sendEvent(&sample.chart(), &help);
        QVERIFY2(QToolTip::text().startsWith(u"Winter flood: "_s), qPrintable(QToolTip::text()));
        QTest::mouseClick(&sample.chart(), Qt::LeftButton, {}, *place);
        QCOMPARE(baselines.currentText(), u"Winter flood"_s);
    }

    void trendsAreDrawnWhereAsked() {
        OnTheSample sample;
        auto* button = sample.page->findChild<QToolButton*>(u"trends"_s);
        QVERIFY(button);
        QVERIFY(button->text().startsWith(u"trend \u25be"_s));
        QVERIFY(sample.chart().data().trend && sample.chart().data().blockTrends.empty());
        auto* menu = button->findChild<QMenu*>();
        QVERIFY(menu);
        menu->actions()[0]->trigger();
        QVERIFY(button->text().startsWith(u"no trend"_s));
        QVERIFY(!sample.chart().data().trend);
        QVERIFY(!sample.told().contains(u"Trend"_s));
        menu->actions()[1]->trigger();
        QVERIFY(button->text().startsWith(u"trends of blocks"_s));
        const SeasonData& data = sample.chart().data();
        // Drawn for blocks of four days and more; of the others the reason is told.
        int drawn = 0;
        for (qsizetype i = 0; i < qsizetype(data.items.size()); ++i)
            if (data.items[std::size_t(i)].kind == SeasonItem::Kind::Block) {
                const bool one = data.told[i].contains(u"Trend within"_s);
                drawn += one ? 1 : 0;
                QVERIFY2(one || data.told[i].contains(u"needs four days"_s),
                         qPrintable(data.told[i]));
            }
        QCOMPARE(int(data.blockTrends.size()), drawn);
    }

    void daysNotLiftedHaveTheirMark() {
        OnTheSample sample("Finn", "Back squat");
        QComboBox& loads = sample.box("Load");
        int at = -1;
        for (int i = 0; i < loads.count(); ++i)
            if (loads.itemText(i).startsWith(u"90"_s))
                at = i;
        QVERIFY(at >= 0);
        loads.setCurrentIndex(at);
        Q_EMIT loads.activated(at);
        const SeasonData& data = sample.chart().data();
        QCOMPARE(data.marks.size(), std::size_t(1));
        QVERIFY(!data.marks[0].tried);
        QVERIFY(sample.columnTexts(8).contains(u"90\u00a0kg not possible"_s));
        const double text = QFontInfo(sample.chart().font()).pixelSize();
        const SeasonLayout layout =
            seasonLayout(sample.chart().rect(), data, look::paperGround(), text);
        QVERIFY(std::ranges::any_of(
            layout.names, [](const SeasonName& name) { return name.text == u"not possible"_s; }));
        const QPointF mark = markAt(layout, data.marks[0]);
        const auto found = seasonItemAt(sample.chart().rect(), data, text, mark);
        QVERIFY((found == SeasonItem{SeasonItem::Kind::NotLifted, 0}));
        QHelpEvent help(QEvent::ToolTip, mark.toPoint(),
                        sample.chart().mapToGlobal(mark.toPoint()));
        QCoreApplication::sendEvent(&sample.chart(), &help);
        QVERIFY2(QToolTip::text().contains(u"only the small plates are left"_s),
                 qPrintable(QToolTip::text()));
        bool inFigures = false;
        for (const QStringList& row : sample.chart().figures().rows)
            inFigures = inFigures || row.join(u' ').contains(u"was not possible"_s);
        QVERIFY(inFigures);
    }
};

QTEST_MAIN(TestSeasonChart)
#include "tst_seasonchart.moc"

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/bendwords.h"
#include "core/answers/readingwords.h"
#include "core/questions/blockquestions.h"
#include "tests/support/ladders.h"
#include "tests/ui/typedladders.h"
#include "ui/athlete/compare/comparepage.h"
#include "ui/paper/comparisonrows.h"
#include "ui/parts/sidekey.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QAbstractItemModelTester>
#include <QAction>
#include <QComboBox>
#include <QLabel>
#include <QTest>
#include <QToolButton>

using namespace slopebook;
using namespace slopebook::questions;
using namespace slopebook::ui;
using namespace Qt::Literals::StringLiterals;
using slopebook::test::day;

namespace {

QStringList rowOf(const QAbstractItemModel* model, int row) {
    QStringList cells;
    for (int c = 0; c < model->columnCount(); ++c)
        cells << model->index(row, c).data().toString();
    return cells;
}

QString ascii(QString text) {
    return text.replace(QChar(0x2212), u'-').replace(QChar(QChar::Nbsp), u' ');
}

} // namespace

class TestCompareView : public QObject {
    Q_OBJECT
private:
    // The line of changes, the figures beside it and the change itself are of the same sessions.
    static void allOfABlockIsShown(test::TypedLadders& w, BlockId from, BlockId to) {
        const auto about = questions::background(w.book.log(), w.athlete, w.lift);
        const auto blocks = w.book.log().blocks();
        const auto c = comparisonOfSides(w.book.log(), w.book.context(w.lift), about,
                                         sessionsOf(from, blocks, about.sessions),
                                         sessionsOf(to, blocks, about.sessions));
        QVERIFY(c && c->ofSeveral());
        const auto chart = charts::changeOf(*c, LoadUnit::Kilograms);
        QVERIFY(!chart.readings.empty());
        for (const charts::ChangeReading& reading : chart.readings) {
            const auto nearest = std::ranges::min_element(chart.along, {}, [&](const auto& point) {
                return std::abs(point.load - reading.load);
            });
            QVERIFY(std::abs(nearest->change - reading.change) < 0.002);
        }
        for (const page::LoadRow& row : page::loadRows(*c, LoadUnit::Kilograms))
            QVERIFY2(std::abs(row.to.toDouble() - row.from.toDouble() -
                              QString(row.change).replace(u'\u2212', u'-').toDouble()) < 0.0016,
                     qPrintable(row.from + u' ' + row.to + u' ' + row.change));
        const auto max = page::oneRmRows(*c, LoadUnit::Kilograms).front();
        QVERIFY2(std::abs(max.to.toDouble() - max.from.toDouble() -
                          QString(max.change).replace(u'\u2212', u'-').toDouble()) < 0.16,
                 qPrintable(max.from + u' ' + max.to + u' ' + max.change));
        QCOMPARE(page::sideText(*c, true), u"Flood, 2 sessions"_s);
        // The lines are of one day of each, and that is said there; of two days there is no other.
        ComparisonView view;
        const auto* heaviest = view.findChild<QLabel*>(u"heaviest"_s);
        const auto two =
            comparisonOf(w.book.log(), about, about.sessions.front(), about.sessions.back());
        QVERIFY(two && !two->ofSeveral());
        for (const auto* shown : {&*c, &*two, &*c}) {
            view.show(*shown, {});
            QCOMPARE(heaviest->isHidden(), !shown->ofSeveral());
            QCOMPARE(view.lineChart().accessibleName().contains(heaviest->text()),
                     shown->ofSeveral());
        }
        view.showReason(u"no"_s, {}, LoadUnit::Kilograms);
        QVERIFY(heaviest->isHidden());
    }

private Q_SLOTS:
    void init() { QTest::failOnWarning(QRegularExpression(u"nan|NaN|QPainter"_s)); }

    void theWindowSaysWhatTheCommandsSay_data() {
        QTest::addColumn<int>("which");
        QTest::addRow("faster at light loads") << 0;
        QTest::addRow("slower") << 1;
        QTest::addRow("no shared loads") << 2;
        QTest::addRow("far extrapolated") << 3;
        QTest::addRow("the same ladder again") << 4;
    }
    void theWindowSaysWhatTheCommandsSay() {
        QFETCH(int, which);
        LiftSession from = test::autumn(), to = test::winter();
        if (which == 1)
            std::swap(from, to);
        if (which == 2)
            to = test::ladder(2, to.date, {{85, 0.55}, {90, 0.5}, {95, 0.41}});
        if (which == 3)
            to = test::ladder(2, to.date, {{20, 1.42}, {25, 1.38}, {30, 1.30}, {35, 1.24}});
        if (which == 4) {
            const auto id = to.session;
            to = from;
            to.session = id;
        }
        const auto c = test::usualComparison(from, to);
        QCOMPARE(ascii(said(c.sentence, LoadUnit::Kilograms)),
                 QString::fromStdString(english(c.sentence)));
    }

    void theNewestTwoAreComparedAtOnce() {
        test::TypedLadders w;
        ComparePage page(w.book);
        page.setAthleteAndLift(w.athlete, w.lift);
        QVERIFY(page.canPrint());
        const auto answer =
            comparisonOf(w.book.log(), w.athlete, w.lift, w.sessions[0], w.sessions[1]);
        QVERIFY(answer);
        QCOMPARE(page.view().sentence(), said(answer->sentence, LoadUnit::Kilograms));
        QCOMPARE(page.view().changeChart().accessibleName(), page.view().sentence());
        QCOMPARE(page.view().lineChart().data().sessions.size(), std::size_t{2});
        const auto rows = page::loadRows(*answer, LoadUnit::Kilograms);
        QCOMPARE(page.view().byLoad()->rowCount(), static_cast<int>(rows.size()));
        const QAbstractItemModelTester first(const_cast<QAbstractItemModel*>(page.view().byLoad()));
        const QAbstractItemModelTester second(const_cast<QAbstractItemModel*>(page.view().oneRm()));
        for (std::size_t i = 0; i < rows.size(); ++i)
            QCOMPARE(rowOf(page.view().byLoad(), static_cast<int>(i)),
                     (QStringList{rows[i].load, rows[i].from, rows[i].to, rows[i].change,
                                  rows[i].readingInterval, rows[i].smallest, rows[i].reading}));
        QVERIFY(page.view().oneRm()->rowCount() >= 4);
        QVERIFY(page.view().notes().contains(u"MVT"_s));
    }

    /// As if straight beside the allowance, in picture, table and words; the picture's dashes are
    /// what the allowance adds.
    void theMaxStandsBothWays() {
        test::TypedLadders w;
        ComparePage page(w.book);
        page.setAthleteAndLift(w.athlete, w.lift);
        const auto c = *comparisonOf(w.book.log(), w.athlete, w.lift, w.sessions[0], w.sessions[1]);
        const auto straight = answers::maxIfStraight(c);
        QVERIFY(straight);
        const charts::MaxChangeData& data = page.view().maxChart().data();
        QCOMPARE(data.rows.size(), std::size_t{2});
        QCOMPARE(data.rows[0].name, u"as if lines were straight"_s);
        QCOMPARE(data.rows[1].name, u"bend allowance in"_s);
        QCOMPARE(data.rows[0].whisker.interval, straight->interval);
        QCOMPARE(data.rows[1].whisker.interval, c.oneRm->read.interval);
        QCOMPARE(data.rows[1].whisker.straight, straight->interval);
        QVERIFY(charts::bends(data.rows[1].whisker) && !charts::bends(data.rows[0].whisker));
        QStringList cells;
        for (int row = 0; row < page.view().oneRm()->rowCount(); ++row)
            cells << rowOf(page.view().oneRm(), row);
        for (const QString& wanted :
             {signedRangeText(straight->interval, 1), signedRangeText(c.oneRm->read.interval, 1),
              rangeText(*c.from.oneRm->toPlan, 1), rangeText(*c.from.oneRm->straight, 1),
              said(answers::maxCell(*straight), LoadUnit::Kilograms)})
            QVERIFY2(cells.contains(wanted), qPrintable(wanted));
        const QString notes = page.view().notes();
        for (const Words& words : {answers::bendWords(c), answers::bendSource(c.settings.bend)}) {
            QVERIFY(!words.empty());
            QVERIFY2(notes.contains(said(asSentence(words), LoadUnit::Kilograms).toHtmlEscaped()),
                     qPrintable(said(words, LoadUnit::Kilograms)));
        }
        // No figure, no picture of one.
        page.setAthleteAndLift(std::nullopt, std::nullopt);
        QVERIFY(page.view().maxChart().data().rows.empty());
    }

    /// An unclear reading stands beside half of its interval: what such tests could have shown.
    void unclearIsNeverABareWord() {
        test::TypedLadders w({test::autumn(), test::ladder(2, test::day(2026, 2, 5),
                                                           {{30, 1.30}, {50, 1.03}, {70, 0.73}})});
        ComparePage page(w.book);
        page.setAthleteAndLift(w.athlete, w.lift);
        int unclear = 0;
        const QAbstractItemModel* loads = page.view().byLoad();
        static const QRegularExpression ends(u"([+-]?[0-9.]+) to ([+-]?[0-9.]+)"_s);
        for (int row = 0; row < loads->rowCount(); ++row) {
            const QStringList cells = rowOf(loads, row);
            if (!cells.last().startsWith(u"unclear"_s))
                continue;
            ++unclear;
            const auto interval = ends.match(ascii(cells[4]));
            QVERIFY2(interval.hasMatch(), qPrintable(cells[4]));
            const double half =
                (interval.captured(2).toDouble() - interval.captured(1).toDouble()) / 2;
            static const QRegularExpression from(u"clear from ([0-9.]+)"_s);
            const auto shows = from.match(ascii(cells.last()));
            QVERIFY2(shows.hasMatch(), qPrintable(cells.last()));
            // half of it, rounded up to hundredths; both ends are read to the thousandth
            const double over = shows.captured(1).toDouble() - half;
            QVERIFY2(over > -0.0011 && over < 0.0111, qPrintable(cells.join(u'|')));
        }
        QVERIFY(unclear > 0);
        for (const QStringList& row : page.view().changeChart().figures().rows)
            QVERIFY2(row.last() != u"unclear"_s, qPrintable(row.join(u'|')));
    }

    void theCoachsPairIsKeptByAthleteWhileTheWindowIsOpen() {
        const LiftSession first = test::ladder(
            1, Date{std::chrono::year{2025}, std::chrono::month{9}, std::chrono::day{1}},
            {{40, 1.2}, {60, 0.9}, {80, 0.6}});
        test::TypedLadders w({first, test::autumn(), test::winter()});
        const AthleteId other = w.book.addAthlete({.name = "Heron", .note = {}});
        SessionHead head;
        head.athlete = other;
        head.date = first.date;
        const SessionId only = w.book.addSession(head);
        Set set;
        set.load = Mass{40'000};
        set.reps = {{.velocity = 1.1, .excluded = {}}};
        w.book.addSets(only, w.lift, {set});
        ComparePage page(w.book);
        page.setAthleteAndLift(w.athlete, w.lift);
        const auto chosen = [&page] {
            QStringList pair;
            for (const char* name : {"Earlier session or block", "Later session or block"})
                for (const QComboBox* box : page.findChildren<QComboBox*>())
                    if (box->accessibleName() == QLatin1String(name))
                        pair << box->currentData().toString();
            return pair;
        };
        const auto pair = [&w](std::size_t from, std::size_t to) {
            return QStringList{keyOf(w.sessions[from]), keyOf(w.sessions[to])};
        };
        QCOMPARE(chosen(), pair(1, 2));
        page.compare(w.sessions[0], w.sessions[1]);
        QCOMPARE(chosen(), pair(0, 1));
        page.setAthleteAndLift(other, w.lift);
        QVERIFY(!page.canPrint()); // one load has no line: nothing to compare
        page.setAthleteAndLift(w.athlete, w.lift);
        QCOMPARE(chosen(), pair(0, 1));
        page.refresh(Logbook::What::Sets, {});
        QCOMPARE(chosen(), pair(0, 1));
    }

    void theLastTwoThatCanBeComparedAreOffered() {
        // The newest day holds one load only: it has no line, and the two before it are offered.
        const LiftSession light = test::ladder(
            3, Date{std::chrono::year{2026}, std::chrono::month{6}, std::chrono::day{1}},
            {{40, 1.2}});
        test::TypedLadders w({test::autumn(), test::winter(), light});
        ComparePage page(w.book);
        page.setAthleteAndLift(w.athlete, w.lift);
        QVERIFY(page.canPrint());
        const auto answer =
            comparisonOf(w.book.log(), w.athlete, w.lift, w.sessions[0], w.sessions[1]);
        QVERIFY(answer);
        QCOMPARE(page.view().sentence(), said(answer->sentence, LoadUnit::Kilograms));
    }

    void theOrderOfChoosingDoesNotTurnTheChange() {
        test::TypedLadders w;
        ComparePage page(w.book);
        page.setAthleteAndLift(w.athlete, w.lift);
        const QString sentence = page.view().sentence();
        page.compare(w.sessions[1], w.sessions[0]);
        QCOMPARE(page.view().sentence(), sentence);
    }

    // Two weeks of autumn and two of winter: the page offers the blocks that hold sessions, newest
    // first, says what the commands say of them, and shows days that another page asks for.
    void blocksAreOfferedAndComparedByAllTheirSessions() {
        const auto again = [](LiftSession ladder, Date date, double by) {
            ladder.date = date;
            for (Point& p : ladder.points)
                p.velocity += by;
            return ladder;
        };
        test::TypedLadders w({test::autumn(), again(test::autumn(), day(2025, 10, 11), 0.01),
                              test::winter(), again(test::winter(), day(2026, 1, 24), -0.01)});
        const BlockId empty =
            w.book.addBlock({.name = "Summer", .first = day(2025, 6, 1), .last = day(2025, 8, 31)});
        const BlockId light =
            w.book.addBlock({.name = "Light", .first = day(2025, 9, 1), .last = day(2025, 11, 30)});
        const BlockId flood =
            w.book.addBlock({.name = "Flood", .first = day(2026, 1, 1), .last = day(2026, 2, 28)});
        ComparePage page(w.book);
        page.setAthleteAndLift(w.athlete, w.lift);
        const auto* box = page.findChild<QComboBox*>();
        QCOMPARE(box->itemData(0).toString(), keyOf(flood));
        QCOMPARE(box->itemData(1).toString(), keyOf(light));
        QCOMPARE(box->findData(keyOf(empty)), -1);
        QCOMPARE(box->count(), 2 + 1 + 4); // a line between blocks and sessions
        QVERIFY2(box->itemText(0).endsWith(u"2 sessions"_s), qPrintable(box->itemText(0)));

        const auto about = questions::background(w.book.log(), w.athlete, w.lift);
        const auto asked = [&](const LiftSide& from, const LiftSide& to) {
            const auto blocks = w.book.log().blocks();
            const auto answer = comparisonOfSides(w.book.log(), w.book.context(w.lift), about,
                                                  sessionsOf(from, blocks, about.sessions),
                                                  sessionsOf(to, blocks, about.sessions));
            return answer ? said(answer->sentence, LoadUnit::Kilograms) : QString();
        };
        QVERIFY(!asked(light, flood).isEmpty());
        page.compare(flood, light); // in whatever order
        QCOMPARE(page.view().sentence(), asked(light, flood));
        QVERIFY(page.canPrint());
        QCOMPARE(box->currentData().toString(), keyOf(light));
        allOfABlockIsShown(w, light, flood);
        page.compare(light, w.sessions[3]);
        QCOMPARE(page.view().sentence(), asked(light, w.sessions[3]));
        page.compare(DayStretch{day(2025, 9, 1), day(2025, 11, 30)}, flood); // those of a block
        QCOMPARE(box->currentData().toString(), keyOf(light));
        const DayStretch days{day(2025, 10, 1), day(2025, 10, 31)};
        page.compare(days, flood);
        QCOMPARE(box->currentData().toString(), keyOf(days));
        QCOMPARE(page.view().sentence(), asked(days, flood));
        page.compare(light, w.sessions[0]); // on both sides
        QVERIFY(!page.canPrint());
        // A block that goes away takes the choice with it.
        page.compare(light, flood);
        w.book.removeBlock(light);
        page.refresh(Logbook::What::Everything, {});
        QVERIFY(page.canPrint());
        QCOMPARE(box->findData(keyOf(light)), -1);
    }

    void levelAndScatterChangeTheIntervals() {
        test::TypedLadders w;
        ComparePage page(w.book);
        page.setAthleteAndLift(w.athlete, w.lift);
        const auto intervals = [&] {
            QStringList all;
            for (int row = 0; row < page.view().byLoad()->rowCount(); ++row)
                all += rowOf(page.view().byLoad(), row);
            for (int row = 0; row < page.view().oneRm()->rowCount(); ++row)
                all += rowOf(page.view().oneRm(), row);
            return all;
        };
        const QStringList usual = intervals();
        const auto choose = [&](const QString& text) {
            for (QAction* action : page.findChildren<QAction*>())
                if (action->text().startsWith(text)) {
                    action->trigger();
                    return true;
                }
            return false;
        };
        const auto said = [&] {
            for (const auto* button : page.findChildren<QToolButton*>())
                if (button->accessibleName().contains(u"scatter"_s))
                    return button->accessibleName();
            return QString();
        };
        QVERIFY(choose(u"80"_s));
        QVERIFY2(said().contains(u"80"_s) && said().endsWith(u", one scatter"_s),
                 qPrintable(said()));
        const QStringList narrower = intervals();
        QVERIFY(narrower != usual);
        QVERIFY(choose(u"each day its own scatter"_s));
        QVERIFY(intervals() != narrower);
        QVERIFY2(said().endsWith(u", two scatters"_s), qPrintable(said()));
        QVERIFY(page.view().notes().contains(u"Satterthwaite"_s));
    }

    void noAnswerGivesTheReasonInPlace() {
        test::TypedLadders w(
            {test::ladder(1, test::day(2026, 1, 5), {{40, 1.1}, {60, 0.8}}),
             test::ladder(2, test::day(2026, 2, 5), {{40, 1.1}, {50, 0.95}, {60, 0.8}})});
        ComparePage page(w.book);
        page.setAthleteAndLift(w.athlete, w.lift);
        QVERIFY(!page.canPrint());
        QVERIFY2(page.view().sentence().contains(u"third load"_s),
                 qPrintable(page.view().sentence()));
        QCOMPARE(page.view().byLoad()->rowCount(), 0);
        QCOMPARE(page.view().lineChart().data().sessions.size(), std::size_t{2});
    }

    void oneSessionIsTooFew() {
        test::TypedLadders w({test::autumn()});
        ComparePage page(w.book);
        page.setAthleteAndLift(w.athlete, w.lift);
        QVERIFY(!page.canPrint());
        QVERIFY(page.view().sentence().contains(u"two sessions"_s));
        page.setAthleteAndLift(std::nullopt, std::nullopt);
        QVERIFY(page.view().sentence().contains(u"Choose"_s));
        page.print(); // nothing to print: nothing happens
    }

    /// Bands of another question are drawn where they are asked for, and not beside the answer.
    void bandsAreDrawnOnDemand() {
        test::TypedLadders w;
        ComparePage page(w.book);
        page.setAthleteAndLift(w.athlete, w.lift);
        const charts::ChangeFigure& figure = page.view().changeChart().figure();
        QVERIFY(!figure.data().readings.empty());
        const auto seen = [&](const QString& series) {
            for (const QAbstractSeries* each : figure.series())
                if (each->objectName() == series)
                    return each->isVisible();
            return false;
        };
        QAction* bands = nullptr;
        for (QAction* action : page.findChildren<QAction*>())
            if (action->text().startsWith(u"bands"_s))
                bands = action;
        QVERIFY(bands && !bands->isChecked());
        for (const bool wanted : {false, true, false}) {
            if (bands->isChecked() != wanted)
                bands->trigger();
            for (const char* name : {"interval", "band upper", "band lower"})
                QCOMPARE(seen(QLatin1String(name)), wanted);
            QVERIFY(seen(u"change"_s));
        }
        bands->trigger();
        page.refresh(Logbook::What::Everything, {}); // they stay as they were chosen
        QVERIFY(seen(u"interval"_s));
    }

    void writesItsPage() {
        test::TypedLadders w;
        ComparePage page(w.book);
        page.setAthleteAndLift(w.athlete, w.lift);
        const QString file = w.folder.filePath(u"page.pdf"_s);
        page.writePdfTo(file.toStdString());
        QFile written(file);
        QVERIFY(written.open(QIODevice::ReadOnly));
        QCOMPARE(written.read(5), QByteArray("%PDF-"));
    }

    void aNewSetIsSeenAfterRefresh() {
        test::TypedLadders w;
        ComparePage page(w.book);
        page.setAthleteAndLift(w.athlete, w.lift);
        const QString before = page.view().sentence();
        Set set;
        set.load = Mass{80'000};
        set.reps = {{.velocity = 0.70, .excluded = {}}};
        w.book.addSets(w.sessions[1], w.lift, {set});
        page.refresh(Logbook::What::Sets, w.sessions[1]);
        QVERIFY(page.view().sentence() != before);
    }
};

QTEST_MAIN(TestCompareView)
#include "tst_compareview.moc"

// SPDX-License-Identifier: GPL-3.0-or-later
// A block's story in the window: typed into the block's form, refused in place, undone and done
// again, shown in the lists of blocks and beside the season's figures, on screen and on paper.
#include "tests/log/builders.h"
#include "tests/ui/seasonbyhand.h"
#include "ui/athlete/overview/matrixmodel.h"
#include "ui/athlete/overview/wholeseasonpage.h"
#include "ui/athlete/overview/wholeseasonprint.h"
#include "ui/parts/roomfor.h"
#include "ui/records/blocksdialog.h"
#include "ui/squad/blocks/blockspage.h"
#include "ui/squad/blocks/timeline.h"

#include <QLabel>
#include <QLineEdit>
#include <QTableView>
#include <QTableWidget>
#include <QTest>

using namespace slopebook;
using namespace slopebook::test;
using namespace slopebook::ui;
using namespace Qt::Literals::StringLiterals;

namespace {

QLineEdit& field(const QDialog& dialog, const char* name) {
    for (auto* line : dialog.findChildren<QLineEdit*>())
        if (line->accessibleName() == QLatin1String(name))
            return *line;
    qFatal("no field %s", name);
}

bool shows(const QAbstractItemModel& model, const QString& words) {
    for (int row = 0; row < model.rowCount(); ++row)
        for (int column = 0; column < model.columnCount(); ++column)
            if (model.index(row, column).data().toString().contains(words))
                return true;
    return false;
}

} // namespace

class TestBlockStory : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init() {
        m_folder = std::make_unique<Folder>();
        log::Log log = log::Log::create(m_folder->path());
        m_season = fillSeason(log);
        tellStory(log);
        m_book = std::make_unique<Logbook>(std::move(log));
    }
    void cleanup() {
        QLocale::setDefault(QLocale::c());
        m_book.reset();
    }

    void isTypedUndoneAndDoneAgain() {
        const Block before = block();
        BlockDialog dialog(*m_book, m_season.flood, day(2026, 1, 1), nullptr);
        QCOMPARE(field(dialog, "Trained").text(), u"fast, under what the flood left"_s);
        QCOMPARE(field(dialog, "Sessions a week").text(), u"2-2.5"_s);
        field(dialog, "Trained").setText(u"  jumps "_s);
        field(dialog, "Sessions a week").setText(u"2,5 – 3"_s);
        dialog.accept();
        QCOMPARE(dialog.result(), int(QDialog::Accepted));
        const Block after = block();
        QCOMPARE(after.trained, "jumps");
        QVERIFY(after.aWeek == (SessionsAWeek{.fewest = 2.5, .most = 3}));
        m_book->undoStack()->undo();
        QVERIFY(block() == before);
        m_book->undoStack()->redo();
        QVERIFY(block() == after);
        VERIFY_SOUND(m_book->log());
    }

    void isTakenAway() {
        BlockDialog dialog(*m_book, m_season.flood, day(2026, 1, 1), nullptr);
        field(dialog, "Trained").clear();
        field(dialog, "Sessions a week").setText(u" "_s);
        dialog.accept();
        QVERIFY(block().trained.empty() && !block().aWeek);
    }

    void isRefusedInPlace_data() {
        QTest::addColumn<QString>("typed");
        for (const char* typed : {"2-", "0", "22", "2.3", "3-2", "often", "-2"})
            QTest::newRow(typed) << QString::fromUtf8(typed);
    }
    void isRefusedInPlace() {
        QFETCH(QString, typed);
        BlockDialog dialog(*m_book, m_season.flood, day(2026, 1, 1), nullptr);
        dialog.show();
        field(dialog, "Trained").setText(u"jumps"_s);
        field(dialog, "Sessions a week").setText(typed);
        dialog.accept();
        QVERIFY(dialog.isVisible());
        QVERIFY(!m_book->undoStack()->canUndo()); // nothing was written
        bool said = false;
        for (const QLabel* label : dialog.findChildren<QLabel*>())
            said = said || (label->isVisible() && label->text().contains(u"in halves from 0.5"_s));
        QVERIFY(said);
    }

    void germansTypeAComma() {
        QLocale::setDefault(QLocale(QLocale::German));
        QCOMPARE(aWeekText(SessionsAWeek{.fewest = 2, .most = 2.5}), u"2-2,5"_s);
        BlockDialog dialog(*m_book, m_season.flood, day(2026, 1, 1), nullptr);
        QCOMPARE(field(dialog, "Sessions a week").text(), u"2-2,5"_s);
        dialog.accept(); // as it was shown, unchanged
        QVERIFY(block().aWeek == (SessionsAWeek{.fewest = 2, .most = 2.5}));
    }

    void standsInTheListsOfBlocks() {
        const BlocksDialog dialog(
            *m_book, [] { return day(2026, 3, 1); }, nullptr);
        const auto* list = dialog.findChild<QTableWidget*>();
        QVERIFY(shows(*list->model(), u"fast, under what the flood left"_s));
        QVERIFY(shows(*list->model(), u"2-2.5"_s));
        BlocksPage page(*m_book, [] { return day(2026, 3, 1); });
        page.setAthleteAndLift(m_season.lane3, m_season.pull);
        const QTableView* blocks = nullptr;
        for (const auto* each : page.findChildren<QTableView*>())
            if (shows(*each->model(), u"fast, under what the flood left"_s))
                blocks = each;
        QVERIFY(blocks);
        QVERIFY(shows(*blocks->model(), u"2-2.5"_s));
        QVERIFY(blocks->model()
                    ->index(0, 0)
                    .data(Qt::ToolTipRole)
                    .toString()
                    .contains(u"planned: 2 to 2.5 sessions a week"_s));
    }

    // A name too long for its bar is cut short, and lanes are never squeezed under their least.
    void isNamedInANarrowBarAndHasItsLane() {
        const auto drawn = [](const std::string& name, bool story) {
            Timeline timeline(LoadUnit::Kilograms);
            timeline.show({{.name = name,
                            .first = day(2026, 1, 1),
                            .last = day(2026, 1, 14),
                            .trained = story ? "hypertrophy" : ""},
                           {.name = "Year", .first = day(2026, 1, 1), .last = day(2026, 12, 31)}},
                          {});
            timeline.resize(900, timeline.minimumSizeHint().height());
            const QRect bar = timeline.barOf(0).toRect();
            return timeline.grab(bar.adjusted(3, 3, -3, -3)).toImage();
        };
        const QImage bare = drawn("", false);
        QVERIFY(bare.width() > 10 && bare.width() < 60);
        QVERIFY(drawn("Overreaching", false) != bare);
        QVERIFY(drawn("Overreaching and then some", false) != bare);
        QCOMPARE(drawn("", true), bare); // what was done has no room, and stands in the table

        for (int lane = 0; lane < 8; ++lane)
            m_book->addBlock({.name = "Lane " + std::to_string(lane),
                              .first = day(2026, 1, 1),
                              .last = day(2026, 2, 1)});
        BlocksPage page(*m_book, [] { return day(2026, 3, 1); });
        page.resize(1000, 480);
        page.show();
        QVERIFY(QTest::qWaitForWindowExposed(&page));
        const auto* timeline = page.findChild<Timeline*>();
        QVERIFY(timeline->lanes() >= 8);
        QVERIFY2(timeline->height() >= timeline->minimumSizeHint().height(),
                 qPrintable(QString::number(timeline->height())));
    }

    // The picture asks for the height of its words and no more; what has no room there stands in
    // the table, and not twice otherwise.
    void theWordsOfABlockAreNeverLost_data() {
        QTest::addColumn<QSize>("size");
        for (const QSize size : {QSize(1280, 900), QSize(620, 400), QSize(380, 400)})
            QTest::addRow("%dx%d", size.width(), size.height()) << size;
    }
    void theWordsOfABlockAreNeverLost() {
        QFETCH(QSize, size);
        m_book->addBlock({.name = "Afterwards",
                          .first = day(2026, 7, 1),
                          .last = day(2026, 7, 9),
                          .trained = "unforeseeable",
                          .note = "heavier, slower, fewer, and none of it on two days running"});
        BlocksPage page(*m_book, [] { return day(2026, 3, 1); });
        page.resize(size);
        page.show();
        QVERIFY(QTest::qWaitForWindowExposed(&page));
        QCoreApplication::processEvents();
        const auto* timeline = page.findChild<Timeline*>();
        const auto* table = page.findChild<QTableView*>(u"blocks"_s);
        QCOMPARE(timeline->height(),
                 std::max(timeline->minimumSizeHint().height(), pictureHeight(page)));
        for (const int column : {7, 8})
            QCOMPARE(table->isColumnHidden(column), timeline->showsAllWords());
        page.resize(size + QSize(0, 300));
        QCoreApplication::processEvents();
        QCOMPARE(timeline->height(),
                 std::max(timeline->minimumSizeHint().height(), pictureHeight(page)));
    }
    void aPictureIsAsHighAsItsWords() {
        const auto shown = [](const std::string& note, int width) {
            auto timeline = std::make_unique<Timeline>(LoadUnit::Kilograms);
            timeline->resize(width, 300);
            timeline->show(
                {{.name = "Base", .first = day(2026, 1, 1), .last = day(2026, 2, 1), .note = note}},
                {});
            return timeline;
        };
        const auto few = shown("", 900), more = shown("heavy", 900);
        const auto broken = shown("heavy, slow, and few of them", 120);
        QVERIFY(few->barOf(0).height() < more->barOf(0).height());
        QVERIFY(more->barOf(0).height() < 2.6 * few->fontMetrics().height() + 10);
        QVERIFY(more->barOf(0).height() < broken->barOf(0).height());
        QVERIFY(few->showsAllWords() && more->showsAllWords() && broken->showsAllWords());
        QVERIFY(!shown("unforeseeable", 60)->showsAllWords());
    }

    void standsBesideTheSeasonsFigures() {
        answers::SeasonMatrix matrix = seasonByHand();
        matrix.blocks[1].block.trained = "fast lifts";
        matrix.blocks[1].block.aWeek = SessionsAWeek{2, 3};
        matrix.notes.clear();
        matrix.story.clear();
        tellSeason(matrix);
        const SeasonNotes notes = seasonNotes(*askedByHand(matrix).answer, LoadUnit::Kilograms);
        QCOMPARE(notes.story.size(), 3);
        for (const QString& part :
             {u"fast lifts"_s, u"planned: 2 to 3 sessions a week"_s, u"in this log "_s,
              u"up to 70\u00a0kg"_s, u"heavy plates under water"_s})
            QVERIFY2(notes.story[1].contains(part), qPrintable(notes.story[1]));
        const SeasonNotes pounds = seasonNotes(*askedByHand(matrix).answer, LoadUnit::Pounds);
        QVERIFY2(pounds.story[1].contains(u"lb"_s), qPrintable(pounds.story[1]));
        MatrixModel model;
        model.setFigure(matrixFigure(matrix, LoadUnit::Kilograms));
        QVERIFY(model.headerData(1, Qt::Horizontal, Qt::ToolTipRole)
                    .toString()
                    .contains(u"fast lifts"_s));
        WholeSeasonPage page(*m_book);
        page.showSeason(askedByHand(matrix));
        bool story = false, design = false;
        for (const QLabel* label : page.findChildren<QLabel*>()) {
            story = story || label->text().contains(u"planned: 2 to 3 sessions a week"_s);
            design = design || label->text().contains(u"second athlete"_s);
        }
        QVERIFY(story && design);
    }

private:
    Block block() const { return m_book->log().blocks().at(0).value; }

    std::unique_ptr<Folder> m_folder;
    Season m_season;
    std::unique_ptr<Logbook> m_book;
};

QTEST_MAIN(TestBlockStory)
#include "tst_blockstory.moc"

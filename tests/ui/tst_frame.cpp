// SPDX-License-Identifier: GPL-3.0-or-later
// The frame of the window: the table of pages, the index with its athletes found by typing, folded
// away and opened for one choice, the lift inside the page, and what of it is remembered.
#include "tests/log/builders.h"
#include "ui/athlete/profile/profilepage.h"
#include "ui/floor/entry/entrypage.h"
#include "ui/window/frame.h"
#include "ui/window/framelook.h"
#include "ui/window/index.h"
#include "ui/window/indexrows.h"
#include "ui/window/mainwindow.h"
#include "ui/window/namecombo.h"
#include "ui/window/strip.h"
#include "ui/window/workspace.h"

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QScrollBar>
#include <QTableView>
#include <QTest>
#include <QToolButton>

#include <algorithm>
#include <array>
#include <map>
#include <set>

using namespace slopebook;
using namespace slopebook::test;
using namespace slopebook::ui;
using namespace Qt::Literals::StringLiterals;

namespace {

constexpr int many = 400; // more athletes than the index reads at once

QStringList shownIn(const QListView& list) {
    QStringList rows;
    for (int row = 0; row < list.model()->rowCount(); ++row)
        rows << list.model()->index(row, 0).data().toString();
    return rows;
}

/// Of one lift from the beginning: History begins with every lift.
bool ofALift(const PageEntry& entry) {
    return entry.ofLift && entry.page != Page::History;
}

} // namespace

class TestFrame : public QObject {
    Q_OBJECT

    std::unique_ptr<Folder> m_folder;
    Season m_season;
    Settings m_kept;
    std::unique_ptr<MainWindow> m_window;

    Workspace& work() const { return *m_window->workspace(); }
    QListView& list() const { return *work().findChild<QListView*>(u"indexList"_s); }
    QLineEdit& find() const { return *work().findChild<QLineEdit*>(u"findAthlete"_s); }
    QLabel& foot() const { return *work().findChild<QLabel*>(u"indexFoot"_s); }
    QToolButton& place() const { return *work().findChild<QToolButton*>(u"place"_s); }
    QLineEdit& line() const { return *work().findChild<QLineEdit*>(u"setLine"_s); }
    NameCombo& lift() const { return *work().findChild<NameCombo*>(u"lift"_s); }
    void key(Qt::Key key, Qt::KeyboardModifiers with = {}) const {
        QTest::keyClick(m_window.get(), key, with);
    }
    void type(const char* keys) const {
        QTest::keyClicks(QApplication::focusWidget(), QLatin1String(keys));
    }
    void enter() const { QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return); }
    void click(const QString& row) const {
        const auto at = static_cast<int>(shownIn(list()).indexOf(row));
        QVERIFY2(at >= 0, qPrintable(row));
        list().scrollTo(list().model()->index(at, 0));
        QTest::mouseClick(list().viewport(), Qt::LeftButton, {},
                          list().visualRect(list().model()->index(at, 0)).center());
    }
    void open(const Settings& settings = {}, QSize size = {1280, 720}) {
        m_window.reset();
        Surroundings given;
        given.settings = settings;
        given.keepSettings = [this](const Settings& kept) { m_kept = kept; };
        given.clock = [] { return day(2026, 3, 14); };
        m_window = std::make_unique<MainWindow>(given);
        m_window->resize(size);
        m_window->show();
        m_window->activateWindow();
        QVERIFY(QTest::qWaitForWindowActive(m_window.get()));
        m_window->openLogFile(QString::fromStdString(m_folder->path().string()));
        QVERIFY(m_window->workspace());
        QCoreApplication::processEvents();
    }

private Q_SLOTS:
    void init() {
        QTest::failOnWarning(QRegularExpression(u"nan|NaN|QAbstractItemModel"_s));
        m_folder = std::make_unique<Folder>();
        log::Log log = log::Log::create(m_folder->path());
        m_season = fillSeason(log);
        log.add(Lift{.name = "Back squat"});
    }
    void cleanup() { m_window.reset(); }

    // Whatever page of a part is shown, its rows stand where they stood.
    void theIndexStandsStillWithinAPart() {
        open();
        QCoreApplication::processEvents();
        std::map<std::pair<Part, QString>, int> tops;
        int seen = 0;
        for (const PageEntry& entry : pages()) {
            work().showPage(entry.page);
            for (int i = 0; i < 3; ++i)
                QCoreApplication::processEvents();
            for (const PageEntry& other : pages()) {
                const auto row = shownIn(list()).indexOf(other.title());
                if (other.part != entry.part || row < 0)
                    continue;
                const QRect at = list().visualRect(list().model()->index(int(row), 0));
                const int top = list().viewport()->mapTo(m_window.get(), at.topLeft()).y();
                const auto [held, first] = tops.try_emplace({entry.part, other.title()}, top);
                QVERIFY2(held->second == top,
                         qPrintable(u"%1 on %2: %3, was %4"_s.arg(other.title(), entry.title())
                                        .arg(top)
                                        .arg(held->second)));
                seen += first ? 0 : 1;
            }
        }
        QVERIFY(seen > 10);
    }

    void theTableOfPagesIsInOrder() {
        std::set<Qt::Key> keys;
        std::set<QString> words;
        int at = 0;
        Part part = Part::Floor;
        for (const PageEntry& entry : pages()) {
            QCOMPARE(static_cast<int>(entry.page), at++);
            QVERIFY(entry.part >= part); // each part's together
            part = entry.part;
            QVERIFY(keys.insert(entry.key).second);
            const bool letter =
                std::ranges::count(std::array{Qt::Key_T, Qt::Key_R, Qt::Key_M, Qt::Key_U},
                                   entry.key) > 0;
            QVERIFY((entry.key >= Qt::Key_0 && entry.key <= Qt::Key_9) || letter);
            QVERIFY(words.insert(QLatin1String(entry.word)).second);
            QVERIFY(!entry.title().isEmpty());
            QVERIFY(pageCalled(QLatin1String(entry.word)) == entry.page);
        }
        QVERIFY(pageCalled(u"3"_s) == Page::Session); // what was kept before it had words
        for (const Part each : parts)
            QVERIFY(std::ranges::count(pages(), each, &PageEntry::part) > 0);
    }

    void theChosenAthleteUnfoldsToTheirPages() {
        open();
        const QStringList own{u"Overview"_s, u"Lines"_s,        u"History"_s, u"Comparison"_s,
                              u"Season"_s,   u"Whole season"_s, u"Battery"_s, u"Plan"_s};
        QCOMPARE(shownIn(list()), (QStringList{u"Session"_s, u"Stations"_s, u"Lane 3"_s,
                                               u"Stroke seat"_s})); // the floor
        key(Qt::Key_2, Qt::ControlModifier);
        QCOMPARE(shownIn(list()), QStringList{u"Lane 3"_s} + own + QStringList{u"Stroke seat"_s});
        click(u"Stroke seat"_s);
        QCOMPARE(work().athleteName(), u"Stroke seat"_s);
        QVERIFY(work().page() == Page::Lines);
        QCOMPARE(shownIn(list()), (QStringList{u"Lane 3"_s, u"Stroke seat"_s} + own));
        click(u"Season"_s);
        QVERIFY(work().page() == Page::Season);
        key(Qt::Key_8, Qt::ControlModifier);
        QCOMPARE(shownIn(list()), (QStringList{u"Changes"_s, u"Blocks"_s, u"What is due"_s,
                                               u"Noise and devices"_s}));
        key(Qt::Key_9, Qt::ControlModifier); // of one athlete as well, who can be seen and changed
        QCOMPARE(shownIn(list()),
                 (QStringList{u"Changes"_s, u"Blocks"_s, u"What is due"_s, u"Noise and devices"_s,
                              u"Lane 3"_s, u"Stroke seat"_s}));
        click(u"Lane 3"_s);
        QCOMPARE(work().athleteName(), u"Lane 3"_s);
        QVERIFY(work().page() == Page::Blocks);
    }

    void aPartRemembersItsPage() {
        open();
        auto* words = work().findChild<PartBar*>();
        key(Qt::Key_5, Qt::ControlModifier);
        QCOMPARE(words->currentIndex(), 1);
        words->setCurrentIndex(2);
        QVERIFY(work().page() == Page::Changes);
        words->setCurrentIndex(0);
        QVERIFY(work().page() == Page::Session);
        words->setCurrentIndex(1);
        QVERIFY(work().page() == Page::Season);
    }

    void anAthleteIsFoundByTyping() {
        open();
        key(Qt::Key_F, Qt::ControlModifier);
        QVERIFY(find().hasFocus());
        type("sEa");
        QCOMPARE(shownIn(list()), QStringList{u"Stroke seat"_s});
        QCOMPARE(work().athleteName(), u"Lane 3"_s); // until it is taken
        enter();
        QCOMPARE(work().athleteName(), u"Stroke seat"_s);
        QVERIFY(find().text().isEmpty());
        QVERIFY(line().hasFocus());          // what is typed next is a set
        QCOMPARE(shownIn(list()).size(), 4); // with the floor's pages
        key(Qt::Key_F, Qt::ControlModifier);
        type("nobody");
        QCOMPARE(shownIn(list()).size(), 0);
        const QString usual = foot().text();
        enter();
        QCOMPARE(work().athleteName(), u"Stroke seat"_s);
        QCOMPARE(find().text(), u"nobody"_s); // to be mended, and said why
        QVERIFY2(foot().text().contains(u"nobody"_s), qPrintable(foot().text()));
        const int wide = work().index().width();
        find().selectAll();
        type("wwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwww");
        enter();
        QCoreApplication::processEvents();
        QCOMPARE(work().index().width(), wide);
        // The arrows go to another of those that hold it.
        key(Qt::Key_F, Qt::ControlModifier);
        type("e");
        QCOMPARE(foot().text(), usual);
        QTest::keyClick(&find(), Qt::Key_Down);
        enter();
        QCOMPARE(work().athleteName(), u"Stroke seat"_s);
        key(Qt::Key_F, Qt::ControlModifier);
        QTest::keyClick(&find(), Qt::Key_Up);
        QCOMPARE(work().athleteName(), u"Stroke seat"_s);
        enter();
        QCOMPARE(work().athleteName(), u"Lane 3"_s);
        // What is half typed goes with the keys.
        key(Qt::Key_F, Qt::ControlModifier);
        type("x");
        line().setFocus();
        QVERIFY(find().text().isEmpty());
        QCOMPARE(shownIn(list()).size(), 4);
    }

    // Else a set goes to another than whose name stands there.
    void whereTheArrowsWentIsForgotten() {
        open();
        const auto down = [this] {
            key(Qt::Key_F, Qt::ControlModifier);
            QTest::keyClick(&find(), Qt::Key_Down);
            QCOMPARE(list().currentIndex().data().toString(), u"Stroke seat"_s);
        };
        const auto takesNoOther = [this] {
            QCOMPARE(list().currentIndex().data().toString(), u"Lane 3"_s);
            key(Qt::Key_F, Qt::ControlModifier);
            enter();
            QCOMPARE(work().athleteName(), u"Lane 3"_s);
        };
        down();
        QTest::keyClick(&find(), Qt::Key_Escape);
        takesNoOther();
        down();
        line().setFocus();
        takesNoOther();
        down();
        work().logbook().addAthlete({.name = "Cox"}); // by another hand
        takesNoOther();
    }

    void theListIsWorkedByKeys() {
        open();
        key(Qt::Key_2, Qt::ControlModifier);
        list().setFocus(Qt::TabFocusReason);
        QTest::keyClick(&list(), Qt::Key_Down);
        QVERIFY(work().page() == Page::Lines); // going there is not choosing
        QTest::keyClick(&list(), Qt::Key_Return);
        QVERIFY(work().page() == Page::History);
        QTest::keyClick(&list(), Qt::Key_End);
        QTest::keyClick(&list(), Qt::Key_Space);
        QCOMPARE(work().athleteName(), u"Stroke seat"_s);
        QTest::keyClick(&list(), Qt::Key_L); // a letter begins a name
        QVERIFY(find().hasFocus());
        QCOMPARE(find().text(), u"l"_s);
        enter();
        QCOMPARE(work().athleteName(), u"Lane 3"_s);
    }

    void noPageButTheShownHearsOfTyping() {
        open();
        key(Qt::Key_2, Qt::ControlModifier);
        const auto* lines = work().findChild<ProfilePage*>();
        key(Qt::Key_4, Qt::ControlModifier);
        auto* rows = lines->findChild<QTableView*>(u"lines"_s)->model();
        int told = 0;
        connect(rows, &QAbstractItemModel::modelReset, this, [&] { ++told; });
        key(Qt::Key_F, Qt::ControlModifier);
        type("stroke");
        enter();
        QCOMPARE(work().athleteName(), u"Stroke seat"_s);
        QCOMPARE(told, 0);
        key(Qt::Key_2, Qt::ControlModifier);
        QVERIFY(told > 0); // now it has
    }

    void foldedAwayItsChoiceStandsFirst() {
        open();
        QVERIFY(!place().isVisible());
        key(Qt::Key_F9);
        QVERIFY(!work().index().isVisible());
        QVERIFY(m_window->actions().foldIndex->isChecked());
        for (const PageEntry& entry : pages()) {
            work().showPage(entry.page);
            QCoreApplication::processEvents();
            QVERIFY2(place().isVisible(), entry.word);
            QVERIFY2(work().currentPage()->parentWidget()->isAncestorOf(&place()), entry.word);
            QVERIFY2(place().text().contains(entry.title()), entry.word);
            QVERIFY2(place().text().contains(u"Lane 3"_s) == entry.ofAthlete, entry.word);
            QCOMPARE(lift().isVisible(), ofALift(entry));
        }
        // Open for one choice.
        work().showPage(Page::Session);
        key(Qt::Key_F, Qt::ControlModifier);
        QVERIFY(work().index().isVisible() && find().hasFocus());
        type("str");
        enter();
        QVERIFY(!work().index().isVisible());
        QVERIFY(place().text().contains(u"Stroke seat"_s));
        QVERIFY(line().hasFocus());
        place().click();
        QVERIFY(work().index().isVisible());
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
        QVERIFY(!work().index().isVisible());
        key(Qt::Key_F9);
        QVERIFY(work().index().isVisible());
        QVERIFY(!place().isVisible());
    }

    void thePlaceOpensTheIndexOnThePageThatIsShown() {
        open();
        key(Qt::Key_F9);
        for (const PageEntry& entry : pages()) {
            work().showPage(entry.page);
            QCoreApplication::processEvents();
            place().click();
            QVERIFY2(work().page() == entry.page, entry.word);
            QVERIFY2(work().index().isVisible(), entry.word);
            QVERIFY2(entry.ofAthlete ? find().hasFocus() : list().hasFocus(), entry.word);
            QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
            QVERIFY2(!work().index().isVisible(), entry.word);
        }
    }

    void withoutAthletesThePlaceOpensAndCloses() {
        m_folder = std::make_unique<Folder>();
        log::Log::create(m_folder->path());
        open();
        key(Qt::Key_F9);
        work().showPage(Page::Plan);
        QCoreApplication::processEvents();
        for (const bool byKey : {false, true}) {
            if (byKey)
                work().focusAthlete();
            else
                place().click();
            QVERIFY(work().index().isVisible() && list().hasFocus());
            QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
            QVERIFY(!work().index().isVisible());
        }
    }

    void aRenamedAthleteIsCalledSoInThePlace() {
        open();
        key(Qt::Key_F9);
        QVERIFY(place().text().contains(u"Lane 3"_s));
        Athlete now = work().logbook().log().athlete(m_season.lane3).value;
        now.name = "Lane 5";
        work().logbook().changeAthlete(m_season.lane3, now);
        QVERIFY2(place().text().contains(u"Lane 5"_s), qPrintable(place().text()));
    }

    void aNarrowWindowFoldsUntilTheCoachSays() {
        open({}, {853, 480});
        QVERIFY(work().frame().folded());
        QVERIFY(m_window->actions().foldIndex->isChecked());
        m_window->resize(1280, 720);
        QTRY_VERIFY(!work().frame().folded());
        QVERIFY(work().index().isVisible());
        m_window->resize(853, 480);
        QTRY_VERIFY(work().frame().folded());
        key(Qt::Key_F9);
        QVERIFY(work().index().isVisible());
        m_window->close();
        QCOMPARE(m_kept.indexFolded, std::optional(false));
    }

    void whatWasArrangedIsRemembered() {
        open();
        work().showPage(Page::Season);
        work().frame().setIndexWidth(260);
        QCoreApplication::processEvents();
        QCOMPARE(work().index().width(), 260);
        key(Qt::Key_F9);
        m_window->close();
        QCOMPARE(m_kept.page, u"season"_s);
        QCOMPARE(m_kept.indexFolded, std::optional(true));
        QCOMPARE(m_kept.indexWidth, 260);
        open(m_kept);
        QVERIFY(work().page() == Page::Season);
        QVERIFY(work().frame().folded());
        key(Qt::Key_F9);
        QCoreApplication::processEvents();
        QCOMPARE(work().index().width(), 260);
        // In another language as well.
        m_window->speak(u"de"_s);
        QCoreApplication::processEvents();
        QVERIFY(work().page() == Page::Season);
        QCOMPARE(work().index().width(), 260);
    }

    void theLiftIsChosenInsideThePage() {
        open();
        for (const PageEntry& entry : pages()) {
            work().showPage(entry.page);
            QCoreApplication::processEvents();
            QCOMPARE(lift().isVisible(), ofALift(entry));
        }
        // History begins with every lift: the box comes once one is asked for.
        work().showPage(Page::History);
        auto* whose = work().currentPage()->findChild<QComboBox*>(u"whose"_s);
        QVERIFY(whose);
        whose->setCurrentIndex(0);
        QVERIFY(lift().isVisible());
        whose->setCurrentIndex(2);
        QVERIFY(!lift().isVisible());
        work().showPage(Page::Lines);
        key(Qt::Key_F, Qt::ControlModifier | Qt::ShiftModifier);
        QVERIFY(lift().lineEdit()->hasFocus());
        QTest::keyClicks(lift().lineEdit(), u"squat"_s);
        QTest::keyClick(lift().lineEdit(), Qt::Key_Return);
        QCOMPARE(work().liftName(), u"Back squat"_s);
        QVERIFY(work().page() == Page::Lines);
        work().showPage(Page::Battery); // no lift's: where it can be chosen
        key(Qt::Key_F, Qt::ControlModifier | Qt::ShiftModifier);
        QVERIFY(lift().isVisible());
    }

    void nobodysPageLeadsToAnAthletes() {
        open();
        work().showPage(Page::Changes);
        QVERIFY(!find().isVisible());
        key(Qt::Key_F, Qt::ControlModifier);
        QVERIFY(find().isVisible() && find().hasFocus());
        QVERIFY(entryOf(work().page()).part == Part::Athlete);
    }

    void withoutAthletesThePagesAreThereAllTheSame() {
        m_folder = std::make_unique<Folder>();
        log::Log::create(m_folder->path());
        open();
        work().showPage(Page::Plan);
        QCOMPARE(shownIn(list()).size(), 8);
        QVERIFY(!find().isEnabled());
        click(u"Lines"_s);
        QVERIFY(work().page() == Page::Lines);
        work().logbook().addAthlete({.name = "Cox"});
        QCOMPARE(work().athleteName(), u"Cox"_s);
        QCOMPARE(shownIn(list()).front(), u"Cox"_s);
    }

    void thousandsAreReadAsTheyAreLookedAt() {
        {
            log::Log log = log::Log::open(m_folder->path());
            log.together([&] {
                for (int i = 0; i < many; ++i)
                    log.add(Athlete{.name = "Rower " + std::to_string(1000 + i)});
            });
        }
        open();
        QVERIFY(list().model()->rowCount() < many);
        QAbstractItemModelTester tester(list().model(),
                                        QAbstractItemModelTester::FailureReportingMode::Warning);
        tester.setUseFetchMore(false);
        work().showPage(Page::Lines);
        for (int i = 0; i < 20 && list().model()->rowCount() < many + 8; ++i)
            list().verticalScrollBar()->setValue(list().verticalScrollBar()->maximum());
        QCOMPARE(list().model()->rowCount(), many + 2 + 6);
        key(Qt::Key_F, Qt::ControlModifier);
        type("1399");
        QCOMPARE(shownIn(list()), QStringList{u"Rower 1399"_s});
        enter();
        QCOMPARE(work().athleteName(), u"Rower 1399"_s);
        const int row = static_cast<int>(shownIn(list()).indexOf(u"Rower 1399"_s));
        QVERIFY(
            list().viewport()->rect().intersects(list().visualRect(list().model()->index(row, 0))));
    }
};

QTEST_MAIN(TestFrame)
#include "tst_frame.moc"

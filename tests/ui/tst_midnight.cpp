// SPDX-License-Identifier: GPL-3.0-or-later
// A window that stays open over midnight, and over a sleep: what day a session is of.
#include "tests/log/builders.h"
#include "tests/ui/movingclock.h"
#include "ui/athlete/battery/attemptsview.h"
#include "ui/floor/entry/entrypage.h"
#include "ui/floor/entry/resttimer.h"
#include "ui/records/blocksdialog.h"
#include "ui/window/mainwindow.h"
#include "ui/window/workspace.h"
#include "ui/words/format.h"

#include <QComboBox>
#include <QDateEdit>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>
#include <QTimer>

using namespace slopebook;
using namespace slopebook::test;
using namespace slopebook::ui;
using namespace std::chrono_literals;

namespace {
constexpr Date evening = day(2026, 6, 10), morning = day(2026, 6, 11);
} // namespace

class TestMidnight : public QObject {
    Q_OBJECT

    std::unique_ptr<Folder> m_folder;
    Season m_season;
    std::unique_ptr<MovingClock> m_clock;
    std::unique_ptr<MainWindow> m_window;

    Workspace& work() const { return *m_window->workspace(); }
    EntryPage& page() const { return work().entry(); }
    template <class Widget>
    Widget* named(const char* name) const {
        return page().findChild<Widget*>(QLatin1String(name));
    }
    QDateEdit* date() const { return page().findChild<QDateEdit*>(); }
    QLineEdit* line() const { return named<QLineEdit>("setLine"); }
    QString answer() const { return named<QLabel>("setAnswer")->text(); }
    void type(const char* set) const {
        line()->setFocus();
        QTest::keyClicks(line(), QLatin1String(set));
        QTest::keyClick(line(), Qt::Key_Return);
    }
    void choose(AthleteId athlete) const { work().choose(athlete, m_season.pull); }
    /// The days of the sessions with sets of the pull made since the evening, with their sets.
    std::map<Date, std::size_t> sets(AthleteId athlete) const {
        const log::Log log = log::Log::open(m_folder->path(), log::Access::ReadOnly);
        std::map<Date, std::size_t> found;
        for (const auto& session : log.sessions(athlete))
            if (session.value.date >= evening)
                found[session.value.date] += log.sets(session.id, m_season.pull).size();
        return found;
    }
    using Days = std::map<Date, std::size_t>;
    /// What the window does by itself every two seconds, now.
    void wait() const {
        for (QTimer* timer : work().findChildren<QTimer*>(Qt::FindDirectChildrenOnly))
            if (!timer->isSingleShot())
                timer->setInterval(1);
        QTest::qWait(20);
    }
    QString rest() const {
        const auto* label = named<QLabel>("rest");
        return label->isVisible() ? label->text() : QString();
    }

private Q_SLOTS:
    void init() {
        QTest::failOnWarning(QRegularExpression(QStringLiteral("nan|NaN")));
        m_folder = std::make_unique<Folder>();
        {
            log::Log log = log::Log::create(m_folder->path());
            m_season = fillSeason(log);
        }
        m_clock = std::make_unique<MovingClock>(QDateTime(QDate(2026, 6, 10), QTime(23, 59, 50)));
        Surroundings given;
        given.clock = m_clock->clock();
        given.settings.restTimer = true;
        m_window = std::make_unique<MainWindow>(given);
        m_window->show();
        QVERIFY(QTest::qWaitForWindowActive(m_window.get()));
        m_window->openLogFile(QString::fromStdString(m_folder->path().string()));
        choose(m_season.lane3);
    }
    void cleanup() { m_window.reset(); }

    void aSetTypedAfterMidnightIsOfTheNewDay_data() {
        QTest::addColumn<int>("seconds");
        QTest::addColumn<bool>("seen");
        QTest::newRow("at once") << 11 << false;
        QTest::newRow("a while later") << 42 << true;
        QTest::newRow("after a sleep") << 9 * 3600 << true;
        QTest::newRow("typed before the window sees that it woke") << 9 * 3600 << false;
    }
    void aSetTypedAfterMidnightIsOfTheNewDay() {
        QFETCH(int, seconds);
        QFETCH(bool, seen);
        QCOMPARE(modelDate(date()->date()), evening);
        m_clock->moveOn(std::chrono::seconds(seconds));
        if (seen) {
            wait();
            QCOMPARE(modelDate(date()->date()), morning);
        }
        type("60 0.90 0.88");
        QCOMPARE(sets(m_season.lane3), (Days{{morning, 1}}));
    }

    void startIsOfTheNewDayToo() {
        m_clock->moveOn(1min);
        QTest::mouseClick(named<QPushButton>("startSession"), Qt::LeftButton);
        QCOMPARE(sets(m_season.lane3), (Days{{morning, 0}}));
    }

    void whatWasTypedForANewSessionStays() {
        page().beginSession();
        auto* mass = named<QLineEdit>("bodyMass");
        mass->setFocus();
        QTest::keyClicks(mass, QStringLiteral("81"));
        m_clock->moveOn(1min);
        wait();
        QTest::keyClicks(mass, QStringLiteral(".5"));
        QTest::keyClick(mass, Qt::Key_Return);
        QVERIFY(page().session());
        const SessionHead head = work().logbook().log().session(*page().session()).head.value;
        QCOMPARE(head.date, morning);
        QCOMPARE(head.bodyMass, std::optional(Mass{81'500}));
    }

    void aDayThatTheCoachTypedStays() {
        page().beginSession();
        date()->setDate(QDate(2026, 6, 7)); // a sheet of paper of last Sunday
        m_clock->moveOn(1min);
        wait();
        type("60 0.90 0.88");
        m_clock->moveOn(9h);
        wait();
        type("70 0.80 0.78");
        const log::Log log = log::Log::open(m_folder->path(), log::Access::ReadOnly);
        QCOMPARE(sets(m_season.lane3), Days());
        QCOMPARE(log.sets(*page().session(), m_season.pull).size(), 2U);
        QCOMPARE(log.session(*page().session()).head.value.date, day(2026, 6, 7));
        // It was not lifted today: another day's sheet is no reason to go on with it.
        choose(m_season.stroke);
        choose(m_season.lane3);
        QVERIFY(!page().session());
    }

    void whatIsBeingLiftedIsOneSession() {
        type("40 1.10 1.08");
        m_clock->moveOn(5min);
        wait();
        type("50 1.00 0.98");
        choose(m_season.stroke);
        m_clock->moveOn(5min);
        wait();
        type("30 1.10 1.08"); // begun after midnight
        choose(m_season.lane3);
        m_clock->moveOn(110min);
        wait();
        type("60 0.90 0.88");
        QCOMPARE(sets(m_season.lane3), (Days{{evening, 3}}));
        QCOMPARE(sets(m_season.stroke), (Days{{morning, 1}}));
    }

    void whatWasLiftedYesterdayGivesWay_data() {
        QTest::addColumn<bool>("seen");
        QTest::newRow("seen") << true;
        QTest::newRow("typed at once") << false;
    }
    void whatWasLiftedYesterdayGivesWay() {
        QFETCH(bool, seen);
        type("40 1.10 1.08");
        QTest::keyClicks(line(), QStringLiteral("50 1.0"));
        m_clock->moveOn(9h);
        if (seen) {
            wait();
            QVERIFY(!page().session());
            QVERIFY2(answer().contains(QStringLiteral("A new day")), qPrintable(answer()));
            QCOMPARE(line()->text(), QStringLiteral("50 1.0")); // half typed, and nothing lost
        }
        type("0 0.98");
        QCOMPARE(sets(m_season.lane3), (Days{{evening, 1}, {morning, 1}}));
        // The next of the squad, whose session of yesterday was not shown, likewise.
        choose(m_season.stroke);
        type("30 1.10 1.08");
        QCOMPARE(sets(m_season.stroke), (Days{{morning, 1}}));
    }

    void aSessionThatTheCoachChoseStays() {
        type("40 1.10 1.08");
        const SessionId of = *page().session();
        m_clock->moveOn(9h);
        wait();
        QVERIFY(!page().session());
        auto* sessions = named<QComboBox>("sessions");
        sessions->setCurrentIndex(sessions->findData(qint64(raw(of))));
        Q_EMIT sessions->activated(sessions->currentIndex());
        m_clock->moveOn(9h);
        wait();
        type("50 1.00 0.98");
        QCOMPARE(sets(m_season.lane3), (Days{{evening, 2}}));
    }

    void aSessionWhoseDayIsChangedStays() {
        type("40 1.10 1.08");
        SessionHead head = work().logbook().log().session(*page().session()).head.value;
        head.date = day(2026, 6, 3);
        work().logbook().changeSession(*page().session(), head);
        m_clock->moveOn(9h);
        wait();
        QVERIFY(page().session());
        QCOMPARE(work().logbook().log().session(*page().session()).head.value.date,
                 day(2026, 6, 3));
    }

    void theRestOfEachAthleteGoesOn() {
        type("40 1.10 1.08");
        m_clock->moveOn(20s);
        choose(m_season.stroke);
        QCOMPARE(rest(), QString());
        type("30 1.10 1.08");
        m_clock->moveOn(45s);
        choose(m_season.lane3);
        QCOMPARE(rest(), QStringLiteral("Rest 1:05"));
        choose(m_season.stroke);
        QCOMPARE(rest(), QStringLiteral("Rest 0:45"));
        m_clock->moveOn(2h); // a sleep
        choose(m_season.lane3);
        QCOMPARE(rest(), QString());
    }

    void aBlockIsOfferedTheNewDay() {
        BlocksDialog dialog(work().logbook(), m_clock->clock(), m_window.get());
        m_clock->moveOn(1min);
        QDate offered;
        QTimer::singleShot(20, this, [&offered] {
            QWidget* form = QApplication::activeModalWidget();
            offered = form->findChildren<QDateEdit*>().front()->date();
            form->close();
        });
        for (QPushButton* button : dialog.findChildren<QPushButton*>())
            if (button->text().contains(QStringLiteral("Add")))
                button->click();
        QCOMPARE(modelDate(offered), morning);
    }

    void aBatterysSessionIsOfTheNewDay() {
        work().showPage(Page::Battery);
        m_clock->moveOn(1min);
        wait();
        auto* view = work().findChild<AttemptsView*>();
        for (QPushButton* button : work().findChildren<QPushButton*>()) // in the page's line
            if (button->text().contains(QStringLiteral("New session")))
                button->click();
        QVERIFY(view->session());
        QCOMPARE(work().logbook().log().session(*view->session()).head.value.date, morning);
    }
};

QTEST_MAIN(TestMidnight)
#include "tst_midnight.moc"

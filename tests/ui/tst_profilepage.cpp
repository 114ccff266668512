// SPDX-License-Identifier: GPL-3.0-or-later
// The profile page: which lines are on the chart, the figures beside them, the ringed point.
#include "core/answers/bendwords.h"
#include "core/answers/maxwords.h"
#include "core/answers/planbounds.h"
#include "core/questions/liftcontext.h"
#include "tests/log/builders.h"
#include "ui/athlete/profile/profilepage.h"
#include "ui/words/format.h"
#include "ui/words/said.h"

#include <QAbstractItemModelTester>
#include <QCheckBox>
#include <QLabel>
#include <QSignalSpy>
#include <QTableView>

#include <memory>

using namespace slopebook;
using namespace slopebook::test;
using namespace slopebook::questions;
using namespace slopebook::ui;

class TestProfilePage : public QObject {
    Q_OBJECT

    Folder m_folder;
    int m_files = 0;
    Season m_season;
    std::unique_ptr<Logbook> m_book;
    std::unique_ptr<ProfilePage> m_page;
    std::unique_ptr<QAbstractItemModelTester> m_lineTester, m_pointTester;

    QTableView* table(const char* name) const {
        return m_page->findChild<QTableView*>(QLatin1String(name));
    }
    QString line(int row, int column) const {
        return m_page->lines().index(row, column).data().toString();
    }
    QString point(int row, int column) const {
        return m_page->points().index(row, column).data().toString();
    }

private Q_SLOTS:
    void init() {
        QTest::failOnWarning(QRegularExpression(QStringLiteral("nan|NaN")));
        const auto path = m_folder.path(("profile" + std::to_string(m_files++)).c_str());
        log::Log log = log::Log::create(path);
        m_season = fillSeason(log);
        m_book = std::make_unique<Logbook>(std::move(log));
        m_page = std::make_unique<ProfilePage>(*m_book);
        m_lineTester = std::make_unique<QAbstractItemModelTester>(
            &m_page->lines(), QAbstractItemModelTester::FailureReportingMode::QtTest);
        m_pointTester = std::make_unique<QAbstractItemModelTester>(
            &m_page->points(), QAbstractItemModelTester::FailureReportingMode::QtTest);
        connect(m_book.get(), &Logbook::changed, m_page.get(),
                [this](Logbook::What what, qint64 session) {
                    m_page->refresh(what, SessionId{session});
                });
        m_page->setAthleteAndLift(m_season.lane3, m_season.pull);
        m_page->resize(1200, 600);
        m_page->show();
        QVERIFY(QTest::qWaitForWindowExposed(m_page.get()));
    }
    void cleanup() {
        m_lineTester.reset();
        m_pointTester.reset();
        m_page.reset();
        m_book.reset();
    }

    void theNewestSessionsAreShownOldestFirst() {
        QCOMPARE(m_page->lines().rowCount(), 2);
        const auto& sessions = m_page->chart().data().sessions;
        QCOMPARE(sessions.size(), 2U);
        QCOMPARE(sessions[0].key, QString::number(raw(m_season.autumn)));
        QCOMPARE(sessions[1].key, QString::number(raw(m_season.repeat)));
        QVERIFY(sessions[0].role != sessions[1].role);
        QVERIFY(sessions[0].band.empty() && !sessions[1].band.empty());
        QVERIFY(sessions[0].oneRm && sessions[1].oneRm);
        QCOMPARE(m_page->chart().data().checkLoads, (std::vector<double>{40, 60}));
        QVERIFY(m_page->chart().data().mvt.has_value());
        // The set left out is a hollow point.
        QCOMPARE(sessions[1].points.size(), 4U);
        QVERIFY(sessions[1].points.back().excluded);
    }

    void theCheckBoxTakesALineOffTheChart() {
        auto* lines = table("lines");
        QVERIFY(lines->model()->setData(lines->model()->index(1, 0), Qt::Unchecked,
                                        Qt::CheckStateRole));
        QCOMPARE(m_page->chart().data().sessions.size(), 1U);
        QCOMPARE(m_page->chart().data().sessions[0].key, QString::number(raw(m_season.repeat)));
        // A refresh keeps the choice.
        m_book->addSets(m_season.repeat, m_season.pull, {ladderSet(50, {0.98})});
        QCOMPARE(m_page->chart().data().sessions.size(), 1U);
        lines->setCurrentIndex(lines->model()->index(1, 0));
        QTest::keyClick(lines, Qt::Key_Space);
        QCOMPARE(m_page->chart().data().sessions.size(), 2U);
    }

    void theFiguresAreTheAnswers() {
        const auto answer =
            profileOf(m_book->log(), m_season.lane3, m_season.pull, m_season.repeat);
        QVERIFY(answer);
        // Its points are too scattered for an interval: in brackets.
        QVERIFY(!answer->oneRm->interval);
        QCOMPARE(line(0, LinesModel::OneRm),
                 QStringLiteral("(%1)").arg(number(answer->oneRm->estimate, 1)));
        QCOMPARE(line(0, LinesModel::V0), number(answer->line.intercept, 3));
        QCOMPARE(line(0, LinesModel::Count), QStringLiteral("3"));
        QCOMPARE(line(0, LinesModel::Measured), QStringLiteral("82.5"));
        QCOMPARE(m_page->points().rowCount(), 4);
        QCOMPARE(point(0, PointsModel::Load), QStringLiteral("40"));
        QCOMPARE(point(0, PointsModel::Velocity), QStringLiteral("1.120"));
        QCOMPARE(point(0, PointsModel::Leverage), number(answer->points[0].leverage, 2));
        QCOMPARE(point(3, PointsModel::Residual), QStringLiteral("\u2013"));
        QVERIFY(point(3, PointsModel::Remarks).contains(QStringLiteral("missed the groove")));
    }

    /// To plan with, beside as if straight, and what both are made of.
    void theMaxStandsBothWays() {
        const SessionId session =
            m_book->addSession({.athlete = m_season.lane3, .date = day(2026, 3, 1)});
        for (const auto& [load, speed] :
             {std::pair{40.0, 1.14}, {50.0, 0.99}, {60.0, 0.86}, {70.0, 0.71}, {77.5, 0.60}})
            m_book->addSets(session, m_season.pull, {ladderSet(load, {speed})});
        const Background about =
            within(m_book->context(m_season.pull),
                   background(m_book->log(), m_season.lane3, m_season.pull), std::nullopt);
        const auto profile = profileOf(about, *sessionOf(about.sessions, session));
        QVERIFY(profile && profile->oneRm && profile->oneRm->toPlan && profile->oneRm->straight);
        QCOMPARE(line(0, LinesModel::ToPlan), rangeText(*profile->oneRm->toPlan, 1));
        QVERIFY(m_page->lines()
                    .index(0, LinesModel::ToPlan)
                    .data(Qt::ToolTipRole)
                    .toString()
                    .contains(number(profile->oneRm->straight->low, 1)));
        QStringList told;
        for (const QLabel* label : m_page->findChildren<QLabel*>())
            told << label->text();
        const QString all = told.join(QLatin1Char('\n'));
        QVERIFY(
            all.contains(QStringLiteral("to plan with: ") + rangeText(*profile->oneRm->toPlan, 1)));
        QVERIFY(all.contains(
            QStringLiteral("as if the line were straight, to see what a bend may add: ") +
            rangeText(*profile->oneRm->straight, 1)));
        for (const Words& words :
             {answers::bendWords(*profile), answers::bendSource(profile->beyond.bend),
              answers::liftedWords(*profile)}) {
            QVERIFY(!words.empty());
            QVERIFY2(all.contains(said(words, LoadUnit::Kilograms).mid(1)),
                     qPrintable(said(words, LoadUnit::Kilograms)));
        }
    }

    /// Where the log's own maxima calibrate the estimate, the page plans with that pair as the plan
    /// does, and with no other.
    void toPlanWithIsTheCalibratedPair() {
        for (int week = 0; week < 4; ++week) {
            const SessionId ladder = m_book->addSession(
                {.athlete = m_season.lane3, .date = day(2026, 5, 1 + 7 * unsigned(week))});
            const double faster = 0.01 * week;
            for (const auto& [load, speed] :
                 {std::pair{40.0, 1.14}, {50.0, 0.99}, {60.0, 0.86}, {70.0, 0.71}, {77.5, 0.60}})
                m_book->addSets(ladder, m_season.pull, {ladderSet(load, {speed + faster})});
            if (week == 3)
                break;
            const SessionId max = m_book->addSession(
                {.athlete = m_season.lane3, .date = day(2026, 5, 3 + 7 * unsigned(week))});
            Set heaviest = ladderSet(80 + week, {0.45});
            heaviest.trueMaximum = true;
            m_book->addSets(max, m_season.pull, {heaviest});
        }
        const Background about =
            within(m_book->context(m_season.pull),
                   background(m_book->log(), m_season.lane3, m_season.pull), std::nullopt);
        const auto profile = profileOf(about, about.sessions.back());
        QVERIFY(profile && profile->oneRm);
        const answers::OneRm& oneRm = *profile->oneRm;
        QVERIFY(answers::plansCalibrated(oneRm));
        const QString pair = rangeText(*oneRm.calibratedToPlan, 1);
        QVERIFY(pair != rangeText(*oneRm.toPlan, 1));
        QCOMPARE(line(0, LinesModel::ToPlan),
                 number(*oneRm.calibrated, 1) + QStringLiteral(": ") + pair);
        QStringList told;
        for (const QLabel* label : m_page->findChildren<QLabel*>())
            told << label->text();
        const QString all = told.join(QLatin1Char('\n'));
        QVERIFY2(all.contains(QStringLiteral("1RM to plan with ") + number(*oneRm.calibrated, 1)),
                 qPrintable(all));
        QVERIFY2(all.contains(QStringLiteral("by this log's maxima (95 %: ") + pair),
                 qPrintable(all));
        QVERIFY2(!all.contains(rangeText(*oneRm.toPlan, 1)), qPrintable(all));
    }

    void aSessionWithoutALineHasDashesAndItsReason() {
        const SessionId session =
            m_book->addSession({.athlete = m_season.lane3, .date = day(2026, 3, 1)});
        m_book->addSets(session, m_season.pull, {ladderSet(50, {1.0})});
        QCOMPARE(m_page->lines().rowCount(), 3);
        QCOMPARE(line(0, LinesModel::OneRm), QStringLiteral("\u2013"));
        QCOMPARE(line(0, LinesModel::Slope), QStringLiteral("\u2013"));
        QVERIFY(!m_page->lines().index(0, 0).data(Qt::ToolTipRole).toString().isEmpty());
    }

    void enterOnALineOpensItsSession() {
        QSignalSpy wanted(m_page.get(), &TaskPage::sessionWanted);
        auto* lines = table("lines");
        m_page->activateWindow();
        QVERIFY(QTest::qWaitForWindowActive(m_page.get()));
        lines->setFocus();
        lines->setCurrentIndex(lines->model()->index(1, 0));
        QTest::keyClick(lines, Qt::Key_Return);
        QCOMPARE(wanted.count(), 1);
        QCOMPARE(wanted.front().front().value<SessionId>(), m_season.autumn);
    }

    void anotherAthleteAndNobodyAtAll() {
        m_page->setAthleteAndLift(m_season.stroke, m_season.pull);
        QCOMPARE(m_page->lines().rowCount(), 1);
        m_page->setAthleteAndLift(std::nullopt, std::nullopt);
        QCOMPARE(m_page->lines().rowCount(), 0);
        QVERIFY(m_page->chart().data().sessions.empty());
    }

    void theBorrowedLineIsShownBeside() {
        auto* box = m_page->findChild<QCheckBox*>();
        QVERIFY(box);
        const auto label = [this] {
            for (QLabel* each : m_page->findChildren<QLabel*>())
                if (each->accessibleDescription().startsWith(QStringLiteral("Borrowed")))
                    return each;
            return static_cast<QLabel*>(nullptr);
        }();
        QVERIFY(label);
        const auto drawn = [this] {
            for (const auto& entry : m_page->chart().data().sessions)
                if (entry.key == QStringLiteral("borrowed"))
                    return entry.line.has_value();
            return false;
        };
        QVERIFY(box->isHidden()); // three sessions are needed
        const SessionId third =
            m_book->addSession({.athlete = m_season.lane3, .date = day(2026, 3, 1)});
        for (const auto& [load, speed] : {std::pair{40.0, 1.14}, {50.0, 0.99}, {60.0, 0.86}})
            m_book->addSets(third, m_season.pull, {ladderSet(load, {speed})});
        QVERIFY(!box->isHidden());
        QVERIFY(!drawn());
        QVERIFY2(label->text().contains(QStringLiteral("from this session alone")),
                 qPrintable(label->text()));
        box->setChecked(true);
        QVERIFY(drawn());
        box->setChecked(false);
        QVERIFY(!drawn());
    }
};

QTEST_MAIN(TestProfilePage)
#include "tst_profilepage.moc"

// SPDX-License-Identifier: GPL-3.0-or-later
// What hands in a hurry do to the window, by real keys and buttons: a field saves itself alone,
// much is asked about before and less told of after, undo shows what it takes back, several lines
// are several lines however they come, and what was refused gives way whole.
#include "tests/log/builders.h"
#include "tests/ui/movingclock.h"
#include "ui/athlete/battery/attemptsview.h"
#include "ui/floor/entry/entryline.h"
#include "ui/floor/entry/entrypage.h"
#include "ui/parts/dayedit.h"
#include "ui/window/mainwindow.h"
#include "ui/window/workspace.h"

#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QDropEvent>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QMessageBox>
#include <QMimeData>
#include <QPushButton>
#include <QTest>
#include <QTimer>
#include <QUndoStack>

using namespace slopebook;
using namespace slopebook::test;
using namespace slopebook::ui;
using namespace std::chrono_literals;

namespace {
constexpr Date today = day(2026, 3, 14);
} // namespace

class TestHands : public QObject {
    Q_OBJECT

    std::unique_ptr<Folder> m_folder;
    Season m_season;
    LiftId m_squat{};
    DeviceId m_other{};
    std::unique_ptr<MainWindow> m_window;

    Workspace& work() const { return *m_window->workspace(); }
    Logbook& book() const { return work().logbook(); }
    EntryPage& page() const { return work().entry(); }
    template <class Widget>
    Widget* named(const char* name) const {
        return page().findChild<Widget*>(QLatin1String(name));
    }
    SetEdit* line() const { return named<SetEdit>("setLine"); }
    QString answer() const { return named<QLabel>("setAnswer")->text(); }
    /// What the window says below the page.
    QString told() const {
        for (const QLabel* label : work().findChildren<QLabel*>())
            if (label->accessibleDescription() == QStringLiteral("Messages"))
                return label->text().replace(QChar(QChar::Nbsp), QLatin1Char(' '));
        return {};
    }
    template <class Widget>
    Widget* field(const QString& name) const {
        for (auto* widget : page().findChildren<Widget*>())
            if (widget->accessibleName() == name)
                return widget;
        return nullptr;
    }
    QLineEdit* place() const { return field<QLineEdit>(QStringLiteral("Place")); }
    QComboBox* device() const { return field<QComboBox>(QStringLiteral("Device")); }
    DayEdit* date() const { return page().findChild<DayEdit*>(); }
    void type(const QString& keys) const {
        line()->setFocus();
        QTest::keyClicks(line(), keys);
        QTest::keyClick(line(), Qt::Key_Return);
    }
    void undo() const { QTest::keySequence(m_window.get(), QKeySequence::Undo); }
    void redo() const {
        QTest::keyClick(m_window.get(), Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    }
    std::vector<Set> sets(AthleteId athlete, LiftId lift) const {
        const log::Log log = log::Log::open(m_folder->path(), log::Access::ReadOnly);
        std::vector<Set> found;
        for (const auto& session : log.sessions(athlete))
            if (session.value.date == today)
                for (const auto& placed : log.sets(session.id, lift))
                    found.push_back(placed.set);
        return found;
    }
    std::vector<Set> sets() const { return sets(m_season.lane3, m_season.pull); }
    SessionHead head() const {
        const log::Log log = log::Log::open(m_folder->path(), log::Access::ReadOnly);
        return log.session(*page().session()).head.value;
    }
    /// Under what the lift that is shown was measured.
    Conditions under() const { return whole().second; }
    std::pair<SessionHead, Conditions> whole() const {
        const log::Log log = log::Log::open(m_folder->path(), log::Access::ReadOnly);
        return {head(), log.conditions(*page().session(), *work().lift())};
    }
    void chooseDevice(DeviceId id) const {
        device()->setFocus();
        device()->setCurrentIndex(device()->findData(qint64(raw(id))));
        Q_EMIT device()->activated(device()->currentIndex());
    }
    void typeDate(const QString& keys) const {
        date()->setFocus(Qt::TabFocusReason);
        QTest::keyClicks(date(), keys);
        QTest::keyClick(date(), Qt::Key_Tab);
    }
    /// Answers the question that comes; what it asked, or nothing where none came.
    QString answered(QMessageBox::StandardButton with) const {
        QString asked;
        auto* look = new QTimer(qApp);
        int looks = 0;
        bool done = false;
        QObject::connect(look, &QTimer::timeout, qApp, [&] {
            auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
            done = box || ++looks > 200;
            if (!box)
                return;
            asked = box->text();
            look->stop();
            QTest::mouseClick(box->button(with), Qt::LeftButton);
        });
        look->start(1);
        while (!done)
            QTest::qWait(1); // the question is a loop of its own in here
        delete look;
        m_window->activateWindow();
        [&] { QVERIFY(QTest::qWaitForWindowActive(m_window.get())); }();
        return asked;
    }

private Q_SLOTS:
    void init() {
        QTest::failOnWarning(QRegularExpression(QStringLiteral("nan|NaN")));
        m_folder = std::make_unique<Folder>();
        {
            log::Log log = log::Log::create(m_folder->path());
            m_season = fillSeason(log);
            m_squat = log.add(Lift{.name = "Back squat"});
            m_other = log.add(Device{.name = "Camera"});
        }
        Surroundings given;
        given.clock = [] { return today; };
        m_window = std::make_unique<MainWindow>(given);
        m_window->resize(1280, 720);
        m_window->show();
        QVERIFY(QTest::qWaitForWindowExposed(m_window.get()));
        // A display without a window manager makes none active, and has what middle buttons paste.
        if (!QTest::currentDataTag() || QGuiApplication::platformName() != QLatin1String("xcb"))
            QVERIFY(QTest::qWaitForWindowActive(m_window.get()));
        m_window->openLogFile(QString::fromStdString(m_folder->path().string()));
        work().choose(m_season.lane3, m_season.pull);
    }
    void cleanup() { m_window.reset(); }

    // --- a field saves itself alone ---

    void aFieldSavesItselfAlone() {
        type(QStringLiteral("40 1.10 1.08"));
        const SessionId session = *page().session();
        {
            // Another window changes the session; this one has not looked yet.
            log::Log other = log::Log::open(m_folder->path());
            SessionHead now = other.session(session).head.value;
            now.bodyMass = Mass{82'000};
            other.change(session, now);
            other.setConditions(session, m_season.pull, {.device = m_other});
        }
        place()->setFocus(Qt::TabFocusReason); // what last time's place offers is typed over
        QTest::keyClicks(place(), QStringLiteral("hall"));
        QTest::keyClick(place(), Qt::Key_Tab);
        QCOMPARE(under(), (Conditions{.device = m_other, .place = "hall"}));
        QCOMPARE(head().bodyMass, std::optional(Mass{82'000}));
        QCOMPARE(head().date, today);
    }

    void walkingThroughTheFieldsSavesNothing() {
        type(QStringLiteral("40 1.10 1.08"));
        const auto before = whole();
        const int steps = book().undoStack()->count();
        for (QWidget* each : std::initializer_list<QWidget*>{date(), device(), place(),
                                                             named<QLineEdit>("bodyMass"), line()})
            each->setFocus(Qt::TabFocusReason);
        QCOMPARE(whole(), before);
        QCOMPARE(book().undoStack()->count(), steps);
    }

    void whatIsHalfTypedOutlivesAnothersWrite() {
        type(QStringLiteral("40 1.10 1.08"));
        place()->setFocus(Qt::TabFocusReason);
        QTest::keyClicks(place(), QStringLiteral("ha"));
        SessionHead now = head();
        now.note = "windy";
        book().changeSession(*page().session(), now);
        QTest::keyClicks(place(), QStringLiteral("ll"));
        QTest::keyClick(place(), Qt::Key_Tab);
        QCOMPARE(under().place, "hall");
        QCOMPARE(head().note, "windy");
    }

    void whatAFieldSavedIsUndoneInItToo_data() {
        QTest::addColumn<bool>("ofBody");
        QTest::addColumn<QString>("typed");
        QTest::newRow("place") << false << QStringLiteral("hall");
        QTest::newRow("body mass") << true << QStringLiteral("76.5");
    }

    void whatAFieldSavedIsUndoneInItToo() {
        QFETCH(bool, ofBody);
        QFETCH(QString, typed);
        type(QStringLiteral("40 1.10 1.08"));
        const auto before = whole();
        QLineEdit* one = ofBody ? named<QLineEdit>("bodyMass") : place();
        const QString stood = one->text();
        one->setFocus();
        one->selectAll();
        QTest::keyClicks(one, typed);
        QTest::keyClick(one, Qt::Key_Tab);
        QVERIFY(whole() != before);
        one->setFocus(Qt::TabFocusReason);
        book().undoStack()->undo();
        QCOMPARE(whole(), before);
        QCOMPARE(one->text(), stood);
        line()->setFocus(); // leaving the field writes nothing again
        QCOMPARE(whole(), before);
    }

    void aPlaceOfSpacesIsNone() {
        type(QStringLiteral("40 1.10 1.08"));
        const auto before = whole();
        const QString stood = QString::fromStdString(under().place);
        place()->setFocus();
        place()->selectAll();
        QTest::keyClicks(place(), stood + QStringLiteral("  "));
        line()->setFocus();
        QCOMPARE(whole(), before);
        QCOMPARE(place()->text(), stood);
    }

    void aFieldOfTheBatterySavesItselfAlone() {
        work().showPage(Page::Battery);
        auto* view = work().findChild<AttemptsView*>();
        view->showSession(m_season.autumn);
        QLineEdit *surface = nullptr, *footwear = nullptr;
        for (auto* each : view->findChildren<QLineEdit*>()) {
            if (each->accessibleName() == QStringLiteral("Surface"))
                surface = each;
            if (each->accessibleName() == QStringLiteral("Footwear"))
                footwear = each;
        }
        QVERIFY(surface && footwear);
        Battery wanted = book().log().battery(m_season.autumn);
        const TestKindId test = book().addTestKind(*view->test());
        conditionsOf(wanted, test).footwear = "spikes";
        log::Log::open(m_folder->path()).setBattery(m_season.autumn, wanted);
        surface->setFocus();
        surface->selectAll();
        QTest::keyClicks(surface, QStringLiteral("clay"));
        footwear->setFocus();
        surface->setFocus();
        conditionsOf(wanted, test).surface = "clay";
        QCOMPARE(book().log().battery(m_season.autumn), wanted);
    }

    void aDeviceNotAddedChangesNothing() {
        type(QStringLiteral("40 1.10 1.08"));
        chooseDevice(m_season.encoder);
        const auto before = whole();
        QTimer::singleShot(0, qApp, [] {
            if (auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget()))
                dialog->reject();
        });
        device()->setCurrentIndex(device()->count() - 1); // Add device...
        Q_EMIT device()->activated(device()->currentIndex());
        QCOMPARE(whole(), before);
        QCOMPARE(device()->currentText(), QStringLiteral("Boathouse encoder"));
    }

    // --- much is asked about, less is told of ---

    void aDayFarAwayIsAskedAbout() {
        type(QStringLiteral("40 1.10 1.08"));
        typeDate(QStringLiteral("2025-03-14"));
        const QString asked = answered(QMessageBox::No);
        QVERIFY2(asked.contains(QStringLiteral("365")), qPrintable(asked));
        QCOMPARE(head().date, today);
        QCOMPARE(date()->date(), QDate(2026, 3, 14));
        typeDate(QStringLiteral("2025-03-14"));
        QVERIFY(!answered(QMessageBox::Yes).isEmpty());
        QCOMPARE(head().date, day(2025, 3, 14));
        QVERIFY2(told().contains(QStringLiteral("Ctrl+Z")), qPrintable(told()));
    }

    void aDayNearbyIsTold() {
        type(QStringLiteral("40 1.10 1.08"));
        typeDate(QStringLiteral("2026-03-12"));
        QVERIFY(answered(QMessageBox::No).isEmpty());
        QCOMPARE(head().date, day(2026, 3, 12));
        QVERIFY2(told().contains(QStringLiteral("2026-03-14")) ||
                     told().contains(QStringLiteral("14")),
                 qPrintable(told()));
        line()->setFocus();
        undo();
        QCOMPARE(head().date, today);
    }

    void aDayThatIsNoneIsNotSaved() {
        type(QStringLiteral("40 1.10 1.08"));
        typeDate(QStringLiteral("2025-02-31"));
        QCOMPARE(head().date, today);
        QCOMPARE(date()->date(), QDate(2026, 3, 14));
        QVERIFY2(answer().contains(QStringLiteral("2025-02-31")), qPrintable(answer()));
    }

    void noSessionBeginsOnADayThatIsNone() {
        page().beginSession();
        typeDate(QStringLiteral("2025-02-31"));
        type(QStringLiteral("40 1.10 1.08"));
        QVERIFY(!page().session());
        QVERIFY2(answer().contains(QStringLiteral("2025-02-31")), qPrintable(answer()));
        typeDate(QStringLiteral("2025-02-28"));
        QTest::keyClick(line(), Qt::Key_Return); // the set still stands in the line
        QCOMPARE(head().date, day(2025, 2, 28));
    }

    void theDeviceOfOtherLiftsStays() {
        type(QStringLiteral("40 1.10 1.08"));
        QCOMPARE(under().device, std::optional(m_season.encoder)); // as last time
        chooseDevice(m_other);
        chooseDevice(m_season.encoder);
        QCOMPARE(under().device, std::optional(m_season.encoder));
        QVERIFY2(told().contains(QStringLiteral("Ctrl+Z")), qPrintable(told()));
        work().choose(m_season.lane3, m_squat);
        // Offered from the lift before, and written down with the first set.
        QCOMPARE(device()->currentText(), QStringLiteral("Boathouse encoder"));
        type(QStringLiteral("60 0.90 0.88"));
        const SessionId session = *page().session();
        QCOMPARE(book().log().conditions(session, m_squat).device, std::optional(m_season.encoder));
        chooseDevice(m_other);
        QCOMPARE(book().log().conditions(session, m_squat).device, std::optional(m_other));
        QCOMPARE(book().log().conditions(session, m_season.pull).device,
                 std::optional(m_season.encoder));
        work().choose(m_season.lane3, m_season.pull);
        QCOMPARE(device()->currentText(), QStringLiteral("Boathouse encoder"));
    }

    // --- undo names what and whose, and shows it first ---

    void undoGoesWhereItTakesBack() {
        type(QStringLiteral("40 1.10 1.08"));
        work().choose(m_season.stroke, m_squat);
        type(QStringLiteral("60 0.90 0.88"));
        work().choose(m_season.lane3, m_season.pull);
        line()->setFocus();
        undo(); // not seen: gone to, and said
        QCOMPARE(sets(m_season.stroke, m_squat).size(), 1U);
        QCOMPARE(work().athlete(), std::optional(m_season.stroke));
        QCOMPARE(work().lift(), std::optional(m_squat));
        for (const char* word : {"60 kg", "Back squat", "Stroke seat", "once more"})
            QVERIFY2(told().contains(QLatin1String(word)), qPrintable(told()));
        undo();
        QCOMPARE(sets(m_season.stroke, m_squat).size(), 0U);
        QVERIFY2(told().contains(QStringLiteral("Taken back")), qPrintable(told()));
        // Its session, which is shown, goes at once; the other athlete's set is gone to first.
        undo();
        QCOMPARE(sets().size(), 1U);
        undo();
        QCOMPARE(work().athlete(), std::optional(m_season.lane3));
        QCOMPARE(sets().size(), 1U);
        undo();
        QCOMPARE(sets().size(), 0U);
        redo();
        QCOMPARE(sets().size(), 1U);
        QVERIFY2(told().contains(QStringLiteral("Lane 3")), qPrintable(told()));
    }

    void undoComesBackFromAnotherPage() {
        type(QStringLiteral("40 1.10 1.08"));
        work().showPage(Page::Comparison);
        m_window->actions().undo->trigger();
        QVERIFY(work().page() == Page::Session);
        QCOMPARE(sets().size(), 1U);
        m_window->actions().undo->trigger();
        QCOMPARE(sets().size(), 0U);
    }

    void whatWasGoneToIsForgottenWithTheNextChoice() {
        type(QStringLiteral("40 1.10 1.08"));
        work().choose(m_season.stroke, m_squat);
        m_window->actions().undo->trigger();
        work().choose(m_season.stroke, m_squat);
        m_window->actions().undo->trigger(); // gone to again, not taken
        QCOMPARE(sets().size(), 1U);
        QCOMPARE(work().athlete(), std::optional(m_season.lane3));
    }

    void theMenuNamesWhatAndWhose() {
        type(QStringLiteral("40 1.10 1.08"));
        for (QObject* holder : m_window->actions().undo->associatedObjects())
            if (auto* menu = qobject_cast<QMenu*>(holder))
                Q_EMIT menu->aboutToShow();
        const QString words =
            m_window->actions().undo->text().replace(QChar(QChar::Nbsp), QLatin1Char(' '));
        for (const char* word : {"40 kg", "Bench pull", "Lane 3"})
            QVERIFY2(words.contains(QLatin1String(word)), qPrintable(words));
    }

    void aBatterysUndoGoesToTheBattery() {
        work().showPage(Page::Battery);
        auto* view = work().findChild<AttemptsView*>();
        for (QPushButton* button : view->findChildren<QPushButton*>())
            if (button->text().contains(QStringLiteral("New session")))
                button->click();
        const SessionId session = *view->session();
        view->testBox()->setCurrentIndex(
            view->testBox()->findText(QStringLiteral("Countermovement jump"), Qt::MatchStartsWith));
        view->line()->setFocus();
        QTest::keyClicks(view->line(), QStringLiteral("0.51"));
        QTest::keyClick(view->line(), Qt::Key_Return);
        const auto attempts = [&] {
            std::size_t count = 0;
            for (const auto& test : book().log().battery(session).tests)
                count += test.attempts.size();
            return count;
        };
        QCOMPARE(attempts(), 1U);
        work().showPage(Page::Session);
        m_window->actions().undo->trigger();
        QVERIFY(work().page() == Page::Battery);
        QCOMPARE(view->session(), std::optional(session));
        QCOMPARE(attempts(), 1U);
        m_window->actions().undo->trigger();
        QCOMPARE(attempts(), 0U);
    }

    // --- several lines, however they come ---

    void severalLinesComeAlike_data() {
        QTest::addColumn<int>("how");
        QTest::newRow("the key") << 0;
        QTest::newRow("the menu") << 1;
        QTest::newRow("a drop") << 2;
        QTest::newRow("an input method") << 3;
        QTest::newRow("the other key") << 4;
        QTest::newRow("the middle button") << 5;
    }
    void severalLinesComeAlike() {
        QFETCH(int, how);
        const QString lines = QStringLiteral("40 1.14 1.12\n50 0.99 0.97\r\n60 0.86 0.85");
        QApplication::clipboard()->setText(lines);
        line()->setFocus();
        if (how == 0)
            QTest::keySequence(line(), QKeySequence::Paste);
        if (how == 1) {
            bool pasted = false;
            QTimer::singleShot(0, qApp, [&pasted] {
                auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
                for (QAction* action : menu ? menu->actions() : QList<QAction*>())
                    if (action->text().contains(QStringLiteral("Paste")) && action->isEnabled()) {
                        action->trigger();
                        pasted = true;
                    }
                if (menu)
                    menu->close();
            });
            QContextMenuEvent event(QContextMenuEvent::Mouse, QPoint(5, 5),
                                    line()->mapToGlobal(QPoint(5, 5)));
            QApplication::sendEvent(line(), &event);
            QVERIFY(pasted);
        }
        if (how == 2) {
            QMimeData data;
            data.setText(lines);
            QDragEnterEvent enter(QPoint(5, 5), Qt::CopyAction, &data, Qt::LeftButton, {});
            QApplication::sendEvent(line(), &enter);
            QVERIFY(enter.isAccepted());
            QDropEvent event(QPointF(5, 5), Qt::CopyAction, &data, Qt::LeftButton, {});
            QApplication::sendEvent(line(), &event);
        }
        if (how == 3) {
            QInputMethodEvent event;
            event.setCommitString(lines);
            QApplication::sendEvent(line(), &event);
        }
        if (how == 4)
            QTest::keyClick(line(), Qt::Key_Insert, Qt::ShiftModifier);
        if (how == 5) {
            if (!QApplication::clipboard()->supportsSelection())
                QSKIP("THIS DESKTOP HAS NO SELECTION TO PASTE: try it under xvfb");
            QApplication::clipboard()->setText(lines, QClipboard::Selection);
            QTest::mouseClick(line(), Qt::MiddleButton);
        }
        QCOMPARE(sets(), (std::vector<Set>{ladderSet(40, {1.14, 1.12}), ladderSet(50, {0.99, 0.97}),
                                           ladderSet(60, {0.86, 0.85})}));
        QVERIFY(line()->text().isEmpty());
    }

    // --- what was refused ---

    void whatIsTypedAfterARefusalStandsAlone_data() {
        QTest::addColumn<QString>("bad");
        QTest::newRow("a word") << QStringLiteral("60 0.81 0.80 o.79");
        QTest::newRow("a question") << QStringLiteral("60 92 0.90");
        QTest::newRow("a load alone") << QStringLiteral("60");
        QTest::newRow("a doubt") << QStringLiteral("60 1.95 1.90");
    }
    void whatIsTypedAfterARefusalStandsAlone() {
        QFETCH(QString, bad);
        type(QStringLiteral("40 1.14 1.12"));
        type(QStringLiteral("50 0.99 0.97"));
        type(bad);
        QCOMPARE(sets().size(), 2U);
        QCOMPARE(line()->text(), bad);
        type(QStringLiteral("70 0.71 0.70"));
        QCOMPARE(sets().size(), 3U);
        QCOMPARE(sets().back(), ladderSet(70, {0.71, 0.70}));
    }

    void upBringsTheRefusedLineBack() {
        const QString bad = QStringLiteral("60 0.81 0.80 o.79");
        type(bad);
        QTest::keyClicks(line(), QStringLiteral("7"));
        QCOMPARE(line()->text(), QStringLiteral("7"));
        QTest::keyClick(line(), Qt::Key_Up);
        QCOMPARE(line()->text(), bad);
        QCOMPARE(line()->selectedText(), QStringLiteral("o.79")); // to be mended
        QTest::keyClicks(line(), QStringLiteral("0.79"));
        QTest::keyClick(line(), Qt::Key_Return);
        QCOMPARE(sets(), std::vector<Set>{ladderSet(60, {0.81, 0.80, 0.79})});
        // Once it is taken Up is the next load again.
        QTest::keyClick(line(), Qt::Key_Up);
        QVERIFY(!line()->text().contains(QStringLiteral("o.79")));
    }

    void theBatterysLineLikewise() {
        work().showPage(Page::Battery);
        auto* view = work().findChild<AttemptsView*>();
        for (QPushButton* button : view->findChildren<QPushButton*>())
            if (button->text().contains(QStringLiteral("New session")))
                button->click();
        view->testBox()->setCurrentIndex(
            view->testBox()->findText(QStringLiteral("Countermovement jump"), Qt::MatchStartsWith));
        UndoableEdit* typed = view->line();
        typed->setFocus();
        QTest::keyClicks(typed, QStringLiteral("0.51 o.52"));
        QTest::keyClick(typed, Qt::Key_Return);
        QTest::keyClicks(typed, QStringLiteral("0.5"));
        QCOMPARE(typed->text(), QStringLiteral("0.5"));
        QTest::keyClick(typed, Qt::Key_Up);
        QCOMPARE(typed->text(), QStringLiteral("0.51 o.52"));
        QCOMPARE(typed->selectedText(), QStringLiteral("o.52"));
    }
};

QTEST_MAIN(TestHands)
#include "tst_hands.moc"

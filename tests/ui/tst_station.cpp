// SPDX-License-Identifier: GPL-3.0-or-later
// A test day at its stations, by real keys: athletes take turns at one line, nothing that is typed
// goes to the wrong one or is lost, two windows see each other, and undo names whose it takes back.
// What is expected stands in the test's own book of what it typed, never in what the page says.
#include "tests/log/builders.h"
#include "tests/ui/bykeys.h"
#include "tests/ui/movingclock.h"
#include "ui/floor/station/rosterdialog.h"
#include "ui/floor/station/stationdialog.h"
#include "ui/floor/station/stationpage.h"
#include "ui/parts/cautions.h"
#include "ui/window/mainwindow.h"
#include "ui/window/workspace.h"

#include <QAccessible>
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTableView>
#include <QTest>
#include <QUndoStack>

using namespace slopebook;
using namespace slopebook::test;
using namespace slopebook::ui;
using namespace slopebook::literals;

namespace {
constexpr Date today = day(2026, 5, 14);
const QStringList names{"Ada"_L1,  "Bela"_L1,  "Cora"_L1, "Dov"_L1,   "Edda"_L1,  "Finn"_L1,
                        "Gala"_L1, "Hugo"_L1,  "Iris"_L1, "Jona"_L1,  "Kira"_L1,  "Lutz"_L1,
                        "Mara"_L1, "Nils"_L1,  "Olga"_L1, "Pavel"_L1, "Quinn"_L1, "Rosa"_L1,
                        "Sven"_L1, "Tilda"_L1, "Udo"_L1,  "Vera"_L1,  "Wim"_L1,   "Yara"_L1};
} // namespace

class TestStation : public QObject {
    Q_OBJECT

    std::unique_ptr<Folder> m_folder;
    MovingClock m_clock{QDateTime(QDate(2026, 5, 14), QTime(10, 0))};
    std::vector<AthleteId> m_squad;
    LiftId m_squat{}, m_pull{};
    DeviceId m_encoder{}, m_camera{};
    TestKindId m_hop{}, m_jump{};
    StationId m_rack{}, m_bench{}, m_bay{};
    std::unique_ptr<MainWindow> m_window;

    Workspace& work() const { return *m_window->workspace(); }
    StationPage& page() const { return work().stations(); }
    StationEdit* line() const { return page().line(); }
    template <class Widget>
    Widget* named(const char* name) const {
        return page().findChild<Widget*>(QLatin1String(name));
    }
    QString shown(const char* label) const {
        return named<QLabel>(label)->text().replace(QChar(QChar::Nbsp), QLatin1Char(' '));
    }
    QString told() const {
        for (const QLabel* label : work().findChildren<QLabel*>())
            if (label->accessibleDescription() == u"Messages"_s)
                return label->text();
        return {};
    }
    void type(const QString& keys) const {
        QTest::keyClicks(line(), keys);
        QTest::keyClick(line(), Qt::Key_Return);
    }
    int turn() const {
        for (std::size_t i = 0; i < m_squad.size(); ++i)
            if (page().turn() == m_squad[i])
                return int(i);
        return -1;
    }
    log::Log onDisk() const { return log::Log::open(m_folder->path(), log::Access::ReadOnly); }
    std::vector<Set> sets(std::size_t who, std::optional<LiftId> lift = {}) const {
        const log::Log log = onDisk();
        std::vector<Set> found;
        for (const auto& session : log.sessions(m_squad[who]))
            if (session.value.date == today)
                for (const auto& placed : log.sets(session.id, lift.value_or(m_squat)))
                    found.push_back(placed.set);
        return found;
    }
    std::vector<BatterySession> batteries(std::size_t who) const {
        auto all = onDisk().batteries(m_squad[who]);
        std::erase_if(all, [](const BatterySession& one) { return one.date != today; });
        return all;
    }
    int allSets() const {
        int count = 0;
        for (std::size_t i = 0; i < m_squad.size(); ++i)
            count += int(sets(i).size());
        return count;
    }
    void here(StationId station, std::size_t many) {
        log::Log log = log::Log::open(m_folder->path());
        log.setRoster({station, today, {m_squad.begin(), m_squad.begin() + qsizetype(many)}});
    }
    void openWindow(const QString& language = {}, const Settings& settings = {}) {
        Surroundings given;
        given.settings = settings;
        given.clock = m_clock.clock();
        given.settings.language = language;
        given.settings.page = u"stations"_s;
        m_window = std::make_unique<MainWindow>(given);
        m_window->resize(1280, 720);
        m_window->show();
        QVERIFY(QTest::qWaitForWindowActive(m_window.get()));
        m_window->openLogFile(QString::fromStdString(m_folder->path().string()));
        QVERIFY(m_window->workspace());
        work().focusEntry();
    }
    static void picture(QWidget& widget, const QString& name) {
        if (qEnvironmentVariableIsSet("SLOPEBOOK_PICTURES"))
            QTest::qWait(100); // laid out
        keepPicture(widget, name);
    }
    static double speedOf(std::size_t who, int set) {
        return (set == 0 ? 1.0 : set == 1 ? 0.8 : 0.6) + 0.002 * double(who);
    }

private Q_SLOTS:
    void init() {
        QTest::failOnWarning(QRegularExpression(u"nan|NaN"_s));
        m_folder = std::make_unique<Folder>();
        m_clock.moveTo(QDateTime(QDate(2026, 5, 14), QTime(10, 0)));
        m_squad.clear();
        log::Log log = log::Log::create(m_folder->path());
        log.together([&] {
            for (const QString& name : names)
                m_squad.push_back(log.add(Athlete{.name = name.toStdString()}));
            m_squat = log.add(Lift{.name = "Back squat"});
            m_pull = log.add(Lift{.name = "Bench pull"});
            m_encoder = log.add(Device{.name = "Encoder 1"});
            m_camera = log.add(Device{.name = "Camera"});
            TestKind hop;
            hop.name = "Hop";
            hop.unit = "m";
            hop.twoSided = true;
            hop.attempts = 2;
            m_hop = log.add(hop);
            TestKind jump;
            jump.name = "Long jump";
            jump.unit = "m";
            m_jump = log.add(jump);
            m_rack = log.add(Station{.name = "Rack 1",
                                     .lift = m_squat,
                                     .conditions = {.device = m_encoder, .surface = "rubber"},
                                     .ladder = {40_kg, 60_kg, 80_kg}});
            m_bench = log.add(Station{
                .name = "Bench", .lift = m_pull, .conditions = {.device = m_camera}, .sets = 2});
            m_bay = log.add(Station{.name = "Boat bay",
                                    .tests = {m_hop, m_jump},
                                    .conditions = {.surface = "concrete"}});
        });
    }
    void cleanup() {
        m_window.reset();
        QLocale::setDefault(QLocale::c());
    }

    /// Twenty-four at one rack, three sets each: the digits, Enter, and one key for the load.
    void aWholeDayAtOneRack() {
        here(m_rack, static_cast<std::size_t>(names.size()));
        openWindow();
        page().chooseStation(m_rack);
        int keys = 0, sets_ = 0;
        for (int round = 0; round < 3; ++round)
            for (std::size_t who = 0; who < m_squad.size(); ++who) {
                QCOMPARE(turn(), int(who));
                QVERIFY(line()->text().isEmpty());
                const QString digits = QString::number(speedOf(who, round), 'f', 3);
                QTest::keyClick(line(), Qt::Key_Up); // the load that is due
                type(digits);
                keys += 1;
                ++sets_;
                QVERIFY2(line()->text().isEmpty(), qPrintable(page().answer()));
            }
        QCOMPARE(sets_, 72);
        QVERIFY(keys <= sets_); // at most one a set beside digits and Enter
        QCOMPARE(allSets(), 72);
        for (std::size_t who = 0; who < m_squad.size(); ++who) {
            const std::vector<Set> done = sets(who);
            QCOMPARE(done.size(), std::size_t(3));
            for (int round = 0; round < 3; ++round) {
                QCOMPARE(done[std::size_t(round)].load,
                         (std::vector{40_kg, 60_kg, 80_kg}[std::size_t(round)]));
                QCOMPARE(done[std::size_t(round)].reps.front().velocity, speedOf(who, round));
            }
            const log::Log log = onDisk();
            QCOMPARE(log.sessions(m_squad[who]).size(), std::size_t(1));
            QCOMPARE(log.conditions(log.sessions(m_squad[who]).front().id, m_squat),
                     (Conditions{.device = m_encoder, .surface = "rubber"}));
        }
        QCOMPARE(shown("turn"), u"All done: 24 here."_s);
        QVERIFY(onDisk().check().empty());
        picture(*m_window, u"station-all-done"_s);
    }

    void theDaysOtherLines() {
        here(m_rack, 4);
        openWindow();
        page().chooseStation(m_rack);
        type(u"40 0.92 0.90x @8,5 # slipped"_s); // Ada
        QCOMPARE(sets(0).front().effort, std::optional(Effort{17}));
        QCOMPARE(sets(0).front().reps[1].excluded, std::string("slipped"));
        QCOMPARE(turn(), 1);
        type(u"40 - # out of the groove"_s); // Bela: and nothing is offered under the first load
        QCOMPARE(int(sets(1).front().outcome), int(Outcome::NotLifted));
        QCOMPARE(sets(1).front().reason, std::string("out of the groove"));
        QVERIFY(sets(1).front().reps.empty());
        QCOMPARE(turn(), 2);
        type(u"- # sore back"_s); // Cora: not today
        QCOMPARE(batteries(2).front().battery.gaps.size(), std::size_t(1));
        QCOMPARE(batteries(2).front().battery.gaps.front(),
                 (Gap{.lift = m_squat, .reason = "sore back"}));
        QCOMPARE(turn(), 3);
        type(u"60 / # plates gone"_s); // Dov: that load not; it is the next one's turn all the same
        QCOMPARE(batteries(3).front().battery.gaps.front().load, std::optional(60_kg));
        QCOMPARE(turn(), 0); // Bela and Cora are done
        type(u"80! -"_s);
        QVERIFY(sets(0).back().trueMaximum);
        QCOMPARE(int(sets(0).back().outcome), int(Outcome::NotLifted));
        QCOMPARE(turn(), 3);
        QCOMPARE(shown("turn"), u"Dov: 40 kg next."_s);
        type(u"40 0.95"_s);
        QCOMPARE(turn(), 0); // 40 lifted, 80 not: 60 is still on the ladder
        QCOMPARE(shown("turn"), u"Ada: 60 kg next."_s);
        QVERIFY(shown("reason").contains(u"80 kg was not lifted"_s));
        picture(*m_window, u"station"_s);
    }

    /// A pull-up's load is the body's mass and what is added: the mass is said here, by keys.
    void aLiftThatMovesTheBodyTakesItsMass() {
        StationId bar{};
        LiftId pullUp{};
        {
            log::Log log = log::Log::open(m_folder->path());
            pullUp = log.add(Lift{.name = "Pull-up", .movesBody = true});
            bar = log.add(Station{.name = "Bar", .lift = pullUp, .ladder = {0_kg, 10_kg, 20_kg}});
            log.add(SessionHead{.athlete = m_squad[1],
                                .date = day(2026, 4, 1),
                                .bodyMass = massFromKilograms(71.5)});
            log.setRoster({bar, today, {m_squad[0], m_squad[1]}});
        }
        openWindow();
        page().chooseStation(m_rack);
        QVERIFY(!named<QLineEdit>("stationBody")->isVisible());
        page().chooseStation(bar);
        auto* body = named<QLineEdit>("stationBody");
        QVERIFY(body->isVisible());
        QVERIFY2(shown("reason").contains(u"No body mass of today"_s), qPrintable(shown("reason")));
        picture(*m_window, u"station-body"_s);
        // Not a mass: told in place, what is typed stays, nothing is written.
        QTest::keyClick(line(), Qt::Key_B, Qt::AltModifier);
        QCOMPARE(QApplication::focusWidget(), body);
        QTest::keyClicks(body, u"heavy"_s);
        QTest::keyClick(body, Qt::Key_Return);
        QVERIFY2(page().answer().contains(u"such as 74.5"_s), qPrintable(page().answer()));
        QCOMPARE(body->text(), u"heavy"_s);
        body->selectAll();
        QTest::keyClicks(body, u"80,5"_s);
        QTest::keyClick(body, Qt::Key_Return);
        QCOMPARE(QApplication::focusWidget(), line());
        QCOMPARE(onDisk().sessions(m_squad[0]).size(), std::size_t(0)); // no session yet
        QVERIFY(!shown("reason").contains(u"No body mass"_s));
        type(u"0 0.9"_s);
        QCOMPARE(turn(), 1);
        QVERIFY(body->text().isEmpty());
        QCOMPARE(body->placeholderText().trimmed(),
                 u"71.5"_s); // of an earlier day: offered, not taken
        type(u"0 0.8"_s);
        QVERIFY(!onDisk().sessions(m_squad[1]).back().value.bodyMass);
        QCOMPARE(turn(), 0);
        QCOMPARE(body->text(), u"80.5"_s);
        type(u"10 0.7"_s);
        // Bela's afterwards: into the session that stands, and one step of undo.
        QCOMPARE(turn(), 1);
        QTest::keyClick(line(), Qt::Key_B, Qt::AltModifier);
        QTest::keyClicks(body, u"72"_s);
        QTest::keyClick(body, Qt::Key_Return);
        QCOMPARE(onDisk().sessions(m_squad[1]).back().value.bodyMass, std::optional(72_kg));
        log::Filter of;
        of.lift = pullUp;
        const auto lines = onDisk().liftSessions(of);
        QCOMPARE(lines.size(), std::size_t(2));
        for (const LiftSession& one : lines)
            QVERIFY(!one.lacksBodyMass);
        // 80.5 kg and nothing added; and 10 kg added.
        QCOMPARE(lines[0].points.size(), std::size_t(2));
        QCOMPARE(lines[0].points[0].load, 80.5);
        QCOMPARE(lines[0].points[1].load, 90.5);
        work().logbook().undoStack()->undo();
        QVERIFY(!onDisk().sessions(m_squad[1]).back().value.bodyMass);
        QVERIFY(shown("reason").contains(u"No body mass of today"_s));
        QVERIFY(onDisk().check().empty());
    }

    void aRefusalMovesNothing_data() {
        QTest::addColumn<QString>("typed");
        QTest::addColumn<QString>("says");
        QTest::addColumn<QString>("taken");
        QTest::newRow("f") << u"40 f"_s << u"“40 -”"_s << u"40 -"_s;
        QTest::newRow("0") << u"40 0"_s << u"“40 -”"_s << u"40 -"_s;
        QTest::newRow("x") << u"40 x"_s << u"“40 -”"_s << u"40 -"_s;
        QTest::newRow("a note alone")
            << u"40 # missed"_s << u"“40 - # missed”"_s << u"40 - # missed"_s;
        QTest::newRow("an effort") << u"40 0.9 @11"_s << u"“40 0.9”"_s << u"40 0.9"_s;
    }
    void aRefusalMovesNothing() {
        QFETCH(QString, typed);
        QFETCH(QString, says);
        QFETCH(QString, taken);
        here(m_rack, 3);
        openWindow();
        page().chooseStation(m_rack);
        type(typed);
        QCOMPARE(turn(), 0);
        QCOMPARE(line()->text(), typed);
        QCOMPARE(allSets(), 0);
        QVERIFY2(page().answer().contains(says), qPrintable(page().answer()));
        if (typed == u"40 f"_s)
            picture(*m_window, u"station-refusal"_s);
        QTest::keyClick(line(), Qt::Key_Down);
        QCOMPARE(line()->text(), taken);
        QTest::keyClick(line(), Qt::Key_Return);
        QCOMPARE(sets(0).size(), std::size_t(1));
        QCOMPARE(turn(), 1);
    }

    void whoseItIsStandsInFront() {
        here(m_rack, 5);
        openWindow();
        page().chooseStation(m_rack);
        type(u"co 40 0.93"_s);
        QCOMPARE(sets(2).size(), std::size_t(1));
        QCOMPARE(turn(), 3); // on from her
        type(u"bela"_s);
        QCOMPARE(turn(), 1);
        QVERIFY(line()->text().isEmpty());
        type(u"zoe 40 0.9"_s);
        QVERIFY2(page().answer().contains(u"zoe"_s), qPrintable(page().answer()));
        QCOMPARE(allSets(), 1);
        {
            log::Log log = log::Log::open(m_folder->path());
            const AthleteId berta = log.add(Athlete{.name = "Berta"});
            Roster roster = log.roster(m_rack, today);
            roster.athletes.push_back(berta);
            log.setRoster(roster);
        }
        work().logbook().lookForOthersWrites();
        QTest::keyClick(line(), Qt::Key_Escape);
        type(u"be 40 0.91"_s);
        QVERIFY2(page().answer().contains(u"Bela, Berta"_s), qPrintable(page().answer()));
        QCOMPARE(allSets(), 1);
        QTest::keyClicks(line(), u"bel"_s); // in the place of the name, which is marked
        QCOMPARE(line()->text(), u"bel 40 0.91"_s);
        QTest::keyClick(line(), Qt::Key_Return);
        QCOMPARE(sets(1).size(), std::size_t(1));
    }

    void whatIsTypedWaitsForWhomItWasBegun() {
        here(m_rack, 3);
        openWindow();
        page().chooseStation(m_rack);
        QTest::keyClicks(line(), u"40 0.9"_s);
        QTest::keyClick(line(), Qt::Key_Down, Qt::AltModifier);
        QCOMPARE(turn(), 1);
        QVERIFY(line()->text().isEmpty());
        QTest::keyClicks(line(), u"40 0.8"_s);
        QTest::keyClick(line(), Qt::Key_Up, Qt::AltModifier);
        QCOMPARE(turn(), 0);
        QCOMPARE(line()->text(), u"40 0.9"_s);
        QTest::keyClick(line(), Qt::Key_Return);
        QCOMPARE(turn(), 1);
        QCOMPARE(line()->text(), u"40 0.8"_s);
        QTest::keyClick(line(), Qt::Key_Return);
        QCOMPARE(sets(0).front().reps.front().velocity, 0.9);
        QCOMPARE(sets(1).front().reps.front().velocity, 0.8);
        // And it waits through another page of the window.
        QTest::keyClicks(line(), u"40 0.7"_s);
        work().showPage(Page::Session);
        work().showPage(Page::Stations);
        QCOMPARE(line()->text(), u"40 0.7"_s);
        QCOMPARE(turn(), 2);
    }

    void whatIsTypedOutlivesTheWindow() {
        here(m_rack, 3);
        openWindow();
        page().chooseStation(m_rack);
        QTest::keyClick(line(), Qt::Key_PageDown);
        QTest::keyClicks(line(), u"40 0.8"_s);
        QTest::keyClick(line(), Qt::Key_PageDown);
        QTest::keyClicks(line(), u"40 0.7"_s);
        const Settings kept = m_window->settings();
        m_window.reset();
        QCOMPARE(allSets(), 0);
        openWindow({}, kept);
        page().chooseStation(m_rack);
        QTest::keyClick(line(), Qt::Key_PageDown);
        QCOMPARE(turn(), 1);
        QCOMPARE(line()->text(), u"40 0.8"_s);
        QTest::keyClick(line(), Qt::Key_Return);
        QCOMPARE(turn(), 2);
        QCOMPARE(line()->text(), u"40 0.7"_s);
        QTest::keyClick(line(), Qt::Key_Return);
        QCOMPARE(sets(1).front().reps.front().velocity, 0.8);
        QCOMPARE(sets(2).front().reps.front().velocity, 0.7);
        QVERIFY(m_window->settings().unwritten.isEmpty());
    }

    void undoAcrossARotationNamesWhoseItIs() {
        here(m_rack, 3);
        openWindow();
        page().chooseStation(m_rack);
        type(u"40 0.9"_s);
        type(u"40 0.8"_s);
        QCOMPARE(turn(), 2);
        QVERIFY2(shown("takesBack").contains(u"Bela"_s), qPrintable(shown("takesBack")));
        QTest::keyClick(line(), Qt::Key_Z, Qt::ControlModifier);
        QCOMPARE(turn(), 1); // gone to, and nothing taken back yet
        QCOMPARE(sets(1).size(), std::size_t(1));
        QVERIFY2(told().contains(u"Bela"_s), qPrintable(told()));
        QTest::keyClick(line(), Qt::Key_Z, Qt::ControlModifier);
        QCOMPARE(sets(1).size(), std::size_t(0));
        QVERIFY(onDisk().sessions(m_squad[1]).empty()); // it was there for that set alone
        QCOMPARE(sets(0).size(), std::size_t(1));
        QCOMPARE(turn(), 1);
        QCOMPARE(page().roster().rows()[1].done, u"0 of 3"_s);
        QTest::keyClick(m_window.get(), Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
        QCOMPARE(sets(1).size(), std::size_t(1));
        QCOMPARE(turn(), 2); // on, as after Enter
        type(u"40 0.7"_s);
        QCOMPARE(sets(2).size(), std::size_t(1));
        QCOMPARE(turn(), 0);
        // A set of a session that holds others: taken back and done again, on again.
        type(u"60 0.6"_s);
        QCOMPARE(turn(), 1);
        QTest::keyClick(line(), Qt::Key_Z, Qt::ControlModifier);
        QTest::keyClick(line(), Qt::Key_Z, Qt::ControlModifier);
        QCOMPARE(sets(0).size(), std::size_t(1));
        QCOMPARE(turn(), 0);
        QTest::keyClick(m_window.get(), Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
        QCOMPARE(sets(0).size(), std::size_t(2));
        QCOMPARE(turn(), 1);
        QVERIFY(onDisk().check().empty());
        // From another page it goes to the session that holds the set.
        work().showPage(Page::Lines);
        QTest::keySequence(m_window.get(), QKeySequence::Undo);
        QCOMPARE(sets(1).size(), std::size_t(1));
        QVERIFY(work().page() == Page::Session || work().page() == Page::Stations);
    }

    /// Two stations in two windows on one log, the same athletes at both.
    void twoWindows() {
        here(m_rack, 3);
        here(m_bench, 3);
        openWindow();
        page().chooseStation(m_rack);
        Logbook book(log::Log::open(m_folder->path()));
        StationPage other(book, m_clock.clock());
        connect(&book, &Logbook::changed, &other, [&other](Logbook::What what, qint64 session) {
            other.refresh(what, SessionId{session});
        });
        other.setAthleteAndLift({}, {});
        other.chooseStation(m_bench);
        const auto typeOther = [&](const QString& keys) {
            QTest::keyClicks(other.line(), keys);
            QTest::keyClick(other.line(), Qt::Key_Return);
        };
        type(u"40 0.9"_s);
        book.lookForOthersWrites();
        typeOther(u"30 1.1"_s);
        work().logbook().lookForOthersWrites();
        // One session of the day holds both, each with its own conditions.
        const log::Log log = onDisk();
        QCOMPARE(log.sessions(m_squad[0]).size(), std::size_t(1));
        const SessionId session = log.sessions(m_squad[0]).front().id;
        QCOMPARE(log.conditions(session, m_squat).device, std::optional(m_encoder));
        QCOMPARE(log.conditions(session, m_pull).device, std::optional(m_camera));
        // Undo in the first window takes its own set and leaves what the other wrote.
        QTest::keyClick(line(), Qt::Key_Z, Qt::ControlModifier);
        QTest::keyClick(line(), Qt::Key_Z, Qt::ControlModifier);
        QCOMPARE(sets(0).size(), std::size_t(0));
        QCOMPARE(sets(0, m_pull).size(), std::size_t(1));
        // The same station in both: a set there makes it the next one's turn here.
        other.chooseStation(m_rack);
        QCOMPARE(other.turn(), std::optional(m_squad[0]));
        typeOther(u"40 0.91"_s);
        work().logbook().lookForOthersWrites();
        QCOMPARE(turn(), 1);
        QCOMPARE(page().roster().rows()[0].done, u"1 of 3"_s);
        // What is half typed here stays with whom it was begun for.
        QTest::keyClicks(line(), u"40 0.8"_s);
        typeOther(u"40 0.82"_s);
        work().logbook().lookForOthersWrites();
        QCOMPARE(turn(), 1);
        QCOMPARE(line()->text(), u"40 0.8"_s);
        // Who is here is seen as well.
        Roster roster = book.log().roster(m_rack, today);
        roster.athletes.pop_back();
        book.setRoster(roster);
        work().logbook().lookForOthersWrites();
        QCOMPARE(page().roster().rowCount(), 2);
        QCOMPARE(line()->text(), u"40 0.8"_s);
    }

    /// The same lift at another device is another session of the day.
    void otherConditionsAreAnotherSession() {
        here(m_rack, 2);
        StationId rack2{};
        {
            log::Log log = log::Log::open(m_folder->path());
            rack2 = log.add(Station{.name = "Rack 2",
                                    .lift = m_squat,
                                    .conditions = {.device = m_camera},
                                    .ladder = {50_kg}});
            log.setRoster({rack2, today, {m_squad[0]}});
        }
        openWindow();
        page().chooseStation(m_rack);
        type(u"40 0.9"_s);
        page().chooseStation(rack2);
        type(u"50 0.8"_s);
        const log::Log log = onDisk();
        const auto sessions = log.sessions(m_squad[0]);
        QCOMPARE(sessions.size(), std::size_t(2));
        QCOMPARE(log.conditions(sessions[0].id, m_squat).device, std::optional(m_encoder));
        QCOMPARE(log.conditions(sessions[1].id, m_squat).device, std::optional(m_camera));
    }

    void testsAtAStation() {
        here(m_bay, 3);
        openWindow();
        page().chooseStation(m_bay);
        QCOMPARE(shown("turn"), u"Ada: Hop, left."_s);
        // Where work can hurt its cautions stand.
        const auto* caution = page().findChild<CautionLabel*>();
        QVERIFY(caution && caution->isVisible());
        QVERIFY(caution->text().contains(u"spotter"_s));
        type(u"1.84"_s); // no side
        QVERIFY2(page().answer().contains(u"“l 1.84”"_s), qPrintable(page().answer()));
        QTest::keyClick(line(), Qt::Key_Down);
        QTest::keyClick(line(), Qt::Key_Return);
        QCOMPARE(turn(), 1);
        type(u"l1.7 r 1.75"_s);
        QCOMPARE(turn(), 2);
        type(u"r - # knee"_s);
        const auto cora = batteries(2).front().battery;
        QCOMPARE(cora.gaps.size(), std::size_t(1));
        QCOMPARE(int(cora.gaps.front().side), int(BodySide::Right));
        QCOMPARE(turn(), 0);
        QCOMPARE(shown("turn"), u"Ada: Hop, right."_s);
        type(u"r 1.8 l 1.86 r 1.82"_s);
        const auto ada = batteries(0).front().battery;
        QCOMPARE(ada.test(m_hop)->attempts.size(), std::size_t(4));
        QCOMPARE(ada.test(m_hop)->conditions.surface, std::string("concrete"));
        type(u"ada"_s);
        QCOMPARE(shown("turn"), u"Ada: Long jump."_s); // the hops are done
        type(u"2.31 2.35"_s);
        QCOMPARE(batteries(0).front().battery.test(m_jump)->attempts.size(), std::size_t(2));
        type(u"cora l 1.7"_s); // hops are due for her, whatever is chosen for whose turn it is
        QCOMPARE(batteries(2).front().battery.test(m_hop)->attempts.size(), std::size_t(1));
        type(u"ada - # tired"_s);
        picture(*m_window, u"station-tests"_s);
    }

    // What an athlete has to beat stands under what is read today: by day, the newest first.
    void earlierTestsStandBesideTodays() {
        {
            log::Log log = log::Log::open(m_folder->path());
            const auto tested = [&](Date when, double left, double right, double jump) {
                const SessionId session = log.add(SessionHead{.athlete = m_squad[0], .date = when});
                const auto attempt = [](BodySide side, double value) {
                    Attempt one;
                    one.side = side;
                    one.value = value;
                    return one;
                };
                Battery battery;
                battery.tests.push_back(
                    {.kind = m_hop,
                     .attempts = {attempt(BodySide::Left, left), attempt(BodySide::Right, right)},
                     .conditions = {}});
                battery.tests.push_back({.kind = m_jump,
                                         .attempts = {attempt(BodySide::Both, jump)},
                                         .conditions = {}});
                log.setBattery(session, battery);
            };
            tested(day(2026, 3, 2), 1.71, 1.69, 2.21);
            tested(day(2026, 4, 6), 1.74, 1.72, 2.25);
        }
        here(m_bay, 1);
        openWindow();
        page().chooseStation(m_bay);
        type(u"l 1.8"_s);
        const auto* table = named<QTableView>("doneHere")->model();
        const auto row = [table](int at) {
            QStringList cells;
            for (int column = 0; column < table->columnCount(); ++column)
                cells << table->index(at, column).data().toString();
            return cells.join(u'|');
        };
        QCOMPARE(row(0), u"1|Hop|left|1.8|"_s);
        QCOMPARE(row(1), u"6 Apr 2026|Hop|left|1.74 m|"_s);
        QCOMPARE(row(2), u"6 Apr 2026|Hop|right|1.72 m|"_s);
        QCOMPARE(row(3), u"6 Apr 2026|Long jump||2.25 m|"_s);
        QCOMPARE(row(4), u"2 Mar 2026|Hop|left|1.71 m|"_s);
        QCOMPARE(table->rowCount(), 7);
        QVERIFY(!named<QPushButton>("begin")->isVisible());
    }

    // An empty picture says nothing: the button that begins it stands there, and nowhere else.
    void whereNobodyIsTheButtonStands() {
        openWindow();
        page().chooseStation(m_bay);
        const auto whoButtons = [&] {
            const auto buttons = page().findChildren<QPushButton*>();
            return std::ranges::count_if(buttons, [](const QPushButton* one) {
                return one->isVisible() && one->text() == u"Who &is here…"_s;
            });
        };
        QCOMPARE(whoButtons(), 1);
        auto* begin = named<QPushButton>("begin");
        const auto standing = {static_cast<QWidget*>(named<QTableView>("doneHere")),
                               static_cast<QWidget*>(named<QTableView>("roster")),
                               static_cast<QWidget*>(page().line())};
        QVERIFY(begin->isVisible());
        page().focusLine();
        QVERIFY(begin->hasFocus());
        QVERIFY(std::ranges::none_of(standing, &QWidget::isVisible));
        here(m_bay, 2);
        page().refresh(Logbook::What::Stations, SessionId{});
        QVERIFY(!begin->isVisible());
        QVERIFY(std::ranges::all_of(standing, &QWidget::isVisible));
        QCOMPARE(whoButtons(), 1);
    }

    void doubtsAreAskedOnce() {
        here(m_rack, 2);
        openWindow();
        page().chooseStation(m_rack);
        type(u"40 92"_s);
        QVERIFY(page().answer().contains(u"0.92"_s));
        QCOMPARE(allSets(), 0);
        QTest::keyClick(line(), Qt::Key_Return);
        QCOMPARE(sets(0).front().reps.front().velocity, 0.92);
        type(u"0.92 0.90"_s); // Bela: the load was forgotten
        QVERIFY2(page().answer().contains(u"40"_s), qPrintable(page().answer()));
        QTest::keyClick(line(), Qt::Key_Return);
        QCOMPARE(sets(1).front().load, 40_kg);
        QCOMPARE(sets(1).front().reps.size(), std::size_t(2));
    }

    void restIsEachOnesOwn() {
        here(m_rack, 2);
        openWindow();
        page().chooseStation(m_rack);
        type(u"40 0.9"_s);
        m_clock.moveOn(std::chrono::seconds(65));
        type(u"40 0.8"_s);
        m_clock.moveOn(std::chrono::seconds(6));
        QTRY_COMPARE(page().roster().rows()[0].rest, u"1:11"_s);
        QTRY_COMPARE(page().roster().rows()[1].rest, u"0:06"_s);
        QTRY_COMPARE(shown("rest"), u"1:11"_s);
    }

    void aStationAndWhoIsThereByKeys() {
        openWindow();
        inNextDialog([&](QWidget* dialog) {
            auto* form = qobject_cast<StationDialog*>(dialog);
            QVERIFY(form);
            QTest::keyClicks(QApplication::focusWidget(), u"Platform"_s);
            chooseByKeys(form->findChild<QComboBox*>(u"stationLift"_s), u"Bench pull"_s);
            picture(*dialog, u"station-dialog"_s);
            inNextDialog([&](QWidget* second) {
                auto* who = qobject_cast<RosterDialog*>(second);
                QVERIFY(who);
                auto* find = who->findChild<QLineEdit*>(u"findWho"_s);
                for (const QString& name : {u"hu"_s, u"ada"_s, u"cor"_s}) {
                    QTest::keyClicks(find, name);
                    QTest::keyClick(find, Qt::Key_Return);
                }
                picture(*second, u"roster-dialog"_s);
                QTest::keyClick(find, Qt::Key_Return); // nothing typed: that is all
            });
            QTest::keyClick(dialog, Qt::Key_Return);
        });
        page().addStation();
        QCOMPARE(page().roster().rowCount(), 3);
        QCOMPARE(page().roster().rows()[0].name, u"Hugo"_s);
        QCOMPARE(page().turn(), std::optional(m_squad[7]));
        type(u"40 0.9"_s);
        QCOMPARE(sets(7, m_pull).size(), std::size_t(1));
        QCOMPARE(page().turn(), std::optional(m_squad[0]));
    }

    void withoutRotationItStays() {
        here(m_rack, 2);
        openWindow();
        page().chooseStation(m_rack);
        auto* turns = page().findChild<QCheckBox*>();
        QTest::mouseClick(turns, Qt::LeftButton);
        QVERIFY(!turns->isChecked());
        work().focusEntry();
        type(u"40 0.9"_s);
        type(u"60 0.8"_s);
        QCOMPARE(sets(0).size(), std::size_t(2));
        QCOMPARE(turn(), 0);
    }

    void heardByThoseWhoDoNotSeeIt() {
        here(m_rack, 2);
        openWindow();
        page().chooseStation(m_rack);
        auto* table = named<QTableView>("roster");
        const QAccessibleInterface* heard = QAccessible::queryAccessibleInterface(table);
        QVERIFY(heard && heard->role() == QAccessible::Table);
        QCOMPARE(table->accessibleName(), u"Who is here, in the order of their turns"_s);
        const auto spoken = [&](int row) {
            return page().roster().index(row, 0).data(Qt::AccessibleTextRole).toString();
        };
        QCOMPARE(spoken(0), u"Ada, whose turn it is, done 0 of 3, next 40"_s);
        QCOMPARE(spoken(1), u"Bela, done 0 of 3, next 40"_s);
        type(u"40 0.9"_s);
        QCOMPARE(spoken(1), u"Bela, whose turn it is, done 0 of 3, next 40"_s);
        QVERIFY(line()->accessibleName().startsWith(u"Bela"_s));
        // Not by colour alone.
        QVERIFY(page().roster().index(1, 0).data().toString() != u"Bela"_s);
    }

    void inGerman() {
        here(m_rack, 2);
        openWindow(u"de"_s);
        page().chooseStation(m_rack);
        type(u"40 0,92 0,90 @8,5"_s);
        QCOMPARE(sets(0).front().reps.size(), std::size_t(2));
        QCOMPARE(sets(0).front().effort, std::optional(Effort{17}));
        QTest::keyClick(line(), Qt::Key_Up);
        type(u"0,8"_s);
        QCOMPARE(sets(1).front().load, 40_kg);
        type(u"60 nicht"_s);
        QVERIFY2(page().answer().contains(u"“60 - # nicht”"_s), qPrintable(page().answer()));
        picture(*m_window, u"station-german"_s);
    }

    void beforeThereIsAnything() {
        {
            log::Log log = log::Log::open(m_folder->path());
            for (const StationId id : {m_rack, m_bench, m_bay})
                log.remove(id);
        }
        openWindow();
        QCOMPARE(shown("turn"), u"No station yet."_s);
        QVERIFY(!line()->isEnabled());
        picture(*m_window, u"station-none"_s);
    }
};

QTEST_MAIN(TestStation)
#include "tst_station.moc"

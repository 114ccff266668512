// SPDX-License-Identifier: GPL-3.0-or-later
// Two sessions of a day that were made only for a second device: offered in the session form, by
// keys alone, joined as one step and parted again, with another window on the same log.
#include "core/log/splitdays.h"
#include "core/questions/questions.h"
#include "tests/log/otherthings.h"
#include "ui/floor/entry/entrypage.h"
#include "ui/floor/entry/splitoffer.h"

#include <QApplication>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>

using namespace slopebook;
using namespace slopebook::test;
using namespace slopebook::ui;

namespace {
constexpr Date testDay = day(2026, 5, 4);

Attempt attemptOf(BodySide side, double value) {
    Attempt made;
    made.side = side;
    made.value = value;
    return made;
}

TestKind kindCalled(const char* name, const char* unit, bool twoSided) {
    TestKind made;
    made.name = name;
    made.unit = unit;
    made.twoSided = twoSided;
    return made;
}

/// What the log says of a lift of an athlete, whichever session it stands in.
std::vector<std::string> readings(const log::Log& log, AthleteId athlete, LiftId lift) {
    std::vector<std::string> all;
    const auto about = questions::background(log, athlete, lift);
    for (const LiftSession& one : about.sessions) {
        const auto profile = questions::profileOf(about, one);
        std::string said = isoDate(one.date) + " " +
                           std::to_string(one.conditions.device ? raw(*one.conditions.device) : 0) +
                           " " + std::to_string(one.points.size());
        if (profile)
            said += " " + std::to_string(profile->line.intercept) + " " +
                    std::to_string(profile->line.slope);
        all.push_back(std::move(said));
    }
    return all;
}
} // namespace

class TestSplitDay : public QObject {
    Q_OBJECT

    Folder m_folder;
    int m_files = 0;
    std::filesystem::path m_path;
    Season m_s;
    LiftId m_squat{};
    DeviceId m_camera{};
    TestKindId m_hop{};
    SessionId m_first{}, m_second{};

private Q_SLOTS:
    void init();
    void itIsOneStepThatIsTakenBack();
    void readingsStayEqual();
    void anothersChangeIsNeverTakenAway();
    void theFormOffersItByKeys();
    void whatIsLeftIsNotAskedAgain();
    void itIsNotOfferedWhereNothingCanBeWritten();
    void itGoesWhereTheDayIsNoSuchAnyMore();
};

// Sets, attempts and gaps in both.
void TestSplitDay::init() {
    m_path = m_folder.path(("split" + std::to_string(m_files++)).c_str());
    log::Log log = log::Log::create(m_path);
    log.together([&] {
        m_s = fillSeason(log);
        m_squat = log.add(Lift{.name = "Jump squat", .ballistic = true});
        m_camera = log.add(Device{.name = "Hall camera"});
        m_hop = log.add(kindCalled("Single hop", "m", true));
        const TestKindId grip = log.add(kindCalled("Grip", "kg", false));
        m_first = log.add(SessionHead{.athlete = m_s.lane3, .date = testDay, .note = "fresh"});
        m_second = log.add(SessionHead{.athlete = m_s.lane3,
                                       .date = testDay,
                                       .ordinal = 2,
                                       .bodyMass = Mass{82'000},
                                       .note = "second device"});
        log.setConditions(m_first, m_s.pull, {.device = m_s.encoder, .place = "boathouse"});
        log.setConditions(m_second, m_squat, {.device = m_camera, .surface = "boards"});
        for (const double kg : {40.0, 60.0, 80.0}) {
            log.add(m_first, m_s.pull, ladderSet(kg, {1.5 - kg / 90, 1.49 - kg / 90}));
            log.add(m_second, m_squat, ladderSet(kg / 2, {2.4 - kg / 100}));
        }
        Battery one, two;
        one.tests = {{.kind = grip, .attempts = {attemptOf(BodySide::Both, 51)}, .conditions = {}}};
        one.gaps = {{.lift = m_s.pull, .load = Mass{90'000}, .reason = "plates gone"}};
        two.tests = {
            {.kind = m_hop,
             .attempts = {attemptOf(BodySide::Left, 1.84), attemptOf(BodySide::Left, 1.91)},
             .conditions = {.device = m_camera}}};
        two.gaps = {{.kind = m_hop, .side = BodySide::Right, .reason = "knee"}};
        log.setBattery(m_first, one);
        log.setBattery(m_second, two);
    });
}

void TestSplitDay::itIsOneStepThatIsTakenBack() {
    Logbook book(log::Log::open(m_path));
    const auto first = book.log().session(m_first);
    const auto second = book.log().session(m_second);
    QSignalSpy changed(&book, &Logbook::changed);
    book.joinSessions(m_first, m_second);
    QCOMPARE(changed.count(), 1);
    QCOMPARE(book.undoStack()->count(), 1);
    QVERIFY(book.nextUndo()->words.startsWith(QStringLiteral("join sessions (Lane 3")));
    const auto joined = book.log().session(m_first);
    QCOMPARE(joined.sets.size(), 6U);
    QCOMPARE(joined.battery.tests.size(), 2U);
    QCOMPARE(joined.battery.gaps.size(), 2U);
    QCOMPARE(joined.head.value.bodyMass, Mass{82'000});
    QCOMPARE(joined.head.value.note, "fresh; second device");
    QCOMPARE(book.log().conditions(m_first, m_s.pull), first.conditions.at(0).conditions);
    QCOMPARE(book.log().conditions(m_first, m_squat), second.conditions.at(0).conditions);
    QCOMPARE(book.log().conditions(m_first, m_hop).device, m_camera);
    for (int round = 0; round < 2; ++round) {
        book.undoStack()->undo();
        QCOMPARE(book.log().session(m_first), first);
        QCOMPARE(book.log().session(m_second), second);
        VERIFY_SOUND(book.log());
        book.undoStack()->redo();
        QCOMPARE(book.log().session(m_first), joined);
        VERIFY_SOUND(book.log());
    }
}

// Each lift is measured as it was: its line, its device and its place in time are the same.
void TestSplitDay::readingsStayEqual() {
    Logbook book(log::Log::open(m_path));
    for (const LiftId lift : {m_s.pull, m_squat}) {
        const auto before = readings(book.log(), m_s.lane3, lift);
        QVERIFY(!before.empty());
        book.joinSessions(m_first, m_second);
        QCOMPARE(readings(book.log(), m_s.lane3, lift), before);
        book.undoStack()->undo();
        QCOMPARE(readings(book.log(), m_s.lane3, lift), before);
    }
}

void TestSplitDay::anothersChangeIsNeverTakenAway() {
    Logbook book(log::Log::open(m_path));
    Logbook other(log::Log::open(m_path));
    // The other window typed a set of the pull into the second session: a study of two devices.
    const SetId typed = other.addSets(m_second, m_s.pull, {ladderSet(50, {0.9})}).front();
    QCOMPARE(errorOf([&] { book.joinSessions(m_first, m_second); }), LogError::Kind::Conflict);
    QCOMPARE(book.undoStack()->count(), 0);
    QCOMPARE(book.log().session(m_second).sets.size(), 4U);
    other.removeSet(typed);
    // One of the squat comes along, though this window had not seen it.
    other.addSets(m_second, m_squat, {ladderSet(50, {1.6})});
    const auto second = other.log().session(m_second);
    book.joinSessions(m_first, m_second);
    QCOMPARE(other.log().session(m_first).sets.size(), 7U);
    QCOMPARE(errorOf([&] { other.joinSessions(m_first, m_second); }), LogError::Kind::Conflict);
    book.undoStack()->undo();
    QCOMPARE(book.log().session(m_second), second);
    book.undoStack()->redo();
    // A set that the other window typed since stands in neither of the two: the step is dropped.
    other.addSets(m_first, m_squat, {ladderSet(55, {1.5})});
    QSignalSpy failed(&book, &Logbook::failed);
    book.undoStack()->undo();
    QCOMPARE(failed.count(), 1);
    QCOMPARE(book.log().session(m_first).sets.size(), 8U);
    QCOMPARE(book.undoStack()->count(), 0);
    VERIFY_SOUND(book.log());
}

namespace {
/// The session form on a logbook, as the window holds it.
struct Form {
    Logbook book;
    EntryPage page{book, [] { return day(2026, 5, 10); }};
    Form(const std::filesystem::path& file, const Season& s, SessionId shown)
        : book(log::Log::open(file)) {
        QObject::connect(
            &book, &Logbook::changed, &page,
            [this](Logbook::What what, qint64 session) { page.refresh(what, SessionId{session}); });
        page.setAthleteAndLift(s.lane3, s.pull);
        page.showSession(shown);
        page.resize(1200, 600);
        page.show();
        if (!QTest::qWaitForWindowExposed(&page))
            QTest::qFail("not shown", __FILE__, __LINE__);
        page.focusLine();
    }
    bool offered() const { return page.findChild<SplitOffer*>()->isVisible(); }
    QPushButton* button(const char* name) const {
        return page.findChild<QPushButton*>(QLatin1String(name));
    }
    /// By Tab alone; false where it cannot be reached.
    bool tabTo(QWidget* wanted) {
        for (int i = 0; i < 40 && QApplication::focusWidget() != wanted; ++i)
            QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
        return QApplication::focusWidget() == wanted;
    }
};
} // namespace

void TestSplitDay::theFormOffersItByKeys() {
    Form form(m_path, m_s, m_second);
    QVERIFY(form.offered());
    const QString words = form.page.findChild<QLabel*>(QStringLiteral("splitDay"))->text();
    QVERIFY2(words.contains(QStringLiteral("differ only by their device")), qPrintable(words));
    // Another day is no such.
    form.page.showSession(m_s.autumn);
    QVERIFY(!form.offered());
    form.page.showSession(m_first);
    QVERIFY(form.offered());
    const auto second = form.book.log().session(m_second);
    form.page.showSession(m_second);
    QSignalSpy said(&form.page, &TaskPage::message);
    QVERIFY(form.tabTo(form.button("joinSessions")));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
    QVERIFY(!form.offered());
    QVERIFY(!said.isEmpty());
    QCOMPARE(form.page.session(), m_first);
    QCOMPARE(form.book.log().session(m_first).sets.size(), 6U);
    // The line has the keys again.
    QCOMPARE(QApplication::focusWidget(),
             form.page.findChild<QLineEdit*>(QStringLiteral("setLine")));
    form.book.undoStack()->undo();
    QCOMPARE(form.book.log().session(m_second), second);
    QVERIFY(form.offered());
}

void TestSplitDay::whatIsLeftIsNotAskedAgain() {
    const auto readAll = [&] {
        QFile file(QString::fromStdString(m_path.string()));
        if (!file.open(QIODevice::ReadOnly))
            return std::string();
        return file.readAll().toStdString();
    };
    const std::string bytes = readAll();
    QVERIFY(!bytes.empty());
    Form form(m_path, m_s, m_first);
    QVERIFY(form.tabTo(form.button("leaveSessions")));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
    QVERIFY(!form.offered());
    form.page.showSession(m_s.autumn);
    form.page.showSession(m_second);
    QVERIFY(!form.offered());
    QCOMPARE(readAll(), bytes); // nothing is written that was not asked for
}

void TestSplitDay::itIsNotOfferedWhereNothingCanBeWritten() {
    Logbook book(log::Log::open(m_path, log::Access::ReadOnly));
    SplitOffer offer(book);
    offer.offerFor(m_s.lane3, m_first);
    QVERIFY(!offer.isVisibleTo(nullptr));
    Logbook own(log::Log::open(m_path));
    SplitOffer there(own);
    there.offerFor(m_s.lane3, m_first);
    QVERIFY(!there.isHidden());
}

// Another window's set makes it a study of two devices, or joins it: the offer goes with the look.
void TestSplitDay::itGoesWhereTheDayIsNoSuchAnyMore() {
    Form form(m_path, m_s, m_second);
    QVERIFY(form.offered());
    Logbook other(log::Log::open(m_path));
    other.addSets(m_second, m_s.pull, {ladderSet(50, {0.9})});
    // Pressed before it was looked at: told in place, and nothing is changed.
    QVERIFY(form.tabTo(form.button("joinSessions")));
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
    QVERIFY(!form.offered());
    QVERIFY(form.page.findChild<QLabel*>(QStringLiteral("setAnswer"))
                ->text()
                .contains(QStringLiteral("not one day on two devices")));
    QCOMPARE(form.book.undoStack()->count(), 0);
    other.undoStack()->undo();
    form.book.lookForOthersWrites();
    QVERIFY(form.offered());
    other.joinSessions(m_first, m_second);
    form.book.lookForOthersWrites();
    QVERIFY(!form.offered());
}

QTEST_MAIN(TestSplitDay)
#include "tst_splitday.moc"

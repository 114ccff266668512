// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/log/builders.h"
#include "tests/log/rawfile.h"

#include <cmath>
#include <limits>
#include <stdexcept>

using namespace slopebook;
using namespace slopebook::test;
using log::Log;

namespace {
using Kind = LogError::Kind;
constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();
constexpr double infinity = std::numeric_limits<double>::infinity();

QString messageOf(const std::function<void()>& work) {
    try {
        work();
    } catch (const std::exception& error) {
        return QString::fromUtf8(error.what());
    }
    return {};
}
} // namespace

class TestWrites : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init() {
        m_folder = std::make_unique<Folder>();
        m_log.emplace(Log::create(m_folder->path()));
        m_s = fillSeason(*m_log);
    }
    void cleanup() {
        VERIFY_SOUND(*m_log);
        m_log.reset();
    }

    void removingAndAddingBackASessionRestoresIt();
    void removingAndAddingBackASetRestoresIt();
    void removingAndAddingBackWhatStandsAloneRestoresIt();
    void aChangedSetChangesItsPoint();
    void aChangedRuleRewritesThePoints();
    void aMovedSessionKeepsItsSets();
    void keysAreNeverGivenTwice();
    void whatIsInUseIsNotRemoved();
    void whatIsGoneIsSaidToBeGone();
    void whatIsThereAlreadyIsRefused();
    void valuesThatMayNotStandAreRefused_data();
    void valuesThatMayNotStandAreRefused();
    void limitsThemselvesAreTaken();
    void togetherIsAllOrNothing();
    void aPartThatFailsInsideTakesOnlyItselfBack();
    void aPartThatReadsBeforeItFailsLeavesTheRestSound();
    void readsInsideSeeWhatWasWritten();
    void everyCommitRaisesTheVersion();
    void writingWhileReadingIsRefused();

private:
    std::unique_ptr<Folder> m_folder;
    std::optional<Log> m_log;
    Season m_s;

    /// What undo brings back. An undo is a step too: a trail is longer for it (tst_trails).
    std::vector<std::string> rows() const {
        auto all = allRows(m_folder->path());
        std::erase_if(all, [](const std::string& row) {
            return row.starts_with("atoms|") || row.starts_with("removed_atoms|") ||
                   row.starts_with("tallies|0|atom|") || row.starts_with("tallies|0|removed atom|");
        });
        for (const std::string& row :
             rowsOf(m_folder->path(), "SELECT 'atoms', kind, one, two, three, hex(uuid), hex(hash) "
                                      "FROM atoms ORDER BY kind, one, two, three"))
            all.push_back(row);
        return all;
    }
};

void TestWrites::removingAndAddingBackASessionRestoresIt() {
    Log& log = *m_log;
    const auto before = rows();
    const log::SessionRecord record = log.session(m_s.winter);
    log.remove(m_s.winter);
    QCOMPARE(errorOf([&] { log.session(m_s.winter); }), Kind::Conflict);
    QVERIFY(log.sessions(m_s.stroke).empty());
    QVERIFY(rows() != before);
    log.together([&] {
        log.add(record.head.value, record.head.id);
        for (const auto& placed : record.sets)
            log.add(placed.session, placed.lift, placed.set, placed.ordinal, placed.id);
    });
    QCOMPARE(log.session(m_s.winter), record);
    QCOMPARE(rows(), before); // checksums included
}

void TestWrites::removingAndAddingBackASetRestoresIt() {
    Log& log = *m_log;
    const auto before = rows();
    const auto second = log.sets(m_s.autumn, m_s.pull)[1];
    log.remove(second.id);
    const auto left = log.sets(m_s.autumn, m_s.pull);
    QCOMPARE(left.size(), 3U);
    QCOMPARE(left[1].ordinal, 3); // the others keep their places
    QCOMPARE(log.liftSessions({.lift = m_s.pull})[0].points.size(), 2U);
    QCOMPARE(log.add(second.session, second.lift, second.set, second.ordinal, second.id),
             second.id);
    QCOMPARE(rows(), before);
    log.remove(log.sets(m_s.autumn, m_s.pull)[0].id);
    const SetId next = log.add(m_s.autumn, m_s.pull, ladderSet(85, {0.4}));
    QCOMPARE(log.set(next).ordinal, 5);
}

void TestWrites::removingAndAddingBackWhatStandsAloneRestoresIt() {
    Log& log = *m_log;
    const Athlete athlete{.name = "Two seat", .note = "n"};
    const Lift lift{.name = "Row", .mvt = Mvt{.value = 0.4, .source = "own words"}};
    const AthleteId athleteId = log.add(athlete);
    const LiftId liftId = log.add(lift);
    const DeviceId deviceId = log.add(Device{.name = "Second encoder"});
    const BlockId blockId =
        log.add(Block{.name = "Spring", .first = day(2026, 3, 1), .last = day(2026, 4, 1)});
    const auto before = rows();
    const auto block = log.blocks().back();
    log.remove(athleteId);
    log.remove(liftId);
    log.remove(deviceId);
    log.remove(blockId);
    QVERIFY(rows() != before);
    QCOMPARE(log.add(athlete, athleteId), athleteId);
    QCOMPARE(log.add(lift, liftId), liftId);
    QCOMPARE(log.add(Device{.name = "Second encoder"}, deviceId), deviceId);
    QCOMPARE(log.add(block.value, blockId), blockId);
    QCOMPARE(rows(), before);
}

void TestWrites::aChangedSetChangesItsPoint() {
    Log& log = *m_log;
    const auto before = rows();
    const auto placed = log.sets(m_s.autumn, m_s.pull)[1];
    Set set = placed.set;
    set.load = Mass{61'000};
    set.reps = {{.velocity = 0.91}, {.velocity = 0.95, .excluded = "bounced"}};
    log.change(placed.id, set);
    QCOMPARE(log.set(placed.id).set, set);
    QCOMPARE(log.liftSessions({.lift = m_s.pull})[0].points[1], (Point{61, 0.91, 2}));
    VERIFY_SOUND(log);
    log.change(placed.id, placed.set);
    QCOMPARE(rows(), before);
}

void TestWrites::aChangedRuleRewritesThePoints() {
    Log& log = *m_log;
    const auto before = rows();
    Lift pull = log.lifts()[0].value;
    const Lift original = pull;
    QCOMPARE(pull.name, "Bench pull");
    pull.rule = PointRule::Mean;
    log.change(m_s.pull, pull);
    const auto lines = log.liftSessions({.lift = m_s.pull});
    QCOMPARE(lines.size(), 3U);
    for (const LiftSession& line : lines)
        QCOMPARE(line.points[0].velocity, (1.10 + 1.12 + 1.09) / 3);
    // The other lift's points stay.
    QCOMPARE(log.liftSessions({.lift = m_s.throwing})[0].points[0].velocity, 2.5);
    VERIFY_SOUND(log);
    log.change(m_s.pull, original);
    QCOMPARE(rows(), before);
}

void TestWrites::aMovedSessionKeepsItsSets() {
    Log& log = *m_log;
    const auto sets = log.session(m_s.winter).sets;
    SessionHead head = log.session(m_s.winter).head.value;
    head.athlete = m_s.lane3;
    head.date = day(2025, 11, 4);
    head.bodyMass = Mass{80'000};
    head.repeatOf = m_s.autumn;
    head.note = "windy";
    log.change(m_s.winter, head);
    QCOMPARE(log.session(m_s.winter).head.value, head);
    QCOMPARE(log.session(m_s.winter).sets, sets);
    QVERIFY(log.sessions(m_s.stroke).empty());
    QCOMPARE(log.sessions(m_s.lane3)[1].id, m_s.winter);
    // A session that others repeat stays with its athlete.
    SessionHead autumn = log.session(m_s.autumn).head.value;
    autumn.athlete = m_s.stroke;
    QCOMPARE(errorOf([&] { log.change(m_s.autumn, autumn); }), Kind::Conflict);
}

void TestWrites::keysAreNeverGivenTwice() {
    Log& log = *m_log;
    const SetId set = log.add(m_s.winter, m_s.pull, ladderSet(90, {0.3}));
    log.remove(set);
    QVERIFY(raw(log.add(m_s.winter, m_s.pull, ladderSet(90, {0.3}))) > raw(set));
    const AthleteId athlete = log.add(Athlete{.name = "Cox"});
    log.remove(athlete);
    QVERIFY(raw(log.add(Athlete{.name = "Cox"})) > raw(athlete));
}

void TestWrites::whatIsInUseIsNotRemoved() {
    Log& log = *m_log;
    const auto before = rows();
    QCOMPARE(errorOf([&] { log.remove(m_s.lane3); }), Kind::Conflict);
    QCOMPARE(messageOf([&] { log.remove(m_s.lane3); }),
             "'Lane 3' still has 2 sessions in the log. Nothing was removed.");
    QCOMPARE(messageOf([&] { log.remove(m_s.encoder); }),
             "'Boathouse encoder' still has 1 session in the log. Nothing was removed.");
    QCOMPARE(messageOf([&] { log.remove(m_s.throwing); }),
             "'Bench throw' still has 3 sets in the log. Nothing was removed.");
    QCOMPARE(messageOf([&] { log.remove(m_s.autumn); }),
             "The session of 2025-11-05 is a repeat of this one. Nothing was removed.");
    QCOMPARE(rows(), before);
    const LiftId row = log.add(Lift{.name = "Row"});
    log.setCheckLoads(m_s.lane3, row, {Mass{30'000}});
    QCOMPARE(errorOf([&] { log.remove(row); }), Kind::Conflict);
    log.setCheckLoads(m_s.lane3, row, {});
    log.remove(row);
}

void TestWrites::whatIsGoneIsSaidToBeGone() {
    Log& log = *m_log;
    const auto gone = [&](const std::function<void()>& work) {
        QCOMPARE(errorOf(work), Kind::Conflict);
        QVERIFY(messageOf(work).contains("not in the log any more"));
    };
    gone([&] { log.change(AthleteId{99}, Athlete{.name = "a"}); });
    gone([&] { log.change(LiftId{99}, Lift{.name = "a"}); });
    gone([&] { log.change(DeviceId{99}, Device{.name = "a"}); });
    gone([&] {
        log.change(BlockId{99},
                   Block{.name = "a", .first = day(2026, 1, 1), .last = day(2026, 1, 2)});
    });
    gone([&] { log.remove(BlockId{99}); });
    gone([&] { log.remove(SessionId{99}); });
    gone([&] { log.remove(SetId{99}); });
    gone([&] { log.set(SetId{99}); });
    gone([&] { log.change(SetId{99}, ladderSet(40, {1})); });
    gone([&] { log.add(SessionId{99}, m_s.pull, ladderSet(40, {1})); });
    gone([&] { log.add(m_s.winter, LiftId{99}, ladderSet(40, {1})); });
    gone([&] { log.add(SessionHead{.athlete = AthleteId{99}, .date = day(2026, 1, 1)}); });
    gone([&] { log.setConditions(m_s.winter, m_s.pull, {.device = DeviceId{99}}); });
    gone([&] { log.setConditions(m_s.winter, LiftId{99}, {.place = "hall"}); });
    gone([&] { log.setConditions(m_s.winter, TestKindId{99}, {.place = "hall"}); });
    gone([&] { log.setConditions(SessionId{99}, m_s.pull, {.place = "hall"}); });
    gone([&] { log.remove(StationId{99}); });
    gone([&] { log.setRoster({.station = StationId{99}, .day = day(2026, 1, 1)}); });
    gone([&] {
        log.add(
            SessionHead{.athlete = m_s.lane3, .date = day(2026, 1, 1), .repeatOf = SessionId{99}});
    });
    gone([&] {
        log.change(SessionId{99}, SessionHead{.athlete = m_s.lane3, .date = day(2026, 1, 1)});
    });
}

void TestWrites::whatIsThereAlreadyIsRefused() {
    Log& log = *m_log;
    QVERIFY(refuses([&] { log.add(Athlete{.name = "Lane 3"}); }));
    QCOMPARE(messageOf([&] { log.add(Athlete{.name = "Lane 3"}); }),
             "found 'Lane 3' a second time, expected a name that no other athlete has");
    QVERIFY(refuses([&] { log.change(m_s.stroke, Athlete{.name = "Lane 3"}); }));
    QVERIFY(refuses([&] { log.add(Lift{.name = "Bench pull"}); }));
    QVERIFY(refuses([&] { log.add(Device{.name = "Boathouse encoder"}); }));
    const Block flood = log.blocks()[0].value;
    QVERIFY(refuses([&] { log.add(flood); }));
    Block next = flood; // the same name in another year is another block
    next.first = day(2027, 1, 4);
    next.last = day(2027, 2, 26);
    log.add(next);
    log.change(m_s.stroke, Athlete{.name = "Stroke seat", .note = "own name kept"});
    QCOMPARE(errorOf([&] { log.add(Athlete{.name = "Other"}, m_s.lane3); }), Kind::Conflict);
    const SessionHead again{.athlete = m_s.stroke, .date = day(2026, 2, 27)};
    QCOMPARE(errorOf([&] { log.add(again); }), Kind::Conflict);
    QCOMPARE(messageOf([&] { log.add(again); }),
             "There is a session 1 of Stroke seat on 2026-02-27 already; 2 is free.");
    QCOMPARE(errorOf([&] { log.add(m_s.winter, m_s.pull, ladderSet(40, {1}), 1); }),
             Kind::Conflict);
    const SetId taken = log.sets(m_s.winter, m_s.pull)[0].id;
    QCOMPARE(errorOf([&] { log.add(m_s.winter, m_s.pull, ladderSet(40, {1}), 9, taken); }),
             Kind::Conflict);
    QCOMPARE(errorOf([&] { log.add(again, m_s.winter); }), Kind::Conflict);
}

void TestWrites::valuesThatMayNotStandAreRefused_data() {
    QTest::addColumn<std::function<void()>>("work");
    const auto row = [](const char* name, std::function<void()> work) {
        QTest::newRow(name) << std::move(work);
    };
    const auto add = [this](auto value) { return [this, value] { m_log->add(value); }; };
    const auto set = [this](Set value) {
        return [this, value] { m_log->add(m_s.winter, m_s.pull, value); };
    };
    const auto session = [this](auto change) {
        return [this, change] {
            SessionHead head{.athlete = m_s.lane3, .date = day(2026, 5, 5)};
            change(head);
            m_log->add(head);
        };
    };
    row("an athlete without a name", add(Athlete{}));
    row("a blank name", add(Athlete{.name = " \t"}));
    row("a name with a NUL", add(Athlete{.name = std::string("a\0b", 3)}));
    row("a name that is not UTF-8", add(Athlete{.name = "caf\xE9"}));
    row("an overlong UTF-8 form", add(Athlete{.name = "a\xC0\xAF"}));
    row("a UTF-8 surrogate", add(Athlete{.name = "a\xED\xA0\x80"}));
    row("a note without end", add(Athlete{.name = "a", .note = std::string(100'001, 'x')}));
    row("a device without a name", add(Device{}));
    row("a lift without a name", add(Lift{}));
    row("an MVT of zero", add(Lift{.name = "a", .mvt = Mvt{.value = 0}}));
    row("an MVT that is no number", add(Lift{.name = "a", .mvt = Mvt{.value = notANumber}}));
    row("an MVT's SD below zero", add(Lift{.name = "a", .mvt = Mvt{.value = 1, .sd = -0.1}}));
    row("an MVT's SD without end", add(Lift{.name = "a", .mvt = Mvt{.value = 1, .sd = infinity}}));
    row("an athlete's own MVT on a lift",
        add(Lift{.name = "a", .mvt = Mvt{.value = 1, .origin = Mvt::Origin::Athlete}}));
    row("a smallest change of zero", add(Lift{.name = "a", .smallestVelocity = 0.0}));
    row("a smallest change that is no number", add(Lift{.name = "a", .smallestOneRm = notANumber}));
    row("a block that ends before it begins",
        add(Block{.name = "a", .first = day(2026, 2, 2), .last = day(2026, 2, 1)}));
    row("a block on a day that does not exist",
        add(Block{.name = "a", .first = day(2026, 2, 30), .last = day(2026, 3, 1)}));
    row("a week of no session", add(Block{.name = "a",
                                          .first = day(2026, 2, 1),
                                          .last = day(2026, 2, 2),
                                          .aWeek = SessionsAWeek{0, 2}}));
    row("more at the fewest than at the most", add(Block{.name = "a",
                                                         .first = day(2026, 2, 1),
                                                         .last = day(2026, 2, 2),
                                                         .aWeek = SessionsAWeek{3, 2}}));
    row("a third of a session", add(Block{.name = "a",
                                          .first = day(2026, 2, 1),
                                          .last = day(2026, 2, 2),
                                          .aWeek = SessionsAWeek{2.3, 2.3}}));
    row("training that is no text",
        add(Block{
            .name = "a", .first = day(2026, 2, 1), .last = day(2026, 2, 2), .trained = "\xff"}));
    row("a ceiling of zero",
        add(Block{
            .name = "a", .first = day(2026, 2, 1), .last = day(2026, 2, 2), .ceiling = Mass{0}}));
    row("a velocity of zero", set(ladderSet(40, {0})));
    row("a velocity below zero", set(ladderSet(40, {-1})));
    row("a velocity of 10 m/s", set(ladderSet(40, {10})));
    row("a velocity that is no number", set(ladderSet(40, {1, notANumber})));
    row("a velocity without end", set(ladderSet(40, {infinity})));
    row("a load below zero", set(Set{.load = Mass{-1}}));
    row("a load over two tonnes", set(Set{.load = Mass{2'000'001}}));
    row("a day that does not exist",
        session([](SessionHead& head) { head.date = day(2026, 2, 29); }));
    row("a session number of zero", session([](SessionHead& head) { head.ordinal = 0; }));
    row("a body mass of zero", session([](SessionHead& head) { head.bodyMass = Mass{0}; }));
    row("a repeat of another athlete's session",
        session([this](SessionHead& head) { head.repeatOf = m_s.winter; }));
    row("a set number of zero",
        [this] { m_log->add(m_s.winter, m_s.pull, ladderSet(40, {1}), 0); });
    row("a key of zero", [this] { m_log->add(Athlete{.name = "a"}, AthleteId{0}); });
    row("a session that repeats itself", [this] {
        SessionHead head = m_log->session(m_s.winter).head.value;
        head.repeatOf = m_s.winter;
        m_log->change(m_s.winter, head);
    });
}

void TestWrites::valuesThatMayNotStandAreRefused() {
    QFETCH(std::function<void()>, work);
    const auto before = rows();
    QVERIFY(refuses(work));
    QCOMPARE(rows(), before);
}

void TestWrites::limitsThemselvesAreTaken() {
    Log& log = *m_log;
    Set set{.load = storableLoadLimit};
    set.reps = {{.velocity = std::nextafter(10.0, 0.0)},
                {.velocity = std::numeric_limits<double>::denorm_min()}};
    QCOMPARE(log.set(log.add(m_s.winter, m_s.pull, set)).set, set);
    const Athlete athlete{.name = "日本 Ω 🙂", .note = std::string(100'000, 'n')};
    log.add(athlete);
    QCOMPARE(log.athletes().back().value, athlete);
    log.add(SessionHead{.athlete = m_s.stroke, .date = day(9999, 12, 31)});
    log.add(SessionHead{.athlete = m_s.stroke, .date = day(1, 1, 1)});
    QCOMPARE(log.sessions(m_s.stroke).back().value.date, day(9999, 12, 31));
}

void TestWrites::togetherIsAllOrNothing() {
    Log& log = *m_log;
    const auto before = rows();
    const long version = log.dataVersion();
    QVERIFY_THROWS_EXCEPTION(std::runtime_error, log.together([&] {
        log.add(Athlete{.name = "Cox"});
        log.remove(log.sets(m_s.winter, m_s.pull)[0].id);
        log.together([&] { log.add(Athlete{.name = "Bow"}); });
        throw std::runtime_error("the import met a bad row");
    }));
    QCOMPARE(rows(), before);
    QCOMPARE(log.dataVersion(), version);
    log.together([&] {
        log.add(Athlete{.name = "Cox"});
        log.together([&] { log.add(Athlete{.name = "Bow"}); });
    });
    QCOMPARE(log.athletes().size(), 4U);
}

void TestWrites::aPartThatFailsInsideTakesOnlyItselfBack() {
    Log& log = *m_log;
    log.together([&] {
        log.add(Athlete{.name = "Cox"});
        try {
            log.together([&] {
                log.add(Athlete{.name = "Bow"});
                log.add(m_s.winter, m_s.pull, ladderSet(95, {0.2}));
                throw std::runtime_error("a row that is refused");
            });
        } catch (const std::runtime_error&) {
            log.add(Athlete{.name = "Two seat"});
        }
    });
    QStringList names;
    for (const auto& athlete : log.athletes())
        names << QString::fromStdString(athlete.value.name);
    QCOMPARE(names, QStringList({"Cox", "Lane 3", "Stroke seat", "Two seat"}));
    QCOMPARE(log.sets(m_s.winter, m_s.pull).size(), 4U);
}

// Reading in a part writes the checksums of what the whole has changed so far; they go with the
// part.
void TestWrites::aPartThatReadsBeforeItFailsLeavesTheRestSound() {
    Log& log = *m_log;
    const auto failing = [&](const std::function<void()>& first) {
        try {
            log.together([&] {
                first();
                log.session(m_s.winter); // settles
                log.add(m_s.winter, m_s.pull, ladderSet(31, {1.3}));
                throw std::runtime_error("no");
            });
        } catch (const std::runtime_error&) { // NOLINT(bugprone-empty-catch): what is tested
        }
    };
    SessionId added{};
    log.together([&] {
        log.add(m_s.winter, m_s.pull, ladderSet(30, {1.3}));
        added = log.add(SessionHead{.athlete = m_s.stroke, .date = day(2026, 7, 1)});
        failing([] {});
        failing([&] { log.remove(added); });
        failing([&] {
            SessionHead moved = log.session(added).head.value;
            moved.athlete = m_s.lane3;
            log.change(added, moved);
        });
    });
    QCOMPARE(log.session(m_s.winter).sets.size(), 6U);
    QCOMPARE(log.session(added).head.value.athlete, m_s.stroke);
    VERIFY_SOUND(log);
    log.together([&] {
        failing([&] { log.add(added, m_s.pull, ladderSet(30, {1.3})); });
        log.remove(added);
        failing(
            [&] { log.add(SessionHead{.athlete = m_s.stroke, .date = day(2026, 7, 1)}, added); });
    });
    QCOMPARE(errorOf([&] { log.session(added); }), Kind::Conflict);
    VERIFY_SOUND(log);
}

void TestWrites::readsInsideSeeWhatWasWritten() {
    Log& log = *m_log;
    log.together([&] {
        log.add(m_s.winter, m_s.pull, ladderSet(85, {0.45}));
        QCOMPARE(log.sets(m_s.winter, m_s.pull).size(), 5U);
        QCOMPARE(log.liftSessions({.athlete = m_s.stroke, .lift = m_s.pull})[0].points.size(), 4U);
        const SessionId fresh =
            log.add(SessionHead{.athlete = m_s.stroke, .date = day(2026, 3, 3)});
        QCOMPARE(log.sessions(m_s.stroke).size(), 2U);
        log.add(fresh, m_s.pull, ladderSet(40, {1.2}));
        QVERIFY(log.check().empty());
        log.remove(fresh);
    });
    QCOMPARE(log.sessions(m_s.stroke).size(), 1U);
}

void TestWrites::everyCommitRaisesTheVersion() {
    Log& log = *m_log;
    Log other = Log::open(m_folder->path());
    const long mine = log.dataVersion();
    const long theirs = other.dataVersion();
    QCOMPARE(log.dataVersion(), mine);
    other.add(Athlete{.name = "Cox"});
    QVERIFY(log.dataVersion() > mine);
    QVERIFY(other.dataVersion() > theirs);
    const long seen = other.dataVersion();
    log.add(Athlete{.name = "Bow"});
    QVERIFY(other.dataVersion() > seen);
    QCOMPARE(other.athletes(), log.athletes());
}

void TestWrites::writingWhileReadingIsRefused() {
    Log& log = *m_log;
    const auto before = rows();
    QCOMPARE(errorOf([&] {
                 log.scan({}, [&](const LiftSession&) { log.add(Athlete{.name = "Cox"}); });
             }),
             Kind::Conflict);
    int lines = 0;
    log.scan({}, [&](const LiftSession& line) {
        lines += static_cast<int>(log.session(line.session).sets.size()); // reading is fine
    });
    QCOMPARE(lines, 6 * 5);
    QCOMPARE(rows(), before);
}

QTEST_APPLESS_MAIN(TestWrites)
#include "tst_writes.moc"

// SPDX-License-Identifier: GPL-3.0-or-later
// Every edit: on disk at once, taken back whole, done again whole; and what happens when a step
// cannot be done.
#include "core/log/storerows.h"
#include "tests/log/builders.h"
#include "ui/edits/logbook.h"

#include <QSignalSpy>

#include <functional>

using namespace slopebook;
using namespace slopebook::test;
using ui::Logbook;
using What = Logbook::What;

namespace {

/// Everything that a log holds, to be compared as a whole.
struct Contents {
    std::vector<Stored<AthleteId, Athlete>> athletes;
    std::vector<Stored<LiftId, Lift>> lifts;
    std::vector<Stored<DeviceId, Device>> devices;
    std::vector<Stored<BlockId, Block>> blocks;
    std::vector<log::SessionRecord> sessions;
    std::vector<std::vector<Mass>> checkLoads;
    friend bool operator==(const Contents&, const Contents&) = default;
};

Contents contentsOf(const log::Log& log) {
    Contents all{log.athletes(), log.lifts(), log.devices(), log.blocks(), {}, {}};
    for (const auto& athlete : all.athletes) {
        for (const auto& session : log.sessions(athlete.id))
            all.sessions.push_back(log.session(session.id));
        for (const auto& lift : all.lifts)
            all.checkLoads.push_back(log.checkLoads(athlete.id, lift.id));
    }
    return all;
}

using Do = std::function<void(Logbook&, const Season&)>;

SetId firstSet(const Logbook& book, const Season& s) {
    return book.log().sets(s.autumn, s.pull).front().id;
}

} // namespace

Q_DECLARE_METATYPE(Do)

class TestLogbook : public QObject {
    Q_OBJECT

    Folder m_folder;
    Season m_season;
    int m_files = 0;

    /// A fresh log with a season in it.
    std::filesystem::path freshFile() {
        const auto path = m_folder.path(("log" + std::to_string(m_files++)).c_str());
        log::Log log = log::Log::create(path);
        m_season = fillSeason(log);
        log.add(Lift{.name = "Front squat"}); // in no session yet
        return path;
    }

private Q_SLOTS:
    void everyEditIsOnDiskAndIsUndoneAndRedoneWhole_data() {
        QTest::addColumn<Do>("edit");
        QTest::addColumn<What>("what");
        const auto row = [](const char* name, What what, Do edit) {
            QTest::newRow(name) << std::move(edit) << what;
        };
        row("add athlete", What::Athletes,
            [](Logbook& b, const Season&) { b.addAthlete({.name = "Bow seat", .note = "new"}); });
        row("add lift", What::Lifts, [](Logbook& b, const Season&) {
            b.addLift({.name = "Back squat", .mvt = Mvt{.value = 0.3, .source = "mine"}});
        });
        row("add device", What::Devices,
            [](Logbook& b, const Season&) { b.addDevice({.name = "Spare", .note = "old"}); });
        row("add block", What::Blocks, [](Logbook& b, const Season&) {
            b.addBlock({.name = "Spring", .first = day(2026, 3, 1), .last = day(2026, 4, 1)});
        });
        row("add session", What::Sessions, [](Logbook& b, const Season& s) {
            b.addSession({.athlete = s.lane3, .date = day(2026, 3, 2)},
                         {{.lift = s.pull, .conditions = {.device = s.encoder}}});
        });
        row("add set", What::Sets, [](Logbook& b, const Season& s) {
            b.addSets(s.autumn, s.pull, {ladderSet(65, {0.8, 0.79})});
        });
        row("add several sets", What::Sets, [](Logbook& b, const Season& s) {
            b.addSets(s.winter, s.pull, {ladderSet(65, {0.8}), ladderSet(67.5, {0.75, 0.74})});
        });
        row("add a set under conditions", What::Sets, [](Logbook& b, const Season& s) {
            const auto lifts = b.log().lifts();
            const auto squat = std::ranges::find_if(
                lifts, [](const auto& lift) { return lift.value.name == "Front squat"; });
            b.addSets(s.winter, squat->id, {ladderSet(65, {0.8})},
                      Conditions{.device = s.encoder, .place = "hall"});
        });
        row("change conditions", What::Sessions, [](Logbook& b, const Season& s) {
            b.setConditions(s.autumn, s.pull, {.place = "hall", .surface = "mat"});
        });
        row("change athlete", What::Athletes, [](Logbook& b, const Season& s) {
            b.changeAthlete(s.lane3, {.name = "Lane 4", .note = ""});
        });
        row("change lift", What::Lifts, [](Logbook& b, const Season& s) {
            Lift lift = b.log().lifts().front().value;
            lift.rule = PointRule::Mean;
            b.changeLift(s.pull, lift);
        });
        row("change device", What::Devices, [](Logbook& b, const Season& s) {
            b.changeDevice(s.encoder, {.name = "Old encoder", .note = ""});
        });
        row("change block", What::Blocks, [](Logbook& b, const Season& s) {
            b.changeBlock(s.flood,
                          {.name = "Flood", .first = day(2026, 1, 1), .last = day(2026, 1, 2)});
        });
        row("change session", What::Sessions, [](Logbook& b, const Season& s) {
            SessionHead head = b.log().session(s.autumn).head.value;
            head.date = day(2025, 10, 30);
            head.bodyMass.reset();
            head.note = "tired";
            b.changeSession(s.autumn, head);
        });
        row("change set", What::Sets, [](Logbook& b, const Season& s) {
            Set set = ladderSet(42.5, {1.05});
            set.excluded = "wrong plates";
            b.changeSet(firstSet(b, s), set);
        });
        row("remove block", What::Blocks,
            [](Logbook& b, const Season& s) { b.removeBlock(s.flood); });
        row("remove session", What::Sessions,
            [](Logbook& b, const Season& s) { b.removeSession(s.winter); });
        row("remove set", What::Sets,
            [](Logbook& b, const Season& s) { b.removeSet(firstSet(b, s)); });
        row("set check loads", What::CheckLoads,
            [](Logbook& b, const Season& s) { b.setCheckLoads(s.lane3, s.pull, {Mass{50'000}}); });
        row("clear check loads", What::CheckLoads,
            [](Logbook& b, const Season& s) { b.setCheckLoads(s.lane3, s.pull, {}); });
    }
    void everyEditIsOnDiskAndIsUndoneAndRedoneWhole() {
        QFETCH(Do, edit);
        QFETCH(What, what);
        const auto path = freshFile();
        Logbook book(log::Log::open(path));
        QSignalSpy changed(&book, &Logbook::changed);
        const Contents before = contentsOf(book.log());
        edit(book, m_season);
        const Contents after = contentsOf(book.log());
        QVERIFY(after != before);
        QVERIFY(contentsOf(log::Log::open(path, log::Access::ReadOnly)) == after);
        QCOMPARE(book.undoStack()->count(), 1);
        book.undoStack()->undo();
        QVERIFY(contentsOf(book.log()) == before);
        QVERIFY(contentsOf(log::Log::open(path, log::Access::ReadOnly)) == before);
        book.undoStack()->redo();
        QVERIFY(contentsOf(log::Log::open(path, log::Access::ReadOnly)) == after);
        book.undoStack()->undo();
        QVERIFY(contentsOf(book.log()) == before);
        QCOMPARE(changed.count(), 4);
        for (const auto& arguments : changed)
            QCOMPARE(arguments.front().value<What>(), what);
        QVERIFY(book.log().check().empty());
    }

    void aChangeToTheSameIsNoEdit() {
        Logbook book(log::Log::open(freshFile()));
        book.changeAthlete(m_season.lane3, {.name = "Lane 3", .note = "left-handed; café"});
        book.setCheckLoads(m_season.lane3, m_season.pull, {Mass{40'000}, Mass{60'000}});
        QCOMPARE(book.undoStack()->count(), 0);
    }

    void aSessionUndoneAndRedoneKeepsItsSets() {
        Logbook book(log::Log::open(freshFile()));
        const SessionId session =
            book.addSession({.athlete = m_season.stroke, .date = day(2026, 3, 2)});
        // Sets that came in by another way than this window's edits.
        book.applyOutsideUndo(
            [&](log::Log& log) { log.add(session, m_season.pull, ladderSet(50, {1.0})); });
        QCOMPARE(book.undoStack()->count(), 0);
        const log::SessionRecord full = book.log().session(session);
        book.removeSession(session);
        book.undoStack()->undo();
        QCOMPARE(book.log().session(session), full);
    }

    void aRefusedEditChangesNothing() {
        const auto path = freshFile();
        Logbook book(log::Log::open(path));
        const Contents before = contentsOf(book.log());
        QSignalSpy changed(&book, &Logbook::changed);
        const auto refusedOrFailed = [&](const std::function<void()>& edit) {
            try {
                edit();
            } catch (const std::exception&) {
                return true;
            }
            return false;
        };
        QVERIFY(refusedOrFailed([&] { book.addAthlete({.name = "Lane 3", .note = {}}); }));
        QVERIFY(refusedOrFailed([&] { book.addAthlete({}); }));
        QVERIFY(refusedOrFailed([&] {
            book.addSets(m_season.autumn, m_season.pull, {ladderSet(60, {0.9, 11})});
        }));
        QVERIFY(refusedOrFailed([&] {
            book.addSets(m_season.autumn, m_season.pull,
                         {ladderSet(60, {0.9}), ladderSet(60, {0})});
        }));
        QVERIFY(refusedOrFailed([&] { book.changeSet(SetId{999'999}, ladderSet(60, {0.9})); }));
        // The spring repeat says that it repeats this one.
        QVERIFY(refusedOrFailed([&] { book.removeSession(m_season.autumn); }));
        QVERIFY(contentsOf(book.log()) == before);
        QCOMPARE(book.undoStack()->count(), 0);
        QCOMPARE(changed.count(), 0);
    }

    void aReadOnlyLogRefusesEdits() {
        const auto path = freshFile();
        Logbook book(log::Log::open(path, log::Access::ReadOnly));
        QCOMPARE(errorOf([&] { book.addAthlete({.name = "Bow seat", .note = {}}); }),
                 std::optional(LogError::Kind::ReadOnly));
        QCOMPARE(book.undoStack()->count(), 0);
    }

    void anUndoThatFindsTheLogBusyStaysInPlace() {
        const auto path = freshFile();
        Logbook book(log::Log::open(path));
        book.addAthlete({.name = "Bow seat", .note = {}});
        const SetId set =
            book.addSets(m_season.winter, m_season.pull, {ladderSet(50, {1.0})}).front();
        const Contents after = contentsOf(book.log());
        QSignalSpy failed(&book, &Logbook::failed);
        log::Log other = log::Log::open(path);
        QVERIFY(errorOf([&] {
                    other.together([&] {
                        other.add(Athlete{.name = "Somebody", .note = {}});
                        book.undoStack()->undo();
                        throw LogError(LogError::Kind::Unavailable, asIs("given up"));
                    });
                }).has_value());
        QCOMPARE(failed.count(), 1);
        QVERIFY(!failed.front().front().toString().isEmpty());
        QCOMPARE(book.undoStack()->index(), 2);
        QCOMPARE(book.undoStack()->count(), 2);
        QVERIFY(contentsOf(book.log()) == after);
        book.undoStack()->undo();
        QCOMPARE(failed.count(), 1);
        QVERIFY(errorOf([&] { book.log().set(set); }).has_value());
        book.undoStack()->redo();
        QVERIFY(contentsOf(book.log()) == after);
    }

    void anUndoOfWhatAnotherWindowChangedIsDropped() {
        const auto path = freshFile();
        Logbook book(log::Log::open(path));
        book.addAthlete({.name = "Bow seat", .note = {}});
        const SetId set =
            book.addSets(m_season.winter, m_season.pull, {ladderSet(50, {1.0})}).front();
        log::Log other = log::Log::open(path);
        other.change(set, ladderSet(52.5, {0.97}));
        QSignalSpy failed(&book, &Logbook::failed);
        book.undoStack()->undo();
        QCOMPARE(failed.count(), 1);
        QCOMPARE(book.log().set(set).set, ladderSet(52.5, {0.97}));
        QCOMPARE(book.undoStack()->count(), 1);
        book.undoStack()->undo(); // the athlete, who is as they were added
        QCOMPARE(failed.count(), 1);
        QCOMPARE(book.log().athletes().size(), 2U);
    }

    void anothersWriteIsSeenOnce() {
        const auto path = freshFile();
        Logbook book(log::Log::open(path));
        QSignalSpy changed(&book, &Logbook::changed);
        book.lookForOthersWrites();
        book.addDevice({.name = "Spare", .note = {}});
        book.lookForOthersWrites();
        QCOMPARE(changed.count(), 1); // our own alone
        log::Log other = log::Log::open(path);
        other.add(Athlete{.name = "Somebody", .note = {}});
        book.lookForOthersWrites();
        book.lookForOthersWrites();
        QCOMPARE(changed.count(), 2);
        QCOMPARE(changed.back().front().value<What>(), What::Everything);
        // One that came in just before our own write is not hidden by it, and does not hold it up.
        other.add(Athlete{.name = "Somebody else", .note = {}});
        book.addDevice({.name = "Spare 2", .note = {}});
        QCOMPARE(changed.count(), 3);
        QCOMPARE(changed.back().front().value<What>(), What::Devices);
        book.lookForOthersWrites();
        QCOMPARE(changed.count(), 4);
        QCOMPARE(changed.back().front().value<What>(), What::Everything);
    }

    // What a log knows of its store is written by meetings after each entry, and is on no page.
    void whatWasSentIsNoNews() {
        const auto path = freshFile();
        Logbook book(log::Log::open(path));
        log::Log meeting = log::Log::open(path);
        const auto note = [&](std::int64_t n) {
            meeting.together(
                [&] { log::putMark(log::connectionOf(meeting), {.n = n, .tag = {}}); });
        };
        book.addDevice({.name = "Spare", .note = {}});
        book.lookForOthersWrites();
        QSignalSpy changed(&book, &Logbook::changed);
        note(1);
        book.lookForOthersWrites();
        QCOMPARE(changed.count(), 0);
        // Both at once: told of.
        note(2);
        meeting.add(Athlete{.name = "Somebody", .note = {}});
        book.lookForOthersWrites();
        QCOMPARE(changed.count(), 1);
        // After an own write it cannot be told apart: better once too often.
        note(3);
        book.addDevice({.name = "Spare 2", .note = {}});
        book.lookForOthersWrites();
        QCOMPARE(changed.count(), 3);
        // A set of a session alone, which another program changes.
        const SessionId session = meeting.sessions(meeting.athletes().front().id).front().id;
        for (const char* words : {"grip", ""}) {
            const auto before = changed.count();
            log::PlacedSet placed = meeting.session(session).sets.front();
            placed.set.note = words;
            meeting.change(placed.id, placed.set);
            book.lookForOthersWrites();
            QCOMPARE(changed.count(), before + 1);
        }
    }

    void workOutsideUndoIsWholeOrNotAtAll() {
        Logbook book(log::Log::open(freshFile()));
        book.addDevice({.name = "Spare", .note = {}});
        const Contents before = contentsOf(book.log());
        QVERIFY(errorOf([&] {
                    book.applyOutsideUndo([](log::Log& log) {
                        log.add(Athlete{.name = "Half", .note = {}});
                        throw LogError(LogError::Kind::Full, asIs("no room"));
                    });
                }).has_value());
        QVERIFY(contentsOf(book.log()) == before);
        QCOMPARE(book.undoStack()->count(), 1);
        book.applyOutsideUndo([](log::Log& log) { log.add(Athlete{.name = "Whole", .note = {}}); });
        QCOMPARE(book.log().athletes().size(), before.athletes.size() + 1);
        QCOMPARE(book.undoStack()->count(), 0);
    }
};

QTEST_GUILESS_MAIN(TestLogbook)
#include "tst_logbook.moc"

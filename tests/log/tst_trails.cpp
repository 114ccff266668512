// SPDX-License-Identifier: GPL-3.0-or-later
// What logs tell one another of what they hold: contents as bytes and back, trails that each edit
// makes one step longer, and what was removed.
#include "core/log/carried.h"
#include "core/log/conflicts.h"
#include "core/log/newsessions.h"
#include "tests/exchange/dicelog.h"
#include "tests/log/builders.h"
#include "tests/log/olderlog.h"
#include "tests/log/otherthings.h"
#include "tests/log/rawfile.h"

#include <algorithm>
#include <functional>
#include <map>
#include <random>
#include <set>

using namespace slopebook;
using namespace slopebook::test;
using log::Carried;
using log::Log;
using log::Sixteen;

namespace {
namespace fs = std::filesystem;

using Held = std::map<Sixteen, Carried>;

Held heldBy(const Log& log) {
    Held all;
    log::visitCarried(log, [&](const Carried& one) {
        if (!all.emplace(one.uuid, one).second)
            throw std::runtime_error("two things of one name");
    });
    return all;
}

/// A log of everything, made by dice.
Log diceLog(const fs::path& file, unsigned seed) {
    Log log = Log::create(file);
    tests::Maker(seed).fill(log);
    const TestKindId test = log.testKinds().front().id;
    const auto athletes = log.athletes();
    for (const auto& station : log.stations()) {
        Roster roster{.station = station.id, .day = day(2026, 3, 14)};
        for (const auto& athlete : athletes)
            roster.athletes.push_back(athlete.id);
        log.setRoster(roster);
    }
    log.add(Equipment{
        .name = "hall",
        .bars = {{.name = "long", .mass = ExactMass{2'000'000'000}},
                 {.mass = ExactMass{1'000'000'000}, .unit = MassUnit::Pound}},
        .plates = {{.mass = ExactMass{500'000'000}, .pairs = 2}},
        .fixed = {{.name = "vest", .mass = ExactMass{100'000'000}, .use = FixedMass::Use::Added}},
        .ceiling = ExactMass{9'000'000'000}});
    for (const auto& athlete : athletes)
        for (const auto& session : log.sessions(athlete.id))
            log.setConditions(session.id, test, {.surface = "grass", .technique = "arms free"});
    return log;
}

/// Keys of this log by UUID.
log::KeyOf keysOf(const Held& held) {
    return [&held](const char* kind, const Sixteen& uuid) -> std::optional<std::int64_t> {
        const auto found = held.find(uuid);
        if (found == held.end() || found->second.kind != kind)
            return std::nullopt;
        return found->second.place.one;
    };
}

std::string saidAgain(const Log& log, const log::Thing& thing) {
    return log::contentOf(log::uuidsIn(log::connectionOf(log)), thing).bytes();
}

bool refusesContent(std::string_view bytes, const log::KeyOf& keys) {
    return refuses([&] { log::readContent(bytes, keys); });
}
} // namespace

class TestTrails : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void contentsComeBackFromTheirBytes();
    void whatWasReadIsWhatTheLogHolds();
    void otherBytesAreRefused();
    void stepsByHand();
    void eachEditIsOneStep();
    void whatChangesNothingIsNoStep();
    void anUndoIsAStepToo();
    void whatWasRemovedIsKept();
    void anImportIsOneStep();
    void olderLogsKnowEachOthersTrails();
    void whatWasRemovedBeforeTravelsByItsHash();
    void whatAnotherLogCarriedIsTaken();
    void conflictsTravel();
    void aLogThatMeetsAStoreNotesWhatIsUnsent();
};

void TestTrails::contentsComeBackFromTheirBytes() {
    std::set<std::string> kinds;
    for (unsigned seed = 1; seed <= 4; ++seed) {
        const Folder folder;
        Log log = diceLog(folder.path(), seed);
        joinAStore(log);
        const Held held = heldBy(log);
        const log::KeyOf keys = keysOf(held);
        for (const auto& [uuid, one] : held) {
            const log::Thing thing = log::readContent(one.content, keys);
            if (one.alive) {
                QCOMPARE(saidAgain(log, thing), one.content);
                kinds.insert(one.kind);
            }
            QCOMPARE(log::kindOfContent(one.content), one.kind);
            const auto references = log::referencesOf(one.content);
            QCOMPARE(one.parent.has_value(),
                     !references.empty() && one.kind != "station" && one.kind != "conflict");
            if (one.parent)
                QVERIFY(references.front() == *one.parent);
        }
    }
    QCOMPARE(kinds.size(), std::variant_size_v<log::Thing>);
}

void TestTrails::whatWasReadIsWhatTheLogHolds() {
    const Folder folder;
    const Log log = diceLog(folder.path(), 7);
    const Held held = heldBy(log);
    const log::KeyOf keys = keysOf(held);
    int compared = 0;
    for (const auto& [uuid, one] : held) {
        if (!one.alive)
            continue;
        const log::Thing thing = log::readContent(one.content, keys);
        if (one.kind == "set") {
            log::PlacedSet set = log.set(SetId{one.place.one});
            set.id = SetId{};
            QCOMPARE(std::get<log::SetThing>(thing), set);
        } else if (one.kind == "session") {
            const auto record = log.session(SessionId{one.place.one});
            QCOMPARE(std::get<log::SessionThing>(thing).head, record.head.value);
        } else if (one.kind == "lift") {
            QCOMPARE(std::get<Lift>(thing), log.lift(LiftId{one.place.one}).value);
        } else if (one.kind == "lift conditions") {
            const auto& said = std::get<log::LiftConditionsThing>(thing);
            QCOMPARE(said.conditions, log.conditions(said.session, said.lift));
        } else if (one.kind == "gap") {
            const auto& said = std::get<log::GapThing>(thing);
            const Battery battery = log.battery(said.session);
            QCOMPARE(said.gap, battery.gaps.at(static_cast<std::size_t>(said.ordinal - 1)));
        } else {
            continue;
        }
        ++compared;
    }
    QVERIFY(compared > 30);
    const auto equipment =
        std::ranges::find_if(held, [](const auto& one) { return one.second.kind == "equipment"; });
    QCOMPARE(std::get<Equipment>(log::readContent(equipment->second.content, keys)),
             log.equipment().at(0).value);
}

void TestTrails::otherBytesAreRefused() {
    const Folder folder;
    const Log log = diceLog(folder.path(), 3);
    const Held held = heldBy(log);
    const log::KeyOf keys = keysOf(held);
    std::mt19937 engine(20);
    const auto below = [&](std::size_t n) {
        return std::uniform_int_distribution<std::size_t>(0, n - 1)(engine);
    };
    int cut = 0, altered = 0;
    for (const auto& [uuid, one] : held) {
        const std::string& bytes = one.content;
        for (std::size_t size = 0; size < bytes.size(); size += 1 + below(8), ++cut)
            if (const std::string_view part = std::string_view(bytes).substr(0, size);
                !refusesContent(part, keys)) // what is left may be a thing that says less
                QCOMPARE(saidAgain(log, log::readContent(part, keys)), std::string(part));
        for (int i = 0; i < 40; ++i, ++altered) {
            std::string other = bytes;
            for (std::size_t n = 1 + below(3); n > 0; --n)
                switch (below(4)) {
                case 0:
                    other[below(other.size())] = static_cast<char>(below(256));
                    break;
                case 1:
                    other.insert(below(other.size()), 1 + below(9), '\0');
                    break;
                case 2:
                    other.erase(below(other.size() - 8), 1 + below(8));
                    break;
                default:
                    other += bytes.substr(below(bytes.size()));
                }
            if (!refusesContent(other, keys))
                QCOMPARE(saidAgain(log, log::readContent(other, keys)), other);
        }
    }
    QVERIFY(cut > 1000 && altered > 1000);
    QVERIFY(refusesContent("", keys));
    QVERIFY(refusesContent(std::string(64, '\xFF'), keys)); // a length beyond all
    // Of what is not here, in words.
    const auto set =
        std::ranges::find_if(held, [](const auto& one) { return one.second.kind == "set"; });
    try {
        log::readContent(set->second.content,
                         [](const char*, const Sixteen&) -> std::optional<std::int64_t> {
                             return std::nullopt;
                         });
        QFAIL("read");
    } catch (const BadInput& error) {
        QCOMPARE(QString::fromStdString(error.what()),
                 QStringLiteral("found a set that speaks of a session which is not here, expected "
                                "what it speaks of beside it"));
    }
}

void TestTrails::stepsByHand() {
    const Sixteen a = log::hashOf("a"), b = log::hashOf("b");
    const auto joined = [](std::initializer_list<Sixteen> parts) {
        std::string bytes;
        for (const Sixteen& part : parts)
            bytes.append(reinterpret_cast<const char*>(part.data()), part.size());
        return log::hashOf(bytes);
    };
    log::Trail trail;
    log::extend(trail, log::stepHash(a, true));
    QVERIFY(trail.at(0).hash == a && trail[0].revision == joined({a}));
    log::extend(trail, log::stepHash(b, true));
    QVERIFY(trail.at(1).revision == joined({b, trail[0].revision}));
    log::extend(trail, log::stepHash(b, false));
    QVERIFY(trail.at(2).hash != b); // a removal is a step of its own
    log::Trail back = trail;
    log::extend(back, log::stepHash(a, true));
    QVERIFY(back.at(3).hash == a && back[3].revision != trail[0].revision);
    QVERIFY(log::shortTrail(a, true) == log::Trail(trail.begin(), trail.begin() + 1));
    QCOMPARE(log::shortTrail(a, false).size(), 2U);
    QVERIFY(log::holds(back, log::revisionOf(trail)) && !log::holds(trail, log::revisionOf(back)));
    QVERIFY(*log::lastCommon(back, trail) == trail[2] && *log::lastCommon(trail, back) == trail[2]);
    QVERIFY(log::lastCommon(trail, log::shortTrail(b, true)) == nullptr);
    QVERIFY(log::revisionOfBoth(a, b, a) == log::revisionOfBoth(b, a, a));
    QVERIFY(log::revisionOfBoth(a, b, a) != log::revisionOfBoth(a, b, b));
    QVERIFY(log::readTrail(log::bytesOf(back)) == back);
    QVERIFY(refuses([] { log::readTrail(""); }));
    QVERIFY(refuses([&] { log::readTrail(log::bytesOf(back).substr(1)); }));
}

namespace {
/// One edit after another through the log's own doors, and what of each thing they may leave.
class Dice {
public:
    Dice(Log& log, unsigned seed) : m_log(log), m_engine(seed), m_before(heldBy(log)) {}

    void go() {
        const auto work = m_works[below(m_works.size())];
        try {
            (this->*work)();
        } catch (const LogError& error) { // still in use, or there already
            if (error.kind() != LogError::Kind::Conflict)
                throw;
        } catch (const BadInput&) { // NOLINT(bugprone-empty-catch): a name that is taken
        }
        compare();
    }
    int steps = 0, removals = 0, returns = 0;
    QString wrong;

private:
    using Work = void (Dice::*)();

    std::size_t below(std::size_t n) {
        return std::uniform_int_distribution<std::size_t>(0, n - 1)(m_engine);
    }
    template <class List>
    const auto& any(const List& list) {
        return list[below(list.size())];
    }
    double speed() { return 0.2 + 0.01 * static_cast<double>(below(100)); }
    SessionId session() {
        std::vector<SessionId> all;
        for (const auto& athlete : m_log.athletes())
            for (const auto& one : m_log.sessions(athlete.id))
                all.push_back(one.id);
        if (all.empty())
            all.push_back(m_log.add(
                SessionHead{.athlete = any(m_log.athletes()).id, .date = day(2026, 5, 1)}));
        return any(all);
    }

    void note() {
        auto one = any(m_log.athletes());
        one.value.note = "note " + std::to_string(below(4));
        m_log.change(one.id, one.value);
    }
    void lift() {
        auto one = any(m_log.lifts());
        one.value.rule = below(2) == 0 ? PointRule::Mean : PointRule::Fastest; // rewrites points
        m_log.change(one.id, one.value);
    }
    void newSet() {
        m_log.add(session(), any(m_log.lifts()).id,
                  ladderSet(20 + static_cast<double>(below(80)), {speed(), speed()}));
    }
    void changeSet() {
        const auto sets = m_log.session(session()).sets;
        if (sets.empty())
            return;
        log::PlacedSet placed = any(sets);
        if (placed.set.outcome == Outcome::Lifted)
            placed.set.reps.push_back({.velocity = speed()});
        m_log.change(placed.id, placed.set);
    }
    void removeSet() {
        const auto sets = m_log.session(session()).sets;
        if (sets.empty())
            return;
        m_gone.push_back(any(sets));
        m_log.remove(m_gone.back().id);
    }
    void putSetBack() {
        if (m_gone.empty())
            return;
        const log::PlacedSet set = m_gone.back();
        m_gone.pop_back();
        m_log.add(set.session, set.lift, set.set, set.ordinal, set.id);
    }
    void head() {
        const auto id = session();
        SessionHead head = m_log.session(id).head.value;
        head.bodyMass = Mass{50'000 + static_cast<std::int64_t>(below(3)) * 500};
        m_log.change(id, head);
    }
    void removeSession() { m_log.remove(session()); }
    void conditions() {
        m_log.setConditions(session(), any(m_log.lifts()).id,
                            below(3) == 0 ? Conditions{}
                                          : Conditions{.device = any(m_log.devices()).id,
                                                       .place = std::to_string(below(3))});
    }
    void testConditions() {
        m_log.setConditions(session(), any(m_log.testKinds()).id,
                            below(3) == 0 ? Conditions{} : Conditions{.footwear = "spikes"});
    }
    void battery() {
        const auto id = session();
        Battery held = m_log.battery(id);
        const auto kind = any(m_log.testKinds());
        if (!held.tests.empty() && !held.tests[0].attempts.empty() && below(2) == 0) {
            auto& attempts = held.tests[0].attempts;
            attempts.erase(attempts.begin() + static_cast<std::ptrdiff_t>(below(attempts.size())));
        } else {
            auto found = std::ranges::find(held.tests, kind.id, &TestAttempts::kind);
            if (found == held.tests.end())
                found = held.tests.insert(
                    held.tests.end(),
                    TestAttempts{.kind = kind.id, .attempts = {}, .conditions = {}});
            Attempt attempt;
            attempt.side = kind.value.twoSided ? BodySide::Left : BodySide::Both;
            attempt.value = speed();
            if (takesContact(kind.value.formula))
                attempt.contact = 0.2;
            found->attempts.push_back(attempt);
        }
        if (!held.gaps.empty() && below(2) == 0)
            held.gaps.erase(held.gaps.begin());
        m_log.setBattery(id, held);
    }
    void loads() {
        std::vector<Mass> loads;
        for (std::size_t n = below(4); n > 0; --n)
            loads.push_back(Mass{static_cast<std::int64_t>(below(5)) * 10'000});
        std::ranges::sort(loads);
        loads.erase(std::unique(loads.begin(), loads.end()), loads.end());
        m_log.setCheckLoads(any(m_log.athletes()).id, any(m_log.lifts()).id, loads);
    }
    void roster() {
        const auto stations = m_log.stations();
        if (stations.empty())
            return;
        Roster roster{.station = any(stations).id, .day = day(2026, 3, 14)};
        auto athletes = m_log.athletes();
        std::ranges::shuffle(athletes, m_engine);
        athletes.resize(below(athletes.size() + 1));
        for (const auto& athlete : athletes)
            roster.athletes.push_back(athlete.id);
        m_log.setRoster(roster);
    }
    void station() {
        const auto stations = m_log.stations();
        if (stations.empty())
            return;
        auto one = any(stations);
        if (below(4) == 0)
            return m_log.remove(one.id);
        one.value.sets = static_cast<int>(below(5));
        m_log.change(one.id, one.value);
    }
    void named() {
        switch (below(4)) {
        case 0:
            m_log.add(Device{.name = "device " + std::to_string(below(9))});
            break;
        case 1:
            m_log.remove(any(m_log.devices()).id);
            break;
        case 2:
            m_log.remove(any(m_log.blocks()).id);
            break;
        default:
            m_log.add(Block{.name = "block " + std::to_string(below(9)),
                            .first = day(2026, 1, 1),
                            .last = day(2026, 2, 1)});
        }
    }

    void compare() {
        const Held now = heldBy(m_log);
        const auto fault = [&](const Carried& one, const char* what) {
            wrong += QString::fromStdString(one.kind + " " + std::to_string(one.place.one)) + ": " +
                     what + "\n";
        };
        for (const auto& [uuid, one] : now) {
            if (one.trail.empty() || one.trail.back().hash != log::stepHash(one.hash, one.alive))
                fault(one, "the trail does not end with what it says");
            if (log::hashOf(one.content) != one.hash)
                fault(one, "the hash is not that of the content");
            const auto found = m_before.find(uuid);
            if (found == m_before.end()) {
                if (one.trail.size() != 1 || !one.alive)
                    fault(one, "new, and not of one step");
                ++steps;
                continue;
            }
            const Carried& was = found->second;
            if (one.hash == was.hash && one.alive == was.alive) {
                if (one.trail != was.trail)
                    fault(one, "the same, and another trail");
                continue;
            }
            ++steps;
            removals += one.alive ? 0 : 1;
            returns += one.alive && !was.alive ? 1 : 0;
            if (one.trail.size() != was.trail.size() + 1 ||
                !std::equal(was.trail.begin(), was.trail.end(), one.trail.begin()))
                fault(one, "not one step more");
            if (!one.alive && one.content != was.content)
                fault(one, "removed, and says something else");
        }
        for (const auto& [uuid, was] : m_before)
            if (!now.contains(uuid))
                fault(was, "forgotten");
        m_before = now;
    }

    static constexpr std::array<Work, 15> m_works{
        &Dice::note,           &Dice::lift,       &Dice::newSet,       &Dice::changeSet,
        &Dice::removeSet,      &Dice::putSetBack, &Dice::head,         &Dice::conditions,
        &Dice::testConditions, &Dice::battery,    &Dice::loads,        &Dice::roster,
        &Dice::station,        &Dice::named,      &Dice::removeSession};
    Log& m_log;
    std::mt19937 m_engine;
    Held m_before;
    std::vector<log::PlacedSet> m_gone;
};
} // namespace

/// SLOPEBOOK_DICE=10000 in the long run.
void TestTrails::eachEditIsOneStep() {
    const int edits = std::max(60, qEnvironmentVariableIntValue("SLOPEBOOK_DICE"));
    int steps = 0, removals = 0, returns = 0;
    for (unsigned seed = 1; seed <= 4; ++seed) {
        const Folder folder;
        Log log = diceLog(folder.path(), seed);
        Dice dice(log, seed);
        for (int i = 0; i < edits; ++i)
            dice.go();
        QCOMPARE(dice.wrong, QString());
        VERIFY_SOUND(log);
        steps += dice.steps;
        removals += dice.removals;
        returns += dice.returns;
    }
    QVERIFY2(steps > 150 && removals > 40 && returns > 3,
             qPrintable(QString("%1 %2 %3").arg(steps).arg(removals).arg(returns)));
}

void TestTrails::whatChangesNothingIsNoStep() {
    const Folder folder;
    Log log = diceLog(folder.path(), 5);
    const auto before = rowsOf(folder.path(), "SELECT kind, one, two, three, hex(uuid), hex(hash), "
                                              "hex(trail) FROM atoms");
    const auto removed = rowsOf(folder.path(), "SELECT * FROM removed_atoms").size();
    for (const auto& one : log.athletes())
        log.change(one.id, one.value);
    for (const auto& one : log.lifts())
        log.change(one.id, one.value);
    for (const auto& one : log.stations()) {
        log.change(one.id, one.value);
        log.setRoster(log.roster(one.id, day(2026, 3, 14)));
    }
    for (const auto& one : log.equipment())
        log.change(one.id, one.value);
    for (const auto& athlete : log.athletes())
        for (const auto& head : log.sessions(athlete.id)) {
            const auto record = log.session(head.id);
            log.change(head.id, head.value);
            log.setBattery(head.id, record.battery);
            for (const auto& placed : record.sets)
                log.change(placed.id, placed.set);
            for (const auto& one : record.conditions)
                log.setConditions(head.id, one.lift, one.conditions);
            for (const auto& lift : log.lifts())
                log.setCheckLoads(athlete.id, lift.id, log.checkLoads(athlete.id, lift.id));
        }
    QCOMPARE(rowsOf(folder.path(), "SELECT kind, one, two, three, hex(uuid), hex(hash), "
                                   "hex(trail) FROM atoms"),
             before);
    QCOMPARE(rowsOf(folder.path(), "SELECT * FROM removed_atoms").size(), removed);
}

void TestTrails::anUndoIsAStepToo() {
    const Folder folder;
    Log log = Log::create(folder.path());
    const Season s = fillSeason(log);
    const log::PlacedSet set = log.sets(s.winter, s.pull).at(0);
    const auto trailOfSet = [&] {
        const auto atom = log::atomOf(log::connectionOf(log), {.kind = "set", .one = raw(set.id)});
        return log::carried(log, atom->uuid)->trail;
    };
    const log::Trail first = trailOfSet();
    QCOMPARE(first.size(), 1U);
    log.change(set.id, ladderSet(45, {1.0}));
    log.change(set.id, set.set);
    const log::Trail third = trailOfSet();
    QCOMPARE(third.size(), 3U);
    QVERIFY(third[0] == first[0] && third[2].hash == first[0].hash);
    QVERIFY(third[2].revision != first[0].revision);
    log.remove(set.id);
    log.add(s.winter, s.pull, set.set, set.ordinal, set.id);
    QCOMPARE(trailOfSet().size(), 5U);
    // What is taken back with its transaction was no step.
    struct TakenBack {};
    try {
        log.together([&] {
            log.change(set.id, ladderSet(45, {1.0}));
            throw TakenBack{};
        });
    } catch (const TakenBack&) { // NOLINT(bugprone-empty-catch): that is what it is for
    }
    QCOMPARE(trailOfSet().size(), 5U);
    VERIFY_SOUND(log);
}

void TestTrails::whatWasRemovedIsKept() {
    const Folder folder;
    Log log = Log::create(folder.path());
    const Season s = fillSeason(log);
    const TestKindId hop = addOtherThings(log, s);
    addTestDay(log, s, hop);
    const Held before = heldBy(log);
    log.remove(s.repeat);
    log.setBattery(s.autumn, {});
    log.setCheckLoads(s.lane3, s.pull, {});
    for (const auto& station : log.stations())
        log.remove(station.id);
    log.remove(s.autumn);
    log.remove(s.lane3);
    log.remove(log.equipment().at(0).id);
    log.remove(s.flood);
    log.remove(hop);
    std::set<std::string> kinds;
    for (const auto& [uuid, one] : heldBy(log)) {
        const Carried& was = before.at(uuid);
        QVERIFY(one.content == was.content);
        if (one.alive)
            continue;
        kinds.insert(one.kind);
        QVERIFY(one.parent == was.parent);
        log::referencesOf(one.content); // may be read
    }
    // Lifts and devices are in use still.
    QCOMPARE(kinds, (std::set<std::string>{"athlete", "attempt", "block", "check load", "equipment",
                                           "gap", "lift conditions", "roster", "session", "set",
                                           "station", "test", "test conditions"}));
    VERIFY_SOUND(log);
}

void TestTrails::anImportIsOneStep() {
    const Folder folder;
    Log log = Log::create(folder.path());
    const Season s = fillSeason(log);
    const Held before = heldBy(log);
    log::addSessions(log, {{.head = {.athlete = s.lane3, .date = day(2026, 6, 1)},
                            .conditions = {{s.pull, {.place = "hall"}}},
                            .sets = {{s.pull, 1, ladderSet(40, {1.0})}}}});
    int came = 0;
    for (const auto& [uuid, one] : heldBy(log))
        if (!before.contains(uuid)) {
            QCOMPARE(one.trail.size(), 1U);
            ++came;
        }
    QCOMPARE(came, 3);
    VERIFY_SOUND(log);
}

void TestTrails::olderLogsKnowEachOthersTrails() {
    for (const int version : {4, 5, 6}) {
        const Folder folder;
        const fs::path file = folder.path("older.slopebook"), copy = folder.path("copy.slopebook");
        {
            Log log = Log::create(folder.path("new.slopebook"));
            const Season s = fillSeason(log);
            addOtherThings(log, s);
            log.change(s.winter, log.session(s.winter).head.value);
        }
        writeAsOlder(folder.path("new.slopebook"), file, version);
        fs::copy_file(file, copy);
        Log here = Log::open(file), there = Log::open(copy);
        VERIFY_SOUND(here);
        const Held both = heldBy(here);
        QVERIFY(both.size() > 30);
        // One goes on with it, and the other's revision is in its trail.
        const SetId set = here.sets(SessionId{3}, LiftId{1}).at(0).id;
        there.change(set, ladderSet(42.5, {1.2}));
        there.remove(there.sets(SessionId{3}, LiftId{1}).at(1).id);
        int ahead = 0;
        for (const auto& [uuid, one] : heldBy(there)) {
            const Carried& mine = both.at(uuid);
            QVERIFY(log::holds(one.trail, log::revisionOf(mine.trail)));
            ahead += one.trail == mine.trail ? 0 : 1;
        }
        QCOMPARE(ahead, 2);
        VERIFY_SOUND(there);
    }
}

// A log of layout 6 that removed a set, and a copy from before that was brought up to date: the
// removal is known to come after.
void TestTrails::whatWasRemovedBeforeTravelsByItsHash() {
    const Folder folder;
    const fs::path file = folder.path("older.slopebook"), copy = folder.path("copy.slopebook");
    {
        Log log = Log::create(folder.path("new.slopebook"));
        fillSeason(log);
    }
    writeAsOlder(folder.path("new.slopebook"), file, 6);
    fs::copy_file(file, copy);
    // As layout 6 removed: the row goes over with its UUID and its hash.
    SetId gone{};
    {
        Log log = Log::open(folder.path("new.slopebook"));
        gone = log.sets(SessionId{3}, LiftId{1}).at(1).id;
        log.remove(gone);
    }
    fs::remove(file);
    writeAsOlder(folder.path("new.slopebook"), file, 6);
    const Log here = Log::open(file), there = Log::open(copy);
    // Weighed with what layout 6 did not keep: only the removed one's tally tells of it.
    const Held mine = heldBy(here), theirs = heldBy(there);
    int removed = 0;
    for (const auto& [uuid, one] : mine)
        if (!one.alive) {
            ++removed;
            QVERIFY(one.content.empty());
            QCOMPARE(one.trail.size(), 2U);
            QVERIFY(theirs.at(uuid).alive && theirs.at(uuid).hash == one.hash);
            QVERIFY(log::holds(one.trail, log::revisionOf(theirs.at(uuid).trail)));
        }
    QCOMPARE(removed, 1);
}

void TestTrails::whatAnotherLogCarriedIsTaken() {
    const Folder folder;
    Log from = Log::create(folder.path("from.slopebook"));
    Log to = Log::create(folder.path("to.slopebook"));
    const AthleteId ada = from.add(Athlete{.name = "Ada"});
    from.change(ada, {.name = "Ada", .note = "tall"});
    const AthleteId bo = from.add(Athlete{.name = "Bo"});
    from.remove(bo);
    const Held carried = heldBy(from);
    log::Connection& db = log::connectionOf(to);
    to.together([&] {
        std::int64_t free = 100;
        for (const auto& [uuid, one] : carried) {
            if (!one.alive) {
                Carried placed = one;
                placed.place.one = ++free;
                log::adoptRemoved(db, placed);
                continue;
            }
            const auto thing = log::readContent(one.content, keysOf({}));
            const AthleteId id = to.add(std::get<Athlete>(thing));
            QVERIFY(refuses([&] {
                log::adopt(db, {.kind = "athlete", .one = raw(id)}, one.uuid,
                           log::shortTrail(log::hashOf("other"), true));
            }));
            log::adopt(db, {.kind = "athlete", .one = raw(id)}, one.uuid, one.trail);
        }
    });
    const Held taken = heldBy(to);
    QCOMPARE(taken.size(), carried.size());
    for (const auto& [uuid, one] : carried) {
        QVERIFY(taken.at(uuid).trail == one.trail);
        QVERIFY(taken.at(uuid).content == one.content);
        QCOMPARE(taken.at(uuid).alive, one.alive);
    }
    VERIFY_SOUND(to);
    // It lives again here, under the same name and with what it was.
    const auto removed =
        std::ranges::find_if(carried, [](const auto& one) { return !one.second.alive; });
    const Carried back = *log::carried(to, removed->first);
    to.add(Athlete{.name = "Bo"}, AthleteId{back.place.one});
    QVERIFY(log::carried(to, removed->first)->alive);
    QCOMPARE(log::carried(to, removed->first)->trail.size(), 3U);
    VERIFY_SOUND(to);
}

void TestTrails::conflictsTravel() {
    const Folder folder;
    Log log = Log::create(folder.path());
    fillSeason(log);
    joinAStore(log);
    const auto open = log::conflictsIn(log);
    QCOMPARE(open.size(), 1U);
    const Sixteen uuid = log::conflictUuid(open[0].value.about, open[0].value.revision);
    QVERIFY(log::carried(log, uuid)->alive);
    QVERIFY(!log::noteConflict(log, open[0].value)); // once is enough
    log::settleConflict(log, open[0].id);
    QVERIFY(!log::carried(log, uuid)->alive);
    QVERIFY(!log::noteConflict(log, open[0].value));            // and once settled it is
    QVERIFY(log::noteConflict(log, open[0].value, open[0].id)); // undo
    QVERIFY(log::carried(log, uuid)->alive);
    QCOMPARE(log::carried(log, uuid)->trail.size(), 3U);
    QCOMPARE(log::conflictsIn(log), open);
    QCOMPARE(errorOf([&] { log::settleConflict(log, log::ConflictId{99}); }),
             LogError::Kind::Conflict);
    VERIFY_SOUND(log);
}

void TestTrails::aLogThatMeetsAStoreNotesWhatIsUnsent() {
    const Folder folder;
    Log log = Log::create(folder.path());
    const Season s = fillSeason(log);
    log::Connection& db = log::connectionOf(log);
    QCOMPARE(log::countUnsent(db), 0);
    joinAStore(log);
    const auto before = log::countUnsent(db);
    log.add(s.winter, s.pull, ladderSet(50, {1.0}));
    log::addSessions(log, {{.head = {.athlete = s.lane3, .date = day(2026, 6, 1)},
                            .conditions = {},
                            .sets = {{s.pull, 1, ladderSet(40, {1.0})}}}});
    QCOMPARE(log::countUnsent(db), before + 3);
    log.remove(s.winter);
    const auto after = log::countUnsent(db);
    QVERIFY(after > before + 3);
    VERIFY_SOUND(log);
    log.together([&] {
        std::vector<Sixteen> sent;
        log::visitUnsent(db, [&](const log::Unsent& one) { sent.push_back(one.uuid); });
        log::eraseUnsent(db, sent);
    });
    QCOMPARE(log::countUnsent(db), 0);
    VERIFY_SOUND(log);
    log.together([&] { log::leaveStore(db); });
    log.add(s.autumn, s.pull, ladderSet(50, {1.0}));
    QCOMPARE(log::countUnsent(db), 0);
    VERIFY_SOUND(log);
}

QTEST_GUILESS_MAIN(TestTrails)
#include "tst_trails.moc"

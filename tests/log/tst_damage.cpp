// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/history.h"
#include "tests/log/otherthings.h"
#include "tests/log/rawfile.h"
#include "tests/support/longrun.h"

#include <algorithm>
#include <array>
#include <functional>
#include <iterator>
#include <map>
#include <random>

using namespace slopebook;
using namespace slopebook::test;
using log::Log;

namespace {
using Kind = LogError::Kind;
constexpr std::size_t pageSize = 4096;

/// Everything that a log gives to read.
struct Content {
    std::vector<Stored<AthleteId, Athlete>> athletes;
    std::vector<Stored<LiftId, Lift>> lifts;
    std::vector<Stored<DeviceId, Device>> devices;
    std::vector<Stored<BlockId, Block>> blocks;
    std::vector<log::SessionRecord> sessions;
    std::vector<LiftSession> lines;
    std::vector<std::vector<Mass>> checkLoads;
    std::vector<std::vector<LiftId>> liftsOf;
    std::vector<Stored<EquipmentId, Equipment>> equipment;
    std::vector<Stored<TestKindId, TestKind>> testKinds;
    std::vector<BatterySession> batteries;
    friend bool operator==(const Content&, const Content&) = default;
};

Content contentOf(const Log& log) {
    Content all{.athletes = log.athletes(),
                .lifts = log.lifts(),
                .devices = log.devices(),
                .blocks = log.blocks(),
                .sessions = {},
                .lines = log.liftSessions({}),
                .checkLoads = {},
                .liftsOf = {},
                .equipment = log.equipment(),
                .testKinds = log.testKinds(),
                .batteries = {}};
    for (const auto& athlete : all.athletes) {
        for (const auto& session : log.sessions(athlete.id))
            all.sessions.push_back(log.session(session.id));
        for (const auto& lift : all.lifts)
            all.checkLoads.push_back(log.checkLoads(athlete.id, lift.id));
        all.liftsOf.push_back(log.liftsOf(athlete.id));
        std::ranges::copy(log.batteries(athlete.id), std::back_inserter(all.batteries));
    }
    return all;
}

/// Whether salvaging gives nothing that was not in the whole log.
bool salvagesOnly(const std::filesystem::path& file, const Content& whole) {
    const Log log = Log::open(file, log::Access::Salvage);
    const auto among = [](const auto& all) {
        return [&all](const auto& one) { return std::ranges::find(all, one) != all.end(); };
    };
    return std::ranges::all_of(log.liftSessions({}), among(whole.lines)) &&
           std::ranges::all_of(log.athletes(), among(whole.athletes)) &&
           std::ranges::all_of(log.equipment(), among(whole.equipment)) &&
           std::ranges::all_of(log.testKinds(), among(whole.testKinds)) &&
           std::ranges::all_of(log.lifts(), among(whole.lifts));
}

/// As another program could write: a load of 60 kg becomes another, its checksum stays.
void alterALoad(const std::filesystem::path& file, SessionId session) {
    runSql(file, "UPDATE sets SET load_g = 61000 WHERE load_g = 60000 AND session = " +
                     std::to_string(raw(session)));
}

class Damager {
public:
    explicit Damager(std::uint64_t seed) : m_random(seed) {}

    /// The bytes with one damage that changes something.
    std::string damage(const std::string& whole) {
        std::string bytes = once(whole);
        while (bytes == whole)
            bytes = once(whole);
        return bytes;
    }

private:
    std::string once(const std::string& whole) {
        std::string bytes = whole;
        switch (below(7)) {
        case 0: // a bit
            at(bytes) = static_cast<char>(at(bytes) ^ (1 << below(8)));
            break;
        case 1: // a byte where something stands
            occupied(bytes) = static_cast<char>(below(256));
            break;
        case 2: // a bit where something stands
            occupied(bytes) ^= static_cast<char>(1 << below(8));
            break;
        case 3: // a run of noise
            run(bytes, 2 + below(30), [&](char&) { return static_cast<char>(below(256)); });
            break;
        case 4: // a run of nothing
            run(bytes, 1 + below(512), [](char&) { return '\0'; });
            break;
        case 5: // a page in another's place
            piece(bytes, pageSize, pageSize);
            break;
        default: // a piece of one page in another
            piece(bytes, 64, 1);
        }
        return bytes;
    }
    std::size_t below(std::size_t limit) { return m_random() % limit; }
    char& at(std::string& bytes) { return bytes[below(bytes.size())]; }
    char& occupied(std::string& bytes) {
        std::size_t i = below(bytes.size());
        while (bytes[i] == '\0')
            i = (i + 1) % bytes.size();
        return bytes[i];
    }
    void piece(std::string& bytes, std::size_t length, std::size_t step) {
        const std::size_t places = (bytes.size() - length) / step + 1;
        const std::string copied(bytes, below(places) * step, length);
        bytes.replace(below(places) * step, length, copied);
    }
    template <class Make>
    void run(std::string& bytes, std::size_t length, const Make& make) {
        const std::size_t from = below(bytes.size() - length);
        for (std::size_t i = from; i < from + length; ++i)
            bytes[i] = make(bytes[i]);
    }
    std::mt19937_64 m_random;
};
} // namespace

class TestDamage : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void damageThatChangesAFigureIsNoticed();
    void damagedSessionIsNamedAndNotWrittenTo();
    void listedAgainAHeadIsStillVerified();
    void aRefusedChangeLeavesNothingToBeSealed_data();
    void aRefusedChangeLeavesNothingToBeSealed();
    void readingWritesNothingAfterARefusedChange_data();
    void readingWritesNothingAfterARefusedChange();
    void whatIsWholeCanBeSalvaged();
};

void TestDamage::damageThatChangesAFigureIsNoticed() {
    const Folder folder;
    Content whole;
    {
        Log log = Log::create(folder.path());
        const Season s = fillSeason(log);
        addOtherThings(log, s);
        log.together([&] {
            for (unsigned i = 0; i < 20; ++i) {
                const SessionId id = log.add(SessionHead{.athlete = i % 2 == 0 ? s.lane3 : s.stroke,
                                                         .date = day(2026, 4, i + 1),
                                                         .note = "spring"});
                for (int number = 0; number < 6; ++number)
                    log.add(id, s.pull,
                            ladderSet(40 + 10 * number, {1.2 - 0.1 * number, 1.19 - 0.1 * number}));
            }
        });
        whole = contentOf(log);
        VERIFY_SOUND(log);
    }
    const std::string bytes = readBytes(folder.path());
    const int all = rounds("SLOPEBOOK_DAMAGES", 1000, 100'000);
    Damager damager(20260314);
    std::map<std::string, int> outcomes;
    for (int round = 0; round < all; ++round) {
        const std::string damaged = damager.damage(bytes);
        writeBytes(folder.path(), damaged);
        bool opened = false;
        try {
            const Log log = Log::open(folder.path());
            opened = true;
            if (contentOf(log) == whole) {
                ++outcomes["reads the same"];
            } else {
                const auto findings = log.check();
                QVERIFY2(!findings.empty(), qPrintable(QString("round %1").arg(round)));
                ++outcomes["noticed by check alone"];
            }
        } catch (const LogError&) {
            ++outcomes[opened ? "noticed in reading" : "noticed in opening"];
        }
        if (opened)
            QVERIFY2(salvagesOnly(folder.path(), whole),
                     qPrintable(QString("round %1").arg(round)));
        QVERIFY(readBytes(folder.path()) == damaged);
        QCOMPARE(namesIn(folder.path().parent_path()).size(), 1U);
    }
    for (const auto& [outcome, count] : outcomes)
        qInfo("%s: %d of %d", outcome.c_str(), count, all);
    QVERIFY(outcomes["noticed in reading"] > 100);
}

void TestDamage::damagedSessionIsNamedAndNotWrittenTo() {
    const Folder folder;
    Season s;
    SetId set{};
    {
        Log log = Log::create(folder.path());
        s = fillSeason(log);
        set = log.sets(s.autumn, s.pull)[0].id;
    }
    // What SQLite itself takes for good: another velocity within the bounds.
    runSql(folder.path(), "UPDATE reps SET velocity = 1.21 WHERE set_id = " +
                              std::to_string(raw(set)) + " AND ordinal = 2");
    const auto rows = allRows(folder.path());
    Log log = Log::open(folder.path());
    QString message;
    try {
        log.session(s.autumn);
    } catch (const LogError& error) {
        QCOMPARE(error.kind(), LogError::Kind::Damaged);
        message = QString::fromUtf8(error.what());
    }
    QVERIFY2(message.contains("the session of Lane 3 on 2025-11-03 is not as it was written"),
             qPrintable(message));
    const auto findings = texts(log.check());
    // Its checksum, its set's hash, and the point that is not that of the reps.
    QCOMPARE(findings.size(), 3);
    QVERIFY(findings[0].contains("Lane 3 on 2025-11-03"));
    // A write must not give the damaged session a checksum that fits.
    for (const std::function<void()>& write : std::vector<std::function<void()>>{
             [&] { log.add(s.autumn, s.pull, ladderSet(30, {1.3})); },
             [&] { log.change(set, ladderSet(30, {1.3})); }, [&] { log.remove(set); },
             [&] {
                 log.change(s.autumn, SessionHead{.athlete = s.lane3, .date = day(2026, 6, 6)});
             },
             [&] {
                 Lift pull = log.lifts()[0].value;
                 pull.rule = PointRule::Mean;
                 log.change(s.pull, pull);
             }})
        QCOMPARE(errorOf(write), LogError::Kind::Damaged);
    QCOMPARE(allRows(folder.path()), rows);
    // The other sessions go on.
    log.add(s.winter, s.pull, ladderSet(30, {1.3}));
    QCOMPARE(log.session(s.winter).sets.size(), 6U);
}

// A list of sessions does not read the sets again of one that has not changed: what it says of a
// session is held against what was read before, whoever changed it.
void TestDamage::listedAgainAHeadIsStillVerified() {
    const Folder folder;
    Log log = Log::create(folder.path());
    const Season s = fillSeason(log);
    const auto before = log.sessions(s.lane3);
    QCOMPARE(log.sessions(s.lane3), before);

    Log other = Log::open(folder.path());
    SessionHead moved = other.session(s.autumn).head.value;
    moved.note = "Slipway";
    other.change(s.autumn, moved);
    const auto after = log.sessions(s.lane3);
    QCOMPARE(after.size(), before.size());
    QVERIFY(std::ranges::any_of(after, [&](const auto& one) { return one.value == moved; }));

    runSql(folder.path(),
           "UPDATE sessions SET note = 'Elsewhere' WHERE id = " + std::to_string(raw(s.autumn)));
    QCOMPARE(errorOf([&] { log.sessions(s.lane3); }), LogError::Kind::Damaged);
}

// Each way in which a change that had marked a session can fail: refused, thrown through, refused
// as a part of a larger one.
namespace {
using Refused = std::function<void(Log&, const Season&)>;

void refusedChanges() {
    QTest::addColumn<Refused>("change");
    const auto row = [](const char* name, Refused change) { QTest::newRow(name) << change; };
    const auto taken = [](Log& log, const Season& s) {
        SessionHead head = log.session(s.autumn).head.value;
        head.date = day(2025, 11, 5); // there is a session of that day
        log.change(s.autumn, head);
    };
    row("a day that is taken", taken);
    row("a place that is taken",
        [](Log& log, const Season& s) { log.add(s.autumn, s.pull, ladderSet(50, {1.0}), 1); });
    row("a lift that is gone",
        [](Log& log, const Season& s) { log.add(s.autumn, LiftId{99}, ladderSet(50, {1.0})); });
    row("a change among others, thrown through", [](Log& log, const Season& s) {
        log.together([&] {
            log.add(s.autumn, s.pull, ladderSet(50, {1.0}));
            throw LogError(Kind::Conflict, asIs("no"));
        });
    });
    row("a part of others, which are kept from it",
        [taken](Log& log, const Season& s) { log.together([&] { taken(log, s); }); });
}
} // namespace

void TestDamage::aRefusedChangeLeavesNothingToBeSealed_data() {
    refusedChanges();
}

void TestDamage::aRefusedChangeLeavesNothingToBeSealed() {
    QFETCH(Refused, change);
    const Folder folder;
    Log log = Log::create(folder.path());
    const Season s = fillSeason(log);
    QCOMPARE(errorOf([&] { change(log, s); }), Kind::Conflict);
    alterALoad(folder.path(), s.autumn);
    const auto rows = allRows(folder.path(), "");
    for (const std::function<void()>& read : std::vector<std::function<void()>>{
             [&] { log.session(s.autumn); }, [&] { log.sessions(s.lane3); },
             [&] { log.sets(s.autumn, s.pull); }, [&] { log.liftSessions({}); },
             [&] { log::liftSessions(log, s.pull, std::array{s.autumn}); },
             [&] { log.set(SetId{1}); }})
        QCOMPARE(errorOf(read), Kind::Damaged);
    QVERIFY(!log.check().empty());
    QCOMPARE(log::historyOrder(log, {.lift = s.pull}).size(), 3U); // keys alone
    QCOMPARE(allRows(folder.path(), ""), rows);
    QVERIFY(!Log::open(folder.path()).check().empty());
}

void TestDamage::readingWritesNothingAfterARefusedChange_data() {
    refusedChanges();
}

void TestDamage::readingWritesNothingAfterARefusedChange() {
    QFETCH(Refused, change);
    const Folder folder;
    Log log = Log::create(folder.path());
    const Season s = fillSeason(log);
    const Content before = contentOf(log);
    QCOMPARE(errorOf([&] { change(log, s); }), Kind::Conflict);
    const std::string bytes = readBytes(folder.path());
    // Another program is about to write: who reads beside it waits for nothing.
    const LockHeld lock(folder.path());
    QVERIFY(contentOf(log) == before);
    QCOMPARE(log::historyOrder(log, {.lift = s.pull}).size(), 3U);
    VERIFY_SOUND(log);
    QVERIFY(readBytes(folder.path()) == bytes);
}

void TestDamage::whatIsWholeCanBeSalvaged() {
    const Folder folder;
    Season s;
    {
        Log log = Log::create(folder.path());
        s = fillSeason(log);
    }
    alterALoad(folder.path(), s.autumn);
    runSql(folder.path(), "UPDATE devices SET name = 'Boathouse decoder'");
    runSql(folder.path(), "UPDATE check_loads SET load_g = 41000 WHERE load_g = 40000");
    const std::string bytes = readBytes(folder.path());
    QCOMPARE(errorOf([&] { Log::open(folder.path()).liftSessions({}); }), LogError::Kind::Damaged);
    Log log = Log::open(folder.path(), log::Access::Salvage);
    QCOMPARE(log.access(), log::Access::Salvage);
    QCOMPARE(log.athletes().size(), 2U);
    QVERIFY(log.leftOut().empty());
    QCOMPARE(log.liftSessions({.lift = s.pull}).size(), 2U);
    QCOMPARE(log.leftOut().size(), 1U);
    QVERIFY(english(log.leftOut()[0]).find("Lane 3 on 2025-11-03") != std::string::npos);
    QCOMPARE(log.sessions(s.lane3).size(), 1U);
    QCOMPARE(log.leftOut().size(), 1U); // told once
    QVERIFY(log.devices().empty());
    QVERIFY(log.checkLoads(s.lane3, s.pull).empty());
    QCOMPARE(log.leftOut().size(), 3U);
    QCOMPARE(errorOf([&] { log.session(s.autumn); }), LogError::Kind::Damaged); // asked for itself
    QCOMPARE(errorOf([&] { log.add(Athlete{.name = "Cox"}); }), LogError::Kind::ReadOnly);
    QCOMPARE(readBytes(folder.path()), bytes);
}

QTEST_APPLESS_MAIN(TestDamage)
#include "tst_damage.moc"

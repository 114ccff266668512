// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/checksum.h"
#include "tests/log/builders.h"

#include <boost/crc.hpp>

#include <array>
#include <random>

using namespace slopebook;
using namespace slopebook::test;
using namespace slopebook::log;
using namespace std::string_view_literals;

class TestChecksum : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void isTheCrcOfTheXzFormat();
    void isBoostsForEveryLength();
    void everythingOfASetCounts();
    void textsDoNotRunIntoEachOther();
    void columnsStandInTheirOrder();
};

void TestChecksum::isTheCrcOfTheXzFormat() {
    // What `xz --robot -lvv` prints as the CRC64 of a file that holds 123456789; the same is the
    // check value of CRC-64/XZ in catalogues of CRCs [MEM].
    QCOMPARE(crc64("123456789"), 0x995DC9BBDF1939FAULL);
    QCOMPARE(crc64(""), 0ULL);
}

void TestChecksum::isBoostsForEveryLength() {
    using Reference = boost::crc_optimal<64, 0x42F0E1EBA9EA3693U, ~std::uint64_t{0},
                                         ~std::uint64_t{0}, true, true>;
    std::mt19937 random(20260314);
    std::uniform_int_distribution<int> byte(0, 255);
    std::string bytes;
    for (int length = 0; length < 200; ++length) {
        Reference reference;
        reference.process_bytes(bytes.data(), bytes.size());
        QCOMPARE(crc64(bytes), std::uint64_t{reference.checksum()});
        bytes.push_back(static_cast<char>(byte(random)));
    }
}

void TestChecksum::everythingOfASetCounts() {
    const Stored<SessionId, SessionHead> head{SessionId{1}, {.athlete = AthleteId{1}}};
    const StoredSet base = withPoint({.id = SetId{1},
                                      .session = SessionId{1},
                                      .lift = LiftId{1},
                                      .set = ladderSet(40, {1.1, 1.2})},
                                     PointRule::Fastest);
    QCOMPARE(base.point, 1.2);
    QCOMPARE(base.counting, 2);
    std::vector<std::int64_t> sums{checksum(head, {}, std::array{base})};
    const auto changed = [&](auto change) {
        StoredSet other = base;
        change(other);
        const auto sum = checksum(head, {}, std::array{other});
        QVERIFY(std::ranges::find(sums, sum) == sums.end());
        sums.push_back(sum);
    };
    changed([](StoredSet& s) { s.placed.id = SetId{2}; });
    changed([](StoredSet& s) { s.placed.lift = LiftId{2}; });
    changed([](StoredSet& s) { s.placed.ordinal = 2; });
    changed([](StoredSet& s) { s.placed.set.load = Mass{40'001}; });
    changed([](StoredSet& s) { s.placed.set.trueMaximum = true; });
    changed([](StoredSet& s) { s.placed.set.excluded = "x"; });
    changed([](StoredSet& s) { s.placed.set.note = "x"; });
    changed([](StoredSet& s) { s.placed.set.outcome = Outcome::NotLifted; });
    changed([](StoredSet& s) { s.placed.set.reason = "x"; });
    changed([](StoredSet& s) { s.placed.set.effort = Effort{16}; });
    changed([](StoredSet& s) { s.placed.set.reps[0].velocity = 1.11; });
    changed([](StoredSet& s) { s.placed.set.reps[0].excluded = "x"; });
    changed([](StoredSet& s) { s.placed.set.reps.pop_back(); });
    changed([](StoredSet& s) { s.point = 1.1; });
    changed([](StoredSet& s) { s.point.reset(); });
    changed([](StoredSet& s) { s.counting = 1; });
}

void TestChecksum::textsDoNotRunIntoEachOther() {
    QVERIFY(checksum(AthleteId{1}, Athlete{.name = "ab", .note = "c"}) !=
            checksum(AthleteId{1}, Athlete{.name = "a", .note = "bc"}));
    // A row of one kind is not taken for one of another.
    QVERIFY(checksum(AthleteId{1}, Athlete{.name = "a"}) !=
            checksum(DeviceId{1}, Device{.name = "a"}));
    QVERIFY(Checksum('x').add(std::optional<double>{}).value() !=
            Checksum('x').add(std::optional<double>{0.0}).value());
}

// The layout that logs have been written in: what goes into a checksum may not move with the order
// of fields or columns in the program. Each written out by hand.
void TestChecksum::columnsStandInTheirOrder() {
    const std::int64_t id = 7;
    QCOMPARE(checksum(AthleteId{7}, Athlete{.name = "Ada", .note = "left"}),
             Checksum('A').add(id).add("Ada"sv).add("left"sv).value());
    QCOMPARE(checksum(DeviceId{7}, Device{.name = "Encoder", .note = "old"}),
             Checksum('D').add(id).add("Encoder"sv).add("old"sv).value());
    QCOMPARE(checksum(BlockId{7}, Block{.name = "Flood",
                                        .first = day(2026, 1, 5),
                                        .last = day(2026, 2, 1),
                                        .ceiling = Mass{62'500},
                                        .note = "wet"}),
             Checksum('B')
                 .add(id)
                 .add("Flood"sv)
                 .add(std::int64_t{20260105})
                 .add(std::int64_t{20260201})
                 .add(std::optional(std::int64_t{62'500}))
                 .add("wet"sv)
                 .value());
    // What came later stands after its name, and only where it says something.
    Block told{.name = "Flood", .first = day(2026, 1, 5), .last = day(2026, 2, 1)};
    const auto block = [&](bool trained, bool aWeek) {
        Checksum sum('B');
        sum.add(id).add("Flood"sv).add(std::int64_t{20260105}).add(std::int64_t{20260201});
        sum.add(std::optional<std::int64_t>()).add(""sv);
        if (trained)
            sum.add("trained"sv).add("jumps"sv);
        if (aWeek)
            sum.add("a_week"sv).add(2.0).add(3.5);
        return sum.value();
    };
    QCOMPARE(checksum(BlockId{7}, told), block(false, false));
    told.aWeek = SessionsAWeek{.fewest = 2, .most = 3.5};
    QCOMPARE(checksum(BlockId{7}, told), block(false, true));
    told.trained = "jumps";
    QCOMPARE(checksum(BlockId{7}, told), block(true, true));
    told.aWeek.reset();
    QCOMPARE(checksum(BlockId{7}, told), block(true, false));
    const Lift pull{
        .name = "Pull",
        .kind = VelocityKind::Peak,
        .rule = PointRule::Mean,
        .ballistic = true,
        .mvt = Mvt{.value = 0.5, .sd = 0.06, .origin = Mvt::Origin::Published, .source = "a paper"},
        .smallestVelocity = 0.03,
        .smallestOneRm = std::nullopt,
        .note = "strict"};
    const auto lift = [&](const Lift& of) {
        Checksum sum('L');
        sum.add(id).add("Pull"sv).add(std::int64_t{2}).add(std::int64_t{1}).add(std::int64_t{1});
        sum.add(std::int64_t{of.mvt ? 1 : 0});
        if (of.mvt)
            sum.add(0.5).add(std::optional(0.06)).add(std::int64_t{2}).add("a paper"sv);
        return sum.add(std::optional(0.03)).add(std::optional<double>()).add("strict"sv).value();
    };
    QCOMPARE(checksum(LiftId{7}, pull), lift(pull));
    Lift without = pull;
    without.mvt.reset();
    QCOMPARE(checksum(LiftId{7}, without), lift(without));
    TestKind hop;
    hop.name = "Hop";
    hop.unit = "m";
    hop.twoSided = true;
    hop.rule = AttemptRule::Mean;
    hop.attempts = 4;
    hop.noise = TestNoise{.value = 3, .percent = true, .source = "own"};
    hop.smallest = 0.1;
    hop.smallestSource = "ours";
    hop.note = "boards";
    Checksum sum('K');
    sum.add(id).add("Hop"sv).add("m"sv).add(std::int64_t{1}).add(std::int64_t{1});
    sum.add(std::int64_t{1}).add(std::int64_t{4}).add(std::int64_t{0}).add(std::int64_t{2});
    sum.add(std::int64_t{1}).add(3.0).add(std::int64_t{1}).add("own"sv);
    QCOMPARE(checksum(TestKindId{7}, hop),
             sum.add(std::optional(0.1)).add("ours"sv).add("boards"sv).value());
}

QTEST_APPLESS_MAIN(TestChecksum)
#include "tst_checksum.moc"

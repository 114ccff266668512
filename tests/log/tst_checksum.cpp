// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/checksum.h"
#include "tests/log/builders.h"

#include <boost/crc.hpp>

#include <random>

using namespace slopebook;
using namespace slopebook::test;
using namespace slopebook::log;

class TestChecksum : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void isTheCrcOfTheXzFormat();
    void isBoostsForEveryLength();
    void everythingOfASetCounts();
    void textsDoNotRunIntoEachOther();
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
    std::vector<std::int64_t> sums{checksum(head, {base})};
    const auto changed = [&](auto change) {
        StoredSet other = base;
        change(other);
        const auto sum = checksum(head, {other});
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

QTEST_APPLESS_MAIN(TestChecksum)
#include "tst_checksum.moc"

// SPDX-License-Identifier: GPL-3.0-or-later
// The worlds of tests/README.md in small: with nothing changed no world may bring more false
// readings than its level and what counting so few pairs leaves open.
#include "tests/answers/worlds.h"

#include <QtTest>

#include <cmath>

using namespace slopebook;

namespace {
constexpr long pairs = 60;

/// 5 % and four standard errors of a count of so many pairs.
double bound(double percent) {
    return percent + 4 * std::sqrt(percent * (100 - percent) / pairs);
}
} // namespace

class TestWorlds : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void nothingChanged_data();
    void nothingChanged();
    void straightLinesWouldBeFalse();
    void theSameSeedPlaysTheSame();
};

void TestWorlds::nothingChanged_data() {
    QTest::addColumn<int>("world");
    int i = 0;
    for (const auto& world : tests::worlds()) {
        if (!world.biased)
            QTest::newRow(world.name.c_str()) << i;
        ++i;
    }
}

void TestWorlds::nothingChanged() {
    QFETCH(int, world);
    const auto all = tests::worlds();
    const auto tally = tests::play(all[std::size_t(world)], pairs, std::uint64_t(900 + world));
    QVERIFY2(tally.falseLoad <= bound(5), QByteArray::number(tally.falseLoad).constData());
    QVERIFY2(tally.falseMax <= bound(5), QByteArray::number(tally.falseMax).constData());
    QVERIFY2(100 - tally.coverPlan <= bound(8), QByteArray::number(tally.coverPlan).constData());
}

/// The worlds bite: were lines taken as straight, a pull's light block would be false.
void TestWorlds::straightLinesWouldBeFalse() {
    for (const auto& world : tests::worlds())
        if (world.name == "bend pull, kappa 1") {
            const auto tally = tests::play(world, 200, 3);
            QVERIFY(tally.straightFalseMax > 40);
            QVERIFY(tally.falseMax < 5);
            return;
        }
    QFAIL("no such world");
}

void TestWorlds::theSameSeedPlaysTheSame() {
    const auto world = tests::worlds().front();
    const auto a = tests::play(world, 20, 5), b = tests::play(world, 20, 5);
    QCOMPARE(a.halfLoad, b.halfLoad);
    QVERIFY(a.halfLoad != tests::play(world, 20, 6).halfLoad);
}

QTEST_APPLESS_MAIN(TestWorlds)
#include "tst_worlds.moc"

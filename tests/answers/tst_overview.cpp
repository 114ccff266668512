// SPDX-License-Identifier: GPL-3.0-or-later
// The last step of a season by reading. The matrix is made by hand, and what is expected of it
// stands here by hand, from the rules in core/answers/overview.h.
#include "core/answers/overview.h"

#include <QTest>

using namespace slopebook;
using namespace slopebook::answers;

namespace {

const Smallest twentieth{.value = 0.05, .origin = Smallest::Origin::Coach};

CellChange step(std::size_t from, double low, double high) {
    const double middle = (low + high) / 2;
    return {.from = from,
            .read =
                read(middle, {low, high},
                     {middle - 0.84 * (middle - low), middle + 0.84 * (high - middle)}, twentieth)};
}

MatrixCell seen(double value, std::optional<CellChange> against = {},
                std::optional<CellChange> before = {}) {
    return {
        .sessions = 1, .value = value, .against = std::move(against), .before = std::move(before)};
}

MatrixCell none(NoAnswer::Why why, const char* reason) {
    return {.value = NoAnswer{.why = why, .reason = asIs(reason)}};
}

/// Two blocks, the first of them chosen.
SeasonMatrix twoBlocks() {
    SeasonMatrix m;
    m.blocks = {{.id = BlockId{1}, .block = {.name = "Autumn"}, .sessions = 2},
                {.id = BlockId{2}, .block = {.name = "Spring"}, .sessions = 2}};
    const auto row = [&](const char* name, MatrixCell first, MatrixCell second,
                         Measure::Kind kind = Measure::Kind::Speed) {
        m.rows.push_back({.measure = {.kind = kind,
                                      .name = name,
                                      .lift = LiftId{qint64(m.rows.size() + 1)},
                                      .load = Mass{40'000}},
                          .cells = {std::move(first), std::move(second)},
                          .smallest = twentieth});
    };
    const auto both = [](double low, double high) {
        return seen(1, step(0, low, high), step(0, low, high));
    };
    row("Unclear", seen(1), both(-0.05, 0.09));
    row("Worse", seen(1), both(-0.09, -0.01));
    row("Better", seen(1), both(0.01, 0.09));
    row("Held", seen(1), both(-0.02, 0.02));
    CellChange apart = step(0, 0.1, 0.2);
    apart.read.reading = Reading::NoFigure;
    apart.read.notComparable = asIs("two devices");
    row("Apart", seen(1), seen(1, apart, apart));
    row("Due", seen(1), none(NoAnswer::Why::NotTested, "not tested"));
    row("Impossible", seen(1), none(NoAnswer::Why::NotPossible, "rig under water"));
    row("Never", none(NoAnswer::Why::NotTested, "not tested"),
        none(NoAnswer::Why::NotPossible, "never had it"));
    return m;
}

QStringList namesOf(const SeasonMatrix& m, const std::vector<std::size_t>& rows) {
    QStringList names;
    for (const std::size_t row : rows)
        names << QString::fromStdString(m.rows[row].measure.name);
    return names;
}

} // namespace

class TestOverview : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void everyMeasureStandsByItsReading() {
        const SeasonMatrix m = twoBlocks();
        const Overview o = overviewOf(m);
        QCOMPARE(o.to, std::size_t(1));
        std::vector<std::size_t> rows;
        QList<int> standings;
        for (const OverviewRow& row : o.rows) {
            rows.push_back(row.row);
            standings << int(row.standing);
            QCOMPARE(row.from, std::optional<std::size_t>(0));
        }
        using enum Standing;
        QCOMPARE(namesOf(m, rows),
                 (QStringList{"Better", "Worse", "Held", "Unclear", "Apart", "Due", "Impossible"}));
        QCOMPARE(standings, (QList<int>{int(Better), int(Worse), int(Held), int(Unclear),
                                        int(NotComparable), int(NoFigure), int(NoFigure)}));
        QCOMPARE(english(o.rows[4].why), std::string("two devices"));
    }

    /// Of what is unclear first what is clear alone, then what leans.
    void theUnclearByWhatTheyTell() {
        SeasonMatrix m = twoBlocks();
        std::erase_if(m.rows, [](const MatrixRow& row) { return row.measure.name != "Unclear"; });
        m.rows.resize(3, m.rows[0]);
        m.rows[0].measure.name = "Plain";
        m.rows[1].measure.name = "Leans";
        m.rows[1].cells[1].against->read.at80 = stats::Interval{0.01, 0.02};
        m.rows[2].measure.name = "Alone";
        m.rows[2].cells[1].against->read.byItself = Reading::Better;
        const Overview o = overviewOf(m);
        std::vector<std::size_t> rows;
        for (const OverviewRow& row : o.rows)
            rows.push_back(row.row);
        QCOMPARE(namesOf(m, rows), (QStringList{"Alone", "Leans", "Plain"}));
        QCOMPARE(namesOf(m, o.charts), (QStringList{"Alone", "Leans", "Plain"}));
    }

    void whatWasNotMeasuredAgainIsDueAndWhatWasNotPossibleIsNot() {
        const Overview o = overviewOf(twoBlocks());
        QCOMPARE(o.due.size(), std::size_t(1));
        QVERIFY(english(o.due[0]).find("last in Autumn") != std::string::npos);
        QCOMPARE(o.missing.size(), std::size_t(2)); // also of what no block has a figure of
        QVERIFY(english(o.missing[0]).ends_with(": rig under water"));
    }

    void theMostTellingAreDrawnOneALift() {
        SeasonMatrix m = twoBlocks();
        QCOMPARE(namesOf(m, overviewOf(m).charts),
                 (QStringList{"Better", "Worse", "Held", "Unclear"}));
        m.rows[1].measure.name = "Better"; // the same lift at another load
        QCOMPARE(namesOf(m, overviewOf(m).charts),
                 (QStringList{"Better", "Held", "Unclear", "Apart"}));
    }

    void aStepIsCountedFromTheChosenBlock() {
        SeasonMatrix m = twoBlocks();
        m.blocks.push_back({.id = BlockId{3}, .block = {.name = "Summer"}});
        for (MatrixRow& row : m.rows)
            row.cells.push_back(none(NoAnswer::Why::NotTested, "not tested"));
        m.rows[0].cells[2] = seen(1, step(0, 0.01, 0.09), step(1, -0.09, -0.01));
        const auto unclear = [&] {
            const Overview o = overviewOf(m);
            return *std::ranges::find(o.rows, std::size_t(0), &OverviewRow::row);
        };
        QCOMPARE(unclear().standing, Standing::Better);
        QCOMPARE(unclear().from, std::optional<std::size_t>(0));
        // Where the chosen block has no figure the last that has one stands in, and is named.
        m.rows[0].cells[2].against->why = asIs("not tested");
        QCOMPARE(unclear().standing, Standing::Worse);
        QCOMPARE(unclear().from, std::optional<std::size_t>(1));
    }

    void nothingOfNothing() {
        QVERIFY(overviewOf({}).rows.empty());
        for (const Standing each : {Standing::Better, Standing::NotComparable, Standing::NoFigure})
            QVERIFY(!english(standingWords(each)).empty());
    }
};

QTEST_APPLESS_MAIN(TestOverview)
#include "tst_overview.moc"

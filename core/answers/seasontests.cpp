// SPDX-License-Identifier: GPL-3.0-or-later
// The rows of the battery: each test by side, and left against right.
#include "core/answers/leftright.h"
#include "core/answers/seasonsource.h"
#include "core/answers/testsmallest.h"
#include "core/model/phrases/answers.h"
#include "core/stats/moderation.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace slopebook::answers {

namespace {

/// What a block holds of one test on one side, by date.
struct TestBlock {
    std::vector<TestValue> values = {};
    std::vector<Conditions> conditions = {};
    NoAnswer why = notTested(); ///< where it holds none
    std::optional<MeanOfDays> mean() const {
        if (values.empty())
            return std::nullopt;
        double sum = 0;
        for (const TestValue& value : values)
            sum += value.value;
        return MeanOfDays{.value = sum / static_cast<double>(values.size()),
                          .days = static_cast<int>(values.size())};
    }
    std::vector<double> figures() const {
        std::vector<double> all;
        for (const TestValue& value : values)
            all.push_back(value.value);
        return all;
    }
};

/// Days that the coach set apart stand for their block only where it has no others.
TestBlock testBlock(const Stored<TestKindId, TestKind>& kind,
                    std::span<const BatterySession> sessions, BodySide side) {
    TestBlock block, apart;
    for (const BatterySession& session : sessions) {
        auto value = testValue(kind, session, side);
        if (!value) {
            if (value.why().why != NoAnswer::Why::NotTested)
                block.why = value.why();
            continue;
        }
        const TestAttempts* test = session.battery.test(kind.id);
        const Conditions conditions = test == nullptr ? Conditions{} : test->conditions;
        TestBlock& to = conditions.notComparable.empty() ? block : apart;
        to.values.push_back(*value);
        to.conditions.push_back(conditions);
    }
    if (block.values.empty() && !apart.values.empty())
        return apart;
    return block;
}

Under underOfBlocks(const TestBlock& from, const TestBlock& to, Devices devices) {
    Under under;
    for (const Conditions& before : from.conditions)
        for (const Conditions& after : to.conditions) {
            if (under.notComparable.empty())
                under.notComparable = notComparableWords(before, after);
            for (const ConditionChange& change : conditionChanges(before, after, devices))
                if (std::ranges::find(under.changes, change.what, &ConditionChange::what) ==
                    under.changes.end())
                    under.changes.push_back(change);
        }
    return under;
}

constexpr double leastKnown = 2; // df: what so few say may lie under what attempts show

class TestRows {
public:
    TestRows(SeasonMatrix& matrix, const SeasonSource& source, const Family& family)
        : m_matrix(matrix), m_source(source), m_family(family) {}

    void add(const Stored<TestKindId, TestKind>& kind) {
        m_sides.clear();
        for (const BodySide side : sidesOf(kind.value)) {
            std::vector<TestBlock> blocks;
            for (const auto& sessions : m_source.batteries)
                blocks.push_back(testBlock(kind, sessions, side));
            addSide(kind, side, blocks);
            m_sides.push_back(std::move(blocks));
        }
        if (kind.value.twoSided)
            addAsymmetry(kind);
    }

private:
    std::optional<NoiseOfADay> noiseOf(const Stored<TestKindId, TestKind>& kind, BodySide side,
                                       const std::vector<TestBlock>& blocks, std::size_t from,
                                       std::size_t to) const {
        const TestBlock &a = blocks[from], &b = blocks[to];
        const double middle = (a.mean()->value + b.mean()->value) / 2;
        if (auto known = testNoise(kind, side, m_source.athlete, *m_source.squad, middle)) {
            if (a.values.size() == 1 && b.values.size() == 1 && known->df <= leastKnown)
                if (const auto least = attemptNoise(a.values[0], b.values[0]))
                    known->te = std::max(known->te, *least);
            return NoiseOfADay{known->te, known->df};
        }
        std::vector<std::vector<double>> days;
        for (const TestBlock& block : blocks)
            days.push_back(block.figures());
        return spreadOfDays(days);
    }

    MatrixRow emptyRow(const Measure& measure, const std::vector<TestBlock>& blocks) const {
        MatrixRow row{.measure = measure};
        for (const TestBlock& block : blocks)
            row.cells.push_back({.value = block.why});
        return row;
    }

    static Words noNoise() {
        return say("no typical error is known: repeat the test, or give the test one");
    }

    void addSide(const Stored<TestKindId, TestKind>& kind, BodySide side,
                 const std::vector<TestBlock>& blocks) {
        MatrixRow row = emptyRow({.kind = Measure::Kind::Test,
                                  .name = kind.value.name,
                                  .test = kind.id,
                                  .side = side,
                                  .unit = kind.value.unit,
                                  .decimals = kind.value.decimals,
                                  .higherIsBetter = kind.value.higherIsBetter},
                                 blocks);
        row.smallest = smallestOfTest(kind, side, *m_source.squad);
        MeansQuestion question;
        for (const TestBlock& block : blocks)
            question.means.push_back(block.mean());
        question.noise = [&](std::size_t from, std::size_t to) {
            return noiseOf(kind, side, blocks, from, to);
        };
        question.under = [&](std::size_t from, std::size_t to) {
            return underOfBlocks(blocks[from], blocks[to], m_source.devices);
        };
        question.noNoise = [](std::size_t, std::size_t) { return noNoise(); };
        readMeans(row, question, m_source.chosen, m_source.level, m_family);
        m_matrix.rows.push_back(std::move(row));
    }

    /// Of the two sides' means; so many days as the side that has fewer.
    void addAsymmetry(const Stored<TestKindId, TestKind>& kind) {
        const auto &left = m_sides[0], &right = m_sides[1];
        MatrixRow row = emptyRow({.kind = Measure::Kind::Asymmetry,
                                  .name = kind.value.name,
                                  .test = kind.id,
                                  .unit = "%",
                                  .decimals = 1,
                                  .higherIsBetter = false},
                                 left);
        MeansQuestion question;
        for (std::size_t j = 0; j < left.size(); ++j) {
            const auto a = left[j].mean(), b = right[j].mean();
            if (!a || !b) {
                question.means.push_back(std::nullopt);
                row.cells[j].value = a ? right[j].why : left[j].why;
                continue;
            }
            const Asymmetry found = asymmetry(a->value, b->value, kind.value.higherIsBetter);
            question.means.push_back(
                MeanOfDays{found.percent, std::min(a->days, b->days), found.better});
        }
        question.noise = [&](std::size_t from, std::size_t to) {
            return asymmetryNoise(kind, from, to);
        };
        question.under = [&](std::size_t from, std::size_t to) {
            Under under = underOfBlocks(left[from], left[to], m_source.devices);
            const Under other = underOfBlocks(right[from], right[to], m_source.devices);
            if (under.notComparable.empty())
                under.notComparable = other.notComparable;
            return under;
        };
        question.noNoise = [](std::size_t, std::size_t) { return noNoise(); };
        readMeans(row, question, m_source.chosen, m_source.level, m_family);
        m_matrix.rows.push_back(std::move(row));
    }

    /// Of both sides' typical errors that which makes the wider interval (leftright.h).
    std::optional<NoiseOfADay> asymmetryNoise(const Stored<TestKindId, TestKind>& kind,
                                              std::size_t from, std::size_t to) const {
        const auto mean = [&](const std::vector<TestBlock>& side) {
            return (side[from].mean()->value + side[to].mean()->value) / 2;
        };
        const double one = mean(m_sides[0]), other = mean(m_sides[1]);
        std::optional<NoiseOfADay> worst;
        double most = 0;
        for (const std::size_t side : {0U, 1U}) {
            const auto te = noiseOf(kind, side == 0 ? BodySide::Left : BodySide::Right,
                                    m_sides[side], from, to);
            if (!te)
                return std::nullopt;
            const double ofDay =
                asymmetryChangeSe(te->sd, std::max(one, other), std::min(one, other)) /
                std::numbers::sqrt2;
            const NoiseOfADay noise =
                std::isinf(te->df) ? NoiseOfADay{stats::publishedShrink * ofDay, stats::publishedDf}
                                   : NoiseOfADay{ofDay, te->df};
            const double reach = stats::tCritical(m_source.level, noise.df) * noise.sd;
            if (reach > most) {
                most = reach;
                worst = noise;
            }
        }
        return worst;
    }

    SeasonMatrix& m_matrix;
    const SeasonSource& m_source;
    Family m_family;
    std::vector<std::vector<TestBlock>> m_sides;
};

} // namespace

void addTestRows(SeasonMatrix& matrix, const SeasonSource& source, const Family& family) {
    TestRows rows(matrix, source, family);
    for (const auto& kind : source.kinds)
        rows.add(kind);
}

} // namespace slopebook::answers

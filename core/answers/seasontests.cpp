// SPDX-License-Identifier: GPL-3.0-or-later
// The rows of the battery: each test by side, and left against right.
#include "core/answers/leftright.h"
#include "core/answers/seasonsource.h"
#include "core/answers/testblock.h"
#include "core/answers/testsmallest.h"
#include "core/model/phrases/answers.h"
#include "core/stats/moderation.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace slopebook::answers {

namespace {

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
        const auto found = noiseBetween(kind, side, m_source.athlete, *m_source.squad, blocks[from],
                                        blocks[to], blocks);
        return found ? std::optional(NoiseOfADay{found->te, found->df}) : std::nullopt;
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

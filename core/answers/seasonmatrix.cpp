// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/seasonmatrix.h"

#include "core/answers/batterycomparison.h"
#include "core/answers/seasonsource.h"
#include "core/answers/testkinds.h"
#include "core/model/phrases/answers.h"

#include <algorithm>

namespace slopebook::answers {

namespace {

bool anyFigure(const MatrixRow& row) {
    return std::ranges::any_of(row.cells, [](const MatrixCell& cell) { return bool(cell.value); });
}

template <class Visit>
void eachAgainst(const SeasonMatrix& matrix, std::optional<std::size_t> block, const Visit& visit) {
    for (const MatrixRow& row : matrix.rows)
        for (std::size_t j = 0; j < row.cells.size(); ++j)
            if ((!block || *block == j) && row.cells[j].against)
                visit(*row.cells[j].against);
}

} // namespace

std::string_view word(Measure::Kind kind) {
    switch (kind) {
    case Measure::Kind::Speed:
        return "lift";
    case Measure::Kind::OneRm:
        return "one_rm";
    case Measure::Kind::Test:
        return "test";
    case Measure::Kind::Asymmetry:
        return "asymmetry";
    case Measure::Kind::BodyMass:
        return "body_mass";
    case Measure::Kind::Effort:
        return "rpe";
    }
    return "";
}

Words measureWords(const Measure& measure) {
    switch (measure.kind) {
    case Measure::Kind::Speed:
        return say("%1 at %2", measure.name, *measure.load);
    case Measure::Kind::OneRm:
        return say("%1, estimated 1RM", measure.name);
    case Measure::Kind::Test:
        return sided(testName(measure.name), measure.side);
    case Measure::Kind::Asymmetry:
        return say("%1, left against right", testName(measure.name));
    case Measure::Kind::BodyMass:
        return say("body mass");
    case Measure::Kind::Effort:
        return say("%1, RPE at %2", measure.name, *measure.load);
    }
    return {};
}

int SeasonMatrix::read(Reading reading, std::optional<std::size_t> block) const {
    int count = 0;
    eachAgainst(*this, block,
                [&](const CellChange& change) { count += change.read.reading == reading ? 1 : 0; });
    return count;
}

int SeasonMatrix::judged(std::optional<std::size_t> block) const {
    int count = 0;
    eachAgainst(*this, block, [&](const CellChange& change) {
        count += change.read.reading != Reading::NoFigure ? 1 : 0;
    });
    return count;
}

double SeasonMatrix::byChance(std::optional<std::size_t> block) const {
    double sum = 0;
    eachAgainst(*this, block, [&](const CellChange& change) { sum += change.byChance; });
    return sum;
}

std::optional<std::size_t> blockBefore(const MatrixRow& row, std::size_t block) {
    for (std::size_t j = block; j-- > 0;)
        if (row.cells[j].value)
            return j;
    return std::nullopt;
}

SeasonMatrix seasonMatrix(const SeasonSource& source) {
    SeasonMatrix matrix{.level = source.level,
                        .blocks = source.blocks,
                        .chosen = source.chosen,
                        .outside = source.outside};
    const Family family = std::make_shared<FamilyTables>();
    for (const SeasonLift& lift : source.lifts)
        addLiftRows(matrix, source, lift, family);
    addTestRows(matrix, source, family);
    for (const SeasonLift& lift : source.lifts)
        addEffortRows(matrix, source, lift, family);
    addBodyMassRow(matrix, source);
    std::erase_if(matrix.rows, [](const MatrixRow& row) { return !anyFigure(row); });
    tellSeason(matrix);
    return matrix;
}

} // namespace slopebook::answers

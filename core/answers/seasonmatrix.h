// SPDX-License-Identifier: GPL-3.0-or-later
// A whole season on one page: everything that was measured by the training blocks it was measured
// in, each block read against a chosen one and against the one before (method: tests/README.md,
// 'Seasons').
#pragma once

#include "core/answers/note.h"
#include "core/answers/reading.h"
#include "core/answers/readingwords.h"
#include "core/model/answer.h"
#include "core/model/battery.h"
#include "core/model/ids.h"
#include "core/model/mass.h"
#include "core/model/people.h"

#include <optional>
#include <string>
#include <vector>

namespace slopebook::answers {

/// One thing that is measured over a season: a row of the matrix.
struct Measure {
    enum class Kind {
        Speed,     ///< of a lift at a check load, m/s
        OneRm,     ///< estimated, kg
        Test,      ///< of the battery, on one side, in its unit
        Asymmetry, ///< left against right of a test, %: less is better
        BodyMass,  ///< kg: neither way is better, so no cell of it has a reading
        Effort     ///< RPE at a check load: less is better
    };
    Kind kind = Kind::Speed;
    std::string name = {}; ///< of the lift or the test; empty for the body mass
    std::optional<LiftId> lift = {};
    std::optional<TestKindId> test = {};
    std::optional<Mass> load = {};
    BodySide side = BodySide::Both;
    std::string unit = {}; ///< "m/s", "kg", "%", "" (RPE), or the test's own
    int decimals = 3;      ///< that its figures are shown with
    bool higherIsBetter = true;
    /// Decimals of a change in a sentence, and of the size from which one is clear.
    int saidDecimals() const { return kind == Kind::Speed ? saidSpeedDecimals : decimals; }
    /// Whether a change of it can be better or worse.
    bool judged() const { return kind != Kind::BodyMass; }
    /// Whether its figures are masses, to be shown in the coach's unit.
    bool isMass() const { return kind == Kind::OneRm || kind == Kind::BodyMass; }
};
/// "Bench pull at 40 kg", "Single hop, left", "Bench pull, estimated 1RM".
Words measureWords(const Measure& measure);
/// "lift", "one_rm", "test", "asymmetry", "body_mass", "rpe": the words of files and JSON.
std::string_view word(Measure::Kind kind);

/// A change from one block to another, or why there is none.
struct CellChange {
    std::size_t from = 0; ///< index of the block it is counted from
    ReadChange read = {}; ///< NoFigure with notComparable: hatched; with why: no reading is made
    Words why = {};       ///< why there is no reading; empty where there is one
    /// With nothing changed, so likely is a better or a worse; 0 where there is no reading.
    double byChance = 0;
    /// How likely a change as large is of nothing, by one look; 1 where there is no reading.
    double p = 1;
    /// Better or worse still where all readings of the season are one question (Holm's rule).
    bool stands = false;
    bool comparable() const { return read.notComparable.empty(); }
};

/// What one block says of one measure.
struct MatrixCell {
    int sessions = 0; ///< that stand for it
    /// The block's figure: of all its sessions made one; or why there is none.
    Answer<double> value = NoAnswer{};
    double se = 0;                                ///< of the figure, its days in it
    std::optional<stats::Interval> interval = {}; ///< of the figure, one look
    bool extrapolated = false; ///< outside the loads of all its sessions; 1RM: reach under 0.80
    BodySide better = BodySide::Both;       ///< of an asymmetry: the side ahead
    std::optional<CellChange> against = {}; ///< from the chosen block; absent in that block itself
    std::optional<CellChange> before = {};  ///< from the last block that has the measure
};

struct MatrixRow {
    Measure measure = {};
    std::vector<MatrixCell> cells = {}; ///< one a block, in their order
    std::optional<Smallest> smallest = {};
};

/// A column: a training block in which the athlete was there at all.
struct MatrixBlock {
    BlockId id = {};
    Block block = {};
    std::optional<int> session = {}; ///< of its one day: the number of the session that is meant
    int sessions = 0;                ///< of the athlete, whatever they hold
    /// The last day of which the log knows anything: what of the block lies after it is not over
    /// yet, and no sessions of it are missed. Absent: all of it is over.
    std::optional<Date> countedTo = {};
};

struct SeasonMatrix {
    double level = 0.95;
    std::vector<MatrixBlock> blocks = {}; ///< by their first day
    std::size_t chosen = 0;               ///< the block that others are read against
    std::vector<MatrixRow> rows = {};     ///< lifts by name and load, 1RM, tests, body mass
    int outside = 0; ///< sessions of the athlete that lie in none of the blocks

    /// Whether a measure's readings against the chosen block hold for several blocks together.
    bool allAtOnce() const { return blocks.size() > 2; }
    /// Readings against the chosen block in one column, or (nothing named) in all.
    int read(Reading reading, std::optional<std::size_t> block = {}) const;
    /// Changes that have a reading, likewise.
    int judged(std::optional<std::size_t> block = {}) const;
    /// So many of them would be better or worse had nothing changed.
    double byChance(std::optional<std::size_t> block = {}) const;

    Words sentence = {};            ///< of the last block against the chosen one
    Words chance = {};              ///< how many chance alone would give
    std::vector<Note> notes = {};   ///< what to beware of
    std::vector<Words> story = {};  ///< what each block was, planned and counted
    std::vector<Words> design = {}; ///< what a design of this kind can and cannot show
};

/// What was different around the tests of a block and those of the chosen one; a clause, empty
/// where nothing was.
Words conditionsOf(const SeasonMatrix& matrix, std::size_t block);

/// Puts sentence, chance, story and design where the rest is whole.
void tellSeason(SeasonMatrix& matrix);

} // namespace slopebook::answers

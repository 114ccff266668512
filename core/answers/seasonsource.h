// SPDX-License-Identifier: GPL-3.0-or-later
// What a season's matrix is made from, and its rows by what they measure.
#pragma once

#include "core/answers/blockchange.h"
#include "core/answers/familywise.h"
#include "core/answers/followedseason.h"
#include "core/answers/seasonmatrix.h"
#include "core/answers/squadtests.h"

#include <functional>
#include <map>
#include <span>
#include <vector>

namespace slopebook::answers {

/// One lift of the athlete over the season.
struct SeasonLift {
    Stored<LiftId, Lift> lift = {};
    Answer<Mvt> mvt = NoAnswer{};
    std::vector<Mass> checkLoads = {};      ///< none: the load that most of its days held
    std::vector<BlockSessions> blocks = {}; ///< one a column; reps made alike already
    /// A column whose sessions stand in another one too: the noise is that of the others.
    std::optional<std::size_t> twice = {};
    /// RPE, the mean of a day's sets at a load, one a column and load, by date.
    std::vector<std::map<Mass, std::vector<double>>> efforts = {};
    /// How two of the blocks are compared, their leads given; for two blocks of one season always
    /// of the same noise and scatter.
    std::function<BlockSettings(const LiftSession& from, const LiftSession& to)> settings = {};
};

struct SeasonSource {
    AthleteId athlete = {};
    double level = 0.95;
    std::vector<MatrixBlock> blocks = {};
    std::size_t chosen = 0;
    int outside = 0;
    std::vector<SeasonLift> lifts = {};
    std::vector<Stored<TestKindId, TestKind>> kinds = {};
    std::vector<std::vector<BatterySession>> batteries = {}; ///< one a column, by date
    const SquadTests* squad = nullptr;                       ///< needed where there are kinds
    std::vector<Stored<DeviceId, Device>> devices = {};
};

/// The whole of it, told (tellSeason).
SeasonMatrix seasonMatrix(const SeasonSource& source);

// Its rows; blocks without a figure have their reason, measures that no block has are left out.
void addLiftRows(SeasonMatrix& matrix, const SeasonSource& source, const SeasonLift& lift,
                 const Family& family);
void addTestRows(SeasonMatrix& matrix, const SeasonSource& source, const Family& family);
void addBodyMassRow(SeasonMatrix& matrix, const SeasonSource& source);
void addEffortRows(SeasonMatrix& matrix, const SeasonSource& source, const SeasonLift& lift,
                   const Family& family);

/// One lift at one load: its row, and the trend within each column.
struct SpeedRow {
    MatrixRow row = {};
    std::vector<Answer<BlockTrend>> trends = {};
};
SpeedRow speedRow(const SeasonSource& source, const SeasonLift& lift, Mass load,
                  const Family& family);

/// The last block before one whose cell has a figure; nothing where none has.
std::optional<std::size_t> blockBefore(const MatrixRow& row, std::size_t block);

/// Figures that are each the mean of so many days alike, read with one noise of a day: tests, RPE.
struct MeanOfDays {
    double value = 0;
    int days = 0;
    BodySide better = BodySide::Both; ///< of an asymmetry
};
/// The noise of one day's figure: t of df times sd; infinite df: published.
struct NoiseOfADay {
    double sd = 0, df = 0;
};
/// Reads every cell of a row against the chosen block and the one before. means: one a column;
/// noise: as of a change between two columns, nothing: why (`noNoise`). under: of two columns.
struct MeansQuestion {
    std::vector<std::optional<MeanOfDays>> means = {};
    std::function<std::optional<NoiseOfADay>(std::size_t from, std::size_t to)> noise = {};
    std::function<Under(std::size_t from, std::size_t to)> under = {};
    std::function<Words(std::size_t from, std::size_t to)> noNoise = {};
};
void readMeans(MatrixRow& row, const MeansQuestion& question, std::size_t chosen, double level,
               const Family& family);

/// How far the days of each column lie apart, pooled, as the noise of one day; nothing where it has
/// under two df.
std::optional<NoiseOfADay> spreadOfDays(std::span<const std::vector<double>> columns);

} // namespace slopebook::answers

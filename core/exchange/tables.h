// SPDX-License-Identifier: GPL-3.0-or-later
// The tables that stand beside tidy reps (athletes, devices, lifts, blocks, check loads) as read
// from their files.
#pragma once

#include "core/exchange/table.h"
#include "core/model/lift.h"
#include "core/model/people.h"

#include <optional>
#include <string>
#include <vector>

namespace slopebook::exchange {

enum class FileKind { Reps, Sessions, Athletes, Devices, Lifts, Blocks, CheckLoads };

/// What a file is, by its header; Reps where it is none of the others.
FileKind fileKind(const std::vector<std::string>& header);

/// A row of a table with where it stood.
template <class T>
struct Row {
    T value{};
    Where where;
};

/// A lift with what its row left unsaid.
struct LiftRow {
    Lift lift;
    bool kindSaid = false, ballisticSaid = false, movesBodySaid = false;
    bool publishedMvt = false; ///< mvt_origin published and no value: the table's own
};

struct CheckLoadRow {
    std::string athlete, lift;
    Mass load;
};

struct Tables {
    std::vector<Row<Athlete>> athletes;
    std::vector<Row<Device>> devices;
    std::vector<Row<LiftRow>> lifts;
    std::vector<Row<Block>> blocks;
    std::vector<Row<CheckLoadRow>> checkLoads;

    /// Reads a file of that kind (none of Reps, Sessions); returns its columns that were not used.
    std::vector<std::string> read(const std::filesystem::path& file, FileKind kind);
};

} // namespace slopebook::exchange

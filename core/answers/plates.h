// SPDX-License-Identifier: GPL-3.0-or-later
// Every load that a set of equipment can make, exactly, and what to put on for it.
#pragma once

#include "core/model/equipment.h"
#include "core/model/words.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace slopebook::answers {

/// Plates of one mass on each side of the bar.
struct PlateCount {
    Plate plate{};
    int perSide = 0;
    friend bool operator==(const PlateCount&, const PlateCount&) = default;
};

/// A load and the pieces that make it.
struct BuiltLoad {
    ExactMass exact{};
    Mass load{};                       ///< exact, to the nearest gram: as a set of the log holds it
    std::optional<Bar> bar{};          ///< what the plates are on
    std::vector<PlateCount> perSide{}; ///< heaviest first
    std::vector<FixedMass> fixed{};    ///< masses used, the one that stands alone first
    int pieces() const;                ///< plates on both sides and fixed masses; the bar aside
    friend bool operator==(const BuiltLoad&, const BuiltLoad&) = default;
};

/// All loads, ascending, each once, up to the lower of equipment.ceiling and ceiling. A load that
/// can be made in several ways is made of the fewest pieces, then of the most of the heaviest
/// plate, then on the bar that is listed first. Both sides of a bar carry the same. Throws BadInput
/// for equipment that may not stand (validate) or that makes more than mostLoads loads.
std::vector<BuiltLoad> buildableLoads(const Equipment& equipment,
                                      std::optional<ExactMass> ceiling = {});
constexpr std::size_t mostLoads = 100'000;

/// The set with one of its bars alone, and without the masses that are loads by themselves: what
/// a lift on that bar is planned with. bar: an index into equipment.bars.
Equipment onBar(Equipment equipment, std::size_t bar);

enum class Side { Below, Above, Nearest };

/// The heaviest load <= target, the lightest >= target, or the nearest (of two as near, the
/// lighter). Nothing where there is none on that side. loads ascending, as buildableLoads gives
/// them.
std::optional<std::size_t> find(std::span<const BuiltLoad> loads, ExactMass target, Side side);

/// "bar 20 kg; per side 2 x 20 + 2.5 kg", "dumbbell 26 kg + vest 10 kg": the order to put on.
Words loadWords(const BuiltLoad& load);
/// "bar 20 kg".
Words barWords(const Bar& bar);
/// What goes on one side of the bar, or the masses that are the load: "2 x 20 + 2.5 kg"; "no
/// plates" for the bare bar.
Words putOnWords(const BuiltLoad& load);

} // namespace slopebook::answers

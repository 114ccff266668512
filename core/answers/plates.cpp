// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/plates.h"

#include "core/model/errors.h"
#include "core/model/phrases/answers.h"

#include <algorithm>
#include <limits>

namespace slopebook::answers {

namespace {

/// A sum on the way: how many of each piece (in the order the pieces were offered) make it.
struct Sum {
    std::int64_t units = 0;
    int pieces = 0;
    std::vector<std::uint8_t> counts;
};

/// Fewest pieces first, then the most of the piece that was offered earliest (the heaviest).
bool better(const Sum& a, const Sum& b) {
    return a.pieces != b.pieces ? a.pieces < b.pieces : a.counts > b.counts;
}

/// Sorted, each mass once with its best way.
void keepBest(std::vector<Sum>& sums) {
    std::sort(sums.begin(), sums.end(), [](const Sum& a, const Sum& b) {
        return a.units != b.units ? a.units < b.units : better(a, b);
    });
    sums.erase(std::unique(sums.begin(), sums.end(),
                           [](const Sum& a, const Sum& b) { return a.units == b.units; }),
               sums.end());
    if (sums.size() > mostLoads)
        throw BadInput(say("equipment that makes more than %1 loads", mostLoads),
                       say("fewer kinds of plates and masses in one set of equipment"));
}

/// One bounded piece more: every sum so far with 0 .. most of it, under the limit.
std::vector<Sum> offer(const std::vector<Sum>& sums, std::int64_t piece, int most, int piecesEach,
                       std::int64_t limit) {
    std::vector<Sum> grown;
    grown.reserve(sums.size() * 2);
    for (const Sum& sum : sums)
        for (int count = 0; count <= most; ++count) {
            if (sum.units + count * piece > limit)
                break;
            Sum next = sum;
            next.units += count * piece;
            next.pieces += count * piecesEach;
            next.counts.push_back(static_cast<std::uint8_t>(count));
            grown.push_back(std::move(next));
        }
    keepBest(grown);
    return grown;
}

struct Sorted {
    std::vector<Plate> plates; ///< heaviest first
    std::vector<FixedMass> alone, added;
};

Sorted sorted(const Equipment& equipment) {
    Sorted s{.plates = equipment.plates, .alone = {}, .added = {}};
    std::stable_sort(s.plates.begin(), s.plates.end(),
                     [](const Plate& a, const Plate& b) { return a.mass > b.mass; });
    for (const FixedMass& fixed : equipment.fixed)
        (fixed.use == FixedMass::Use::Alone ? s.alone : s.added).push_back(fixed);
    return s;
}

BuiltLoad built(ExactMass base, const Sum& sum) {
    const ExactMass exact{base.units + sum.units};
    return {.exact = exact, .load = roundedToGrams(exact), .bar = {}, .perSide = {}, .fixed = {}};
}

void takeAdded(BuiltLoad& load, const std::vector<FixedMass>& added,
               const std::vector<std::uint8_t>& counts, std::size_t from) {
    for (std::size_t i = 0; i < added.size(); ++i)
        if (counts[from + i] > 0)
            load.fixed.push_back(added[i]);
}

std::vector<Sum> offerAdded(std::vector<Sum> sums, const std::vector<FixedMass>& added,
                            std::int64_t limit) {
    for (const FixedMass& fixed : added)
        sums = offer(sums, fixed.mass.units, 1, 1, limit);
    return sums;
}

} // namespace

int BuiltLoad::pieces() const {
    int count = static_cast<int>(fixed.size());
    for (const PlateCount& plate : perSide)
        count += 2 * plate.perSide;
    return count;
}

std::vector<BuiltLoad> buildableLoads(const Equipment& equipment,
                                      std::optional<ExactMass> ceiling) {
    validate(equipment);
    std::int64_t limit = std::numeric_limits<std::int64_t>::max() / 4;
    for (const auto& bound : {equipment.ceiling, ceiling})
        if (bound)
            limit = std::min(limit, bound->units);
    const Sorted pieces = sorted(equipment);

    std::vector<BuiltLoad> loads;
    if (!equipment.bars.empty()) {
        std::int64_t lightest = equipment.bars.front().mass.units;
        for (const Bar& bar : equipment.bars)
            lightest = std::min(lightest, bar.mass.units);
        std::vector<Sum> sums{Sum{}};
        for (const Plate& plate : pieces.plates)
            sums = offer(sums, 2 * plate.mass.units, plate.pairs, 2, limit - lightest);
        sums = offerAdded(std::move(sums), pieces.added, limit - lightest);
        for (const Bar& bar : equipment.bars)
            for (const Sum& sum : sums) {
                if (bar.mass.units + sum.units > limit)
                    break;
                BuiltLoad load = built(bar.mass, sum);
                load.bar = bar;
                for (std::size_t i = 0; i < pieces.plates.size(); ++i)
                    if (sum.counts[i] > 0)
                        load.perSide.push_back(
                            {.plate = pieces.plates[i], .perSide = sum.counts[i]});
                takeAdded(load, pieces.added, sum.counts, pieces.plates.size());
                loads.push_back(std::move(load));
            }
    }
    const auto added = offerAdded({Sum{}}, pieces.added, limit);
    for (const FixedMass& alone : pieces.alone)
        for (const Sum& sum : added) {
            if (alone.mass.units + sum.units > limit)
                break;
            BuiltLoad load = built(alone.mass, sum);
            load.fixed.push_back(alone);
            takeAdded(load, pieces.added, sum.counts, 0);
            loads.push_back(std::move(load));
        }
    if (equipment.bars.empty() && pieces.alone.empty())
        for (const Sum& sum : added)
            if (sum.units > 0) {
                BuiltLoad load = built({}, sum);
                takeAdded(load, pieces.added, sum.counts, 0);
                loads.push_back(std::move(load));
            }

    // stable: of ways as good, the one on the bar listed first stands
    std::stable_sort(loads.begin(), loads.end(), [](const BuiltLoad& a, const BuiltLoad& b) {
        return a.exact != b.exact ? a.exact < b.exact : a.pieces() < b.pieces();
    });
    loads.erase(
        std::unique(loads.begin(), loads.end(),
                    [](const BuiltLoad& a, const BuiltLoad& b) { return a.exact == b.exact; }),
        loads.end());
    if (loads.size() > mostLoads)
        throw BadInput(say("equipment that makes more than %1 loads", mostLoads),
                       say("fewer kinds of plates and masses in one set of equipment"));
    return loads;
}

Equipment onBar(Equipment equipment, std::size_t bar) {
    equipment.bars = {equipment.bars.at(bar)};
    std::erase_if(equipment.fixed,
                  [](const FixedMass& each) { return each.use == FixedMass::Use::Alone; });
    return equipment;
}

std::optional<std::size_t> find(std::span<const BuiltLoad> loads, ExactMass target, Side side) {
    const auto above =
        std::lower_bound(loads.begin(), loads.end(), target,
                         [](const BuiltLoad& load, ExactMass m) { return load.exact < m; });
    const auto index = static_cast<std::size_t>(above - loads.begin());
    const bool exactly = above != loads.end() && above->exact == target;
    const std::optional<std::size_t> up =
        above != loads.end() ? std::optional(index) : std::nullopt;
    const std::optional<std::size_t> down =
        exactly ? up : (index > 0 ? std::optional(index - 1) : std::nullopt);
    if (side == Side::Below)
        return down;
    if (side == Side::Above)
        return up;
    if (!up || !down)
        return up ? up : down;
    return target - loads[*down].exact <= loads[*up].exact - target ? down : up;
}

namespace {

Words sum(std::vector<Words> parts) {
    return {.kind = Words::Kind::List,
            .text = std::string(Phrase("%1 + %2").english()),
            .parts = std::move(parts)};
}

/// In the piece's own unit.
Words piece(const Words& name, ExactMass mass, MassUnit unit) {
    return say("%1 %2 %3", name, figure(massText(mass, unit)), word(unit));
}

/// The plates of one side: "2 x 20 + 2.5 kg", the unit once at the end of a run in the same unit.
std::vector<Words> plateWords(const BuiltLoad& load) {
    std::vector<Words> all;
    for (std::size_t i = 0; i < load.perSide.size(); ++i) {
        const auto& [plate, count] = load.perSide[i];
        const Words mass = figure(massText(plate.mass, plate.unit));
        const bool ends =
            i + 1 == load.perSide.size() || load.perSide[i + 1].plate.unit != plate.unit;
        const Words one = ends ? say("%1 %2", mass, word(plate.unit)) : mass;
        all.push_back(count > 1 ? say("%1 x %2", count, one) : one);
    }
    return all;
}

std::vector<Words> fixedWords(const BuiltLoad& load) {
    std::vector<Words> all;
    for (const FixedMass& each : load.fixed)
        all.push_back(
            piece(each.name.empty() ? say("mass") : asIs(each.name), each.mass, each.unit));
    return all;
}

} // namespace

Words barWords(const Bar& bar) {
    return piece(bar.name.empty() ? say("bar") : asIs(bar.name), bar.mass, bar.unit);
}

Words putOnWords(const BuiltLoad& load) {
    std::vector<Words> all = plateWords(load);
    if (load.bar && all.empty())
        all.push_back(say("no plates"));
    std::ranges::move(fixedWords(load), std::back_inserter(all));
    return sum(std::move(all));
}

Words loadWords(const BuiltLoad& load) {
    std::vector<Words> all;
    if (load.bar)
        all.push_back(load.perSide.empty()
                          ? say("%1, no plates", barWords(*load.bar))
                          : say("%1; per side %2", barWords(*load.bar), sum(plateWords(load))));
    std::ranges::move(fixedWords(load), std::back_inserter(all));
    return sum(std::move(all));
}

} // namespace slopebook::answers

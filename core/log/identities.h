// SPDX-License-Identifier: GPL-3.0-or-later
// The names and trails of a log's things beside where each stands, told without this log's own
// keys: how they go out with an export and come back with an import.
#pragma once

#include "core/log/log.h"
#include "core/log/trail.h"
#include "core/log/uuid.h"

#include <compare>
#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace slopebook::log {

/// What no two living things of a log share. What does not tell a kind apart is empty.
struct ThingPlace {
    std::string kind{};      ///< core/log/atoms.h
    Sixteen of{};            ///< what it belongs to
    Sixteen with{};          ///< the lift or test of a session, the lift of a check load, who is on
                             ///< a roster
    std::string name{};      ///< of what has one
    std::string day{};       ///< of a session, a roster; a block's first
    int number = 0;          ///< of a session on its day, a set, an attempt, a gap
    std::int64_t grams = -1; ///< of a check load
    friend auto operator<=>(const ThingPlace&, const ThingPlace&) = default;
};
/// By what it says. Throws as readContent().
ThingPlace thingPlace(std::string_view content);

struct Identity {
    ThingPlace place{};
    Sixteen uuid{};
    Trail trail{};
};

/// The identities of a file, found by their places: 52 bytes each, and the trail of what was
/// edited.
class Identities {
public:
    /// Of several at one place the first counts.
    void add(const Identity& identity);
    bool empty() const { return m_held.empty(); }

    struct Found {
        Sixteen uuid{};
        Trail trail{};
    };
    /// Once all were added.
    std::optional<Found> at(const ThingPlace& place) const;
    /// In the order of their places, for at().
    void sort();

private:
    struct Held {
        Sixteen place{}, uuid{}, hash{}; ///< hash: of a trail of one step
        std::int32_t edited = never;     ///< where its trail stands
    };
    static constexpr std::int32_t never = -1, unsaid = -2;
    std::vector<Held> m_held;
    std::vector<std::string> m_trails; ///< bytesOf()
};

/// Of everything that goes out with an export, what others belong to before them: of what was
/// removed, of conflicts and of who was at a station none.
void visitIdentities(const Log& log, const std::function<void(const Identity&)>& visit);

/// The names that the log knows at that moment, ascending.
std::vector<Sixteen> namesKnown(const Log& log);

/// The key of what lives here under that name and is of that kind.
std::optional<std::int64_t> livingKey(const Log& log, const std::string& kind, const Sixteen& uuid);

/// Gives what came since then (before: namesKnown()) the name and the trail that it has there, if
/// it stands among the identities: what says there the same has that very trail, what says
/// something else a step more. What was there before keeps its own, and a name that something else
/// has here is given to nothing. In the transaction in which it came.
void takeIdentities(const Log& log, const Identities& identities,
                    const std::vector<Sixteen>& before);

} // namespace slopebook::log

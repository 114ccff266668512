// SPDX-License-Identifier: GPL-3.0-or-later
// What came from a store, each thing read once: as it came, and as a log carries it.
#pragma once

#include "core/log/carried.h"
#include "core/store/atom.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace slopebook::meetings {

struct Arrived {
    const store::Atom* atom = nullptr; ///< outlives this
    log::Carried said{};
};
/// Some of them, by their places in a list.
using Places = std::vector<std::size_t>;

/// The session that it is or belongs to. parent: what it belongs to.
inline std::optional<store::Sixteen> sessionOf(const store::Atom& atom,
                                               const std::optional<store::Sixteen>& parent) {
    if (atom.kind == "session")
        return atom.uuid;
    return atom.kind == "check load" || atom.kind == "roster" ? std::nullopt : parent;
}

} // namespace slopebook::meetings

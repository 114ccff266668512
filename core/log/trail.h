// SPDX-License-Identifier: GPL-3.0-or-later
// What a thing has been: one step for each edit, undo, removal and return, in the order in which
// they were made. Of two copies of a thing the one whose revision is in the other's trail came
// before it.
#pragma once

#include "core/log/uuid.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace slopebook::log {

struct Step {
    Sixteen revision{}; ///< of this step's hash and all that led to it
    Sixteen hash{};     ///< stepHash() of what the thing said and whether it lived
    friend bool operator==(const Step&, const Step&) = default;
};
/// Never empty, but for a thing that is not there. No step is ever left out of one: which may be
/// another copy's last nobody knows (a log's file can be copied at any time), and where the step is
/// missing at which two copies parted, an edit would be lost without being listed
/// (tst_verdicts::aStepLeftOutLosesAnEdit). longestTrail steps have room.
using Trail = std::vector<Step>;

constexpr std::size_t longestTrail = 2'000'000; ///< in a log's row, and in a store's

/// Of a content's hash (core/log/contents.h): that hash while the thing lives, another one, made
/// from it, once it is removed.
Sixteen stepHash(const Sixteen& content, bool alive);
/// Of a step after the one with that revision; nothing: of the first one.
Sixteen revisionAfter(const std::optional<Sixteen>& before, const Sixteen& step);
/// Of a step in which two trails meet, the same whichever is named first.
Sixteen revisionOfBoth(const Sixteen& one, const Sixteen& other, const Sixteen& step);

/// Adds the step of an edit. step: stepHash().
void extend(Trail& trail, const Sixteen& step);
/// Of what came and was never changed; alive false: came and was removed.
Trail shortTrail(const Sixteen& content, bool alive);

/// The last revision. The trail must not be empty.
const Sixteen& revisionOf(const Trail& trail);
/// Whether the revision is one of the trail's.
bool holds(const Trail& trail, const Sixteen& revision);
/// The last step of one that the other has as well; nullptr where they share none.
const Step* lastCommon(const Trail& one, const Trail& other);

/// The other's steps that this one has not, in their order.
Trail missingIn(const Trail& trail, const Trail& other);

/// Step after step, revision then hash: 32 bytes each.
std::string bytesOf(const Trail& trail);
/// The trail of such bytes. Throws BadInput for what is none: cut within a step, empty, or begun
/// otherwise than a trail begins.
Trail readTrail(std::string_view bytes);

} // namespace slopebook::log

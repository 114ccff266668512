// SPDX-License-Identifier: GPL-3.0-or-later
// What a meeting is about, as a coach knows it: things by their names and places, and the two sides
// of a conflict field by field.
#pragma once

#include "core/desks/thing.h"
#include "core/model/words.h"

#include <vector>

namespace slopebook::desks {

/// "Ada Kern, 14 March 2026, Bench pull, set 3"; of a kind that has no name what it belongs to.
Words nameOnDesk(const Desk& desk, Slot slot);
/// The kind in the coach's words: "athlete", "conditions of a lift".
Words sayKind(std::string_view kind);
/// Why there are two sides, as a sentence.
Words sayWhy(Why why);

/// What a thing says in one of its fields.
struct SaidField {
    Words field{}, value{};
    friend bool operator==(const SaidField&, const SaidField&) = default;
};
/// All that it says, but for what it belongs to, in the order of its columns. Defaults are said
/// too.
std::vector<SaidField> fieldsOf(const Desk& desk, const Thing& thing);

} // namespace slopebook::desks

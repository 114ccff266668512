// SPDX-License-Identifier: GPL-3.0-or-later
// What a log carries and what a store holds are the same: a thing's canonical bytes
// (core/log/contents.h) as JSON that analysts read, and back to the last byte.
#pragma once

#include "core/log/carried.h"
#include "core/store/atom.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace slopebook::store {

/// The JSON object of what those bytes say (store/atom.h tells its form), without what the thing
/// belongs to. Throws BadInput for bytes that no log of this layout writes.
std::string jsonOfContent(std::string_view bytes);
/// And back. Throws BadInput for a JSON that says something else than a thing of that kind can.
/// spoken: takes what it speaks of (log::referencesOf).
std::string contentOfJson(std::string_view kind, const std::optional<Sixteen>& parent,
                          std::string_view json, std::vector<log::Reference>* spoken = nullptr);

/// Of that squad; of a lift, a test or a device: everybody's.
Atom atomOf(const log::Carried& carried, const Sixteen& squad);
/// place is not known. Throws BadInput where the content is not what the last step of the trail was
/// made from: nothing that comes from a store is taken on trust.
log::Carried carriedOf(const Atom& atom, std::vector<log::Reference>* spoken = nullptr);

} // namespace slopebook::store

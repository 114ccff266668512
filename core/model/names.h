// SPDX-License-Identifier: GPL-3.0-or-later
// Names as people type them: brought to one spelling as they enter, and compared by a key that
// letter case, blanks and the make of accented letters do not change (libutf8proc).
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace slopebook {

/// A name as it is kept: composed letters (NFC), one plain space for any run of blanks, none at the
/// ends, no controls and no format characters, but for the joiners that some scripts need between
/// letters. Nothing where the text is not UTF-8, or nothing visible is left. tidyName(*tidyName(x))
/// == tidyName(x).
std::optional<std::string> tidyName(std::string_view typed);

/// What names are compared by: tidied, cases folded (full folding: sharp s is ss), what is
/// invisible left out. Of text that tidyName() refuses: a key that no name has.
std::string nameKey(std::string_view name);

/// Text with its letter case folded and its letters composed, for finding a part of it; bytes that
/// are not UTF-8 stay. Needs no locale.
std::string foldCase(std::string_view utf8);

/// Index of the name that is wanted: the equal one, else the only one with the same nameKey().
std::optional<std::size_t> findName(std::span<const std::string> names, std::string_view wanted);

/// The indices of names that have one key, two and more of each, in their order.
std::vector<std::vector<std::size_t>> sameNames(std::span<const std::string> names);

} // namespace slopebook

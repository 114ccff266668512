// SPDX-License-Identifier: GPL-3.0-or-later
// Names of files made of names that people gave: safe on every file system, and each once.
#pragma once

#include <set>
#include <string>
#include <string_view>

namespace slopebook {

/// The words without what some file system refuses (/ \ : * ? " < > |, controls, points and blanks
/// at the ends), at most 120 bytes of whole characters; "unnamed" where nothing is left.
std::string safeFileName(std::string_view words);

/// Gives every name once, letter case and the make of accented letters aside: a second "ann" is
/// "ann (2)".
class FileNames {
public:
    /// lead + the words made safe + ending.
    std::string next(std::string_view lead, std::string_view words, std::string_view ending);

private:
    std::set<std::string> m_given;
};

} // namespace slopebook

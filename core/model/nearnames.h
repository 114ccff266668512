// SPDX-License-Identifier: GPL-3.0-or-later
// Names that are not the same, but so near that they may be one athlete's: accents left out, words
// in another order, one letter off.
#pragma once

#include <cstddef>
#include <string>
#include <unordered_map>
#include <vector>

namespace slopebook {

/// Whether two names of different keys (names.h) are near: the same letters and digits when accents
/// (also ae for a with two dots), marks and the order of the words are left aside; or one letter
/// added, left out, changed or swapped with its neighbour, in a name of five and more. A digit is
/// never a slip: "Lane 3" and "Lane 4" are two.
bool isNear(const std::string& a, const std::string& b);

/// A list that a name is held against: at the cost of the name's length, however long the list.
class NearNames {
public:
    void add(const std::string& name);
    /// Those of the list that the name is near to, in the order in which they were added.
    std::vector<std::string> nearTo(const std::string& name) const;

private:
    std::vector<std::string> m_names;
    std::unordered_map<std::string, std::vector<std::size_t>> m_by;
};

} // namespace slopebook

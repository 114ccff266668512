// SPDX-License-Identifier: GPL-3.0-or-later
// Athletes of a file whose names are nearly another's: who they are is the coach's to say, for one
// athlete must not become two unseen, nor two one.
#pragma once

#include "core/model/errors.h"

#include <map>
#include <set>
#include <string>
#include <vector>

namespace slopebook::exchange {

/// What the coach says of them; names by their keys (core/model/names.h) or as they are spelled.
struct WhoIsWho {
    std::map<std::string, std::string> same{}; ///< the file's name -> the name to go under
    std::set<std::string> somebodyNew{};       ///< the file's name
    bool allNew = false;

    /// The name to go under: the same one where nothing else was said.
    const std::string& named(const std::string& name) const;
    bool isNew(const std::string& name) const;
    bool saysNothing() const { return same.empty() && somebodyNew.empty() && !allNew; }
};

/// A new name, and one that it is nearly the same as.
struct NearName {
    std::string name, like;
    bool inLog = false; ///< like is the log's; else it is new as well, and was met first
    friend bool operator==(const NearName&, const NearName&) = default;
};

/// Those of new names (in the order of the files) that are near to a name of the log or to an
/// earlier new one and of whom nothing was said, with the name nearest. listed: names that a table
/// of athletes lists, which are not held against each other.
std::vector<NearName> nearNames(const std::vector<std::string>& ofLog,
                                const std::vector<std::string>& fresh,
                                const std::set<std::string>& listed, const WhoIsWho& said);

/// An import that has to be told first who somebody is; nothing was written.
class Undecided : public BadInput {
public:
    explicit Undecided(std::vector<NearName> names);
    const std::vector<NearName>& names() const noexcept { return m_names; }

private:
    std::vector<NearName> m_names;
};

} // namespace slopebook::exchange

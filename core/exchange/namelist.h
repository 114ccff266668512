// SPDX-License-Identifier: GPL-3.0-or-later
// The names of one kind that files hold, each once, beside those that are known already.
#pragma once

#include <optional>
#include <string>
#include <unordered_map>
#include <vector>

namespace slopebook::exchange {

/// Names as first written, by index; one that has the key of an earlier one is that one.
class NameList {
public:
    /// Index of the name; nothing where two known() ones have its key and neither is spelled so.
    std::optional<int> index(const std::string& name);
    /// A name that is somewhere else already: keeps its own spelling.
    void known(const std::string& name);
    /// The same of one that a file lists: a spelling of a known() one is that one.
    void alsoKnown(const std::string& name);
    const std::vector<std::string>& names() const { return m_names; }

private:
    int add(const std::string& spelled);

    std::vector<std::string> m_names;
    std::unordered_map<std::string, std::vector<std::string>> m_known; ///< by key
    std::unordered_map<std::string, int> m_at;                         ///< as spelled
    std::unordered_map<std::string, int> m_byKey;
    std::string m_last; // rows come in runs
    int m_lastAt = -1;
};

} // namespace slopebook::exchange

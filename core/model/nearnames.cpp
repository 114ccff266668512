// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/nearnames.h"

#include "core/model/letters.h"
#include "core/model/names.h"

#include <algorithm>
#include <array>
#include <set>
#include <span>
#include <utility>

namespace slopebook {

namespace {

constexpr std::size_t shortestWithSlip = 5, shortestWithFirstSlip = 8;

using Spelled = std::pair<char32_t, std::u32string_view>;
// Letters that no decomposition takes apart.
constexpr std::array<Spelled, 9> whole{{{U'\u00F8', U"o"},
                                        {U'\u0142', U"l"},
                                        {U'\u0111', U"d"},
                                        {U'\u00F0', U"d"},
                                        {U'\u00FE', U"th"},
                                        {U'\u00E6', U"ae"},
                                        {U'\u0153', U"oe"},
                                        {U'\u0131', U"i"},
                                        {U'\u0127', U"h"}}};
// How German writes them where there are no dots.
constexpr std::array<Spelled, 3> dotted{
    {{U'\u00E4', U"ae"}, {U'\u00F6', U"oe"}, {U'\u00FC', U"ue"}}};

std::u32string replaced(const std::u32string& text, std::span<const Spelled> by) {
    std::u32string out;
    for (const char32_t c : text) {
        const auto it = std::ranges::find(by, c, &Spelled::first);
        if (it == by.end())
            out += c;
        else
            out += it->second;
    }
    return out;
}

/// Base letters and digits alone, in words.
std::vector<std::u32string> bareWords(const std::u32string& folded) {
    const std::string plain = withoutMarks(encoded(folded)).value_or(std::string{});
    std::vector<std::u32string> words(1);
    constexpr std::u32string_view withinWords = U"'\u2019\u02BC`.";
    for (const char32_t c : replaced(decoded(plain).value_or(std::u32string{}), whole))
        if (isLetter(c) || isDigit(c))
            words.back() += c;
        else if (!words.back().empty() && withinWords.find(c) == std::u32string_view::npos)
            words.emplace_back();
    if (words.back().empty() && words.size() > 1)
        words.pop_back();
    return words;
}

std::u32string joined(const std::vector<std::u32string>& words) {
    std::u32string all;
    for (const auto& word : words)
        all += (all.empty() ? U"" : U" ") + word;
    return all;
}

struct Bare {
    std::u32string line;            ///< its words in their order
    std::set<std::u32string> loose; ///< its words sorted, as they may be written without accents
};

Bare bare(const std::string& name) {
    const std::u32string folded = decoded(nameKey(name)).value_or(std::u32string{});
    Bare made;
    for (const auto& text : {folded, replaced(folded, dotted)}) {
        auto words = bareWords(text);
        if (made.line.empty())
            made.line = joined(words);
        std::ranges::sort(words);
        if (auto loose = joined(words); !loose.empty())
            made.loose.insert(std::move(loose));
    }
    return made;
}

bool oneLetterOff(std::u32string_view a, std::u32string_view b) {
    if (a.size() > b.size())
        std::swap(a, b);
    if (b.size() < shortestWithSlip || b.size() - a.size() > 1)
        return false;
    const auto at = static_cast<std::size_t>(std::ranges::mismatch(a, b).in1 - a.begin());
    if (a.size() < b.size())
        return isLetter(b[at]) && a.substr(at) == b.substr(at + 1);
    if (at == a.size() || !isLetter(a[at]) || !isLetter(b[at]))
        return false;
    const bool swapped = at + 1 < a.size() && a[at] == b[at + 1] && a[at + 1] == b[at] &&
                         a.substr(at + 2) == b.substr(at + 2);
    const bool changed = a.substr(at + 1) == b.substr(at + 1);
    return swapped || (changed && (at > 0 || a.size() >= shortestWithFirstSlip));
}

bool areNearBare(const Bare& a, const Bare& b) {
    return std::ranges::any_of(a.loose, [&](const auto& key) { return b.loose.contains(key); }) ||
           oneLetterOff(a.line, b.line);
}

/// Two names that are near share one of these.
std::set<std::string> signs(const Bare& of) {
    std::set<std::string> all;
    for (const auto& key : of.loose)
        all.insert("=" + encoded(key));
    if (of.line.size() + 1 < shortestWithSlip)
        return all;
    all.insert(encoded(of.line));
    for (std::size_t i = 0; i < of.line.size(); ++i)
        all.insert(encoded(std::u32string(of.line).erase(i, 1)));
    return all;
}

} // namespace

bool isNear(const std::string& a, const std::string& b) {
    return nameKey(a) != nameKey(b) && areNearBare(bare(a), bare(b));
}

void NearNames::add(const std::string& name) {
    for (const std::string& sign : signs(bare(name)))
        m_by[sign].push_back(m_names.size());
    m_names.push_back(name);
}

std::vector<std::string> NearNames::nearTo(const std::string& name) const {
    const Bare mine = bare(name);
    std::set<std::size_t> found;
    for (const std::string& sign : signs(mine))
        if (const auto it = m_by.find(sign); it != m_by.end())
            for (const std::size_t at : it->second)
                if (!found.contains(at) && isNear(name, m_names[at]))
                    found.insert(at);
    std::vector<std::string> near;
    for (const std::size_t at : found)
        near.push_back(m_names[at]);
    return near;
}

} // namespace slopebook

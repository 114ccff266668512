// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/filenames.h"

#include "core/model/names.h"

namespace slopebook {

namespace {
constexpr std::size_t longest = 120; // bytes: lead, number and ending fit beside it in 255
constexpr std::string_view refused = "/\\:*?\"<>|";

bool ofAnEnd(char letter) {
    return letter == ' ' || letter == '.';
}
} // namespace

std::string safeFileName(std::string_view words) {
    std::string safe;
    for (const char letter : words)
        safe += static_cast<unsigned char>(letter) < 0x20 || letter == 0x7f ||
                        refused.find(letter) != std::string_view::npos
                    ? '-'
                    : letter;
    if (safe.size() > longest) {
        std::size_t end = longest;
        while (end > 0 && (static_cast<unsigned char>(safe[end]) & 0xC0) == 0x80)
            --end; // inside a character
        safe.resize(end);
    }
    while (!safe.empty() && ofAnEnd(safe.back()))
        safe.pop_back();
    std::size_t first = 0;
    while (first < safe.size() && ofAnEnd(safe[first]))
        ++first;
    safe.erase(0, first);
    return safe.empty() ? "unnamed" : safe;
}

std::string FileNames::next(std::string_view lead, std::string_view words,
                            std::string_view ending) {
    const std::string stem = std::string(lead) + safeFileName(words);
    std::string name = stem;
    for (int number = 2; !m_given.insert(foldCase(name)).second; ++number)
        name = stem + " (" + std::to_string(number) + ")";
    return name + std::string(ending);
}

} // namespace slopebook

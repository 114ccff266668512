// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/periodwords.h"

#include "core/model/date.h"
#include "core/model/phrases/names.h"

#include <charconv>

namespace slopebook {

namespace {

/// The second session of a day and later ones: their number.
std::optional<int> ordinalIn(std::string_view digits) {
    int ordinal = 0;
    const char* end = digits.data() + digits.size();
    const auto read = std::from_chars(digits.data(), end, ordinal);
    return read.ec == std::errc() && read.ptr == end ? std::optional(ordinal) : std::nullopt;
}

} // namespace

Words periodWords(const std::string& name) {
    const std::string_view whole = name;
    if (const auto day = parseIsoDate(whole))
        return inWords(*day);
    if (const auto mark = whole.find('#'); mark != std::string_view::npos)
        if (const auto day = parseIsoDate(whole.substr(0, mark)))
            if (const auto ordinal = ordinalIn(whole.substr(mark + 1)))
                return filled(phrases::numberedDay, *day, *ordinal);
    if (const auto dots = whole.find(".."); dots != std::string_view::npos) {
        const auto first = parseIsoDate(whole.substr(0, dots));
        const auto last = parseIsoDate(whole.substr(dots + 2));
        if (first && last)
            return filled(phrases::stretch, *first, *last);
    }
    return asIs(name);
}

} // namespace slopebook

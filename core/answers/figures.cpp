// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/figures.h"

#include <cmath>

namespace slopebook::answers {

std::string loadText(double kilograms) {
    return shortFixed(kilograms, 3);
}

std::string cited(std::string source) {
    constexpr std::string_view mark = "from memory";
    for (auto at = source.find(mark); at != std::string::npos; at = source.find(mark)) {
        const auto end = at + mark.size();
        const auto clause = source.find_last_of(",;(", at);
        if (clause == std::string::npos)
            source.erase(0, end);
        else if (source[clause] == '(' && end < source.size() && source[end] == ')')
            source.erase(clause > 0 ? clause - 1 : clause,
                         end + 1 - (clause > 0 ? clause - 1 : clause));
        else
            source.erase(clause, end - clause);
    }
    return source;
}

int decimalsBeside(double value, std::optional<double> bound, int decimals) {
    if (!bound)
        return decimals;
    const double size = std::abs(value), of = std::abs(*bound);
    const bool alike = fixed(size, decimals) == fixed(of, decimals);
    constexpr double hair = 1e-9;
    return alike && size < of - hair ? decimals + 1 : decimals;
}

std::string pText(double p) {
    constexpr double least = 0.001;
    return p < least ? "p < " + fixed(least, 3) : "p = " + fixed(p, 3);
}

std::string counted(int count, const std::string& noun) {
    std::string many = noun;
    if (noun.ends_with("maximum"))
        many.replace(many.size() - 2, 2, "a");
    else
        many += 's';
    return std::to_string(count) + " " + (count == 1 ? noun : many);
}

} // namespace slopebook::answers

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/words.h"

#include "core/model/exactmass.h"

#include <charconv>
#include <cmath>

namespace slopebook {

Words asIs(std::string text) {
    return {.kind = Words::Kind::AsIs, .text = std::move(text)};
}

Words figure(std::string digits) {
    return {.kind = Words::Kind::Figure, .text = std::move(digits)};
}

Words inWords(Words words) {
    return words;
}
Words inWords(std::string text) {
    return asIs(std::move(text));
}
Words inWords(std::string_view text) {
    return asIs(std::string(text));
}
Words inWords(const char* text) {
    return asIs(text);
}
Words inWords(Date day) {
    return {.kind = Words::Kind::Day, .text = isoDate(day)};
}

Words inWords(Mass mass) {
    return {.kind = Words::Kind::Mass, .text = massText(exactMass(mass), MassUnit::Kilogram)};
}

double kilograms(const Words& mass) {
    double value = 0;
    std::from_chars(mass.text.data(), mass.text.data() + mass.text.size(), value);
    return value;
}

std::string english(const Words& words) {
    return english(words, MassUnit::Kilogram);
}

std::string english(const Words& words, MassUnit unit) {
    if (words.kind == Words::Kind::Mass)
        return massText(exactMass(massFromKilograms(kilograms(words))), unit,
                        unit == MassUnit::Pound ? 1 : 3) +
               " " + std::string(word(unit));
    if (words.kind != Words::Kind::Said)
        return words.text;
    std::string filled;
    for (std::size_t i = 0; i < words.text.size(); ++i) {
        const char mark = i + 1 < words.text.size() ? words.text[i + 1] : '\0';
        const auto place = static_cast<std::size_t>(mark - '1');
        if (words.text[i] != '%' || mark < '1' || mark > '9' || place >= words.parts.size()) {
            filled += words.text[i];
            continue;
        }
        filled += english(words.parts[place], unit);
        ++i;
    }
    return filled;
}

} // namespace slopebook

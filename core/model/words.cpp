// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/words.h"

#include "core/model/exactmass.h"
#include "core/model/figures.h"
#include "core/model/phrases/model.h"

#include <array>
#include <charconv>
#include <cmath>

namespace slopebook {

namespace {

Words joined(Phrase joint, std::vector<Words> parts) {
    if (parts.empty())
        return {};
    return {
        .kind = Words::Kind::List, .text = std::string(joint.english()), .parts = std::move(parts)};
}

std::string massDigits(double kilograms, const MassForm& form, MassUnit unit) {
    if (form.decimals < 0)
        return massText(exactMass(massFromKilograms(kilograms)), unit,
                        unit == MassUnit::Pound ? 1 : 3);
    const double value = unit == MassUnit::Pound ? kilograms * 1000 / gramsPerPound : kilograms;
    if (form.sign)
        return signedFixed(value, form.decimals);
    if (form.padded)
        return fixed(value, form.decimals);
    const double power = std::pow(10.0, form.decimals); // halves go up, as a coach rounds
    return shortFixed(std::round(value * power) / power, form.decimals);
}

std::string massEnglish(const Words& words, MassUnit unit) {
    std::string digits = massDigits(kilograms(words), words.form, unit);
    return words.form.bare ? digits : digits + " " + std::string(word(unit));
}

template <class Part>
std::string fill(std::string_view phrase, std::size_t places, const Part& part) {
    std::string text;
    for (std::size_t i = 0; i < phrase.size(); ++i) {
        const char mark = i + 1 < phrase.size() ? phrase[i + 1] : '\0';
        const auto place = static_cast<std::size_t>(mark - '1');
        if (phrase[i] != '%' || mark < '1' || mark > '9' || place >= places) {
            text += phrase[i];
            continue;
        }
        text += part(place);
        ++i;
    }
    return text;
}

std::string listEnglish(const Words& words, MassUnit unit) {
    std::string text;
    for (std::size_t i = 0; i < words.parts.size(); ++i) {
        const std::string next = english(words.parts[i], unit);
        text = i == 0 ? next
                      : fill(words.text, 2, [&](std::size_t place) { return place ? next : text; });
    }
    return text;
}

std::string sentenceEnglish(std::string text) {
    if (!text.empty() && text.front() >= 'a' && text.front() <= 'z')
        text.front() = static_cast<char>(text.front() - 'a' + 'A');
    if (!text.empty() && text.back() != '.' && text.back() != '?')
        text += '.';
    return text;
}

} // namespace

Words asIs(std::string text) {
    return {.kind = Words::Kind::AsIs, .text = std::move(text)};
}

Words figure(std::string digits) {
    return {.kind = Words::Kind::Figure, .text = std::move(digits)};
}
Words figure(double value, int decimals) {
    return figure(fixed(value, decimals));
}
Words signedFigure(double value, int decimals) {
    return figure(signedFixed(value, decimals));
}

Words massWords(double kilograms, MassForm form) {
    std::array<char, 32> text{};
    const auto end = std::to_chars(text.data(), text.data() + text.size(), kilograms);
    return {.kind = Words::Kind::Mass, .text = {text.data(), end.ptr}, .form = form};
}

Words listed(std::vector<Words> parts) {
    // A name with a comma within ("Single hop, left") would be read as two of a list of commas; a
    // list within a list has its own joint.
    const bool within = std::ranges::any_of(parts, [](const Words& part) {
        return part.kind != Words::Kind::List && english(part).find(", ") != std::string::npos;
    });
    return within ? joined("%1 \u00b7 %2", std::move(parts)) : joined("%1, %2", std::move(parts));
}
Words clauses(std::vector<Words> parts) {
    return joined("%1; %2", std::move(parts));
}

Words asSentence(Words clause) {
    return {.kind = Words::Kind::Sentence, .text = {}, .parts = {std::move(clause)}};
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
    switch (words.kind) {
    case Words::Kind::Mass:
        return massEnglish(words, unit);
    case Words::Kind::List:
        return listEnglish(words, unit);
    case Words::Kind::Sentence:
        return sentenceEnglish(english(words.parts.front(), unit));
    case Words::Kind::Said:
        return fill(words.text, words.parts.size(),
                    [&](std::size_t place) { return english(words.parts[place], unit); });
    case Words::Kind::AsIs:
    case Words::Kind::Figure:
    case Words::Kind::Day:
        break;
    }
    return words.text;
}

} // namespace slopebook

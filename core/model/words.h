// SPDX-License-Identifier: GPL-3.0-or-later
// What core says to a coach: a phrase and what stands in its places, so that commands read it in
// English and a window in its own language.
#pragma once

#include "core/model/date.h"
#include "core/model/mass.h"
#ifdef SLOPEBOOK_HOLD_PHRASES
#include "core/model/phrases.h"
#endif

#include <concepts>
#include <cstddef>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace slopebook {

enum class MassUnit; // core/model/exactmass.h

/// An English text with places %1 to %9. One that phrases.h does not list does not compile: what is
/// not listed would never be translated. (Daily builds do not ask: there a new phrase would compile
/// nearly everything anew.)
class Phrase {
public:
    template <std::size_t size>
    // NOLINTNEXTLINE(google-explicit-constructor): so that say("...") reads as what it says
    consteval Phrase(const char (&english)[size]) : m_english(english, size - 1) {
#ifdef SLOPEBOOK_HOLD_PHRASES
        if (!phrases::listed(m_english))
            throw "a phrase that core/model/phrases.h does not list";
#endif
    }
    constexpr std::string_view english() const {
        return m_english;
    }

private:
    std::string_view m_english;
};

/// A phrase with what stands in its places, or what stands in one.
struct Words {
    enum class Kind {
        Said,   ///< text is a phrase, parts what stands in its places: translated
        AsIs,   ///< a name, a cell, a file: the same in every language
        Figure, ///< a number with a decimal point: with the language's own mark
        Day,    ///< year-month-day: as the language writes days
        Mass    ///< kilograms in digits: a coach's load, with its unit, in the one that he reads
    };
    Kind kind = Kind::AsIs;
    std::string text;
    std::vector<Words> parts{};

    bool empty() const { return text.empty(); }
    friend bool operator==(const Words&, const Words&) = default;
};

/// Text that is nobody's language.
Words asIs(std::string text);
/// A number as it is written in English: "72.5".
Words figure(std::string digits);
Words inWords(Words words);
Words inWords(std::string text);
Words inWords(std::string_view text);
Words inWords(const char* text);
Words inWords(Date day);
Words inWords(Mass mass);
template <std::integral T>
Words inWords(T count) {
    return figure(std::to_string(count));
}

/// The phrase with its parts in their order: names and other text as they are, whole numbers, days
/// and masses as a language writes them, words in words.
template <class... Parts>
Words say(Phrase phrase, Parts&&... parts) {
    return {.kind = Words::Kind::Said,
            .text = std::string(phrase.english()),
            .parts = {inWords(std::forward<Parts>(parts))...}};
}

/// The words in English: the phrases with their parts filled in, masses in kilograms.
std::string english(const Words& words);
/// The same with masses in that unit: whole grams in kg, a tenth in lb.
std::string english(const Words& words, MassUnit unit);
/// Of words that are a mass: its kilograms.
double kilograms(const Words& mass);

} // namespace slopebook

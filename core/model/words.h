// SPDX-License-Identifier: GPL-3.0-or-later
// What core says to a coach: a phrase and what stands in its places, so that commands read it in
// English and a window in its own language.
#pragma once

#include "core/model/date.h"
#include "core/model/mass.h"

#include <algorithm>
#include <concepts>
#include <cstddef>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace slopebook {

enum class MassUnit; // core/model/exactmass.h

/// An English text with places %1 to %9 that stands in a room's list (core/model/phrases). One that
/// does not stand there does not compile: what is not listed would never be translated.
template <const auto& list>
class Listed {
public:
    template <std::size_t size>
    // NOLINTNEXTLINE(google-explicit-constructor): so that say("...") reads as what it says
    consteval Listed(const char (&english)[size]) : m_english(english, size - 1) {
        if (std::ranges::find(list, m_english) == std::ranges::end(list))
            throw "a phrase that the room's list in core/model/phrases does not hold";
    }
    constexpr std::string_view english() const { return m_english; }

private:
    std::string_view m_english;
};

/// How a mass is written. As it stands a load: whole grams in kg, a tenth in lb, no needless zeros.
struct MassForm {
    int decimals = -1;   ///< rounded to so many in the unit it is read in; -1: as a load
    bool padded = false; ///< all of them, as an estimate has them: "72.0"
    bool sign = false;   ///< its sign always, as a change has it: "+2.3"
    bool bare = false;   ///< its unit stands with a later one of the sentence: "40 to 65 kg"
    friend bool operator==(const MassForm&, const MassForm&) = default;
};
constexpr MassForm bareLoad{.bare = true};
constexpr MassForm toTenths{.decimals = 1};
constexpr MassForm bareTenths{.decimals = 1, .bare = true};
constexpr MassForm asEstimate{.decimals = 1, .padded = true};
constexpr MassForm bareEstimate{.decimals = 1, .padded = true, .bare = true};
constexpr MassForm asChange{.decimals = 1, .padded = true, .sign = true};
constexpr MassForm bareChange{.decimals = 1, .padded = true, .sign = true, .bare = true};

/// A phrase with what stands in its places, or what stands in one.
struct Words {
    enum class Kind {
        Said,    ///< text is a phrase, parts what stands in its places: translated
        AsIs,    ///< a name, a cell, a file: the same in every language
        Figure,  ///< a number with a decimal point, perhaps signed: with the language's own marks
        Day,     ///< year-month-day: as the language writes days
        Mass,    ///< kilograms in digits: in the unit that the coach reads, as form has it
        List,    ///< parts, each joined to the next by text, a phrase of two places
        Sentence ///< one part, from its capital to its stop
    };
    Kind kind = Kind::AsIs;
    std::string text;
    std::vector<Words> parts{};
    MassForm form{};

    bool empty() const { return text.empty() && parts.empty(); }
    friend bool operator==(const Words&, const Words&) = default;
};

/// Text that is nobody's language.
Words asIs(std::string text);
/// A number as it is written in English: "72.5", "-0.8".
Words figure(std::string digits);
/// With so many decimals; signed: "+2.3", "-0.8", "0.0". No number: "-".
Words figure(double value, int decimals);
Words signedFigure(double value, int decimals);
/// Kilograms as a mass of that form.
Words massWords(double kilograms, MassForm form = {});
/// "a, b, c", where one of them has a comma itself "a · b, c", and "a; b; c", as the language
/// joins them; nothing of nothing.
Words listed(std::vector<Words> parts);
Words clauses(std::vector<Words> parts);
/// A clause as a sentence of its own: with a capital and a stop, where it has none.
Words asSentence(Words clause);

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

/// An English text with its parts in their order: names and other text as they are, whole numbers,
/// days and masses as a language writes them, words in words. A room says it by its own say()
/// (core/model/phrases), which takes no text that is not listed.
template <class... Parts>
Words filled(std::string_view english, Parts&&... parts) {
    return {.kind = Words::Kind::Said,
            .text = std::string(english),
            .parts = {inWords(std::forward<Parts>(parts))...}};
}

/// The words in English: the phrases with their parts filled in, masses in kilograms.
std::string english(const Words& words);
/// The same with masses in that unit.
std::string english(const Words& words, MassUnit unit);
/// Of words that are a mass: its kilograms.
double kilograms(const Words& mass);

} // namespace slopebook

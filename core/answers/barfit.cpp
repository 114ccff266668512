// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/barfit.h"

#include "core/model/names.h"

#include <algorithm>
#include <array>
#include <set>

namespace slopebook::answers {

namespace {

using Fit = BarFit::Fit;
using WordsOf = std::set<std::string>;

/// Words that tell no bar from another, English and German.
constexpr std::array plainWords{
    "bar",    "bars",         "barbell",    "long",    "short", "old",      "new",    "the",
    "for",    "and",          "men",        "women",   "mens",  "womens",   "s",      "kg",
    "lb",     "stange",       "langhantel", "hantel",  "kurz",  "lang",     "alt",    "neu",
    "herren", "damen",        "standard",   "light",   "heavy", "training", "leicht", "schwer",
    "weight", "hantelstange", "olympic",    "straight"};

/// Common practice of the trade.
struct Use {
    std::string_view bar;
    std::array<std::string_view, 7> lifts; ///< beginnings or ends of words of a lift's name
};
constexpr std::array uses{
    Use{"hex", {"deadlift", "shrug", "carry", "walk", "kreuzheben", "shrugs", "carries"}},
    Use{"trap", {"deadlift", "shrug", "carry", "walk", "kreuzheben", "shrugs", "carries"}},
    Use{"curl", {"curl", "curls", "extension", "extensions", "trizeps", "bizeps", "triceps"}},
    Use{"ez", {"curl", "curls", "extension", "extensions", "trizeps", "bizeps", "triceps"}},
    Use{"sz", {"curl", "curls", "extension", "extensions", "trizeps", "bizeps", "triceps"}},
    Use{"safety", {"squat", "squats", "lunge", "lunges", "morning", "mornings", "kniebeuge"}},
};

bool letterOrDigit(char c) {
    const auto byte = static_cast<unsigned char>(c);
    return byte >= 0x80 || (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
}

WordsOf wordsOf(std::string_view name) {
    WordsOf words;
    std::string word;
    for (const char c : foldCase(name) + ' ')
        if (letterOrDigit(c)) {
            word += c;
        } else if (!word.empty()) {
            words.insert(word);
            word.clear();
        }
    return words;
}

WordsOf ownWords(const Bar& bar) {
    WordsOf words = wordsOf(bar.name);
    std::erase_if(words, [](const std::string& word) {
        return std::ranges::find(plainWords, word) != plainWords.end() ||
               std::ranges::all_of(word, [](char c) { return c >= '0' && c <= '9'; });
    });
    return words;
}

bool share(const WordsOf& bar, const WordsOf& lift) {
    return std::ranges::any_of(bar, [&](const std::string& word) { return lift.contains(word); });
}

/// By the trade's use; plain where it has none.
Fit byUse(const WordsOf& bar, const WordsOf& lift) {
    for (const Use& use : uses)
        if (bar.contains(std::string(use.bar)))
            return std::ranges::any_of(
                       lift,
                       [&](const std::string& word) {
                           return std::ranges::any_of(use.lifts, [&](std::string_view known) {
                               return word.starts_with(known) || word.ends_with(known);
                           });
                       })
                       ? Fit::Plain
                       : Fit::OfOthers;
    return Fit::Plain;
}

BarFit fitOf(std::size_t at, const Bar& bar, const WordsOf& lift,
             std::span<const std::string> liftsOfLog) {
    BarFit fit{.bar = at};
    const WordsOf own = ownWords(bar);
    if (share(own, lift)) {
        fit.fit = Fit::Named;
        return fit;
    }
    for (const std::string& other : liftsOfLog)
        if (share(own, wordsOf(other))) {
            fit.fit = Fit::OfOthers;
            fit.lift = other;
            return fit;
        }
    fit.fit = byUse(own, lift);
    return fit;
}

} // namespace

std::vector<BarFit> barsFor(const Equipment& equipment, std::string_view lift,
                            std::span<const std::string> liftsOfLog) {
    const WordsOf words = wordsOf(lift);
    std::vector<BarFit> fits;
    for (std::size_t i = 0; i < equipment.bars.size(); ++i)
        fits.push_back(fitOf(i, equipment.bars[i], words, liftsOfLog));
    std::ranges::stable_sort(fits, {}, &BarFit::fit);
    return fits;
}

Equipment onFittingBars(Equipment equipment, std::string_view lift,
                        std::span<const std::string> liftsOfLog, std::vector<BarFit>* leftOut) {
    const auto fits = barsFor(equipment, lift, liftsOfLog);
    if (fits.empty() || fits.front().fit == Fit::OfOthers)
        return equipment;
    std::vector<Bar> kept;
    for (const BarFit& fit : fits)
        if (fit.fit == fits.front().fit)
            kept.push_back(equipment.bars[fit.bar]);
        else if (leftOut)
            leftOut->push_back(fit);
    equipment.bars = std::move(kept);
    return equipment;
}

} // namespace slopebook::answers

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/story.h"

#include "core/answers/figures.h"
#include "core/model/names.h"
#include "core/model/phrases/answers.h"

#include <algorithm>
#include <cmath>

namespace slopebook::answers {

namespace {

constexpr int daysAWeek = 7;
constexpr int fewestDays = 2 * daysAWeek; // of fewer no week's number can be made

/// Its days up to the last that can be counted; 0 where that lies before it.
long countedDays(const MatrixBlock& block) {
    const Date end =
        block.countedTo ? std::min(*block.countedTo, block.block.last) : block.block.last;
    return std::max(0L, daysBetween(block.block.first, end) + 1);
}

/// Whether so many may be the training itself: half of what was planned at least, where nothing was
/// one a week. A log of test days holds fewer, and their number a week is nobody's training.
bool mayBeTraining(const MatrixBlock& block, double aWeek) {
    return aWeek >= (block.block.aWeek ? block.block.aWeek->fewest / 2 : 1);
}

Words countedWords(const MatrixBlock& block) {
    const auto aWeek = countedAWeek(block);
    if (!aWeek)
        return block.sessions == 1
                   ? say("in this log 1 session with sets or tests")
                   : say("in this log %1 sessions with sets or tests", block.sessions);
    const Words weeks = figure(shortFixed(static_cast<double>(countedDays(block)) / daysAWeek, 1));
    if (!mayBeTraining(block, *aWeek))
        return block.sessions == 1
                   ? say("in this log 1 session with sets or tests, in %1 weeks", weeks)
                   : say("in this log %1 sessions with sets or tests, in %2 weeks", block.sessions,
                         weeks);
    return block.sessions == 1
               ? say("in this log 1 session with sets or tests, in %1 weeks: %2 a week", weeks,
                     figure(*aWeek, 1))
               : say("in this log %1 sessions with sets or tests, in %2 weeks: %3 a week",
                     block.sessions, weeks, figure(*aWeek, 1));
}

void addIf(std::vector<Words>& parts, const std::string& text) {
    if (!text.empty())
        parts.push_back(asIs(text));
}

std::vector<Words> toldParts(const Block& block, Words counted) {
    std::vector<Words> parts;
    addIf(parts, block.trained);
    if (block.aWeek)
        parts.push_back(say("planned: %1", sayAWeek(*block.aWeek)));
    if (block.ceiling)
        parts.push_back(say("up to %1", *block.ceiling));
    addIf(parts, block.note);
    if (!counted.empty()) // no second figure of the same thing: not beside what was planned
        parts.push_back(std::move(counted));
    return parts;
}

/// What was trained in one spelling; empty where nothing is told.
std::string workOf(const Block& block) {
    return block.trained.empty() ? std::string() : nameKey(block.trained);
}

/// A later block with the work of an earlier one, other work between them: of each pair the first.
struct Return {
    std::string to, later;
};
std::optional<Return> returned(const SeasonMatrix& matrix) {
    const auto& blocks = matrix.blocks;
    for (std::size_t later = 2; later < blocks.size(); ++later)
        for (std::size_t first = 0; first + 1 < later; ++first) {
            const std::string work = workOf(blocks[first].block);
            const auto other = [&](std::size_t at) {
                const std::string key = workOf(blocks[at].block);
                return !key.empty() && key != work;
            };
            if (work.empty() || workOf(blocks[later].block) != work)
                continue;
            for (std::size_t between = first + 1; between < later; ++between)
                if (other(between))
                    return Return{blocks[first].block.name, blocks[later].block.name};
        }
    return std::nullopt;
}

} // namespace

Words storyWords(const Block& block) {
    return clauses(toldParts(block, {}));
}

std::optional<double> countedAWeek(const MatrixBlock& block) {
    const long days = countedDays(block);
    if (days < fewestDays)
        return std::nullopt;
    return static_cast<double>(block.sessions) * daysAWeek / static_cast<double>(days);
}

Words storyWords(const MatrixBlock& block) {
    return say("%1, %2 to %3: %4", block.block.name, block.block.first, block.block.last,
               clauses(toldParts(block.block, countedWords(block))));
}

std::vector<Words> designWords(const SeasonMatrix& matrix) {
    std::vector<Words> words{
        say("A season can show that a measure changed from block to block in this athlete, not "
            "what changed it: nobody trained otherwise beside them, so the work, the time of the "
            "season, growth or practice in the tests may be behind it."),
        say("The blocks came in one order: what an earlier one did may show in a later one."),
        say("After a day of unusually bad tests the next ones tend to be better whatever is done, "
            "after unusually good ones worse: a block that was begun because of such a day is not "
            "judged by it.")};
    if (std::ranges::any_of(matrix.blocks, [](const auto& b) { return b.block.trained.empty(); }))
        words.push_back(say("What was trained is not written down for every block: it stands in "
                            "the block's own form, and no reading says more than that."));
    if (const auto back = returned(matrix))
        words.push_back(say("%1 went back to the work of %2: what changed in between and went back "
                            "with it speaks for the work; what did not may be time, growth or "
                            "practice.",
                            back->later, back->to));
    words.push_back(
        say("More would be shown by going back to the first block's work and seeing the change go "
            "back too, or by a second athlete with the blocks in another order or begun on "
            "another day (single-case designs: Kazdin 2011)."));
    return words;
}

} // namespace slopebook::answers

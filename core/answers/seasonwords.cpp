// SPDX-License-Identifier: GPL-3.0-or-later
// What is said of a season's matrix.
#include "core/answers/figures.h"
#include "core/answers/method.h"
#include "core/answers/story.h"
#include "core/answers/toldreadings.h"
#include "core/model/periodwords.h"
#include "core/model/phrases/answers.h"
#include "core/stats/nothing.h"

#include <algorithm>
#include <cmath>

namespace slopebook::answers {

namespace {

constexpr std::size_t mostNamed = 3;

/// "+0.05 m/s", "+2.3 kg", "-0.5".
Words amount(const Measure& measure, double value) {
    if (measure.isMass())
        return massWords(value, asChange);
    const Words by = measure.kind == Measure::Kind::Speed ? saidSpeed(value)
                                                          : signedFigure(value, measure.decimals);
    return measure.unit.empty() ? by : say("%1 %2", by, measure.unit);
}

/// From what size on it is clear.
Words clearAmount(const Measure& measure, double value) {
    if (measure.isMass())
        return massWords(value, asEstimate);
    const Words by = clearFrom(value, measure.saidDecimals());
    return measure.unit.empty() ? by : say("%1 %2", by, measure.unit);
}

Words withFigures(const Words& words, const Measure& measure, const ReadChange& read) {
    if (read.reading == Reading::Held)
        return read.under.empty() ? words : say("%1 (tested %2)", words, read.under);
    if (read.reading != Reading::Unclear) {
        const Words change = amount(measure, read.besideInterval());
        return read.under.empty() ? say("%1 (%2)", words, change)
                                  : say("%1 (%2; tested %3)", words, change, read.under);
    }
    const Words by = amount(measure, read.besideInterval());
    const Words shows = clearAmount(measure, read.clearSize());
    if (const int alone = read.clearAlone(); alone != 0)
        return alone > 0 ? say("%1 (better alone: %2; clear from %3)", words, by, shows)
                         : say("%1 (worse alone: %2; clear from %3)", words, by, shows);
    return read.leans() > 0   ? say("%1 (leaning to better: %2; clear from %3)", words, by, shows)
           : read.leans() < 0 ? say("%1 (leaning to worse: %2; clear from %3)", words, by, shows)
                              : say("%1 (%2; clear from %3)", words, by, shows);
}

struct Told {
    Reading reading;
    Phrase few, many;
};
constexpr Told readings[]{
    {Reading::Better, "better: %1", "better: %1 and %2 more"},
    {Reading::Worse, "worse: %1", "worse: %1 and %2 more"},
    {Reading::Held, "held: %1", "held: %1 and %2 more"},
    {Reading::Unclear, "unclear: %1", "unclear: %1 and %2 more"},
};

/// Of what is unclear the most telling one is enough.
Words toldAs(const Told& told, std::vector<Words> names) {
    const std::size_t most = told.reading == Reading::Unclear ? mostNamed - 1 : mostNamed;
    if (names.size() <= most)
        return say(told.few, listed(std::move(names)));
    const std::size_t more = names.size() - most + 1;
    names.resize(most - 1);
    return say(told.many, listed(std::move(names)), more);
}

} // namespace

NamedReading namedReading(const Words& name, const Measure& measure, const CellChange& change) {
    NamedReading named = namedReading(name, measure, change.read);
    if (!change.stands)
        return named;
    const Words by = amount(measure, change.read.besideInterval());
    const Words& under = change.read.under;
    named.name = under.empty() ? say("%1 (%2, stands among all)", name, by)
                               : say("%1 (%2, stands among all; tested %3)", name, by, under);
    return named;
}

NamedReading namedReading(const Words& name, const Measure& measure, const ReadChange& read) {
    return {
        .reading = read.reading, .name = withFigures(name, measure, read), .tells = read.tells()};
}

std::vector<Words> toldReadings(const std::vector<NamedReading>& all) {
    std::vector<Words> told;
    for (const Told& each : readings) {
        std::vector<Words> names;
        for (const int tells : {2, 1, 0}) // most telling first
            for (const NamedReading& named : all)
                if (named.reading == each.reading && named.tells == tells)
                    names.push_back(named.name);
        if (!names.empty())
            told.push_back(toldAs(each, std::move(names)));
    }
    return told;
}

namespace {

/// The last block that is read against the chosen one.
std::optional<std::size_t> lastRead(const SeasonMatrix& matrix) {
    for (std::size_t j = matrix.blocks.size(); j-- > 0;)
        for (const MatrixRow& row : matrix.rows)
            if (row.cells[j].against)
                return j;
    return std::nullopt;
}

Words seasonSentence(const SeasonMatrix& matrix) {
    const auto last = lastRead(matrix);
    if (!last)
        return say("No measure was made in two of these blocks: nothing can be compared.");
    std::vector<NamedReading> named;
    for (const bool standing : {true, false}) // what stands among all is told first
        for (const MatrixRow& row : matrix.rows)
            if (const auto& change = row.cells[*last].against; change && change->stands == standing)
                named.push_back(namedReading(measureWords(row.measure), row.measure, *change));
    std::vector<Words> clausesOf = toldReadings(named);
    int apart = 0;
    for (const MatrixRow& row : matrix.rows)
        if (const auto& change = row.cells[*last].against)
            apart += change->comparable() ? 0 : 1;
    if (apart > 0)
        clausesOf.push_back(say("not comparable: %1", apart));
    if (clausesOf.empty())
        return asSentence(say("from %1 to %2 no change can be read",
                              periodWords(matrix.blocks[matrix.chosen].block.name),
                              periodWords(matrix.blocks[*last].block.name)));
    return asSentence(say("from %1 to %2 (%3), %4",
                          periodWords(matrix.blocks[matrix.chosen].block.name),
                          periodWords(matrix.blocks[*last].block.name),
                          heldAgainst(matrix.allAtOnce()), clauses(std::move(clausesOf))));
}

/// Marks the readings that stand where all of them are one family.
void markStanding(SeasonMatrix& matrix) {
    std::vector<double> p;
    std::vector<CellChange*> read;
    for (MatrixRow& row : matrix.rows)
        for (MatrixCell& cell : row.cells)
            if (cell.against && cell.against->read.reading != Reading::NoFigure) {
                p.push_back(cell.against->p);
                read.push_back(&*cell.against);
            }
    const auto adjusted = stats::holm(p);
    for (std::size_t i = 0; i < p.size(); ++i)
        read[i]->stands =
            adjusted[i] < 1 - matrix.level &&
            (read[i]->read.reading == Reading::Better || read[i]->read.reading == Reading::Worse);
}

/// "Taken all as one question (Holm's rule), these stand: Jump squat at 40 kg in Spring."
Words standingWords(const SeasonMatrix& matrix, bool severalBlocks) {
    std::vector<Words> names;
    for (const MatrixRow& row : matrix.rows)
        for (std::size_t block = 0; block < row.cells.size(); ++block)
            if (const auto& change = row.cells[block].against; change && change->stands) {
                const Words name = measureWords(row.measure);
                names.push_back(severalBlocks ? say("%1 in %2", name,
                                                    periodWords(matrix.blocks[block].block.name))
                                              : name);
            }
    if (names.empty())
        return say("Taken all as one question (Holm's rule), none of them stands.");
    if (names.size() <= mostNamed)
        return say("Taken all as one question (Holm's rule), these stand: %1.",
                   clauses(std::move(names)));
    const std::size_t more = names.size() - mostNamed + 1;
    names.resize(mostNamed - 1);
    return say("Taken all as one question (Holm's rule), these stand: %1 and %2 more.",
               clauses(std::move(names)), more);
}

Words chanceWords(const SeasonMatrix& matrix) {
    const int judged = matrix.judged();
    if (judged == 0)
        return {};
    const auto foundIn = [&](std::optional<std::size_t> block) {
        return matrix.read(Reading::Better, block) + matrix.read(Reading::Worse, block);
    };
    const int found = foundIn({});
    // By block, the newest first: a headline is of that one alone, and these are of all.
    std::vector<Words> each;
    for (std::size_t block = matrix.blocks.size(); block-- > 0;)
        if (matrix.judged(block) > 0) {
            const Words name = periodWords(matrix.blocks[block].block.name);
            const bool back = block < matrix.chosen; // what changed until then, read from its end
            if (foundIn(block) > 0)
                each.push_back(say(back ? Phrase("%1 in %2 before it") : Phrase("%1 in %2"),
                                   foundIn(block), name));
            else
                each.push_back(
                    say(back ? Phrase("none in %1 before it") : Phrase("none in %1"), name));
        }
    if (each.size() > 1)
        return say("%1 of %2 readings against %3 are better or worse (%4); chance alone gives %5. "
                   "%6",
                   found, judged, periodWords(matrix.blocks[matrix.chosen].block.name),
                   listed(std::move(each)), figure(matrix.byChance(), 1),
                   standingWords(matrix, true));
    return say("%1 of %2 readings are better or worse; chance alone gives %3. %4", found, judged,
               figure(matrix.byChance(), 1), standingWords(matrix, false));
}

/// Whether a change differs, as it is shown, from the difference of the figures that it stands by.
bool otherThanFigures(const MatrixRow& row, const MatrixCell& cell,
                      const std::optional<CellChange>& change) {
    if (!change || !cell.value || change->read.reading == Reading::NoFigure ||
        !row.cells[change->from].value)
        return false;
    const double last = std::pow(10, -row.measure.decimals);
    return std::abs(*cell.value - *row.cells[change->from].value - change->read.change) > 2 * last;
}

/// Each condition that differs by itself, once: underWords() joins them.
void addConditions(std::vector<Words>& all, const Words& under) {
    for (const Words& part : under.parts)
        addConditions(all, part);
    if (under.parts.empty() && !under.empty() && std::ranges::find(all, under) == all.end())
        all.push_back(under);
}

} // namespace

Words conditionsOf(const SeasonMatrix& matrix, std::size_t block) {
    std::vector<Words> different;
    for (const MatrixRow& row : matrix.rows)
        if (const auto& change = row.cells[block].against)
            addConditions(different, change->read.under);
    if (different.empty())
        return {};
    const Words chosen = periodWords(matrix.blocks[matrix.chosen].block.name);
    const Words name = periodWords(matrix.blocks[block].block.name);
    return different.size() == 1 // "than" follows one condition, and no list of them
               ? say("%1 was tested %2 than %3, all or some of it: part of a change may be its "
                     "doing",
                     name, different.front(), chosen)
               : say("all or some of %1 was tested under other conditions than %2 (%3): part of a "
                     "change may be their doing",
                     name, chosen, listed(std::move(different)));
}

namespace {

std::vector<Note> seasonNotes(const SeasonMatrix& matrix) {
    std::vector<Note> notes;
    if (matrix.outside == 1)
        notes.push_back({Note::Kind::OfSeveral, say("1 session lies in none of these blocks")});
    else if (matrix.outside > 1)
        notes.push_back({Note::Kind::OfSeveral,
                         say("%1 sessions lie in none of these blocks", matrix.outside)});
    if (matrix.allAtOnce())
        notes.push_back(
            {Note::Kind::ByChance,
             say("a measure's readings against the chosen block hold together at %1 %, those from "
                 "block to block likewise; not the two at once, and not over measures",
                 figure(loadText(100 * matrix.level)))});
    for (std::size_t block = 0; block < matrix.blocks.size(); ++block)
        if (Words words = conditionsOf(matrix, block); !words.empty())
            notes.push_back({Note::Kind::ContextChanged, std::move(words)});
    const bool several = std::ranges::any_of(matrix.rows, [](const MatrixRow& row) {
        return std::ranges::any_of(row.cells, [](const auto& cell) { return cell.sessions > 1; });
    });
    if (several)
        notes.push_back({Note::Kind::OfSeveral, daysAlike()});
    if (std::ranges::any_of(matrix.rows, [](const MatrixRow& row) {
            return std::ranges::any_of(row.cells, [&](const MatrixCell& cell) {
                return otherThanFigures(row, cell, cell.against) ||
                       otherThanFigures(row, cell, cell.before);
            });
        }))
        notes.push_back({Note::Kind::OfSeveral,
                         say("a change is of as many reps on both sides, and of what both blocks "
                             "hold: it need not be the difference of the two figures")});
    if (matrix.level != 0.95)
        notes.push_back({Note::Kind::LevelNot95, say("intervals are at %1 %, not 95 %",
                                                     figure(loadText(100 * matrix.level)))});
    return notes;
}

} // namespace

void tellSeason(SeasonMatrix& matrix) {
    markStanding(matrix);
    matrix.sentence = seasonSentence(matrix);
    matrix.chance = chanceWords(matrix);
    for (Note& note : seasonNotes(matrix))
        matrix.notes.push_back(std::move(note));
    for (const MatrixBlock& block : matrix.blocks)
        matrix.story.push_back(storyWords(block));
    matrix.design = designWords(matrix);
}

} // namespace slopebook::answers

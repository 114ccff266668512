// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/squaddue.h"

#include "core/model/few.h"
#include "core/model/phrases/answers.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

namespace slopebook::answers {

namespace {

constexpr int daysOfAWeek = 7;
constexpr int awayAfter = 26 * daysOfAWeek; // half a year: gone, or away for long
constexpr int leastOthers = 2;              // under so many nobody can be behind the squad

class DueFinder {
public:
    DueFinder(std::span<const Stored<AthleteId, Athlete>> athletes,
              std::span<const TestedMeasure> measures, const DueQuestion& question)
        : m_athletes(athletes), m_measures(measures), m_question(question) {
        for (const TestedMeasure& measure : measures)
            for (const auto& [athlete, day] : measure.last) {
                const auto [seen, fresh] = m_seen.try_emplace(athlete, day);
                if (!fresh)
                    seen->second = std::max(seen->second, day);
            }
        m_present = static_cast<int>(std::ranges::count_if(athletes, [&](const auto& athlete) {
            return m_seen.contains(athlete.id) && !away(athlete.id);
        }));
    }

    SquadDue found() {
        SquadDue due{.question = m_question};
        for (const auto& athlete : m_athletes) {
            if (!m_seen.contains(athlete.id))
                continue;
            if (away(athlete.id)) {
                due.away.push_back(athlete.value.name);
                continue;
            }
            for (const TestedMeasure& measure : m_measures)
                if (auto row = rowOf(athlete, measure))
                    due.rows.push_back(std::move(*row));
        }
        std::ranges::stable_sort(due.rows, {}, [](const DueRow& row) {
            return std::tuple{row.last.has_value(), row.last.value_or(Date{}), row.name,
                              row.measure};
        });
        return due;
    }

private:
    long since(Date day) const { return std::max(0L, daysBetween(day, m_question.today)); }
    bool away(AthleteId athlete) const { return since(m_seen.at(athlete)) > awayAfter; }
    /// Whether a day is as late as a test may be that is not due.
    bool fresh(Date day) const {
        return m_question.running ? day >= m_question.running->first
                                  : since(day) <= m_question.weeks * daysOfAWeek;
    }

    std::optional<DueRow> rowOf(const Stored<AthleteId, Athlete>& athlete,
                                const TestedMeasure& measure) const {
        DueRow row{.athlete = athlete.id,
                   .name = athlete.value.name,
                   .lift = measure.lift,
                   .test = measure.test,
                   .measure = measure.name};
        for (const auto& [who, day] : measure.last)
            if (who == athlete.id)
                row.last = day;
        row.others = others(athlete.id, measure, row.last.has_value());
        for (const auto& [who, day] : measure.last)
            if (who != athlete.id && !away(who) &&
                (row.last ? daysBetween(*row.last, day) > daysOfAWeek : fresh(day)))
                ++row.othersSince;
        if (row.others < leastOthers)
            row.othersSince = 0;
        if (!row.last)
            return row.behind() ? std::optional(row) : std::nullopt;
        row.days = static_cast<int>(since(*row.last));
        row.longAgo = row.days > m_question.weeks * daysOfAWeek;
        row.notInBlock = m_question.running && *row.last < m_question.running->first;
        return row.longAgo || row.notInBlock || row.behind() ? std::optional(row) : std::nullopt;
    }

    /// The others who have the measure; of somebody who has not, all others.
    int others(AthleteId athlete, const TestedMeasure& measure, bool has) const {
        if (!has)
            return m_present - 1;
        return static_cast<int>(std::ranges::count_if(measure.last, [&](const auto& last) {
            return last.athlete != athlete && !away(last.athlete);
        }));
    }

    std::span<const Stored<AthleteId, Athlete>> m_athletes;
    std::span<const TestedMeasure> m_measures;
    const DueQuestion& m_question;
    std::map<AthleteId, Date> m_seen; ///< the last day of anything
    int m_present = 0;                ///< of them, not away
};

} // namespace

int SquadDue::athletesDue() const {
    std::set<AthleteId> all;
    for (const DueRow& row : rows)
        all.insert(row.athlete);
    return static_cast<int>(all.size());
}

SquadDue squadDue(std::span<const Stored<AthleteId, Athlete>> athletes,
                  std::span<const TestedMeasure> measures, const DueQuestion& question) {
    return DueFinder(athletes, measures, question).found();
}

Words dueWhy(const DueRow& row, const DueQuestion& question) {
    if (!row.last)
        return say("never; %1 of %2 others were lately", row.othersSince, row.others);
    std::vector<Words> all;
    if (row.notInBlock)
        all.push_back(say("not in %1 yet", question.running->name));
    if (row.behind())
        all.push_back(say("%1 of %2 others since", row.othersSince, row.others));
    if (row.longAgo)
        all.push_back(say("over %1 weeks ago", question.weeks));
    return clauses(std::move(all));
}

Words dueWords(const SquadDue& due) {
    const auto rows = static_cast<int>(due.rows.size());
    if (rows == 0)
        return say("Nobody is due for anything.");
    const int athletes = due.athletesDue();
    const Words what = rows == 1 ? say("1 test") : say("%1 tests", rows);
    return athletes == 1 ? say("1 athlete is due for %1.", what)
                         : say("%1 athletes are due for %2.", athletes, what);
}

Words awayWords(const SquadDue& due) {
    if (due.away.empty())
        return {};
    return say("Not seen for half a year, and not listed: %1.", few(due.away));
}

Words dueMethod(const DueQuestion& question) {
    return say("Due: not tested since the running block began, or not for over %1 weeks, or over a "
               "week longer ago than most of the others; or never, where most of the others were "
               "lately.",
               question.weeks);
}

} // namespace slopebook::answers

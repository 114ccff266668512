// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/turns.h"

#include "core/answers/ladder.h"

#include <algorithm>
#include <cmath>

namespace slopebook::answers {

namespace {

/// Rising, each once.
std::vector<Mass> risingLoads(std::vector<Mass> loads) {
    std::ranges::sort(loads);
    loads.erase(std::unique(loads.begin(), loads.end()), loads.end());
    return loads;
}

/// Halfway between two loads, down to a step that plates make; nothing where none lies between.
std::optional<Mass> halfway(Mass low, Mass high, MassUnit unit) {
    const std::int64_t middle = low.grams + (high.grams - low.grams) / 2;
    Mass load;
    if (unit == MassUnit::Pound) {
        constexpr double step = 5; // lb; loads are whole grams
        load = massFromPounds(step * std::floor(pounds(Mass{middle}) / step + 1e-3));
    } else {
        constexpr std::int64_t step = 2500; // g
        load = Mass{middle / step * step};
    }
    if (load > low && load < high)
        return load;
    return std::nullopt;
}

/// How an athlete stands today.
struct Standing {
    std::optional<Mass> heaviest; ///< lifted
    std::optional<Mass> failed;   ///< the lightest above it that was not
    int failures = 0;             ///< above it
    bool triedSince = false;      ///< a load was lifted after the first of them
};

Standing standingOf(const AtLift& athlete) {
    Standing standing;
    for (const Tried& tried : athlete.today)
        if (tried.lifted)
            standing.heaviest = std::max(standing.heaviest.value_or(tried.load), tried.load);
    for (const Tried& tried : athlete.today)
        if (!tried.lifted && (!standing.heaviest || tried.load > *standing.heaviest)) {
            standing.failed = std::min(standing.failed.value_or(tried.load), tried.load);
            ++standing.failures;
        } else if (standing.failed && tried.lifted) {
            standing.triedSince = true;
        }
    return standing;
}

class LiftReader {
public:
    LiftReader(const Station& station, const AtLift& athlete)
        : m_station(station), m_athlete(athlete),
          m_ladder(risingLoads(station.ladder.empty() ? athlete.lastTime : station.ladder)),
          m_standing(standingOf(athlete)) {
        m_due.done = static_cast<int>(athlete.today.size());
    }

    LiftDue read() {
        if (m_athlete.out)
            return end(NoLoad::Out);
        const bool counted = m_station.sets > 0;
        if (counted && m_due.done >= m_station.sets)
            return end(NoLoad::Done);
        m_due.due.reset();
        if (counted)
            m_due.due = m_station.sets - m_due.done;
        if (m_standing.failed)
            return afterFailure();
        if (m_ladder.empty())
            return withoutLadder();
        return onLadder();
    }

private:
    LiftDue end(NoLoad why) {
        m_due.due = 0;
        m_due.next.reset();
        m_due.why = why;
        return m_due;
    }

    bool underCeiling(Mass load) const { return !m_athlete.ceiling || load <= *m_athlete.ceiling; }
    bool possible(Mass load) const {
        return std::ranges::find(m_athlete.notPossible, load) == m_athlete.notPossible.end();
    }
    /// The ladder's loads above the heaviest lifted that are at hand, under that limit.
    std::vector<Mass> stepsLeft(std::optional<Mass> under) const {
        std::vector<Mass> left;
        for (const Mass load : m_ladder)
            if ((!m_standing.heaviest || load > *m_standing.heaviest) &&
                (!under || load < *under) && underCeiling(load) && possible(load))
                left.push_back(load);
        return left;
    }

    LiftDue offer(Mass load) {
        const auto next = notAbove(load, m_athlete.estimate, m_athlete.lastMaxima);
        m_due.next = next;
        // The coach's own ladder is planned: it is said, and not taken away.
        m_due.why = next ? NoLoad::None : NoLoad::AboveEstimate;
        return m_due;
    }

    /// One more try under a load that was not lifted.
    LiftDue afterFailure() {
        constexpr int most = 2; // loads not lifted: then it is enough
        if (m_standing.failures >= most || !m_standing.heaviest)
            return end(NoLoad::NotLifted);
        const auto left = stepsLeft(m_standing.failed);
        if (left.empty() && m_standing.triedSince)
            return end(NoLoad::NotLifted);
        const auto next = left.empty()
                              ? halfway(*m_standing.heaviest, *m_standing.failed, m_athlete.unit)
                              : std::optional(left.front());
        if (!next || !underCeiling(*next) || !possible(*next))
            return end(NoLoad::NotLifted);
        m_due.retry = true;
        if (!m_due.due)
            m_due.due = std::max(1, static_cast<int>(left.size()));
        return offer(*next);
    }

    LiftDue withoutLadder() {
        std::vector<Mass> today;
        for (const Tried& tried : m_athlete.today)
            today.push_back(tried.load);
        const auto next = nextLoad(today, {});
        if (!next) {
            m_due.why = NoLoad::NoLadder;
            return m_due;
        }
        return underCeiling(*next) ? offer(*next) : end(NoLoad::AboveCeiling);
    }

    LiftDue onLadder() {
        const auto left = stepsLeft({});
        if (!left.empty()) {
            if (!m_due.due)
                m_due.due = static_cast<int>(left.size());
            return offer(left.front());
        }
        if (std::ranges::any_of(m_ladder, [this](Mass load) {
                return (!m_standing.heaviest || load > *m_standing.heaviest) && !underCeiling(load);
            }))
            return end(NoLoad::AboveCeiling);
        if (m_station.sets == 0)
            return end(NoLoad::Done);
        return beyondLadder();
    }

    /// More sets are planned than the ladder has: at its top again where the coach planned it,
    /// above last time's by the same rise.
    LiftDue beyondLadder() {
        std::optional<Mass> next;
        if (!m_station.ladder.empty()) {
            for (const Mass load : m_ladder)
                if (possible(load))
                    next = load;
        } else if (m_standing.heaviest) {
            std::vector<Mass> today;
            for (const Tried& tried : m_athlete.today)
                today.push_back(tried.load);
            next = m_standing.heaviest;
            do
                next = loadAfter(*next, today, m_ladder);
            while (next && !possible(*next));
        }
        if (!next) {
            m_due.why = NoLoad::NoLadder;
            return m_due;
        }
        return underCeiling(*next) ? offer(*next) : end(NoLoad::AboveCeiling);
    }

    const Station& m_station;
    const AtLift& m_athlete;
    std::vector<Mass> m_ladder;
    Standing m_standing;
    LiftDue m_due;
};

std::vector<BodySide> sidesAt(const TestKind& kind) {
    if (!kind.twoSided)
        return {BodySide::Both};
    if (kind.bothToo)
        return {BodySide::Both, BodySide::Left, BodySide::Right};
    return {BodySide::Left, BodySide::Right};
}

/// How many attempts on that side count.
int countingOf(const Battery& battery, TestKindId kind, BodySide side) {
    const auto test = std::ranges::find(battery.tests, kind, &TestAttempts::kind);
    if (test == battery.tests.end())
        return 0;
    return static_cast<int>(std::ranges::count_if(test->attempts, [side](const Attempt& attempt) {
        return attempt.side == side && attempt.excluded.empty();
    }));
}

/// On that side, or at all.
bool isOut(const Battery& battery, TestKindId kind, BodySide side) {
    return std::ranges::any_of(battery.gaps, [&](const Gap& gap) {
        return gap.kind == kind && (gap.side == side || gap.side == BodySide::Both);
    });
}

} // namespace

LiftDue dueAt(const Station& station, const AtLift& athlete) {
    return LiftReader(station, athlete).read();
}

TestsDue dueAt(const Station& station, std::span<const Stored<TestKindId, TestKind>> tests,
               const Battery& today) {
    TestsDue due;
    bool possible = false;
    for (std::size_t at = 0; at < tests.size(); ++at) {
        const auto& [id, kind] = tests[at];
        const int planned = station.sets > 0 ? station.sets : kind.attempts;
        int fewest = planned;
        for (const BodySide side : sidesAt(kind)) {
            const int done = countingOf(today, id, side);
            due.done += done;
            if (isOut(today, id, side))
                continue;
            possible = true;
            due.due += std::max(0, planned - done);
            const bool ofThis = due.next && due.next->test == at;
            if (done < fewest && (!due.next || ofThis)) {
                due.next = {at, side};
                fewest = done;
            }
        }
    }
    due.out = !possible && !tests.empty();
    return due;
}

std::optional<std::size_t> nextTurn(const std::vector<bool>& due,
                                    std::optional<std::size_t> after) {
    const std::size_t first = after ? *after + 1 : 0;
    for (std::size_t i = 0; i < due.size(); ++i)
        if (const std::size_t at = (first + i) % due.size(); due[at])
            return at;
    return std::nullopt;
}

} // namespace slopebook::answers

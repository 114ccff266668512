// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/questions/seasonquestions.h"

#include "core/answers/fairreps.h"
#include "core/answers/seasonsource.h"
#include "core/log/history.h"
#include "core/log/testedsessions.h"
#include "core/model/errors.h"
#include "core/model/phrases/questions.h"
#include "core/questions/blockquestions.h"

#include <algorithm>
#include <map>
#include <memory>
#include <set>

namespace slopebook::questions {

namespace {

/// The column that a day counts in: of several the latest begun.
std::optional<std::size_t> columnOf(std::span<const answers::MatrixBlock> blocks, Date date) {
    std::optional<std::size_t> found;
    for (std::size_t j = 0; j < blocks.size(); ++j)
        if (blocks[j].block.holds(date) &&
            (!found || blocks[*found].block.first <= blocks[j].block.first))
            found = j;
    return found;
}

class Gatherer {
public:
    Gatherer(const log::Log& log, const ContextOf& contextOf, AthleteId athlete,
             const SeasonQuestion& question, const AskSettings& settings)
        : m_log(log), m_contextOf(contextOf), m_question(question), m_settings(settings) {
        m_answer.athlete = log.athlete(athlete);
    }

    Answer<SeasonAnswer> made() {
        const auto sessions = m_log.batteries(m_answer.athlete.id);
        chooseBlocks(sessions);
        if (m_source.blocks.empty())
            return NoAnswer{NoAnswer::Why::NoSuchSession,
                            say("No session of %1 lies in a training block. Blocks are made under "
                                "Squad, with their first and last day.",
                                m_answer.athlete.value.name)};
        placeSessions(sessions);
        addTests();
        std::vector<LiftId> lifts;
        readable([&] { lifts = m_log.liftsOf(m_answer.athlete.id); });
        for (const LiftId lift : lifts)
            readable([&] { addLift(lift); });
        std::ranges::sort(m_source.lifts, {},
                          [](const auto& lift) { return lift.lift.value.name; });
        m_source.athlete = m_answer.athlete.id;
        m_source.level = m_settings.level;
        m_source.squad = m_squad.get();
        m_source.devices = m_log.devices();
        m_answer.matrix = answers::seasonMatrix(m_source);
        return std::move(m_answer);
    }

private:
    /// Damage that is met is noted, and the rest goes on.
    template <class Work>
    void readable(const Work& work) {
        try {
            work();
        } catch (const LogError& error) {
            if (error.kind() != LogError::Kind::Damaged && error.kind() != LogError::Kind::Conflict)
                throw;
            m_answer.unread.push_back(error.words());
        }
    }

    void chooseBlocks(const std::vector<BatterySession>& sessions) {
        const bool given = !m_question.given.empty();
        std::vector<Stored<BlockId, Block>> blocks = given ? m_question.given : m_log.blocks();
        std::ranges::stable_sort(blocks, {}, [](const auto& b) {
            return std::pair{b.value.first, b.value.last};
        });
        const auto last = log::lastDay(m_log);
        for (const auto& block : blocks) {
            const auto& wanted = m_question.blocks;
            if (!given && !wanted.empty() && std::ranges::find(wanted, block.id) == wanted.end())
                continue;
            const auto count = std::ranges::count_if(sessions, [&](const BatterySession& session) {
                return block.value.holds(session.date);
            });
            if (count > 0)
                m_source.blocks.push_back(
                    {.id = block.id, .block = block.value, .countedTo = last});
        }
        for (std::size_t j = 0; j < m_source.blocks.size(); ++j)
            if (m_question.chosen == m_source.blocks[j].id)
                m_source.chosen = j;
    }

    void placeSessions(const std::vector<BatterySession>& sessions) {
        m_source.batteries.resize(m_source.blocks.size());
        for (const BatterySession& session : sessions) {
            const auto column = columnOf(m_source.blocks, session.date);
            if (!column) {
                ++m_source.outside;
                continue;
            }
            ++m_source.blocks[*column].sessions;
            m_source.batteries[*column].push_back(session);
        }
    }

    void addTests() {
        std::set<TestKindId> spokenOf;
        for (const auto& sessions : m_source.batteries)
            for (const BatterySession& session : sessions)
                for (const TestAttempts& test : session.battery.tests)
                    spokenOf.insert(test.kind);
        const auto kinds = m_log.testKinds();
        for (const auto& kind : kinds)
            if (spokenOf.contains(kind.id))
                m_source.kinds.push_back(kind);
        m_squad = std::make_unique<answers::SquadTests>(kinds);
        const std::vector<TestKindId> ids(spokenOf.begin(), spokenOf.end());
        readable([&] {
            log::scanTested(m_log, ids,
                            [&](const BatterySession& session) { m_squad->add(session); });
        });
    }

    void addLift(LiftId id) {
        const auto about =
            std::make_shared<const Background>(background(m_log, m_answer.athlete.id, id));
        answers::SeasonLift lift{
            .lift = about->lift, .mvt = about->mvt, .checkLoads = about->checkLoads};
        std::vector<LiftSession> all;
        std::vector<std::size_t> columns;
        for (const LiftSession& session : about->sessions)
            if (const auto column = columnOf(m_source.blocks, session.date)) {
                all.push_back(session);
                columns.push_back(*column);
            }
        if (all.empty())
            return;
        std::vector<std::vector<Set>> sets;
        for (const LiftSession& session : all)
            sets.push_back(setsOf(m_log, session));
        all = answers::fairRepsOfAll(about->lift.value, std::move(all), sets);
        lift.blocks.resize(m_source.blocks.size());
        lift.efforts.resize(m_source.blocks.size());
        for (std::size_t j = 0; j < lift.blocks.size(); ++j)
            lift.blocks[j].name = m_source.blocks[j].block.name;
        for (std::size_t i = 0; i < all.size(); ++i) {
            lift.blocks[columns[i]].sessions.push_back(all[i]);
            addEfforts(lift.efforts[columns[i]], sets[i]);
        }
        // Contexts may be one place filled anew for each lift: this one's is kept.
        const auto context = std::make_shared<const LiftContext>(m_contextOf(id));
        using Known = std::map<std::pair<SessionId, SessionId>, answers::BlockSettings>;
        const auto known = std::make_shared<Known>();
        lift.settings = [this, about, context, known](const LiftSession& from,
                                                      const LiftSession& to) {
            const std::pair key{from.session, to.session};
            if (const auto place = known->find(key); place != known->end())
                return place->second;
            auto made = blockSettings(m_log, *context, *about, from, to, m_settings);
            made.asManyReps = {}; // they are alike already, over all blocks
            return known->emplace(key, std::move(made)).first->second;
        };
        m_source.lifts.push_back(std::move(lift));
    }

    static void addEfforts(std::map<Mass, std::vector<double>>& efforts,
                           const std::vector<Set>& sets) {
        std::map<Mass, std::pair<double, int>> sums;
        for (const Set& set : sets)
            if (set.effort && set.excluded.empty()) {
                sums[set.load].first += set.effort->value();
                ++sums[set.load].second;
            }
        for (const auto& [load, sum] : sums)
            efforts[load].push_back(sum.first / sum.second);
    }

    const log::Log& m_log;
    const ContextOf& m_contextOf;
    const SeasonQuestion& m_question;
    const AskSettings& m_settings;
    SeasonAnswer m_answer;
    answers::SeasonSource m_source;
    std::unique_ptr<answers::SquadTests> m_squad;
};

} // namespace

Answer<SeasonAnswer> seasonMatrixOf(const log::Log& log, const ContextOf& contextOf,
                                    AthleteId athlete, const SeasonQuestion& question,
                                    const AskSettings& settings) {
    return Gatherer(log, contextOf, athlete, question, settings).made();
}

Answer<SeasonAnswer> seasonMatrixOf(const log::Log& log, AthleteId athlete,
                                    const SeasonQuestion& question, const AskSettings& settings) {
    LiftContext context;
    const ContextOf read = [&](LiftId lift) -> const LiftContext& {
        context = liftContext(log, lift);
        return context;
    };
    return seasonMatrixOf(log, read, athlete, question, settings);
}

} // namespace slopebook::questions

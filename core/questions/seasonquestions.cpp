// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/questions/seasonquestions.h"

#include "core/answers/seasonsource.h"
#include "core/log/history.h"
#include "core/model/errors.h"
#include "core/model/phrases/questions.h"
#include "core/questions/kepttests.h"
#include "core/questions/seasonlift.h"

#include <algorithm>
#include <memory>
#include <set>

namespace slopebook::questions {

namespace {

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
        std::vector<LiftId> lifts;
        if (m_question.lift) {
            lifts = {*m_question.lift};
        } else {
            addTests();
            if (!m_question.testsAlone)
                readable([&] { lifts = m_log.liftsOf(m_answer.athlete.id); });
        }
        for (const LiftId lift : lifts)
            readable([&] { addLift(lift); });
        std::ranges::sort(m_source.lifts, {},
                          [](const auto& lift) { return lift.lift.value.name; });
        m_source.athlete = m_answer.athlete.id;
        m_source.level = m_settings.level;
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
            answers::MatrixBlock column{.id = block.id, .block = block.value, .countedTo = last};
            if (const auto one = m_question.sessionOf.find(block.id);
                given && one != m_question.sessionOf.end())
                column.session = one->second;
            if (std::ranges::any_of(sessions, [&](const BatterySession& session) {
                    return columnOf({&column, 1}, session.date, session.ordinal).has_value();
                }))
                m_source.blocks.push_back(column);
        }
        for (std::size_t j = 0; j < m_source.blocks.size(); ++j)
            if (m_question.chosen == m_source.blocks[j].id)
                m_source.chosen = j;
    }

    void placeSessions(const std::vector<BatterySession>& sessions) {
        m_source.batteries.resize(m_source.blocks.size());
        for (const BatterySession& session : sessions) {
            const auto column = columnOf(m_source.blocks, session.date, session.ordinal);
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
        const std::vector<TestKindId> ids(spokenOf.begin(), spokenOf.end());
        m_source.squad = &squadTestsBefore(m_log);
        readable([&] { m_source.squad = &squadTests(m_log, ids); });
    }

    void addLift(LiftId id) {
        const auto about =
            std::make_shared<const Background>(background(m_log, m_answer.athlete.id, id));
        const auto column = [&](const LiftSession& session) {
            return columnOf(m_source.blocks, session.date, session.ordinal);
        };
        if (std::ranges::none_of(about->sessions,
                                 [&](const LiftSession& each) { return bool(column(each)); }))
            return;
        // Contexts may be one place filled anew for each lift: this one's is kept.
        SetsOnce once(m_log);
        m_source.lifts.push_back(
            seasonLift(m_log, std::make_shared<const LiftContext>(m_contextOf(id)), about,
                       m_source.blocks.size(), column, m_settings, once));
        answers::SeasonLift& lift = m_source.lifts.back();
        if (!m_question.loads.empty())
            lift.checkLoads = m_question.loads;
        for (std::size_t j = 0; j < lift.blocks.size(); ++j)
            lift.blocks[j].name = m_source.blocks[j].block.name;
    }

    const log::Log& m_log;
    const ContextOf& m_contextOf;
    const SeasonQuestion& m_question;
    const AskSettings& m_settings;
    SeasonAnswer m_answer;
    answers::SeasonSource m_source;
};

} // namespace

Stored<BlockId, Block> columnFor(const log::Log& log, const BatterySide& side, int nth) {
    if (const auto* block = std::get_if<BlockId>(&side))
        return blockOf(log, *block);
    const SideDays named = daysOf(log, side);
    return {BlockId{-nth},
            {.name = named.name, .first = named.days.first, .last = named.days.last}};
}

SeasonQuestion seasonQuestion(const log::Log& log, const std::vector<std::string>& columns,
                              const std::string& against) {
    SeasonQuestion question;
    std::vector<Stored<BlockId, Block>> given;
    bool blocksAlone = true;
    // A column is taken once, however often and under whatever name it is given.
    const auto take = [&](const std::string& text) {
        const BatterySide side = batterySide(log, text);
        const auto column = columnFor(log, side, static_cast<int>(given.size()) + 1);
        blocksAlone = blocksAlone && raw(column.id) > 0;
        for (const auto& there : given)
            if (there.id == column.id ||
                (raw(there.id) < 0 && raw(column.id) < 0 && there.value == column.value))
                return there.id;
        given.push_back(column);
        if (const auto* session = std::get_if<DaySession>(&side))
            question.sessionOf.emplace(column.id, session->number);
        return column.id;
    };
    if (columns.empty())
        for (const auto& block : log.blocks())
            given.push_back(block);
    for (const std::string& text : columns)
        take(text);
    if (!against.empty())
        question.chosen = take(against);
    if (!blocksAlone)
        question.given = std::move(given);
    else if (!columns.empty())
        for (const auto& column : given)
            question.blocks.push_back(column.id);
    return question;
}

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

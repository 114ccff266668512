// SPDX-License-Identifier: GPL-3.0-or-later
// All lines of the log in one ordered pass: sessions in their order, and beside them their sets and
// the conditions of their lifts (scanrows.h).
#include "core/log/history.h"
#include "core/log/impl.h"
#include "core/log/scanrows.h"
#include "core/model/phrases/log.h"

#include <algorithm>
#include <set>
#include <string>

namespace slopebook::log {

namespace {
constexpr char lineHeads[] = "SELECT athlete, day, ordinal, id, body_mass_g, repeat_of, "
                             "line_checksum FROM sessions ";
constexpr auto everySession = joined(lineHeads, "ORDER BY athlete, day, ordinal");
constexpr auto oneAthletes = joined(lineHeads, "WHERE athlete = ? ORDER BY day, ordinal");
constexpr auto oneDays = joined(lineHeads, "WHERE athlete = ? AND day = ? ORDER BY ordinal");

/// The sessions that repeat another or are repeated, where both hold the lift: what a pair is made
/// of, found by the index on repeat_of. of: a condition on the repeating session, or nothing.
std::string headsOfRepeats(LiftId lift, const std::string& of) {
    const std::string holds = " AND lift = " + std::to_string(raw(lift)) + ")";
    return lineHeads +
           ("WHERE id IN (WITH pair AS MATERIALIZED (SELECT id, repeat_of FROM sessions "
            "WHERE repeat_of > 0" +
            of + " AND EXISTS (SELECT 1 FROM sets WHERE session = sessions.id" + holds +
            " AND EXISTS (SELECT 1 FROM sets WHERE session = sessions.repeat_of" + holds +
            ") SELECT id FROM pair UNION ALL SELECT repeat_of FROM pair) "
            "ORDER BY athlete, day, ordinal");
}
/// Of more than so many athletes everybody's are read in one go.
constexpr std::size_t mostOneByOne = 20;

// The outcome stands far back in its row, and is asked for only where it can be another.
constexpr char pointColumns[] = "session, lift, ordinal, load_g, point, maximum, counting, "
                                "CASE WHEN point IS NULL THEN outcome END FROM ";
constexpr char lineConditions[] =
    "session, lift, device, place, surface, footwear, technique, not_comparable FROM ";

const OfSessions setsOfSessions = ofSessions(pointColumns, "sets", "lift, ordinal");
const OfSessions conditionsOfSessions = ofSessions(lineConditions, "lift_conditions", "lift");

class Scan {
public:
    Scan(Log::Impl& impl, const Filter& filter,
         const std::function<void(const LiftSession&)>& visit)
        : m_impl(impl), m_lift(filter.lift), m_visit(visit),
          m_sessions(impl.db, filter.athlete ? oneAthletes.data() : everySession.data()),
          m_sets(impl.db, setsOfSessions), m_conditions(impl.db, conditionsOfSessions) {
        readMovers();
        if (filter.athlete)
            m_sessions.bind(raw(*filter.athlete));
        m_sets.readAll(filter.athlete);
        m_conditions.readAll(filter.athlete);
    }
    /// Of what is chosen by goTo() before run().
    Scan(Log::Impl& impl, LiftId lift, const char* heads,
         const std::function<void(const LiftSession&)>& visit)
        : m_impl(impl), m_lift(lift), m_visit(visit), m_sessions(impl.db, heads),
          m_sets(impl.db, setsOfSessions), m_conditions(impl.db, conditionsOfSessions) {
        readMovers();
    }
    /// What is damaged is passed over without a word.
    void passDamaged() { m_passDamaged = true; }
    void goTo(AthleteId athlete) {
        m_sessions.bind(raw(athlete));
        m_ofDay.clear();
    }
    void goTo(AthleteId athlete, const std::string& day) {
        m_sessions.bind(raw(athlete));
        m_sessions.bindSecond(day);
        m_ofDay.clear();
    }
    void run() {
        const auto read = [&] {
            readHead();
            readConditions();
            readSets();
            if (m_sum.value() != m_sessions.integer(6))
                m_impl.damaged(say("%1 is not as it was written", m_impl.called(m_head)));
        };
        bool more = true;
        while (whole([&] { more = m_sessions.next(); }) && more) {
            m_id = SessionId{m_sessions.integer(3)};
            if (whole(read))
                for (std::size_t i = 0; i < m_found; ++i)
                    m_visit(m_lines[i]);
            whole([&] {
                m_conditions.pass(raw(m_id));
                m_sets.pass(raw(m_id));
            });
        }
    }

private:
    template <class Work>
    bool whole(const Work& work) {
        if (!m_passDamaged)
            return m_impl.salvaging(work);
        try {
            work();
            return true;
        } catch (const LogError& error) {
            if (error.kind() != LogError::Kind::Damaged)
                throw;
            return false;
        }
    }

    void readHead() {
        const auto date = parseIsoDate(m_sessions.text(1));
        if (!date)
            m_impl.damaged(say("it holds a date that is none"));
        const AthleteId athlete{m_sessions.integer(0)};
        if (athlete != m_head.athlete || *date != m_head.date)
            m_ofDay.clear();
        m_head.athlete = athlete;
        m_head.date = *date;
        m_head.ordinal = m_sessions.small(2);
        m_head.bodyMass.reset();
        m_head.repeatOf.reset();
        if (!m_sessions.null(4))
            m_head.bodyMass = Mass{m_sessions.integer(4)};
        if (!m_sessions.null(5))
            m_head.repeatOf = SessionId{m_sessions.integer(5)};
        m_sum.start(m_id, m_head);
    }

    void readConditions() {
        m_ofLifts = 0;
        if (!m_conditions.seek(raw(m_id)))
            return;
        do {
            if (m_liftConditions.size() == m_ofLifts)
                m_liftConditions.emplace_back();
            LiftConditions& one = m_liftConditions[m_ofLifts++];
            const Rows& row = m_conditions.row();
            Conditions& read = one.conditions;
            one.lift = LiftId{row.integer(1)};
            read.device = row.null(2) ? std::nullopt : std::optional(DeviceId{row.integer(2)});
            read.place = row.text(3);
            read.surface = row.text(4);
            read.footwear = row.text(5);
            read.technique = row.text(6);
            read.notComparable = row.text(7);
            m_sum.add(one);
        } while (m_conditions.next());
    }

    void readSets() {
        m_found = 0;
        if (!m_sets.seek(raw(m_id)))
            return;
        do {
            const Rows& row = m_sets.row();
            const LiftId lift{row.integer(1)};
            const int ordinal = row.small(2);
            const Mass load{row.integer(3)};
            // No point is a NULL, which SQLite reads as 0: a speed that no point has.
            const double speed = row.real(4);
            const auto point = speed == 0 ? std::nullopt : std::optional(speed);
            const bool maximum = row.integer(5) != 0;
            const int counting = row.small(6);
            // What has a point was lifted.
            const Outcome outcome = !point && row.text(7) == word(Outcome::NotLifted)
                                        ? Outcome::NotLifted
                                        : Outcome::Lifted;
            m_sum.add(lift, ordinal, load, point, maximum, counting, outcome);
            if (!m_lift || lift == *m_lift)
                take(lift, ordinal, load, point, maximum, counting, outcome);
        } while (m_sets.next());
    }

    void take(LiftId lift, int ordinal, Mass load, std::optional<double> point, bool maximum,
              int counting, Outcome outcome) {
        if (m_found == 0 || m_lines[m_found - 1].lift != lift)
            begin(lift);
        LiftSession& line = m_lines[m_found - 1];
        if (line.lacksBodyMass)
            return;
        if (m_movesBody)
            load.grams += line.bodyMass->grams;
        if (outcome == Outcome::NotLifted) {
            m_tried.push_back(load);
            boundFromAbove(line);
            return;
        }
        line.heaviestLifted = std::max(line.heaviestLifted, std::optional(load));
        boundFromAbove(line);
        if (!point)
            return;
        line.points.push_back({.load = kilograms(load), .velocity = *point, .set = ordinal});
        if (!maximum)
            return;
        if (counting == 1)
            line.maxima.push_back(line.points.back());
        line.measuredOneRm = std::max(line.measuredOneRm, std::optional(load));
    }

    /// What was lifted later that day after all bounds nothing.
    void boundFromAbove(LiftSession& line) const {
        line.lightestNotLifted.reset();
        for (const Mass tried : m_tried)
            if (tried > line.heaviestLifted.value_or(Mass{}) &&
                (!line.lightestNotLifted || tried < *line.lightestNotLifted))
                line.lightestNotLifted = tried;
    }

    void begin(LiftId lift) {
        m_tried.clear();
        if (m_lines.size() == m_found)
            m_lines.emplace_back();
        LiftSession& line = m_lines[m_found++];
        line.session = m_id;
        line.athlete = m_head.athlete;
        line.lift = lift;
        line.date = m_head.date;
        line.ordinal = countOfDay(lift);
        line.conditions = conditionsOf(lift);
        line.bodyMass = m_head.bodyMass;
        line.repeatOf = m_head.repeatOf;
        line.points.clear();
        line.maxima.clear();
        line.measuredOneRm.reset();
        line.heaviestLifted.reset();
        line.lightestNotLifted.reset();
        m_movesBody = std::ranges::find(m_movers, lift) != m_movers.end();
        line.lacksBodyMass = m_movesBody && !line.bodyMass;
    }

    const Conditions& conditionsOf(LiftId lift) const {
        static const Conditions none;
        for (std::size_t i = 0; i < m_ofLifts; ++i)
            if (m_liftConditions[i].lift == lift)
                return m_liftConditions[i].conditions;
        return none;
    }

    void readMovers() {
        m_impl.salvaging([&] {
            for (Query rows(m_impl.db, "SELECT id FROM lifts WHERE moves_body = 1"); rows.next();)
                m_movers.push_back(rows.id<LiftId>(0));
        });
    }

    /// How many sessions of the athlete and day have held this lift so far, this one included.
    int countOfDay(LiftId lift) {
        const auto found = std::ranges::find(m_ofDay, lift, &std::pair<LiftId, int>::first);
        if (found != m_ofDay.end())
            return ++found->second;
        m_ofDay.emplace_back(lift, 1);
        return 1;
    }

    Log::Impl& m_impl;
    std::optional<LiftId> m_lift;
    const std::function<void(const LiftSession&)>& m_visit;
    Rows m_sessions;
    RowsOfSessions m_sets, m_conditions;
    std::vector<LiftConditions> m_liftConditions; ///< kept, as m_lines
    std::size_t m_ofLifts = 0;
    std::vector<LiftId> m_movers; ///< lifts that move the body
    std::vector<Mass> m_tried;    ///< and not lifted, of the lift last begun
    bool m_movesBody = false;     ///< the lift at hand does
    SessionId m_id{};
    SessionHead m_head;
    LineChecksum m_sum;
    std::vector<LiftSession> m_lines; ///< kept between sessions for the room that they hold
    std::size_t m_found = 0;
    std::vector<std::pair<LiftId, int>> m_ofDay;
    bool m_passDamaged = false;
};
} // namespace

void Log::scan(const Filter& filter, const std::function<void(const LiftSession&)>& visit) const {
    m_impl->settle();
    const ReadScope moment(m_impl->db);
    Scan(*m_impl, filter, visit).run();
}

std::vector<LiftSession> Log::liftSessions(const Filter& filter) const {
    std::vector<LiftSession> all;
    scan(filter, [&](const LiftSession& one) { all.push_back(one); });
    return all;
}

// A session's number among those of its day takes the others of that day to be known.
std::vector<LiftSession> liftSessions(const Log& log, LiftId lift,
                                      std::span<const SessionId> sessions) {
    Log::Impl& impl = log.impl();
    impl.settle();
    const ReadScope moment(impl.db);
    std::vector<LiftSession> all;
    SessionId wanted{};
    const std::function<void(const LiftSession&)> visit = [&](const LiftSession& one) {
        if (one.session == wanted)
            all.push_back(one);
    };
    Scan scan(impl, lift, oneDays.data(), visit);
    for (const SessionId session : sessions) {
        wanted = session;
        const SessionHead head = impl.head(session).value;
        scan.goTo(head.athlete, isoDate(head.date));
        scan.run();
    }
    return all;
}

void scanRepeats(const Log& log, LiftId lift, std::span<const AthleteId> athletes,
                 const std::function<void(const LiftSession&)>& visit) {
    Log::Impl& impl = log.impl();
    impl.settle();
    const ReadScope moment(impl.db);
    if (athletes.size() > mostOneByOne) {
        const std::set<AthleteId> wanted(athletes.begin(), athletes.end());
        const std::function<void(const LiftSession&)> visitWanted = [&](const LiftSession& one) {
            if (wanted.contains(one.athlete))
                visit(one);
        };
        const std::string sql = headsOfRepeats(lift, "");
        Scan scan(impl, lift, sql.c_str(), visitWanted);
        scan.passDamaged();
        scan.run();
        return;
    }
    const std::string sql = headsOfRepeats(lift, " AND athlete = ?1");
    Scan scan(impl, lift, sql.c_str(), visit);
    scan.passDamaged();
    for (const AthleteId athlete : athletes) {
        scan.goTo(athlete);
        scan.run();
    }
}

} // namespace slopebook::log

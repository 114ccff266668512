// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/biglog.h"

#include "core/log/checksum.h"
#include "core/log/derive.h"
#include "core/log/log.h"
#include "core/log/tally.h"
#include "tests/bench/baresql.h"

#include <array>
#include <bit>
#include <cmath>
#include <map>
#include <random>

namespace slopebook::bench {

namespace {

constexpr int devices = 3;
constexpr int years = 12;
constexpr std::array<const char*, 6> liftNames{"Bench pull", "Back squat",  "Hex-bar deadlift",
                                               "Leg press",  "Bench press", "Front squat"};
constexpr std::array<const char*, 3> seasons{"Autumn base", "Winter", "Spring and races"};
constexpr std::chrono::sys_days firstDay = std::chrono::year{2014} / 9 / 1;

Date dayAfter(int days) {
    return Date{firstDay + std::chrono::days{days}};
}

/// What the sessions refer to: written through the log itself.
struct Records {
    std::vector<AthleteId> athletes;
    std::vector<LiftId> lifts;
    std::vector<DeviceId> devices;
    std::vector<TestKindId> tests;
};

/// Of an athlete's test day, from 0.
int liftOf(int athlete, int number) {
    return (athlete + number / 2 % 2) % static_cast<int>(liftNames.size());
}

Records writeRecords(log::Log& log, const Institute& institute) {
    Records made;
    for (std::size_t i = 0; i < liftNames.size(); ++i)
        made.lifts.push_back(log.add(Lift{.name = liftNames[i],
                                          .mvt = Mvt{.value = 0.3 + 0.04 * static_cast<double>(i),
                                                     .sd = 0.04,
                                                     .origin = Mvt::Origin::Coach,
                                                     .source = "singles of the squad"}}));
    for (int i = 0; i < devices; ++i)
        made.devices.push_back(log.add(Device{.name = "Encoder " + std::to_string(i + 1)}));
    for (int year = 0; year < years; ++year)
        for (int season = 0; season < 3; ++season)
            log.add(Block{.name = seasons[static_cast<std::size_t>(season)],
                          .first = dayAfter(365 * year + 120 * season),
                          .last = dayAfter(365 * year + 120 * season + 110),
                          .ceiling = season == 1 ? std::optional(Mass{80'000}) : std::nullopt});
    TestKind jump;
    jump.name = "Jump";
    jump.unit = "cm";
    made.tests.push_back(log.add(jump));
    for (int i = 0; i < institute.athletes(); ++i) {
        if (!institute.keeps(i))
            continue;
        made.athletes.push_back(log.add(Athlete{.name = Institute::nameOf(i)}));
        for (const LiftId lift : {made.lifts[0], made.lifts[1]})
            log.setCheckLoads(made.athletes.back(), lift,
                              {Mass{40'000}, Mass{60'000}, Mass{70'000}});
    }
    return made;
}

/// One test day, the same for the athlete and number whichever log it stands in.
class TestDay {
public:
    TestDay(const Institute& institute, const Records& records, int athlete, int number)
        : m_institute(institute), m_records(records), m_number(number),
          m_random(static_cast<std::uint64_t>(athlete) * 1000 + static_cast<unsigned>(number)),
          m_athlete(athlete) {}

    /// Every tenth is a repeat of the one before: same lift and device, three days later.
    bool repeats() const { return m_number % 10 == 1; }

    SessionHead head(AthleteId athlete) const {
        const int pace = 365 * years / (m_institute.sessionsAnAthlete + 1);
        const int start = m_athlete % 40;
        const int day = repeats() ? (m_number - 1) * pace + 3 : m_number * pace;
        return {.athlete = athlete,
                .date = dayAfter(start + day),
                .bodyMass = Mass{70'000 + 500 * (m_athlete % 40) + 100 * (m_number % 7)},
                .note = m_number % 25 == 7 ? "short of sleep" : ""};
    }

    /// Two lifts an athlete, in turn; a repeat is of the same one.
    LiftId lift() const {
        return m_records.lifts[static_cast<std::size_t>(liftOf(m_athlete, m_number))];
    }

    LiftConditions conditions() const {
        const auto device = static_cast<std::size_t>((m_athlete / 40 + m_number / 12) % devices);
        return {.lift = lift(),
                .conditions = {.device = m_records.devices[device],
                               .place = m_number % 4 == 0 ? "Boathouse" : ""}};
    }

    std::vector<log::StoredSet> sets(SessionId session, std::int64_t firstId) {
        std::normal_distribution<double> rep(0, 0.02);
        std::normal_distribution<double> day(0, 0.02);
        const double v0 = 1.45 + 0.05 * (m_athlete % 7) + day(m_random);
        const double slope = (v0 - 0.3) / (85 + m_athlete % 50 + 0.4 * m_number);
        std::vector<log::StoredSet> all;
        for (int i = 0; i < m_institute.setsASession; ++i) {
            log::PlacedSet placed{
                .id = SetId{firstId + i}, .session = session, .lift = lift(), .ordinal = i + 1};
            const int grams = 40'000 + 2'500 * (m_athlete % 3) + 7'500 * i;
            placed.set.load = Mass{grams};
            for (int r = 0; r < m_institute.repsASet; ++r) {
                const double v = v0 - slope * grams / 1000 + rep(m_random);
                placed.set.reps.push_back({.velocity = std::max(0.05, std::round(v * 100) / 100)});
            }
            finish(placed.set, i);
            all.push_back(log::withPoint(std::move(placed), PointRule::Fastest));
        }
        return all;
    }

    Battery battery() {
        Battery battery;
        if (m_number % 5 != 0)
            return battery;
        std::uniform_real_distribution<double> value(30, 45);
        TestAttempts jumps{.kind = m_records.tests[0], .attempts = {}};
        for (int i = 0; i < 3; ++i)
            jumps.attempts.push_back({.side = BodySide::Both,
                                      .value = std::round(value(m_random) * 10) / 10,
                                      .contact = {},
                                      .note = {},
                                      .excluded = {}});
        battery.tests.push_back(std::move(jumps));
        return battery;
    }

private:
    /// A true maximum at the end of some days; a rep left out here and there.
    void finish(Set& set, int number) {
        if (m_number % 7 == 3 && number == m_institute.setsASession - 1) {
            set.trueMaximum = true;
            for (std::size_t r = 1; r < set.reps.size(); ++r)
                set.reps[r].excluded = "missed";
        } else if (m_random() % 50 == 0) {
            set.reps.back().excluded = "lost the groove";
        }
    }

    const Institute& m_institute;
    const Records& m_records;
    int m_number;
    std::mt19937_64 m_random;
    int m_athlete;
};

/// Rows as the log writes them, in fewer steps than through it.
class Writer {
public:
    Writer(BareSql& db, const Institute& institute, const Records& records)
        : m_institute(institute), m_records(records),
          m_session(db, "INSERT INTO sessions (athlete, day, ordinal, id, body_mass_g, "
                        "repeat_of, line_checksum, checksum, note, battery_checksum) "
                        "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"),
          m_conditions(db, "INSERT INTO lift_conditions (session, lift, device, place, surface, "
                           "footwear, technique, not_comparable) "
                           "VALUES (?, ?, ?, ?, '', '', '', '')"),
          m_set(db, "INSERT INTO sets (session, lift, ordinal, load_g, point, maximum, counting, "
                    "id, excluded, note) VALUES (?, ?, ?, ?, ?, ?, ?, ?, '', '')"),
          m_rep(db, "INSERT INTO reps (set_id, ordinal, velocity, excluded) VALUES (?, ?, ?, ?)"),
          m_attempt(db, "INSERT INTO attempts (session, ordinal, test, side, value, contact, "
                        "note, excluded) VALUES (?, ?, ?, 'both', ?, NULL, '', '')"),
          m_last(records.athletes.size()) {}

    void write(int athlete, std::size_t place, int number) {
        TestDay day(m_institute, m_records, athlete, number);
        Stored<SessionId, SessionHead> head{SessionId{++m_sessions},
                                            day.head(m_records.athletes[place])};
        if (day.repeats())
            head.value.repeatOf = m_last[place];
        m_last[place] = head.id;
        const auto sets = day.sets(head.id, m_sets + 1);
        const Battery battery = day.battery();
        const SessionHead& h = head.value;
        const LiftConditions under = day.conditions();
        const auto ofSets = log::checksum(head, {under}, sets);
        const auto ofBattery =
            battery.empty() ? std::nullopt : std::optional(log::checksum(head.id, battery));
        m_tallies[h.athlete].add(log::weight(ofSets, ofBattery));
        m_session.run(raw(h.athlete), isoDate(h.date), h.ordinal, raw(head.id), h.bodyMass->grams,
                      h.repeatOf ? std::optional(raw(*h.repeatOf)) : std::nullopt,
                      log::lineChecksum(head, {under}, sets), ofSets, h.note, ofBattery);
        m_conditions.run(raw(head.id), raw(under.lift), raw(*under.conditions.device),
                         under.conditions.place);
        for (const log::StoredSet& stored : sets)
            writeSet(stored);
        int ordinal = 0;
        for (const TestAttempts& test : battery.tests)
            for (const Attempt& attempt : test.attempts)
                m_attempt.run(raw(head.id), ++ordinal, raw(test.kind), attempt.value);
    }
    void writeTallies(BareSql& db) {
        BareStatement tally(db, "UPDATE tallies SET things = ?, sum = ? WHERE owner = ? AND "
                                "kind = 'session'");
        for (const auto& [athlete, of] : m_tallies)
            tally.run(of.things, std::bit_cast<std::int64_t>(of.sum), raw(athlete));
    }
    std::int64_t sessions() const { return m_sessions; }
    std::int64_t sets() const { return m_sets; }

private:
    void writeSet(const log::StoredSet& stored) {
        const log::PlacedSet& placed = stored.placed;
        m_set.run(raw(placed.session), raw(placed.lift), placed.ordinal, placed.set.load.grams,
                  stored.point, placed.set.trueMaximum ? 1 : 0, stored.counting, ++m_sets);
        int ordinal = 0;
        for (const Rep& rep : placed.set.reps)
            m_rep.run(m_sets, ++ordinal, rep.velocity, rep.excluded);
    }

    const Institute& m_institute;
    const Records& m_records;
    BareStatement m_session, m_conditions, m_set, m_rep, m_attempt;
    std::vector<std::optional<SessionId>> m_last;
    std::map<AthleteId, log::Tally> m_tallies;
    std::int64_t m_sessions = 0, m_sets = 0;
};

} // namespace

int Institute::athletes() const {
    return std::max(1, (sessions + sessionsAnAthlete - 1) / sessionsAnAthlete);
}

std::string Institute::nameOf(int athlete) {
    std::string number = std::to_string(athlete);
    return "Athlete " + std::string(5 - std::min<std::size_t>(5, number.size()), '0') + number;
}

bool Institute::keeps(int athlete) const {
    const bool does =
        !onlyLift || liftOf(athlete, 0) == *onlyLift || liftOf(athlete, 2) == *onlyLift;
    return does && (!only || *only == athlete);
}

void writeInstitute(const std::filesystem::path& file, const Institute& institute) {
    Records records;
    {
        log::Log log = log::Log::create(file);
        log.together([&] { records = writeRecords(log, institute); });
    }
    BareSql db(file);
    db.execute("PRAGMA cache_size = -65536; BEGIN");
    Writer writer(db, institute, records);
    // By test day, as the years went by: neighbours in the file are not of one athlete.
    int left = institute.sessions;
    for (int number = 0; number < institute.sessionsAnAthlete; ++number) {
        std::size_t place = 0; // among those who are kept
        for (int athlete = 0; athlete < institute.athletes() && left > 0; ++athlete, --left)
            if (institute.keeps(athlete))
                writer.write(athlete, place++, number);
    }
    writer.writeTallies(db);
    BareStatement keys(db, "UPDATE keys SET last = ?1, turned = ~?1 WHERE kind = ?2");
    keys.run(writer.sessions(), "session");
    keys.run(writer.sets(), "set");
    db.execute("COMMIT");
    log::Connection named(file, log::Connection::Purpose::ReadWrite, log::Log::newestVersion());
    named.execute("BEGIN");
    log::deriveAtoms(named);
    named.execute("COMMIT");
}

} // namespace slopebook::bench

// SPDX-License-Identifier: GPL-3.0-or-later
// The log: one SQLite file that holds everything. Reads give plain values; each write is one
// transaction that is on disk when the call returns, or has not happened. Throws LogError, and
// BadInput for a value that may not stand.
#pragma once

#include "core/model/battery.h"
#include "core/model/equipment.h"
#include "core/model/ids.h"
#include "core/model/people.h"
#include "core/model/session.h"
#include "core/model/station.h"

#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace slopebook::log {

/// Salvage: reading only, and lists leave out what is damaged instead of throwing (see leftOut).
/// SalvageAndWrite: the same, but the coach wants to write into it; what is damaged itself is still
/// not written to.
enum class Access { ReadWrite, ReadOnly, Salvage, SalvageAndWrite };

/// A set with its place: which session and lift, and its order there (from 1).
struct PlacedSet {
    SetId id{};
    SessionId session{};
    LiftId lift{};
    int ordinal = 1;
    Set set{};
    friend bool operator==(const PlacedSet&, const PlacedSet&) = default;
};

/// A session with the conditions of its lifts (of those that have any, ordered by lift), all its
/// sets, ordered by lift and ordinal, and its battery.
struct SessionRecord {
    Stored<SessionId, SessionHead> head{};
    std::vector<LiftConditions> conditions{};
    std::vector<PlacedSet> sets{};
    Battery battery{};
    friend bool operator==(const SessionRecord&, const SessionRecord&) = default;
};

/// One line of the history: a session and lift with its points, and what it is filed under.
struct Filter {
    std::optional<AthleteId> athlete{};
    std::optional<LiftId> lift{};
};

struct Layout;

class Log {
public:
    /// Makes a new log; the file must not exist.
    static Log create(const std::filesystem::path& file);
    /// Opens a log, first checking its header; migrates an older one, after a backup. A file that
    /// cannot be written is opened for reading: access() says so, and each write throws ReadOnly.
    static Log open(const std::filesystem::path& file, Access access = Access::ReadWrite);
    /// The same under other layouts than this program's: how migrations are tested.
    static Log create(const std::filesystem::path& file, const Layout& layout);
    static Log open(const std::filesystem::path& file, Access access, const Layout& layout);

    Log(Log&&) noexcept;
    Log& operator=(Log&&) noexcept;
    ~Log();

    const std::filesystem::path& file() const;
    Access access() const;

    // What is there, each list in the order a coach expects: names alphabetically, days by date.
    std::vector<Stored<AthleteId, Athlete>> athletes() const;
    std::vector<Stored<LiftId, Lift>> lifts() const;
    std::vector<Stored<DeviceId, Device>> devices() const;
    std::vector<Stored<BlockId, Block>> blocks() const;
    std::vector<Stored<EquipmentId, Equipment>> equipment() const;
    std::vector<Stored<TestKindId, TestKind>> testKinds() const;
    std::vector<Stored<StationId, Station>> stations() const;
    /// One of them, without reading the others. Conflict where it is not in the log any more.
    Stored<AthleteId, Athlete> athlete(AthleteId id) const;
    Stored<LiftId, Lift> lift(LiftId id) const;
    std::vector<Stored<SessionId, SessionHead>> sessions(AthleteId athlete) const;
    SessionRecord session(SessionId session) const;
    std::vector<PlacedSet> sets(SessionId session, LiftId lift) const;
    PlacedSet set(SetId id) const;
    /// Of a lift or a test in a session, verified with it; nothing written down: Conditions{}.
    Conditions conditions(SessionId session, LiftId lift) const;
    Conditions conditions(SessionId session, TestKindId test) const;
    /// Who is at a station on that day, in the order of their turns; nobody where none was made.
    Roster roster(StationId station, Date day) const;
    /// All of a station, or of all, by station and day.
    std::vector<Roster> rosters(std::optional<StationId> station = {}) const;
    /// Check loads of an athlete and lift, ascending.
    std::vector<Mass> checkLoads(AthleteId athlete, LiftId lift) const;
    /// Lifts that an athlete has sets of.
    std::vector<LiftId> liftsOf(AthleteId athlete) const;

    /// Sessions of one lift with their points, by athlete, date and ordinal, verified against their
    /// checksums. One ordered scan. A session whose sets are all excluded is there with no points.
    std::vector<LiftSession> liftSessions(const Filter& filter) const;
    /// The same, handed over one at a time, so that nothing but one session is held.
    void scan(const Filter& filter, const std::function<void(const LiftSession&)>& visit) const;

    /// The other tests of a session, verified against their checksum.
    Battery battery(SessionId session) const;
    /// Every session of an athlete by date, with what battery it has.
    std::vector<BatterySession> batteries(AthleteId athlete) const;
    /// The same of one or all athletes, by athlete and date, handed over one at a time.
    void scanBatteries(std::optional<AthleteId> athlete,
                       const std::function<void(const BatterySession&)>& visit) const;

    // Writes. An add with an id given back by a remove restores exactly what was there (undo); no
    // key is ever given out twice. BadInput: a value that may not stand, a name that is taken.
    // Conflict: what is referred to is gone, still in use (the message says by what), or there
    // already.
    AthleteId add(const Athlete& athlete, std::optional<AthleteId> id = {});
    LiftId add(const Lift& lift, std::optional<LiftId> id = {});
    DeviceId add(const Device& device, std::optional<DeviceId> id = {});
    BlockId add(const Block& block, std::optional<BlockId> id = {});
    EquipmentId add(const Equipment& equipment, std::optional<EquipmentId> id = {});
    TestKindId add(const TestKind& kind, std::optional<TestKindId> id = {});
    StationId add(const Station& station, std::optional<StationId> id = {});
    SessionId add(const SessionHead& session, std::optional<SessionId> id = {});
    /// Appends a set (ordinal: the next one) or, with ordinal and id given, puts it back where it
    /// was.
    SetId add(SessionId session, LiftId lift, const Set& set, std::optional<int> ordinal = {},
              std::optional<SetId> id = {});
    void change(AthleteId id, const Athlete& athlete);
    void change(LiftId id,
                const Lift& lift); ///< a changed point rule rewrites the stored points of the lift
    void change(DeviceId id, const Device& device);
    void change(BlockId id, const Block& block);
    void change(EquipmentId id, const Equipment& equipment);
    /// Conflict where attempts exist and its formula changes or sides that it had.
    void change(TestKindId id, const TestKind& kind);
    void change(StationId id, const Station& station);
    void change(SessionId id, const SessionHead& session);
    void change(SetId id, const Set& set);
    void remove(AthleteId id); ///< Conflict while sessions of the athlete exist
    void remove(LiftId id);
    void remove(DeviceId id);
    void remove(BlockId id);
    void remove(EquipmentId id);
    void remove(TestKindId id);
    void remove(StationId id); ///< with its rosters
    void remove(SessionId id); ///< with its sets, their conditions and its battery
    void remove(SetId id);     ///< the ordinals of the others stay
    /// Puts a session's battery in place of what it had, as asKept() has it.
    void setBattery(SessionId session, const Battery& battery);
    /// Puts the conditions of a lift or a test in a session in place of what was written down.
    /// There may be no set and no attempt yet.
    void setConditions(SessionId session, LiftId lift, const Conditions& conditions);
    void setConditions(SessionId session, TestKindId test, const Conditions& conditions);
    /// Puts a roster in place of that station's and day's; nobody takes it away.
    void setRoster(const Roster& roster);
    void setCheckLoads(AthleteId athlete, LiftId lift, const std::vector<Mass>& loads);

    /// Everything that work writes goes in as one transaction, or, when it throws, not at all.
    void together(const std::function<void()>& work);

    /// Rises with every commit by any program: another window's write is seen by comparing it.
    long dataVersion() const;

    /// Everything found wrong: SQLite's own check, foreign keys, the rules of the tables,
    /// checksums, what is missing by the tallies, stored points against their reps. Empty: whole
    /// and sound.
    std::vector<Words> check() const;

    /// What lists and scans have left out so far under Access::Salvage, a sentence each.
    std::vector<Words> leftOut() const;

    /// A copy, made under a temporary name beside target, checked, synced, renamed. target must not
    /// exist. Gives what check() finds wrong with the copy, which is kept all the same: it is as
    /// damaged as the log.
    [[nodiscard]] std::vector<Words> backup(const std::filesystem::path& target) const;

    /// The layout's version that this program writes.
    static int newestVersion();

    struct Impl; ///< known to core/log's own sources only
    Impl& impl() const { return *m_impl; }

private:
    explicit Log(std::unique_ptr<Impl> impl);
    std::unique_ptr<Impl> m_impl;
};

} // namespace slopebook::log

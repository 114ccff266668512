// SPDX-License-Identifier: GPL-3.0-or-later
// What stands behind a Log, shared by its sources: the connection, and the sessions whose checksums
// and tallies are still to be written in the transaction under way.
#pragma once

#include "core/log/checksum.h"
#include "core/log/connection.h"
#include "core/log/failure.h"
#include "core/log/log.h"
#include "core/log/query.h"
#include "core/log/takennames.h"
#include "core/log/tally.h"
#include "core/log/transaction.h"

#include <any>
#include <map>
#include <type_traits>
#include <vector>

namespace slopebook::log {

struct Log::Impl {
    Impl(const std::filesystem::path& file, Connection::Purpose purpose, const Layout& layout);

    Connection db;
    int depth = 0;        ///< of the transactions under way
    long commits = 0;     ///< of this log itself
    bool salvage = false; ///< what is damaged is left out of lists
    std::vector<Words> leftOut;
    std::unique_ptr<ReadScope>
        moment;                 ///< what is read is of one moment (snapshot.h); a write ends it
    std::function<void()> held; ///< to be passed before anything is written; see hold.h
    std::map<std::string_view, TakenNames> names; ///< by kind of thing
    std::any kept; ///< what others worked out; see keptBeside() in history.h
    /// Whose sessions this log itself has changed, in the order of the changes, for
    /// AthleteWatch of history.h; nothing: something was taken back, of whomever.
    std::vector<std::optional<AthleteId>> changes;

    /// Does the work as one transaction, or as a part of the one under way.
    template <class Work>
    auto write(const Work& work) {
        passHold();
        moment.reset();
        Part part(*this);
        if constexpr (std::is_void_v<decltype(work())>) {
            work();
            part.commit();
        } else {
            auto result = work();
            part.commit();
            return result;
        }
    }
    /// A transaction or a part of one, and what is marked in it, which is forgotten with it however
    /// it ends: a mark that stayed would have a later read write a new checksum over whatever is in
    /// the file by then.
    class Part {
    public:
        explicit Part(Impl& impl);
        ~Part();
        Part(const Part&) = delete;
        Part& operator=(const Part&) = delete;
        void commit();

    private:
        Impl& m_impl;
        std::optional<WriteScope> m_scope;
        std::size_t m_changesBefore = 0;
        bool m_committed = false;
    };
    void passHold();

    /// What a session counts for in a tally.
    struct Counted {
        AthleteId athlete{};
        std::uint64_t weighs = 0;
    };
    /// A session that the transaction changes.
    struct Mark {
        std::optional<Counted> counted{}; ///< as the tallies hold it; nothing: not yet
        bool rewritten = false;           ///< its checksums are to be made anew
    };
    using Marks = std::map<SessionId, Mark>;
    Marks touched;              ///< what is still to be settled in this transaction
    std::vector<Marks> settled; ///< in each part under way, lest it be taken back

    /// Before a session is changed: it must be as it was written, lest a new checksum hide damage.
    void touch(SessionId session);
    /// Before a session goes, or changes by what has a checksum of its own. Conflict: it is gone.
    Mark& mark(SessionId session);
    /// Writes the checksums and tallies of the sessions marked so far in the transaction under way,
    /// so that they can be read and verified in it. Outside of one nothing is marked, and nothing
    /// written.
    void settle();
    /// Changes a tally by what came (change.things, change.sum) or went.
    void tally(const char* kind, std::int64_t owner, const Tally& change);

    /// Each kind's next key, never given out before; or the given one, noted as given out.
    template <class Id>
    Id key(const char* kind, std::optional<Id> id) {
        return static_cast<Id>(
            nextKey(kind, id ? std::optional(static_cast<std::int64_t>(*id)) : std::nullopt));
    }
    std::int64_t nextKey(const std::string& kind, std::optional<std::int64_t> given);
    /// That many in a row; gives the first.
    std::int64_t reserveKeys(const std::string& kind, std::int64_t count);
    /// Throws unless it is of the same athlete: BadInput, Conflict where what it repeats is gone.
    void requireRepeat(const SessionHead& session, std::optional<SessionId> id);

    /// Throws: what was read is not what was written.
    [[noreturn]] void damaged(const Words& what) const;
    /// The same, or when salvaging, noted and to be left out.
    void leaveOut(const Words& what);
    /// Does work; damage that it meets is thrown on, or when salvaging, noted. Whether all went
    /// well.
    template <class Work>
    bool salvaging(const Work& work) {
        try {
            work();
            return true;
        } catch (const LogError& error) {
            if (!salvage || error.kind() != LogError::Kind::Damaged)
                throw;
            note(error.words());
            return false;
        }
    }
    /// The next row; when salvaging, none when it cannot be read.
    bool next(Query& rows);
    void note(const Words& sentence);
    /// "the session of Lane 3 on 2026-03-14".
    Words called(const SessionHead& session);
    Words athleteName(AthleteId id);
    Words liftName(LiftId id);

    Stored<SessionId, SessionHead> head(SessionId id);
    PointRule rule(LiftId lift);
    /// A head that was found as it was written, with its session's checksum then: while both stay,
    /// its sets need not be read again for the head's sake.
    struct SeenHead {
        SessionHead head;
        std::int64_t checksum = 0;
        friend bool operator==(const SeenHead&, const SeenHead&) = default;
    };
    std::map<SessionId, SeenHead> seenHeads; ///< of the athlete whose sessions were listed last
    /// Throws LogError (Damaged) unless it is as it was written.
    SessionRecord verified(const Stored<SessionId, SessionHead>& head, std::int64_t written);
    /// Throws LogError (Damaged) unless it is as it was written.
    Battery verifiedBattery(SessionId session);
    void eraseBattery(SessionId session);
    /// Throws unless they may stand: BadInput, Conflict where their device is gone.
    void requireConditions(const Conditions& conditions);
    std::vector<std::pair<LiftId, Mass>> allCheckLoads(AthleteId athlete);
    bool checkLoadsSound(AthleteId athlete);
    void sealCheckLoads(AthleteId athlete); ///< writes their checksum

    // Parts of check(): each adds what it finds.
    using Findings = std::vector<Words>;
    void checkStorage(Findings& findings);
    void checkLists(Findings& findings);
    void checkRosters(Findings& findings);
    void checkAtoms(Findings& findings);
    void checkStoreRows(Findings& findings);
    void checkTally(Findings& findings, const char* kind, const char* table, const Tally& there);
    void checkSessions(Findings& findings);
    void checkBatteries(Findings& findings);
    void checkKeys(Findings& findings);
    void checkRules(Findings& findings);
    void checkOrdinals(Findings& findings);
    void checkTallies(Findings& findings);
    /// How many sessions of an athlete were written, as the tally says.
    std::int64_t sessionsWritten(AthleteId athlete);
};

/// The columns of sessions that a head is read from, and no more.
constexpr char headColumns[] = "SELECT athlete, day, ordinal, id, body_mass_g, repeat_of, "
                               "line_checksum, checksum, note FROM sessions ";
/// A row of headColumns.
Stored<SessionId, SessionHead> readHead(const Query& row);

} // namespace slopebook::log

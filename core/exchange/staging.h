// SPDX-License-Identifier: GPL-3.0-or-later
// What tidy files say, gathered before anything is written: rows of one set may stand anywhere, and
// what contradicts itself is refused with both lines named.
#pragma once

#include "core/exchange/namelist.h"
#include "core/exchange/stagedkeys.h"
#include "core/exchange/table.h"
#include "core/exchange/whois.h"
#include "core/model/lift.h"
#include "core/model/phrases/exchange.h"
#include "core/model/session.h"

#include <compare>
#include <cstdint>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <unordered_map>
#include <utility>
#include <vector>

namespace slopebook::exchange {

/// A load or a speed as a file has it, "62.5 kg", "0.71 m/s", whatever unit a coach reads.
Words asKilograms(Mass mass);
Words asSpeed(double speed);

/// Where something was said: which of the files, which line.
struct Place {
    int file = 0, line = 0;
    friend auto operator<=>(const Place&, const Place&) = default;
};

/// A value with the place that said it first.
template <class T>
struct WithPlace {
    T value{};
    Place place;
};
/// One that most rows do not say: it takes no more room than it must.
template <class T>
class MaybeWithPlace {
public:
    MaybeWithPlace() = default;
    MaybeWithPlace(const MaybeWithPlace& other)
        : m_held(other ? std::make_unique<WithPlace<T>>(*other) : nullptr) {}
    MaybeWithPlace(MaybeWithPlace&&) noexcept = default;
    ~MaybeWithPlace() = default;
    MaybeWithPlace& operator=(MaybeWithPlace other) noexcept {
        m_held = std::move(other.m_held);
        return *this;
    }
    MaybeWithPlace(WithPlace<T> said) : m_held(std::make_unique<WithPlace<T>>(std::move(said))) {}

    explicit operator bool() const { return m_held != nullptr; }
    const WithPlace<T>& operator*() const { return *m_held; }
    const WithPlace<T>* operator->() const { return m_held.get(); }

private:
    std::unique_ptr<WithPlace<T>> m_held;
};

struct StagedRep {
    int number = 1;   ///< as the file numbers it
    int excluded = 0; ///< index into Staging::texts
    double velocity = 0;
    Place place;
};

struct StagedSet {
    int session = 0, lift = 0; ///< indices into Staging
    int number = 1;
    WithPlace<Mass> load;
    MaybeWithPlace<bool> maximum;
    MaybeWithPlace<std::string> excluded;
    MaybeWithPlace<Outcome> outcome;
    MaybeWithPlace<std::string> reason;
    MaybeWithPlace<Effort> effort;
    std::vector<WithPlace<std::string>> notes; ///< different ones, in the order of the file
    std::vector<StagedRep> reps;               ///< by number once finish() has run
};

struct StagedSession {
    int athlete = 0; ///< index into Staging
    Date date{};
    int ordinal = 1;
    Place place;
    /// Of the whole session, as a table of sessions says them: of whatever it holds.
    MaybeWithPlace<std::string> device, site;
    MaybeWithPlace<std::string> repeatOf, note;
    MaybeWithPlace<Mass> bodyMass;
    long lastRow = 0; ///< that spoke of it, as Staging counts rows
};

/// Under what a lift of a session was measured.
struct StagedConditions {
    int session = 0, lift = 0; ///< indices into Staging
    MaybeWithPlace<std::string> device, place, surface, footwear, technique, notComparable;
};

/// A lift, or one load of it, that was not possible.
struct StagedGap {
    int session = 0, lift = 0; ///< indices into Staging
    std::optional<Mass> load;
    std::string reason;
    Place place;
};

struct StagedLift {
    std::string name;
    MaybeWithPlace<VelocityKind> kind;
};

/// A block that a row names, and the row's day.
struct StagedBlock {
    std::string name;
    Date date{};
};

constexpr std::size_t flagsKept = 100;

class SortedRows;

class Staging {
public:
    std::vector<std::filesystem::path> files;
    std::vector<std::string> texts{std::string{}}; ///< reasons for excluding reps; 0 is none
    NameList athletes, liftNames;
    std::vector<StagedLift> lifts; ///< as liftNames
    std::vector<StagedSession> sessions;
    std::vector<StagedSet> sets;
    std::vector<StagedConditions> conditions; ///< of each lift of a session of which rows say any
    std::vector<StagedGap> gaps;
    std::vector<StagedBlock> blocks; ///< each block and day once
    int rows = 0;
    /// Worth a look, with their lines: the first flagsKept by place.
    std::vector<std::pair<Place, Words>> flagged;
    std::size_t flaggedMore = 0; ///< the others

    /// Reads a tidy file; returns its columns that were not used.
    std::vector<std::string> readTidy(const std::filesystem::path& file, const ColumnMap& columns,
                                      const Progress& progress = {});
    /// Reads a table of sessions (as exported) without their sets.
    std::vector<std::string> readSessions(const std::filesystem::path& file);
    /// The same by hand: begin() a file, then take() each of its rows as tidy cells.
    void begin(const std::filesystem::path& file) {
        m_file = static_cast<int>(files.size());
        files.push_back(file);
    }
    void take(const Cells& cells) { takeRow(cells); }
    /// Where set: what is refused of a row or by finish() is handed to it, and the work goes on,
    /// instead of being thrown.
    std::function<void(const BadInput&)> refused;
    /// Who an athlete of the files is, where the coach has said it.
    WhoIsWho who{};
    /// Orders the reps of each set; refuses one that is there twice.
    void finish();
    /// Where set: called as soon as so many sets are held, while a row is taken, with those
    /// sessions alone in the lists above, finished, of which the last so many rows said nothing.
    /// They are forgotten then, what is not of one session too (blocks).
    std::function<void()> handOver;
    std::size_t setsHeld = 16384;

    /// From now on rows are put aside, their names and blocks noted: for a file out of order. What
    /// a row says else is looked at once takeSorted() takes all of them, session by session.
    /// std::system_error where they find no room.
    void sortFirst();
    void takeSorted(const Progress& progress);

    /// "line 7", with the file's name where there are several.
    Words lineOf(const Place& place) const;
    [[noreturn]] void contradict(const Place& place, const char* column, const Words& found,
                                 const Words& expected) const;

private:
    void takeRow(const Cells& cells);
    template <class Work>
    void orRefuse(const Work& work) {
        try {
            work();
        } catch (const BadInput& bad) {
            if (!refused)
                throw;
            refused(bad);
        }
    }
    void refuseCells(const Cells& cells, const BadInput& first);
    int athlete(const Cells& cells);
    void takeHead(const Cells& cells, int session);
    void takeConditions(const Cells& cells, int session, int lift);
    int lift(const Cells& cells);
    int newRunOfLift(const Cells& cells);
    int session(const Cells& cells);
    StagedSet& set(const Cells& cells, int session, int lift);
    StagedSet& runOfSet(const Cells& cells, int session, int lift);
    void takeRep(const Cells& cells, StagedSet& set);
    bool takeNotPossible(const Cells& cells, int session, int lift);
    bool holdsNoSet(const Cells& cells) const;
    void requireNotPossible(const Cells& cells) const;
    void takeOutcome(const Cells& cells, StagedSet& set);
    void finishSet(StagedSet& set);
    void putAside(const Cells& cells);
    void handOverQuiet();
    void findAgain();
    void takeBlock(const Cells& cells, Date date);
    int text(const std::string& text);
    void flag(const Place& place, const Words& what);
    Place here(const Cells& cells) const;
    /// What is said of one thing in several rows must be the same.
    template <class T, class Show>
    void once(const Cells& cells, std::size_t column, MaybeWithPlace<T>& held, const T& value,
              const Show& show, Phrase otherwise);
    void onceText(const Cells& cells, std::size_t column, MaybeWithPlace<std::string>& held,
                  Phrase otherwise);

    std::unordered_map<std::string, int> m_textAt;
    std::unordered_map<StagedPlace, int, Spread> m_setAt;
    std::unordered_map<StagedPlace, int, Spread> m_conditionsAt; // number 0
    std::unordered_map<StagedDay, int, Spread> m_sessionAt;
    std::map<std::string, std::map<Date, bool>> m_blockDays;
    // Rows come in runs: what the one before said, as it is spelled, and what that was.
    struct Run {
        std::string date, athlete, ordinal, lift, kind, set, load;
        int session = -1, liftAt = -1;
        int setAt = -1, setSession = -1, setLift = -1;
    };
    Run m_run;
    std::string m_lastBlock;
    Date m_lastBlockDay{};
    std::size_t m_handOverAt = 0;
    std::shared_ptr<SortedRows> m_aside;
    std::string m_asideRow;
    int m_file = 0; // of the row that is taken
};

template <class T, class Show>
void Staging::once(const Cells& cells, std::size_t column, MaybeWithPlace<T>& held, const T& value,
                   const Show& show, Phrase otherwise) {
    if (held && held->value != value)
        cells.refuse(column, say(otherwise, show(held->value), lineOf(held->place)));
    if (!held)
        held = WithPlace<T>{value, here(cells)};
}

/// Whether a row says anything of the conditions of its lift.
bool saysConditions(const Cells& cells);
constexpr Phrase isoDayExpected = "a date written year-month-day, such as 2026-03-14";
constexpr Phrase setNumberExpected = "the set's number, from 1 on";
constexpr Phrase repNumberExpected = "the rep's number, from 1 on";
constexpr Phrase speedWanted =
    "a speed in m/s above 0 and under 10, with a decimal point, such as 0.92";
constexpr Phrase loadWanted = "a load in kg from 0 to 2000, with a decimal point, such as 72.5";

/// A staged set as the log keeps it.
Set asSet(const Staging& staging, const StagedSet& staged);

} // namespace slopebook::exchange

// SPDX-License-Identifier: GPL-3.0-or-later
// The open log as the windows see it: reads go to log(), every change goes through one of the edits
// below, each a QUndoCommand that is one transaction and is undone by another; changed() then says
// what changed.
#pragma once

#include "core/log/log.h"
#include "ui/words/units.h"

#include <QObject>
#include <QUndoStack>

#include <functional>
#include <memory>
#include <optional>

namespace slopebook::questions {
struct LiftContext;
}

namespace slopebook::ui {

/// What one line at a station writes: into a session or a new one, sets of a lift, a battery, or
/// what was not possible.
struct Entry {
    std::optional<SessionId> session{}; ///< else head's, which is made
    SessionHead head{};
    std::optional<LiftId> lift{};
    std::optional<Conditions> conditions{}; ///< of the lift, where sets come
    std::vector<Set> sets{};
    std::function<void(Battery&)> battery{}; ///< changes the session's; nothing: it stays
    QString text{};                          ///< what the undo menu calls it
};
struct WrittenEntry {
    SessionId session{};
    std::vector<SetId> sets{};
};

/// Common practice: a test is repeated within a week.
constexpr int usualRepeatDays = 7;

class Logbook : public QObject {
    Q_OBJECT
public:
    explicit Logbook(log::Log log, QObject* parent = nullptr);
    ~Logbook() override;

    const log::Log& log() const;
    /// What all athletes' sessions of a lift say together, read anew only when the log has changed
    /// since. Throws LogError. Good until the next call.
    const questions::LiftContext& context(LiftId lift) const;
    /// The same to keep: it stays as it was asked, whatever is written since.
    std::shared_ptr<const questions::LiftContext> sharedContext(LiftId lift) const;
    QUndoStack* undoStack();
    /// In which unit the windows show loads and take bare numbers; the log itself holds grams.
    LoadUnit loadUnit() const { return m_loadUnit; }
    void setLoadUnit(LoadUnit unit) { m_loadUnit = unit; }
    /// How many days may lie between a test and its repeat test; the coach's own.
    int repeatDays() const { return m_repeatDays; }
    void setRepeatDays(int days) { m_repeatDays = days; }

    // Each throws LogError or BadInput and then has changed nothing, on disk or in the undo stack.
    AthleteId addAthlete(const Athlete& athlete);
    LiftId addLift(const Lift& lift);
    DeviceId addDevice(const Device& device);
    BlockId addBlock(const Block& block);
    EquipmentId addEquipment(const Equipment& equipment);
    TestKindId addTestKind(const TestKind& kind);
    StationId addStation(const Station& station);
    /// With the conditions of lifts that are to be done in it.
    SessionId addSession(const SessionHead& session,
                         const std::vector<LiftConditions>& conditions = {});
    /// All of them or none, and one step of undo. sets must not be empty. under: the conditions of
    /// the lift, where its first sets in the session are to bring them along.
    std::vector<SetId> addSets(SessionId session, LiftId lift, const std::vector<Set>& sets,
                               const std::optional<Conditions>& under = {});
    void changeAthlete(AthleteId id, const Athlete& athlete);
    void changeLift(LiftId id, const Lift& lift);
    void changeDevice(DeviceId id, const Device& device);
    void changeBlock(BlockId id, const Block& block);
    void changeEquipment(EquipmentId id, const Equipment& equipment);
    void changeTestKind(TestKindId id, const TestKind& kind);
    void changeStation(StationId id, const Station& station);
    /// conditions: of one of its lifts, changed in the same step.
    void changeSession(SessionId id, const SessionHead& session,
                       const std::optional<LiftConditions>& conditions = {});
    void setConditions(SessionId session, LiftId lift, const Conditions& conditions);
    /// Two sessions of a day that were made only for a second device, as one
    /// (core/log/splitdays.h).
    void joinSessions(SessionId into, SessionId from);
    void changeSet(SetId id, const Set& set);
    void removeBlock(BlockId id);
    void removeEquipment(EquipmentId id);
    void removeTestKind(TestKindId id);
    void removeStation(StationId id);
    void removeSession(SessionId id);
    void removeSet(SetId id);
    /// text: what the undo menu calls it. Does nothing where the battery is as it was.
    void setBattery(SessionId session, const Battery& battery, const QString& text);
    void setCheckLoads(AthleteId athlete, LiftId lift, const std::vector<Mass>& loads);
    void setRoster(const Roster& roster);
    /// One step of undo, which takes back what came with it and nothing that others wrote.
    WrittenEntry enter(const Entry& entry);

    /// Looks whether another program wrote to the log; emits changed() when it did. Called by a
    /// timer of the shell.
    void lookForOthersWrites();

    /// For an import or a restore: work changes the log directly in one transaction; the undo stack
    /// is cleared. A dry run promises to write nothing: the stack stays, and nothing is said.
    void applyOutsideUndo(const std::function<void(log::Log&)>& work, bool dryRun = false);

    enum class What {
        Athletes,
        Lifts,
        Devices,
        Blocks,
        Equipment,
        Tests,
        Sessions,
        Sets,
        Battery,
        CheckLoads,
        Stations,
        Everything
    };
    Q_ENUM(What)

    /// One step back or forth: where what it changes can be seen, and what it is, in words.
    struct Step {
        What what = What::Everything;
        std::optional<AthleteId> athlete{};
        std::optional<LiftId> lift{};
        std::optional<SessionId> session{}; ///< that stands in the log
        QString words{};                    ///< "add set (60 kg, Bench pull, Lane 3, 2026-03-14)"
    };
    /// Nothing where there is none. Throws LogError.
    std::optional<Step> nextUndo() const;
    std::optional<Step> nextRedo() const;

Q_SIGNALS:
    /// session is 0 where the change is not about one session.
    void changed(slopebook::ui::Logbook::What what, qint64 session);
    /// A change made by undo or redo failed; the message is a sentence for the coach.
    void failed(const QString& message);

private:
    LoadUnit m_loadUnit = LoadUnit::Kilograms;
    int m_repeatDays = usualRepeatDays;
    struct Impl;
    std::unique_ptr<Impl> m_impl;
};

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
// One change to the log that can be taken back: the base of every edit, and what all edits share.
#pragma once

#include "ui/edits/logbook.h"

#include <QUndoCommand>

#include <functional>
#include <optional>
#include <string>

namespace slopebook::ui {

/// What an edit needs of the logbook that runs it.
struct EditHost {
    log::Log& log;
    std::function<void(Logbook::What, qint64)> changed; ///< says what an undo or redo changed
    std::function<void(const QString&)> failed;         ///< a sentence for the coach
    std::function<void()>
        keepPlace; ///< the step did not happen: the stack goes back to where it was
};

/// Is made only after its change stands on disk, so that the first redo() by QUndoStack::push does
/// nothing. A step that fails leaves the disk as it was: the stack then steps back, or, where the
/// step can never succeed (Conflict, Damaged), drops the edit.
class Edit : public QUndoCommand {
public:
    Edit(EditHost& host, const QString& text) : QUndoCommand(text), m_host(host) {}
    void undo() final;
    void redo() final;

    // What it is of, for the coach to see before it is taken back.
    virtual Logbook::What what() const = 0;
    virtual qint64 session() const { return 0; } ///< 0: of none
    /// Where the session may not stand in the log just now, or there is none.
    virtual std::optional<AthleteId> athlete() const { return {}; }
    virtual std::optional<LiftId> lift() const { return {}; }
    /// "60 kg", or a name.
    virtual QString object(LoadUnit /*unit*/) const { return {}; }

protected:
    log::Log& log() const { return m_host.log; }
    /// One transaction; throws and has changed nothing.
    virtual void apply() = 0;
    /// Its inverse, likewise.
    virtual void takeBack() = 0;

private:
    void step(bool forward);

    EditHost& m_host;
    bool m_applied = true;
};

/// What a step back or forth would change. Throws LogError.
Logbook::Step stepOf(const Edit& edit, const log::Log& log, LoadUnit unit);

/// Throws LogError::Conflict: what an edit left behind has been changed since by another window.
[[noreturn]] void refuseChangedElsewhere();

/// The value of that id in what a list of the log gave; throws LogError::Conflict where it is gone.
template <class Id, class Value>
const Value& valueOf(const std::vector<Stored<Id, Value>>& all, Id id) {
    for (const Stored<Id, Value>& one : all)
        if (one.id == id)
            return one.value;
    refuseChangedElsewhere();
}

} // namespace slopebook::ui

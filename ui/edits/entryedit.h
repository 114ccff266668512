// SPDX-License-Identifier: GPL-3.0-or-later
// What one line wrote: sets or attempts with their conditions, and the session they are of where
// there was none yet. Taken back as it came, all in one step.
#pragma once

#include "ui/edits/edit.h"

namespace slopebook::ui {

/// As it stands on disk once it is written.
struct Entered {
    SessionId session{};
    std::optional<SessionHead> made{}; ///< the session came with it
    std::optional<LiftId> lift{};
    Conditions conditionsBefore{}, conditions{}; ///< of the lift
    std::vector<log::PlacedSet> sets{};
    Battery batteryBefore{}, battery{};
};

class EntryEdit final : public Edit {
public:
    EntryEdit(EditHost& host, const QString& text, Entered entered)
        : Edit(host, text), m_entered(std::move(entered)) {}
    Logbook::What what() const override;
    qint64 session() const override { return raw(m_entered.session); }
    std::optional<AthleteId> athlete() const override;
    std::optional<LiftId> lift() const override { return m_entered.lift; }
    QString object(LoadUnit unit) const override;

protected:
    void apply() override;
    void takeBack() override;

private:
    Entered m_entered;
};

/// Writes what is typed at a station, as one transaction: entry.session's own session, or a new one
/// where made is given (then its id is made too). Gives what stands on disk.
Entered enter(log::Log& log, Entry entry);

} // namespace slopebook::ui

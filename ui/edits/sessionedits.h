// SPDX-License-Identifier: GPL-3.0-or-later
// Edits of sessions. A session that goes takes its sets along and comes back with them.
#pragma once

#include "ui/edits/edit.h"

namespace slopebook::ui {

/// A session came into the log; undone by taking it out with all it holds by then.
class AddSessionEdit final : public Edit {
public:
    AddSessionEdit(EditHost& host, log::SessionRecord added);
    Logbook::What what() const override { return Logbook::What::Sessions; }
    qint64 session() const override { return raw(m_record.head.id); }
    std::optional<AthleteId> athlete() const override { return m_record.head.value.athlete; }
    QString object(LoadUnit unit) const override;

protected:
    void apply() override;
    void takeBack() override;

private:
    log::SessionRecord m_record;
};

/// A session was taken out; undone by putting it back whole.
class RemoveSessionEdit final : public Edit {
public:
    RemoveSessionEdit(EditHost& host, log::SessionRecord removed);
    Logbook::What what() const override { return Logbook::What::Sessions; }
    qint64 session() const override { return raw(m_record.head.id); }
    std::optional<AthleteId> athlete() const override { return m_record.head.value.athlete; }
    QString object(LoadUnit unit) const override;

protected:
    void apply() override;
    void takeBack() override;

private:
    log::SessionRecord m_record;
};

/// What a session is (not its sets), and the conditions of one of its lifts.
struct HeadChange {
    SessionHead before{}, after{};
    std::optional<LiftId> lift{};
    Conditions conditionsBefore{}, conditionsAfter{};
    void make(log::Log& log, SessionId session) const; ///< one transaction
    HeadChange reversed() const;
};

/// It was changed.
class ChangeSessionEdit final : public Edit {
public:
    ChangeSessionEdit(EditHost& host, SessionId id, HeadChange change);
    Logbook::What what() const override { return Logbook::What::Sessions; }
    qint64 session() const override { return raw(m_id); }

protected:
    void apply() override { turn(m_change); }
    void takeBack() override { turn(m_change.reversed()); }

private:
    void turn(const HeadChange& change);

    SessionId m_id;
    HeadChange m_change;
};

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
// Edits of sessions. A session that goes takes its sets along and comes back with them.
#pragma once

#include "ui/edits/edit.h"

namespace slopebook::ui {

/// A session that stands in the log or in the edit, whole.
class WholeSessionEdit : public Edit {
public:
    Logbook::What what() const override { return Logbook::What::Sessions; }
    qint64 session() const override { return raw(m_record.head.id); }
    std::optional<AthleteId> athlete() const override { return m_record.head.value.athlete; }
    QString object(LoadUnit unit) const override;

protected:
    WholeSessionEdit(EditHost& host, const QString& text, log::SessionRecord record);
    void putBack();
    void takeOut();

private:
    log::SessionRecord m_record;
};

/// A session came into the log; undone by taking it out with all it holds by then.
class AddSessionEdit final : public WholeSessionEdit {
public:
    AddSessionEdit(EditHost& host, log::SessionRecord added);

protected:
    void apply() override { putBack(); }
    void takeBack() override { takeOut(); }
};

/// A session was taken out; undone by putting it back whole.
class RemoveSessionEdit final : public WholeSessionEdit {
public:
    RemoveSessionEdit(EditHost& host, log::SessionRecord removed);

protected:
    void apply() override { takeOut(); }
    void takeBack() override { putBack(); }
};

/// Two sessions of one day became one; undone by parting them again.
class JoinSessionsEdit final : public Edit {
public:
    /// Both as they were, and the one as it is.
    struct Records {
        log::SessionRecord into{}, from{}, joined{};
    };
    JoinSessionsEdit(EditHost& host, Records records);
    Logbook::What what() const override { return Logbook::What::Sessions; }
    qint64 session() const override { return raw(m_was.into.head.id); }

protected:
    void apply() override;
    void takeBack() override;

private:
    Records m_was;
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

// SPDX-License-Identifier: GPL-3.0-or-later
// Edits of sets: load, reps, what is excluded, notes.
#pragma once

#include "ui/edits/edit.h"

namespace slopebook::ui {

/// Sets typed or pasted at once, all of one session and lift.
class AddSetsEdit final : public Edit {
public:
    /// under: the conditions of the lift that came with them.
    AddSetsEdit(EditHost& host, std::vector<log::PlacedSet> added, std::optional<Conditions> under);
    Logbook::What what() const override { return Logbook::What::Sets; }
    qint64 session() const override { return raw(m_sets.front().session); }
    std::optional<LiftId> lift() const override { return m_sets.front().lift; }
    QString object(LoadUnit unit) const override;

protected:
    void apply() override;
    void takeBack() override;

private:
    std::vector<log::PlacedSet> m_sets;
    std::optional<Conditions> m_under;
};

class RemoveSetEdit final : public Edit {
public:
    RemoveSetEdit(EditHost& host, log::PlacedSet removed);
    Logbook::What what() const override { return Logbook::What::Sets; }
    qint64 session() const override { return raw(m_set.session); }
    std::optional<LiftId> lift() const override { return m_set.lift; }
    QString object(LoadUnit unit) const override;

protected:
    void apply() override;
    void takeBack() override;

private:
    log::PlacedSet m_set;
};

class ChangeSetEdit final : public Edit {
public:
    ChangeSetEdit(EditHost& host, log::PlacedSet before, Set after);
    Logbook::What what() const override { return Logbook::What::Sets; }
    qint64 session() const override { return raw(m_before.session); }
    std::optional<LiftId> lift() const override { return m_before.lift; }
    QString object(LoadUnit unit) const override;

protected:
    void apply() override { turn(m_before.set, m_after); }
    void takeBack() override { turn(m_after, m_before.set); }

private:
    void turn(const Set& from, const Set& to);

    log::PlacedSet m_before;
    Set m_after;
};

} // namespace slopebook::ui

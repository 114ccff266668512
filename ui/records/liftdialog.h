// SPDX-License-Identifier: GPL-3.0-or-later
// Adds a lift, or changes one: how it is measured, its threshold, its smallest changes.
#pragma once

#include "core/model/lift.h"
#include "ui/parts/formdialog.h"

class QCheckBox;
class QComboBox;

namespace slopebook::ui {

class LiftDialog final : public FormDialog {
    Q_OBJECT
public:
    /// Nothing in id: a new lift.
    LiftDialog(Logbook& logbook, std::optional<LiftId> id, QWidget* parent);
    /// The lift that was added or changed, once accepted.
    LiftId id() const { return *m_id; }

protected:
    void save() override;

private:
    void build();
    void connectFields();
    /// What the published table says of the name and kind that now stand in the fields.
    void offerPublished();
    void fitToBallistic();
    VelocityKind kind() const;
    QString smallestOneRmShown() const;
    std::optional<double> typedSmallestOneRm() const;
    std::optional<Mvt> typedMvt() const;

    std::optional<LiftId> m_id;
    Lift m_lift;
    std::optional<Mvt> m_published;
    bool m_mvtIsOffered =
        false; ///< the threshold in the field came from the table, not from typing
    QLineEdit* m_name;
    QComboBox* m_kind;
    QComboBox* m_rule;
    QCheckBox* m_ballistic;
    QCheckBox* m_movesBody = nullptr;
    QLineEdit* m_mvt;
    QLineEdit* m_mvtSd;
    QLineEdit* m_mvtSource;
    QLineEdit* m_smallestVelocity;
    QLineEdit* m_smallestOneRm;
    QLineEdit* m_note;
};

} // namespace slopebook::ui

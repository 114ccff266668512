// SPDX-License-Identifier: GPL-3.0-or-later
// One set of equipment: bars, plates in pairs, masses that are used or not, a ceiling. Masses may
// be typed in kg or, with "lb" behind the number, in pounds.
#pragma once

#include "core/model/equipment.h"

#include <QDialog>

class QLabel;
class QLineEdit;
class QTableWidget;

namespace slopebook::ui {

class EquipmentDialog : public QDialog {
    Q_OBJECT
public:
    explicit EquipmentDialog(const Equipment& equipment, QWidget* parent = nullptr);

    /// What the fields say. Throws BadInput for what cannot stand.
    Equipment equipment() const;
    void accept() override;

private:
    void build();
    void fill(const Equipment& equipment);

    QLineEdit* m_name;
    QTableWidget* m_bars;
    QTableWidget* m_plates;
    QTableWidget* m_alone;
    QTableWidget* m_added;
    QLineEdit* m_ceiling;
    QLineEdit* m_note;
    QLabel* m_problem;
};

/// A mass as a coach types it: "20", "2,5", "45 lb". Throws BadInput naming what for.
std::pair<ExactMass, MassUnit> readMassWithUnit(const QString& typed, const QString& what);

} // namespace slopebook::ui

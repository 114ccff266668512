// SPDX-License-Identifier: GPL-3.0-or-later
// Asks what a pasted block of loads and speeds leaves open, and shows the sets that it makes.
#pragma once

#include "ui/importing/pastedblock.h"
#include "ui/words/units.h"

#include <QDialog>

class QComboBox;
class QFormLayout;
class QLabel;
class QPushButton;

namespace slopebook::ui {

class PasteDialog final : public QDialog {
    Q_OBJECT
public:
    /// unit: in which the loads are shown.
    PasteDialog(PastedBlock block, LoadUnit unit, QWidget* parent = nullptr);
    /// The block as it was answered.
    const PastedBlock& block() const { return m_block; }

private:
    QComboBox* ask(const QString& question, const QString& name);
    void askRows();
    void askDecimal(const exchange::Question& question);
    void askSpeed(const exchange::Question& question);
    void showSets();

    PastedBlock m_block;
    LoadUnit m_unit;
    QFormLayout* m_questions;
    QLabel* m_sets;
    QPushButton* m_take;
    std::vector<QComboBox*> m_asked;
};

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
// Tests of the battery: the list of the log's, and the form for one.
#pragma once

#include "ui/parts/formdialog.h"

class QComboBox;
class QListWidget;
class QSpinBox;

namespace slopebook::ui {

class TestDialog final : public FormDialog {
    Q_OBJECT
public:
    /// Without an id: a new test that starts from `start`.
    TestDialog(Logbook& logbook, std::optional<TestKindId> id, const TestKind& start,
               QWidget* parent);
    std::optional<TestKindId> id() const { return m_id; }

protected:
    void save() override;

private:
    void build(const TestKind& start);
    TestKind read() const;

    std::optional<TestKindId> m_id;
    QLineEdit* m_name;
    QLineEdit* m_unit;
    QComboBox* m_better;
    QComboBox* m_sides;
    QComboBox* m_rule;
    QSpinBox* m_bestOf;
    QSpinBox* m_attempts;
    QComboBox* m_formula;
    QSpinBox* m_decimals;
    QLineEdit* m_noise;
    QComboBox* m_noiseIn;
    QLineEdit* m_noiseSource;
    QLineEdit* m_smallest;
    QLineEdit* m_smallestSource;
    QLineEdit* m_note;
};

class TestsDialog final : public QDialog {
    Q_OBJECT
public:
    TestsDialog(Logbook& logbook, QWidget* parent);

private:
    void fill();
    void change();
    void remove();
    std::optional<TestKindId> current() const;

    Logbook& m_logbook;
    QListWidget* m_list;
};

} // namespace slopebook::ui

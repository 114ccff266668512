// SPDX-License-Identifier: GPL-3.0-or-later
// A station: what is done there, under which conditions, how much of it, and whether athletes take
// turns.
#pragma once

#include "core/questions/batteryquestions.h"
#include "ui/parts/formdialog.h"

class QCheckBox;
class QComboBox;
class QListWidget;
class QSpinBox;

namespace slopebook::ui {

class StationDialog final : public FormDialog {
    Q_OBJECT
public:
    StationDialog(Logbook& logbook, std::optional<StationId> id, QWidget* parent);
    /// As it was saved.
    std::optional<StationId> station() const { return m_id; }

protected:
    void save() override;

private:
    void buildWhat(const Station& station);
    void buildConditions(const Conditions& conditions);
    void buildPlan(const Station& station);
    void fitWhat();
    std::vector<Mass> ladder() const;
    std::vector<TestKindId> tests();

    std::optional<StationId> m_id;
    std::vector<questions::OfferedTest> m_offered;
    QLineEdit* m_name;
    QComboBox* m_lift;
    QListWidget* m_tests;
    QComboBox* m_device;
    QLineEdit* m_surface;
    QLineEdit* m_footwear;
    QLineEdit* m_place;
    QLineEdit* m_technique;
    QLineEdit* m_notComparable;
    QLineEdit* m_ladder;
    QSpinBox* m_sets;
    QCheckBox* m_rotates;
    QLineEdit* m_note;
};

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
// What the coach sets for a plan: session, equipment, ceiling, aim, stop, sets, unit.
#pragma once

#include "core/answers/barfit.h"
#include "core/answers/plan.h"
#include "core/log/log.h"
#include "ui/words/units.h"

#include <QWidget>

#include <map>
#include <string>
#include <vector>

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QSpinBox;

namespace slopebook::ui {

/// The form's fields as values.
struct PlanChoice {
    std::optional<SessionId> session = {};
    std::optional<EquipmentId> equipment = {};
    std::optional<std::size_t> bar =
        {}; ///< of the set of equipment; nothing: whatever makes a load
    std::optional<ExactMass> ceiling = {};
    std::optional<answers::Target> target = {};
    answers::Side side = answers::Side::Nearest;
    std::optional<double> lossPercent = {};
    bool restrictedFlow = false;
    bool history = false; ///< the line that borrows from the athlete's sessions, beside
    LoadUnit unit = LoadUnit::Kilograms;
    int sets = 3; ///< for the card
    int reps = 0; ///< for the card; 0: by the stop speed
};

class PlanForm : public QWidget {
    Q_OBJECT
public:
    explicit PlanForm(QWidget* parent = nullptr);
    /// Shows loads in that unit until another is chosen.
    void setUnit(LoadUnit unit);

    /// Newest first; the chosen one stays chosen where it is still there.
    void setSessions(const std::vector<LiftSession>& sessions);
    /// Whose bars come first: the lift that is planned, and all lifts of the log by name. Good from
    /// the next setEquipment on.
    void setLift(std::string lift, std::vector<std::string> lifts);
    void setEquipment(const std::vector<Stored<EquipmentId, Equipment>>& equipment);
    void chooseEquipment(EquipmentId id);
    /// The line that is planned from: where the aim changes between a share of the 1RM and a speed,
    /// the fields are put over by it. Nothing: they are emptied.
    void setLine(std::optional<answers::Profile> line) { m_line = std::move(line); }
    /// Throws BadInput for a field that holds no number.
    PlanChoice choice() const;

Q_SIGNALS:
    void changed();
    void newEquipmentWanted();
    void changeEquipmentWanted(slopebook::EquipmentId id);
    void removeEquipmentWanted(slopebook::EquipmentId id);

private:
    void build();
    void nameFields();
    void connectFields();
    void fitFields();
    void putOverAim();
    QString putOver(const QString& typed, int aim) const;
    void listBars();
    QString barName(const Bar& bar, const answers::BarFit& fit) const;
    std::optional<EquipmentId> equipmentId() const;

    QComboBox* m_session;
    QComboBox* m_equipment;
    QComboBox* m_bar;
    QPushButton* m_new;
    QPushButton* m_change;
    QPushButton* m_remove;
    QLineEdit* m_ceiling;
    QComboBox* m_aim;
    QLineEdit* m_from;
    QLineEdit* m_to;
    QComboBox* m_side;
    QLineEdit* m_loss;
    QSpinBox* m_sets;
    QSpinBox* m_reps;
    QComboBox* m_unit;
    QCheckBox* m_restricted;
    QCheckBox* m_history;
    QLabel* m_aimUnit;
    int m_fieldsHold;                       ///< which aim the two fields were typed for
    std::optional<answers::Profile> m_line; ///< planned from
    std::vector<Stored<EquipmentId, Equipment>> m_known;
    std::string m_lift;
    std::vector<std::string> m_lifts;
    std::map<std::string, QString> m_barOf; ///< chosen last for a lift
};

} // namespace slopebook::ui

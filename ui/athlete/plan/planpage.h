// SPDX-License-Identifier: GPL-3.0-or-later
// What next: loads from the plates at hand, the test that would settle it, and the card for the
// bar.
#pragma once

#include "core/questions/planquestions.h"
#include "ui/athlete/plan/planchart.h"
#include "ui/athlete/plan/planform.h"
#include "ui/athlete/plan/planmodel.h"
#include "ui/paper/plancard.h"
#include "ui/parts/clock.h"
#include "ui/parts/taskpage.h"

#include <filesystem>
#include <functional>

class QLabel;
class QTableView;
class QBoxLayout;
class QTabWidget;

namespace slopebook::ui {

class Sentence;
class WayOn;

class NextTestPane;
class RelationPane;

class PlanPage : public TaskPage, public Prints {
    Q_OBJECT
public:
    /// clock: how old a line is, is told by it; without it only its day is.
    explicit PlanPage(Logbook& logbook, QWidget* parent = nullptr, Clock clock = {});

    void setAthleteAndLift(std::optional<AthleteId> athlete, std::optional<LiftId> lift) override;
    void refresh(Logbook::What what, SessionId session) override;

    bool canPrint() const override;
    void print() override;
    void printPreview() override;
    void writePdf() override;
    /// Without asking for a name. Throws LogError; canPrint() must hold.
    void writePdfTo(const log::Destination& to) const;

    const PlanModel& loads() const { return *m_model; }
    const PlanChart& chart() const { return *m_chart; }
    /// The control line: the lift stands first in it.
    QBoxLayout* strip() const { return m_strip; }

protected:
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void build();
    void connectParts();
    void read();
    void ask();
    void askNextTest();
    void readRelations();
    void showAge();
    void showReason(const QString& reason);
    void showPlan(const answers::Plan& plan);
    void showChosen();
    std::optional<Equipment> chosenEquipment() const;
    void editEquipment(std::optional<EquipmentId> id);
    void removeEquipment(EquipmentId id);
    PlanCard card() const;
    template <class Work>
    void atTheEdge(const Work& work);

    Logbook& m_logbook;
    Clock m_clock;
    std::optional<AthleteId> m_athlete;
    std::optional<LiftId> m_lift;
    std::optional<questions::Background> m_about;
    std::vector<Stored<EquipmentId, Equipment>> m_equipment;
    std::optional<answers::Profile> m_profile;
    PlanChoice m_choice;
    questions::PlanDay m_day;         ///< that is planned for
    std::vector<std::string> m_lifts; ///< names of all that the log holds

    QBoxLayout* m_strip = nullptr; ///< the control line
    PlanForm* m_form;
    QTabWidget* m_tabs;
    QLabel* m_age; ///< of the line
    Sentence* m_sentence;
    WayOn* m_way; ///< where the test that is missing is typed
    PlanChart* m_chart;
    QTableView* m_table;
    PlanModel* m_model;
    QLabel* m_cautions;
    QLabel* m_borrowed;
    NextTestPane* m_next;
    RelationPane* m_relations;
};

} // namespace slopebook::ui

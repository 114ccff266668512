// SPDX-License-Identifier: GPL-3.0-or-later
// The next test: ladders ranked by the interval they can be expected to give, what a ceiling costs,
// and how many tests make a change clear.
#pragma once

#include "core/questions/planquestions.h"
#include "ui/athlete/plan/ceilingchart.h"
#include "ui/athlete/plan/laddermodel.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QSpinBox;
class QTableView;

namespace slopebook::ui {

class FoldButton;
class Sentence;

class NextTestPane : public QWidget {
    Q_OBJECT
public:
    explicit NextTestPane(QWidget* parent = nullptr);

    /// What is asked about; the pane asks anew when its own fields change.
    struct Question {
        const log::Log* log = nullptr;
        const questions::LiftContext* context = nullptr;
        const questions::Background* about = nullptr;
        const answers::Profile* profile = nullptr;
        Equipment equipment = {};
        std::optional<ExactMass> ceiling = {};
        std::vector<answers::LoadBound> bounds = {}; ///< of the day that is planned for
        LoadUnit unit = LoadUnit::Kilograms;
    };
    /// Asks and shows; throws what the log or a bad setting throws.
    void ask(const Question& question);
    /// The least height of its picture.
    void fitPicture(int height);
    /// In which loads are shown while there is nothing to ask.
    void setUnit(LoadUnit unit);
    void showReason(const QString& reason);
    const std::optional<answers::NextTest>& nextTest() const { return m_model->nextTest(); }

Q_SIGNALS:
    void fieldsChanged();

private:
    void nameSettings();
    void build();

    QSpinBox* m_steps;
    QSpinBox* m_reps;
    QSpinBox* m_heaviest;
    QComboBox* m_known;
    FoldButton* m_settings; ///< opens the fields; its words say what is set
    Sentence* m_sentence;
    QLabel* m_settled;
    QTableView* m_table;
    PlanLadderModel* m_model;
    charts::CeilingChart* m_chart;
    LoadUnit m_unit = LoadUnit::Kilograms;
};

} // namespace slopebook::ui

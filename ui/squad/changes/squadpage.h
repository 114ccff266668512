// SPDX-License-Identifier: GPL-3.0-or-later
// The squad between two blocks or dates: a chart of the changes on one axis, the same in a table,
// and both on paper.
#pragma once

#include "core/questions/liftcontext.h"
#include "ui/paper/papertask.h"
#include "ui/parts/job.h"
#include "ui/parts/texttable.h"
#include "ui/squad/changes/squadforest.h"

#include <filesystem>
#include <functional>
#include <memory>

class QBoxLayout;
class QComboBox;
class QLabel;
class QProgressBar;
class QPushButton;
class QTableView;

namespace slopebook::ui {

class Sentence;
class SourcesFold;
class WayOn;

class PeriodChooser;

class SquadPage final : public PaperTask {
    Q_OBJECT
public:
    explicit SquadPage(Logbook& logbook, QWidget* parent = nullptr);

    void setAthleteAndLift(std::optional<AthleteId> athlete, std::optional<LiftId> lift) override;
    void refresh(Logbook::What what, SessionId session) override;

    bool canPrint() const override { return m_squad.has_value(); }

    /// The control line: the lift stands first in it.
    QBoxLayout* strip() const { return m_strip; }
    PeriodChooser& from() { return *m_from; }
    PeriodChooser& to() { return *m_to; }
    const std::optional<answers::Squad>& squad() const { return m_squad; }
    const SquadForestChart& chart() const { return *m_chart; }
    const TextTable& table() const { return *m_table; }
    void showPart(int part);
    /// Called between athletes on the work's own thread: for tests, which make a short log take
    /// long.
    void paceWork(std::function<void()> pace) { m_pace = std::move(pace); }
    /// Whether the squad is being compared just now.
    bool working() const { return m_job.running(); }

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    QWidget* buildChoices();
    void build();
    void connectParts();
    void reload();
    void chooseDefaults();
    void ask(); ///< on a thread of its own, with a connection of its own
    void answered();
    void showWork(bool working);
    void fillParts();
    /// inPlace: what stands where the picture would, if not that nothing is compared.
    void showNothing(const QString& why, const QString& inPlace = {});
    const answers::SquadRow* currentRow() const;
    void openCurrent();
    void compareCurrent();
    page::Print pages() const override;
    PdfWords pdfWords() const override;

    Logbook& m_logbook;
    std::optional<LiftId> m_lift;
    std::optional<Lift> m_value;
    bool m_chosen = false; ///< periods were chosen once
    bool m_filling = false;
    std::optional<answers::Squad> m_squad;

    QBoxLayout* m_strip = nullptr;
    PeriodChooser* m_from;
    PeriodChooser* m_to;
    QComboBox* m_part;
    QPushButton* m_preview;
    QPushButton* m_print;
    QPushButton* m_pdf;
    QPushButton* m_compare;
    QPushButton* m_open;
    Sentence* m_sentence;
    WayOn* m_way; ///< where tests that are missing are typed
    QLabel* m_counts;
    QLabel* m_drawn; ///< what all are drawn to, where it is one figure
    QLabel* m_notes;
    SourcesFold* m_notesFold;    ///< closed in a low window, where they would be half of the page
    bool m_foldedByHand = false; ///< then it stays as it is
    SquadForestChart* m_chart;
    TextTable* m_table;
    QTableView* m_view;
    QWidget* m_work;
    QProgressBar* m_progress;
    QPushButton* m_stop;
    std::function<void()> m_pace;
    std::shared_ptr<Answer<answers::Squad>> m_answer; ///< of the work under way
    Job m_job; // last: its work ends before what it works on goes
};

} // namespace slopebook::ui

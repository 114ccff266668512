// SPDX-License-Identifier: GPL-3.0-or-later
// What the program shows of an athlete first: what the last block changed over all that was
// measured, what is due, what was not possible; one key from each line to its answer.
#pragma once

#include "core/answers/overview.h"
#include "ui/athlete/overview/measureways.h"
#include "ui/athlete/overview/overviewtable.h"
#include "ui/athlete/overview/seasonasking.h"
#include "ui/athlete/overview/stepcharts.h"
#include "ui/paper/papertask.h"

#include <optional>

class QBoxLayout;
class QComboBox;
class QLabel;
class QPushButton;
class QStackedLayout;
class QTableView;

namespace slopebook::ui {

class Sentence;

class EmptyPlace;
class SeasonButtons;

class OverviewPage final : public PaperTask {
    Q_OBJECT
public:
    explicit OverviewPage(Logbook& logbook, QWidget* parent = nullptr);

    void setAthleteAndLift(std::optional<AthleteId> athlete, std::optional<LiftId> lift) override;
    void setStart(std::optional<BlockId> start) override { m_start = start; }
    void refresh(Logbook::What what, SessionId session) override;
    /// What the log was asked for; tests hand in their own.
    void showSeason(SeasonAsking asked);

    bool canPrint() const override { return m_shown.has_value(); }

    /// The control line.
    QBoxLayout* strip() const { return m_strip; }
    const StepChartsView& charts() const { return *m_charts; }
    const OverviewRows& table() const { return *m_rows; }

protected:
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void build();
    QWidget* buildSide();
    void connectParts();
    void reload();
    void fillBlocks();
    void fillSide();
    void fitButtons();
    void goTo(Way way);
    std::optional<MeasureAt> current() const;
    page::Print pages() const override;
    PdfWords pdfWords() const override;

    Logbook& m_logbook;
    std::optional<AthleteId> m_athlete;
    std::optional<BlockId> m_start;
    std::optional<AskedSeason> m_shown;
    answers::Overview m_overview{};

    QStackedLayout* m_stack = nullptr;
    QBoxLayout* m_row = nullptr; ///< the table, and what is due
    QWidget* m_choices = nullptr;
    EmptyPlace* m_empty;
    QBoxLayout* m_strip = nullptr;
    QComboBox* m_blocks;
    Sentence* m_sentence;
    StepChartsView* m_charts;
    OverviewRows* m_rows;
    QTableView* m_view;
    QLabel* m_dueTitle;
    QLabel* m_due;
    QPushButton* m_stations;
    QLabel* m_missingTitle;
    QLabel* m_missing;
    QLabel* m_chance;
    SeasonButtons* m_buttons;
    QPushButton* m_whole;
};

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
// A whole season of an athlete on one page: everything that was measured by the training blocks it
// was measured in; the sentence first, then the matrix, then what to beware of.
#pragma once

#include "ui/athlete/overview/matrixview.h"
#include "ui/athlete/overview/seasonasking.h"
#include "ui/paper/papertask.h"

class QBoxLayout;
class QComboBox;
class QLabel;
class QPushButton;
class QStackedLayout;

namespace slopebook::ui {

class Sentence;

class EmptyPlace;
class SeasonButtons;

class WholeSeasonPage final : public PaperTask {
    Q_OBJECT
public:
    explicit WholeSeasonPage(Logbook& logbook, QWidget* parent = nullptr);

    void setAthleteAndLift(std::optional<AthleteId> athlete, std::optional<LiftId> lift) override;
    void setStart(std::optional<BlockId> start) override { m_start = start; }
    void refresh(Logbook::What what, SessionId session) override;
    /// What the log was asked for; tests hand in their own.
    void showSeason(SeasonAsking asked);

    bool canPrint() const override { return m_shown.has_value(); }

    /// The control line.
    QBoxLayout* strip() const { return m_strip; }
    MatrixView& view() const { return *m_view; }

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void build();
    QWidget* buildNotes();
    void connectParts();
    void reload();
    void fillBlocks();
    void showNotes();
    void showKey();
    void fitWords();
    void fitButtons();
    void choose(std::size_t block);
    void goTo(Way way);
    std::optional<MeasureAt> current() const;
    page::Print pages() const override;
    PdfWords pdfWords() const override;

    Logbook& m_logbook;
    std::optional<AthleteId> m_athlete;
    std::optional<BlockId> m_start;
    std::optional<AskedSeason> m_shown;

    QStackedLayout* m_stack = nullptr;
    QWidget* m_choices = nullptr;
    EmptyPlace* m_empty;
    QBoxLayout* m_strip = nullptr;
    QComboBox* m_blocks;
    Sentence* m_sentence;
    MatrixView* m_view;
    QLabel* m_cell;
    bool m_folded = false; ///< the notes are open in the table's place
    bool m_low = false;    ///< room is short: what the marks mean stands with the notes
    QLabel* m_key;
    QLabel* m_chance;
    QLabel* m_notesTitle;
    QLabel* m_notes;
    QLabel* m_storyTitle;
    QLabel* m_story;
    QLabel* m_designTitle;
    QLabel* m_design;
    SeasonButtons* m_buttons;
    QPushButton* m_against;
};

} // namespace slopebook::ui

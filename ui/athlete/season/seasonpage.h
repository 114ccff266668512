// SPDX-License-Identifier: GPL-3.0-or-later
// One load of one athlete through the season: the chart, the trend, and the same figures in a
// table.
#pragma once

#include "core/questions/followquestions.h"
#include "ui/athlete/season/seasonchart.h"
#include "ui/paper/papertask.h"
#include "ui/parts/texttable.h"

class QAction;
class QBoxLayout;
class QComboBox;
class QLabel;
class QLayout;
class QPushButton;
class QTableView;
class QToolButton;

namespace slopebook::ui {

class Sentence;
class SourcesFold;
class WayOn;

class SeasonPage final : public PaperTask {
    Q_OBJECT
public:
    explicit SeasonPage(Logbook& logbook, QWidget* parent = nullptr);

    void setAthleteAndLift(std::optional<AthleteId> athlete, std::optional<LiftId> lift) override;
    void refresh(Logbook::What what, SessionId session) override;

    /// That load of the athlete and lift that are shown; none where it is not theirs.
    void followLoad(Mass load);

    bool canPrint() const override { return m_season.has_value(); }

    /// The control line: the lift stands first in it.
    QBoxLayout* strip() const { return m_strip; }
    const SeasonChart& chart() const { return *m_chart; }
    const TextTable& table() const { return *m_table; }

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void setBaseline(const questions::Baseline& baseline);
    void setStart(std::optional<BlockId> start) override;
    /// That of a row: its session, or its block.
    std::optional<questions::Baseline> baselineOf(const SeasonItem& item) const;
    QWidget* buildChoices();
    void buildTrends();
    void nameTrends();
    QLayout* buildButtons();
    void build();
    void connectParts();
    void reload();
    void fillLoads();
    void fillBaselines();
    void ask();
    void showSeason(const answers::FollowedSeason& season);
    QString notesText(const answers::FollowedSeason& season) const;
    void selectItem(const SeasonItem& item);
    void showNothing(const QString& why);
    void itemPicked();
    void tell(const std::optional<SeasonItem>& item);
    void compare();
    std::optional<SessionId> sessionOfRow() const;
    std::optional<SeasonItem> currentItem() const;
    page::Print pages() const override;
    PdfWords pdfWords() const override;

    Logbook& m_logbook;
    std::optional<AthleteId> m_athlete;
    std::optional<LiftId> m_lift;
    std::optional<questions::Background> m_about;
    std::optional<Mass> m_load;
    std::optional<questions::Baseline> m_baseline; ///< of this page alone, or the start
    std::optional<BlockId> m_start;
    std::optional<answers::FollowedSeason> m_season; ///< what is shown
    std::vector<Stored<BlockId, Block>> m_blocks;
    std::vector<Stored<DeviceId, Device>> m_devices;

    QBoxLayout* m_strip = nullptr;
    QComboBox* m_loads;
    QComboBox* m_baselines;
    QToolButton* m_trends; ///< which are drawn, in words
    QAction* m_ofTheSeason;
    QAction* m_withinBlocks;
    QPushButton* m_useAsBaseline;
    QPushButton* m_compare;
    QPushButton* m_preview;
    QPushButton* m_print;
    QPushButton* m_pdf;
    SeasonChart* m_chart;
    TextTable* m_table;
    QTableView* m_view;
    Sentence* m_told;
    QLabel* m_under;             ///< the chosen day and the trend, under the sentence
    QLabel* m_settling;          ///< of the selected row
    QStringList m_settlingTexts; ///< by row
    WayOn* m_way;                ///< where the first set is typed
    QLabel* m_notes;
    SourcesFold* m_sources; ///< the notes, on demand
};

} // namespace slopebook::ui

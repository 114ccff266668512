// SPDX-License-Identifier: GPL-3.0-or-later
// Two sessions or blocks of one athlete and lift: the sentence first, then the change by load, the
// 1RM, both lines, and the page to print.
#pragma once

#include "core/questions/liftside.h"
#include "core/questions/questions.h"
#include "ui/athlete/compare/comparisonview.h"
#include "ui/parts/taskpage.h"

#include <QAction>
#include <QActionGroup>
#include <QBoxLayout>
#include <QComboBox>
#include <QPushButton>
#include <QToolButton>

#include <map>
#include <utility>

namespace slopebook::ui {

class WayOn;

class ComparePage : public TaskPage, public Prints {
    Q_OBJECT
public:
    explicit ComparePage(Logbook& logbook, QWidget* parent = nullptr);

    void setAthleteAndLift(std::optional<AthleteId> athlete, std::optional<LiftId> lift) override;
    void refresh(Logbook::What what, SessionId session) override;
    void setStart(std::optional<BlockId> start) override { m_start = start; }
    /// Shows what another page's comparisonWanted() asked for.
    void compare(const questions::LiftSide& from, const questions::LiftSide& to);

    bool canPrint() const override;
    void print() override;
    void printPreview() override;
    void writePdf() override;
    /// Without asking for a name. Throws LogError; canPrint() must hold.
    void writePdfTo(const log::Destination& to) const;

    /// The control line: the lift stands first in it.
    QBoxLayout* strip() const { return m_strip; }
    const ComparisonView& view() const { return *m_view; }

private:
    QWidget* buildChoices();
    void buildIntervals();
    QWidget* buildPrintButtons();
    void connectChoices();
    void readSessions();
    void fillChoices();
    void chooseDefaults();
    void chooseFromStart();
    void chooseLastStep();
    void chooseNewestDays();
    void keepPair();
    QString choiceText(const LiftSession& session) const;
    void offerBlocks(QComboBox* box) const;
    bool isOffered(const std::optional<questions::LiftSide>& side) const;
    void ask();
    questions::AskSettings asked() const;
    PageHeader header() const;
    template <class Work>
    void atTheEdge(const Work& work);

    Logbook& m_logbook;
    std::optional<AthleteId> m_athlete;
    std::optional<LiftId> m_lift;
    std::optional<questions::Background> m_about;
    std::vector<Stored<BlockId, Block>> m_blocks;
    std::vector<Stored<DeviceId, Device>> m_devices;
    std::optional<questions::LiftSide> m_from, m_to;
    /// What the coach chose, by athlete and lift, while the window is open.
    std::map<std::pair<AthleteId, LiftId>, std::pair<questions::LiftSide, questions::LiftSide>>
        m_pairs;
    std::optional<BlockId> m_start;
    std::map<AthleteId, BlockId> m_heeded; ///< starts that the pairs heed already
    std::optional<answers::Comparison> m_comparison;
    LoadUnit m_unit = LoadUnit::Kilograms;

    QBoxLayout* m_strip = nullptr;
    QComboBox* m_fromBox;
    QComboBox* m_toBox;
    QToolButton* m_intervals;
    QActionGroup* m_levels;
    QActionGroup* m_scatters;
    QComboBox* m_paperBox;
    QPushButton* m_previewButton;
    QPushButton* m_printButton;
    QPushButton* m_pdfButton;
    QPushButton* m_partsButton;
    QAction* m_parts[5];
    ComparisonView* m_view;
    WayOn* m_way = nullptr; ///< where a session that is missing is typed
};

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
// Two dates or two training blocks side by side: what leads, every test, the forest plot, left and
// right, what was missing, the lifts.
#pragma once

#include "core/questions/batteryquestions.h"
#include "ui/charts/forestchart.h"
#include "ui/edits/logbook.h"
#include "ui/parts/texttable.h"

class QComboBox;
class QLabel;
class QPushButton;
class QTableView;

namespace slopebook::ui {

class Sentence;
class WayOn;

class BeforeAfterView final : public QWidget {
    Q_OBJECT
public:
    explicit BeforeAfterView(Logbook& logbook, QWidget* parent = nullptr);

    void setAthlete(std::optional<AthleteId> athlete);
    /// As TaskPage::setStart(); what is new is taken when the view is told of the athlete next.
    void setStart(std::optional<BlockId> start);
    void reload();
    /// Those two side by side, where both are listed.
    void compare(const questions::BatterySide& from, const questions::BatterySide& to);
    const std::optional<questions::BatteryAnswer>& answer() const { return m_answer; }

    /// Stands under a sentence that says what is missing.
    void setWay(WayOn* way);
    /// What is compared, for the page's control line.
    QWidget* choices() const { return m_choices; }
    QComboBox* fromBox() const { return m_from; }
    QComboBox* toBox() const { return m_to; }
    QString summary() const;
    const TextTable& tests() const { return *m_tests; }
    const ForestChart& forest() const { return *m_forest; }

    void print();
    void printPreview();
    void writePdf();
    void writeCsv();

Q_SIGNALS:
    void message(const QString& text);
    void answered(bool printable);
    /// The coach chose this block to count changes from.
    void startChosen(slopebook::BlockId start);
    /// Asks for the form where attempts are typed.
    void attemptsWanted();

private:
    QWidget* buildChoices();
    QWidget* buildButtons();
    QWidget* buildBody();
    void connectParts();
    void fillSides();
    void chooseDefaults();
    bool chooseFromStart();
    std::optional<questions::BatterySide> sideOf(const QComboBox* box) const;
    void ask();
    /// From block to block as the season reads it (allBlocks), or the change by itself.
    Answer<questions::BatteryAnswer> answerOf(bool allBlocks) const;
    void show(const questions::BatteryAnswer& answer);
    void showReason(const QString& reason);
    QPushButton* m_type; ///< where nothing is to compare yet: types it
    template <class Work>
    void guarded(const Work& work);

    Logbook& m_logbook;
    std::optional<AthleteId> m_athlete;
    std::vector<questions::BatterySide> m_sides; ///< as listed in both boxes
    std::optional<BlockId> m_start;
    bool m_newStart = false;
    std::optional<questions::BatteryAnswer> m_answer;
    WayOn* m_way = nullptr;
    QWidget* m_choices;
    QComboBox* m_from;
    QComboBox* m_to;
    QPushButton* m_preview;
    QPushButton* m_print;
    QPushButton* m_pdf;
    QPushButton* m_csv;
    Sentence* m_summary;
    QLabel* m_alone; ///< of how many questions an interval holds
    QLabel* m_lifts;
    QLabel* m_notes;
    QWidget* m_body;
    TextTable* m_tests;
    TextTable* m_leftRight;
    TextTable* m_missing;
    QTableView* m_testTable;
    QTableView* m_leftRightTable;
    QTableView* m_missingTable;
    QLabel* m_leftRightTitle;
    QLabel* m_missingTitle;
    ForestChart* m_forest;
};

} // namespace slopebook::ui

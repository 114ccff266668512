// SPDX-License-Identifier: GPL-3.0-or-later
// Who of the squad is due for what today, with the way to each athlete's page and to the floor.
#pragma once

#include "core/answers/squaddue.h"
#include "ui/paper/papertask.h"
#include "ui/parts/clock.h"
#include "ui/parts/texttable.h"

class QBoxLayout;
class QLabel;
class QPushButton;
class QSpinBox;
class QTableView;

namespace slopebook::ui {

class Sentence;
class WayOn;

class DuePage final : public PaperTask {
    Q_OBJECT
public:
    DuePage(Logbook& logbook, Clock clock, QWidget* parent = nullptr);

    void setAthleteAndLift(std::optional<AthleteId> athlete, std::optional<LiftId> lift) override;
    void refresh(Logbook::What what, SessionId session) override;

    /// An empty list is no page.
    bool canPrint() const override { return m_due && !m_due->rows.empty(); }

    QBoxLayout* strip() const { return m_strip; }
    const std::optional<answers::SquadDue>& due() const { return m_due; }
    const TextTable& table() const { return *m_rows; }
    QSpinBox* weeks() const { return m_weeks; }

private:
    void build();
    void connectParts();
    void reload();
    void openAthlete();
    std::optional<AthleteId> current() const;
    page::Print pages() const override;
    PdfWords pdfWords() const override;

    Logbook& m_logbook;
    Clock m_clock;
    std::optional<answers::SquadDue> m_due;
    QBoxLayout* m_strip = nullptr;
    QSpinBox* m_weeks;
    Sentence* m_sentence;
    WayOn* m_way; ///< where nobody is there yet
    QLabel* m_notes;
    TextTable* m_rows;
    QTableView* m_view;
    QWidget* m_rest = nullptr;
    QPushButton* m_open;
    QPushButton* m_stations;
    QPushButton* m_preview;
    QPushButton* m_print;
    QPushButton* m_pdf;
};

} // namespace slopebook::ui

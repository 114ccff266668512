// SPDX-License-Identifier: GPL-3.0-or-later
// The table of noise: typical error by lift, device, athlete and load, what readings use, and the
// repeat tests behind it.
#pragma once

#include "ui/edits/logbook.h"
#include "ui/parts/texttable.h"

#include <QWidget>

#include <optional>

class QCheckBox;
class QLabel;
class QTableView;

namespace slopebook::ui {

class NoiseChart;
class Sentence;
class WayOn;

class NoiseView final : public QWidget {
    Q_OBJECT
public:
    explicit NoiseView(Logbook& logbook, QWidget* parent = nullptr);

    /// Stands under a sentence that says what is missing.
    void setWay(WayOn* way);
    void setAthleteAndLift(std::optional<AthleteId> athlete, std::optional<LiftId> lift);
    const TextTable& noise() const { return *m_noise; }
    const TextTable& repeats() const { return *m_repeats; }

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void build();
    void reload();

    Logbook& m_logbook;
    std::optional<AthleteId> m_athlete;
    std::optional<LiftId> m_lift;
    QCheckBox* m_every;
    WayOn* m_way = nullptr;
    Sentence* m_inUse;
    NoiseChart* m_chart; ///< what readings are made with, before all tables
    QLabel* m_told;
    TextTable* m_noise;
    TextTable* m_repeats;
    QTableView* m_noiseView;
    QTableView* m_repeatView;
};

} // namespace slopebook::ui

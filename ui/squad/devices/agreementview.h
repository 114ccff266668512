// SPDX-License-Identifier: GPL-3.0-or-later
// Agreement of two devices on a lift: the plot, its figures, and the sets behind it.
#pragma once

#include "ui/edits/logbook.h"
#include "ui/parts/texttable.h"
#include "ui/squad/devices/agreementchart.h"

#include <QWidget>

#include <optional>
#include <utility>
#include <vector>

class QComboBox;
class QLabel;
class QTableView;

namespace slopebook::ui {

class Sentence;
class WayOn;

class AgreementView final : public QWidget {
    Q_OBJECT
public:
    explicit AgreementView(Logbook& logbook, QWidget* parent = nullptr);

    void setLift(std::optional<LiftId> lift);
    /// Where the same sets can be typed for two devices; shown where none are.
    void setWay(WayOn* way);
    const AgreementChart& chart() const { return *m_chart; }
    const TextTable& figures() const { return *m_figures; }
    const TextTable& sets() const { return *m_sets; }
    QString sentence() const;

private:
    void build();
    void reload();
    void ask();
    void showNothing(const QString& why);
    QString nameOf(DeviceId device) const;

    Logbook& m_logbook;
    std::optional<LiftId> m_lift;
    std::vector<std::pair<DeviceId, DeviceId>> m_pairs;
    std::vector<Stored<DeviceId, Device>> m_devices;
    QWidget* m_whichRow = nullptr;
    QComboBox* m_which;
    Sentence* m_sentence;
    WayOn* m_way = nullptr;
    AgreementChart* m_chart;
    TextTable* m_figures;
    TextTable* m_sets;
    QTableView* m_figureView;
    QTableView* m_setView;
};

} // namespace slopebook::ui

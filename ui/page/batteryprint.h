// SPDX-License-Identifier: GPL-3.0-or-later
// The printed page of two dates or blocks: tests, forest plot, left and right, what was missing,
// the lifts' sentences. Black on white; greys tell it all. Needs a QApplication (offscreen will
// do).
#pragma once

#include "ui/page/comparisonpage.h"
#include "ui/questions/batteryquestions.h"

namespace slopebook::ui {

class BatteryPages {
public:
    BatteryPages(const BatteryAnswer& answer, const QSizeF& paper);
    int count() const { return static_cast<int>(m_pages.size()); }
    /// Paints page 0, 1, ... with the paper's corner at (0, 0).
    void paint(QPainter& painter, int page) const;

private:
    page::Flow m_flow;
    std::vector<std::vector<page::Flow::Placed>> m_pages;
    QString m_foot;
    QSizeF m_paper;
};

/// False where the device cannot be painted on.
bool paintBattery(QPagedPaintDevice& device, const BatteryAnswer& answer);
/// Under a temporary name beside file, then renamed. Throws LogError.
void writeBatteryPdf(const BatteryAnswer& answer, Paper paper, const std::filesystem::path& file);

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
// The row of buttons below a season: from what is chosen in its table to where it comes from, then
// the page's own, and at the other end paper.
#pragma once

#include "ui/athlete/overview/measureways.h"

#include <QWidget>

#include <functional>
#include <vector>

class QPushButton;

namespace slopebook::ui {

class SeasonButtons final : public QWidget {
    Q_OBJECT
public:
    /// What is chosen in the table.
    enum class Of { Line, Cell };
    /// own: the page's, which is called after the ways.
    SeasonButtons(Of of, QPushButton* own, QWidget* parent = nullptr);
    void fit(const std::function<bool(Way)>& leads, bool canPrint);

Q_SIGNALS:
    void wayWanted(slopebook::ui::Way way);
    void previewWanted();
    void printWanted();
    void pdfWanted();

private:
    QPushButton* addWay(Way way, const QString& words, const QString& tip);

    std::vector<std::pair<Way, QPushButton*>> m_ways;
    std::vector<QPushButton*> m_paper;
};

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/overview/seasonbuttons.h"

#include <QHBoxLayout>
#include <QPushButton>

namespace slopebook::ui {

SeasonButtons::SeasonButtons(Of of, QPushButton* own, QWidget* parent) : QWidget(parent) {
    const bool line = of == Of::Line;
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(addWay(Way::Comparison, tr("Co&mpare"),
                          line ? tr("The comparison behind the line; Enter in the table")
                               : tr("The comparison behind the cell; Enter in the table")));
    row->addWidget(
        addWay(Way::Session, tr("Open it&s session"),
               line ? tr("The last session behind the line; the space bar in the table")
                    : tr("The last session behind the cell; the space bar in the table")));
    row->addWidget(addWay(Way::Season, tr("Load thro&ugh the season"),
                          tr("Each session at that load; a full stop in the table")));
    row->addWidget(own);
    row->addStretch(1);
    const auto addPaper = [&](const QString& words, auto signal) {
        auto* button = new QPushButton(words);
        connect(button, &QPushButton::clicked, this, signal);
        m_paper.push_back(button);
        row->addWidget(button);
    };
    if (!line) // where the page may be many
        addPaper(tr("Pri&nt preview…"), &SeasonButtons::previewWanted);
    addPaper(tr("&Print…"), &SeasonButtons::printWanted);
    addPaper(tr("Save P&DF…"), &SeasonButtons::pdfWanted);
}

QPushButton* SeasonButtons::addWay(Way way, const QString& words, const QString& tip) {
    auto* button = new QPushButton(words);
    button->setToolTip(tip);
    connect(button, &QPushButton::clicked, this, [this, way] { Q_EMIT wayWanted(way); });
    m_ways.emplace_back(way, button);
    return button;
}

void SeasonButtons::fit(const std::function<bool(Way)>& leads, bool canPrint) {
    for (const auto& [way, button] : m_ways)
        button->setEnabled(leads(way));
    for (QPushButton* button : m_paper)
        button->setEnabled(canPrint);
}

} // namespace slopebook::ui

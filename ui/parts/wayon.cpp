// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/wayon.h"

namespace slopebook::ui {

WayOn::WayOn(TaskPage& page, TaskPage::Place place, QWidget* parent)
    : QPushButton(parent), m_usual(place), m_place(place) {
    setObjectName(QStringLiteral("wayOn"));
    leadTo(place);
    setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Fixed);
    connect(this, &QPushButton::clicked, &page,
            [this, &page] { Q_EMIT page.placeWanted(m_place); });
    hide();
}

void WayOn::leadTo(TaskPage::Place place) {
    m_place = place;
    switch (place) {
    case TaskPage::Place::Overview:
        setText(tr("To the overview"));
        break;
    case TaskPage::Place::WholeSeason:
        setText(tr("To the whole season"));
        break;
    case TaskPage::Place::Session:
        setText(tr("To the Floor: type a set"));
        break;
    case TaskPage::Place::Stations:
        setText(tr("To the stations"));
        break;
    case TaskPage::Place::Athletes:
        setText(tr("Add an athlete…"));
        break;
    case TaskPage::Place::Lifts:
        setText(tr("Add a lift…"));
        break;
    }
}

QString WayOn::sayMissing(const log::Log& log, const QString& otherwise, bool wanted, bool ofLift) {
    try {
        if (log.athletes().empty()) {
            leadTo(TaskPage::Place::Athletes);
            show();
            return tr("No athlete yet. Add the first, then type a set under Floor.");
        }
        if (ofLift && log.lifts().empty()) {
            leadTo(TaskPage::Place::Lifts);
            show();
            return tr("No lift yet. Add the first, then type a set under Floor.");
        }
    } catch (const std::exception&) { // what is wrong with the log the page says itself
    }
    leadTo(m_usual);
    setVisible(wanted);
    return otherwise;
}

} // namespace slopebook::ui

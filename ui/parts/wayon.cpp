// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/wayon.h"

namespace slopebook::ui {

WayOn::WayOn(TaskPage& page, TaskPage::Place place, QWidget* parent) : QPushButton(parent) {
    setObjectName(QStringLiteral("wayOn"));
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
    }
    setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Fixed);
    connect(this, &QPushButton::clicked, &page, [&page, place] { Q_EMIT page.placeWanted(place); });
    hide();
}

} // namespace slopebook::ui

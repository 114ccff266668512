// SPDX-License-Identifier: GPL-3.0-or-later
// The place of a session is read whole: where there is no room, what its bar says twice gives way.
#include "ui/floor/entry/sessionbar.h"
#include "ui/parts/dayedit.h"

#include <QComboBox>
#include <QLabel>
#include <QLayout>
#include <QLineEdit>
#include <QScopedValueRollback>

#include <algorithm>
#include <array>

namespace slopebook::ui {

namespace {
constexpr int mostPlace =
    320; // px; of a longer one the beginning is read, and all of it in the tip
constexpr int aroundText = 18; // px of a field: its frame, and air on both sides
} // namespace

void SessionBar::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fitPlace();
}

QList<QWidget*> SessionBar::saidTwice() const {
    return m_session ? QList<QWidget*>{m_dateCaption, m_date, m_deviceCaption} // called by its day
                     : QList<QWidget*>{m_sessionCaption, m_deviceCaption}; // a day has its caption
}

int SessionBar::wholePlace() const {
    return std::clamp(m_place->fontMetrics().horizontalAdvance(m_place->text()) + aroundText,
                      leastPlace, mostPlace);
}

int SessionBar::breadth(const QWidget& part) const {
    return std::max(part.minimumWidth(), part.minimumSizeHint().width()) + layout()->spacing();
}

// However wide it is now: what is beside the bar in its line asks whether there is room for both.
QSize SessionBar::minimumSizeHint() const {
    QSize least = layout()->totalMinimumSize();
    least.rwidth() += wholePlace() - m_place->minimumWidth();
    for (const QWidget* part : saidTwice())
        if (!part->isHidden())
            least.rwidth() -= breadth(*part);
    return least;
}

// To show a part lays out what is above this bar at once, which may give it another width: what is
// to be shown is reckoned first, and what comes of it is looked at later.
void SessionBar::fitPlace() {
    if (m_isFitting)
        return;
    const QScopedValueRollback fitting(m_isFitting, true);
    const int had = width();
    const QList<QWidget*> going = saidTwice();
    const int wanted = wholePlace();
    const std::array<QWidget*, 4> mayGo{m_dateCaption, m_date, m_sessionCaption, m_deviceCaption};
    // Room for the place with every part there, and all else as narrow as it goes.
    int room = had - layout()->minimumSize().width() + m_place->minimumWidth();
    for (const QWidget* part : mayGo)
        if (part->isHidden())
            room -= breadth(*part);
    for (QWidget* part : mayGo) {
        // A day without its caption stands beside the session's own, which it is then taken for.
        const bool captionWent = part == m_date && m_dateCaption->isHidden();
        const bool typedIn = part->hasFocus() || (part == m_dateCaption && m_date->hasFocus());
        const bool goes = going.contains(part) && (room < wanted || captionWent) && !typedIn;
        if (goes)
            room += breadth(*part);
        if (part->isHidden() != goes)
            part->setVisible(!goes);
    }
    const int place = std::clamp(room, leastPlace, wanted);
    if (place != m_place->minimumWidth())
        m_place->setMinimumWidth(place);
    m_place->setToolTip(m_place->text());
    if (width() != had)
        QMetaObject::invokeMethod(this, &SessionBar::fitPlace, Qt::QueuedConnection);
}

} // namespace slopebook::ui

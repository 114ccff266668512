// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/strip.h"

#include "ui/window/namecombo.h"
#include "ui/words/readable.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QToolButton>

namespace slopebook::ui {

Strip::Strip(QWidget* parent)
    : QWidget(parent), m_place(new QToolButton), m_label(new QLabel(tr("Li&ft"))),
      m_lift(new NameCombo), m_add(new QToolButton) {
    m_place->setObjectName(QStringLiteral("place"));
    m_place->setAutoRaise(true);
    m_place->setFocusPolicy(Qt::StrongFocus);
    QFont strong = m_place->font();
    strong.setBold(true);
    m_place->setFont(strong);
    m_place->setToolTip(tr("Another athlete or page (F9 keeps the list open)"));
    m_label->setBuddy(m_lift);
    m_lift->setObjectName(QStringLiteral("lift"));
    m_lift->setAccessibleName(tr("Lift"));
    m_lift->lineEdit()->setAccessibleName(tr("Lift"));
    m_add->setText(tr("+ lift"));
    m_add->setAutoRaise(true);
    m_add->setFocusPolicy(Qt::StrongFocus);
    m_add->setAccessibleName(tr("Add lift"));
    m_add->setToolTip(tr("Add lift…"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 8, 0);
    row->setSpacing(4);
    for (QWidget* part : {static_cast<QWidget*>(m_place), static_cast<QWidget*>(m_label),
                          static_cast<QWidget*>(m_lift), static_cast<QWidget*>(m_add)})
        row->addWidget(part);
    setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Preferred);
    connect(m_place, &QToolButton::clicked, this, &Strip::placeWanted);
    connect(m_add, &QToolButton::clicked, this, &Strip::addLiftWanted);
}

bool Strip::fit(const QString& place, bool lift) {
    m_place->setText(asLabel(place) + QStringLiteral(" \u25be"));
    m_place->setAccessibleName(place);
    m_place->setVisible(!place.isEmpty());
    for (QWidget* part : {static_cast<QWidget*>(m_label), static_cast<QWidget*>(m_lift),
                          static_cast<QWidget*>(m_add)})
        part->setVisible(lift);
    return lift || !place.isEmpty();
}

void Strip::focusLift() {
    m_lift->setFocus(Qt::ShortcutFocusReason);
    m_lift->lineEdit()->selectAll();
}

} // namespace slopebook::ui

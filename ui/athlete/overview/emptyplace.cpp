// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/overview/emptyplace.h"

#include "ui/athlete/overview/overviewparts.h"
#include "ui/parts/sentence.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

EmptyPlace::EmptyPlace(QWidget* parent)
    : QWidget(parent), m_title(sentenceLabel()), m_why(wordsLabel()), m_way(new QPushButton) {
    m_title->setObjectName(u"emptyTitle"_s);
    m_way->setObjectName(u"emptyWay"_s);
    m_title->setAccessibleDescription(tr("What is missing here"));
    m_why->setAccessibleDescription(tr("What to do about it"));
    auto* row = new QHBoxLayout;
    row->addWidget(m_way);
    row->addStretch(1);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 16, 0, 0);
    layout->addWidget(m_title);
    layout->addWidget(m_why);
    layout->addLayout(row);
    layout->addStretch(1);
    connect(m_way, &QPushButton::clicked, this, [this] {
        if (m_place)
            Q_EMIT placeWanted(*m_place);
    });
}

void EmptyPlace::say(const NothingThere& nothing) {
    m_title->setText(nothing.title);
    m_why->setText(nothing.why);
    m_place = nothing.way;
    m_way->setText(nothing.wayText);
    m_way->setVisible(nothing.way.has_value());
}

} // namespace slopebook::ui

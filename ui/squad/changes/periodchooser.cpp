// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squad/changes/periodchooser.h"

#include "ui/parts/dayedit.h"
#include "ui/parts/keepwhole.h"
#include "ui/words/format.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <QSpinBox>
#include <QToolTip>

#include <algorithm>

namespace slopebook::ui {

PeriodChooser::PeriodChooser(const QString& label, const QString& name, QWidget* parent)
    : QWidget(parent), m_what(new QComboBox), m_date(new DayEdit), m_within(new QSpinBox),
      m_last(new DayEdit) {
    m_what->setAccessibleName(name);
    m_what->addItem(tr("On or near a date"));
    m_what->addItem(tr("From day to day"));
    m_date->setAccessibleName(tr("%1: date").arg(name));
    m_within->setAccessibleName(tr("%1: days around it").arg(name));
    m_last->setAccessibleName(tr("%1: last day").arg(name));
    m_within->setRange(0, 365);
    m_within->setValue(14);
    m_within->setPrefix(tr("± "));
    m_within->setSuffix(tr(" days"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    auto* caption = new QLabel(label);
    caption->setBuddy(m_what);
    keepWhole(*caption);
    row->addWidget(caption);
    row->addWidget(m_what);
    row->addWidget(m_date);
    row->addWidget(m_within);
    row->addWidget(m_last);
    connect(m_what, &QComboBox::currentIndexChanged, this, [this] {
        fit();
        Q_EMIT changed();
    });
    for (DayEdit* day : {m_date, m_last}) {
        connect(day, &QDateEdit::dateChanged, this, &PeriodChooser::changed);
        // The page goes on with the day that it had: the field says so, and that the other was
        // refused.
        connect(day, &DayEdit::refused, this, [this, day](const QString& why) {
            day->takeBack();
            QToolTip::showText(day->mapToGlobal(QPoint(0, day->height())), why, day);
            Q_EMIT refused(why);
        });
    }
    connect(m_within, &QSpinBox::valueChanged, this, &PeriodChooser::changed);
    fit();
}

PeriodChooser::Way PeriodChooser::way() const {
    const int after = m_what->currentIndex() - (m_what->count() - 2);
    return after < 0 ? Way::Block : after == 0 ? Way::Date : Way::Days;
}

void PeriodChooser::fit() {
    m_date->setVisible(way() != Way::Block);
    m_within->setVisible(way() == Way::Date);
    m_last->setVisible(way() == Way::Days);
}

void PeriodChooser::setBlocks(const std::vector<Stored<BlockId, Block>>& blocks) {
    const QSignalBlocker quiet(m_what);
    const Way before = way();
    std::optional<BlockId> kept;
    if (before == Way::Block && m_what->currentIndex() < static_cast<int>(m_blocks.size()))
        kept = m_blocks[static_cast<std::size_t>(m_what->currentIndex())].id;
    m_blocks = blocks;
    m_what->clear();
    int at = static_cast<int>(blocks.size()) + (before == Way::Days ? 1 : 0);
    for (std::size_t i = 0; i < blocks.size(); ++i) {
        m_what->addItem(text(blocks[i].value.name));
        if (kept == blocks[i].id)
            at = static_cast<int>(i);
    }
    m_what->addItem(tr("On or near a date"));
    m_what->addItem(tr("From day to day"));
    m_what->setCurrentIndex(at);
    fit();
}

void PeriodChooser::chooseBlock(std::size_t block) {
    m_what->setCurrentIndex(static_cast<int>(block));
}

void PeriodChooser::chooseDate(Date date, int withinDays) {
    m_date->setDate(qtDate(date));
    m_within->setValue(withinDays);
    m_what->setCurrentIndex(m_what->count() - 2);
}

void PeriodChooser::chooseDays(const DayStretch& days) {
    m_date->setDate(qtDate(days.first));
    m_last->setDate(qtDate(days.last));
    m_what->setCurrentIndex(m_what->count() - 1);
}

answers::Period PeriodChooser::period() const {
    if (way() == Way::Date)
        return answers::onDate(modelDate(m_date->date()), m_within->value());
    if (way() == Way::Days) {
        const Date one = modelDate(m_date->date()), other = modelDate(m_last->date());
        const DayStretch days{std::min(one, other), std::max(one, other)};
        return answers::inBlock({.name = isoStretch(days), .first = days.first, .last = days.last});
    }
    return answers::inBlock(m_blocks[static_cast<std::size_t>(m_what->currentIndex())].value);
}

} // namespace slopebook::ui

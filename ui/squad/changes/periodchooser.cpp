// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squad/changes/periodchooser.h"

#include "ui/parts/dayedit.h"
#include "ui/words/format.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <QSpinBox>
#include <QToolTip>

namespace slopebook::ui {

PeriodChooser::PeriodChooser(const QString& label, const QString& name, QWidget* parent)
    : QWidget(parent), m_what(new QComboBox), m_date(new DayEdit), m_within(new QSpinBox) {
    m_what->setAccessibleName(name);
    m_what->addItem(tr("On or near a date"));
    m_date->setAccessibleName(tr("%1: date").arg(name));
    m_within->setAccessibleName(tr("%1: days around it").arg(name));
    m_within->setRange(0, 365);
    m_within->setValue(14);
    m_within->setPrefix(tr("± "));
    m_within->setSuffix(tr(" days"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    auto* caption = new QLabel(label);
    caption->setBuddy(m_what);
    caption->setMargin(1); // at a scale between whole numbers a short word is cut off else
    row->addWidget(caption);
    row->addWidget(m_what);
    row->addWidget(m_date);
    row->addWidget(m_within);
    connect(m_what, &QComboBox::currentIndexChanged, this, [this] {
        fit();
        Q_EMIT changed();
    });
    connect(m_date, &QDateEdit::dateChanged, this, &PeriodChooser::changed);
    // The page goes on with the day that it had: the field says so, and that the other was refused.
    connect(m_date, &DayEdit::refused, this, [this](const QString& why) {
        m_date->takeBack();
        QToolTip::showText(m_date->mapToGlobal(QPoint(0, m_date->height())), why, m_date);
        Q_EMIT refused(why);
    });
    connect(m_within, &QSpinBox::valueChanged, this, &PeriodChooser::changed);
    fit();
}

bool PeriodChooser::onADate() const {
    return m_what->currentIndex() == m_what->count() - 1;
}

void PeriodChooser::fit() {
    m_date->setVisible(onADate());
    m_within->setVisible(onADate());
}

void PeriodChooser::setBlocks(const std::vector<Stored<BlockId, Block>>& blocks) {
    const QSignalBlocker quiet(m_what);
    const bool date = onADate();
    std::optional<BlockId> kept;
    if (!date && m_what->currentIndex() < static_cast<int>(m_blocks.size()))
        kept = m_blocks[static_cast<std::size_t>(m_what->currentIndex())].id;
    m_blocks = blocks;
    m_what->clear();
    int at = static_cast<int>(blocks.size());
    for (std::size_t i = 0; i < blocks.size(); ++i) {
        m_what->addItem(text(blocks[i].value.name));
        if (kept == blocks[i].id)
            at = static_cast<int>(i);
    }
    m_what->addItem(tr("On or near a date"));
    m_what->setCurrentIndex(at);
    fit();
}

void PeriodChooser::chooseBlock(std::size_t block) {
    m_what->setCurrentIndex(static_cast<int>(block));
}

void PeriodChooser::chooseDate(Date date, int withinDays) {
    m_date->setDate(qtDate(date));
    m_within->setValue(withinDays);
    m_what->setCurrentIndex(m_what->count() - 1);
}

answers::Period PeriodChooser::period() const {
    if (onADate())
        return answers::onDate(modelDate(m_date->date()), m_within->value());
    return answers::inBlock(m_blocks[static_cast<std::size_t>(m_what->currentIndex())].value);
}

} // namespace slopebook::ui

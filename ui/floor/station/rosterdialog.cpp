// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/floor/station/rosterdialog.h"

#include "core/model/names.h"
#include "ui/parts/roomfor.h"
#include "ui/words/format.h"
#include "ui/words/said.h"

#include <QDialogButtonBox>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>

#include <algorithm>

namespace slopebook::ui {

RosterDialog::RosterDialog(Logbook& logbook, StationId station, Date day, QWidget* parent)
    : QDialog(parent), m_logbook(logbook), m_roster(logbook.log().roster(station, day)),
      m_all(logbook.log().athletes()) {
    m_roster.station = station;
    m_roster.day = day;
    for (const Roster& one : logbook.log().rosters(station))
        if (one.day < day && !one.athletes.empty())
            m_last = one.athletes;
    build();
    fill();
}

void RosterDialog::build() {
    setWindowTitle(tr("Who is here, %1").arg(dateText(m_roster.day)));
    m_find = new QLineEdit;
    m_find->setObjectName(QStringLiteral("findWho"));
    setHint(*m_find, tr("a name; Enter takes the first"));
    fitPlaceholder(*m_find);
    m_found = new QListWidget;
    m_found->setObjectName(QStringLiteral("notHere"));
    m_found->setAccessibleName(tr("Not here"));
    m_here = new QListWidget;
    m_here->setObjectName(QStringLiteral("here"));
    m_here->setAccessibleName(tr("Here, in the order of their turns"));
    m_add = new QPushButton(tr("&Add"));
    m_addAll = new QPushButton(tr("Add a&ll"));
    m_asLast = new QPushButton(tr("As last &time"));
    m_remove = new QPushButton(tr("Re&move"));
    m_up = new QPushButton(tr("&Earlier"));
    m_up->setToolTip(tr("Alt+Up does the same in the list"));
    m_down = new QPushButton(tr("Late&r"));
    m_down->setToolTip(tr("Alt+Down does the same in the list"));
    m_problem = new QLabel;
    m_problem->setWordWrap(true);
    auto* findLabel = new QLabel(tr("&Find"));
    findLabel->setBuddy(m_find);
    auto* hereLabel = new QLabel(tr("&Here, in turn"));
    hereLabel->setBuddy(m_here);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
    auto* grid = new QGridLayout(this);
    grid->addWidget(findLabel, 0, 0);
    grid->addWidget(m_find, 1, 0);
    grid->addWidget(m_found, 2, 0, 7, 1);
    grid->addWidget(hereLabel, 0, 2);
    grid->addWidget(m_here, 1, 2, 8, 1);
    int row = 2;
    for (QPushButton* button : {m_add, m_addAll, m_asLast, m_remove, m_up, m_down}) {
        button->setAutoDefault(false);
        grid->addWidget(button, row++, 1);
    }
    grid->setRowStretch(row, 1);
    grid->addWidget(m_problem, 10, 0, 1, 3);
    grid->addWidget(buttons, 11, 0, 1, 3);
    resize(560, 420);
    m_find->installEventFilter(this);
    m_found->installEventFilter(this);
    m_here->installEventFilter(this);
    connect(m_find, &QLineEdit::textEdited, this, &RosterDialog::fill);
    connect(m_found, &QListWidget::itemDoubleClicked, this, &RosterDialog::takeFound);
    connect(m_here, &QListWidget::currentRowChanged, this, &RosterDialog::fit);
    connect(m_add, &QPushButton::clicked, this, &RosterDialog::takeFound);
    connect(m_addAll, &QPushButton::clicked, this, &RosterDialog::takeAll);
    connect(m_asLast, &QPushButton::clicked, this, &RosterDialog::takeLast);
    connect(m_remove, &QPushButton::clicked, this, &RosterDialog::leave);
    connect(m_up, &QPushButton::clicked, this, [this] { shift(-1); });
    connect(m_down, &QPushButton::clicked, this, [this] { shift(1); });
    connect(buttons, &QDialogButtonBox::accepted, this, &RosterDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &RosterDialog::reject);
    m_find->setFocus();
}

// Enter in the find line takes a name; where nothing is typed it takes the whole roster.
bool RosterDialog::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::KeyPress)
        return QDialog::eventFilter(watched, event);
    const auto& key = static_cast<const QKeyEvent&>(*event);
    const bool enter = key.key() == Qt::Key_Return || key.key() == Qt::Key_Enter;
    if (watched == m_here) {
        if (key.key() == Qt::Key_Delete || key.key() == Qt::Key_Backspace)
            leave();
        else if ((key.modifiers() & Qt::AltModifier) &&
                 (key.key() == Qt::Key_Up || key.key() == Qt::Key_Down))
            shift(key.key() == Qt::Key_Up ? -1 : 1);
        else
            return QDialog::eventFilter(watched, event);
        return true;
    }
    if (watched == m_find && (key.key() == Qt::Key_Down || key.key() == Qt::Key_Up)) {
        const int row = m_found->currentRow() + (key.key() == Qt::Key_Down ? 1 : -1);
        if (row >= 0 && row < m_found->count())
            m_found->setCurrentRow(row);
        return true;
    }
    if (enter && (watched == m_found || !m_find->text().isEmpty())) {
        takeFound();
        return true;
    }
    return QDialog::eventFilter(watched, event);
}

void RosterDialog::fill() {
    const std::string wanted = foldCase(utf8(m_find->text().trimmed()));
    m_found->clear();
    const auto& here = m_roster.athletes;
    // Names that begin so stand before those that hold it.
    for (const bool begins : {true, false})
        for (const auto& athlete : m_all) {
            const std::string name = foldCase(athlete.value.name);
            const std::size_t at = name.find(wanted);
            if (std::ranges::find(here, athlete.id) != here.end() || at == std::string::npos ||
                (at == 0) != begins)
                continue;
            auto* item = new QListWidgetItem(text(athlete.value.name), m_found);
            item->setData(Qt::UserRole, qint64(raw(athlete.id)));
        }
    m_found->setCurrentRow(m_found->count() > 0 ? 0 : -1);
    const int kept = m_here->currentRow();
    m_here->clear();
    for (const AthleteId id : here)
        for (const auto& athlete : m_all)
            if (athlete.id == id)
                m_here->addItem(text(athlete.value.name));
    m_here->setCurrentRow(std::min(kept, m_here->count() - 1));
    fit();
}

void RosterDialog::fit() {
    const int row = m_here->currentRow();
    m_add->setEnabled(m_found->count() > 0);
    m_addAll->setEnabled(m_found->count() > 0);
    m_asLast->setEnabled(!m_last.empty());
    m_remove->setEnabled(row >= 0);
    m_up->setEnabled(row > 0);
    m_down->setEnabled(row >= 0 && row + 1 < m_here->count());
}

void RosterDialog::takeFound() {
    const QListWidgetItem* item = m_found->currentItem();
    if (!item) {
        m_problem->setText(tr("Nobody else is called “%1”.").arg(m_find->text().trimmed()));
        m_find->selectAll();
        return;
    }
    m_problem->clear();
    m_roster.athletes.push_back(AthleteId{item->data(Qt::UserRole).toLongLong()});
    m_find->clear();
    fill();
    m_here->setCurrentRow(m_here->count() - 1);
}

void RosterDialog::takeAll() {
    for (int row = 0; row < m_found->count(); ++row)
        m_roster.athletes.push_back(AthleteId{m_found->item(row)->data(Qt::UserRole).toLongLong()});
    m_find->clear();
    fill();
}

void RosterDialog::takeLast() {
    for (const AthleteId id : m_last)
        if (std::ranges::find(m_roster.athletes, id) == m_roster.athletes.end())
            m_roster.athletes.push_back(id);
    fill();
}

void RosterDialog::leave() {
    const int row = m_here->currentRow();
    if (row < 0)
        return;
    m_roster.athletes.erase(m_roster.athletes.begin() + row);
    fill();
}

void RosterDialog::shift(int by) {
    const int row = m_here->currentRow(), to = row + by;
    if (row < 0 || to < 0 || to >= m_here->count())
        return;
    std::swap(m_roster.athletes[static_cast<std::size_t>(row)],
              m_roster.athletes[static_cast<std::size_t>(to)]);
    fill();
    m_here->setCurrentRow(to);
}

void RosterDialog::accept() {
    try {
        m_logbook.setRoster(m_roster);
        QDialog::accept();
    } catch (const std::exception& error) {
        m_problem->setText(said(error));
    }
}

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
// How the attempts' form is laid out.
#include "ui/athlete/battery/attemptsview.h"
#include "ui/parts/fingers.h"
#include "ui/parts/fold.h"
#include "ui/parts/roomfor.h"
#include "ui/parts/rowtable.h"
#include "ui/parts/undoableedit.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSplitter>
#include <QTableView>

namespace slopebook::ui {

namespace {

QHBoxLayout* rowIn(QWidget* widget) {
    auto* layout = new QHBoxLayout(widget);
    layout->setContentsMargins(0, 0, 0, 0);
    return layout;
}

void addNamed(QHBoxLayout* layout, const QString& label, QWidget* field, int stretch) {
    auto* caption = new QLabel(label);
    caption->setBuddy(field);
    QString name = label;
    field->setAccessibleName(name.remove(QLatin1Char('&')));
    layout->addWidget(caption);
    layout->addWidget(field, stretch);
}

} // namespace

QWidget* AttemptsView::buildSession() {
    auto* row = new QWidget;
    auto* layout = rowIn(row);
    m_session = new QComboBox;
    m_session->setObjectName(QStringLiteral("session"));
    m_session->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    m_session->setSizePolicy(QSizePolicy::Minimum, QSizePolicy::Fixed); // read whole
    m_newSession = new QPushButton(tr("New session toda&y"));
    addNamed(layout, tr("Sessi&on"), m_session, 0);
    layout->addWidget(m_newSession);
    layout->addWidget(m_conditions);
    layout->addStretch(1);
    return row;
}

QWidget* AttemptsView::buildContext() {
    auto* row = new QWidget;
    row->setToolTip(tr("What a comparison rests on: where it changed, the comparison says so."));
    auto* rows = new QVBoxLayout(row);
    rows->setContentsMargins(0, 0, 0, 0);
    auto* layout = new QHBoxLayout;
    auto* second = new QHBoxLayout;
    rows->addLayout(layout);
    rows->addLayout(second);
    m_surface = new QLineEdit;
    m_device = new QLineEdit;
    m_footwear = new QLineEdit;
    m_technique = new QLineEdit;
    addNamed(layout, tr("S&urface"), m_surface, 1);
    addNamed(layout, tr("&Device"), m_device, 1);
    addNamed(layout, tr("Foot&wear"), m_footwear, 1);
    addNamed(layout, tr("Techni&que"), m_technique, 1);
    m_place = new QLineEdit;
    m_notComparable = new QLineEdit;
    setHint(*m_notComparable, tr("a reason, and this day is read against no other"));
    addNamed(second, tr("Place"), m_place, 1);
    addNamed(second, tr("Not comparable, because"), m_notComparable, 3);
    return row;
}

QWidget* AttemptsView::buildLine() {
    auto* box = new QWidget;
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    auto* row = new QWidget;
    auto* layout = rowIn(row);
    m_test = new QComboBox;
    m_test->setObjectName(QStringLiteral("test"));
    m_tests = new QPushButton(tr("Tests…"));
    m_line = new UndoableEdit;
    m_line->setObjectName(QStringLiteral("attempts"));
    m_line->setMinimumHeight(fingerSize);
    addNamed(layout, tr("Te&st"), m_test, 0);
    layout->addWidget(m_tests);
    addNamed(layout, tr("A&ttempts"), m_line, 1);
    m_answer = new QLabel;
    m_answer->setWordWrap(true);
    m_answer->setAccessibleDescription(tr("Answer to what was typed"));
    column->addWidget(row);
    column->addWidget(m_answer);
    return box;
}

QWidget* AttemptsView::buildTables() {
    m_attempts = new TextTable(this);
    m_values = new TextTable(this);
    RowStyle style{.compact = true, .lastTakesRest = true, .giving = {0}};
    style.leaving = {2, 3}; // they stand in their order; as read is mostly the value
    m_attemptTable = rowTable(m_attempts, tr("Attempts"), style);
    style.leaving = {5, 4}; // how many attempts, and what the two sides beside it say
    m_valueTable = rowTable(m_values, tr("Values of the day"), style);
    m_attemptTable->setObjectName(QStringLiteral("attemptsDone"));
    m_valueTable->setObjectName(QStringLiteral("values"));
    auto* split = new QSplitter;
    split->setChildrenCollapsible(false);
    split->addWidget(m_attemptTable);
    split->addWidget(m_valueTable);
    split->setSizes({560, 560});
    return split;
}

QWidget* AttemptsView::buildButtons() {
    auto* row = new QWidget;
    auto* layout = rowIn(row);
    m_change = new QPushButton(tr("Cha&nge…"));
    m_change->setToolTip(tr("A double click on the attempt does the same"));
    m_leaveOut = new QPushButton(tr("Leave out or take &in again…"));
    m_remove = new QPushButton(tr("Re&move"));
    layout->addWidget(m_change);
    layout->addWidget(m_leaveOut);
    layout->addWidget(m_remove);
    layout->addStretch(1);
    m_trace = new QPushButton(tr("F&rom a trace…"));
    layout->addWidget(m_trace);
    return row;
}

} // namespace slopebook::ui

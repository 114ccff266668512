// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/namecombo.h"

#include "ui/parts/fingers.h"

#include <QAbstractItemView>
#include <QCompleter>
#include <QFocusEvent>
#include <QLineEdit>
#include <QSignalBlocker>
#include <QStyledItemDelegate>

namespace slopebook::ui {

NameCombo::NameCombo(QWidget* parent)
    : QComboBox(parent), m_names(new NameModel(this)), m_matches(new NameModel(this)) {
    setEditable(true);
    setInsertPolicy(QComboBox::NoInsert);
    setModel(m_names);
    setMinimumContentsLength(12);
    setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    setMinimumHeight(fingerSize);
    setMaxVisibleItems(20);
    // A completer reads on as long as its model lets it: so many matches as a page are enough, and
    // of many thousand names one more letter finds fewer.
    m_matches->setReadOnDemand();
    // The line's own, not the box's: that one would look for a match among the names read so far.
    auto* completer = new QCompleter(m_matches, this);
    completer->setCompletionMode(QCompleter::UnfilteredPopupCompletion);
    completer->setCaseSensitivity(Qt::CaseInsensitive);
    lineEdit()->setCompleter(completer);
    // Their own rows know no style, and would stay small where all else fits a finger.
    for (QAbstractItemView* list : {view(), completer->popup()})
        list->setItemDelegate(new QStyledItemDelegate(list));
    connect(lineEdit(), &QLineEdit::textEdited, m_matches, &NameModel::setFind);
    connect(completer, qOverload<const QModelIndex&>(&QCompleter::activated), this,
            [this](const QModelIndex& match) { choose(match.data(Qt::UserRole).toLongLong()); });
    connect(lineEdit(), &QLineEdit::returnPressed, this, &NameCombo::takeTyped);
    connect(this, &QComboBox::currentIndexChanged, this, [this](int row) {
        if (row + 1 == count()) // a key steps on from here
            m_names->fetchMore({});
        if (chosen() == m_last)
            return;
        m_last = chosen();
        Q_EMIT chosenChanged();
    });
}

void NameCombo::setNames(NameSource source) {
    const auto kept = chosen();
    {
        const QSignalBlocker quiet(this);
        m_names->setSource(std::move(source));
        m_matches->setSameAs(*m_names);
        const int at = kept ? m_names->rowOf(*kept) : -1;
        setCurrentIndex(at >= 0 ? at : (count() > 0 ? 0 : -1));
    }
    setEnabled(count() > 0);
    lineEdit()->setPlaceholderText(count() > 0 ? tr("type to find") : tr("none yet"));
    if (chosen() != m_last) {
        m_last = chosen();
        Q_EMIT chosenChanged();
    }
}

std::optional<qint64> NameCombo::chosen() const {
    const QVariant key = currentData();
    return key.isValid() ? std::optional(key.toLongLong()) : std::nullopt;
}

void NameCombo::choose(qint64 key) {
    if (const int at = m_names->rowOf(key); at >= 0)
        setCurrentIndex(at);
}

// The name itself, letter case aside, else the first that holds what was typed.
void NameCombo::takeTyped() {
    const QString typed = lineEdit()->text().trimmed();
    m_matches->setFind(typed);
    std::optional<qint64> found;
    for (int row = 0; !typed.isEmpty() && row < m_matches->rowCount(); ++row) {
        const QModelIndex match = m_matches->index(row);
        const bool whole = match.data().toString().compare(typed, Qt::CaseInsensitive) == 0;
        if (whole || !found)
            found = match.data(Qt::UserRole).toLongLong();
        if (whole)
            break;
        if (row + 1 == m_matches->rowCount())
            m_matches->readOn();
    }
    if (found)
        choose(*found);
    setEditText(itemText(currentIndex()));
    lineEdit()->selectAll();
    if (found)
        Q_EMIT entered();
}

void NameCombo::focusOutEvent(QFocusEvent* event) {
    QComboBox::focusOutEvent(event);
    if (event->reason() != Qt::PopupFocusReason && event->reason() != Qt::ActiveWindowFocusReason)
        setEditText(itemText(currentIndex()));
}

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/namecombo.h"

#include <QCompleter>
#include <QFocusEvent>
#include <QLineEdit>
#include <QSignalBlocker>

namespace slopebook::ui {

NameCombo::NameCombo(QWidget* parent) : QComboBox(parent) {
    setEditable(true);
    setInsertPolicy(QComboBox::NoInsert);
    setMinimumContentsLength(18);
    setMinimumHeight(34);
    setMaxVisibleItems(20);
    completer()->setCompletionMode(QCompleter::PopupCompletion);
    completer()->setFilterMode(Qt::MatchContains);
    completer()->setCaseSensitivity(Qt::CaseInsensitive);
    connect(lineEdit(), &QLineEdit::returnPressed, this, &NameCombo::takeTyped);
    connect(this, &QComboBox::currentIndexChanged, this, [this] {
        if (chosen() == m_last)
            return;
        m_last = chosen();
        Q_EMIT chosenChanged();
    });
}

void NameCombo::setNames(const std::vector<std::pair<qint64, QString>>& names) {
    const auto kept = chosen();
    {
        const QSignalBlocker quiet(this);
        clear();
        for (const auto& [key, name] : names)
            addItem(name, key);
        const int at = kept ? findData(*kept) : -1;
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
    if (const int at = findData(key); at >= 0)
        setCurrentIndex(at);
}

void NameCombo::takeTyped() {
    const QString typed = lineEdit()->text().trimmed();
    int found = findText(typed, Qt::MatchFixedString);
    if (found < 0 && !typed.isEmpty())
        found = findText(typed, Qt::MatchContains);
    if (found >= 0)
        setCurrentIndex(found);
    setEditText(itemText(currentIndex()));
    lineEdit()->selectAll();
    if (found >= 0)
        Q_EMIT entered();
}

void NameCombo::focusOutEvent(QFocusEvent* event) {
    QComboBox::focusOutEvent(event);
    if (event->reason() != Qt::PopupFocusReason && event->reason() != Qt::ActiveWindowFocusReason)
        setEditText(itemText(currentIndex()));
}

} // namespace slopebook::ui

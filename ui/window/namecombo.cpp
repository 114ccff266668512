// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/namecombo.h"

#include "ui/parts/fingers.h"
#include "ui/parts/roomfor.h"
#include "ui/window/framelook.h"

#include <QAbstractItemView>
#include <QCompleter>
#include <QFocusEvent>
#include <QLineEdit>
#include <QPainter>
#include <QSignalBlocker>
#include <QStyleOption>
#include <QStyledItemDelegate>

namespace slopebook::ui {

namespace {
constexpr int caret = 4, widest = 240; // px
}

NameCombo::NameCombo(QWidget* parent)
    : QComboBox(parent), m_names(new NameModel(this)), m_matches(new NameModel(this)) {
    setEditable(true);
    setInsertPolicy(QComboBox::NoInsert);
    setModel(m_names);
    setSizeAdjustPolicy(QComboBox::AdjustToContents);
    setMaximumWidth(widest);
    setMinimumHeight(fingerSize);
    QPalette clear;
    clear.setColor(QPalette::Base, Qt::transparent);
    lineEdit()->setPalette(clear);
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
        if (!lineEdit()->hasFocus())
            lineEdit()->home(false); // its beginning is read
        if (row + 1 == count())      // a key steps on from here
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
    setHint(*lineEdit(), count() > 0 ? tr("type to find") : tr("none yet"));
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

void NameCombo::takeTyped() {
    const auto found = m_matches->bestMatch(lineEdit()->text().trimmed());
    if (found)
        choose(*found);
    setEditText(itemText(currentIndex()));
    lineEdit()->selectAll();
    if (found)
        Q_EMIT entered();
}

// A word with a caret, no box: the line of it paints itself.
void NameCombo::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    const FrameLook look = frameLook(palette());
    const bool keys = lineEdit()->hasFocus();
    const int rule = keys ? 2 : 1; // below the line, which fills its own ground
    painter.fillRect(QRect(0, height() - rule, width(), rule), keys ? look.chosen : look.hair);
    QStyleOptionComboBox option;
    initStyleOption(&option);
    const QRect arrow =
        style()->subControlRect(QStyle::CC_ComboBox, &option, QStyle::SC_ComboBoxArrow, this);
    const QPoint tip = arrow.center() + QPoint(0, caret / 2 + 1);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(isEnabled() ? look.ink : look.hair, 1.4));
    painter.drawPolyline(
        QPolygon({tip + QPoint(-caret, -caret), tip, tip + QPoint(caret, -caret)}));
}

void NameCombo::focusOutEvent(QFocusEvent* event) {
    QComboBox::focusOutEvent(event);
    if (event->reason() != Qt::PopupFocusReason && event->reason() != Qt::ActiveWindowFocusReason)
        setEditText(itemText(currentIndex()));
}

} // namespace slopebook::ui

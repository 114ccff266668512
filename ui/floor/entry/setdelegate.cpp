// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/floor/entry/setdelegate.h"

#include "ui/floor/entry/setmodel.h"

#include <QKeyEvent>
#include <QLineEdit>

namespace slopebook::ui {

namespace {
constexpr char columnProperty[] = "column", rowProperty[] = "row", askedProperty[] = "asked";
}

SetDelegate::SetDelegate(const SetModel& model, QObject* parent)
    : QStyledItemDelegate(parent), m_model(model) {}

QWidget* SetDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem&,
                                   const QModelIndex& index) const {
    auto* line = new QLineEdit(parent);
    line->setProperty(columnProperty, index.column());
    line->setProperty(rowProperty, index.row());
    line->setFrame(false);
    line->setAutoFillBackground(true);
    line->setAccessibleName(
        index.model()->headerData(index.column(), Qt::Horizontal, Qt::DisplayRole).toString());
    return line;
}

bool SetDelegate::eventFilter(QObject* editor, QEvent* event) {
    auto* line = qobject_cast<QLineEdit*>(editor);
    if (!line || event->type() != QEvent::KeyPress)
        return QStyledItemDelegate::eventFilter(editor, event);
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key != Qt::Key_Return && key != Qt::Key_Enter && key != Qt::Key_Tab)
        return QStyledItemDelegate::eventFilter(editor, event);
    const auto refused = m_model.refusal(line->property(columnProperty).toInt(), line->text());
    if (!refused) {
        const QModelIndex index = m_model.index(line->property(rowProperty).toInt(),
                                                line->property(columnProperty).toInt());
        // Asked once: the next Enter takes it as typed.
        if (const QString doubt = m_model.doubt(index, line->text());
            !doubt.isEmpty() && line->property(askedProperty).toString() != line->text()) {
            line->setProperty(askedProperty, line->text());
            Q_EMIT problem(doubt);
            return true;
        }
        Q_EMIT problem(QString());
        if (key == Qt::Key_Tab)
            return QStyledItemDelegate::eventFilter(editor, event);
        // Not queued, as Qt would have it: what was typed is on disk when Enter returns.
        Q_EMIT commitData(line);
        Q_EMIT closeEditor(line);
        return true;
    }
    // Offered in the cell itself and selected: the next Enter takes it.
    if (refused->meant)
        line->setText(*refused->meant);
    line->selectAll();
    Q_EMIT problem(refused->why);
    return true;
}

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
// Edits a cell of the sets' table: what cannot be taken is said at the cell, which stays open.
#pragma once

#include <QStyledItemDelegate>

namespace slopebook::ui {

class SetModel;

class SetDelegate final : public QStyledItemDelegate {
    Q_OBJECT
public:
    SetDelegate(const SetModel& model, QObject* parent);

    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const override;

Q_SIGNALS:
    /// The same words as at the cell, for the page's message line. Empty: all is well again.
    void problem(const QString& why) const;

protected:
    bool eventFilter(QObject* editor, QEvent* event) override;

private:
    const SetModel& m_model;
};

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
// A row of controls that goes on in the next line where the window is narrow.
#pragma once

#include <QLayout>

namespace slopebook::ui {

class WrapRow final : public QLayout {
    Q_OBJECT
public:
    explicit WrapRow(QWidget* parent);
    ~WrapRow() override;

    /// A field with its label before it: they stay in one line.
    void addField(QWidget* label, QWidget* field);

    void addItem(QLayoutItem* item) override;
    int count() const override { return static_cast<int>(m_items.size()); }
    QLayoutItem* itemAt(int index) const override;
    QLayoutItem* takeAt(int index) override;
    Qt::Orientations expandingDirections() const override { return {}; }
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    QSize sizeHint() const override;
    QSize minimumSize() const override;
    void setGeometry(const QRect& area) override;

private:
    /// Returns the height; moves the items where that is wanted.
    int lay(const QRect& area, bool move) const;

    QList<QLayoutItem*> m_items;
};

} // namespace slopebook::ui

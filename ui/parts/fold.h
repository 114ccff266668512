// SPDX-License-Identifier: GPL-3.0-or-later
// What is there on demand: a button with its words, and what it opens below itself.
#pragma once

#include <QToolButton>

namespace slopebook::ui {

/// The button alone: shows and hides the others, which stand wherever the page puts them. Closed at
/// first.
class FoldButton final : public QToolButton {
    Q_OBJECT
public:
    FoldButton(const QString& words, std::initializer_list<QWidget*> folded,
               QWidget* parent = nullptr);
    void setOpen(bool open) { setChecked(open); }

private:
    void fold();
    QList<QWidget*> m_folded;
};

/// "Where this comes from" (or that title), over what says so.
class SourcesFold final : public QWidget {
    Q_OBJECT
public:
    explicit SourcesFold(QWidget* inside, const QString& title = {}, QWidget* parent = nullptr);
    FoldButton* button() const { return m_button; }

private:
    FoldButton* m_button;
};

} // namespace slopebook::ui

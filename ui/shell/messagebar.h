// SPDX-License-Identifier: GPL-3.0-or-later
// A bar over the pages for what must not be missed: a log that is read-only or damaged, a change
// that failed.
#pragma once

#include <QFrame>

class QLabel;

namespace slopebook::ui {

class MessageBar final : public QFrame {
    Q_OBJECT
public:
    explicit MessageBar(QWidget* parent = nullptr);

    /// Shown until closed; an empty text hides the bar.
    void showText(const QString& text);
    QString text() const;

private:
    QLabel* m_label;
};

} // namespace slopebook::ui

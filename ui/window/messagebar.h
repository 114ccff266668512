// SPDX-License-Identifier: GPL-3.0-or-later
// A bar over the pages for what must not be missed: a log that is read-only or damaged, a change
// that failed.
#pragma once

#include <QFrame>

class QLabel;
class QPushButton;

namespace slopebook::ui {

class MessageBar final : public QFrame {
    Q_OBJECT
public:
    explicit MessageBar(QWidget* parent = nullptr);

    /// Shown until closed; an empty text hides the bar. offer: what its button says that leads to
    /// the way out; empty: no button.
    void showText(const QString& text, const QString& offer = {});
    QString text() const { return m_text; }

Q_SIGNALS:
    void offerTaken();

private:
    QString m_text;
    QLabel* m_label;
    QPushButton* m_offer;
};

} // namespace slopebook::ui

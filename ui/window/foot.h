// SPDX-License-Identifier: GPL-3.0-or-later
// The line below the page: a short sentence, for a while.
#pragma once

#include <QLabel>

class QTimer;

namespace slopebook::ui {

class Foot final : public QLabel {
    Q_OBJECT
public:
    explicit Foot(QWidget* parent = nullptr);

    void say(const QString& message);
    /// What is true until the next deed alone: that one takes it away.
    void sayUntilDeed(const QString& message);
    void deedDone();
    /// Whether its place is kept while nothing is said, so that nothing moves when something is.
    void setRoomy(bool roomy);

private:
    void fit();

    QTimer* m_end;
    bool m_roomy = true;
    bool m_untilDeed = false;
};

} // namespace slopebook::ui

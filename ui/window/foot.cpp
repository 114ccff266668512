// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/foot.h"

#include "ui/window/framelook.h"
#include "ui/window/workspace.h"

#include <QTimer>

#include <algorithm>
#include <utility>

namespace slopebook::ui {

namespace {
constexpr int shown = 10000; // ms
constexpr int high = 28;     // px
} // namespace

Foot::Foot(QWidget* parent) : QLabel(parent), m_end(new QTimer(this)) {
    setWordWrap(true);
    setAccessibleDescription(Workspace::tr("Messages"));
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Minimum);
    setMinimumHeight(high);
    setMargin(4);
    setIndent(frameMargin);
    m_end->setSingleShot(true);
    m_end->setInterval(shown);
    connect(m_end, &QTimer::timeout, this, [this] {
        clear();
        fit();
    });
}

void Foot::say(const QString& message) {
    m_untilDeed = false;
    setText(message);
    m_end->start();
    fit();
}

void Foot::sayUntilDeed(const QString& message) {
    say(message);
    m_untilDeed = true;
}

void Foot::deedDone() {
    if (!std::exchange(m_untilDeed, false))
        return;
    m_end->stop();
    clear();
    fit();
}

void Foot::setRoomy(bool roomy) {
    m_roomy = roomy;
    fit();
}

void Foot::fit() {
    // The line of the store beside it says less before this is a column of words.
    constexpr int most = 320;
    setMinimumWidth(text().isEmpty() ? 0
                                     : std::min(most, fontMetrics().horizontalAdvance(text()) +
                                                          frameMargin + 4 * margin()));
    setVisible(m_roomy || !text().isEmpty());
}

} // namespace slopebook::ui

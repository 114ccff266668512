// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/floor/entry/besidelast.h"

#include "ui/words/said.h"

#include <QTimer>

#include <utility>

namespace slopebook::ui {

BesideLast::BesideLast(std::function<QString()> asked) : m_what(std::move(asked)) {
    setObjectName(QStringLiteral("againstLast"));
    setMinimumHeight(fontMetrics().height());
}

void BesideLast::ask(bool room) {
    QSizePolicy policy = sizePolicy();
    if (policy.retainSizeWhenHidden() != room) {
        policy.setRetainSizeWhenHidden(room);
        setSizePolicy(policy);
    }
    if (std::exchange(m_asked, true))
        return;
    QTimer::singleShot(0, this, [this] {
        m_asked = false;
        try {
            say(m_what());
        } catch (const std::exception& error) {
            say(said(error));
        }
    });
}

void BesideLast::say(const QString& told) {
    setText(told);
    setVisible(!told.isEmpty()); // an empty line is nothing to be heard
}

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
// The edit of a session's battery: attempts, what was not possible, context.
#pragma once

#include "ui/edits/edit.h"

namespace slopebook::ui {

class BatteryEdit final : public Edit {
public:
    BatteryEdit(EditHost& host, const QString& text, SessionId session, Battery before,
                Battery after)
        : Edit(host, text), m_session(session), m_before(std::move(before)),
          m_after(std::move(after)) {}
    Logbook::What what() const override { return Logbook::What::Battery; }
    qint64 session() const override { return raw(m_session); }

protected:
    void apply() override { turn(m_before, m_after); }
    void takeBack() override { turn(m_after, m_before); }

private:
    void turn(const Battery& from, const Battery& to) {
        if (log().battery(m_session) != from)
            refuseChangedElsewhere();
        log().setBattery(m_session, to);
    }

    SessionId m_session;
    Battery m_before, m_after;
};

} // namespace slopebook::ui

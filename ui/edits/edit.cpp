// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/edits/edit.h"

#include "core/model/errors.h"
#include "core/model/phrases/questions.h"
#include "ui/words/said.h"

#include <QCoreApplication>

#include <exception>

namespace slopebook::ui {

void Edit::undo() {
    step(false);
}

void Edit::redo() {
    step(true);
}

void Edit::step(bool forward) {
    if (m_applied == forward)
        return;
    const auto refuse = [&](const std::exception& error, bool forGood) {
        if (forGood)
            setObsolete(true);
        else
            m_host.keepPlace();
        const QString tried = forward ? QCoreApplication::translate("Edit", "Redo failed (%1): %2")
                                      : QCoreApplication::translate("Edit", "Undo failed (%1): %2");
        m_host.failed(tried.arg(text(), said(error)));
    };
    try {
        if (forward)
            apply();
        else
            takeBack();
        m_applied = forward;
        m_host.changed(what(), session());
    } catch (const LogError& error) {
        refuse(error,
               error.kind() == LogError::Kind::Conflict || error.kind() == LogError::Kind::Damaged);
    } catch (const BadInput& error) {
        refuse(error, true);
    } catch (const std::exception& error) {
        refuse(error, false);
    }
}

void refuseChangedElsewhere() {
    throw LogError(LogError::Kind::Conflict,
                   questions::say("it has been changed by another window since"));
}

} // namespace slopebook::ui

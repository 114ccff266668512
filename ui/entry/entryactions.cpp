// SPDX-License-Identifier: GPL-3.0-or-later
// What the menus, keys and other pages do in the session form.
#include "core/model/errors.h"
#include "ui/entry/entryline.h"
#include "ui/entry/entrypage.h"
#include "ui/entry/resttimer.h"
#include "ui/entry/sessionbar.h"
#include "ui/entry/setdialog.h"
#include "ui/importing/pastedialog.h"
#include "ui/records/sessionchange.h"
#include "ui/records/sessiondialog.h"
#include "ui/said.h"
#include "ui/shell/format.h"
#include "ui/wording.h"

#include <QMessageBox>

namespace slopebook::ui {

void EntryPage::beginSession() {
    m_bar->beginNew();
}

void EntryPage::openDetails() {
    if (!m_bar->session())
        return;
    try {
        const SessionId session = *m_bar->session();
        const SessionHead before = m_logbook.log().session(session).head.value;
        SessionDialog dialog(m_logbook, session, this);
        if (dialog.exec() != QDialog::Accepted)
            return;
        const SessionHead now = m_logbook.log().session(session).head.value;
        if (const QString news = changeNews(m_logbook.log(), session, before, now); !news.isEmpty())
            Q_EMIT message(news);
    } catch (const std::exception& error) {
        m_line->showProblem(said(error));
    }
}

void EntryPage::removeSession() {
    if (!m_bar->session())
        return;
    try {
        m_logbook.removeSession(*m_bar->session());
        Q_EMIT message(tr("Session removed. Ctrl+Z brings it back with its sets."));
    } catch (const std::exception& error) {
        m_line->showProblem(said(error));
    }
}

void EntryPage::openSet() {
    const auto set = currentSet();
    if (!set)
        return;
    SetDialog dialog(m_logbook, *set, this);
    dialog.exec();
}

void EntryPage::removeSet() {
    const auto set = currentSet();
    if (!set)
        return;
    try {
        m_logbook.removeSet(*set);
        Q_EMIT message(tr("Set removed. Ctrl+Z brings it back."));
    } catch (const std::exception& error) {
        m_line->showProblem(said(error));
    }
}

void EntryPage::offerSpeeds(const QString& speeds, VelocityKind kind) {
    if (!m_lift) {
        m_line->showProblem(tr("Choose a lift first."));
        return;
    }
    try {
        const Lift lift = m_logbook.log().lift(*m_lift).value;
        if (lift.kind == kind)
            m_line->offerSpeeds(speeds);
        else
            m_line->showProblem(tr("%1 is measured in %2; the trace's speeds are %3. Values of "
                                   "different kinds are never put on one line.")
                                    .arg(text(lift.name), kindText(lift.kind), kindText(kind)));
    } catch (const std::exception& error) {
        m_line->showProblem(said(error));
    }
}

void EntryPage::pasteBlock(const QString& text) {
    try {
        PastedBlock block = readBlock(text);
        if (block.wholeTable) {
            Q_EMIT tablePasted(text);
            return;
        }
        if (block.asks()) {
            PasteDialog dialog(block, m_logbook.loadUnit(), this);
            if (dialog.exec() != QDialog::Accepted)
                return;
            block = dialog.block();
        }
        m_line->takeSets(setsOf(block));
    } catch (const BadInput& bad) {
        m_line->showProblem(pastedProblem(bad));
    } catch (const std::exception& error) {
        m_line->showProblem(said(error));
    }
}

void EntryPage::showRest(bool wanted) {
    m_rest->setWanted(wanted);
}

void EntryPage::focusLine() {
    m_line->edit()->setFocus(Qt::ShortcutFocusReason);
}

} // namespace slopebook::ui

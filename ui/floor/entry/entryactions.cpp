// SPDX-License-Identifier: GPL-3.0-or-later
// What the menus, keys and other pages do in the session form.
#include "core/model/errors.h"
#include "ui/floor/entry/entryline.h"
#include "ui/floor/entry/entrypage.h"
#include "ui/floor/entry/resttimer.h"
#include "ui/floor/entry/sessionbar.h"
#include "ui/floor/entry/setdialog.h"
#include "ui/importing/pastedialog.h"
#include "ui/records/sessionchange.h"
#include "ui/records/sessiondialog.h"
#include "ui/words/format.h"
#include "ui/words/readable.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QMessageBox>

#include <algorithm>

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
        const auto conditions = [&] {
            return m_lift ? m_logbook.log().conditions(session, *m_lift) : Conditions{};
        };
        const Conditions under = conditions();
        SessionDialog dialog(m_logbook, session, this, m_lift);
        if (dialog.exec() != QDialog::Accepted)
            return;
        const SessionHead now = m_logbook.log().session(session).head.value;
        if (const QString news = changeNews(m_logbook.log(), session, before, now); !news.isEmpty())
            Q_EMIT message(news);
        else if (const QString device =
                     m_lift ? deviceNews(m_logbook.log(), session, *m_lift, under, conditions())
                            : QString();
                 !device.isEmpty())
            Q_EMIT message(device);
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
        const std::vector<Set> sets = setsOf(block);
        m_line->offerSets(sets, questionsOf(block, sets));
    } catch (const BadInput& bad) {
        m_line->showProblem(pastedProblem(bad));
    } catch (const std::exception& error) {
        m_line->showProblem(said(error));
    }
}

// What is to be said of pasted sets before they are taken: columns that nobody reads, and sets that
// stand in the session already.
QStringList EntryPage::questionsOf(const PastedBlock& block, const std::vector<Set>& sets) const {
    QStringList asked;
    const QStringList unread = notRead(block);
    if (!unread.isEmpty())
        asked << tr("Not read of what was pasted: %1.").arg(namesText(unread));
    int there = 0;
    if (m_bar->session() && m_lift) {
        auto held = m_logbook.log().sets(*m_bar->session(), *m_lift);
        for (const Set& set : sets) {
            const auto same = std::find_if(held.begin(), held.end(), [&](const auto& placed) {
                return placed.set.load == set.load && placed.set.reps == set.reps;
            });
            if (same == held.end())
                continue;
            held.erase(same); // each stands for one
            ++there;
        }
    }
    if (there > 0)
        asked << tr("Of %1 pasted sets this session has %2 already, with the same load and speeds.")
                     .arg(sets.size())
                     .arg(there);
    if (!asked.isEmpty())
        asked << tr("Enter takes them for %1; Esc does not.").arg(whose());
    return asked;
}

/// "Ada, Bench pull, 14 March 2026": for whom and when a set goes in.
QString EntryPage::whose() const {
    if (!m_athlete || !m_lift)
        return {};
    const log::Log& log = m_logbook.log();
    QStringList parts{text(log.athlete(*m_athlete).value.name), text(log.lift(*m_lift).value.name)};
    parts << (m_bar->session() ? dateText(log.session(*m_bar->session()).head.value.date)
                               : tr("a new session"));
    return parts.join(QStringLiteral(", "));
}

void EntryPage::showRest(bool wanted) {
    m_rest->setWanted(wanted);
}

void EntryPage::focusLine() {
    m_line->edit()->setFocus(Qt::ShortcutFocusReason);
}

} // namespace slopebook::ui

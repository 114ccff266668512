// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/storedeeds.h"

#include "core/log/hold.h"
#include "core/meetings/joining.h"
#include "ui/parts/longwork.h"
#include "ui/window/joindialog.h"
#include "ui/window/logkeeper.h"
#include "ui/window/mainwindow.h"
#include "ui/window/mergedeeds.h"
#include "ui/window/storedialog.h"
#include "ui/window/storeline.h"
#include "ui/window/workspace.h"
#include "ui/words/format.h"
#include "ui/words/said.h"

#include <QApplication>
#include <QMessageBox>
#include <QPushButton>

namespace slopebook::ui {

namespace {
void connectLine(MainWindow& window, StoreLine& line) {
    QObject::connect(
        &line, &QPushButton::clicked, &window, [&window] { StoreDeeds(window).show(); },
        Qt::QueuedConnection);
    StoreKeeper& keeper = line.keeper();
    // Said for a while, and no dialog: the work goes on, and the line says it from then on.
    // All of it ends with the line: the keeper may go on to the next one.
    QObject::connect(&keeper, &StoreKeeper::troubleBegan, &line,
                     [&window](const QString& why) { window.say(why); });
    QObject::connect(&keeper, &StoreKeeper::choicesCame, &line,
                     [&window] { MergeDeeds(window).tellWaiting(); });
    QObject::connect(&keeper, &StoreKeeper::tookIn, &line, [&window] {
        if (window.workspace())
            window.workspace()->wantLook();
    });
    QObject::connect(
        &keeper, &StoreKeeper::left, &line,
        [&window] {
            if (window.workspace())
                window.workspace()->showStore(nullptr);
        },
        Qt::QueuedConnection);
}
} // namespace

void StoreDeeds::begin(std::shared_ptr<StoreKeeper> kept) {
    Workspace* work = m_window.workspace();
    if (!work)
        return;
    work->guarded([&] {
        if (!meetings::joined(work->logbook().log()))
            return;
        const bool isNew = !kept;
        if (isNew)
            kept = std::make_shared<StoreKeeper>(work->logbook(), work->clock());
        auto* line = new StoreLine(std::move(kept));
        work->showStore(line);
        connectLine(m_window, *line);
        if (const auto& trouble = line->keeper().state().trouble; trouble && isNew)
            m_window.say(trouble->whole());
    });
}

StoreLine* StoreDeeds::line() {
    Workspace* work = m_window.workspace();
    if (!work)
        return nullptr;
    if (!work->storeLine())
        work->guarded([&] {
            if (!meetings::joined(work->logbook().log()))
                m_window.say(
                    MainWindow::tr("This log meets no store: Log, Shared store, Join a store."));
            else if (!m_window.logs().sound())
                m_window.say(MainWindow::tr(
                    "The log is still being checked. It meets its store once that is done."));
            else
                begin(); // another window has just joined it
        });
    return work->storeLine();
}

void StoreDeeds::join() {
    Workspace* work = m_window.workspace();
    if (!work)
        return;
    work->guarded([&] {
        const log::Log& log = work->logbook().log();
        log::passHold(log);
        const auto before = meetings::joined(log);
        JoinDialog dialog(log.file(), before ? text(before->connection) : QString(),
                          before ? text(before->squad) : QString(), &m_window);
        if (dialog.exec() != QDialog::Accepted)
            return;
        work->showStore(nullptr); // under the address before
        begin();
        m_window.say(MainWindow::tr("The log has joined the store, and meets it now."));
    });
}

void StoreDeeds::meetNow() {
    if (StoreLine* const known = line())
        known->keeper().meetNow();
}

void StoreDeeds::show() {
    StoreLine* const known = line();
    if (!known)
        return;
    enum class Then { Nothing, Leave, Address, Choices } then = Then::Nothing;
    {
        StoreDialog dialog(known->keeper(), m_window.workspace()->logbook(), &m_window);
        const auto closes = [&](auto signal, Then after) {
            QObject::connect(&dialog, signal, &dialog, [&dialog, &then, after] {
                then = after;
                dialog.accept();
            });
        };
        closes(&StoreDialog::leaveWanted, Then::Leave);
        closes(&StoreDialog::addressWanted, Then::Address);
        closes(&StoreDialog::choicesWanted, Then::Choices);
        QObject::connect(&known->keeper(), &StoreKeeper::left, &dialog, &QDialog::reject);
        dialog.exec();
    }
    if (then == Then::Leave)
        leave();
    else if (then == Then::Address)
        join();
    else if (then == Then::Choices)
        MergeDeeds(m_window).choose();
}

void StoreDeeds::leave() {
    if (!line())
        return;
    QMessageBox box(QMessageBox::Question, MainWindow::tr("Leave the store?"),
                    MainWindow::tr("The log will meet the store no more. Nothing that it holds "
                                   "changes, and nothing in the store. It can join again."),
                    QMessageBox::NoButton, &m_window);
    auto* const leaves = box.addButton(MainWindow::tr("&Leave"), QMessageBox::AcceptRole);
    auto* const stays = box.addButton(MainWindow::tr("&Stay"), QMessageBox::RejectRole);
    box.setDefaultButton(stays);
    box.setEscapeButton(stays);
    box.exec();
    Workspace* work = m_window.workspace();
    if (box.clickedButton() != leaves || !work)
        return;
    work->guarded([&] {
        log::passHold(work->logbook().log());
        work->showStore(nullptr);
        const auto file = work->logbook().log().file();
        try {
            doLongWork(&m_window, MainWindow::tr("Leaving the store"), [file](const Progress&) {
                log::Log log = log::Log::open(file);
                meetings::leaveStore(log);
            });
        } catch (...) {
            begin(); // it still meets it
            throw;
        }
        m_window.say(MainWindow::tr("The log meets no store any more."));
    });
}

} // namespace slopebook::ui

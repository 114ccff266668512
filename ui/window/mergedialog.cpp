// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/mergedialog.h"

#include "core/log/backups.h"
#include "ui/edits/logbook.h"
#include "ui/words/format.h"
#include "ui/words/said.h"

#include <QDialogButtonBox>
#include <QFileInfo>
#include <QHeaderView>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QTreeWidget>
#include <QVBoxLayout>

namespace slopebook::ui {

MergeDialog::MergeDialog(const desks::MergeReport& report, const QString& file,
                         const Logbook& logbook, QWidget* parent)
    : QDialog(parent), m_list(new QTreeWidget) {
    setWindowTitle(tr("Merge another log"));
    fill(report, logbook);
    build(report, file, nameOf(log::backupFolder(logbook.log().file())));
}

void MergeDialog::fill(const desks::MergeReport& report, const Logbook& logbook) {
    const auto words = [&](const Words& some) { return said(some, logbook.loadUnit()); };
    const auto add = [&](const QString& what, const QString& thing, const QString& more) {
        auto* item = new QTreeWidgetItem(m_list, {what, thing, more});
        for (int column = 0; column < 3; ++column)
            item->setToolTip(column, item->text(column));
    };
    const auto named = [&](const std::string& kind, const Words& name) {
        return tr("%1: %2").arg(words(desks::sayKind(kind)), words(name));
    };
    for (const desks::ShownConflict& one : report.listed)
        add(tr("to choose"), named(one.kind, one.about), words(desks::sayWhy(one.why)));
    for (const auto& [from, into] : report.joined)
        add(tr("joined"), named(from.kind, from.name), tr("one with %1").arg(words(into.name)));
    for (const auto& [now, before] : report.renamed)
        add(tr("renamed"), named(now.kind, now.name),
            tr("before: %1").arg(QString::fromStdString(before)));
    for (const desks::Named& one : report.revived)
        add(tr("brought back"), named(one.kind, one.name),
            tr("removed in one log, in use in the "
               "other"));
    m_list->setHeaderLabels({tr("What"), tr("Of"), tr("How")});
    m_list->setRootIsDecorated(false);
    m_list->setUniformRowHeights(true);
    m_list->setAccessibleName(tr("What is not simply added"));
    m_list->setObjectName(QStringLiteral("mergeList"));
    m_list->header()->setSectionResizeMode(0, QHeaderView::ResizeToContents);
    m_list->header()->resizeSection(1, 320);
    if (m_list->topLevelItemCount() > 0)
        m_list->setCurrentItem(m_list->topLevelItem(0));
}

void MergeDialog::build(const desks::MergeReport& report, const QString& file,
                        const QString& folder) {
    const QLocale locale;
    const auto number = [&](std::size_t count) {
        return locale.toString(static_cast<qulonglong>(count));
    };
    auto* sentence = new QLabel(
        report.pastAlone
            ? tr("Both logs hold the same. How %1 came to it is noted, so that what both know is "
                 "not asked about again. The other log is only read.")
                  .arg(QFileInfo(file).fileName())
            : tr("From %1 come: %2 new, %3 changed, %4 removed, %5 one with another (athletes, "
                 "sessions, sets and all else together). The other log is only read.")
                  .arg(QFileInfo(file).fileName(), number(report.added), number(report.changed),
                       number(report.removed), number(report.becameOne)));
    sentence->setTextFormat(Qt::PlainText); // a file may be called anything
    sentence->setWordWrap(true);
    sentence->setObjectName(QStringLiteral("mergeSentence"));
    auto* past = new QLabel(
        tr("These two logs have no common past: of %1 athletes here and %2 there none is in both. "
           "Who is in both under one name stands twice, with the sessions of each; lifts, tests "
           "and devices of one name become one.")
            .arg(number(report.athletes.here), number(report.athletes.there)));
    past->setWordWrap(true);
    past->setObjectName(QStringLiteral("mergePast"));
    if (!report.noCommonPast)
        past->hide();
    auto* joined = new QLabel(tr("What is joined is one from now on: everything that either log "
                                 "holds of it stands under the one that is left."));
    joined->setWordWrap(true);
    if (report.joined.empty())
        joined->hide();
    auto* backup = new QLabel(tr("A backup is made first, in %1. To undo the merge go back to it: "
                                 "Log, Go back to a backup.")
                                  .arg(folder));
    backup->setTextFormat(Qt::PlainText);
    backup->setWordWrap(true);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
    auto* merge = buttons->addButton(tr("&Merge"), QDialogButtonBox::AcceptRole);
    merge->setObjectName(QStringLiteral("mergeNow"));
    merge->setDefault(true);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(past);
    layout->addWidget(sentence);
    if (m_list->topLevelItemCount() > 0)
        layout->addWidget(m_list, 1);
    else
        m_list->hide();
    layout->addWidget(joined);
    layout->addWidget(backup);
    layout->addWidget(buttons);
    if (m_list->topLevelItemCount() == 0)
        m_list->setParent(this);
    setTabOrder(m_list, merge); // the box's own order passes over one of its buttons
    setTabOrder(merge, buttons->button(QDialogButtonBox::Cancel));
    resize(760, m_list->topLevelItemCount() > 0 ? 420 : 160);
}

} // namespace slopebook::ui

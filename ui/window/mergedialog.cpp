// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/mergedialog.h"

#include "core/log/backups.h"
#include "ui/edits/logbook.h"
#include "ui/window/mergerows.h"
#include "ui/words/format.h"

#include <QDialogButtonBox>
#include <QFileInfo>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QTreeWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace slopebook::ui {

MergeDialog::MergeDialog(const desks::MergeReport& report, const QString& file,
                         const Logbook& logbook, QWidget* parent, When when)
    : QDialog(parent), m_list(new QTreeWidget), m_when(when) {
    setWindowTitle(tr("Merge another log"));
    fill(report, logbook);
    build(report, file, nameOf(log::backupFolder(logbook.log().file())));
}

void MergeDialog::fill(const desks::MergeReport& report, const Logbook& logbook) {
    fillMergeRows(*m_list, report, logbook.loadUnit());
    layOutMergeRows(*m_list);
    m_list->setObjectName(QStringLiteral("mergeList"));
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
    auto* other = new QLabel(tr("It is not what was shown before: the log was written to "
                                "meanwhile."));
    other->setWordWrap(true);
    other->setObjectName(QStringLiteral("mergeOther"));
    auto* backup =
        new QLabel((m_when == When::Done
                        ? tr("A backup was made first, in %1. To undo the merge go back to it: "
                             "Log, Go back to a backup.")
                        : tr("A backup is made first, in %1. To undo the merge go back to it: "
                             "Log, Go back to a backup."))
                       .arg(folder));
    backup->setTextFormat(Qt::PlainText);
    backup->setWordWrap(true);
    auto* buttons = new QDialogButtonBox(m_when == When::Done ? QDialogButtonBox::Close
                                                              : QDialogButtonBox::Cancel);
    QPushButton* closes =
        buttons->button(m_when == When::Done ? QDialogButtonBox::Close : QDialogButtonBox::Cancel);
    QPushButton* merge = closes;
    if (m_when == When::Before) {
        merge = buttons->addButton(tr("&Merge"), QDialogButtonBox::AcceptRole);
        merge->setObjectName(QStringLiteral("mergeNow"));
        other->hide();
    }
    merge->setDefault(true);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(other);
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
    if (merge != closes)
        setTabOrder(merge, closes);
    constexpr int wide = 760;
    resize(wide, std::max(layout->totalHeightForWidth(wide), // whatever the letters' size
                          m_list->topLevelItemCount() > 0 ? 420 : 0));
}

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/backupsdialog.h"

#include "ui/window/openlog.h"
#include "ui/words/format.h"
#include "ui/words/said.h"

#include <QDateTime>
#include <QDialogButtonBox>
#include <QFileInfo>
#include <QHeaderView>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QTreeWidget>
#include <QVBoxLayout>

namespace slopebook::ui {

namespace {
enum BackupColumn { Made, Size, Sessions, Sets, State };

/// "14 Mar 2026 12:00", as the desktop writes it.
QString madeText(std::chrono::sys_seconds made) {
    return QLocale().toString(QDateTime::fromSecsSinceEpoch(made.time_since_epoch().count()),
                              QLocale::ShortFormat);
}

} // namespace

BackupsDialog::BackupsDialog(const std::filesystem::path& log, QWidget* parent)
    : QDialog(parent), m_copies(log::keptCopies(log)), m_list(new QTreeWidget) {
    setWindowTitle(tr("Backups"));
    build(log);
    fill();
    fit();
}

void BackupsDialog::build(const std::filesystem::path& log) {
    const QString folder = nameOf(log::backupFolder(log));
    auto* about = new QLabel(
        m_copies.empty()
            ? tr("There is no backup of this log yet. One is made when the log is opened and the "
                 "last is over a day old; they are kept in %1.")
                  .arg(folder)
            : tr("Going back puts a copy of the backup in the place of the log. The log as it is "
                 "now is kept beside it under another name, so that nothing is lost. The backups "
                 "are in %1.")
                  .arg(folder));
    about->setWordWrap(true);
    m_list->setHeaderLabels({tr("Made"), tr("Size"), tr("Sessions"), tr("Sets"), tr("Checked")});
    m_list->setRootIsDecorated(false);
    m_list->setUniformRowHeights(true);
    m_list->setAccessibleName(tr("Backups"));
    m_list->setObjectName(QStringLiteral("backups"));
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    m_goBack = buttons->addButton(tr("&Go back to this one"), QDialogButtonBox::AcceptRole);
    m_goBack->setObjectName(QStringLiteral("goBack"));
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(m_list, &QTreeWidget::currentItemChanged, this, &BackupsDialog::fit);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(about);
    layout->addWidget(m_list, 1);
    layout->addWidget(buttons);
    setTabOrder(m_list, m_goBack); // the box's own order passes over one of its buttons
    setTabOrder(m_goBack, buttons->button(QDialogButtonBox::Close));
    resize(680, 400);
}

void BackupsDialog::fill() {
    const QLocale locale;
    for (const log::KeptCopy& copy : m_copies) {
        auto* item = new QTreeWidgetItem(m_list);
        item->setText(Made, madeText(copy.backup.made));
        item->setText(Size, locale.formattedDataSize(static_cast<qint64>(copy.bytes)));
        if (copy.holds) {
            item->setText(Sessions, locale.toString(static_cast<qlonglong>(copy.holds->sessions)));
            item->setText(Sets, locale.toString(static_cast<qlonglong>(copy.holds->sets)));
        }
        QString state = copy.problem.empty() ? tr("whole and sound") : tr("damaged");
        if (copy.beforeMigration)
            state = tr("%1; made before Slopebook was updated").arg(state);
        if (copy.beforeMerge)
            state = tr("%1; made before another log was merged").arg(state);
        item->setText(State, state);
        const QString about = copy.problem.empty() ? nameOf(copy.backup.file) : said(copy.problem);
        for (int column = Made; column <= State; ++column)
            item->setToolTip(column, about);
        for (const int column : {Size, Sessions, Sets})
            item->setTextAlignment(column, Qt::AlignRight | Qt::AlignVCenter);
    }
    for (int column = Made; column < State; ++column)
        m_list->resizeColumnToContents(column);
    // The newest that is sound, which is what most come for.
    for (std::size_t i = 0; i < m_copies.size(); ++i)
        if (m_copies[i].problem.empty()) {
            m_list->setCurrentItem(m_list->topLevelItem(static_cast<int>(i)));
            break;
        }
}

void BackupsDialog::fit() {
    const int row = m_list->indexOfTopLevelItem(m_list->currentItem());
    m_goBack->setEnabled(row >= 0 && m_copies[static_cast<std::size_t>(row)].problem.empty());
    m_goBack->setDefault(m_goBack->isEnabled());
}

std::filesystem::path BackupsDialog::chosen() const {
    const int row = m_list->indexOfTopLevelItem(m_list->currentItem());
    return result() == Accepted && row >= 0 ? m_copies[static_cast<std::size_t>(row)].backup.file
                                            : std::filesystem::path();
}

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/welcomepage.h"

#include "ui/parts/cautions.h"
#include "ui/parts/sentence.h"

#include <QCommandLinkButton>
#include <QDir>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QShortcut>
#include <QStyle>
#include <QVBoxLayout>

#include <algorithm>

namespace slopebook::ui {

namespace {
constexpr int welcomeWidth = 860;
constexpr int goneRole = Qt::UserRole + 1;
} // namespace

WelcomePage::WelcomePage(bool hasSample, QWidget* parent)
    : QWidget(parent), m_problem(new QLabel),
      m_wayBack(new QPushButton(tr("Go back to a &backup…"))),
      m_recentTitle(new QLabel(tr("&Recent logs"))), m_recent(new QListWidget) {
    auto* title = new QLabel(tr("Slopebook"));
    title->setFont(sentenceFont(title->font(), 2));
    auto* job =
        new QLabel(tr("Type a ladder of loads and bar speeds, see its line and the estimated "
                      "1RM with an honest interval, compare it with last time's, print the "
                      "page. Everything is kept in one file, your log; what you type is on "
                      "disk at once."));
    job->setWordWrap(true);
    m_problem->setWordWrap(true);
    m_problem->setObjectName(QStringLiteral("welcomeProblem"));
    m_problem->setAccessibleDescription(tr("What went wrong"));
    m_problem->hide();
    m_wayBack->setObjectName(QStringLiteral("wayBack"));
    m_wayBack->hide();
    connect(m_wayBack, &QPushButton::clicked, this, &WelcomePage::backupsWanted);
    m_recentTitle->setBuddy(m_recent);
    m_recent->setAccessibleName(tr("Recent logs"));
    m_recent->setWordWrap(true);
    m_recent->setAccessibleDescription(tr("Enter opens the log, Delete takes it off the list"));
    m_recent->setToolTip(m_recent->accessibleDescription());
    connect(m_recent, &QListWidget::itemActivated, this, &WelcomePage::openRecent);
    connect(m_recent, &QListWidget::itemClicked, this, [this](const QListWidgetItem* item) {
        if (!style()->styleHint(QStyle::SH_ItemView_ActivateItemOnSingleClick, nullptr, m_recent))
            openRecent(item); // else it is activated as well
    });
    auto* forget = new QShortcut(QKeySequence::Delete, m_recent);
    forget->setContext(Qt::WidgetShortcut);
    connect(forget, &QShortcut::activated, this, [this] {
        if (const QListWidgetItem* item = m_recent->currentItem())
            Q_EMIT forgetWanted(item->data(Qt::UserRole).toString());
    });

    auto* recent = new QVBoxLayout;
    recent->addWidget(m_recentTitle);
    recent->addWidget(m_recent, 1);
    recent->addStretch(0);
    auto* columns = new QHBoxLayout;
    columns->setSpacing(32);
    columns->addWidget(buildButtons(hasSample), 1);
    columns->addLayout(recent, 1);
    auto* content = new QWidget;
    content->setMaximumWidth(welcomeWidth);
    auto* page = new QVBoxLayout(content);
    page->setSpacing(12);
    page->addStretch(1);
    page->addWidget(title);
    page->addWidget(job);
    page->addWidget(m_problem);
    page->addWidget(m_wayBack, 0, Qt::AlignLeft);
    page->addLayout(columns, 4);
    auto* caution = new CautionLabel;
    page->addWidget(caution);
    page->addStretch(1);
    auto* centred = new QHBoxLayout(this);
    centred->addStretch();
    centred->addWidget(content, 100);
    centred->addStretch();
}

QWidget* WelcomePage::buildButtons(bool hasSample) {
    auto* box = new QWidget;
    auto* layout = new QVBoxLayout(box);
    layout->setContentsMargins(0, 0, 0, 0);
    const auto add = [&](const QString& label, const QString& about, auto signal) {
        auto* button = new QCommandLinkButton(label, about);
        button->setAccessibleDescription(about);
        QString name = label;
        button->setAccessibleName(name.remove(QLatin1Char('&')));
        connect(button, &QCommandLinkButton::clicked, this, signal);
        layout->addWidget(button);
        return button;
    };
    if (hasSample)
        add(tr("Open the &sample"), tr("A rowing squad, a flooded weights room: a copy to try on"),
            &WelcomePage::sampleWanted);
    add(tr("&New log"), tr("One file, where you choose"), &WelcomePage::newWanted);
    add(tr("&Open a log"), tr("Or drop it on this window"), &WelcomePage::openWanted);
    add(tr("&Import a table"),
        tr("CSV or a workbook (.xlsx, .ods): date, athlete, lift, load and velocity"),
        &WelcomePage::importWanted);
    layout->addStretch();
    return box;
}

void WelcomePage::openRecent(const QListWidgetItem* item) {
    const QString file = item->data(Qt::UserRole).toString();
    if (item->data(goneRole).toBool())
        showProblem(tr("%1 is not there any more. Delete takes it off the list.")
                        .arg(QDir::toNativeSeparators(file)));
    else
        Q_EMIT recentWanted(file);
}

// The names alone are looked at: no log is opened for the list.
void WelcomePage::setRecent(const QStringList& files) {
    const int before = m_recent->currentRow();
    m_recent->clear();
    const QIcon icon(QStringLiteral(":/icons/application-x-slopebook.svg"));
    for (const QString& file : files) {
        const QFileInfo info(file);
        const bool gone = !info.exists();
        const QString where = QDir::toNativeSeparators(info.absolutePath());
        auto* item = new QListWidgetItem(
            icon,
            QStringLiteral("%1\n%2").arg(info.completeBaseName(),
                                         gone ? tr("not there any more: %1").arg(where) : where),
            m_recent);
        item->setData(Qt::UserRole, file);
        item->setData(goneRole, gone);
        item->setToolTip(QDir::toNativeSeparators(file));
        // Not by a colour: the list's own may be others a moment later.
        QFont type = m_recent->font();
        type.setItalic(gone);
        item->setFont(type);
    }
    if (m_recent->count() > 0) // keys begin somewhere
        m_recent->setCurrentRow(std::clamp(before, 0, m_recent->count() - 1));
    m_recentTitle->setVisible(m_recent->count() > 0);
    m_recent->setVisible(m_recent->count() > 0);
}

void WelcomePage::showProblem(const QString& why, bool wayBack) {
    m_wayBack->setVisible(!why.isEmpty() && wayBack);
    m_problem->setText(why.isEmpty() ? QString() : QStringLiteral("\u26a0 ") + why);
    m_problem->setVisible(!why.isEmpty());
}

QString WelcomePage::problem() const {
    return m_problem->text();
}

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/welcomepage.h"

#include "ui/parts/cautions.h"

#include <QCommandLinkButton>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

namespace slopebook::ui {

namespace {
constexpr int welcomeWidth = 860;
}

WelcomePage::WelcomePage(bool hasSample, QWidget* parent)
    : QWidget(parent), m_problem(new QLabel),
      m_wayBack(new QPushButton(tr("Go back to a &backup…"))),
      m_recentTitle(new QLabel(tr("&Recent logs"))), m_recent(new QListWidget) {
    auto* title = new QLabel(tr("Slopebook"));
    QFont large = title->font();
    large.setPointSizeF(large.pointSizeF() * 2);
    title->setFont(large);
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
    connect(m_recent, &QListWidget::itemActivated, this, [this](const QListWidgetItem* item) {
        Q_EMIT recentWanted(item->data(Qt::UserRole).toString());
    });
    connect(m_recent, &QListWidget::itemClicked, this, [this](const QListWidgetItem* item) {
        Q_EMIT recentWanted(item->data(Qt::UserRole).toString());
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
    const auto add = [&](const QString& words, const QString& about, auto signal) {
        auto* button = new QCommandLinkButton(words, about);
        button->setAccessibleDescription(about);
        QString name = words;
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
    add(tr("&Import CSV"), tr("Date, athlete, lift, set, load, rep and velocity, one row a rep"),
        &WelcomePage::importWanted);
    layout->addStretch();
    return box;
}

void WelcomePage::setRecent(const QStringList& files) {
    m_recent->clear();
    for (const QString& file : files) {
        const QFileInfo info(file);
        if (!info.exists())
            continue;
        auto* item = new QListWidgetItem(
            QStringLiteral("%1\n%2").arg(info.completeBaseName(), info.absolutePath()), m_recent);
        item->setData(Qt::UserRole, file);
        item->setToolTip(file);
    }
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

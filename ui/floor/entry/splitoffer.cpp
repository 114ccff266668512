// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/floor/entry/splitoffer.h"

#include "ui/parts/fingers.h"
#include "ui/words/format.h"
#include "ui/words/said.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

#include <algorithm>

namespace slopebook::ui {

SplitOffer::SplitOffer(Logbook& logbook, QWidget* parent)
    : QWidget(parent), m_logbook(logbook), m_words(new QLabel) {
    m_words->setObjectName(QStringLiteral("splitDay"));
    m_words->setWordWrap(true);
    m_words->setAccessibleDescription(tr("Two sessions of one day"));
    auto* join = new QPushButton(tr("Join them"));
    join->setObjectName(QStringLiteral("joinSessions"));
    join->setToolTip(tr("One session, in which each lift and test keeps its device. Undo parts "
                        "them again."));
    auto* leave = new QPushButton(tr("Leave them"));
    leave->setObjectName(QStringLiteral("leaveSessions"));
    leave->setToolTip(tr("They stay two, and it is not asked again while this log is open."));
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_words, 1);
    for (QPushButton* button : {join, leave}) {
        button->setMinimumHeight(fingerSize);
        layout->addWidget(button);
    }
    connect(join, &QPushButton::clicked, this, &SplitOffer::join);
    connect(leave, &QPushButton::clicked, this, &SplitOffer::leave);
    hide();
}

void SplitOffer::offerFor(std::optional<AthleteId> athlete, std::optional<SessionId> session) {
    m_day.reset();
    const log::Log& log = m_logbook.log();
    if (athlete && session && log.access() == log::Access::ReadWrite) {
        const auto sessions = log.sessions(*athlete);
        m_day = log::splitDayOf(log, sessions, *session);
        const auto head =
            std::ranges::find(sessions, *session, &Stored<SessionId, SessionHead>::id);
        if (m_day)
            m_words->setText(tr("Two sessions of %1 differ only by their device: are they one?")
                                 .arg(dateText(head->value.date)));
    }
    setVisible(m_day && !m_left.contains({m_day->into, m_day->from}));
}

void SplitOffer::join() {
    if (!m_day)
        return;
    const log::SplitDay day = *m_day;
    try {
        m_logbook.joinSessions(day.into, day.from);
        Q_EMIT joined(day.into, tr("One session now, each lift and test with its device. Undo "
                                   "parts them again."));
    } catch (const std::exception& error) {
        Q_EMIT problem(said(error));
    }
}

void SplitOffer::leave() {
    if (m_day)
        m_left.insert({m_day->into, m_day->from});
    hide();
    Q_EMIT left();
}

} // namespace slopebook::ui

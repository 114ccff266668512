// SPDX-License-Identifier: GPL-3.0-or-later
// A quiet line over a session that was made only for a second device: to be joined with the other
// of its day, or left.
#pragma once

#include "core/log/splitdays.h"
#include "ui/edits/logbook.h"

#include <QWidget>

#include <set>

class QLabel;

namespace slopebook::ui {

class SplitOffer final : public QWidget {
    Q_OBJECT
public:
    explicit SplitOffer(Logbook& logbook, QWidget* parent = nullptr);

    /// Shown where that session is one of two that may be joined, and they were not left; else
    /// hidden. Throws LogError.
    void offerFor(std::optional<AthleteId> athlete, std::optional<SessionId> session);

Q_SIGNALS:
    /// The one session stands in the log.
    void joined(slopebook::SessionId session, const QString& words);
    void left();
    void problem(const QString& why);

private:
    void join();
    void leave();

    Logbook& m_logbook;
    std::optional<log::SplitDay> m_day;
    std::set<std::pair<SessionId, SessionId>> m_left; ///< for as long as the log is open here
    QLabel* m_words;
};

} // namespace slopebook::ui

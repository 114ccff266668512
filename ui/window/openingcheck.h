// SPDX-License-Identifier: GPL-3.0-or-later
// The check of a log that is shown already: it runs beside the window's work, and until it is done
// nothing is written.
#pragma once

#include "ui/edits/logbook.h"
#include "ui/parts/job.h"

#include <QObject>
#include <QString>

namespace slopebook::ui {

class OpeningCheck final : public QObject {
    Q_OBJECT
public:
    /// Begins, on a connection of its own. The log's next write waits for the end, and throws
    /// LogError (Damaged) where damage was found: nothing goes into a damaged file. A check that
    /// cannot be made (the log is busy elsewhere) is made by that write.
    explicit OpeningCheck(const Logbook& logbook, QObject* parent = nullptr);

Q_SIGNALS:
    void sound();
    /// A sentence for the coach.
    void damaged(const QString& why);

private:
    Job m_job; ///< its end is waited for
};

} // namespace slopebook::ui

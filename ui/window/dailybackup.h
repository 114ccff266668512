// SPDX-License-Identifier: GPL-3.0-or-later
// The backup that is due when a log is opened, made beside the window's work.
#pragma once

#include "ui/parts/job.h"

#include <QObject>
#include <QString>

#include <chrono>
#include <filesystem>

namespace slopebook::ui {

class DailyBackup final : public QObject {
    Q_OBJECT
public:
    explicit DailyBackup(QObject* parent) : QObject(parent) {}

    /// Once: on a connection of its own, and only when the last backup is over a day old.
    void begin(std::filesystem::path log, std::chrono::sys_seconds now);

Q_SIGNALS:
    void made(qint64 when);
    /// A sentence for the coach. damaged: the log is not sound, and no copy was kept of it.
    void failed(const QString& why, bool damaged);

private:
    Job m_job; ///< its end is waited for: a copy is whole or not there
};

} // namespace slopebook::ui

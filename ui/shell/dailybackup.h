// SPDX-License-Identifier: GPL-3.0-or-later
// The backup that is due when a log is opened, made beside the window's work.
#pragma once

#include <QObject>
#include <QString>

#include <chrono>
#include <filesystem>
#include <thread>

namespace slopebook::ui {

class DailyBackup final : public QObject {
    Q_OBJECT
public:
    explicit DailyBackup(QObject* parent) : QObject(parent) {}
    ~DailyBackup() override; ///< waits for it: a copy is whole or not there

    /// Once: on a connection of its own, and only when the last backup is over a day old.
    void begin(std::filesystem::path log, std::chrono::sys_seconds now);

Q_SIGNALS:
    void made(qint64 when);
    /// A sentence for the coach. damaged: the log is not sound, and no copy was kept of it.
    void failed(const QString& why, bool damaged);

private:
    void run(const std::filesystem::path& log, std::chrono::sys_seconds now);
    std::thread m_thread;
};

} // namespace slopebook::ui

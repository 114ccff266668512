// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/dailybackup.h"

#include "core/log/backups.h"
#include "core/model/errors.h"

#include <utility>

namespace slopebook::ui {

DailyBackup::~DailyBackup() {
    if (m_thread.joinable())
        m_thread.join();
}

void DailyBackup::begin(std::filesystem::path log, std::chrono::sys_seconds now) {
    m_thread = std::thread([this, file = std::move(log), now] { run(file, now); });
}

// The signals reach the window's thread by its event loop.
void DailyBackup::run(const std::filesystem::path& log, std::chrono::sys_seconds now) {
    try {
        const log::Log own = log::Log::open(log, log::Access::ReadOnly);
        if (const auto backup = log::backUpWhenDue(own, now))
            Q_EMIT made(backup->made.time_since_epoch().count());
    } catch (const LogError& error) {
        Q_EMIT failed(QString::fromUtf8(error.what()), error.kind() == LogError::Kind::Damaged);
    } catch (const std::exception& error) {
        Q_EMIT failed(QString::fromUtf8(error.what()), false);
    }
}

} // namespace slopebook::ui

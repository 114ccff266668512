// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/dailybackup.h"

#include "core/log/backups.h"
#include "core/model/errors.h"

#include <memory>
#include <utility>

namespace slopebook::ui {

namespace {
struct Outcome {
    std::optional<qint64> made;
    bool damaged = false;
};
} // namespace

void DailyBackup::begin(std::filesystem::path log, std::chrono::sys_seconds now) {
    const auto outcome = std::make_shared<Outcome>();
    connect(&m_job, &Job::finished, this, [this, outcome] {
        if (outcome->made)
            Q_EMIT made(*outcome->made);
    });
    connect(&m_job, &Job::failed, this,
            [this, outcome](const QString& why) { Q_EMIT failed(why, outcome->damaged); });
    m_job.start([outcome, file = std::move(log), now](const Progress&) {
        try {
            const log::Log own = log::Log::open(file, log::Access::ReadOnly);
            if (const auto backup = log::backUpWhenDue(own, now))
                outcome->made = backup->made.time_since_epoch().count();
        } catch (const LogError& error) {
            outcome->damaged = error.kind() == LogError::Kind::Damaged;
            throw;
        }
    });
}

} // namespace slopebook::ui

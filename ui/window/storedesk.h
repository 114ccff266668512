// SPDX-License-Identifier: GPL-3.0-or-later
// What meets a store beside the window: a log and a connection of its own, on the thread that works
// with them.
#pragma once

#include "core/log/log.h"
#include "core/meetings/meet.h"
#include "core/model/progress.h"
#include "core/store/connection.h"

#include <exception>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>

namespace slopebook::ui {

/// Used by one thread at a time. The log must be known to be sound.
class StoreDesk {
public:
    explicit StoreDesk(std::filesystem::path file) : m_file(std::move(file)) {}

    /// Meets; log and connection are opened where they are not yet, and a connection that was lost
    /// while nobody asked is opened anew. now: in UTC, as meetings::meet takes it. Throws as that
    /// does, and Cancelled.
    meetings::MeetingReport meet(const std::string& now, const Progress& stop);
    /// Waits until the store tells of something new, however long. Throws StoreError where the
    /// connection is lost, Cancelled.
    void waitForNews(const Progress& stop);

private:
    bool connect(const Progress& stop);

    std::filesystem::path m_file;
    std::optional<log::Log> m_log;
    std::optional<store::Connection> m_connection;
};

/// How a meeting ended.
struct MeetingEnd {
    std::optional<meetings::MeetingReport> report{};
    std::exception_ptr error{}; ///< where there is no report
};

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
// The columns of a lift's history, one row each: how it is headed, shown and put in order. Check
// loads follow them.
#pragma once

#include "core/log/history.h"
#include "ui/athlete/history/historymodel.h"

#include <array>
#include <functional>
#include <optional>

namespace slopebook::ui {

struct HistoryField {
    std::function<QString(const QString&unit)> heading, tip;
    std::function<QString(const HistoryRow&, LoadUnit)> shown;
    std::optional<log::HistoryColumn> stored{}; ///< what the log orders by itself
    /// Else what a session's profile is ordered by, in kg and m/s; nothing where it has none.
    std::function<std::optional<double>(const answers::Profile&)> figure{};
};

/// By HistoryModel::Column, up to the first check load.
const std::array<HistoryField, HistoryModel::FirstCheckLoad>& historyFields();

} // namespace slopebook::ui

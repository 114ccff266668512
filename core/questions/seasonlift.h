// SPDX-License-Identifier: GPL-3.0-or-later
// One lift of an athlete laid out by training blocks, for the whole season's matrix and for one
// load followed through it. No Qt in here.
#pragma once

#include "core/answers/seasonsource.h"
#include "core/questions/setsonce.h"

#include <functional>
#include <memory>
#include <optional>
#include <span>

namespace slopebook::questions {

/// The column that a session counts in, by its day and its number there: of several the latest
/// begun.
std::optional<std::size_t> columnOf(std::span<const answers::MatrixBlock> blocks, Date date,
                                    int ordinal);

/// Its sessions by columns, their reps made alike over all of them, with RPE and the settings that
/// two of them are compared by. column: of a session; none: it takes no part. The log is kept no
/// longer than it is.
answers::SeasonLift
seasonLift(const log::Log& log, const std::shared_ptr<const LiftContext>& context,
           const std::shared_ptr<const Background>& about, std::size_t columns,
           const std::function<std::optional<std::size_t>(const LiftSession&)>& column,
           const AskSettings& settings, SetsOnce& once);

} // namespace slopebook::questions

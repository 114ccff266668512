// SPDX-License-Identifier: GPL-3.0-or-later
// Every phrase that core can say to a coach, room by room, for tests that walk them all. A room
// includes its own list alone, so that a changed phrase compiles that room anew and no other.
#pragma once

#include "core/model/phrases/answers.h"
#include "core/model/phrases/desks.h"
#include "core/model/phrases/exchange.h"
#include "core/model/phrases/log.h"
#include "core/model/phrases/meetings.h"
#include "core/model/phrases/model.h"
#include "core/model/phrases/names.h"
#include "core/model/phrases/questions.h"
#include "core/model/phrases/sources.h"
#include "core/model/phrases/store.h"
#include "core/model/phrases/traces.h"

#include <array>
#include <span>
#include <string_view>

namespace slopebook::phrases {

inline constexpr std::array<std::span<const std::string_view>, 12> lists{
    answers,   desks, exchange,  log,         meetings, model,
    questions, store, testNames, periodNames, sources,  traces};

} // namespace slopebook::phrases

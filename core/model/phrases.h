// SPDX-License-Identifier: GPL-3.0-or-later
// Every phrase that core can say to a coach, room by room: what does not stand here does not
// compile (words.h), and what stands here is translated (resources/translations).
#pragma once

#include "core/model/phrases/answers.h"
#include "core/model/phrases/exchange.h"
#include "core/model/phrases/log.h"
#include "core/model/phrases/model.h"
#include "core/model/phrases/questions.h"
#include "core/model/phrases/traces.h"

#include <algorithm>
#include <array>
#include <span>
#include <string_view>

namespace slopebook::phrases {

inline constexpr std::array<std::span<const std::string_view>, 6> lists{answers, exchange,  log,
                                                                        model,   questions, traces};

constexpr bool listed(std::string_view english) {
    return std::ranges::any_of(lists, [english](const auto& list) {
        return std::ranges::find(list, english) != list.end();
    });
}

} // namespace slopebook::phrases

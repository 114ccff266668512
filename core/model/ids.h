// SPDX-License-Identifier: GPL-3.0-or-later
// Keys of what the log holds. Each kind is its own type, so that one is never taken for another.
#pragma once

#include <cstdint>

namespace slopebook {

enum class AthleteId : std::int64_t {};
enum class LiftId : std::int64_t {};
enum class DeviceId : std::int64_t {};
enum class BlockId : std::int64_t {};
enum class SessionId : std::int64_t {};
enum class SetId : std::int64_t {};

/// The bare number behind a key, for storage and display.
template <class Id>
constexpr std::int64_t raw(Id id) noexcept {
    return static_cast<std::int64_t>(id);
}

/// A value as the log holds it: the value and its key.
template <class Id, class Value>
struct Stored {
    Id id{};
    Value value{};
    friend bool operator==(const Stored&, const Stored&) = default;
};

} // namespace slopebook

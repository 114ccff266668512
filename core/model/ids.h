// SPDX-License-Identifier: GPL-3.0-or-later
// Keys of what the log holds. Each kind is its own type, so that one is never taken for another.
// long long and not std::int64_t (a long here): signals carry keys, and Qt streams the former
// alone.
#pragma once

#include <cstdint>

namespace slopebook {

enum class AthleteId : long long {};
enum class LiftId : long long {};
enum class DeviceId : long long {};
enum class BlockId : long long {};
enum class EquipmentId : long long {};
enum class SessionId : long long {};
enum class SetId : long long {};
enum class TestKindId : long long {};
enum class StationId : long long {};

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

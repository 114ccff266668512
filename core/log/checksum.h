// SPDX-License-Identifier: GPL-3.0-or-later
// The 64-bit CRC by which the log notices that its content was damaged: what goes in, in which
// order, and as which bytes. A change here is a change of the log's layout.
#pragma once

#include "core/log/log.h"
#include "core/log/points.h"

#include <array>
#include <bit>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace slopebook::log {

/// The CRC-64 of ECMA-182, reflected, as the .xz format uses it.
std::uint64_t crc64(std::string_view bytes);

/// Collects values as bytes (integers and doubles little-endian, texts with their length, what is
/// optional with a mark) and gives the CRC-64 of them all.
class Checksum {
public:
    /// what keeps rows of one kind from passing as rows of another.
    explicit Checksum(char what) { start(what); }
    void start(char what);

    Checksum& add(std::int64_t value);
    Checksum& add(double value);
    Checksum& add(std::string_view value);
    Checksum& add(Date value);
    /// Four numbers in a row, at one go: what a set adds.
    Checksum& add(const std::array<std::uint64_t, 4>& values);
    Checksum& add(const std::string& value) { return add(std::string_view(value)); }
    Checksum& add(bool value) { return add(std::int64_t{value}); }
    Checksum& add(int value) { return add(std::int64_t{value}); }
    Checksum& add(Mass value) { return add(value.grams); }
    Checksum& add(ExactMass value) { return add(value.units); }
    Checksum& add(Effort value) { return add(value.halves); }
    template <class Id>
    requires std::is_enum_v<Id> Checksum& add(Id id) { return add(static_cast<std::int64_t>(id)); }
    template <class Value>
    Checksum& add(const std::optional<Value>& value) {
        m_bytes.push_back(value ? '\1' : '\0');
        return value ? add(*value) : *this;
    }

    /// As SQLite stores it: the same 64 bits, signed.
    std::int64_t value() const;

private:
    std::string m_bytes;
};

std::int64_t checksum(AthleteId id, const Athlete& athlete);
std::int64_t checksum(LiftId id, const Lift& lift);
std::int64_t checksum(DeviceId id, const Device& device);
std::int64_t checksum(BlockId id, const Block& block);
std::int64_t checksum(EquipmentId id, const Equipment& equipment);
std::int64_t checksum(TestKindId id, const TestKind& kind);
std::int64_t checksum(StationId id, const Station& station);
std::int64_t checksum(const Roster& roster);
/// Of a session's tests with their conditions and attempts, and of its gaps, in order.
std::int64_t checksum(SessionId session, const Battery& battery);

/// Of a session with the conditions of its lifts, and with all its sets, in order of lift and
/// ordinal.
std::int64_t checksum(const Stored<SessionId, SessionHead>& head,
                      const std::vector<LiftConditions>& conditions,
                      std::span<const StoredSet> sets);

/// Of what a line is made from: the head without its text, the conditions of each lift, then each
/// set without its texts.
class LineChecksum {
public:
    LineChecksum() : m_checksum('P') {}
    void start(SessionId id, const SessionHead& head);
    void add(const LiftConditions& conditions);
    void add(LiftId lift, int ordinal, Mass load, std::optional<double> point, bool maximum,
             int counting, Outcome outcome) {
        const auto flags = (std::int64_t{counting} << 3) | (outcome == Outcome::NotLifted ? 4 : 0) |
                           (maximum ? 2 : 0) | (point ? 1 : 0);
        m_checksum.add(std::array{
            static_cast<std::uint64_t>(lift),
            static_cast<std::uint64_t>((std::int64_t{ordinal} << 32) | load.grams),
            static_cast<std::uint64_t>(flags), std::bit_cast<std::uint64_t>(point.value_or(0.0))});
    }
    std::int64_t value() const { return m_checksum.value(); }

private:
    Checksum m_checksum;
};
std::int64_t lineChecksum(const Stored<SessionId, SessionHead>& head,
                          const std::vector<LiftConditions>& conditions,
                          std::span<const StoredSet> sets);

/// Of an athlete's check loads, ordered by lift and load.
std::int64_t checksum(AthleteId athlete, const std::vector<std::pair<LiftId, Mass>>& loads);

} // namespace slopebook::log

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/checksum.h"

#include "core/log/sessionrows.h"
#include "core/log/stationtable.h"
#include "core/log/tables.h"
#include "core/log/testtable.h"

#include <array>
#include <bit>
#include <span>

namespace slopebook::log {

namespace {
constexpr std::uint64_t reflectedPolynomial = 0xC96C5795D7870F42U;

/// Of a byte alone, and of that byte with one to fifteen zero bytes after it.
using Tables = std::array<std::array<std::uint64_t, 256>, 16>;

constexpr Tables makeTables() {
    Tables tables{};
    for (std::uint64_t byte = 0; byte < 256; ++byte) {
        std::uint64_t crc = byte;
        for (int bit = 0; bit < 8; ++bit)
            crc = (crc >> 1) ^ ((crc & 1U) != 0 ? reflectedPolynomial : 0);
        tables[0][byte] = crc;
    }
    for (std::size_t zeros = 1; zeros < tables.size(); ++zeros)
        for (std::size_t byte = 0; byte < 256; ++byte) {
            const std::uint64_t before = tables[zeros - 1][byte];
            tables[zeros][byte] = tables[0][before & 0xFFU] ^ (before >> 8);
        }
    return tables;
}

constexpr Tables tables = makeTables();

std::uint64_t eightBytes(const char* bytes) {
    std::uint64_t value = 0;
    for (int i = 7; i >= 0; --i)
        value = (value << 8) | static_cast<unsigned char>(bytes[i]);
    return value;
}

void putEight(char* eight, std::uint64_t value) {
    for (int i = 0; i < 8; ++i)
        eight[i] = static_cast<char>(value >> (8 * i));
}

void append(std::string& bytes, std::uint64_t value) {
    char eight[8];
    putEight(eight, value);
    bytes.append(eight, sizeof eight);
}
} // namespace

// Sixteen bytes a step, then eight (slicing by 8: Kounavis and Berry 2005, from memory): a byte a
// step was a third of the time of reading all lines. The later eight do not wait for the sum.
std::uint64_t crc64(std::string_view bytes) {
    std::uint64_t crc = ~std::uint64_t{0};
    for (; bytes.size() >= 16; bytes.remove_prefix(16)) {
        const std::uint64_t later = eightBytes(bytes.data() + 8);
        crc ^= eightBytes(bytes.data());
        std::uint64_t next = 0, ofLater = 0;
        for (std::size_t i = 0; i < 8; ++i) {
            next ^= tables[15 - i][(crc >> (8 * i)) & 0xFFU];
            ofLater ^= tables[7 - i][(later >> (8 * i)) & 0xFFU];
        }
        crc = next ^ ofLater;
    }
    for (; bytes.size() >= 8; bytes.remove_prefix(8)) {
        crc ^= eightBytes(bytes.data());
        std::uint64_t next = 0;
        for (std::size_t i = 0; i < 8; ++i)
            next ^= tables[7 - i][(crc >> (8 * i)) & 0xFFU];
        crc = next;
    }
    for (const char byte : bytes)
        crc = tables[0][(crc ^ static_cast<unsigned char>(byte)) & 0xFFU] ^ (crc >> 8);
    return ~crc;
}

void Checksum::start(char what) {
    m_bytes.reserve(128); // most things need no more
    m_bytes.assign(1, what);
}

Checksum& Checksum::add(std::int64_t value) {
    append(m_bytes, static_cast<std::uint64_t>(value));
    return *this;
}

Checksum& Checksum::add(double value) {
    append(m_bytes, std::bit_cast<std::uint64_t>(value + 0.0)); // -0, which the file keeps as 0, is 0
    return *this;
}

Checksum& Checksum::add(std::string_view value) {
    append(m_bytes, value.size());
    m_bytes.append(value);
    return *this;
}

Checksum& Checksum::add(Date value) {
    return add((static_cast<int>(value.year()) * 100 +
                static_cast<int>(static_cast<unsigned>(value.month()))) *
                   100 +
               static_cast<int>(static_cast<unsigned>(value.day())));
}

Checksum& Checksum::add(const std::array<std::uint64_t, 4>& values) {
    char bytes[32];
    for (std::size_t i = 0; i < values.size(); ++i)
        putEight(bytes + 8 * i, values[i]);
    m_bytes.append(bytes, sizeof bytes);
    return *this;
}

std::int64_t Checksum::value() const {
    return std::bit_cast<std::int64_t>(crc64(m_bytes));
}

namespace {
/// Of the id and every column of its table.
template <class Id>
std::int64_t ofColumns(Id id, const typename Table<Id>::Value& value) {
    Checksum sum(Table<Id>::checksummedAs);
    sum.add(id);
    ColumnSum columns{sum};
    Table<Id>::columns(value, columns);
    return sum.value();
}

void addConditions(Checksum& sum, std::span<const LiftConditions> all) {
    ColumnSum columns{sum};
    for (const LiftConditions& one : all) {
        sum.add(one.lift);
        conditionColumns(one.conditions, columns);
    }
}
} // namespace

std::int64_t checksum(AthleteId id, const Athlete& athlete) {
    return ofColumns(id, athlete);
}
std::int64_t checksum(LiftId id, const Lift& lift) {
    return ofColumns(id, lift);
}
std::int64_t checksum(DeviceId id, const Device& device) {
    return ofColumns(id, device);
}
std::int64_t checksum(BlockId id, const Block& block) {
    return ofColumns(id, block);
}
std::int64_t checksum(TestKindId id, const TestKind& kind) {
    return ofColumns(id, kind);
}

std::int64_t checksum(EquipmentId id, const Equipment& equipment) {
    Checksum sum('E');
    sum.add(id).add(equipment.name).add(equipment.ceiling).add(equipment.note);
    sum.add(static_cast<std::int64_t>(equipment.bars.size()));
    for (const Bar& bar : equipment.bars)
        sum.add(bar.name).add(bar.mass).add(bar.unit);
    sum.add(static_cast<std::int64_t>(equipment.plates.size()));
    for (const Plate& plate : equipment.plates)
        sum.add(plate.mass).add(plate.pairs).add(plate.unit);
    sum.add(static_cast<std::int64_t>(equipment.fixed.size()));
    for (const FixedMass& fixed : equipment.fixed)
        sum.add(fixed.name).add(fixed.mass).add(fixed.use).add(fixed.unit);
    return sum.value();
}

std::int64_t checksum(StationId id, const Station& station) {
    Checksum sum(Table<StationId>::checksummedAs);
    sum.add(id);
    ColumnSum columns{sum};
    Table<StationId>::columns(station, columns);
    sum.add(static_cast<std::int64_t>(station.tests.size()));
    for (const TestKindId test : station.tests)
        sum.add(test);
    for (const Mass load : station.ladder)
        sum.add(load);
    return sum.value();
}

std::int64_t checksum(const Roster& roster) {
    Checksum sum('R');
    sum.add(roster.station).add(roster.day);
    for (const AthleteId athlete : roster.athletes)
        sum.add(athlete);
    return sum.value();
}

std::int64_t checksum(const Stored<SessionId, SessionHead>& head,
                      const std::vector<LiftConditions>& conditions,
                      std::span<const StoredSet> sets) {
    const SessionHead& value = head.value;
    Checksum sum('S');
    sum.add(head.id).add(value.athlete).add(value.date).add(value.ordinal);
    sum.add(value.bodyMass).add(value.repeatOf).add(value.note);
    addConditions(sum, conditions);
    ColumnSum columns{sum};
    for (const StoredSet& stored : sets) {
        const PlacedSet& placed = stored.placed;
        sum.add(placed.lift).add(placed.ordinal).add(placed.id);
        sum.add(stored.point).add(stored.counting);
        setColumns(placed.set, columns);
        sum.add(static_cast<std::int64_t>(placed.set.reps.size()));
        for (const Rep& rep : placed.set.reps)
            sum.add(rep.velocity).add(rep.excluded);
    }
    return sum.value();
}

void LineChecksum::start(SessionId id, const SessionHead& head) {
    m_checksum.start('P');
    m_checksum.add(id).add(head.athlete).add(head.date).add(head.ordinal);
    m_checksum.add(head.bodyMass).add(head.repeatOf);
}

void LineChecksum::add(const LiftConditions& conditions) {
    addConditions(m_checksum, {&conditions, 1});
}

std::int64_t lineChecksum(const Stored<SessionId, SessionHead>& head,
                          const std::vector<LiftConditions>& conditions,
                          std::span<const StoredSet> sets) {
    LineChecksum sum;
    sum.start(head.id, head.value);
    for (const LiftConditions& one : conditions)
        sum.add(one);
    for (const StoredSet& stored : sets) {
        const PlacedSet& placed = stored.placed;
        sum.add(placed.lift, placed.ordinal, placed.set.load, stored.point, placed.set.trueMaximum,
                stored.counting, placed.set.outcome);
    }
    return sum.value();
}

std::int64_t checksum(SessionId session, const Battery& battery) {
    Checksum sum('T');
    sum.add(session);
    ColumnSum columns{sum};
    for (const TestAttempts& test : battery.tests) {
        sum.add(test.kind).add(static_cast<std::int64_t>(test.attempts.size()));
        conditionColumns(test.conditions, columns);
        for (const Attempt& attempt : test.attempts)
            attemptColumns(attempt, columns);
    }
    sum.add(static_cast<std::int64_t>(battery.gaps.size()));
    for (const Gap& gap : battery.gaps)
        gapColumns(gap, columns);
    return sum.value();
}

std::int64_t checksum(AthleteId athlete, const std::vector<std::pair<LiftId, Mass>>& loads) {
    Checksum sum('C');
    sum.add(athlete);
    for (const auto& [lift, load] : loads)
        sum.add(lift).add(load);
    return sum.value();
}

} // namespace slopebook::log

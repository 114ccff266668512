// SPDX-License-Identifier: GPL-3.0-or-later
// The two kinds of names by which logs know what they hold as the same: UUIDs (RFC 9562), and
// hashes of contents.
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace slopebook::log {

using Sixteen = std::array<unsigned char, 16>;
inline std::string_view viewOf(const Sixteen& value) {
    return {reinterpret_cast<const char*>(value.data()), value.size()};
}

/// A version 4 UUID, from the system's own source of randomness.
Sixteen randomUuid();
/// That many of them, asked for in few calls.
std::vector<Sixteen> randomUuids(std::size_t count);
/// The version 5 UUID of a name within another one.
Sixteen derivedUuid(const Sixteen& within, std::string_view name);
/// Within which those of a log's first things are derived.
extern const Sixteen ofSlopebook;

/// "6ba7b810-9dad-11d1-80b4-00c04fd430c8", and back; nothing for what is none.
std::string uuidText(const Sixteen& uuid);
std::optional<Sixteen> parseUuid(std::string_view text);
/// Bytes as hexadecimal digits, and back; nothing for what is none.
std::string hexOf(std::string_view bytes);
std::optional<std::string> parseHex(std::string_view text);

/// The first half of the SHA-256 (FIPS 180-4) of what was written.
Sixteen hashOf(std::string_view bytes);

} // namespace slopebook::log

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/uuid.h"

#include <boost/uuid/name_generator_sha1.hpp>
#include <boost/uuid/random_generator.hpp>
#include <boost/uuid/uuid.hpp>

#include <algorithm>
#include <nettle/sha2.h>

namespace slopebook::log {

namespace {
Sixteen bytesOf(const boost::uuids::uuid& uuid) {
    Sixteen bytes{};
    std::copy(uuid.begin(), uuid.end(), bytes.begin());
    return bytes;
}
} // namespace

// Made once at random for this program.
const Sixteen ofSlopebook{0x5B, 0xC1, 0x0E, 0x77, 0x2A, 0x9D, 0x4F, 0x36,
                          0x8E, 0x14, 0x6C, 0xF2, 0xA9, 0x53, 0xD0, 0x8B};

Sixteen randomUuid() {
    thread_local boost::uuids::random_generator_pure generator;
    return bytesOf(generator());
}

Sixteen derivedUuid(const Sixteen& within, std::string_view name) {
    boost::uuids::uuid space{};
    std::copy(within.begin(), within.end(), space.begin());
    return bytesOf(boost::uuids::name_generator_sha1(space)(name.data(), name.size()));
}

Sixteen hashOf(std::string_view bytes) {
    sha256_ctx context;
    sha256_init(&context);
    sha256_update(&context, bytes.size(), reinterpret_cast<const std::uint8_t*>(bytes.data()));
    Sixteen half{};
    sha256_digest(&context, half.size(), half.data());
    return half;
}

} // namespace slopebook::log

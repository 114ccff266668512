// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/uuid.h"

#include <boost/uuid/name_generator_sha1.hpp>
#include <boost/uuid/random_generator.hpp>
#include <boost/uuid/uuid.hpp>

#include <algorithm>
#include <nettle/sha2.h>
#include <system_error>
#include <unistd.h>

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

std::vector<Sixteen> randomUuids(std::size_t count) {
    constexpr std::size_t atOnce = 256 / sizeof(Sixteen); // what getentropy() gives at most
    std::vector<Sixteen> uuids(count);
    for (std::size_t at = 0; at < count; at += atOnce) {
        const std::size_t asked = std::min(atOnce, count - at);
        if (getentropy(uuids[at].data(), asked * sizeof(Sixteen)) != 0)
            throw std::system_error(errno, std::generic_category(), "getentropy");
    }
    for (Sixteen& uuid : uuids) { // RFC 9562, 5.4: the version and the variant
        uuid[6] = static_cast<unsigned char>((uuid[6] & 0x0FU) | 0x40U);
        uuid[8] = static_cast<unsigned char>((uuid[8] & 0x3FU) | 0x80U);
    }
    return uuids;
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

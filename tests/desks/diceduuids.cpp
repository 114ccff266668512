// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/desks/diceduuids.h"

#include <cstddef>
#include <mutex>
#include <random>
#include <sys/random.h>

namespace slopebook::tests {

namespace {
std::mutex mutex;
std::mt19937 dice;

void fill(void* bytes, std::size_t length) {
    const std::scoped_lock lock(mutex);
    for (std::size_t i = 0; i < length; ++i)
        static_cast<unsigned char*>(bytes)[i] = static_cast<unsigned char>(dice());
}
} // namespace

void seedUuids(unsigned seed) {
    const std::scoped_lock lock(mutex);
    dice.seed(seed);
}

} // namespace slopebook::tests

// In the place of the C library's, which core/log/uuid.cpp asks.
extern "C" int getentropy(void* bytes, std::size_t length) {
    slopebook::tests::fill(bytes, length);
    return 0;
}
extern "C" ssize_t getrandom(void* bytes, std::size_t length, unsigned /*flags*/) {
    slopebook::tests::fill(bytes, length);
    return static_cast<ssize_t>(length);
}

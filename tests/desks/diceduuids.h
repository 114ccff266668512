// SPDX-License-Identifier: GPL-3.0-or-later
// New things get UUIDs at random; who keeps a key is said by them. In a test by dice they come of
// the dice too, so that a seed makes the same world again.
#pragma once

namespace slopebook::tests {

/// From here on the system's own randomness in this program is made from that seed.
void seedUuids(unsigned seed);

} // namespace slopebook::tests

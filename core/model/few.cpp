// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/few.h"

#include <algorithm>

namespace slopebook {

Words few(std::span<const std::string> names) {
    std::string listed;
    for (const std::string& name : names.first(std::min(names.size(), fewNamed)))
        listed += (listed.empty() ? "" : ", ") + name;
    if (names.size() <= fewNamed)
        return asIs(listed);
    return say("%1, and %2 more", listed, names.size() - fewNamed);
}

} // namespace slopebook

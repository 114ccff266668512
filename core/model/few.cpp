// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/few.h"

#include "core/model/phrases/model.h"

#include <algorithm>

namespace slopebook {

Words few(std::span<const std::string> names) {
    std::vector<Words> all;
    for (const std::string& name : names.first(std::min(names.size(), fewNamed)))
        all.push_back(asIs(name));
    if (names.size() <= fewNamed)
        return listed(std::move(all));
    return say("%1, and %2 more", listed(std::move(all)), names.size() - fewNamed);
}

} // namespace slopebook

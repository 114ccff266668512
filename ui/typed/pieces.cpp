// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/typed/pieces.h"

namespace slopebook::ui {

std::vector<Piece> pieces(std::u16string_view line) {
    std::vector<Piece> found;
    for (std::size_t at = 0; at < line.size();) {
        if (separates(line[at])) {
            ++at;
            continue;
        }
        std::size_t end = at;
        while (end < line.size() && !separates(line[end]))
            ++end;
        found.push_back({line.substr(at, end - at), at});
        at = end;
    }
    return found;
}

} // namespace slopebook::ui

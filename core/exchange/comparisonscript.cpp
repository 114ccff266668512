// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/comparisonscript.h"

#include "resources/embedded.h"

namespace slopebook::exchange {

std::string comparisonScript() {
    std::string text;
    for (const resources::File& file : resources::comparisonScript())
        text += file.text;
    return text;
}

std::string textForR(const std::string& text) {
    std::string quoted = "\"";
    for (const char c : text) {
        if (c == '"' || c == '\\')
            quoted += '\\';
        quoted += c;
    }
    return quoted + "\"";
}

} // namespace slopebook::exchange

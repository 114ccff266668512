// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/errors.h"

namespace slopebook {

namespace {
std::string sentence(const Where& where, const std::string& found, const std::string& expected) {
    std::string text = where.file;
    if (where.line > 0)
        text += (text.empty() ? "line " : ", line ") + std::to_string(where.line);
    if (!where.column.empty())
        text += (text.empty() ? "column " : ", column ") + where.column;
    if (!text.empty())
        text += ": ";
    return text + "found " + found + ", expected " + expected;
}
} // namespace

BadInput::BadInput(Where where, std::string found, std::string expected)
    : std::runtime_error(sentence(where, found, expected)), m_where(std::move(where)),
      m_found(std::move(found)), m_expected(std::move(expected)) {}

BadInput::BadInput(std::string found, std::string expected)
    : BadInput(Where{}, std::move(found), std::move(expected)) {}

} // namespace slopebook

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/errors.h"

#include "core/model/phrases/model.h"

namespace slopebook {

namespace {
Words refusal(const Where& where, const Words& found, const Words& expected) {
    const bool line = where.line > 0, column = !where.column.empty();
    const Words what = say("found %1, expected %2", found, expected);
    if (!where.file.empty() && line && column)
        return say("%1, line %2, column %3: %4", where.file, where.line, where.column, what);
    if (!where.file.empty() && line)
        return say("%1, line %2: %3", where.file, where.line, what);
    if (!where.file.empty() && column)
        return say("%1, column %2: %3", where.file, where.column, what);
    if (!where.file.empty())
        return say("%1: %2", where.file, what);
    if (line && column)
        return say("line %1, column %2: %3", where.line, where.column, what);
    if (line)
        return say("line %1: %2", where.line, what);
    if (column)
        return say("column %1: %2", where.column, what);
    return what;
}
} // namespace

BadInput::BadInput(Where where, Words found, Words expected)
    : Error(refusal(where, found, expected)), m_where(std::move(where)), m_found(std::move(found)),
      m_expected(std::move(expected)) {}

BadInput::BadInput(Words found, Words expected)
    : BadInput(Where{}, std::move(found), std::move(expected)) {}

} // namespace slopebook

// SPDX-License-Identifier: GPL-3.0-or-later
// What a store answered, and what a statement is given.
#pragma once

#include "core/log/uuid.h"

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

struct pg_result;

namespace slopebook::store {

using log::parseUuid;
using log::Sixteen;
using log::uuidText;

/// "{...,...}", as PostgreSQL writes an array of them.
std::string uuidsText(const std::vector<Sixteen>& uuids);

/// A bound value; nothing is NULL. Everything goes as text.
using Param = std::optional<std::string>;

/// Rows, from 0 on, of columns, from 0 on. Asking for the wrong kind throws StoreError (Refused):
/// the store is not what it says.
class Rows {
public:
    explicit Rows(pg_result* result);
    int size() const;
    bool empty() const { return size() == 0; }
    bool isNull(int row, int column) const;
    /// Empty where it is NULL; lives as long as the rows.
    std::string_view text(int row, int column) const;
    std::int64_t integer(int row, int column) const;
    double real(int row, int column) const;
    bool yes(int row, int column) const;
    Sixteen uuid(int row, int column) const;
    std::vector<Sixteen> uuids(int row, int column) const; ///< none where it is NULL

private:
    std::shared_ptr<pg_result> m_result;
};

} // namespace slopebook::store

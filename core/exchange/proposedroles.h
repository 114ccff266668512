// SPDX-License-Identifier: GPL-3.0-or-later
// Which column of a table probably is what.
#pragma once

#include "core/exchange/facts.h"
#include "core/exchange/shape.h"

namespace slopebook::exchange {

/// By headings and values: sets the shape's columns, and whether a row is a set.
void proposeRoles(Shape& shape, const FileFacts& facts);

} // namespace slopebook::exchange

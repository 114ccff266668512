// SPDX-License-Identifier: GPL-3.0-or-later
// What exported tables are, told twice: to people (a dictionary, itself a table) and to programs
// (datapackage.json, the descriptor of a Frictionless Data Package, an open standard:
// specs.frictionlessdata.io, version 1, from memory).
#pragma once

#include "core/exchange/columnspec.h"
#include "core/exchange/tableout.h"

#include <array>
#include <span>
#include <string>

namespace slopebook::exchange {

enum DictionaryColumn : std::size_t {
    DictionaryTable,
    DictionaryName,
    DictionaryType,
    DictionaryUnit,
    DictionaryMeaning,
    DictionaryNeeded,
    DictionaryWords,
    DictionaryLeast,
    DictionaryMost,
    DictionaryKey,
    DictionaryCount
};
inline constexpr std::array<ColumnSpec, DictionaryCount> dictionarySpec{
    textColumn("table", "name of the table").needed(),
    textColumn("column", "name of its column").needed(),
    textColumn("type", "what it holds", "text|number|whole number|date|1 or 0").needed(),
    textColumn("unit", "unit of it; empty: none, or as the meaning says"),
    textColumn("meaning", "what it means").needed(),
    yesColumn("required", "1: no row is without it").needed(),
    textColumn("words", "the only words that stand in it, with bars between"),
    figureColumn("least", "as the column", "the least that may stand in it"),
    figureColumn("most", "as the column", "the most that may stand in it"),
    yesColumn("key", "1: one of the columns that no two rows share").needed()};

std::array<Cell, DictionaryCount> dictionaryRow(const TableSpec& table, const ColumnSpec& column);

/// The descriptor of these tables, each in a file <name>.csv beside it.
std::string dataPackage(std::span<const TableSpec> tables);

} // namespace slopebook::exchange

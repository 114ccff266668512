// SPDX-License-Identifier: GPL-3.0-or-later
// What a column of an exported table is: its name, what it holds, its unit, what it means. From one
// list of these come the CSV and the workbook, the dictionary and datapackage.json; the names alone
// are what import looks for.
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace slopebook::exchange {

enum class Holds { Text, Number, Whole, Day, YesNo };

struct ColumnSpec {
    std::string_view name{};
    Holds holds = Holds::Text;
    std::string_view unit{}; ///< "kg"; empty: none, or as the meaning says
    std::string_view meaning{};
    bool required = false;
    std::string_view words{}; ///< the only ones there are, "mean|peak"; empty: any
    std::optional<double> least{}, most{};
    /// Files that we write say the unit in the name: "_m_s". Import takes both names.
    std::string_view suffix{};

    std::string written() const { return std::string(name) + std::string(suffix); }
    constexpr ColumnSpec needed() const {
        ColumnSpec spec = *this;
        spec.required = true;
        return spec;
    }
};

/// The end of a written name of what is a speed; the name without it is known as well.
inline constexpr std::string_view speedSuffix = "_m_s";

constexpr ColumnSpec textColumn(std::string_view name, std::string_view meaning,
                                std::string_view words = {}) {
    return {.name = name, .meaning = meaning, .words = words};
}
constexpr ColumnSpec dayColumn(std::string_view name, std::string_view meaning) {
    return {.name = name, .holds = Holds::Day, .unit = "ISO 8601", .meaning = meaning};
}
/// From 1 on, or from least.
constexpr ColumnSpec countColumn(std::string_view name, std::string_view meaning,
                                 double least = 1) {
    return {.name = name, .holds = Holds::Whole, .meaning = meaning, .least = least};
}
constexpr ColumnSpec yesColumn(std::string_view name, std::string_view meaning) {
    return {.name = name, .holds = Holds::YesNo, .meaning = meaning};
}
/// A load or a body mass as the log may hold it.
constexpr ColumnSpec massColumn(std::string_view name, std::string_view meaning) {
    return {.name = name,
            .holds = Holds::Number,
            .unit = "kg",
            .meaning = meaning,
            .least = 0,
            .most = 2000};
}
/// A speed as the log may hold it.
constexpr ColumnSpec speedColumn(std::string_view name, std::string_view meaning) {
    return {.name = name,
            .holds = Holds::Number,
            .unit = "m/s",
            .meaning = meaning,
            .least = 0,
            .most = 10,
            .suffix = speedSuffix};
}
/// A figure that is worked out; its name says its unit already.
constexpr ColumnSpec figureColumn(std::string_view name, std::string_view unit,
                                  std::string_view meaning) {
    return {.name = name, .holds = Holds::Number, .unit = unit, .meaning = meaning};
}

template <std::size_t N>
constexpr std::array<std::string_view, N> namesOf(const std::array<ColumnSpec, N>& specs) {
    std::array<std::string_view, N> names{};
    for (std::size_t i = 0; i < N; ++i)
        names[i] = specs[i].name;
    return names;
}

/// A table of the export.
struct TableSpec {
    std::string_view name;
    std::string_view meaning;
    std::span<const ColumnSpec> columns;
    std::string_view key{}; ///< names of the columns that no two rows share, "date,athlete"
    /// Where rows of other tables are meant: columns here and the table; the columns bear the same
    /// names there, or those behind the equals sign: "athlete>athletes;test_device=device>devices".
    std::string_view refers{};
    bool derived = false; ///< worked out from the others: import does not read it
};

} // namespace slopebook::exchange

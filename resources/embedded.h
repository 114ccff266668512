// SPDX-License-Identifier: GPL-3.0-or-later
// Text files that are compiled into the program, so that it needs no folder of its own.
#pragma once

#include <span>
#include <string_view>

namespace slopebook::resources {

struct File {
    std::string_view name; ///< without its folder
    std::string_view text;
};

/// The log's layouts as numbered SQL, first to newest.
std::span<const File> migrations();

/// The shared store's layouts as SQL, each file begun with the layout that it belongs to (0001_...),
/// in the order in which they are run.
std::span<const File> storeLayouts();

/// published.csv, the defaults from the literature.
std::span<const File> published();

/// testkinds.csv, the tests of the battery that the program knows.
std::span<const File> testKinds();

/// read.R and read.py, which go with an export and read it.
std::span<const File> exportScripts();

/// compare.R, without its first lines (core/exchange/comparisonscript.h).
std::span<const File> comparisonScript();

/// <command>.json, the JSON Schema of what each command prints, and parts.json, what they share.
std::span<const File> schemas();

/// format.md, the log's file in words.
std::span<const File> fileFormat();

} // namespace slopebook::resources

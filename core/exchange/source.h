// SPDX-License-Identifier: GPL-3.0-or-later
// Where a table's text comes from, a file or the clipboard, and how its letters are written.
#pragma once

#include "core/model/progress.h"

#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <string_view>

namespace slopebook::exchange {

/// Latin1 is read with the letters that Windows adds to it (Windows-1252).
enum class Encoding { Utf8, Utf16Little, Utf16Big, Latin1 };

/// "utf-8", "utf-16le", "utf-16be", "latin-1".
std::string_view word(Encoding encoding);
std::optional<Encoding> encodingFromWord(std::string_view word);

struct Source {
    std::filesystem::path file{}; ///< empty: the text below
    std::string text{};           ///< pasted, in UTF-8
    std::string sheet{};          ///< of a workbook; empty: its first that holds something
    std::string name() const;     ///< for messages
    friend bool operator==(const Source&, const Source&) = default;
};

/// By its byte order mark, else UTF-8 where every byte of it is, else UTF-16 where every second
/// byte of its beginning is NUL, else Latin1. LogError::Unavailable where it cannot be read.
Encoding encodingOf(const Source& source, const Progress& progress = {});

/// Hands over the whole text in pieces of UTF-8, without its byte order mark; Utf8 as it is,
/// unchecked. BadInput where UTF-16 is cut in half.
void readPieces(const Source& source, Encoding encoding,
                const std::function<void(std::string_view)>& piece, const Progress& progress = {});

} // namespace slopebook::exchange

// SPDX-License-Identifier: GPL-3.0-or-later
// The one way to a terminal: foreign text (names, cells, files) is shown there, never obeyed.
#pragma once

#include <string>

namespace slopebook::app {

/// To standard output, made printable; LogError where that fails.
void print(const std::string& text);

/// "slopebook: ..." to standard error, made printable, with its line's end.
void complain(const std::string& text);

/// The text as it is (a usage, CLI11's own messages), made printable, to standard error.
void printError(const std::string& text);

} // namespace slopebook::app

// SPDX-License-Identifier: GPL-3.0-or-later
// A whole file's bytes.
#pragma once

#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <utility>

namespace slopebook::test {

/// None where there is no such file. By the library's blocks, not by an istreambuf_iterator:
/// watched and unoptimised, a step for every byte was half the time of the tests that compare whole
/// logs.
inline std::string readBytes(const std::filesystem::path& file) {
    const std::ifstream in(file, std::ios::binary);
    std::ostringstream all;
    all << in.rdbuf();
    return std::move(all).str();
}

} // namespace slopebook::test

// SPDX-License-Identifier: GPL-3.0-or-later
// Runs a fuzz target over files without libFuzzer: the corpus as a test of every run, a finding
// under a debugger.
#include "tests/support/bytes.h"

#include <cstdint>
#include <cstdio>
#include <filesystem>
#include <string>
#include <vector>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

int main(int count, char** names) {
    std::vector<std::filesystem::path> files;
    for (int i = 1; i < count; ++i) {
        if (!std::filesystem::is_directory(names[i]))
            files.emplace_back(names[i]);
        else
            for (const auto& entry : std::filesystem::directory_iterator(names[i]))
                files.push_back(entry.path());
    }
    for (const auto& file : files) {
        const std::string bytes = slopebook::test::readBytes(file);
        LLVMFuzzerTestOneInput(reinterpret_cast<const std::uint8_t*>(bytes.data()), bytes.size());
    }
    std::printf("%zu inputs\n", files.size());
    return files.empty() ? 1 : 0;
}

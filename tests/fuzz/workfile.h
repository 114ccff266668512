// SPDX-License-Identifier: GPL-3.0-or-later
// A file in memory that a fuzzed input is written to: the readers take files.
#pragma once

#include <cstdint>
#include <filesystem>
#include <fstream>
#include <span>
#include <string>
#include <unistd.h>

namespace slopebook::fuzz {

class WorkFile {
public:
    explicit WorkFile(const std::string& name)
        : m_folder(base() / ("slopebook-fuzz-" + std::to_string(::getpid()))),
          m_file(m_folder / name) {
        std::filesystem::create_directories(m_folder);
    }
    ~WorkFile() {
        std::error_code ignored;
        std::filesystem::remove_all(m_folder, ignored);
    }
    WorkFile(const WorkFile&) = delete;
    WorkFile& operator=(const WorkFile&) = delete;

    const std::filesystem::path& path() const { return m_file; }
    std::filesystem::path beside(const std::string& name) const { return m_folder / name; }
    void write(std::span<const char> bytes) const {
        std::ofstream out(m_file, std::ios::binary | std::ios::trunc);
        out.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    }

private:
    static std::filesystem::path base() {
        const std::filesystem::path memory = "/dev/shm";
        return std::filesystem::exists(memory) ? memory : std::filesystem::temp_directory_path();
    }
    std::filesystem::path m_folder;
    std::filesystem::path m_file;
};

/// What must not happen: ends the program as a crash would.
[[noreturn]] inline void broken(const char* what) {
    std::fputs(what, stderr);
    std::fputc('\n', stderr);
    __builtin_trap();
}

inline std::span<const char> bytesOf(const std::uint8_t* data, std::size_t size) {
    return {reinterpret_cast<const char*>(data), size};
}

} // namespace slopebook::fuzz

// SPDX-License-Identifier: GPL-3.0-or-later
// The parts of a zip package (a workbook is one) through libzip, never more of them than a workbook
// holds.
#pragma once

#include "core/model/progress.h"

#include <filesystem>
#include <functional>
#include <memory>
#include <string>
#include <string_view>

namespace slopebook::exchange {

class ZipParts {
public:
    /// BadInput where it is no zip package, or not a whole one; LogError where it cannot be read.
    explicit ZipParts(std::filesystem::path file);
    ~ZipParts();
    ZipParts(const ZipParts&) = delete;
    ZipParts& operator=(const ZipParts&) = delete;

    /// Letter case aside: some programs write "xl/SharedStrings.xml".
    bool has(const std::string& part) const;
    /// Hands over a part in pieces, as it is unpacked. BadInput where it is not there, locked by a
    /// password, damaged, more than 512 MiB, or packed more tightly than a table of people is (a
    /// "bomb"). Nothing of a damaged part may be taken for whole before this has returned.
    void read(const std::string& part, const std::function<void(std::string_view)>& piece,
              const Progress& progress = {}) const;
    const std::filesystem::path& file() const { return m_file; }

private:
    std::filesystem::path m_file;
    std::unique_ptr<void, void (*)(void*)> m_zip;
};

} // namespace slopebook::exchange

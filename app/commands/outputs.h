// SPDX-License-Identifier: GPL-3.0-or-later
// The files that a command writes: the same rules and options everywhere. One that is there is
// refused unless --replace is given, a log always; "-" is standard output, which then holds nothing
// else.
#pragma once

#include "core/log/target.h"

#include <CLI/CLI.hpp>

#include <functional>
#include <string>
#include <vector>

namespace slopebook::app {

class Outputs {
public:
    /// Adds an option for a file to the command, and once --replace.
    void addFile(CLI::App& command, const std::string& option, std::filesystem::path& file,
                 const std::string& help);
    void addReplace(CLI::App& command);

    /// Before anything is asked or written: each may be written, and no two are the same. also: the
    /// command prints JSON. Throws LogError or BadInput.
    void require(bool also = false) const;
    /// Whether the answer's own text still goes to standard output.
    bool textToo() const;
    log::Destination to(const std::filesystem::path& file) const;
    log::Existing existing() const;

private:
    std::vector<const std::filesystem::path*> m_files;
    bool m_replace = false;
};

/// Adds to "is there already" how it is replaced all the same. Throws what work throws.
void sayingHow(const std::function<void()>& work);

} // namespace slopebook::app

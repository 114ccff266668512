// SPDX-License-Identifier: GPL-3.0-or-later
// Who is in the middle of typing what will be written is seen by what cannot give way once it has
// begun (a commit that takes long), in this program and in every other on this machine
// (folderbyte.h).
#pragma once

#include "core/log/folderbyte.h"

#include <filesystem>

namespace slopebook::log {

/// One who may type for that log; a killed one types no more. It costs two calls of the system's
/// to begin or end.
class Typist {
public:
    explicit Typist(const std::filesystem::path& log) noexcept
        : m_byte(log, FolderByte::Says::Typing) {}

    void setTypes(bool types) noexcept {
        if (types == m_types)
            return;
        m_types = types;
        if (types)
            m_byte.hold();
        else
            m_byte.letGo();
    }

private:
    FolderByte m_byte;
    bool m_types = false;
};

/// All of them: whether somebody types just now.
class Typists : public Anybody {
public:
    explicit Typists(const std::filesystem::path& log) noexcept
        : Anybody(log, FolderByte::Says::Typing) {}
};

} // namespace slopebook::log

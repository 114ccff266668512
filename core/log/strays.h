// SPDX-License-Identifier: GPL-3.0-or-later
// Files and folders under way, and what killed programs left of them.
#pragma once

#include <csignal>
#include <filesystem>
#include <string>

namespace slopebook::log {

/// Where a file is written before it bears its name: ".name.part<process>-<number>" beside it.
std::filesystem::path nameUnderWay(const std::filesystem::path& target, int number);

/// "name" of such a one, cut where it is very long; any other name as it is.
std::string nameOfUnderWay(const std::string& name);

/// While it stands, Ctrl+C and the like wait: for the moments in which a file under way would stay.
class SignalsWait {
public:
    SignalsWait() noexcept;
    ~SignalsWait();
    SignalsWait(const SignalsWait&) = delete;
    SignalsWait& operator=(const SignalsWait&) = delete;

private:
    sigset_t m_before;
};

/// Removes what programs that were killed in the middle left in a folder, and nothing else: of that
/// very form of name, made by this user, its process gone, unchanged for a minute; of a folder only
/// the tables, workbook and copy that an export makes. Never throws.
void sweepStrays(const std::filesystem::path& folder) noexcept;

} // namespace slopebook::log

// SPDX-License-Identifier: GPL-3.0-or-later
// What sound means, for check, backups, imports and the window alike: Log::check() finds nothing.
#pragma once

#include "core/log/log.h"

#include <filesystem>
#include <vector>

namespace slopebook::log {

/// Everything wrong with a file that should be a log; empty: whole and sound. What keeps it from
/// being opened as damaged is a finding too. Throws LogError where it cannot be looked at, or is no
/// log.
std::vector<Words> findingsOf(const std::filesystem::path& file);

/// Throws LogError (Damaged) unless nothing was found. of: the log that is meant.
void requireSound(const std::vector<Words>& findings, const std::filesystem::path& of);

/// The same for a write that is about to be done.
void requireSoundToWrite(const std::vector<Words>& findings, const std::filesystem::path& of);

/// Before its first write the log is checked; where it is not sound, that write and every later one
/// throws LogError (Damaged), with the first finding, and nothing is changed.
void writeOnlyWhenSound(const Log& log);

} // namespace slopebook::log

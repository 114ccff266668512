// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/sound.h"

#include "core/log/failure.h"
#include "core/log/hold.h"
#include "core/model/errors.h"
#include "core/model/phrases/log.h"

namespace slopebook::log {

std::vector<Words> findingsOf(const std::filesystem::path& file) {
    try {
        return Log::open(file, Access::ReadOnly).check();
    } catch (const LogError& error) {
        if (error.kind() != LogError::Kind::Damaged)
            throw;
        return {error.words()};
    }
}

void requireSound(const std::vector<Words>& findings, const std::filesystem::path& of) {
    if (!findings.empty())
        throw damagedLog(of, findings.front());
}

void requireSoundToWrite(const std::vector<Words>& findings, const std::filesystem::path& of) {
    if (!findings.empty())
        throw LogError(LogError::Kind::Damaged,
                       say("'%1' is not sound (%2 found, the first: %3). Nothing was written.",
                           shown(of), findings.size(), findings.front()));
}

void writeOnlyWhenSound(const Log& log) {
    holdWrites(log, [file = log.file()] { requireSoundToWrite(findingsOf(file), file); });
}

} // namespace slopebook::log

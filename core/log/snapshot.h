// SPDX-License-Identifier: GPL-3.0-or-later
// Reading a log as it is at one moment, whatever other programs write meanwhile. While one is read
// in a transaction nobody can commit: short questions hold one, long ones read a private copy.
#pragma once

#include "core/log/log.h"
#include "core/log/target.h"
#include "core/model/progress.h"

#include <cstdint>
#include <functional>
#include <memory>

namespace slopebook::log {

/// What is read of the log while this stands is of one moment. Inside another one, or inside a
/// write, it changes nothing; a write by the same Log ends it, and what is read then is of after
/// that write. Throws LogError.
class Moment {
public:
    explicit Moment(const Log& log);
    ~Moment();
    Moment(const Moment&) = delete;
    Moment& operator=(const Moment&) = delete;

private:
    const Log& m_log;
    bool m_mine = false;
};

/// Whether this Log stands inside a write, which may still be taken back.
bool beingWritten(const Log& log);

/// A copy in a file of its own in that folder, for this program alone, open for reading; the file
/// has no name any more when this returns and so goes with the Log, however the program ends. It
/// speaks under the log's name. Other programs' writes wait as in copyPages. Throws LogError.
Log privateCopy(const Log& log, const std::filesystem::path& folder, const Progress& progress = {});

/// Up to this size a question over everything takes some tenths of a second.
constexpr std::uintmax_t heldAtMost = 8 * 1024 * 1024;

/// A log opened to be asked: of one moment, a larger one as a copy in the system's folder for such
/// (where that has room).
class Snapshot {
public:
    explicit Snapshot(const std::filesystem::path& file, Access access = Access::ReadOnly,
                      std::uintmax_t heldUpTo = heldAtMost);
    const Log& log() const { return *m_log; }

private:
    std::unique_ptr<Log> m_log;
    std::unique_ptr<Moment> m_moment; ///< goes first
};

/// Asks a log of one moment and keeps nobody from writing meanwhile: a small one is held as a
/// Snapshot is; of a larger one each read is of its own moment, and where something was written
/// before the end, it is asked once more of a private copy. So ask may be called twice, and the
/// second time counts. Throws what ask throws, and LogError.
void askOfOneMoment(const std::filesystem::path& file, Access access,
                    const std::function<void(const Log&)>& ask,
                    std::uintmax_t heldUpTo = heldAtMost);

/// Log::backup, in the place of a plain file too, and to be stopped (Cancelled, nothing left). What
/// is not sound in the copy; empty: nothing.
[[nodiscard]] std::vector<Words> backUp(const Log& log, const std::filesystem::path& target,
                                        Existing existing, const Progress& progress = {});
[[nodiscard]] std::vector<Words> backUpToStandardOutput(const Log& log);

} // namespace slopebook::log

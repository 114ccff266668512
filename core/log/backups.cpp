// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/backups.h"

#include "core/log/failure.h"

#include <algorithm>
#include <cstdio>

namespace slopebook::log {

namespace {
using namespace std::chrono;

std::string stamp(sys_seconds when) {
    const auto day = floor<days>(when);
    const hh_mm_ss time(when - day);
    char text[32];
    std::snprintf(text, sizeof text, "T%02d%02d%02dZ", static_cast<int>(time.hours().count()),
                  static_cast<int>(time.minutes().count()),
                  static_cast<int>(time.seconds().count()));
    return isoDate(Date{day}) + text;
}

std::optional<sys_seconds> fromStamp(const std::string& text) {
    int hour = 0;
    int minute = 0;
    int second = 0;
    const auto date = parseIsoDate(std::string_view(text).substr(0, 10));
    if (!date || text.size() != 18 ||
        std::sscanf(text.c_str() + 10, "T%2d%2d%2dZ", &hour, &minute, &second) != 3)
        return std::nullopt;
    const sys_seconds when = sys_days{*date} + hours{hour} + minutes{minute} + seconds{second};
    return stamp(when) == text ? std::optional(when) : std::nullopt;
}

void requireSound(const Log& copy, const std::filesystem::path& of) {
    const auto findings = copy.check();
    if (!findings.empty())
        throw damagedLog(of, findings.front());
}

void letGo(const std::vector<Backup>& all) {
    for (std::size_t i = backupsKept; i < all.size(); ++i) {
        std::error_code ignored; // one too many is no harm
        std::filesystem::remove(all[i].file, ignored);
    }
}
} // namespace

std::filesystem::path backupFolder(const std::filesystem::path& log) {
    return log.string() + ".backups";
}

std::vector<Backup> backups(const std::filesystem::path& log) {
    std::vector<Backup> found;
    std::error_code error;
    for (std::filesystem::directory_iterator it(backupFolder(log), error), end; !error && it != end;
         it.increment(error))
        if (it->path().extension() == log.extension())
            if (const auto made = fromStamp(it->path().stem().string()))
                found.push_back({it->path(), *made});
    std::ranges::sort(found, std::ranges::greater{}, &Backup::made);
    return found;
}

std::optional<Backup> backUpWhenDue(const Log& log, sys_seconds now) {
    const auto earlier = backups(log.file());
    // A backup from the future was made by a clock that went wrong: it is no reason to wait.
    if (!earlier.empty() && earlier.front().made <= now && now - earlier.front().made <= days{1})
        return std::nullopt;
    const auto folder = backupFolder(log.file());
    makeFolder(folder);
    const Backup made{folder / (stamp(now) + log.file().extension().string()), now};
    log.backup(made.file);
    try {
        requireSound(Log::open(made.file, Access::ReadOnly), log.file());
    } catch (...) {
        std::error_code ignored;
        std::filesystem::remove(made.file, ignored);
        throw;
    }
    letGo(backups(log.file()));
    return made;
}

void restore(const std::filesystem::path& backup, const std::filesystem::path& target) {
    const Log log = Log::open(backup, Access::ReadOnly);
    requireSound(log, backup);
    log.backup(target);
}

void makeFolder(const std::filesystem::path& folder) {
    std::error_code error;
    std::filesystem::create_directories(folder, error);
    if (error)
        throw systemFailure(error.value(), "made", folder);
}

} // namespace slopebook::log

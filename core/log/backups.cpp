// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/backups.h"

#include "core/log/connection.h"
#include "core/log/copy.h"
#include "core/log/durable.h"
#include "core/log/failure.h"
#include "core/log/impl.h"
#include "core/log/layout.h"
#include "core/log/sound.h"
#include "core/model/phrases/log.h"

#include <algorithm>
#include <charconv>

namespace slopebook::log {

namespace {
using namespace std::chrono;

std::string stamp(sys_seconds when) {
    const auto day = floor<days>(when);
    const hh_mm_ss time(when - day);
    return isoDate(Date{day}) + "T" + padded(static_cast<unsigned>(time.hours().count()), 2) +
           padded(static_cast<unsigned>(time.minutes().count()), 2) +
           padded(static_cast<unsigned>(time.seconds().count()), 2) + "Z";
}

std::optional<sys_seconds> fromStamp(const std::string& text) {
    const auto date = parseIsoDate(std::string_view(text).substr(0, 10));
    if (!date || text.size() != 18)
        return std::nullopt;
    const auto two = [&text](std::size_t at) {
        int value = -1;
        std::from_chars(text.data() + at, text.data() + at + 2, value);
        return value;
    };
    const sys_seconds when = sys_days{*date} + hours{two(11)} + minutes{two(13)} + seconds{two(15)};
    return stamp(when) == text ? std::optional(when) : std::nullopt;
}

/// A backup's file as it is: a copy of an older layout is not brought up to date for a look.
class Copy {
public:
    explicit Copy(const std::filesystem::path& file)
        : m_connection(file, Connection::Purpose::ReadOnly, Layout::ours().newest()) {
        Query version(m_connection, "PRAGMA user_version");
        version.next();
        m_older = version.small(0) < Layout::ours().newest();
        requireLayout(m_connection, Layout::ours(), version.small(0));
    }

    Counts counts() {
        Query query(m_connection,
                    "SELECT (SELECT count(*) FROM sessions), (SELECT count(*) FROM sets)");
        query.next();
        return {.sessions = query.integer(0), .sets = query.integer(1)};
    }

    /// Everything that this program knows of the copy's layout.
    void requireSound() {
        if (!m_older) {
            log::requireSound(findingsOf(m_connection.file()), m_connection.file());
            return;
        }
        Query check(m_connection, "PRAGMA integrity_check(1)");
        if (!check.next() || check.text(0) != "ok")
            throw damagedLog(m_connection.file(), say("it does not pass SQLite's check"));
    }

    Connection& connection() { return m_connection; }

private:
    Connection m_connection;
    bool m_older = false;
};

KeptCopy lookInto(Backup backup) {
    const std::string name = backup.file.filename().string();
    KeptCopy look{.backup = std::move(backup),
                  .beforeMigration = name.starts_with(migrationMark),
                  .beforeMerge = name.starts_with(mergeMark)};
    std::error_code unknown;
    look.bytes = std::filesystem::file_size(look.backup.file, unknown);
    try {
        Copy copy(look.backup.file);
        look.holds = copy.counts();
        copy.requireSound();
    } catch (const LogError& error) {
        look.problem = error.words();
    }
    return look;
}

/// Those under names that begin so, by when they were written, newest first.
std::vector<Backup> markedCopies(const std::filesystem::path& log, const char* mark) {
    std::vector<Backup> found;
    std::error_code error;
    for (std::filesystem::directory_iterator it(backupFolder(log), error), end; !error && it != end;
         it.increment(error))
        if (it->path().extension() == log.extension() &&
            it->path().filename().string().starts_with(mark)) {
            const auto written = std::chrono::file_clock::to_sys(it->last_write_time());
            found.push_back({it->path(), floor<seconds>(written)});
        }
    std::ranges::stable_sort(found, std::ranges::greater{}, &Backup::made);
    return found;
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
    copyLooking(log.impl().db, made.file, [&](const std::filesystem::path& copy) {
        requireSound(findingsOf(copy), log.file());
    });
    letGo(backups(log.file()));
    return made;
}

std::filesystem::path backUpBeforeMerge(const Log& log) {
    const auto folder = backupFolder(log.file());
    makeFolder(folder);
    // Numbered upwards from the last: two of one second stay apart, and none is written over.
    int number = 0;
    for (const Backup& earlier : markedCopies(log.file(), mergeMark)) {
        const std::string stem = earlier.file.stem().string();
        int its = 0;
        std::from_chars(stem.data() + std::string_view(mergeMark).size(), stem.data() + stem.size(),
                        its);
        number = std::max(number, its);
    }
    const auto target =
        folder / (mergeMark + std::to_string(number + 1) + log.file().extension().string());
    copyLooking(log.impl().db, target, [&](const std::filesystem::path& copy) {
        requireSound(findingsOf(copy), log.file());
    });
    auto all = markedCopies(log.file(), mergeMark);
    std::erase_if(all, [&](const Backup& one) { return one.file == target; });
    all.insert(all.begin(), {target, {}});
    letGo(all);
    return target;
}

void restore(const std::filesystem::path& backup, const std::filesystem::path& target) {
    Copy copy(backup);
    copy.requireSound();
    copyVerified(copy.connection(), target);
}

std::vector<KeptCopy> keptCopies(const std::filesystem::path& log) {
    std::vector<KeptCopy> copies;
    for (Backup& backup : backups(log))
        copies.push_back(lookInto(std::move(backup)));
    for (const char* mark : {migrationMark, mergeMark})
        for (Backup& marked : markedCopies(log, mark))
            copies.push_back(lookInto(std::move(marked)));
    std::ranges::stable_sort(copies, std::ranges::greater{},
                             [](const KeptCopy& copy) { return copy.backup.made; });
    return copies;
}

std::filesystem::path goBackTo(const std::filesystem::path& backup,
                               const std::filesystem::path& log) {
    const auto beside = [&](const char* what) {
        for (int number = 1;; ++number) {
            auto name = log.parent_path() / (log.stem().string() + what +
                                             (number > 1 ? " " + std::to_string(number) : "") +
                                             log.extension().string());
            if (!std::filesystem::exists(std::filesystem::symlink_status(name)))
                return name;
        }
    };
    const auto fresh = beside(" from backup");
    restore(backup, fresh);
    if (!std::filesystem::exists(log)) {
        replaceKeeping(log, fresh, {});
        return {};
    }
    const auto kept = beside(" before going back");
    replaceKeeping(log, fresh, kept);
    return kept;
}

void makeFolder(const std::filesystem::path& folder) {
    std::error_code error;
    std::filesystem::create_directories(folder, error);
    if (error)
        throw systemFailure(error.value(), Doing::Make, folder);
}

} // namespace slopebook::log

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/ownfiles.h"

#include "core/log/durable.h"
#include "core/log/failure.h"
#include "core/model/phrases/log.h"

#include <sqlite3.h>

#include <algorithm>
#include <atomic>
#include <cerrno>
#include <fstream>
#include <functional>
#include <utility>
#include <vector>

namespace slopebook::log {

namespace {
constexpr int refusedCode = SQLITE_IOERR_ACCESS;

LogError strangeJournalError(const std::string& log, const std::string& journal, const Words& why) {
    return {LogError::Kind::Damaged,
            say("'%1' is not read: '%2' beside it is no journal that Slopebook left (%3). Nothing "
                "was changed. Keep both files as they are and go back to a backup.",
                shown(log), shown(journal), why)};
}

LogError strangeWish(const std::string& log) {
    return {
        LogError::Kind::Damaged,
        say("'%1' is damaged: it asks for a file that is not its own. Keep the file as it is and "
            "go back to a backup.",
            shown(log))};
}

} // namespace

/// A log and its journal as they were before playing back, gone with this object unless kept.
class BeforePlayback {
public:
    /// SQLite's exclusive lock on the log is held: no other program is copying it.
    explicit BeforePlayback(const std::string& log) : m_copy(freeName(log)) { sweep(log); }
    void write(const char* suffix, const std::function<void(std::ofstream&)>& bytes) const {
        const std::string to = m_copy.path().string() + suffix;
        errno = 0;
        std::ofstream out(to, std::ios::binary | std::ios::trunc);
        bytes(out);
        out.flush();
        if (!out)
            throw systemFailure(errno != 0 ? errno : EIO, Doing::Write, to);
    }
    /// Gives it its name, and that.
    std::string keep() {
        std::error_code ignored;
        m_copy.giveName();
        std::filesystem::rename(m_copy.path().string() + "-journal", m_name + "-journal", ignored);
        return m_name;
    }

private:
    static std::string nameOf(const std::filesystem::path& log, const std::string& number) {
        return log.stem().string() + " before recovery" + number + log.extension().string();
    }
    /// What a program left that was killed while it played back.
    void sweep(const std::filesystem::path& log) const {
        std::error_code ignored;
        for (std::filesystem::directory_iterator it(log.parent_path(), ignored), end;
             !ignored && it != end; it.increment(ignored)) {
            const std::string name = it->path().filename().string();
            std::error_code error;
            if (NewFile::nameToBe(it->path()) == nameOf(log, "") && name != nameOf(log, "") &&
                !name.starts_with(m_copy.path().filename().string()))
                std::filesystem::remove(it->path(), error);
        }
    }
    std::string freeName(const std::string& log) {
        const std::filesystem::path of(log);
        for (int number = 1;; ++number) {
            const std::string counted = number > 1 ? " " + std::to_string(number) : "";
            m_name = (of.parent_path() / nameOf(of, counted)).string();
            if (!std::filesystem::exists(std::filesystem::symlink_status(m_name)))
                return m_name;
        }
    }
    std::string m_name;
    NewFile m_copy;
};

struct OwnFiles::Shim {
    sqlite3_vfs vfs{};
    sqlite3_vfs* base = nullptr;
    std::string name;
    std::string log; ///< as SQLite calls it, links followed
    sqlite3_file* handle = nullptr;
    std::optional<LogError> why;
    std::unique_ptr<BeforePlayback> before; ///< while a journal is played back

    static Shim& of(sqlite3_vfs* vfs) { return *static_cast<Shim*>(vfs->pAppData); }
    std::string journal() const { return log + "-journal"; }

    int refuse(const LogError& error) {
        why = error;
        return refusedCode;
    }
    /// Work whose errors SQLite is told by its code, and the coach by their words.
    template <class Work>
    int guarded(const Work& work) {
        try {
            return work();
        } catch (const LogError& error) {
            return refuse(error);
        } catch (const std::bad_alloc&) {
            return SQLITE_NOMEM;
        } catch (const std::exception& error) {
            return refuse({LogError::Kind::Unavailable, asIs(error.what())});
        }
    }

    // Through SQLite's own handle: opening and closing the file once more would drop its locks.
    LogFacts facts() const {
        LogFacts facts;
        sqlite3_int64 size = 0;
        if (handle->pMethods->xFileSize(handle, &size) != SQLITE_OK)
            throw systemFailure(EIO, Doing::Open, log);
        facts.bytes = size;
        if (size >= static_cast<sqlite3_int64>(facts.header.size()))
            read(facts.header.data(), static_cast<int>(facts.header.size()), 0);
        return facts;
    }
    void read(void* into, int count, sqlite3_int64 at) const {
        if (handle->pMethods->xRead(handle, into, count, at) != SQLITE_OK)
            throw systemFailure(EIO, Doing::Open, log);
    }

    void requireOwn() const {
        if (const auto strange = strangeFile(journal()))
            throw strangeJournalError(log, journal(), *strange);
    }

    /// SQLite holds the exclusive lock by now: nobody writes either file.
    void beforePlayback() {
        const LogFacts now = facts();
        if (const auto strange = strangeJournal(journal(), now))
            throw strangeJournalError(log, journal(), *strange);
        before = std::make_unique<BeforePlayback>(log);
        before->write("", [&](std::ofstream& out) {
            std::vector<char> block(1 << 20);
            for (sqlite3_int64 at = 0; at < now.bytes && out;
                 at += static_cast<sqlite3_int64>(block.size())) {
                const auto count = std::min<sqlite3_int64>(static_cast<sqlite3_int64>(block.size()),
                                                           now.bytes - at);
                read(block.data(), static_cast<int>(count), at);
                out.write(block.data(), count);
            }
        });
        before->write("-journal", [&](std::ofstream& out) {
            std::ifstream in(journal(), std::ios::binary);
            out << in.rdbuf();
        });
    }

    void afterPlayback() {
        if (beginsLog(facts().header)) {
            before.reset();
            return;
        }
        const std::string kept = before->keep();
        before.reset();
        throw LogError(LogError::Kind::Damaged,
                       say("What a program that died had left undone could not be taken back: '%1' "
                           "is no log any more. As it was before it is kept as '%2'.",
                           shown(log), shown(kept)));
    }

    static int open(sqlite3_vfs* vfs, const char* name, sqlite3_file* file, int flags, int* out) {
        Shim& self = of(vfs);
        file->pMethods = nullptr;
        return self.guarded([&] {
            if ((flags & SQLITE_OPEN_MAIN_DB) != 0 && name != nullptr && self.log.empty()) {
                self.log = name;
                self.handle = file;
            } else if ((flags & SQLITE_OPEN_MAIN_JOURNAL) != 0 && name != nullptr &&
                       name == self.journal()) {
                self.requireOwn();
                const bool playsBack =
                    (flags & SQLITE_OPEN_READWRITE) != 0 && (flags & SQLITE_OPEN_CREATE) == 0;
                if (playsBack)
                    self.beforePlayback();
            } else {
                throw strangeWish(self.log);
            }
            return self.base->xOpen(self.base, name, file, flags, out);
        });
    }

    static int remove(sqlite3_vfs* vfs, const char* name, int syncsFolder) {
        Shim& self = of(vfs);
        return self.guarded([&] {
            if (name != self.journal())
                throw strangeWish(self.log);
            if (self.before)
                self.afterPlayback();
            return self.base->xDelete(self.base, name, syncsFolder);
        });
    }

    static int access(sqlite3_vfs* vfs, const char* name, int flags, int* result) {
        Shim& self = of(vfs);
        return self.guarded([&] {
            *result = 0;
            if (name == self.log + "-wal") // of no use to us, whatever it is
                return SQLITE_OK;
            if (name != self.journal())
                throw strangeWish(self.log);
            return self.base->xAccess(self.base, name, flags, result);
        });
    }

    static int fullPath(sqlite3_vfs* vfs, const char* name, int size, char* out) {
        sqlite3_vfs* const base = of(vfs).base;
        return base->xFullPathname(base, name, size, out);
    }
    static int randomness(sqlite3_vfs* vfs, int size, char* out) {
        sqlite3_vfs* const base = of(vfs).base;
        return base->xRandomness(base, size, out);
    }
    static int sleep(sqlite3_vfs* vfs, int microseconds) {
        sqlite3_vfs* const base = of(vfs).base;
        return base->xSleep(base, microseconds);
    }
    static int time(sqlite3_vfs* vfs, double* now) {
        sqlite3_vfs* const base = of(vfs).base;
        return base->xCurrentTime(base, now);
    }
    static int time64(sqlite3_vfs* vfs, sqlite3_int64* now) {
        sqlite3_vfs* const base = of(vfs).base;
        return base->xCurrentTimeInt64(base, now);
    }
    static int lastError(sqlite3_vfs* vfs, int size, char* out) {
        sqlite3_vfs* const base = of(vfs).base;
        return base->xGetLastError != nullptr ? base->xGetLastError(base, size, out) : 0;
    }
};

OwnFiles::OwnFiles() : m_shim(std::make_unique<Shim>()) {
    static std::atomic<unsigned> made{0};
    m_shim->name = "slopebook-" + std::to_string(++made);
    m_shim->base = sqlite3_vfs_find(nullptr);
    sqlite3_vfs& vfs = m_shim->vfs;
    vfs.iVersion = 2; // the third has functions for tests of SQLite's own
    vfs.szOsFile = m_shim->base->szOsFile;
    vfs.mxPathname = m_shim->base->mxPathname;
    vfs.zName = m_shim->name.c_str();
    vfs.pAppData = m_shim.get();
    vfs.xOpen = Shim::open;
    vfs.xDelete = Shim::remove;
    vfs.xAccess = Shim::access;
    vfs.xFullPathname = Shim::fullPath;
    vfs.xRandomness = Shim::randomness;
    vfs.xSleep = Shim::sleep;
    vfs.xCurrentTime = Shim::time;
    vfs.xGetLastError = Shim::lastError;
    vfs.xCurrentTimeInt64 = Shim::time64;
    sqlite3_vfs_register(&vfs, 0);
}

OwnFiles::~OwnFiles() {
    sqlite3_vfs_unregister(&m_shim->vfs);
}

const std::string& OwnFiles::name() const {
    return m_shim->name;
}

std::optional<LogError> OwnFiles::refusal() {
    return std::exchange(m_shim->why, std::nullopt);
}

} // namespace slopebook::log

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/snapshot.h"

#include "core/log/copy.h"
#include "core/log/durable.h"
#include "core/log/impl.h"
#include "core/log/sound.h"
#include "core/log/strays.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <sqlite3.h>

#include <cerrno>
#include <fcntl.h>
#include <fstream>
#include <unistd.h>

namespace slopebook::log {

namespace {
namespace fs = std::filesystem;

/// A new empty file that nobody else may read; its name goes with this object.
class UnnamedSoon {
public:
    UnnamedSoon(const fs::path& folder, const fs::path& of) {
        sweepStrays(folder);
        for (int attempt = 0;; ++attempt) {
            m_path = nameUnderWay(folder / of.filename(), attempt);
            const int file = ::open(m_path.c_str(), O_CREAT | O_EXCL | O_RDWR | O_CLOEXEC, 0600);
            if (file >= 0) {
                ::close(file);
                return;
            }
            if (errno != EEXIST)
                throw systemFailure(errno, Doing::Make, m_path);
        }
    }
    ~UnnamedSoon() {
        ::unlink(m_path.c_str());
        ::unlink((m_path.native() + "-journal").c_str());
    }
    UnnamedSoon(const UnnamedSoon&) = delete;
    UnnamedSoon& operator=(const UnnamedSoon&) = delete;
    const fs::path& path() const { return m_path; }

private:
    SignalsWait m_undisturbed;
    fs::path m_path;
};

std::unique_ptr<Log> copyForQuestions(const Log& log) {
    std::error_code error;
    const auto folder = fs::temp_directory_path(error);
    if (error)
        return nullptr;
    try {
        return std::make_unique<Log>(privateCopy(log, folder));
    } catch (const LogError& failure) {
        if (failure.kind() == LogError::Kind::Busy || failure.kind() == LogError::Kind::Damaged)
            throw;
        return nullptr; // no room, no right: then it is held
    }
}
} // namespace

bool beingWritten(const Log& log) {
    return sqlite3_txn_state(log.impl().db.database().getHandle(), nullptr) == SQLITE_TXN_WRITE;
}

Moment::Moment(const Log& log) : m_log(log) {
    Log::Impl& impl = log.impl();
    if (impl.db.inTransaction())
        return;
    impl.moment = std::make_unique<ReadScope>(impl.db);
    try {
        Query first(impl.db, "SELECT count(*) FROM sqlite_schema"); // the moment begins here
        first.next();
    } catch (...) {
        impl.moment.reset();
        throw;
    }
    m_mine = true;
}

Moment::~Moment() {
    if (m_mine)
        m_log.impl().moment.reset();
}

Log privateCopy(const Log& log, const fs::path& folder, const Progress& progress) {
    const UnnamedSoon file(folder, log.file());
    copyPages(log.impl().db, file.path(), progress);
    Log copy = Log::open(file.path(),
                         log.access() == Access::Salvage ? Access::Salvage : Access::ReadOnly);
    copy.impl().db.speakAs(log.file());
    return copy;
}

Snapshot::Snapshot(const fs::path& file, Access access, std::uintmax_t heldUpTo)
    : m_log(std::make_unique<Log>(Log::open(file, access))) {
    std::error_code unknown;
    const auto size = fs::file_size(file, unknown);
    if (!unknown && size > heldUpTo)
        if (auto copy = copyForQuestions(*m_log)) {
            m_log = std::move(copy);
            return;
        }
    m_moment = std::make_unique<Moment>(*m_log);
}

void askOfOneMoment(const fs::path& file, Access access, const std::function<void(const Log&)>& ask,
                    std::uintmax_t heldUpTo) {
    std::error_code unknown;
    const auto size = fs::file_size(file, unknown);
    if (!unknown && size > heldUpTo) {
        const Log log = Log::open(file, access);
        const long before = log.dataVersion();
        try {
            ask(log);
            if (log.dataVersion() == before)
                return;
        } catch (const LogError&) { // such as of a session that was there a moment before
            if (log.dataVersion() == before)
                throw;
        }
    }
    const Snapshot asked(file, access, heldUpTo);
    ask(asked.log());
}

std::vector<Words> backUpToStandardOutput(const Log& log) {
    const UnnamedSoon file(fs::temp_directory_path(), log.file());
    copyPages(log.impl().db, file.path());
    std::vector<Words> findings = findingsOf(file.path());
    std::ifstream in(file.path(), std::ios::binary);
    std::vector<char> piece(1 << 20);
    while (in) {
        in.read(piece.data(), static_cast<std::streamsize>(piece.size()));
        writeOut({piece.data(), static_cast<std::size_t>(in.gcount())});
    }
    return findings;
}

std::vector<Words> backUp(const Log& log, const fs::path& target, Existing existing,
                          const Progress& progress) {
    std::vector<Words> findings;
    copyLooking(
        log.impl().db, target, [&](const fs::path& copy) { findings = findingsOf(copy); }, existing,
        progress);
    return findings;
}

} // namespace slopebook::log

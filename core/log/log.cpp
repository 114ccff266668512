// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/log.h"

#include "core/log/copy.h"
#include "core/log/failure.h"
#include "core/log/hold.h"
#include "core/log/impl.h"
#include "core/log/layout.h"
#include "core/log/migrate.h"
#include "core/log/newlog.h"
#include "core/log/snapshot.h"
#include "core/model/phrases/log.h"

#include <algorithm>

namespace slopebook::log {

namespace {
/// A program that died while writing left its journal: taking that back needs a writer, once.
void finishWhatWasLeft(const std::filesystem::path& file, const Layout& layout) {
    std::error_code error;
    const auto size = std::filesystem::file_size(file.string() + "-journal", error);
    if (error || size == 0)
        return;
    try {
        const Connection writer(file, Connection::Purpose::ReadWrite, layout.newest());
    } catch (const LogError& failure) { // else opening for reading says it better
        if (failure.kind() == LogError::Kind::Damaged)
            throw;
    }
}
} // namespace

Log::Impl::Impl(const std::filesystem::path& file, Connection::Purpose purpose,
                const Layout& layout)
    : db(file, purpose, layout.newest()) {}

Log::Log(std::unique_ptr<Impl> impl) : m_impl(std::move(impl)) {}
Log::Log(Log&&) noexcept = default;
Log& Log::operator=(Log&&) noexcept = default;
Log::~Log() = default;

Log Log::create(const std::filesystem::path& file) {
    return create(file, Layout::ours());
}

Log Log::create(const std::filesystem::path& file, const Layout& layout) {
    NewLog(file, layout).place();
    return open(file, Access::ReadWrite, layout);
}

Log Log::open(const std::filesystem::path& file, Access access) {
    return open(file, access, Layout::ours());
}

Log Log::open(const std::filesystem::path& file, Access access, const Layout& layout) {
    const bool writing = access == Access::ReadWrite || access == Access::SalvageAndWrite;
    if (!writing)
        finishWhatWasLeft(file, layout);
    auto impl = std::make_unique<Impl>(
        file, writing ? Connection::Purpose::ReadWrite : Connection::Purpose::ReadOnly, layout);
    impl->salvage = access == Access::Salvage || access == Access::SalvageAndWrite;
    bringUpToDate(impl->db, layout);
    return Log(std::move(impl));
}

const std::filesystem::path& Log::file() const {
    return m_impl->db.file();
}

Access Log::access() const {
    if (m_impl->db.readOnly())
        return m_impl->salvage ? Access::Salvage : Access::ReadOnly;
    return m_impl->salvage ? Access::SalvageAndWrite : Access::ReadWrite;
}

std::vector<Words> Log::leftOut() const {
    return m_impl->leftOut;
}

void Log::together(const std::function<void()>& work) {
    m_impl->write(work);
}

void holdWrites(const Log& log, std::function<void()> until) {
    log.impl().held = std::move(until);
}

void passHold(const Log& log) {
    if (log.impl().db.readOnly())
        throw LogError(
            LogError::Kind::ReadOnly,
            say("'%1' is open for reading only. Nothing was changed.", shown(log.file())));
    log.impl().passHold();
}

// What throws stays in the way of the next write too.
void Log::Impl::passHold() {
    if (!held || depth > 0)
        return;
    held();
    held = nullptr;
}

Log::Impl::Part::Part(Impl& impl) : m_impl(impl), m_scope(std::in_place, impl.db, impl.depth) {
    impl.settled.emplace_back();
    m_changesBefore = impl.changes.size();
}

Log::Impl::Part::~Part() {
    m_scope.reset(); // takes back what was not committed
    Marks mine = std::move(m_impl.settled.back());
    m_impl.settled.pop_back();
    if (!m_committed && (!mine.empty() || m_impl.changes.size() > m_changesBefore))
        m_impl.changes.emplace_back();
    if (m_impl.depth == 0)
        m_impl.touched.clear();
    else if (m_committed)
        m_impl.settled.back().merge(mine); // the earliest mark of a session stays
    else
        for (const auto& [session, mark] : mine) // what settling wrote is taken back with the part
            m_impl.touched.insert_or_assign(session, mark);
}

void Log::Impl::Part::commit() {
    if (m_scope->outermost())
        m_impl.settle();
    m_scope->commit();
    m_committed = true;
    if (m_scope->outermost())
        ++m_impl.commits;
}

long Log::dataVersion() const {
    Query version(m_impl->db, "PRAGMA data_version");
    version.next();
    return static_cast<long>(version.integer(0)) + m_impl->commits;
}

std::vector<Words> Log::backup(const std::filesystem::path& target) const {
    return backUp(*this, target, Existing::Refuse);
}

int Log::newestVersion() {
    return Layout::ours().newest();
}

std::int64_t Log::Impl::nextKey(const std::string& kind, std::optional<std::int64_t> given) {
    if (given && *given <= 0)
        throw BadInput(say("the key %1", *given), say("a key that the log gave out"));
    Query query(db,
                "UPDATE keys SET last = CASE WHEN ?2 IS NULL THEN last + 1 ELSE max(last, ?2) END, "
                "turned = ~CASE WHEN ?2 IS NULL THEN last + 1 ELSE max(last, ?2) END "
                "WHERE kind = ?1 RETURNING last");
    query.bind(1, kind);
    query.bind(2, given);
    if (!query.next())
        damaged(say("its table of keys lacks one"));
    const std::int64_t last = query.integer(0);
    query.run();
    return given ? *given : last;
}

std::int64_t Log::Impl::reserveKeys(const std::string& kind, std::int64_t count) {
    Query query(db, "UPDATE keys SET last = last + ?2, turned = ~(last + ?2) WHERE kind = ?1 "
                    "RETURNING last");
    query.bind(1, kind);
    query.bind(2, count);
    if (!query.next())
        damaged(say("its table of keys lacks one"));
    const std::int64_t last = query.integer(0);
    query.run();
    return last - count + 1;
}

void Log::Impl::note(const Words& sentence) {
    if (std::ranges::find(leftOut, sentence) == leftOut.end())
        leftOut.push_back(sentence);
}

void Log::Impl::leaveOut(const Words& what) {
    salvaging([&] { damaged(what); });
}

bool Log::Impl::next(Query& rows) {
    bool there = false;
    return salvaging([&] { there = rows.next(); }) && there;
}

void Log::Impl::damaged(const Words& what) const {
    throw damagedLog(db.file(), what);
}

} // namespace slopebook::log

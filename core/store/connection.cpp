// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/connection.h"

#include "core/model/phrases/store.h"
#include "core/store/libpq.h"
#include "core/store/reaching.h"

#include <algorithm>
#include <clocale>
#include <poll.h>

namespace slopebook::store {

namespace {
constexpr int asksEveryMs = 50;

/// libpq's own words in English while one lives: they are told apart by them, where there is
/// nothing else.
class InEnglish {
public:
    InEnglish() : m_before(::uselocale(english())) {}
    ~InEnglish() { ::uselocale(m_before); }
    InEnglish(const InEnglish&) = delete;
    InEnglish& operator=(const InEnglish&) = delete;

private:
    static locale_t english() {
        static const locale_t made = ::newlocale(LC_ALL_MASK, "C", nullptr);
        return made;
    }
    locale_t m_before;
};

void overhear(void* /*nobody*/, const PGresult* /*notice*/) {}

std::string field(const PGresult* result, int which) {
    const char* text = libpq().PQresultErrorField(result, which);
    return text ? text : "";
}
} // namespace

void Connection::Finish::operator()(pg_conn* connection) const {
    libpq().PQfinish(connection);
}

Connection Connection::open(const Address& address, const Progress& stop) {
    const InEnglish english;
    std::optional<StoreError> furthest;
    for (const Host& named : address.hosts())
        for (const Host& host : numbersOf(named)) {
            Connection connection(address.askedAt(named));
            const auto failed = connection.begin(address, host, stop);
            if (!failed) {
                connection.settle(stop);
                return connection;
            }
            if (!furthest || wayTo(failed->kind()) > wayTo(furthest->kind()))
                furthest = failed;
        }
    throw *furthest;
}

// Ours alone, whatever the login's own settings are: nothing but PostgreSQL's own names is found
// without a schema, and nobody is held up by who went away.
void Connection::settle(const Progress& stop) {
    run("SET search_path = pg_catalog, pg_temp; SET lock_timeout = '20s'; "
        "SET idle_in_transaction_session_timeout = '30s'; "
        "SET default_transaction_isolation = 'read committed'; "
        "SET default_transaction_read_only = off; SET synchronous_commit = on",
        stop);
}

std::optional<StoreError> Connection::begin(const Address& address, const Host& host,
                                            const Progress& stop) {
    const Libpq& pq = libpq();
    Attempt attempt;
    if (isUnknown(host)) {
        attempt.unknown = true;
        return connectFailure(m_asked, attempt);
    }
    std::vector<const char*> names, values;
    const auto give = [&](const char* name, const std::string& value) {
        names.push_back(name);
        values.push_back(value.c_str());
    };
    for (const auto& [name, value] : address.options())
        give(name.c_str(), value);
    // over what the address says (of several of one name the last counts)
    for (const auto& [name, value] :
         {std::pair{"host", &host.name}, {"hostaddr", &host.number}, {"port", &host.port}})
        if (!value->empty())
            give(name, *value);
    names.push_back(nullptr);
    values.push_back(nullptr);
    m_connection.reset(pq.PQconnectStartParams(names.data(), values.data(), 0));
    if (!m_connection)
        throw std::bad_alloc();
    PGconn* const connection = m_connection.get();
    const auto failed = [&]() -> std::optional<StoreError> {
        attempt.words = pq.PQerrorMessage(connection);
        attempt.needsPassword = pq.PQconnectionNeedsPassword(connection) != 0;
        StoreError error = connectFailure(m_asked, attempt);
        if (attempt.noServer || wayTo(error.kind()) < 0)
            throw error;
        return error;
    };
    if (pq.PQstatus(connection) == CONNECTION_BAD) {
        const std::string_view words = pq.PQerrorMessage(connection);
        attempt.noServer = words.starts_with("definition of service") ||
                           words.starts_with("service file") || words.starts_with("invalid ");
        return failed();
    }
    pq.PQsetErrorVerbosity(connection, PQERRORS_VERBOSE); // with the state of a refusal
    pq.PQsetNoticeReceiver(connection, overhear, nullptr);
    const int seconds = address.secondsToWait();
    const auto end = std::chrono::steady_clock::now() + std::chrono::seconds(seconds);
    for (PostgresPollingStatusType state = PGRES_POLLING_WRITING; state != PGRES_POLLING_OK;) {
        if (!wait(state == PGRES_POLLING_READING ? POLLIN : POLLOUT, stop, end)) {
            attempt.waited = seconds;
            return failed();
        }
        attempt.encrypting = pq.PQstatus(connection) == CONNECTION_SSL_STARTUP;
        const OtherEnd other(attempt.encrypting ? pq.PQsocket(connection) : -1);
        state = pq.PQconnectPoll(connection);
        if (state == PGRES_POLLING_FAILED) {
            attempt.cut = other.isGone(pq.PQerrorMessage(connection));
            return failed();
        }
        attempt.reached = attempt.reached || pq.PQstatus(connection) != CONNECTION_STARTED;
    }
    pq.PQsetErrorVerbosity(connection, PQERRORS_DEFAULT);
    pq.PQsetnonblocking(connection, 1);
    return {};
}

void Connection::requireOpen() const {
    if (!m_connection)
        throw lostFailure(m_asked, "it was closed");
}

bool Connection::wait(short events, const Progress& stop, std::optional<Until> end) {
    for (;;) {
        if (end && std::chrono::steady_clock::now() > *end)
            return false;
        if (stop && !stop(0, 0)) {
            cancel();
            throw Cancelled{};
        }
        pollfd one{.fd = libpq().PQsocket(m_connection.get()), .events = events, .revents = 0};
        if (one.fd < 0 || ::poll(&one, 1, asksEveryMs) != 0)
            return true;
    }
}

void Connection::cancel() {
    const Libpq& pq = libpq();
    if (m_connection && pq.PQstatus(m_connection.get()) == CONNECTION_OK) {
        char words[256];
        const std::unique_ptr<PGcancel, decltype(Libpq::PQfreeCancel)> request(
            pq.PQgetCancel(m_connection.get()), pq.PQfreeCancel);
        if (request)
            pq.PQcancel(request.get(), words, sizeof words);
    }
    m_connection.reset();
}

void Connection::lost() {
    const std::string words = libpq().PQerrorMessage(m_connection.get());
    m_connection.reset();
    throw lostFailure(m_asked, words);
}

void Connection::flush(const Progress& stop) {
    const Libpq& pq = libpq();
    for (;;) {
        const int left = pq.PQflush(m_connection.get());
        if (left < 0)
            lost();
        if (left == 0)
            return;
        wait(POLLIN | POLLOUT, stop);
        if (pq.PQconsumeInput(m_connection.get()) == 0)
            lost();
    }
}

pg_result* Connection::next(const Progress& stop) {
    const Libpq& pq = libpq();
    while (pq.PQisBusy(m_connection.get()) != 0) {
        wait(POLLIN, stop);
        if (pq.PQconsumeInput(m_connection.get()) == 0)
            lost();
    }
    return pq.PQgetResult(m_connection.get());
}

void Connection::refuse(pg_result* result, const Progress& stop) {
    const Libpq& pq = libpq();
    const std::unique_ptr<pg_result, decltype(Libpq::PQclear)> held(result, pq.PQclear);
    const std::string state = field(result, PG_DIAG_SQLSTATE);
    const std::string words = field(result, PG_DIAG_MESSAGE_PRIMARY);
    if (state.empty() || pq.PQstatus(m_connection.get()) == CONNECTION_BAD)
        lost();
    const StoreError error = serverFailure(m_asked, state, words);
    if (error.kind() == StoreError::Kind::Lost) {
        m_connection.reset();
        throw error;
    }
    while (pg_result* more = next(stop))
        pq.PQclear(more);
    throw error;
}

/// All results of what was sent, the last one's rows.
Rows Connection::last(const Progress& stop) {
    const Libpq& pq = libpq();
    std::optional<Rows> rows;
    while (pg_result* result = next(stop)) {
        switch (pq.PQresultStatus(result)) {
        case PGRES_COMMAND_OK:
        case PGRES_TUPLES_OK:
        case PGRES_EMPTY_QUERY:
            rows.emplace(result);
            break;
        default:
            refuse(result, stop);
        }
    }
    if (!rows || pq.PQstatus(m_connection.get()) == CONNECTION_BAD)
        lost();
    return *rows;
}

namespace {
std::vector<const char*> pointers(std::span<const Param> values) {
    std::vector<const char*> all;
    for (const Param& value : values)
        all.push_back(value ? value->c_str() : nullptr);
    return all;
}
} // namespace

Rows Connection::ask(const char* sql, std::span<const Param> values, const Progress& stop) {
    requireOpen();
    const auto given = pointers(values);
    if (libpq().PQsendQueryParams(m_connection.get(), sql, static_cast<int>(given.size()), nullptr,
                                  given.data(), nullptr, nullptr, 0) == 0)
        lost();
    flush(stop);
    return last(stop);
}

void Connection::each(const char* sql, std::span<const Param> values,
                      const std::function<void(const Rows&)>& visit, const Progress& stop) {
    requireOpen();
    const Libpq& pq = libpq();
    const auto given = pointers(values);
    if (pq.PQsendQueryParams(m_connection.get(), sql, static_cast<int>(given.size()), nullptr,
                             given.data(), nullptr, nullptr, 0) == 0 ||
        pq.PQsetSingleRowMode(m_connection.get()) == 0)
        lost();
    flush(stop);
    bool whole = false;
    while (pg_result* result = next(stop)) {
        const ExecStatusType status = pq.PQresultStatus(result);
        if (status != PGRES_SINGLE_TUPLE && status != PGRES_TUPLES_OK)
            refuse(result, stop);
        whole = status == PGRES_TUPLES_OK;
        const Rows row(result);
        if (whole)
            continue;
        try {
            visit(row);
        } catch (...) { // who looks at the rows has had enough of them
            cancel();
            throw;
        }
    }
    if (!whole || pq.PQstatus(m_connection.get()) == CONNECTION_BAD)
        lost();
}

void Connection::run(const char* script, const Progress& stop) {
    requireOpen();
    if (libpq().PQsendQuery(m_connection.get(), script) == 0)
        lost();
    flush(stop);
    last(stop);
}

void Connection::copyIn(const char* sql, const std::function<std::string()>& more,
                        const Progress& stop) {
    requireOpen();
    const Libpq& pq = libpq();
    if (pq.PQsendQuery(m_connection.get(), sql) == 0)
        lost();
    flush(stop);
    pg_result* const begun = next(stop);
    if (!begun)
        lost();
    if (pq.PQresultStatus(begun) != PGRES_COPY_IN)
        refuse(begun, stop);
    pq.PQclear(begun);
    for (std::string lines = more(); !lines.empty(); lines = more()) {
        for (;;) {
            const int taken =
                pq.PQputCopyData(m_connection.get(), lines.data(), static_cast<int>(lines.size()));
            if (taken < 0)
                lost();
            if (taken > 0)
                break;
            wait(POLLIN | POLLOUT, stop);
        }
        flush(stop);
    }
    while (pq.PQputCopyEnd(m_connection.get(), nullptr) == 0)
        wait(POLLIN | POLLOUT, stop);
    flush(stop);
    last(stop);
}

bool Connection::waitForNews(std::chrono::milliseconds time, const Progress& stop) {
    requireOpen();
    const Libpq& pq = libpq();
    const auto end = std::chrono::steady_clock::now() + time;
    for (;;) {
        if (pq.PQconsumeInput(m_connection.get()) == 0)
            lost();
        bool told = false;
        while (PGnotify* one = pq.PQnotifies(m_connection.get())) {
            told = told || one->be_pid != pq.PQbackendPID(m_connection.get());
            pq.PQfreemem(one);
        }
        if (told)
            return true;
        const auto left = std::chrono::duration_cast<std::chrono::milliseconds>(
            end - std::chrono::steady_clock::now());
        if (left.count() <= 0)
            return false;
        if (stop && !stop(0, 0))
            throw Cancelled{};
        pollfd one{.fd = pq.PQsocket(m_connection.get()), .events = POLLIN, .revents = 0};
        ::poll(&one, 1, static_cast<int>(std::min<std::int64_t>(left.count(), asksEveryMs)));
    }
}

bool Connection::encrypted() const {
    return m_connection && libpq().PQsslInUse(m_connection.get()) != 0;
}

bool Connection::usedPassword() const {
    return m_connection && libpq().PQconnectionUsedPassword(m_connection.get()) != 0;
}

int Connection::serverVersion() const {
    return m_connection ? libpq().PQserverVersion(m_connection.get()) : 0;
}

Moment::Moment(Connection& connection, const char* begin, const Progress& stop)
    : m_connection(connection) {
    m_connection.run(begin, stop);
}

Moment::~Moment() {
    if (m_kept || !m_connection.open())
        return;
    try {
        m_connection.run("ROLLBACK");
    } catch (...) { // NOLINT(bugprone-empty-catch): with the connection the server takes it back
    }
}

void Moment::keep(const Progress& stop) {
    m_connection.run("COMMIT", stop);
    m_kept = true;
}

} // namespace slopebook::store

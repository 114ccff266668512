// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/postgres.h"

#include "tests/support/bytes.h"

#include <arpa/inet.h>
#include <array>
#include <cerrno>
#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <fcntl.h>
#include <fstream>
#include <functional>
#include <grp.h>
#include <stdexcept>
#include <sys/prctl.h>
#include <sys/socket.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>
#include <vector>

namespace slopebook::test {

namespace {
namespace fs = std::filesystem;
constexpr unsigned nobody = 65534;
constexpr std::chrono::milliseconds soon{5};

fs::path programs() {
    for (int version = 17; version >= 15; --version) {
        const fs::path folder = "/usr/lib/postgresql/" + std::to_string(version) + "/bin";
        if (fs::exists(folder / "postgres") && fs::exists(folder / "initdb"))
            return folder;
    }
    throw std::runtime_error(
        "PostgreSQL 15 is not installed (Debian: postgresql-15, as "
        "tests/packages.txt has it); a shared store cannot be tested without.");
}

/// PostgreSQL refuses to run as root.
void becomeOrdinary() {
    if (::geteuid() == 0 &&
        (::setgroups(0, nullptr) != 0 || ::setgid(nobody) != 0 || ::setuid(nobody) != 0))
        ::_exit(125);
}

void give(const fs::path& file) {
    if (::geteuid() == 0 && ::chown(file.c_str(), nobody, nobody) != 0)
        throw std::runtime_error("cannot give away " + file.string());
}

/// A command of the shell; what it printed on both. As an ordinary user where asked.
Postgres::Ran shell(const std::string& command, bool ordinary = false) {
    std::array<int, 2> ends{};
    if (::pipe2(ends.data(), O_CLOEXEC) != 0)
        throw std::runtime_error("no pipe");
    const pid_t child = ::fork();
    if (child == 0) {
        ::dup2(ends[1], 1);
        ::dup2(ends[1], 2);
        const int nothing = ::open("/dev/null", O_RDONLY | O_CLOEXEC);
        ::dup2(nothing, 0);
        if (ordinary)
            becomeOrdinary();
        ::execl("/bin/sh", "sh", "-c", command.c_str(), nullptr);
        ::_exit(127);
    }
    ::close(ends[1]);
    Postgres::Ran ran;
    std::array<char, 4096> bytes{};
    for (ssize_t got = 0; (got = ::read(ends[0], bytes.data(), bytes.size())) > 0;)
        ran.out.append(bytes.data(), static_cast<std::size_t>(got));
    ::close(ends[0]);
    int status = 0;
    ::waitpid(child, &status, 0);
    ran.exit = WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    return ran;
}

std::string inQuotes(const std::string& text) {
    std::string quoted = "'";
    for (const char c : text)
        quoted += c == '\'' ? std::string("'\\''") : std::string(1, c);
    return quoted + "'";
}

int freePort() {
    const int one = ::socket(AF_INET, SOCK_STREAM | SOCK_CLOEXEC, 0);
    sockaddr_in place{};
    place.sin_family = AF_INET;
    place.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
    socklen_t size = sizeof place;
    if (::bind(one, reinterpret_cast<sockaddr*>(&place), size) != 0 ||
        ::getsockname(one, reinterpret_cast<sockaddr*>(&place), &size) != 0)
        throw std::runtime_error("no free port");
    ::close(one);
    return ntohs(place.sin_port);
}

pid_t postmasterOf(const fs::path& folder) {
    std::ifstream file(folder / "data/postmaster.pid");
    pid_t pid = 0;
    return file >> pid ? pid : 0;
}

/// Waits for the end of the test's life, then ends the server and takes the folder away.
[[noreturn]] void guard(int lifeline, const fs::path& folder) {
    ::setsid();
    const int nothing = ::open("/dev/null", O_RDWR | O_CLOEXEC);
    for (int out = 0; out < 3; ++out)
        ::dup2(nothing, out);
    char byte = 0;
    while (::read(lifeline, &byte, 1) < 0 && errno == EINTR) {
    }
    if (const pid_t server = postmasterOf(folder); server > 1) {
        ::kill(server, SIGQUIT);
        for (int i = 0; i < 400 && ::kill(server, 0) == 0; ++i)
            std::this_thread::sleep_for(soon);
        if (::kill(server, 0) == 0)
            ::kill(server, SIGKILL);
    }
    std::error_code gone;
    for (int i = 0; i < 20 && fs::exists(folder); ++i) {
        fs::remove_all(folder, gone); // a backend may still write its last
        std::this_thread::sleep_for(soon);
    }
    ::_exit(0);
}
} // namespace

Postgres::Postgres(PostgresOptions options) : m_programs(programs()), m_options(options) {
    std::string name = (fs::temp_directory_path() / "slopebook-pg-XXXXXX").string();
    if (!::mkdtemp(name.data()))
        throw std::runtime_error("no temporary folder");
    m_folder = name;
    fs::permissions(m_folder, fs::perms(0755));
    give(m_folder);
    std::ofstream(m_folder / "test") << ::getpid() << '\n';
    std::array<int, 2> ends{};
    if (::pipe2(ends.data(), O_CLOEXEC) != 0)
        throw std::runtime_error("no pipe");
    m_guardian = ::fork();
    if (m_guardian == 0) {
        ::close(ends[1]);
        guard(ends[0], m_folder);
    }
    ::close(ends[0]);
    m_lifeline = ends[1];
    std::ofstream(m_folder / "password") << passwordOf("admin") << '\n';
    give(m_folder / "password");
    const Ran made =
        shell((m_programs / "initdb").string() + " -D " + (m_folder / "data").string() +
                  " -U admin -A scram-sha-256 --pwfile=" + (m_folder / "password").string() +
                  " --no-sync --no-instructions -E UTF8 --locale=C.UTF-8",
              true);
    if (made.exit != 0)
        throw std::runtime_error("initdb: " + made.out);
    if (m_options.tls)
        makeCertificate();
    m_logins = "admin\n";
    writePasswords();
    ::setenv("PGPASSFILE", (m_folder / "pgpass").c_str(), 1);
    for (int tries = 0;; ++tries) { // somebody else may take the port in between
        m_port = freePort();
        try {
            start();
            return;
        } catch (const std::runtime_error&) {
            if (tries == 3)
                throw;
        }
    }
}

Postgres::~Postgres() {
    if (m_server > 0) {
        ::kill(m_server, SIGQUIT);
        ::waitpid(m_server, nullptr, 0);
    }
    ::close(m_lifeline);
    ::waitpid(m_guardian, nullptr, 0);
}

void Postgres::makeCertificate() const {
    const auto in = [&](const char* name) { return (m_folder / name).string(); };
    const Ran made =
        shell("openssl req -x509 -newkey rsa:2048 -nodes -days 2 -subj /CN=store.test -addext "
              "subjectAltName=DNS:store.test -keyout " +
              in("server.key") + " -out " + in("root.crt") + " && chmod 600 " + in("server.key"));
    if (made.exit != 0)
        throw std::runtime_error("openssl: " + made.out);
    give(m_folder / "server.key");
    // in the file, so that a test can turn it off
    std::ofstream(m_folder / "data/postgresql.conf", std::ios::app)
        << "ssl = on\nssl_cert_file = '" << in("root.crt") << "'\nssl_key_file = '"
        << in("server.key") << "'\n";
}

void Postgres::writePasswords() const {
    const fs::path file = m_folder / "pgpass";
    std::ofstream out(file);
    std::string left = m_logins;
    for (auto end = left.find('\n'); end != std::string::npos; end = left.find('\n')) {
        const std::string login = left.substr(0, end);
        out << "*:*:*:" << login << ':' << passwordOf(login) << '\n';
        left.erase(0, end + 1);
    }
    out.close();
    fs::permissions(file, fs::perms(0600));
}

void Postgres::start() {
    const auto text = [](const char* name, const std::string& value) {
        return std::string(name) + "=" + value;
    };
    std::vector<std::string> words{(m_programs / "postgres").string(),
                                   "-D",
                                   (m_folder / "data").string(),
                                   "-k",
                                   m_folder.string(),
                                   "-h",
                                   "127.0.0.1",
                                   "-p",
                                   std::to_string(m_port)};
    std::vector<std::string> settings{"shared_buffers=24MB",
                                      "max_connections=60",
                                      "jit=off",
                                      "autovacuum=off",
                                      "wal_level=minimal",
                                      "max_wal_senders=0",
                                      "logging_collector=off",
                                      "lc_messages=C",
                                      text("fsync", m_options.durable ? "on" : "off")};
    for (const std::string& setting : settings) {
        words.emplace_back("-c");
        words.push_back(setting);
    }
    std::vector<char*> arguments;
    for (std::string& word : words)
        arguments.push_back(word.data());
    arguments.push_back(nullptr);
    for (int tries = 0; tries < 40; ++tries) { // after a kill the old backends end in a moment
        m_server = ::fork();
        if (m_server == 0) {
            becomeOrdinary();
            ::prctl(PR_SET_PDEATHSIG, SIGQUIT);
            const int out =
                ::open((m_folder / "log").c_str(), O_WRONLY | O_CREAT | O_APPEND | O_CLOEXEC, 0644);
            const int nothing = ::open("/dev/null", O_RDONLY | O_CLOEXEC);
            ::dup2(nothing, 0);
            ::dup2(out, 1);
            ::dup2(out, 2);
            ::execv(arguments[0], arguments.data());
            ::_exit(127);
        }
        for (int i = 0; i < 6000; ++i) {
            if (::waitpid(m_server, nullptr, WNOHANG) == m_server)
                break;
            std::ifstream file(m_folder / "data/postmaster.pid");
            std::string line;
            pid_t pid = 0;
            for (int n = 1; std::getline(file, line); ++n) {
                if (n == 1)
                    pid = std::atoi(line.c_str());
                if (n == 8 && line.starts_with("ready") && pid == m_server)
                    return;
            }
            std::this_thread::sleep_for(soon);
        }
        m_server = -1;
        std::this_thread::sleep_for(10 * soon);
    }
    throw std::runtime_error("PostgreSQL does not start: " + readBytes(m_folder / "log"));
}

void Postgres::stop() {
    ::kill(m_server, SIGINT);
    ::waitpid(m_server, nullptr, 0);
    m_server = -1;
}

void Postgres::killHard() {
    ::kill(m_server, SIGKILL);
    ::waitpid(m_server, nullptr, 0);
    m_server = -1;
}

std::string Postgres::addressAt(int port, const std::string& login, const std::string& database) {
    return "host=127.0.0.1 port=" + std::to_string(port) + " dbname=" + database + " user=" + login;
}

std::string Postgres::address(const std::string& login, const std::string& database) const {
    return addressAt(m_port, login, database);
}

void Postgres::addLogin(const std::string& login, const std::string& attributes) {
    sql("CREATE ROLE " + login + " LOGIN PASSWORD '" + passwordOf(login) + "' " + attributes,
        "postgres");
    m_logins += login + '\n';
    writePasswords();
}

std::string Postgres::run(const std::string& program, const std::string& arguments) const {
    const Ran ran = shell("PGHOST=127.0.0.1 PGUSER=admin PGPORT=" + std::to_string(m_port) + " " +
                          (m_programs / program).string() + " " + arguments);
    if (ran.exit != 0)
        throw std::runtime_error(program + ": " + ran.out);
    return ran.out;
}

Postgres::Ran Postgres::tryPsql(const std::string& login, const std::string& text,
                                const std::string& database) const {
    return shell((m_programs / "psql").string() + " -X -A -t -q -v ON_ERROR_STOP=1 " +
                 inQuotes(address(login, database)) + " <<'END OF SQL'\n" + text +
                 "\nEND OF SQL\n");
}

std::string Postgres::sql(const std::string& text, const std::string& database) const {
    const Ran ran = tryPsql("admin", text, database);
    if (ran.exit != 0)
        throw std::runtime_error("psql: " + ran.out);
    std::string out = ran.out;
    while (!out.empty() && out.back() == '\n')
        out.pop_back();
    return out;
}

} // namespace slopebook::test

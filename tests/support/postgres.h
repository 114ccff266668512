// SPDX-License-Identifier: GPL-3.0-or-later
// A PostgreSQL of the test's own: Debian's package, started as an ordinary user in a temporary
// folder, on a free port of this machine, gone with the test however that ends.
#pragma once

#include <filesystem>
#include <string>
#include <sys/types.h>

namespace slopebook::test {

struct PostgresOptions {
    bool tls = false; ///< with a certificate for "store.test", made now; its authority in root.crt
    bool durable = false; ///< real fsync: only where that is what is tested
};

class Postgres {
public:
    /// Makes a cluster with the superuser "admin" and starts it. Throws std::runtime_error with a
    /// sentence where PostgreSQL is not installed or does not start.
    explicit Postgres(PostgresOptions options = {});
    ~Postgres();
    Postgres(const Postgres&) = delete;
    Postgres& operator=(const Postgres&) = delete;

    int port() const { return m_port; }
    const std::filesystem::path& folder() const { return m_folder; }
    /// "host=127.0.0.1 port=... dbname=... user=...", without a password: those are in a file that
    /// PGPASSFILE names.
    std::string address(const std::string& login, const std::string& database = "squad") const;
    /// The same through another port (a proxy's).
    static std::string addressAt(int port, const std::string& login,
                                 const std::string& database = "squad");
    /// A login with a password; known to PGPASSFILE as well.
    void addLogin(const std::string& login, const std::string& attributes = "");
    static std::string passwordOf(const std::string& login) { return "secret of " + login; }

    /// Runs SQL as the superuser in that database by psql; what it prints, unaligned. Throws where
    /// it fails.
    std::string sql(const std::string& text, const std::string& database = "squad") const;
    /// One of PostgreSQL's programs with its arguments, as the superuser at this server; its
    /// output.
    std::string run(const std::string& program, const std::string& arguments) const;
    /// Of psql and its kin as that login: exit status and both outputs.
    struct Ran {
        int exit = -1;
        std::string out;
    };
    Ran tryPsql(const std::string& login, const std::string& text,
                const std::string& database = "squad") const;

    void start();
    void stop();     ///< in order
    void killHard(); ///< -9, the postmaster
    pid_t pid() const { return m_server; }

private:
    void makeCertificate() const;
    void writePasswords() const;
    std::filesystem::path m_folder;
    std::filesystem::path m_programs;
    PostgresOptions m_options;
    std::string m_logins;
    int m_port = 0;
    int m_lifeline = -1; ///< closed when this process ends: the guardian then clears up
    pid_t m_guardian = -1, m_server = -1;
};

} // namespace slopebook::test

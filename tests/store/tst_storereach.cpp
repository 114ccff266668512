// SPDX-License-Identifier: GPL-3.0-or-later
// How a store is reached: which of several machines, for how long, by whose certificate and which
// password, and what is said where the way ends in the middle.
#include "core/store/exchange.h"
#include "tests/store/storeworld.h"

#include <QFile>
#include <QProcess>
#include <QTemporaryDir>

#include <arpa/inet.h>
#include <memory>
#include <netdb.h>
#include <netinet/in.h>
#include <sys/socket.h>
#include <thread>
#include <unistd.h>

using namespace slopebook;
using namespace slopebook::test;
using store::Address;
using Kind = StoreError::Kind;

namespace {
const std::string farHost =
    std::string(70, 'x') + ".invalid"; // no such label can even be asked for

std::optional<Kind> kindOf(const std::string& address) {
    try {
        Connection connection = Connection::open(Address::read(address));
        store::squadsOf(connection);
    } catch (const StoreError& error) {
        return error.kind();
    }
    return std::nullopt;
}

/// Takes connections on a free port of this machine (or on that one) and says nothing.
class Silent {
public:
    explicit Silent(int family = AF_INET, int port = 0)
        : m_socket(::socket(family, SOCK_STREAM | SOCK_CLOEXEC, 0)) {
        sockaddr_in4or6 place{};
        socklen_t size = sizeof place.four;
        if (family == AF_INET6) {
            place.six.sin6_family = AF_INET6;
            place.six.sin6_addr = in6addr_loopback;
            place.six.sin6_port = htons(static_cast<std::uint16_t>(port));
            size = sizeof place.six;
        } else {
            place.four.sin_family = AF_INET;
            place.four.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
            place.four.sin_port = htons(static_cast<std::uint16_t>(port));
        }
        m_listens = ::bind(m_socket, &place.any, size) == 0 && ::listen(m_socket, 4) == 0 &&
                    ::getsockname(m_socket, &place.any, &size) == 0;
        m_port = ntohs(family == AF_INET6 ? place.six.sin6_port : place.four.sin_port);
    }
    ~Silent() { ::close(m_socket); }
    Silent(const Silent&) = delete;
    Silent& operator=(const Silent&) = delete;
    bool listens() const { return m_listens; }
    int port() const { return m_port; }
    int take() const { return ::accept4(m_socket, nullptr, nullptr, SOCK_CLOEXEC); }

private:
    union sockaddr_in4or6 {
        sockaddr any;
        sockaddr_in four;
        sockaddr_in6 six;
    };
    int m_socket;
    int m_port = 0;
    bool m_listens = false;
};
} // namespace

class TestStoreReach : public QObject {
    Q_OBJECT
    std::unique_ptr<StoreWorld> m_world;
    QTemporaryDir m_folder;

    const Postgres& server() const { return m_world->server; }
    std::string farAddress(const std::string& host, const std::string& more = {}) const {
        return "host=" + host + " hostaddr=127.0.0.1 port=" + std::to_string(server().port()) +
               " dbname=squad user=cora " + more;
    }
    std::string root() const { return (server().folder() / "root.crt").string(); }
    void write(const QString& name, const QByteArray& text) const {
        QFile file(m_folder.filePath(name));
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write(text);
        file.setPermissions(QFile::ReadOwner | QFile::WriteOwner);
    }

private Q_SLOTS:
    void initTestCase() {
        qputenv("HOME", m_folder.path().toUtf8());
        try {
            m_world = std::make_unique<StoreWorld>(PostgresOptions{.tls = true});
        } catch (const std::exception& error) {
            QFAIL(error.what());
        }
    }

    // A machine that takes the connection and then says nothing; whoever says how long is heard.
    void whoNeverAnswersIsGivenUp() {
        const Silent dumb;
        QVERIFY(dumb.listens());
        const std::string address = Postgres::addressAt(dumb.port(), "cora");
        const auto said = [](const std::string& to) {
            return refusal([&] { Connection::open(Address::read(to)); });
        };
        QVERIFY(said(address + " connect_timeout=1").find("did not answer within 1 s") !=
                std::string::npos);
        qputenv("PGCONNECT_TIMEOUT", "1");
        QVERIFY(said(address).find("did not answer within 1 s") != std::string::npos);
        qunsetenv("PGCONNECT_TIMEOUT");
        QCOMPARE(Address::read(address).secondsToWait(), 20);
    }

    // Several machines, or several numbers of one name: one after the other, each for its time.
    void theNextOneIsTried() {
        const Silent dumb;
        const std::string real = std::to_string(server().port());
        const auto to = [&](const std::string& ports) {
            return "host=127.0.0.1,127.0.0.1 port=" + ports +
                   " dbname=squad user=cora connect_timeout=1";
        };
        for (const std::string& first : {std::string("1"), std::to_string(dumb.port())}) {
            Connection connection = Connection::open(Address::read(to(first + "," + real)));
            QCOMPARE(connection.asked().place, "127.0.0.1:" + real);
        }
        QCOMPARE(kindOf("host=" + farHost + ",127.0.0.1 sslrootcert=" + root() + " port=" + real +
                        " dbname=squad user=cora"),
                 Kind::Certificate); // it was found, and is not who it should be
        const std::string none = refusal(
            [&] { Connection::open(Address::read(to(std::to_string(dumb.port()) + ",1"))); });
        QVERIFY2(none.find("did not answer") != std::string::npos, none.c_str());
        // the first answered: what it says counts
        write(QStringLiteral("wrong"), "*:*:*:cora:open sesame\n");
        const QByteArray passwords = qgetenv("PGPASSFILE");
        qputenv("PGPASSFILE", m_folder.filePath(QStringLiteral("wrong")).toUtf8());
        QCOMPARE(kindOf(to(real + ",1")), Kind::WrongPassword);
        qputenv("PGPASSFILE", passwords);
        QVERIFY(refusal([] { Address::read("host=a,b,c port=1,2"); }) != "done");
        // a name with two numbers, where this machine has one: only the second is the server's
        const Silent six(AF_INET6, server().port());
        addrinfo* found = nullptr;
        if (six.listens() && ::getaddrinfo("localhost", nullptr, nullptr, &found) == 0) {
            QCOMPARE(
                kindOf("host=localhost port=" + real + " dbname=squad user=cora connect_timeout=1"),
                std::nullopt);
            ::freeaddrinfo(found);
        }
    }

    // What cannot be seen through is not taken for this machine.
    void whatIsNotKnownIsAfar() {
        const Address none = Address::read("service=gymhall");
        QVERIFY(!none.isThisMachine());
        bool checked = false;
        for (const auto& [name, value] : none.options())
            checked = checked || (name == "sslmode" && value == "verify-full");
        QVERIFY(checked);
    }

    // A network that ends while TLS is begun has nothing to do with certificates, and what is no
    // TLS has nothing to do with the network.
    void aCutIsNoCertificate_data() {
        QTest::addColumn<QByteArray>("answer");
        QTest::addColumn<bool>("reset");
        QTest::addColumn<int>("kind");
        QTest::newRow("ended at once") << QByteArray() << false << static_cast<int>(Kind::Lost);
        QTest::newRow("reset at once") << QByteArray() << true << static_cast<int>(Kind::Lost);
        QTest::newRow("ended") << QByteArray("S") << false << static_cast<int>(Kind::Lost);
        QTest::newRow("reset") << QByteArray("S") << true << static_cast<int>(Kind::Lost);
        QTest::newRow("ended within")
            << QByteArray("S\x16\x03\x03\x00\x40\x02", 7) << false << static_cast<int>(Kind::Lost);
        QTest::newRow("no TLS") << QByteArray("N") << false << static_cast<int>(Kind::NoEncryption);
        QTest::newRow("nonsense") << QByteArray("SHello, this is no TLS at all") << false
                                  << static_cast<int>(Kind::NoEncryption);
    }
    void aCutIsNoCertificate() {
        QFETCH(QByteArray, answer);
        QFETCH(bool, reset);
        QFETCH(int, kind);
        const Silent door;
        const bool ends = kind == static_cast<int>(Kind::Lost);
        std::thread other([&] {
            const int taken = door.take();
            char bytes[4096];
            if (::recv(taken, bytes, 8, MSG_WAITALL) != 8)
                return; // the test fails for it
            if (!answer.isEmpty()) {
                const auto first = static_cast<std::size_t>(1);
                (void)!::write(taken, answer.constData(), first);
                if (answer.size() > 1 || answer == "S")
                    (void)!::recv(taken, bytes, sizeof bytes, 0); // its greeting
                (void)!::write(taken, answer.constData() + 1,
                               static_cast<std::size_t>(answer.size()) - first);
            }
            if (!ends)
                while (::recv(taken, bytes, sizeof bytes, 0) > 0) {
                }
            const linger hard{.l_onoff = 1, .l_linger = 0};
            if (reset)
                ::setsockopt(taken, SOL_SOCKET, SO_LINGER, &hard, sizeof hard);
            ::close(taken);
        });
        int got = -1;
        QString said;
        try {
            Connection::open(Address::read(
                "host=store.test hostaddr=127.0.0.1 port=" + std::to_string(door.port()) +
                " dbname=squad user=cora sslrootcert=" + root()));
        } catch (const StoreError& error) {
            got = static_cast<int>(error.kind());
            said = QString::fromUtf8(error.what());
        }
        other.join();
        QVERIFY2(got == kind, qPrintable(QString::number(got) + said));
        QVERIFY2(!said.contains(QStringLiteral("certificate")), qPrintable(said));
    }

    // Of another authority: it may be a machine that only calls itself so.
    void anotherAuthorityIsNotBelieved() {
        const QString other = m_folder.filePath(QStringLiteral("other.crt"));
        QCOMPARE(
            QProcess::execute(
                QStringLiteral("openssl"),
                {QStringLiteral("req"), QStringLiteral("-x509"), QStringLiteral("-newkey"),
                 QStringLiteral("rsa:2048"), QStringLiteral("-nodes"), QStringLiteral("-days"),
                 QStringLiteral("2"), QStringLiteral("-subj"), QStringLiteral("/CN=store.test"),
                 QStringLiteral("-addext"), QStringLiteral("subjectAltName=DNS:store.test"),
                 QStringLiteral("-keyout"), m_folder.filePath(QStringLiteral("other.key")),
                 QStringLiteral("-out"), other, QStringLiteral("-quiet")}),
            0);
        QCOMPARE(kindOf(farAddress("store.test", "sslrootcert=" + other.toStdString())),
                 Kind::Certificate);
        QCOMPARE(kindOf(farAddress("store.test", "sslrootcert=" + root())), std::nullopt);
    }

    // The password from where PostgreSQL's programs have it.
    void passwordsComeFromTheirPlaces() {
        QCOMPARE(server().sql("SELECT count(*) FROM pg_authid WHERE rolname = 'cora' AND "
                              "rolpassword LIKE 'SCRAM-SHA-256$%'"),
                 std::string("1"));
        const std::string address = farAddress("store.test", "sslrootcert=" + root());
        const QByteArray passwords = qgetenv("PGPASSFILE");
        qunsetenv("PGPASSFILE");
        QCOMPARE(kindOf(address), Kind::NoPassword);
        write(QStringLiteral(".pgpass"),
              "store.test:*:squad:cora:" + QByteArray::fromStdString(Postgres::passwordOf("cora")) +
                  "\n");
        QCOMPARE(kindOf(address), std::nullopt);
        QVERIFY(QFile::remove(m_folder.filePath(QStringLiteral(".pgpass"))));
        qputenv("PGPASSWORD", QByteArray::fromStdString(Postgres::passwordOf("cora")));
        QCOMPARE(kindOf(address), std::nullopt);
        QVERIFY(Connection::open(Address::read(address)).usedPassword());
        qputenv("PGPASSWORD", "sesame");
        QCOMPARE(kindOf(address), Kind::WrongPassword);
        qunsetenv("PGPASSWORD");
        qputenv("PGPASSFILE", passwords);
    }

    // What a command was at when the connection went nobody sends again: it is not said so.
    void aCommandThatWasCutIsAskedForAgain() {
        const store::Asked meeting{.place = "here"};
        const store::Asked command = Address::read(server().address("cora")).byHand().asked();
        QVERIFY(QString::fromUtf8(store::lostFailure(meeting, "cut").what())
                    .contains(QStringLiteral("at the next meeting")));
        QVERIFY(QString::fromUtf8(store::lostFailure(command, "cut").what())
                    .contains(QStringLiteral("ask for it once more")));
        server().sql("CREATE DATABASE slow", "postgres");
        store::initialise(Address::read(server().address("admin", "slow")), {});
        // held by somebody: ended while it waits
        Connection other = Connection::open(Address::read(server().address("admin", "slow")));
        other.run("BEGIN; SELECT slopebook.hold()");
        bool ended = false;
        const Progress end = [&](std::int64_t, std::int64_t) {
            if (!ended && server().sql("SELECT count(*) FROM pg_stat_activity WHERE datname = "
                                       "'slow' AND wait_event_type = 'Lock'") == "1") {
                ended = true;
                server().sql("SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname "
                             "= 'slow' AND wait_event_type = 'Lock'");
            }
            return true;
        };
        const std::string said = refusal([&] {
            store::initialise(Address::read(server().address("admin", "slow")), {"Judo"}, end);
        });
        QVERIFY2(ended && said.find("ask for it once more") != std::string::npos, said.c_str());
    }
};

QTEST_GUILESS_MAIN(TestStoreReach)
#include "tst_storereach.moc"

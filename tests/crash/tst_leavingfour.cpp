// SPDX-License-Identifier: GPL-3.0-or-later
// A log of the fourth layout brought to this program's while the program is killed, the disk fails
// or fills up, or another program opens it too: it is whole old or whole new, row by row, and opens
// either way. The step derives all that it makes, so that there is one new log that it can be.
#include "tests/crash/acts.h"
#include "tests/crash/killer.h"
#include "tests/log/olderlog.h"
#include "tests/log/otherthings.h"
#include "tests/support/disk.h"
#include "tests/support/longrun.h"

#include <cerrno>
#include <sys/resource.h>

using namespace slopebook;
using namespace slopebook::test;
namespace fs = std::filesystem;

namespace {
using Kind = LogError::Kind;

int versionOf(const fs::path& file) {
    return std::stoi(rowsOf(file, "PRAGMA user_version").at(0));
}
} // namespace

class TestLeavingFour : public QObject {
    Q_OBJECT

    Folder m_kept;
    std::vector<std::string> m_old, m_new;
    fs::path old() const { return m_kept.path("old.slopebook"); }
    std::string verdict(const fs::path& file, std::optional<int> expected = {}) const;

private Q_SLOTS:
    void initTestCase();
    void whileItIsKilled();
    void whileAnotherProgramDoesIt();
    void whileTheDiskFails();
    void whileTheDiskIsFull();
};

void TestLeavingFour::initTestCase() {
    {
        log::Log log = log::Log::create(m_kept.path("new.slopebook"));
        const Season s = fillSeason(log);
        addOtherThings(log, s);
    }
    writeAsOlder(m_kept.path("new.slopebook"), old(), 4);
    QCOMPARE(versionOf(old()), 4);
    m_old = allRows(old(), "");
    const Folder folder;
    fs::copy_file(old(), folder.path());
    VERIFY_SOUND(log::Log::open(folder.path()));
    m_new = allRows(folder.path(), "");
    QVERIFY(m_new != m_old);
}

/// Empty, or what is wrong with the log, or with a copy that was made of it before. expected: its
/// layout, where that is known.
std::string TestLeavingFour::verdict(const fs::path& file, std::optional<int> expected) const {
    const auto rows = allRows(file, "");
    const int version = versionOf(file);
    if (version != 4 && version != log::Log::newestVersion())
        return "layout " + std::to_string(version);
    if (expected && version != *expected)
        return "of layout " + std::to_string(version);
    if (rows != (version == 4 ? m_old : m_new))
        return "half done, and says it is of layout " + std::to_string(version);
    int copies = 0;
    if (const auto folder = log::backupFolder(file); fs::exists(folder))
        for (const auto& entry : fs::directory_iterator(folder))
            if (entry.path().filename().string()[0] != '.' &&
                entry.path().extension() == ".slopebook") {
                ++copies;
                if (versionOf(entry.path()) != 4 || allRows(entry.path(), "") != m_old)
                    return "the copy made before is not whole";
            }
    if (version != 4 && copies == 0)
        return "brought up to date, and no copy of what was";
    const log::Log log = log::Log::open(file);
    if (const auto findings = log.check(); !findings.empty())
        return english(findings.front());
    return allRows(file, "") == m_new ? "" : "opened again it is another log";
}

void TestLeavingFour::whileItIsKilled() {
    Killer killer(20260322);
    const int all = rounds("SLOPEBOOK_KILLS", 12, 1000);
    int done = 0;
    for (int round = 0; round < all; ++round) {
        const Folder folder;
        fs::copy_file(old(), folder.path());
        killer.kill([&](const auto& tell) {
            log::Log::open(folder.path());
            tell(1);
        });
        if (!killer.told().empty())
            QCOMPARE(versionOf(folder.path()), log::Log::newestVersion());
        done += versionOf(folder.path()) == 4 ? 0 : 1;
        const std::string wrong = verdict(folder.path());
        QVERIFY2(wrong.empty(), wrong.c_str());
    }
    qInfo("%d kills in %d rounds: %d were brought up to date, the others as before",
          killer.killed(), all, done);
    QVERIFY(killer.killed() > all / 4);
}

// Both get the log, one of them having waited for the other.
void TestLeavingFour::whileAnotherProgramDoesIt() {
    const int all = rounds("SLOPEBOOK_RACES", 4, 300);
    for (int round = 0; round < all; ++round) {
        const Folder folder;
        fs::copy_file(old(), folder.path());
        std::vector<pid_t> children;
        for (int i = 0; i < 3; ++i) {
            const pid_t child = ::fork();
            if (child == 0) {
                int result = 1;
                try {
                    const log::Log log = log::Log::open(folder.path());
                    result = log.access() == log::Access::ReadWrite && log.check().empty() ? 0 : 2;
                } catch (const LogError& error) {
                    result = 10 + static_cast<int>(error.kind());
                } catch (const std::exception&) {
                    result = 3;
                }
                ::_exit(result);
            }
            children.push_back(child);
        }
        for (const pid_t child : children) {
            int status = 0;
            ::waitpid(child, &status, 0);
            QVERIFY(WIFEXITED(status));
            QCOMPARE(WEXITSTATUS(status), 0);
        }
        const std::string wrong = verdict(folder.path(), log::Log::newestVersion());
        QVERIFY2(wrong.empty(), wrong.c_str());
    }
}

void TestLeavingFour::whileTheDiskFails() {
    int faults = 0;
    int refused = 0;
    for (std::size_t call = 0; call < callNames.size(); ++call)
        for (const int error : {EIO, ENOSPC}) {
            const bool forRoom =
                static_cast<Call>(call) == Call::Write || static_cast<Call>(call) == Call::Folder;
            if (error == ENOSPC && !forRoom)
                continue;
            const bool reading = static_cast<Call>(call) == Call::Read;
            const int few = rounds("", reading ? 1 : 2, 1'000'000);
            const int step = reading ? 61 : 23;
            for (const bool forEver : {false, true})
                for (int nth = 1;; nth += nth < few ? 1 : step) {
                    const Folder folder;
                    fs::copy_file(old(), folder.path());
                    std::optional<LogError> told;
                    bool met = false;
                    {
                        Disk disk(folder.path().parent_path());
                        disk.fail({static_cast<Call>(call), nth, error, forEver});
                        try {
                            log::Log::open(folder.path());
                        } catch (const LogError& refusal) {
                            told = refusal;
                        }
                        met = disk.failed();
                        disk.heal();
                    }
                    if (!met)
                        break;
                    ++faults;
                    refused += told ? 1 : 0;
                    const QString where = QStringLiteral("%1 number %2: ")
                                              .arg(QLatin1String(callNames[call]))
                                              .arg(nth);
                    const std::string wrong =
                        verdict(folder.path(),
                                told ? std::nullopt : std::optional(log::Log::newestVersion()));
                    QVERIFY2(wrong.empty(), qPrintable(where + QString::fromStdString(wrong)));
                    if (told)
                        QVERIFY2(error != ENOSPC || told->kind() == Kind::Full,
                                 qPrintable(where + QLatin1String(told->what())));
                }
        }
    qInfo("%d failing calls: %d refused; the log was whole each time", faults, refused);
    QVERIFY(refused > 0 && refused < faults + 1);
}

// Room for so many bytes of each file, from none to all that it takes.
void TestLeavingFour::whileTheDiskIsFull() {
    const auto whole = static_cast<rlim_t>(fs::file_size(old()));
    int refused = 0;
    int done = 0;
    const auto step = static_cast<rlim_t>(rounds("", 48, 4)) * 1024;
    for (rlim_t room = 0; room <= 4 * whole; room += step) {
        const Folder folder;
        fs::copy_file(old(), folder.path());
        const int result = inChild([&] {
            ::signal(SIGXFSZ, SIG_IGN);
            rlimit limit{};
            ::getrlimit(RLIMIT_FSIZE, &limit);
            limit.rlim_cur = room;
            ::setrlimit(RLIMIT_FSIZE, &limit);
            const auto told = errorOf([&] { log::Log::open(folder.path()); });
            return !told ? 0 : *told == Kind::Full ? 1 : 2;
        });
        QVERIFY2(result == 0 || result == 1, qPrintable(QString::number(result)));
        (result == 0 ? done : refused) += 1;
        const std::string wrong =
            verdict(folder.path(), result == 0 ? log::Log::newestVersion() : 4);
        QVERIFY2(wrong.empty(), wrong.c_str());
    }
    qInfo("full at %d sizes, room at %d", refused, done);
    QVERIFY(refused > 0 && done > 0);
}

QTEST_GUILESS_MAIN(TestLeavingFour)
#include "tst_leavingfour.moc"

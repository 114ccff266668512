// SPDX-License-Identifier: GPL-3.0-or-later
// What is read of a log while another program writes: of one moment, and without keeping the other
// from writing.
#include "core/exchange/tidyexport.h"
#include "core/exchange/tidyimport.h"
#include "core/log/snapshot.h"
#include "tests/exchange/csvfiles.h"
#include "tests/log/child.h"
#include "tests/support/bytes.h"
#include "tests/support/longrun.h"

#include <QTest>

#include <algorithm>
#include <atomic>
#include <thread>

using namespace slopebook;
using namespace slopebook::exchange;
using namespace slopebook::test;
using slopebook::tests::CsvFiles;

namespace {
namespace fs = std::filesystem;
constexpr int repsAtOnce = 72;

/// One session of 24 sets of 3 reps, under a device of its own.
std::string tidy(int number) {
    std::string text = "date,athlete,lift,device,set,load_kg,rep,velocity\n";
    const Date date{std::chrono::sys_days{std::chrono::year{2020} / 1 / 1} +
                    std::chrono::days{number}};
    for (int set = 1; set <= 24; ++set)
        for (int rep = 1; rep <= 3; ++rep)
            text += isoDate(date) + ",Lane " + std::to_string(number % 3) + ",Bench pull,Encoder " +
                    std::to_string(number) + "," + std::to_string(set) + "," +
                    std::to_string(20 + set) + "," + std::to_string(rep) + ",1.0" +
                    std::to_string(rep) + "\n";
    return text;
}

long lines(const fs::path& file) {
    const std::string text = readBytes(file);
    return std::ranges::count(text, '\n');
}
} // namespace

class TestSnapshot : public QObject {
    Q_OBJECT

    // One import of each number, one after the other.
    static void import(const CsvFiles& files, int first, int last) {
        for (int i = first; i < last; ++i) {
            auto log = log::Log::open(files.path("log.slopebook"));
            importTidy(log, {files.path("in" + std::to_string(i) + ".csv")}, {});
        }
    }
    static void prepare(const CsvFiles& files, int count) {
        files.newLog("log.slopebook");
        for (int i = 0; i < count; ++i)
            files.write("in" + std::to_string(i) + ".csv", tidy(i));
        import(files, 0, 2);
    }

    /// raced: whether more than one export saw the log at work.
    static void race(int imports, bool& raced) {
        const CsvFiles files;
        prepare(files, imports);
        const pid_t importer = ::fork();
        if (importer == 0) {
            try {
                import(files, 2, imports);
            } catch (const std::exception&) {
                ::_exit(1);
            }
            ::_exit(0);
        }
        int exports = 0;
        long seen = 0;
        bool grew = false;
        int status = 0;
        while (::waitpid(importer, &status, WNOHANG) == 0) {
            const auto out = files.path("out" + std::to_string(exports++));
            exportTables(log::Log::open(files.path("log.slopebook"), log::Access::ReadOnly), out);
            const long reps = lines(out / "reps.csv") - 1;
            QCOMPARE(reps % repsAtOnce, 0);
            QCOMPARE((lines(out / "sessions.csv") - 1) * repsAtOnce, reps);
            QVERIFY(lines(out / "devices.csv") - 1 == reps / repsAtOnce);
            grew = grew || (seen > 0 && reps > seen);
            seen = reps;
        }
        QVERIFY2(WIFEXITED(status) && WEXITSTATUS(status) == 0,
                 "the importer was kept from writing");
        qInfo("%d exports beside %d imports", exports, imports - 2);
        raced = exports > 2 && grew;
    }

private Q_SLOTS:
    // Another program imports whenever the export tells how far it is: what is written is what was
    // there when it began.
    void anExportIsOfOneMoment() {
        const CsvFiles files;
        prepare(files, 40);
        const auto log = log::Log::open(files.path("log.slopebook"), log::Access::ReadOnly);
        const auto before = exportTables(log, files.path("before"));
        int next = 2;
        exportTables(log, files.path("during"), [&](auto, auto) {
            if (next < 8)
                import(files, next, next + 1);
            ++next;
            return true;
        });
        QVERIFY(next > 3);
        for (const auto& file : before)
            if (file.extension() == ".csv")
                QVERIFY2(readBytes(file) == readBytes(files.path("during") / file.filename()),
                         file.c_str());
        QVERIFY(lines(exportTables(log, files.path("after")).front()) > 0);
    }

    void aRacingImporterTearsNothing() {
        int imports = rounds("SLOPEBOOK_RACES", 40, 1500);
        bool raced = false;
        for (int tries = 0; tries < 4 && !raced; ++tries, imports *= 4) { // a quick machine is done
            race(imports, raced);
            if (QTest::currentTestFailed())
                return;
        }
        QVERIFY(raced);
    }

    // While a question is asked nobody commits, and who waits goes on right after it.
    void aMomentLasts() {
        const CsvFiles files;
        prepare(files, 4);
        const auto log = log::Log::open(files.path("log.slopebook"), log::Access::ReadOnly);
        std::atomic<bool> written = false;
        std::thread writer;
        {
            const log::Moment moment(log);
            const auto before = log.devices().size();
            writer = std::thread([&] {
                import(files, 2, 3);
                written = true;
            });
            QTest::qWait(100);
            const log::Moment inner(log);
            QVERIFY(!written);
            QCOMPARE(log.devices().size(), before);
        }
        writer.join();
        QVERIFY(written);
        QCOMPARE(log.devices().size(), std::size_t(3));
    }

    // A page that writes while it is shown is not refused: its moment ends there.
    void aWriteEndsTheMoment() {
        const CsvFiles files;
        auto log = files.newLog();
        {
            const log::Moment moment(log);
            log.add(Athlete{.name = "Cox"});
            QCOMPARE(log.athletes().size(), std::size_t(1));
        }
        const log::Moment again(log);
        QCOMPARE(log.athletes().size(), std::size_t(1));
    }

    // A large log is asked as a copy, which leaves no file, speaks under the log's name, and keeps
    // nobody waiting.
    void aLargeLogIsAskedAsACopy() {
        const CsvFiles files;
        prepare(files, 4);
        const auto own = files.path("tmp");
        fs::create_directory(own);
        qputenv("TMPDIR", QByteArray::fromStdString(own.string()));
        {
            const log::Snapshot asked(files.path("log.slopebook"), log::Access::ReadOnly, 0);
            QVERIFY(fs::is_empty(own));
            QCOMPARE(asked.log().file(), files.path("log.slopebook"));
            const auto before = asked.log().devices();
            import(files, 2, 4); // at once
            QVERIFY(asked.log().devices() == before);
            QVERIFY(asked.log().check().empty());
        }
        // Where the copy has no room the question is asked all the same.
        qputenv("TMPDIR", "/nonexistent");
        const log::Snapshot held(files.path("log.slopebook"), log::Access::ReadOnly, 0);
        QCOMPARE(held.log().devices().size(), std::size_t(4));
        qunsetenv("TMPDIR");
    }

    // A large log is not copied for a question while which nobody writes, and who writes does not
    // wait for it: then it is asked again, of one moment.
    void aQuestionIsAskedAgainWhereSomethingWasWritten() {
        const CsvFiles files;
        prepare(files, 5);
        const auto file = files.path("log.slopebook");
        int next = 2;
        // Of a question in two reads: what both saw, and how often it was asked.
        const auto ask = [&](std::uintmax_t heldUpTo, bool written, bool refused) {
            std::vector<std::pair<std::size_t, std::size_t>> seen;
            log::askOfOneMoment(
                file, log::Access::ReadOnly,
                [&](const log::Log& log) {
                    const auto before = log.devices().size();
                    if (written && seen.empty()) {
                        import(files, next, next + 1); // at once
                        ++next;
                    }
                    seen.emplace_back(before, log.devices().size());
                    if (refused && seen.size() == 1)
                        throw LogError(LogError::Kind::Conflict, asIs("gone"));
                },
                heldUpTo);
            return seen;
        };
        using Seen = std::vector<std::pair<std::size_t, std::size_t>>;
        QCOMPARE(ask(0, false, false), (Seen{{2, 2}}));
        QCOMPARE(ask(0, true, false), (Seen{{2, 3}, {3, 3}}));
        QCOMPARE(ask(0, true, true), (Seen{{3, 4}, {4, 4}}));
        QVERIFY_THROWS_EXCEPTION(LogError, ask(0, false, true));
        QCOMPARE(ask(log::heldAtMost, false, false), (Seen{{4, 4}}));
    }
};

QTEST_GUILESS_MAIN(TestSnapshot)
#include "tst_snapshot.moc"

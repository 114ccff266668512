// SPDX-License-Identifier: GPL-3.0-or-later
// Rows that go into the log as they are read, session by session, say the same as those that are
// all read first: whatever their order, however few are held at a time.
#include "core/exchange/proposal.h"
#include "core/exchange/shapedimport.h"
#include "core/exchange/sortedrows.h"
#include "core/log/newsessions.h"
#include "core/questions/duequestions.h"
#include "tests/exchange/csvfiles.h"
#include "tests/exchange/toldlog.h"

#include <QDir>
#include <QTemporaryDir>
#include <QTest>

#include <algorithm>
#include <csignal>
#include <limits>
#include <map>
#include <random>
#include <sys/resource.h>
#include <tuple>

using namespace slopebook;
using namespace slopebook::exchange;
using namespace slopebook::literals;
using tests::CsvFiles;

namespace {

const std::string header = "date,athlete,lift,session,set,load_kg,rep,velocity,device,block,"
                           "body_mass_kg,repeat_of,outcome,reason,velocity_kind,set_note\n";

// Sessions of a squad, with all that a row may say; some repeat another, some lifts failed.
std::vector<std::string> rowsOf(std::mt19937& dice) {
    const auto below = [&](int most) { return static_cast<int>(dice() % unsigned(most)); };
    std::vector<std::string> rows;
    const int days = 2 + below(8);
    for (int day = 0; day < days; ++day)
        for (int athlete = 0; athlete < 3; ++athlete) {
            const std::string date =
                isoDate(Date{std::chrono::sys_days{std::chrono::year{2026} / 1 / 5} +
                             std::chrono::days{7 * day}});
            const std::string mass = below(2) ? std::to_string(70 + athlete) : "";
            const std::string repeat = day > 0 && below(4) == 0 ? "2026-01-05" : "";
            const int sets = 1 + below(4);
            for (int set = 1; set <= sets; ++set)
                for (int lift = 0; lift < 2; ++lift) {
                    const std::string head = date + ",Lane " + std::to_string(athlete + 1) +
                                             ",Lift " + std::to_string(lift) + ",1,";
                    const std::string tail = ",Encoder,Winter," + mass + "," + repeat + ",";
                    const std::string load = std::to_string(30 + 10 * set);
                    if (below(12) == 0) {
                        rows.push_back(head + std::to_string(set) + "," + load + ",," + tail +
                                       "not lifted,grip,,");
                        continue;
                    }
                    if (below(30) == 0) {
                        rows.push_back(head + ",95,," + tail + "not possible,sore,,");
                        continue;
                    }
                    const int reps = 1 + below(3);
                    for (int rep = 1; rep <= reps; ++rep)
                        rows.push_back(head + std::to_string(set) + "," + load + "," +
                                       std::to_string(rep) + ",0." +
                                       std::to_string(90 - 10 * set + rep) + tail + ",," +
                                       (lift ? "mean" : "") + ",");
                }
        }
    return rows;
}

std::string textOf(const std::vector<std::string>& rows) {
    std::string text = header;
    for (const std::string& row : rows)
        text += row + "\n";
    return text;
}

} // namespace

class TestAsRead : public QObject {
    Q_OBJECT

    CsvFiles m_files;
    int m_logs = 0;

    struct Came {
        std::string told;
        ImportReport report;
        std::string refused;
    };

    Came import(const std::string& text, std::size_t held, const std::string& before = {}) {
        log::Log log = m_files.newLog(std::to_string(++m_logs) + ".slopebook");
        if (!before.empty())
            importTidy(log, {m_files.write("before.csv", before)}, {});
        Came came;
        try {
            came.report = importTidy(log, {m_files.write("reps.csv", text)}, {.setsHeld = held});
        } catch (const BadInput& bad) {
            came.refused = bad.what();
        }
        std::ranges::sort(came.report.filledIn); // a block is told of again when it grows
        came.told = tests::tell(log);
        if (const auto wrong = log.check(); !wrong.empty())
            came.told += "\nUNSOUND: " + english(wrong[0]);
        return came;
    }

    void same(const std::string& text, const std::string& before = {}) {
        const Came plain = import(text, 0, before);
        QVERIFY(plain.told.find("UNSOUND") == std::string::npos);
        for (const std::size_t held : {std::size_t{1}, std::size_t{5}, std::size_t{100'000}}) {
            const Came came = import(text, held, before);
            QCOMPARE(came.told, plain.told);
            QCOMPARE(came.refused, plain.refused);
            QVERIFY(came.report == plain.report);
        }
    }

private Q_SLOTS:
    void inOrderAndOutOfIt() {
        const unsigned seeds = qEnvironmentVariableIsSet("SLOPEBOOK_LONG") ? 60 : 1;
        for (unsigned seed = 1; seed <= seeds; ++seed) {
            std::mt19937 dice(seed);
            std::vector<std::string> rows = rowsOf(dice);
            same(textOf(rows));
            std::vector<std::string> some(rows.begin(),
                                          rows.begin() + std::ptrdiff_t(rows.size() / 2));
            same(textOf(rows), textOf(some)); // half of it is there
            std::ranges::shuffle(rows, dice);
            same(textOf(rows));
        }
    }

    // What is refused is told with its line, all of it, and nothing is written.
    void refusedIsRefused() {
        std::mt19937 dice(3);
        std::vector<std::string> rows = rowsOf(dice);
        rows.push_back("2026-02-30,Lane 1,Lift 0,1,1,40,1,0.9,,,,,,,,");
        rows.push_back("2026-03-02,Lane 1,Lift 0,1,1,40,1,99,,,,,,,,");
        same(textOf(rows));
        const Came came = import(textOf(rows), 1);
        QVERIFY(came.refused.find("2026-02-30") != std::string::npos);
        QVERIFY(came.told.find("Lane") == std::string::npos);
    }

    // Of a session that the log has, a set of which stands in two places far apart, and a note that
    // is not the log's: nothing is lost, and what stays is told.
    void aKnownSessionInTwoPlaces() {
        const auto row = [](const char* date, int lane, int set, int rep, const char* note) {
            return std::string(date) + ",Lane " + std::to_string(lane) + ",Lift 0,1," +
                   std::to_string(set) + ",40," + std::to_string(rep) + ",0.8,,,,,,,," + note +
                   "\n";
        };
        const std::string before = header + row("2026-01-05", 1, 1, 1, "from the floor");
        std::string filler;
        for (int lane = 2; lane < 20; ++lane)
            filler += row("2026-01-06", lane, 1, 1, "");
        same(header + row("2026-01-05", 1, 9, 1, "") + filler + row("2026-01-05", 1, 9, 2, ""),
             before);
        same(header + row("2026-01-05", 1, 9, 1, "a") + filler + row("2026-01-05", 1, 8, 1, "b"),
             before);
        const std::string other = header + row("2026-01-05", 1, 1, 1, "another note") + filler;
        same(other, before);
        QVERIFY(!import(other, 1, before).report.flagged.empty());
    }

    // What is kept beside a log follows an import into it.
    void whatIsKeptFollows() {
        log::Log log = m_files.newLog("kept.slopebook");
        const auto due = [](const log::Log& of) {
            std::vector<std::pair<std::string, std::optional<Date>>> all;
            for (const auto& row :
                 questions::squadDueOn(of, Date{std::chrono::year{2026} / 3 / 10}, {}, 1).rows)
                all.emplace_back(row.name + row.measure, row.last);
            return all;
        };
        const std::string sessions[] = {"2026-01-05,Lane 1,Lift 0,1,1,40,1,0.9,,,,,,,,\n",
                                        "2026-02-05,Lane 1,Lift 0,1,1,40,1,0.9,,,,,,,,\n",
                                        "2026-03-05,Lane 2,Lift 0,1,1,40,1,0.9,,,,,,,,\n"};
        for (const std::string& one : sessions) {
            importTidy(log, {m_files.write("one.csv", header + one)}, {});
            QVERIFY(due(log) == due(log::Log::open(log.file())));
        }
        QVERIFY(!due(log).empty());
    }

    // A repeat of what stands below it, and one of what is nowhere.
    void repeatsOfLaterOnes() {
        const std::string first = "2026-01-05,Lane 1,Lift 0,1,1,40,1,0.9,,,,2026-01-12,,,,\n";
        const std::string later = "2026-01-12,Lane 1,Lift 0,1,1,40,1,0.9,,,,,,,,\n";
        const std::string filler = "2026-01-06,Lane 2,Lift 0,1,1,40,1,0.9,,,,,,,,\n"
                                   "2026-01-07,Lane 2,Lift 0,1,1,40,1,0.9,,,,,,,,\n"
                                   "2026-01-08,Lane 2,Lift 0,1,1,40,1,0.9,,,,,,,,\n";
        same(header + first + filler + later);
        same(header + first + filler);
    }

    // The kind of a lift that is said long after its first row.
    void aKindSaidLate() {
        std::string text = header;
        for (int i = 10; i < 30; ++i)
            text += "2026-01-" + std::to_string(i) + ",Lane 1,Lift 0,1,1,40,1,0.9,,,,,,,,\n";
        same(text + "2026-02-01,Lane 1,Lift 0,1,1,40,1,0.9,,,,,,,peak,\n");
        same(text + "2026-02-01,Lane 1,Lift 0,1,1,40,1,0.9,,,,,,,mean,\n");
    }

    // Dry runs write nothing, and say what would be.
    void dryRunsSayTheSame() {
        std::mt19937 dice(5);
        const std::string text = textOf(rowsOf(dice));
        log::Log log = m_files.newLog(std::to_string(++m_logs) + ".slopebook");
        const std::string before = tests::tell(log);
        const auto file = m_files.write("dry.csv", text);
        const auto held = importTidy(log, {file}, {.setsHeld = 1, .dryRun = true});
        QVERIFY(held == importTidy(log, {file}, {.setsHeld = 0, .dryRun = true}));
        QVERIFY(held.setsAdded > 0);
        QCOMPARE(tests::tell(log), before);
        QVERIFY(log.check().empty());
    }

    // Who only looks keeps nobody from writing while the file is read, plain or under a shape.
    void aDryRunHoldsNoLock() {
        std::string rows = "date,athlete,lift,set,load_kg,rep,velocity\n";
        for (int day = 10; day < 30; ++day)
            rows += "2026-01-" + std::to_string(day) + ",Lane 1,Row,1,40,1,0.9\n";
        const auto file = m_files.write("look.csv", rows);
        const Source source{.file = file, .text = {}};
        const FileFacts facts = lookAt(source);
        for (const bool shaped : {false, true}) {
            log::Log log = m_files.newLog(std::to_string(++m_logs) + ".slopebook");
            log::Log other = log::Log::open(log.file());
            int written = 0;
            ImportSettings settings{.setsHeld = 1, .dryRun = true};
            settings.progress = [&](std::int64_t, std::int64_t) {
                if (written == 0) // it is read; what is then tried is taken back at once
                    other.add(Athlete{.name = "Other " + std::to_string(++written), .note = {}});
                return true;
            };
            int found = 0;
            if (shaped)
                found = importShaped(log, source, propose(facts), facts.headings(), settings)
                            .report.setsAdded;
            else
                found = importTidy(log, {file}, settings).setsAdded;
            QVERIFY(found > 0);
            QVERIFY(written > 0);
            QCOMPARE(log.athletes().size(), std::size_t(written));
            QVERIFY(log.check().empty());
        }
    }

    // A file out of order that is too long to be held in memory: put aside in runs, from many files
    // as from one, it says the same.
    void rowsPutAsideComeBackInOrder() {
        std::mt19937 dice(11);
        for (const std::size_t held : {std::size_t{1}, std::size_t{400}, std::size_t{1} << 20}) {
            SortedRows sorted(held);
            std::map<std::tuple<int, int, int>, std::string> wanted;
            for (int i = 0; i < 3000; ++i) {
                const int athlete = int(dice() % 7), day = int(dice() % 20),
                          ordinal = int(dice() % 2);
                const std::string row = std::to_string(i) + std::string(dice() % 40, 'x') + ";";
                wanted[{athlete, day, ordinal}] += row;
                sorted.add({.athlete = athlete,
                            .date = Date{std::chrono::sys_days{std::chrono::year{1999} / 12 / 25} +
                                         std::chrono::days{day}},
                            .ordinal = ordinal},
                           row);
            }
            sorted.add({.athlete = 8}, {}); // a row that says nothing
            QCOMPARE(sorted.rows(), std::int64_t{3001});
            std::string all, came;
            for (const auto& [session, rows] : wanted)
                all += rows;
            int count = 0;
            sorted.handBack([&](std::string_view row) {
                ++count;
                came += row;
            });
            QCOMPARE(count, 3001);
            QVERIFY(came == all);
        }
    }

    // The place for passing files is the one that TMPDIR names, and nothing stays there; where it
    // has no room, or is none, that is said, and not taken for rows out of order.
    void whereRowsAreSortedIsSaid() {
        const StagedDay session{.athlete = 1, .date = Date{std::chrono::year{2026} / 3 / 14}};
        const auto sort = [&](std::size_t size) -> std::optional<LogError::Kind> {
            try {
                SortedRows sorted(1);
                for (int i = 0; i < 3; ++i)
                    sorted.add(session, std::string(size, 'x'));
                std::int64_t rows = 0;
                sorted.handBack([&](std::string_view row) { rows += row.size() == size; });
                if (rows != 3)
                    return LogError::Kind::Damaged;
            } catch (const LogError& error) {
                return error.kind();
            }
            return std::nullopt;
        };
        const QByteArray before = qgetenv("TMPDIR");
        QTemporaryDir room;
        qputenv("TMPDIR", room.path().toUtf8());
        QCOMPARE(sort(100), std::nullopt);
        QVERIFY(QDir(room.path()).isEmpty(QDir::AllEntries | QDir::NoDotAndDotDot | QDir::Hidden));
        qputenv("TMPDIR", room.filePath(QStringLiteral("none")).toUtf8());
        QVERIFY(sort(100).has_value());
        QCOMPARE(sort(0), sort(100));  // as long as there is more than one
        std::vector<std::string> rows; // more than are held in memory
        for (int day = 0; day < 700; ++day)
            for (int set = 1; set <= 200; ++set)
                rows.push_back(isoDate(Date{std::chrono::sys_days{std::chrono::year{2020} / 1 / 5} +
                                            std::chrono::days{day}}) +
                               ",Lane 1,Lift 1,1," + std::to_string(set) + ",60,1,0.5,,,,,,,,\n");
        std::mt19937 dice(17);
        std::ranges::shuffle(rows, dice);
        const auto file = m_files.write("apart.csv", textOf(rows));
        log::Log log = m_files.newLog(std::to_string(++m_logs) + ".slopebook");
        try {
            importTidy(log, {file}, {.setsHeld = 1});
            QFAIL("it had no room");
        } catch (const LogError& error) {
            QVERIFY2(QString::fromUtf8(error.what()).contains(QStringLiteral("slopebook-sort")),
                     error.what());
        }
        QVERIFY(log.athletes().empty());
        if (before.isNull())
            qunsetenv("TMPDIR");
        else
            qputenv("TMPDIR", before);
    }

    // Of a disk that is full: no file may grow beyond some bytes, as a quota has it.
    void aFullPlaceForSortingIsSaid() {
        rlimit was{};
        QCOMPARE(::getrlimit(RLIMIT_FSIZE, &was), 0);
        const auto handler = std::signal(SIGXFSZ, SIG_IGN);
        const rlimit small{.rlim_cur = 1 << 16, .rlim_max = was.rlim_max};
        QCOMPARE(::setrlimit(RLIMIT_FSIZE, &small), 0);
        std::optional<LogError::Kind> kind;
        try {
            SortedRows sorted(1);
            for (int i = 0; i < 4; ++i)
                sorted.add({.athlete = i}, std::string(60'000, 'x'));
        } catch (const LogError& error) {
            kind = error.kind();
        }
        ::setrlimit(RLIMIT_FSIZE, &was);
        std::signal(SIGXFSZ, handler);
        QVERIFY(kind == LogError::Kind::Full);
    }

    // Overlapping files, each out of order.
    void severalFilesOutOfOrder() {
        std::mt19937 dice(13);
        std::vector<std::string> rows = rowsOf(dice);
        const auto part = [&](std::size_t from, std::size_t to) {
            std::vector<std::string> some(rows.begin() + std::ptrdiff_t(from),
                                          rows.begin() + std::ptrdiff_t(to));
            std::ranges::shuffle(some, dice);
            return textOf(some);
        };
        const auto one = m_files.write("one.csv", part(0, rows.size() * 2 / 3));
        const auto two = m_files.write("two.csv", part(rows.size() / 3, rows.size()));
        std::vector<std::string> told;
        for (const std::size_t held : {std::size_t{0}, std::size_t{1}}) {
            log::Log log = m_files.newLog(std::to_string(++m_logs) + ".slopebook");
            importTidy(log, {one, two}, {.setsHeld = held});
            told.push_back(tests::tell(log));
            QVERIFY(log.check().empty());
        }
        QCOMPARE(told[1], told[0]);
    }

    // What SQLite is not asked of each row must be refused before.
    void whatTheTablesForbidIsRefused_data() {
        QTest::addColumn<int>("what");
        int what = 0;
        for (const char* name :
             {"a set 0", "a speed of 0", "a speed of 10", "no number", "a load below 0",
              "too heavy a load", "reps of what was not lifted", "a reason without cause",
              "an RPE of 11", "a lift that is not there", "no such athlete", "a set twice"})
            QTest::newRow(name) << what++;
    }
    void whatTheTablesForbidIsRefused() {
        QFETCH(int, what);
        log::Log log = m_files.newLog(std::to_string(++m_logs) + ".slopebook");
        const AthleteId athlete = log.add(Athlete{.name = "Lane 1", .note = {}});
        Lift lift;
        lift.name = "Row";
        const LiftId row = log.add(lift);
        const std::string before = tests::tell(log);
        log::NewSession made;
        made.head.athlete = athlete;
        made.head.date = Date{std::chrono::year{2026} / 3 / 14};
        made.sets = {
            {.lift = row, .ordinal = 1, .set = {.load = 40_kg, .reps = {{.velocity = 1.0}}}}};
        log::NewSet& set = made.sets[0];
        double& speed = set.set.reps[0].velocity;
        switch (what) {
        case 0:
            set.ordinal = 0;
            break;
        case 1:
            speed = 0;
            break;
        case 2:
            speed = 10;
            break;
        case 3:
            speed = std::numeric_limits<double>::quiet_NaN();
            break;
        case 4:
            set.set.load = Mass{-1};
            break;
        case 5:
            set.set.load = Mass{2'000'001};
            break;
        case 6:
            set.set.outcome = Outcome::NotLifted;
            break;
        case 7:
            set.set.reason = "grip";
            break;
        case 8:
            set.set.effort = Effort{22};
            break;
        case 9:
            set.lift = LiftId{77};
            break;
        case 10:
            made.head.athlete = AthleteId{77};
            break;
        default:
            made.sets.push_back(set);
            break;
        }
        QVERIFY_THROWS_EXCEPTION(std::exception, log::addSessions(log, {made}));
        QCOMPARE(tests::tell(log), before);
        QVERIFY(log.check().empty());
        // And the rules hold again for whoever writes next.
        QVERIFY_THROWS_EXCEPTION(std::exception, log.add(SessionId{99}, row, {.load = 40_kg}));
        made.sets = {
            {.lift = row, .ordinal = 1, .set = {.load = 40_kg, .reps = {{.velocity = 1.0}}}}};
        made.head.athlete = athlete;
        log::addSessions(log, {made});
        QVERIFY(log.check().empty());
        QVERIFY_THROWS_EXCEPTION(std::exception, log.remove(row)); // its sets refer to it
    }

    // A cache of a few pages: what is taken back leaves nothing, what is committed is whole.
    void aCacheThatSpills() {
        const auto file = m_files.path("spilled.slopebook");
        log::Log log = log::Log::create(file);
        const AthleteId athlete = log.add(Athlete{.name = "Lane 1", .note = {}});
        Lift lift;
        lift.name = "Row";
        const LiftId row = log.add(lift);
        const auto write = [&](int first) {
            for (int batch = 0; batch < 20; ++batch) {
                std::vector<log::NewSession> sessions;
                for (int i = 0; i < 20; ++i) {
                    log::NewSession& made = sessions.emplace_back();
                    made.head.athlete = athlete;
                    made.head.date = Date{std::chrono::sys_days{std::chrono::year{2000} / 1 / 1} +
                                          std::chrono::days{first + 20 * batch + i}};
                    for (int set = 1; set <= 5; ++set)
                        made.sets.push_back(
                            {.lift = row,
                             .ordinal = set,
                             .set = {.load = 40_kg,
                                     .reps = {{.velocity = 1.0}, {.velocity = 0.9}}}});
                }
                log::addSessions(log, std::move(sessions));
            }
        };
        const log::BoundedCache bounded(log, 20);
        const std::string before = tests::tell(log);
        struct Back {};
        QVERIFY_THROWS_EXCEPTION(Back, log.together([&] {
            write(0);
            throw Back{};
        }));
        QCOMPARE(tests::tell(log), before);
        QVERIFY(log.check().empty());
        log.together([&] { write(500); });
        QVERIFY(log.check().empty());
        QCOMPARE(log.sessions(athlete).size(), std::size_t(400));
        // A day that is there already is refused, and nothing of the others is written.
        QVERIFY_THROWS_EXCEPTION(LogError, write(499));
        QCOMPARE(log.sessions(athlete).size(), std::size_t(400));
    }
};

QTEST_APPLESS_MAIN(TestAsRead)
#include "tst_asread.moc"

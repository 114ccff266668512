// SPDX-License-Identifier: GPL-3.0-or-later
// Each system call that an act makes fails once, or from then on for ever: what was acknowledged is
// there, nothing is half done, the log is sound, and the coach is told the right thing.
#include "tests/crash/acts.h"
#include "tests/log/rawfile.h"
#include "tests/support/disk.h"
#include "tests/support/longrun.h"

#include <QSignalSpy>

#include <cerrno>
#include <optional>
#include <system_error>

using namespace slopebook;
using namespace slopebook::test;
using ui::Logbook;

namespace {
namespace fs = std::filesystem;
using Kind = LogError::Kind;

/// What an act came to.
struct Ended {
    std::optional<Kind> error;
    std::string words;
    bool failed() const { return error || !words.empty(); }
};

struct Act {
    const char* name;
    /// Works on the log at that path; the Logbook is open unless the act opens the log itself.
    std::function<void(Logbook*, const Season&, const fs::path&)> work;
    /// What has to be done before, with a healthy disk.
    std::function<void(Logbook&, const Season&)> before = {};
    bool opensItself = false;
};

const fs::path& csvFile() {
    static const Folder folder;
    static const fs::path file = [] {
        const fs::path path = folder.path("rows.csv");
        writeCsv(path, day(2026, 5, 1), 12);
        return path;
    }();
    return file;
}

std::vector<Act> acts() {
    const auto first = [](Logbook& book, const Season& s) {
        return book.log().sets(s.winter, s.pull).front().id;
    };
    return {
        {"enter a set",
         [](Logbook* book, const Season& s, const fs::path&) {
             book->addSets(s.winter, s.pull, {ladderSet(75, {0.7, 0.69})});
         }},
        {"enter a ladder",
         [](Logbook* book, const Season& s, const fs::path&) {
             book->addSets(s.winter, s.pull,
                           std::vector<Set>(30, ladderSet(75, {0.7, 0.69, 0.68})));
         }},
        {"edit a set",
         [first](Logbook* book, const Season& s, const fs::path&) {
             book->changeSet(first(*book, s), ladderSet(45, {1.0}));
         }},
        {"remove a session",
         [](Logbook* book, const Season& s, const fs::path&) { book->removeSession(s.winter); }},
        {"undo", [](Logbook* book, const Season&, const fs::path&) { book->undoStack()->undo(); },
         [](Logbook& book, const Season& s) { book.removeSession(s.winter); }},
        {"redo", [](Logbook* book, const Season&, const fs::path&) { book->undoStack()->redo(); },
         [](Logbook& book, const Season& s) {
             book.removeSession(s.winter);
             book.undoStack()->undo();
         }},
        {"import",
         [](Logbook* book, const Season&, const fs::path&) { importInto(*book, csvFile()); }},
        {"migrate",
         [](Logbook*, const Season&, const fs::path& file) {
             log::Log::open(file, log::Access::ReadWrite, layoutToCome());
         },
         {},
         true},
        {"back up", [](Logbook* book, const Season&,
                       const fs::path&) { log::backUpWhenDue(book->log(), noon); }},
        {"make a log",
         [](Logbook*, const Season&, const fs::path& file) {
             log::Log::create(file.parent_path() / "new.slopebook");
         },
         {},
         true},
        {"restore",
         [](Logbook* book, const Season&, const fs::path& file) {
             log::restore(log::backups(book->log().file()).front().file,
                          file.parent_path() / "restored.slopebook");
         },
         [](Logbook& book, const Season&) { log::backUpWhenDue(book.log(), noon); }},
    };
}

Ended outcomeOf(const std::function<void()>& work, Logbook* book) {
    Ended outcome;
    std::optional<QSignalSpy> spy;
    if (book)
        spy.emplace(book, &Logbook::failed);
    try {
        work();
    } catch (const LogError& error) {
        outcome = {error.kind(), error.what()};
    }
    if (spy && !spy->isEmpty())
        outcome.words = spy->first().first().toString().toStdString();
    return outcome;
}

bool contains(const std::string& text, const char* part) {
    return text.find(part) != std::string::npos;
}

/// Empty, or what is wrong with the words.
std::string wrongWords(const Ended& outcome, Call call, int error) {
    if (!outcome.words.ends_with('.') || !contains(outcome.words, "'"))
        return "no sentence about a file: " + outcome.words;
    const bool room = contains(outcome.words, "no room left on the disk");
    if (room != (error == ENOSPC))
        return (error == ENOSPC ? "a full disk is not named: " : "wrongly a full disk: ") +
               outcome.words;
    // SQLite opens what it may not write for reading.
    if (outcome.error && *outcome.error != (error == ENOSPC ? Kind::Full : Kind::Unavailable) &&
        !(call == Call::Open && *outcome.error == Kind::ReadOnly))
        return "another kind of error: " + outcome.words;
    return {};
}

using Files = std::map<std::string, std::vector<std::string>>;

/// In today's layout or in that to come.
log::Log openEither(const fs::path& file) {
    try {
        return log::Log::open(file);
    } catch (const LogError& error) {
        if (error.kind() != Kind::Newer)
            throw;
        return log::Log::open(file, log::Access::ReadWrite, layoutToCome());
    }
}

/// The log goes on as if nothing had happened.
void goOn(Logbook& book) {
    book.addAthlete(Athlete{.name = "Cox"});
    book.undoStack()->undo();
}

/// What lies in the folder and below that is no log.
std::vector<std::string> straysIn(const fs::path& folder) {
    std::vector<std::string> strays;
    for (const auto& entry : fs::recursive_directory_iterator(folder))
        if (entry.is_regular_file() && (entry.path().extension() != ".slopebook" ||
                                        entry.path().filename().string().starts_with('.')))
            strays.push_back(entry.path().filename().string());
    return strays;
}

/// Every log in the folder and below, by its rows; each must be sound.
Files logsIn(const fs::path& folder) {
    Files found;
    for (const auto& entry : fs::recursive_directory_iterator(folder)) {
        if (entry.path().extension() != ".slopebook" || entry.path().filename().string()[0] == '.')
            continue;
        const auto findings = openEither(entry.path()).check();
        if (!findings.empty())
            throw std::runtime_error(english(findings.front()));
        // What is new has another random name each time, which the hashes of what is in it hold.
        auto rows = allRows(entry.path(), "");
        std::erase_if(rows, [](const std::string& row) { return contains(row, "atom"); });
        found[fs::relative(entry.path(), folder).string()] = std::move(rows);
    }
    return found;
}
} // namespace

class TestFailingDisk : public QObject {
    Q_OBJECT

    struct Tried {
        Files files{};
        Ended outcome{};
        bool met = false;                ///< the fault
        std::vector<std::string> left{}; ///< files that are no log
        std::string unsound{};           ///< what is wrong with a log, in the open one or on disk
    };
    /// The act on a fresh log, with that fault or with none; not at all where there is no work.
    Tried attempt(const Act& act, const std::optional<Fault>& fault) const;
    /// Empty, or what is wrong.
    static std::string verdict(const Tried& tried, const Tried& before, const Tried& done,
                               const Fault& fault);
    Folder m_template;
    Season m_season;

private Q_SLOTS:
    void initTestCase() {
        log::Log log = log::Log::create(m_template.path());
        m_season = fillSeason(log);
        csvFile();
    }
    void nothingIsLostOrHalfDone_data();
    void nothingIsLostOrHalfDone();
};

TestFailingDisk::Tried TestFailingDisk::attempt(const Act& act,
                                                const std::optional<Fault>& fault) const {
    const Folder folder;
    const fs::path file = folder.path();
    fs::copy_file(m_template.path(), file);
    Tried tried;
    try {
        Disk disk(file.parent_path());
        std::optional<Logbook> book;
        if (!act.opensItself)
            book.emplace(log::Log::open(file));
        if (act.before)
            act.before(*book, m_season);
        if (fault)
            disk.fail(*fault);
        if (act.work)
            tried.outcome = outcomeOf([&] { act.work(book ? &*book : nullptr, m_season, file); },
                                      book ? &*book : nullptr);
        tried.met = disk.failed();
        disk.heal();
        if (book) {
            const auto findings = book->log().check();
            if (!findings.empty())
                tried.unsound = english(findings.front());
            goOn(*book);
        }
    } catch (const std::exception& error) {
        tried.unsound = "the open log does not go on: " + std::string(error.what());
    }
    try {
        tried.files = logsIn(file.parent_path());
        tried.left = straysIn(file.parent_path());
        // A journal with nothing in it stays until the next write.
        std::erase_if(tried.left,
                      [](const std::string& name) { return name.ends_with("-journal"); });
        if (act.opensItself && fs::exists(file)) {
            Logbook again(openEither(file));
            goOn(again);
        }
    } catch (const std::exception& error) {
        tried.unsound = error.what();
    }
    // A journal that could not be played back has been by now.
    for (const std::string& name : straysIn(file.parent_path()))
        tried.left.push_back(name);
    return tried;
}

std::string TestFailingDisk::verdict(const Tried& tried, const Tried& before, const Tried& done,
                                     const Fault& fault) {
    if (!tried.unsound.empty())
        return tried.unsound;
    for (const auto& [name, rows] : before.files)
        if (!tried.files.contains(name))
            return (name + " is gone");
    for (const auto& [name, rows] : tried.files) {
        const bool asBefore = before.files.contains(name) && before.files.at(name) == rows;
        const bool asDone = done.files.contains(name) && done.files.at(name) == rows;
        if (!asBefore && !asDone)
            return (name + " is half done");
    }
    if (!tried.outcome.failed())
        return tried.files == done.files ? std::string() : "acknowledged and not there";
    if (!tried.left.empty() && fault.call != Call::Remove)
        return "left behind: " + tried.left.front();
    const std::string words = wrongWords(tried.outcome, fault.call, fault.error);
    if (!words.empty())
        return words;
    if (tried.files == done.files && contains(tried.outcome.words, "Nothing was changed"))
        return "done, and yet it says: " + tried.outcome.words;
    return {};
}

void TestFailingDisk::nothingIsLostOrHalfDone_data() {
    QTest::addColumn<int>("act");
    const auto all = acts();
    for (std::size_t i = 0; i < all.size(); ++i)
        QTest::newRow(all[i].name) << static_cast<int>(i);
}

void TestFailingDisk::nothingIsLostOrHalfDone() {
    QFETCH(int, act);
    const Act tried = acts()[static_cast<std::size_t>(act)];
    Act none = tried;
    none.work = {};
    const Tried before = attempt(none, {});
    const Tried done = attempt(tried, {});
    QVERIFY2(!done.outcome.failed(), done.outcome.words.c_str());
    QVERIFY(before.files != done.files);
    int faults = 0;
    int refused = 0;
    int doneAllTheSame = 0;
    for (std::size_t call = 0; call < callNames.size(); ++call)
        for (const int error : {EIO, ENOSPC}) {
            // The later ones are many and alike: not each of them in every run.
            const bool reading = static_cast<Call>(call) == Call::Read;
            const int all = reading ? rounds("", 1, 1'000'000) : rounds("", 5, 1'000'000);
            const int step = reading ? 61 : 23;
            for (const bool forEver : {false, true})
                for (int nth = 1;; nth += nth < all ? 1 : step) {
                    const Fault fault{static_cast<Call>(call), nth, error, forEver};
                    if (error == ENOSPC && fault.call != Call::Write && fault.call != Call::Folder)
                        break;
                    const Tried result = attempt(tried, fault);
                    if (!result.met)
                        break;
                    ++faults;
                    refused += result.outcome.failed() ? 1 : 0;
                    doneAllTheSame += result.outcome.failed() && result.files == done.files ? 1 : 0;
                    const std::string wrong = verdict(result, before, done, fault);
                    QVERIFY2(wrong.empty(),
                             (std::string(callNames[call]) + " number " + std::to_string(nth) +
                              (forEver ? " failing for ever (" : " failing once (") +
                              std::generic_category().message(error) + "): " + wrong)
                                 .c_str());
                }
        }
    qInfo("%d failing calls: %d refused, of these %d done and not known to be safe; "
          "nothing lost",
          faults, refused, doneAllTheSame);
    QVERIFY(refused > 0);
}

QTEST_GUILESS_MAIN(TestFailingDisk)
#include "tst_failingdisk.moc"

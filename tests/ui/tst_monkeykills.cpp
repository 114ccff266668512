// SPDX-License-Identifier: GPL-3.0-or-later
// The window killed in mid-keystroke (SIGKILL), again and again on one log: what is on disk is what
// was entered before the step under way, or after it. Each child begins before there is a
// QApplication, tells by a pipe what each step may come to before its keys, and that it is done.
#include "core/log/log.h"
#include "tests/log/builders.h"
#include "tests/support/longrun.h"
#include "tests/ui/monkey/rounds.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QTest>

#include <algorithm>
#include <csignal>
#include <cstdio>
#include <memory>
#include <sys/wait.h>
#include <unistd.h>

using namespace slopebook;
using namespace slopebook::monkey;

namespace {

constexpr int stepsOfAChild = 400, roundsOfALog = 40;
constexpr std::uint64_t firstSeed = 20260311;

/// What a child says: "may", "is" (it is done), or "found" and the words.
struct Word {
    std::string kind, rest;
};

/// Reads words from a child line by line; nothing at its end.
class Listener {
public:
    explicit Listener(int from) : m_from(::fdopen(from, "r")) {}
    ~Listener() { ::fclose(m_from); }
    Listener(const Listener&) = delete;
    Listener& operator=(const Listener&) = delete;

    std::optional<Word> next() {
        char line[4096];
        if (::fgets(line, sizeof line, m_from) == nullptr)
            return std::nullopt;
        std::string all = line;
        if (all.empty() || all.back() != '\n')
            return std::nullopt; // torn by the kill
        all.pop_back();
        const auto blank = all.find(' ');
        return Word{all.substr(0, blank), all.substr(blank + 1)};
    }

private:
    FILE* m_from;
};

/// The median of what steps took, the machine being as busy as it is.
int usual(std::vector<int> took) {
    if (took.empty())
        return 20'000;
    const auto middle = took.begin() + static_cast<std::ptrdiff_t>(took.size() / 2);
    std::ranges::nth_element(took, middle);
    return std::max(1, *middle);
}

void tell(int to, const std::string& words) {
    const std::string line = words + '\n';
    if (::write(to, line.data(), line.size()) != static_cast<ssize_t>(line.size()))
        ::_exit(2);
}

[[noreturn]] void runChild(const std::filesystem::path& file, std::uint64_t seed, int to) {
    int argc = 1;
    char name[] = "monkey";
    char* argv[] = {name, nullptr};
    const QApplication application(argc, argv);
    Plan plan = plannedByHand();
    plan.seed = seed;
    plan.steps = stepsOfAChild;
    plan.known = true;
    plan.tell = [to](unsigned long long digest, bool settled) {
        tell(to, (settled ? "is " : "may ") + std::to_string(digest));
    };
    try {
        Monkey monkey(file, plan);
        try {
            monkey.run();
        } catch (const Finding& finding) {
            std::string words = monkey.kind() + ": " + finding.what();
            for (const QString& step : monkey.trace())
                words += "\n" + step.toStdString();
            std::ranges::replace(words, '\n', '/');
            tell(to, "found " + words.substr(0, 3500));
        }
    } catch (const std::exception& error) {
        tell(to, std::string("found ") + error.what());
    }
    ::_exit(0);
}

} // namespace

class TestMonkeyKills : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void whatIsOnDiskAfterAKillIsWhatWasEntered() {
        const int all = test::rounds("SLOPEBOOK_MONKEY_KILLS", 4, 1000);
        Dice dice(firstSeed);
        std::vector<int> took; // microseconds from the word of a step to its end
        std::unique_ptr<test::Folder> folder;
        int killed = 0, steps = 0, before = 0, after = 0;
        for (int round = 0; round < all; ++round) {
            if (round % roundsOfALog == 0) {
                folder = std::make_unique<test::Folder>();
                fillDesk(folder->path());
            }
            const std::uint64_t seed = firstSeed + static_cast<std::uint64_t>(round);
            int ends[2] = {-1, -1};
            QVERIFY(::pipe(ends) == 0);
            const pid_t child = ::fork();
            if (child == 0) {
                ::close(ends[0]);
                runChild(folder->path(), seed, ends[1]);
            }
            ::close(ends[1]);
            Listener listener(ends[0]);
            std::string stands = std::to_string(digestOf(Disk(folder->path()).now()));
            std::set<std::string> mayBecome;
            QElapsedTimer since;
            since.start();
            int left = 1 + dice.upTo(30); // words of writes to come, until the kill
            bool dead = false;
            while (const auto word = listener.next()) {
                if (word->kind == "found")
                    QFAIL(qPrintable(QStringLiteral("seed %1: %2")
                                         .arg(seed)
                                         .arg(QString::fromStdString(word->rest))));
                if (word->kind == "is") {
                    stands = word->rest;
                    if (!mayBecome.empty())
                        took.push_back(static_cast<int>(since.nsecsElapsed() / 1000));
                    mayBecome.clear();
                    ++steps;
                } else {
                    mayBecome.insert(word->rest);
                    since.start();
                    if (--left == 0) {
                        ::usleep(static_cast<unsigned>(dice.upTo(usual(took))));
                        ::kill(child, SIGKILL);
                    }
                }
            }
            int status = 0;
            ::waitpid(child, &status, 0);
            dead = WIFSIGNALED(status);
            killed += dead ? 1 : 0;
            QVERIFY2(dead || WEXITSTATUS(status) == 0, "the window ended by itself");
            if (dice.oneIn(2)) // the program comes first, or SQLite
                VERIFY_SOUND(log::Log::open(folder->path()));
            const std::string now = std::to_string(digestOf(Disk(folder->path()).now()));
            QVERIFY2(now == stands || mayBecome.contains(now),
                     qPrintable(QStringLiteral("seed %1: on disk is neither what stood before the "
                                               "step nor what it came to")
                                    .arg(seed)));
            (now == stands ? before : after) += dead ? 1 : 0;
            VERIFY_SOUND(log::Log::open(folder->path()));
        }
        qInfo(
            "%d kills in %d rounds (seeds %llu on), %d steps done: %d times on disk as before the "
            "step under way, %d times as after it",
            killed, all, static_cast<unsigned long long>(firstSeed), steps, before, after);
        QVERIFY(killed >= all / 2);
    }
};

QTEST_APPLESS_MAIN(TestMonkeyKills)
#include "tst_monkeykills.moc"

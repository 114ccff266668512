// SPDX-License-Identifier: GPL-3.0-or-later
// A coach's hour through the window's own code, and the power gone at any moment of it: what was
// acknowledged is there, at most one more change, none by half, and every backup told of is whole.
#include "tests/crash/acts.h"
#include "tests/log/rawfile.h"
#include "tests/support/longrun.h"
#include "tests/support/powerloss.h"

#include <map>

using namespace slopebook;
using namespace slopebook::test;
using ui::Logbook;

namespace {
namespace fs = std::filesystem;

/// What stood in the log after a step, and how much had been asked of the disk by then.
struct Moment {
    std::size_t ops = 0;
    std::vector<std::string> rows;
    fs::path madeFile; ///< a file that the step promised to be there
};

struct Hour {
    Recording recording;
    std::vector<Moment> moments; ///< the first: nothing is there yet
};

/// What goes for lost or half done after a loss.
enum class Found { Sound, Lost, HalfDone, Unreadable };
} // namespace

class TestPowerLoss : public QObject {
    Q_OBJECT

    Folder m_live;
    Folder m_left; ///< what the disk held
    Hour m_hour;

    void spend();
    Found lookAt(std::size_t done, Promise promise, std::mt19937_64& random);
    std::map<Found, int> losses(int count, Promise promise, unsigned seed);

private Q_SLOTS:
    void initTestCase() { spend(); }
    void nothingAcknowledgedIsLost();
    void aDiskThatBreaksItsWordIsFoundOut_data();
    void aDiskThatBreaksItsWordIsFoundOut();
};

void TestPowerLoss::spend() {
    const Folder elsewhere;
    writeCsv(elsewhere.path("rows.csv"), day(2026, 5, 1), 6);
    const fs::path file = m_live.path();
    Disk disk(file.parent_path());
    m_hour.moments.push_back({});
    const auto note = [&](const fs::path& made = {}) {
        m_hour.moments.push_back({disk.recording().ops.size(), allRows(file), made});
    };
    std::optional<Logbook> book;
    book.emplace(log::Log::create(file));
    note();
    const AthleteId athlete = book->addAthlete(Athlete{.name = "Lane 3"});
    note();
    const LiftId lift = book->addLift(Lift{.name = "Bench pull", .kind = VelocityKind::Mean});
    note();
    for (unsigned at = 1; at <= 3; ++at) {
        const SessionId session =
            book->addSession(SessionHead{.athlete = athlete, .date = day(2026, 3, at)});
        note();
        for (int set = 0; set < 5; ++set) {
            book->addSets(session, lift, {ladderSet(40 + 10 * set, {1.2 - 0.15 * set, 1.0})});
            note();
        }
        book->changeSet(book->log().sets(session, lift).front().id, ladderSet(42.5, {1.19}));
        note();
        book->undoStack()->undo();
        note();
        if (at == 2) {
            importInto(*book, elsewhere.path("rows.csv"));
            note();
            note(log::backUpWhenDue(book->log(), noon)->file);
        }
    }
    book->removeSession(book->log().sessions(athlete).front().id);
    note();
    book.reset();
    const log::Log newer = log::Log::open(file, log::Access::ReadWrite, layoutToCome());
    note(log::backupFolder(file) /
         ("layout-" + std::to_string(log::Log::newestVersion()) + ".slopebook"));
    m_hour.recording = disk.recording();
}

Found TestPowerLoss::lookAt(std::size_t done, Promise promise, std::mt19937_64& random) {
    const fs::path root = m_left.path().parent_path();
    for (const auto& entry : fs::directory_iterator(root))
        fs::remove_all(entry.path());
    const fs::path was = m_live.path().parent_path();
    for (const auto& [name, bytes] : afterLoss(m_hour.recording, done, promise, random)) {
        const fs::path copy = root / fs::relative(name, was);
        fs::create_directories(copy.parent_path());
        writeBytes(copy, bytes);
    }
    std::size_t told = 0; // the last that was acknowledged
    while (told + 1 < m_hour.moments.size() && m_hour.moments[told + 1].ops <= done)
        ++told;
    try {
        for (std::size_t i = 1; i <= told; ++i)
            if (const auto& made = m_hour.moments[i].madeFile; !made.empty())
                if (!log::Log::open(root / fs::relative(made, was), log::Access::ReadOnly)
                         .check()
                         .empty())
                    return Found::HalfDone;
        const fs::path file = m_left.path();
        if (!fs::exists(file))
            return told == 0 ? Found::Sound : Found::Lost;
        if (!log::Log::open(file, log::Access::ReadWrite, layoutToCome()).check().empty())
            return Found::HalfDone;
        auto rows = allRows(file);
        const auto withoutPlates = [](std::vector<std::string> all) {
            std::erase_if(all, [](const std::string& row) { return row.starts_with("plates|"); });
            return all;
        };
        // Looking brings it to the layout to come: what that adds is no part of the comparison.
        rows = withoutPlates(rows);
        if (rows == withoutPlates(m_hour.moments[told].rows))
            return Found::Sound;
        if (told + 1 < m_hour.moments.size() &&
            rows == withoutPlates(m_hour.moments[told + 1].rows))
            return Found::Sound;
        for (std::size_t i = 0; i < told; ++i)
            if (rows == withoutPlates(m_hour.moments[i].rows))
                return Found::Lost;
        return Found::HalfDone;
    } catch (const LogError&) {
        return Found::Unreadable;
    }
}

std::map<Found, int> TestPowerLoss::losses(int count, Promise promise, unsigned seed) {
    std::mt19937_64 random(seed);
    std::map<Found, int> found;
    for (int i = 0; i < count; ++i)
        ++found[lookAt(random() % (m_hour.recording.ops.size() + 1), promise, random)];
    qInfo("%d losses in %zu calls: %d sound, %d with something acknowledged lost, %d half done, %d "
          "not to be opened",
          count, m_hour.recording.ops.size(), found[Found::Sound], found[Found::Lost],
          found[Found::HalfDone], found[Found::Unreadable]);
    return found;
}

void TestPowerLoss::nothingAcknowledgedIsLost() {
    const int count = rounds("SLOPEBOOK_LOSSES", 300, 1000);
    QCOMPARE(losses(count, Promise::All, 20260315)[Found::Sound], count);
}

void TestPowerLoss::aDiskThatBreaksItsWordIsFoundOut_data() {
    // As a log written with synchronous = FULL (the folder is not synced after the journal is
    // gone), and with synchronous = OFF, would fare.
    QTest::addColumn<Promise>("promise");
    QTest::newRow("folders are not synced") << Promise::FilesOnly;
    QTest::newRow("nothing is synced") << Promise::None;
}

void TestPowerLoss::aDiskThatBreaksItsWordIsFoundOut() {
    QFETCH(Promise, promise);
    constexpr int count = 60;
    QVERIFY(losses(count, promise, 7)[Found::Sound] < count);
}

QTEST_GUILESS_MAIN(TestPowerLoss)
#include "tst_powerloss.moc"

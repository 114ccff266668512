// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/backups.h"
#include "core/log/history.h"
#include "core/log/layout.h"
#include "tests/log/builders.h"
#include "tests/log/olderlog.h"
#include "tests/log/otherthings.h"
#include "tests/log/rawfile.h"

using namespace slopebook;
using namespace slopebook::test;
using log::Access;
using log::Layout;
using log::Log;

namespace {
using Kind = LogError::Kind;

/// This program's layout and one step more.
Layout with(const std::string& step) {
    Layout layout = Layout::ours();
    layout.steps.push_back(step);
    return layout;
}

const char* const harmless = "CREATE TABLE plates (grams INTEGER PRIMARY KEY) STRICT; "
                             "INSERT INTO plates VALUES (20000);";

std::vector<std::string> backupNames(const Folder& folder) {
    const auto in = log::backupFolder(folder.path());
    return std::filesystem::exists(in) ? namesIn(in) : std::vector<std::string>{};
}
} // namespace

class TestMigrate : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init() {
        m_folder = std::make_unique<Folder>();
        Log log = Log::create(m_folder->path());
        m_s = fillSeason(log);
    }
    void anOlderLogIsBackedUpAndBroughtUpToDate();
    void aStepThatFailsLeavesTheLogAsItWas_data();
    void aStepThatFailsLeavesTheLogAsItWas();
    void anOlderLogThatCannotBeWrittenIsRefused();
    void anOlderLogOfAnotherShapeIsNotTouched();
    void tablesCanBeRebuilt();
    void severalStepsGoInOne();
    void blocksWithoutAStoryStayAsTheyWere();
    void whatEverybodyIsAskedGoesByAnIndex_data();
    void whatEverybodyIsAskedGoesByAnIndex();

private:
    std::unique_ptr<Folder> m_folder;
    Season m_s;
};

/// What the copy is called that is made of a log of this program's layout before a step beyond it.
static std::string copyName() {
    return "layout-" + std::to_string(Log::newestVersion()) + ".slopebook";
}

void TestMigrate::anOlderLogIsBackedUpAndBroughtUpToDate() {
    const auto rows = allRows(m_folder->path());
    const Layout layout = with(harmless);
    {
        const Log log = Log::open(m_folder->path(), Access::ReadWrite, layout);
        QCOMPARE(log.liftSessions({}).size(), 6U);
        VERIFY_SOUND(log);
    }
    QCOMPARE(errorOf([&] { Log::open(m_folder->path()); }), Kind::Newer);
    QCOMPARE(backupNames(*m_folder), std::vector<std::string>{copyName()});
    const auto copy = log::backupFolder(m_folder->path()) / copyName();
    VERIFY_SOUND(Log::open(copy)); // still of this program's layout
    QCOMPARE(allRows(copy), rows);
    const std::string bytes = readBytes(m_folder->path());
    Log::open(m_folder->path(), Access::ReadWrite, layout);
    QCOMPARE(readBytes(m_folder->path()), bytes); // nothing is done twice
    QCOMPARE(backupNames(*m_folder).size(), 1U);
}

void TestMigrate::aStepThatFailsLeavesTheLogAsItWas_data() {
    QTest::addColumn<QString>("step");
    QTest::newRow("no SQL") << "CREATE TABLE more (x); DELETE FROM reps; NOT SQL";
    QTest::newRow("a rule broken") << "DELETE FROM check_loads; UPDATE sets SET load_g = -1";
    QTest::newRow("a reference broken") << "DELETE FROM lifts";
}

void TestMigrate::aStepThatFailsLeavesTheLogAsItWas() {
    QFETCH(QString, step);
    const std::string bytes = readBytes(m_folder->path());
    const Layout layout = with(step.toStdString());
    for (int attempt = 1; attempt <= 2; ++attempt) {
        QVERIFY(errorOf([&] { Log::open(m_folder->path(), Access::ReadWrite, layout); }));
        QVERIFY(allRows(m_folder->path()).size() > 50);
        QCOMPARE(backupNames(*m_folder).size(), static_cast<std::size_t>(attempt));
    }
    const Log log = Log::open(m_folder->path());
    QCOMPARE(log.liftSessions({}).size(), 6U);
    VERIFY_SOUND(log);
    QCOMPARE(readBytes(m_folder->path()).size(), bytes.size());
}

void TestMigrate::anOlderLogThatCannotBeWrittenIsRefused() {
    const std::string bytes = readBytes(m_folder->path());
    QCOMPARE(errorOf([&] { Log::open(m_folder->path(), Access::ReadOnly, with(harmless)); }),
             Kind::ReadOnly);
    QCOMPARE(readBytes(m_folder->path()), bytes);
    QVERIFY(backupNames(*m_folder).empty());
}

void TestMigrate::anOlderLogOfAnotherShapeIsNotTouched() {
    runSql(m_folder->path(), "CREATE TABLE more (x)");
    const std::string bytes = readBytes(m_folder->path());
    QCOMPARE(errorOf([&] { Log::open(m_folder->path(), Access::ReadWrite, with(harmless)); }),
             Kind::Damaged);
    QCOMPARE(readBytes(m_folder->path()), bytes);
    QVERIFY(backupNames(*m_folder).empty());
}

void TestMigrate::tablesCanBeRebuilt() {
    // As SQLite's manual tells to change what ALTER TABLE cannot: a table that others refer to.
    const Log log = Log::open(
        m_folder->path(), Access::ReadWrite,
        with("CREATE TABLE fresh (id INTEGER PRIMARY KEY CHECK (id > 0), name TEXT NOT NULL "
             "UNIQUE, note TEXT NOT NULL, checksum INTEGER NOT NULL) STRICT; "
             "INSERT INTO fresh SELECT id, name, note, checksum FROM devices; "
             "DROP TABLE devices; ALTER TABLE fresh RENAME TO devices;"));
    QCOMPARE(log.devices().size(), 1U);
    QCOMPARE(log.conditions(m_s.autumn, m_s.pull).device, m_s.encoder);
    VERIFY_SOUND(log);
}

void TestMigrate::severalStepsGoInOne() {
    Layout layout = with(harmless);
    layout.steps.emplace_back("ALTER TABLE plates ADD COLUMN pairs INTEGER NOT NULL DEFAULT 1;");
    {
        Log log = Log::open(m_folder->path(), Access::ReadWrite, layout);
        log.add(Athlete{.name = "Cox"});
        VERIFY_SOUND(log);
    }
    QCOMPARE(backupNames(*m_folder).size(), 1U);
    // A log made new under that layout is the same.
    const Log fresh = Log::create(m_folder->path("fresh.slopebook"), layout);
    VERIFY_SOUND(fresh);
    QCOMPARE(Log::newestVersion(), Layout::ours().newest());
}

// Layout 5 had no story: its blocks come over with an empty one, under the checksums that they had,
// and take one then.
void TestMigrate::blocksWithoutAStoryStayAsTheyWere() {
    Block told;
    {
        Log log = Log::open(m_folder->path());
        addOtherThings(log, m_s);
        told = log.blocks().at(0).value;
        told.trained = "fast";
        told.aWeek = SessionsAWeek{.fewest = 2, .most = 3};
    }
    const auto older = m_folder->path("five.slopebook");
    writeAsOlder(m_folder->path(), older, 5);
    const auto sums = rowsOf(older, "SELECT id, name, checksum FROM blocks");
    QCOMPARE(rowsOf(older, "SELECT count(*) FROM pragma_table_info('blocks')").at(0), "7");
    {
        Log log = Log::open(older);
        VERIFY_SOUND(log);
        const auto blocks = log.blocks();
        QCOMPARE(blocks.size(), 1U);
        QCOMPARE(blocks.at(0).value.ceiling, std::optional(Mass{60'000}));
        QVERIFY(blocks.at(0).value.trained.empty() && !blocks.at(0).value.aWeek);
        QCOMPARE(rowsOf(older, "SELECT id, name, checksum FROM blocks"), sums);
        QCOMPARE(log.liftSessions({}).size(), 6U);
        log.change(blocks.at(0).id, told);
        QCOMPARE(log.blocks().at(0).value, told);
        VERIFY_SOUND(log);
    }
    QCOMPARE(allRows(older, "keys").size(), allRows(m_folder->path(), "keys").size());
    VERIFY_SOUND(Log::open(older));
}

void TestMigrate::whatEverybodyIsAskedGoesByAnIndex_data() {
    QTest::addColumn<QString>("question");
    QTest::addColumn<QString>("index");
    QTest::newRow("the sessions of some days")
        << "SELECT athlete FROM sessions WHERE day BETWEEN '2025-11-01' AND '2025-11-04'"
        << "USING COVERING INDEX sessions_by_day (day>? AND day<?)";
    QTest::newRow("the maxima of a lift")
        << QString::fromStdString(
               log::historySql({.lift = LiftId{1}, .column = log::HistoryColumn::Measured}))
        << "SEARCH sets USING INDEX maxima_by_lift (lift=? AND session=?)";
    QTest::newRow("the repeat tests") << "SELECT id FROM sessions WHERE repeat_of > 0"
                                      << "INDEX sessions_by_repeat (repeat_of>?)";
}

void TestMigrate::whatEverybodyIsAskedGoesByAnIndex() {
    QFETCH(QString, question);
    QFETCH(QString, index);
    const std::string sql = "EXPLAIN QUERY PLAN " + question.toStdString(); // outlives db
    log::Connection db(m_folder->path(), log::Connection::Purpose::ReadOnly,
                       std::numeric_limits<int>::max());
    QString found;
    for (log::Query plan(db, sql.c_str()); plan.next();)
        found += QString::fromStdString(plan.text(3)) + u'\n';
    QVERIFY2(found.contains(index), qPrintable(found));
}

QTEST_APPLESS_MAIN(TestMigrate)
#include "tst_migrate.moc"

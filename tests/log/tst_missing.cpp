// SPDX-License-Identifier: GPL-3.0-or-later
// Whatever another program takes out of a log, or alters in it, check notices: every row of every
// table, every column of it, every rule.
#include "core/log/layout.h"
#include "core/log/rules.h"
#include "core/log/tally.h"
#include "tests/log/builders.h"
#include "tests/log/olderlog.h"
#include "tests/log/otherthings.h"
#include "tests/log/rawfile.h"

#include <map>

using namespace slopebook;
using namespace slopebook::test;
using log::Access;
using log::Log;

namespace {
namespace fs = std::filesystem;

/// A season with something in every table.
void makeFull(const fs::path& file, bool testDay = true) {
    Log log = Log::create(file);
    const Season s = fillSeason(log);
    log.add(Athlete{.name = "Nobody's lane"});
    log.add(Lift{.name = "Row"});
    log.add(Device{.name = "Second encoder"});
    const TestKindId test = addOtherThings(log, s);
    if (testDay) {
        addTestDay(log, s, test);
        tellStory(log);
    }
    log.remove(log.add(s.winter, s.pull, ladderSet(50, {1.0})));
    if (!testDay)
        return;
    const SetId often = log.add(s.winter, s.pull, ladderSet(55, {0.9}));
    log.change(often, ladderSet(55, {0.91}));
    log.remove(often);
    joinAStore(log);
}

std::vector<std::string> tablesOf(const fs::path& file) {
    return rowsOf(file, "SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name");
}

/// What tells a row from the others of its table, as a condition.
std::vector<std::string> rowsAsConditions(const fs::path& file, const std::string& table) {
    std::string condition;
    for (const std::string& column :
         rowsOf(file, "SELECT name FROM pragma_table_info('" + table + "') WHERE pk > 0"))
        condition +=
            (condition.empty() ? "'" : " || ' AND ") + column + " = ' || quote(" + column + ")";
    return rowsOf(file, "SELECT " + condition + " FROM " + table);
}

/// Whether opening or checking finds anything wrong.
bool noticed(const fs::path& file, Access access = Access::ReadOnly) {
    try {
        return !Log::open(file, access).check().empty();
    } catch (const LogError& error) {
        return error.kind() == LogError::Kind::Damaged;
    }
}

/// Does one thing after another to a copy of the log; lists those that check does not notice.
class Trial {
public:
    explicit Trial(const fs::path& file) : m_file(file), m_bytes(readBytes(file)) {}
    void with(const std::string& sql) {
        writeBytes(m_file, m_bytes);
        if (rowsChangedBy(m_file, sql) == 0)
            return; // SQLite itself takes no such row
        ++m_done;
        if (!noticed(m_file))
            m_unnoticed << QString::fromStdString(sql);
    }
    int done() const { return m_done; }
    QString unnoticed() const { return m_unnoticed.join(QLatin1Char('\n')); }

private:
    fs::path m_file;
    std::string m_bytes;
    int m_done = 0;
    QStringList m_unnoticed;
};
} // namespace

class TestMissing : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void everyRowTakenOutIsNoticed();
    void everyColumnAlteredIsNoticed();
    void everyRuleIsTested_data();
    void everyRuleIsTested();
    void rulesAreReadFromTheTables();
    void whatIsMissingIsSaidInWords_data();
    void whatIsMissingIsSaidInWords();
    void anAthleteWhoseSessionsAreLostIsNotRemoved();
    void anOlderLogGetsItsTallies();
    void weightsAreMixed();
};

void TestMissing::everyRowTakenOutIsNoticed() {
    const Folder folder;
    makeFull(folder.path());
    QVERIFY(!noticed(folder.path()));
    std::vector<std::string> deletes;
    for (const std::string& table : tablesOf(folder.path())) {
        const auto rows = rowsAsConditions(folder.path(), table);
        QVERIFY2(!rows.empty(), qPrintable("nothing stands in " + QString::fromStdString(table)));
        for (const std::string& row : rows)
            deletes.push_back("DELETE FROM " + table + " WHERE " + row);
    }
    // With all that hangs on it, as one cut of the file would take it.
    for (const int session : {1, 2, 3}) {
        const std::string id = std::to_string(session);
        deletes.push_back("DELETE FROM reps WHERE set_id IN (SELECT id FROM sets WHERE session = " +
                          id + "); DELETE FROM sets WHERE session = " + id +
                          "; DELETE FROM attempts WHERE session = " + id +
                          "; DELETE FROM gaps WHERE session = " + id +
                          "; DELETE FROM test_conditions WHERE session = " + id +
                          "; DELETE FROM lift_conditions WHERE session = " + id +
                          "; DELETE FROM sessions WHERE id = " + id);
    }
    deletes.push_back("DELETE FROM equipment_pieces; DELETE FROM equipment");
    Trial trial(folder.path());
    for (const std::string& sql : deletes)
        trial.with(sql);
    QCOMPARE(trial.unnoticed(), QString());
    QCOMPARE(trial.done(), static_cast<int>(deletes.size()));
}

void TestMissing::everyColumnAlteredIsNoticed() {
    const Folder folder;
    makeFull(folder.path());
    const std::map<std::string, std::vector<std::string>> others{
        {"integer", {"$ + 1", "-7", "NULL"}},
        {"real", {"$ * 1.001", "-$", "1e308", "NULL"}},
        {"text", {"$ || 'x'", "''", "'left'", "NULL"}},
        {"blob",
         {"randomblob(16)", "zeroblob(16)", "x''", "NULL", "randomblob(length($))",
          "zeroblob(length($))", "substr($, 1, length($) - 32)", "CAST($ || $ AS BLOB)"}},
        {"null", {"1", "1.5", "'x'", "zeroblob(16)", "zeroblob(96)"}}};
    Trial trial(folder.path());
    for (const std::string& table : tablesOf(folder.path())) {
        auto rows = rowsAsConditions(folder.path(), table);
        if (rows.size() > 3) // the first two and the last of many
            rows.erase(rows.begin() + 2, rows.end() - 1);
        for (const std::string& column :
             rowsOf(folder.path(), "SELECT name FROM pragma_table_info('" + table + "')"))
            for (const std::string& row : rows) {
                const auto type = rowsOf(folder.path(), "SELECT typeof(" + column + ") FROM " +
                                                            table + " WHERE " + row);
                for (std::string other : others.at(type.at(0))) {
                    for (auto at = other.find('$'); at != std::string::npos; at = other.find('$'))
                        other.replace(at, 1, column);
                    trial.with("UPDATE " + table + " SET " + column + " = " + other + " WHERE " +
                               row + " AND " + column + " IS NOT " + other);
                }
            }
    }
    QCOMPARE(trial.unnoticed(), QString());
    QVERIFY(trial.done() > 300);
}

// As another program could write, with every checksum made anew: the rule alone is left to notice.
void TestMissing::everyRuleIsTested_data() {
    QTest::addColumn<QString>("table");
    QTest::addColumn<QString>("change");
    const auto row = [](const char* table, const char* change) {
        QTest::addRow("%s: %s", table, change) << QString(table) << QString(change);
    };
    row("athletes", "name = ' '");
    row("athletes", "id = -3");
    row("lifts", "kind = 'fast'");
    row("lifts", "rule = 'slowest'");
    row("lifts", "ballistic = 2");
    row("lifts", "mvt = 10");
    row("lifts", "mvt_sd = -0.1");
    row("lifts", "mvt_origin = 'guess'");
    row("lifts", "mvt_source = NULL");
    row("lifts", "smallest_velocity = 0.0");
    row("lifts", "smallest_one_rm = 2001");
    row("devices", "name = ''");
    row("blocks", "first_day = '2026-1-5'");
    row("blocks", "last_day = '2026-13-05'");
    row("blocks", "last_day = '2025-02-27'");
    row("blocks", "ceiling_g = 0");
    row("blocks", "fewest_a_week = 0.25");
    row("blocks", "fewest_a_week = 22, most_a_week = 22");
    row("blocks", "fewest_a_week = 2.2");
    row("blocks", "most_a_week = 2.7");
    row("blocks", "most_a_week = 1.5");
    row("blocks", "most_a_week = NULL");
    row("blocks", "fewest_a_week = NULL");
    row("sessions", "day = 'yesterday'");
    row("sessions", "ordinal = 0");
    row("sessions", "body_mass_g = 2000001");
    row("sessions", "repeat_of = id");
    row("sets", "load_g = -30000");
    row("sets", "load_g = 9000000000000000");
    row("sets", "point = 1e308");
    row("sets", "maximum = 5");
    row("sets", "counting = -1");
    row("sets", "point = NULL");
    row("reps", "velocity = 1e308");
    row("reps", "velocity = 0.0");
    row("check_loads", "load_g = -1");
    row("equipment", "ceiling_10ng = 0");
    row("equipment_pieces", "kind = 'chain'");
    row("equipment_pieces", "mass_10ng = 0");
    row("equipment_pieces", "unit = 'st'");
    row("equipment_pieces", "pairs = 51");
    row("tests", "formula = 'guess'");
    row("tests", "decimals = 5");
    row("tests", "noise_source = NULL");
    row("attempts", "side = 'up'");
    row("attempts", "value = 1e308");
    row("attempts", "contact = 10");
    row("gaps", "reason = ''");
    row("gaps", "test = 1, lift = 1");
    row("tallies", "owner = -1");
    row("keys", "turned = 0");
}

void TestMissing::everyRuleIsTested() {
    QFETCH(QString, table);
    QFETCH(QString, change);
    const Folder folder;
    makeFull(folder.path());
    const auto rows = rowsAsConditions(folder.path(), table.toStdString());
    int broken = 0;
    for (const std::string& row : rows) { // some rows break no rule by it
        broken = rowsChangedBy(folder.path(), "UPDATE " + table.toStdString() + " SET " +
                                                  change.toStdString() + " WHERE " + row);
        if (broken != 0)
            break;
    }
    QVERIFY(broken > 0);
    for (const Access access : {Access::ReadOnly, Access::ReadWrite}) {
        const auto findings = texts(Log::open(folder.path(), access).check());
        QVERIFY2(findings.filter("A row of " + table + " (").filter("breaks its rule").size() >= 1,
                 qPrintable(findings.join(QLatin1Char('\n'))));
        QVERIFY(findings.filter("CHECK constraint").isEmpty()); // said once, with the row
    }
}

void TestMissing::rulesAreReadFromTheTables() {
    using Rules = std::vector<std::string>;
    QCOMPARE(log::rulesOf("CREATE TABLE t (a INTEGER)"), Rules{});
    QCOMPARE(
        log::rulesOf("CREATE TABLE t (a TEXT CHECK (a IN ('x)', 'it''s', '--')), -- CHECK (no)\n"
                     "b REAL CHECK (b > 0 AND (b < 10 OR b IS NULL)), CHECK (a <> ''))"),
        (Rules{"a IN ('x)', 'it''s', '--')", "b > 0 AND (b < 10 OR b IS NULL)", "a <> ''"}));
    // As many as SQLite itself would find in the text.
    for (const std::string& step : log::Layout::ours().steps)
        QCOMPARE(log::rulesOf(step).size(),
                 static_cast<std::size_t>(QString::fromStdString(step).count("CHECK (")));
}

void TestMissing::whatIsMissingIsSaidInWords_data() {
    QTest::addColumn<QString>("sql");
    QTest::addColumn<QString>("words");
    QTest::newRow("a block") << "DELETE FROM blocks"
                             << "Blocks: 1 were written, 0 are there.";
    QTest::newRow("a session, whole")
        << "DELETE FROM reps WHERE set_id IN (SELECT id FROM sets WHERE session = 2); DELETE FROM "
           "sets WHERE session = 2; DELETE FROM sessions WHERE id = 2"
        << "Sessions of Lane 3: 2 were written, 1 are there.";
    QTest::newRow("a device more")
        << "INSERT INTO devices SELECT 9, 'Third', note, checksum FROM devices WHERE id = 1"
        << "Devices: 2 were written, 3 are there.";
    QTest::newRow("an older lift") << "UPDATE lifts SET checksum = checksum + 1 WHERE id = 1"
                                   << "Lifts: as many as were written, but not the same.";
    QTest::newRow("a tally") << "DELETE FROM tallies WHERE owner = 1"
                             << "The table of tallies is not whole.";
}

void TestMissing::whatIsMissingIsSaidInWords() {
    QFETCH(QString, sql);
    QFETCH(QString, words);
    const Folder folder;
    makeFull(folder.path());
    QVERIFY(rowsChangedBy(folder.path(), sql.toStdString()) > 0);
    const auto findings = texts(Log::open(folder.path(), Access::ReadOnly).check());
    QVERIFY2(findings.contains(words), qPrintable(findings.join(QLatin1Char('\n'))));
}

void TestMissing::anAthleteWhoseSessionsAreLostIsNotRemoved() {
    const Folder folder;
    makeFull(folder.path());
    runSql(folder.path(), "DELETE FROM sets WHERE session = 3; DELETE FROM sessions WHERE id = 3; "
                          "DELETE FROM reps WHERE set_id NOT IN (SELECT id FROM sets)");
    Log log = Log::open(folder.path());
    for (Roster roster : log.rosters()) {
        roster.athletes.clear();
        log.setRoster(roster);
    }
    QCOMPARE(errorOf([&] { log.remove(log.athletes().back().id); }), LogError::Kind::Damaged);
    // One who never had any goes, together with one who has none any more.
    log.remove(log.athletes()[1].id);
    QCOMPARE(log.athletes().size(), 2U);
}

// A log as layout 3 wrote it gets the tallies that the same log has which was made with them.
void TestMissing::anOlderLogGetsItsTallies() {
    const Folder folder;
    makeFull(folder.path("new.slopebook"), false);
    writeAsOlder(folder.path("new.slopebook"), folder.path(), 3);
    {
        const Log migrated = Log::open(folder.path());
        VERIFY_SOUND(migrated);
    }
    // Names among other logs are derived in the one and random in the other.
    for (const auto& file : {folder.path(), folder.path("new.slopebook")})
        runSql(file, "DELETE FROM atoms; DELETE FROM removed_atoms; "
                     "DELETE FROM tallies WHERE kind LIKE '%atom'");
    QCOMPARE(allRows(folder.path(), ""), allRows(folder.path("new.slopebook"), ""));
    QCOMPARE(errorOf([&] {
                 log::Layout older = log::Layout::ours();
                 older.steps.resize(3);
                 Log::open(folder.path(), Access::ReadWrite, older);
             }),
             LogError::Kind::Newer);
}

void TestMissing::weightsAreMixed() {
    // The first numbers of SplitMix64 from the seed 0, as the authors' own program prints them
    // (from memory); each step adds the golden gamma.
    constexpr std::uint64_t gamma = 0x9E3779B97F4A7C15U;
    QCOMPARE(log::weight(static_cast<std::int64_t>(gamma)), 0xE220A8397B1DCDAFU);
    QCOMPARE(log::weight(static_cast<std::int64_t>(2 * gamma)), 0x6E789E6AA1B965F4U);
    QCOMPARE(log::weight(static_cast<std::int64_t>(3 * gamma)), 0x06C45D188009454FU);
    QVERIFY(log::weight(5, 0) != log::weight(5));
    QVERIFY(log::weight(5, 7) != log::weight(7, 5));
    log::Tally tally;
    tally.add(log::weight(1));
    tally.add(log::weight(2));
    tally.take(log::weight(1));
    log::Tally other;
    other.add(log::weight(2));
    QCOMPARE(tally, other);
}

QTEST_APPLESS_MAIN(TestMissing)
#include "tst_missing.moc"

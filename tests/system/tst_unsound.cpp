// SPDX-License-Identifier: GPL-3.0-or-later
// A log that is not sound, by whatever check finds, and one with a journal that is not its own:
// what check, backup, import and list say and do.
#include "tests/log/builders.h"
#include "tests/log/craftedjournal.h"
#include "tests/system/program.h"

#include <filesystem>
#include <map>

using namespace slopebook;
using namespace slopebook::test;
using slopebook::tests::Ran;
using slopebook::tests::runProgram;

namespace {
namespace fs = std::filesystem;

QString qt(const fs::path& path) {
    return QString::fromStdString(path.string());
}

std::map<std::string, std::string> filesIn(const fs::path& folder) {
    std::map<std::string, std::string> files;
    for (const auto& entry : fs::recursive_directory_iterator(folder))
        if (entry.is_regular_file() && fs::file_size(entry.path()) < 100'000'000)
            files[entry.path().string()] = readBytes(entry.path());
    return files;
}
} // namespace

class TestUnsound : public QObject {
    Q_OBJECT

    std::unique_ptr<Folder> m_folder;
    fs::path file() const { return m_folder->path(); }
    Ran run(const char* command, const QStringList& rest = {}) const {
        return runProgram(QStringList{QLatin1String(command), qt(file())} + rest);
    }

private Q_SLOTS:
    void init() {
        m_folder = std::make_unique<Folder>();
        log::Log log = log::Log::create(file());
        fillSeason(log);
        writeBytes(m_folder->path("new.csv"), "date,athlete,lift,set,load_kg,rep,velocity\n"
                                              "2026-05-01,Lane 3,Bench pull,1,50,1,0.99\n");
    }

    void whatIsNotSoundIsVouchedForByNobody_data() {
        QTest::addColumn<QString>("sql");
        QTest::newRow("a rep altered")
            << "UPDATE reps SET velocity = velocity * 1.1 WHERE set_id = 1";
        QTest::newRow("a rule broken") << "UPDATE reps SET velocity = 1e308 WHERE set_id = 1";
        QTest::newRow("a block missing") << "DELETE FROM blocks";
        QTest::newRow("a session missing")
            << "DELETE FROM reps WHERE set_id IN (SELECT id FROM sets WHERE session = 2); DELETE "
               "FROM sets WHERE session = 2; DELETE FROM sessions WHERE id = 2";
        QTest::newRow("a reference to nothing") << "DELETE FROM devices";
        QTest::newRow("a key") << "UPDATE keys SET last = last + 1";
        QTest::newRow("a tally") << "UPDATE tallies SET things = things + 1 WHERE owner = 1";
    }

    void whatIsNotSoundIsVouchedForByNobody() {
        QFETCH(QString, sql);
        QVERIFY(rowsChangedBy(file(), sql.toStdString()) > 0);
        const auto before = filesIn(file().parent_path());
        const Ran check = run("check");
        QCOMPARE(check.exit, 1);
        QVERIFY(check.out.startsWith("Not sound: "));

        const QString csv = qt(m_folder->path("new.csv"));
        const Ran refused = run("import", {csv});
        QCOMPARE(refused.exit, 2);
        QVERIFY2(refused.err.contains("'season.slopebook' is not sound (") &&
                     refused.err.contains("Nothing was written."),
                 refused.err);
        QVERIFY(filesIn(file().parent_path()) == before);

        const Ran backup = run("backup", {qt(m_folder->path("copy.slopebook"))});
        QCOMPARE(backup.exit, 1);
        QVERIFY2(backup.out.startsWith("Backed up, but the log is not sound, and the copy is no "
                                       "better: "),
                 backup.out);
        QVERIFY(!backup.out.contains("checked"));
        // The same is found of both.
        const auto lines = [](const QByteArray& text) { return text.mid(text.indexOf('\n')); };
        QCOMPARE(lines(backup.out), lines(check.out));
        QCOMPARE(
            lines(runProgram({QStringLiteral("check"), qt(m_folder->path("copy.slopebook"))}).out),
            lines(check.out));
    }

    void itIsWrittenToOnTheCoachsWord() {
        runSql(file(), "DELETE FROM blocks");
        const auto found = run("check").out.count("\n  - ");
        const QStringList word{qt(m_folder->path("new.csv")),
                               QStringLiteral("--even-if-not-sound")};
        const Ran taken = run("import", word);
        QVERIFY2(taken.exit == 0, taken.err);
        QVERIFY2(taken.out.contains("Added 1 set"), taken.out);
        QCOMPARE(run("check").exit, 1); // still, and for the same reasons alone
        QCOMPARE(run("check").out.count("\n  - "), found);
        // What is damaged itself is not written to even so.
        runSql(file(), "UPDATE sets SET load_g = 61000 WHERE load_g = 60000 AND session = 1");
        writeBytes(m_folder->path("new.csv"), "date,athlete,lift,set,load_kg,rep,velocity\n"
                                              "2025-11-03,Lane 3,Bench pull,9,51,1,0.98\n");
        const std::string bytes = readBytes(file());
        QCOMPARE(run("import", word).exit, 2);
        QVERIFY(readBytes(file()) == bytes);
    }

    void aSoundOneIsSaidToBe() {
        QCOMPARE(run("import", {qt(m_folder->path("new.csv"))}).exit, 0);
        QCOMPARE(run("check").exit, 0);
        const Ran backup = run("backup", {qt(m_folder->path("copy.slopebook"))});
        QCOMPARE(backup.exit, 0);
        QVERIFY(backup.out.startsWith("Backed up, and the copy checked: "));
    }

    void aStrangeJournalIsLeftAlone_data() {
        QTest::addColumn<int>("attack");
        const auto all = attacks();
        for (std::size_t i = 0; i < all.size(); ++i)
            QTest::newRow(all[i].name) << static_cast<int>(i);
    }

    void aStrangeJournalIsLeftAlone() {
        QFETCH(int, attack);
        const fs::path victim = m_folder->path("thesis.txt");
        writeBytes(victim, std::string(1, '\0') + "years of work");
        attacks()[static_cast<std::size_t>(attack)].plant(file(), victim);
        const auto before = filesIn(file().parent_path());
        for (const Ran& ran :
             {run("check"), run("list"), run("import", {qt(m_folder->path("new.csv"))}),
              run("backup", {qt(m_folder->path("copy.slopebook"))})}) {
            QCOMPARE(ran.exit, 2);
            QVERIFY2(ran.err.contains("is no journal that Slopebook left ("), ran.err);
        }
        QVERIFY(filesIn(file().parent_path()) == before);
    }
};

QTEST_APPLESS_MAIN(TestUnsound)
#include "tst_unsound.moc"

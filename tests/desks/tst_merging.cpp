// SPDX-License-Identifier: GPL-3.0-or-later
// Two and three log files that were changed apart, and meet.
#include "core/desks/merge.h"
#include "core/desks/reading.h"
#include "core/log/backups.h"
#include "tests/desks/randomedits.h"
#include "tests/log/otherthings.h"
#include "tests/support/bytes.h"
#include "tests/support/longrun.h"

#include <QTest>

using namespace slopebook;
using namespace slopebook::test;
using slopebook::tests::RandomEdits;
namespace fs = std::filesystem;

namespace {
/// Everything that a log says, alive or removed, by UUID.
std::map<log::Sixteen, std::pair<std::string, bool>> saidBy(const fs::path& file) {
    std::map<log::Sixteen, std::pair<std::string, bool>> all;
    const log::Log log = log::Log::open(file, log::Access::ReadOnly);
    log::visitCarried(log, [&](const log::Carried& one) {
        all[one.uuid] = {one.content, one.alive};
    });
    return all;
}

void requireSame(const fs::path& one, const fs::path& other) {
    QVERIFY2(saidBy(one) == saidBy(other), "two logs that met do not say the same");
}

void requireCleanLog(const fs::path& file) {
    const auto findings = log::Log::open(file, log::Access::ReadOnly).check();
    QVERIFY2(findings.empty(), findings.empty() ? "" : english(findings.front()).c_str());
}

desks::MergeReport mergeFiles(const fs::path& mine, const fs::path& other) {
    log::Log log = log::Log::open(mine);
    return desks::mergeInto(log, other);
}

/// What still goes on where nothing should.
void tell(int seed, int round, const desks::MergeReport& report) {
    qInfo("seed %d, round %d: %zu added, %zu changed, %zu removed, %zu joined, %zu revived, %zu "
          "renamed, %zu listed",
          seed, round, report.added, report.changed, report.removed, report.joined.size(),
          report.revived.size(), report.renamed.size(), report.listed.size());
    for (const auto& [now, before] : report.renamed)
        qInfo("renamed: %s (%s)", english(now.name).c_str(), before.c_str());
    for (const auto& one : report.revived)
        qInfo("revived: %s %s", one.kind.c_str(), english(one.name).c_str());
    for (const auto& one : report.listed)
        qInfo("listed: %s %s: %s", one.kind.c_str(), english(one.about).c_str(),
              std::string(desks::word(one.why)).c_str());
}

void editFile(const fs::path& file, unsigned seed, int times) {
    log::Log log = log::Log::open(file);
    RandomEdits edits(seed);
    for (int i = 0; i < times; ++i)
        edits.edit(log);
}
} // namespace

class TestMerging : public QObject {
    Q_OBJECT

    std::unique_ptr<Folder> m_folder;
    Season m_season;
    fs::path a() const { return m_folder->path("a.slopebook"); }
    fs::path b() const { return m_folder->path("b.slopebook"); }
    fs::path c() const { return m_folder->path("c.slopebook"); }

private Q_SLOTS:
    void init() {
        m_folder = std::make_unique<Folder>();
        {
            log::Log log = log::Log::create(a());
            m_season = fillSeason(log);
            addTestDay(log, m_season, addOtherThings(log, m_season));
        }
        fs::copy_file(a(), b());
        fs::copy_file(a(), c());
    }

    void nothingNew() {
        const std::string before = readBytes(a());
        QVERIFY(mergeFiles(a(), b()).nothingNew);
        QVERIFY(readBytes(a()) == before);
        QVERIFY(!fs::exists(log::backupFolder(a())));
    }

    void oneWayAndBack() {
        editFile(b(), 1, 40);
        const std::string other = readBytes(b());
        const auto report = mergeFiles(a(), b());
        QVERIFY(readBytes(b()) == other); // only read
        QVERIFY(!report.nothingNew);
        QVERIFY(fs::exists(report.backup));
        QVERIFY(report.listed.empty() && report.renamed.empty());
        requireCleanLog(a());
        requireSame(a(), b());
        QVERIFY(mergeFiles(a(), b()).nothingNew);
        QVERIFY(mergeFiles(b(), a()).nothingNew);
    }

    void atRandomBothWays() {
        const int seeds = rounds("SLOPEBOOK_MERGES", 4, 400);
        for (int seed = 1; seed <= seeds; ++seed) {
            init();
            for (int round = 0; round < 2; ++round) {
                editFile(a(), static_cast<unsigned>(10 * seed + round), 30);
                editFile(b(), static_cast<unsigned>(1000 + 10 * seed + round), 30);
                const bool atOnce = seed % 2 == 0;
                if (atOnce)
                    fs::copy_file(a(), m_folder->path("before.slopebook"),
                                  fs::copy_options::overwrite_existing);
                mergeFiles(a(), b());
                requireCleanLog(a());
                mergeFiles(b(), atOnce ? m_folder->path("before.slopebook") : a());
                requireCleanLog(b());
                requireSame(a(), b());
                if (QTest::currentTestFailed()) {
                    qInfo("seed %d, round %d", seed, round);
                    return;
                }
                QVERIFY(mergeFiles(a(), b()).nothingNew);
                QVERIFY(mergeFiles(b(), a()).nothingNew);
            }
        }
    }

    // The same file imported at two desks: a third one, and both, have it once.
    void importedAtBoth() {
        const auto add = [&](const fs::path& file) {
            log::Log log = log::Log::open(file);
            const SessionId session =
                log.add(SessionHead{.athlete = log.session(m_season.autumn).head.value.athlete,
                                    .date = day(2026, 3, 14),
                                    .note = "imported"});
            const LiftId lift = log.session(m_season.autumn).sets.front().lift;
            log.add(session, lift, ladderSet(40, {1.1, 1.0}));
            log.add(session, lift, ladderSet(60, {0.8, 0.7}));
        };
        const auto counted = [](const fs::path& file) {
            std::size_t sets = 0, alive = 0;
            const log::Log log = log::Log::open(file, log::Access::ReadOnly);
            log::visitCarried(log, [&](const log::Carried& one) {
                sets += one.alive && one.kind == "set" ? 1 : 0;
                alive += one.alive ? 1 : 0;
            });
            return std::pair(sets, alive);
        };
        add(a());
        add(b());
        const auto once = counted(a());
        for (int round = 0; round < 3; ++round)
            for (const auto& [mine, other] :
                 {std::pair{a(), b()}, std::pair{b(), c()}, std::pair{c(), a()}}) {
                const auto report = mergeFiles(mine, other);
                QVERIFY(report.listed.empty() && report.renamed.empty());
                QVERIFY(report.nothingNew || round < 2);
            }
        for (const fs::path& file : {a(), b(), c()}) {
            QVERIFY(counted(file) == once);
            requireCleanLog(file);
            requireSame(file, a());
        }
    }

    void threeInARing() {
        const int seeds = rounds("SLOPEBOOK_MERGES", 2, 100);
        for (int seed = 1; seed <= seeds; ++seed) {
            init();
            unsigned edits = static_cast<unsigned>(5000 + 10 * seed);
            for (const fs::path& file : {a(), b(), c()})
                editFile(file, ++edits, 30);
            bool quiet = false;
            for (int round = 0; round < 8 && !quiet; ++round) {
                quiet = true;
                for (const auto& [mine, other] :
                     {std::pair{a(), b()}, std::pair{b(), c()}, std::pair{c(), a()}}) {
                    const auto report = mergeFiles(mine, other);
                    quiet = report.nothingNew && quiet;
                    if (round >= 5 && !report.nothingNew)
                        tell(seed, round, report);
                }
            }
            QVERIFY2(quiet, "three desks never come to rest");
            requireSame(a(), b());
            requireSame(b(), c());
            requireCleanLog(c());
        }
    }
};

QTEST_APPLESS_MAIN(TestMerging)
#include "tst_merging.moc"

// SPDX-License-Identifier: GPL-3.0-or-later
// A log is set back to a backup while a meeting of it is under way and hangs in the network: what
// that meeting knows of it is not so any more. It writes nothing into another state than its own,
// says so, and afterwards nothing is missing anywhere.
#include "core/log/backups.h"
#include "tests/meetings/twodesks.h"
#include "tests/support/bytes.h"
#include "tests/support/cuttingproxy.h"

using namespace slopebook;
using namespace slopebook::test;
namespace fs = std::filesystem;

class TestFooting : public TwoDesks {
    Q_OBJECT

    static void addSets(log::Log& log, Date date, int count) {
        const AthleteId who = log.athletes().front().id;
        const SessionId session = log.add(SessionHead{.athlete = who, .date = date});
        for (int i = 1; i <= count; ++i)
            log.add(session, log.lifts().front().id, ladderSet(20 + i, {0.9}));
    }
    /// The rack has what the office has not, and the office what the rack has not.
    void bothHaveNews() {
        {
            log::Log log = log::Log::create(m_rack->file());
            fillSeason(log);
            addSets(log, day(2026, 5, 1), 3);
        }
        m_rack->join("Rowing");
        m_rack->meet();
        m_office->create();
        m_office->join("Rowing");
        m_office->meet();
    }
    void news() {
        {
            log::Log log = m_office->open();
            for (unsigned i = 1; i <= 6; ++i)
                addSets(log, day(2026, 6, i), 30);
            const auto session = log.sessions(log.athletes().front().id).front();
            SessionHead head = session.value;
            head.note = "said at the office";
            log.change(session.id, head);
        }
        m_office->meet();
        log::Log log = m_rack->open();
        addSets(log, day(2026, 7, 1), 5);
    }
    void requireSameAtLast() {
        meetAll();
        requireSame();
    }

private Q_SLOTS:
    void initTestCase() { startStore(); }
    void init() { beginEmpty(); }

    // The file is written over with what a copy of it holds, at each place at which the meeting
    // waits or pauses in turn.
    void writtenOverWithACopy_data() {
        QTest::addColumn<bool>("before"); // the copy is of before what is not sent yet
        QTest::newRow("without what waits") << true;
        QTest::newRow("with what waits") << false;
    }
    void writtenOverWithACopy() {
        QFETCH(bool, before);
        bothHaveNews();
        const fs::path copy = m_folder->path("copy.slopebook"),
                       now = m_folder->path("now.slopebook");
        if (before)
            fs::copy_file(m_rack->file(), copy);
        news();
        if (!before)
            fs::copy_file(m_rack->file(), copy);
        fs::copy_file(m_rack->file(), now);
        int stopped = 0;
        for (int at = 1;; ++at) {
            fs::copy_file(now, m_rack->file(), fs::copy_options::overwrite_existing);
            int calls = 0;
            bool back = false;
            {
                log::Log log = m_rack->open();
                Connection store = Connection::open(meetings::addressOf(log));
                try {
                    meetings::meet(log, store, "2026-03-14T09:30:00Z",
                                   [&](std::int64_t, std::int64_t) {
                                       if (++calls == at) {
                                           fs::copy_file(copy, m_rack->file(),
                                                         fs::copy_options::overwrite_existing);
                                           back = true;
                                       }
                                       return true;
                                   });
                } catch (const LogError& error) {
                    QCOMPARE(error.kind(), LogError::Kind::Conflict);
                    QVERIFY2(std::string(error.what()).find("went back") != std::string::npos,
                             error.what());
                    ++stopped;
                }
            }
            if (!back)
                break;
            QCOMPARE(findingsIn(m_rack->file()), std::string());
            m_rack->meet();
            Connection cora = m_world->as("cora");
            const std::string where = difference(saidBy(m_rack->file()), saidByStore(cora));
            QVERIFY2(where.empty(), (std::to_string(at) + ": " + where).c_str());
        }
        QVERIFY(stopped > 0);
        requireSameAtLast();
    }

    // As a window does it: another file stands under the log's name. The meeting's connection is to
    // the old one, which is kept; the new one is not touched.
    void setBackByTheProgram() {
        bothHaveNews();
        const fs::path copy = m_folder->path("copy.slopebook");
        {
            const log::Log log = m_rack->open();
            QVERIFY(log.backup(copy).empty());
        }
        news();
        CuttingProxy proxy(m_world->server.port());
        fs::path kept;
        std::string fresh;
        {
            log::Log log = m_rack->open();
            Connection store = Connection::open(store::Address::read(
                Postgres::addressAt(proxy.port(), "cora") + " sslmode=disable gssencmode=disable"));
            proxy.stall(true);
            int calls = 0;
            const std::string said = refusal([&] {
                meetings::meet(log, store, "2026-03-14T09:30:00Z", [&](std::int64_t, std::int64_t) {
                    if (++calls == 3) { // it hangs
                        kept = log::goBackTo(copy, m_rack->file());
                        fresh = readBytes(m_rack->file());
                        proxy.stall(false);
                    }
                    return true;
                });
            });
            QVERIFY2(said.find("was moved, renamed or deleted") != std::string::npos, said.c_str());
        }
        QVERIFY(!kept.empty());
        QVERIFY(readBytes(m_rack->file()) == fresh);
        QCOMPARE(findingsIn(kept), std::string());
        requireSameAtLast();
    }

    // What a log takes as a day a store takes as well, and shows it; the year 0 of ISO 8601 is 1 BC
    // to PostgreSQL.
    void daysOfEveryYear() {
        bothHaveNews();
        const std::vector<std::pair<Date, std::string>> days{
            {day(0, 1, 1), "0001-01-01 BC"},   {day(0, 2, 29), "0001-02-29 BC"},
            {day(0, 12, 31), "0001-12-31 BC"}, {day(1, 1, 1), "0001-01-01"},
            {day(4, 2, 29), "0004-02-29"},     {day(1582, 10, 10), "1582-10-10"},
            {day(1900, 2, 28), "1900-02-28"},  {day(9999, 12, 31), "9999-12-31"}};
        {
            log::Log log = m_rack->open();
            log.add(Block{.name = "long", .first = day(0, 1, 1), .last = day(9999, 12, 31)});
            for (const auto& [date, shown] : days)
                addSets(log, date, 1);
        }
        const auto report = m_rack->meet();
        QVERIFY(report.notTaken.empty());
        for (const auto& [date, shown] : days)
            QCOMPARE(m_world->server.sql("SELECT DISTINCT day FROM slopebook.points WHERE day = '" +
                                         shown + "'"),
                     shown);
        requireSameAtLast();
    }
};

QTEST_GUILESS_MAIN(TestFooting)
#include "tst_footing.moc"

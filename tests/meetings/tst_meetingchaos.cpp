// SPDX-License-Identifier: GPL-3.0-or-later
// Six desks and a store in which everything goes wrong at once: connections cut at any message, the
// server and desks' programs killed, the store gone back to a backup, desks gone back to theirs or
// copied over one another, two programs at one log, rights that come and go, athletes who move, and
// days entered everywhere, also in the middle of a meeting. In the end all who may see the same say
// the same as the store, nobody has what was never his to see, and nothing that the store had
// acknowledged is missing while anybody still had it.
#include "tests/meetings/chaosworld.h"
#include "tests/support/longrun.h"

using namespace slopebook;
using namespace slopebook::test;

class TestMeetingChaos : public QObject {
    Q_OBJECT
    std::unique_ptr<ChaosWorld> m_world;

public:
    /// All worlds are one function to the test's own watchdog.
    static void initMain() { qputenv("QTEST_FUNCTION_TIMEOUT", "36000000"); }

private Q_SLOTS:
    void initTestCase() {
        try {
            m_world = std::make_unique<ChaosWorld>();
        } catch (const std::exception& error) {
            QFAIL(error.what());
        }
    }

    void allSayTheSame_data() {
        QTest::addColumn<unsigned>("seed");
        const int first = std::max(1, qEnvironmentVariableIntValue("SLOPEBOOK_MEETING_SEED"));
        const int worlds = rounds("SLOPEBOOK_MEETING_WORLDS", 2, 50);
        for (int seed = first; seed < first + worlds; ++seed)
            QTest::addRow("seed %d", seed) << static_cast<unsigned>(seed);
    }
    void allSayTheSame() {
        QFETCH(unsigned, seed);
        QVERIFY(m_world);
        int thing = 0;
        try {
            m_world->begin(seed);
            for (const int things = rounds("SLOPEBOOK_MEETING_ROUNDS", 150, 200); thing < things;
                 ++thing)
                m_world->oneThing();
            const std::string wrong = m_world->whatIsWrong();
            QVERIFY2(wrong.empty(), wrong.c_str());
        } catch (const std::exception& error) {
            QFAIL(("thing " + std::to_string(thing) + ": " + error.what()).c_str());
        }
    }
    // A test of the test.
    void whatWasDone() {
        for (const auto& [what, times] : m_world->did)
            qInfo("%s: %d", what.c_str(), times);
        for (const char* what : {"meetings", "  failed", "programs killed", "athletes moved"})
            QVERIFY2(m_world->did[what] > 0, what);
    }
};

QTEST_GUILESS_MAIN(TestMeetingChaos)
#include "tst_meetingchaos.moc"

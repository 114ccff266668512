// SPDX-License-Identifier: GPL-3.0-or-later
// Many desks write into one session at one moment: each meeting sends what waits at its desk, in
// whatever order the store lets them in, and no set is said to be refused.
#include "tests/meetings/meetingworld.h"

#include <memory>
#include <thread>

using namespace slopebook;
using namespace slopebook::test;
using meetings::MeetingReport;

class TestManyDesks : public QObject {
    Q_OBJECT
    static constexpr int desks = 10;

    static void enterSet(const MeetingDesk& desk) {
        log::Log log = desk.open();
        const auto sessions = log.liftSessions({.athlete = log.athletes().front().id});
        log.add(sessions.front().session, sessions.front().lift, ladderSet(52.5, {0.91}));
    }

private Q_SLOTS:
    void aSetEachIntoOneSession() {
        std::unique_ptr<StoreWorld> world;
        try {
            world = std::make_unique<StoreWorld>();
        } catch (const std::exception& error) {
            QFAIL(error.what());
        }
        const Folder folder;
        std::vector<MeetingDesk> all;
        for (int i = 0; i < desks; ++i) {
            const std::string name = "desk" + std::to_string(i) + ".slopebook";
            all.emplace_back(folder, name.c_str(), world->server.address("cora"));
            log::Log log = log::Log::create(all.back().file());
            if (i == 0)
                fillSeason(log);
        }
        for (const MeetingDesk& desk : all) {
            desk.join();
            desk.meet();
        }
        for (const MeetingDesk& desk : all)
            enterSet(desk);

        std::vector<MeetingReport> reports(desks);
        std::vector<std::string> failures(desks);
        std::vector<std::thread> meetings;
        for (std::size_t i = 0; i < desks; ++i)
            meetings.emplace_back([&, i] {
                try {
                    reports[i] = all[i].meet();
                } catch (const std::exception& error) {
                    failures[i] = error.what();
                }
            });
        for (std::thread& one : meetings)
            one.join();
        for (std::size_t i = 0; i < desks; ++i) {
            QVERIFY2(failures[i].empty(), failures[i].c_str());
            for (const Words& why : reports[i].notTaken)
                QFAIL(english(why).c_str());
            QCOMPARE(reports[i].went, 1);
            QCOMPARE(reports[i].waiting, 0);
        }

        for (const MeetingDesk& desk : all)
            desk.meet();
        Connection cora = world->as("cora");
        const Said there = saidByStore(cora);
        for (const MeetingDesk& desk : all) {
            const std::string where = difference(saidBy(desk.file()), there);
            QVERIFY2(where.empty(), where.c_str());
            const std::string found = findingsIn(desk.file());
            QVERIFY2(found.empty(), found.c_str());
        }
    }
};

QTEST_GUILESS_MAIN(TestManyDesks)
#include "tst_manydesks.moc"

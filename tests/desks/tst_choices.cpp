// SPDX-License-Identifier: GPL-3.0-or-later
// Both sides of a conflict, and the coach's choice, which travels.
#include "core/desks/conflictsides.h"
#include "core/desks/merge.h"
#include "tests/log/otherthings.h"

#include <QTest>

using namespace slopebook;
using namespace slopebook::test;
namespace fs = std::filesystem;

class TestChoices : public QObject {
    Q_OBJECT

    std::unique_ptr<Folder> m_folder;
    Season m_season;
    fs::path a() const { return m_folder->path("a.slopebook"); }
    fs::path b() const { return m_folder->path("b.slopebook"); }
    static desks::MergeReport mergeFiles(const fs::path& mine, const fs::path& other) {
        log::Log log = log::Log::open(mine);
        return desks::mergeInto(log, other);
    }
    /// The note of a set that both desks changed, and the one that lost.
    std::pair<std::string, std::string> setChangedTwice(SetId& id) {
        {
            log::Log log = log::Log::open(a());
            log::PlacedSet placed = log.session(m_season.autumn).sets.front();
            id = placed.id;
            placed.set.note = "here";
            log.change(placed.id, placed.set);
        }
        {
            log::Log log = log::Log::open(b());
            log::PlacedSet placed = log.set(id);
            placed.set.note = "there";
            log.change(placed.id, placed.set);
        }
        mergeFiles(a(), b());
        const std::string stands = log::Log::open(a()).set(id).set.note;
        return {stands, stands == "here" ? "there" : "here"};
    }

private Q_SLOTS:
    void init() {
        m_folder = std::make_unique<Folder>();
        {
            log::Log log = log::Log::create(a());
            m_season = fillSeason(log);
            addTestDay(log, m_season, addOtherThings(log, m_season));
        }
        fs::copy_file(a(), b());
    }

    void bothSidesAreShown() {
        SetId id{};
        const auto [stands, lost] = setChangedTwice(id);
        const log::Log log = log::Log::open(a());
        QCOMPARE(desks::openConflictCount(log), std::size_t{1});
        const auto open = desks::openConflicts(log);
        QCOMPARE(open.size(), std::size_t{1});
        QCOMPARE(open[0].why, desks::Why::BothChanged);
        QCOMPARE(open[0].kind, std::string("set"));
        QCOMPARE(english(open[0].about), std::string("Lane 3, 2025-11-03, Bench pull, set 1"));
        QCOMPARE(open[0].fields.size(), std::size_t{1});
        QCOMPARE(english(open[0].fields[0].field), std::string("note"));
        QCOMPARE(english(open[0].fields[0].stands), stands);
        QCOMPARE(english(open[0].fields[0].lost), lost);
    }

    // Chosen on one desk, it is chosen on both.
    void theOtherSideIsChosen_data() {
        QTest::addColumn<bool>("lostSide");
        QTest::newRow("what lost") << true;
        QTest::newRow("as it stands") << false;
    }
    void theOtherSideIsChosen() {
        QFETCH(bool, lostSide);
        SetId id{};
        const auto [stands, lost] = setChangedTwice(id);
        {
            log::Log log = log::Log::open(a());
            desks::settle(log, desks::openConflicts(log).front().uuid,
                          lostSide ? desks::Choice::WhatLost : desks::Choice::AsItStands);
            QVERIFY(desks::openConflicts(log).empty());
            QVERIFY(log.check().empty());
        }
        mergeFiles(b(), a());
        for (const fs::path& file : {a(), b()}) {
            const log::Log log = log::Log::open(file);
            QCOMPARE(log.set(id).set.note, lostSide ? lost : stands);
            QVERIFY(desks::openConflicts(log).empty());
        }
        QVERIFY(mergeFiles(a(), b()).nothingNew);
    }

    void aChoiceIsMadeOnce() {
        SetId id{};
        setChangedTwice(id);
        log::Log log = log::Log::open(a());
        const auto uuid = desks::openConflicts(log).front().uuid;
        desks::settle(log, uuid, desks::Choice::AsItStands);
        QCOMPARE(errorOf([&] { desks::settle(log, uuid, desks::Choice::WhatLost); }),
                 std::optional(LogError::Kind::Conflict));
    }

    // Two sessions, and two lines of conditions, that became one: what counts is what the one says
    // that is left, and that is what the other side is put into.
    void joinedOnesAreComparedWithWhatIsLeft_data() {
        QTest::addColumn<bool>("lostSide");
        QTest::newRow("what lost") << true;
        QTest::newRow("as it stands") << false;
    }
    void joinedOnesAreComparedWithWhatIsLeft() {
        QFETCH(bool, lostSide);
        for (const auto& [file, note] : {std::pair{a(), "here"}, std::pair{b(), "there"}}) {
            log::Log log = log::Log::open(file);
            const bool here = note == std::string("here");
            const SessionId session = log.add(SessionHead{.athlete = m_season.lane3,
                                                          .date = day(2026, 3, 14),
                                                          .bodyMass = Mass{here ? 70'000 : 71'000},
                                                          .note = note});
            const LiftId lift = log.session(m_season.autumn).sets.front().lift;
            log.add(session, lift, ladderSet(here ? 40 : 50, {1.1, 1.0}));
            log.setConditions(session, lift, {.place = note});
        }
        const auto report = mergeFiles(a(), b());
        QCOMPARE(report.joined.size(), std::size_t{1});
        QCOMPARE(report.listed.size(), std::size_t{2});
        std::string place, lostPlace, head, lostHead;
        for (std::size_t left = 2; left > 0; --left) {
            log::Log log = log::Log::open(a());
            const auto open = desks::openConflicts(log);
            QCOMPARE(open.size(), left);
            QCOMPARE(open[0].why, desks::Why::Joined);
            QVERIFY(open[0].stands && open[0].lived && open[0].known);
            const bool session = open[0].kind == "session";
            QCOMPARE(open[0].fields.size(), session ? std::size_t{2} : std::size_t{1});
            for (const auto& field : open[0].fields) {
                const std::string name = english(field.field);
                QVERIFY(name == (session ? "note" : "place") || (session && name == "body mass"));
                if (name == "body mass")
                    continue;
                (session ? head : place) = english(field.stands);
                (session ? lostHead : lostPlace) = english(field.lost);
            }
            desks::settle(log, open[0].uuid,
                          lostSide ? desks::Choice::WhatLost : desks::Choice::AsItStands);
            QCOMPARE(desks::openConflictCount(log), left - 1);
            QVERIFY(log.check().empty());
        }
        QVERIFY(head != lostHead && !head.empty() && !lostHead.empty());
        QVERIFY(place != lostPlace && !place.empty() && !lostPlace.empty());
        mergeFiles(b(), a());
        for (const fs::path& file : {a(), b()}) {
            const log::Log log = log::Log::open(file);
            QCOMPARE(desks::openConflictCount(log), std::size_t{0});
            int days = 0;
            for (const auto& one : log.sessions(m_season.lane3))
                if (one.value.date == day(2026, 3, 14)) {
                    ++days;
                    QCOMPARE(one.value.note, lostSide ? lostHead : head);
                    QCOMPARE(one.value.bodyMass,
                             std::optional(Mass{one.value.note == "here" ? 70'000 : 71'000}));
                    QCOMPARE(log.session(one.id).sets.size(), std::size_t{2});
                }
            QCOMPARE(days, 1);
        }
        QVERIFY(mergeFiles(a(), b()).nothingNew);
    }

    // Removed here, in use there: it is back, and cannot be removed while it is in use.
    void aRemovalIsChosenWhileInUse_data() {
        QTest::addColumn<bool>("lostSide");
        QTest::newRow("what lost") << true;
        QTest::newRow("as it stands") << false;
    }
    void aRemovalIsChosenWhileInUse() {
        QFETCH(bool, lostSide);
        SessionId session{};
        LiftId lift{};
        for (const fs::path& file : {a(), b()}) {
            log::Log log = log::Log::open(file);
            session = m_season.winter;
            lift = log.session(m_season.autumn).sets.front().lift;
            if (file == a())
                log.remove(session);
            else
                log.add(session, lift, ladderSet(50, {1.1, 1.0}));
        }
        mergeFiles(a(), b());
        log::Log log = log::Log::open(a());
        const auto open = desks::openConflicts(log);
        QCOMPARE(open.size(), std::size_t{1});
        QCOMPARE(open[0].why, desks::Why::Revived);
        if (lostSide) {
            QCOMPARE(errorOf([&] { desks::settle(log, open[0].uuid, desks::Choice::WhatLost); }),
                     std::optional(LogError::Kind::Conflict));
            QCOMPARE(desks::openConflictCount(log), std::size_t{1});
            for (const auto& set : log.session(session).sets)
                log.remove(set.id);
            for (const auto& set : log.session(session).sets)
                QVERIFY(set.id == SetId{}); // none is left
            log.setBattery(session, {});
        }
        desks::settle(log, open[0].uuid,
                      lostSide ? desks::Choice::WhatLost : desks::Choice::AsItStands);
        QCOMPARE(desks::openConflictCount(log), std::size_t{0});
        QVERIFY(log.check().empty());
        mergeFiles(b(), a());
        mergeFiles(a(), b());
        QCOMPARE(desks::openConflictCount(log), std::size_t{0});
    }

    // A name that was taken twice: to have it back the other one must have gone, else it yields
    // once more.
    void aNameIsWantedBack() {
        for (const auto& [file, note] : {std::pair{a(), "one"}, std::pair{b(), "other"}}) {
            log::Log log = log::Log::open(file);
            log.add(Athlete{.name = "Ada", .note = note});
        }
        const auto report = mergeFiles(a(), b());
        QCOMPARE(report.renamed.size(), std::size_t{1});
        QCOMPARE(report.renamed[0].before, std::string("Ada"));
        QCOMPARE(english(report.renamed[0].now.name), std::string("Ada (2)"));
        mergeFiles(b(), a());
        log::Log log = log::Log::open(a());
        for (const auto& athlete : log.athletes())
            if (athlete.value.name == "Ada")
                log.remove(athlete.id);
        desks::settle(log, desks::openConflicts(log).front().uuid, desks::Choice::WhatLost);
        int adas = 0;
        for (const auto& athlete : log.athletes())
            adas += athlete.value.name == "Ada" ? 1 : 0;
        QCOMPARE(adas, 1);
        QVERIFY(log.check().empty());
    }
};

QTEST_APPLESS_MAIN(TestChoices)
#include "tst_choices.moc"

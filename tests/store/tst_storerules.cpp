// SPDX-License-Identifier: GPL-3.0-or-later
// What a store takes and what it refuses, in which order, and what another desk then hears of it.
#include "tests/store/storeworld.h"
#include "tests/support/longrun.h"

#include <QJsonDocument>
#include <QJsonObject>

#include <algorithm>
#include <atomic>
#include <cmath>
#include <memory>
#include <set>
#include <thread>

using namespace slopebook;
using namespace slopebook::test;
using Answer = Pushed::Answer;
using Kind = StoreError::Kind;

namespace {
/// PostgreSQL orders a JSON object's keys in its own way.
QJsonObject json(const std::optional<std::string>& text) {
    return QJsonDocument::fromJson(QByteArray::fromStdString(text.value_or("{}"))).object();
}

std::string with(const std::string& name, const Sixteen& uuid, const std::string& more = {}) {
    return "{\"" + name + "\":\"" + store::uuidText(uuid) + "\"" + more + "}";
}
} // namespace

class TestStoreRules : public QObject {
    Q_OBJECT
    std::unique_ptr<StoreWorld> m_world;
    std::unique_ptr<Connection> m_cora, m_dora;
    unsigned m_next = 1000;

    /// A squad of its own for each test: numbers, names.
    std::vector<Atom> fresh() {
        m_next += 100;
        const std::string n = std::to_string(m_next);
        return smallSquad(m_world->rowing, m_next, "Ada " + n, "Bench pull " + n);
    }
    Pushed push(const std::vector<Atom>& batch) {
        return store::push(*m_cora, m_world->begin, batch);
    }
    std::int64_t standing(const Atom& one) const {
        return m_world->count("slopebook.atoms WHERE id = '" + store::uuidText(one.uuid) + "'");
    }

private Q_SLOTS:
    void initTestCase() {
        try {
            m_world = std::make_unique<StoreWorld>();
        } catch (const std::exception& error) {
            QFAIL(error.what());
        }
        m_cora = std::make_unique<Connection>(m_world->as("cora"));
        m_dora = std::make_unique<Connection>(m_world->as("dora"));
    }

    // Every kind comes out as it went in, to the last digit, what others hang on before them.
    void everyKindComesOutAsItWentIn() {
        auto batch = fresh();
        const Sixteen lift = batch[0].uuid, who = batch[1].uuid, day = batch[2].uuid;
        const Sixteen squad = m_world->rowing, all = store::everybody;
        const auto id = [&] { return numbered(++m_next + 50); };
        const Sixteen test = id(), device = id(), station = id();
        batch.push_back(atom(
            "test", test, all, {},
            js("{'name':'Jump','unit':'m','note':'tab\\there, \\'quoted\\' \\\\ line\\nend é'}")));
        batch.push_back(atom("device", device, all, {}, named("Encoder A")));
        batch.push_back(
            atom("block", id(), squad, {},
                 js("{'name':'Autumn','first_day':'2026-03-01','last_day':'2026-03-31'}")));
        batch.push_back(atom("equipment", id(), squad, {}, named("Hall")));
        batch.push_back(atom("station", station, squad, {},
                             js("{'name':'Mat','tests':['") + store::uuidText(test) + "\"]}"));
        batch.push_back(
            atom("lift conditions", id(), squad, day,
                 with("lift", lift, js(",'device':'") + store::uuidText(device) + "\"")));
        batch.push_back(atom("test conditions", id(), squad, day, with("test", test)));
        batch.push_back(
            atom("attempt", id(), squad, day, with("test", test, js(",'ordinal':1,'value':0.51"))));
        batch.push_back(atom("gap", id(), squad, day, with("lift", lift, js(",'ordinal':1"))));
        batch.push_back(
            atom("check load", id(), squad, who, with("lift", lift, js(",'load_g':60000"))));
        batch.push_back(
            atom("roster", id(), squad, station, with("athlete", who, js(",'day':'2026-03-14'"))));
        batch.push_back(atom("conflict", id(), squad, {}, with("about", who)));
        batch.push_back(atom("session", id(), squad, who,
                             with("repeat_of", day, js(",'day':'2026-03-16','ordinal':1"))));
        batch.push_back(setOf(m_next + 90, squad, day, lift, 9, 1, "0.1234567890123456,9.99,1e-7"));
        batch.push_back(removed(atom("equipment", id(), squad, {}, named("Old hall"))));
        Atom unsaid = removed(atom("athlete", id(), squad, {}, ""));
        unsaid.content.reset();
        batch.push_back(unsaid);
        unsaid.kind = "set"; // nor what it belonged to
        unsaid.uuid = id();
        batch.push_back(unsaid);
        for (const bool byCopy : {false, true}) {
            if (byCopy) { // the same again, among more than go in one statement
                for (unsigned i = 0; i < 600; ++i)
                    batch.push_back(setOf(500'000 + i, squad, day, lift, 100 + static_cast<int>(i),
                                          static_cast<int>(i), "0.5"));
                batch[6] = edited(batch[6], *batch[6].content);
                batch[17] = edited(batch[17], *batch[17].content);
            }
            const Pushed pushed = push(batch);
            QCOMPARE(pushed.answer, Answer::Ok);
            QCOMPARE(pushed.wrote, byCopy ? std::int64_t(602) : std::int64_t(batch.size()));
            const Pulled back = pulled(*m_cora, std::nullopt, {{.squad = squad}, {.squad = all}});
            QCOMPARE(back.look.now, pushed.now);
            QCOMPARE(back.atoms.size(), batch.size());
            std::set<Sixteen> seen;
            for (const Atom& one : back.atoms) {
                const auto was = std::find_if(batch.begin(), batch.end(), [&](const Atom& other) {
                    return other.uuid == one.uuid;
                });
                QVERIFY(was != batch.end());
                QVERIFY(one.kind == was->kind && one.squad == was->squad &&
                        one.parent == was->parent && one.alive == was->alive &&
                        one.trail == was->trail);
                QCOMPARE(one.content.has_value(), was->content.has_value());
                QCOMPARE(json(one.content), json(was->content));
                QVERIFY2(!one.parent || seen.contains(*one.parent), one.kind.c_str());
                seen.insert(one.uuid);
            }
        }
    }

    void theSameAgainCountsOnce() {
        const auto batch = fresh();
        const Pushed first = push(batch);
        QCOMPARE(first.answer, Answer::Ok);
        const Pushed again = push(batch);
        QCOMPARE(again.answer, Answer::Ok);
        QCOMPARE(again.wrote, std::int64_t(0));
        QCOMPARE(again.now, first.now); // not even counted
        const auto look = store::lookAt(*m_cora, first.now);
        QVERIFY(look.knowsMark && look.now == first.now);
    }

    // The store's revision lies on the way of what comes: written. What comes lies on the store's
    // way: left as it is. Neither: nothing of the whole batch is written.
    void revisionsSayWhoCameFirst() {
        auto batch = fresh();
        push(batch);
        const Atom mine = edited(batch[1], named("Ada M"));
        QCOMPARE(push({mine}).wrote, std::int64_t(1));
        QCOMPARE(push({batch[1]}).wrote, std::int64_t(0)); // late, and known
        QCOMPARE(push({edited(edited(mine, named("Ada N")), named("Ada O"))}).wrote,
                 std::int64_t(1));
        const Atom other = edited(batch[1], named("Ada X"));
        const Atom beside =
            setOf(m_next + 40, m_world->rowing, batch[2].uuid, batch[0].uuid, 7, 1, "1");
        const Pushed stale = push({beside, other});
        QCOMPARE(stale.answer, Answer::Stale);
        QCOMPARE(stale.stale, std::vector{other.uuid});
        QCOMPARE(standing(beside), 0);
    }

    // By hand, past push(): a coach's own login cannot write over what it does not know either.
    void norByHand() {
        const auto batch = fresh();
        push(batch);
        const std::string of = " WHERE id = '" + store::uuidText(batch[1].uuid) + "'";
        for (const std::string change :
             {"content = '{\"name\":\"Eve\"}'",
              "content = '{\"name\":\"Eve\"}', trail = ARRAY[gen_random_uuid()]",
              "alive = false, trail = trail || gen_random_uuid(), hashes = hashes || "
              "gen_random_uuid()"}) {
            const auto said = refusal(
                [&] { m_cora->run(("UPDATE slopebook.atoms SET " + change + of).c_str()); });
            QVERIFY2(said != "done", change.c_str());
        }
        m_cora->run(("UPDATE slopebook.atoms SET content = '{\"name\":\"Eve\"}', trail = trail || "
                     "gen_random_uuid(), hashes = hashes || gen_random_uuid()" +
                     of)
                        .c_str());
        const store::Rows row = m_cora->ask(
            ("SELECT version = (SELECT n FROM slopebook.store), author FROM slopebook.atoms" + of)
                .c_str());
        QVERIFY(row.yes(0, 0) && row.text(0, 1) == "cora");
    }

    void keysBelongToOne() {
        auto batch = fresh();
        push(batch);
        Atom twin = atom("athlete", numbered(m_next + 30), m_world->rowing, {}, *batch[1].content);
        QCOMPARE(push({twin}).answer, Answer::Taken);
        QCOMPARE(standing(twin), 0);
        Atom set = setOf(m_next + 31, m_world->rowing, batch[2].uuid, batch[0].uuid, 1, 5, "1");
        QCOMPARE(push({set}).answer, Answer::Taken);
        // swapped in one push: each takes the other's
        Atom one = batch[3], two = batch[4];
        std::swap(one.content, two.content);
        one.trail.push_back(newStep());
        two.trail.push_back(newStep());
        QCOMPARE(push({one, two}).answer, Answer::Ok);
        // a removed one's is free, and taken when it comes back
        const Atom gone = removed(batch[5]);
        QCOMPARE(push({gone}).answer, Answer::Ok);
        set = setOf(m_next + 32, m_world->rowing, batch[2].uuid, batch[0].uuid, 3, 5, "1");
        QCOMPARE(push({set}).answer, Answer::Ok);
        Atom back = gone;
        back.alive = true;
        back.trail.push_back(newStep());
        QCOMPARE(push({back}).answer, Answer::Taken);
        QCOMPARE(push({removed(set), back}).answer, Answer::Ok);
        // the same name in another squad is another name
        twin.squad = m_world->judo;
        QCOMPARE(store::push(*m_dora, m_world->begin, std::vector{twin}).answer, Answer::Ok);
    }

    void whatLivesHangsOnWhatLives_data() {
        QTest::addColumn<int>("which");
        for (int i = 0; i < 12; ++i)
            QTest::addRow("case %d", i) << i;
    }
    void whatLivesHangsOnWhatLives() {
        QFETCH(int, which);
        auto batch = fresh();
        const Sixteen lift = batch[0].uuid, who = batch[1].uuid, day = batch[2].uuid;
        const Sixteen squad = m_world->rowing, id = numbered(m_next + 20);
        const Sixteen test = numbered(m_next + 21), station = numbered(m_next + 22);
        batch.push_back(
            atom("test", test, store::everybody, {}, named("Jump " + std::to_string(m_next))));
        batch.push_back(atom("station", station, squad, {},
                             js("{'name':'Mat ") + std::to_string(m_next) + js("','tests':['") +
                                 store::uuidText(test) + "\"]}"));
        QCOMPARE(push(batch).answer, Answer::Ok);
        const std::vector<std::vector<Atom>> bad{
            {setOf(m_next + 20, squad, numbered(9), lift, 5, 1, "1")}, // no such session
            {setOf(m_next + 20, squad, day, numbered(9), 5, 1, "1")},  // no such lift
            {setOf(m_next + 20, squad, who, lift, 5, 1, "1")},         // under an athlete
            {setOf(m_next + 20, squad, day, who, 5, 1, "1")},          // an athlete as its lift
            {removed(batch[2])},                                       // sets live under it
            {removed(batch[0])},                                       // sets speak of it
            {removed(batch[1])},                                       // a session is left
            {removed(batch[6])},                                       // a station's test
            {atom("session", id, squad, who,
                  with("repeat_of", numbered(9), js(",'day':'2026-03-15','ordinal':1")))},
            {atom("roster", id, squad, station, with("athlete", day, js(",'day':'2026-03-15'")))},
            {atom("station", id, squad, {},
                  js("{'name':'B','tests':['") + store::uuidText(lift) + "\"]}")},
            {atom("lift conditions", id, squad, day,
                  with("lift", lift, js(",'device':'") + store::uuidText(lift) + "\""))},
        };
        const auto before = StoreWorld::markOf(*m_cora);
        QCOMPARE(push(bad[static_cast<std::size_t>(which)]).answer, Answer::Orphan);
        QCOMPARE(StoreWorld::markOf(*m_cora), before);
        // all of it at once may go, in whatever order it stands in the batch
        if (which == 4) {
            std::vector<Atom> all;
            for (const Atom& one : batch)
                all.push_back(removed(one));
            QCOMPARE(push(all).answer, Answer::Ok);
        }
    }

    void whatNoLogHoldsIsRefused_data() {
        QTest::addColumn<QString>("kind");
        QTest::addColumn<QString>("content");
        const auto row = [](const char* kind, const std::string& content) {
            QTest::addRow("%s %s", kind, content.c_str())
                << QString::fromUtf8(kind) << QString::fromStdString(content);
        };
        row("athlete", js("{'name':' '}"));
        row("athlete", js("{'name':5}"));
        row("athlete", js("['name']"));
        row("athlete", "null");
        row("block", js("{'name':'a','first_day':'2026-03-02','last_day':'2026-03-01'}"));
        row("block", js("{'name':'a','first_day':'2026-02-30','last_day':'2026-03-01'}"));
        row("session", js("{'day':'14.3.2026','ordinal':1}"));
        row("session", js("{'day':'2026-03-14','ordinal':0}"));
        row("session", js("{'day':'2026-03-14','ordinal':2,'body_mass_g':-1}"));
        row("set", js("{'lift':'LIFT','ordinal':9,'load_g':2000001,'velocities':[1]}"));
        row("set", js("{'lift':'LIFT','ordinal':9,'load_g':1.5,'velocities':[1]}"));
        row("set", js("{'lift':'LIFT','ordinal':9,'load_g':1,'velocities':[10]}"));
        row("set", js("{'lift':'LIFT','ordinal':9,'load_g':1,'velocities':[1,0]}"));
        row("set", js("{'lift':'LIFT','ordinal':9,'load_g':1,'velocities':['1']}"));
        row("set", js("{'lift':'LIFT','ordinal':9,'load_g':1,'velocities':[{'velocity':11}]}"));
        row("set", js("{'lift':'LIFT','ordinal':9,'load_g':1,'velocities':[{'velocity':'1'}]}"));
        row("set", js("{'lift':'LIFT','ordinal':9,'load_g':1,'velocities':[{'excluded':'x'}]}"));
        row("set", js("{'lift':'no uuid','ordinal':9,'load_g':1,'velocities':[1]}"));
        row("set", js("{'ordinal':9,'load_g':1,'velocities':[1]}"));
        row("set", js("{'lift':'LIFT','ordinal':9,'load_g':1,'velocities':[1"));
        row("gap", js("{'ordinal':1}"));
        row("attempt", js("{'ordinal':1,'value':0,'test':'LIFT'}"));
        row("wallet", js("{'name':'a'}"));
    }
    void whatNoLogHoldsIsRefused() {
        QFETCH(QString, kind);
        QFETCH(QString, content);
        const auto batch = fresh();
        push(batch);
        content.replace(QStringLiteral("LIFT"),
                        QString::fromStdString(store::uuidText(batch[0].uuid)));
        std::optional<Sixteen> parent;
        if (kind == QStringLiteral("session"))
            parent = batch[1].uuid;
        if (kind == QStringLiteral("set") || kind == QStringLiteral("gap") ||
            kind == QStringLiteral("attempt"))
            parent = batch[2].uuid;
        const Atom bad = atom(kind.toStdString(), numbered(m_next + 33), m_world->rowing, parent,
                              content.toStdString());
        const auto before = StoreWorld::markOf(*m_cora);
        const std::string said = refusal([&] {
            if (push({bad}).answer == Answer::Orphan)
                throw BadInput(asIs("orphan"), asIs("none"));
        });
        QVERIFY2(said != "done", "it was taken");
        QCOMPARE(StoreWorld::markOf(*m_cora), before);
        Atom endless = batch[1];
        endless.trail.clear();
        QCOMPARE(push({endless}).answer, Answer::Stale);
        endless.uuid = numbered(m_next + 34);
        endless.content = named("Endless");
        QVERIFY(refusal([&] { push({endless}); }) != "done");
    }

    // Under other isolation levels the counter's lock does not show what was written before it.
    void onlyReadCommittedWrites() {
        const auto batch = fresh();
        for (const char* level : {"REPEATABLE READ", "SERIALIZABLE"}) {
            store::Moment moment(*m_cora, ("BEGIN ISOLATION LEVEL " + std::string(level)).c_str());
            QVERIFY(refusal([&] { push(batch); }).find("READ COMMITTED alone") !=
                    std::string::npos);
        }
        store::Moment moment(*m_cora, "BEGIN ISOLATION LEVEL REPEATABLE READ");
        QVERIFY(refusal([&] {
                    m_cora->run("INSERT INTO slopebook.atoms (id, squad, kind, alive, trail, "
                                "hashes, content) VALUES (gen_random_uuid(), gen_random_uuid(), "
                                "'athlete', true, '{}', '{}', '{}')");
                }).find("READ COMMITTED alone") != std::string::npos);
    }

    void anotherLayoutIsRefusedAlsoInTheMiddle() {
        m_world->server.sql("UPDATE slopebook.store SET layout = 2");
        const auto said = refusal([&] { push(fresh()); });
        const auto looked = refusal([&] { store::lookAt(*m_cora, m_world->begin); });
        m_world->server.sql("UPDATE slopebook.store SET layout = 1");
        QVERIFY2(said.find("another version of Slopebook") != std::string::npos, said.c_str());
        QVERIFY2(looked.find("Update Slopebook") != std::string::npos, looked.c_str());
    }

    // A sequence gives numbers out before they are committed: who reads up to the highest misses
    // what comes later under a lower one. Our counter is held until then.
    void aSequenceWouldMissWhatOursDoesNot() {
        Connection admin = m_world->as("admin"), slow = m_world->as("admin"),
                   quick = m_world->as("admin");
        const char* add = "INSERT INTO trapped VALUES (nextval('public.trap'), 'one')";
        for (Connection* one : {&admin, &slow, &quick})
            one->run("SET search_path = public");
        admin.run("CREATE SEQUENCE trap; CREATE TABLE trapped (v bigint, what text)");
        slow.run("BEGIN");
        slow.run(add);
        quick.run(add);
        const auto cursor = admin.ask("SELECT max(v) FROM trapped").integer(0, 0);
        slow.run("COMMIT");
        QCOMPARE(admin.ask("SELECT count(*) FROM trapped").integer(0, 0), std::int64_t(2));
        QCOMPARE(admin.ask("SELECT count(*) FROM trapped WHERE v > $1", {std::to_string(cursor)})
                     .integer(0, 0),
                 std::int64_t(0)); // the slow one's is never seen

        Connection other = m_world->as("cora");
        const auto first = fresh(), second = fresh();
        m_cora->run("BEGIN ISOLATION LEVEL READ COMMITTED");
        push(first);
        other.run("SET lock_timeout = '100ms'");
        try {
            store::push(other, m_world->begin, second);
            QFAIL("it did not wait");
        } catch (const StoreError& error) {
            QCOMPARE(error.kind(), Kind::Busy);
        }
        const Mark before = StoreWorld::markOf(*m_dora);
        m_cora->run("COMMIT");
        QCOMPARE(StoreWorld::markOf(*m_dora).n, before.n + 1);
    }

    // Two desks write, one reads all the while: it misses nothing, and no number is left out.
    void twoAtOnceAndAReaderMissNothing() {
        const auto base = fresh();
        push(base);
        const int each = rounds("SLOPEBOOK_STORE_PUSHES", 25, 1000);
        const Mark start = StoreWorld::markOf(*m_cora);
        std::atomic<int> working = 2;
        std::atomic<int> failed = 0;
        const auto write = [&](unsigned from) {
            try {
                Connection mine = m_world->as("cora");
                for (int i = 0; i < each; ++i) {
                    const std::vector one{setOf(from + static_cast<unsigned>(i), m_world->rowing,
                                                base[2].uuid, base[0].uuid,
                                                static_cast<int>(from) + i, 1, "1")};
                    failed += store::push(mine, start, one).answer != Answer::Ok;
                }
            } catch (const std::exception&) {
                ++failed;
            }
            --working;
        };
        std::thread a(write, 200'000U), b(write, 300'000U);
        std::set<Sixteen> seen;
        store::Cursor cursor{.squad = m_world->rowing, .version = start.n};
        Mark mark = start;
        for (bool last = false; !last;) {
            last = working == 0;
            const Pulled some = pulled(*m_cora, mark, {cursor});
            for (const Atom& one : some.atoms)
                QVERIFY(seen.insert(one.uuid).second);
            mark = some.look.now;
            cursor.version = mark.n;
        }
        a.join();
        b.join();
        QCOMPARE(failed.load(), 0);
        QCOMPARE(seen.size(), static_cast<std::size_t>(2 * each));
        QCOMPARE(mark.n, start.n + 2 * each);
    }

    void othersAreTold() {
        Connection other = m_world->as("dora");
        store::listen(other);
        const auto batch = fresh();
        push(batch);
        QVERIFY(other.waitForNews(std::chrono::seconds(5)));
        // Who pushed is not told of their own.
        store::listen(*m_cora);
        push(fresh());
        QVERIFY(other.waitForNews(std::chrono::seconds(5)));
        QVERIFY(!m_cora->waitForNews(std::chrono::milliseconds(200)));
        push(batch); // nothing new: nobody is woken
        QVERIFY(!other.waitForNews(std::chrono::milliseconds(60)));
    }

    // The three questions of the guide to running a store, on points whose line is computed by
    // hand: 40, 60, 80 kg at 1.1, 0.9, 0.6 m/s. Sxx = 800, Sxy = -10, Syy = 0.1266667; residuals
    // -1/60, 2/60, -1/60.
    void whatAnAnalystAsks() {
        Connection admin = m_world->as("admin");
        auto batch = fresh();
        batch.push_back(atom("session", numbered(m_next + 60), m_world->rowing, batch[1].uuid,
                             js("{'day':'2026-04-14','ordinal':1}")));
        // 40 and 80 kg on v = 1.5 - 0.01 L; of a rep that does not count, and of what was not
        // lifted
        batch.push_back(setOf(m_next + 61, m_world->rowing, numbered(m_next + 60), batch[0].uuid, 1,
                              40000, "1.1"));
        Atom one = setOf(m_next + 62, m_world->rowing, numbered(m_next + 60), batch[0].uuid, 2,
                         80000, js("0.7,{'velocity':2.5,'excluded':'thrown'}"));
        batch.push_back(one);
        one =
            setOf(m_next + 63, m_world->rowing, numbered(m_next + 60), batch[0].uuid, 3, 90000, "");
        one.content->insert(1, js("'outcome':'not lifted',"));
        batch.push_back(one);
        one = setOf(m_next + 64, m_world->rowing, numbered(m_next + 60), batch[0].uuid, 4, 60000,
                    "3");
        one.content->insert(1, js("'excluded':'bar hit',"));
        batch.push_back(one);
        QCOMPARE(push(batch).answer, Answer::Ok);
        Connection ana = m_world->as("ana");
        const std::string who = "Ada " + std::to_string(m_next);
        const store::Rows lines =
            ana.ask("SELECT day, n, loads, v0, slope, r2, residual_sd FROM slopebook.lines "
                    "WHERE squad = 'Rowing' AND athlete = $1 ORDER BY day",
                    {who});
        QCOMPARE(lines.size(), 2);
        QCOMPARE(lines.text(0, 0), std::string_view("2026-03-14"));
        QCOMPARE(lines.integer(0, 1), std::int64_t(3));
        QVERIFY(std::abs(lines.real(0, 3) - (2.6 / 3 + 0.75)) < 1e-12);
        QVERIFY(std::abs(lines.real(0, 4) + 0.0125) < 1e-12);
        QVERIFY(std::abs(lines.real(0, 5) - 0.125 / (0.38 / 3)) < 1e-12);
        QVERIFY(std::abs(lines.real(0, 6) - std::sqrt(6.0 / 3600)) < 1e-12);
        QCOMPARE(lines.integer(1, 1), std::int64_t(2));
        QVERIFY(std::abs(lines.real(1, 3) - 1.5) < 1e-12);
        QVERIFY(std::abs(lines.real(1, 4) + 0.01) < 1e-12);
        QVERIFY(lines.isNull(1, 6)); // two points have no scatter
        const store::Rows best = ana.ask(
            "SELECT day, max(velocity) FROM slopebook.points WHERE athlete = $1 AND load_kg = 80 "
            "GROUP BY day ORDER BY day",
            {who});
        QCOMPARE(best.real(0, 1), 0.6);
        QCOMPARE(best.real(1, 1), 0.7);
        const store::Rows busy = ana.ask(
            "SELECT date_trunc('month', day)::date AS month, count(DISTINCT session_id), count(*) "
            "FROM slopebook.reps WHERE athlete = $1 GROUP BY month ORDER BY month",
            {who});
        QCOMPARE(busy.text(0, 0), std::string_view("2026-03-01"));
        QCOMPARE(busy.integer(0, 2), std::int64_t(5));
        QCOMPARE(busy.integer(1, 1), std::int64_t(1));
        QCOMPARE(busy.integer(1, 2), std::int64_t(4));
        // an empty bar of nothing: a load of 0 is as it is by default, and left out
        Atom empty = atom("set", numbered(m_next + 65), m_world->rowing, batch[2].uuid,
                          with("lift", batch[0].uuid, js(",'ordinal':4,'velocities':[2]")));
        QCOMPARE(push({empty}).answer, Answer::Ok);
        QCOMPARE(
            ana.ask("SELECT load_kg FROM slopebook.points WHERE athlete = $1 AND set = 4", {who})
                .real(0, 0),
            0.0);
    }

    // The rule and the load of a lift that says otherwise.
    void pointsFollowTheLift() {
        auto batch = fresh();
        const std::string n = std::to_string(m_next);
        batch[0].content = js("{'name':'Pull-up ") + n + js("','rule':'mean','moves_body':true}");
        QCOMPARE(push(batch).answer, Answer::Ok);
        Connection ana = m_world->as("ana");
        const char* ask =
            "SELECT load_kg, velocity FROM slopebook.points WHERE athlete = $1 ORDER BY set";
        QVERIFY(ana.ask(ask, {"Ada " + n}).empty()); // no body mass: no load
        QCOMPARE(
            push({edited(batch[2], js("{'day':'2026-03-14','ordinal':1,'body_mass_g':70500}"))})
                .answer,
            Answer::Ok);
        const store::Rows rows = ana.ask(ask, {"Ada " + n});
        QCOMPARE(rows.size(), 3);
        QCOMPARE(rows.real(0, 0), 110.5);
        QVERIFY(std::abs(rows.real(0, 1) - 1.075) < 1e-12);
    }
};

QTEST_GUILESS_MAIN(TestStoreRules)
#include "tst_storerules.moc"

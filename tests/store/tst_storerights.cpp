// SPDX-License-Identifier: GPL-3.0-or-later
// Who sees and writes what is the server's to say: a login with its password and psql comes no
// further than the window does.
#include "tests/store/storeworld.h"

#include <memory>

using namespace slopebook;
using namespace slopebook::test;
using Answer = Pushed::Answer;
using Kind = StoreError::Kind;

class TestStoreRights : public QObject {
    Q_OBJECT
    std::unique_ptr<StoreWorld> m_world;
    std::unique_ptr<Connection> m_admin, m_cora, m_dora;
    QString m_hers;                ///< a temporary table of cora's
    std::vector<Atom> m_ada, m_bo; ///< cora's in Rowing, dora's in Judo

    /// What stands in the store, to the last bit.
    std::string whole() {
        return std::string(
            m_admin
                ->ask("SELECT concat_ws(' ', (SELECT md5(string_agg(a::text, ' ' ORDER BY id)) "
                      "FROM slopebook.atoms AS a), (SELECT md5(string_agg(m::text, ' ' ORDER BY "
                      "m)) FROM slopebook.members AS m), (SELECT s::text FROM slopebook.store AS "
                      "s))")
                .text(0, 0));
    }

private Q_SLOTS:
    void initTestCase() {
        try {
            m_world = std::make_unique<StoreWorld>();
        } catch (const std::exception& error) {
            QFAIL(error.what());
        }
        m_admin = std::make_unique<Connection>(m_world->as("admin"));
        m_cora = std::make_unique<Connection>(m_world->as("cora"));
        m_dora = std::make_unique<Connection>(m_world->as("dora"));
        m_ada = smallSquad(m_world->rowing, 100, "Ada", "Bench pull");
        m_bo = smallSquad(m_world->judo, 200, "Bo", "Back squat");
        QCOMPARE(store::push(*m_cora, m_world->begin, m_ada).answer, Answer::Ok);
        QCOMPARE(store::push(*m_dora, m_world->begin, m_bo).answer, Answer::Ok);
        m_cora->run("CREATE TEMP TABLE hers AS SELECT 'Ada'::text AS a");
        m_hers = QString::fromStdString(
            std::string(m_cora
                            ->ask("SELECT nspname || '.hers' FROM pg_namespace WHERE oid = "
                                  "pg_my_temp_schema()")
                            .text(0, 0)));
        m_admin->run("ANALYZE slopebook.atoms");
    }

    // dora at psql, with everything that SQL has: refused by the server, and nothing is otherwise.
    void bySqlNobodyComesFurther_data() {
        QTest::addColumn<QString>("sql");
        QTest::addColumn<QString>("answer"); ///< with "ERROR": a part of it
        const auto row = [](const char* sql, const char* answer) {
            QTest::newRow(sql) << QString::fromUtf8(sql) << QString::fromUtf8(answer);
        };
        const char* denied = "ERROR:  42501";
        // reading
        row("SELECT count(*) FROM slopebook.atoms WHERE squad = ROWING", "0");
        row("SELECT count(*) FROM slopebook.points WHERE athlete = 'Ada'", "0");
        row("SELECT count(*) FROM slopebook.points", "3");
        row("SELECT count(*) FROM slopebook.lines", "1");
        row("SELECT count(*) FROM slopebook.reps", "5");
        row("SELECT string_agg(name, ',' ORDER BY name) FROM slopebook.squads", "Everybody,Judo");
        row("SELECT string_agg(DISTINCT role, ',') FROM slopebook.members", "dora");
        row("SET row_security = off; SELECT count(*) FROM slopebook.atoms", denied);
        row("SELECT count(*) FROM (TABLE slopebook.atoms) AS a WHERE content::text LIKE '%Ada%'",
            "0");
        row("COPY (SELECT content FROM slopebook.atoms WHERE kind = 'athlete') TO STDOUT",
            "{\"name\": \"Bo\"}");
        row("COPY slopebook.atoms (content) TO STDOUT WHERE true", "ERROR:  42601");
        // what runs for each row before others are sorted out: it must not be shown them
        row("CREATE FUNCTION pg_temp.peek(jsonb) RETURNS boolean LANGUAGE plpgsql COST 0.0000001 "
            "AS "
            "$$BEGIN RAISE NOTICE 'peeked %', $1; RETURN true; END$$; SELECT count(*) FROM "
            "slopebook.atoms WHERE pg_temp.peek(content) AND kind = 'athlete' AND content ->> "
            "'name' = 'Ada'",
            "NOTICE:  peeked {\"name\": \"Bo\"}\n0");
        row("CREATE FUNCTION pg_temp.peek(text) RETURNS boolean LANGUAGE plpgsql COST 0.0000001 AS "
            "$$BEGIN RAISE NOTICE 'peeked %', $1; RETURN true; END$$; SELECT count(*) FROM "
            "slopebook.lines WHERE pg_temp.peek(athlete) AND athlete = 'Ada'",
            "0");
        // writing
        row("UPDATE slopebook.atoms SET content = '{\"name\":\"Eve\"}' WHERE squad = ROWING "
            "RETURNING 1",
            "");
        row("INSERT INTO slopebook.atoms (id, squad, kind, alive, trail, hashes, content) VALUES "
            "(gen_random_uuid(), ROWING, 'athlete', true, ARRAY[gen_random_uuid()], "
            "ARRAY[gen_random_uuid()], '{\"name\":\"Eve\"}')",
            denied);
        row("INSERT INTO slopebook.atoms (id, squad, kind, parent, alive, trail, hashes, content) "
            "VALUES "
            "(gen_random_uuid(), JUDO, 'session', ADA, true, ARRAY[gen_random_uuid()], "
            "ARRAY[gen_random_uuid()], '{\"day\":\"2026-03-15\",\"ordinal\":1}')",
            "ERROR:  SB002");
        row("INSERT INTO slopebook.atoms (id, squad, kind, alive, trail, hashes, content) VALUES "
            "(ADA, JUDO, "
            "'athlete', true, ARRAY[gen_random_uuid()], ARRAY[gen_random_uuid()], "
            "'{\"name\":\"Eve\"}') "
            "ON CONFLICT (id) DO UPDATE SET content = excluded.content, trail = excluded.trail",
            denied);
        row("DELETE FROM slopebook.atoms", denied);
        row("TRUNCATE slopebook.atoms", denied);
        row("COPY slopebook.atoms FROM STDIN", "ERROR:  ");
        row("UPDATE slopebook.atoms SET squad = ROWING WHERE kind = 'athlete'", denied);
        row("SELECT slopebook.move_athlete(ADA, JUDO)", denied);
        row("SELECT slopebook.move_athlete(BO, ROWING)", denied);
        // versions and counters
        row("UPDATE slopebook.atoms SET version = 1000000", denied);
        row("INSERT INTO slopebook.atoms (id, squad, kind, alive, trail, hashes, content, version) "
            "VALUES "
            "(gen_random_uuid(), JUDO, 'athlete', true, ARRAY[gen_random_uuid()], "
            "ARRAY[gen_random_uuid()], '{\"name\":\"Eve\"}', 1000000)",
            denied);
        row("UPDATE slopebook.store SET n = 1000000", denied);
        row("INSERT INTO slopebook.ticks VALUES (1000000)", denied);
        row("DELETE FROM slopebook.ticks", denied);
        row("SELECT slopebook.count_up()", denied);
        row("SET session_replication_role = replica", denied);
        row("SELECT set_config('session_replication_role', 'replica', false)", denied);
        for (const char* column : {"version = 1", "author = 'cora'", "key = NULL", "about = NULL",
                                   "device = NULL", "id = gen_random_uuid()", "kind = 'set'"})
            row(("UPDATE slopebook.atoms SET " + std::string(column)).c_str(), denied);
        row("INSERT INTO slopebook.atoms (id, squad, kind, alive, trail, hashes, content, author) "
            "VALUES (gen_random_uuid(), JUDO, 'athlete', true, ARRAY[gen_random_uuid()], "
            "ARRAY[gen_random_uuid()], '{\"name\":\"Eve\"}', 'cora')",
            denied);
        row("SELECT FROM slopebook.store FOR UPDATE", denied);
        row("SELECT FROM slopebook.store FOR KEY SHARE", denied);
        row("BEGIN; LOCK TABLE slopebook.atoms IN EXCLUSIVE MODE", denied);
        row("BEGIN; LOCK TABLE slopebook.store IN ROW EXCLUSIVE MODE", denied);
        row("BEGIN; SELECT slopebook.hold(); PREPARE TRANSACTION 'for ever'", "ERROR:  55000");
        // from a trigger of her own, where only the store's may
        row("CREATE FUNCTION pg_temp.bump() RETURNS trigger LANGUAGE plpgsql AS $$BEGIN PERFORM "
            "slopebook.count_up(); RETURN NEW; END$$; CREATE TEMP TABLE t (a int); CREATE TRIGGER "
            "b BEFORE INSERT ON t FOR EACH ROW EXECUTE FUNCTION pg_temp.bump(); INSERT INTO t "
            "VALUES (1)",
            denied);
        for (const char* ours : {"stamp", "look_at_references", "look_at_erased", "look_at_squad"})
            row(("CREATE TEMP TABLE t (LIKE slopebook.atoms); CREATE TRIGGER b BEFORE INSERT ON t "
                 "FOR EACH ROW EXECUTE FUNCTION slopebook." +
                 std::string(ours) + "()")
                    .c_str(),
                denied);
        const char* mine = "CREATE FUNCTION pg_temp.f() RETURNS trigger LANGUAGE plpgsql AS "
                           "$$BEGIN RETURN NULL; END$$; ";
        row((std::string(mine) + "CREATE TRIGGER mine BEFORE INSERT ON slopebook.atoms FOR EACH "
                                 "ROW EXECUTE FUNCTION pg_temp.f()")
                .c_str(),
            denied);
        row("CREATE RULE mine AS ON INSERT TO slopebook.atoms DO INSTEAD NOTHING", denied);
        row("CREATE TEMP TABLE t () INHERITS (slopebook.atoms)", denied);
        row("CREATE TEMP TABLE t (a uuid REFERENCES slopebook.atoms)", "ERROR:  42P16");
        row("CREATE POLICY mine ON slopebook.atoms USING (true)", denied);
        row("CREATE INDEX mine ON slopebook.atoms (id)", denied);
        row("ALTER VIEW slopebook.points SET (security_invoker = false)", denied);
        row("ALTER FUNCTION slopebook.hold() SECURITY INVOKER", denied);
        row("CREATE TEMP TABLE coming AS SELECT ADA::uuid AS id, ROWING::uuid AS squad, 'athlete' "
            "AS "
            "kind, NULL::uuid AS parent, true AS alive, ARRAY[gen_random_uuid()] AS trail, "
            "ARRAY[gen_random_uuid()] AS hashes, '{\"name\":\"Eve\"}'::jsonb AS content; SELECT "
            "slopebook.push(1, 0, (SELECT tag FROM slopebook.ticks WHERE n = 0), NULL)",
            denied);
        row("CREATE TEMP SEQUENCE turns; CREATE FUNCTION pg_temp.squad() RETURNS uuid LANGUAGE sql "
            "VOLATILE AS $$SELECT CASE WHEN nextval('pg_temp.turns') > 1 THEN ROWING ELSE JUDO "
            "END::uuid$$; CREATE TEMP VIEW coming AS SELECT gen_random_uuid() AS id, "
            "pg_temp.squad() AS squad, 'athlete' AS kind, NULL::uuid AS parent, true AS alive, "
            "ARRAY[gen_random_uuid()] AS trail, ARRAY[gen_random_uuid()] AS hashes, "
            "'{\"name\":\"Eve\"}'::jsonb AS content; SELECT slopebook.push(1, 0, (SELECT tag FROM "
            "slopebook.ticks WHERE n = 0), NULL)",
            denied);
        // what others do, and what is known of what they have
        row("SELECT * FROM HERS", denied);
        row("INSERT INTO HERS VALUES ('x')", denied);
        row("SELECT count(*) FROM pg_stats WHERE schemaname = 'slopebook' AND tablename = 'atoms'",
            "0");
        row("SELECT count(*) FROM pg_statistic", denied);
        row("SELECT count(*) FROM pg_stat_activity WHERE usename = 'cora' AND query LIKE "
            "'%hers%'",
            "0");
        row("SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE usename = 'cora'",
            denied);
        row("SELECT lo_import('/etc/passwd')", denied);
        // rights
        row("INSERT INTO slopebook.members VALUES ('dora', ROWING, 'write')", denied);
        row("UPDATE slopebook.members SET may = 'write'", denied);
        row("GRANT pg_database_owner TO dora", "ERROR:  ");
        row("SET ROLE pg_database_owner", denied);
        row("SET ROLE admin", denied);
        row("SET ROLE pg_write_all_data", denied);
        row("SELECT slopebook.admit('dora', 'write')", denied);
        row("ALTER ROLE dora SUPERUSER", denied);
        row("ALTER DATABASE squad SET search_path = evil", denied);
        row("SET ROLE cora", denied);
        row("SET SESSION AUTHORIZATION cora", denied);
        row("ALTER TABLE slopebook.atoms DISABLE ROW LEVEL SECURITY", denied);
        row("DROP POLICY see ON slopebook.atoms", denied);
        row("ALTER TABLE slopebook.atoms DISABLE TRIGGER ALL", denied);
        row("CREATE OR REPLACE FUNCTION slopebook.hold() RETURNS void LANGUAGE sql AS 'SELECT'",
            denied);
        row("CREATE TABLE slopebook.mine (a int)", denied);
        row("CREATE VIEW slopebook.all_of_it AS SELECT 1", denied);
        row("SELECT pg_read_file('postgresql.conf')", denied);
        row("COPY (SELECT 1) TO PROGRAM 'true'", denied);
        // names of her own in front of ours
        row("CREATE TEMP TABLE members (role name, squad uuid, may text); INSERT INTO members "
            "VALUES "
            "('dora', ROWING, 'write'); SET search_path = pg_temp, slopebook; SELECT count(*) FROM "
            "atoms "
            "WHERE squad = ROWING",
            "0");
        row("CREATE TEMP TABLE members (role name, squad uuid, may text); INSERT INTO members "
            "VALUES "
            "('dora', ROWING, 'write'), ('dora', JUDO, 'write'); SET search_path = pg_temp, "
            "slopebook; "
            "SELECT slopebook.move_athlete(ADA, JUDO)",
            denied);
        row("CREATE TEMP TABLE store (n bigint, layout int, writer xid8); SET search_path = "
            "pg_temp; "
            "SELECT slopebook.hold(); SELECT count(*) FROM store",
            "\n0");
        row("CREATE SCHEMA evil; CREATE FUNCTION evil.yes(uuid, uuid) RETURNS boolean LANGUAGE sql "
            "AS "
            "'SELECT true'; CREATE OPERATOR evil.= (LEFTARG = uuid, RIGHTARG = uuid, FUNCTION = "
            "evil.yes); "
            "CREATE FUNCTION evil.same(name, name) RETURNS boolean LANGUAGE sql AS 'SELECT true'; "
            "CREATE OPERATOR evil.= (LEFTARG = name, RIGHTARG = name, FUNCTION = evil.same); "
            "SET search_path = evil, slopebook, pg_catalog; SELECT count(*) FROM atoms "
            "WHERE content ->> 'name' = 'Ada'",
            "0");
        row("SET search_path = evil, slopebook, pg_catalog; SELECT move_athlete(ADA, JUDO)",
            denied);
    }
    void bySqlNobodyComesFurther() {
        QFETCH(QString, sql);
        QFETCH(QString, answer);
        const auto quoted = [](const Sixteen& uuid) {
            return QString::fromStdString("'" + store::uuidText(uuid) + "'");
        };
        sql.replace(QStringLiteral("ROWING"), quoted(m_world->rowing));
        sql.replace(QStringLiteral("JUDO"), quoted(m_world->judo));
        sql.replace(QStringLiteral("ADA"), quoted(m_ada[1].uuid));
        sql.replace(QStringLiteral("HERS"), m_hers);
        sql.replace(QStringLiteral("BO,"), quoted(m_bo[1].uuid) + u',');
        if (sql.contains(QStringLiteral("evil"))) // an institute that is generous with its database
            m_admin->run("GRANT CREATE ON DATABASE squad TO dora");
        const std::string before = whole();
        const auto ran = m_world->server.tryPsql(
            "dora", (sql.contains(QStringLiteral("peek")) ? "" : "\\set VERBOSITY sqlstate\n") +
                        sql.toStdString() + ";");
        m_admin->run("REVOKE CREATE ON DATABASE squad FROM dora");
        const QString out = QString::fromStdString(ran.out).trimmed();
        if (answer.contains(QStringLiteral("ERROR")))
            QVERIFY2(ran.exit != 0 && out.contains(answer), qPrintable(out));
        else
            QVERIFY2(ran.exit == 0 && out == answer.trimmed(), qPrintable(out));
        QVERIFY2(!out.contains(QStringLiteral("Ada")), qPrintable(out));
        if (!QTest::currentDataTag() || !sql.contains(QStringLiteral("hold()")))
            QCOMPARE(whole(), before);
    }

    // That the rows above can fail at all: a view without security_invoker, as one is made by
    // default, shows another squad's.
    void aViewMadeCarelesslyWouldLeak() {
        m_world->server.sql(
            "SET ROLE pg_database_owner; CREATE VIEW slopebook.leak AS SELECT * FROM "
            "slopebook.atoms; GRANT SELECT ON slopebook.leak TO dora");
        const auto seen = m_dora->ask("SELECT count(*) FROM slopebook.leak WHERE squad = $1",
                                      {store::uuidText(m_world->rowing)});
        QCOMPARE(seen.integer(0, 0), std::int64_t(5));
        m_world->server.sql("DROP VIEW slopebook.leak");
        // all of ours are made with care
        QCOMPARE(m_world->server.sql("SELECT count(*) FROM pg_class WHERE relnamespace = "
                                     "'slopebook'::regnamespace AND relkind = 'v' AND NOT "
                                     "'security_invoker=true' = ANY (coalesce(reloptions, '{}'))"),
                 std::string("0"));
        QCOMPARE(m_world->server.sql(
                     "SELECT string_agg(proname, ',') FROM pg_proc WHERE pronamespace = "
                     "'slopebook'::regnamespace AND prosecdef AND NOT coalesce(proconfig, "
                     "'{}')::text LIKE '%search_path=pg_catalog, pg_temp%'"),
                 std::string(""));
        QCOMPARE(
            m_world->server.sql("SELECT count(*) FROM pg_class WHERE relnamespace = "
                                "'slopebook'::regnamespace AND relname IN ('atoms', 'members', "
                                "'squads', 'moved') AND relrowsecurity"),
            std::string("4"));
    }

    void overTheProgramsOwnWayNeither() {
        // another squad's atom, and one's own under another's number
        Atom stolen = edited(m_ada[1], named("Eve"));
        QCOMPARE(store::push(*m_dora, m_world->begin, std::vector{stolen}).answer, Answer::NotOurs);
        stolen.squad = m_world->judo;
        QCOMPARE(store::push(*m_dora, m_world->begin, std::vector{stolen}).answer, Answer::NotOurs);
        const Pulled hers = pulled(*m_dora, std::nullopt,
                                   {{.squad = m_world->rowing}, {.squad = m_world->judo}, {}});
        QCOMPARE(hers.atoms.size(), m_bo.size() + 1); // and the other lift of everybody's
        QVERIFY(!hers.find(m_ada[1].uuid));
        QCOMPARE(store::squadsOf(*m_dora).size(), std::size_t(1));
    }

    void anAnalystReads() {
        Connection ana = m_world->as("ana");
        QCOMPARE(ana.ask("SELECT count(*) FROM slopebook.lines").integer(0, 0), std::int64_t(1));
        QCOMPARE(
            store::push(ana, m_world->begin, std::vector{edited(m_ada[1], named("Eve"))}).answer,
            Answer::NotOurs);
        for (const char* sql :
             {"UPDATE slopebook.atoms SET alive = false", "SELECT slopebook.hold()"})
            QVERIFY2(refusal([&] { ana.run(sql); }) != "done", sql);
        QVERIFY(!store::squadsOf(ana)[0].mayWrite);
    }

    // Granted later: all of the squad comes; taken away: nothing more is seen.
    void grantedLateAndTakenAway() {
        const auto admin = store::Address::read(m_world->server.address("admin"));
        const auto look = StoreWorld::markOf(*m_dora);
        const auto granted = store::grant(admin, "dora", "Rowing", store::May::Read);
        QCOMPARE(granted.before, store::May::Nothing);
        const Pulled all = pulled(
            *m_dora, look, {{.squad = m_world->rowing}, {m_world->judo, look.n}, {{}, look.n}});
        QCOMPARE(all.atoms.size(), m_ada.size() - 1); // the lift is everybody's, and known
        QCOMPARE(store::push(*m_dora, m_world->begin, std::vector{edited(m_ada[1], named("Eve"))})
                     .answer,
                 Answer::NotOurs); // reads only
        QCOMPARE(store::grant(admin, "dora", "Rowing", store::May::Nothing).before,
                 store::May::Read);
        QVERIFY(pulled(*m_dora, look, {{.squad = m_world->rowing}}).atoms.empty());
        QCOMPARE(store::push(*m_dora, m_world->begin, std::vector{edited(m_bo[1], named("Bo B"))})
                     .answer,
                 Answer::Ok); // still writes her own
        m_bo[1] = edited(m_bo[1], named("Bo"));
        // who is nowhere any more is no coach either
        store::grant(admin, "dora", "Judo", store::May::Nothing);
        QVERIFY(refusal([&] { store::squadsOf(*m_dora); }) != "done");
        store::grant(admin, "dora", "Judo", store::May::Write);
    }

    // Ada goes to Judo with all that is hers: Rowing's desks hear that she left, Judo's get
    // everything; and back again.
    void anAthleteWhoMoves() {
        const auto admin = store::Address::read(m_world->server.address("admin"));
        const Sixteen station = numbered(160), roster = numbered(161), who = m_ada[1].uuid;
        const std::vector more{
            atom("station", station, m_world->rowing, {}, js("{'name':'Erg'}")),
            atom("roster", roster, m_world->rowing, station,
                 js("{'athlete':'") + store::uuidText(who) + js("','day':'2026-03-14'}")),
            atom("conflict", numbered(162), m_world->rowing, {},
                 js("{'about':'") + store::uuidText(m_ada[3].uuid) + "\"}"),
            removed(setOf(163, m_world->rowing, m_ada[2].uuid, m_ada[0].uuid, 9, 1, "1"))};
        QCOMPARE(store::push(*m_cora, m_world->begin, more).answer, Answer::Ok);
        const Mark before = StoreWorld::markOf(*m_cora);
        const auto move = [&](Connection& by, const Sixteen& to) {
            by.ask("SELECT slopebook.move_athlete($1, $2)",
                   {store::uuidText(who), store::uuidText(to)});
        };
        QVERIFY(refusal([&] { move(*m_cora, m_world->judo); }).find("no right") !=
                std::string::npos);
        store::grant(admin, "cora", "Judo", store::May::Write);
        move(*m_cora, m_world->judo);
        store::grant(admin, "cora", "Judo", store::May::Nothing);

        const Pulled old = pulled(*m_cora, before, {{m_world->rowing, before.n}});
        QVERIFY(old.atoms.empty());
        QCOMPARE(old.departed.size(), std::size_t(1));
        QVERIFY(old.departed[0].athlete == who && old.departed[0].squad == m_world->rowing &&
                !old.departed[0].isBack);
        const Pulled now = pulled(*m_dora, before, {{m_world->judo, before.n}});
        QCOMPARE(now.atoms.size(), m_ada.size() - 1 + 2); // the removed set and the conflict too
        QVERIFY(now.find(who)->trail == m_ada[1].trail && now.find(who)->version > before.n);
        QVERIFY(now.departed.empty());
        QCOMPARE(m_world->count("slopebook.atoms WHERE kind = 'roster'"), 0);
        // what the old squad's desk still wanted to say is not its any more
        QCOMPARE(store::push(*m_cora, m_world->begin, std::vector{edited(m_ada[1], named("Ada R"))})
                     .answer,
                 Answer::NotOurs);
        QCOMPARE(store::push(*m_dora, m_world->begin,
                             std::vector{edited(*now.find(who), named("Ada J"))})
                     .answer,
                 Answer::Ok);
        Connection asAdmin = m_world->as("admin");
        move(asAdmin, m_world->rowing);
        const Pulled back = pulled(*m_cora, before, {{m_world->rowing, before.n}});
        QCOMPARE(back.departed.size(), std::size_t(1)); // without his turns
        QVERIFY(back.departed[0].athlete == who && back.departed[0].isBack);
        QCOMPARE(back.atoms.size(), m_ada.size() - 1 + 2);
        // where the name is another's, nobody moves
        Atom twin = atom("athlete", numbered(170), m_world->judo, {}, named("Ada J"));
        QCOMPARE(store::push(*m_dora, m_world->begin, std::vector{twin}).answer, Answer::Ok);
        const std::string still = whole();
        QVERIFY(refusal([&] { move(asAdmin, m_world->judo); }).find("has that name") !=
                std::string::npos);
        QCOMPARE(whole(), still);
    }

    // A store is its database's alone: another on the same server, of another owner, who may make
    // no roles, is made, has its own people, and neither takes from the other nor changes a
    // setting.
    void twoStoresOnOneServer() {
        Postgres& server = m_world->server;
        for (const char* login : {"othello", "anna", "bert"})
            server.addLogin(login);
        server.sql("CREATE ROLE chiefs NOLOGIN; GRANT chiefs TO anna; ALTER ROLE anna NOINHERIT");
        server.sql("CREATE DATABASE two OWNER othello", "postgres");
        server.sql("CREATE DATABASE three OWNER chiefs", "postgres");
        const auto roles = [&] {
            return server.sql("SELECT string_agg(rolname || ' ' || rolsuper || rolcreaterole, ',' "
                              "ORDER BY rolname) FROM pg_roles") +
                   server.sql("SELECT count(*) FROM pg_auth_members");
        };
        const std::string before = roles();
        const auto at = [&](const char* login, const char* database) {
            return store::Address::read(server.address(login, database));
        };
        using store::May;
        QVERIFY(refusal([&] {
                    store::initialise(at("bert", "three"), {"Judo"});
                }).find("who owns the database 'three'") != std::string::npos);
        store::initialise(at("othello", "two"), {"Judo"});
        store::initialise(at("anna", "three"), {"Judo"});
        QVERIFY(store::status(at("othello", "two")).manages);
        for (const char* other : {"othello", "anna"})
            QVERIFY(refusal([&] {
                        store::grant(at(other, "squad"), other, "Rowing", May::Write);
                    }).find("who owns the database 'squad'") != std::string::npos);
        // cora, who writes in the first
        for (const auto& one : {std::pair{"othello", "two"}, std::pair{"anna", "three"}}) {
            const char* const owner = one.first;
            const char* const database = one.second;
            QVERIFY(refusal([&] { store::status(at("cora", database)); }).find("no right") !=
                    std::string::npos);
            store::grant(at(owner, database), "cora", "Judo", May::Read);
            Connection there = Connection::open(at("cora", database));
            QVERIFY(!store::squadsOf(there)[0].mayWrite);
            store::grant(at(owner, database), "cora", "Judo", May::Nothing);
            QVERIFY(refusal([&] { store::squadsOf(there); }) != "done");
        }
        m_ada[3] = edited(m_ada[3], *m_ada[3].content);
        QCOMPARE(store::push(*m_cora, m_world->begin, std::vector{m_ada[3]}).answer, Answer::Ok);
        QCOMPARE(roles(), before);
        QCOMPARE(server.sql("SELECT count(*) FROM pg_db_role_setting"), std::string("0"));
        // a squad's name as it is kept, whichever way it is typed
        const std::string composed = "J\xC3\xBCnger", apart = "  Ju\xCC\x88nger  ";
        QCOMPARE(store::initialise(at("othello", "two"), {apart}).squads,
                 std::vector<std::string>{composed});
        QVERIFY(store::initialise(at("othello", "two"), {composed, apart, "judo"}).squads.empty());
        QCOMPARE(store::grant(at("othello", "two"), "cora", apart, May::Read).squad, composed);
        std::string long200;
        for (int i = 0; i < 200; ++i)
            long200 += "\xC3\xBC";
        QCOMPARE(store::initialise(at("othello", "two"), {long200}).squads.size(), std::size_t(1));
        for (const std::string& none : {long200 + "x", std::string("\xE2\x80\x8B "),
                                        std::string("\xFF"), std::string("everybody")})
            QVERIFY(refusal([&] { store::initialise(at("othello", "two"), {none}); }) != "done");
    }

    // Rights are kept by name: a login that has some cannot be dropped unnoticed.
    void whoHasRightsIsNotDropped() {
        m_world->server.addLogin("fay");
        const auto admin = store::Address::read(m_world->server.address("admin"));
        store::grant(admin, "fay", "Judo", store::May::Read);
        const auto dropped = m_world->server.tryPsql("admin", "DROP ROLE fay");
        QVERIFY2(dropped.exit != 0 && dropped.out.find("cannot be dropped") != std::string::npos,
                 dropped.out.c_str());
        store::grant(admin, "fay", "Judo", store::May::Nothing);
        QCOMPARE(m_world->server.tryPsql("admin", "DROP ROLE fay").exit, 0);
        QCOMPARE(m_world->count("slopebook.members WHERE role = 'fay'"), 0);
    }

    // Who holds the store up by hand and goes away is ended; nobody else's sessions are.
    void whoHoldsItUpIsEnded() {
        const auto ran = m_world->server.tryPsql(
            "dora", "SHOW idle_in_transaction_session_timeout; BEGIN; SELECT slopebook.hold(); "
                    "SHOW idle_in_transaction_session_timeout; ROLLBACK; "
                    "SHOW idle_in_transaction_session_timeout");
        QVERIFY2(ran.exit == 0 && ran.out == "0\n\n30s\n0\n", ran.out.c_str());
        const auto wrote = m_world->server.tryPsql(
            "dora", "BEGIN; UPDATE slopebook.atoms SET alive = alive WHERE kind = 'athlete'; "
                    "SHOW idle_in_transaction_session_timeout; ROLLBACK");
        QVERIFY2(wrote.exit == 0 && wrote.out == "30s\n", wrote.out.c_str());
    }

    // Who manages the store cannot leave something behind that speaks of nothing.
    void nothingIsErasedThatIsSpokenOf() {
        const std::string still = whole();
        for (const std::string sql :
             {"DELETE FROM slopebook.atoms WHERE kind = 'lift'",
              "DELETE FROM slopebook.atoms WHERE kind = 'session'", "DELETE FROM slopebook.squads",
              "DELETE FROM slopebook.squads WHERE name = 'Everybody'"})
            QVERIFY2(m_world->server.tryPsql("admin", sql).exit != 0, sql.c_str());
        QCOMPARE(whole(), still);
    }
};

QTEST_GUILESS_MAIN(TestStoreRights)
#include "tst_storerights.moc"

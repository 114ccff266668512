// SPDX-License-Identifier: GPL-3.0-or-later
// A coach with a login and psql writes whatever JSON there is under every key of every kind: what
// the store takes in makes no view fail, and what a log writes is taken in.
#include "tests/store/storeworld.h"

#include <array>
#include <map>
#include <memory>
#include <random>
#include <set>

using namespace slopebook;
using namespace slopebook::test;
using Answer = Pushed::Answer;

namespace {
std::string repeated(const std::string& text, int times) {
    std::string all;
    for (int i = 0; i < times; ++i)
        all += text;
    return all;
}

/// What a number, a text, a list is not, or is only just.
std::vector<std::string> hostile() {
    std::vector<std::string> all;
    for (const char* one : {"null",
                            "true",
                            "false",
                            "0",
                            "-0",
                            "-0.0",
                            "1",
                            "-1",
                            "1.5",
                            "10",
                            "9.999999999999999999",
                            "1e400",
                            "-1e400",
                            "1e-400",
                            "1e308",
                            "1e309",
                            "2e-308",
                            "1e-320",
                            "1e131000",
                            "1e-16000",
                            "2147483648",
                            "-9223372036854775809",
                            "123456789012345678901234567890",
                            "2000000",
                            "2000001",
                            "''",
                            "' '",
                            "'1'",
                            "'-1'",
                            "'NaN'",
                            "'Infinity'",
                            "'-Infinity'",
                            "'true'",
                            "'t'",
                            "'mean'",
                            "'lifted'",
                            "'2026-02-29'",
                            "'2026-13-01'",
                            "'0000-00-00'",
                            "'9999-12-31'",
                            "'10000-01-01'",
                            "'2026-03-14 25:00'",
                            "'\\u0000'",
                            "'\\ud800'",
                            "'\\u202e'",
                            "'70000000'",
                            "'{70000000-0000-4000-8000-000000000001}'",
                            "[]",
                            "{}",
                            "[[]]",
                            "[null]",
                            "[{}]",
                            "[[1.1]]",
                            "[[[1.1]]]",
                            "['1.1']",
                            "[true]",
                            "[1e-320]",
                            "[1e-299,2e-300]",
                            "[1e-200]",
                            "[1e-31]",
                            "[1e400]",
                            "[-0.5]",
                            "[9.99999,0.5]",
                            "[{'velocity':1e-250}]",
                            "[{'velocity':'1'}]",
                            "[{'velocity':null}]",
                            "[{'velocity':[1]}]",
                            "[{'velocity':{'velocity':1}}]",
                            "[{'velocity':1,'excluded':{}}]",
                            "[{'velocity':1,'excluded':['x']}]",
                            "[{'velocity':1,'excluded':'x'},0.5]",
                            "[{'velocity':1,'more':2}]",
                            "[{'excluded':'x'}]",
                            "{'velocity':1}",
                            "{'0':1}",
                            "[0.5,[0.6,{'velocity':[[0.7]]}]]"})
        all.push_back(js(one));
    all.push_back(repeated("[", 40) + "1" + repeated("]", 40));
    all.push_back(repeated("[", 50'000) + "1" + repeated("]", 50'000));
    all.push_back(repeated("{\"a\":", 3000) + "1" + repeated("}", 3000));
    all.push_back("\"" + std::string(1'200'000, 'x') + "\""); // shrinks to next to nothing
    all.push_back("[" + repeated("0.5,", 3000) + "0.5]");
    all.push_back("0." + std::string(5000, '1'));
    return all;
}

class Dice {
public:
    explicit Dice(unsigned seed) : m_random(seed) {}
    unsigned upTo(unsigned most) { return static_cast<unsigned>(m_random()) % (most + 1); }
    std::string value(const std::vector<std::string>& leaves, int depth = 0) {
        const unsigned what = depth > 3 ? 0 : upTo(3);
        if (what < 2)
            return leaves[upTo(static_cast<unsigned>(leaves.size()) - 7)]; // none of the long ones
        std::string all;
        for (unsigned i = upTo(3); i > 0; --i) {
            static const std::array names{"velocity", "excluded", "bar", "load_g", "name"};
            all += all.empty() ? "" : ",";
            if (what == 3)
                all += "\"" + std::string(names[upTo(4)]) + "\":";
            all += value(leaves, depth + 1);
        }
        return what == 2 ? "[" + all + "]" : "{" + all + "}";
    }

private:
    std::mt19937 m_random;
};

using Members = std::map<std::string, std::string>;
std::string object(const Members& members) {
    std::string text;
    for (const auto& [name, value] : members)
        text += (text.empty() ? "{\"" : ",\"") + name + "\":" + value;
    return text + "}";
}
std::string inQuotes(const std::string& text) {
    return "\"" + text + "\"";
}
} // namespace

class TestStoreContents : public QObject {
    Q_OBJECT
    std::unique_ptr<StoreWorld> m_world;
    std::unique_ptr<Connection> m_cora, m_ana;
    std::map<std::string, std::vector<Atom>> m_atoms; ///< of each kind those that are bent
    std::map<std::string, Members> m_good;
    std::vector<std::string> m_views;

    bool takes(const std::vector<Atom>& atoms) {
        try {
            return store::push(*m_cora, m_world->begin, atoms).answer == Answer::Ok;
        } catch (const StoreError&) {
            return false;
        }
    }
    /// The first view that fails, and how; empty where none does.
    std::string failing() {
        for (const std::string& view : m_views) {
            const std::string said =
                refusal([&] { m_ana->ask(("SELECT * FROM slopebook." + view).c_str()); });
            if (said != "done")
                return view + ": " + said;
        }
        return {};
    }

private Q_SLOTS:
    void initTestCase() {
        try {
            m_world = std::make_unique<StoreWorld>();
        } catch (const std::exception& error) {
            QFAIL(error.what());
        }
        m_cora = std::make_unique<Connection>(m_world->as("cora"));
        m_ana = std::make_unique<Connection>(m_world->as("ana"));
        const store::Rows views =
            m_ana->ask("SELECT viewname FROM pg_views WHERE schemaname = 'slopebook'");
        for (int i = 0; i < views.size(); ++i)
            m_views.emplace_back(views.text(i, 0));
        QCOMPARE(m_views.size(), std::size_t(4));

        const auto id = [](unsigned number) { return inQuotes(store::uuidText(numbered(number))); };
        const Sixteen squad = m_world->rowing, all = store::everybody;
        const Sixteen who = numbered(4), day = numbered(5), station = numbered(6);
        m_good = {
            {"athlete", {{"name", "\"Ada\""}}},
            {"lift", {{"name", "\"Pull up\""}, {"moves_body", "true"}}},
            {"device", {{"name", "\"Encoder\""}}},
            {"test", {{"name", "\"Jump\""}, {"unit", "\"m\""}}},
            {"block",
             {{"name", "\"Autumn\""},
              {"first_day", "\"2026-03-01\""},
              {"last_day", "\"2026-03-31\""}}},
            {"equipment",
             {{"name", "\"Hall\""},
              {"bars", js("[2000000000,{'bar':1500000000,'name':'short'}]")}}},
            {"station",
             {{"name", "\"Mat\""}, {"tests", "[" + id(2) + "]"}, {"ladder_g", "[20000]"}}},
            {"session", {{"day", "\"2026-03-14\""}, {"ordinal", "1"}, {"body_mass_g", "70500"}}},
            {"set",
             {{"lift", id(1)},
              {"load_g", "20000"},
              {"velocities", js("[0.9,{'velocity':0.8,"
                                "'excluded':'early'}]")}}},
            {"attempt", {{"test", id(2)}, {"ordinal", "1"}, {"value", "0.41"}, {"contact", "0.2"}}},
            {"gap", {{"lift", id(1)}, {"ordinal", "1"}}},
            {"lift conditions", {{"lift", id(1)}, {"device", id(3)}}},
            {"test conditions", {{"test", id(2)}}},
            {"check load", {{"lift", id(1)}, {"load_g", "60000"}}},
            {"roster", {{"athlete", id(4)}, {"day", "\"2026-03-14\""}, {"ordinal", "1"}}},
            {"conflict", {{"about", id(4)}, {"lived", "true"}}}};
        const auto good = [&](const char* kind) { return object(m_good[kind]); };
        const auto one = [&](const char* kind, unsigned number, std::optional<Sixteen> parent) {
            const bool shared = kind == std::string("lift") || kind == std::string("test") ||
                                kind == std::string("device");
            m_atoms[kind] = {
                atom(kind, numbered(number), shared ? all : squad, parent, good(kind))};
        };
        one("lift", 1, {});
        one("test", 2, {});
        one("device", 3, {});
        one("athlete", 4, {});
        one("session", 5, who);
        one("station", 6, {});
        one("block", 7, {});
        one("equipment", 8, {});
        one("attempt", 9, day);
        one("gap", 10, day);
        one("lift conditions", 11, day);
        one("test conditions", 12, day);
        one("check load", 13, who);
        one("roster", 14, station);
        one("conflict", 15, {});
        for (unsigned i = 1; i <= 3; ++i) {
            Members said = m_good["set"];
            said["ordinal"] = std::to_string(i);
            said["load_g"] = std::to_string(20'000 * i);
            m_atoms["set"].push_back(atom("set", numbered(20 + i), squad, day, object(said)));
        }
        std::vector<Atom> batch;
        for (const auto& [kind, atoms] : m_atoms)
            batch.insert(batch.end(), atoms.begin(), atoms.end());
        QCOMPARE(store::push(*m_cora, m_world->begin, batch).answer, Answer::Ok);
        QCOMPARE(failing(), std::string());
        QCOMPARE(m_world->count("slopebook.lines"), std::int64_t(1));
    }

    void noContentMakesAViewFail_data() {
        QTest::addColumn<QString>("kind");
        for (const char* kind : {"athlete", "lift", "device", "test", "block", "equipment",
                                 "station", "session", "set", "attempt", "gap", "lift conditions",
                                 "test conditions", "check load", "roster", "conflict"})
            QTest::newRow(kind) << QString::fromUtf8(kind);
    }
    void noContentMakesAViewFail() {
        QFETCH(QString, kind);
        const std::string of = kind.toStdString();
        std::set<std::string> keys{"more"};
        if (of == "set")
            keys.merge(std::set<std::string>{"lift", "ordinal", "load_g", "maximum", "outcome",
                                             "reason", "rpe", "excluded", "note", "velocities"});
        Connection admin = m_world->as("admin");
        const store::Rows known = admin.ask("SELECT jsonb_object_keys(slopebook.shape($1))", {of});
        for (int i = 0; i < known.size(); ++i)
            keys.emplace(known.text(i, 0));
        std::vector<std::string> values = hostile();
        Dice dice(7);
        for (int i = 0; i < 10; ++i)
            values.push_back(dice.value(hostile()));
        int taken = 0, refused = 0;
        std::vector<Atom>& atoms = m_atoms[of];
        for (const std::string& key : keys)
            for (const std::string& value : values) {
                if (value.size() > 10'000 && key != "name" && key != "velocities" && key != "more")
                    continue; // the same everywhere, and slow
                std::vector<Atom> bent;
                for (std::size_t i = 0; i < atoms.size(); ++i) {
                    Members said = m_good[of];
                    if (of == "set") {
                        said["ordinal"] = std::to_string(i + 1);
                        said["load_g"] = std::to_string(20'000 * (i + 1));
                    }
                    said[key] = value;
                    bent.push_back(edited(atoms[i], object(said)));
                }
                if (key != "velocities")
                    bent.resize(1); // as many of one number are refused for that
                if (!takes(bent)) {
                    ++refused;
                    continue;
                }
                ++taken;
                for (std::size_t i = 0; i < bent.size(); ++i) {
                    atoms[i] = bent[i];
                    atoms[i].trail = {bent[i].trail.back()}; // or they grow without need
                }
                const std::string said = failing();
                QVERIFY2(said.empty(), (key + ": " + value.substr(0, 60) + ": " + said).c_str());
                QVERIFY2(key != "more", "a key that no log has");
            }
        QVERIFY2(taken > 0 && refused > taken, qPrintable(QString::number(taken)));
        // and all is as before with what a log says
        std::vector<Atom> good;
        for (std::size_t i = 0; i < atoms.size(); ++i) {
            Members said = m_good[of];
            if (of == "set") {
                said["ordinal"] = std::to_string(i + 1);
                said["load_g"] = std::to_string(20'000 * (i + 1));
            }
            good.push_back(edited(atoms[i], object(said)));
        }
        QVERIFY(takes(good));
        for (std::size_t i = 0; i < atoms.size(); ++i)
            atoms[i] = good[i];
    }

    // What is there already, of a store that looked less closely: its views do not fail either.
    void norDoesWhatIsThereAlready() {
        m_world->server.sql("ALTER TABLE slopebook.atoms DISABLE TRIGGER USER");
        Connection admin = m_world->as("admin");
        for (const char* kind : {"lift", "session", "set", "athlete", "test", "attempt"}) {
            const std::string before = object(m_good[kind]);
            for (const auto& [key, good] : m_good[kind])
                for (const std::string& value : hostile()) {
                    Members said = m_good[kind];
                    said[key] = value;
                    const std::string put = refusal([&] {
                        admin.ask("UPDATE slopebook.atoms SET content = $1 WHERE kind = $2",
                                  {object(said), kind});
                    });
                    const std::string failed = put == "done" ? failing() : "";
                    QVERIFY2(failed.empty(),
                             (key + ": " + value.substr(0, 60) + ": " + failed).c_str());
                }
            admin.ask("UPDATE slopebook.atoms SET content = $1 WHERE kind = $2", {before, kind});
        }
        m_world->server.sql("ALTER TABLE slopebook.atoms ENABLE TRIGGER USER");
    }

    // A long text that shrinks to nothing is looked at as it is read, by either way in.
    void howLongItIsIsSeenAsItIsRead() {
        for (const bool byCopy : {false, true}) {
            std::vector<Atom> batch;
            for (unsigned i = 0; i < (byCopy ? 600u : 1u); ++i)
                batch.push_back(atom("athlete", numbered(5000 + i), m_world->rowing, {},
                                     named("Athlete " + std::to_string(i))));
            batch.push_back(atom("athlete", numbered(4999), m_world->rowing, {},
                                 named(std::string(8'000'000, 'x'))));
            QVERIFY(!takes(batch));
            batch.back() = atom("athlete", numbered(4999), m_world->rowing, {},
                                named(std::string(900'000, 'x')));
            QVERIFY(takes(batch));
            std::vector<Atom> gone;
            for (const Atom& one : batch)
                gone.push_back(removed(one));
            QVERIFY(takes(gone));
            m_world->server.sql("DELETE FROM slopebook.atoms WHERE kind = 'athlete' AND NOT alive");
        }
    }
};

QTEST_GUILESS_MAIN(TestStoreContents)
#include "tst_storecontents.moc"

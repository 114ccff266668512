// SPDX-License-Identifier: GPL-3.0-or-later
// A whole log goes into a store and comes out of it to the last byte; what does not say what it was
// sent as is not taken.
#include "core/store/thingjson.h"
#include "tests/log/carriedlogs.h"
#include "tests/log/otherthings.h"
#include "tests/store/storeworld.h"

#include <algorithm>
#include <memory>
#include <set>
#include <variant>

using namespace slopebook;
using namespace slopebook::test;
using log::Carried;
using Answer = Pushed::Answer;

namespace {
bool alike(const Carried& one, const Carried& other) {
    return one.kind == other.kind && one.uuid == other.uuid && one.content == other.content &&
           (one.content.empty() || one.hash == other.hash) && one.alive == other.alive &&
           one.trail == other.trail && one.parent == other.parent && one.into == other.into;
}

/// Everything used somewhere, some of it removed.
log::Log everything(const std::filesystem::path& file, unsigned seed) {
    log::Log log = diceLog(file, seed);
    joinAStore(log);
    const auto athletes = log.athletes();
    const auto tested = std::find_if(athletes.begin(), athletes.end(), [&](const auto& athlete) {
        return !log.sessions(athlete.id).empty();
    });
    for (const auto& set : log.session(log.sessions(tested->id).back().id).sets)
        log.remove(set.id);
    log.remove(log.equipment().front().id);
    return log;
}
} // namespace

class TestStoreLog : public QObject {
    Q_OBJECT
    const Sixteen m_squad = numbered(1);

private Q_SLOTS:
    void everyThingIsTheSameAsJson() {
        std::set<std::string> kinds, removed;
        for (unsigned seed = 1; seed <= 4; ++seed) {
            const Folder folder;
            const log::Log log = everything(folder.path(), seed);
            for (const auto& [uuid, one] : heldBy(log)) {
                const Atom sent = store::atomOf(one, m_squad);
                const bool shared =
                    one.kind == "lift" || one.kind == "test" || one.kind == "device";
                QCOMPARE(sent.squad, shared ? store::everybody : m_squad);
                QVERIFY2(alike(store::carriedOf(sent), one),
                         (one.kind + sent.content.value_or("")).c_str());
                kinds.insert(one.kind);
                if (!one.alive)
                    removed.insert(one.kind);
            }
        }
        QCOMPARE(kinds.size(), std::variant_size_v<log::Thing>);
        QVERIFY(removed.contains("set") && removed.contains("equipment"));
    }

    // Read by hand: what an analyst finds in the column.
    void jsonSaysItPlainly() {
        const Folder folder;
        log::Log log = log::Log::create(folder.path());
        const LiftId lift = log.add(Lift{.name = "Bench \"pull\""});
        const AthleteId who = log.add(Athlete{.name = "Zo\xC3\xAB"});
        const SessionId day1 = log.add(
            SessionHead{.athlete = who, .date = day(2026, 3, 14), .bodyMass = Mass{70'500}});
        log.add(day1, lift,
                Set{.load = Mass{60'000},
                    .effort = Effort{15},
                    .reps = {{.velocity = 0.9}, {.velocity = 0.88, .excluded = "early"}}});
        std::map<std::string, Atom> atoms;
        for (const auto& [uuid, one] : heldBy(log))
            atoms[one.kind] = store::atomOf(one, m_squad);
        QCOMPARE(*atoms["lift"].content, std::string("{\"name\":\"Bench \\\"pull\\\"\"}"));
        QCOMPARE(*atoms["athlete"].content, std::string("{\"name\":\"Zo\xC3\xAB\"}"));
        QCOMPARE(*atoms["session"].content,
                 js("{'day':'2026-03-14','ordinal':1,'body_mass_g':70500}"));
        QCOMPARE(*atoms["set"].content,
                 js("{'lift':'") + store::uuidText(atoms["lift"].uuid) +
                     js("','ordinal':1,'load_g':60000,'rpe':7.5,"
                        "'velocities':[0.9,{'velocity':0.88,'excluded':'early'}]}"));
        QVERIFY(atoms["set"].parent == atoms["session"].uuid &&
                atoms["session"].parent == atoms["athlete"].uuid);
    }

    void aWholeLogGoesInAndComesOut() {
        std::unique_ptr<StoreWorld> world;
        try {
            world = std::make_unique<StoreWorld>();
        } catch (const std::exception& error) {
            QFAIL(error.what());
        }
        const Folder folder;
        const log::Log log = everything(folder.path(), 3);
        const Held held = heldBy(log);
        std::vector<Atom> batch;
        for (const auto& [uuid, one] : held)
            batch.push_back(store::atomOf(one, world->rowing));
        Connection cora = world->as("cora");
        const Pushed pushed = store::push(cora, world->begin, batch);
        QCOMPARE(pushed.answer, Answer::Ok);
        QCOMPARE(pushed.wrote, std::int64_t(held.size()));
        const Pulled back = pulled(cora, pushed.now, {{.squad = world->rowing}, {}});
        QCOMPARE(back.atoms.size(), held.size());
        for (const Atom& one : back.atoms) {
            const auto was = held.find(one.uuid);
            QVERIFY(was != held.end());
            QVERIFY2(alike(store::carriedOf(one), was->second), one.content->c_str());
        }
        // an analyst counts what the log counts
        std::size_t points = 0;
        for (const auto& lift : log.liftSessions({}))
            points += lift.points.size();
        QCOMPARE(world->count("slopebook.points"), std::int64_t(points));
        QVERIFY(points > 0);
    }

    // Removed before a log kept what such things had said: its hash is read from its trail, it goes
    // in and out, and takes the thing away where another log still has it.
    void aRemovalKnownByItsHashAlone() {
        const Folder folder;
        const log::Log log = everything(folder.path(), 1);
        int tried = 0;
        for (const auto& [uuid, one] : heldBy(log)) {
            if (one.alive || one.content.empty())
                continue;
            Carried unsaid = one;
            unsaid.content.clear();
            unsaid.parent.reset();
            unsaid.into.reset();
            Atom atom = store::atomOf(unsaid, m_squad);
            QVERIFY(!atom.content);
            QCOMPARE(store::carriedOf(atom).hash, one.hash);
            // as one that met another's trail: what it said stands further back
            atom.trail.insert(atom.trail.end() - 1, {newStep(), newStep()});
            QCOMPARE(store::carriedOf(atom).hash, one.hash);
            atom.trail.back() = newStep();
            QVERIFY(refusal([&] { store::carriedOf(atom); }) != "done");
            atom.alive = true;
            QVERIFY(refusal([&] { store::carriedOf(atom); }) != "done");
            ++tried;
            const Folder elsewhere; // a log that never had it keeps it as it came
            log::Log other = log::Log::create(elsewhere.path());
            const Carried came = store::carriedOf(store::atomOf(unsaid, m_squad));
            other.together([&] { log::adoptRemoved(log::connectionOf(other), came); });
            QVERIFY(alike(*log::carried(other, uuid), unsaid));
        }
        QVERIFY(tried > 0);
    }

    // A store is not believed: a letter otherwise, and the atom is not taken.
    void whatSaysOtherwiseIsNotTaken() {
        const Folder folder;
        const log::Log log = everything(folder.path(), 2);
        int refused = 0, tried = 0;
        for (const auto& [uuid, one] : heldBy(log)) {
            const Atom sent = store::atomOf(one, m_squad);
            if (!sent.content)
                continue;
            const auto refuses = [&](const std::string& content) {
                Atom changed = sent;
                changed.content = content;
                ++tried;
                const std::string said = refusal([&] { store::carriedOf(changed); });
                refused += said != "done";
            };
            refuses("");
            refuses("[]");
            refuses(sent.content->substr(0, sent.content->size() - 1));
            refuses(*sent.content + "x");
            refuses("{}");
            std::string other = *sent.content;
            for (const char digit : {'1', '2', '5', 'a', 'e'})
                if (const auto at = other.find_last_of(digit); at != std::string::npos) {
                    other[at] = digit == '1' ? '2' : digit == 'a' ? 'b' : '1';
                    refuses(other);
                    break;
                }
            Atom removedOnly = sent;
            removedOnly.alive = !removedOnly.alive;
            ++tried;
            refused += refusal([&] { store::carriedOf(removedOnly); }) != "done";
        }
        QCOMPARE(refused, tried);
        QVERIFY(tried > 500);
        for (const char* bad : {"{\"a\":\"\\ud800\"}", "{\"a\":\"\\u12\"}", "{\"a\" 1}", "tru",
                                "\"a", "[[[[[[[[[[[[[[[[[[[[1]]]]]]]]]]]]]]]]]]]]"})
            QVERIFY2(refusal([&] { store::contentOfJson("athlete", {}, bad); }) != "done", bad);
    }
};

QTEST_GUILESS_MAIN(TestStoreLog)
#include "tst_storelog.moc"

// SPDX-License-Identifier: GPL-3.0-or-later
// Of a log only the part is read that what comes may touch. Desks by dice meet in a store that is
// nothing but a list; each time what comes is taken twice, by the log and by a copy of it that is
// read whole: both must say the same, tell the same, and wait for the same. Every other time it is
// taken as where it is much: read and worked out before the transaction that writes.
#include "core/desks/conflictsides.h"
#include "core/log/snapshot.h"
#include "core/meetings/coming.h"
#include "core/meetings/going.h"
#include "core/meetings/joining.h"
#include "core/store/thingjson.h"
#include "tests/desks/diceduuids.h"
#include "tests/desks/randomedits.h"
#include "tests/log/carriedlogs.h"
#include "tests/log/otherthings.h"
#include "tests/support/longrun.h"

#include <QTest>

#include <algorithm>
#include <map>
#include <random>

using namespace slopebook;
using namespace slopebook::test;
using log::Sixteen;
namespace fs = std::filesystem;

namespace {
Sixteen filled(unsigned char with) {
    Sixteen all{};
    all.fill(with);
    return all;
}
const Sixteen storeId = filled(1), rowing = filled(2), judo = filled(3);

/// What all desks have given, each thing as it was given last.
struct ListedStore {
    std::map<Sixteen, store::Atom> atoms;
    std::int64_t n = 0;

    std::vector<store::Atom> above(const std::vector<log::JoinedSquad>& squads) const {
        std::vector<store::Atom> all;
        for (const auto& [uuid, atom] : atoms)
            for (const log::JoinedSquad& squad : squads)
                if (atom.squad == squad.id && atom.version > squad.taken)
                    all.push_back(atom);
        std::ranges::stable_sort(all, {}, [](const store::Atom& one) {
            return std::ranges::find(log::kindsInOrder, one.kind);
        });
        return all;
    }
    /// All or nothing: nothing where one of them is not known to who gives it.
    bool take(const std::vector<store::Atom>& given) {
        const auto isIn = [](const store::Atom& one, const store::Atom& other) {
            return std::ranges::find(other.trail, one.trail.back().revision,
                                     &store::Step::revision) != other.trail.end();
        };
        for (const store::Atom& one : given)
            if (const auto at = atoms.find(one.uuid);
                at != atoms.end() && !isIn(at->second, one) && !isIn(one, at->second))
                return false;
        ++n;
        for (store::Atom one : given) {
            const auto at = atoms.find(one.uuid);
            if (at != atoms.end() && isIn(one, at->second))
                continue;
            one.version = n;
            atoms.insert_or_assign(one.uuid, std::move(one));
        }
        return true;
    }
};

/// Everything of a log but its own keys.
std::map<std::string, std::string> saidIn(const log::Log& log) {
    std::map<std::string, std::string> all;
    const log::Moment moment(log);
    log::Connection& db = log::connectionOf(log);
    const auto hex = [](const Sixteen& of) { return log::hexOf(log::viewOf(of)); };
    for (const auto& [uuid, one] : heldBy(log)) {
        const auto sent = log::sentOf(db, uuid);
        const auto unsent = log::unsentOf(db, uuid);
        all[one.kind + " " + hex(uuid)] =
            (one.alive ? "there, " : "removed, ") + log::hexOf(one.content) + ", trail " +
            log::hexOf(log::bytesOf(one.trail)) +
            (sent ? ", sent " + std::to_string(sent->version) + hex(sent->revision) : "") +
            (unsent ? ", waits" : "") + (unsent && unsent->squad ? hex(*unsent->squad) : "");
    }
    return all;
}

/// What a coach is told, in no order.
std::vector<std::string> toldBy(const meetings::Came& came) {
    const desks::MergeReport& report = came.report;
    std::vector<std::string> all{"added " + std::to_string(report.added),
                                 "changed " + std::to_string(report.changed),
                                 "removed " + std::to_string(report.removed),
                                 "became one " + std::to_string(report.becameOne)};
    for (const auto& one : report.joined)
        all.push_back("joined " + english(one.from.name) + " > " + english(one.into.name));
    for (const auto& one : report.revived)
        all.push_back("revived " + one.kind + english(one.name));
    for (const auto& one : report.renamed)
        all.push_back("renamed " + english(one.now.name) + " < " + one.before);
    for (const auto& one : report.listed)
        all.push_back("listed " + log::hexOf(log::viewOf(one.uuid)));
    for (const Words& one : came.leftOut)
        all.push_back("left out " + english(one));
    std::ranges::sort(all);
    return all;
}

std::string difference(const std::map<std::string, std::string>& part,
                       const std::map<std::string, std::string>& whole) {
    for (const auto& [name, said] : whole) {
        const auto at = part.find(name);
        if (at == part.end())
            return "the part has no " + name + " (" + said + ")";
        if (at->second != said)
            return name + "\n part:  " + at->second + "\n whole: " + said;
    }
    for (const auto& [name, said] : part)
        if (!whole.contains(name))
            return "the part alone has " + name + " (" + said + ")";
    return {};
}
} // namespace

class TestPartAndWhole : public QObject {
    Q_OBJECT
    struct Desk {
        fs::path file;
        unsigned backups = 0;
    };
    std::unique_ptr<Folder> m_folder;
    std::vector<Desk> m_desks;
    ListedStore m_store;
    std::mt19937 m_random;
    std::map<std::string, int> m_did;

    int below(int count) { return std::uniform_int_distribution<int>(0, count - 1)(m_random); }

    static void join(const fs::path& file, bool writesRowing, bool writesJudo) {
        log::Log log = log::Log::open(file);
        log.together([&] {
            log::Connection& db = log::connectionOf(log);
            log::setJoinedStore(db, {.id = storeId,
                                     .connection = "host=rack.example",
                                     .squad = writesRowing ? rowing : judo,
                                     .met = {}});
            log::putSquad(db, {.id = store::everybody, .name = "Everybody", .mayWrite = true});
            if (writesRowing)
                log::putSquad(db, {.id = rowing, .name = "Rowing", .mayWrite = true});
            if (writesJudo)
                log::putSquad(db, {.id = judo, .name = "Judo", .mayWrite = true});
            std::vector<log::Unsent> all;
            log::visitCarried(db, [&](const log::Carried& one) {
                all.push_back({.uuid = one.uuid, .squad = {}});
            });
            log::noteUnsent(db, all);
        });
    }

    /// Twice, and held against each other.
    void takeTwice(const Desk& desk) {
        const fs::path twin = m_folder->path("twin.slopebook");
        fs::copy_file(desk.file, twin, fs::copy_options::overwrite_existing);
        log::Log log = log::Log::open(desk.file);
        log::Log whole = log::Log::open(twin);
        const auto coming = m_store.above(log::joinedSquads(log::connectionOf(log)));
        meetings::Footing footing(storeId), ofWhole(storeId);
        const bool asMuch = ++m_did["takes"] % 2 == 0;
        const auto part = meetings::takeIn(
            log, footing, coming, {},
            {.reads = asMuch ? meetings::Reads::AroundAsMuch : meetings::Reads::Around});
        const auto all =
            meetings::takeIn(whole, ofWhole, coming, {}, {.reads = meetings::Reads::Whole});
        m_did["came"] += static_cast<int>(coming.size());
        m_did["joined"] += static_cast<int>(part.report.joined.size());
        m_did["revived"] += static_cast<int>(part.report.revived.size());
        m_did["renamed"] += static_cast<int>(part.report.renamed.size());
        m_did["listed"] += static_cast<int>(part.report.listed.size());
        const std::string where = difference(saidIn(log), saidIn(whole));
        if (!where.empty())
            throw std::runtime_error(where);
        if (toldBy(part) != toldBy(all)) {
            std::string said;
            for (const auto& line : toldBy(part))
                said += "\n part:  " + line;
            for (const auto& line : toldBy(all))
                said += "\n whole: " + line;
            throw std::runtime_error("another answer" + said);
        }
        if (!part.leftOut.empty())
            throw std::runtime_error("left out: " + english(part.leftOut.front()));
        log.together([&] {
            for (log::JoinedSquad squad : log::joinedSquads(log::connectionOf(log))) {
                squad.taken = m_store.n;
                log::putSquad(log::connectionOf(log), squad);
            }
        });
    }

    void meet(const Desk& desk) {
        takeTwice(desk);
        log::Log log = log::Log::open(desk.file);
        const meetings::Going going = meetings::whatGoes(log);
        log.together([&] { log::eraseUnsent(log::connectionOf(log), going.untold); });
        if (!m_store.take(going.atoms))
            throw std::runtime_error("what was just taken is not known");
        meetings::Footing footing(storeId);
        meetings::noteSent(log, footing, going.atoms, m_store.n);
    }

    void oneThing() {
        Desk& desk = m_desks[static_cast<std::size_t>(below(static_cast<int>(m_desks.size())))];
        const int what = below(20);
        if (what < 11) {
            log::Log log = log::Log::open(desk.file);
            tests::RandomEdits edits(static_cast<unsigned>(m_random()));
            for (int i = 1 + below(5); i > 0; --i)
                edits.edit(log);
            m_did["edits"] += edits.done();
        } else if (what < 17) {
            ++m_did["meetings"];
            meet(desk);
        } else if (what < 18) {
            log::Log log = log::Log::open(desk.file);
            const auto open = desks::openConflicts(log);
            if (open.empty())
                return;
            ++m_did["choices"];
            try {
                desks::settle(
                    log, open[static_cast<std::size_t>(below(static_cast<int>(open.size())))].uuid,
                    below(2) == 0 ? desks::Choice::AsItStands : desks::Choice::WhatLost);
            } catch (const LogError&) { // it cannot stand now
            }
        } else {
            const fs::path backup = desk.file.string() + ".backup";
            const bool back = desk.backups > 0 && below(2) == 0;
            ++m_did[back ? "gone back" : "backups"];
            fs::copy_file(back ? backup : desk.file, back ? desk.file : backup,
                          fs::copy_options::overwrite_existing);
            ++desk.backups;
        }
    }

    /// Two desks of one squad, the second a copy of the first; one of both squads; one of the other
    /// squad.
    void begin(unsigned seed) {
        m_random.seed(seed);
        tests::seedUuids(seed);
        m_folder = std::make_unique<Folder>();
        m_desks.clear();
        m_store = {};
        for (const char* name : {"one", "two", "three", "four"})
            m_desks.push_back({.file = m_folder->path(name)});
        {
            log::Log log = log::Log::create(m_desks[0].file);
            const Season season = fillSeason(log);
            addTestDay(log, season, addOtherThings(log, season));
        }
        fs::copy_file(m_desks[0].file, m_desks[1].file);
        log::Log::create(m_desks[2].file);
        log::Log::create(m_desks[3].file);
        for (const Desk& desk : m_desks) {
            log::Log log = log::Log::open(desk.file);
            tests::RandomEdits edits(static_cast<unsigned>(m_random()));
            for (int i = 0; i < 15; ++i)
                edits.edit(log);
        }
        join(m_desks[0].file, true, false);
        join(m_desks[1].file, true, false);
        join(m_desks[2].file, true, true);
        join(m_desks[3].file, false, true);
    }

private Q_SLOTS:
    void bothTakeTheSame_data() {
        QTest::addColumn<unsigned>("seed");
        const int first = std::max(1, qEnvironmentVariableIntValue("SLOPEBOOK_PART_SEED"));
        const int worlds = rounds("SLOPEBOOK_PART_WORLDS", 6, 400);
        for (int seed = first; seed < first + worlds; ++seed)
            QTest::addRow("seed %d", seed) << static_cast<unsigned>(seed);
    }
    void bothTakeTheSame() {
        QFETCH(unsigned, seed);
        begin(seed);
        int step = 0;
        try {
            for (const int steps = rounds("SLOPEBOOK_PART_STEPS", 60, 120); step < steps; ++step)
                oneThing();
        } catch (const std::exception& error) {
            QFAIL(("step " + std::to_string(step) + ": " + error.what()).c_str());
        }
    }
    // Of somebody who is not known here what was removed is of no use, nor what belonged to that:
    // it is nothing that the store would have to mend.
    void whatWasRemovedOfNobodyIsNotMissed() {
        const Folder folder;
        std::vector<store::Atom> coming;
        {
            log::Log log = log::Log::create(folder.path("other"));
            const LiftId lift = log.add(Lift{.name = "Bench pull"});
            const SessionId session = log.add(
                SessionHead{.athlete = log.add(Athlete{.name = "Ada"}), .date = day(2026, 4, 2)});
            log.add(session, lift, ladderSet(60, {0.8}));
            log.remove(session);
            const auto held = heldBy(log);
            for (const std::string_view kind : log::kindsInOrder)
                for (const auto& [uuid, one] : held)
                    if (one.kind == kind && kind != "athlete" && kind != "test")
                        coming.push_back(
                            store::atomOf(one, kind == "lift" ? store::everybody : rowing));
        }
        QCOMPARE(coming.size(), std::size_t(3));
        const fs::path file = folder.path("mine");
        log::Log::create(file);
        join(file, true, false);
        log::Log log = log::Log::open(file);
        meetings::Footing footing(storeId);
        QVERIFY(meetings::takeIn(log, footing, coming).leftOut.empty());
        QCOMPARE(log.lifts().size(), std::size_t(1));
    }
    // A test of the test.
    void everythingHappened() {
        for (const auto& [what, times] : m_did)
            qInfo("%s: %d", what.c_str(), times);
        for (const char* what : {"came", "joined", "revived", "renamed", "listed", "gone back"})
            QVERIFY2(m_did[what] > 0, what);
    }
};

QTEST_GUILESS_MAIN(TestPartAndWhole)
#include "tst_partandwhole.moc"

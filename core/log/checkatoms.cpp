// SPDX-License-Identifier: GPL-3.0-or-later
// Whether everything has its name among other logs, the hash of what it says and its trail, and
// whether what is known of a store is whole.
#include "core/log/derive.h"
#include "core/log/impl.h"
#include "core/log/storetallies.h"
#include "core/model/phrases/log.h"

#include <bit>

namespace slopebook::log {

namespace {
/// Whether a trail ends with what the thing says.
bool endsWell(const Atom& atom, bool alive) {
    try {
        return trailOf(atom, alive).back().hash == stepHash(atom.hash, alive);
    } catch (const LogError&) {
        return false;
    }
}
} // namespace

void Log::Impl::checkAtoms(Findings& findings) {
    std::int64_t named = 0;
    visitThings(db, rememberedUuidsIn(db),
                [&](const AtomKey& key, const Content& said, const auto& /*derived*/) {
                    const auto atom = atomOf(db, key);
                    if (!atom)
                        findings.push_back(say("%1 has no name among other logs.", placeOf(key)));
                    else if (atom->hash != said.hash())
                        findings.push_back(
                            say("The hash of %1 is not that of its content.", placeOf(key)));
                    else if (!endsWell(*atom, true))
                        findings.push_back(
                            say("The trail of %1 does not end with what it says.", placeOf(key)));
                    named += atom ? 1 : 0;
                });
    Query count(db, "SELECT count(*) FROM atoms");
    count.next();
    if (count.integer(0) != named)
        findings.push_back(
            say("Names among other logs: %1 are there of %2 things.", count.integer(0), named));
    visitRemoved(db, {}, [&](const RemovedAtom& removed) {
        const std::string place = placeOf(removed.atom.key);
        if (removed.content && hashOf(*removed.content) != removed.atom.hash)
            findings.push_back(say("The hash of %1, which was removed, is not that of what it "
                                   "said.",
                                   place));
        else if (!endsWell(removed.atom, false))
            findings.push_back(
                say("The trail of %1, which was removed, does not end with what it says.", place));
    });
    Query twice(db, "SELECT count(*) FROM (SELECT uuid FROM (SELECT uuid FROM atoms UNION ALL "
                    "SELECT uuid FROM removed_atoms) GROUP BY uuid HAVING count(*) > 1)");
    twice.next();
    if (twice.integer(0) != 0)
        findings.push_back(
            say("Names among other logs: %1 belong to more than one thing.", twice.integer(0)));
    checkTally(findings, "atom", "atoms", tallyOfAtoms(db, "atoms"));
    checkTally(findings, "removed atom", "removed_atoms", tallyOfAtoms(db, "removed_atoms"));
}

void Log::Impl::checkStoreRows(Findings& findings) {
    for (const StoreTally& one : storeTallies(db))
        checkTally(findings, one.kind, one.table, one.there);
}

void Log::Impl::checkTally(Findings& findings, const char* kind, const char* table,
                           const Tally& there) {
    Query row(db, "SELECT things, sum FROM tallies WHERE owner = 0 AND kind = ?",
              std::string(kind));
    if (!row.next())
        return; // the table of tallies is not whole: said by checkTallies
    const Tally written{.things = row.integer(0),
                        .sum = std::bit_cast<std::uint64_t>(row.integer(1))};
    if (written.things != there.things)
        findings.push_back(say("Rows of %1: %2 were written, %3 are there.", std::string(table),
                               written.things, there.things));
    else if (written != there)
        findings.push_back(
            say("Rows of %1: as many as were written, but not the same.", std::string(table)));
}

} // namespace slopebook::log

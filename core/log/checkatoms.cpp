// SPDX-License-Identifier: GPL-3.0-or-later
// Whether everything has its name among other logs, and the hash of what it says.
#include "core/log/derive.h"
#include "core/log/impl.h"
#include "core/model/phrases/log.h"

#include <bit>

namespace slopebook::log {

namespace {
/// "set 17", "attempt 3, 2".
std::string placeOf(const AtomKey& key) {
    std::string text = key.kind + " " + std::to_string(key.one);
    for (const std::int64_t more : {key.two, key.three})
        if (more != 0)
            text += ", " + std::to_string(more);
    return text;
}
} // namespace

void Log::Impl::checkAtoms(Findings& findings) {
    std::int64_t named = 0;
    visitThings(db, rememberedUuidsIn(db),
                [&](const AtomKey& key, const Sixteen& hash, const auto& /*derived*/) {
                    const auto atom = atomOf(db, key);
                    if (!atom)
                        findings.push_back(say("%1 has no name among other logs.", placeOf(key)));
                    else if (atom->hash != hash)
                        findings.push_back(
                            say("The hash of %1 is not that of its content.", placeOf(key)));
                    named += atom ? 1 : 0;
                });
    Query count(db, "SELECT count(*) FROM atoms");
    count.next();
    if (count.integer(0) != named)
        findings.push_back(
            say("Names among other logs: %1 are there of %2 things.", count.integer(0), named));
    checkAtomTally(findings, "atom", "atoms");
    checkAtomTally(findings, "removed atom", "removed_atoms");
}

void Log::Impl::checkAtomTally(Findings& findings, const char* kind, const char* table) {
    const Tally there = tallyOfAtoms(db, table);
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

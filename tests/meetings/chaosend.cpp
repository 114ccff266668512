// SPDX-License-Identifier: GPL-3.0-or-later
// What must hold once everybody has met.
#include "core/log/snapshot.h"
#include "core/meetings/refused.h"
#include "tests/meetings/chaosworld.h"

namespace slopebook::test {

using meetings::isChoiceOfEverybodys;

namespace {
/// Whose turn it is.
std::optional<Sixteen> whose(const std::string& content) {
    if (!content.empty() && log::kindOfContent(content) == "roster")
        for (const log::Reference& of : log::referencesOf(content))
            if (std::string_view(of.kind) == "athlete")
                return of.uuid;
    return std::nullopt;
}
} // namespace

/// What this desk holds as the store has it.
void ChaosWorld::acknowledge(const Desk& desk) {
    const log::Log log = log::Log::open(desk.at.file(), log::Access::ReadOnly);
    const log::Moment moment(log);
    log::Connection& db = log::connectionOf(log);
    log::visitCarried(db, [&](const log::Carried& one) {
        if (one.kind == "roster") // who moves has no turn any more, and nobody hears of it
            return;
        const auto sent = log::sentOf(db, one.uuid);
        if (sent && sent->revision == log::revisionOf(one.trail) && !log::isUnsent(db, one.uuid))
            m_acknowledged[one.uuid].insert(sent->revision);
    });
}

Said ChaosWorld::allInStore() {
    Connection eve = m_world->as("eve");
    return saidByStore(eve);
}

void ChaosWorld::forgetWhatNobodyHas() {
    States held;
    const auto add = [&](const Said& said) {
        for (const auto& [uuid, one] : said)
            held[uuid].insert(std::get<2>(one).begin(), std::get<2>(one).end());
    };
    for (const Desk& desk : m_desks)
        add(saidBy(desk.at.file()));
    add(allInStore());
    for (auto at = m_acknowledged.begin(); at != m_acknowledged.end();) {
        const auto now = held.find(at->first);
        std::erase_if(at->second, [&](const Sixteen& revision) {
            return now == held.end() || !now->second.contains(revision);
        });
        at = at->second.empty() ? m_acknowledged.erase(at) : std::next(at);
    }
}

std::map<Sixteen, Sixteen> ChaosWorld::squadsInStore() const {
    Connection admin = m_world->as("admin");
    std::map<Sixteen, Sixteen> all;
    const store::Rows rows = admin.ask("SELECT id, squad FROM slopebook.atoms", {});
    for (int row = 0; row < rows.size(); ++row)
        all.emplace(rows.uuid(row, 0), rows.uuid(row, 1));
    return all;
}

void ChaosWorld::seeSquads() {
    for (const auto& [uuid, squad] : squadsInStore())
        m_seenIn[uuid].insert(squad);
}

/// Empty: what is not sent waits for nothing that could come.
std::string ChaosWorld::whyWaits(log::Connection& db, const Sixteen& uuid,
                                 const std::map<Sixteen, Sixteen>& squads,
                                 const std::set<Sixteen>& open) const {
    const auto one = log::carried(db, uuid);
    if (!one)
        return {};
    if (const auto its = squads.find(uuid);
        its != squads.end() && !open.contains(its->second) && isChoiceOfEverybodys(db, *one))
        return "the same choice is another squad's";
    Sixteen root = uuid;
    for (auto at = one; at && (at->parent || at->kind == "conflict"); at = log::carried(db, root)) {
        const auto up = at->parent ? std::optional(at->parent->uuid) : log::aboutOf(*at);
        if (!up)
            break;
        root = *up;
    }
    const auto there = squads.find(root);
    if (there != squads.end() && there->second != store::everybody && !open.contains(there->second))
        return "of a squad that is not open";
    if (const auto sent = log::sentOf(db, root); sent && !open.contains(sent->squad))
        return "of who left";
    if (const auto unsent = log::unsentOf(db, root);
        unsent && unsent->squad && !open.contains(*unsent->squad))
        return "of who left a store that went back";
    if (const auto athlete = whose(one->content)) {
        const auto his = squads.find(*athlete);
        if (his != squads.end() && there != squads.end() && his->second != there->second)
            return "of two squads";
        if (log::isUnsent(db, *athlete) && !whyWaits(db, *athlete, squads, open).empty())
            return "of who waits";
    }
    if (store::isEverybodys(one->kind) && !one->alive)
        return "in use where nobody sees";
    return {};
}

std::string ChaosWorld::wrongAt(const Desk& desk) {
    const std::string found = findingsIn(desk.at.file());
    if (!found.empty())
        return found;
    Connection store = m_world->as(desk.login);
    Said there = saidByStore(store);
    std::set<Sixteen> open{store::everybody};
    for (const store::Squad& squad : store::squadsOf(store))
        open.insert(squad.uuid);
    Said here = saidBy(desk.at.file());
    const log::Log log = log::Log::open(desk.at.file(), log::Access::ReadOnly);
    const log::Moment moment(log);
    log::Connection& db = log::connectionOf(log);
    const auto squads = squadsInStore();
    std::vector<Sixteen> apart;
    // Of who moved the store has none of the turns that he had, and those that were removed before,
    // which nobody misses, are told to nobody; nor are those of two squads, which it never had.
    const auto isToldToNobody = [&](const std::string& content) {
        const auto athlete = whose(content);
        if (!athlete)
            return false;
        const auto station = log::parentOf(content);
        const auto his = squads.find(*athlete);
        const auto its = station ? squads.find(station->uuid) : squads.end();
        const auto seen = m_seenIn.find(*athlete);
        return his == squads.end() || its == squads.end() || his->second != its->second ||
               (seen != m_seenIn.end() && seen->second.size() > 1);
    };
    for (Said* said : {&here, &there})
        std::erase_if(*said, [&](const auto& one) {
            return !std::get<1>(one.second) && isToldToNobody(std::get<0>(one.second));
        });
    for (const auto& [uuid, one] : here) {
        const auto sent = log::sentOf(db, uuid);
        const bool ownWork = !sent && isChoiceOfEverybodys(db, *log::carried(db, uuid));
        if (const auto seen = m_seenIn.find(uuid);
            seen != m_seenIn.end() && !ownWork &&
            std::ranges::none_of(seen->second,
                                 [&](const Sixteen& of) { return open.contains(of); }))
            return "another squad's is here: " + log::kindOfContent(std::get<0>(one)) + " " +
                   store::uuidText(uuid);
        if (log::isUnsent(db, uuid)) {
            const std::string why = whyWaits(db, uuid, squads, open);
            if (why.empty())
                return "waits for nothing: " + log::kindOfContent(std::get<0>(one)) + " " +
                       store::uuidText(uuid) + (std::get<1>(one) ? "" : ", removed");
            ++did["  at last waits, " + why];
            m_waits.insert(uuid);
            apart.push_back(uuid);
        } else if (sent && !open.contains(sent->squad)) {
            apart.push_back(uuid); // stayed when its athlete left
        } else if (!sent) {
            return "neither sent nor waiting: " + log::kindOfContent(std::get<0>(one)) + " " +
                   store::uuidText(uuid) + (std::get<1>(one) ? "" : ", removed");
        }
    }
    for (const Sixteen& uuid : apart) {
        here.erase(uuid);
        there.erase(uuid);
    }
    return difference(here, there);
}

/// At which desks something is that the store has not.
std::string ChaosWorld::whereItIs(const Sixteen& uuid) const {
    std::string all;
    for (const Desk& desk : m_desks) {
        const log::Log log = log::Log::open(desk.at.file(), log::Access::ReadOnly);
        const log::Moment moment(log);
        log::Connection& db = log::connectionOf(log);
        const auto one = log::carried(db, uuid);
        const auto sent = log::sentOf(db, uuid);
        if (one)
            all += desk.at.file().filename().string() + ": " + one->kind +
                   (one->alive ? "" : ", removed") + (log::isUnsent(db, uuid) ? ", waits" : "") +
                   (sent ? ", sent to " + store::uuidText(sent->squad) : "") + "; ";
    }
    return all.empty() ? "nowhere" : all;
}

std::string ChaosWorld::whatIsWrong() {
    const auto admin = store::Address::read(m_world->server.address("admin"));
    store::grant(admin, "dora", "Rowing", store::May::Write);
    repeatMoves();
    for (int round = 0; round < 6; ++round)
        for (const Desk& desk : m_desks)
            if (!meet(desk, Line::Good))
                return "a meeting failed at the end";
    seeSquads();
    for (const Desk& desk : m_desks)
        if (const std::string wrong = wrongAt(desk); !wrong.empty())
            return desk.at.file().filename().string() + " of " + desk.login + ": " + wrong;
    const Said there = allInStore();
    for (const auto& [uuid, states] : m_acknowledged) {
        const auto at = there.find(uuid);
        if (m_waits.contains(uuid))
            continue; // a store that went back lost it, and it has no way there now; a desk says so
        if (at == there.end())
            return "lost " + store::uuidText(uuid) + " " + whereItIs(uuid);
        for (const Sixteen& revision : states)
            if (std::ranges::find(std::get<2>(at->second), revision) ==
                std::get<2>(at->second).end())
                return "a state lost of " + log::kindOfContent(std::get<0>(at->second)) + " " +
                       store::uuidText(uuid);
    }
    did["things at last"] += static_cast<int>(there.size());
    return {};
}

} // namespace slopebook::test

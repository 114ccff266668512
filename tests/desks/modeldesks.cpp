// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/desks/modeldesks.h"

#include "core/desks/conflictsides.h"
#include "core/desks/sameones.h"
#include "core/model/errors.h"

#include <algorithm>
#include <array>
#include <map>

namespace slopebook::tests {

using namespace desks;

namespace {
constexpr std::array names{"Ada", "Bela", "Cyd", "Dee"};
constexpr std::array thingNames{"Row", "Press", "Pull"};
constexpr Mass someLoad{40'000};

Date dayOf(std::size_t number) {
    return Date{std::chrono::year{2026}, std::chrono::month{3},
                std::chrono::day{static_cast<unsigned>(4 + number)}};
}

template <class Value>
Value& valueOf(Atom& atom) {
    return std::get<Value>(*atom.thing);
}

std::string tokenOf(const Atom& atom) {
    if (!atom.thing)
        return {};
    if (const auto* set = std::get_if<log::SetThing>(&*atom.thing))
        return set->set.note;
    const auto* attempt = std::get_if<log::AttemptThing>(&*atom.thing);
    return attempt == nullptr ? std::string() : attempt->attempt.note;
}

/// Whether a coach said something of it: another number of an attempt is the log's.
bool isWord(const Atom& before, const Atom& now) {
    if (before.alive != now.alive || before.thing->index() != now.thing->index())
        return true;
    Thing said = *now.thing;
    if (std::holds_alternative<log::AttemptThing>(said))
        *numberOf(said) = *numberOf(*before.thing);
    return said != *before.thing;
}
} // namespace

ModelDesks::ModelDesks(unsigned seed, const Rules& rules) : m_random(seed), m_rules(rules) {
    Room first;
    Atom lift{.thing = Lift{.name = "Row"}};
    TestKind jump;
    jump.name = "Jump";
    jump.unit = "m";
    Atom test{.thing = jump};
    for (Atom* atom : {&lift, &test}) {
        extend(m_slots, *atom);
        first.desk.emplace(newSlot(), *atom);
    }
    m_rooms.assign(2 + below(3), first);
    m_namesStay = chance(0.5);
    for (Room& room : m_rooms) // begun apart
        for (int made = 0; made < 2; ++made)
            addNamed(room);
}

Slot ModelDesks::newSlot() {
    std::string bytes = "made " + std::to_string(++m_made) + std::to_string(m_random());
    return m_slots.of(log::hashOf(bytes));
}

std::string ModelDesks::newToken() {
    std::string token = "t" + std::to_string(++m_made);
    m_written.insert(token);
    return token;
}

template <class Value>
std::vector<Slot> ModelDesks::live(const Room& room) const {
    std::vector<Slot> all;
    for (const auto& [slot, atom] : room.desk)
        if (atom.alive && std::holds_alternative<Value>(*atom.thing))
            all.push_back(slot);
    return all;
}

bool ModelDesks::stands(const Desk& desk) const {
    std::set<std::string> keys;
    bool good = true;
    for (const auto& [slot, atom] : desk) {
        if (!atom.alive)
            continue;
        const std::string key = keyOf(*atom.thing);
        good = good && (key.empty() || keys.insert(key).second);
        eachReference(*atom.thing, [&, from = slot](Slot of) {
            const auto at = desk.find(of);
            good = good && at != desk.end() && at->second.alive && of != from;
        });
        if (const auto* station = std::get_if<Station>(&*atom.thing))
            good = good && std::set(station->tests.begin(), station->tests.end()).size() ==
                               station->tests.size();
    }
    return good;
}

bool ModelDesks::change(Room& room, Changes changes, bool canBeUndone) {
    Desk now = room.desk;
    std::vector<Before> before;
    for (auto& [slot, atom] : changes) {
        const auto held = room.desk.find(slot);
        before.push_back(
            {slot, held == room.desk.end() ? std::nullopt : std::optional(held->second)});
        extend(m_slots, atom);
        now.insert_or_assign(slot, atom);
    }
    if (!stands(now))
        return false;
    for (const Before& one : before)
        if (one.was && one.was->alive && !tokenOf(*one.was).empty() &&
            (!now.at(one.slot).alive || tokenOf(now.at(one.slot)) != tokenOf(*one.was)))
            m_superseded.insert(tokenOf(*one.was));
    for (const Before& one : before)
        if (one.was && isWord(*one.was, now.at(one.slot)))
            ++m_words[one.slot];
    room.desk = std::move(now);
    if (canBeUndone)
        room.undo.push_back(std::move(before));
    return true;
}

void ModelDesks::addSession(Room& room, AthleteId athlete) {
    log::SessionThing session{.head = {.athlete = athlete, .date = dayOf(below(2))}};
    const auto sessions = live<log::SessionThing>(room);
    if (!sessions.empty() && chance(0.2))
        session.head.repeatOf = SessionId{sessions[below(sessions.size())]};
    for (bool done = false; !done; ++session.head.ordinal) {
        const bool taken = std::ranges::any_of(room.desk, [&](const auto& one) {
            return one.second.alive && keyOf(*one.second.thing) == keyOf(Thing(session));
        });
        done = !taken;
        if (done)
            change(room, {{newSlot(), Atom{.thing = session}}});
    }
}

void ModelDesks::addSet(Room& room) {
    const auto sessions = live<log::SessionThing>(room);
    if (sessions.empty())
        return;
    const SessionId session{sessions[below(sessions.size())]};
    const auto lifts = live<Lift>(room);
    if (lifts.empty())
        return;
    int last = 0;
    for (const Slot slot : live<log::SetThing>(room))
        if (const auto& set = valueOf<log::SetThing>(room.desk.at(slot)); set.session == session)
            last = std::max(last, set.ordinal);
    const log::SetThing set{.session = session,
                            .lift = LiftId{lifts[below(lifts.size())]},
                            .ordinal = last + 1,
                            .set = {.load = someLoad, .note = newToken()}};
    change(room, {{newSlot(), Atom{.thing = set}}});
}

// Before or behind those that are there: the log numbers all of a session anew.
void ModelDesks::addAttempt(Room& room, SessionId session) {
    const auto tests = live<TestKind>(room);
    if (tests.empty())
        return;
    const bool before = chance(0.5);
    Changes changes;
    for (const Slot slot : live<log::AttemptThing>(room))
        if (const Atom& held = room.desk.at(slot);
            std::get<log::AttemptThing>(*held.thing).session == session) {
            changes.emplace_back(slot, held);
            if (before)
                ++valueOf<log::AttemptThing>(changes.back().second).ordinal;
        }
    log::AttemptThing attempt{.session = session,
                              .test = TestKindId{tests[below(tests.size())]},
                              .ordinal = before ? 1 : static_cast<int>(changes.size()) + 1};
    attempt.attempt.value = 1.0 + static_cast<double>(below(9));
    if (!before)
        changes.clear();
    changes.emplace_back(newSlot(), Atom{.thing = attempt});
    change(room, std::move(changes));
}

void ModelDesks::correctAttempt(Room& room) {
    const auto attempts = live<log::AttemptThing>(room);
    if (attempts.empty())
        return;
    const Slot slot = attempts[below(attempts.size())];
    Atom now = room.desk.at(slot);
    valueOf<log::AttemptThing>(now).attempt.note = newToken();
    if (change(room, {{slot, now}}))
        ++did.corrections;
}

// Attempts and conditions, whose numbers and keys go other ways than a set's.
void ModelDesks::addHeld(Room& room) {
    const auto sessions = live<log::SessionThing>(room);
    const auto lifts = live<Lift>(room);
    if (sessions.empty())
        return;
    const SessionId session{sessions[below(sessions.size())]};
    if (chance(0.4)) {
        addAttempt(room, session);
    } else if (chance(0.4)) {
        correctAttempt(room);
    } else if (!lifts.empty()) {
        const auto devices = live<Device>(room);
        log::LiftConditionsThing held{.session = session,
                                      .lift = LiftId{lifts[below(lifts.size())]},
                                      .conditions = {.place = names[below(4)]}};
        if (!devices.empty())
            held.conditions.device = DeviceId{devices[below(devices.size())]};
        change(room, {{newSlot(), Atom{.thing = held}}});
    }
}

// Each desk for itself, under names that others take as well.
void ModelDesks::addNamed(Room& room) {
    const std::string name = thingNames[below(3)];
    const std::string note = chance(0.5) ? std::string() : std::string(names[below(4)]);
    Thing made = Device{.name = name, .note = note};
    if (chance(0.4)) {
        made = Lift{.name = name,
                    .kind = !m_namesStay && chance(0.15) ? VelocityKind::Peak : VelocityKind::Mean,
                    .note = note};
    } else if (chance(0.6)) {
        TestKind test;
        test.name = name;
        test.unit = !m_namesStay && chance(0.15) ? "s" : "m";
        test.note = note;
        made = test;
    }
    change(room, {{newSlot(), Atom{.thing = std::move(made)}}}, !m_namesStay);
}

void ModelDesks::addWhatUsesThem(Room& room) {
    const auto athletes = live<Athlete>(room);
    const auto lifts = live<Lift>(room);
    const auto tests = live<TestKind>(room);
    if (chance(0.5) && !athletes.empty() && !lifts.empty()) {
        change(room, {{newSlot(), Atom{.thing = log::CheckLoadThing{
                                           .athlete = AthleteId{athletes[below(athletes.size())]},
                                           .lift = LiftId{lifts[below(lifts.size())]},
                                           .load = someLoad}}}});
    } else if (tests.size() > 1) {
        const std::size_t first = below(tests.size());
        Station station{.name = "Corner " + std::to_string(++m_made)};
        for (const std::size_t step : {std::size_t{0}, std::size_t{1}})
            station.tests.push_back(TestKindId{tests[(first + step) % tests.size()]});
        change(room, {{newSlot(), Atom{.thing = station}}});
    }
}

void ModelDesks::namedEdit(Room& room) {
    std::vector<Slot> all = live<Lift>(room);
    for (const Slot slot : live<TestKind>(room))
        all.push_back(slot);
    for (const Slot slot : live<Device>(room))
        all.push_back(slot);
    const double what = std::uniform_real_distribution<>(0, 1)(m_random);
    if (all.empty() || what < 0.45) {
        addNamed(room);
        return;
    }
    if (what < 0.65) {
        addWhatUsesThem(room);
        return;
    }
    const Slot slot = all[below(all.size())];
    Atom now = room.desk.at(slot);
    if (what < 0.85 || m_namesStay) {
        std::visit(
            [&](auto& one) {
                if constexpr (requires { one.note; })
                    one.note = names[below(4)];
            },
            *now.thing);
        change(room, {{slot, now}});
    } else if (what < 0.95) {
        *nameOf(*now.thing) = thingNames[below(3)];
        change(room, {{slot, now}});
    } else {
        remove(room, slot);
    }
}

void ModelDesks::remove(Room& room, Slot slot) {
    std::set<Slot> gone{slot};
    for (std::size_t before = 0; before != gone.size();) {
        before = gone.size();
        for (const auto& [other, atom] : room.desk)
            if (atom.alive)
                eachReference(*atom.thing, [&, of = other](Slot spoken) {
                    if (gone.contains(spoken))
                        gone.insert(of);
                });
    }
    Changes changes;
    for (const Slot one : gone) {
        changes.emplace_back(one, room.desk.at(one));
        changes.back().second.alive = false;
    }
    change(room, std::move(changes));
}

void ModelDesks::undo(Room& room) {
    if (room.undo.empty())
        return;
    const std::vector<Before> last = std::move(room.undo.back());
    room.undo.pop_back();
    Changes changes;
    for (const Before& one : last) {
        const auto held = room.desk.find(one.slot);
        if (held == room.desk.end())
            return;
        Atom now = held->second;
        now.alive = one.was && one.was->alive;
        if (one.was)
            now.thing = one.was->thing;
        changes.emplace_back(one.slot, std::move(now));
    }
    change(room, changes, false);
}

void ModelDesks::settleConflict(Room& room) {
    const auto conflicts = live<log::ConflictThing>(room);
    if (conflicts.empty())
        return;
    const Slot slot = conflicts[below(conflicts.size())];
    const auto said = std::get<log::ConflictThing>(*room.desk.at(slot).thing);
    const Choice choice = chance(0.5) ? Choice::WhatLost : Choice::AsItStands;
    Desk now = room.desk;
    std::set<Slot> touched;
    try {
        touched = settleOn(m_slots, now, slot, choice);
    } catch (const LogError&) {
        return; // its name is taken, it is in use: the coach is told
    }
    const Atom lost{.thing = said.content.empty() ? std::nullopt
                                                  : std::optional(thingOf(m_slots, said.content))};
    if (choice == Choice::AsItStands && said.lived && !tokenOf(lost).empty())
        m_superseded.insert(tokenOf(lost)); // the coach lets go of it
    for (const Slot one : touched) {
        const auto was = room.desk.find(one);
        if (was == room.desk.end() || !was->second.alive)
            continue;
        if (!now.at(one).alive || tokenOf(now.at(one)) != tokenOf(was->second))
            m_superseded.insert(tokenOf(was->second));
        if (choice == Choice::WhatLost)
            ++m_words[one];
    }
    did.otherSides += choice == Choice::WhatLost ? 1 : 0;
    room.desk = std::move(now);
}

void ModelDesks::someEdit(Room& room) {
    const auto athletes = live<Athlete>(room);
    const auto sessions = live<log::SessionThing>(room);
    const auto sets = live<log::SetThing>(room);
    const auto some = [&](const std::vector<Slot>& all) { return all[below(all.size())]; };
    const double what = std::uniform_real_distribution<>(0, 1)(m_random);
    if (chance(0.12)) {
        namedEdit(room);
    } else if (chance(0.15)) {
        addHeld(room);
    } else if (athletes.empty() || what < 0.06) {
        change(room, {{newSlot(), Atom{.thing = Athlete{.name = names[below(3)]}}}});
    } else if (what < 0.12) {
        const Slot slot = some(athletes);
        Atom now = room.desk.at(slot);
        valueOf<Athlete>(now).name = names[below(4)];
        change(room, {{slot, now}});
    } else if (what < 0.24 || sessions.empty()) {
        addSession(room, AthleteId{some(athletes)});
    } else if (what < 0.30) {
        const Slot slot = some(sessions);
        Atom now = room.desk.at(slot);
        valueOf<log::SessionThing>(now).head.bodyMass = Mass{70'000 + 1000 * int(below(3))};
        change(room, {{slot, now}});
    } else if (what < 0.52 || sets.empty()) {
        addSet(room);
    } else if (what < 0.58) {
        addHeld(room);
    } else if (what < 0.70) {
        const Slot slot = some(sets);
        Atom now = room.desk.at(slot);
        valueOf<log::SetThing>(now).set.note = newToken();
        change(room, {{slot, now}});
    } else if (what < 0.75) {
        const Slot one = some(sets);
        const Slot other = some(sets);
        Atom first = room.desk.at(one);
        Atom second = room.desk.at(other);
        if (one != other &&
            valueOf<log::SetThing>(first).session == valueOf<log::SetThing>(second).session) {
            std::swap(valueOf<log::SetThing>(first).ordinal,
                      valueOf<log::SetThing>(second).ordinal);
            if (change(room, {{one, first}, {other, second}}))
                ++did.swaps;
        }
    } else if (what < 0.80) {
        remove(room, some(sets));
    } else if (what < 0.83) {
        remove(room, some(sessions));
    } else if (what < 0.845) {
        remove(room, some(athletes));
    } else if (what < 0.95) {
        undo(room);
    } else {
        settleConflict(room);
    }
}

void ModelDesks::meet(Room& mine, const Desk& theirs) {
    const Taken taken = take(m_slots, mine.desk, theirs, m_rules);
    for (const Told& told : taken.told) {
        did.joined += told.what == Told::What::Joined ? 1 : 0;
        did.namedJoined +=
            told.what == Told::What::Joined && isOneByName(*mine.desk.at(told.about).thing) ? 1 : 0;
        did.revived += told.what == Told::What::Revived ? 1 : 0;
        did.renamed += told.what == Told::What::Renamed ? 1 : 0;
        did.renumbered += told.what == Told::What::Renumbered ? 1 : 0;
        did.listed += told.what == Told::What::Listed ? 1 : 0;
    }
}

void ModelDesks::bothAtOnce(Room& one, Room& other) {
    const Desk before = one.desk;
    meet(one, other.desk);
    meet(other, before);
}

std::set<std::string> ModelDesks::tokens(const Desk& desk) const {
    std::set<std::string> all;
    Slots known = m_slots;
    for (const auto& [slot, atom] : desk) {
        if (!atom.alive)
            continue;
        all.insert(tokenOf(atom));
        const auto* conflict = std::get_if<log::ConflictThing>(&*atom.thing);
        if (conflict != nullptr && !conflict->content.empty())
            all.insert(tokenOf({.thing = thingOf(known, conflict->content)}));
    }
    return all;
}

std::string ModelDesks::settleAll() {
    const bool ring = chance(0.5); // each takes from its neighbour alone, or all from all
    constexpr int mostRounds = 20;
    std::string turning;                      // what still changed in the last round
    constexpr std::size_t longestTrail = 300; // of 70 steps over all desks
    for (int round = 0; round < mostRounds; ++round) {
        std::vector<Desk> before;
        for (const Room& room : m_rooms)
            before.push_back(room.desk);
        for (std::size_t mine = 0; mine < m_rooms.size(); ++mine)
            for (std::size_t theirs = 0; theirs < m_rooms.size(); ++theirs) {
                if (ring ? theirs != (mine + 1) % m_rooms.size() : theirs == mine)
                    continue;
                if (!ring && chance(0.3))
                    bothAtOnce(m_rooms[mine], m_rooms[theirs]);
                else
                    meet(m_rooms[mine], m_rooms[theirs].desk);
            }
        for (const Room& room : m_rooms)
            for (const auto& [slot, atom] : room.desk)
                if (atom.trail.size() > longestTrail)
                    return "trails grow for ever";
        bool quiet = true;
        turning.clear();
        for (std::size_t i = 0; i < m_rooms.size(); ++i)
            for (const auto& [slot, atom] : m_rooms[i].desk)
                if (const auto was = before[i].find(slot);
                    was == before[i].end() || was->second != atom)
                    turning += std::to_string(i) + " " + std::string(kindOf(*atom.thing)) + " " +
                               std::to_string(slot) + (atom.alive ? " there" : " removed") +
                               (was != before[i].end() && was->second.thing == atom.thing
                                    ? ", in its trail; "
                                    : "; ");
        for (std::size_t i = 0; i < m_rooms.size(); ++i)
            quiet = quiet && m_rooms[i].desk == before[i];
        if (quiet)
            return {};
    }
    return "the desks never come to rest: " + turning;
}

// Of two that can be one none is called "Row (2)", unless a coach called both so.
std::string ModelDesks::wrongNames(const Desk& desk) const {
    for (const auto& [slot, atom] : desk)
        for (const auto& [other, of] : desk)
            if (m_namesStay && slot < other && atom.alive && of.alive &&
                canBeOne(*atom.thing, *of.thing) &&
                sameRoot(*nameOf(*atom.thing), *nameOf(*of.thing)))
                return "two of one name, of which there can be one";
    return {};
}

// What one coach said, and nobody else, waits for no choice.
int ModelDesks::idleChoices(const Desk& desk) const {
    int idle = 0;
    Slots known = m_slots;
    for (const auto& [slot, atom] : desk) {
        const auto* conflict = std::get_if<log::ConflictThing>(&*atom.thing);
        if (conflict == nullptr || conflict->why != word(Why::BothChanged) ||
            conflict->content.empty() || !conflict->lived)
            continue;
        const Slot about = known.find(conflict->about);
        const auto words = m_words.find(about);
        const Thing lost = thingOf(known, conflict->content);
        if (std::holds_alternative<log::AttemptThing>(lost) &&
            (words == m_words.end() || words->second < 2))
            ++idle;
    }
    return idle;
}

std::string ModelDesks::whatIsWrong() const {
    const Desk& first = m_rooms.front().desk;
    for (const Room& room : m_rooms) {
        if (room.desk.size() != first.size())
            return "a desk holds what another does not";
        for (const auto& [slot, atom] : room.desk)
            if (const Atom& other = first.at(slot);
                atom.alive != other.alive || atom.thing != other.thing)
                return "two desks do not say the same";
    }
    if (!stands(first))
        return "a log would not take it: a key twice, or something that belongs to nothing";
    if (std::string wrong = wrongNames(first); !wrong.empty())
        return wrong;
    const std::set<std::string> there = tokens(first);
    for (const std::string& token : m_written)
        if (!there.contains(token) && !m_superseded.contains(token))
            return "a set is lost";
    std::multiset<std::string> sets;
    for (const auto& [slot, atom] : first)
        if (atom.alive && !tokenOf(atom).empty())
            sets.insert(tokenOf(atom));
    if (sets.size() != std::set(sets.begin(), sets.end()).size())
        return "a set is there twice";
    return {};
}

std::string ModelDesks::run(int steps) {
    const bool backups = chance(0.5);
    for (int step = 0; step < steps; ++step) {
        const double what = std::uniform_real_distribution<>(0, 1)(m_random);
        const std::size_t which = below(m_rooms.size());
        Room& room = m_rooms[which];
        Room& other = m_rooms[below(m_rooms.size())];
        if (what < 0.68) {
            someEdit(room);
        } else if (what < 0.82) {
            if (&room != &other)
                meet(room, other.desk);
        } else if (what < 0.90) {
            if (&room != &other)
                bothAtOnce(room, other);
        } else if (what < 0.94) {
            m_backups.emplace_back(which, room);
        } else if (what < 0.97 && backups && !m_backups.empty()) {
            const auto [of, backup] = m_backups[below(m_backups.size())];
            std::set<std::string> gone = tokens(m_rooms[of].desk); // what nobody else has
            m_rooms[of] = backup;
            for (const Room& kept : m_rooms)
                for (const std::string& token : tokens(kept.desk))
                    gone.erase(token);
            m_superseded.merge(gone);
        } else if (what < 0.98 && m_rooms.size() < 5) {
            m_rooms.push_back(Room(room)); // the file is copied to another machine
        }
    }
    if (std::string wrong = settleAll(); !wrong.empty())
        return wrong;
    did.idleChoices = idleChoices(m_rooms.front().desk);
    return whatIsWrong();
}

} // namespace slopebook::tests

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desks/names.h"

#include "core/desks/valuewords.h"
#include "core/model/phrases/desks.h"
#include "core/model/session.h"

#include <array>
#include <utility>

namespace slopebook::desks {

namespace {
constexpr std::array kindWords{
    std::pair{std::string_view("athlete"), Phrase("athlete")},
    std::pair{std::string_view("lift"), Phrase("lift")},
    std::pair{std::string_view("device"), Phrase("device")},
    std::pair{std::string_view("block"), Phrase("training block")},
    std::pair{std::string_view("test"), Phrase("test")},
    std::pair{std::string_view("equipment"), Phrase("set of equipment")},
    std::pair{std::string_view("station"), Phrase("station")},
    std::pair{std::string_view("session"), Phrase("session")},
    std::pair{std::string_view("lift conditions"), Phrase("conditions of a lift")},
    std::pair{std::string_view("test conditions"), Phrase("conditions of a test")},
    std::pair{std::string_view("set"), Phrase("set")},
    std::pair{std::string_view("attempt"), Phrase("attempt")},
    std::pair{std::string_view("gap"), Phrase("what was not possible")},
    std::pair{std::string_view("check load"), Phrase("check load")},
    std::pair{std::string_view("roster"), Phrase("place in a roster")},
    std::pair{std::string_view("conflict"), Phrase("choice")},
};

class Namer {
public:
    explicit Namer(const Desk& desk) : m_desk(desk) {}

    Words name(Slot slot) const {
        const auto at = m_desk.find(slot);
        if (at == m_desk.end() || !at->second.thing)
            return say("one that nobody knows any more");
        return std::visit([&](const auto& value) { return of(value); }, *at->second.thing);
    }

private:
    template <class Id>
    Words name(Id id) const {
        return name(static_cast<Slot>(raw(id)));
    }
    template <class Value>
    Words of(const Value& value) const {
        return asIs(value.name);
    }
    Words of(const TestKind& test) const { return perhapsOurs(test.name); }
    Words of(const Block& block) const { return listed({asIs(block.name), inWords(block.first)}); }
    Words of(const log::SessionThing& session) const {
        return listed(
            {name(session.head.athlete), sayDay(session.head.date, session.head.ordinal)});
    }
    Words of(const log::LiftConditionsThing& held) const {
        return listed({name(held.session), name(held.lift)});
    }
    Words of(const log::TestConditionsThing& held) const {
        return listed({name(held.session), name(held.test)});
    }
    Words of(const log::SetThing& set) const {
        return listed({name(set.session), name(set.lift), say("set %1", set.ordinal)});
    }
    Words of(const log::AttemptThing& attempt) const {
        return listed(
            {name(attempt.session), name(attempt.test), say("attempt %1", attempt.ordinal)});
    }
    Words of(const log::GapThing& held) const {
        std::vector<Words> parts{name(held.session)};
        if (held.gap.kind)
            parts.push_back(name(*held.gap.kind));
        if (held.gap.lift)
            parts.push_back(name(*held.gap.lift));
        return listed(std::move(parts));
    }
    Words of(const log::CheckLoadThing& load) const {
        return listed({name(load.athlete), name(load.lift), inWords(load.load)});
    }
    Words of(const log::RosterThing& turn) const {
        return listed({name(turn.station), inWords(turn.day), name(turn.athlete)});
    }
    Words of(const log::ConflictThing& conflict) const {
        const auto why = whyFromWord(conflict.why);
        return why ? sayWhy(*why) : sayKind("conflict");
    }

    const Desk& m_desk;
};
} // namespace

Words nameOnDesk(const Desk& desk, Slot slot) {
    return Namer(desk).name(slot);
}

Words sayKind(std::string_view kind) {
    for (const auto& [word, phrase] : kindWords)
        if (word == kind)
            return say(phrase);
    return asIs(std::string(kind));
}

Words sayWhy(Why why) {
    switch (why) {
    case Why::BothChanged:
        return say("changed in both logs");
    case Why::SameName:
        return say("two of one name: this one has another name now");
    case Why::SameNumber:
        return say("two sessions of one day and number: this one has another number now");
    case Why::Joined:
        return say("two that can only be one, and did not say the same");
    case Why::Revived:
        return say("removed in one log, in use in the other: it is back");
    case Why::Repeat:
        return say("no repeat test any more: what it repeated is another athlete's, or repeats it");
    }
    return {};
}

} // namespace slopebook::desks

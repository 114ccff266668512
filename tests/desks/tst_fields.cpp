// SPDX-License-Identifier: GPL-3.0-or-later
// Whatever is shown of either side of a choice can be read in the coach's language: each word of it
// is a phrase that is translated, or one that the coach wrote.
#include "core/desks/names.h"
#include "core/desks/valuewords.h"
#include "core/model/phrases.h"

#include <QTest>

#include <algorithm>
#include <set>

using namespace slopebook;
using namespace slopebook::desks;

namespace {
constexpr Date day{std::chrono::year{2026}, std::chrono::month{3}, std::chrono::day{4}};

/// The coach's own words, each of which could be taken for nothing else.
const std::set<std::string> coachsOwn{"mine a", "mine b", "mine c", "mine d", "mine e", "mine f"};

bool isPhrase(const std::string& text) {
    return std::ranges::any_of(phrases::lists, [&](const auto& list) {
        return std::ranges::find(list, text) != std::ranges::end(list);
    });
}

/// What in it no translator sees and no coach wrote.
void strangersIn(const Words& words, std::set<std::string>& strangers) {
    const bool ours = words.kind == Words::Kind::Said || words.kind == Words::Kind::List;
    if (ours && !isPhrase(words.text))
        strangers.insert(words.text);
    if (words.kind == Words::Kind::AsIs && !words.text.empty() && !coachsOwn.contains(words.text) &&
        words.text != "kg" && words.text != "lb")
        strangers.insert(words.text);
    for (const Words& part : words.parts)
        strangersIn(part, strangers);
}

/// One of each kind of thing, with something in every field.
struct EveryKind {
    Slots known;
    Desk desk;
    std::vector<Slot> all;

    Slot add(Thing thing) {
        const Slot slot = known.of(log::hashOf("thing " + std::to_string(all.size())));
        desk[slot] = Atom{.thing = std::move(thing)};
        all.push_back(slot);
        return slot;
    }
    EveryKind() {
        const AthleteId athlete{add(Athlete{.name = "mine a", .note = "mine b"})};
        const DeviceId device{add(Device{.name = "mine c", .note = "mine d"})};
        const LiftId lift{add(Lift{.name = "mine a",
                                   .ballistic = true,
                                   .movesBody = true,
                                   .mvt = Mvt{.value = 0.3, .sd = 0.1, .source = "mine e"},
                                   .smallestVelocity = 0.05,
                                   .smallestOneRm = 2.5,
                                   .note = "mine f"})};
        TestKind kind;
        kind.name = "Countermovement jump"; // as the program calls it, whatever a window says
        kind.unit = "mine a";
        kind.noise = TestNoise{.value = 1, .percent = true, .source = "mine b"};
        kind.smallest = 0.5;
        kind.smallestSource = "mine c";
        kind.note = "mine d";
        const TestKindId test{add(kind)};
        add(Block{.name = "mine a",
                  .first = day,
                  .last = day,
                  .ceiling = Mass{100'000},
                  .trained = "mine b",
                  .aWeek = sessionsAWeek(2, 3),
                  .note = "mine c"});
        add(Equipment{.name = "mine a",
                      .bars = {{.name = "mine b", .mass = *parseExactMass("20", MassUnit::Pound)}},
                      .plates = parsePlates("20x2", MassUnit::Kilogram),
                      .fixed = {{.name = "mine c",
                                 .mass = *parseExactMass("30", MassUnit::Kilogram),
                                 .use = FixedMass::Use::Added}},
                      .ceiling = parseExactMass("200", MassUnit::Kilogram),
                      .note = "mine d"});
        const Conditions conditions{.device = device,
                                    .place = "mine a",
                                    .surface = "mine b",
                                    .footwear = "mine c",
                                    .technique = "mine d",
                                    .notComparable = "mine e"};
        const StationId station{add(Station{.name = "mine a",
                                            .lift = lift,
                                            .tests = {test},
                                            .conditions = conditions,
                                            .ladder = {Mass{40'000}, Mass{50'000}},
                                            .sets = 3,
                                            .note = "mine f"})};
        const SessionId first{add(log::SessionThing{.head = {.athlete = athlete, .date = day}})};
        const SessionId session{add(log::SessionThing{.head = {.athlete = athlete,
                                                               .date = day,
                                                               .ordinal = 2,
                                                               .bodyMass = Mass{70'000},
                                                               .repeatOf = first,
                                                               .note = "mine a"}})};
        add(log::LiftConditionsThing{.session = session, .lift = lift, .conditions = conditions});
        add(log::TestConditionsThing{.session = session, .test = test, .conditions = conditions});
        add(log::SetThing{.session = session,
                          .lift = lift,
                          .ordinal = 1,
                          .set = {.load = Mass{40'000},
                                  .trueMaximum = true,
                                  .outcome = Outcome::NotLifted,
                                  .reason = "mine b",
                                  .effort = Effort{.halves = 15},
                                  .excluded = "mine c",
                                  .note = "mine d",
                                  .reps = {{.velocity = 1, .excluded = "mine a"}}}});
        log::AttemptThing attempt{.session = session, .test = test};
        attempt.attempt = {.side = BodySide::Left,
                           .value = 0.3,
                           .contact = 0.2,
                           .note = "mine a",
                           .excluded = "mine b"};
        add(attempt);
        log::GapThing gap{.session = session};
        gap.gap = {.kind = test,
                   .lift = lift,
                   .load = Mass{40'000},
                   .side = BodySide::Right,
                   .reason = "mine a"};
        add(gap);
        add(log::CheckLoadThing{.athlete = athlete, .lift = lift, .load = Mass{40'000}});
        add(log::RosterThing{.station = station, .day = day, .athlete = athlete});
        add(log::ConflictThing{.why = "both changed"});
    }
};
} // namespace

class TestFields : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void everyFieldOfEveryKind() {
        const EveryKind every;
        std::set<std::size_t> kinds;
        for (const Slot slot : every.all) {
            const Thing& thing = *every.desk.at(slot).thing;
            kinds.insert(thing.index());
            std::set<std::string> strangers;
            strangersIn(nameOnDesk(every.desk, slot), strangers);
            strangersIn(sayKind(kindOf(thing)), strangers);
            if (!std::holds_alternative<log::ConflictThing>(thing)) // of a choice none is made
                for (const SaidField& field : fieldsOf(every.desk, thing)) {
                    strangersIn(field.field, strangers);
                    strangersIn(field.value, strangers);
                    if (field.field.kind != Words::Kind::Said)
                        strangers.insert(english(field.field));
                }
            QVERIFY2(strangers.empty(), (std::string(kindOf(thing)) + ": " +
                                         (strangers.empty() ? "" : *strangers.begin()))
                                            .c_str());
        }
        QCOMPARE(kinds.size(), std::variant_size_v<Thing>);
    }

    void everyValueIsAPhraseOfItsOwn() {
        std::set<std::string> strangers, seen;
        std::size_t count = 0;
        const auto each = [&](auto... values) {
            for (const Words& words : {valueWords(values)...}) {
                strangersIn(words, strangers);
                seen.insert(english(words));
                ++count;
            }
        };
        each(VelocityKind::Mean, VelocityKind::Propulsive, VelocityKind::Peak);
        each(PointRule::Fastest, PointRule::Mean);
        each(Mvt::Origin::Athlete, Mvt::Origin::Coach, Mvt::Origin::Published);
        each(AttemptRule::Best, AttemptRule::Mean);
        each(TestFormula::Value, TestFormula::FlightHeight, TestFormula::HeightRsi,
             TestFormula::FlightRsi, TestFormula::PerBodyMass);
        each(BodySide::Both, BodySide::Left, BodySide::Right);
        each(Outcome::Lifted, Outcome::NotLifted);
        each(FixedMass::Use::Alone, FixedMass::Use::Added);
        QVERIFY2(strangers.empty(), strangers.empty() ? "" : strangers.begin()->c_str());
        QCOMPARE(seen.size(), count);
    }

    void everyReason() {
        std::set<std::string> strangers;
        for (const Why why : {Why::BothChanged, Why::SameName, Why::SameNumber, Why::Joined,
                              Why::Revived, Why::Repeat})
            strangersIn(sayWhy(why), strangers);
        QVERIFY(strangers.empty());
    }

    void aKnownTestIsTranslatedAndACoachsOwnIsNot() {
        QCOMPARE(perhapsOurs("Countermovement jump").kind, Words::Kind::Said);
        QCOMPARE(perhapsOurs("countermovement jumps of ours").kind, Words::Kind::AsIs);
    }
};

QTEST_APPLESS_MAIN(TestFields)
#include "tst_fields.moc"

// SPDX-License-Identifier: GPL-3.0-or-later
// What a thing says as bytes, and back from them, whatever the bytes are.
#include "core/log/checksum.h"
#include "core/log/contentcolumns.h"
#include "core/log/contents.h"
#include "tests/log/carriedlogs.h"
#include "tests/log/otherthings.h"

#include <algorithm>
#include <cmath>
#include <random>
#include <set>

using namespace slopebook;
using namespace slopebook::test;
using log::Carried;
using log::Log;
using log::Sixteen;

namespace {
bool refusesContent(std::string_view bytes, const log::KeyOf& keys) {
    return refuses([&] { log::readContent(bytes, keys); });
}
/// Puts a zero of that sign into every figure of a thing, and counts them.
struct EveryFigure {
    double zero;
    int count = 0;

    template <class Field>
    void operator()(const char* /*name*/, Field& field) {
        put(field);
    }
    template <class Field>
    void later(const char* /*name*/, Field& field) {
        put(field);
    }
    template <class Value, class Columns>
    void group(std::optional<Value>& field, const Columns& columns) {
        field.emplace();
        columns(*field, *this);
    }
    template <class Value, class Columns>
    void laterGroup(const char* /*name*/, std::optional<Value>& field, const Columns& columns) {
        group(field, columns);
    }
    template <class Id>
    void of(Id& /*id*/) {}
    template <class Field>
    void always(const char* /*name*/, Field& field) {
        put(field);
    }
    template <class Parts, class Columns>
    void each(const char* /*first*/, Parts& parts, const Columns& columns) {
        parts.resize(1);
        for (auto& part : parts)
            columns(part, *this);
    }
    void put(double& field) {
        field = zero;
        ++count;
    }
    void put(std::optional<double>& field) { put(field.emplace()); }
    template <class Field>
    void put(Field& /*field*/) {}
};

/// One of each kind of thing.
template <std::size_t... index>
std::vector<log::Thing> oneOfEach(std::index_sequence<index...> /*all*/) {
    return {log::Thing(std::in_place_index<index>)...};
}
} // namespace

class TestContents : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void contentsComeBackFromTheirBytes();
    void whatWasReadIsWhatTheLogHolds();
    void otherBytesAreRefused();
    void minusZeroIsZero();
    void aLogKeepsMinusZeroAsZero();
};

void TestContents::contentsComeBackFromTheirBytes() {
    std::set<std::string> kinds;
    for (unsigned seed = 1; seed <= 4; ++seed) {
        const Folder folder;
        Log log = diceLog(folder.path(), seed);
        joinAStore(log);
        const Held held = heldBy(log);
        const log::KeyOf keys = keysOf(held);
        for (const auto& [uuid, one] : held) {
            const log::Thing thing = log::readContent(one.content, keys);
            if (one.alive) {
                QCOMPARE(saidAgain(log, thing), one.content);
                kinds.insert(one.kind);
            }
            QCOMPARE(log::kindOfContent(one.content), one.kind);
            const auto references = log::referencesOf(one.content);
            QCOMPARE(one.parent.has_value(),
                     !references.empty() && one.kind != "station" && one.kind != "conflict");
            if (one.parent)
                QVERIFY(references.front() == *one.parent);
        }
    }
    QCOMPARE(kinds.size(), std::variant_size_v<log::Thing>);
}

void TestContents::whatWasReadIsWhatTheLogHolds() {
    const Folder folder;
    const Log log = diceLog(folder.path(), 7);
    const Held held = heldBy(log);
    const log::KeyOf keys = keysOf(held);
    int compared = 0;
    for (const auto& [uuid, one] : held) {
        if (!one.alive)
            continue;
        const log::Thing thing = log::readContent(one.content, keys);
        if (one.kind == "set") {
            log::PlacedSet set = log.set(SetId{one.place.one});
            set.id = SetId{};
            QCOMPARE(std::get<log::SetThing>(thing), set);
        } else if (one.kind == "session") {
            const auto record = log.session(SessionId{one.place.one});
            QCOMPARE(std::get<log::SessionThing>(thing).head, record.head.value);
        } else if (one.kind == "lift") {
            QCOMPARE(std::get<Lift>(thing), log.lift(LiftId{one.place.one}).value);
        } else if (one.kind == "lift conditions") {
            const auto& said = std::get<log::LiftConditionsThing>(thing);
            QCOMPARE(said.conditions, log.conditions(said.session, said.lift));
        } else if (one.kind == "gap") {
            const auto& said = std::get<log::GapThing>(thing);
            const Battery battery = log.battery(said.session);
            QCOMPARE(said.gap, battery.gaps.at(static_cast<std::size_t>(said.ordinal - 1)));
        } else {
            continue;
        }
        ++compared;
    }
    QVERIFY(compared > 30);
    const auto equipment =
        std::ranges::find_if(held, [](const auto& one) { return one.second.kind == "equipment"; });
    QCOMPARE(std::get<Equipment>(log::readContent(equipment->second.content, keys)),
             log.equipment().at(0).value);
}

void TestContents::otherBytesAreRefused() {
    const Folder folder;
    const Log log = diceLog(folder.path(), 3);
    const Held held = heldBy(log);
    const log::KeyOf keys = keysOf(held);
    std::mt19937 engine(20);
    const auto below = [&](std::size_t n) {
        return std::uniform_int_distribution<std::size_t>(0, n - 1)(engine);
    };
    int cut = 0, altered = 0;
    for (const auto& [uuid, one] : held) {
        const std::string& bytes = one.content;
        for (std::size_t size = 0; size < bytes.size(); size += 1 + below(8), ++cut)
            if (const std::string_view part = std::string_view(bytes).substr(0, size);
                !refusesContent(part, keys)) // what is left may be a thing that says less
                QCOMPARE(saidAgain(log, log::readContent(part, keys)), std::string(part));
        for (int i = 0; i < 40; ++i, ++altered) {
            std::string other = bytes;
            for (std::size_t n = 1 + below(3); n > 0; --n)
                switch (below(4)) {
                case 0:
                    other[below(other.size())] = static_cast<char>(below(256));
                    break;
                case 1:
                    other.insert(below(other.size()), 1 + below(9), '\0');
                    break;
                case 2:
                    other.erase(below(other.size() - 8), 1 + below(8));
                    break;
                default:
                    other += bytes.substr(below(bytes.size()));
                }
            if (!refusesContent(other, keys))
                QCOMPARE(saidAgain(log, log::readContent(other, keys)), other);
        }
    }
    QVERIFY(cut > 1000 && altered > 1000);
    QVERIFY(refusesContent("", keys));
    QVERIFY(refusesContent(std::string(64, '\xFF'), keys)); // a length beyond all
    // Of what is not here, in words.
    const auto set =
        std::ranges::find_if(held, [](const auto& one) { return one.second.kind == "set"; });
    try {
        log::readContent(set->second.content,
                         [](const char*, const Sixteen&) -> std::optional<std::int64_t> {
                             return std::nullopt;
                         });
        QFAIL("read");
    } catch (const BadInput& error) {
        QCOMPARE(QString::fromStdString(error.what()),
                 QStringLiteral("found a set that speaks of a session which is not here, expected "
                                "what it speaks of beside it"));
    }
}

// A file keeps -0 as 0: what it says of it, and its checksum, must be those of 0.
void TestContents::minusZeroIsZero() {
    const log::UuidOf uuids = [](const char*, std::int64_t) { return Sixteen{}; };
    int figures = 0;
    for (log::Thing thing : oneOfEach(std::make_index_sequence<std::variant_size_v<log::Thing>>()))
        std::visit(
            [&](auto& value) {
                using Columns = log::ThingColumns<std::remove_cvref_t<decltype(value)>>;
                std::set<std::string> bytes;
                for (const double zero : {0.0, -0.0}) {
                    EveryFigure each{zero};
                    Columns::visit(value, each);
                    figures += each.count;
                    log::Content content(uuids, Columns::kind);
                    Columns::visit(value, content);
                    bytes.insert(content.bytes());
                }
                QCOMPARE(bytes.size(), std::size_t{1});
            },
            thing);
    QVERIFY(figures > 15);
    QCOMPARE(log::Checksum('x').add(-0.0).value(), log::Checksum('x').add(0.0).value());
    QCOMPARE(log::Checksum('x').add(std::optional(-0.0)).value(),
             log::Checksum('x').add(std::optional(0.0)).value());
}

void TestContents::aLogKeepsMinusZeroAsZero() {
    const Folder folder;
    {
        Log log = Log::create(folder.path());
        const LiftId lift =
            log.add(Lift{.name = "Row", .mvt = Mvt{.value = 0.3, .sd = -0.0, .source = "own"}});
        log.change(lift,
                   Lift{.name = "Row", .mvt = Mvt{.value = 0.4, .sd = -0.0, .source = "own"}});
    }
    const Log log = Log::open(folder.path());
    QVERIFY(log.check().empty());
    QVERIFY(!std::signbit(*log.lifts().front().value.mvt->sd));
    QVERIFY(!heldBy(log).empty());
}

QTEST_GUILESS_MAIN(TestContents)
#include "tst_contents.moc"

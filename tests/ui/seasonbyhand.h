// SPDX-License-Identifier: GPL-3.0-or-later
// A season's matrix made by hand, with every kind of cell: what pages show of it is known without
// the computation.
#pragma once

#include "tests/log/builders.h"
#include "ui/athlete/overview/seasonasking.h"

namespace slopebook::test {

inline answers::CellChange changeOf(std::size_t from, double low, double high, double smallest,
                                    bool higherIsBetter = true) {
    const double middle = (low + high) / 2;
    const double half = (high - low) / 2;
    return {.from = from,
            .read = answers::read(
                middle, {low, high}, {middle - 0.84 * half, middle + 0.84 * half},
                answers::Smallest{.value = smallest, .origin = answers::Smallest::Origin::Coach},
                higherIsBetter),
            .byChance = 0.05};
}

inline answers::MatrixCell cellOf(double value, double half,
                                  std::optional<answers::CellChange> against = {},
                                  std::optional<answers::CellChange> before = {}) {
    return {.sessions = 1,
            .value = value,
            .interval = stats::Interval{value - half, value + half},
            .against = std::move(against),
            .before = std::move(before)};
}

inline answers::MatrixCell noCell(NoAnswer::Why why, std::string reason) {
    return {.value = NoAnswer{.why = why, .reason = asIs(std::move(reason))}};
}

/// Autumn (chosen), a winter up to 70 kg and spring; speeds, 1RM, a hop on two surfaces, a rig
/// under water, an asymmetry, the body mass.
inline answers::SeasonMatrix seasonByHand() {
    using answers::Measure;
    answers::SeasonMatrix m;
    m.blocks = {{.id = BlockId{1},
                 .block = {.name = "Autumn", .first = day(2025, 9, 1), .last = day(2025, 11, 30)},
                 .sessions = 3},
                {.id = BlockId{2},
                 .block = {.name = "Winter flood",
                           .first = day(2025, 12, 1),
                           .last = day(2026, 2, 28),
                           .ceiling = Mass{70'000},
                           .note = "heavy plates under water"},
                 .sessions = 1},
                {.id = BlockId{3},
                 .block = {.name = "Spring", .first = day(2026, 3, 1), .last = day(2026, 5, 31)},
                 .sessions = 1}};
    const auto add = [&](Measure measure, double smallest, std::vector<answers::MatrixCell> cells) {
        m.rows.push_back({.measure = std::move(measure),
                          .cells = std::move(cells),
                          .smallest = answers::Smallest{
                              .value = smallest, .origin = answers::Smallest::Origin::Coach}});
    };
    add({.name = "Bench pull", .lift = LiftId{1}, .load = Mass{40'000}, .unit = "m/s"}, 0.05,
        {cellOf(0.980, 0.02),
         cellOf(1.002, 0.02, changeOf(0, -0.010, 0.040, 0.05), changeOf(0, -0.010, 0.040, 0.05)),
         cellOf(1.051, 0.02, changeOf(0, 0.038, 0.104, 0.05), changeOf(1, -0.02, 0.118, 0.05))});
    add({.kind = Measure::Kind::OneRm,
         .name = "Bench pull",
         .lift = LiftId{1},
         .unit = "kg",
         .decimals = 1},
        4,
        {cellOf(82.2, 4), cellOf(81.6, 5, changeOf(0, -6.1, 4.1, 4), changeOf(0, -6.1, 4.1, 4)),
         cellOf(76.5, 3, changeOf(0, -9.9, -1.5, 4), changeOf(1, -9.0, -1.2, 4))});
    answers::CellChange apart = changeOf(0, -0.10, 0.08, 0.06);
    apart.read.reading = answers::Reading::NoFigure;
    apart.read.notComparable = asIs("concrete, then rubber");
    answers::CellChange back = apart;
    back.from = 1;
    add({.kind = Measure::Kind::Test,
         .name = "Single hop",
         .test = TestKindId{1},
         .side = BodySide::Right,
         .unit = "m",
         .decimals = 2},
        0.06,
        {cellOf(1.90, 0.05), cellOf(1.89, 0.05, apart, apart),
         cellOf(1.98, 0.05, changeOf(0, 0.01, 0.15, 0.06), back)});
    add({.kind = Measure::Kind::Test,
         .name = "Isometric pull",
         .test = TestKindId{2},
         .unit = "N",
         .decimals = 0},
        90,
        {cellOf(1790, 60), noCell(NoAnswer::Why::NotPossible, "rig under water"),
         noCell(NoAnswer::Why::NotTested, "not tested")});
    add({.kind = Measure::Kind::Asymmetry,
         .name = "Single hop",
         .test = TestKindId{1},
         .unit = "%",
         .decimals = 1,
         .higherIsBetter = false},
        3,
        {cellOf(9, 2), cellOf(8, 2, changeOf(0, -3, 1, 3, false), changeOf(0, -3, 1, 3, false)),
         cellOf(3, 2, changeOf(0, -9, -3.5, 3, false), changeOf(1, -8, -2, 3, false))});
    answers::CellChange mass = changeOf(0, -0.5, 1.5, 1);
    mass.read.reading = answers::Reading::NoFigure;
    mass.read.smallest.reset();
    add({.kind = Measure::Kind::BodyMass, .unit = "kg", .decimals = 1}, 0,
        {cellOf(71.5, 0), cellOf(72, 0, mass, mass),
         noCell(NoAnswer::Why::NoBodyMass, "no body mass")});
    m.rows.back().smallest.reset();
    m.notes = {{.words = asIs("light loads only in winter")}};
    tellSeason(m);
    return m;
}

/// Sessions behind it, 10 in autumn, 20 in winter, 30 in spring, with everything in each.
inline ui::SeasonAsking askedByHand(answers::SeasonMatrix matrix = seasonByHand()) {
    std::vector<questions::BlockSession> sessions;
    qint64 id = 10;
    for (const Date date : {day(2025, 10, 1), day(2026, 1, 20), day(2026, 4, 20)}) {
        sessions.push_back({.session = SessionId{id},
                            .athlete = AthleteId{1},
                            .date = date,
                            .lifts = {LiftId{1}},
                            .tests = {TestKindId{1}, TestKindId{2}}});
        id += 10;
    }
    return {.answer = ui::AskedSeason{.athlete = QStringLiteral("Cora"),
                                      .matrix = std::move(matrix),
                                      .sessions = std::move(sessions)}};
}

} // namespace slopebook::test

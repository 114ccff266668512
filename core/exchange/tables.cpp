// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/tables.h"

#include "core/exchange/tidycolumns.h"
#include "core/model/phrases/exchange.h"

#include <algorithm>

namespace slopebook::exchange {

namespace {

/// Nothing in both: not said. One number stands for both.
std::optional<SessionsAWeek> readAWeek(const Cells& cells) {
    constexpr Phrase expected = "sessions a week in halves from 0.5 to 21, such as 2 or 2.5";
    const auto fewest = cells.number(BlockFewest, fewestAWeek, mostAWeek, false, expected);
    const auto most = cells.number(BlockMost, fewestAWeek, mostAWeek, false, expected);
    for (const auto& [column, value] : {std::pair{BlockFewest, fewest}, {BlockMost, most}})
        if (value && !sessionsAWeek(*value, *value))
            cells.refuse(column, expected);
    if (!fewest && most)
        cells.refuse(BlockFewest, "the fewest sessions a week beside the most");
    if (!fewest)
        return std::nullopt;
    const auto read = sessionsAWeek(*fewest, most.value_or(*fewest));
    if (!read)
        cells.refuse(BlockMost, "the most sessions a week, no fewer than the fewest");
    return read;
}

Block readBlock(const Cells& cells) {
    constexpr Phrase dateExpected = "a date written year-month-day, such as 2026-03-14";
    constexpr Phrase ceilingExpected = "a load in kg above 0, such as 62.5";
    Block block{.name = cells.name(BlockName),
                .first = need(cells, BlockFirst, cells.date(BlockFirst), dateExpected),
                .last = need(cells, BlockLast, cells.date(BlockLast), dateExpected),
                .ceiling = cells.mass(BlockCeiling, Mass{2'000'000}, ceilingExpected),
                .trained = cells.text(BlockTrained),
                .aWeek = readAWeek(cells),
                .note = cells.text(BlockNote)};
    if (block.last < block.first)
        cells.refuse(BlockLast, "a last day that is not before the first");
    if (block.ceiling && block.ceiling->grams == 0)
        cells.refuse(BlockCeiling, ceilingExpected);
    return block;
}

std::optional<Mvt> readMvt(const Cells& cells, bool& published) {
    constexpr Phrase expected = "a speed in m/s above 0 and under 10, such as 0.17";
    const bool isPublished = cells.raw(LiftMvtOrigin) == "published";
    if (cells.said(LiftMvtOrigin) && !isPublished && cells.raw(LiftMvtOrigin) != "coach")
        cells.refuse(LiftMvtOrigin, "coach, published or nothing");
    const auto value = cells.number(LiftMvt, 0, 10, true, expected);
    const auto sd = cells.number(LiftMvtSd, 0, 10, false, "an SD in m/s, such as 0.04");
    if (!value) {
        if (sd || cells.said(LiftMvtSource))
            cells.refuse(LiftMvt, expected);
        published = isPublished;
        return std::nullopt;
    }
    return Mvt{.value = *value,
               .sd = sd,
               .origin = isPublished ? Mvt::Origin::Published : Mvt::Origin::Coach,
               .source = cells.text(LiftMvtSource)};
}

LiftRow readLift(const Cells& cells) {
    LiftRow row;
    Lift& lift = row.lift;
    lift.name = cells.name(LiftName);
    lift.rule =
        need(cells, LiftPointRule, pointRuleFromWord(cells.raw(LiftPointRule)), "fastest or mean");
    row.kindSaid = cells.said(LiftKind);
    if (row.kindSaid)
        lift.kind = need(cells, LiftKind, velocityKindFromWord(cells.raw(LiftKind)),
                         "mean, propulsive or peak");
    row.ballisticSaid = cells.said(LiftBallistic);
    lift.ballistic = cells.flag(LiftBallistic).value_or(false);
    row.movesBodySaid = cells.said(LiftMovesBody);
    lift.movesBody = cells.flag(LiftMovesBody).value_or(false);
    lift.mvt = readMvt(cells, row.publishedMvt);
    lift.smallestVelocity = cells.number(LiftSmallestVelocity, 0, 10, true,
                                         "a speed in m/s above 0 and under 10, such as 0.05");
    lift.smallestOneRm = cells.number(LiftSmallestOneRm, 0, 2000, true,
                                      "a weight in kg above 0 and under 2000, such as 2.5");
    lift.note = cells.text(LiftNote);
    return row;
}

} // namespace

FileKind fileKind(const std::vector<std::string>& header) {
    if (hasColumns(header, {"velocity"}) || hasColumns(header, {"rep"}) ||
        hasColumns(header, {"load_kg"}))
        return FileKind::Reps;
    if (hasColumns(header, {"block", "first_day", "last_day"}))
        return FileKind::Blocks;
    if (hasColumns(header, {"lift", "point_rule"}))
        return FileKind::Lifts;
    if (hasColumns(header, {"athlete", "lift", "check_load_kg"}))
        return FileKind::CheckLoads;
    if (hasColumns(header, {"date", "athlete", "session"}) && !hasColumns(header, {"lift"}))
        return FileKind::Sessions;
    if (hasColumns(header, {"athlete", "athlete_note"}))
        return FileKind::Athletes;
    if (hasColumns(header, {"device", "device_note"}))
        return FileKind::Devices;
    return FileKind::Reps;
}

std::vector<std::string> Tables::read(const std::filesystem::path& file, FileKind kind) {
    switch (kind) {
    case FileKind::Athletes:
        return readTable(file, athleteColumns, AthleteCount, [&](const Cells& c, const Where& at) {
            athletes.push_back({{c.name(AthleteName), c.text(AthleteNote)}, at});
        });
    case FileKind::Devices:
        return readTable(file, deviceColumns, DeviceCount, [&](const Cells& c, const Where& at) {
            devices.push_back({{c.name(DeviceName), c.text(DeviceNote)}, at});
        });
    case FileKind::Lifts:
        return readTable(file, liftColumns, liftRequired, [&](const Cells& c, const Where& at) {
            lifts.push_back({readLift(c), at});
        });
    case FileKind::Blocks:
        return readTable(file, blockColumns, blockRequired, [&](const Cells& c, const Where& at) {
            blocks.push_back({readBlock(c), at});
        });
    case FileKind::CheckLoads:
        return readTable(file, checkLoadColumns, CheckCount, [&](const Cells& c, const Where& at) {
            constexpr Phrase expected = "a load in kg from 0 to 2000, such as 60";
            checkLoads.push_back(
                {{c.name(CheckAthlete), c.name(CheckLift),
                  need(c, CheckLoad, c.mass(CheckLoad, Mass{2'000'000}, expected), expected)},
                 at});
        });
    case FileKind::Reps:
    case FileKind::Sessions:
        break; // Staging reads those
    }
    return {};
}

} // namespace slopebook::exchange

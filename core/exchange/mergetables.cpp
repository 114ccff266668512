// SPDX-License-Identifier: GPL-3.0-or-later
// The half of Merge that deals with names: athletes, devices, lifts, blocks, check loads.
#include "core/exchange/cells.h"
#include "core/exchange/merge.h"
#include "core/model/names.h"
#include "core/model/phrases/exchange.h"

#include <algorithm>

namespace slopebook::exchange {

namespace {

[[noreturn]] void contradicts(const Where& where, const char* column, const Words& found,
                              const Words& inLog, const Words& of) {
    throw BadInput(
        {.file = where.file, .line = where.line, .column = asIs(column)}, found,
        say("%1, as the log has for %2 (an import adds, it does not overwrite: change it "
            "in the program)",
            inLog, of));
}

Words kgText(double value) {
    return say("%1 kg", figure(writeNumber(value)));
}

Words speedText(double value) {
    return say("%1 m/s", figure(writeNumber(value)));
}

} // namespace

void Merge::tables(const Tables& tables) {
    for (const auto& row : tables.athletes)
        orRefuse(row.where, [&] { athlete(row); });
    for (const auto& row : tables.devices)
        orRefuse(row.where, [&] { device(row); });
    for (const auto& row : tables.lifts)
        orRefuse(row.where, [&] { lift(row); });
    const auto before = m_blocks;
    for (const auto& row : tables.blocks)
        orRefuse(row.where, [&] { block(row, before); });
}

void Merge::athlete(const Row<Athlete>& row) {
    const Athlete& file = row.value;
    auto* held = m_athletes.find(m_settings.who.named(file.name));
    if (!held) {
        const Athlete made{.name = newName(file.name), .note = file.note};
        m_athletes.add(m_log.add(made), made);
        m_report.athletesMade.push_back(made.name);
    } else if (held->value.note.empty() && !file.note.empty()) {
        held->value.note = file.note;
        m_log.change(held->id, held->value);
        m_report.filledIn.push_back("athlete " + held->value.name + ": note");
    } else if (!file.note.empty() && held->value.note != file.note) {
        contradicts(row.where, "athlete_note", found(file.note), found(held->value.note),
                    asIs(held->value.name));
    }
}

void Merge::device(const Row<Device>& row) {
    const Device& file = row.value;
    auto* held = m_devices.find(file.name);
    if (!held) {
        const Device made{.name = newName(file.name), .note = file.note};
        m_devices.add(m_log.add(made), made);
        m_report.devicesMade.push_back(made.name);
    } else if (held->value.note.empty() && !file.note.empty()) {
        held->value.note = file.note;
        m_log.change(held->id, held->value);
        m_report.filledIn.push_back("device " + held->value.name + ": note");
    } else if (!file.note.empty() && held->value.note != file.note) {
        contradicts(row.where, "device_note", found(file.note), found(held->value.note),
                    asIs(held->value.name));
    }
}

void Merge::lift(const Row<LiftRow>& row) {
    if (auto* held = m_lifts.find(row.value.lift.name)) {
        fillLift(row, *held);
        return;
    }
    Lift made = row.value.lift;
    made.name = newName(made.name);
    if (row.value.publishedMvt && m_settings.publishedMvt)
        made.mvt = m_settings.publishedMvt(made.name, made.kind);
    m_lifts.add(m_log.add(made), made);
    m_report.liftsMade.push_back(made.name);
}

void Merge::fillLift(const Row<LiftRow>& row, Stored<LiftId, Lift>& held) {
    const Lift& file = row.value.lift;
    Lift lift = held.value;
    if (row.value.kindSaid && file.kind != lift.kind)
        contradicts(row.where, "velocity_kind", inWords(word(file.kind)), inWords(word(lift.kind)),
                    asIs(lift.name));
    if (file.rule != lift.rule)
        contradicts(row.where, "point_rule", inWords(word(file.rule)), inWords(word(lift.rule)),
                    asIs(lift.name));
    if (row.value.ballisticSaid && file.ballistic != lift.ballistic)
        contradicts(row.where, "ballistic", inWords(file.ballistic ? 1 : 0),
                    inWords(lift.ballistic ? 1 : 0), asIs(lift.name));
    if (row.value.movesBodySaid && file.movesBody != lift.movesBody)
        contradicts(row.where, "moves_body", inWords(file.movesBody ? 1 : 0),
                    inWords(lift.movesBody ? 1 : 0), asIs(lift.name));
    const auto fill = [&](auto& mine, const auto& theirs, const char* column, const auto& show) {
        if (!theirs)
            return;
        if (mine && *mine != *theirs)
            contradicts(row.where, column, show(*theirs), show(*mine), asIs(lift.name));
        mine = theirs;
    };
    fill(lift.smallestVelocity, file.smallestVelocity, "smallest_velocity", speedText);
    fill(lift.smallestOneRm, file.smallestOneRm, "smallest_1rm_kg", kgText);
    fillMvt(row, lift);
    if (!file.note.empty() && !lift.note.empty() && file.note != lift.note)
        contradicts(row.where, "lift_note", found(file.note), found(lift.note), asIs(lift.name));
    if (!file.note.empty())
        lift.note = file.note;
    if (lift == held.value)
        return;
    m_log.change(held.id, lift);
    held.value = lift;
    m_report.filledIn.push_back("lift " + lift.name + ": settings");
}

// The coach's own figure may take the place of a published default, which nobody stated.
void Merge::fillMvt(const Row<LiftRow>& row, Lift& lift) {
    std::optional<Mvt> said = row.value.lift.mvt;
    if (row.value.publishedMvt && !lift.mvt && m_settings.publishedMvt)
        said = m_settings.publishedMvt(lift.name, lift.kind);
    if (!said || said == lift.mvt)
        return;
    const bool overDefault = lift.mvt && lift.mvt->origin == Mvt::Origin::Published &&
                             said->origin == Mvt::Origin::Coach;
    if (lift.mvt && !overDefault)
        contradicts(row.where, "mvt", speedText(said->value), speedText(lift.mvt->value),
                    asIs(lift.name));
    lift.mvt = said;
}

void Merge::block(const Row<Block>& row, const std::vector<Stored<BlockId, Block>>& before) {
    Block file = row.value;
    file.name = newName(blockName(file.name));
    const std::string key = nameKey(file.name);
    const auto isNamed = [&](const Block& held) { return nameKey(held.name) == key; };
    // The block of that name and first day, else one of that name that it overlaps.
    auto same = std::ranges::find_if(before, [&](const auto& stored) {
        return isNamed(stored.value) && stored.value.first == file.first;
    });
    if (same == before.end())
        same = std::ranges::find_if(before, [&](const auto& stored) {
            const Block& held = stored.value;
            return isNamed(held) && held.first <= file.last && file.first <= held.last;
        });
    if (same == before.end()) {
        m_blocks.push_back({m_log.add(file), file});
        m_report.blocksMade.push_back(file.name);
        return;
    }
    Block block = same->value;
    if (file.ceiling && block.ceiling && *file.ceiling != *block.ceiling)
        contradicts(row.where, "ceiling_kg", kgText(kilograms(*file.ceiling)),
                    kgText(kilograms(*block.ceiling)), say("block %1", block.name));
    if (!file.trained.empty() && !block.trained.empty() && file.trained != block.trained)
        contradicts(row.where, "trained", found(file.trained), found(block.trained),
                    say("block %1", block.name));
    if (file.aWeek && block.aWeek && *file.aWeek != *block.aWeek)
        contradicts(row.where, "sessions_a_week_fewest", sayAWeek(*file.aWeek),
                    sayAWeek(*block.aWeek), say("block %1", block.name));
    if (!file.note.empty() && !block.note.empty() && file.note != block.note)
        contradicts(row.where, "block_note", found(file.note), found(block.note),
                    say("block %1", block.name));
    block.first = std::min(block.first, file.first);
    block.last = std::max(block.last, file.last);
    if (file.ceiling)
        block.ceiling = file.ceiling;
    if (!file.trained.empty())
        block.trained = file.trained;
    if (file.aWeek)
        block.aWeek = file.aWeek;
    if (!file.note.empty())
        block.note = file.note;
    if (block == same->value)
        return;
    m_log.change(same->id, block);
    std::ranges::find(m_blocks, same->id, &Stored<BlockId, Block>::id)->value = block;
    m_report.filledIn.push_back("block " + block.name + " now from " + isoDate(block.first) +
                                " to " + isoDate(block.last));
}

const std::string& Merge::blockName(const std::string& name) const {
    const auto known = m_blockNames.find(nameKey(name));
    return known == m_blockNames.end() ? name : known->second;
}

// Spelling has been settled by the staging, which knows the log's names.
AthleteId Merge::athleteFor(const std::string& name) {
    if (const auto* held = m_athletes.find(name))
        return held->id;
    const Athlete made{.name = newName(name), .note = {}};
    m_report.athletesMade.push_back(made.name);
    return m_athletes.add(m_log.add(made), made).id;
}

DeviceId Merge::deviceFor(const std::string& name) {
    if (const auto* held = m_devices.find(name))
        return held->id;
    const Device made{.name = newName(name), .note = {}};
    m_report.devicesMade.push_back(made.name);
    return m_devices.add(m_log.add(made), made).id;
}

LiftId Merge::liftFor(const StagedLift& staged, const Staging& staging) {
    if (const auto* known = m_lifts.find(staged.name)) {
        const Lift& held = known->value;
        if (staged.kind && staged.kind->value != held.kind)
            staging.contradict(staged.kind->place, "velocity_kind",
                               say("\"%1\"", word(staged.kind->value)),
                               say("\"%1\", in which the log has %2: values of different kinds are "
                                   "never put on one line (import them as a lift of another name)",
                                   word(held.kind), held.name));
        return known->id;
    }
    Lift made;
    made.name = newName(staged.name);
    made.kind = staged.kind ? staged.kind->value : VelocityKind::Mean;
    if (m_settings.publishedMvt)
        made.mvt = m_settings.publishedMvt(made.name, made.kind);
    m_report.liftsMade.push_back(made.name);
    return m_lifts.add(m_log.add(made), made).id;
}

void Merge::blocksOf(const Staging& staging) {
    for (const StagedBlock& staged : staging.blocks)
        extendBlock(staged);
}

// The block of that name that holds the day, else the nearest of that name made longer.
void Merge::extendBlock(const StagedBlock& staged) {
    const auto away = [&](const Block& block) {
        return std::max(
            {0L, daysBetween(staged.date, block.first), daysBetween(block.last, staged.date)});
    };
    const std::string key = nameKey(blockName(staged.name));
    Stored<BlockId, Block>* nearest = nullptr;
    for (auto& stored : m_blocks)
        if (nameKey(stored.value.name) == key &&
            (!nearest || away(stored.value) < away(nearest->value)))
            nearest = &stored;
    if (!nearest) {
        const Block made{.name = newName(staged.name),
                         .first = staged.date,
                         .last = staged.date,
                         .ceiling = {},
                         .trained = {},
                         .aWeek = {},
                         .note = {}};
        m_blocks.push_back({m_log.add(made), made});
        m_report.blocksMade.push_back(made.name);
        return;
    }
    if (away(nearest->value) == 0)
        return;
    nearest->value.first = std::min(nearest->value.first, staged.date);
    nearest->value.last = std::max(nearest->value.last, staged.date);
    m_log.change(nearest->id, nearest->value);
    const bool known =
        std::ranges::find(m_report.blocksMade, nearest->value.name) == m_report.blocksMade.end();
    const std::string line = "block " + nearest->value.name + " now from ";
    if (!known)
        return;
    std::erase_if(m_report.filledIn, [&](const auto& text) { return text.starts_with(line); });
    m_report.filledIn.push_back(line + isoDate(nearest->value.first) + " to " +
                                isoDate(nearest->value.last));
}

void Merge::thresholds() {
    for (const auto& given : m_settings.mvt)
        orRefuse([&] { threshold(given.first, given.second); });
}

void Merge::threshold(const std::string& name, double value) {
    auto* const lift = m_lifts.find(name);
    if (!lift)
        throw BadInput(say("a threshold for \"%1\"", name),
                       say("a lift of the files or of the log"));
    if (!(value > 0 && value < storableVelocityLimit))
        throw BadInput(say("a threshold of %1 m/s for %2", figure(writeNumber(value)), name),
                       say("a speed in m/s above 0 and under 10, such as 0.17"));
    const Mvt mvt{.value = value, .sd = {}, .origin = Mvt::Origin::Coach, .source = "coach"};
    if (lift->value.mvt && lift->value.mvt->origin == Mvt::Origin::Coach &&
        lift->value.mvt->value == value)
        return;
    lift->value.mvt = mvt;
    m_log.change(lift->id, lift->value);
    m_report.filledIn.push_back("lift " + lift->value.name + ": MVT " + english(speedText(value)));
}

void Merge::checkLoads(const Tables& tables) {
    for (const auto& row : tables.checkLoads)
        orRefuse([&] { checkLoad(row); });
}

void Merge::checkLoad(const Row<CheckLoadRow>& row) {
    const auto* athlete = m_athletes.find(m_settings.who.named(row.value.athlete));
    const auto* lift = m_lifts.find(row.value.lift);
    if (!athlete || !lift)
        throw BadInput({.file = row.where.file,
                        .line = row.where.line,
                        .column = asIs(athlete ? "lift" : "athlete")},
                       found(athlete ? row.value.lift : row.value.athlete),
                       say("a name that the log or the files have"));
    std::vector<Mass> loads = m_log.checkLoads(athlete->id, lift->id);
    if (std::ranges::find(loads, row.value.load) != loads.end())
        return;
    loads.push_back(row.value.load);
    std::ranges::sort(loads);
    m_log.setCheckLoads(athlete->id, lift->id, loads);
    ++m_report.checkLoadsAdded;
}

} // namespace slopebook::exchange

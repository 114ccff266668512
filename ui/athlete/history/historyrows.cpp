// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/history/historymodel.h"
#include "ui/words/format.h"
#include "ui/words/wording.h"

#include <algorithm>

namespace slopebook::ui {

namespace {

void fill(HistoryRow& row, const answers::Profile& p, std::span<const Mass> checkLoads) {
    row.v0 = p.line.intercept;
    row.slope = p.line.slope;
    row.r2 = p.line.r2;
    if (p.oneRm)
        row.oneRm = *p.oneRm;
    else
        row.why = p.oneRm.why();
    for (std::size_t i = 0; i < checkLoads.size(); ++i) {
        const double load = kilograms(checkLoads[i]);
        row.atCheckLoads[i] = HistoryRow::AtLoad{
            .velocity = p.line.at(load), .extrapolated = load < p.lightest || load > p.heaviest};
    }
}

} // namespace

std::vector<HistoryRow> historyRows(const questions::Background& about,
                                    std::span<const Stored<BlockId, Block>> blocks,
                                    std::span<const Stored<DeviceId, Device>> devices,
                                    const questions::AskSettings& settings) {
    std::vector<HistoryRow> rows;
    rows.reserve(about.sessions.size());
    for (const LiftSession& s : about.sessions) {
        HistoryRow row{.session = s.session,
                       .of = s.athlete,
                       .date = s.date,
                       .ordinal = s.ordinal,
                       .n = static_cast<int>(s.points.size()),
                       .notLifted = s.lightestNotLifted};
        row.athlete = text(about.athlete.value.name);
        if (const auto block = questions::blockOn(blocks, s.date))
            row.block = text(block->name);
        for (const auto& device : devices)
            if (s.conditions.device && device.id == *s.conditions.device)
                row.device = text(device.value.name);
        if (!s.points.empty()) {
            const auto [least, most] = std::ranges::minmax(s.points, {}, &Point::load);
            row.lightest = least.load;
            row.heaviest = most.load;
        }
        if (s.measuredOneRm)
            row.measured = kilograms(*s.measuredOneRm);
        row.atCheckLoads.resize(about.checkLoads.size());
        if (const auto profile = questions::profileOf(about, s, settings))
            fill(row, *profile, about.checkLoads);
        else
            row.why = profile.why();
        rows.push_back(std::move(row));
    }
    return rows;
}

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/published.h"

#include "core/answers/embeddedcsv.h"
#include "core/answers/samename.h"
#include "core/model/errors.h"
#include "resources/embedded.h"

#include <algorithm>
#include <array>
#include <charconv>

namespace slopebook::answers {

namespace {

constexpr std::array columns{"lift",
                             "kind",
                             "mvt",
                             "sd",
                             "mvt_source",
                             "day_noise",
                             "day_noise_source",
                             "smallest_velocity",
                             "smallest_one_rm_percent",
                             "smallest_source"};
enum Column {
    LiftName,
    Kind,
    MvtValue,
    MvtSd,
    MvtSource,
    Noise,
    NoiseSource,
    SmallestVelocity,
    SmallestPercent,
    SmallestSource
};

using Row = std::vector<std::string>;

/// One row, with its place for messages.
class Cells {
public:
    Cells(const Row& row, long line) : m_row(row), m_line(line) {
        if (row.size() != columns.size())
            throw BadInput({"published.csv", line, {}},
                           asIs(std::to_string(row.size()) + " columns"), inWords(columns.size()));
    }
    const std::string& text(Column column) const { return m_row[column]; }
    std::optional<double> figure(Column column, Column source) const {
        const std::string& shown = m_row[column];
        if (shown.empty())
            return std::nullopt;
        double value = 0;
        const auto end = std::from_chars(shown.data(), shown.data() + shown.size(), value);
        if (end.ec != std::errc{} || end.ptr != shown.data() + shown.size() || !(value > 0))
            fail(column, "a positive figure");
        if (m_row[source].empty())
            fail(source, "the source of " + shown);
        return value;
    }
    [[noreturn]] void fail(Column column, const std::string& expected) const {
        throw BadInput({"published.csv", m_line, asIs(columns[column])},
                       asIs("\"" + m_row[column] + "\""), asIs(expected));
    }

private:
    const Row& m_row;
    long m_line;
};

PublishedLift liftOf(const Cells& cells) {
    const auto kind = velocityKindFromWord(cells.text(Kind));
    if (!kind)
        cells.fail(Kind, "mean, propulsive or peak");
    if (cells.text(LiftName).empty())
        cells.fail(LiftName, "a lift, or * for any");
    PublishedLift row{.lift = cells.text(LiftName), .kind = *kind};
    if (const auto mvt = cells.figure(MvtValue, MvtSource))
        row.mvt = Mvt{.value = *mvt,
                      .sd = cells.figure(MvtSd, MvtSource),
                      .origin = Mvt::Origin::Published,
                      .source = cells.text(MvtSource)};
    if (row.mvt && *kind == VelocityKind::Peak)
        cells.fail(MvtValue, "no MVT for a peak velocity");
    row.dayNoise = cells.figure(Noise, NoiseSource);
    row.dayNoiseSource = cells.text(NoiseSource);
    row.smallestVelocity = cells.figure(SmallestVelocity, SmallestSource);
    row.smallestOneRmPercent = cells.figure(SmallestPercent, SmallestSource);
    row.smallestSource = cells.text(SmallestSource);
    return row;
}

std::optional<PublishedLift> rowOf(std::string_view name, VelocityKind kind) {
    const auto rows = publishedLifts();
    const auto found = std::ranges::find_if(rows, [&](const PublishedLift& row) {
        return row.kind == kind && sameName(row.lift, name);
    });
    if (found == rows.end())
        return std::nullopt;
    return *found;
}

} // namespace

std::vector<PublishedLift> parsePublished(std::string_view csv) {
    const std::vector<Row> rows = csvRows(csv, "published.csv");
    if (rows.empty() || !std::ranges::equal(rows.front(), columns, {}, {},
                                            [](const char* c) { return std::string_view(c); }))
        throw BadInput({"published.csv", 1, {}}, asIs("another header row"),
                       asIs("lift, kind, mvt, ..., smallest_source"));
    std::vector<PublishedLift> lifts;
    for (std::size_t i = 1; i < rows.size(); ++i)
        lifts.push_back(liftOf(Cells(rows[i], static_cast<long>(i) + 1)));
    return lifts;
}

std::span<const PublishedLift> publishedLifts() {
    static const std::vector<PublishedLift> lifts =
        parsePublished(resources::published().front().text);
    return lifts;
}

std::optional<PublishedLift> published(const std::string& lift, VelocityKind kind) {
    const auto any = rowOf("*", kind);
    auto row = rowOf(lift, kind);
    if (!row || !any)
        return row ? row : any;
    if (!row->dayNoise) {
        row->dayNoise = any->dayNoise;
        row->dayNoiseSource = any->dayNoiseSource;
    }
    if (!row->smallestVelocity && !row->smallestOneRmPercent) {
        row->smallestVelocity = any->smallestVelocity;
        row->smallestOneRmPercent = any->smallestOneRmPercent;
        row->smallestSource = any->smallestSource;
    }
    return row;
}

} // namespace slopebook::answers

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/season/seasonmarks.h"

#include <algorithm>

namespace slopebook::ui {

using charts::PlotFrame;

namespace {

constexpr double besideNewest = 10;   // of the width
constexpr double betweenMarks = 0.15; // of the text: nearer, two marks are seen as one

QRectF boxAround(const QPointF& at, double dx, double dy) {
    return {at.x() - dx, at.y() - dy, 2 * dx, 2 * dy};
}

class Maxima {
public:
    Maxima(const PlotFrame& frame, const SeasonData& data) : m_f(frame), m_data(data) {}

    std::vector<MaxMark> placed() {
        const double r = pointRadius(m_f.textSize);
        for (std::size_t i = 0; i < m_data.points.size(); ++i)
            if (const auto& oneRm = m_data.points[i].oneRm)
                add(MaxMark::Kind::Estimate, i, at(i, *oneRm), r, r);
        for (std::size_t i = 0; i < m_data.points.size(); ++i)
            if (m_data.points[i].measured)
                addMeasured(i);
        for (std::size_t i = 0; i < m_data.points.size(); ++i)
            if (m_data.points[i].plannedApart())
                addPlanned(i);
        return m_marks;
    }

private:
    QPointF at(std::size_t i, double kilogram) const {
        return m_f.at(m_data.points[i].day, shownMass(m_data, kilogram));
    }
    void add(MaxMark::Kind kind, std::size_t i, const QPointF& place, double dx, double dy) {
        m_marks.push_back({.kind = kind, .point = i, .at = place, .box = boxAround(place, dx, dy)});
    }
    std::vector<QRectF> marks() const {
        std::vector<QRectF> all;
        for (const MaxMark& mark : m_marks)
            all.push_back(mark.box);
        return all;
    }
    /// All that is there; of a day's own whisker the stops alone, where a mark stands on its shaft.
    std::vector<QRectF> marksAndWhiskers(std::optional<std::size_t> shaftOf) const {
        std::vector<QRectF> all = marks();
        for (std::size_t i = 0; i < m_data.points.size(); ++i)
            if (const auto held = shownInterval(m_data.points[i])) {
                const auto boxes =
                    whiskerBoxes(m_f, m_data.points[i].day,
                                 {shownMass(m_data, held->low), shownMass(m_data, held->high)});
                if (!boxes.empty())
                    all.insert(all.end(), boxes.begin() + (shaftOf == i ? 1 : 0), boxes.end());
            }
        return all;
    }
    /// At its own day, or as near beside it as nothing lies; its value stays. Where days are too
    /// dense for that it lies over a whisker, rather than over another mark.
    void addMeasured(std::size_t i) {
        const double half = measuredSize(m_f.textSize) / 2, gap = betweenMarks * m_f.textSize;
        const QPointF own = at(i, *m_data.points[i].measured);
        const double step = 0.25 * half, furthest = 4 * half;
        for (const auto& taken : {marksAndWhiskers({}), marks()})
            for (double dx = 0; dx <= furthest; dx += step)
                for (const double side : {1.0, -1.0}) {
                    const QPointF place(own.x() + side * dx, own.y());
                    const QRectF box = boxAround(place, half + gap, half + gap);
                    if (box.left() >= m_f.area.left() && liesOnNone(box, taken)) {
                        add(MaxMark::Kind::Measured, i, place, half, half);
                        return;
                    }
                }
        add(MaxMark::Kind::Measured, i, own, half, half); // seen is better than not
    }
    void addPlanned(std::size_t i) {
        const double reach = pointRadius(m_f.textSize), half = tickWidth(reach) / 2;
        const QPointF own = at(i, *m_data.points[i].oneRmPlanned);
        if (liesOnNone(boxAround(own, reach, half + betweenMarks * m_f.textSize),
                       marksAndWhiskers(i)))
            add(MaxMark::Kind::Planned, i, own, reach, half);
    }

    const PlotFrame& m_f;
    const SeasonData& m_data;
    std::vector<MaxMark> m_marks;
};

} // namespace

bool liesOnNone(const QRectF& box, const std::vector<QRectF>& taken) {
    return std::ranges::none_of(taken, [&](const QRectF& each) { return each.intersects(box); });
}

std::optional<stats::Interval> shownInterval(const SeasonPoint& point) {
    return point.oneRmToPlan ? point.oneRmToPlan : point.oneRmInterval;
}

std::vector<MaxMark> placeMaxima(const PlotFrame& oneRm, const SeasonData& data) {
    return Maxima(oneRm, data).placed();
}

std::vector<QRectF> whiskerBoxes(const PlotFrame& frame, double day, const stats::Interval& shown) {
    const double x = frame.x(day), cap = 0.3 * frame.textSize, thin = 1;
    const double top = std::max(frame.yOf(shown.high), frame.area.top());
    const double bottom = std::min(frame.yOf(shown.low), frame.area.bottom());
    if (bottom < top)
        return {};
    const bool up = shown.high > frame.y.to, down = shown.low < frame.y.from;
    return {QRectF(x - thin, top, 2 * thin, bottom - top),
            QRectF(x - cap, top - thin, 2 * cap, (up ? cap : thin) + thin),
            QRectF(x - cap, bottom - (down ? cap : thin), 2 * cap, (down ? cap : thin) + thin)};
}

std::optional<AloneLines> aloneLines(const PlotFrame& f, const SeasonData& data) {
    if (!data.detectable || !data.baselineValue)
        return std::nullopt;
    // The newest day's alone, and so beside it alone.
    const auto newest = std::ranges::max_element(data.points, {}, &SeasonPoint::day);
    const double from =
        newest == data.points.end() ? 0 : f.x(newest->day) - f.area.width() / besideNewest;
    return AloneLines{.from = std::max(from, f.area.left()),
                      .to = f.area.right(),
                      .top = f.yOf(*data.baselineValue + *data.detectable),
                      .bottom = f.yOf(*data.baselineValue - *data.detectable)};
}

QLineF trendLine(const PlotFrame& f, const SeasonTrend& trend) {
    const double weeks = (trend.last - trend.day) / 7;
    return {f.at(trend.day, trend.value), f.at(trend.last, trend.value + weeks * trend.perWeek)};
}

std::vector<QRectF> speedObstacles(const SeasonLayout& layout, const SeasonData& data) {
    std::vector<QRectF> all;
    const PlotFrame& f = layout.velocity;
    const double r = pointRadius(f.textSize) + 1;
    for (const SeasonPoint& p : data.points) {
        if (p.line)
            all.push_back(boxAround(f.at(p.day, *p.line), r, r));
        for (const double seen : p.seen)
            all.push_back(boxAround(f.at(p.day, seen), r, 2));
        if (p.interval) {
            const double top = f.yOf(p.interval->high), bottom = f.yOf(p.interval->low);
            all.emplace_back(f.x(p.day) - r, top - 1, 2 * r, bottom - top + 2);
        }
    }
    for (const auto& mean : data.means)
        if (const auto box = mean ? segmentBox(layout, *mean) : std::nullopt) {
            const double y = f.yOf(mean->value);
            all.emplace_back(box->left(), y - 2, box->width(), 4);
            for (const double edge : {box->top(), box->bottom()})
                all.emplace_back(box->left(), edge - 1, box->width(), 2);
            for (const double edge : {box->left(), box->right()}) {
                all.emplace_back(edge - 1, box->top(), 2, box->height());
                if (mean->interval && mean->interval->high > f.y.to) // an arrow
                    all.emplace_back(edge - r, box->top(), 2 * r, r);
                if (mean->interval && mean->interval->low < f.y.from)
                    all.emplace_back(edge - r, box->bottom() - r, 2 * r, r);
            }
        }
    if (const auto lines = aloneLines(f, data))
        for (const double y : {lines->top, lines->bottom})
            all.emplace_back(lines->from, y - 0.5, lines->to - lines->from, 1);
    return all;
}

std::vector<QRectF> maxObstacles(const SeasonLayout& layout, const SeasonData& data) {
    std::vector<QRectF> all;
    for (const MaxMark& mark : layout.maxima)
        all.push_back(mark.box.adjusted(-1, -1, 1, 1));
    for (const SeasonPoint& p : data.points)
        if (const auto held = shownInterval(p))
            for (const QRectF& box :
                 whiskerBoxes(layout.oneRm, p.day,
                              {shownMass(data, held->low), shownMass(data, held->high)}))
                all.push_back(box.adjusted(-1, -1, 1, 1));
    return all;
}

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/season/seasonnames.h"

#include "core/answers/readingwords.h"
#include "ui/athlete/season/seasonmarks.h"
#include "ui/athlete/season/seasonwords.h"
#include "ui/charts/labelroom.h"
#include "ui/words/said.h"

#include <QFontMetricsF>

#include <algorithm>
#include <vector>

namespace slopebook::ui {

using charts::LabelRoom;
using charts::PlotFrame;
using Of = SeasonName::Of;

namespace {

/// From the last to the first. (clang 14 knows no std::views of this library.)
template <class Thing>
class Backwards {
public:
    explicit Backwards(const std::vector<Thing>& all) : m_all(all) {}
    auto begin() const { return m_all.rbegin(); }
    auto end() const { return m_all.rend(); }

private:
    const std::vector<Thing>& m_all;
};

constexpr double besideMark = 3; // between a mark and its word

/// What it is called; then shorter, where that has no room.
QStringList wordsOf(Of what, const SeasonData& data) {
    switch (what) {
    case Of::Alone:
        return {SeasonWords::tr("clear from \u00b1%1 m/s, this day alone")
                    .arg(said(answers::clearFrom(*data.detectable, answers::saidSpeedDecimals))),
                SeasonWords::tr("clear, this day alone")};
    case Of::Trend:
        return {SeasonWords::tr("trend")};
    case Of::BlockTrend:
        return {SeasonWords::tr("trend within a block")};
    case Of::NotLifted:
        return {SeasonWords::tr("not lifted")};
    case Of::NotPossible:
        return {SeasonWords::tr("not possible")};
    case Of::Measured:
        return {SeasonWords::tr("measured 1RM")};
    case Of::Planned:
        return {SeasonWords::tr("to plan with by the log\u2019s maxima"),
                SeasonWords::tr("by the log\u2019s maxima")};
    case Of::ToPlan:
        return {SeasonWords::tr("interval to plan with")};
    case Of::Far:
        return {SeasonWords::tr("reach below 0.80")};
    case Of::Seen:
        return {SeasonWords::tr("seen at the load")};
    case Of::Matters:
        return {mattersText(data)};
    }
    return {};
}

/// Beside a mark on its right and left, then over and under it.
void addBeside(std::vector<QRectF>& boxes, const QRectF& mark, const QSizeF& size) {
    const double w = size.width(), h = size.height();
    const QPointF middle = mark.center();
    for (const double y : {middle.y() - h / 2, middle.y() - h, middle.y()})
        for (const double x : {mark.right() + besideMark, mark.left() - besideMark - w})
            boxes.emplace_back(QPointF(x, y), size);
    for (const double y : {mark.top() - h, mark.bottom()})
        for (const double x : {middle.x() - w / 2, middle.x(), middle.x() - w})
            boxes.emplace_back(QPointF(x, y), size);
}

/// Along a line from its end on, over and under it; then beyond its ends.
void addAlong(std::vector<QRectF>& boxes, const QLineF& line, const QSizeF& size) {
    const double left = std::min(line.x1(), line.x2()), right = std::max(line.x1(), line.x2());
    const auto yAt = [&](double x) {
        const double t = line.dx() == 0 ? 0 : (x - line.x1()) / line.dx();
        return line.y1() + std::clamp(t, 0.0, 1.0) * line.dy();
    };
    const double last = std::min(left, right - size.width()); // a short line is under all of it
    for (double x = std::max(left, right - size.width()); x >= last; x -= 0.5 * size.height()) {
        const double a = yAt(x), b = yAt(x + size.width());
        boxes.emplace_back(QPointF(x, std::min(a, b) - size.height() - 1), size);
        boxes.emplace_back(QPointF(x, std::max(a, b) + 1), size);
    }
    const double half = size.height() / 2;
    boxes.emplace_back(QPointF(right + besideMark, yAt(right) - half), size);
    boxes.emplace_back(QPointF(left - besideMark - size.width(), yAt(left) - half), size);
}

/// Over and under the two lines of the newest day, with its end at theirs or further left as long
/// as they are under it.
void addAtLines(std::vector<QRectF>& boxes, const AloneLines& lines, const QSizeF& size) {
    const double least = lines.from + 0.5 * std::min(size.width(), lines.to - lines.from);
    for (double right = lines.to; right >= least; right -= 0.5 * size.height())
        for (const double top : {lines.top - size.height() - 1, lines.bottom + 1, lines.top + 1,
                                 lines.bottom - size.height() - 1})
            boxes.emplace_back(QPointF(right - size.width(), top), size);
}

/// A line as boxes, short enough to follow it where it is steep.
void takeLine(LabelRoom& room, const QLineF& line) {
    const int parts = std::max(1, static_cast<int>(line.length() / 4));
    for (int i = 0; i < parts; ++i) {
        const QPointF a = line.pointAt(double(i) / parts), b = line.pointAt(double(i + 1) / parts);
        room.take(QRectF(a, b).normalized().adjusted(-0.5, -0.5, 0.5, 0.5));
    }
}

/// A word with the room that keeps another from being read on from it.
QRectF asWord(const QRectF& box) {
    return box.adjusted(-0.6 * box.height(), 0, 0.6 * box.height(), 0);
}

class Names {
public:
    Names(SeasonLayout& layout, const SeasonData& data)
        : m_layout(layout), m_data(data), m_r(pointRadius(layout.velocity.textSize)),
          m_speeds(layout.velocity.area.adjusted(0, 0, layout.velocity.textSize, 0), m_r),
          m_offLines(m_speeds), m_foot(layout.foot, m_r), m_maxima(layout.oneRm.area, m_r) {
        const PlotFrame& f = layout.velocity;
        for (const QRectF& box : speedObstacles(layout, data))
            m_speeds.take(box);
        for (const SeasonLayout::Label& label : layout.labels)
            m_speeds.take(asWord(label.box));
        if (layout.baselineWord)
            m_speeds.take(asWord(*layout.baselineWord));
        m_offLines = m_speeds;
        if (data.baselineValue)
            takeLine(m_offLines,
                     {f.at(f.from, *data.baselineValue), f.at(f.to, *data.baselineValue)});
        if (data.trend)
            takeLine(m_offLines, trendLine(f, *data.trend));
        for (const SeasonTrend& trend : data.blockTrends)
            takeLine(m_offLines, trendLine(f, trend));
        for (const SeasonMark& mark : data.marks)
            m_foot.takePoint(markAt(layout, mark));
        for (const QRectF& box : maxObstacles(layout, data))
            m_maxima.take(box);
    }

    bool place(Of what) {
        const QStringList words = wordsOf(what, m_data);
        return std::ranges::any_of(words, [&](const QString& text) { return place(what, text); });
    }

private:
    bool place(Of what, const QString& text) {
        const QFontMetricsF metrics(charts::chartFont(m_layout.velocity.textSize, 0.9));
        const QSizeF size(metrics.horizontalAdvance(text) + 2, metrics.height());
        const auto boxes = boxesOf(what, size);
        // Rather off every line; where there is no such place, over a line that is not its own.
        const auto free = [&](const LabelRoom& room) {
            return std::ranges::find_if(boxes, [&](const QRectF& box) { return room.isFree(box); });
        };
        LabelRoom& room = roomOf(what);
        auto box = &room == &m_speeds ? free(m_offLines) : boxes.end();
        if (box == boxes.end())
            box = free(room);
        if (box == boxes.end())
            return false;
        m_layout.names.push_back({.of = what, .text = text, .box = *box});
        room.take(asWord(*box));
        m_offLines.take(asWord(*box));
        return true;
    }

    LabelRoom& roomOf(Of what) {
        switch (what) {
        case Of::NotLifted:
        case Of::NotPossible:
            return m_foot;
        case Of::Measured:
        case Of::Planned:
        case Of::ToPlan:
        case Of::Far:
            return m_maxima;
        default:
            return m_speeds;
        }
    }

    std::vector<QRectF> boxesOf(Of what, const QSizeF& size) const {
        std::vector<QRectF> boxes;
        const PlotFrame& f = m_layout.velocity;
        switch (what) {
        case Of::Alone:
            if (const auto lines = aloneLines(f, m_data))
                addAtLines(boxes, *lines, size);
            break;
        case Of::Trend:
            addAlong(boxes, trendLine(f, *m_data.trend), size);
            break;
        case Of::BlockTrend:
            for (const SeasonTrend& trend : Backwards(m_data.blockTrends))
                addAlong(boxes, trendLine(f, trend), size);
            break;
        case Of::NotLifted:
        case Of::NotPossible:
            for (const SeasonMark& mark : Backwards(m_data.marks))
                if (mark.tried == (what == Of::NotLifted))
                    addBeside(boxes, around(markAt(m_layout, mark)), size);
            break;
        case Of::Seen:
            for (const SeasonPoint& p : Backwards(m_data.points))
                for (const double seen : p.seen)
                    addBeside(boxes, around(f.at(p.day, seen)), size);
            break;
        case Of::Matters:
            for (const double off : {*m_data.matters, -*m_data.matters}) {
                const double y = f.yOf(*m_data.baselineValue + off);
                addAlong(boxes, {QPointF(f.area.left(), y), QPointF(f.area.right(), y)}, size);
            }
            break;
        case Of::ToPlan:
            addBesideWhiskers(boxes, size);
            break;
        case Of::Measured:
        case Of::Planned:
        case Of::Far:
            for (const MaxMark& mark : Backwards(m_layout.maxima))
                if (isNamed(mark, what))
                    addBeside(boxes, mark.box, size);
            break;
        }
        return boxes;
    }

    QRectF around(const QPointF& at) const {
        return {at.x() - m_r, at.y() - m_r, 2 * m_r, 2 * m_r};
    }
    bool isNamed(const MaxMark& mark, Of what) const {
        switch (mark.kind) {
        case MaxMark::Kind::Measured:
            return what == Of::Measured;
        case MaxMark::Kind::Planned:
            return what == Of::Planned;
        case MaxMark::Kind::Estimate:
            return what == Of::Far && m_data.points[mark.point].far;
        }
        return false;
    }
    /// From the upper end down, of the newest day first.
    void addBesideWhiskers(std::vector<QRectF>& boxes, const QSizeF& size) const {
        for (const SeasonPoint& p : Backwards(m_data.points)) {
            if (!p.oneRmToPlan)
                continue;
            const auto whisker = whiskerBoxes(
                m_layout.oneRm, p.day,
                {shownMass(m_data, p.oneRmToPlan->low), shownMass(m_data, p.oneRmToPlan->high)});
            if (whisker.empty())
                continue;
            const QRectF shaft = whisker.front();
            for (double top = shaft.top(); top <= shaft.bottom() - 0.5 * size.height();
                 top += 0.25 * size.height())
                for (const double x : {shaft.center().x() + m_r + besideMark,
                                       shaft.center().x() - m_r - besideMark - size.width()})
                    boxes.emplace_back(QPointF(x, top), size);
        }
    }

    SeasonLayout& m_layout;
    const SeasonData& m_data;
    double m_r;
    LabelRoom m_speeds, m_offLines, m_foot, m_maxima;
};

} // namespace

std::set<Of> seasonNamesOf(const SeasonLayout& layout, const SeasonData& data) {
    std::set<Of> all;
    if (data.detectable && data.baselineValue)
        all.insert(Of::Alone);
    if (data.trend)
        all.insert(Of::Trend);
    if (!data.blockTrends.empty())
        all.insert(Of::BlockTrend);
    for (const SeasonMark& mark : data.marks)
        all.insert(mark.tried ? Of::NotLifted : Of::NotPossible);
    if (std::ranges::any_of(data.points, [](const SeasonPoint& p) { return !p.seen.empty(); }))
        all.insert(Of::Seen);
    if (data.matters && data.baselineValue)
        all.insert(Of::Matters);
    if (!layout.showsMax)
        return all;
    for (const MaxMark& mark : layout.maxima)
        if (mark.kind == MaxMark::Kind::Measured)
            all.insert(Of::Measured);
        else if (mark.kind == MaxMark::Kind::Planned)
            all.insert(Of::Planned);
        else if (data.points[mark.point].far)
            all.insert(Of::Far);
    if (std::ranges::any_of(data.points,
                            [](const SeasonPoint& p) { return p.oneRmToPlan.has_value(); }))
        all.insert(Of::ToPlan);
    return all;
}

std::set<Of> placeNames(SeasonLayout& layout, const SeasonData& data, const std::set<Of>& wanted) {
    layout.names.clear();
    Names names(layout, data);
    std::set<Of> left;
    for (const Of what : wanted)
        if (!names.place(what))
            left.insert(what);
    return left;
}

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/season/seasonlayout.h"

#include "ui/athlete/season/seasonmarks.h"
#include "ui/athlete/season/seasonnames.h"
#include "ui/athlete/season/seasonwords.h"

#include <QFontMetricsF>

#include <algorithm>
#include <cmath>
#include <iterator>
#include <limits>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

using charts::PlotFrame;

namespace {

constexpr int mostLanes = 6;
constexpr double leastForBoth = 14, lowChart = 18; // heights of the text

class Reach {
public:
    void take(double v) {
        if (std::isfinite(v)) {
            m_low = std::min(m_low, v);
            m_high = std::max(m_high, v);
        }
    }
    charts::Scale scale(double height, double textSize) const {
        const int parts = static_cast<int>(std::clamp(height / (2.2 * textSize), 2.0, 7.0));
        if (m_low > m_high)
            return charts::niceScale(0, 1, parts);
        const double room = 0.06 * (m_high - m_low) + 1e-9;
        return charts::niceScale(m_low - room, m_high + room, parts);
    }
    double low() const { return m_low; }
    double high() const { return m_high; }

private:
    double m_low = std::numeric_limits<double>::infinity(), m_high = -m_low;
};

/// Whiskers may be endless beside the points: they stretch the scale to three times those at most.
charts::Scale scaleOf(const Reach& points, const Reach& whiskers, double height, double textSize) {
    Reach all = points;
    const double room = std::max(points.high() - points.low(), 1e-3 * std::abs(points.high()));
    if (points.low() <= points.high()) {
        all.take(std::max(whiskers.low(), points.low() - room - 0.05 * std::abs(points.low())));
        all.take(std::min(whiskers.high(), points.high() + room + 0.05 * std::abs(points.high())));
    }
    return all.scale(height, textSize);
}

charts::Scale velocityScale(const SeasonData& data, double height, double textSize) {
    Reach points, whiskers;
    for (const SeasonPoint& p : data.points) {
        for (const double seen : p.seen)
            points.take(seen);
        if (p.line)
            points.take(*p.line);
        if (p.interval) {
            whiskers.take(p.interval->low);
            whiskers.take(p.interval->high);
        }
    }
    if (data.detectable && data.baselineValue) {
        points.take(*data.baselineValue - *data.detectable);
        points.take(*data.baselineValue + *data.detectable);
    }
    if (data.matters && data.baselineValue) {
        points.take(*data.baselineValue - *data.matters);
        points.take(*data.baselineValue + *data.matters);
    }
    for (const auto& mean : data.means)
        if (mean) {
            points.take(mean->value);
            if (mean->interval) {
                whiskers.take(mean->interval->low);
                whiskers.take(mean->interval->high);
            }
        }
    return scaleOf(points, whiskers, height, textSize);
}

charts::Scale oneRmScale(const SeasonData& data, double height, double textSize) {
    Reach points, whiskers;
    for (const SeasonPoint& p : data.points) {
        if (p.oneRm)
            points.take(shownMass(data, *p.oneRm));
        if (p.plannedApart())
            points.take(shownMass(data, *p.oneRmPlanned));
        if (p.measured)
            points.take(shownMass(data, *p.measured));
        if (const auto held = shownInterval(p)) {
            whiskers.take(shownMass(data, held->low));
            whiskers.take(shownMass(data, held->high));
        }
    }
    return scaleOf(points, whiskers, height, textSize);
}

QFont labelFont(double textSize) {
    return charts::chartFont(textSize, 0.9);
}

/// The place for a word of that size nearest to the middle of the segment at y: above or below it,
/// then along it, then further off.
std::optional<QRectF> placeBeside(const QRectF& area, double left, double right, double y,
                                  const QSizeF& size, const std::vector<QRectF>& taken) {
    const double step = 0.5 * size.height(), gap = 3;
    const double centre = (left + right) / 2 - size.width() / 2;
    std::optional<QRectF> best;
    double least = std::numeric_limits<double>::infinity();
    const double furthest = 5 * size.height();
    for (double dy = 0; dy <= furthest; dy += step)
        for (const bool above : {true, false}) {
            const double top = above ? y - gap - size.height() - dy : y + gap + dy;
            if (top < area.top() || top + size.height() > area.bottom())
                continue;
            const double reach = std::max(0.0, (right - left) / 2);
            for (double dx = 0; dx <= reach; dx += step)
                for (const double side : {-1.0, 1.0}) {
                    const double x =
                        std::clamp(centre + side * dx, area.left() + 1,
                                   std::max(area.left() + 1, area.right() - size.width()));
                    const QRectF box(QPointF(x, top), size);
                    // Off the segment counts double: a word is looked for where its line is.
                    const double away = 2 * dy + dx + (above ? 0 : 0.5);
                    if (away < least && liesOnNone(box, taken)) {
                        least = away;
                        best = box;
                    }
                }
        }
    return best;
}

struct WordSizes {
    const SeasonData& data;
    const QFontMetricsF metrics;
    QSizeF of(const QString& text) const {
        return {metrics.horizontalAdvance(text) + 2, metrics.height()};
    }
};

/// Whether all labels have a place, with so many lines above the frame.
bool placeLabels(SeasonLayout& layout, const WordSizes& words, int lanes) {
    const PlotFrame& f = layout.velocity;
    std::vector<QRectF> taken = speedObstacles(layout, words.data);
    std::vector<double> laneEnds(static_cast<std::size_t>(lanes), f.area.left() - 1e9);
    bool all = true;
    std::vector<std::size_t> left;
    for (std::size_t i = 0; i < words.data.means.size(); ++i) {
        const auto& mean = words.data.means[i];
        const auto segment = mean ? segmentBox(layout, *mean) : std::nullopt;
        if (!segment || mean->label.isEmpty())
            continue;
        const auto place = placeBeside(f.area, segment->left(), segment->right(),
                                       f.yOf(mean->value), words.of(mean->label), taken);
        if (!place) {
            left.push_back(i);
            continue;
        }
        taken.push_back(*place);
        layout.labels.push_back({.mean = i, .box = *place});
    }
    const double height = words.metrics.height();
    for (const std::size_t i : left) {
        const SeasonMean& mean = *words.data.means[i];
        const QSizeF size = words.of(mean.label);
        const QRectF segment = *segmentBox(layout, mean);
        const double x = std::clamp(segment.center().x() - size.width() / 2, f.area.left(),
                                    std::max(f.area.left(), f.area.right() - size.width()));
        bool placed = false;
        for (std::size_t lane = 0; lane < laneEnds.size() && !placed; ++lane)
            if (laneEnds[lane] <= x) {
                laneEnds[lane] = x + size.width() + height / 2;
                layout.labels.push_back(
                    {.mean = i,
                     .box = QRectF(QPointF(x, f.area.top() - pointRadius(f.textSize) -
                                                  (double(lane) + 1) * 1.1 * height),
                                   size),
                     .apart = true});
                placed = true;
            }
        all = all && placed;
    }
    return all;
}

/// Beside the baseline's line, as near to its own day as there is room.
void placeBaselineWord(SeasonLayout& layout, const WordSizes& words) {
    const SeasonData& data = words.data;
    if (data.baseline < 0 || !data.baselineValue)
        return;
    const PlotFrame& f = layout.velocity;
    std::vector<QRectF> taken = speedObstacles(layout, data);
    for (const SeasonLayout::Label& label : layout.labels)
        taken.push_back(label.box);
    const double own = f.x(data.points[static_cast<std::size_t>(data.baseline)].day);
    const QSizeF size = words.of(SeasonWords::tr("baseline"));
    const double reach = std::max(own - f.area.left(), f.area.right() - own);
    for (double dx = 0; dx <= reach; dx += 0.5 * size.height())
        for (const double side : {1.0, -1.0})
            for (const double top :
                 {f.yOf(*data.baselineValue) - size.height() - 1, f.yOf(*data.baselineValue) + 1}) {
                const QRectF box(QPointF(own + side * dx - size.width() / 2, top), size);
                if (f.area.contains(box) && liesOnNone(box, taken)) {
                    layout.baselineWord = box;
                    return;
                }
            }
}

SeasonLayout framed(const QRectF& target, const SeasonData& data, const look::Ground& ground,
                    double textSize, int lanes, const std::set<SeasonName::Of>& unnamed) {
    SeasonLayout f;
    const double side = 0.4 * textSize;
    const auto keyRoomOf = [&](const std::vector<charts::KeyEntry>& key) {
        return charts::keyHeight(key, labelFont(textSize), target.width() - 2 * side);
    };
    f.key = seasonKey(data, ground, unnamed);
    if (f.key.size() > mostKeyEntries)
        f.key.resize(mostKeyEntries);
    const bool low = target.height() < lowChart * textSize;
    while (low && f.key.size() > 1 &&
           keyRoomOf(f.key) > 1.5 * QFontMetricsF(labelFont(textSize)).height())
        f.key.pop_back();
    const double keyRoom = keyRoomOf(f.key);
    double first = std::numeric_limits<double>::infinity(), last = -first;
    const auto take = [&](double day) {
        first = std::min(first, day);
        last = std::max(last, day);
    };
    for (const SeasonPoint& p : data.points)
        take(p.day);
    for (const SeasonMark& mark : data.marks)
        take(mark.day);
    const double room = std::max(7.0, 0.04 * (last - first));
    const double lane = 1.1 * QFontMetricsF(labelFont(textSize)).height();
    f.header = 2.6 * textSize + (lanes > 0 ? pointRadius(textSize) + lanes * lane : 0);
    const double top = target.top() + side + keyRoom + 0.2 * textSize + f.header;
    const double bottom = target.bottom() - charts::xAxisRoom(textSize, false);
    const double foot = data.marks.empty() ? 0 : 1.3 * textSize;
    f.showsMax = bottom - top >= leastForBoth * textSize;
    const double gap = f.showsMax ? 1.4 * textSize + foot : foot;
    const double height = std::max(20.0, bottom - top - gap);
    const double ofSpeeds = f.showsMax ? 0.58 : 1;
    const double left = target.left() + charts::yAxisRoom(textSize) + side;
    const double width = std::max(20.0, target.right() - 1.5 * textSize - left);
    for (PlotFrame* frame : {&f.velocity, &f.oneRm}) {
        frame->from = first - room;
        frame->to = last + room;
        frame->ground = ground;
        frame->textSize = textSize;
    }
    f.velocity.area = QRectF(left, top, width, ofSpeeds * height);
    f.foot = QRectF(left, f.velocity.area.bottom(), width, foot);
    f.oneRm.area = QRectF(left, top + ofSpeeds * height + gap, width, (1 - ofSpeeds) * height);
    f.velocity.y = velocityScale(data, f.velocity.area.height(), textSize);
    f.oneRm.y = oneRmScale(data, f.oneRm.area.height(), textSize);
    if (f.showsMax)
        f.maxima = placeMaxima(f.oneRm, data);
    return f;
}

} // namespace

SeasonLayout seasonLayout(const QRectF& target, const SeasonData& data, const look::Ground& ground,
                          double textSize) {
    const WordSizes words{data, QFontMetricsF(labelFont(textSize))};
    // These have words in the chart only where the key would be too long with them.
    std::vector<SeasonName::Of> spare{SeasonName::Of::Matters, SeasonName::Of::Seen};
    std::set<SeasonName::Of> unnamed{spare.begin(), spare.end()};
    // A word more in the key leaves less room to the chart, where another may lose its own by that.
    for (;;) {
        SeasonLayout layout;
        for (int lanes = 0; lanes <= mostLanes; ++lanes) {
            layout = framed(target, data, ground, textSize, lanes, unnamed);
            if (placeLabels(layout, words, lanes))
                break;
        }
        placeBaselineWord(layout, words);
        const std::set<SeasonName::Of> there = seasonNamesOf(layout, data);
        std::set<SeasonName::Of> wanted;
        std::ranges::set_difference(there, unnamed, std::inserter(wanted, wanted.end()));
        const std::set<SeasonName::Of> left = placeNames(layout, data, wanted);
        unnamed.insert(left.begin(), left.end());
        if (!left.empty())
            continue;
        if (spare.empty() || seasonKey(data, ground, unnamed).size() <= mostKeyEntries) {
            if (unnamed.contains(SeasonName::Of::Planned)) // the table has it
                std::erase_if(layout.maxima, [](const MaxMark& mark) {
                    return mark.kind == MaxMark::Kind::Planned;
                });
            return layout;
        }
        unnamed.erase(spare.back());
        spare.pop_back();
    }
}

std::optional<QRectF> segmentBox(const SeasonLayout& layout, const SeasonMean& mean) {
    const PlotFrame& f = layout.velocity;
    const double left = std::max(f.x(mean.from), f.area.left());
    const double right = std::min(f.x(mean.to), f.area.right());
    if (right <= left)
        return std::nullopt;
    const auto within = [&](double v) {
        return std::clamp(f.yOf(v), f.area.top(), f.area.bottom());
    };
    const double at = f.yOf(mean.value);
    const double top = mean.interval ? within(mean.interval->high) : at;
    const double bottom = mean.interval ? within(mean.interval->low) : at;
    return QRectF(QPointF(left, top), QPointF(right, bottom));
}

QPointF markAt(const SeasonLayout& layout, const SeasonMark& mark) {
    return {layout.velocity.x(mark.day), layout.foot.center().y()};
}

double pointRadius(double textSize) {
    return 0.3 * textSize;
}

double shownMass(const SeasonData& data, double kilogram) {
    return inUnit(kilogram, data.unit);
}

} // namespace slopebook::ui

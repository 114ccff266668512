// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/linefigure.h"

#include "ui/charts/layer.h"

#include <QGraphicsSceneResizeEvent>

#include <algorithm>
#include <cmath>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui::charts {

namespace {

constexpr double mostForNames = 0.4; // of the plot

bool drawable(const LinePoint& p) {
    return std::isfinite(p.load) && std::isfinite(p.velocity);
}

QList<QPointF> segment(const LineSegment& line, double from, double to, LoadUnit unit) {
    if (!(to > from))
        return {};
    const QPointF a(inUnit(from, unit), line.at(from)), b(inUnit(to, unit), line.at(to));
    if (!std::isfinite(a.x() + a.y() + b.x() + b.y()))
        return {};
    return {a, b};
}

/// No load is less than nothing, so no such tick: the names before the lines give up a little of
/// their room, and where that is not enough the steps grow; two figures stay.
void startAtNothing(Scale& x, double low) {
    constexpr double given = 0.2; // of the names' room
    constexpr double within = 0.999;
    x.step = stepWithTwo(std::max(0.0, x.from), x.to, x.step);
    while (x.from <= -x.step) {
        const double next = niceStep(x.step * 1.01, 1);
        const bool many = x.to >= 2 * next, none = x.to < next;
        if (!many && (none || x.step > (1 - given) * -x.from - given * low))
            x.from = -within * x.step;
        else
            x.step = next;
    }
}

} // namespace

LineFigure::LineFigure()
    : m_still(std::make_unique<Layer>(this, look::stillSeries,
                                      [this](QPainter& painter) { paintStill(painter); })) {
    m_still->keepPicture();
}

LineFigure::~LineFigure() {
    for (Items& items : m_items)
        dropItems(items);
}

LineFigure::Items LineFigure::makeItems() {
    Items i;
    i.upper = new QLineSeries(this);
    i.lower = new QLineSeries(this);
    i.band = new QAreaSeries(i.upper, i.lower);
    i.below = new QLineSeries;
    i.beyond = new QLineSeries;
    i.line = new QLineSeries;
    i.excluded = new QScatterSeries;
    i.points = new QScatterSeries;
    for (QAbstractSeries* s : std::initializer_list<QAbstractSeries*>{i.band, i.below, i.beyond,
                                                                      i.line, i.excluded, i.points})
        join(s);
    const QScatterSeries* points = i.points;
    const QScatterSeries* excluded = i.excluded;
    connect(points, &QXYSeries::clicked, this,
            [this, points](const QPointF& at) { clicked(points, at, false); });
    connect(excluded, &QXYSeries::clicked, this,
            [this, excluded](const QPointF& at) { clicked(excluded, at, true); });
    return i;
}

/// One more than there are waits beside still sessions: making series is work that the first point
/// of a session need not wait for.
void LineFigure::makeItemsFor(std::size_t sessions, bool besideStill) {
    const std::size_t wanted = sessions == 0 && besideStill ? 1 : sessions;
    while (m_items.size() > wanted) {
        dropItems(m_items.back());
        m_items.pop_back();
    }
    while (m_items.size() < wanted)
        m_items.push_back(makeItems());
}

void LineFigure::dropItems(Items& items) {
    for (QAbstractSeries* s : std::initializer_list<QAbstractSeries*>{
             items.band, items.below, items.beyond, items.line, items.excluded, items.points}) {
        removeSeries(s);
        delete s;
    }
    delete items.upper;
    delete items.lower;
}

void LineFigure::setData(const LineData& data) {
    if (data == m_data && m_shown && !data.sessions.empty())
        return;
    m_shown = true;
    const bool unitChanged = data.unit != m_data.unit;
    m_data = data;
    const auto still = std::ranges::count_if(data.sessions, &LineEntry::still);
    makeItemsFor(data.sessions.size() - static_cast<std::size_t>(still), still > 0);
    const double first = start();
    std::vector<LineEntry> painted;
    auto items = m_items.begin();
    for (std::size_t i = 0; i < data.sessions.size(); ++i) {
        LineEntry entry = data.sessions[i];
        // Every line begins where the lightest of them does, so that their names stand in a column.
        if (entry.line && std::isfinite(first))
            entry.line->start = first;
        if (entry.still) {
            painted.push_back(std::move(entry));
            continue;
        }
        items->session = i;
        if (unitChanged || items->shown != entry)
            show(*items, entry);
        ++items;
    }
    if (items != m_items.end() && items->shown != LineEntry{})
        show(*items, {}); // waits for the first point of the session to come
    m_highlight.reset();
    setTitles(tr("Load (%1)").arg(unitName(data.unit)),
              data.velocityTitle.isEmpty() ? tr("Velocity (m/s)") : data.velocityTitle);
    const bool sameSheet = !unitChanged && painted == m_painted;
    m_painted = std::move(painted);
    if (!rescale(sameSheet && !m_painted.empty()) && sameSheet)
        Figure::repaintLayers();
    else
        repaintLayers();
}

void LineFigure::repaintLayers() {
    Figure::repaintLayers();
    m_still->setSize(size());
    m_still->repaint();
}

void LineFigure::show(Items& items, const LineEntry& entry) {
    const bool dressed = items.shown && items.shown->role == entry.role;
    items.shown = entry;
    QList<QPointF> upper, lower, points, excluded;
    for (const BandPoint& p : entry.band)
        if (std::isfinite(p.load + p.low + p.high)) {
            upper << QPointF(shown(p.load), p.high);
            lower << QPointF(shown(p.load), p.low);
        }
    for (const LinePoint& p : entry.points)
        if (drawable(p))
            (p.excluded ? excluded : points) << QPointF(shown(p.load), p.velocity);
    items.upper->replace(upper);
    items.lower->replace(lower);
    items.band->setVisible(!upper.isEmpty());
    const auto part = [&](QLineSeries* s, double from, double to) {
        s->replace(segment(*entry.line, from, to, m_data.unit));
    };
    for (QLineSeries* s : {items.below, items.line, items.beyond})
        if (!entry.line)
            s->replace(QList<QPointF>());
    if (entry.line) {
        part(items.below, entry.line->start, entry.line->from);
        part(items.line, entry.line->from, entry.line->to);
        part(items.beyond, entry.line->to, entry.line->end);
    }
    items.points->replace(points);
    items.excluded->replace(excluded);
    // What is empty is not painted: of fifty sessions that is most of what there is.
    for (QXYSeries* s : std::initializer_list<QXYSeries*>{items.below, items.line, items.beyond,
                                                          items.points, items.excluded})
        s->setVisible(s->count() > 0);
    items.band->setObjectName("band:"_L1 + entry.key);
    items.below->setObjectName("below:"_L1 + entry.key);
    items.beyond->setObjectName("beyond:"_L1 + entry.key);
    items.line->setObjectName("line:"_L1 + entry.key);
    items.points->setObjectName("points:"_L1 + entry.key);
    items.excluded->setObjectName("excluded:"_L1 + entry.key);
    if (!dressed)
        dress(items);
}

void LineFigure::dress() {
    for (Items& items : m_items)
        if (items.shown)
            dress(items);
}

void LineFigure::dress(Items& items) {
    const look::Role& role = items.shown->role;
    const QColor c = look::colour(role, ground());
    items.band->setPen(Qt::NoPen);
    items.band->setBrush(look::bandBrush(role, ground()));
    items.line->setPen(look::linePen(role, ground()));
    items.below->setPen(look::beyondPen(role, ground()));
    items.beyond->setPen(look::beyondPen(role, ground()));
    for (QScatterSeries* s : {items.points, items.excluded}) {
        s->setMarkerShape(look::marker(role));
        s->setMarkerSize(markerSize(role));
    }
    items.points->setBrush(c);
    items.points->setPen(QPen(ground().paper, ground().print ? 0.5 : 1.0));
    items.excluded->setBrush(Qt::NoBrush);
    items.excluded->setPen(QPen(c, ground().print ? 0.8 : 1.4));
}

void LineFigure::clicked(const QScatterSeries* series, const QPointF& at, bool excluded) {
    for (std::size_t s = 0; s < m_items.size(); ++s) {
        if (m_items[s].points != series && m_items[s].excluded != series)
            continue;
        const std::size_t session = m_items[s].session;
        const auto& points = m_data.sessions[session].points;
        for (std::size_t p = 0; p < points.size(); ++p)
            if (points[p].excluded == excluded && std::abs(shown(points[p].load) - at.x()) < 1e-6 &&
                std::abs(points[p].velocity - at.y()) < 1e-9) {
                Q_EMIT pointClicked(
                    {.session = static_cast<int>(session), .point = static_cast<int>(p)});
                return;
            }
    }
}

void LineFigure::setHighlight(std::optional<PointRef> point) {
    if (point &&
        (point->session < 0 || point->session >= std::ssize(m_data.sessions) || point->point < 0 ||
         point->point >=
             std::ssize(m_data.sessions[static_cast<std::size_t>(point->session)].points)))
        point.reset();
    if (point == m_highlight)
        return;
    m_highlight = point;
    Figure::repaintLayers();
}

double LineFigure::start() const {
    double first = std::numeric_limits<double>::infinity();
    for (const LineEntry& entry : m_data.sessions)
        if (entry.line)
            first = std::min(first, entry.line->from);
    return first;
}

// Neither too narrow for the names before the lines and for what ends on the right, nor so wide
// that the lines stand in a corner.
bool LineFigure::hasRoom(double low, double high, const Scale& x, const Scale& y) const {
    constexpr double atMost = 1.4;
    const double from = xAxis().min(), to = xAxis().max(), top = yAxis().max();
    const double names =
        std::min({labelRoom() / plotWidth(), mostForNames, (low - x.from) / (x.to - x.from)});
    return high + 0.02 * (to - from) <= to && low - from >= 0.98 * names * (to - from) &&
           to - from <= atMost * (x.to - x.from) && y.to <= top * (1 + 1e-6) &&
           top <= atMost * y.to;
}

double LineFigure::plotWidth() const {
    return std::max(100.0, size().width() - 7.5 * textSize());
}

bool LineFigure::rescale(bool sameSheet) {
    double low = std::numeric_limits<double>::infinity(), high = -low, top = 0;
    const double first = start();
    const auto reach = [&](double load) {
        if (std::isfinite(load)) {
            low = std::min(low, shown(load));
            high = std::max(high, shown(load));
        }
    };
    for (const LineEntry& entry : m_data.sessions) {
        for (const LinePoint& p : entry.points)
            if (drawable(p)) {
                reach(p.load);
                top = std::max(top, p.velocity);
            }
        if (entry.line) {
            reach(entry.line->from);
            reach(entry.line->end);
            top = std::max(top, entry.line->at(std::isfinite(first) ? first : entry.line->from));
        }
        if (entry.oneRm)
            for (const auto& held : {entry.oneRm->interval, entry.oneRm->whole})
                if (held)
                    reach(std::min(held->high, longestWhisker * entry.oneRm->estimate));
        if (entry.notLifted)
            reach(*entry.notLifted);
        if (entry.oneRm && entry.oneRm->measured)
            reach(*entry.oneRm->measured);
    }
    if (m_data.reach && std::isfinite(low + *m_data.reach))
        high = std::max(high, shown(*m_data.reach));
    if (!std::isfinite(low) || top <= 0) {
        return setScales({.from = 0, .to = shown(100), .step = niceStep(shown(100), 6)},
                         {.from = 0, .to = 1.5, .step = 0.25});
    }
    if (high - low < 1e-6) {
        low -= shown(10);
        high += shown(10);
    }
    // In steps: an interval that narrows with each set does not lay out the whole chart anew.
    const double reached = high, grain = niceStep(high - low, 16);
    high = std::ceil(high / grain - 1e-9) * grain;
    const double span = high - low;
    const double width = plotWidth();
    const double room = std::min(labelRoom() / width, mostForNames);
    const Scale parts =
        niceScale(low, high, static_cast<int>(std::clamp(width / (5 * textSize()), 3.0, 12.0)));
    Scale x{.from = low - span * (room + 0.02) / (1 - room),
            .to = high + span * 0.05,
            .step = parts.step};
    startAtNothing(x, low);
    const double height = std::max(80.0, size().height() - 5 * textSize());
    const Scale y = niceScale(0, top * 1.06,
                              static_cast<int>(std::clamp(height / (2.6 * textSize()), 3.0, 10.0)));
    if (sameSheet && hasRoom(low, reached, x, y))
        return false;
    return setScales(x, y);
}

void LineFigure::resizeEvent(QGraphicsSceneResizeEvent* event) {
    Figure::resizeEvent(event);
    rescale(false);
}

} // namespace slopebook::ui::charts

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/plan/relationchart.h"

#include "ui/charts/labelroom.h"
#include "ui/words/units.h"

#include <QPainter>

#include <algorithm>
#include <cmath>
#include <limits>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui::charts {

namespace {
constexpr int curveSteps = 60;
} // namespace

RelationFigure::RelationFigure()
    : m_band(new QAreaSeries(&m_upper, &m_lower)), m_line(new QLineSeries),
      m_curve(new QLineSeries), m_published(new QLineSeries), m_points(new QScatterSeries) {
    m_band->setObjectName(u"band"_s);
    m_line->setObjectName(u"line"_s);
    m_curve->setObjectName(u"curve"_s);
    m_published->setObjectName(u"published"_s);
    m_points->setObjectName(u"points"_s);
    for (QAbstractSeries* s :
         std::initializer_list<QAbstractSeries*>{m_band, m_line, m_curve, m_published, m_points})
        join(s);
    setTitles(tr("Velocity (m/s)"), tr("Share of the 1RM (%)"));
    dress();
    setData({});
}

RelationFigure::~RelationFigure() {
    removeSeries(m_band);
    delete m_band;
}

void RelationFigure::setData(const RelationData& data) {
    m_data = data;
    double low = 0.2, high = 1.5;
    if (data.squad) {
        low = data.squad->linear.xMin;
        high = data.squad->linear.xMax;
    }
    QList<QPointF> upper, lower, line, curve, published, points;
    double bottom = 0, top = 100;
    for (int i = 0; i <= curveSteps; ++i) {
        const double v = low + (high - low) * i / curveSteps;
        if (data.squad) {
            const auto band = data.squad->predicted(v);
            upper << QPointF(v, band.high);
            lower << QPointF(v, band.low);
            line << QPointF(v, data.squad->linear.at(v));
            if (data.squad->quadratic)
                curve << QPointF(v, data.squad->quadratic->at(v));
            bottom = std::min(bottom, band.low);
            top = std::max(top, band.high);
        }
        if (data.published) {
            published << QPointF(v, data.published->percentAt(v));
            bottom = std::min(bottom, published.last().y());
            top = std::max(top, published.last().y());
        }
    }
    if (data.squad)
        for (const answers::RelationPoint& point : data.squad->points)
            points << QPointF(point.velocity, point.percent);
    m_upper.replace(upper);
    m_lower.replace(lower);
    m_band->setVisible(!upper.isEmpty());
    m_line->replace(line);
    m_curve->replace(curve);
    m_published->replace(published);
    m_points->replace(points);
    setScales(niceScale(low, high, 7), niceScale(bottom, top, 6));
    repaintLayers();
}

void RelationFigure::dress() {
    m_band->setPen(Qt::NoPen);
    m_band->setBrush(look::bandBrush({}, ground()));
    m_curve->setPen(QPen(ground().ink, 2 * unit()));
    QPen line(ground().ink, unit());
    line.setStyle(Qt::DotLine);
    m_line->setPen(line);
    QPen published(ground().quiet, 1.8 * unit());
    published.setStyle(Qt::DashLine);
    m_published->setPen(published);
    m_points->setMarkerShape(QScatterSeries::MarkerShapeCircle);
    m_points->setMarkerSize(6 * unit());
    m_points->setColor(ground().quiet);
    m_points->setBorderColor(ground().ink);
}

void RelationFigure::paintUnder(QPainter& /*painter*/) {}

void RelationFigure::paintOver(QPainter& painter) {
    painter.setFont(textFont(0.9));
    if (m_points->count() == 0 && m_published->count() == 0) {
        painter.setPen(ground().quiet);
        painter.drawText(plot(), Qt::AlignCenter, tr("Nothing to show yet"));
        return;
    }
    // Beside its line where neither a point nor another name stands, and nearer to it than to any
    // other: tried along the line. Two that run as one have one name.
    LabelRoom room(plot(), 0.4 * textSize());
    for (const QPointF& point : m_points->points())
        room.takePoint(toPosition(point.x(), point.y()));
    const bool asOne = m_curve->count() > 0 && farthest(*m_curve, *m_line) < textSize();
    std::vector<Named> all;
    if (asOne)
        all.push_back({m_curve, tr("the squad")});
    else if (m_curve->count() > 0)
        all.push_back({m_curve, tr("the squad, curved")});
    if (!asOne && m_line->count() > 0)
        all.push_back({m_line, m_curve->count() > 0 ? tr("straight") : tr("the squad, straight")});
    if (m_published->count() > 0)
        all.push_back({m_published, tr("published")});
    for (const Named& each : all)
        nameBeside(painter, room, each, all);
    nameBand(painter, room);
}

/// Beside one of its edges, where nothing else stands.
void RelationFigure::nameBand(QPainter& painter, LabelRoom& room) const {
    if (m_lower.count() == 0)
        return;
    const QString words = tr("band: one point of an athlete");
    const QFontMetricsF metrics(painter.font());
    const double wide = metrics.horizontalAdvance(words), high = metrics.height();
    std::vector<QRectF> boxes; // below its lower edge first: what is there is far from the lines
    for (const bool below : {true, false})
        for (int i = 0; i < m_lower.count(); ++i) {
            const QPointF edge = (below ? m_lower : m_upper).at(i);
            const QPointF at = toPosition(edge.x(), edge.y());
            const double gap = 0.4 * textSize();
            boxes.emplace_back(below ? at.x() - wide - gap : at.x() + gap,
                               below ? at.y() : at.y() - high, wide, high);
        }
    if (const auto found = room.place(boxes))
        paintLabel(painter, boxes[*found].topLeft(), Qt::AlignLeft | Qt::AlignTop, words, ground(),
                   ground().quiet);
}

double RelationFigure::farthest(const QLineSeries& one, const QLineSeries& other) const {
    double most = 0;
    for (int i = 0; i < std::min(one.count(), other.count()); ++i)
        most = std::max(
            most, std::abs(toPosition(0, one.at(i).y()).y() - toPosition(0, other.at(i).y()).y()));
    return most;
}

/// How far a box stands off a line, along the width of the box.
double RelationFigure::off(const QRectF& box, const QLineSeries& series) const {
    double least = std::numeric_limits<double>::infinity();
    for (const QPointF& point : series.points())
        if (const QPointF at = toPosition(point.x(), point.y());
            at.x() >= box.left() - textSize() && at.x() <= box.right() + textSize())
            least = std::min(least, std::abs(at.y() - box.center().y()));
    return least;
}

void RelationFigure::nameBeside(QPainter& painter, LabelRoom& room, const Named& named,
                                const std::vector<Named>& all) const {
    const QFontMetricsF metrics(painter.font());
    const double wide = metrics.horizontalAdvance(named.words), high = metrics.height();
    std::vector<QRectF> boxes, others; // nearest to its own line; and where none is, beside it
    constexpr int tries = 16;
    for (int i = tries - 1; i > 0 && named.series->count() > tries; --i) {
        const QPointF p = named.series->at(named.series->count() * i / tries);
        const QPointF at = toPosition(p.x(), p.y());
        const double gap = 0.3 * textSize();
        for (const QRectF& box : {QRectF(at.x() + gap, at.y() - high, wide, high),
                                  QRectF(at.x() - wide - gap, at.y(), wide, high)}) {
            const double own = off(box, *named.series);
            const auto nearer = [&](const QLineSeries& line) {
                return off(box, line) < own + 0.3 * textSize();
            };
            const bool astray = nearer(m_upper) || nearer(m_lower) ||
                                std::ranges::any_of(all, [&](const Named& each) {
                                    return each.series != named.series && nearer(*each.series);
                                });
            (astray ? others : boxes).push_back(box);
        }
    }
    boxes.insert(boxes.end(), others.begin(), others.end());
    if (const auto found = room.place(boxes))
        paintLabel(painter, boxes[*found].topLeft(), Qt::AlignLeft | Qt::AlignTop, named.words,
                   ground(), ground().ink);
}

RelationChart::RelationChart(QWidget* parent) : RelationChart(new RelationFigure, parent) {}

RelationChart::RelationChart(RelationFigure* figure, QWidget* parent)
    : ChartView(figure, parent), m_figure(figure) {}

void RelationChart::setData(const RelationData& shown) {
    m_figure->setData(shown);
    describe();
}

FigureTable RelationChart::figures() const {
    FigureTable table{.headings = {tr("Velocity, m/s"), tr("% of 1RM"), tr("What it is")}};
    const RelationData& drawn = m_figure->data();
    constexpr double step = 0.1; // m/s
    if (drawn.squad) {
        for (const answers::RelationPoint& point : drawn.squad->points)
            table.rows.push_back(
                {number(point.velocity, 3), number(point.percent, 1), tr("point")});
        for (int i = 1; i <= 15; ++i)
            table.rows.push_back({number(i * step, 1), number(drawn.squad->used().at(i * step), 1),
                                  tr("the squad\u2019s relation, %1")
                                      .arg(rangeText(drawn.squad->predicted(i * step), 1))});
    }
    if (drawn.published)
        for (int i = 1; i <= 15; ++i)
            table.rows.push_back({number(i * step, 1),
                                  number(drawn.published->percentAt(i * step), 1),
                                  tr("published")});
    return table;
}

std::unique_ptr<Figure> RelationChart::paperFigure() const {
    auto figure = std::make_unique<RelationFigure>();
    figure->setData(m_figure->data());
    return figure;
}

} // namespace slopebook::ui::charts

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/plan/planchart.h"

#include "ui/charts/labelroom.h"
#include "ui/charts/plotframe.h"
#include "ui/words/format.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

namespace {

struct PlanChartWords {
    Q_DECLARE_TR_FUNCTIONS(PlanChartWords)
};

double speedAt(const PlanDrawing& data, double load) {
    return data.intercept + data.slope * load;
}

double lastLoad(const PlanDrawing& data) {
    double last = std::max(data.loads.back().load, data.heaviest);
    if (data.oneRm)
        last = std::max(last, *data.oneRm);
    if (data.toPlan && std::isfinite(data.toPlan->high))
        last = std::max(last, data.toPlan->high);
    return last;
}

/// What is painted, step by step, on one frame.
class PlanPainting {
public:
    PlanPainting(QPainter& painter, const QRectF& target, const PlanDrawing& data,
                 const look::Ground& ground, double textSize)
        : m_painter(painter), m_data(data), m_room({}, 0) {
        m_frame = {.ground = ground, .textSize = textSize};
        m_frame.area = QRectF(QPointF(target.left() + charts::yAxisRoom(textSize) + 0.4 * textSize,
                                      target.top() + 0.6 * textSize),
                              QPointF(target.right() - textSize,
                                      target.bottom() - charts::xAxisRoom(textSize, true)));
        const double first = std::min(data.loads.front().load, data.lightest);
        const double last = lastLoad(data), edge = std::max(1.0, 0.04 * (last - first));
        m_frame.from = first - edge;
        m_frame.to = last + edge;
        double low = speedAt(data, last), high = speedAt(data, first);
        for (const PlanDrawing::Load& each : data.loads) {
            low =
                std::min({low, each.stop.value_or(low), each.expected ? each.expected->low : low});
            high = std::max(high, each.expected ? each.expected->high : high);
        }
        if (data.mvt)
            low = std::min(low, *data.mvt);
        m_frame.y = charts::niceScale(std::max(0.0, low - 0.05), high, 5);
        m_room = charts::LabelRoom(m_frame.area, 0.45 * textSize);
    }

    void paint() {
        const double step = charts::niceStep(m_frame.to - m_frame.from, 9);
        m_frame.paintXAxis(m_painter, PlanChartWords::tr("Load (%1)").arg(unitName(m_data.unit)),
                           step);
        m_frame.paintYAxis(m_painter, PlanChartWords::tr("Fastest rep (m/s)"),
                           PlanChartWords::tr("m/s"));
        m_painter.save();
        m_painter.setClipRect(m_frame.area);
        paintGrounds();
        paintLine();
        paintStops();
        paintLoads();
        m_painter.restore();
        paintMax();
        paintWords();
    }

private:
    double size() const { return m_frame.textSize; }
    const look::Ground& ground() const { return m_frame.ground; }

    void paintGrounds() {
        const QRectF& area = m_frame.area;
        QPolygonF band;
        for (const PlanDrawing::Load& each : m_data.loads)
            if (each.expected)
                band << m_frame.at(each.load, each.expected->high);
        for (auto each = m_data.loads.rbegin(); each != m_data.loads.rend(); ++each)
            if (each->expected)
                band << m_frame.at(each->load, each->expected->low);
        m_painter.setPen(Qt::NoPen);
        m_painter.setBrush(look::bandBrush({}, ground()));
        m_painter.drawPolygon(band);
        m_painter.setBrush(Qt::NoBrush);
        const double left = m_frame.x(m_data.lightest), right = m_frame.x(m_data.heaviest);
        look::hatch(m_painter, QRectF(area.topLeft(), QPointF(left, area.bottom())), ground());
        look::hatch(m_painter, QRectF(QPointF(right, area.top()), area.bottomRight()), ground());
    }

    void paintLine() {
        const auto stretch = [&](double from, double to, Qt::PenStyle style) {
            if (to <= from)
                return;
            m_painter.setPen(QPen(ground().ink, 0.13 * size(), style));
            m_painter.drawLine(m_frame.at(from, speedAt(m_data, from)),
                               m_frame.at(to, speedAt(m_data, to)));
        };
        stretch(m_frame.from, m_data.lightest, Qt::DotLine);
        stretch(m_data.lightest, m_data.heaviest, Qt::SolidLine);
        stretch(m_data.heaviest, m_frame.to, Qt::DotLine);
        if (!m_data.mvt)
            return;
        m_painter.setPen(look::thresholdPen(ground()));
        const QPointF left = m_frame.at(m_frame.from, *m_data.mvt);
        m_painter.drawLine(left, m_frame.at(m_frame.to, *m_data.mvt));
        m_room.take(QRectF(left - QPointF(0, 1), QSizeF(m_frame.area.width(), 2)));
    }

    void paintStops() {
        for (const PlanDrawing::Load& each : m_data.loads) {
            if (!each.stop)
                continue;
            const QPointF at = m_frame.at(each.load, *each.stop);
            const double half = (each.chosen ? 0.6 : 0.35) * size();
            m_painter.setPen(QPen(ground().ink, (each.chosen ? 0.2 : 0.1) * size()));
            m_painter.drawLine(at - QPointF(half, 0), at + QPointF(half, 0));
            m_room.takePoint(at);
            if (each.chosen) { // from the first rep down to where the set ends
                m_painter.setPen(QPen(ground().ink, 0.1 * size(), Qt::DashLine));
                m_painter.drawLine(m_frame.at(each.load, each.speed), at);
            }
        }
    }

    void paintLoads() {
        for (const PlanDrawing::Load& each : m_data.loads) {
            const QPointF at = m_frame.at(each.load, each.speed);
            const double half = (each.chosen ? 0.5 : 0.3) * size();
            m_painter.setPen(QPen(each.overMax ? ground().quiet : ground().ink, 0.1 * size()));
            m_painter.setBrush(each.chosen ? ground().ink : ground().paper);
            m_painter.drawEllipse(at, half, half);
            m_room.takePoint(at);
        }
        m_painter.setBrush(Qt::NoBrush);
    }

    /// On the load axis: what lies beyond it nobody has lifted.
    void paintMax() {
        if (!m_data.oneRm)
            return;
        const double bottom = m_frame.area.bottom() - 0.8 * size();
        const double x = m_frame.x(*m_data.oneRm);
        m_painter.setPen(QPen(ground().ink, 0.1 * size(), Qt::DotLine));
        const double top = m_data.mvt ? m_frame.yOf(*m_data.mvt) : bottom;
        m_painter.drawLine(QPointF(x, top), QPointF(x, bottom));
        m_room.take(QRectF(x - 1, std::min(top, bottom), 2, std::abs(bottom - top)));
        m_painter.setPen(QPen(ground().ink, 0.14 * size()));
        const double cap = 0.35 * size();
        if (m_data.toPlan)
            for (const double end : {m_data.toPlan->low, m_data.toPlan->high}) {
                const QPointF at(m_frame.x(end), bottom);
                m_painter.drawLine(QPointF(x, bottom), at);
                m_painter.drawLine(at - QPointF(0, cap), at + QPointF(0, cap));
            }
        m_painter.setBrush(ground().ink);
        m_painter.drawEllipse(QPointF(x, bottom), 0.32 * size(), 0.32 * size());
        m_painter.setBrush(Qt::NoBrush);
        const double left = m_data.toPlan ? m_frame.x(m_data.toPlan->low) : x;
        m_room.take(QRectF(left, bottom - cap, m_frame.area.right() - left, 2 * cap));
    }

    enum class Under { Paper, Nothing };

    /// The first of those places that is free, in the order they are given. Paper keeps words off a
    /// hatching; on the band it would bite a notch out of it.
    void name(const QString& words, const std::vector<QPointF>& places, const QColor& colour,
              Under under = Under::Paper) {
        m_painter.setFont(charts::chartFont(size(), 0.9));
        const QFontMetricsF metrics(m_painter.font());
        const QSizeF box(metrics.horizontalAdvance(words) + 2, metrics.height());
        std::vector<QRectF> boxes;
        for (const QPointF& place : places)
            boxes.emplace_back(place, box);
        const auto found = m_room.place(boxes);
        if (!found)
            return;
        if (under == Under::Paper)
            m_painter.fillRect(boxes[*found], QColor(ground().paper.red(), ground().paper.green(),
                                                     ground().paper.blue(), 190));
        m_painter.setPen(colour);
        m_painter.drawText(boxes[*found], Qt::AlignCenter, words);
    }

    void paintWords() {
        const QFontMetricsF metrics(charts::chartFont(size(), 0.9));
        const double high = metrics.height(), gap = 0.7 * size();
        const auto wide = [&](const QString& words) {
            return metrics.horizontalAdvance(words) + 2;
        };
        for (const PlanDrawing::Load& each : m_data.loads) {
            if (!each.chosen)
                continue;
            const QPointF at = m_frame.at(each.load, each.speed);
            const QString load = PlanChartWords::tr("%1: %2 m/s")
                                     .arg(loadWithUnitOf(each.load), number(each.speed, 2));
            name(load,
                 {at + QPointF(gap, -high - 0.2 * gap), at + QPointF(gap, -2 * high),
                  at + QPointF(-wide(load) / 2, -high - gap)},
                 ground().ink, Under::Nothing);
            if (!each.stop)
                continue;
            const QPointF end = m_frame.at(each.load, *each.stop);
            const QString stop = PlanChartWords::tr("stop at %1").arg(number(*each.stop, 2));
            name(stop,
                 {end + QPointF(-wide(stop) - gap, -high / 2 + 0.6 * gap),
                  end + QPointF(-wide(stop) / 2, 0.4 * gap),
                  end + QPointF(-wide(stop) - gap, 0.4 * gap)},
                 ground().ink);
        }
        const QRectF& area = m_frame.area;
        nameMvt(wide, high, gap);
        if (m_data.oneRm) {
            const QString max =
                m_data.toPlan ? PlanChartWords::tr("est. 1RM %1 (to plan with: %2)")
                                    .arg(number(*m_data.oneRm, 1), rangeText(*m_data.toPlan, 1))
                              : PlanChartWords::tr("est. 1RM %1").arg(number(*m_data.oneRm, 1));
            const double left = m_frame.x(m_data.toPlan ? m_data.toPlan->low : *m_data.oneRm);
            const double y = area.bottom() - 0.8 * size();
            name(max, {{left - wide(max) - gap, y - high / 2}, {left - wide(max) - gap, y - high}},
                 ground().ink);
        }
        const QString beyond = PlanChartWords::tr("not lifted that day");
        const double right = m_frame.x(m_data.heaviest);
        if (area.right() - right > wide(beyond) + gap)
            name(beyond, {{right + gap / 2, area.top() + 2}, {right + gap / 2, area.top() + high}},
                 ground().quiet);
        const double firstTested = m_frame.x(m_data.lightest);
        if (firstTested - area.left() > wide(beyond) + gap)
            name(beyond, {{area.left() + gap / 2, area.bottom() - 5 * high}}, ground().quiet);
        nameStops(wide, high, gap);
        nameBand(wide, high, gap);
        nameOver(wide, high, gap);
        nameDots(wide, high, gap);
    }

    /// Where nothing is hatched.
    double leftOfLifted() const {
        return std::max(m_frame.area.left(), m_frame.x(m_data.lightest));
    }
    double rightOfLifted() const {
        return std::min(m_frame.area.right(), m_frame.x(m_data.heaviest));
    }

    /// On its line or under it, off the hatching where there is room.
    template <class Wide>
    void nameMvt(const Wide& wide, double high, double gap) {
        if (!m_data.mvt)
            return;
        const QString mvt = PlanChartWords::tr("MVT %1").arg(number(*m_data.mvt, 2));
        const double y = m_frame.yOf(*m_data.mvt);
        std::vector<QPointF> places;
        for (const double left :
             {leftOfLifted() + gap, rightOfLifted() - wide(mvt) - gap, m_frame.area.left() + gap})
            for (const double top : {y - high - 2, y + 2})
                places.emplace_back(left, top);
        name(mvt, places, ground().quiet);
    }

    /// Under one of the dashes, where those before it are higher: what they are.
    template <class Wide>
    void nameStops(const Wide& wide, double high, double gap) {
        const QString words = PlanChartWords::tr("dashes: stop the set here");
        std::vector<QPointF> places;
        for (const PlanDrawing::Load& each : m_data.loads) {
            if (!each.stop || each.chosen)
                continue;
            const QPointF end = m_frame.at(each.load, *each.stop);
            for (const double down : {0.7 * gap, 0.7 * gap + 0.5 * high, 0.7 * gap + high})
                if (end.x() - wide(words) > leftOfLifted() && end.x() < rightOfLifted())
                    places.push_back(end + QPointF(-wide(words), down));
        }
        name(words, places, ground().quiet);
    }

    /// Once, over the first of them that has room: why the last loads are pale.
    template <class Wide>
    void nameOver(const Wide& wide, double high, double gap) {
        const QString words = PlanChartWords::tr("pale: over the estimate");
        std::vector<QPointF> places;
        for (const PlanDrawing::Load& each : m_data.loads) {
            if (!each.overMax)
                continue;
            const double left =
                std::min(m_frame.x(each.load) + gap, m_frame.area.right() - wide(words) - 1);
            const double load = m_frame.from + (left - m_frame.area.left()) / m_frame.area.width() *
                                                   (m_frame.to - m_frame.from);
            const double above = each.expected ? each.expected->high - each.speed : 0;
            const double y = m_frame.yOf(speedAt(m_data, load) + above);
            for (const double up : {0.4 * gap, gap, gap + high, gap + 2 * high})
                places.emplace_back(left, y - high - up);
        }
        name(words, places, ground().quiet);
    }

    /// Under the line, where there is room: what an open dot is.
    template <class Wide>
    void nameDots(const Wide& wide, double high, double gap) {
        if (std::ranges::all_of(m_data.loads, &PlanDrawing::Load::chosen))
            return;
        const QString words = PlanChartWords::tr("○ a load that can be built");
        const QRectF& area = m_frame.area;
        std::vector<QPointF> places;
        if (leftOfLifted() + gap + wide(words) < rightOfLifted())
            for (const double lines : {3.0, 3.6, 4.2, 4.8, 5.4, 6.0, 6.6})
                places.emplace_back(leftOfLifted() + gap, area.bottom() - lines * high);
        // Or over the line, where it has fallen.
        for (const double lines : {0.5, 1.7})
            places.emplace_back(rightOfLifted() - wide(words) - gap, area.top() + lines * high);
        name(words, places, ground().quiet);
    }

    template <class Wide>
    void nameBand(const Wide& wide, double high, double gap) {
        const auto expected = std::ranges::find_if(
            m_data.loads, [](const PlanDrawing::Load& each) { return each.expected.has_value(); });
        if (expected == m_data.loads.end())
            return;
        const QString band = PlanChartWords::tr("band: one rep of another day");
        std::vector<QPointF> places;
        // Not over the hatching, whose name it would be read as.
        for (auto each = expected; each != m_data.loads.end(); ++each)
            if (each->expected && each->load >= m_data.lightest && each->load <= m_data.heaviest)
                places.push_back(m_frame.at(each->load, each->expected->high) +
                                 QPointF(gap / 2, -high));
        if (!places.empty() && wide(band) < m_frame.area.width() / 2)
            name(band, places, ground().quiet, Under::Nothing);
    }

    QString loadWithUnitOf(double load) const {
        return number(load, std::abs(load - std::round(load)) < 0.005 ? 0 : 1) + u' ' +
               unitName(m_data.unit);
    }

    QPainter& m_painter;
    const PlanDrawing& m_data;
    charts::PlotFrame m_frame{};
    charts::LabelRoom m_room;
};

} // namespace

void PlanChart::setData(PlanDrawing data) {
    if (data == m_data)
        return;
    m_data = std::move(data);
    describe();
    update();
}

charts::FigureTable PlanChart::figures() const {
    charts::FigureTable table{
        .headings = {PlanChartWords::tr("Load, %1").arg(unitName(m_data.unit)),
                     PlanChartWords::tr("Fastest rep, m/s"), PlanChartWords::tr("Another day, m/s"),
                     PlanChartWords::tr("Stop at, m/s"), PlanChartWords::tr("Chosen")}};
    for (const PlanDrawing::Load& each : m_data.loads)
        table.rows.push_back({number(each.load, 2), number(each.speed, 2),
                              each.expected ? rangeText(*each.expected, 2) : QString(),
                              each.stop ? number(*each.stop, 2) : QString(),
                              each.chosen ? PlanChartWords::tr("chosen") : QString()});
    return table;
}

void PlanChart::paintChart(QPainter& painter, const QRectF& target, const look::Ground& ground,
                           double textSize, bool /*onScreen*/) const {
    if (m_data.loads.empty()) {
        painter.setFont(charts::chartFont(textSize));
        painter.setPen(ground.quiet);
        painter.drawText(target, Qt::AlignCenter | Qt::TextWordWrap,
                         PlanChartWords::tr("Nothing to plan yet"));
        return;
    }
    PlanPainting(painter, target, m_data, ground, textSize).paint();
}

} // namespace slopebook::ui

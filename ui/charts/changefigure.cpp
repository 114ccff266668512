// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/changefigure.h"

#include "ui/charts/changewords.h"

#include <QFontMetricsF>
#include <QGraphicsSceneResizeEvent>

#include <algorithm>
#include <cmath>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui::charts {

namespace {

bool drawableChange(const ChangePoint& p) {
    return std::isfinite(p.load + p.change + p.interval.low + p.interval.high + p.band.low +
                         p.band.high);
}

} // namespace

ChangeFigure::ChangeFigure()
    : m_interval(new QAreaSeries(&m_upper, &m_lower)), m_bandUpper(new QLineSeries),
      m_bandLower(new QLineSeries), m_below(new QLineSeries), m_inside(new QLineSeries),
      m_beyond(new QLineSeries) {
    m_interval->setObjectName(u"interval"_s);
    m_bandUpper->setObjectName(u"band upper"_s);
    m_bandLower->setObjectName(u"band lower"_s);
    m_below->setObjectName(u"change below"_s);
    m_inside->setObjectName(u"change"_s);
    m_beyond->setObjectName(u"change beyond"_s);
    for (QAbstractSeries* s : std::initializer_list<QAbstractSeries*>{
             m_interval, m_bandUpper, m_bandLower, m_below, m_inside, m_beyond})
        join(s);
    dress();
    setData({});
}

ChangeFigure::~ChangeFigure() {
    removeSeries(m_interval);
    delete m_interval;
}

void ChangeFigure::setData(const ChangeData& data) {
    m_data = data;
    m_highlight.reset();
    QList<QPointF> upper, lower, bandUpper, bandLower, below, inside, beyond;
    for (const ChangePoint& p : data.along) {
        if (!drawableChange(p))
            continue;
        const double x = shown(p.load);
        upper << QPointF(x, p.interval.high);
        lower << QPointF(x, p.interval.low);
        bandUpper << QPointF(x, p.band.high);
        bandLower << QPointF(x, p.band.low);
        const QPointF change(x, p.change);
        if (!data.common || p.load <= data.common->from)
            below << change;
        if (data.common && p.load >= data.common->from && p.load <= data.common->to)
            inside << change;
        if (data.common && p.load >= data.common->to)
            beyond << change;
    }
    m_upper.replace(upper);
    m_lower.replace(lower);
    m_interval->setVisible(data.bands && !upper.isEmpty());
    for (QLineSeries* edge : {m_bandUpper, m_bandLower})
        edge->setVisible(data.bands);
    m_bandUpper->replace(bandUpper);
    m_bandLower->replace(bandLower);
    m_below->replace(below);
    m_inside->replace(inside);
    m_beyond->replace(beyond);
    setTitles(tr("Load (%1)").arg(unitName(data.unit)), tr("Change (m/s)"));
    makeRoomForKey();
    rescale();
    repaintLayers();
}

void ChangeFigure::setHighlight(std::optional<int> reading) {
    if (reading && (*reading < 0 || *reading >= std::ssize(m_data.readings)))
        reading.reset();
    m_highlight = reading;
    repaintLayers();
}

void ChangeFigure::dress() {
    m_interval->setPen(Qt::NoPen);
    m_interval->setBrush(look::changeIntervalBrush(ground()));
    for (QLineSeries* s : {m_bandUpper, m_bandLower})
        s->setPen(look::changeBandPen(ground()));
    m_inside->setPen(look::changePen(ground()));
    for (QLineSeries* s : {m_below, m_beyond})
        s->setPen(look::changeBeyondPen(ground()));
    makeRoomForKey();
}

void ChangeFigure::rescale() {
    double low = 0, high = 0, first = std::numeric_limits<double>::infinity(), last = -first;
    const auto reach = [&](double v) {
        if (std::isfinite(v)) {
            low = std::min(low, v);
            high = std::max(high, v);
        }
    };
    for (const ChangePoint& p : m_data.along) {
        if (!drawableChange(p))
            continue;
        first = std::min(first, shown(p.load));
        last = std::max(last, shown(p.load));
        // Bands open wide beyond the loads of both; there the axis does not follow them.
        const bool both =
            !m_data.common || (p.load >= m_data.common->from && p.load <= m_data.common->to);
        if (m_data.bands && both) {
            reach(p.band.low);
            reach(p.band.high);
        }
        reach(p.change);
    }
    for (const ChangeReading& r : m_data.readings) {
        reach(r.whisker.interval.low);
        reach(r.whisker.interval.high);
    }
    if (m_data.smallest) {
        reach(1.3 * *m_data.smallest);
        reach(-1.3 * *m_data.smallest);
    }
    if (!std::isfinite(first)) {
        setScales({.from = 0, .to = shown(100), .step = niceStep(shown(100), 6)},
                  {.from = -0.2, .to = 0.2, .step = 0.1});
        return;
    }
    if (high - low < 1e-6) {
        high += 0.1;
        low -= 0.1;
    }
    if (last - first < 1e-6) {
        last += shown(10);
        first -= shown(10);
    }
    const double width = std::max(120.0, size().width() - 6 * textSize());
    const double height = std::max(60.0, size().height() - 8 * textSize());
    const double margin = (last - first) * 0.06;
    // Room on the left for the words that say which way is which.
    const QFontMetricsF metrics(textFont(0.9));
    const double words =
        std::max(metrics.horizontalAdvance(tr("faster")), metrics.horizontalAdvance(tr("slower"))) +
        textSize();
    const double share = std::min(0.3, words / width);
    const double left = (last - first + margin) * share / (1 - share);
    const int parts = static_cast<int>(std::clamp(width / (5 * textSize()), 3.0, 12.0));
    const int rows = static_cast<int>(std::clamp(height / (2.4 * textSize()), 3.0, 8.0));
    // Room above for the readings' words.
    const double room = (high - low) * std::min(0.5, 2.2 * textSize() / height);
    Scale y{.from = low - 0.4 * room, .to = high + room, .step = niceStep(high - low, rows)};
    setScales({.from = first - left, .to = last + margin, .step = niceStep(last - first, parts)},
              y);
}

void ChangeFigure::resizeEvent(QGraphicsSceneResizeEvent* event) {
    Figure::resizeEvent(event);
    makeRoomForKey();
    rescale();
}

void ChangeFigure::makeRoomForKey() {
    const double height =
        m_data.along.empty() ? 0 : keyHeight(key(), textFont(0.9), size().width() - 8 * unit());
    QMargins m = margins();
    m.setTop(static_cast<int>(std::ceil(height + 6 * unit() + titleRoom())));
    if (m != margins())
        setMargins(m);
}

std::vector<KeyEntry> ChangeFigure::key() const {
    const look::Ground g = ground();
    const QString level = levelText(m_data.level);
    const auto line = [](const QPen& pen) {
        return [pen](QPainter& p, const QRectF& box) {
            p.setPen(pen);
            p.drawLine(QPointF(box.left(), box.center().y()),
                       QPointF(box.right(), box.center().y()));
        };
    };
    const auto fill = [](const QBrush& brush) {
        return [brush](QPainter& p, const QRectF& box) {
            p.fillRect(box.adjusted(0, 2, 0, -2), brush);
        };
    };
    std::vector<KeyEntry> entries{
        {tr("later − earlier"), line(look::changePen(g))},
        {tr("the reading: %1, thick %2")
             .arg(level, levelText(answers::equivalenceLevel(m_data.level))),
         [g](QPainter& p, const QRectF& box) {
             const QPointF c = box.center();
             const double half = box.height() / 2;
             const stats::Interval whole{-half, half};
             paintWhisker(
                 p,
                 {.interval = whole, .equivalence = {-0.75 * half, 0.75 * half}, .straight = whole},
                 [c](double v) { return c + QPointF(0, v); }, {3, 0}, g);
             p.setBrush(g.ink);
             p.drawEllipse(c, 2.4, 2.4);
         }}};
    if (m_data.bands) {
        entries.push_back(
            {tr("%1 of these two days").arg(level), fill(look::changeIntervalBrush(g))});
        entries.push_back({tr("%1 over all loads").arg(level), line(look::changeBandPen(g))});
    }
    if (std::ranges::any_of(m_data.readings,
                            [](const ChangeReading& r) { return bends(r.whisker); }))
        entries.push_back(
            {tr("dashed: bend"), [g](QPainter& p, const QRectF& box) {
                 paintWhisker(
                     p, {.interval = {0, box.height()}},
                     [&box](double v) { return QPointF(box.center().x(), box.top() + v); }, {3, 0},
                     g);
             }});
    if (m_data.smallest)
        entries.push_back(tooSmallKey(g, number(*m_data.smallest, 3) + u" m/s"_s));
    const auto outside = [this](const ChangePoint& p) {
        return !m_data.common || p.load < m_data.common->from || p.load > m_data.common->to;
    };
    if (m_data.notComparable)
        entries.push_back(notComparableKey(g));
    else if (std::ranges::any_of(m_data.along, outside))
        entries.push_back({tr("not lifted on both days"), [g](QPainter& p, const QRectF& box) {
                               look::hatch(p, box.adjusted(0, 1, 0, -1), g);
                           }});
    return entries;
}

void ChangeFigure::paintUnder(QPainter& painter) {
    const QRectF area = plot();
    painter.setClipRect(area);
    const auto x = [this](double load) { return toPosition(shown(load), 0).x(); };
    const double zero = toPosition(0, 0).y();
    if (m_data.smallest) {
        const double a = toPosition(0, *m_data.smallest).y(), b = 2 * zero - a;
        painter.fillRect(QRectF(area.left(), a, area.width(), b - a),
                         look::smallestBrush(ground()));
        painter.setPen(look::smallestPen(ground()));
        for (const double y : {a, b})
            painter.drawLine(QPointF(area.left(), y), QPointF(area.right(), y));
    }
    if (m_data.notComparable) {
        look::hatch(painter, area, ground());
    } else if (!m_data.along.empty()) {
        const double from = m_data.common ? x(m_data.common->from) : area.right();
        const double to = m_data.common ? x(m_data.common->to) : area.right();
        look::hatch(painter, QRectF(area.topLeft(), QPointF(from, area.bottom())), ground());
        look::hatch(painter, QRectF(QPointF(to, area.top()), area.bottomRight()), ground());
    }
    painter.setPen(look::zeroPen(ground()));
    painter.drawLine(QPointF(area.left(), zero), QPointF(area.right(), zero));
    painter.setClipping(false);
}

void ChangeFigure::paintOver(QPainter& painter) {
    const QRectF area = plot();
    if (m_data.along.empty()) {
        painter.setFont(textFont());
        painter.setPen(ground().quiet);
        painter.drawText(area, Qt::AlignCenter, tr("Nothing to compare yet"));
        return;
    }
    paintKey(painter, key(), textFont(0.9),
             QRectF(4 * unit(), 3 * unit(), size().width() - 8 * unit(), area.top()), ground().ink);
    const double zero = toPosition(0, 0).y();
    painter.setFont(textFont(0.9));
    const QPointF side(area.left() + 4 * unit(), zero);
    if (zero - area.top() > 1.5 * textSize())
        paintLabel(painter, side - QPointF(0, 2 * unit()), Qt::AlignBottom, tr("faster"), ground(),
                   ground().quiet);
    if (area.bottom() - zero > 1.5 * textSize())
        paintLabel(painter, side + QPointF(0, 2 * unit()), Qt::AlignTop, tr("slower"), ground(),
                   ground().quiet);
    paintReadings(painter);
}

void ChangeFigure::paintReadings(QPainter& painter) const {
    const QRectF area = plot();
    const double cap = 0.35 * textSize();
    painter.setFont(textFont(0.9));
    const QFontMetricsF metrics(painter.font());
    std::vector<WordedBar> bars;
    for (std::size_t i = 0; i < m_data.readings.size(); ++i) {
        const ChangeReading& r = m_data.readings[i];
        if (!std::isfinite(r.load + r.change + r.whisker.interval.low + r.whisker.interval.high))
            continue;
        const QPointF at = toPosition(shown(r.load), r.change);
        paintWhisker(
            painter, r.whisker,
            [&](double change) { return QPointF(at.x(), toPosition(0, change).y()); }, {cap, 0},
            ground());
        const bool settled = r.reading != answers::Reading::Unclear && !m_data.notComparable;
        painter.setBrush(settled ? ground().ink : ground().paper);
        painter.drawEllipse(at, 0.28 * textSize(), 0.28 * textSize());
        if (m_highlight && *m_highlight == static_cast<int>(i)) {
            painter.setPen(look::highlightPen(ground()));
            painter.setBrush(Qt::NoBrush);
            painter.drawEllipse(at, 0.75 * textSize(), 0.75 * textSize());
        }
        bars.push_back({.x = at.x(),
                        .top = toPosition(0, r.whisker.interval.high).y(),
                        .bottom = toPosition(0, r.whisker.interval.low).y(),
                        .word = r.word,
                        .checkLoad = r.checkLoad});
    }
    for (const PlacedWord& word : placeWords(
             bars, area, [](const QString& all) { return tr("all %1").arg(all); },
             [&](const QString& text) { return metrics.horizontalAdvance(text); },
             metrics.height() + 2, 0.5 * textSize()))
        paintLabel(painter, QPointF(word.box.center().x(), word.box.top()), Qt::AlignHCenter,
                   word.word, ground(), ground().ink);
}

} // namespace slopebook::ui::charts

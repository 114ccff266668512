// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squad/changes/squadforest.h"

#include "core/answers/readingwords.h"
#include "core/answers/squadmean.h"
#include "ui/charts/figure.h"
#include "ui/charts/key.h"
#include "ui/charts/plotframe.h"
#include "ui/charts/whisker.h"
#include "ui/parts/shortcombo.h"
#include "ui/words/format.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QCoreApplication>
#include <QEvent>
#include <QResizeEvent>

#include <algorithm>
#include <cmath>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

using charts::PlotFrame;

namespace {

struct SquadForestWords {
    Q_DECLARE_TR_FUNCTIONS(SquadForestWords)
};

constexpr double squadRow = 1.75, sideRoom = 0.4; // of the text's size, at the least
constexpr double highestRow = 4;                  // and at the most: the chart takes its room
constexpr double underKey = 4;
constexpr double tickRoom = 4.5; // that a tick's figure takes
constexpr int mostTicks = 8;

/// The mark of what is drawn to all, and larger that of all: a diamond.
void paintDiamond(QPainter& painter, const QPointF& at, double half, const look::Ground& ground,
                  bool filled) {
    painter.setPen(QPen(ground.ink, 1.2));
    painter.setBrush(filled ? ground.ink : ground.paper);
    painter.drawPolygon(QPolygonF{{at.x() - half, at.y()},
                                  {at.x(), at.y() - half},
                                  {at.x() + half, at.y()},
                                  {at.x(), at.y() + half}});
}

/// How many rows are painted.
double rowsOf(const SquadForest& data) {
    return static_cast<double>(data.rows.size()) + (data.all ? 1 : 0);
}

charts::Scale scaleOf(std::vector<SquadForestRow> rows, const std::optional<SquadForestRow>& all) {
    if (all)
        rows.push_back(*all);
    double low = 0, high = 0, points = 0;
    for (const SquadForestRow& row : rows)
        if (row.change)
            points = std::max({points, std::abs(*row.change), row.smallest.value_or(0)});
    // An endless whisker is cut, so that it does not press the others together.
    const double most = points > 0 ? 3 * points : 1;
    for (const SquadForestRow& row : rows) {
        if (!row.change)
            continue;
        const double m = row.smallest.value_or(0);
        low = std::min({low, std::max(row.interval.low, -most), -m});
        high = std::max({high, std::min(row.interval.high, most), m});
    }
    if (high - low < 1e-9)
        return {.from = -1, .to = 1, .step = 0.5};
    const double room = 0.04 * (high - low);
    return {.from = low - room, .to = high + room, .step = charts::niceStep(high - low, mostTicks)};
}

std::vector<charts::KeyEntry> keyOf(const SquadForest& data, const look::Ground& g) {
    std::vector<charts::KeyEntry> key{
        {SquadForestWords::tr("later − earlier, %1").arg(levelText(data.level)),
         [g](QPainter& p, const QRectF& box) {
             p.setPen(look::readingPen(g));
             p.drawLine(QPointF(box.left(), box.center().y()),
                        QPointF(box.right(), box.center().y()));
             p.setBrush(g.ink);
             p.drawEllipse(box.center(), box.height() / 5, box.height() / 5);
         }}};
    if (std::ranges::any_of(data.rows, [](const auto& r) { return r.drawn.has_value(); }))
        key.push_back(
            {SquadForestWords::tr("the same drawn to all"), [g](QPainter& p, const QRectF& box) {
                 paintDiamond(p, box.center(), box.height() / 4, g, false);
             }});
    if (data.all)
        key.push_back({SquadForestWords::tr("mean of all"), [g](QPainter& p, const QRectF& box) {
                           paintDiamond(p, box.center(), box.height() / 3, g, true);
                       }});
    if (std::ranges::any_of(data.rows, [](const auto& r) { return r.change && r.smallest; }))
        key.push_back(charts::tooSmallKey(g));
    if (std::ranges::any_of(data.rows, [](const auto& r) { return r.change && r.hollow; }))
        key.push_back({SquadForestWords::tr("extrapolated"), [g](QPainter& p, const QRectF& box) {
                           p.setPen(look::readingPen(g));
                           p.setBrush(g.paper);
                           p.drawEllipse(box.center(), box.height() / 5, box.height() / 5);
                       }});
    if (std::ranges::any_of(data.rows, &SquadForestRow::notComparable))
        key.push_back(charts::notComparableKey(g));
    return key;
}

struct Columns {
    double names = 0, words = 0;
};

Columns columnsOf(const SquadForest& data, double textSize, double width) {
    const QFontMetricsF metrics(charts::chartFont(textSize));
    Columns c;
    const auto widen = [&](const SquadForestRow& row) {
        c.names = std::max(c.names, metrics.horizontalAdvance(row.name));
        c.words = std::max(c.words, metrics.horizontalAdvance(row.word));
    };
    std::ranges::for_each(data.rows, widen);
    if (data.all)
        widen(*data.all);
    c.names = std::min(c.names + textSize, 0.3 * width);
    c.words = std::min(c.words + textSize, 0.36 * width);
    return c;
}

void paintRow(QPainter& painter, const PlotFrame& f, const SquadForestRow& row, double y,
              double high, bool ringed, bool ofAll) {
    const look::Ground& g = f.ground;
    if (row.smallest) {
        const double left = f.x(-*row.smallest), right = f.x(*row.smallest);
        painter.fillRect(QRectF(left, y - high / 2, right - left, high), look::smallestBrush(g));
    }
    const double cap = 0.3 * f.textSize;
    const double left = std::max(f.x(row.interval.low), f.area.left());
    const double right = std::min(f.x(row.interval.high), f.area.right());
    painter.setPen(look::readingPen(g));
    painter.drawLine(QPointF(left, y), QPointF(right, y));
    charts::paintWhiskerEnd(painter, {left, y}, {-1, 0}, cap, row.interval.low < f.from);
    charts::paintWhiskerEnd(painter, {right, y}, {1, 0}, cap, row.interval.high > f.to);
    if (ofAll) {
        paintDiamond(painter, {f.x(*row.change), y}, 0.45 * f.textSize, g, true);
    } else {
        painter.setBrush(row.hollow ? g.paper : g.ink);
        painter.drawEllipse(QPointF(f.x(*row.change), y), 0.28 * f.textSize, 0.28 * f.textSize);
    }
    if (row.drawn)
        paintDiamond(painter, {f.x(*row.drawn), y}, 0.3 * f.textSize, g, false);
    if (ringed) {
        painter.setPen(look::highlightPen(g));
        painter.setBrush(Qt::NoBrush);
        painter.drawEllipse(QPointF(f.x(*row.change), y), 0.7 * f.textSize, 0.7 * f.textSize);
    }
}

/// Why there is no change; hatched where there is one that may not be read.
void paintReason(QPainter& painter, const PlotFrame& f, const SquadForestRow& row, double y,
                 double side) {
    const double height = 0.84 * squadRow * f.textSize;
    if (row.notComparable)
        look::hatch(painter, QRectF(f.area.left(), y - height / 2, f.area.width(), height),
                    f.ground);
    charts::paintLabel(
        painter, {f.area.left() + side, y}, Qt::AlignVCenter,
        firstPartsOf(row.reason, QFontMetricsF(painter.font()), f.area.width() - 2 * side),
        f.ground, f.ground.quiet);
}

double keyRoom(const SquadForest& data, double textSize, double width) {
    return charts::keyHeight(keyOf(data, look::paperGround()), charts::chartFont(textSize, 0.9),
                             width);
}

/// A text of its own: of what is unclear, with what such tests could have shown.
QString toldOf(const answers::ReadChange& read, bool mass, LoadUnit unit) {
    if (read.reading != answers::Reading::Unclear)
        return said(answers::shortReading(read));
    return said(mass ? answers::maxCell(read) : answers::speedCell(read), unit);
}

void fillChange(SquadForestRow& row, const answers::ReadChange& read, bool mass, LoadUnit unit) {
    const auto scaled = [&](double v) { return mass ? inUnit(v, unit) : v; };
    row.change = scaled(read.change);
    row.interval = {scaled(read.interval.low), scaled(read.interval.high)};
    if (read.smallest)
        row.smallest = scaled(read.smallest->value);
    row.reading = read.reading;
    row.word = said(read.reading == answers::Reading::Unclear ? answers::sizedReading(read)
                                                              : answers::shortReading(read));
    row.told = toldOf(read, mass, unit);
}

} // namespace

SquadForest squadForest(const answers::SquadPart& part, double level, LoadUnit unit) {
    SquadForest data{.level = level};
    const bool mass = !part.load.has_value();
    const auto scaled = [&](double v) { return mass ? inUnit(v, unit) : v; };
    data.title = mass ? SquadForestWords::tr("Change of the estimated 1RM (%1)").arg(unitName(unit))
                      : SquadForestWords::tr("Change of speed at %1 (m/s)")
                            .arg(loadWithUnit(kilograms(*part.load), unit));
    const auto mean = answers::squadMean(part, level);
    for (const answers::SquadRow& r : part.rows) {
        SquadForestRow row{.name = text(r.name), .hollow = r.extrapolated};
        if (const auto drawn = answers::drawnOf(mean, r.athlete))
            row.drawn = scaled(drawn->drawn);
        if (r.read) {
            fillChange(row, *r.read, mass, unit);
        } else {
            row.notComparable = r.read.why().why == NoAnswer::Why::NotComparable;
            row.word = row.notComparable ? SquadForestWords::tr("not comparable")
                                         : said(answers::readingWords(answers::Reading::NoFigure));
            row.reason = noAnswerText(r.read.why(), unit);
        }
        data.rows.push_back(std::move(row));
    }
    if (mean) {
        SquadForestRow all{.name = SquadForestWords::tr("All (%1)").arg(mean->athletes)};
        fillChange(all, *mean->read, mass, unit);
        all.smallest.reset(); // its strip is the athletes'
        data.all = std::move(all);
    }
    data.scale = scaleOf(data.rows, data.all);
    return data;
}

SquadForest squadForestRows(const SquadForest& data, std::size_t first, std::size_t last) {
    SquadForest some = data;
    if (last < data.rows.size())
        some.all.reset();
    last = std::min(last, data.rows.size());
    some.rows.assign(data.rows.begin() + static_cast<std::ptrdiff_t>(first),
                     data.rows.begin() + static_cast<std::ptrdiff_t>(last));
    return some;
}

namespace {
/// All but the rows.
double aroundRows(const SquadForest& data, double textSize, double width) {
    const double side = sideRoom * textSize;
    return side + keyRoom(data, textSize, width - 2 * side) + underKey +
           charts::xAxisRoom(textSize, true) + textSize;
}
} // namespace

double squadForestHeight(const SquadForest& data, double textSize, double width) {
    return aroundRows(data, textSize, width) + squadRow * textSize * rowsOf(data);
}

void paintSquadForest(QPainter& painter, const QRectF& target, const SquadForest& data,
                      const look::Ground& ground, double textSize, std::optional<int> ringed) {
    painter.setFont(charts::chartFont(textSize));
    if (data.rows.empty()) {
        painter.setPen(ground.quiet);
        painter.drawText(target, Qt::AlignCenter | Qt::TextWordWrap,
                         data.empty.isEmpty() ? SquadForestWords::tr("Nobody to compare yet")
                                              : data.empty);
        return;
    }
    const double side = sideRoom * textSize;
    const Columns columns = columnsOf(data, textSize, target.width());
    const double key = keyRoom(data, textSize, target.width() - 2 * side);
    const double high =
        std::clamp((target.height() - aroundRows(data, textSize, target.width())) / rowsOf(data),
                   squadRow * textSize, highestRow * textSize);
    charts::paintKey(painter, keyOf(data, ground), charts::chartFont(textSize, 0.9),
                     target.adjusted(side, side, -side, 0), ground.ink);
    PlotFrame f{.from = data.scale.from,
                .to = data.scale.to,
                .y = {.from = 0, .to = 1, .step = 1},
                .ground = ground,
                .textSize = textSize};
    f.area =
        QRectF(QPointF(target.left() + side + columns.names, target.top() + side + key + underKey),
               QPointF(target.right() - columns.words - side,
                       target.top() + side + key + underKey + high * rowsOf(data)));
    // In a narrow window fewer ticks, so that their figures stand apart.
    const int most = static_cast<int>(f.area.width() / (tickRoom * textSize));
    f.paintXAxis(painter, data.title,
                 most < mostTicks
                     ? std::max(data.scale.step, charts::niceStep(data.scale.to - data.scale.from,
                                                                  std::max(2, most)))
                     : data.scale.step);
    painter.setPen(look::zeroPen(ground));
    painter.drawLine(QPointF(f.x(0), f.area.top()), QPointF(f.x(0), f.area.bottom()));
    const QFontMetricsF metrics(charts::chartFont(textSize));
    const auto paint = [&](const SquadForestRow& row, std::size_t place, bool edge, bool ofAll) {
        const double y = f.area.top() + high * (static_cast<double>(place) + 0.5);
        if (edge) {
            painter.setPen(look::checkLoadPen(ground));
            const double above = y - high / 2;
            painter.drawLine(QPointF(target.left() + side, above),
                             QPointF(target.right() - side, above));
        }
        const bool ring = ringed && *ringed == static_cast<int>(place);
        painter.setFont(charts::chartFont(textSize, 1, ring || ofAll));
        const double base = y + metrics.ascent() / 2 - metrics.descent() / 2;
        painter.setPen(ground.ink);
        painter.drawText(QPointF(target.left() + side, base),
                         metrics.elidedText(row.name, Qt::ElideRight, columns.names - side));
        painter.setPen(row.change ? ground.ink : ground.quiet);
        painter.drawText(QPointF(f.area.right() + side, base),
                         firstPartsOf(row.word, metrics, columns.words));
        painter.setFont(charts::chartFont(textSize, 0.9));
        if (row.change)
            paintRow(painter, f, row, y, high, ring, ofAll);
        else
            paintReason(painter, f, row, y, side);
    };
    for (std::size_t i = 0; i < data.rows.size(); ++i)
        paint(data.rows[i], i, i > 0 && data.rows[i].reading != data.rows[i - 1].reading, false);
    if (data.all)
        paint(*data.all, data.rows.size(), true, true);
    f.paintOutline(painter);
}

void SquadForestChart::setData(SquadForest data) {
    m_data = std::move(data);
    m_ringed.reset();
    describe();
    fitHeight();
    update();
}

void SquadForestChart::setRinged(std::optional<int> row) {
    m_ringed = row;
    update();
}

QSizeF SquadForestChart::paperSize() const {
    constexpr double width = 480;
    return {width, squadForestHeight(m_data, charts::paperTextSize, width)};
}

charts::FigureTable SquadForestChart::figures() const {
    charts::FigureTable table{.headings = {SquadForestWords::tr("Athlete"), m_data.title,
                                           readAgainst(SquadForestWords::tr("Interval")),
                                           SquadForestWords::tr("Drawn to all"),
                                           SquadForestWords::tr("Reading")}};
    const int decimals = m_data.scale.decimals() + 1;
    const auto add = [&](const SquadForestRow& row) {
        table.rows.push_back({row.name,
                              row.change ? signedNumber(*row.change, decimals) : QString(),
                              row.change ? signedRangeText(row.interval, decimals) : QString(),
                              row.drawn ? signedNumber(*row.drawn, decimals) : QString(),
                              row.change ? row.told : row.reason});
    };
    std::ranges::for_each(m_data.rows, add);
    if (m_data.all)
        add(*m_data.all);
    return table;
}

void SquadForestChart::fitHeight() {
    setMinimumHeight(static_cast<int>(std::ceil(squadForestHeight(m_data, textSize(), width()))));
    updateGeometry();
}

QSize SquadForestChart::sizeHint() const {
    return {640, minimumHeight()};
}

void SquadForestChart::paintChart(QPainter& painter, const QRectF& target,
                                  const look::Ground& ground, double textSize,
                                  bool onScreen) const {
    paintSquadForest(painter, target, m_data, ground, textSize, onScreen ? m_ringed : std::nullopt);
}

void SquadForestChart::resizeEvent(QResizeEvent* event) {
    PaintedChart::resizeEvent(event);
    if (event->oldSize().width() != event->size().width())
        fitHeight(); // the key wraps
}

void SquadForestChart::changeEvent(QEvent* event) {
    PaintedChart::changeEvent(event);
    if (event->type() == QEvent::FontChange)
        fitHeight();
}

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squad/changes/squadforest.h"

#include "core/answers/readingwords.h"
#include "ui/charts/figure.h"
#include "ui/charts/key.h"
#include "ui/charts/plotframe.h"
#include "ui/parts/shortcombo.h"
#include "ui/words/format.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QCoreApplication>
#include <QEvent>

#include <algorithm>
#include <cmath>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

using charts::PlotFrame;

namespace {

struct SquadForestWords {
    Q_DECLARE_TR_FUNCTIONS(SquadForestWords)
};

constexpr double squadRow = 1.75; // of the text's size

charts::Scale scaleOf(const std::vector<SquadForestRow>& rows) {
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
    return {.from = low - room, .to = high + room, .step = charts::niceStep(high - low, 8)};
}

std::vector<charts::KeyEntry> keyOf(const SquadForest& data, const look::Ground& g) {
    std::vector<charts::KeyEntry> key{
        {SquadForestWords::tr("change (later − earlier), %1 interval with day-to-day noise")
             .arg(levelText(data.level)),
         [g](QPainter& p, const QRectF& box) {
             p.setPen(look::readingPen(g));
             p.drawLine(QPointF(box.left(), box.center().y()),
                        QPointF(box.right(), box.center().y()));
             p.setBrush(g.ink);
             p.drawEllipse(box.center(), box.height() / 5, box.height() / 5);
         }}};
    if (std::ranges::any_of(data.rows, [](const auto& r) { return r.change && r.smallest; }))
        key.push_back({SquadForestWords::tr("below the smallest change that matters"),
                       [g](QPainter& p, const QRectF& box) {
                           p.fillRect(box.adjusted(0, 2, 0, -2), look::smallestBrush(g));
                       }});
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
    for (const SquadForestRow& row : data.rows) {
        c.names = std::max(c.names, metrics.horizontalAdvance(row.name));
        c.words = std::max(c.words, metrics.horizontalAdvance(row.word));
    }
    c.names = std::min(c.names + textSize, 0.3 * width);
    c.words = std::min(c.words + textSize, 0.36 * width);
    return c;
}

void paintRow(QPainter& painter, const PlotFrame& f, const SquadForestRow& row, double y,
              bool ringed) {
    const look::Ground& g = f.ground;
    if (row.smallest) {
        const double left = f.x(-*row.smallest), right = f.x(*row.smallest);
        painter.fillRect(
            QRectF(left, y - squadRow * f.textSize / 2, right - left, squadRow * f.textSize),
            look::smallestBrush(g));
    }
    const double cap = 0.3 * f.textSize;
    const double left = std::max(f.x(row.interval.low), f.area.left());
    const double right = std::min(f.x(row.interval.high), f.area.right());
    painter.setPen(look::readingPen(g));
    painter.drawLine(QPointF(left, y), QPointF(right, y));
    for (const auto& [end, inside] :
         {std::pair{left, row.interval.low >= f.from}, {right, row.interval.high <= f.to}})
        if (inside)
            painter.drawLine(QPointF(end, y - cap), QPointF(end, y + cap));
    painter.setBrush(row.hollow ? g.paper : g.ink);
    painter.drawEllipse(QPointF(f.x(*row.change), y), 0.28 * f.textSize, 0.28 * f.textSize);
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

} // namespace

SquadForest squadForest(const answers::SquadPart& part, double level, LoadUnit unit) {
    SquadForest data{.level = level};
    const bool mass = !part.load.has_value();
    const auto scaled = [&](double v) { return mass ? inUnit(v, unit) : v; };
    data.title = mass ? SquadForestWords::tr("Change of the estimated 1RM (%1)").arg(unitName(unit))
                      : SquadForestWords::tr("Change of speed at %1 (m/s)")
                            .arg(loadWithUnit(kilograms(*part.load), unit));
    for (const answers::SquadRow& r : part.rows) {
        SquadForestRow row{.name = text(r.name), .hollow = r.extrapolated};
        if (r.read) {
            row.change = scaled(r.read->change);
            row.interval = {scaled(r.read->interval.low), scaled(r.read->interval.high)};
            if (r.read->smallest)
                row.smallest = scaled(r.read->smallest->value);
            row.reading = r.read->reading;
            row.word =
                said(r.read->reading == answers::Reading::Unclear ? answers::sizedReading(*r.read)
                                                                  : answers::shortReading(*r.read));
            row.told = toldOf(*r.read, mass, unit);
        } else {
            row.notComparable = r.read.why().why == NoAnswer::Why::NotComparable;
            row.word = row.notComparable ? SquadForestWords::tr("not comparable")
                                         : said(answers::readingWords(answers::Reading::NoFigure));
            row.reason = noAnswerText(r.read.why(), unit);
        }
        data.rows.push_back(std::move(row));
    }
    data.scale = scaleOf(data.rows);
    return data;
}

SquadForest squadForestRows(const SquadForest& data, std::size_t first, std::size_t last) {
    SquadForest some = data;
    last = std::min(last, data.rows.size());
    some.rows.assign(data.rows.begin() + static_cast<std::ptrdiff_t>(first),
                     data.rows.begin() + static_cast<std::ptrdiff_t>(last));
    return some;
}

double squadForestHeight(const SquadForest& data, double textSize) {
    // The key may wrap once in a narrow window.
    return squadRow * textSize * static_cast<double>(data.rows.size()) +
           charts::xAxisRoom(textSize, true) + 4.5 * textSize;
}

void paintSquadForest(QPainter& painter, const QRectF& target, const SquadForest& data,
                      const look::Ground& ground, double textSize, std::optional<int> ringed) {
    painter.setFont(charts::chartFont(textSize));
    if (data.rows.empty()) {
        painter.setPen(ground.quiet);
        painter.drawText(target, Qt::AlignCenter, SquadForestWords::tr("Nobody to compare yet"));
        return;
    }
    const double side = 0.4 * textSize;
    const Columns columns = columnsOf(data, textSize, target.width());
    const double key = keyRoom(data, textSize, target.width() - 2 * side);
    charts::paintKey(painter, keyOf(data, ground), charts::chartFont(textSize, 0.9),
                     target.adjusted(side, side, -side, 0), ground.ink);
    PlotFrame f{.from = data.scale.from,
                .to = data.scale.to,
                .y = {.from = 0, .to = 1, .step = 1},
                .ground = ground,
                .textSize = textSize};
    f.area = QRectF(QPointF(target.left() + side + columns.names, target.top() + side + key + 4),
                    QPointF(target.right() - columns.words - side,
                            target.top() + side + key + 4 +
                                squadRow * textSize * static_cast<double>(data.rows.size())));
    f.paintXAxis(painter, data.title, data.scale.step);
    painter.setPen(look::zeroPen(ground));
    painter.drawLine(QPointF(f.x(0), f.area.top()), QPointF(f.x(0), f.area.bottom()));
    const QFontMetricsF metrics(charts::chartFont(textSize));
    for (std::size_t i = 0; i < data.rows.size(); ++i) {
        const SquadForestRow& row = data.rows[i];
        const double y = f.area.top() + squadRow * textSize * (static_cast<double>(i) + 0.5);
        if (i > 0 && row.reading != data.rows[i - 1].reading) {
            painter.setPen(look::checkLoadPen(ground));
            const double edge = y - squadRow * textSize / 2;
            painter.drawLine(QPointF(target.left() + side, edge),
                             QPointF(target.right() - side, edge));
        }
        const bool ring = ringed && *ringed == static_cast<int>(i);
        painter.setFont(charts::chartFont(textSize, 1, ring));
        const double base = y + metrics.ascent() / 2 - metrics.descent() / 2;
        painter.setPen(ground.ink);
        painter.drawText(QPointF(target.left() + side, base),
                         metrics.elidedText(row.name, Qt::ElideRight, columns.names - side));
        painter.setPen(row.change ? ground.ink : ground.quiet);
        painter.drawText(QPointF(f.area.right() + side, base),
                         firstPartsOf(row.word, metrics, columns.words));
        painter.setFont(charts::chartFont(textSize, 0.9));
        if (row.change)
            paintRow(painter, f, row, y, ring);
        else
            paintReason(painter, f, row, y, side);
    }
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
    return {480, squadForestHeight(m_data, charts::paperTextSize)};
}

charts::FigureTable SquadForestChart::figures() const {
    charts::FigureTable table{.headings = {SquadForestWords::tr("Athlete"), m_data.title,
                                           SquadForestWords::tr("Interval"),
                                           SquadForestWords::tr("Reading")}};
    for (const SquadForestRow& row : m_data.rows)
        table.rows.push_back(
            {row.name,
             row.change ? signedNumber(*row.change, m_data.scale.decimals() + 1) : QString(),
             row.change ? signedRangeText(row.interval, m_data.scale.decimals() + 1) : QString(),
             row.change ? row.told : row.reason});
    return table;
}

void SquadForestChart::fitHeight() {
    setMinimumHeight(static_cast<int>(std::ceil(squadForestHeight(m_data, textSize()))));
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

void SquadForestChart::changeEvent(QEvent* event) {
    PaintedChart::changeEvent(event);
    if (event->type() == QEvent::FontChange)
        fitHeight();
}

} // namespace slopebook::ui

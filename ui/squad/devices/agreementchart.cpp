// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squad/devices/agreementchart.h"

#include "ui/charts/figure.h"
#include "ui/charts/plotframe.h"
#include "ui/words/units.h"

#include <QCoreApplication>

#include <algorithm>

namespace slopebook::ui {

using charts::PlotFrame;

namespace {

struct AgreementWords {
    Q_DECLARE_TR_FUNCTIONS(AgreementWords)
};

PlotFrame frameOf(const QRectF& target, const AgreementData& data, const look::Ground& ground,
                  double textSize) {
    PlotFrame f{.ground = ground, .textSize = textSize};
    f.area = QRectF(QPointF(target.left() + charts::yAxisRoom(textSize) + 0.4 * textSize,
                            target.top() + 0.8 * textSize),
                    QPointF(target.right() - 9 * textSize,
                            target.bottom() - charts::xAxisRoom(textSize, true)));
    const auto [least, most] =
        std::ranges::minmax_element(data.sets, {}, &AgreementData::Set::mean);
    const charts::Scale x = charts::niceScale(least->mean, most->mean, 8);
    f.from = x.from;
    f.to = x.to;
    double low = std::min({0.0, data.lower.low, data.upper.low});
    double high = std::max({0.0, data.upper.high, data.lower.high});
    for (const AgreementData::Set& set : data.sets) {
        low = std::min(low, set.difference);
        high = std::max(high, set.difference);
    }
    f.y = charts::niceScale(low, high, 8);
    return f;
}

/// A line over the whole width, its interval as a strip, its name and value at the right.
void paintLevel(QPainter& painter, const PlotFrame& f, double value,
                const stats::Interval& interval, const QPen& pen, const QString& name) {
    const double top = f.yOf(std::min(interval.high, f.y.to));
    const double bottom = f.yOf(std::max(interval.low, f.y.from));
    painter.fillRect(QRectF(f.area.left(), top, f.area.width(), bottom - top),
                     look::changeIntervalBrush(f.ground));
    painter.setPen(pen);
    painter.drawLine(QPointF(f.area.left(), f.yOf(value)), QPointF(f.area.right(), f.yOf(value)));
    painter.setFont(charts::chartFont(f.textSize, 0.9));
    const QFontMetricsF metrics(painter.font());
    painter.setPen(f.ground.ink);
    const double left = f.area.right() + 0.4 * f.textSize;
    painter.drawText(QPointF(left, f.yOf(value) - metrics.descent()), name);
    painter.drawText(QPointF(left, f.yOf(value) + metrics.ascent()), signedNumber(value, 3));
}

} // namespace

AgreementData agreementData(const answers::AgreementStudy& study, const QString& first,
                            const QString& second) {
    AgreementData data{.first = first,
                       .second = second,
                       .bias = study.figures.bias,
                       .biasInterval = study.figures.biasInterval,
                       .limits = study.figures.limits,
                       .lower = study.figures.lowerLimitInterval,
                       .upper = study.figures.upperLimitInterval,
                       .level = study.level};
    for (const answers::PairedSet& set : study.sets)
        data.sets.push_back({.mean = set.mean(), .difference = set.difference()});
    return data;
}

void paintAgreement(QPainter& painter, const QRectF& target, const AgreementData& data,
                    const look::Ground& ground, double textSize, std::optional<int> ringed) {
    painter.setFont(charts::chartFont(textSize));
    if (data.sets.empty()) {
        painter.setPen(ground.quiet);
        painter.drawText(target, Qt::AlignCenter, AgreementWords::tr("No sets seen by both"));
        return;
    }
    const PlotFrame f = frameOf(target, data, ground, textSize);
    const charts::Scale x{.from = f.from, .to = f.to, .step = charts::niceStep(f.to - f.from, 8)};
    f.paintXAxis(painter,
                 AgreementWords::tr("Mean of %1 and %2 (m/s)").arg(data.first, data.second),
                 x.step);
    f.paintYAxis(painter, AgreementWords::tr("%1 − %2 (m/s)").arg(data.first, data.second));
    painter.setPen(look::zeroPen(ground));
    painter.drawLine(QPointF(f.area.left(), f.yOf(0)), QPointF(f.area.right(), f.yOf(0)));
    paintLevel(painter, f, data.bias, data.biasInterval, look::changePen(ground),
               AgreementWords::tr("bias"));
    paintLevel(painter, f, data.limits.low, data.lower, look::changeBandPen(ground),
               AgreementWords::tr("lower limit"));
    paintLevel(painter, f, data.limits.high, data.upper, look::changeBandPen(ground),
               AgreementWords::tr("upper limit"));
    for (std::size_t i = 0; i < data.sets.size(); ++i) {
        const QPointF at = f.at(data.sets[i].mean, data.sets[i].difference);
        painter.setPen(QPen(ground.paper, 0.8));
        painter.setBrush(ground.ink);
        painter.drawEllipse(at, 0.3 * textSize, 0.3 * textSize);
        if (ringed && *ringed == static_cast<int>(i)) {
            painter.setPen(look::highlightPen(ground));
            painter.setBrush(Qt::NoBrush);
            painter.drawEllipse(at, 0.75 * textSize, 0.75 * textSize);
        }
    }
    f.paintOutline(painter);
}

void AgreementChart::setData(AgreementData data) {
    m_data = std::move(data);
    m_ringed.reset();
    describe();
    update();
}

charts::FigureTable AgreementChart::figures() const {
    charts::FigureTable table{
        .headings = {AgreementWords::tr("What it is"),
                     AgreementWords::tr("Mean of %1 and %2 (m/s)").arg(m_data.first, m_data.second),
                     AgreementWords::tr("%1 − %2 (m/s)").arg(m_data.first, m_data.second)}};
    if (m_data.sets.empty())
        return table;
    const auto level = [&](const QString& name, double value, const stats::Interval& interval) {
        table.rows.push_back({name, QString(),
                              signedNumber(value, 3) + QStringLiteral(" (") +
                                  signedRangeText(interval, 3) + QLatin1Char(')')});
    };
    level(AgreementWords::tr("bias"), m_data.bias, m_data.biasInterval);
    level(AgreementWords::tr("lower limit"), m_data.limits.low, m_data.lower);
    level(AgreementWords::tr("upper limit"), m_data.limits.high, m_data.upper);
    for (const AgreementData::Set& set : m_data.sets)
        table.rows.push_back(
            {AgreementWords::tr("set"), number(set.mean, 3), signedNumber(set.difference, 3)});
    return table;
}

void AgreementChart::setRinged(std::optional<int> set) {
    m_ringed = set;
    update();
}

void AgreementChart::paintChart(QPainter& painter, const QRectF& target, const look::Ground& ground,
                                double textSize, bool onScreen) const {
    paintAgreement(painter, target, m_data, ground, textSize, onScreen ? m_ringed : std::nullopt);
}

} // namespace slopebook::ui

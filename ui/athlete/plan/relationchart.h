// SPDX-License-Identifier: GPL-3.0-or-later
// The squad's own relation of %1RM to velocity: points, curve, prediction band, and the published
// equation beside it.
#pragma once

#include "core/answers/squadrelation.h"
#include "ui/charts/chartview.h"
#include "ui/charts/figure.h"

#include <QAreaSeries>
#include <QLineSeries>
#include <QScatterSeries>

namespace slopebook::ui::charts {

struct RelationData {
    std::optional<answers::SquadRelation> squad = {};
    std::optional<answers::PublishedRelation> published = {};
};

class LabelRoom;

class RelationFigure : public Figure {
    Q_OBJECT
public:
    RelationFigure();
    ~RelationFigure() override;
    void setData(const RelationData& data);
    const RelationData& data() const { return m_data; }

protected:
    void dress() override;
    void paintUnder(QPainter& painter) override;
    void paintOver(QPainter& painter) override;

private:
    struct Named {
        const QLineSeries* series;
        QString words;
    };
    /// px, up and down, where they are farthest apart.
    double farthest(const QLineSeries& one, const QLineSeries& other) const;
    double off(const QRectF& box, const QLineSeries& series) const;
    void nameBand(QPainter& painter, LabelRoom& room) const;
    void nameBeside(QPainter& painter, LabelRoom& room, const Named& named,
                    const std::vector<Named>& all) const;

    RelationData m_data;
    // The edges outlive the area that borrows them.
    QLineSeries m_upper, m_lower;
    QAreaSeries* m_band;
    QLineSeries* m_line;
    QLineSeries* m_curve;
    QLineSeries* m_published;
    QScatterSeries* m_points;
};

class RelationChart : public ChartView {
    Q_OBJECT
public:
    explicit RelationChart(QWidget* parent = nullptr);
    void setData(const RelationData& shown);
    const RelationFigure& figure() const { return *m_figure; }
    FigureTable figures() const override;

protected:
    std::unique_ptr<Figure> paperFigure() const override;

private:
    RelationChart(RelationFigure* figure, QWidget* parent);
    RelationFigure* m_figure;
};

} // namespace slopebook::ui::charts

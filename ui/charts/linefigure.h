// SPDX-License-Identifier: GPL-3.0-or-later
// The drawing of load against velocity: points, lines, bands, threshold, 1RM whiskers, check loads.
#pragma once

#include "ui/charts/figure.h"
#include "ui/charts/labelroom.h"
#include "ui/charts/linedata.h"

#include <QAreaSeries>
#include <QHash>
#include <QLineSeries>
#include <QScatterSeries>

#include <deque>

namespace slopebook::ui::charts {

/// A point of the figure: which session, and which of its points.
struct PointRef {
    int session = 0, point = 0;
    friend bool operator==(const PointRef&, const PointRef&) = default;
};

class LineFigure : public Figure {
    Q_OBJECT
public:
    LineFigure();
    ~LineFigure() override;

    /// Shows the data; only what differs from what is shown is replaced. Points that are not finite
    /// are left out.
    void setData(const LineData& data);
    const LineData& data() const { return m_data; }
    void setHighlight(std::optional<PointRef> point);

Q_SIGNALS:
    void pointClicked(slopebook::ui::charts::PointRef point);

protected:
    void dress() override;
    void paintUnder(QPainter& painter) override;
    void paintOver(QPainter& painter) override;
    void resizeEvent(QGraphicsSceneResizeEvent* event) override;
    void repaintLayers() override;

private:
    // Edges are declared beside the area that borrows them: they live as long as it does.
    struct Items {
        QLineSeries* upper = nullptr;
        QLineSeries* lower = nullptr;
        QAreaSeries* band = nullptr;
        QLineSeries* below = nullptr;
        QLineSeries* beyond = nullptr;
        QLineSeries* line = nullptr;
        QScatterSeries* excluded = nullptr;
        QScatterSeries* points = nullptr;
        std::size_t session = 0; ///< which of the data it shows
        std::optional<LineEntry> shown;
    };
    Items makeItems();
    void dropItems(Items& items);
    void makeItemsFor(std::size_t sessions, bool besideStill);
    void show(Items& items, const LineEntry& entry);
    void dress(Items& items);
    void clicked(const QScatterSeries* series, const QPointF& at, bool excluded);
    /// Whether that changed the scales. Where the sheet is the same, they stay as long as they have
    /// room for what is shown: a set more moves no line that stands.
    bool rescale(bool sameSheet);
    bool hasRoom(double low, double high, const Scale& x, const Scale& y) const;
    void paintStill(QPainter& painter) const;
    double markerSize(const look::Role& role) const {
        return look::markerSize(role) * 0.8 * textSize();
    }
    double labelRoom() const;
    double plotWidth() const; ///< about
    /// Of a name in ordinary text; measured once.
    double widthOf(const QString& label) const;
    LabelRoom roomOfPoints() const;
    void paintLabels(QPainter& painter, LabelRoom& room) const;
    void paintNotLifted(QPainter& painter, LabelRoom& room) const;
    /// Its name at either end of it; no label stands on it then.
    void paintMvt(QPainter& painter, LabelRoom& room) const;
    void paintLoads(QPainter& painter, LabelRoom& room) const;
    /// What a hollow point is, beside it.
    void paintLeftOut(QPainter& painter, LabelRoom room) const;
    void paintOneRms(QPainter& painter, LabelRoom& room) const;
    QStringList oneRmTexts(const OneRmMark& mark) const;
    /// Where its whisker stands.
    QRectF paintOneRm(QPainter& painter, const LineEntry& entry, double row) const;
    /// One of the texts, the longest that has room, in the first of the places that has it: left of
    /// a box, right of it, above its left or below it.
    void paintBeside(QPainter& painter, LabelRoom& room, const QRectF& box,
                     const QStringList& texts, const QColor& ink) const;
    double start() const;
    double shown(double kilogram) const { return inUnit(kilogram, m_data.unit); }

    LineData m_data;
    bool m_shown = false; ///< the data, at all
    std::unique_ptr<Layer> m_still;
    std::vector<LineEntry> m_painted; ///< what stands on the sheet
    std::deque<Items> m_items;        ///< of the sessions that are not still
    std::optional<PointRef> m_highlight;
    mutable QHash<QString, double> m_widths; ///< of names, in text of that size
    mutable double m_widthsAt = 0;
};

} // namespace slopebook::ui::charts

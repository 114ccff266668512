// SPDX-License-Identifier: GPL-3.0-or-later
// A plain timeline: training blocks as bars with their load ceilings, an athlete's sessions as
// marks below, hollow where something was not possible.
#pragma once

#include "core/model/people.h"
#include "ui/charts/chartout.h"
#include "ui/words/units.h"

#include <QWidget>

#include <optional>
#include <vector>

namespace slopebook::ui {

namespace charts {
class ChartMenu;
}

struct TimelineSession {
    Date date{};
    bool missing = false; ///< something was not possible
    QString tip{};
};

class Timeline final : public QWidget, public charts::ChartOut {
    Q_OBJECT
public:
    /// unit: of the ceilings.
    explicit Timeline(LoadUnit unit, QWidget* parent = nullptr);

    void show(std::vector<Block> blocks, std::vector<TimelineSession> sessions);
    void setCurrent(int block); ///< -1: none
    int lanes() const { return m_lanes; }

    charts::FigureTable figures() const override;
    void paintPaper(QPainter& painter, const QRectF& target, const QSizeF& points) const override;
    QSizeF paperSize() const override;
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return {320, heightAt(width())}; }
    /// Every block's words stand in its bar, whole.
    bool showsAllWords() const;
    /// Where a block's bar stands, for tests and clicks.
    QRectF barOf(int block) const;

Q_SIGNALS:
    void blockClicked(int block);
    void widthChanged(); ///< and with it the height that the words ask for

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    bool event(QEvent* event) override;

private:
    QPointF markOf(int session) const;
    void layOut();
    int heightAt(int width) const; ///< that the words ask for
    double barHeight(int width) const;
    double barHeight() const { return barHeight(width()); }
    double top() const; ///< px, of the months
    double barWidth(int block, int width) const;
    struct Told {
        double height = 0; ///< of the lines that fit into such a width
        bool whole = true; ///< none of them is cut or left out
    };
    Told told(int block, int width) const;
    double x(long day) const;
    double lineHeight() const;
    void paintMonths(QPainter& painter) const;
    void paintBar(QPainter& painter, int block) const;
    void paintMarks(QPainter& painter) const;
    QStringList linesOf(const Block& block) const;

    charts::ChartMenu* m_menu;
    LoadUnit m_unit;
    std::vector<Block> m_blocks;
    std::vector<TimelineSession> m_sessions;
    std::vector<int> m_lane; ///< of each block: overlapping blocks stand below each other
    int m_lanes = 1;
    int m_current = -1;
    std::optional<Date> m_first;
    long m_days = 1;
};

} // namespace slopebook::ui

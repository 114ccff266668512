// SPDX-License-Identifier: GPL-3.0-or-later
// A trace drawn with its marks, which mouse and keys move: Tab goes to the next mark, left and
// right move it by a sample (with Shift by ten), plus and minus zoom.
#pragma once

#include "core/traces/analysis.h"
#include "ui/charts/chartout.h"

#include <QWidget>

#include <optional>

namespace slopebook::ui {

class TraceView final : public QWidget, public charts::ChartOut {
    Q_OBJECT
public:
    explicit TraceView(QWidget* parent = nullptr);

    /// Does not own; the analysis must outlive what is shown. Null: nothing shown.
    void show(const traces::Analysis* analysis, std::size_t event);
    /// After marks have moved elsewhere.
    void marksChanged();
    int currentMark() const { return m_mark; }
    void setCurrentMark(int mark);

    charts::FigureTable figures() const override;
    void paintPaper(QPainter& painter, const QRectF& target, const QSizeF& points) const override;
    QSizeF paperSize() const override { return {480, 220}; }
    QSize sizeHint() const override { return {820, 300}; }
    QSize minimumSizeHint() const override { return {360, 180}; }
    /// Where a mark stands in the widget, for tests.
    QPointF markPosition(int mark) const;

Q_SIGNALS:
    void markMoved(int mark, double time);
    void currentMarkChanged(int mark);

protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    QRectF plot() const;
    double xOf(double time) const;
    double timeAt(double x) const;
    double yOf(double value) const;
    void zoom(double factor, double around);
    void fit();
    void step(double samples);
    void paintCurve(QPainter& painter) const;
    void paintAxes(QPainter& painter) const;
    void paintMarks(QPainter& painter) const;
    void say();

    const traces::Analysis* m_analysis = nullptr;
    std::size_t m_event = 0;
    std::vector<traces::Mark> m_marks;
    int m_mark = 0;
    bool m_dragging = false;
    double m_from = 0, m_to = 1; // seconds shown
    double m_low = 0, m_high = 1;
};

} // namespace slopebook::ui

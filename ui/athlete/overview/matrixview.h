// SPDX-License-Identifier: GPL-3.0-or-later
// A season's matrix in the window: a table whose arrow keys walk the cells, each painted as on
// paper.
#pragma once

#include "ui/athlete/overview/matrixmodel.h"
#include "ui/athlete/overview/measureways.h"

#include <QTableView>

namespace slopebook::ui {

namespace charts {
class ChartMenu;
}
class MatrixHead;

class MatrixView final : public QTableView, public charts::ChartOut {
    Q_OBJECT
public:
    explicit MatrixView(QWidget* parent = nullptr);

    /// What was gone to stays, by its names, where it is still there; else the last block.
    void setFigure(MatrixFigure figure);
    const MatrixFigure& figure() const { return m_model.figure(); }
    struct At {
        std::size_t measure = 0, block = 0;
    };
    std::optional<At> current() const;
    /// Whether the width leaves room for bars beside figures and readings.
    bool hasBars() const { return m_bars; }

    charts::FigureTable figures() const override { return matrixTexts(figure()); }
    void paintPaper(QPainter& painter, const QRectF& target, const QSizeF& points) const override;
    QSizeF paperSize() const override;

Q_SIGNALS:
    /// Of the cell that is gone to; empty: none.
    void cellChanged(const QString& spoken);
    void wayWanted(slopebook::ui::Way way);
    /// The others are to be read against the block of the cell.
    void chosenWanted();
    void barsChanged();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;

private:
    void fitColumns();
    void fitRows();

    bool m_bars = true;
    MatrixModel m_model;
    MatrixHead* m_blocks;
    MatrixHead* m_measures;
    charts::ChartMenu* m_menu;
};

} // namespace slopebook::ui

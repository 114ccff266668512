// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/chartmenu.h"

#include "ui/parts/filedialog.h"
#include "ui/parts/rowtable.h"
#include "ui/parts/texttable.h"
#include "ui/words/said.h"

#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QDialog>
#include <QDialogButtonBox>
#include <QKeyEvent>
#include <QLabel>
#include <QMenu>
#include <QMessageBox>
#include <QMimeData>
#include <QPushButton>
#include <QStandardPaths>
#include <QToolTip>
#include <QVBoxLayout>

#include <algorithm>

namespace slopebook::ui::charts {

namespace {

constexpr double clipboardScale = 3; // pixels a point
constexpr int describedAfter = 200;  // ms
constexpr int longestSpoken = 4000;  // characters: a reader of a season wants the table
} // namespace

ChartMenu::ChartMenu(QWidget* chart, const ChartOut& out)
    : QObject(chart), m_chart(chart), m_out(out) {
    if (chart->focusPolicy() == Qt::NoFocus)
        chart->setFocusPolicy(Qt::TabFocus); // a click stays with what is being typed
    if (chart->accessibleName().isEmpty())
        chart->setAccessibleName(tr("Chart"));
    chart->setContextMenuPolicy(Qt::CustomContextMenu);
    connect(chart, &QWidget::customContextMenuRequested, this, [this](const QPoint& at) {
        QMenu menu(m_chart);
        fill(menu);
        menu.exec(m_chart->mapToGlobal(at));
    });
    m_describe.setSingleShot(true);
    connect(&m_describe, &QTimer::timeout, this, [this] {
        m_chart->setAccessibleDescription(figuresSpoken(m_out.figures()).left(longestSpoken));
    });
    auto* copy = new QAction(tr("Copy the picture"), chart);
    copy->setShortcut(QKeySequence::Copy);
    copy->setShortcutContext(Qt::WidgetShortcut);
    connect(copy, &QAction::triggered, this, &ChartMenu::copyPicture);
    chart->addAction(copy);
    chart->installEventFilter(this);
}

ChartMenu* ChartMenu::of(const QWidget& page) {
    ChartMenu* largest = nullptr;
    int size = 0;
    for (ChartMenu* menu : page.findChildren<ChartMenu*>()) {
        const QWidget* chart = menu->chart();
        if (!chart->isVisible())
            continue;
        if (chart->hasFocus())
            return menu;
        if (const int area = chart->width() * chart->height(); area > size) {
            size = area;
            largest = menu;
        }
    }
    return largest;
}

void ChartMenu::setSpoken(const QString& sentence) {
    m_chart->setAccessibleName(sentence.isEmpty() ? tr("Chart") : sentence);
}

void ChartMenu::dataChanged() {
    m_at = -1;
    // Many changes in a row are described once, and none of them waits for it.
    m_describe.start(m_chart->accessibleDescription().isEmpty() ? 0 : describedAfter);
}

bool ChartMenu::eventFilter(QObject* watched, QEvent* event) {
    return m_keys && watched == m_chart && event->type() == QEvent::KeyPress &&
           walk(*static_cast<QKeyEvent*>(event));
}

bool ChartMenu::walk(const QKeyEvent& key) {
    const FigureTable table = m_out.figures();
    const auto count = static_cast<qsizetype>(table.rows.size());
    if (count == 0 || key.modifiers() & (Qt::ControlModifier | Qt::AltModifier))
        return false;
    switch (key.key()) {
    case Qt::Key_Right:
    case Qt::Key_Down:
        m_at = std::min(m_at + 1, count - 1);
        break;
    case Qt::Key_Left:
    case Qt::Key_Up:
        m_at = std::clamp<qsizetype>(m_at - 1, 0, count - 1);
        break;
    case Qt::Key_Home:
        m_at = 0;
        break;
    case Qt::Key_End:
        m_at = count - 1;
        break;
    default:
        return false;
    }
    readAloud(table.headings, table.rows[static_cast<std::size_t>(m_at)]);
    return true;
}

// In the chart's lower left corner, where no curve is, and as the chart's description for those who
// hear it.
void ChartMenu::readAloud(const QStringList& headings, const QStringList& cells) {
    const QString words = figuresSpoken({headings, {cells}});
    QToolTip::showText(m_chart->mapToGlobal(QPoint(0, m_chart->height())), words, m_chart);
    m_chart->setAccessibleDescription(words);
}

void ChartMenu::fill(QMenu& menu) {
    menu.addAction(tr("&Copy the picture"), this, &ChartMenu::copyPicture);
    menu.addAction(tr("Save as &PNG…"), this, &ChartMenu::savePng);
    menu.addAction(tr("Save as &SVG…"), this, &ChartMenu::saveSvg);
    menu.addSeparator();
    menu.addAction(tr("Copy the &figures"), this, &ChartMenu::copyFigures);
    menu.addAction(tr("Show the f&igures…"), this, &ChartMenu::showFigures);
}

void ChartMenu::copyPicture() const {
    QApplication::clipboard()->setImage(picture(m_out, m_out.paperSize(), clipboardScale));
}

void ChartMenu::copyFigures() const {
    QApplication::clipboard()->setText(figuresText(m_out.figures()));
}

void ChartMenu::savePng() {
    save(QStringLiteral(".png"), tr("Pictures (*.png)"));
}

void ChartMenu::saveSvg() {
    save(QStringLiteral(".svg"), tr("Drawings (*.svg)"));
}

void ChartMenu::save(const QString& ending, const QString& filter) {
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::PicturesLocation);
    if (const auto to =
            filedialog::save(m_chart, {.title = tr("Save the picture"),
                                       .start = folder + QLatin1Char('/') + tr("chart") + ending,
                                       .filter = filter,
                                       .ending = ending}))
        saveAs(*to);
}

void ChartMenu::saveAs(const log::Destination& to) {
    try {
        if (to.file.extension() == ".svg")
            writeSvg(m_out, to, m_chart->accessibleName());
        else
            writePng(m_out, to);
    } catch (const std::exception& error) {
        QMessageBox::warning(m_chart, tr("Save the picture"), said(error));
    }
}

void ChartMenu::showFigures() {
    QDialog dialog(m_chart->window());
    dialog.setWindowTitle(tr("Figures of the chart"));
    auto* title = new QLabel(m_chart->accessibleName());
    title->setWordWrap(true);
    const FigureTable figures = m_out.figures();
    std::vector<TextTable::Row> rows;
    for (const QStringList& cells : figures.rows)
        rows.push_back({.cells = cells});
    auto* texts = new TextTable(&dialog);
    texts->setTable(figures.headings, std::move(rows), QList<int>{});
    QTableView* table =
        rowTable(texts, tr("Figures of the chart"), {.lastTakesRest = true, .growing = true});
    table->resizeColumnsToContents();
    auto* buttons = new QDialogButtonBox;
    auto* copy = buttons->addButton(tr("&Copy"), QDialogButtonBox::ActionRole);
    buttons->addButton(QDialogButtonBox::Close); // last: Tab comes to none that came before others
    connect(copy, &QPushButton::clicked, this, &ChartMenu::copyFigures);
    connect(buttons, &QDialogButtonBox::rejected, &dialog, &QDialog::reject);
    auto* layout = new QVBoxLayout(&dialog);
    layout->addWidget(title);
    layout->addWidget(table, 1);
    layout->addWidget(buttons);
    dialog.resize(620, 420);
    QTimer::singleShot(0, table, &QTableView::resizeRowsToContents); // once columns have widths
    table->setFocus();
    dialog.exec();
}

} // namespace slopebook::ui::charts

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/compare/comparisonview.h"

#include "core/answers/method.h"
#include "ui/paper/comparisonrows.h"
#include "ui/parts/cautions.h"
#include "ui/parts/downscroll.h"
#include "ui/parts/roomfor.h"
#include "ui/parts/rowtable.h"
#include "ui/parts/sentence.h"
#include "ui/words/format.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QHeaderView>
#include <QScrollArea>
#include <QSplitter>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

namespace {

using answers::Comparison;
using look::Role;

constexpr int smallestColumn = 5;
constexpr int tablesWidth = 560, widestName = 150;
constexpr int narrowest = 66, lowest = 420; // heights of a letter, px: picture beside tables

QTableView* tableView(QAbstractItemModel* model, const QString& name) {
    QTableView* view = rowTable(model, name);
    view->setAlternatingRowColors(true);
    view->setWordWrap(true);
    view->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    return view;
}

// As high as its rows, so that the tables need no scroll bars of their own.
void fitRows(QTableView* view, int wide) {
    if (view->model()->columnCount() > wide) {
        view->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
        view->horizontalHeader()->setSectionResizeMode(wide, QHeaderView::Stretch);
        // A row's name is wrapped before it takes the figures' room.
        if (view->horizontalHeader()->sectionSize(0) > widestName) {
            view->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Fixed);
            view->horizontalHeader()->resizeSection(0, widestName);
        }
    }
    view->resizeRowsToContents();
    int height = view->horizontalHeader()->sizeHint().height() + 2 * view->frameWidth() + 2;
    for (int row = 0; row < view->model()->rowCount(); ++row)
        height += view->rowHeight(row);
    view->setMinimumHeight(std::min(height, 420));
    view->setMaximumHeight(height + 4);
}

QLabel* heading(const QString& text, QWidget* buddy) {
    auto* label = new QLabel(text);
    QFont font = label->font();
    font.setBold(true);
    label->setFont(font);
    label->setBuddy(buddy);
    return label;
}

} // namespace

ComparisonView::ComparisonView(QWidget* parent)
    : QWidget(parent), m_sentence(new Sentence), m_under(new SettledLabel),
      m_caution(new CautionLabel), m_tables(nullptr), m_changeChart(new charts::ChangeChart),
      m_lineChart(new charts::LineChart), m_maxChart(new charts::MaxChart),
      m_byLoad(new TextTable(this)), m_oneRm(new TextTable(this)),
      m_byLoadView(tableView(m_byLoad, tr("Change by load"))),
      m_oneRmView(tableView(m_oneRm, tr("1RM"))), m_notes(new QLabel) {
    m_sentence->setObjectName(u"sentence"_s);
    m_notes->setWordWrap(true);
    m_notes->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_tables = buildTables();

    m_splitter = new QSplitter(Qt::Horizontal);
    m_splitter->addWidget(buildCharts());
    m_splitter->addWidget(m_tables);
    m_splitter->setStretchFactor(0, 1);
    m_splitter->setStretchFactor(1, 0);
    m_splitter->setSizes({tablesWidth - 16, tablesWidth + 16});
    m_splitter->setChildrenCollapsible(false);
    auto* page = new QWidget;
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_sentence);
    column->addWidget(m_under);
    column->addWidget(m_splitter, 1);
    column->addStretch();
    column->addWidget(m_caution);
    m_page = new QScrollArea;
    m_page->setAccessibleName(tr("Comparison"));
    m_page->setFocusPolicy(Qt::NoFocus);
    holdDownwards(*m_page, page);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_page);

    connect(m_byLoadView->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex& current) {
                m_changeChart->setHighlight(current.isValid() ? std::optional(current.row())
                                                              : std::nullopt);
            });
}

void ComparisonView::setWay(QWidget* way) {
    qobject_cast<QVBoxLayout*>(m_page->widget()->layout())->insertWidget(2, way);
}

QString ComparisonView::sentence() const {
    return m_sentence->text();
}

QWidget* ComparisonView::buildCharts() {
    auto* charts = new QSplitter(Qt::Vertical);
    charts->setChildrenCollapsible(false);
    charts->addWidget(m_changeChart);
    auto* lines = new QWidget;
    auto* column = new QVBoxLayout(lines);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    m_heaviest = new QLabel(tr("Lines: the heaviest day of each side"));
    m_heaviest->setObjectName(u"heaviest"_s);
    m_heaviest->setIndent(6);
    m_heaviest->hide();
    column->addWidget(m_heaviest);
    column->addWidget(m_lineChart, 1);
    charts->addWidget(lines);
    charts->setSizes({320, 200}); // the answer first, and larger
    return charts;
}

void ComparisonView::setBands(bool shown) {
    m_bands = shown;
    charts::ChangeData change = m_changeChart->figure().data();
    change.bands = shown;
    m_changeChart->setData(change);
}

QScrollArea* ComparisonView::buildTables() {
    auto* inside = new QWidget;
    auto* layout = new QVBoxLayout(inside);
    layout->setContentsMargins(6, 0, 0, 0);
    layout->addWidget(heading(tr("By load: &what the lines say, m/s"), m_byLoadView));
    layout->addWidget(m_byLoadView);
    m_alone = new QLabel;
    m_alone->setObjectName(u"alone"_s);
    m_alone->setWordWrap(true);
    layout->addWidget(m_alone);
    layout->addWidget(heading(tr("1R&M"), m_oneRmView));
    layout->addWidget(m_maxChart);
    layout->addWidget(m_oneRmView);
    layout->addWidget(heading(tr("To beware of, and where the figures come from"), nullptr));
    layout->addWidget(m_notes);
    layout->addStretch(1);
    auto* scroll = new QScrollArea;
    scroll->setAccessibleName(tr("Tables and notes of the comparison"));
    holdDownwards(*scroll, inside);
    scroll->setMinimumWidth(380);
    return scroll;
}

void ComparisonView::show(const Comparison& c, const PageHeader& header) {
    const QString sentence = said(c.sentence, header.unit);
    m_sentence->setText(said(c.headline.leads, header.unit));
    m_sentence->setAccessibleName(m_sentence->text());
    m_under->setText(said(c.headline.under, header.unit));
    m_under->setVisible(!c.headline.under.empty());
    charts::ChangeData change = charts::changeOf(c, header.unit);
    change.bands = m_bands;
    m_changeChart->setData(change);
    m_changeChart->setSpokenText(sentence);
    m_lineChart->setData(charts::linesOf(c, header.unit));
    // The readings are of all days of a side, the lines under them of one.
    m_heaviest->setVisible(c.ofSeveral());
    m_lineChart->setSpokenText(c.ofSeveral() ? sentence + u' ' + m_heaviest->text() + u'.'
                                             : sentence);
    m_maxChart->setData(charts::maxChangeOf(c, header.unit));
    m_maxChart->setSpokenText(sentence);
    showTables(c, header);
    m_tables->show();
    m_splitter->show();
}

void ComparisonView::showTables(const Comparison& c, const PageHeader& header) {
    const QString level = levelText(c.settings.level), unit = unitName(header.unit);
    m_alone->setText(said(answers::intervalsOf(c.allAtOnce)));
    std::vector<TextTable::Row> rows;
    const std::vector<page::LoadRow> loads = page::loadRows(c, header.unit);
    for (const page::LoadRow& r : loads)
        rows.push_back(
            {.cells = {r.load, r.from, r.to, r.change, r.readingInterval, r.smallest, r.reading},
             .explanation =
                 readAgainst(tr("%1 interval").arg(level), c.allAtOnce) + u'\n' +
                 (c.ofSeveral() ? tr("%1, as if lines were straight: %2 m/s; these days only: "
                                     "%3 m/s")
                                : tr("%1, as if lines were straight: %2 m/s; these two days only: "
                                     "%3 m/s"))
                     .arg(level, r.straight, r.twoDays)});
    m_byLoad->setTable({tr("Load, %1").arg(unit), tr("Before"), tr("After"), tr("Change"),
                        tr("%1 interval").arg(level), tr("Smallest"), tr("Reading")},
                       std::move(rows), 1, 6);
    // The same at every load the chart says it once, and readings have their line.
    haveColumn(
        *m_byLoadView, smallestColumn,
        std::ranges::any_of(
            loads, [&](const page::LoadRow& r) { return r.smallest != loads.front().smallest; }) ||
            !c.settings.smallestVelocity);
    rows.clear();
    for (const page::OneRmRow& r : page::oneRmRows(c, header.unit)) {
        QList<int> quiet;
        if (r.fromQuiet)
            quiet << 1;
        if (r.toQuiet)
            quiet << 2;
        rows.push_back({.cells = {r.label, r.from, r.to, r.change, r.reading},
                        .strong = r.strong,
                        .quiet = quiet});
    }
    m_oneRm->setTable(inTwoLines({unit, page::sideText(c, false), page::sideText(c, true),
                                  tr("Change"), tr("Reading")}),
                      std::move(rows), 1, 4);
    QStringList notes = said(answers::markWords(c), header.unit);
    QStringList settling = page::settlingLines(c, header.unit);
    if (!settling.isEmpty())
        notes << tr("What would settle what is unclear:") << settling;
    notes << said(answers::maxRemarks(c), header.unit) << page::remarks(c, header)
          << said(answers::sourceWords(c), header.unit)
          << said(answers::methodWords(c, header.rule, massUnit(header.unit)), header.unit);
    QString html;
    for (const QString& note : notes)
        html += "<p style='margin-top:0; margin-bottom:5px'>"_L1 + note.toHtmlEscaped() + "</p>"_L1;
    m_notes->setText(html);
    fitTables();
    // Columns have their widths, and with them rows their heights, once they are laid out.
    QTimer::singleShot(0, this, &ComparisonView::fitTables);
}

void ComparisonView::fitTables() {
    fitRows(m_byLoadView, 6); // the reading
    fitRows(m_oneRmView, 4);  // the reading
    // Under the picture the page scrolls, and the tables stand there whole.
    const QWidget& inside = *m_tables->widget();
    const int whole = inside.layout()->hasHeightForWidth()
                          ? inside.layout()->totalHeightForWidth(m_tables->viewport()->width())
                          : inside.sizeHint().height();
    m_tables->setMinimumHeight(isLow() && !m_tables->isHidden() ? whole : 0);
}

bool ComparisonView::isLow() const {
    return width() < narrowest * fontMetrics().height() || height() < lowest;
}

// A picture that is a third of the window high, and beside it the tables; where there is no room
// for both, the tables come under it.
void ComparisonView::arrange() {
    m_changeChart->setMinimumHeight(std::max(pictureHeight(*this), isLow() ? height() * 3 / 5 : 0));
    m_lineChart->setMinimumHeight(isLow() ? height() * 3 / 5 : pictureHeight(*this) * 2 / 3);
    // Where there is room the least heights count, so that nothing is scrolled.
    m_splitter->setSizePolicy(QSizePolicy::Expanding,
                              isLow() ? QSizePolicy::Preferred : QSizePolicy::Ignored);
    m_splitter->setMinimumHeight(
        isLow() ? 0 : m_changeChart->minimumHeight() + m_lineChart->minimumHeight() + 8);
    const Qt::Orientation wanted = isLow() ? Qt::Vertical : Qt::Horizontal;
    if (m_splitter->orientation() == wanted)
        return;
    m_splitter->setOrientation(wanted);
    if (wanted == Qt::Horizontal)
        m_splitter->setSizes({tablesWidth - 16, tablesWidth + 16});
}

void ComparisonView::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    arrange();
    QTimer::singleShot(0, this, &ComparisonView::fitTables);
}

void ComparisonView::showReason(const QString& reason, std::span<const LiftSession> sessions,
                                LoadUnit unit) {
    m_sentence->setText(reason);
    m_sentence->setAccessibleName(reason);
    m_under->hide();
    m_heaviest->hide();
    m_changeChart->setData({});
    m_changeChart->setSpokenText(reason);
    charts::LineData lines;
    lines.unit = unit;
    for (const LiftSession& s : sessions)
        lines.sessions.push_back(charts::entryOf(
            s, dateText(s.date),
            Role{.kind = lines.sessions.empty() ? Role::Kind::Earlier : Role::Kind::Later}));
    m_lineChart->setData(lines);
    m_lineChart->setSpokenText(reason);
    m_maxChart->setData({});
    m_byLoad->setTable({}, {}, 0, 0);
    m_oneRm->setTable({}, {}, 0, 0);
    m_notes->clear();
    m_tables->hide();
    m_splitter->setVisible(!sessions.empty()); // an empty frame says nothing
}

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/history/historypage.h"

#include "ui/shell/format.h"
#include "ui/wording.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QShortcut>
#include <QSplitter>
#include <QVBoxLayout>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

namespace {
constexpr std::size_t mostOverlays = 12; // more cannot be told apart
} // namespace

HistoryPage::HistoryPage(Logbook& logbook, QWidget* parent)
    : TaskPage(parent), m_logbook(logbook), m_model(new HistoryModel(this)),
      m_sorted(new QSortFilterProxyModel(this)), m_table(new QTableView), m_find(new QLineEdit),
      m_says(new QLabel), m_chart(new charts::LineChart) {
    buildTable();
    m_find->setPlaceholderText(tr("Find a date, block or device"));
    m_find->setClearButtonEnabled(true);
    m_find->setAccessibleName(tr("Find a session"));
    auto* findLabel = new QLabel(tr("&Find"));
    findLabel->setBuddy(m_find);
    m_says->setWordWrap(true);
    auto* top = new QHBoxLayout;
    top->addWidget(m_says, 1);
    top->addWidget(findLabel);
    top->addWidget(m_find);
    auto* splitter = new QSplitter(Qt::Vertical);
    splitter->addWidget(m_table);
    splitter->addWidget(m_chart);
    splitter->setStretchFactor(0, 3);
    splitter->setStretchFactor(1, 4);
    splitter->setChildrenCollapsible(false);
    splitter->setSizes({250, 330});
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(top);
    layout->addWidget(splitter, 1);
    setFocusProxy(m_table);
    connectTable();
    showRows();
}

void HistoryPage::buildTable() {
    m_sorted->setSourceModel(m_model);
    m_sorted->setSortRole(HistoryModel::SortRole);
    m_sorted->setFilterKeyColumn(-1);
    m_sorted->setFilterCaseSensitivity(Qt::CaseInsensitive);
    m_table->setModel(m_sorted);
    m_table->setAccessibleName(tr("History of sessions"));
    m_table->setSortingEnabled(true);
    m_table->sortByColumn(HistoryModel::DateColumn, Qt::DescendingOrder);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::ExtendedSelection);
    m_table->setAlternatingRowColors(true);
    m_table->setTabKeyNavigation(false);
    m_table->setWordWrap(false);
    m_table->setContextMenuPolicy(Qt::CustomContextMenu);
    m_table->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_table->verticalHeader()->hide();
    // One height for all rows: thousands are laid out at once.
    m_table->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    m_table->horizontalHeader()->setHighlightSections(false);
    m_table->horizontalHeader()->setResizeContentsPrecision(200);
}

void HistoryPage::connectTable() {
    connect(m_find, &QLineEdit::textChanged, m_sorted,
            &QSortFilterProxyModel::setFilterFixedString);
    connect(m_table, &QTableView::activated, this, [this] { openCurrent(); });
    connect(m_table, &QWidget::customContextMenuRequested, this, &HistoryPage::showMenu);
    connect(m_table->selectionModel(), &QItemSelectionModel::selectionChanged, this,
            [this] { showChart(); });
    const auto key = [this](const QKeySequence& keys, auto work) {
        auto* shortcut = new QShortcut(keys, m_table);
        shortcut->setContext(Qt::WidgetShortcut);
        connect(shortcut, &QShortcut::activated, this, work);
    };
    key(QKeySequence::Delete, [this] {
        if (const auto sessions = chosen(); sessions.size() == 1)
            askAndDelete(sessions.front());
    });
    key(QKeySequence::Copy, [this] { copyRows(); });
}

void HistoryPage::setAthleteAndLift(std::optional<AthleteId> athlete, std::optional<LiftId> lift) {
    m_athlete = athlete;
    m_lift = lift;
    try {
        read();
    } catch (const std::exception& error) {
        m_about.reset();
        showRows();
        m_says->setText(QString::fromUtf8(error.what()));
    }
}

void HistoryPage::refresh(Logbook::What /*what*/, SessionId /*session*/) {
    setAthleteAndLift(m_athlete, m_lift);
}

void HistoryPage::setLoadUnit(LoadUnit unit) {
    m_unit = unit;
    refresh(Logbook::What::Everything, {});
}

void HistoryPage::read() {
    m_about.reset();
    if (m_athlete && m_lift)
        m_about = background(m_logbook.log(), *m_athlete, *m_lift);
    showRows();
}

void HistoryPage::showRows() {
    const std::vector<SessionId> before = chosen();
    const bool first = m_model->rowCount() == 0;
    std::vector<HistoryRow> rows;
    if (m_about)
        rows = historyRows(*m_about, m_logbook.log().blocks(), m_logbook.log().devices());
    const auto count = rows.size();
    m_model->setRows(std::move(rows), m_about ? m_about->checkLoads : std::vector<Mass>{}, m_unit);
    if (first)
        m_table->resizeColumnsToContents();
    QItemSelection again;
    for (int i = 0; i < m_sorted->rowCount(); ++i) {
        const QModelIndex at = m_sorted->index(i, 0);
        const SessionId session{at.data(HistoryModel::SessionRole).toLongLong()};
        if (std::ranges::find(before, session) != before.end())
            again.select(at, m_sorted->index(i, m_sorted->columnCount() - 1));
    }
    m_table->selectionModel()->select(again, QItemSelectionModel::ClearAndSelect);
    if (!m_about)
        m_says->setText(tr("Choose an athlete and a lift to see their sessions."));
    else if (count == 0)
        m_says->setText(
            tr("No session of this lift yet. Enter one in the session form, or import."));
    else
        m_says->setText((count == 1 ? tr("1 session.") : tr("%1 sessions.").arg(count)) + u' ' +
                        tr("Enter opens one; choose several to lay their lines over each other."));
    showChart();
}

std::vector<SessionId> HistoryPage::chosen() const {
    std::vector<std::pair<qlonglong, SessionId>> byDate;
    for (const QModelIndex& at : m_table->selectionModel()->selectedRows())
        byDate.emplace_back(at.data(HistoryModel::SortRole).toLongLong(),
                            SessionId{at.data(HistoryModel::SessionRole).toLongLong()});
    std::ranges::sort(byDate);
    std::vector<SessionId> sessions;
    for (const auto& each : byDate)
        sessions.push_back(each.second);
    return sessions;
}

// The chosen sessions, else the newest few.
void HistoryPage::showChart() {
    charts::LineData lines;
    lines.unit = m_unit;
    if (!m_about) {
        m_chart->setData(lines);
        return;
    }
    std::vector<SessionId> sessions = chosen();
    if (sessions.empty())
        for (const LiftSession& s : m_about->sessions)
            sessions.push_back(s.session);
    if (sessions.size() > mostOverlays)
        sessions.erase(sessions.begin(),
                       sessions.end() - static_cast<std::ptrdiff_t>(mostOverlays));
    const int count = static_cast<int>(sessions.size());
    for (int i = 0; i < count; ++i) {
        const auto session = sessionOf(m_about->sessions, sessions[static_cast<std::size_t>(i)]);
        if (!session)
            continue;
        const look::Role role{.index = i, .count = count};
        const bool bands = count <= 2;
        if (const auto profile = profileOf(*m_about, *session))
            lines.sessions.push_back(charts::entryOf(*profile, dateText(session->date), role,
                                                     {.band = bands, .oneRm = bands}));
        else
            lines.sessions.push_back(charts::entryOf(*session, dateText(session->date), role));
    }
    if (m_about->mvt)
        lines.mvt = m_about->mvt->value;
    for (const Mass load : m_about->checkLoads)
        lines.checkLoads.push_back(kilograms(load));
    m_chart->setData(lines);
    m_chart->setSpokenText(tr("Lines of %1 sessions; their figures are in the table.").arg(count));
}

QString HistoryPage::nameOf(SessionId session) const {
    if (m_about)
        if (const auto found = sessionOf(m_about->sessions, session))
            return found->ordinal > 1
                       ? tr("%1 (no. %2)").arg(dateText(found->date)).arg(found->ordinal)
                       : dateText(found->date);
    return {};
}

} // namespace slopebook::ui

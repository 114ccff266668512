// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/history/historypage.h"

#include "ui/parts/roomfor.h"
#include "ui/parts/rowtable.h"
#include "ui/parts/sentence.h"
#include "ui/parts/wayon.h"
#include "ui/words/format.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLocale>
#include <QShortcut>
#include <QSplitter>
#include <QVBoxLayout>

#include <algorithm>
#include <tuple>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

namespace {
constexpr std::size_t mostOverlays = 12; // more cannot be told apart
constexpr int typingPause = 200;         // ms
constexpr int widestNote = 36;           // letters: the rest of it in the tip
enum Whose { OfAthlete, Everybodys, EverythingOf };
} // namespace

HistoryPage::HistoryPage(Logbook& logbook, QWidget* parent)
    : TaskPage(parent), m_logbook(logbook), m_model(new HistoryModel(this)),
      m_table(new QTableView), m_whose(new QComboBox), m_find(new QLineEdit),
      m_findSoon(new QTimer(this)), m_says(new Sentence), m_hint(new QLabel),
      m_all(new EverythingModel(this)), m_chart(new charts::LineChart) {
    m_unit = m_logbook.loadUnit();
    buildTable();
    buildEverything();
    m_ofOneLift = new QSplitter(Qt::Vertical);
    m_ofOneLift->addWidget(m_chart);
    m_ofOneLift->addWidget(m_table);
    m_ofOneLift->setStretchFactor(0, 4);
    m_ofOneLift->setStretchFactor(1, 3);
    m_ofOneLift->setChildrenCollapsible(false);
    m_ofOneLift->setSizes({330, 250});
    m_hint->setWordWrap(true);
    m_hint->setForegroundRole(QPalette::PlaceholderText);
    auto* layout = new QVBoxLayout(this);
    m_strip = buildTop();
    layout->addLayout(m_strip);
    layout->addWidget(m_says);
    layout->addWidget(m_way = new WayOn(*this, Place::Session));
    layout->addWidget(m_allTable, 1);
    layout->addWidget(m_ofOneLift, 1);
    layout->addWidget(m_hint);
    connectParts();
    connectTable();
    showRows();
}

QBoxLayout* HistoryPage::buildTop() {
    m_whose->addItems(
        {tr("One lift, this athlete's"), tr("One lift, everybody's"), tr("Every lift and test")});
    m_whose->setCurrentIndex(EverythingOf);
    m_whose->setAccessibleName(tr("Whose sessions"));
    m_whose->setObjectName(u"whose"_s);
    setHint(*m_find, tr("date, block, lift, device, note"));
    m_find->setClearButtonEnabled(true);
    fitPlaceholder(*m_find);
    m_find->setAccessibleName(tr("Find a session"));
    m_findSoon->setSingleShot(true);
    m_findSoon->setInterval(typingPause);
    auto* whoseLabel = new QLabel(tr("Sho&w"));
    whoseLabel->setBuddy(m_whose);
    auto* findLabel = new QLabel(tr("Fi&nd"));
    findLabel->setBuddy(m_find);
    m_says->setObjectName(u"sentence"_s);
    auto* top = new QHBoxLayout;
    for (QWidget* part : std::initializer_list<QWidget*>{whoseLabel, m_whose, findLabel, m_find})
        top->addWidget(part);
    top->addStretch(1);
    return top;
}

void HistoryPage::buildEverything() {
    m_allTable = rowTable(m_all, tr("Every lift and test of the athlete"),
                          {.compact = true,
                           .lastTakesRest = true,
                           .giving = {EverythingModel::Note, EverythingModel::What}});
    m_allTable->setObjectName(u"everything"_s);
    m_allTable->setSortingEnabled(true);
    m_allTable->sortByColumn(EverythingModel::Day, Qt::DescendingOrder);
    m_allTable->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    connect(m_allTable, &QTableView::activated, this,
            [this](const QModelIndex& at) { openDone(at.row()); });
}

bool HistoryPage::showsEverything() const {
    return m_whose->currentIndex() == EverythingOf;
}

// Where it is shown: a lift on the Floor, a test among the day's tests.
void HistoryPage::openDone(int row) {
    if (row < 0 || row >= m_all->rowCount())
        return;
    const DoneRow done = m_all->row(row);
    if (!done.lift) {
        Q_EMIT testsWanted(done.session);
        return;
    }
    Q_EMIT liftWanted(*done.lift);
    Q_EMIT sessionWanted(done.session);
}

void HistoryPage::readEverything() {
    m_all->setFind(m_find->text().trimmed());
    m_all->setRows({}); // where reading fails, nobody else's stay
    m_all->setRows(m_athlete ? doneBy(m_logbook.log(), *m_athlete, m_unit)
                             : std::vector<DoneRow>());
}

QString HistoryPage::everythingText() const {
    const int rows = m_all->rowCount();
    if (!m_athlete)
        return tr("Choose an athlete to see what they did.");
    if (rows == 0 && !m_find->text().trimmed().isEmpty())
        return tr("Nothing with that in it.");
    if (rows == 0)
        return tr("Nothing yet: type the first set or attempt under Floor, or import a table.");
    const QLocale words;
    const QString what =
        rows == 1 ? tr("1 lift or test") : tr("%1 lifts and tests").arg(words.toString(rows));
    const int sessions = m_all->sessions();
    return sessions == 1 ? tr("%1 in 1 session.").arg(what)
                         : tr("%1 in %2 sessions.").arg(what, words.toString(sessions));
}

void HistoryPage::buildTable() {
    m_table->setModel(m_model);
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

void HistoryPage::connectParts() {
    const auto readAnew = [this] { setAthleteAndLift(m_athlete, m_lift); };
    // A large log is not asked at every key.
    connect(m_find, &QLineEdit::textChanged, m_findSoon, qOverload<>(&QTimer::start));
    connect(m_find, &QLineEdit::returnPressed, this, readAnew);
    connect(m_findSoon, &QTimer::timeout, this, readAnew);
    connect(m_whose, &QComboBox::currentIndexChanged, this, readAnew);
    connect(m_whose, &QComboBox::currentIndexChanged, this, &TaskPage::ofLiftChanged);
    connect(m_model, &HistoryModel::failed, this, &TaskPage::message);
}

void HistoryPage::connectTable() {
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
        m_reader.reset();
        showRows();
        m_says->setText(said(error));
    }
}

void HistoryPage::refresh(Logbook::What /*what*/, SessionId /*session*/) {
    setAthleteAndLift(m_athlete, m_lift);
}

void HistoryPage::read() {
    m_findSoon->stop();
    m_reader.reset();
    const bool everybody = m_whose->currentIndex() == Everybodys;
    if (showsEverything())
        readEverything();
    else if (m_lift && (m_athlete || everybody))
        m_reader = std::make_shared<HistoryReader>(
            m_logbook.log(), *m_lift, everybody ? std::nullopt : m_athlete, m_find->text());
    showRows();
}

void HistoryPage::showRows() {
    const std::vector<SessionId> before = chosen();
    const bool first = m_model->rowCount() == 0;
    m_table->setColumnHidden(HistoryModel::AthleteColumn, m_whose->currentIndex() != Everybodys);
    if (m_reader)
        m_model->setSource(sourceOf(m_reader), m_reader->checkLoads(), m_unit);
    else
        m_model->setSource({}, {}, m_unit);
    // After the check loads, of which each athlete has as many as wanted.
    QHeaderView* header = m_table->horizontalHeader();
    header->moveSection(header->visualIndex(HistoryModel::NoteColumn), header->count() - 1);
    if (first) {
        m_table->resizeColumnsToContents();
        m_table->setColumnWidth(HistoryModel::NoteColumn,
                                std::min(m_table->columnWidth(HistoryModel::NoteColumn),
                                         widestNote * fontMetrics().averageCharWidth()));
    }
    QItemSelection again;
    for (const SessionId session : before)
        if (const int row = m_model->rowOf(session); row >= 0)
            again.select(m_model->index(row, 0), m_model->index(row, m_model->columnCount() - 1));
    m_table->selectionModel()->select(again, QItemSelectionModel::ClearAndSelect);
    const bool all = showsEverything();
    m_allTable->setVisible(all);
    m_ofOneLift->setVisible(!all);
    const bool nothing = (all ? m_all->rowCount() : m_model->rowCount()) == 0;
    m_says->setText(m_way->sayMissing(m_logbook.log(), all ? everythingText() : countText(),
                                      nothing && m_athlete && m_find->text().isEmpty(), !all));
    m_hint->setText(
        all ? tr("Enter opens the row where it was typed. A heading puts them in order.")
            : tr("Enter opens one; choose several to lay their lines over each other."));
    m_hint->setVisible((all ? m_all->rowCount() : m_model->rowCount()) > 0);
    showChart();
}

QString HistoryPage::countText() const {
    const auto count = m_model->sessions();
    if (!m_reader)
        return tr("Choose an athlete and a lift to see their sessions.");
    if (count == 0 && !m_find->text().isEmpty())
        return tr("No session with that in its date, block, device or note.");
    if (count == 0)
        return tr("No session of this lift yet. Enter one in the session form, or import.");
    return count == 1 ? tr("1 session.")
                      : tr("%1 sessions.").arg(QLocale().toString(qlonglong(count)));
}

std::vector<SessionId> HistoryPage::chosen() const {
    std::vector<const HistoryRow*> rows;
    for (const QModelIndex& at : m_table->selectionModel()->selectedRows())
        rows.push_back(&m_model->row(at.row()));
    std::ranges::sort(rows, {}, [](const HistoryRow* row) {
        return std::tuple(row->date, row->ordinal, row->session);
    });
    std::vector<SessionId> sessions;
    for (const HistoryRow* row : rows)
        sessions.push_back(row->session);
    return sessions;
}

// The chosen sessions, else the first few of the table.
void HistoryPage::showChart() {
    charts::LineData lines;
    lines.unit = m_unit;
    if (!m_reader) {
        m_chart->setData(lines);
        return;
    }
    try {
        lines = linesOf(sessionsToDraw());
    } catch (const std::exception& error) {
        Q_EMIT message(said(error));
    }
    m_chart->setData(lines);
    m_chart->setSpokenText(
        tr("Lines of %1 sessions; their figures are in the table.").arg(lines.sessions.size()));
}

std::vector<SessionId> HistoryPage::sessionsToDraw() const {
    std::vector<SessionId> sessions = chosen();
    if (sessions.empty())
        for (int row = 0; row < std::min(m_model->rowCount(), int(mostOverlays)); ++row)
            sessions.push_back(m_model->row(row).session);
    if (sessions.size() > mostOverlays)
        sessions.erase(sessions.begin(),
                       sessions.end() - static_cast<std::ptrdiff_t>(mostOverlays));
    return sessions;
}

charts::LineData HistoryPage::linesOf(const std::vector<SessionId>& sessions) const {
    charts::LineData lines;
    lines.unit = m_unit;
    auto drawn = m_reader->read(sessions);
    std::ranges::stable_sort(drawn, {}, [](const questions::Background& about) {
        return std::pair(about.sessions.front().date, about.sessions.front().ordinal);
    });
    const int count = static_cast<int>(drawn.size());
    for (int i = 0; i < count; ++i) {
        const questions::Background& about = drawn[static_cast<std::size_t>(i)];
        const LiftSession& session = about.sessions.front();
        const look::Role role{.index = i, .count = count};
        const bool bands = count <= 2;
        if (const auto profile = questions::profileOf(about, session))
            lines.sessions.push_back(
                charts::entryOf(*profile, nameOf(about), role, {.band = bands, .oneRm = bands}));
        else
            lines.sessions.push_back(charts::entryOf(session, nameOf(about), role));
    }
    // Thresholds differ from athlete to athlete: where they do, none is drawn.
    const auto same = [&](const questions::Background& about) {
        return about.mvt && about.mvt->value == drawn.front().mvt->value;
    };
    if (!drawn.empty() && drawn.front().mvt && std::ranges::all_of(drawn, same))
        lines.mvt = drawn.front().mvt->value;
    for (const Mass load : m_reader->checkLoads())
        lines.checkLoads.push_back(kilograms(load));
    return lines;
}

QString HistoryPage::nameOf(const questions::Background& about) const {
    const QString day = dateText(about.sessions.front().date);
    return m_whose->currentIndex() != Everybodys
               ? day
               : tr("%1, %2").arg(text(about.athlete.value.name), day);
}

QString HistoryPage::nameOf(SessionId session) const {
    for (int i = 0; i < m_model->rowCount(); ++i)
        if (const HistoryRow& row = m_model->row(i); row.session == session) {
            const QString day = sessionText(row.date, row.ordinal);
            return m_whose->currentIndex() != Everybodys ? day : tr("%1, %2").arg(row.athlete, day);
        }
    return {};
}

} // namespace slopebook::ui

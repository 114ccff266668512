// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/importing/tabledialog.h"

#include "ui/importing/importcsv.h"
#include "ui/importing/importsettings.h"
#include "ui/importing/importwords.h"
#include "ui/importing/nearnamespanel.h"
#include "ui/importing/shapeeditor.h"
#include "ui/parts/rowtable.h"
#include "ui/words/format.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QDialogButtonBox>
#include <QFileInfo>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QScrollArea>
#include <QSplitter>
#include <QTabWidget>
#include <QTableView>
#include <QTimer>
#include <QVBoxLayout>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

namespace {

constexpr int countAfter = 250; // ms after the last change

template <class List>
QStringList namesOf(const List& list) {
    QStringList names;
    for (const auto& stored : list)
        names << text(stored.value.name);
    return names;
}

} // namespace

TableDialog::TableDialog(Logbook& logbook, exchange::Source source, ImportMaps& maps,
                         QWidget* parent, ShownInWindow shown)
    : QDialog(parent), m_logbook(logbook), m_source(std::move(source)), m_maps(maps),
      m_shown(std::move(shown)), m_wait(new QTimer(this)), m_about(new QLabel),
      m_editor(new ShapeEditor(namesOf(logbook.log().athletes()), namesOf(logbook.log().lifts()),
                               namesOf(logbook.log().devices()))),
      m_tabs(new QTabWidget), m_preview(new TextTable(this)), m_refused(new TextTable(this)),
      m_summary(new QLabel), m_near(new NearNamesPanel), m_progress(new QProgressBar) {
    setWindowTitle(m_source.file.empty()
                       ? tr("Take in a pasted table")
                       : tr("Take in %1").arg(QFileInfo(nameOf(m_source.file)).fileName()));
    build();
    connectParts();
    look();
}

TableDialog::~TableDialog() {
    m_job.disconnect(this);
}

void TableDialog::build() {
    m_previewView =
        rowTable(m_preview, tr("First rows, as found and as read"), {.lastTakesRest = true});
    m_refusedView = rowTable(m_refused, tr("Refused rows and why"), {.lastTakesRest = true});
    m_previewView->setObjectName(u"preview"_s);
    m_refusedView->setObjectName(u"refused"_s);
    for (QTableView* view : {m_previewView, m_refusedView})
        view->setMinimumHeight(60);
    m_tabs->addTab(m_previewView, tr("As &read"));
    m_tabs->addTab(m_refusedView, tr("Ref&used"));
    for (QLabel* label : {m_about, m_summary}) {
        label->setWordWrap(true);
        label->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    }
    m_summary->setObjectName(u"summary"_s);
    m_summary->setAccessibleDescription(tr("What will be taken"));
    m_summary->setMinimumHeight(2 * m_summary->fontMetrics().lineSpacing());
    m_progress->setRange(0, 1000);
    m_progress->setTextVisible(true);
    m_progress->setAccessibleName(tr("Progress"));
    m_progress->hide();
    auto* buttons = new QDialogButtonBox;
    m_import = buttons->addButton(tr("&Import"), QDialogButtonBox::AcceptRole);
    m_cancel = buttons->addButton(QDialogButtonBox::Cancel);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* split = new QSplitter(Qt::Vertical);
    split->setChildrenCollapsible(false);
    auto* scroll = new QScrollArea; // a low window holds a part of it
    scroll->setWidget(m_editor);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setAccessibleName(tr("What each column is"));
    scroll->setMinimumHeight(120);
    scroll->viewport()->setAutoFillBackground(false);
    m_editor->setAutoFillBackground(false);
    split->addWidget(scroll);
    split->addWidget(m_tabs);
    split->setSizes({330, 230});
    auto* layout = new QVBoxLayout(this);
    layout->setSpacing(4);
    layout->addWidget(m_about);
    layout->addWidget(split, 1);
    layout->addWidget(m_near);
    layout->addWidget(m_summary);
    layout->addWidget(m_progress);
    layout->addWidget(buttons);
    m_import->setDefault(true);
    const QSize room = parentWidget() ? parentWidget()->window()->size() : QSize(1100, 680);
    resize(std::min(1100, std::max(640, room.width() - 40)),
           std::min(700, std::max(430, room.height() - 40)));
}

void TableDialog::connectParts() {
    m_wait->setSingleShot(true);
    m_wait->setInterval(countAfter);
    connect(m_wait, &QTimer::timeout, this, &TableDialog::count);
    connect(m_editor, &ShapeEditor::changed, this, &TableDialog::shapeChanged);
    connect(m_editor, &ShapeEditor::layoutChanged, this, &TableDialog::look);
    connect(m_near, &NearNamesPanel::changed, this, &TableDialog::shapeChanged);
    connect(&m_job, &Job::progressed, m_progress, &QProgressBar::setValue);
    connect(&m_job, &Job::finished, this, [this] {
        ended();
        m_then();
    });
    connect(&m_job, &Job::stopped, this, [this] {
        const bool byTheCoach = m_importing; // else something was changed while it was counted
        ended();
        if (!byTheCoach)
            return;
        say(tr("Stopped. Nothing was changed."));
        m_import->setEnabled(true);
    });
    connect(&m_job, &Job::failed, this, [this](const QString& why) {
        ended();
        say(why);
        m_import->setEnabled(false);
    });
}

void TableDialog::begin(const QString& what, Job::Work work, std::function<void()> then) {
    m_wait->stop();
    m_then = std::move(then);
    m_progress->setValue(0);
    m_progress->setFormat(what + u" %p %"_s);
    m_progress->show();
    m_import->setEnabled(false);
    m_job.start(std::move(work));
}

void TableDialog::ended() {
    m_progress->hide();
    m_importing = false;
    m_editor->setEnabled(true);
    m_cancel->setText(tr("&Cancel"));
}

void TableDialog::say(const QString& words) {
    m_summary->setText(words);
}

QString TableDialog::summary() const {
    return m_summary->text();
}

bool TableDialog::canImport() const {
    return m_import->isEnabled();
}

void TableDialog::look() {
    const exchange::LayoutTold told =
        m_lookedOnce ? m_editor->layoutTold() : exchange::LayoutTold{};
    auto facts = std::make_shared<exchange::FileFacts>();
    m_facts.reset();
    say(QString());
    begin(
        tr("Reading"),
        [source = m_source, told, facts](const Progress& progress) {
            *facts = exchange::lookAt(source, told, progress);
        },
        [this, facts] { adopt(*facts); });
}

void TableDialog::adopt(const exchange::FileFacts& facts) {
    m_facts = std::make_shared<exchange::FileFacts>(facts);
    ChosenShape chosen = shapeFor(m_maps, facts);
    const bool filled = takeShown(chosen.shape);
    QStringList about{
        tr("Rows found: %1. Look at what each column is; nothing is written before Import.")
            .arg(facts.rows)};
    if (chosen.remembered)
        about << tr(
            "A table with these headings was taken in before: its columns are set as then.");
    if (filled)
        about << tr("Where the table does not name athlete, lift or day, those shown in the window "
                    "stand below for all rows.");
    if (const Words caution = exchange::letterCaution(facts); !caution.empty())
        about << said(caution);
    for (const Words& laid : exchange::layoutWords(facts))
        about << said(laid);
    if (const Words order = exchange::orderWords(chosen.shape, facts); !order.empty())
        about << said(order);
    if (const Words hidden = exchange::sheetWords(facts); !hidden.empty())
        about << said(hidden);
    about << undoText(m_logbook);
    m_about->setText(about.join(u' '));
    m_editor->setTable(facts, chosen.shape); // tells that it changed
    if (!std::exchange(m_lookedOnce, true))
        m_editor->focusColumns();
}

bool TableDialog::takeShown(exchange::Shape& shape) const {
    bool any = false;
    for (const auto& [role, shown] : {std::pair{exchange::TidyAthlete, &m_shown.athlete},
                                      {exchange::TidyLift, &m_shown.lift},
                                      {exchange::TidyDate, &m_shown.day}})
        if (!shown->empty() && !shape.has(role)) {
            shape.fixed[role] = *shown;
            any = true;
        }
    return any;
}

void TableDialog::shapeChanged() {
    if (!m_facts || m_importing)
        return;
    m_open = exchange::openQuestions(m_editor->shape(), *m_facts);
    m_report.reset();
    m_import->setEnabled(false);
    m_job.stop();
    showPreview();
    showRefused();
    if (m_open.empty()) {
        say(tr("Counting\u2026"));
        m_wait->start();
        return;
    }
    m_wait->stop();
    QStringList asked;
    for (const exchange::Question& question : m_open)
        asked << questionText(question, *m_facts);
    say(tr("To be said first: %1").arg(asked.join(u"  "_s)));
}

void TableDialog::showPreview() {
    const exchange::Shape& shape = m_editor->shape();
    std::vector<TextTable::Row> rows;
    try {
        const bool read = m_open.empty();
        if (read)
            for (const auto& row :
                 exchange::readFirst(m_facts->first, shape, m_facts->headings(), m_source.name()))
                rows.push_back(previewRow(row, shape, true));
        else
            for (const exchange::CsvRow& row : m_facts->first)
                rows.push_back(previewRow({.found = row, .tidy = {}, .refused = {}}, shape, false));
    } catch (const BadInput& bad) { // a value for all rows that may not stand
        rows.clear();
        rows.push_back({.cells = {u"\u2013"_s, said(bad.found()), said(bad.expected())}});
    }
    m_preview->setTable(previewHeadings(shape), std::move(rows), 0, 1);
    m_previewView->resizeColumnsToContents();
    m_previewView->setColumnWidth(1, std::min(m_previewView->columnWidth(1), 380));
}

Job::Work TableDialog::importOf(const std::shared_ptr<exchange::ShapedReport>& report,
                                bool dryRun) const {
    return [report, dryRun, source = m_source, shape = m_editor->shape(),
            headings = m_facts->headings(), file = m_logbook.log().file(),
            who = m_near->who()](const Progress& progress) {
        log::Log log = log::Log::open(file);
        exchange::ImportSettings settings = importSettings(dryRun, progress);
        settings.who = who;
        *report = exchange::importShaped(log, source, shape, headings, settings);
    };
}

void TableDialog::count() {
    auto report = std::make_shared<exchange::ShapedReport>();
    begin(tr("Counting"), importOf(report, true), [this, report] {
        m_report = report;
        m_near->ask(report->report.nearly);
        showRefused();
        say(countText());
        m_import->setEnabled(report->refused.empty() && !report->report.addedNothing() &&
                             report->report.nearly.empty());
    });
}

QString TableDialog::countText() const {
    const exchange::ShapedReport& told = *m_report;
    if (!told.refused.empty()) {
        QString words = tr("Rows that would be taken: %1; refused: %2 (see Refused). A table goes "
                           "in whole or not at all: change what the columns are, or put the rows "
                           "right in the file.")
                            .arg(std::max(0L, told.rowsRead - told.rowsRefused))
                            .arg(told.rowsRefused);
        if (!told.wholeRead)
            words += u' ' + tr("What stands after the last of them could not be looked at.");
        return words;
    }
    if (told.rowsRead == 0)
        return tr("The table holds no rows.");
    if (!told.report.nearly.empty())
        return tr("To be said first: who the new athletes are whose names are nearly others'.");
    if (told.report.addedNothing())
        return tr("Rows read: %1; the log has them all already.").arg(told.rowsRead);
    QStringList facts = reportText(told.report).split(u'\n', Qt::SkipEmptyParts);
    facts.removeFirst(); // the rows are counted here
    return tr("Rows that will be taken: %1; none is refused.").arg(told.rowsRead) + u' ' +
           facts.join(u"; "_s);
}

void TableDialog::showRefused() {
    std::vector<TextTable::Row> rows;
    if (m_report)
        for (const BadInput& bad : m_report->refused)
            rows.push_back(refusedRow(bad));
    m_tabs->setTabText(1, m_report && m_report->rowsRefused > 0
                              ? tr("Ref&used (%1)").arg(m_report->rowsRefused)
                              : tr("Ref&used"));
    m_refused->setTable(refusedHeadings(), std::move(rows), 0, 1);
    m_refusedView->resizeColumnsToContents();
    if (m_report && m_report->rowsRefused > 0)
        m_tabs->setCurrentWidget(m_refusedView);
    else if (m_open.empty())
        m_tabs->setCurrentWidget(m_previewView);
}

void TableDialog::accept() {
    if (!canImport())
        return;
    auto report = std::make_shared<exchange::ShapedReport>();
    begin(tr("Importing"), importOf(report, false), [this, report] {
        m_report = report;
        imported();
    });
    m_importing = true;
    m_editor->setEnabled(false);
    m_cancel->setText(tr("&Stop"));
    m_cancel->setFocus();
}

void TableDialog::imported() {
    if (!m_report->refused.empty()) { // the log has changed since it was counted
        showRefused();
        say(countText());
        return;
    }
    remember(m_maps, m_editor->shape(), *m_facts);
    m_logbook.applyOutsideUndo([](log::Log&) {}); // another connection wrote: all is told of it
    QDialog::accept();
}

void TableDialog::reject() {
    if (m_importing)
        m_job.stop();
    else
        QDialog::reject();
}

} // namespace slopebook::ui

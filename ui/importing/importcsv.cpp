// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/importing/importcsv.h"

#include "core/exchange/faults.h"
#include "core/model/few.h"
#include "core/model/phrases/questions.h"
#include "ui/importing/importsettings.h"
#include "ui/importing/nearnamespanel.h"
#include "ui/words/format.h"
#include "ui/words/readable.h"
#include "ui/words/said.h"

#include <QCoreApplication>
#include <QDialogButtonBox>
#include <QFileInfo>
#include <QLabel>
#include <QPlainTextEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace slopebook::ui {

namespace {
struct Report {
    Q_DECLARE_TR_FUNCTIONS(ImportReport)
};

void addNames(QStringList& lines, const QString& what, const std::vector<std::string>& names) {
    if (!names.empty())
        lines << what.arg(said(few(names)));
}

QString problemLines(const std::vector<BadInput>& faults, std::size_t total) {
    QStringList lines;
    for (const BadInput& fault : faults)
        lines << said(fault);
    if (total > faults.size())
        lines << said(questions::say("and %1 more", total - faults.size()));
    return lines.join(QLatin1Char('\n'));
}
} // namespace

QString undoText(Logbook& logbook) {
    const QUndoStack* stack = logbook.undoStack();
    return stack->canUndo() || stack->canRedo()
               ? Report::tr("Undo ends here: an import cannot be undone, and neither can any more "
                            "what was done before it. A backup beforehand is the way back.")
               : Report::tr("An import cannot be undone: a backup beforehand is the way back.");
}

QString reportText(const exchange::ImportReport& report) {
    QStringList lines;
    lines << Report::tr("Rows read: %1").arg(report.rows);
    addNames(lines, Report::tr("Without a row below the header: %1"), report.withoutRows);
    lines << Report::tr("To be added: %1 sessions, %2 sets, %3 reps")
                 .arg(report.sessionsAdded)
                 .arg(report.setsAdded)
                 .arg(report.repsAdded);
    if (report.setsAlreadyThere > 0)
        lines << Report::tr("Already in the log, left as they are: %1 sets")
                     .arg(report.setsAlreadyThere);
    addNames(lines, Report::tr("New athletes: %1"), report.athletesMade);
    addNames(lines, Report::tr("New lifts: %1"), report.liftsMade);
    addNames(lines, Report::tr("New devices: %1"), report.devicesMade);
    addNames(lines, Report::tr("New training blocks: %1"), report.blocksMade);
    addNames(lines, Report::tr("New sets of equipment: %1"), report.equipmentMade);
    addNames(lines, Report::tr("New stations: %1"), report.stationsMade);
    if (report.battery.attemptsAdded + report.battery.gapsAdded > 0)
        lines << Report::tr("Of the battery: %1 attempts, %2 tests not possible")
                     .arg(report.battery.attemptsAdded)
                     .arg(report.battery.gapsAdded);
    addNames(lines, Report::tr("New tests: %1"), report.battery.testsMade);
    addNames(lines, Report::tr("Columns not used: %1"), report.columnsNotUsed);
    if (!report.flagged.empty()) {
        lines << QString() << Report::tr("Taken, and worth a look:");
        const std::size_t shown = std::min(report.flagged.size(), fewNamed);
        for (std::size_t i = 0; i < shown; ++i)
            lines << QStringLiteral("  ") + said(report.flagged[i]);
        if (const auto more = report.flagged.size() + report.flaggedMore - shown; more > 0)
            lines << QStringLiteral("  ") + said(questions::say("and %1 more", more));
    }
    return lines.join(QLatin1Char('\n'));
}

ImportDialog::ImportDialog(Logbook& logbook, std::vector<std::filesystem::path> files,
                           QWidget* parent)
    : QDialog(parent), m_logbook(logbook), m_files(std::move(files)), m_title(new QLabel),
      m_report(new QPlainTextEdit), m_near(new NearNamesPanel), m_progress(new QProgressBar) {
    setWindowTitle(tr("Import a table"));
    build();
    connect(&m_job, &Job::progressed, m_progress, &QProgressBar::setValue);
    connect(&m_job, &Job::finished, this, [this] {
        ended();
        (this->*m_then)();
    });
    connect(&m_job, &Job::stopped, this, [this] {
        ended();
        m_title->setText(tr("Stopped. Nothing was changed."));
        m_import->setEnabled(m_canImport);
    });
    connect(&m_job, &Job::failed, this, &ImportDialog::failed);
    connect(m_near, &NearNamesPanel::changed, this, [this] {
        m_canImport = false;
        m_import->setEnabled(false);
        if (m_near->answered())
            begin(true, &ImportDialog::looked);
    });
    m_title->setText(tr("Reading\u2026"));
    begin(true, &ImportDialog::looked);
}

ImportDialog::~ImportDialog() {
    m_job.disconnect(this);
}

void ImportDialog::build() {
    m_title->setWordWrap(true);
    m_report->setReadOnly(true);
    m_report->setTabChangesFocus(true);
    m_report->setAccessibleName(tr("What the files hold"));
    m_progress->setRange(0, 1000);
    m_progress->setAccessibleName(tr("Progress"));
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
    m_import = buttons->addButton(tr("&Import"), QDialogButtonBox::AcceptRole);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(m_title);
    layout->addWidget(m_report, 1);
    layout->addWidget(m_near);
    layout->addWidget(m_progress);
    layout->addWidget(buttons);
    setTabOrder(m_report, m_import);
    setTabOrder(m_import, buttons->button(QDialogButtonBox::Cancel));
    m_import->setDefault(true); // only now does the dialog hear of it
    resize(640, 420);
}

void ImportDialog::begin(bool dryRun, void (ImportDialog::*then)()) {
    m_then = then;
    m_found = std::make_shared<Found>();
    m_progress->setValue(0);
    m_progress->show();
    m_import->setEnabled(false);
    m_job.start([found = m_found, files = m_files, file = m_logbook.log().file(), dryRun,
                 who = m_near->who()](const Progress& progress) {
        log::Log own = log::Log::open(file);
        exchange::ImportSettings settings = importSettings(dryRun, progress);
        settings.who = who;
        try {
            found->report = exchange::importTidy(own, files, settings);
        } catch (const exchange::Faults& faults) {
            found->faults = faults.kept();
            found->total = faults.total();
            throw;
        }
    });
}

void ImportDialog::ended() {
    m_progress->hide();
    m_importing = false;
}

void ImportDialog::looked() {
    QStringList names;
    for (const auto& file : m_files)
        names << QFileInfo(nameOf(file)).fileName();
    const exchange::ImportReport& report = m_found->report;
    m_near->ask(report.nearly);
    m_canImport = !report.addedNothing() && report.nearly.empty();
    const QString all = namesText(names);
    if (!report.nearly.empty())
        m_title->setText(tr("%1 names athletes who are nearly others.").arg(all));
    else if (m_canImport)
        m_title->setText(tr("%1 can go into the log, whole or not at all.").arg(all) +
                         QLatin1Char(' ') + undoText(m_logbook));
    else if (report.holdsNothing())
        m_title->setText(tr("%1 holds no rows below its header.").arg(all));
    else
        m_title->setText(tr("%1 holds nothing that the log does not have.").arg(all));
    m_report->setPlainText(reportText(report));
    m_import->setEnabled(m_canImport);
}

void ImportDialog::failed(const QString& why) {
    const bool wasImporting = m_importing;
    ended();
    m_canImport = false;
    m_title->setText(wasImporting ? tr("The import failed; nothing was written.")
                                  : tr("This cannot be taken in; nothing was written."));
    m_report->setPlainText(m_found->faults.empty() ? why
                                                   : problemLines(m_found->faults, m_found->total));
}

void ImportDialog::accept() {
    if (!m_canImport || m_job.running())
        return;
    begin(false, &ImportDialog::imported);
    m_importing = true;
}

void ImportDialog::imported() {
    m_logbook.applyOutsideUndo([](log::Log&) {}); // another connection wrote: all is told of it
    QDialog::accept();
}

void ImportDialog::reject() {
    if (m_importing)
        m_job.stop();
    else
        QDialog::reject();
}

QString ImportDialog::text() const {
    return m_report->toPlainText();
}

} // namespace slopebook::ui

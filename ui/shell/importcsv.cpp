// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/importcsv.h"

#include "core/answers/published.h"
#include "core/answers/testkinds.h"
#include "ui/shell/openlog.h"

#include <QCoreApplication>
#include <QDialogButtonBox>
#include <QFileInfo>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace slopebook::ui {

namespace {
struct Report {
    Q_DECLARE_TR_FUNCTIONS(ImportReport)
};

void addNames(QStringList& lines, const QString& what, const std::vector<std::string>& names) {
    if (names.empty())
        return;
    QStringList all;
    for (const std::string& name : names)
        all << QString::fromStdString(name);
    lines << what.arg(all.join(QStringLiteral(", ")));
}
} // namespace

QString reportText(const exchange::ImportReport& report) {
    QStringList lines;
    lines << Report::tr("Rows read: %1").arg(report.rows);
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
    if (report.battery.attemptsAdded + report.battery.gapsAdded > 0)
        lines << Report::tr("Of the battery: %1 attempts, %2 tests not possible")
                     .arg(report.battery.attemptsAdded)
                     .arg(report.battery.gapsAdded);
    addNames(lines, Report::tr("New tests: %1"), report.battery.testsMade);
    addNames(lines, Report::tr("Columns not used: %1"), report.columnsNotUsed);
    if (!report.flagged.empty()) {
        lines << QString() << Report::tr("Taken, and worth a look:");
        for (const std::string& flag : report.flagged)
            lines << QStringLiteral("  ") + QString::fromStdString(flag);
    }
    return lines.join(QLatin1Char('\n'));
}

ImportDialog::ImportDialog(Logbook& logbook, std::vector<std::filesystem::path> files,
                           QWidget* parent)
    : QDialog(parent), m_logbook(logbook), m_files(std::move(files)), m_title(new QLabel),
      m_report(new QPlainTextEdit) {
    setWindowTitle(tr("Import CSV"));
    build();
    look();
}

void ImportDialog::build() {
    m_title->setWordWrap(true);
    m_report->setReadOnly(true);
    m_report->setTabChangesFocus(true);
    m_report->setAccessibleName(tr("What the files hold"));
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
    m_import = buttons->addButton(tr("&Import"), QDialogButtonBox::AcceptRole);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(m_title);
    layout->addWidget(m_report, 1);
    layout->addWidget(buttons);
    m_import->setDefault(true); // only now does the dialog hear of it
    resize(640, 420);
}

exchange::ImportReport ImportDialog::run(bool dryRun) {
    exchange::ImportSettings settings;
    settings.dryRun = dryRun;
    settings.publishedMvt = [](const std::string& lift, VelocityKind kind) -> std::optional<Mvt> {
        const auto row = answers::published(lift, kind);
        return row ? row->mvt : std::nullopt;
    };
    settings.knownTest = [](const std::string& test) { return answers::builtInTestKind(test); };
    exchange::ImportReport report;
    m_logbook.applyOutsideUndo(
        [&](log::Log& log) { report = exchange::importTidy(log, m_files, settings); }, dryRun);
    return report;
}

void ImportDialog::look() {
    QStringList names;
    for (const auto& file : m_files)
        names << QFileInfo(nameOf(file)).fileName();
    try {
        const exchange::ImportReport report = run(true);
        m_canImport = !report.addedNothing();
        m_title->setText(m_canImport ? tr("%1 can go into the log, whole or not at all. An import "
                                          "is not undone by Undo: "
                                          "a backup beforehand is the way back.")
                                           .arg(names.join(QStringLiteral(", ")))
                                     : tr("%1 holds nothing that the log does not have.")
                                           .arg(names.join(QStringLiteral(", "))));
        m_report->setPlainText(reportText(report));
    } catch (const std::exception& error) {
        m_canImport = false;
        m_title->setText(
            tr("%1 cannot be taken in; nothing was written. Expected: UTF-8 CSV with a "
               "header row date,athlete,lift,set,load_kg,rep,velocity and one row a "
               "rep. A workbook comes in saved as CSV.")
                .arg(names.join(QStringLiteral(", "))));
        m_report->setPlainText(QString::fromUtf8(error.what()));
    }
    m_import->setEnabled(m_canImport);
}

void ImportDialog::accept() {
    try {
        run(false);
        QDialog::accept();
    } catch (const std::exception& error) {
        m_title->setText(tr("The import failed; nothing was written."));
        m_report->setPlainText(QString::fromUtf8(error.what()));
        m_import->setEnabled(false);
    }
}

QString ImportDialog::text() const {
    return m_report->toPlainText();
}

} // namespace slopebook::ui

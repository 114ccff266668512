// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/filedeeds.h"

#include "core/log/newlog.h"
#include "core/questions/wholeexport.h"
#include "ui/importing/importtables.h"
#include "ui/parts/filedialog.h"
#include "ui/parts/longwork.h"
#include "ui/window/mainwindow.h"
#include "ui/window/workspace.h"
#include "ui/words/format.h"
#include "ui/words/said.h"

#include <QApplication>
#include <QClipboard>
#include <QFileInfo>
#include <QStandardPaths>

#include <utility>

namespace slopebook::ui {

namespace {
QString suffix() {
    return QStringLiteral(".slopebook");
}

QString logFilter() {
    return MainWindow::tr("Logs (*.slopebook);;All files (*)");
}

// "Season 2026.27" has no ending, whatever stands after its point.
QString withEnding(const QString& file) {
    if (file.isEmpty())
        return file;
    for (const char* known : {".slopebook", ".db", ".sqlite", ".sqlite3"})
        if (file.endsWith(QLatin1String(known), Qt::CaseInsensitive))
            return file;
    return file + suffix();
}

QString startFolder() {
    return QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
}
} // namespace

QStringList FileDeeds::tablesOf(const QStringList& files) {
    QStringList tables;
    for (const QString& file : files)
        if (const QString suffix = QFileInfo(file).suffix().toLower();
            suffix.startsWith(QLatin1String("xls")) || suffix == QLatin1String("ods"))
            m_window.trouble(
                MainWindow::tr(
                    "%1 is a workbook: copy its cells and paste them into a session, or save "
                    "the sheet as CSV and import that.")
                    .arg(QFileInfo(file).fileName()));
        else
            tables << file;
    return tables;
}

void FileDeeds::importFiles(const QStringList& files) {
    if (!m_window.workspace() || files.isEmpty())
        return;
    if (const QStringList tables = tablesOf(files); !tables.isEmpty())
        m_window.workspace()->importCsv(tables, m_window.surroundings().settings.importMaps);
}

// The log is made under another name and put in place once something is in it: an import that is
// cancelled leaves nothing.
void FileDeeds::importIntoNew(const QString& file, const QStringList& files) {
    const QStringList tables = tablesOf(files);
    if (tables.isEmpty())
        return;
    try {
        log::NewLog making(pathOf(QFileInfo(file).absoluteFilePath()));
        {
            Logbook logbook(log::Log::open(making.file()));
            logbook.setLoadUnit(m_window.surroundings().settings.unit);
            if (!importTables(logbook, tables, m_window.surroundings().settings.importMaps,
                              &m_window))
                return;
        }
        making.place();
    } catch (const std::exception& error) {
        m_window.trouble(said(error));
        return;
    }
    m_window.openLogFile(file);
    m_window.say(MainWindow::tr("Imported."));
}

QString FileDeeds::askNewName() {
    const QString file = filedialog::saveNew(
        &m_window, {.title = MainWindow::tr("New log"),
                    .start = startFolder() + QStringLiteral("/squad") + suffix(),
                    .filter = logFilter()});
    return withEnding(file);
}

void FileDeeds::askNew() {
    if (const QString file = askNewName(); !file.isEmpty())
        m_window.createLogFile(file);
}

void FileDeeds::askOpen() {
    const QString file = filedialog::open(
        &m_window,
        {.title = MainWindow::tr("Open a log"), .start = startFolder(), .filter = logFilter()});
    if (!file.isEmpty())
        m_window.openLogFile(file);
}

void FileDeeds::askImport() {
    QString fresh;
    if (!m_window.workspace()) { // CSV goes into a log: where it is to be kept comes first
        fresh = askNewName();
        if (fresh.isEmpty())
            return;
        if (QFileInfo::exists(fresh)) { // then into that one
            m_window.openLogFile(std::exchange(fresh, QString()));
            if (!m_window.workspace())
                return;
        }
    }
    const QStringList files = filedialog::openMany(
        &m_window,
        {.title = MainWindow::tr("Import tables"),
         .start = startFolder(),
         .filter = MainWindow::tr("Tables (*.csv *.txt *.tsv *.xlsx *.ods);;All files (*)")});
    if (fresh.isEmpty())
        importFiles(files);
    else
        importIntoNew(fresh, files);
}

void FileDeeds::askBackUp() {
    if (!m_window.workspace())
        return;
    const QString file = filedialog::saveNew(
        &m_window, {.title = MainWindow::tr("Back up to"),
                    .start = startFolder() + QStringLiteral("/backup") + suffix(),
                    .filter = logFilter()});
    if (file.isEmpty())
        return;
    try {
        const auto findings = m_window.workspace()->logbook().log().backup(pathOf(file));
        if (findings.empty())
            m_window.say(MainWindow::tr("Backed up, and the copy checked: %1").arg(file));
        else
            m_window.trouble(
                MainWindow::tr(
                    "Backed up, but the log is not sound, and the copy %1 is no better. The "
                    "first of what was found: %2")
                    .arg(file, said(findings.front())));
    } catch (const std::exception& error) {
        m_window.trouble(said(error));
    }
}

void FileDeeds::importClipboard() {
    if (!m_window.workspace())
        return;
    const QString text = QApplication::clipboard()->text();
    if (text.trimmed().isEmpty())
        m_window.say(MainWindow::tr("There is no table to import: copy its cells first."));
    else
        m_window.workspace()->importText(text, m_window.surroundings().settings.importMaps);
}

void FileDeeds::askExport() {
    if (!m_window.workspace())
        return;
    const QString folder =
        filedialog::saveNew(&m_window, {.title = MainWindow::tr("Export to a new folder"),
                                        .start = startFolder() + QStringLiteral("/export")});
    if (folder.isEmpty())
        return;
    try {
        const auto work = [file = m_window.workspace()->logbook().log().file(),
                           target = pathOf(folder)](const Progress& progress) {
            questions::exportWhole(log::Log::open(file, log::Access::ReadOnly), target, progress);
        };
        if (doLongWork(&m_window, MainWindow::tr("Exporting"), work))
            m_window.say(MainWindow::tr("Exported, as CSV and as a workbook: %1").arg(folder));
        else
            m_window.say(MainWindow::tr("Stopped. Nothing was written."));
    } catch (const std::exception& error) {
        m_window.trouble(said(error));
    }
}

} // namespace slopebook::ui

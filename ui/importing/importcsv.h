// SPDX-License-Identifier: GPL-3.0-or-later
// CSV into the open log: what is in the files is told first, then they go in whole or not at all.
#pragma once

#include "core/exchange/tidyimport.h"
#include "ui/edits/logbook.h"
#include "ui/parts/job.h"

#include <QDialog>

#include <filesystem>
#include <memory>
#include <vector>

class QLabel;
class QPlainTextEdit;
class QProgressBar;
class QPushButton;

namespace slopebook::ui {

class NearNamesPanel;

/// The report in words, one fact a line.
QString reportText(const exchange::ImportReport& report);
/// What an import does to undo, to be said before it.
QString undoText(Logbook& logbook);

/// Reads the files without writing, shows what they hold or what is wrong with them, and on Enter
/// takes them in. Both on a thread of its own, with a connection of its own, and both can be
/// stopped.
class ImportDialog final : public QDialog {
    Q_OBJECT
    Q_PROPERTY(QString reportText READ text)
public:
    ImportDialog(Logbook& logbook, std::vector<std::filesystem::path> files, QWidget* parent);
    ~ImportDialog() override;
    void accept() override; ///< the dialog closes when all is in
    void reject() override; ///< stops an import, else closes
    /// What stands in the dialog: report or problem.
    QString text() const;
    bool canImport() const { return m_canImport; }

private:
    void build();
    void look();
    void begin(bool dryRun, void (ImportDialog::*then)());
    void ended();
    void looked();
    void imported();
    void failed(const QString& why);

    Logbook& m_logbook;
    std::vector<std::filesystem::path> m_files;
    QLabel* m_title;
    QPlainTextEdit* m_report;
    NearNamesPanel* m_near;
    QProgressBar* m_progress;
    QPushButton* m_import = nullptr;
    bool m_canImport = false, m_importing = false;
    void (ImportDialog::*m_then)() = nullptr; ///< what follows the work under way
    struct Found {
        exchange::ImportReport report;
        std::vector<BadInput> faults; ///< where several things are wrong
        std::size_t total = 0;
    };
    std::shared_ptr<Found> m_found;
    Job m_job; // last: its work ends before what it works on goes
};

} // namespace slopebook::ui

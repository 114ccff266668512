// SPDX-License-Identifier: GPL-3.0-or-later
// CSV into the open log: what is in the files is told first, then they go in whole or not at all.
#pragma once

#include "core/exchange/tidyimport.h"
#include "ui/edits/logbook.h"

#include <QDialog>

#include <filesystem>
#include <vector>

class QLabel;
class QPlainTextEdit;
class QPushButton;

namespace slopebook::ui {

/// The report in words, one fact a line.
QString reportText(const exchange::ImportReport& report);

/// Reads the files without writing, shows what they hold or what is wrong with them, and on Enter
/// takes them in.
class ImportDialog final : public QDialog {
    Q_OBJECT
    Q_PROPERTY(QString reportText READ text)
public:
    ImportDialog(Logbook& logbook, std::vector<std::filesystem::path> files, QWidget* parent);
    void accept() override;
    /// What stands in the dialog: report or problem.
    QString text() const;
    bool canImport() const { return m_canImport; }

private:
    void build();
    void look();
    exchange::ImportReport run(bool dryRun);

    Logbook& m_logbook;
    std::vector<std::filesystem::path> m_files;
    QLabel* m_title;
    QPlainTextEdit* m_report;
    QPushButton* m_import = nullptr;
    bool m_canImport = false;
};

} // namespace slopebook::ui

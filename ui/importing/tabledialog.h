// SPDX-License-Identifier: GPL-3.0-or-later
// Any table into the open log: what it is is proposed, the coach looks at it and says what is
// otherwise, and then it goes in whole or not at all.
#pragma once

#include "core/exchange/proposal.h"
#include "core/exchange/shapedimport.h"
#include "ui/edits/logbook.h"
#include "ui/importing/importmaps.h"
#include "ui/parts/job.h"
#include "ui/parts/texttable.h"

#include <QDialog>

#include <functional>
#include <memory>

class QLabel;
class QProgressBar;
class QPushButton;
class QTabWidget;
class QTableView;
class QTimer;

namespace slopebook::ui {

class NearNamesPanel;
class ShapeEditor;

/// What the window shows, for a table that does not say it itself; as tidy CSV writes it.
struct ShownInWindow {
    std::string athlete{}, lift{}, day{};
};

class TableDialog final : public QDialog {
    Q_OBJECT
public:
    /// maps: what is remembered from table to table; a shape that was used is added to it.
    /// shown: proposed for all rows of a table without a column for it.
    TableDialog(Logbook& logbook, exchange::Source source, ImportMaps& maps,
                QWidget* parent = nullptr, ShownInWindow shown = {});
    ~TableDialog() override;

    void accept() override; ///< imports; the dialog closes when that is done
    void reject() override; ///< stops an import, else closes
    /// What was counted last: rows that are taken and refused, or what is to be said first.
    QString summary() const;
    bool canImport() const;
    ShapeEditor& editor() { return *m_editor; }
    const exchange::ShapedReport* report() const { return m_report.get(); }

private:
    void build();
    void connectParts();
    void look();
    void adopt(const exchange::FileFacts& facts);
    void shapeChanged();
    void showPreview();
    void count();
    /// The table into the log, or what would come of it.
    Job::Work importOf(const std::shared_ptr<exchange::ShapedReport>& report, bool dryRun) const;
    void imported();
    void showRefused();
    void begin(const QString& what, Job::Work work, std::function<void()> then);
    void ended();
    void say(const QString& words);
    QString countText() const;
    bool takeShown(exchange::Shape& shape) const;

    Logbook& m_logbook;
    exchange::Source m_source;
    ImportMaps& m_maps;
    ShownInWindow m_shown;
    std::shared_ptr<exchange::FileFacts> m_facts;
    std::shared_ptr<exchange::ShapedReport> m_report;
    std::vector<exchange::Question> m_open;
    bool m_importing = false, m_lookedOnce = false;
    std::function<void()> m_then; ///< what follows the work under way
    QTimer* m_wait;
    QLabel* m_about;
    ShapeEditor* m_editor;
    QTabWidget* m_tabs;
    TextTable* m_preview;
    TextTable* m_refused;
    QTableView* m_previewView;
    QTableView* m_refusedView;
    QLabel* m_summary;
    NearNamesPanel* m_near;
    QProgressBar* m_progress;
    QPushButton* m_import = nullptr;
    QPushButton* m_cancel = nullptr;
    Job m_job; // last: its work ends before what it works on goes
};

} // namespace slopebook::ui

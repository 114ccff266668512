// SPDX-License-Identifier: GPL-3.0-or-later
// The window: menus, the welcome page or the open log, messages, what is remembered.
#pragma once

#include "ui/window/actions.h"
#include "ui/window/helpdialog.h"
#include "ui/window/openlog.h"
#include "ui/window/run.h"

#include <QMainWindow>

#include <memory>

class QStackedWidget;

namespace slopebook::ui {

class OpeningCheck;
class Translation;
class WelcomePage;
class Workspace;

class MainWindow final : public QMainWindow {
    Q_OBJECT
public:
    explicit MainWindow(Surroundings surroundings);
    ~MainWindow() override;

    /// Opens or makes a log; what goes wrong is said in the window, and what was open stays open.
    void openLogFile(const QString& file);
    void createLogFile(const QString& file);
    void openSample();
    void importFiles(const QStringList& files);
    void closeLogFile();
    /// Speaks that language from now on; the open log, its undo and what is shown stay. Empty: as
    /// the desktop.
    void speak(const QString& language);
    /// Shows and takes loads in that unit from now on; all else stays.
    void countIn(LoadUnit unit);
    /// Makes the controls large enough for a finger from now on, or small again; all else stays.
    void fitForFingers(bool wanted);

    /// Files into a log that the import makes: it is there once something is in it, and then
    /// opened.
    void importIntoNew(const QString& file, const QStringList& files);

    const Actions& actions() const { return m_actions; }
    /// Nothing while the welcome page is shown.
    Workspace* workspace() const { return m_workspace; }
    WelcomePage& welcome() { return *m_welcome; }
    /// What would be remembered if the window closed now.
    Settings settings() const;

protected:
    void closeEvent(QCloseEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

private:
    void connectLogActions();
    void connectRecordActions();
    void connectGoAndHelp();
    void connectView();
    void connectCharts();
    void connectUndo();
    void nameSteps();
    void build();
    void rebuild();
    void keep() const;
    void open(const std::function<OpenedLog()>& opener);
    void adopt(OpenedLog opened);
    void fitActions();
    void fillRecent();
    void remember(const QString& file);
    void say(const QString& message);
    void trouble(const QString& message);
    QString askNewName();
    QStringList tablesOf(const QStringList& files);
    void askNew();
    void askOpen();
    void askImport();
    void askBackUp();
    void askExport();
    void importClipboard();
    /// Shows the backups of the file whose trouble was told of last, or of the open log.
    void askGoBack();
    void showBackups(const std::filesystem::path& log);
    void goBack(const std::filesystem::path& log, const std::filesystem::path& backup);
    /// Whether a damaged log is to be written to all the same.
    void askWriteOn();
    /// The open log opened anew in another way, at the same place.
    void reopen(const std::function<OpenedLog()>& opener);
    void beginBackup();
    void beginCheck();
    void damageFound(const std::filesystem::path& log, const QString& why);
    void showHelp(HelpDialog::Page page);
    void showAbout();

    Surroundings m_surroundings;
    std::unique_ptr<Translation> m_translation; ///< before all that has words
    Actions m_actions{};
    QStackedWidget* m_stack = nullptr;
    WelcomePage* m_welcome = nullptr;
    Workspace* m_workspace = nullptr;
    std::unique_ptr<OpeningCheck> m_check; ///< of the open log; may be done
    std::filesystem::path m_inTrouble;     ///< what could not be opened and has backups
};

} // namespace slopebook::ui

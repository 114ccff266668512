// SPDX-License-Identifier: GPL-3.0-or-later
// The window: menus, the welcome page or the open log, messages, what is remembered.
#pragma once

#include "ui/window/actions.h"
#include "ui/window/openlog.h"
#include "ui/window/run.h"

#include <QMainWindow>

#include <memory>

class QStackedWidget;

namespace slopebook::ui {

class FileDeeds;
class LogKeeper;
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
    /// At the program's start: that log, else the one that was open at the end of the last run.
    /// Shows what was left there; on a test day the floor.
    void begin(const QString& file);
    void openSample();
    void importFiles(const QStringList& files);
    void closeLogFile();
    /// Speaks that language from now on; the open log, its undo and what is shown stay. Empty: as
    /// the desktop.
    void speak(const QString& language);
    /// Shows and takes loads in that unit from now on; all else stays.
    void countIn(LoadUnit unit);
    /// Light or dark from now on.
    void wear(Scheme scheme);
    /// Out of the list of recent logs; the file stays.
    void forget(const QString& recent);
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

    // For those who do what the menus offer.
    Surroundings& surroundings() { return m_surroundings; }
    LogKeeper& logs() { return *m_logs; }
    FileDeeds& files() { return *m_files; }
    /// Shows that log instead of the one that was open.
    void adopt(OpenedLog opened);
    /// A short sentence, for a while.
    void say(const QString& message);
    /// What must not be missed.
    void trouble(const QString& message);
    void keep() const; ///< the settings

protected:
    void closeEvent(QCloseEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

private:
    void build();
    void rebuild();
    void fitActions();
    void fillRecent();
    void remember(const QString& file);
    void fitScreen();
    void showTestDay();

    Surroundings m_surroundings;
    std::unique_ptr<Translation> m_translation; ///< before all that has words
    std::unique_ptr<SchemeKeeper> m_scheme;
    std::unique_ptr<LogKeeper> m_logs;
    std::unique_ptr<FileDeeds> m_files;
    Actions m_actions{};
    QStackedWidget* m_stack = nullptr;
    WelcomePage* m_welcome = nullptr;
    Workspace* m_workspace = nullptr;
};

} // namespace slopebook::ui

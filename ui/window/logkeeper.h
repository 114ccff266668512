// SPDX-License-Identifier: GPL-3.0-or-later
// Which log the window has open: opened, made, looked through, backed up, gone back to a backup.
#pragma once

#include "ui/window/openlog.h"

#include <QObject>

#include <filesystem>
#include <functional>
#include <memory>

namespace slopebook::ui {

class MainWindow;
class OpeningCheck;

/// What goes wrong is said in the window, and what was open stays open.
class LogKeeper final : public QObject {
    Q_OBJECT
public:
    explicit LogKeeper(MainWindow& window);
    ~LogKeeper() override;

    void openFile(const QString& file);
    void createFile(const QString& file);
    /// A copy of the sample, made where there is none yet.
    void openSample();
    /// The open log meets its store from now on, if it has one and is known to be sound. store:
    /// what met it before the window was built anew.
    void beginMeetings(std::shared_ptr<StoreKeeper> store = {});
    /// Whether the open log is known to be sound: meetings wait for that.
    bool sound() const { return m_sound; }
    /// The window has closed its log.
    void forget();
    /// The window has one that can be read.
    void clearTrouble() { m_inTrouble.clear(); }
    /// Whether there is a backup of what could not be opened.
    bool hasWayBack() const { return !m_inTrouble.empty(); }

    /// Shows the backups of the file whose trouble was told of last, or of the open log.
    void askGoBack();
    void showBackupsOfOpen();
    /// Whether a damaged log is to be written to all the same.
    void askWriteOn();

private:
    void open(const std::function<OpenedLog()>& opener);
    /// The open log opened anew in another way, at the same place.
    void reopen(const std::function<OpenedLog()>& opener);
    void showBackups(const std::filesystem::path& log);
    void goBack(const std::filesystem::path& log, const std::filesystem::path& backup);
    void beginBackup();
    void beginCheck();
    void damageFound(const std::filesystem::path& log, const QString& why);

    MainWindow& m_window;
    std::unique_ptr<OpeningCheck> m_check; ///< of the open log; may be done
    bool m_sound = false;                  ///< the open log is, as far as is known
    std::filesystem::path m_inTrouble;     ///< what could not be opened and has backups
};

} // namespace slopebook::ui

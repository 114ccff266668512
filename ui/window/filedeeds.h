// SPDX-License-Identifier: GPL-3.0-or-later
// What goes into a log from files and out of it into files, each asked for by a dialog.
#pragma once

#include <QStringList>

namespace slopebook::ui {

class MainWindow;

/// What goes wrong is said in the window.
class FileDeeds {
public:
    explicit FileDeeds(MainWindow& window) : m_window(window) {}

    void askNew();
    void askOpen();
    void askImport();
    void askBackUp();
    void askExport();
    void importClipboard();
    void importFiles(const QStringList& files);
    /// Files into a log that the import makes: it is there once something is in it, and then
    /// opened.
    void importIntoNew(const QString& file, const QStringList& files);

private:
    QString askNewName();
    QStringList tablesOf(const QStringList& files);

    MainWindow& m_window;
};

} // namespace slopebook::ui

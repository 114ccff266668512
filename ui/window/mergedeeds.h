// SPDX-License-Identifier: GPL-3.0-or-later
// Another log taken into the open one, and what both had changed to be chosen from.
#pragma once

class QString;

namespace slopebook::ui {

class MainWindow;

/// What goes wrong is said in the window.
class MergeDeeds {
public:
    explicit MergeDeeds(MainWindow& window) : m_window(window) {}

    /// Asks for the other log, shows what would come, and takes it after a backup.
    void askMerge();
    /// The same of a file that is known.
    void merge(const QString& file);
    /// Shows the open choices; says where there is none.
    void choose();
    /// A line where choices wait; nothing otherwise.
    void tellWaiting();

private:
    MainWindow& m_window;
};

} // namespace slopebook::ui

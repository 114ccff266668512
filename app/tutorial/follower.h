// SPDX-License-Identifier: GPL-3.0-or-later
// Somebody who has never seen the window and does what the tutorial says, to the letter: presses
// what stands in bold, types what stands as typed, and looks for what is said to be shown.
#pragma once

#include "ui/window/tutorial.h"

#include <QPointer>

class QComboBox;

namespace slopebook::ui {
class MainWindow;
}

namespace slopebook::app {

class Follower final {
public:
    explicit Follower(ui::MainWindow& window) : m_window(window) {}

    /// Does one step. Says what of it could not be done or is not shown; empty: all was.
    QString follow(const ui::TutorialStep& step);

private:
    QString obey(const QString& mark, const QString& words);
    bool press(const QString& words);
    bool pressMenu(const QString& way, bool really);
    bool choose(QComboBox& box, const QString& words) const;
    bool pressInLists(const QString& words) const;
    void settle() const;

    ui::MainWindow& m_window;
    QPointer<QComboBox> m_named; ///< the choice whose label was named: the next words are for it
};

/// Whether those words can be read in the window, in the case they are written in or another.
bool isShown(const ui::MainWindow& window, const QString& words);

} // namespace slopebook::app

// SPDX-License-Identifier: GPL-3.0-or-later
// The open log and its shared store: joined, met, left.
#pragma once

#include <memory>

namespace slopebook::ui {

class MainWindow;
class StoreKeeper;
class StoreLine;

/// What goes wrong is said in the window.
class StoreDeeds {
public:
    explicit StoreDeeds(MainWindow& window) : m_window(window) {}

    /// From now on the log meets its store, if it has one, and the window says how that stands.
    /// kept: what met it before the window was built anew.
    void begin(std::shared_ptr<StoreKeeper> kept = {});
    /// Asks for the store and joins it; or for another address or squad, where there is one.
    void join();
    void meetNow();
    /// What came and what waits.
    void show();
    /// Asks first.
    void leave();

private:
    /// Nothing, and said why, where the log meets none or not yet. Another window may have joined
    /// it.
    StoreLine* line();

    MainWindow& m_window;
};

} // namespace slopebook::ui

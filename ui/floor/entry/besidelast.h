// SPDX-License-Identifier: GPL-3.0-or-later
// Today beside last time, in a line of its own over the sets.
#pragma once

#include "ui/parts/settledlabel.h"

#include <functional>

namespace slopebook::ui {

class BesideLast final : public SettledLabel {
public:
    /// asked: what it says; empty: nothing. It is asked after what a key changes is drawn.
    explicit BesideLast(std::function<QString()> asked);

    /// room: whether its line is kept while it says nothing: a line that comes lays the whole page
    /// out anew.
    void ask(bool room);
    void say(const QString& told);

private:
    std::function<QString()> m_what;
    bool m_asked = false; ///< that is still to be shown
};

} // namespace slopebook::ui

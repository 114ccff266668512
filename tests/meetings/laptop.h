// SPDX-License-Identifier: GPL-3.0-or-later
// A laptop: a screen of its own (Xvfb), a home of its own, the program itself in it, and hands at
// its keys and its mouse (xdotool). What it did is read from its log, never from its memory.
#pragma once

#include "core/log/log.h"
#include "core/meetings/joining.h"

#include <QProcess>

#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <string>

namespace slopebook::test {

/// Until that is so, looking again and again; false: it never was. ms: a window under sanitizers on
/// a busy machine takes its time.
bool comes(const std::function<bool()>& what, int ms = 60'000);

class Laptop {
public:
    /// Starts the screen. home is made. Throws std::runtime_error with a sentence.
    explicit Laptop(std::filesystem::path home);
    ~Laptop();
    Laptop(const Laptop&) = delete;
    Laptop& operator=(const Laptop&) = delete;

    /// What it takes; empty: nothing is missing.
    static QString missing();

    const std::filesystem::path& home() const { return m_home; }
    std::filesystem::path log() const { return m_home / "mine.slopebook"; }

    /// Opens the window on the log, and waits until it is there.
    bool open();
    /// Asks it to quit by its key; its exit status, or nothing where it stays.
    std::optional<int> quit();
    /// Whether the window runs; what it printed where it does not.
    QString trouble();

    /// Whether a window of that title is on the screen: a regular expression.
    bool shows(const QString& title);
    /// Gives the keys to it. False: it is not there.
    bool focus(const QString& title);
    /// As xdotool names them: "ctrl+l", "Return".
    void keys(const QStringList& names);
    void type(const QString& text);
    /// Into the line of a set, by its key, with Return.
    void enter(const QString& line);
    /// A click there, in px from the window's left or right and upper or lower edge (negative).
    void click(const QString& title, int x, int y);
    /// Kept where SLOPEBOOK_PICTURES names a folder, to be looked at.
    void keepPicture(const QString& name);

    /// What the log says, asked anew.
    template <class Asked>
    auto says(const Asked& asked) const {
        const log::Log log = log::Log::open(this->log(), log::Access::ReadOnly);
        return asked(log);
    }
    std::size_t setsOf(const std::string& athlete, double kg) const;
    bool has(const std::string& athlete) const;
    /// Nothing: it meets none.
    std::optional<meetings::Joined> joined() const;

    static const QString mainWindow;

private:
    struct Ran {
        int exit = -1;
        QString out;
    };
    Ran hands(const QStringList& arguments);

    std::filesystem::path m_home;
    QProcessEnvironment m_surroundings;
    QProcess m_screen;
    QProcess m_window;
};

} // namespace slopebook::test

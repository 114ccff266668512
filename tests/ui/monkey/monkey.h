// SPDX-License-Identifier: GPL-3.0-or-later
// A monkey at the window: throws dice for what a coach does next, does it with keys, mouse and
// wheel, and keeps a book of what was entered beside it. After every step what is on disk (read by
// SQL) must be what the book says, and what the window shows must be what was chosen.
#pragma once

#include "tests/ui/monkey/book.h"
#include "tests/ui/monkey/hands.h"
#include "tests/ui/movingclock.h"
#include "ui/window/mainwindow.h"
#include "ui/window/workspace.h"

#include <QStringList>

#include <map>
#include <memory>
#include <optional>
#include <stdexcept>

class QComboBox;
class QDateEdit;
class QLabel;
class QLineEdit;
class QTableView;

namespace slopebook::monkey {

/// What is wrong, in words; the step it came from is known to who catches it.
struct Finding : std::runtime_error {
    using std::runtime_error::runtime_error;
};

/// What the session form shows of what a coach chose.
struct Shown {
    std::string athlete, lift;
    Key session = keyToCome; ///< keyToCome: a new one
    QString day, device, place, body;
    friend bool operator==(const Shown&, const Shown&) = default;
};

/// What Qt warned of since the last look; kept by the handler that listen() puts in place.
QStringList takeWarnings();
void listen();

struct Plan {
    std::uint64_t seed = 1;
    int steps = 200;
    std::set<int> without;      ///< steps that are left out: how a trace is shortened
    std::set<std::string> only; ///< kinds of steps; empty: all
    bool known = false;         ///< only steps whose outcome is known before: for kills
    /// Called after the hands of each step, before anything is looked at: plants faults.
    std::function<void(ui::MainWindow&, const std::string& kind)> sabotage;
    /// Called with the digest of each book that the step may come to, before the keys that may.
    std::function<void(unsigned long long digest, bool settled)> tell;
};

struct Tally {
    int steps = 0, edits = 0;
    friend bool operator==(const Tally&, const Tally&) = default;
};

class Monkey {
public:
    /// Opens a window on the log, which holds athletes, lifts, devices and tests (see fillDesk).
    Monkey(const std::filesystem::path& log, Plan plan);
    ~Monkey();

    /// Goes through its plan. Throws Finding.
    void run();
    int step() const { return m_step; } ///< the one under way, or the last
    const std::string& kind() const { return m_kind; }
    /// The last steps, one line each.
    const std::deque<QString>& trace() const { return m_trace; }
    const std::map<std::string, Tally>& tally() const { return m_tally; }

private:
    struct Deed {
        const char* kind;
        int weight;
        bool known; ///< its outcome is known before
        void (Monkey::*work)();
    };
    static const std::vector<Deed>& deeds();
    const Deed& next();
    void one(const Deed& deed);

    // What a step may come to. Without any of these it must leave the disk as it is.
    void allow(const Book& after);
    void allowAnything() { m_free = m_loose = true; }
    /// What is chosen may differ afterwards.
    void allowOtherChoice() { m_free = true; }
    const Book& disk() { return m_disk.now(); }
    bool changed() { return disk() != m_book; }
    void compare();
    void compareLoose();
    void keepUndo(const Book& before);
    void compareShown();
    void checkAll();
    Shown shown() const;
    void say(const QString& what) { m_said += what; }
    [[noreturn]] static void fail(const QString& what);

    // Parts of the window.
    QWidget& bar() const;
    QLineEdit& line() const;
    QDateEdit& dayField() const;
    QString dayShown() const; ///< year-month-day; or what is being typed
    QComboBox& deviceField() const;
    QLineEdit& placeField() const;
    QLineEdit& bodyField() const;
    QTableView& setTable() const;
    QString answer() const;
    template <class Widget>
    Widget& part(const char* name) const {
        auto* found = m_window->workspace()->findChild<Widget*>(QLatin1String(name));
        if (!found)
            fail(QStringLiteral("The window has no ") + QLatin1String(name));
        return *found;
    }
    int undoIndex() const;

    // What is typed.
    SetEntry plausibleSet();
    QString lineOf(const SetEntry& set);
    QString decimal(long thousandths);
    /// The book with the session that the next set goes to (the shown, or the new one).
    SessionEntry& sessionToWrite(Book& book) const;
    void setUnder(SessionEntry& session, std::optional<std::string> device,
                  std::optional<std::string> place) const;
    UnderEntry shownUnder() const;
    Book withSets(const std::vector<SetEntry>& sets) const;
    Date day() const;
    std::string today() const;
    void goToLine();
    /// Enter, and again where a question stands, until the disk has moved.
    void enter(int most = 3);
    void mustBeThere(const Book& after, const QString& typed);
    std::optional<int> chooseRow();

    // The deeds: typing sets.
    void typeSet();
    void typeRefused();
    void typeDoubtful();
    void typeUnderTheWheel();
    void leaveHalfTyped();
    void pasteLines();
    void changeCell();
    void removeSet();
    void leaveSetOut();
    // What is chosen, and the session's head.
    void chooseAthlete();
    void chooseLift();
    void chooseSession();
    void beginSession();
    void startSession();
    void typeDay();
    void typeDevice();
    void typePlace();
    void typeBodyMass();
    void changeDetails();
    void removeSession();
    // Records.
    void addAthlete();
    void addDevice();
    void addBlock();
    void setCheckLoads();
    void typeAttempts();
    void importFile();
    // The rest of a day.
    void undo();
    void redo();
    void goUndo(bool back);
    void wheelAnywhere();
    void turnPage();
    void walkByTab();
    void sleepPastMidnight();
    void speakOtherwise();
    void clickAnywhere();
    void menuAnywhere();
    void keysAnywhere();
    void tidyUp();

    Plan m_plan;
    Dice m_dice;
    std::filesystem::path m_file;
    test::MovingClock m_clock;
    Disk m_disk;
    std::unique_ptr<ui::MainWindow> m_window;
    std::unique_ptr<Hands> m_hands;

    Book m_book;                         ///< what was entered
    Book m_first;                        ///< what stood there before the first step
    std::vector<Book> m_allowed;         ///< what the step may come to
    Shown m_chosen;                      ///< what was chosen
    std::optional<std::string> m_newDay; ///< typed for the session to come
    std::set<Key> m_lifted;              ///< sessions that got a set since the last long rest
    std::map<int, Book> m_steps;         ///< the book at each place of the undo stack
    int m_place = 0;                     ///< there
    bool m_free = false, m_loose = false;
    int m_step = -1, m_names = 0;
    std::string m_kind;
    QString m_said;
    std::deque<QString> m_trace;
    std::map<std::string, Tally> m_tally;
};

/// The log that a monkey sits down at: three athletes, two lifts, three devices, two tests and some
/// earlier sessions.
void fillDesk(const std::filesystem::path& file);

} // namespace slopebook::monkey

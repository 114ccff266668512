// SPDX-License-Identifier: GPL-3.0-or-later
// An open log in the window: the index at the left, the page at the right, what is chosen.
#pragma once

#include "ui/importing/importmaps.h"
#include "ui/parts/clock.h"
#include "ui/window/openlog.h"
#include "ui/window/pagetable.h"

#include <QWidget>

#include <functional>
#include <map>
#include <set>
#include <vector>

class QHBoxLayout;
class QStackedWidget;

namespace slopebook::ui {

class BatteryPage;
class ComparePage;
class EntryPage;
class Foot;
class Frame;
class Index;
class MessageBar;
class PageHolder;
class QuietLook;

class StationPage;
class StoreLine;
class Strip;
class WindowTypist;

/// What is typed and not written yet, as the pages give it.
struct Unwritten {
    QStringList atStations{}; ///< StationPage
    QStringList sets{};       ///< EntryPage
};

/// A page is made when it is first asked for: shown, or spoken to.
class Workspace final : public QWidget {
    Q_OBJECT
public:
    Workspace(OpenedLog opened, Clock clock, Page first = Page::Session, QWidget* parent = nullptr);
    ~Workspace() override;
    /// Hands over the open log with its undo; the workspace is of no more use then.
    OpenedLog giveUpLog();

    Logbook& logbook() { return *m_logbook; }
    const Clock& clock() const { return m_clock; }
    EntryPage& entry();
    StationPage& stations();
    /// Nothing while it was never asked for.
    const EntryPage* madeEntry() const { return m_entry; }
    Unwritten unwritten() const;
    void takeUnwritten(Unwritten kept);
    void showRest(bool wanted);
    MessageBar& bar() { return *m_bar; }

    // What is shown, and whose.
    Page page() const;
    void showPage(Page page);
    TaskPage* currentPage() const;
    /// What the shown page prints by; nothing where it has nothing to print.
    Prints* prints() const;
    std::optional<AthleteId> athlete() const;
    std::optional<LiftId> lift() const;
    QString athleteName() const; ///< as the index shows it; empty: none chosen
    QString liftName() const;
    void choose(std::optional<AthleteId> athlete, std::optional<LiftId> lift);
    void focusAthlete();
    void focusLift();
    /// After a choice what is typed next is a set, wherever the keys went before.
    void focusEntry();

    const Index& index() const { return *m_index; }
    Frame& frame() { return *m_frame; }
    /// In the program's colours as they are now.
    void dress();

    /// As importTables().
    void importCsv(const QStringList& files, ImportMaps& maps);
    /// A table from the clipboard.
    void importText(const QString& pasted, ImportMaps& maps);
    /// Undoes (else redoes) the next step and names it. What cannot be seen just now is gone to
    /// first, and said: the next call takes it.
    void step(bool undo);
    /// A short sentence below the page, for a while.
    void say(const QString& message);
    /// At the foot, and takes it over; nothing: none, and the log is not met any more from here.
    void showStore(StoreLine* line);
    /// Nothing where the log meets no store.
    StoreLine* storeLine() const { return m_store; }
    /// What others wrote is shown soon; not while a dialog is open, nor between two keys.
    void wantLook();
    /// No exception crosses the event loop: it is told in the bar.
    void guarded(const std::function<void()>& work);

    /// Of the page that is shown, where one is told from another: the station. Else empty.
    QString placeName() const;

Q_SIGNALS:
    void backupsWanted();
    void pageChanged(slopebook::ui::Page page);
    /// A station is shown or named: two windows on one log are told apart by it.
    void placeNamed();
    /// An athlete, or a lift, is to be added.
    void athleteWanted();
    void liftWanted();
    /// A table was pasted that names its own athletes or days: it is to be imported.
    void tablePasted(const QString& text);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    /// In the bar, with the way to the backups.
    void sayDamaged(const QString& why);
    void build(Page first);
    /// Where it is not made yet.
    void make(Page page);
    void connectPage(const MadePage& made);
    /// Every page that is made.
    std::vector<TaskPage*> madePages() const;
    void connectParts();
    void connectFrame();
    void closePages();
    void fitStrip();
    void openIndex();
    void pageTurned();
    void openSession(SessionId session);
    void openComparison(AthleteId athlete, const questions::LiftSide& from,
                        const questions::LiftSide& to);
    void connectWays(TaskPage* page);
    std::optional<BlockId> start() const;
    void openPlace(TaskPage::Place place);
    PageHolder* holderOf(Page page) const;
    bool isShown(const Logbook::Step& step) const;
    void goTo(const Logbook::Step& step);
    void fillAthletes();
    void fillLifts();
    void tellPages();
    void changed(Logbook::What what, qint64 session);
    void catchUp(TaskPage* page);
    void lookAround();

    std::unique_ptr<Logbook> m_logbook;
    Clock m_clock;
    Frame* m_frame = nullptr;
    Index* m_index;
    MessageBar* m_bar;
    QStackedWidget* m_stack;
    Strip* m_strip;
    Foot* m_foot;
    QHBoxLayout* m_footRow = nullptr;
    StoreLine* m_store = nullptr;
    QuietLook* m_look = nullptr;
    WindowTypist* m_typist = nullptr;
    std::vector<MadePage> m_pages;      ///< in the order of the table; empty where not made yet
    std::vector<PageHolder*> m_holders; ///< likewise
    Unwritten m_unwritten;              ///< for pages that are not made yet
    bool m_rest = false;                ///< the rest timer is wanted
    EntryPage* m_entry = nullptr;       // each of these: nothing while it is not made
    ComparePage* m_comparison = nullptr;
    BatteryPage* m_battery = nullptr;
    StationPage* m_station = nullptr;
    std::map<Part, Page> m_last; ///< shown of each part
    bool m_damaged = false;
    Date m_day{};                          ///< when the pages were last told of it
    const void* m_announced = nullptr;     ///< the edit that was gone to, for the next call to take
    std::map<AthleteId, BlockId> m_starts; ///< that changes are counted from (TaskPage::setStart)
    std::set<TaskPage*> m_behind; ///< hidden pages that have not heard of a change or a choice yet
};

} // namespace slopebook::ui

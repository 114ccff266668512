// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/mainwindow.h"

#include "core/log/history.h"
#include "ui/floor/entry/entrypage.h"
#include "ui/floor/station/stationpage.h"
#include "ui/parts/fingers.h"
#include "ui/window/filedeeds.h"
#include "ui/window/frame.h"
#include "ui/window/language.h"
#include "ui/window/logkeeper.h"
#include "ui/window/menudeeds.h"
#include "ui/window/messagebar.h"
#include "ui/window/welcomepage.h"
#include "ui/window/wheelguard.h"
#include "ui/window/workspace.h"
#include "ui/words/format.h"
#include "ui/words/readable.h"

#include <QCloseEvent>
#include <QDir>
#include <QDropEvent>
#include <QFileInfo>
#include <QMenu>
#include <QMenuBar>
#include <QMimeData>
#include <QScreen>
#include <QStackedWidget>

#include <algorithm>
#include <utility>

namespace slopebook::ui {

namespace {
constexpr int mostRecent = 10;
constexpr QSize firstSize{1240, 680};
constexpr int titleBar = 40, edge = 4; // px, that a desktop puts over and around it, at the most

/// As near to where it was as the screen has room for.
QRect fittingOn(const QRect& screen, QRect window) {
    const QRect room = screen.adjusted(edge, titleBar, -edge, -edge);
    window.setSize(window.size().boundedTo(room.size()));
    window.moveLeft(std::clamp(window.left(), room.left(),
                               std::max(room.left(), room.right() + 1 - window.width())));
    window.moveTop(std::clamp(window.top(), room.top(),
                              std::max(room.top(), room.bottom() + 1 - window.height())));
    return window;
}
} // namespace

MainWindow::MainWindow(Surroundings surroundings)
    : m_surroundings(std::move(surroundings)),
      m_translation(std::make_unique<Translation>(m_surroundings.settings.language)),
      m_scheme(std::make_unique<SchemeKeeper>(m_surroundings.settings.scheme)),
      m_logs(std::make_unique<LogKeeper>(*this)), m_files(std::make_unique<FileDeeds>(*this)) {
    new WheelGuard(this);
    connect(m_scheme.get(), &SchemeKeeper::dressed, this, [this] {
        if (m_workspace)
            m_workspace->dress();
    });
    setAcceptDrops(true);
    fitFingers(m_surroundings.settings.fingers.value_or(touchScreenPresent()));
    build();
    resize(firstSize);
    restoreGeometry(m_surroundings.settings.geometry);
    restoreState(m_surroundings.settings.windowState);
    fitScreen();
}

MainWindow::~MainWindow() = default;

// A window that was kept on a larger screen, or at a smaller scale, is brought onto this one.
void MainWindow::fitScreen() {
    const QScreen* on = screen();
    if (!on || isMaximized() || isFullScreen())
        return;
    if (!on->availableGeometry().contains(geometry()))
        setGeometry(fittingOn(on->availableGeometry(), geometry()));
}

void MainWindow::build() {
    setWindowTitle(tr("Slopebook"));
    m_actions = makeActions(*this);
    m_stack = new QStackedWidget;
    m_welcome = new WelcomePage(!m_surroundings.sampleLog.empty());
    m_stack->addWidget(m_welcome);
    setCentralWidget(m_stack);
    connectMenus(*this);
    fillRecent();
    fitActions();
}

void MainWindow::rebuild() {
    m_surroundings.settings = settings();
    std::optional<OpenedLog> opened;
    std::optional<AthleteId> athlete;
    std::optional<LiftId> lift;
    std::optional<std::optional<SessionId>> session; // of the session form, where it was made
    if (m_workspace) {
        athlete = m_workspace->athlete();
        lift = m_workspace->lift();
        if (const EntryPage* entry = m_workspace->madeEntry())
            session = entry->session();
        opened = m_workspace->giveUpLog();
        m_workspace = nullptr; // goes with the stack
    }
    // Deleted when the menu that asked for this is done with.
    setMenuBar(new QMenuBar);
    build();
    if (!opened)
        return;
    auto store = std::move(opened->store);
    adopt(std::move(*opened));
    m_workspace->choose(athlete, lift);
    if (session) // a new one as well: nobody chose today's
        m_workspace->entry().showSession(*session);
    m_logs->beginMeetings(std::move(store));
}

void MainWindow::wear(Scheme scheme) {
    m_surroundings.settings.scheme = scheme;
    m_scheme->wear(scheme);
    keep();
}

void MainWindow::speak(const QString& language) {
    m_surroundings.settings.language = language;
    m_translation.reset();
    m_translation = std::make_unique<Translation>(language);
    rebuild();
    keep();
}

void MainWindow::countIn(LoadUnit unit) {
    m_surroundings.settings.unit = unit;
    rebuild();
    keep();
}

void MainWindow::fitForFingers(bool wanted) {
    m_surroundings.settings.fingers = wanted;
    fitFingers(wanted);
    rebuild();
    keep();
}

void MainWindow::keep() const {
    if (m_surroundings.keepSettings)
        m_surroundings.keepSettings(settings());
}

void MainWindow::begin(const QString& file) {
    const Settings left = m_surroundings.settings;
    const QString wanted = file.isEmpty() ? left.openLog : file;
    if (wanted.isEmpty())
        return;
    if (file.isEmpty() && !QFileInfo::exists(wanted)) {
        m_welcome->showProblem(tr("The log that was open last is not there any more: %1")
                                   .arg(QDir::toNativeSeparators(wanted)));
        return;
    }
    openLogFile(wanted);
    if (!m_workspace)
        return;
    if (nameOf(m_workspace->logbook().log().file()) == left.openLog)
        m_workspace->choose(left.athlete > 0 ? std::optional(AthleteId{left.athlete})
                                             : std::nullopt,
                            left.lift > 0 ? std::optional(LiftId{left.lift}) : std::nullopt);
    m_workspace->guarded([this] { showTestDay(); });
}

// Where stations have a roster of today, they; where somebody was tested today, the session of
// whoever is chosen, else of one of them.
void MainWindow::showTestDay() {
    const Date today = m_surroundings.clock.today();
    const log::Log& log = m_workspace->logbook().log();
    const auto rosters = log.rosters();
    if (std::ranges::any_of(rosters, [&](const Roster& one) {
            return one.day == today && !one.athletes.empty();
        })) {
        m_workspace->showPage(Page::Stations);
        return;
    }
    const auto tested = log::testedOn(log, today);
    if (tested.empty())
        return;
    if (std::ranges::none_of(tested, [&](AthleteId one) { return one == m_workspace->athlete(); }))
        m_workspace->choose(tested.front(), {});
    m_workspace->showPage(Page::Session);
    m_workspace->focusEntry();
}

void MainWindow::openLogFile(const QString& file) {
    m_logs->openFile(file);
}

void MainWindow::createLogFile(const QString& file) {
    m_logs->createFile(file);
}

void MainWindow::openSample() {
    m_logs->openSample();
}

void MainWindow::importFiles(const QStringList& files) {
    m_files->importFiles(files);
}

void MainWindow::importIntoNew(const QString& file, const QStringList& files) {
    m_files->importIntoNew(file, files);
}

void MainWindow::adopt(OpenedLog opened) {
    opened.logbook->setLoadUnit(m_surroundings.settings.unit);
    opened.logbook->setRepeatDays(m_surroundings.settings.repeatDays);
    m_surroundings.settings.unwritten = settings().unwritten;
    m_surroundings.settings.unwrittenSets = settings().unwrittenSets;
    auto* fresh = new Workspace(std::move(opened), m_surroundings.clock,
                                pageCalled(m_surroundings.settings.page));
    delete m_workspace;
    m_workspace = fresh;
    m_stack->addWidget(fresh);
    m_stack->setCurrentWidget(fresh);
    connect(fresh, &Workspace::pageChanged, this, &MainWindow::fitActions);
    connect(fresh, &Workspace::athleteWanted, m_actions.addAthlete, &QAction::trigger);
    connect(fresh, &Workspace::liftWanted, m_actions.addLift, &QAction::trigger);
    connect(&fresh->frame(), &Frame::foldedChanged, m_actions.foldIndex, &QAction::setChecked);
    connect(fresh, &Workspace::tablePasted, this, [this](const QString& text) {
        m_workspace->importText(text, m_surroundings.settings.importMaps);
    });
    connect(fresh, &Workspace::backupsWanted, m_logs.get(), &LogKeeper::askGoBack,
            Qt::QueuedConnection);
    fresh->showRest(m_surroundings.settings.restTimer);
    fresh->frame().setIndexWidth(m_surroundings.settings.indexWidth);
    fresh->frame().wantFold(m_surroundings.settings.indexFolded);
    m_actions.foldIndex->setChecked(fresh->frame().folded());
    fresh->takeUnwritten({.atStations = m_surroundings.settings.unwritten,
                          .sets = m_surroundings.settings.unwrittenSets});
    connectUndo(*this);
    const QString file = nameOf(fresh->logbook().log().file());
    remember(file);
    // Two windows on one log, each at its station, are told apart on the task bar.
    const auto title = [this, fresh, name = QFileInfo(file).completeBaseName()] {
        const QString place = fresh->placeName();
        setWindowTitle(place.isEmpty() ? tr("%1 \u2013 Slopebook").arg(name)
                                       : tr("%1 \u2013 %2 \u2013 Slopebook").arg(place, name));
    };
    connect(fresh, &Workspace::pageChanged, this, title);
    connect(fresh, &Workspace::placeNamed, this, title);
    title();
    m_welcome->showProblem(QString());
    m_logs->clearTrouble();
    fitActions();
    if (fresh->page() == Page::Session)
        m_actions.typeSet->trigger();
}

void MainWindow::closeLogFile() {
    m_surroundings.settings = settings();
    m_logs->forget();
    m_surroundings.settings.openLog.clear();
    delete std::exchange(m_workspace, nullptr);
    m_stack->setCurrentWidget(m_welcome);
    setWindowTitle(tr("Slopebook"));
    fillRecent();
    fitActions();
}

void MainWindow::say(const QString& message) {
    if (m_workspace)
        m_workspace->say(message);
}

void MainWindow::trouble(const QString& message) {
    const bool wayBack = m_logs->hasWayBack();
    if (m_workspace)
        m_workspace->bar().showText(message, wayBack ? tr("Go back to a backup…") : QString());
    else
        m_welcome->showProblem(message, wayBack);
}

void MainWindow::remember(const QString& file) {
    QStringList& recent = m_surroundings.settings.recentLogs;
    recent.removeAll(file);
    recent.prepend(file);
    recent = recent.mid(0, mostRecent);
    fillRecent();
}

void MainWindow::forget(const QString& recent) {
    m_surroundings.settings.recentLogs.removeAll(recent);
    fillRecent();
    keep();
}

// One that is not there any more stands in the list and says so: a stick may only be unplugged.
void MainWindow::fillRecent() {
    m_welcome->setRecent(m_surroundings.settings.recentLogs);
    m_actions.recent->clear();
    for (const QString& file : m_surroundings.settings.recentLogs) {
        const bool there = QFileInfo::exists(file);
        const QString shown = asLabel(QDir::toNativeSeparators(file));
        QAction* action =
            m_actions.recent->addAction(there ? shown : tr("%1 (not there any more)").arg(shown));
        action->setEnabled(there);
        connect(action, &QAction::triggered, this, [this, file] { openLogFile(file); });
    }
    m_actions.recent->setEnabled(!m_actions.recent->isEmpty());
}

void MainWindow::fitActions() {
    for (QAction* action : m_actions.needLog())
        action->setEnabled(m_workspace != nullptr);
    m_actions.writeOn->setEnabled(m_workspace &&
                                  m_workspace->logbook().log().access() == log::Access::Salvage);
    m_actions.openSample->setVisible(!m_surroundings.sampleLog.empty());
    if (!m_workspace) {
        m_actions.undo->setEnabled(false);
        m_actions.redo->setEnabled(false);
    }
    for (QAction* action : {m_actions.print, m_actions.preview, m_actions.pdf})
        action->setEnabled(m_workspace && m_workspace->prints());
}

Settings MainWindow::settings() const {
    Settings now = m_surroundings.settings;
    now.geometry = saveGeometry();
    now.windowState = saveState();
    if (m_workspace) {
        now.page = QLatin1String(entryOf(m_workspace->page()).word);
        now.openLog = nameOf(m_workspace->logbook().log().file());
        now.athlete = m_workspace->athlete() ? raw(*m_workspace->athlete()) : 0;
        now.lift = m_workspace->lift() ? raw(*m_workspace->lift()) : 0;
        now.indexFolded = m_workspace->frame().foldWanted();
        now.indexWidth = m_workspace->frame().indexWidth();
        now.repeatDays = m_workspace->logbook().repeatDays();
        const Unwritten unwritten = m_workspace->unwritten();
        now.unwritten = unwritten.atStations;
        now.unwrittenSets = unwritten.sets;
    }
    return now;
}

void MainWindow::closeEvent(QCloseEvent* event) {
    keep();
    event->accept();
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
    for (const QUrl& url : event->mimeData()->urls())
        if (url.isLocalFile()) {
            event->acceptProposedAction();
            return;
        }
}

void MainWindow::dropEvent(QDropEvent* event) {
    QStringList tables;
    for (const QUrl& url : event->mimeData()->urls()) {
        if (!url.isLocalFile())
            continue;
        const QString suffix = QFileInfo(url.toLocalFile()).suffix().toLower();
        if (QStringList{QStringLiteral("csv"), QStringLiteral("tsv"), QStringLiteral("txt"),
                        QStringLiteral("xlsx"), QStringLiteral("xls"), QStringLiteral("ods")}
                .contains(suffix))
            tables << url.toLocalFile();
        else
            openLogFile(url.toLocalFile());
    }
    if (!tables.isEmpty() && !m_workspace)
        trouble(tr("A table goes into a log: open one, or make a new one, then drop it again."));
    importFiles(tables);
    event->acceptProposedAction();
}

} // namespace slopebook::ui

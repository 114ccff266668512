// SPDX-License-Identifier: GPL-3.0-or-later
// Takes the pictures of the README: the program's own window on a copy of the sample log, each page
// once, and a ladder typed into it.
//   slopebook_screenshots LOG FOLDER ATHLETE LIFT [dark] [fingers] [german] [tabs] [paper]
//                         [WIDTHxHEIGHT]
// tabs: the further tabs of each page as well. paper: each page's PDF as well, on the paper of the
// desktop (Letter where LC_MEASUREMENT is en_US). An athlete or lift that the log does not hold is
// none: the empty pages.
// Needs no display: QT_QPA_PLATFORM=offscreen.
#include "ui/athlete/battery/beforeafterview.h"
#include "ui/athlete/compare/comparepage.h"
#include "ui/athlete/plan/planpage.h"
#include "ui/paper/batteryprint.h"
#include "ui/paper/papertask.h"
#include "ui/window/mainwindow.h"
#include "ui/window/workspace.h"

#include <QApplication>
#include <QDir>
#include <QLineEdit>
#include <QTabWidget>
#include <QTest>
#include <QTextStream>

#include <algorithm>
#include <filesystem>

using namespace slopebook;
using namespace slopebook::ui;

namespace {

Date today() {
    return Date{std::chrono::year{2026}, std::chrono::month{5}, std::chrono::day{11}};
}

/// The key of that name among those that are asked.
template <class Id, class Value>
std::optional<Id> called(const std::vector<Stored<Id, Value>>& all, const QString& name) {
    const auto found = std::ranges::find_if(
        all, [&](const auto& one) { return one.value.name == name.toStdString(); });
    return found == all.end() ? std::nullopt : std::optional(found->id);
}

void typeLadder(const QWidget& window) {
    auto* line = window.findChild<QLineEdit*>(QStringLiteral("setLine"));
    for (const char* set : {"30 1.18 1.16", "40 1.06 1.05 1.04", "50 0.94 0.92", "60 0.80 0.78"}) {
        QTest::keyClicks(line, QLatin1String(set));
        QTest::keyClick(line, Qt::Key_Return);
    }
}

void makeDark() {
    QPalette dark(QColor(0x23, 0x26, 0x29));
    dark.setColor(QPalette::Base, QColor(0x1b, 0x1e, 0x20));
    dark.setColor(QPalette::AlternateBase, QColor(0x23, 0x26, 0x29));
    for (const auto role : {QPalette::Text, QPalette::WindowText, QPalette::ButtonText})
        dark.setColor(role, QColor(0xe8, 0xe8, 0xe8));
    dark.setColor(QPalette::PlaceholderText, QColor(0xa0, 0xa0, 0xa0));
    QApplication::setPalette(dark);
}

/// Each further tab of the page that is shown: "plan-2.png".
bool takeTabs(MainWindow& window, const QDir& folder, const QString& page) {
    for (auto* tabs : window.findChildren<QTabWidget*>()) {
        if (!tabs->isVisible())
            continue;
        for (int i = 1; i < tabs->count(); ++i) {
            tabs->setCurrentIndex(i);
            QTest::qWait(500);
            if (!window.grab().save(
                    folder.filePath(QStringLiteral("%1-%2.png").arg(page).arg(i + 1))))
                return false;
        }
        tabs->setCurrentIndex(0);
        return true;
    }
    return true;
}

/// What the page prints, where it prints anything.
bool takePaper(const MainWindow& window, const QString& file) {
    try {
        const log::Destination to(std::filesystem::path(file.toStdString()));
        const TaskPage* page = window.workspace()->currentPage();
        if (const auto* paper = qobject_cast<const PaperTask*>(page); paper && paper->canPrint())
            paper->writePdfTo(to);
        else if (const auto* plan = qobject_cast<const PlanPage*>(page); plan && plan->canPrint())
            plan->writePdfTo(to);
        else if (const auto* two = qobject_cast<const ComparePage*>(page); two && two->canPrint())
            two->writePdfTo(to);
        else if (const auto* view = page->findChild<const BeforeAfterView*>();
                 view && view->answer())
            writeBatteryPdf(*view->answer(), LoadUnit::Kilograms, paperwork::desktopPaper(), to);
        return true;
    } catch (const std::exception& error) {
        QTextStream(stderr) << error.what() << '\n';
        return false;
    }
}

} // namespace

int main(int argc, char** argv) {
    QApplication application(argc, argv);
    const QStringList arguments = application.arguments();
    if (arguments.size() < 5) {
        QTextStream(stderr) << "usage: slopebook_screenshots LOG FOLDER ATHLETE LIFT [dark] "
                               "[fingers] [german] [tabs] [paper] [WIDTHxHEIGHT]\n";
        return 2;
    }
    const QStringList wishes = arguments.mid(5);
    if (wishes.contains(QLatin1String("dark")))
        makeDark();
    Surroundings surroundings;
    surroundings.settings.fingers = wishes.contains(QLatin1String("fingers"));
    if (wishes.contains(QLatin1String("german")))
        surroundings.settings.language = QStringLiteral("de");
    surroundings.clock = today;
    MainWindow window(surroundings);
    window.openLogFile(arguments[1]);
    if (window.workspace() == nullptr)
        return 1;
    QSize size(1280, 720);
    for (const QString& wish : wishes)
        if (const QStringList sides = wish.split(QLatin1Char('x')); sides.size() == 2)
            size = {sides[0].toInt(), sides[1].toInt()};
    window.resize(size);
    window.show();
    const log::Log& log = window.workspace()->logbook().log();
    const auto athlete = called(log.athletes(), arguments[3]);
    const auto lift = called(log.lifts(), arguments[4]);
    window.workspace()->choose(athlete, lift);
    const QDir folder(arguments[2]);
    // The session last: the ladder that is typed there would be in the others' pictures.
    for (auto entry = pages().rbegin(); entry != pages().rend(); ++entry) {
        window.workspace()->showPage(entry->page);
        if (entry->page == Page::Session && athlete && lift)
            typeLadder(window);
        QTest::qWait(500);
        const QString name = QLatin1String(entry->word);
        if (!window.grab().save(folder.filePath(name + QLatin1String(".png"))))
            return 1;
        if (wishes.contains(QLatin1String("paper")) &&
            !takePaper(window, folder.filePath(name + QLatin1String(".pdf"))))
            return 1;
        if (wishes.contains(QLatin1String("tabs")) && !takeTabs(window, folder, name))
            return 1;
    }
    return 0;
}

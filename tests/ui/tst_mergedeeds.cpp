// SPDX-License-Identifier: GPL-3.0-or-later
// Another log merged by the window in its own order, by clicks: the file, what would come, the
// merge, the choices, and what is undone after it.
#include "core/desks/merge.h"
#include "core/log/backups.h"
#include "tests/log/builders.h"
#include "tests/support/bytes.h"
#include "ui/edits/logbook.h"
#include "ui/window/mainwindow.h"
#include "ui/window/mergedeeds.h"
#include "ui/window/messagebar.h"
#include "ui/window/workspace.h"

#include <QAction>
#include <QApplication>
#include <QDialog>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTimer>
#include <QTreeWidget>

#include <fstream>
#include <functional>

using namespace slopebook;
using namespace slopebook::test;
using namespace slopebook::ui;
using namespace Qt::StringLiterals;

namespace {
namespace fs = std::filesystem;

QString qt(const fs::path& path) {
    return QString::fromStdString(path.string());
}

using Work = std::function<void(QDialog&)>;

/// Calls each with the next modal dialog that holds a widget of that name, one after the other.
void inDialogs(std::vector<std::pair<QString, Work>> all, int tries = 1500) {
    QTimer::singleShot(20, qApp, [all = std::move(all), tries]() mutable {
        auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget());
        const bool wanted = dialog && dialog->isVisible() && !all.empty() &&
                            dialog->findChild<QWidget*>(all.front().first);
        if (wanted) {
            const Work work = all.front().second;
            all.erase(all.begin());
            if (!all.empty())
                inDialogs(std::move(all)); // the work may not come back before the next is there
            work(*dialog);
        } else if (tries > 0) {
            inDialogs(std::move(all), tries - 1);
        } else {
            QTest::qFail("no such dialog came", __FILE__, __LINE__);
        }
    });
}

void click(const QWidget& in, const char* name) {
    auto* button = in.findChild<QPushButton*>(QLatin1String(name));
    QVERIFY(button && button->isVisible() && button->isEnabled());
    QTest::mouseClick(button, Qt::LeftButton);
}

std::set<std::string> namesIn(const log::Log& log) {
    std::set<std::string> names;
    for (const auto& athlete : log.athletes())
        names.insert(athlete.value.name);
    return names;
}
} // namespace

class TestMergeDeeds : public QObject {
    Q_OBJECT

    std::unique_ptr<Folder> m_folder;
    std::unique_ptr<MainWindow> m_window;
    Season m_season;
    fs::path a() const { return m_folder->path("a.slopebook"); }
    fs::path b() const { return m_folder->path("b.slopebook"); }
    Logbook& book() const { return m_window->workspace()->logbook(); }
    QString told() const { return m_window->workspace()->bar().text(); }

private Q_SLOTS:
    void init() {
        m_folder = std::make_unique<Folder>();
        {
            log::Log log = log::Log::create(a());
            m_season = fillSeason(log);
        }
        fs::copy_file(a(), b());
        for (const auto& [file, note] : {std::pair{a(), "here"}, std::pair{b(), "there"}}) {
            log::Log log = log::Log::open(file);
            for (const SessionId session : {m_season.autumn, m_season.winter}) {
                log::PlacedSet placed = log.session(session).sets.front();
                placed.set.note = note;
                log.change(placed.id, placed.set);
            }
            log.add(Lift{.name = "Seal row"});
            if (file == b())
                log.add(Athlete{.name = "Bow"});
        }
        Surroundings surroundings;
        surroundings.clock = [] { return day(2026, 3, 14); };
        m_window = std::make_unique<MainWindow>(surroundings);
        m_window->show();
        m_window->openLogFile(qt(a()));
        QVERIFY(m_window->workspace());
    }
    void cleanup() { m_window.reset(); }

    // From the menu to the last choice: one side of the one, the other side of the other.
    void fromTheMenuToTheLastChoice() {
        std::map<std::string, std::string> expected; // by what is called so
        inDialogs(
            {{QStringLiteral("fileNameEdit"),
              [&](QDialog& dialog) {
                  auto* name = dialog.findChild<QLineEdit*>(QStringLiteral("fileNameEdit"));
                  name->setText(qt(b()));
                  QTest::keyClick(name, Qt::Key_Return);
              }},
             {QStringLiteral("mergeNow"),
              [&](QDialog& dialog) {
                  auto* list = dialog.findChild<QTreeWidget*>(QStringLiteral("mergeList"));
                  QMap<QString, int> rows;
                  for (int i = 0; i < list->topLevelItemCount(); ++i)
                      ++rows[list->topLevelItem(i)->text(0)];
                  QCOMPARE(rows.value(QStringLiteral("to choose")), 2);
                  QCOMPARE(rows.value(QStringLiteral("joined")), 1); // the lift
                  QVERIFY(!dialog.findChild<QLabel*>(QStringLiteral("mergePast"))->isVisible());
                  click(dialog, "mergeNow");
              }},
             {QStringLiteral("choices"), [&](QDialog& dialog) {
                  auto* list = dialog.findChild<QTreeWidget*>(QStringLiteral("choices"));
                  QCOMPARE(list->topLevelItemCount(), 2);
                  for (const bool other : {true, false}) {
                      const auto open = desks::openConflicts(book().log());
                      const int row = list->indexOfTopLevelItem(list->currentItem());
                      const auto& one = open.at(static_cast<std::size_t>(row));
                      expected[english(one.about)] =
                          english(other ? one.fields.front().lost : one.fields.front().stands);
                      click(dialog, other ? "takeOther" : "keepStanding");
                  }
                  QVERIFY(!dialog.isVisible()); // it closes by itself once none is left
              }}});
        m_window->actions().mergeLog->trigger();
        QCOMPARE(expected.size(), std::size_t{2});
        const log::Log& log = book().log();
        QVERIFY(desks::openConflicts(log).empty());
        QVERIFY(namesIn(log).contains("Bow"));
        std::multiset<std::string> notes, wanted;
        for (const auto& [about, note] : expected)
            wanted.insert(note);
        for (const SessionId session : {m_season.autumn, m_season.winter})
            notes.insert(log.session(session).sets.front().set.note);
        QVERIFY(notes == wanted);
        QCOMPARE(log::keptCopies(a()).size(), std::size_t{1});
        VERIFY_SOUND(log);
    }

    // Nothing of before the merge can be undone over it; what is done after it can.
    void undoAfterAMerge() {
        book().addAthlete({.name = "Before"});
        QVERIFY(m_window->actions().undo->isEnabled());
        inDialogs({{QStringLiteral("mergeNow"), [](QDialog& one) { click(one, "mergeNow"); }},
                   {QStringLiteral("choices"), [](QDialog& one) { one.reject(); }}});
        MergeDeeds(*m_window).merge(qt(b()));
        QVERIFY(!m_window->actions().undo->isEnabled());
        QVERIFY(namesIn(book().log()).contains("Before"));
        QVERIFY(namesIn(book().log()).contains("Bow"));
        book().addAthlete({.name = "After"});
        QVERIFY(namesIn(book().log()).contains("After"));
        m_window->actions().undo->trigger();
        QVERIFY(!namesIn(book().log()).contains("After"));
        QVERIFY(namesIn(book().log()).contains("Bow"));
        VERIFY_SOUND(book().log());
    }

    void cancelledBeforeAnythingIsWritten() {
        const std::string before = readBytes(a());
        inDialogs({{QStringLiteral("mergeNow"), [](QDialog& one) { one.reject(); }}});
        MergeDeeds(*m_window).merge(qt(b()));
        QVERIFY(readBytes(a()) == before);
        QVERIFY(log::keptCopies(a()).empty());
    }

    // What was shown is taken, and no more: the other log is read once.
    void whatIsWrittenMeanwhileComesNextTime() {
        inDialogs({{QStringLiteral("mergeNow"),
                    [&](QDialog& one) {
                        log::Log::open(b()).add(Athlete{.name = "Cox"});
                        click(one, "mergeNow");
                    }},
                   {QStringLiteral("choices"), [](QDialog& one) { one.reject(); }}});
        MergeDeeds(*m_window).merge(qt(b()));
        QVERIFY(namesIn(book().log()).contains("Bow"));
        QVERIFY(!namesIn(book().log()).contains("Cox"));
        inDialogs({{QStringLiteral("mergeNow"), [](QDialog& one) { click(one, "mergeNow"); }},
                   {QStringLiteral("choices"), [](QDialog& one) { one.reject(); }}});
        MergeDeeds(*m_window).merge(qt(b()));
        QVERIFY(namesIn(book().log()).contains("Cox"));
    }

    // What became of it is told where it is not what was shown: of the own log, that others write
    // to.
    void whatBecameOfItIsToldWhereItIsSomethingElse() {
        bool told = false;
        inDialogs({{QStringLiteral("mergeNow"),
                    [&](QDialog& one) {
                        log::Log::open(a()).add(Athlete{.name = "Bow"});
                        click(one, "mergeNow");
                    }},
                   {QStringLiteral("mergeOther"),
                    [&](QDialog& one) {
                        auto* list = one.findChild<QTreeWidget*>(QStringLiteral("mergeList"));
                        for (int i = 0; i < list->topLevelItemCount(); ++i)
                            told = told || (list->topLevelItem(i)->text(0) == u"renamed"_s &&
                                            list->topLevelItem(i)->text(1).contains(u"Bow (2)"_s));
                        QVERIFY(one.findChild<QWidget*>(QStringLiteral("mergeOther"))->isVisible());
                        QVERIFY(!one.findChild<QWidget*>(QStringLiteral("mergeNow")));
                        one.reject();
                    }},
                   {QStringLiteral("choices"), [](QDialog& one) { one.reject(); }}});
        MergeDeeds(*m_window).merge(qt(b()));
        QVERIFY(told);
        QVERIFY(namesIn(book().log()).contains("Bow (2)"));
    }

    // One that was never a copy says so before anything is written.
    void noCommonPast() {
        const fs::path strange = m_folder->path("strange.slopebook");
        {
            log::Log log = log::Log::create(strange);
            log.add(Athlete{.name = "Dow"});
        }
        inDialogs({{QStringLiteral("mergeNow"), [](QDialog& one) {
                        QVERIFY(one.findChild<QLabel*>(QStringLiteral("mergePast"))->isVisible());
                        one.reject();
                    }}});
        MergeDeeds(*m_window).merge(qt(strange));
        QVERIFY(!namesIn(book().log()).contains("Dow"));
    }

    void whatIsNoLogIsSaid() {
        const fs::path none = m_folder->path("none.slopebook");
        std::ofstream(none) << "no log";
        const std::string before = readBytes(a());
        MergeDeeds(*m_window).merge(qt(none));
        QVERIFY2(told().contains(QLatin1String("none.slopebook")), qPrintable(told()));
        QVERIFY(readBytes(a()) == before);
    }
};

QTEST_MAIN(TestMergeDeeds)
#include "tst_mergedeeds.moc"

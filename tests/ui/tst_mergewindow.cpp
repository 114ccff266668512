// SPDX-License-Identifier: GPL-3.0-or-later
// Another log merged in the window, and what both had changed chosen from, by keys.
#include "core/desks/merge.h"
#include "core/log/backups.h"
#include "tests/log/builders.h"
#include "ui/edits/logbook.h"
#include "ui/window/choicesdialog.h"
#include "ui/window/mergedialog.h"

#include <QApplication>
#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <QTest>
#include <QTreeWidget>

using namespace slopebook;
using namespace slopebook::test;
using namespace slopebook::ui;

namespace {
template <class Widget>
Widget* named(const QWidget& in, const char* name) {
    return in.findChild<Widget*>(QLatin1String(name));
}

/// For looking at: set SLOPEBOOK_SHOTS to a folder.
void shoot(QWidget& widget, const char* name) {
    if (const QString folder = qEnvironmentVariable("SLOPEBOOK_SHOTS"); !folder.isEmpty())
        widget.grab().save(folder + QLatin1Char('/') + QLatin1String(name) + QLatin1String(".png"));
}
} // namespace

class TestMergeWindow : public QObject {
    Q_OBJECT

    std::unique_ptr<Folder> m_folder;
    Season m_season;
    std::filesystem::path a() const { return m_folder->path("a.slopebook"); }
    std::filesystem::path b() const { return m_folder->path("b.slopebook"); }

private Q_SLOTS:
    void init() {
        m_folder = std::make_unique<Folder>();
        {
            log::Log log = log::Log::create(a());
            m_season = fillSeason(log);
        }
        std::filesystem::copy_file(a(), b());
        for (const auto& [file, note] : {std::pair{a(), "here"}, std::pair{b(), "there"}}) {
            log::Log log = log::Log::open(file);
            for (const SessionId session : {m_season.autumn, m_season.winter}) {
                log::PlacedSet placed = log.session(session).sets.front();
                placed.set.note = note;
                placed.set.excluded = note == std::string("there") ? "bar slipped" : "";
                log.change(placed.id, placed.set);
            }
            log.add(Athlete{.name = "Bow", .note = note});
            log.add(SessionHead{.athlete = m_season.lane3, .date = day(2026, 3, 14)});
        }
    }

    // What comes is told before it is taken.
    void thePreview() {
        Logbook logbook(log::Log::open(a()));
        const auto report = desks::previewMerge(logbook.log(), b());
        MergeDialog dialog(report, QStringLiteral("/hall/b.slopebook"), logbook);
        dialog.show();
        auto* list = named<QTreeWidget>(dialog, "mergeList");
        QMap<QString, int> rows;
        for (int i = 0; i < list->topLevelItemCount(); ++i)
            ++rows[list->topLevelItem(i)->text(0)];
        // Two sets, and the name that was taken twice.
        QCOMPARE(rows.value(QStringLiteral("to choose")), 3);
        QCOMPARE(rows.value(QStringLiteral("joined")), 1);
        QCOMPARE(rows.value(QStringLiteral("renamed")), 1);
        QVERIFY(
            named<QLabel>(dialog, "mergeSentence")->text().contains(QLatin1String("b.slopebook")));
        shoot(dialog, "merge");
        QTest::keyClick(named<QPushButton>(dialog, "mergeNow"), Qt::Key_Return);
        QCOMPARE(dialog.result(), static_cast<int>(QDialog::Accepted));
    }

    // Both sides beside each other; one is chosen by a key, and the next one comes.
    void chosenByKeys() {
        {
            log::Log log = log::Log::open(a());
            desks::mergeInto(log, b());
        }
        Logbook logbook(log::Log::open(a()));
        ChoicesDialog dialog(logbook);
        dialog.show();
        QVERIFY(QTest::qWaitForWindowActive(&dialog));
        auto* list = named<QTreeWidget>(dialog, "choices");
        auto* sides = named<QTableView>(dialog, "sides");
        QCOMPARE(list->topLevelItemCount(), 3);
        QSet<QString> seen;
        for (int row = 0; row < sides->model()->rowCount(); ++row)
            for (int column = 0; column < 3; ++column)
                seen << sides->model()->index(row, column).data().toString();
        shoot(dialog, "choices");
        QVERIFY(list->hasFocus());
        QTest::keyClick(list, Qt::Key_Down);
        QCOMPARE(list->indexOfTopLevelItem(list->currentItem()), 1);
        // A button that is pressed by its key goes down first, and acts a moment later.
        for (int left = 3; left > 0; --left) {
            const bool name = list->currentItem()->text(0) == QLatin1String("athlete");
            QTest::keyClick(&dialog, Qt::Key_T, Qt::AltModifier);
            if (name) { // the other one is still called so: said in place, nothing changed
                QTRY_VERIFY(named<QLabel>(dialog, "choiceProblem")->isVisible());
                QCOMPARE(list->topLevelItemCount(), left);
                QTest::keyClick(&dialog, Qt::Key_K, Qt::AltModifier);
            }
            QTRY_COMPARE(list->topLevelItemCount(), left - 1);
        }
        QCOMPARE(dialog.result(), static_cast<int>(QDialog::Accepted)); // none is left
        QVERIFY(desks::openConflicts(logbook.log()).empty());
        VERIFY_SOUND(logbook.log());
    }

    // The copy that was made before is one that the window goes back to.
    void theWayBack() {
        {
            log::Log log = log::Log::open(a());
            desks::mergeInto(log, b());
        }
        const auto copies = log::keptCopies(a());
        QCOMPARE(copies.size(), std::size_t{1});
        QVERIFY(copies[0].beforeMerge && !copies[0].beforeMigration && copies[0].problem.empty());
        log::goBackTo(copies[0].backup.file, a());
        QCOMPARE(log::Log::open(a()).athletes().size(), std::size_t{3});
    }
};

QTEST_MAIN(TestMergeWindow)
#include "tst_mergewindow.moc"

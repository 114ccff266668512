// SPDX-License-Identifier: GPL-3.0-or-later
// Tables of any shape into the log, by keys: the import of files and of pasted tables, blocks
// pasted into a session, long work that is stopped.
#include "tests/log/builders.h"
#include "ui/entry/entrypage.h"
#include "ui/importing/job.h"
#include "ui/importing/longwork.h"
#include "ui/importing/shapeeditor.h"
#include "ui/importing/tabledialog.h"

#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QProgressDialog>
#include <QTabWidget>
#include <QTableView>
#include <QTest>
#include <QTimer>
#include <QUndoStack>

#include <fstream>

using namespace slopebook;
using namespace slopebook::test;
using namespace slopebook::ui;
using namespace Qt::Literals::StringLiterals;

namespace {

constexpr Date today = day(2026, 3, 14);

/// Goes through a box's choices by the down key, as hands do.
void chooseByKeys(QComboBox* box, const QString& wanted) {
    QVERIFY(box);
    box->setFocus();
    QTest::keyClick(box, Qt::Key_Home);
    for (int i = 0; i < box->count() && box->currentText() != wanted; ++i)
        QTest::keyClick(box, Qt::Key_Down);
    QCOMPARE(box->currentText(), wanted);
}

void inNextDialog(const std::function<void(QWidget*)>& work, int tries = 200) {
    QTimer::singleShot(20, qApp, [work, tries] {
        QWidget* dialog = QApplication::activeModalWidget();
        if (dialog && dialog->isActiveWindow())
            work(dialog);
        else if (tries > 0)
            inNextDialog(work, tries - 1);
    });
}

const std::string clean = "Datum;Name;Übung;Last;v1;v2\n"
                          "14.3.2026;Ada;Rudern;40;1,12;1,09\n14.3.2026;Ada;Rudern;60;0,87;\n";
const std::string unclear = "date,who,lift,load,speed\n03/04/2026,Ada,Pull,60,0.92\n"
                            "03/05/2026,Ada,Pull,70,0.81\n";

} // namespace

class TestImporting : public QObject {
    Q_OBJECT

    Folder m_folder;
    int m_files = 0;
    std::filesystem::path m_path;
    std::unique_ptr<Logbook> m_book;
    ImportMaps m_maps;

    exchange::Source file(const std::string& text) {
        const auto path = m_folder.path(("table" + std::to_string(++m_files) + ".csv").c_str());
        std::ofstream(path, std::ios::binary) << text;
        return {.file = path, .text = {}};
    }
    static std::unique_ptr<TableDialog> shown(TableDialog* dialog) {
        dialog->show();
        dialog->activateWindow();
        if (!QTest::qWaitForWindowActive(dialog))
            qWarning("the dialog did not become active");
        return std::unique_ptr<TableDialog>(dialog);
    }
    std::unique_ptr<TableDialog> open(const exchange::Source& source) {
        return shown(new TableDialog(*m_book, source, m_maps));
    }
    static QComboBox* box(QWidget& in, const char* name) {
        return in.findChild<QComboBox*>(QString::fromLatin1(name));
    }
    std::size_t sessions() const { return m_book->log().liftSessions({}).size(); }
    static void keepPicture(QWidget& widget, const QString& name) {
        if (const QString folder = qEnvironmentVariable("SLOPEBOOK_PICTURES"); !folder.isEmpty())
            QVERIFY(widget.grab().save(folder + u'/' + name + u".png"_s));
    }

private Q_SLOTS:
    void init() {
        m_path = m_folder.path(("log" + std::to_string(++m_files) + ".slopebook").c_str());
        m_book = std::make_unique<Logbook>(log::Log::create(m_path));
        m_maps.clear();
    }
    void cleanup() { m_book.reset(); }

    void aClearTableNeedsOneKey() {
        const auto dialog = open(file(clean));
        QTRY_VERIFY2(dialog->canImport(), qPrintable(dialog->summary()));
        QVERIFY2(dialog->summary().startsWith(u"Rows that will be taken: 2; none"_s),
                 qPrintable(dialog->summary()));
        auto* preview = dialog->findChild<QTableView*>(u"preview"_s);
        QCOMPARE(preview->model()->rowCount(), 2);
        QCOMPARE(preview->model()->index(0, 1).data().toString(),
                 u"14.3.2026 | Ada | Rudern | 40 | 1,12 | 1,09"_s);
        QCOMPARE(preview->model()->index(0, 2).data().toString(), u"2026-03-14"_s);
        QCOMPARE(sessions(), 0U);
        keepPicture(*dialog, u"import-clear"_s);
        QTest::keyClick(dialog->focusWidget(), Qt::Key_Return);
        QTRY_VERIFY(!dialog->isVisible());
        QCOMPARE(dialog->result(), int(QDialog::Accepted));
        QCOMPARE(sessions(), 1U);
        const auto again = open(file(clean));
        QTRY_VERIFY2(again->summary().contains(u"has them all already"_s),
                     qPrintable(again->summary()));
        QVERIFY(!again->canImport());
    }

    void whatIsOpenIsAskedAndRemembered() {
        auto dialog = open(file(unclear));
        QTRY_VERIFY2(dialog->summary().contains(u"begin with the day"_s),
                     qPrintable(dialog->summary()));
        QVERIFY(!dialog->canImport());
        keepPicture(*dialog, u"import-asks"_s);
        // "who" is no name that is known: the column is chosen by keys.
        QVERIFY(dialog->summary().contains(u"athlete"_s));
        chooseByKeys(box(*dialog, "role1"), u"Athlete"_s);
        chooseByKeys(box(*dialog, "written0"), u"month, day, year"_s);
        QTRY_VERIFY2(dialog->canImport(), qPrintable(dialog->summary()));
        QTest::keyClick(dialog->focusWidget(), Qt::Key_Return);
        QTRY_VERIFY(!dialog->isVisible());
        const auto lines = m_book->log().liftSessions({});
        QCOMPARE(lines.size(), 2U);
        QVERIFY(lines[0].date == day(2026, 3, 4));
        QCOMPARE(m_maps.size(), 1);
        // The next table with these headings is read as this one was.
        std::string next = unclear;
        next.replace(next.find("03/04"), 5, "03/07");
        dialog = open(file(next));
        QTRY_VERIFY2(dialog->canImport(), qPrintable(dialog->summary()));
    }

    void everyRefusalIsListed() {
        const auto dialog = open(file("date,athlete,lift,load,speed\n2026-03-14,Ada,Pull,40,1.12\n"
                                      "2026-03-14,Ada,Pull,fast,1.1\n2026-02-30,Ada,Pull,50,1\n"));
        QTRY_VERIFY2(dialog->summary().contains(u"refused: 2"_s), qPrintable(dialog->summary()));
        QVERIFY(dialog->summary().contains(u"would be taken: 1;"_s));
        QVERIFY(!dialog->canImport());
        auto* refused = dialog->findChild<QTableView*>(u"refused"_s);
        QVERIFY(refused->isVisible());
        QCOMPARE(refused->model()->rowCount(), 2);
        QCOMPARE(refused->model()->index(0, 0).data().toString(), u"3"_s);
        QCOMPARE(refused->model()->index(0, 1).data().toString(), u"load"_s);
        QCOMPARE(refused->model()->index(0, 2).data().toString(), u"\"fast\""_s);
        keepPicture(*dialog, u"import-refused"_s);
        QTest::keyClick(dialog.get(), Qt::Key_Escape);
        QVERIFY(!dialog->isVisible());
        QCOMPARE(sessions(), 0U);
    }

    void whatIsNotInTheTableIsSaidForAllRows() {
        const auto dialog = open({.file = {}, .text = "load\tspeed\n60\t0.92\n70\t0.81\n"});
        QTRY_VERIFY(dialog->summary().contains(u"who is it in all rows"_s));
        auto type = [&](const char* name, const QString& text) {
            auto* field = dialog->findChild<QWidget*>(QString::fromLatin1(name));
            QVERIFY(field && field->isEnabled());
            field->setFocus();
            QTest::keyClicks(field->focusProxy() ? field->focusProxy() : field, text);
        };
        type("allAthlete", u"Ada"_s);
        type("allLift", u"Pull"_s);
        type("allDay", u"14.3.2026"_s);
        QTRY_VERIFY2(dialog->canImport(), qPrintable(dialog->summary()));
        QTest::keyClick(dialog->focusWidget(), Qt::Key_Return);
        QTRY_VERIFY(!dialog->isVisible());
        QVERIFY(m_book->log().liftSessions({}).at(0).date == today);
    }

    void anotherDivisionIsReadAnew() {
        const auto dialog = open(file(clean));
        QTRY_VERIFY(dialog->canImport());
        chooseByKeys(box(*dialog, "delimiter"), u"comma"_s);
        QTRY_VERIFY2(!dialog->canImport() && dialog->summary().startsWith(u"To be said"_s),
                     qPrintable(dialog->summary()));
        chooseByKeys(box(*dialog, "delimiter"), u"semicolon"_s);
        QTRY_VERIFY2(dialog->canImport(), qPrintable(dialog->summary()));
    }

    void fitsASmallScreenAndADarkOne() {
        const auto dialog = open(file(clean));
        QTRY_VERIFY(dialog->canImport());
        const QSize least = dialog->minimumSizeHint();
        QVERIFY2(least.width() <= 853 && least.height() <= 480, // 1280 x 720 at a scale of 1.5
                 qPrintable(QStringLiteral("%1 x %2").arg(least.width()).arg(least.height())));
        dialog->resize(853, 480);
        QCoreApplication::processEvents();
        keepPicture(*dialog, u"import-small"_s);
        const QPalette light = QApplication::palette();
        QApplication::setPalette(QPalette(QColor(50, 50, 50)));
        dialog->resize(1280, 720);
        QCoreApplication::processEvents();
        keepPicture(*dialog, u"import-dark"_s);
        QApplication::setPalette(light);
    }

    void aTableThatIsNoneIsSaid() {
        const auto dialog = open(file("date,load\n2026-03-14,\"60\n"));
        QTRY_VERIFY2(dialog->summary().contains(u"never closes"_s), qPrintable(dialog->summary()));
        QVERIFY(!dialog->canImport());
    }

    void aLongImportIsStoppedWithNothingDone() {
        std::string text = "date,athlete,lift,set,rep,load,speed\n";
        for (int row = 0; row < 60000; ++row)
            text += "2026-03-14,Ada,Pull," + std::to_string(row / 3 + 1) + ',' +
                    std::to_string(row % 3 + 1) + ",40,1.12\n";
        const auto dialog = open(file(text));
        QTRY_VERIFY2_WITH_TIMEOUT(dialog->canImport(), qPrintable(dialog->summary()), 60000);
        int beats = 0; // the window's own timer goes on while the import is under way
        QTimer heart;
        connect(&heart, &QTimer::timeout, this, [&] { ++beats; });
        heart.start(5);
        QTest::keyClick(dialog->focusWidget(), Qt::Key_Return);
        QTRY_VERIFY(beats > 3);
        QTest::keyClick(dialog.get(), Qt::Key_Escape);
        QTRY_VERIFY2_WITH_TIMEOUT(dialog->summary().startsWith(u"Stopped"_s),
                                  qPrintable(dialog->summary()), 60000);
        QVERIFY(dialog->isVisible());
        QCOMPARE(sessions(), 0U);
        QVERIFY(m_book->log().athletes().empty());
    }

    void longWorkIsStoppedByItsWindow() {
        inNextDialog([](QWidget* dialog) {
            QVERIFY(qobject_cast<QProgressDialog*>(dialog));
            QTest::keyClick(dialog, Qt::Key_Escape);
        });
        QWidget window;
        window.show();
        const bool done = doLongWork(&window, u"Working"_s, [](const Progress& progress) {
            for (int i = 0; i < 100000; ++i) {
                tell(progress, i, 100000);
                std::this_thread::sleep_for(std::chrono::milliseconds(1));
            }
        });
        QVERIFY(!done);
        QVERIFY(doLongWork(&window, u"Working"_s, [](const Progress&) {}));
        QVERIFY_THROWS_EXCEPTION(std::runtime_error,
                                 doLongWork(&window, u"Working"_s, [](const Progress&) {
                                     throw std::runtime_error("no room");
                                 }));
    }

    void aBlockGoesIntoTheSession_data() {
        QTest::addColumn<QString>("pasted");
        QTest::addColumn<QString>("question"); ///< a box that asks; empty: nothing is asked
        QTest::addColumn<QString>("answer");
        QTest::addColumn<QList<int>>("reps"); ///< of each set
        const auto row = [](const char* name, const char* pasted, const char* question,
                            const char* answer, const QList<int>& reps) {
            QTest::newRow(name) << QString::fromUtf8(pasted) << QString::fromUtf8(question)
                                << QString::fromUtf8(answer) << reps;
        };
        row("speeds side by side", "40\t1,12\t1,09\n60\t0,87\t0,85\n", "", "", {2, 2});
        row("with headings", "Last (kg)\tv1\tv2\n40\t1,12\t1,09\n60\t0,87\t\n", "", "", {2, 1});
        row("one load a row", "40\t1.12\n60\t0.87\n", "", "", {1, 1});
        row("the same load twice: reps", "40\t1.12\n40\t1.1\n60\t0.87\n", "rows",
            "one rep: rows of the same load make one set", {2, 1});
        row("the same load twice: sets", "40\t1.12\n40\t1.1\n60\t0.87\n", "rows",
            "one set of its own", {1, 1, 1});
        row("no decimal mark", "40\t112\n60\t87\n", "speed", "cm/s, or hundredths: 92 is 0.92 m/s",
            {1, 1});
    }
    void aBlockGoesIntoTheSession() {
        QFETCH(QString, pasted);
        QFETCH(QString, question);
        QFETCH(QString, answer);
        QFETCH(QList<int>, reps);
        const AthleteId athlete = m_book->addAthlete({.name = "Ada"});
        const LiftId lift = m_book->addLift({.name = "Pull"});
        EntryPage page(*m_book, [] { return today; });
        connect(m_book.get(), &Logbook::changed, &page, [&](Logbook::What what, qint64 session) {
            page.refresh(what, SessionId{session});
        });
        page.setAthleteAndLift(athlete, lift);
        page.show();
        page.activateWindow();
        QVERIFY(QTest::qWaitForWindowActive(&page));
        page.focusLine();
        QApplication::clipboard()->setText(pasted);
        bool asked = false;
        if (!question.isEmpty())
            inNextDialog([&](QWidget* dialog) {
                asked = true;
                keepPicture(*dialog, u"paste-asks-"_s + question);
                chooseByKeys(dialog->findChild<QComboBox*>(question), answer);
                QTest::keyClick(dialog->focusWidget(), Qt::Key_Return);
            });
        QTest::keySequence(page.findChild<QLineEdit*>(u"setLine"_s), QKeySequence::Paste);
        QCOMPARE(asked, !question.isEmpty());
        QVERIFY(page.session().has_value());
        QList<int> found;
        for (const auto& placed : m_book->log().session(*page.session()).sets)
            found << static_cast<int>(placed.set.reps.size());
        QCOMPARE(found, reps);
        QCOMPARE(m_book->log().session(*page.session()).sets.at(0).set.reps.at(0).velocity, 1.12);
        m_book->undoStack()->undo();
        QVERIFY(m_book->log().session(*page.session()).sets.empty());
    }

    void aWholeTableIsHandedToTheImport() {
        const AthleteId athlete = m_book->addAthlete({.name = "Ada"});
        const LiftId lift = m_book->addLift({.name = "Pull"});
        EntryPage page(*m_book, [] { return today; });
        page.setAthleteAndLift(athlete, lift);
        QString handed;
        connect(&page, &EntryPage::tablePasted, this, [&](const QString& text) { handed = text; });
        const QString table = u"Datum\tName\tLast\tv1\n14.3.2026\tAda\t40\t1,12\n"_s;
        page.pasteBlock(table);
        QCOMPARE(handed, table);
        QVERIFY(!page.session());
    }
};

QTEST_MAIN(TestImporting)
#include "tst_importing.moc"

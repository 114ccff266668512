// SPDX-License-Identifier: GPL-3.0-or-later
// Tables of any shape into the log, by keys: the import of files and of pasted tables, blocks
// pasted into a session, long work that is stopped.
#include "tests/log/builders.h"
#include "ui/floor/entry/entrypage.h"
#include "ui/importing/shapeeditor.h"
#include "ui/importing/tabledialog.h"
#include "ui/parts/job.h"
#include "ui/parts/longwork.h"
#include "ui/records/athletedialog.h"

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

    // A block with something to be said of it waits for Enter; Esc drops it.
    // Columns are told apart by their values: with two marks a speed would be a load.
    void twoDecimalMarksAreRefused_data() {
        QTest::addColumn<QString>("pasted");
        QTest::addColumn<QStringList>("parts");
        QTest::newRow("in one row")
            << u"67,5\t0,695\t0.685\n"_s << QStringList{u"67,5"_s, u"0.685"_s};
        QTest::newRow("in one column")
            << u"40\t1.12\n60\t0,87\n"_s << QStringList{u"1.12"_s, u"0,87"_s};
        QTest::newRow("in the loads")
            << u"67,5\t0.92\n72.5\t0.83\n"_s << QStringList{u"67,5"_s, u"72.5"_s};
        QTest::newRow("with headings")
            << u"Last (kg)\tv1\n67,5\t0.92\n70\t0.91\n"_s << QStringList{u"67,5"_s, u"0.92"_s};
    }
    void twoDecimalMarksAreRefused() {
        QFETCH(QString, pasted);
        QFETCH(QStringList, parts);
        const AthleteId athlete = m_book->addAthlete({.name = "Ada"});
        const LiftId lift = m_book->addLift({.name = "Pull"});
        EntryPage page(*m_book, [] { return today; });
        page.setAthleteAndLift(athlete, lift);
        page.pasteBlock(pasted);
        QVERIFY(m_book->log().sessions(athlete).empty());
        const auto* answer = page.findChild<QLabel*>(u"setAnswer"_s);
        for (const QString& part : parts)
            QVERIFY2(answer->text().contains(part), qPrintable(answer->text()));
    }

    void aDoubtfulBlockIsAskedAbout_data() {
        QTest::addColumn<QString>("pasted");
        QTest::addColumn<QStringList>("parts");
        QTest::newRow("the ladder already there")
            << u"40\t1.12\n60\t0.92\n80\t0.71\n"_s
            << QStringList{u"Of 3 pasted sets this session has 3 already"_s, u"Ada, Pull"_s};
        QTest::newRow("a part of it")
            << u"60\t0.92\n90\t0.61\n"_s << QStringList{u"Of 2 pasted sets this session has 1"_s};
        QTest::newRow("a column that nobody reads")
            << u"90\t0.61\teasy\n95\t0.56\thard\n"_s
            << QStringList{u"Not read of what was pasted: column 3 (easy)"_s};
        QTest::newRow("one with a name") << u"Last\tv1\tPower\n90\t0.61\t540\n95\t0.56\t520\n"_s
                                         << QStringList{u"Not read of what was pasted: Power"_s};
        // As of the same set typed: faster than a lighter load of that day.
        QTest::newRow("a speed that is hard to believe")
            << u"90\t1.61\n95\t1.56\n"_s
            << QStringList{u"Set 1 of what was pasted"_s,
                           u"Doubtful as well, by their numbers: 2."_s};
    }
    void aDoubtfulBlockIsAskedAbout() {
        QFETCH(QString, pasted);
        QFETCH(QStringList, parts);
        const AthleteId athlete = m_book->addAthlete({.name = "Ada"});
        const LiftId lift = m_book->addLift({.name = "Pull"});
        EntryPage page(*m_book, [] { return today; });
        page.setAthleteAndLift(athlete, lift);
        page.pasteBlock(u"40\t1.12\n60\t0.92\n80\t0.71\n"_s);
        QVERIFY(page.session().has_value());
        const auto sets = [&] { return m_book->log().session(*page.session()).sets.size(); };
        QCOMPARE(sets(), 3U);
        page.refresh(Logbook::What::Sets, *page.session()); // as the window does
        auto* line = page.findChild<QLineEdit*>(u"setLine"_s);
        auto* answer = page.findChild<QLabel*>(u"setAnswer"_s);
        for (const bool taken : {false, true}) {
            page.pasteBlock(pasted);
            QCOMPARE(sets(), 3U);
            for (const QString& part : parts)
                QVERIFY2(answer->text().contains(part), qPrintable(answer->text()));
            QTest::keyClick(line, taken ? Qt::Key_Return : Qt::Key_Escape);
            QVERIFY2((sets() > 3U) == taken, qPrintable(answer->text()));
            QTest::keyClick(line, Qt::Key_Return); // the question is over
        }
        QVERIFY(sets() <= 6U);
        const auto before = m_book->log().liftSessions({});
        page.pasteBlock(pasted);
        page.beginSession(); // what was asked was about the other one
        QTest::keyClick(line, Qt::Key_Return);
        QVERIFY(m_book->log().liftSessions({}) == before);
    }

    // What a pasted table does not say is what the window shows, and told.
    void aPastedTableTakesWhatIsShown() {
        m_book->addAthlete({.name = "Ada"});
        m_book->addLift({.name = "Pull"});
        const auto dialog = shown(new TableDialog(
            *m_book, {.file = {}, .text = "date\tload\tspeed\n2026-03-14\t40\t1.12\n"}, m_maps,
            nullptr, {.athlete = "Ada", .lift = "Pull", .day = "2026-03-15"}));
        QTRY_VERIFY2(dialog->canImport(), qPrintable(dialog->summary()));
        keepPicture(*dialog, u"table-shown"_s);
        QCOMPARE(box(*dialog, "allAthlete")->currentText(), u"Ada"_s);
        bool told = false;
        for (const QLabel* label : dialog->findChildren<QLabel*>())
            told = told || label->text().contains(u"those shown in the window"_s);
        QVERIFY(told);
        dialog->accept();
        QTRY_COMPARE(sessions(), 1U);
        QCOMPARE(m_book->log().liftSessions({})[0].date, day(2026, 3, 14)); // the table's own day
    }

    // Nearly another's name: nothing is taken in before the coach has said who that is.
    void aNearNameIsAskedAbout() {
        m_book->addAthlete({.name = "Jos\xC3\xA9"});
        const auto dialog =
            open(file("Datum;Name;Lift;Last;v1;v2\n14.3.2026;Jose;Row;40;1,12;1\n"));
        QTRY_VERIFY(box(*dialog, "near0"));
        QTRY_VERIFY2(dialog->summary().contains(u"To be said first"_s),
                     qPrintable(dialog->summary()));
        QVERIFY(!dialog->canImport());
        keepPicture(*dialog, u"near"_s);
        chooseByKeys(box(*dialog, "near0"), u"the same athlete: Jos\u00E9"_s);
        QTRY_VERIFY2(dialog->canImport(), qPrintable(dialog->summary()));
        dialog->accept();
        QTRY_COMPARE(sessions(), 1U);
        QCOMPARE(m_book->log().athletes().size(), 1U);
    }

    void halvesOfANameAreJoinedInTheEditor() {
        const auto dialog =
            open(file("Datum;Nachname;Vorname;Lift;Last;v1;v2\n14.3.2026;Muster;Mia;Row;40;1,12;1\n"
                      "14.3.2026;Muster;Ben;Row;40;1,02;1\n"));
        QTRY_VERIFY2(dialog->canImport(), qPrintable(dialog->summary()));
        // Taken apart and put together again by hand, in the other order.
        chooseByKeys(box(*dialog, "role1"), u"not used"_s);
        chooseByKeys(box(*dialog, "role2"), u"not used"_s);
        QTRY_VERIFY(!dialog->canImport());
        chooseByKeys(box(*dialog, "role1"), u"Athlete"_s);
        chooseByKeys(box(*dialog, "role2"), u"Athlete"_s);
        QTRY_VERIFY2(dialog->canImport(), qPrintable(dialog->summary()));
        dialog->accept();
        QTRY_COMPARE(sessions(), 2U);
        QCOMPARE(m_book->log().athletes()[0].value.name, std::string("Ben Muster"));
        QCOMPARE(m_book->log().athletes()[1].value.name, std::string("Mia Muster"));
    }

    // The same of a name that is typed: OK a second time means it. It is kept in one spelling.
    void aNearNameThatIsTypedIsAskedAbout() {
        m_book->addAthlete({.name = "Jos\xC3\xA9"});
        AthleteDialog dialog(*m_book, std::nullopt, nullptr);
        auto* name = dialog.findChild<QLineEdit*>();
        const auto type = [&](const QString& typed) {
            name->setText(typed);
            dialog.setResult(QDialog::Rejected);
            dialog.accept();
            return dialog.result() == QDialog::Accepted;
        };
        QVERIFY(!type(u"\u200B\u00A0"_s)); // nothing to be seen
        QVERIFY(!type(u"JOSE\u0301"_s));   // the same
        QVERIFY(!type(u"Jose"_s));         // nearly
        QCOMPARE(m_book->log().athletes().size(), 1U);
        QVERIFY(type(u"\u00A0Jose "_s));
        QCOMPARE(m_book->log().athlete(dialog.id()).value.name, std::string("Jose"));
    }

    // An import ends undo: said before it, and afterwards nothing is half undone.
    void anImportEndsUndoAndSaysSo() {
        const AthleteId athlete = m_book->addAthlete({.name = "Ada"});
        const LiftId lift = m_book->addLift({.name = "Pull"});
        EntryPage page(*m_book, [] { return today; });
        page.setAthleteAndLift(athlete, lift);
        page.show();
        auto* line = page.findChild<QLineEdit*>(u"setLine"_s);
        line->setFocus();
        QTest::keyClicks(line, u"40 1.12"_s);
        QTest::keyClick(line, Qt::Key_Return);
        QVERIFY(m_book->undoStack()->canUndo());
        const auto dialog = open(file(clean));
        QTRY_VERIFY(dialog->canImport());
        bool told = false;
        for (const QLabel* label : dialog->findChildren<QLabel*>())
            told =
                told || label->text().contains(u"cannot be undone, and neither can any more what "
                                               "was done before it"_s);
        QVERIFY(told);
        dialog->accept();
        QTRY_COMPARE(sessions(), 2U);
        QTRY_VERIFY(!m_book->undoStack()->canUndo());
        QTest::keySequence(line, QKeySequence::Undo);
        QCOMPARE(line->text(), QString()); // the set stays, and its text does not come back
        QVERIFY(!line->isUndoAvailable());
    }
};

QTEST_MAIN(TestImporting)
#include "tst_importing.moc"

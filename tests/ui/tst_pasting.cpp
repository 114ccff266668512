// SPDX-License-Identifier: GPL-3.0-or-later
// Blocks of loads and speeds pasted into a session.
#include "tests/log/builders.h"
#include "tests/ui/bykeys.h"
#include "ui/floor/entry/entrypage.h"

#include <QClipboard>
#include <QLabel>
#include <QLineEdit>
#include <QUndoStack>

using namespace slopebook;
using namespace slopebook::test;
using namespace slopebook::ui;

namespace {
constexpr Date pasteDay = day(2026, 3, 14);
} // namespace

class TestPasting : public QObject {
    Q_OBJECT

    Folder m_folder;
    int m_files = 0;
    std::unique_ptr<Logbook> m_book;

private Q_SLOTS:
    void init() {
        const auto path = m_folder.path(("log" + std::to_string(++m_files) + ".slopebook").c_str());
        m_book = std::make_unique<Logbook>(log::Log::create(path));
    }
    void cleanup() { m_book.reset(); }

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
        EntryPage page(*m_book, [] { return pasteDay; });
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
        EntryPage page(*m_book, [] { return pasteDay; });
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
        EntryPage page(*m_book, [] { return pasteDay; });
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
        EntryPage page(*m_book, [] { return pasteDay; });
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
};

QTEST_MAIN(TestPasting)
#include "tst_pasting.moc"

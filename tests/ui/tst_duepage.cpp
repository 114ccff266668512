// SPDX-License-Identifier: GPL-3.0-or-later
// The page of who is due: the same rows as core's answer, the ways from it to an athlete and to the
// floor, its paper, and what stands there where there is nothing.
#include "core/model/errors.h"
#include "core/questions/duequestions.h"
#include "tests/log/builders.h"
#include "tests/ui/pdftext.h"
#include "ui/squad/due/duepage.h"
#include "ui/words/said.h"

#include <QAbstractItemModelTester>
#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QSpinBox>
#include <QTableView>
#include <QTest>

using namespace slopebook;
using namespace slopebook::test;
using namespace slopebook::ui;
using namespace Qt::Literals::StringLiterals;

namespace {

/// Four who were tested in one lift, the last of them long before the others.
struct Squad {
    Folder folder;
    Logbook book{log::Log::create(folder.path())};
    LiftId lift{};
    std::vector<AthleteId> athletes{};

    Squad() {
        lift =
            book.addLift({.name = "Bench pull", .mvt = Mvt{.value = 0.5, .source = "own tests"}});
        for (const char* name : {"Ada", "Ben", "Cora", "Dov"})
            athletes.push_back(book.addAthlete({.name = name}));
        for (std::size_t i = 0; i < athletes.size(); ++i)
            test(athletes[i], i == 3 ? day(2026, 3, 1) : day(2026, 5, 4));
    }
    void test(AthleteId athlete, Date date) {
        const SessionId session = book.addSession({.athlete = athlete, .date = date});
        book.addSets(session, lift, {ladderSet(40, {1.1}), ladderSet(60, {0.9})});
    }
};

QPushButton* button(const QWidget& page, const QString& part) {
    for (auto* each : page.findChildren<QPushButton*>())
        if (QString(each->text()).remove(u'&').contains(part))
            return each;
    return nullptr;
}

} // namespace

class TestDuePage : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void showsWhatCoreSays() {
        Squad squad;
        DuePage page(squad.book, Clock([] { return day(2026, 5, 11); }));
        const QAbstractItemModelTester tester(const_cast<TextTable*>(&page.table()));
        const auto due = questions::squadDueOn(squad.book.log(), day(2026, 5, 11));
        QCOMPARE(due.rows.size(), std::size_t(1));
        QCOMPARE(page.table().rowCount(), 1);
        QCOMPARE(page.table().index(0, 0).data().toString(), u"Dov"_s);
        QCOMPARE(page.table().index(0, 1).data().toString(), u"Bench pull"_s);
        QCOMPARE(page.table().index(0, 3).data().toString(), u"71"_s); // 1 March to 11 May
        QCOMPARE(page.table().index(0, 4).data().toString(),
                 said(answers::dueWhy(due.rows[0], due.question)));
        QCOMPARE(page.findChild<QLabel*>(u"sentence"_s)->text(), said(answers::dueWords(due)));
        // What is tested is due no more.
        squad.test(squad.athletes[3], day(2026, 5, 10));
        page.refresh(Logbook::What::Everything, {});
        QCOMPARE(page.table().rowCount(), 0);
        for (const QString& part : {u"preview"_s, u"Print…"_s, u"PDF"_s}) {
            QVERIFY(!button(page, part)->isEnabled());
            QVERIFY(button(page, part)->toolTip().contains(u"Nothing is due"_s));
        }
        QVERIFY(!page.canPrint());
        squad.book.addBlock({.name = "May", .first = day(2026, 5, 8), .last = day(2026, 5, 31)});
        page.refresh(Logbook::What::Everything, {});
        QCOMPARE(page.table().rowCount(), 3); // the others not in the block yet
        QVERIFY(page.canPrint());
        for (const QString& part : {u"preview"_s, u"Print…"_s, u"PDF"_s}) {
            QVERIFY(button(page, part)->isEnabled());
            QVERIFY(button(page, part)->toolTip().isEmpty());
        }
        QVERIFY(page.table().index(0, 4).data().toString().contains(u"May"_s));
    }

    void weeksAreTheCoachs() {
        Squad squad;
        DuePage page(squad.book, Clock([] { return day(2026, 6, 1); }));
        QCOMPARE(page.table().rowCount(), 1);
        page.weeks()->setValue(3); // 28 days are over three weeks
        QCOMPARE(page.table().rowCount(), 4);
        page.weeks()->setValue(6);
        QCOMPARE(page.table().rowCount(), 1);
    }

    void leadsToTheAthleteAndToTheFloor() {
        Squad squad;
        DuePage page(squad.book, Clock([] { return day(2026, 5, 11); }));
        QSignalSpy who(&page, &TaskPage::athleteWanted), where(&page, &TaskPage::placeWanted);
        QVERIFY(!button(page, u"Open"_s)->isEnabled());
        auto* view = page.findChild<QTableView*>(u"due"_s);
        view->selectRow(0);
        QVERIFY(button(page, u"Open"_s)->isEnabled());
        QTest::keyClick(view, Qt::Key_Return);
        QCOMPARE(who.size(), 1);
        QCOMPARE(who[0][0].value<AthleteId>(), squad.athletes[3]);
        QCOMPARE(where[0][0].value<TaskPage::Place>(), TaskPage::Place::Overview);
        button(page, u"station"_s)->click();
        QCOMPARE(where[1][0].value<TaskPage::Place>(), TaskPage::Place::Stations);
    }

    void onPaper() {
        Squad squad;
        DuePage page(squad.book, Clock([] { return day(2026, 5, 11); }));
        const auto file = squad.folder.path("due.pdf");
        page.writePdfTo(file);
        QVERIFY_THROWS_EXCEPTION(LogError, page.writePdfTo(squad.folder.path("none/due.pdf")));
        const QString text = squeezed(
            run(u"pdftotext"_s, {u"-layout"_s, QString::fromStdString(file.string()), u"-"_s}));
        for (const QString& part :
             {u"Dov"_s, u"Bench pull"_s, u"1 athlete is due"_s, u"page 1 of 1"_s})
            QVERIFY2(text.contains(squeezed(part)), qPrintable(part));
    }

    void anEmptyLog() {
        Folder folder;
        Logbook book{log::Log::create(folder.path())};
        DuePage page(book, Clock([] { return day(2026, 5, 11); }));
        QCOMPARE(page.table().rowCount(), 0);
        QCOMPARE(page.findChild<QLabel*>(u"sentence"_s)->text(),
                 u"No athlete yet. Add the first, then type a set under Floor."_s);
    }
};

QTEST_MAIN(TestDuePage)
#include "tst_duepage.moc"

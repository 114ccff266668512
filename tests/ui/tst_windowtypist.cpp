// SPDX-License-Identifier: GPL-3.0-or-later
// Who is in the middle of typing a set in the window is seen as that by what waits for it: from the
// first key until what was typed is taken or left, and no longer.
#include "core/log/typists.h"
#include "tests/log/builders.h"
#include "ui/floor/entry/entryline.h"
#include "ui/floor/entry/entrypage.h"
#include "ui/parts/undoableedit.h"
#include "ui/window/mainwindow.h"
#include "ui/window/windowtypist.h"
#include "ui/window/workspace.h"

#include <QTest>
#include <QVBoxLayout>

using namespace slopebook;
using namespace slopebook::test;
using namespace slopebook::ui;
using namespace std::chrono_literals;

class TestWindowTypist : public QObject {
    Q_OBJECT

    std::unique_ptr<Folder> m_folder;
    Season m_season;
    std::unique_ptr<log::Typists> m_typists;

    bool seen() const { return m_typists->now(); }

private Q_SLOTS:
    void init() {
        m_folder = std::make_unique<Folder>();
        {
            log::Log log = log::Log::create(m_folder->path());
            m_season = fillSeason(log);
        }
        m_typists = std::make_unique<log::Typists>(m_folder->path());
    }

    void fromTheFirstKeyUntilItIsTaken() {
        Surroundings given;
        given.clock = [] { return day(2026, 3, 14); };
        auto window = std::make_unique<MainWindow>(given);
        window->show();
        window->openLogFile(QString::fromStdString(m_folder->path().string()));
        Workspace& work = *window->workspace();
        work.choose(m_season.lane3, m_season.pull);
        work.showPage(Page::Session);
        auto* line = work.entry().findChild<SetEdit*>();
        QVERIFY(line && line->isVisible());
        QVERIFY(!seen());
        line->setFocus();
        QTest::keyClicks(line, QStringLiteral("60 0.9"));
        QVERIFY(seen());
        QTest::qWait(1500); // he thinks
        QVERIFY(seen());
        QTest::keyClick(line, Qt::Key_Return);
        QCOMPARE(line->text(), QString());
        QTRY_VERIFY(!seen());
        // Another page is looked at meanwhile.
        QTest::keyClicks(line, QStringLiteral("62.5"));
        work.showPage(Page::History);
        QVERIFY(seen());
        QTRY_VERIFY(!seen());
        work.showPage(Page::Session);
        QVERIFY(seen());
        // Closed as it stands.
        window.reset();
        QVERIFY(!seen());
    }

    // Any key, for the moment: of a dialog, of a cell.
    void anyKeyForAMoment() {
        const WindowTypist typist(m_folder->path());
        QWidget other;
        other.show();
        QVERIFY(!seen());
        QTest::keyClick(&other, Qt::Key_F5);
        QVERIFY(seen());
        QTRY_VERIFY(!seen());
    }

    // What was begun and left stands in nobody's way for good; a key takes it up again.
    void aLineThatIsLeft() {
        QWidget page;
        auto* line = new UndoableEdit;
        (new QVBoxLayout(&page))->addWidget(line);
        page.show();
        WindowTypist typist(m_folder->path(), {.key = 50ms, .line = 400ms}, nullptr);
        typist.watch(page);
        line->setText(QStringLiteral("60 ")); // by the mouse: no key
        QVERIFY(seen());
        QTRY_VERIFY_WITH_TIMEOUT(!seen(), 5000);
        QCOMPARE(line->text(), QStringLiteral("60 "));
        QTest::keyClick(line, Qt::Key_9);
        QTest::qWait(150); // longer than a key
        QVERIFY(seen());
        line->clear();
        QVERIFY(!seen());
        // A page that goes before it.
        line->setText(QStringLiteral("1"));
        QVERIFY(seen());
        delete line;
        QTRY_VERIFY(!seen());
    }
};

QTEST_MAIN(TestWindowTypist)
#include "tst_windowtypist.moc"

// SPDX-License-Identifier: GPL-3.0-or-later
// A date typed by keys is taken as it stands, or refused: wherever the keys begin, in both
// languages' forms, in every field of the window. Never half of it, never another day.
#include "tests/log/builders.h"
#include "ui/parts/dayedit.h"
#include "ui/records/blocksdialog.h"
#include "ui/records/sessiondialog.h"
#include "ui/squad/changes/periodchooser.h"
#include "ui/window/language.h"
#include "ui/words/format.h"
#include "ui/words/units.h"

#include <QLabel>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTest>

using namespace slopebook;
using namespace slopebook::test;
using namespace slopebook::ui;

namespace {

const QDate stands(2025, 7, 8), other(2023, 11, 24), refused;

/// How a coach comes into the field before typing.
enum class Way { Tab, Click, ClickTwice, SelectAll, Home, Year };
const std::pair<Way, const char*> ways[] = {{Way::Tab, "Tab"},
                                            {Way::Click, "a click"},
                                            {Way::SelectAll, "Ctrl+A"},
                                            {Way::Home, "Home"},
                                            {Way::Year, "a double click on the year"}};

void bring(QWidget& widget) {
    widget.show();
    widget.activateWindow();
    QVERIFY(QTest::qWaitForWindowActive(&widget));
}

/// A form with a field before the day and one after it.
struct Form : QWidget {
    QLineEdit* before = new QLineEdit(this);
    DayEdit* edit = new DayEdit(this);
    QLineEdit* after = new QLineEdit(this);
    Form() {
        before->setGeometry(0, 0, 200, 30);
        edit->setGeometry(0, 40, 200, 30);
        after->setGeometry(0, 80, 200, 30);
        edit->setDate(stands);
        bring(*this);
        before->setFocus();
    }
    QLineEdit* line() const { return edit->findChild<QLineEdit*>(); }
    QPoint onYear() const {
        return {line()->fontMetrics().horizontalAdvance(QStringLiteral("20")) + 2,
                line()->height() / 2};
    }
    void enter(Way way) const {
        switch (way) {
        case Way::Tab:
            QTest::keyClick(before, Qt::Key_Tab);
            break;
        case Way::Click:
            QTest::mouseClick(line(), Qt::LeftButton, {}, QPoint(60, 8));
            break;
        case Way::ClickTwice:
            QTest::mouseClick(line(), Qt::LeftButton, {}, QPoint(60, 8));
            QTest::qWait(QApplication::doubleClickInterval() + 10);
            QTest::mouseClick(line(), Qt::LeftButton, {}, QPoint(60, 8));
            break;
        case Way::SelectAll:
            QTest::mouseClick(line(), Qt::LeftButton, {}, QPoint(60, 8));
            QTest::keyClick(edit, Qt::Key_End);
            QTest::keyClick(edit, Qt::Key_A, Qt::ControlModifier);
            break;
        case Way::Home:
            QTest::mouseClick(line(), Qt::LeftButton, {}, QPoint(60, 8));
            QTest::keyClick(edit, Qt::Key_Home);
            break;
        case Way::Year:
            QTest::mouseClick(line(), Qt::LeftButton, {}, onYear());
            QTest::mouseDClick(line(), Qt::LeftButton, {}, onYear());
            QCOMPARE(line()->selectedText(), QStringLiteral("2025"));
            break;
        }
        QVERIFY(edit->hasFocus());
    }
};

} // namespace

class TestDayEdit : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init() { QLocale::setDefault(QLocale(QStringLiteral("en_US"))); }
    void cleanup() { QLocale::setDefault(QLocale::c()); }

    void wholeDays_data() {
        QTest::addColumn<QString>("language");
        QTest::addColumn<int>("way");
        QTest::addColumn<QString>("keys");
        QTest::addColumn<QDate>("date");
        const auto row = [](const char* language, Way way, const char* name, const char* keys,
                            const QDate& date) {
            QTest::addRow("%s, %s: %s", language, name, keys)
                << QString::fromLatin1(language) << int(way) << QString::fromLatin1(keys) << date;
        };
        for (const auto& [way, name] : ways)
            for (const char* language : {"en_US", "de_DE"}) {
                for (const char* keys : {"2023-11-24", "20231124", "2023.11.24", "2023/11/24"})
                    row(language, way, name, keys, other);
                row(language, way, name, "2023-1-24", QDate(2023, 1, 24));
                row(language, way, name, "2023-04-01", QDate(2023, 4, 1));
                row(language, way, name, "2023-02-31", refused);
                row(language, way, name, "0023-11-24", refused);
            }
        for (const auto& [way, name] : ways) {
            if (way == Way::Year)
                continue; // a day with its year last is not typed over a year
            row("de_DE", way, name, "24.11.2023", other);
            row("de_DE", way, name, "1.2.2023", QDate(2023, 2, 1));
            row("de_DE", way, name, "24.11.23", other);
            row("en_US", way, name, "11/24/2023", other);
            row("en_US", way, name, "2/1/2023", QDate(2023, 2, 1));
            row("en_US", way, name, "11/24/23", other);
            row("en_GB", way, name, "24/11/2023", other);
            row("en_US", way, name, "24.11.2023", other); // with points the day stands first
            // What cannot be told, or is only half of a day.
            row("en_US", way, name, "24/11/2023", refused);
            row("de_DE", way, name, "24/11/2023", refused);
            row("de_DE", way, name, "24-11-2023", refused);
            row("en_US", way, name, "24.11.23", refused);
            row("de_DE", way, name, "24.11.", refused);
            row("en_US", way, name, "11/24", refused);
            row("de_DE", way, name, "31.6.2023", refused);
        }
    }
    void wholeDays() {
        QFETCH(QString, language);
        QFETCH(int, way);
        QFETCH(QString, keys);
        QFETCH(QDate, date);
        QLocale::setDefault(QLocale(language));
        const Form form;
        form.enter(static_cast<Way>(way));
        QSignalSpy told(form.edit, &DayEdit::refused), changed(form.edit, &QDateEdit::dateChanged);
        QTest::keyClicks(form.edit, keys);
        QTest::keyClick(form.edit, Qt::Key_Tab);
        if (date.isValid()) {
            QCOMPARE(form.edit->date(), date);
            QCOMPARE(form.line()->text(), dateText(modelDate(date))); // as all else in the window
            QCOMPARE(told.count(), 0);
            QCOMPARE(changed.count(), 1);
            return;
        }
        QCOMPARE(form.edit->date(), stands);
        QCOMPARE(told.count(), 1);
        QCOMPARE(changed.count(), 0);
        QVERIFY(!form.edit->problem().isEmpty());
        QVERIFY(form.line()->text() != dateText(modelDate(stands))); // it is there to be mended
        form.edit->takeBack();
        QVERIFY(form.edit->problem().isEmpty());
        QCOMPARE(form.line()->text(), dateText(modelDate(stands)));
    }

    /// As everywhere in the window; in digits while it has the keys; and every day of a year comes
    /// back from its words, in each language.
    void itIsShownAsAllDaysAre() {
        for (const char* language : {"en_US", "de_DE", "en_GB"}) {
            QLocale::setDefault(QLocale(QString::fromLatin1(language)));
            Form form;
            QVERIFY(!form.line()->text().contains(QStringLiteral("2025-07")));
            QCOMPARE(form.line()->text(), dateText(modelDate(stands)));
            form.enter(Way::Tab);
            QCOMPARE(form.line()->text(), QStringLiteral("2025-07-08"));
            QTest::keyClick(form.edit, Qt::Key_Tab);
            QCOMPARE(form.line()->text(), dateText(modelDate(stands)));
            for (int i = 0; i < 366; ++i) {
                const QDate day = QDate(2024, 1, 1).addDays(i);
                form.edit->setDate(day);
                QCOMPARE(form.line()->text(), dateText(modelDate(day)));
                QVERIFY(form.edit->problem().isEmpty() && form.edit->take());
                QCOMPARE(form.edit->date(), day);
            }
        }
    }

    void partsOfADay_data() {
        QTest::addColumn<int>("way");
        QTest::addColumn<QString>("keys");
        QTest::addColumn<QDate>("date");
        QTest::newRow("the year from Home") << int(Way::Home) << "2023" << QDate(2023, 7, 8);
        QTest::newRow("year and month from Home")
            << int(Way::Home) << "2023-11" << QDate(2023, 11, 8);
        QTest::newRow("the year, double-clicked") << int(Way::Year) << "2023" << QDate(2023, 7, 8);
        // All is marked, and goes: a year alone is no day.
        QTest::newRow("the year after a click") << int(Way::Click) << "2023" << refused;
        QTest::newRow("the year after Ctrl+A") << int(Way::SelectAll) << "2023" << refused;
    }
    void partsOfADay() {
        QFETCH(int, way);
        QFETCH(QString, keys);
        QFETCH(QDate, date);
        const Form form;
        form.enter(static_cast<Way>(way));
        QSignalSpy told(form.edit, &DayEdit::refused);
        QTest::keyClicks(form.edit, keys);
        QTest::keyClick(form.edit, Qt::Key_Tab);
        QCOMPARE(form.edit->date(), date.isValid() ? date : stands);
        QCOMPARE(told.count(), date.isValid() ? 0 : 1);
    }

    /// Wherever the cursor stands, a whole day typed there is that day or is refused.
    void aDayTypedIntoTheMiddleIsNeverAnother() {
        for (const char* language : {"en_US", "de_DE"})
            for (const char* keys : {"2023-11-24", "20231124", "24.11.2023", "11/24/2023"})
                for (int at = 0; at <= 10; ++at) {
                    QLocale::setDefault(QLocale(QString::fromLatin1(language)));
                    const Form form;
                    form.enter(Way::Home);
                    for (int i = 0; i < at; ++i)
                        QTest::keyClick(form.edit, Qt::Key_Right);
                    QTest::keyClicks(form.edit, QLatin1String(keys));
                    QTest::keyClick(form.edit, Qt::Key_Tab);
                    const bool taken = form.edit->date() == other && form.edit->problem().isEmpty();
                    const bool kept =
                        form.edit->date() == stands && !form.edit->problem().isEmpty();
                    QVERIFY2(taken || kept,
                             qPrintable(QStringLiteral("%1 at %2: %3, %4")
                                            .arg(QLatin1String(keys))
                                            .arg(at)
                                            .arg(form.edit->date().toString(Qt::ISODate),
                                                 form.line()->text())));
                    QVERIFY(at > 0 || taken || QLatin1String(keys).contains(QLatin1Char('/')));
                }
    }

    void aSecondClickPlacesTheCursor() {
        const Form form;
        form.enter(Way::ClickTwice);
        QVERIFY(!form.line()->hasSelectedText());
        QTest::keyClick(form.edit, Qt::Key_End);
        QTest::keyClick(form.edit, Qt::Key_Backspace);
        QTest::keyClicks(form.edit, QStringLiteral("9"));
        QTest::keyClick(form.edit, Qt::Key_Tab);
        QCOMPARE(form.edit->date(), QDate(2025, 7, 9));
    }

    void arrowsGoByDays() {
        const Form form;
        form.enter(Way::Tab);
        QTest::keyClick(form.edit, Qt::Key_Up);
        QCOMPARE(form.edit->date(), QDate(2025, 7, 9));
        QTest::keyClick(form.edit, Qt::Key_Down);
        QTest::keyClick(form.edit, Qt::Key_Down);
        QCOMPARE(form.edit->date(), QDate(2025, 7, 7));
    }

    void escapeBringsTheDayBack() {
        const Form form;
        form.enter(Way::Tab);
        QTest::keyClicks(form.edit, QStringLiteral("2019-0"));
        QTest::keyClick(form.edit, Qt::Key_Escape);
        QTest::keyClick(form.edit, Qt::Key_Tab);
        QCOMPARE(form.edit->date(), stands);
        QVERIFY(form.edit->problem().isEmpty());
    }

    void dialogsRefuseWhatIsNoDay() {
        const Folder folder;
        log::Log log = log::Log::create(folder.path());
        const Season season = fillSeason(log);
        Logbook book(std::move(log));
        SessionDialog session(book, season.autumn, nullptr);
        BlockDialog block(book, season.flood, day(2026, 1, 1), nullptr);
        for (QDialog* dialog : {static_cast<QDialog*>(&session), static_cast<QDialog*>(&block)})
            for (DayEdit* edit : dialog->findChildren<DayEdit*>()) {
                bring(*dialog);
                const QDate before = edit->date();
                edit->setFocus(Qt::TabFocusReason);
                QTest::keyClicks(edit, QStringLiteral("2023-02-31"));
                dialog->accept();
                QVERIFY(dialog->isVisible());
                QVERIFY(edit->hasFocus());
                QCOMPARE(edit->date(), before);
                bool said = false;
                for (const QLabel* label : dialog->findChildren<QLabel*>())
                    said |=
                        label->isVisible() && label->text().contains(QStringLiteral("2023-02-31"));
                QVERIFY(said);
                edit->takeBack();
            }
        QVERIFY(!book.undoStack()->canUndo());
        block.hide();
        bring(session);
        auto* edit = session.findChild<DayEdit*>();
        edit->clearFocus();
        edit->setFocus(Qt::TabFocusReason);
        QTest::keyClicks(edit, QStringLiteral("2025-11-09"));
        session.accept();
        QCOMPARE(book.log().session(season.autumn).head.value.date, day(2025, 11, 9));
    }

    void aPeriodKeepsItsDay() {
        PeriodChooser chooser(QStringLiteral("From"), QStringLiteral("Earlier"));
        chooser.chooseDate(day(2025, 7, 8), 14);
        bring(chooser);
        auto* edit = chooser.findChild<DayEdit*>();
        QSignalSpy told(&chooser, &PeriodChooser::refused);
        edit->setFocus(Qt::TabFocusReason);
        QTest::keyClicks(edit, QStringLiteral("31.2."));
        QTest::keyClick(edit, Qt::Key_Return);
        QCOMPARE(told.count(), 1);
        QCOMPARE(edit->findChild<QLineEdit*>()->text(), QStringLiteral("2025-07-08"));
        QCOMPARE(edit->date(), QDate(2025, 7, 8));
        QTest::keyClicks(edit, QStringLiteral("2023-07-08"));
        QTest::keyClick(edit, Qt::Key_Return);
        QCOMPARE(edit->date(), QDate(2023, 7, 8));
    }
};

QTEST_MAIN(TestDayEdit)
#include "tst_dayedit.moc"

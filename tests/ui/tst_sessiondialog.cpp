// SPDX-License-Identifier: GPL-3.0-or-later
// A repeat test is marked among the sessions that lie within the coach's days.
#include "ui/records/sessiondialog.h"

#include <QAbstractButton>
#include <QComboBox>
#include <QDateEdit>
#include <QLineEdit>
#include <QMessageBox>
#include <QSpinBox>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>

using namespace slopebook;
using namespace slopebook::ui;

namespace {
Date march(unsigned day) {
    return Date{std::chrono::year{2026}, std::chrono::month{3}, std::chrono::day{day}};
}
} // namespace

class TestSessionDialog : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void onlySessionsWithinTheDaysAreOffered() {
        const QTemporaryDir folder;
        Logbook book(
            log::Log::create(folder.filePath(QStringLiteral("a.slopebook")).toStdString()));
        const AthleteId lane = book.addAthlete({.name = "Lane 3", .note = {}});
        std::vector<SessionId> sessions;
        for (const unsigned day : {1U, 10U, 14U, 16U}) {
            SessionHead head;
            head.athlete = lane;
            head.date = march(day);
            sessions.push_back(book.addSession(head));
        }
        QCOMPARE(book.repeatDays(), usualRepeatDays);
        {
            SessionDialog dialog(book, sessions[3], nullptr);
            auto* first = dialog.findChild<QComboBox*>(QStringLiteral("repeatOf"));
            // "no", then the nearest first: 2 and 6 days; the 15 days' is not offered.
            QCOMPARE(first->count(), 3);
            QCOMPARE(first->itemData(1).toLongLong(), qint64(raw(sessions[2])));
            QCOMPARE(first->itemData(2).toLongLong(), qint64(raw(sessions[1])));
            auto* days = dialog.findChild<QSpinBox*>(QStringLiteral("repeatDays"));
            days->setValue(20);
            QCOMPARE(first->count(), 4);
            first->setCurrentIndex(first->findData(qint64(raw(sessions[0]))));
            dialog.accept();
            QCOMPARE(dialog.result(), int(QDialog::Accepted));
        }
        QCOMPARE(book.repeatDays(), 20);
        QCOMPARE(book.log().session(sessions[3]).head.value.repeatOf, std::optional(sessions[0]));

        // What is marked stays in the list; with fewer days it is refused, and nothing changes.
        SessionDialog dialog(book, sessions[3], nullptr);
        auto* first = dialog.findChild<QComboBox*>(QStringLiteral("repeatOf"));
        QCOMPARE(first->currentData().toLongLong(), qint64(raw(sessions[0])));
        dialog.findChild<QSpinBox*>(QStringLiteral("repeatDays"))->setValue(7);
        dialog.accept();
        QCOMPARE(dialog.result(), int(QDialog::Rejected));
        QCOMPARE(book.repeatDays(), 20);
    }

    /// Under what a lift was measured, and whether the day may be compared at all: one step of
    /// undo, and on disk at once.
    void conditionsOfTheLiftAreEntered() {
        const QTemporaryDir folder;
        const auto path = folder.filePath(QStringLiteral("a.slopebook")).toStdString();
        Logbook book(log::Log::create(path));
        const LiftId pull = book.addLift({.name = "Bench pull"});
        SessionHead head;
        head.athlete = book.addAthlete({.name = "Lane 3", .note = {}});
        head.date = march(1);
        const SessionId session = book.addSession(head);
        const Conditions before{.place = "Boathouse"};
        book.setConditions(session, pull, before);
        const int steps = book.undoStack()->index();
        SessionDialog dialog(book, session, nullptr, pull);
        const auto type = [&](const char* name, const char* words) {
            for (auto* field : dialog.findChildren<QLineEdit*>())
                if (field->accessibleName() == QLatin1String(name))
                    return field->setText(QLatin1String(words));
            QFAIL(name);
        };
        type("Surface", " turf ");
        type("Footwear", "socks");
        type("Technique", "strict");
        type("Not comparable, because", "felt ill");
        dialog.accept();
        QCOMPARE(dialog.result(), int(QDialog::Accepted));
        const Conditions typed{.place = "Boathouse",
                               .surface = "turf",
                               .footwear = "socks",
                               .technique = "strict",
                               .notComparable = "felt ill"};
        QCOMPARE(log::Log::open(path).conditions(session, pull), typed);
        QCOMPARE(book.undoStack()->index(), steps + 1);
        book.undoStack()->undo();
        QCOMPARE(log::Log::open(path).conditions(session, pull), before);
    }

    /// What the dialog did not change stays as another window left it; a day far away is asked
    /// about.
    void onlyWhatWasChangedIsSaved() {
        const QTemporaryDir folder;
        const auto path = folder.filePath(QStringLiteral("a.slopebook")).toStdString();
        Logbook book(log::Log::create(path));
        SessionHead head;
        head.athlete = book.addAthlete({.name = "Lane 3", .note = {}});
        head.date = march(1);
        const SessionId session = book.addSession(head);
        SessionDialog dialog(book, session, nullptr);
        head.note = "windy";
        log::Log::open(path).change(session, head);
        auto* date = dialog.findChild<QDateEdit*>();
        date->setDate(QDate(2024, 3, 1));
        QString asked;
        const auto press = [&asked](QMessageBox::StandardButton with) {
            QTimer::singleShot(0, qApp, [&asked, with] {
                auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
                if (!box)
                    return;
                asked = box->text();
                box->button(with)->click();
            });
        };
        press(QMessageBox::No);
        dialog.accept();
        QVERIFY2(asked.contains(QStringLiteral("730")), qPrintable(asked)); // two years
        QCOMPARE(book.log().session(session).head.value, head);
        press(QMessageBox::Yes);
        dialog.accept();
        head.date = Date{std::chrono::year{2024}, std::chrono::month{3}, std::chrono::day{1}};
        QCOMPARE(book.log().session(session).head.value, head);
    }
};

QTEST_MAIN(TestSessionDialog)
#include "tst_sessiondialog.moc"

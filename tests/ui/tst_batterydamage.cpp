// SPDX-License-Identifier: GPL-3.0-or-later
// Damage that takes something of both sides away: the battery's answer says so in the window, on
// paper and in the command, or there is none and the log's own words instead. It is never shorter
// in silence.
#include "core/questions/batterytable.h"
#include "tests/log/builders.h"
#include "tests/log/rawfile.h"
#include "tests/system/program.h"
#include "ui/athlete/battery/beforeafterview.h"
#include "ui/paper/batteryprint.h"

#include <QComboBox>
#include <QFile>
#include <QJsonArray>
#include <QLabel>
#include <QStandardPaths>
#include <QTest>

using namespace slopebook;
using namespace slopebook::test;
using namespace slopebook::questions;
using namespace slopebook::ui;
using namespace Qt::Literals::StringLiterals;

class TestBatteryDamage : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void whatCannotBeReadIsSaid_data() {
        QTest::addColumn<QString>("damage");
        QTest::newRow("the lifts are gone") << u"DELETE FROM lifts"_s;
        QTest::newRow("one lift is gone") << u"DELETE FROM lifts WHERE name = 'Bench pull'"_s;
        QTest::newRow("a lift is not as it was written")
            << u"UPDATE lifts SET note = 'other' WHERE name = 'Bench pull'"_s;
        QTest::newRow("a set is not as it was written")
            << u"UPDATE sets SET load_g = load_g + 1000"_s;
        QTest::newRow("the tests are gone") << u"DELETE FROM tests"_s;
        QTest::newRow("one test is gone")
            << u"DELETE FROM tests WHERE name = 'Single hop for distance'"_s;
    }
    void whatCannotBeReadIsSaid() {
        QFETCH(QString, damage);
        const Folder folder;
        const QString file = QString::fromStdString(folder.path().string());
        QVERIFY(QFile::copy(QStringLiteral(SLOPEBOOK_SAMPLE_LOG), file));
        QVERIFY(QFile::setPermissions(file, QFile::ReadOwner | QFile::WriteOwner));
        runSql(folder.path(), damage.toStdString());
        const QString pdf = QString::fromStdString(folder.path("page.pdf").string());
        const QStringList arguments{u"battery"_s, file,        u"--athlete"_s, u"Cora"_s,
                                    u"--from"_s,  u"Autumn"_s, u"--to"_s,      u"Spring"_s};
        const tests::Ran ran = tests::runProgram(arguments + QStringList{u"--pdf"_s, pdf});
        QCOMPARE(ran.exit, 2);
        QVERIFY(!ran.err.isEmpty());

        Logbook book(log::Log::open(folder.path()));
        AthleteId cora{};
        for (const auto& athlete : book.log().athletes())
            if (athlete.value.name == "Cora")
                cora = athlete.id;
        std::optional<BatteryAnswer> answer;
        try {
            answer = *batteryOf(book.log(), cora, batterySide(book.log(), "Autumn"),
                                batterySide(book.log(), "Spring"));
        } catch (const LogError& error) {
            QCOMPARE(error.kind(), LogError::Kind::Damaged);
        }
        BeforeAfterView view(book);
        view.setAthlete(cora);
        const auto shows = [&](const QString& words) {
            for (const auto* label : view.findChildren<QLabel*>())
                if (!label->isHidden() && label->text().contains(words))
                    return true;
            return false;
        };
        for (QComboBox* box : {view.fromBox(), view.toBox()}) {
            const int at =
                box->findText(box == view.fromBox() ? u"block Autumn"_s : u"block Spring"_s);
            QVERIFY(at >= 0);
            box->setCurrentIndex(at);
        }
        if (!answer) {
            QVERIFY(shows(u"damaged"_s));
            return;
        }
        QVERIFY(!answer->unread.empty());
        QVERIFY2(ran.out.contains("Left out, for it cannot be read"), ran.out);
        QCOMPARE(tests::runProgram(arguments + QStringList{u"--json"_s})
                     .json()[u"unread"]
                     .toArray()
                     .size(),
                 qsizetype(answer->unread.size()));
        QVERIFY(batteryCsv(*answer).find("left out") != std::string::npos);
        QVERIFY(shows(u"cannot be read"_s));
        if (QStandardPaths::findExecutable(u"pdftotext"_s).isEmpty())
            QSKIP("PDFTOTEXT IS NOT INSTALLED: the page is not read back (poppler-utils)");
        QProcess reader;
        reader.start(u"pdftotext"_s, {pdf, u"-"_s});
        QVERIFY(reader.waitForFinished());
        QVERIFY(QString::fromUtf8(reader.readAllStandardOutput())
                    .simplified()
                    .contains(u"cannot be read"_s));
    }

    void whatIsWholeSaysNothing() {
        const tests::Ran ran =
            tests::runProgram({u"battery"_s, QStringLiteral(SLOPEBOOK_SAMPLE_LOG), u"--athlete"_s,
                               u"Cora"_s, u"--from"_s, u"Autumn"_s, u"--to"_s, u"Spring"_s});
        QCOMPARE(ran.exit, 0);
        QVERIFY(!ran.out.contains("cannot be read"));
    }
};

QTEST_MAIN(TestBatteryDamage)
#include "tst_batterydamage.moc"

// SPDX-License-Identifier: GPL-3.0-or-later
// Names of files made of people's names. What file systems refuse: POSIX (no / and no NUL, 255
// bytes) and the portable set that FAT and NTFS ask for, which a coach's stick has.
#include "core/model/filenames.h"
#include "core/model/names.h"

#include <QTest>

#include <random>
#include <set>

using namespace slopebook;
using namespace Qt::Literals::StringLiterals;

class TestFileNames : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void safe_data() {
        QTest::addColumn<QString>("words");
        QTest::addColumn<QString>("safe");
        QTest::newRow("as it is") << u"Bench pull"_s << u"Bench pull"_s;
        QTest::newRow("a path") << u"../../etc/passwd"_s << u"-..-etc-passwd"_s;
        QTest::newRow("what sticks refuse") << u"a\\b:c*d?e\"f<g>h|i"_s << u"a-b-c-d-e-f-g-h-i"_s;
        QTest::newRow("points at the ends") << u" .hidden. "_s << u"hidden"_s;
        QTest::newRow("controls") << u"a\nb\tc"_s << u"a-b-c"_s;
        QTest::newRow("nothing left") << u" .. "_s << u"unnamed"_s;
        QTest::newRow("letters of all kinds") << u"Jörg Ωμέγα 李"_s << u"Jörg Ωμέγα 李"_s;
    }
    void safe() {
        QFETCH(QString, words);
        QFETCH(QString, safe);
        QCOMPARE(QString::fromStdString(safeFileName(words.toStdString())), safe);
    }

    void aLongNameEndsWithAWholeLetter() {
        const QString words = QString(200, QChar(0x00F6)); // two bytes each
        const std::string safe = safeFileName("x" + words.toStdString());
        QVERIFY(safe.size() <= 120);
        QVERIFY(!QString::fromStdString(safe).contains(QChar(QChar::ReplacementCharacter)));
    }

    void eachOnce() {
        FileNames names;
        QCOMPARE(names.next("athlete ", "Ann", ".pdf"), std::string("athlete Ann.pdf"));
        QCOMPARE(names.next("athlete ", "ANN", ".pdf"), std::string("athlete ANN (2).pdf"));
        QCOMPARE(names.next("athlete ", "a/b", ".pdf"), std::string("athlete a-b.pdf"));
        QCOMPARE(names.next("athlete ", "a:b", ".pdf"), std::string("athlete a-b (2).pdf"));
        QCOMPARE(names.next("athlete ", "Ann (2)", ".pdf"), std::string("athlete Ann (2) (2).pdf"));
        QCOMPARE(names.next("squad ", "Ann", ".pdf"), std::string("squad Ann.pdf"));
    }

    void byDice() {
        std::mt19937 dice(20260314);
        const QString letters = u"aAbB/\\:. *?\"<>|\n\u00e4\u00c4\u03a9\u6f22\u0301'"_s;
        FileNames names;
        std::set<std::string> keys;
        for (int round = 0; round < 800; ++round) {
            QString words;
            for (auto left = dice() % 6; left > 0; --left)
                words +=
                    letters[static_cast<qsizetype>(dice() % static_cast<unsigned>(letters.size()))];
            const std::string name = names.next("athlete ", words.toStdString(), ".pdf");
            QVERIFY(name.size() <= 255);
            QVERIFY(name.find_first_of("/\\:*?\"<>|\n") == std::string::npos);
            QVERIFY(name.starts_with("athlete ") && name.ends_with(".pdf"));
            QVERIFY2(keys.insert(foldCase(name)).second,
                     name.c_str()); // also where case is no difference
        }
    }
};

QTEST_APPLESS_MAIN(TestFileNames)
#include "tst_filenames.moc"

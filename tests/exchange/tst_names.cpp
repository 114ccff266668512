// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/names.h"

#include <QTest>

#include <array>

using namespace slopebook;

class TestNames : public QObject {
    Q_OBJECT
private Q_SLOTS:
    // Source: the letters' own pairs in Unicode (CaseFolding.txt, status C), as Qt holds them.
    void foldsAsUnicodeDoes() {
        for (unsigned c = 0x20; c < 0x482; ++c) {
            const bool ours =
                (c < 0x80) || (c >= 0xC0 && c < 0x180) || (c >= 0x391 && c < 0x3CC) || c >= 0x400;
            // I with a dot, small dotless i, n with an apostrophe, long s: no simple pair of
            // the same length.
            const bool special = c == 0x130 || c == 0x131 || c == 0x149 || c == 0x17F || c == 0x3C2;
            if (!ours || special || !QChar::isPrint(c))
                continue;
            const QString text = QString(QChar(c));
            const std::string folded = foldCase(text.toStdString());
            QVERIFY2(QString::fromStdString(folded) == text.toLower(),
                     qPrintable(QString::number(c, 16)));
        }
    }

    void leavesOtherTextAlone() {
        for (const char* text : {"", "Lane 3", "\xE6\x97\xA5", "\xF0\x9F\x9A\xA3", "\xC3"})
            QCOMPARE(foldCase(foldCase(text)), foldCase(text));
        QCOMPARE(foldCase("\xE6\x97\xA5"), std::string("\xE6\x97\xA5"));
    }

    void findsTheExactNameFirst() {
        const std::array<std::string, 3> names{"ann", "Ann", "Bob"};
        QCOMPARE(findName(names, "Ann"), std::optional<std::size_t>(1));
        QCOMPARE(findName(names, "bob"), std::optional<std::size_t>(2));
        QVERIFY(!findName(names, "ANN")); // two differ in letter case alone
        QVERIFY(!findName(names, "Cora"));
    }
};

QTEST_APPLESS_MAIN(TestNames)
#include "tst_names.moc"

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/names.h"
#include "core/model/nearnames.h"
#include "core/model/printable.h"

#include <QRandomGenerator>
#include <QTest>

#include <array>

using namespace Qt::Literals::StringLiterals;
using namespace slopebook;

namespace {

QString q(const std::string& text) {
    return QString::fromStdString(text);
}

// Pieces that spellings of a name are made of: letters that compose, blanks, what is not seen.
const std::array<const char*, 34> pieces{"a",
                                         "B",
                                         "\xC3\xA9",
                                         "e\xCC\x81",
                                         " ",
                                         "\xC2\xA0",
                                         "\xE2\x80\x8B",
                                         "\xE2\x80\x8D",
                                         "\xE2\x80\x8C",
                                         "\t",
                                         "\x1B[31m",
                                         "\xE2\x80\xAE",
                                         "\xC3\x9F",
                                         "\xE1\xBA\x9E",
                                         "\xCF\x82",
                                         "\xCE\xA3",
                                         "\xD8\xB9",
                                         "\xE0\xB4\xB0",
                                         "\xE0\xB5\x8D",
                                         "\xE3\x85\xA4",
                                         "\xE1\xBB\x84",
                                         "\xEF\xBB\xBF",
                                         "\xC2\xAD",
                                         "\xE2\x80\xA8",
                                         "\xCC\x81",
                                         "3",
                                         "'",
                                         "\xE4\xB8\xAD",
                                         "\xEF\xAC\x81",
                                         "\xC2\x85",
                                         "\xF3\xA0\x80\xA1",
                                         "\xF0\x9F\x9A\xA3",
                                         "\xE2\xA0\x80",
                                         "\x7F"};

} // namespace

class TestNames : public QObject {
    Q_OBJECT
private Q_SLOTS:
    // Source: the simple case pairs of Unicode, as Qt holds them, where full folding (Unicode's
    // CaseFolding.txt, status F) does not make two letters of one.
    void foldsAsUnicodeDoes() {
        for (unsigned c = 0x20; c < 0x530; ++c) {
            // sharp s, I with a dot, n with an apostrophe, j with a caron, two Greek letters with
            // three marks, an Armenian pair: full folding; long s, final sigma, iota, mu and the
            // Greek symbols: folded, though lower case already.
            const bool special = c == 0xDF || c == 0x130 || c == 0x149 || c == 0x17F || c == 0xB5 ||
                                 c == 0x1F0 || c == 0x345 || c == 0x390 || c == 0x3B0 ||
                                 c == 0x3C2 || (c >= 0x3D0 && c <= 0x3D6) || c == 0x3F0 ||
                                 c == 0x3F1 || c == 0x3F4 || c == 0x3F5;
            if (special || !QChar::isPrint(c) || QChar::isMark(c))
                continue;
            const QString text = QString(QChar(c)).normalized(QString::NormalizationForm_C);
            QCOMPARE(q(foldCase(text.toStdString())), text.toCaseFolded());
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
        QVERIFY(!findName(names, "ANN")); // two have its key
        QVERIFY(!findName(names, "Cora"));
    }

    // Spellings of one name: as keyboards, spreadsheets and other systems write it.
    void oneNameHasOneKey_data() {
        QTest::addColumn<QString>("one");
        QTest::addColumn<QString>("other");
        QTest::newRow("composed and not") << u"Jos\u00E9"_s << u"Jose\u0301"_s;
        QTest::newRow("two marks in another order") << u"\u1EAD"_s << u"a\u0302\u0323"_s;
        QTest::newRow("a no-break space") << u"Ann Lee"_s << u"Ann\u00A0Lee"_s;
        QTest::newRow("two spaces") << u"Ann Lee"_s << u"Ann  Lee"_s;
        QTest::newRow("spaces at the ends") << u"Ann"_s << u" Ann\t"_s;
        QTest::newRow("a zero-width space") << u"Ann"_s << u"An\u200Bn"_s;
        QTest::newRow("a mark of order") << u"Ann"_s << u"\uFEFFAnn"_s;
        QTest::newRow("a mark of direction") << u"Ann"_s << u"Ann\u200E"_s;
        QTest::newRow("a soft hyphen") << u"Anneliese"_s << u"Anne\u00ADliese"_s;
        QTest::newRow("a filler") << u"Ann"_s << u"Ann\u3164"_s;
        QTest::newRow("letter case") << u"ann"_s << u"ANN"_s;
        QTest::newRow("Vietnamese case") << u"NGUY\u1EC4N"_s << u"Nguy\u1EC5n"_s;
        QTest::newRow("sharp s") << u"Gro\u00DF"_s << u"GROSS"_s;
        QTest::newRow("its capital") << u"Gro\u00DF"_s << u"GRO\u1E9E"_s;
        QTest::newRow("a ligature") << u"Griffin"_s << u"Gri\uFB03n"_s;
        QTest::newRow("final sigma")
            << u"\u039D\u03AF\u03BA\u03BF\u03C2"_s << u"\u039D\u038A\u039A\u039F\u03A3"_s;
        QTest::newRow("with and without a joiner")
            << u"\u0639\u0644\u06CC\u200C\u0631\u0636\u0627"_s
            << u"\u0639\u0644\u06CC\u0631\u0636\u0627"_s;
    }
    void oneNameHasOneKey() {
        QFETCH(QString, one);
        QFETCH(QString, other);
        QCOMPARE(nameKey(one.toStdString()), nameKey(other.toStdString()));
        const std::array<std::string, 1> names{one.toStdString()};
        QCOMPARE(findName(names, other.toStdString()), std::optional<std::size_t>(0));
        const std::array<std::string, 3> three{one.toStdString(), "Zoe", other.toStdString()};
        QCOMPARE(sameNames(three), (std::vector<std::vector<std::size_t>>{{0, 2}}));
    }

    void otherNamesHaveOtherKeys() {
        const std::array<QString, 7> names{u"Jos\u00E9"_s,   u"Jose"_s,   u"Lane 3"_s,
                                           u"Lane 4"_s,      u"AnnLee"_s, u"Ann Lee"_s,
                                           u"\u4E2D\u6751"_s};
        for (const QString& a : names)
            for (const QString& b : names)
                QCOMPARE(nameKey(a.toStdString()) == nameKey(b.toStdString()), a == b);
    }

    void namesOfNothingVisibleAreNone() {
        for (const QString& name :
             {u""_s, u" \t\r\n"_s, u"\u00A0"_s, u"\u200B"_s, u"\u200D\u200C"_s, u"\u3164"_s,
              u"\u2800"_s, u"\uFEFF"_s, u"\u00AD"_s, u"\u001B"_s, u"\u202E"_s, u"\u0301"_s,
              u"\U000E0021"_s, u"\u115F\u1160"_s, u"\u2028"_s})
            QVERIFY2(!tidyName(name.toStdString()), qPrintable(name));
        QVERIFY(!tidyName("\xC3"));
        QVERIFY(!tidyName("\xED\xA0\x80")); // half a surrogate pair
        QVERIFY(nameKey("\xC3") != nameKey("\xC4"));
    }

    // Scripts that need a joiner keep it, where letters stand beside it.
    void joinersStayWhereTheyAreSpelling() {
        for (const QString& name :
             {u"\u0639\u0644\u06CC\u200C\u0631\u0636\u0627"_s,  // Persian, between letters
              u"\u0DC1\u0DCA\u200D\u0DBB\u0DD3"_s,              // Sinhala, after a virama
              u"\u0D15\u0D41\u0D2E\u0D3E\u0D30\u0D4D\u200D"_s}) // Malayalam, at the end
            QCOMPARE(q(*tidyName(name.toStdString())), name);
        QCOMPARE(q(*tidyName(u"A\u200Dnn\u200C"_s.toStdString())), u"Ann"_s);
    }

    // Of random spellings: tidied once is tidied for good, in NFC, without a control or two blanks
    // in a row, and of the same key.
    void tidyingIsOnce() {
        QRandomGenerator random(18);
        for (int i = 0; i < 20'000; ++i) {
            std::string spelled;
            for (int part = random.bounded(1, 9); part > 0; --part)
                spelled += pieces.at(static_cast<std::size_t>(random.bounded(int(pieces.size()))));
            const auto tidied = tidyName(spelled);
            if (!tidied)
                continue;
            QCOMPARE(tidyName(*tidied), tidied);
            QCOMPARE(nameKey(*tidied), nameKey(spelled));
            QCOMPARE(nameKey(q(*tidied).toUpper().toStdString()), nameKey(*tidied));
            const QString text = q(*tidied);
            QCOMPARE(text.normalized(QString::NormalizationForm_C), text);
            QCOMPARE(text.simplified(), text);
            for (const QChar c : text)
                QVERIFY(c.category() != QChar::Other_Control);
            QCOMPARE(printable(*tidied), *tidied);
        }
    }

    void nearNamesAreFound_data() {
        QTest::addColumn<QString>("one");
        QTest::addColumn<QString>("other");
        QTest::addColumn<bool>("near");
        const auto row = [](const char* name, const QString& one, const QString& other, bool near) {
            QTest::newRow(name) << one << other << near;
        };
        row("no accent", u"Jos\u00E9 Diaz"_s, u"Jose D\u00EDaz"_s, true);
        row("German without dots", u"M\u00FCller"_s, u"Mueller"_s, true);
        row("dots left out", u"M\u00FCller"_s, u"Muller"_s, true);
        row("a stroke", u"S\u00F8ren"_s, u"Soren"_s, true);
        row("family name first", u"Mia Muster"_s, u"Muster, Mia"_s, true);
        row("a hyphen", u"Anna-Lena"_s, u"Anna Lena"_s, true);
        row("an apostrophe", u"O'Neil"_s, u"O\u2019Neil"_s, true);
        row("a letter too many", u"Bela Lind"_s, u"Bela Lindt"_s, true);
        row("a letter left out", u"Bella"_s, u"Bela"_s, true);
        row("a letter changed", u"Marie Lind"_s, u"Maria Lind"_s, true);
        row("letters swapped", u"Mia Muster"_s, u"Mia Mustre"_s, true);
        row("the first of a long name", u"Konstantin"_s, u"Constantin"_s, true);
        row("the first of a short one", u"Cora"_s, u"Dora"_s, false);
        row("short names", u"Ann"_s, u"Anna"_s, false);
        row("numbers", u"Athlete 12"_s, u"Athlete 13"_s, false);
        row("a number more", u"Athlete 1"_s, u"Athlete 11"_s, false);
        row("two letters", u"Marie Lind"_s, u"Mario Lint"_s, false);
        row("other people", u"Ann Lee"_s, u"Bob Ray"_s, false);
        row("the same", u"Ann Lee"_s, u"ann  LEE"_s, false); // not near: the same
    }
    void nearNamesAreFound() {
        QFETCH(QString, one);
        QFETCH(QString, other);
        QFETCH(bool, near);
        QCOMPARE(isNear(one.toStdString(), other.toStdString()), near);
        QCOMPARE(isNear(other.toStdString(), one.toStdString()), near);
        NearNames list;
        list.add("Zacharias");
        list.add(one.toStdString());
        const auto found = list.nearTo(other.toStdString());
        QCOMPARE(std::ranges::count(found, one.toStdString()), near ? 1 : 0);
    }

    // The list finds what comparing every pair finds.
    void theListMissesNone() {
        QRandomGenerator random(19);
        std::vector<std::string> names;
        for (int i = 0; i < 150; ++i) {
            std::string name = "amelie";
            for (int change = random.bounded(4); change > 0; --change) {
                const auto at = static_cast<std::size_t>(random.bounded(int(name.size())));
                const char letter = "aeilm 1"[random.bounded(7)];
                if (random.bounded(3) == 0)
                    name.insert(at, 1, letter);
                else if (random.bounded(2) == 0 && name.size() > 2)
                    name.erase(at, 1);
                else
                    name[at] = letter;
            }
            if (tidyName(name))
                names.push_back(*tidyName(name));
        }
        NearNames list;
        for (const auto& name : names)
            list.add(name);
        int near = 0;
        for (const auto& name : names) {
            std::vector<std::string> slow;
            for (const auto& other : names)
                if (isNear(name, other))
                    slow.push_back(other);
            QCOMPARE(list.nearTo(name), slow);
            near += static_cast<int>(slow.size());
        }
        QVERIFY(near > 100);
    }

    void aTerminalIsNeverTold() {
        QCOMPARE(printable("Lane 3\n\tJos\xC3\xA9"), std::string("Lane 3\n\tJos\xC3\xA9"));
        QCOMPARE(printable("\x1B]0;x\x07"), std::string("\\u{1B}]0;x\\u{7}"));
        QCOMPARE(printable("a\rb\x7F"), std::string("a\\u{D}b\\u{7F}"));
        QCOMPARE(printable("\xC2\x9B"
                           "31m"),
                 std::string("\\u{9B}31m"));
        QCOMPARE(printable("\xE2\x80\xAE"), std::string("\\u{202E}"));
        QCOMPARE(printable("\x9B\xFF"), std::string("\\x9B\\xFF"));
        QRandomGenerator random(20);
        for (int i = 0; i < 5'000; ++i) {
            std::string bytes;
            for (int n = random.bounded(12); n > 0; --n)
                bytes += static_cast<char>(random.bounded(256));
            const QString shown = q(printable(bytes));
            for (const QChar c : shown)
                QVERIFY(c == u'\n' || c == u'\t' || c.category() != QChar::Other_Control);
        }
    }
};

QTEST_APPLESS_MAIN(TestNames)
#include "tst_names.moc"

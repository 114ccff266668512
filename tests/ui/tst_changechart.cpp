// SPDX-License-Identifier: GPL-3.0-or-later
// The words over the bars of a change by load: which are written where not all have room, and that
// what is the same for all is written once.
#include "tests/ui/paintedtexts.h"
#include "ui/charts/changefigure.h"
#include "ui/charts/changewords.h"

#include <QPainter>
#include <QTest>

#include <algorithm>
#include <set>

using namespace slopebook;
using namespace slopebook::ui::charts;
using namespace Qt::Literals::StringLiterals;

namespace {

constexpr double high = 12, gap = 6;
const QRectF area(0, 0, 400, 200);

/// So many bars, that far apart; every other one of a check load.
std::vector<WordedBar> bars(int count, double apart, const QStringList& words, bool evenOnes) {
    std::vector<WordedBar> made;
    for (int i = 0; i < count; ++i)
        made.push_back({.x = 40 + i * apart,
                        .top = 60,
                        .bottom = 120,
                        .word = words[i % words.size()],
                        .checkLoad = (i % 2 == 0) == evenOnes});
    return made;
}

std::vector<PlacedWord> placed(const std::vector<WordedBar>& of) {
    return placeWords(
        of, area, [](const QString& word) -> QString { return u"all "_s + word; },
        [](const QString& word) { return 7.0 * static_cast<double>(word.size()); }, high, gap);
}

ChangeReading reading(double load, const QString& word, bool checkLoad) {
    return {.load = load,
            .change = 0.02,
            .whisker = {.interval = {-0.05, 0.09},
                        .equivalence = {-0.03, 0.07},
                        .straight = {-0.05, 0.09}},
            .word = word,
            .checkLoad = checkLoad};
}

QStringList painted(const ChangeData& data, double width) {
    ChangeFigure figure;
    figure.setData(data);
    test::TextRecorder paper(QSizeF(width, 260).toSize());
    QPainter painter(&paper);
    figure.paintInto(painter, QRectF(0, 0, width, 260), {width, 260});
    painter.end();
    std::set<QString> texts; // one of a halo's is the same text
    for (const test::PaintedText& text : paper.texts())
        texts.insert(text.text);
    return {texts.begin(), texts.end()};
}

} // namespace

class TestChangeChart : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void whatIsTheSameIsWrittenOnce_data() {
        QTest::addColumn<int>("count");
        QTest::addColumn<double>("apart");
        for (const int count : {2, 3, 4, 7})
            for (const double apart : {8.0, 30.0, 50.0})
                QTest::addRow("%d bars, %g apart", count, apart) << count << apart;
    }
    void whatIsTheSameIsWrittenOnce() {
        QFETCH(int, count);
        QFETCH(double, apart);
        auto same = bars(count, apart, {u"unclear"_s}, true);
        const auto words = placed(same);
        QCOMPARE(words.size(), std::size_t(1));
        QCOMPARE(words[0].word, u"all unclear"_s);
        const double middle = (same.front().x + same.back().x) / 2;
        // over the middle of them, as far as the area lets it
        QVERIFY(std::abs(words[0].box.center().x() - middle) < 1e-9 || words[0].box.left() == 0);
        QVERIFY(words[0].box.bottom() <= 60);
        // One bar that reaches up: at the foot. One that reaches both: words of their own.
        WordedBar& long1 = *std::ranges::min_element(
            same, {}, [&](const WordedBar& bar) { return std::abs(bar.x - middle); });
        long1.top = 2;
        QVERIFY(placed(same)[0].box.top() >= 120);
        long1.bottom = 199;
        for (const PlacedWord& word : placed(same))
            QCOMPARE(word.word, u"unclear"_s);
    }

    void oneAloneIsNotAll() {
        const auto words = placed(bars(1, 0, {u"better"_s}, true));
        QCOMPARE(words.size(), std::size_t(1));
        QCOMPARE(words[0].word, u"better"_s);
        QVERIFY(placed({}).empty());
    }

    void checkLoadsComeFirst_data() {
        QTest::addColumn<int>("count");
        QTest::addColumn<double>("apart");
        QTest::addColumn<bool>("evenOnes");
        for (const int count : {2, 5, 9})
            for (const double apart : {12.0, 32.0, 40.0})
                for (const bool evenOnes : {true, false})
                    QTest::addRow("%d bars, %g apart, %s", count, apart, evenOnes ? "even" : "odd")
                        << count << apart << evenOnes;
    }
    /// No word of another load stands where one of a check load has gone; none runs into another.
    void checkLoadsComeFirst() {
        QFETCH(int, count);
        QFETCH(double, apart);
        QFETCH(bool, evenOnes);
        const auto of = bars(count, apart, {u"unclear"_s, u"better"_s, u"unclear"_s}, evenOnes);
        const auto words = placed(of);
        QVERIFY(!words.empty());
        const auto at = [&](const WordedBar& bar) {
            return std::ranges::find_if(words, [&](const PlacedWord& word) {
                return std::abs(word.box.center().x() - bar.x) < 1e-9;
            });
        };
        for (std::size_t i = 1; i < words.size(); ++i)
            QVERIFY(words[i - 1].box.right() + gap <= words[i].box.left());
        std::vector<WordedBar> checks;
        std::ranges::copy_if(of, std::back_inserter(checks), &WordedBar::checkLoad);
        for (const WordedBar& bar : checks)
            if (at(bar) == words.end()) {
                // what it gave way to is of a check load as well
                const double half = 3.5 * static_cast<double>(bar.word.size());
                QVERIFY(std::ranges::any_of(checks, [&](const WordedBar& other) {
                    const auto word = at(other);
                    return word != words.end() && word->box.left() < bar.x + half + gap &&
                           bar.x - half < word->box.right() + gap;
                }));
            }
    }

    /// The picture itself: check loads of 50 and 70 kg among loads that were lifted too.
    void thePictureHasThem() {
        ChangeData data;
        for (const double load : {30.0, 80.0})
            data.along.push_back({.load = load, .change = 0.02});
        data.common = LoadRange{.from = 30, .to = 80};
        for (const double load : {40.0, 50.0, 60.0, 70.0})
            data.readings.push_back(reading(load, u"unclear"_s, load == 50 || load == 70));
        QVERIFY(painted(data, 330).contains(u"all unclear"_s));
        QVERIFY(!painted(data, 330).contains(u"unclear"_s));
        data.readings[0].word = u"clearly other"_s;
        data.readings[2].word = u"another one"_s;
        const QStringList few = painted(data, 330);
        QVERIFY2(few.contains(u"unclear"_s), qPrintable(few.join(u'|')));
        QVERIFY2(!few.contains(u"clearly other"_s), qPrintable(few.join(u'|')));
        QVERIFY(!few.contains(u"all unclear"_s));
        const QStringList all = painted(data, 1200);
        for (const QString& word : {u"unclear"_s, u"clearly other"_s, u"another one"_s})
            QVERIFY2(all.contains(word), qPrintable(all.join(u'|')));
    }
};

QTEST_MAIN(TestChangeChart)
#include "tst_changechart.moc"

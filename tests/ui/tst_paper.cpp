// SPDX-License-Identifier: GPL-3.0-or-later
// Paper at its limits, read back: long names, thirty check loads, a squad of forty, on A4 and
// Letter. Nothing is cut off, nothing lies beyond the page, and each choice changes what is
// printed.
#include "tests/support/ladders.h"
#include "tests/ui/paintedtexts.h"
#include "tests/ui/pdftext.h"
#include "ui/edits/logbook.h"
#include "ui/paper/columns.h"
#include "ui/paper/comparisonrows.h"
#include "ui/paper/flow.h"
#include "ui/paper/pages.h"
#include "ui/paper/printedcomparison.h"
#include "ui/squad/changes/squadpage.h"
#include "ui/squad/changes/squadprint.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QPainter>
#include <QRegularExpression>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>

#include <cmath>

using namespace slopebook;
using namespace slopebook::ui;
using namespace Qt::Literals::StringLiterals;

namespace {

int pages(const QString& file) {
    static const QRegularExpression count(u"Pages:\\s+(\\d+)"_s);
    return count.match(test::run(u"pdfinfo"_s, {file})).captured(1).toInt();
}

/// Every word's box lies between the page's margins; how many words there are.
int wordsWithin(const QString& file) {
    const QString boxes = test::run(u"pdftotext"_s, {u"-bbox"_s, file, u"-"_s});
    static const QRegularExpression page(u"<page width=\"([\\d.]+)\" height=\"([\\d.]+)\""_s);
    static const QRegularExpression word(
        u"<word xMin=\"(-?[\\d.]+)\" yMin=\"(-?[\\d.]+)\" xMax=\"([\\d.]+)\" yMax=\"([\\d.]+)\">([^<]*)"_s);
    double width = 0, height = 0;
    int words = 0;
    for (const QString& line : boxes.split(u'\n')) {
        if (const auto size = page.match(line); size.hasMatch()) {
            width = size.captured(1).toDouble();
            height = size.captured(2).toDouble();
        } else if (const auto found = word.match(line); found.hasMatch()) {
            ++words;
            constexpr double margin = 36 - 1; // points, of every page; one is for rounding
            if (found.captured(1).toDouble() < margin || found.captured(2).toDouble() < 0 ||
                found.captured(3).toDouble() > width - margin ||
                found.captured(4).toDouble() > height) {
                qWarning().noquote() << "beyond the margin:" << found.captured(5);
                return -1;
            }
        }
    }
    return words;
}

Set ladderSet(double load, double velocity) {
    Set set;
    set.load = massFromKilograms(load);
    set.reps = {{velocity, {}}};
    return set;
}

const QString longName =
    u"Wilhelmina Charlotte Featherstonehaugh-Cholmondeley of the second novice eight, bow side"_s;

} // namespace

class TestPaper : public QObject {
    Q_OBJECT

    QTemporaryDir m_folder;

    QString comparison(const answers::Comparison& c, const PageHeader& h) {
        const QString file = m_folder.filePath(u"page.pdf"_s);
        writeComparisonPdf(c, h, {file.toStdString(), log::Existing::Replace});
        return file;
    }
    static PageHeader header() {
        return {.athlete = u"Wren"_s, .lift = u"Bench pull"_s, .from = {}, .to = {}};
    }

private Q_SLOTS:
    void initTestCase() {
        if (QStandardPaths::findExecutable(u"pdftotext"_s).isEmpty())
            QSKIP("PDFTOTEXT IS NOT INSTALLED: paper is not read back (poppler-utils)");
    }

    void thirtyCheckLoadsAndLongNames_data() {
        QTest::addColumn<bool>("letter");
        QTest::newRow("A4") << false;
        QTest::newRow("Letter") << true;
    }
    void thirtyCheckLoadsAndLongNames() {
        QFETCH(bool, letter);
        auto settings = test::usualSettings();
        settings.checkLoads.clear();
        for (int i = 0; i < 30; ++i)
            settings.checkLoads.push_back(Mass{30'000 + 2'500 * i});
        const Lift lift = test::benchPull();
        const auto c = *answers::compare(lift, *lift.mvt, test::autumn(), test::winter(), settings);
        PageHeader h = header();
        h.paper = letter ? page::Paper::Letter : page::Paper::A4;
        h.athlete = longName;
        h.lift = u"Bench pull with the long bar, pads under the bench and a pause at the chest"_s;
        h.from = {.block = u"Autumn base, all plates, three sessions a week and two on the water"_s,
                  .device = u"Left encoder with the new cable and the old clamp"_s,
                  .place = u"Boathouse weights room, the end away from the river"_s,
                  .note = u"fresh"_s};
        h.to = h.from;
        const QString file = comparison(c, h);
        QVERIFY(pages(file) >= 2);
        QVERIFY(wordsWithin(file) > 300);
        const QString text = test::squeezed(test::run(u"pdftotext"_s, {file, u"-"_s}));
        for (const QString& must : {h.athlete, h.lift, h.from.block, h.from.device, h.from.place,
                                    said(c.sentence, LoadUnit::Kilograms)})
            QVERIFY2(text.contains(test::squeezed(must)), qPrintable(must));
        const QString rows =
            test::squeezed(test::run(u"pdftotext"_s, {u"-layout"_s, file, u"-"_s}));
        const auto loads = page::loadRows(c, LoadUnit::Kilograms);
        QVERIFY(loads.size() >= 30);
        for (const page::LoadRow& row : loads) {
            // Marks behind a load may stand on a line of their own.
            const QString load = row.load.section(u' ', 0, 0);
            QVERIFY2(rows.contains(test::squeezed(row.from + row.to + row.change)) &&
                         rows.contains(test::squeezed(load)),
                     qPrintable(row.load));
        }
    }

    void eachPartIsPrintedOnlyWhereChosen_data() {
        QTest::addColumn<int>("part");
        QTest::addColumn<QString>("mark");
        QTest::newRow("the chart of the lines") << 0 << u"Load (kg)"_s;
        QTest::newRow("the chart of the change") << 1 << u"Load (kg)"_s;
        QTest::newRow("the changes by load") << 2 << u"By load"_s;
        QTest::newRow("the estimated 1RM") << 3 << u"Reach (heaviest"_s;
        QTest::newRow("the method") << 4 << u"Computed"_s;
    }
    void eachPartIsPrintedOnlyWhereChosen() {
        QFETCH(int, part);
        QFETCH(QString, mark);
        PageHeader h = header();
        bool* const parts[]{&h.parts.lineChart, &h.parts.changeChart, &h.parts.byLoad,
                            &h.parts.oneRm, &h.parts.method};
        for (bool* one : parts)
            *one = false;
        const auto c = test::usualComparison();
        const QString without = test::run(u"pdftotext"_s, {comparison(c, h), u"-"_s});
        *parts[part] = true;
        const QString with = test::run(u"pdftotext"_s, {comparison(c, h), u"-"_s});
        QVERIFY(!test::squeezed(without).contains(test::squeezed(mark)));
        QVERIFY(test::squeezed(with).contains(test::squeezed(mark)));
        QVERIFY(
            test::squeezed(with).contains(test::squeezed(said(c.sentence, LoadUnit::Kilograms))));
    }

    /// Whatever the width: no line ends in half a unit, and what is copied from the page is as it
    /// was said.
    void noUnitIsBroken() {
        const QString said = u"Bench pull at 60 kg +0.041 m/s (± 0.052 m/s) and ± 5.2 kg more"_s;
        int broken = 0;
        for (int wide = 190; wide < 500; wide += 3) {
            page::Flow flow(QSizeF(wide, 800), 10, 10);
            flow.leading(said, page::headlineFont(14));
            test::TextRecorder recorder(QSize(500, 800));
            QPainter painter(&recorder);
            const auto pages = flow.pages();
            for (const auto& placed : pages.front())
                placed.block->paint(painter, QPointF(10, placed.top));
            QStringList lines;
            for (const test::PaintedText& text : recorder.texts()) {
                lines << text.text;
                QVERIFY2(!text.text.endsWith(u'/') && !text.text.endsWith(u'±') &&
                             !text.text.startsWith(u"m/s"_s) && !text.text.startsWith(u"kg"_s),
                         qPrintable(text.text));
            }
            broken += lines.size() > 1 ? 1 : 0;
            QCOMPARE(lines.join(u' '), said);
        }
        QVERIFY(broken > 40); // a test of the test
    }

    /// A reading of many words takes no more lines than the room allows that all other columns have
    /// to spare together, though none of them has enough alone.
    void columnsShareWhatTheySpare() {
        const QFont font = page::pageFont(8);
        const double letter = QFontMetricsF(font).horizontalAdvance(u'0');
        const page::Cell reading{.text = u"better but on another surface at another place"_s,
                                 .bold = true};
        std::vector<page::Cell> head, row;
        std::vector<page::Column> columns;
        for (int i = 0; i < 6; ++i) { // each two digits wider than it has to be
            head.push_back({u"0000"_s});
            row.push_back({u"1111"_s});
            columns.push_back({6 * letter + page::cellGap + 2});
        }
        head.push_back({u"Reading"_s});
        row.push_back(reading);
        columns.push_back({14 * letter});
        const auto linesOf = [&](double width) {
            QFont bold = font;
            bold.setBold(true);
            const QRectF box(0, 0, width - page::cellGap, 1e4);
            const QFontMetricsF metrics(bold);
            return std::lround(metrics.boundingRect(box, Qt::TextWordWrap, reading.text).height() /
                               metrics.lineSpacing());
        };
        const auto shared = page::fitted(columns, head, {row}, font);
        double before = 0, after = 0;
        for (std::size_t i = 0; i < columns.size(); ++i) {
            before += columns[i].width;
            after += shared[i].width;
            if (i + 1 < columns.size())
                QVERIFY(shared[i].width >= 4 * letter + page::cellGap);
        }
        QVERIFY(std::abs(before - after) < 0.01);
        QVERIFY(linesOf(columns.back().width) >= 4);
        QVERIFY2(linesOf(shared.back().width) <= 3,
                 qPrintable(u"%1 lines"_s.arg(linesOf(shared.back().width))));
    }

    void aSquadOfForty_data() { thirtyCheckLoadsAndLongNames_data(); }
    void aSquadOfForty() {
        QFETCH(bool, letter);
        const QTemporaryDir folder;
        log::Log log =
            log::Log::create(std::filesystem::path(folder.filePath(u"squad"_s).toStdString()));
        LiftId lift{};
        QStringList names;
        log.together([&] {
            lift = log.add(Lift{.name = "Bench pull", .smallestVelocity = 0.04});
            log.add(Block{
                .name = "Autumn", .first = test::day(2025, 9, 1), .last = test::day(2025, 11, 30)});
            log.add(Block{
                .name = "Flood", .first = test::day(2025, 12, 1), .last = test::day(2026, 2, 28)});
            for (int i = 0; i < 40; ++i) {
                names << u"Lane %1 of the second novice eight"_s.arg(i + 1, 2, 10, QChar(u'0'));
                const AthleteId athlete = log.add(Athlete{.name = names.last().toStdString()});
                log.setCheckLoads(athlete, lift, {Mass{60'000}});
                for (const Date date : {test::day(2025, 10, 1), test::day(2026, 1, 20)}) {
                    const SessionId session =
                        log.add(SessionHead{.athlete = athlete, .date = date});
                    for (int set = 0; set < 5; ++set)
                        log.add(session, lift,
                                ladderSet(40 + 10 * set, 1.5 + 0.002 * i - 0.1 * set +
                                                             (set % 2 == 0 ? 0.01 : -0.01)));
                }
            }
        });
        Logbook book(std::move(log));
        SquadPage squad(book);
        squad.setAthleteAndLift({}, lift);
        QTRY_VERIFY_WITH_TIMEOUT(squad.squad(), 60'000); // a page of many comes when it is done
        const QString file = m_folder.filePath(u"squad.pdf"_s);
        page::writePagesPdf(squadPrint(*squad.squad(), u"Bench pull"_s, LoadUnit::Kilograms),
                            letter ? QPageSize::Letter : QPageSize::A4,
                            {file.toStdString(), slopebook::log::Existing::Replace});
        QVERIFY(pages(file) >= 2);
        QVERIFY(wordsWithin(file) > 400);
        const QString text =
            test::squeezed(test::run(u"pdftotext"_s, {u"-layout"_s, file, u"-"_s}));
        const QString raw = test::squeezed(test::run(u"pdftotext"_s, {u"-raw"_s, file, u"-"_s}));
        for (const QString& name : names)
            QVERIFY2(text.contains(test::squeezed(name)) || raw.contains(test::squeezed(name)),
                     qPrintable(name));
        QVERIFY(text.contains(test::squeezed(u"page %1 of %1"_s.arg(pages(file)))));
    }
};

QTEST_MAIN(TestPaper)
#include "tst_paper.moc"

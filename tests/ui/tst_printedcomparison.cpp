// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/bendwords.h"
#include "core/answers/method.h"
#include "core/answers/readingwords.h"
#include "core/model/errors.h"
#include "core/questions/questions.h"
#include "tests/support/ladders.h"
#include "tests/ui/pdftext.h"
#include "ui/paper/comparisonrows.h"
#include "ui/paper/printedcomparison.h"
#include "ui/parts/cautions.h"
#include "ui/window/language.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QDir>
#include <QImage>
#include <QPainter>
#include <QPrinter>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>

#include <algorithm>

using namespace slopebook;
using namespace slopebook::ui;
using namespace Qt::Literals::StringLiterals;

namespace {

PageHeader header() {
    return {.athlete = u"Wren"_s,
            .lift = u"Bench pull"_s,
            .from = {.block = u"Autumn base"_s, .device = u"Line A"_s, .place = u"Boathouse"_s},
            .to = {.block = u"Winter, light plates only"_s,
                   .device = u"Line A"_s,
                   .place = u"Boathouse"_s,
                   .note = u"missed the groove on set 2"_s}};
}

} // namespace

class TestPrintedComparison : public QObject {
    Q_OBJECT

    QTemporaryDir m_folder;
    QString pdf(const answers::Comparison& c, const PageHeader& h) {
        const QString file = m_folder.filePath(u"page.pdf"_s);
        writeComparisonPdf(c, h, {file.toStdString(), log::Existing::Replace});
        return file;
    }
    static int pages(const QString& file) {
        const QString info = test::run(u"pdfinfo"_s, {file});
        return QRegularExpression(u"Pages:\\s+(\\d+)"_s).match(info).captured(1).toInt();
    }
    static QString textOf(const QString& file, bool rows = false) {
        QStringList arguments{file, u"-"_s};
        if (rows)
            arguments.prepend(u"-layout"_s);
        return test::run(u"pdftotext"_s, arguments);
    }

private Q_SLOTS:
    void initTestCase() {
        if (QStandardPaths::findExecutable(u"pdftotext"_s).isEmpty())
            QSKIP("PDFTOTEXT IS NOT INSTALLED: the page is not read back (poppler-utils)");
    }

    void theUsualComparisonIsOnePage_data() {
        QTest::addColumn<bool>("letter");
        QTest::addColumn<QString>("size");
        QTest::addRow("A4") << false << u"595 x 842 pts (A4)"_s;
        QTest::addRow("Letter") << true << u"612 x 792 pts (letter)"_s;
    }
    void theUsualComparisonIsOnePage() {
        QFETCH(bool, letter);
        QFETCH(QString, size);
        PageHeader h = header();
        h.paper = letter ? page::Paper::Letter : page::Paper::A4;
        const QString file = pdf(test::usualComparison(), h);
        QCOMPARE(pages(file), 1);
        QVERIFY2(test::run(u"pdfinfo"_s, {file}).contains(size),
                 qPrintable(test::run(u"pdfinfo"_s, {file})));
        QVERIFY(QFileInfo(file).size() > 5000);
        // What may exclude zero beside "unclear" is said to be no reading.
        QVERIFY(test::flat(textOf(file)).contains(u"(no reading)"_s));
    }

    /// In the longer language how it was reckoned may go on to a second page, in no smaller type;
    /// all figures stand on the first, and no heading breaks within a word.
    void aGermanComparisonHasItsFiguresOnTheFirstPage() {
        const Translation german(u"de"_s);
        QTemporaryDir folder;
        const QString copy = folder.filePath(u"log.slopebook"_s);
        QVERIFY(QFile::copy(QStringLiteral(SLOPEBOOK_SAMPLE_LOG), copy));
        const log::Log log = log::Log::open(copy.toStdString());
        const auto called = [](const auto& all, const std::string& name) {
            return std::ranges::find_if(all,
                                        [&](const auto& one) { return one.value.name == name; })
                ->id;
        };
        for (const char* who : {"Cora", "Ada"})
            for (const char* lift : {"Bench pull", "Back squat"}) {
                const auto about = questions::background(log, called(log.athletes(), who),
                                                         called(log.lifts(), lift));
                const auto& all = about.sessions;
                QVERIFY(all.size() > 3);
                for (const std::size_t from : {std::size_t{0}, all.size() - 3}) {
                    const auto c = questions::comparisonOf(log, about, all[from], all.back());
                    QVERIFY(c);
                    PageHeader h = pageHeader(log, about, *c);
                    const QString file = pdf(*c, h);
                    const QString text = textOf(file);
                    QVERIFY2(pages(file) <= 2, qPrintable(text));
                    const QString first = test::flat(text.section(u'\f', 0, 0));
                    for (const page::OneRmRow& row : page::oneRmRows(*c, h.unit))
                        for (const QString& cell : {row.from, row.to, row.change})
                            QVERIFY2(first.contains(test::flat(cell)),
                                     qPrintable(cell + u'\n' + text));
                    for (const QString& word :
                         {u"Vorher"_s, u"Nachher"_s, u"Änderung"_s, u"Kleinste"_s, u"bedeutsame"_s})
                        QVERIFY2(text.contains(QRegularExpression(
                                     u"\\b%1\\b"_s.arg(word),
                                     QRegularExpression::UseUnicodePropertiesOption)),
                                 qPrintable(word + u'\n' + text));
                }
            }
    }

    /// On the chart, in the head of the page and in the sentence.
    void whatWasNotLiftedIsOnThePage() {
        LiftSession to = test::winter();
        to.heaviestLifted = Mass{70'000};
        to.lightestNotLifted = Mass{92'500};
        const auto c = test::usualComparison(test::autumn(), to);
        const QString text = test::squeezed(test::flat(textOf(pdf(c, header()))));
        for (const QString& part :
             {u"92.5 kg not lifted"_s, u", 92.5 kg not lifted"_s, u"92.5 kg was not lifted on"_s})
            QVERIFY2(text.contains(test::squeezed(part)), qPrintable(text));
        QCOMPARE(text.count(test::squeezed(u"92.5 kg not lifted"_s)), 2);
    }

    void everythingIsReadBack() {
        const auto c = test::usualComparison();
        const PageHeader h = header();
        const QString file = pdf(c, h);
        const QString text = test::flat(textOf(file)), rows = test::flat(textOf(file, true));
        const auto has = [](const QString& in, const QString& wanted) {
            const bool there = test::squeezed(in).contains(test::squeezed(wanted));
            if (!there)
                qWarning().noquote() << "not on the page:" << wanted;
            return there;
        };
        QVERIFY(has(text, said(c.sentence, LoadUnit::Kilograms)));
        QVERIFY(has(text, page::titleText(h)));
        for (const page::LoadRow& r : page::loadRows(c, LoadUnit::Kilograms))
            QVERIFY(
                has(rows,
                    QStringList{r.load, r.from, r.to, r.change, r.readingInterval, r.twoDays}.join(
                        u' ')));
        // The same at every load, said once.
        QVERIFY(has(text, u"Smallest that matters: "_s +
                              page::loadRows(c, LoadUnit::Kilograms).front().smallest + u" m/s"_s));
        for (const page::OneRmRow& r : page::oneRmRows(c, LoadUnit::Kilograms))
            for (const QString& cell : {r.from, r.to, r.change})
                QVERIFY(has(rows, cell));
        for (const auto& row : page::dayRows(c, h))
            QVERIFY(has(text, row.to));
        for (const QStringList& lines :
             {said(answers::methodWords(c, h.rule, MassUnit::Kilogram), h.unit),
              said(answers::sourceWords(c), h.unit), page::remarks(c, h),
              said(answers::maxRemarks(c), h.unit), said(answers::markWords(c), h.unit),
              QStringList{fullCautions()}}) {
            QVERIFY(!lines.isEmpty());
            for (const QString& line : lines)
                QVERIFY(has(text, line));
        }
    }

    void unclearReadingsSayWhatWouldSettleThem() {
        auto settings = test::usualSettings();
        settings.dayNoise.variance.value = 0.1 * 0.1; // so loud that nothing is clear
        const Lift lift = test::benchPull();
        const auto c = *answers::compare(lift, *lift.mvt, test::autumn(), test::winter(), settings);
        QVERIFY(std::ranges::all_of(c.at, [](const answers::ChangeAt& at) {
            return at.read.reading == answers::Reading::Unclear;
        }));
        const QStringList lines = page::settlingLines(c, LoadUnit::Kilograms);
        QVERIFY(lines.size() >= 2);
        QVERIFY2(lines.first().contains(u"a true change of 0.030 m/s"_s),
                 qPrintable(lines.first()));
        QVERIFY2(test::flat(lines.last()).startsWith(u"Estimated 1RM: a true change of 2.0 kg"_s),
                 qPrintable(lines.join(u'\n')));
        const QString text = test::squeezed(test::flat(textOf(pdf(c, header()))));
        for (const QString& line : lines)
            QVERIFY2(text.contains(test::squeezed(line)), qPrintable(line));
        QVERIFY(test::flat(page::settlingLines(c, LoadUnit::Pounds).last()).contains(u"4.4 lb"_s));
    }

    /// Side by side with what bent lines may add, with its words, where the allowance comes from
    /// and what ends the doubt.
    void theMaxIsPrintedBothWays() {
        const Lift lift = test::benchPull();
        auto settings = test::usualSettings();
        settings.bend = answers::bendOf(lift);
        const auto c = *answers::compare(lift, *lift.mvt, test::autumn(), test::winter(), settings);
        const auto straight = answers::maxIfStraight(c);
        QVERIFY(straight);
        PageHeader h = header();
        QCOMPARE(pages(pdf(c, h)), 1);
        // Drawn where one page has room for it, in the table always.
        const QString usual = test::squeezed(test::flat(textOf(pdf(c, h), true)));
        for (const stats::Interval& held : {straight->interval, c.oneRm->read.interval})
            QVERIFY(usual.contains(test::squeezed(signedRangeText(held, 1))));
        h.parts.lineChart = h.parts.changeChart = false;
        const QString file = pdf(c, h);
        QCOMPARE(pages(file), 1);
        const QString text = test::squeezed(test::flat(textOf(file)));
        const auto has = [&](const QString& wanted) {
            const bool there = text.contains(test::squeezed(wanted));
            if (!there)
                qWarning().noquote() << "not on the page:" << wanted;
            return there;
        };
        const auto kg = [](const Words& words) { return said(words, LoadUnit::Kilograms); };
        QVERIFY(has(u"as if lines were straight: "_s + kg(answers::maxReading(*straight))));
        QVERIFY(has(u"bend allowance in: "_s + kg(answers::maxReading(c.oneRm->read))));
        QVERIFY(has(signedRangeText(straight->interval, 1)));
        QVERIFY(has(signedRangeText(c.oneRm->read.interval, 1)));
        QVERIFY(has(rangeText(*c.from.oneRm->toPlan, 1)));
        QVERIFY(has(rangeText(*c.to.oneRm->straight, 1)));
        QVERIFY(!answers::bendWords(c).empty());
        QVERIFY(has(kg(asSentence(answers::bendWords(c)))));
        QVERIFY(has(kg(asSentence(answers::bendSource(settings.bend)))));
    }

    void fontsAreEmbedded() {
        const QStringList lines =
            test::run(u"pdffonts"_s, {pdf(test::usualComparison(), header())}).split(u'\n');
        QVERIFY(lines.size() > 2);
        int fonts = 0;
        for (const QString& line : lines.mid(2)) {
            if (line.trimmed().isEmpty())
                continue;
            ++fonts;
            // columns: ... emb sub uni
            QVERIFY2(QRegularExpression(u"Identity-H\\s+yes\\s"_s).match(line).hasMatch(),
                     qPrintable(line));
        }
        QVERIFY(fonts > 0);
    }

    void longDataGoesOnWithNothingLost() {
        LiftSession from = test::autumn(), to = test::winter();
        auto settings = test::usualSettings();
        settings.checkLoads.clear();
        for (int kg = 21; kg <= 100; ++kg)
            settings.checkLoads.push_back(Mass{kg * 1000});
        const Lift lift = test::benchPull();
        const auto c = *answers::compare(lift, *lift.mvt, from, to, settings);
        PageHeader h = header();
        QString note;
        for (int i = 0; i < 300; ++i)
            note += u"word%1 "_s.arg(i);
        h.to.note = note;
        h.from.note = QString(400, u'x'); // no place to break it
        const QString file = pdf(c, h);
        QVERIFY(pages(file) >= 2);
        const QString rows = test::flat(textOf(file, true));
        for (const page::LoadRow& r : page::loadRows(c, h.unit))
            QVERIFY2(
                rows.contains(test::flat(QStringList{r.load, r.from, r.to, r.change}.join(u' '))),
                qPrintable(r.load));
        const QString text = textOf(file);
        for (int i = 0; i < 300; ++i)
            QVERIFY2(text.contains(u"word%1"_s.arg(i)), qPrintable(QString::number(i)));
        QCOMPARE(text.count(u'x') >= 400, true);
        QVERIFY(test::squeezed(text).contains(test::squeezed(fullCautions())));
        QVERIFY(text.contains(u"page 2 of"_s));
        // The head of the table comes again.
        QVERIFY(rows.count(u"Before After Change"_s) >= 2);
    }

    void choicesOfWhatToPrintChangeIt() {
        const auto c = test::usualComparison();
        PageHeader h = header();
        h.parts = {.lineChart = false,
                   .changeChart = false,
                   .byLoad = false,
                   .oneRm = false,
                   .method = false};
        const QString text = test::flat(textOf(pdf(c, h)));
        QVERIFY(!text.contains(u"By load"_s));
        QVERIFY(!text.contains(u"Reach (heaviest"_s));
        QVERIFY(!text.contains(u"Computed"_s));
        QVERIFY(!text.contains(u"Load (kg)"_s));
        QVERIFY(text.contains(test::flat(said(c.sentence, LoadUnit::Kilograms))));
        QVERIFY(test::squeezed(text).contains(test::squeezed(fullCautions())));
        h.parts.byLoad = true;
        QVERIFY(test::flat(textOf(pdf(c, h))).contains(u"By load"_s));
        h.parts.lineChart = true;
        QVERIFY(test::flat(textOf(pdf(c, h))).contains(u"Load (kg)"_s));
    }

    void poundsAreNamed() {
        PageHeader h = header();
        h.unit = LoadUnit::Pounds;
        const auto c = test::usualComparison();
        const QString text = test::flat(textOf(pdf(c, h)));
        QVERIFY(text.contains(u"Load, lb"_s));
        // 40 kg / 0.45359237 = 88.2 lb
        QVERIFY(text.contains(u"88.2"_s));
        QVERIFY(text.contains(test::flat(said(c.sentence, LoadUnit::Pounds))));
    }

    void withoutAOneRmTheReasonStands() {
        Lift lift = test::benchPull();
        lift.ballistic = true;
        const auto c = *answers::compare(
            lift,
            NoAnswer{NoAnswer::Why::BallisticLift,
                     filled("a thrown or jumped lift is followed by velocity at load only")},
            test::autumn(), test::winter(), test::usualSettings());
        const QString text = test::flat(textOf(pdf(c, header())));
        QVERIFY(text.contains(u"followed by velocity at load only"_s));
    }

    void greyKeepsTheTwoSessionsApart() {
        const QString file = pdf(test::usualComparison(), header());
        const QString stem = m_folder.filePath(u"grey"_s);
        test::run(u"pdftoppm"_s, {u"-r"_s, u"60"_s, u"-gray"_s, file, stem});
        const QStringList images = QDir(m_folder.path()).entryList({u"grey*.pgm"_s}, QDir::Files);
        QCOMPARE(images.size(), 1);
        const QImage image(m_folder.filePath(images[0]));
        int dark = 0;
        for (int y = 0; y < image.height(); ++y)
            for (int x = 0; x < image.width(); ++x)
                dark += qGray(image.pixel(x, y)) < 128 ? 1 : 0;
        QVERIFY(dark > 2000); // not blank
        QCOMPARE(qGray(image.pixel(2, 2)), 255);
    }

    void whatCannotBeWrittenSaysSo() {
        const auto c = test::usualComparison();
        QVERIFY_THROWS_EXCEPTION(LogError,
                                 writeComparisonPdf(c, header(), "/nonexistent-folder/page.pdf"));
        // What was there stays.
        const QString file = m_folder.filePath(u"folder.pdf"_s);
        QVERIFY(QDir().mkdir(file));
        QVERIFY_THROWS_EXCEPTION(LogError, writeComparisonPdf(c, header(), file.toStdString()));
        QVERIFY(QFileInfo(file).isDir());
        QCOMPARE(QDir(m_folder.path()).entryList({u"folder.pdf*"_s}).size(), 1);
    }

    void thePrinterPaintsTheSamePages() {
        QPrinter printer(QPrinter::HighResolution);
        const QString file = m_folder.filePath(u"printer.pdf"_s);
        printer.setOutputFormat(QPrinter::PdfFormat);
        printer.setOutputFileName(file);
        printer.setPageSize(QPageSize(QPageSize::A4));
        QVERIFY(page::paintPages(printer, comparisonPrint(test::usualComparison(), header())));
        QCOMPARE(test::flat(textOf(file)),
                 test::flat(textOf(pdf(test::usualComparison(), header()))));
    }
};

QTEST_MAIN(TestPrintedComparison)
#include "tst_printedcomparison.moc"

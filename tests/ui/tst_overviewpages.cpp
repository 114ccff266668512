// SPDX-License-Identifier: GPL-3.0-or-later
// The overview and the whole season of an athlete: every cell's figure, reading, hatch and reason,
// the keys that walk them and lead from them, pounds, two windows, what there is to do where there
// is nothing, and the pages of paper.
#include "tests/ui/paintedtexts.h"
#include "tests/ui/pdftext.h"
#include "tests/ui/seasonbyhand.h"
#include "ui/athlete/battery/batterypage.h"
#include "ui/athlete/compare/comparepage.h"
#include "ui/athlete/overview/overviewpage.h"
#include "ui/athlete/overview/overviewprint.h"
#include "ui/athlete/overview/steppaint.h"
#include "ui/athlete/overview/wholeseasonpage.h"
#include "ui/athlete/overview/wholeseasonprint.h"
#include "ui/window/mainwindow.h"
#include "ui/window/namecombo.h"
#include "ui/window/strip.h"
#include "ui/window/workspace.h"

#include <QAbstractItemModelTester>
#include <QAccessible>
#include <QComboBox>
#include <QLabel>
#include <QLayout>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>
#include <QTest>

using namespace slopebook;
using namespace slopebook::test;
using namespace slopebook::ui;
using namespace Qt::Literals::StringLiterals;

namespace {

constexpr QSizeF a4(595, 842), letter(612, 792);

QString plain(QString text) {
    return text.replace(QChar(QChar::Nbsp), u' ');
}

QPushButton* button(const QWidget& page, const QString& words) {
    for (auto* each : page.findChildren<QPushButton*>())
        if (each->text().remove(u'&') == words)
            return each;
    return nullptr;
}

QLabel& labelOf(const QWidget& page, const char* name) {
    return *page.findChild<QLabel*>(QLatin1String(name));
}

/// A log of one athlete with ladders on those days, and blocks where they are wanted.
struct SmallLog {
    Folder folder;
    LiftId lift{};
    AthleteId cora{}, dov{};
    explicit SmallLog(const std::vector<Date>& days, bool blocks = true) {
        log::Log log = log::Log::create(folder.path());
        log.together([&] {
            cora = log.add(Athlete{.name = "Cora"});
            dov = log.add(Athlete{.name = "Dov"});
            lift = log.add(Lift{.name = "Bench pull",
                                .mvt = Mvt{.value = 0.5, .sd = 0.04, .source = "own tests"},
                                .smallestVelocity = 0.04});
            if (blocks) {
                log.add(
                    Block{.name = "Autumn", .first = day(2025, 9, 1), .last = day(2025, 11, 30)});
                log.add(
                    Block{.name = "Winter", .first = day(2025, 12, 1), .last = day(2026, 2, 28)});
                log.add(
                    Block{.name = "Spring", .first = day(2026, 3, 1), .last = day(2026, 5, 31)});
            }
            log.setCheckLoads(cora, lift, {Mass{60'000}});
            for (const Date date : days)
                ladder(log, date);
        });
    }
    void ladder(log::Log& log, Date date) const {
        const SessionId session = log.add(SessionHead{.athlete = cora, .date = date});
        for (int i = 0; i < 5; ++i)
            log.add(session, lift,
                    ladderSet(40 + 10 * i, {1.1 - 0.1 * i + (i % 2 ? 0.01 : -0.01)}));
    }
};

} // namespace

class TestOverviewPages : public QObject {
    Q_OBJECT

    static std::unique_ptr<MainWindow> windowOn(const SmallLog& log) {
        Surroundings given;
        given.clock = [] { return day(2026, 5, 11); };
        auto window = std::make_unique<MainWindow>(given);
        window->resize(1280, 720);
        window->show();
        window->activateWindow();
        window->openLogFile(QString::fromStdString(log.folder.path().string()));
        window->workspace()->choose(log.cora, log.lift);
        QCoreApplication::processEvents();
        return window;
    }

private Q_SLOTS:
    void init() {
        QTest::failOnWarning(QRegularExpression(u"nan|NaN|QAbstractItemModel|QPainter"_s));
    }

    void everyCellIsTold_data() {
        QTest::addColumn<int>("row");
        QTest::addColumn<int>("block");
        QTest::addColumn<int>("mark");
        QTest::addColumn<QString>("figure");
        QTest::addColumn<QString>("holds"); // in what is read out
        const auto at = [](const char* name, int row, int block, CellMark mark, const char* figure,
                           const char* holds) {
            QTest::newRow(name) << row << block << int(mark) << QString::fromUtf8(figure)
                                << QString::fromUtf8(holds);
        };
        at("the chosen block", 0, 0, CellMark::Figure, "0.980", "read against this block");
        at("held", 0, 1, CellMark::Held, "1.002", "Against Autumn (all blocks at once): held");
        at("better", 0, 2, CellMark::Better, "1.051",
           "Against Autumn (all blocks at once): better");
        at("and before that", 0, 2, CellMark::Better, "1.051",
           "Against Winter flood (all steps at once): unclear");
        at("worse", 1, 2, CellMark::Worse, "76.5", "−5.7 kg");
        at("unclear", 1, 1, CellMark::Unclear, "81.6", "clear from");
        at("not comparable", 2, 1, CellMark::NotComparable, "1.89", "concrete, then rubber");
        at("not possible", 3, 1, CellMark::NoFigure, "", "no figure, rig under water");
        at("not tested", 3, 2, CellMark::NoFigure, "", "not tested");
        at("less is better", 4, 2, CellMark::Better, "3.0",
           "Against Autumn (all blocks at once): better");
        at("nobody judges a body mass", 5, 1, CellMark::Figure, "72.0", "changed");
    }
    void everyCellIsTold() {
        QFETCH(int, row);
        QFETCH(int, block);
        QFETCH(int, mark);
        QFETCH(QString, figure);
        QFETCH(QString, holds);
        MatrixModel model;
        const QAbstractItemModelTester tester(&model);
        model.setFigure(matrixFigure(seasonByHand(), LoadUnit::Kilograms));
        const MatrixCellFigure& cell = model.figure().cells[std::size_t(row)][std::size_t(block)];
        QCOMPARE(int(cell.mark), mark);
        QCOMPARE(cell.figure, figure);
        const QString heard =
            plain(model.index(row, block).data(Qt::AccessibleTextRole).toString());
        QVERIFY2(heard.contains(holds), qPrintable(heard));
        // Nothing is told by its colour or sign alone: the words stand in the cell as well.
        const QString text = plain(model.index(row, block).data().toString());
        if (CellMark(mark) != CellMark::Figure)
            QVERIFY2(text.size() > figure.size() + 2, qPrintable(text));
        QVERIFY(text != u"unclear"_s);
    }

    void rightIsBetter() {
        const auto figure = matrixFigure(seasonByHand(), LoadUnit::Kilograms);
        const auto& speed = *figure.cells[0][2].step;
        QVERIFY(qFuzzyCompare(speed.whisker.interval.low, 0.038 / 0.05));
        const auto& asymmetry = *figure.cells[4][2].step; // -9 to -3.5 %: 3.5 to 9 better, by 3
        QVERIFY(qFuzzyCompare(asymmetry.whisker.interval.low, 3.5 / 3));
        QVERIFY(qFuzzyCompare(asymmetry.whisker.interval.high, 3.0));
        QVERIFY(!figure.cells[5][1].step); // of a body mass
    }

    /// Good news is never the part that is cut: a scale holds whole what is better or worse, and of
    /// all else the change.
    void whatIsBetterIsShownWhole() {
        const auto step = [](double change, double half) {
            return Step{.whisker = {.interval = {change - half, change + half}}, .change = change};
        };
        StepSpan span;
        const double usual = span.units();
        span.take(step(0.5, 9), false); // unclear, and endless: an arrow does
        QCOMPARE(span.units(), usual);
        span.take(step(3.1, 2.7), true);
        QVERIFY(span.units() >= 5.8);
        span.take(step(-6.5, 0.3), false);
        QVERIFY(span.units() >= 6.5);
        span.take(step(40, 3), true);
        QCOMPARE(span.units(), 8.0);
        // Where there is the width for it, what is unclear is seen whole up to so many units.
        for (const double half : {1.0, 2.7, 4.5, 5.0, 9.0}) {
            StepSpan wide(5);
            wide.take(step(0.5, half - 0.5), false);
            QCOMPARE(wide.units(), std::max(usual, std::min(half, 5.0) + 0.2));
        }
    }

    /// Most bars of the overview are seen whole; in the season's narrow columns the grey of what
    /// matters stays wider than a line.
    void unclearBarsAreSeenWhole() {
        for (const double half : {0.10, 0.20, 0.60}) { // of 0.05 that matters
            answers::SeasonMatrix matrix = seasonByHand();
            matrix.rows[0].cells[2] = cellOf(1.0, 0.02, changeOf(0, 0.02 - half, 0.02 + half, 0.05),
                                             changeOf(1, 0.02 - half, 0.02 + half, 0.05));
            tellSeason(matrix);
            const double needed = (0.02 + half) / 0.05;
            const double narrow = matrixFigure(matrix, LoadUnit::Kilograms).span;
            QCOMPARE(narrow, matrixFigure(seasonByHand(), LoadUnit::Kilograms).span);
            const double span =
                overviewTable(matrix, answers::overviewOf(matrix), LoadUnit::Kilograms).span;
            if (needed <= 5)
                QVERIFY2(span > needed, qPrintable(u"%1 of %2"_s.arg(span).arg(needed)));
            else
                QCOMPARE(span, 5.2);
        }
    }

    /// The bar of the change is named once, and where it is named nothing else stands.
    void theChangesBarIsNamedOnce_data() {
        QTest::addColumn<QSize>("size");
        for (const QSize size :
             {QSize(520, 150), QSize(800, 230), QSize(1300, 300), QSize(300, 150)})
            QTest::addRow("%d x %d", size.width(), size.height()) << size;
    }
    void theChangesBarIsNamedOnce() {
        QFETCH(QSize, size);
        const answers::SeasonMatrix matrix = seasonByHand();
        StepChartsData data = stepCharts(matrix, answers::overviewOf(matrix), LoadUnit::Kilograms);
        QVERIFY(data.charts.size() > 1);
        const auto named = [&](const StepChartsData& shown) {
            TextRecorder paper(size);
            QPainter painter(&paper);
            painter.setFont(QFont());
            QFont font;
            font.setPixelSize(11);
            paintStepCharts(painter, QRectF(QPointF(), size), shown,
                            matrixPen(look::paperGround(), font));
            painter.end();
            int count = 0;
            for (const PaintedText& text : paper.texts())
                if (text.text == u"change"_s) {
                    ++count;
                    for (const PaintedText& other : paper.texts())
                        if (&other != &text && other.box.intersects(text.box))
                            return 100;
                    for (const QPointF& point : paper.points())
                        if (text.box.contains(point))
                            return 200;
                    for (const QLineF& stroke : paper.strokes()) // stops and whiskers; zero is long
                        if (stroke.length() < size.height() / 2 && stroke.dx() == 0 &&
                            text.box.contains(stroke.center()))
                            return 300;
                }
            return count;
        };
        QVERIFY2(named(data) <= 1, QByteArray::number(named(data)));
        if (size.width() > 500) // a smaller one has hardly room for its marks
            QCOMPARE(named(data), 1);
        for (StepChart& chart : data.charts)
            chart.change.reset();
        QCOMPARE(named(data), 0);
    }

    void massesInPounds() {
        const auto figure = matrixFigure(seasonByHand(), LoadUnit::Pounds);
        QCOMPARE(figure.cells[1][0].figure, u"181.2"_s); // 82.2 kg / 0.45359237
        QCOMPARE(figure.measures[1].unit, u"lb"_s);
        QCOMPARE(figure.measures[1].matters, u"±8.8"_s);
        QCOMPARE(figure.cells[5][0].figure, u"157.6"_s);
        QVERIFY(plain(figure.measures[0].name).contains(u"88.2 lb"_s));
        QVERIFY(plain(figure.blocks[1].under).contains(u"154.3 lb"_s));
        for (const auto& row : matrixTexts(figure).rows)
            for (const QString& cell : row)
                QVERIFY2(!plain(cell).contains(u" kg"_s), qPrintable(cell));
    }

    /// Whatever stands in the head of a block: over its bars is their scale, with zero and a figure
    /// on both sides, none over another; where there are no bars there is no scale.
    void eachBlocksBarsHaveTheirScale() {
        const MatrixFigure figure = matrixFigure(seasonByHand(), LoadUnit::Kilograms);
        const MatrixPen pen = matrixPen(look::paperGround(), page::pageFont(12));
        int with = 0, without = 0;
        for (std::size_t block = 0; block < figure.blocks.size(); ++block) {
            const double least = leastBlockWidth(figure, block, pen);
            for (double wide = least; wide < 2 * blockWidth(figure, block, pen); wide += 7) {
                TextRecorder recorder(QSize(900, 90));
                QPainter painter(&recorder);
                paintBlockHead(painter, QRectF(20, 5, wide, matrixHeadHeight(figure, pen)), figure,
                               block, pen);
                painter.end();
                QStringList scale;
                const auto& texts = recorder.texts();
                for (qsizetype i = 0; i < texts.size(); ++i) {
                    static const QRegularExpression value(u"^(0|[+\u2212]\\d+)$"_s);
                    if (value.match(texts[i].text).hasMatch())
                        scale << texts[i].text;
                    for (qsizetype j = 0; j < i; ++j)
                        QVERIFY2(!texts[i].box.intersects(texts[j].box), qPrintable(texts[i].text));
                    QVERIFY(texts[i].box.right() <= 20 + wide + 1);
                }
                const bool bars = hasBars(figure, block, wide, pen);
                ++(bars ? with : without);
                QVERIFY2(scale.size() == (bars ? 3 : 0),
                         qPrintable(u"%1, %2 px: %3"_s.arg(figure.blocks[block].name)
                                        .arg(wide)
                                        .arg(scale.join(u' '))));
            }
        }
        QVERIFY(with > 10 && without > 10);
    }

    void signsAreToldApartInGrey() {
        const MatrixPen pen = matrixPen(look::paperGround(), page::pageFont(12));
        const auto painted = [&](CellMark mark) {
            QImage image(40, 40, QImage::Format_ARGB32);
            image.fill(Qt::white);
            QPainter painter(&image);
            paintMark(painter, QRectF(4, 4, 30, 30), mark, pen);
            painter.end();
            return image.convertToFormat(QImage::Format_Mono); // shape alone
        };
        QVERIFY(painted(CellMark::Better) != painted(CellMark::Worse));
        QVERIFY(painted(CellMark::Better) != painted(CellMark::Held));
        QVERIFY(painted(CellMark::Held) != painted(CellMark::Unclear));
    }

    /// What stands under the matrix speaks of bars where there are any, whatever the width.
    void theKeySpeaksOfWhatIsThere() {
        Folder folder;
        Logbook book(log::Log::create(folder.path()));
        WholeSeasonPage page(book);
        page.show();
        page.showSeason(askedByHand());
        const auto key = [&] {
            for (const QLabel* each : page.findChildren<QLabel*>())
                if (each->accessibleDescription() == u"What the marks mean"_s)
                    return each->text();
            return QString();
        };
        page.layout()->setSizeConstraint(QLayout::SetNoConstraint); // narrower than its buttons
        page.setMinimumSize(1, 1);
        bool with = false, without = false;
        for (const int width : {1400, 260, 1000}) {
            page.resize(width, 620);
            QTRY_COMPARE(key().contains(u"Bar: "_s), page.view().hasBars());
            (page.view().hasBars() ? with : without) = true;
            QVERIFY(key().contains(u"Hatched: "_s));
        }
        QVERIFY(with && without);
    }

    void arrowKeysWalkTheCells() {
        Folder folder;
        Logbook book(log::Log::create(folder.path()));
        WholeSeasonPage page(book);
        page.resize(1072, 620);
        page.show();
        page.showSeason(askedByHand());
        MatrixView& view = page.view();
        view.setFocus();
        QCOMPARE(view.currentIndex(), view.model()->index(0, 2)); // the last block
        const auto words = [&] { return plain(labelOf(page, "cellWords").text()); };
        QVERIFY(words().startsWith(u"Bench pull"_s));
        QTest::keyClick(&view, Qt::Key_Left);
        QVERIFY2(words().contains(u"Winter flood: 1.002 m/s"_s), qPrintable(words()));
        for (int i = 0; i < 3; ++i)
            QTest::keyClick(&view, Qt::Key_Down);
        QVERIFY2(words().contains(u"rig under water"_s), qPrintable(words()));
        QAccessibleInterface* table = QAccessible::queryAccessibleInterface(&view);
        QVERIFY(table && table->tableInterface());
        QAccessibleInterface* cell = table->tableInterface()->cellAt(3, 1);
        QVERIFY(cell);
        QCOMPARE(plain(cell->text(QAccessible::Name)), words()); // heard is what is seen
        QTest::keyClick(&view, Qt::Key_Home);
        QVERIFY(words().contains(u"Autumn"_s));
    }

    void oneKeyLeadsFromACellToItsAnswer() {
        Folder folder;
        Logbook book(log::Log::create(folder.path()));
        WholeSeasonPage page(book);
        page.show();
        page.showSeason(askedByHand());
        QSignalSpy lift(&page, &TaskPage::liftWanted), compared(&page, &TaskPage::comparisonWanted),
            session(&page, &TaskPage::sessionWanted), season(&page, &TaskPage::seasonWanted),
            battery(&page, &TaskPage::batteryWanted), message(&page, &TaskPage::message);
        MatrixView& view = page.view();
        const auto press = [&](int row, int block, Qt::Key pressed) {
            view.setCurrentIndex(view.model()->index(row, block));
            QTest::keyClick(&view, pressed);
        };
        press(0, 2, Qt::Key_Return);
        // The figure is that of two blocks, and so is the answer.
        const auto sides = compared.takeFirst();
        QCOMPARE(sides[1].value<questions::LiftSide>(), questions::LiftSide(BlockId{1}));
        QCOMPARE(sides[2].value<questions::LiftSide>(), questions::LiftSide(BlockId{3}));
        QCOMPARE(lift.takeFirst().first().value<LiftId>(), LiftId{1});
        press(0, 1, Qt::Key_Space);
        QCOMPARE(session.takeFirst().first().value<SessionId>(), SessionId{20});
        press(0, 1, Qt::Key_Period);
        QCOMPARE(season.takeFirst().last().value<Mass>(), Mass{40'000});
        press(2, 2, Qt::Key_Enter);
        QCOMPARE(battery.size(), 1);
        press(0, 0, Qt::Key_Return); // nothing to compare it with: its session
        QCOMPARE(session.takeFirst().first().value<SessionId>(), SessionId{10});
        press(3, 2, Qt::Key_Period);
        QCOMPARE(message.size(), 1);
        QVERIFY(season.empty() && compared.empty());
        view.setCurrentIndex(view.model()->index(5, 1));
        QVERIFY(!button(page, u"Compare"_s)->isEnabled()); // of a body mass
        QVERIFY(button(page, u"Open its session"_s)->isEnabled());
    }

    void overviewGroupsByReadingAndSaysWhatIsDue() {
        Folder folder;
        Logbook book(log::Log::create(folder.path()));
        OverviewPage page(book);
        page.show();
        answers::SeasonMatrix matrix = seasonByHand();
        page.showSeason(askedByHand(matrix));
        const TextTable& table = page.table();
        QCOMPARE(table.rowCount(), 6);
        const auto last = [&](int row) { return plain(table.index(row, 5).data().toString()); };
        QVERIFY(last(0).startsWith(u"better"_s));
        QVERIFY(last(3).startsWith(u"worse"_s));
        QVERIFY2(last(4).startsWith(u"no figure: not tested"_s), qPrintable(last(4)));
        QVERIFY(plain(labelOf(page, "due").text()).contains(u"Isometric pull"_s));
        QVERIFY(labelOf(page, "due").text().contains(u"last in Autumn"_s));
        QVERIFY(button(page, u"Test it at a station"_s)->isVisible());
        QVERIFY(page.charts().data().charts.size() <= 4);
        QCOMPARE(page.charts().data().charts.front().points.back().figure, u"1.051"_s);
        QSignalSpy compared(&page, &TaskPage::comparisonWanted),
            place(&page, &TaskPage::placeWanted);
        auto* view = page.findChild<QTableView*>(u"overview"_s);
        view->selectRow(0);
        QTest::keyClick(view, Qt::Key_Return);
        QCOMPARE(compared.size(), 1);
        button(page, u"Whole season"_s)->click();
        button(page, u"Test it at a station"_s)->click();
        QCOMPARE(place.size(), 2);
        matrix.rows.pop_back(); // the body mass, which is due as well
        matrix.rows[3].cells[2] = noCell(NoAnswer::Why::NotPossible, "rig sold");
        page.showSeason(askedByHand(matrix));
        QVERIFY(labelOf(page, "missing").text().contains(u"rig sold"_s));
        QVERIFY(!button(page, u"Test it at a station"_s)->isVisible());
    }

    void thePagesFollowTheLogAndTheKeys() {
        const SmallLog log({day(2025, 10, 1), day(2026, 1, 20), day(2026, 4, 20)});
        const auto window = windowOn(log);
        Workspace& work = *window->workspace();
        QTest::keyClick(window.get(), Qt::Key_M, Qt::ControlModifier);
        QVERIFY(work.page() == Page::WholeSeason);
        auto& page = *qobject_cast<WholeSeasonPage*>(work.currentPage());
        QVERIFY(page.canPrint());
        QCOMPARE(page.view().figure().blocks.size(), std::size_t(3));
        // B reads the others against the cell's block; it stays so while the window is open.
        page.view().setCurrentIndex(page.view().model()->index(0, 1));
        QTest::keyClick(&page.view(), Qt::Key_B);
        QCOMPARE(page.view().figure().chosen, std::size_t(1));
        auto* against = page.findChild<QComboBox*>();
        QCOMPARE(against->currentText(), u"Winter"_s);
        QCOMPARE(page.view().currentIndex().column(), 1);
        // Another window's test is seen.
        const auto before = page.view().figure().blocks[2].under;
        {
            log::Log other = log::Log::open(log.folder.path());
            log.ladder(other, day(2026, 5, 4));
        }
        work.logbook().lookForOthersWrites();
        QVERIFY(page.view().figure().blocks[2].under != before);
        QCOMPARE(page.view().figure().chosen, std::size_t(1));
        // To the comparison and the load's season, with their lift.
        page.view().setCurrentIndex(page.view().model()->index(0, 2));
        QTest::keyClick(&page.view(), Qt::Key_Return);
        QVERIFY(work.page() == Page::Comparison);
        QTest::keyClick(window.get(), Qt::Key_R, Qt::ControlModifier);
        QVERIFY(work.page() == Page::Overview);
        auto* table = work.currentPage()->findChild<QTableView*>(u"overview"_s);
        table->selectRow(0);
        for (int row = 0; row < table->model()->rowCount(); ++row)
            if (plain(table->model()->index(row, 0).data().toString()).contains(u"60 kg"_s))
                table->selectRow(row);
        QTest::keyClick(table, Qt::Key_Period);
        QVERIFY(work.page() == Page::Season);
        // Nobody else's is shown.
        QTest::keyClick(window.get(), Qt::Key_M, Qt::ControlModifier);
        work.choose(log.dov, {});
        QVERIFY(!page.canPrint());
        QVERIFY(labelOf(page, "emptyTitle").text().contains(u"Dov"_s));
        QVERIFY(page.view().figure().empty());
        work.choose(log.cora, {});
        QCOMPARE(page.view().figure().chosen, std::size_t(1));
    }

    void nothingThereSaysWhatToDo_data() {
        QTest::addColumn<int>("tests");
        QTest::addColumn<QString>("title");
        QTest::newRow("no test") << 0 << u"Nothing of Cora yet."_s;
        QTest::newRow("one test") << 1 << u"One test of Cora: nothing to compare it with yet."_s;
    }
    void nothingThereSaysWhatToDo() {
        QFETCH(int, tests);
        QFETCH(QString, title);
        const SmallLog log(std::vector<Date>(std::size_t(tests), day(2025, 10, 1)));
        const auto window = windowOn(log);
        for (const Page each : {Page::Overview, Page::WholeSeason}) {
            window->workspace()->showPage(each);
            TaskPage& page = *window->workspace()->currentPage();
            QCOMPARE(labelOf(page, "emptyTitle").text(), title);
            auto* way = page.findChild<QPushButton*>(u"emptyWay"_s);
            QVERIFY(way->isVisible());
            way->click();
            QVERIFY(window->workspace()->page() == Page::Session);
        }
    }

    void twoTestsInNoBlockAreComparedByDay() {
        const SmallLog log({day(2025, 10, 1), day(2026, 1, 20)}, false);
        const auto window = windowOn(log);
        window->workspace()->showPage(Page::Overview);
        auto& page = *qobject_cast<OverviewPage*>(window->workspace()->currentPage());
        QVERIFY(page.canPrint());
        QVERIFY(page.table().rowCount() > 0);
        QCOMPARE(plain(page.table().headerData(2, Qt::Horizontal).toString()), u"20 Jan 2026"_s);
    }

    void onePageOfPaper_data() {
        QTest::addColumn<int>("measures");
        QTest::addColumn<int>("pages");
        QTest::newRow("six") << 6 << 1;
        QTest::newRow("as many as one page holds") << 25 << 1;
        QTest::newRow("more") << 26 << 2;
        QTest::newRow("many") << 45 << 2;
    }
    void onePageOfPaper() {
        QFETCH(int, measures);
        QFETCH(int, pages);
        answers::SeasonMatrix matrix = seasonByHand();
        const auto given = matrix.rows;
        while (int(matrix.rows.size()) < measures) {
            matrix.rows.push_back(given[matrix.rows.size() % given.size()]);
            matrix.rows.back().measure.name += " " + std::to_string(matrix.rows.size());
        }
        const AskedSeason asked = *askedByHand(matrix).answer;
        for (const LoadUnit unit : {LoadUnit::Kilograms, LoadUnit::Pounds})
            for (const QSizeF& paper : {a4, letter}) {
                const int season = page::pageCount(wholeSeasonPrint(asked, unit), paper);
                QVERIFY2(season <= pages, qPrintable(QString::number(season)));
                const int overview =
                    page::pageCount(overviewPrint(asked, answers::overviewOf(matrix), unit), paper);
                QVERIFY2(overview <= pages, qPrintable(QString::number(overview)));
            }
    }

    void paperHoldsAllThatIsSaid() {
        Folder folder;
        Logbook book(log::Log::create(folder.path()));
        WholeSeasonPage page(book);
        QVERIFY(!page.canPrint());
        page.showSeason(askedByHand());
        QVERIFY(page.canPrint());
        const auto file = folder.path("whole.pdf");
        page.writePdfTo(file, QPageSize::A4);
        QVERIFY_THROWS_EXCEPTION(LogError,
                                 page.writePdfTo(file, QPageSize::A4)); // never over another
        const QString paper = flat(
            run(u"pdftotext"_s, {u"-layout"_s, QString::fromStdString(file.string()), u"-"_s}));
        for (const QString& part : {u"Cora: whole season"_s, u"Winter flood"_s, u"up to 70 kg"_s,
                                    u"1.051"_s, u"better"_s, u"not comparable"_s, u"rig under"_s,
                                    u"heavy plates under water"_s, u"Light loads only in winter"_s,
                                    u"What such a season can show"_s, u"not clearance to lift"_s})
            QVERIFY2(paper.contains(part), qPrintable(part + u" is not in\n"_s + paper));
        OverviewPage overview(book);
        overview.showSeason(askedByHand());
        const auto other = folder.path("overview.pdf");
        overview.writePdfTo(other, QPageSize::A4);
        const QString told = flat(
            run(u"pdftotext"_s, {u"-layout"_s, QString::fromStdString(other.string()), u"-"_s}));
        for (const QString& part : {u"Cora: overview"_s, u"Due"_s, u"1.051"_s, u"no figure"_s})
            QVERIFY2(told.contains(part), qPrintable(part + u" is not in\n"_s + told));
    }

    void picturesGoOutTheOneWay() {
        Folder folder;
        MatrixView view;
        view.setFigure(matrixFigure(seasonByHand(), LoadUnit::Kilograms));
        charts::writePng(view, folder.path("m.png"));
        charts::writeSvg(view, folder.path("m.svg"), u"Season"_s);
        QVERIFY(QImage(QString::fromStdString(folder.path("m.png").string())).width() > 1000);
        QFile svg(QString::fromStdString(folder.path("m.svg").string()));
        QVERIFY(svg.open(QIODevice::ReadOnly));
        QVERIFY(svg.readAll().contains("Winter flood"));
        QCOMPARE(view.figures().rows.size(), std::size_t(6));
        QCOMPARE(view.figures().headings.size(), 6);
        StepChartsView charts; // and where there is nothing
        charts::writePng(charts, folder.path("empty.png"));
        MatrixView empty;
        charts::writePng(empty, folder.path("none.png"));
    }
};

QTEST_MAIN(TestOverviewPages)
#include "tst_overviewpages.moc"

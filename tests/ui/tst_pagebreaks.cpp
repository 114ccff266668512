// SPDX-License-Identifier: GPL-3.0-or-later
// Where printed pages end: no text with a single line on a page, no torn row, no row of a table
// left alone, no heading without what it names, no last page that holds next to nothing. By flows
// of any texts and tables, read as they are painted, and by every print of the sample log.
#include "core/questions/batteryquestions.h"
#include "core/questions/questions.h"
#include "tests/ui/paintedtexts.h"
#include "ui/athlete/plan/planpage.h"
#include "ui/paper/batteryprint.h"
#include "ui/paper/fitting.h"
#include "ui/paper/papertask.h"
#include "ui/paper/plancard.h"
#include "ui/paper/printedcomparison.h"
#include "ui/window/mainwindow.h"
#include "ui/window/workspace.h"

#include <QFile>
#include <QPainter>
#include <QRegularExpression>
#include <QSet>
#include <QTemporaryDir>
#include <QTest>

#include <algorithm>
#include <map>
#include <random>
#include <set>
#include <utility>

using namespace slopebook;
using namespace slopebook::ui;
using namespace Qt::Literals::StringLiterals;

namespace {

const QSizeF a4(595, 842), letter(612, 792);

/// The texts of each page, top to bottom.
std::vector<QList<test::PaintedText>> painted(const page::Flow& flow) {
    std::vector<QList<test::PaintedText>> all;
    for (const auto& one : flow.pages()) {
        test::TextRecorder recorder(QSize(700, 900));
        QPainter painter(&recorder);
        for (const auto& [top, block] : one)
            block->paint(painter, QPointF(flow.margin(), top));
        painter.end();
        all.push_back(recorder.texts());
    }
    return all;
}

/// "p7" of "p7w0 p7w1 p7w2": what a line of the flows below belongs to.
QString ownerOf(const QString& line) {
    static const QRegularExpression owner(u"^([a-z]\\d+)"_s);
    return owner.match(line).captured(1);
}

QString words(const QString& owner, int count) {
    QStringList all;
    for (int i = 0; i < count; ++i)
        all << owner + u"w%1"_s.arg(i);
    return all.join(u' ');
}

/// What must hold of every print on every paper, or what does not.
QString fault(const page::Flow& flow) {
    const auto pages = flow.pages();
    std::map<int, std::vector<int>> lines; // of a text or row, by page
    std::map<int, std::vector<std::set<int>>> rows;
    std::set<int> ofTables;
    const auto at = [&](auto& of, std::size_t number) -> auto& {
        of.resize(pages.size());
        return of[number];
    };
    for (std::size_t i = 0; i < pages.size(); ++i) {
        if (pages[i].empty())
            return u"page %1 is empty"_s.arg(i + 1);
        for (const auto& [top, block] : pages[i]) {
            if (top + block->height > flow.margin() + flow.room() + 0.1)
                return u"page %1 holds too much"_s.arg(i + 1);
            if (block->part == 0)
                continue;
            ++at(lines[block->part], i);
            if (block->table != 0) {
                at(rows[block->table], i).insert(block->part);
                ofTables.insert(block->part);
            }
        }
        if (pages[i].back().block->title)
            return u"page %1 ends with a title"_s.arg(i + 1);
    }
    for (const auto& [part, byPage] : lines) {
        int on = 0, sum = 0;
        for (const int count : byPage) {
            on += count > 0 ? 1 : 0;
            sum += count;
        }
        if (on > 1 && (sum <= 4 || (ofTables.contains(part) && sum <= 8)))
            return u"what should stand whole is torn: %1 lines"_s.arg(sum);
        if (on > 1 && std::ranges::find(byPage, 1) != byPage.end())
            return u"a line of %1 stands alone"_s.arg(sum);
    }
    for (const auto& [table, byPage] : rows) {
        std::size_t sum = 0;
        for (const auto& on : byPage)
            sum += on.size();
        if (sum > 1 && std::ranges::any_of(byPage, [](const auto& on) { return on.size() == 1; }))
            return u"a row of %1 stands alone"_s.arg(sum);
    }
    if (pages.size() > 1 && flow.lastFilled() < 0.2 && !pages.back().front().block->title)
        return u"the last page holds %1 of a page"_s.arg(flow.lastFilled());
    return {};
}

} // namespace

class TestPageBreaks : public QObject {
    Q_OBJECT

    using Look = std::function<void(const QString&, const page::Print&)>;

    static void lookAt(Workspace& work, const PageEntry& entry, const QString& name,
                       const Look& look) {
        work.showPage(entry.page);
        const auto* paper = qobject_cast<const PaperTask*>(work.currentPage());
        if (paper == nullptr)
            return;
        if (entry.page == Page::Due && !paper->canPrint())
            return; // nothing is due in the sample
        QTRY_VERIFY2_WITH_TIMEOUT(paper->canPrint(), entry.word, 60'000);
        look(name, paper->pages());
    }

    /// Every print of the window, of these athletes and lifts, and what it is.
    static void eachPrint(const QString& language, const Look& look) {
        const QTemporaryDir folder;
        const QString copy = folder.filePath(u"log.slopebook"_s);
        QVERIFY(QFile::copy(QStringLiteral(SLOPEBOOK_SAMPLE_LOG), copy));
        Surroundings surroundings;
        surroundings.settings.language = language;
        surroundings.clock = [] {
            return Date{std::chrono::year{2026}, std::chrono::month{5}, std::chrono::day{11}};
        };
        MainWindow window(surroundings);
        window.openLogFile(copy);
        QVERIFY(window.workspace());
        window.show();
        Workspace& work = *window.workspace();
        const log::Log& log = work.logbook().log();
        const auto called = [](const auto& all, const std::string& name) {
            return std::ranges::find_if(all,
                                        [&](const auto& one) { return one.value.name == name; })
                ->id;
        };
        std::map<QString, bool> looked;
        for (const char* who : {"Cora", "Ada"}) {
            const AthleteId athlete = called(log.athletes(), who);
            for (const char* lift : {"Bench pull", "Back squat"}) {
                const QString name = QLatin1String(who) + u", "_s + QLatin1String(lift) + u": "_s;
                work.choose(athlete, called(log.lifts(), lift));
                for (const auto& entry : pages()) {
                    const QString whose = (entry.ofAthlete ? QLatin1String(who) : u""_s) + u' ' +
                                          (entry.ofLift ? QLatin1String(lift) : u""_s) + u' ' +
                                          QLatin1String(entry.word);
                    if (!std::exchange(looked[whose], true))
                        lookAt(work, entry, whose, look);
                }
                work.showPage(Page::Plan);
                const auto* plan = qobject_cast<const PlanPage*>(work.currentPage());
                QVERIFY(plan && plan->loads().plan());
                look(name + u"card"_s, planCardPrint({.athlete = QLatin1String(who),
                                                      .lift = QLatin1String(lift),
                                                      .plan = *plan->loads().plan()}));
                const auto about = questions::background(log, athlete, called(log.lifts(), lift));
                for (const std::size_t from : {std::size_t{0}, about.sessions.size() - 3}) {
                    const auto c = questions::comparisonOf(log, about, about.sessions[from],
                                                           about.sessions.back());
                    QVERIFY(c);
                    look(name + u"comparison"_s, comparisonPrint(*c, pageHeader(log, about, *c)));
                }
            }
            const auto battery =
                questions::batteryOf(log, athlete, questions::batterySide(log, "Winter flood"),
                                     questions::batterySide(log, "Spring"));
            QVERIFY(battery);
            look(QLatin1String(who) + u": battery"_s, batteryPrint(*battery, LoadUnit::Kilograms));
        }
    }

private Q_SLOTS:
    /// Texts of one to twenty lines and tables of one to thirty rows, in any order.
    void anyFlow() {
        std::mt19937 dice(7);
        const auto any = [&](int least, int most) {
            return std::uniform_int_distribution(least, most)(dice);
        };
        int broken = 0, tables = 0;
        for (int round = 0; round < 150; ++round) {
            page::Flow flow(round % 2 == 0 ? a4 : letter, 36, 14);
            std::map<QString, std::pair<int, int>> tableOf; // first row and count
            QSet<QString> titles;
            int number = 0;
            const int things = any(4, 14);
            for (int i = 0; i < things; ++i) {
                const int what = any(0, 5);
                if (what == 0) {
                    const QString owner = u"t%1"_s.arg(++number);
                    flow.heading(owner);
                    titles << owner;
                    flow.text(words(u"p%1"_s.arg(++number), any(5, 200)), page::pageFont(8), 2);
                } else if (what == 1) {
                    const int rows = any(1, 30), first = number + 1;
                    std::vector<std::vector<page::Cell>> cells;
                    for (int row = 0; row < rows; ++row) {
                        const QString owner = u"r%1"_s.arg(++number);
                        tableOf[owner] = {first, rows};
                        cells.push_back({{words(owner, any(1, 30))}, {words(owner, 2)}});
                    }
                    flow.table({{250}, {150}}, {{.text = u"head"_s}, {.text = u"head"_s}}, cells,
                               page::pageFont(8), 4);
                    ++tables;
                } else {
                    flow.text(words(u"p%1"_s.arg(++number), any(1, 280)), page::pageFont(7.5), 2);
                }
            }
            QStringList seen;
            std::map<QString, std::map<std::size_t, std::set<double>>> lines; // tops by page
            const auto pages = painted(flow);
            for (std::size_t i = 0; i < pages.size(); ++i)
                for (const test::PaintedText& text : pages[i]) {
                    const QString owner = ownerOf(text.text);
                    if (owner.isEmpty())
                        continue; // the head of a table
                    lines[owner][i].insert(text.box.bottom());
                    if (owner.startsWith(u'p'))
                        seen << text.text.split(u' ');
                }
            broken += int(pages.size()) - 1;
            std::map<int, std::map<std::size_t, int>> rowsOn;
            for (const auto& [owner, byPage] : lines) {
                std::size_t sum = 0;
                for (const auto& [one, tops] : byPage)
                    sum += tops.size();
                const QString told = u"%1 of round %2, %3 lines"_s.arg(owner).arg(round).arg(sum);
                const bool row = owner.startsWith(u'r');
                QVERIFY2(byPage.size() == 1 || sum > (row ? 8U : 4U), qPrintable(told));
                for (const auto& [one, tops] : byPage)
                    QVERIFY2(byPage.size() == 1 || tops.size() >= 2, qPrintable(told));
                if (row)
                    for (const auto& [one, tops] : byPage)
                        ++rowsOn[tableOf.at(owner).first][one];
                if (titles.contains(owner)) // its text begins on the same page
                    QVERIFY2(byPage.begin()->first ==
                                 lines.at(u"p%1"_s.arg(owner.mid(1).toInt() + 1)).begin()->first,
                             qPrintable(told));
            }
            for (const auto& [first, byPage] : rowsOn)
                for (const auto& [one, count] : byPage)
                    QVERIFY2(byPage.size() == 1 || count >= 2,
                             qPrintable(u"table of row %1, round %2"_s.arg(first).arg(round)));
            // All of it, in order.
            QStringList sorted = seen;
            std::ranges::stable_sort(sorted, {}, [](const QString& word) {
                return ownerOf(word).mid(1).toInt() * 1000 + word.section(u'w', 1).toInt();
            });
            QCOMPARE(seen, sorted);
            QCOMPARE(QSet<QString>(seen.begin(), seen.end()).size(), seen.size());
        }
        QVERIFY(broken > 150 && tables > 100); // a test of the test
    }

    /// The same by its marks, as prints are looked at below; a fault is found where there is one.
    void marksTellWhatIsTorn() {
        page::Flow flow(a4, 36, 14);
        flow.text(words(u"p1"_s, 900), page::pageFont(8));
        QCOMPARE(fault(flow), QString());
        flow.beginPage();
        flow.text(words(u"p2"_s, 3), page::pageFont(8));
        QVERIFY(fault(flow).contains(u"the last page"_s));
        page::Flow torn(a4, 36, 14);
        torn.add({.height = 700, .paint = [](QPainter&, const QPointF&) {}, .part = 1});
        torn.add({.height = 700, .paint = [](QPainter&, const QPointF&) {}, .part = 1});
        QVERIFY(fault(torn).contains(u"torn"_s));
    }

    /// What would stand alone on a last page takes its title with it, where that leaves the page
    /// before well filled.
    void theLastPageTakesWhatItBelongsTo() {
        page::Flow flow(a4, 36, 14);
        const auto picture = [](double height) {
            return page::Block{.height = height, .paint = [](QPainter&, const QPointF&) {}};
        };
        flow.add(picture(600));
        flow.heading(u"t1"_s);
        for (int i = 2; i < 14; ++i)
            flow.text(u"p%1w0"_s.arg(i), page::pageFont(9), 2);
        const auto pages = painted(flow);
        QCOMPARE(pages.size(), std::size_t(2));
        QCOMPARE(pages[0].size(), 0);
        QCOMPARE(pages[1].front().text, u"t1"_s);
        QCOMPARE(fault(flow), QString());
    }

    /// Two columns that wrap in the same rows are given what a third has to spare; together they
    /// stay as wide, and where there is no room they wrap.
    void aTableTakesNoMoreLinesThanItNeeds() {
        const auto linesOf = [](double spare) {
            page::Flow flow(a4, 36, 14);
            const std::vector<page::Cell> row{{u"2 sessions"_s}, {u"2 sessions"_s}, {u"held"_s}};
            flow.table({{50}, {50}, {spare}}, {{u"a"_s}, {u"b"_s}, {u"c"_s}}, {row, row},
                       page::pageFont(8));
            std::set<double> bottoms;
            const auto pages = painted(flow);
            for (const test::PaintedText& text : pages.front())
                bottoms.insert(text.box.bottom());
            return bottoms.size();
        };
        QCOMPARE(linesOf(300), std::size_t(3)); // the head, and two rows of a line
        QCOMPARE(linesOf(12), std::size_t(5));
    }

    /// Pictures and spaces give way where that saves a page, and not before.
    void aLittleCloserSavesAPage() {
        const auto print = [](double rest) {
            return page::Print{.fill = [rest](page::Flow& flow) {
                flow.add({.height = 300 * flow.closeness().picture,
                          .paint = [](QPainter&, const QPointF&) {}});
                flow.add({.height = rest, .paint = [](QPainter&, const QPointF&) {}});
            }};
        };
        const double room = page::Flow(a4, 36, 14).room();
        const auto picture = [&](double rest) {
            return page::fitted(print(rest), a4).closeness().picture;
        };
        QCOMPARE(picture(room - 300), 1.0);
        QCOMPARE(picture(room - 290), 0.95);
        QCOMPARE(picture(room - 241), 0.8);
        QCOMPARE(picture(room - 230), 1.0); // no closeness that is allowed will do
        QCOMPARE(page::pageCount(print(room - 241), a4), 1);
        QCOMPARE(page::pageCount(print(room - 230), a4), 2);
    }

    void everyPrintOfTheSample_data() {
        QTest::addColumn<QString>("language");
        QTest::newRow("English") << u"en"_s;
        QTest::newRow("German") << u"de"_s;
    }
    void everyPrintOfTheSample() {
        QFETCH(QString, language);
        int prints = 0;
        eachPrint(language, [&](const QString& name, const page::Print& print) {
            for (const QSizeF& paper : {a4, letter}) {
                const QString wrong = fault(page::fitted(print, paper));
                if (!wrong.isEmpty())
                    QTest::qFail(
                        qPrintable(name + (paper == a4 ? u", A4: "_s : u", Letter: "_s) + wrong),
                        __FILE__, __LINE__);
                ++prints;
            }
        });
        QVERIFY(prints >= 44);
    }
};

QTEST_MAIN(TestPageBreaks)
#include "tst_pagebreaks.moc"

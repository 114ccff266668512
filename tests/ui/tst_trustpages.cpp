// SPDX-License-Identifier: GPL-3.0-or-later
// Season, squad and noise in the window: the same figures as core's answers, the baseline chosen by
// a click, the squad on paper, and what is said where there is nothing to show.
#include "core/answers/followsummary.h"
#include "core/answers/squadmean.h"
#include "core/model/errors.h"
#include "core/questions/followquestions.h"
#include "tests/log/builders.h"
#include "tests/ui/pdftext.h"
#include "ui/athlete/season/seasonpage.h"
#include "ui/athlete/season/seasonrows.h"
#include "ui/paper/comparisonrows.h"
#include "ui/squad/changes/periodchooser.h"
#include "ui/squad/changes/squadmarks.h"
#include "ui/squad/changes/squadpage.h"
#include "ui/squad/changes/squadrows.h"
#include "ui/squad/devices/agreementview.h"
#include "ui/squad/devices/noisepage.h"
#include "ui/squad/devices/noiserows.h"
#include "ui/squad/devices/noiseview.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QAbstractItemModelTester>
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QPageSize>
#include <QPdfWriter>
#include <QProcess>
#include <QProgressBar>
#include <QPushButton>
#include <QSignalSpy>
#include <QStandardPaths>
#include <QTableView>
#include <QTest>
#include <QTimer>

#include <chrono>
#include <cmath>
#include <numbers>
#include <set>
#include <thread>

using namespace slopebook;
using namespace slopebook::test;
using namespace slopebook::questions;
using namespace slopebook::ui;
using namespace Qt::Literals::StringLiterals;

namespace {

/// Nine athletes with a check load of 60 kg, before and in a winter without heavy plates; the first
/// tested four times, measured by two devices at once, and again within two days.
struct Boathouse {
    Folder folder;
    Logbook book{log::Log::create(folder.path())};
    LiftId lift{};
    DeviceId left{}, right{};
    std::vector<AthleteId> athletes{};
    std::vector<SessionId> firsts{}; ///< of the first athlete, by date

    /// apart: how far the second and the third go, up and down.
    explicit Boathouse(double apart = 0.25) {
        lift = book.addLift({.name = "Bench pull",
                             .mvt = Mvt{.value = 0.5, .sd = 0.04, .source = "own tests"},
                             .smallestVelocity = 0.04});
        left = book.addDevice({.name = "Left encoder"});
        right = book.addDevice({.name = "Right encoder"});
        book.addBlock({.name = "Autumn", .first = day(2025, 9, 1), .last = day(2025, 11, 30)});
        book.addBlock({.name = "Flood",
                       .first = day(2025, 12, 1),
                       .last = day(2026, 2, 28),
                       .ceiling = Mass{70'000}});
        for (int i = 0; i < 9; ++i) {
            athletes.push_back(book.addAthlete({.name = "Lane " + std::to_string(i + 1)}));
            book.setCheckLoads(athletes.back(), lift, {Mass{60'000}});
            if (i == 8)
                break; // never tested
            const auto id = ladder(athletes.back(), day(2025, 10, 1), 1.5 + 0.02 * i);
            const double gain = i == 1 ? apart : i == 2 ? -apart : 0.01;
            const auto later = ladder(athletes.back(), day(2026, 1, 20), 1.5 + 0.02 * i + gain);
            if (i == 0)
                firsts = {id, later};
        }
        firsts.insert(firsts.begin() + 1, ladder(athletes[0], day(2025, 11, 2), 1.53));
        firsts.push_back(ladder(athletes[0], day(2026, 2, 20), 1.56));
        ladder(athletes[0], day(2025, 10, 3), 1.52, firsts[0]);
        ladder(athletes[1], day(2025, 10, 3), 1.50, sessionsOf(1).front().session);
        ladder(athletes[2], day(2025, 10, 3), 1.55, sessionsOf(2).front().session);
        const double wobble[]{0.004, -0.006, 0.005, -0.002, 0.001};
        SessionHead head{.athlete = athletes[3], .date = day(2025, 9, 10)};
        ladderOf(head, left, 1.55, {});
        head.ordinal = 2;
        ladderOf(head, right, 1.52, wobble);
    }

    std::vector<LiftSession> sessionsOf(int athlete) {
        return book.log().liftSessions(
            {.athlete = athletes[static_cast<std::size_t>(athlete)], .lift = lift});
    }
    SessionId ladder(AthleteId athlete, Date date, double v0,
                     std::optional<SessionId> repeatOf = {}) {
        return ladderOf({.athlete = athlete, .date = date, .repeatOf = repeatOf}, left, v0, {});
    }
    SessionId ladderOf(const SessionHead& head, DeviceId device, double v0,
                       std::span<const double> wobble) {
        const SessionId id =
            book.addSession(head, {{.lift = lift, .conditions = {.device = device}}});
        std::vector<Set> sets;
        for (int i = 0; i < 5; ++i) {
            const double load = 40 + 10 * i;
            const double own = wobble.empty() ? 0.0 : wobble[static_cast<std::size_t>(i)];
            sets.push_back(ladderSet(load, {v0 - 0.01 * load + (i % 2 == 0 ? 0.01 : -0.01) + own}));
        }
        book.addSets(id, lift, sets);
        return id;
    }
};

QString cell(const TextTable& table, int row, int column) {
    return table.index(row, column).data().toString();
}

QString column(const TextTable& table, int at) {
    QStringList cells;
    for (int row = 0; row < table.rowCount(); ++row)
        cells << cell(table, row, at);
    return cells.join(u'|');
}

} // namespace

class TestTrustPages : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init() { QTest::failOnWarning(QRegularExpression(u"[nN][aA][nN]"_s)); }
    void theSeasonIsCoresOwn();
    void aClickChoosesTheBaseline();
    void theSeasonsLatestIsInSight();
    void theSeasonWithoutSessions();
    void theSquadIsCoresOwn();
    void theSquadTellsItsMean();
    void whatAllAreDrawnToIsSaidOnce();
    void theKeysMarksAreToldApart();
    void theSquadOfDays();
    void theSquadOnPaper();
    void aSquadOfFortyIsStoppedWithNothingHalfDone();
    void theSeasonOnPaper_data();
    void theSeasonOnPaper();
    void theSeasonsTrendHasItsUnits();
    void theSquadWithoutAnybody();
    void noiseByLiftDeviceAndLoad();
    void ownNoiseComesFirst();
    void noiseThatIsPublished();
    void agreementOfTwoDevices();
    void comparisonsTakeTheBiasOff();
    void noStudyNoCorrection();
    void aBiasNeverComesFromWhatItCorrects();
    void columnsAndChangeAgree();
    void chartsArePaintedEmptyAndDark();
};

void TestTrustPages::theSeasonIsCoresOwn() {
    Boathouse log;
    SeasonPage page(log.book);
    const QAbstractItemModelTester tester(const_cast<TextTable*>(&page.table()));
    page.setAthleteAndLift(log.athletes[0], log.lift);
    // The day that the page is read against is chosen: else it would be the first block.
    auto* baselines = page.findChild<QComboBox*>(u"countedFrom"_s);
    QVERIFY(baselines);
    const int first = baselines->findText(u"1 Oct 2025"_s, Qt::MatchContains);
    QVERIFY(first >= 0);
    baselines->setCurrentIndex(first);
    Q_EMIT baselines->activated(first);
    const auto asked =
        seasonOf(log.book.log(), background(log.book.log(), log.athletes[0], log.lift),
                 Mass{60'000}, Baseline(log.firsts[0]));
    QVERIFY(asked);
    const auto* follow = &asked->follow;
    const SeasonData& shown = page.chart().data();
    QCOMPARE(shown.points.size(), follow->sessions.size());
    QCOMPARE(shown.baseline, 0);
    QCOMPARE(shown.points[1].line, std::optional(*follow->sessions[1].line));
    QCOMPARE(shown.points[1].interval, follow->sessions[1].interval);
    QCOMPARE(shown.detectable, follow->smallestDetectable);
    QCOMPARE(shown.spans.size(), std::size_t(2));
    QCOMPARE(shown.spans[1].name, u"Flood"_s);
    QCOMPARE(shown.spans[1].ceiling, u"up to 70\u00a0kg"_s);
    QVERIFY(shown.trend && shown.trend->perWeek == follow->trend->perWeek);
    // Five sessions, and after the last of each block its mean.
    QCOMPARE(page.table().rowCount(), int(follow->sessions.size()) + 2);
    QCOMPARE(shown.items.size(), follow->sessions.size() + 2);
    QCOMPARE(cell(page.table(), 0, 8), u"baseline"_s);
    QCOMPARE(cell(page.table(), 3, 0), u"mean of 3 days"_s);
    QCOMPARE(cell(page.table(), 5, 1), u"Flood"_s);
    QCOMPARE(cell(page.table(), 5, 6), signedNumber(follow->sessions[4].change->read.change, 3));
    QCOMPARE(cell(page.table(), 6, 4), number(*asked->blocks[1].cell.value, 3));
    QCOMPARE(cell(page.table(), 6, 6), signedNumber(asked->blocks[1].cell.against->read.change, 3));
    QVERIFY(!page.chart().accessibleName().isEmpty());
    // The selected session's change, where unclear, says what would settle it.
    auto* view = page.findChild<QTableView*>(u"season"_s);
    const auto* settling = page.findChild<QLabel*>(u"settling"_s);
    const auto* told = page.findChild<QLabel*>(u"sentence"_s);
    const auto* under = page.findChild<QLabel*>(u"toldUnder"_s);
    QVERIFY(view && settling && told && under);
    const QString blocks = said(answers::followSentence(*asked), LoadUnit::Kilograms);
    QVERIFY2(blocks.contains(u"against the day"_s), qPrintable(blocks));
    for (int row = 0; row < page.table().rowCount(); ++row) {
        view->selectRow(row);
        const SeasonItem& item = shown.items[std::size_t(row)];
        // The chart speaks what is written over it, of the row that is chosen.
        QVERIFY2(page.chart().accessibleName().contains(told->text()),
                 qPrintable(page.chart().accessibleName()));
        if (item.kind == SeasonItem::Kind::Block) { // told whole
            QCOMPARE(settling->text(), shown.told[row]);
            continue;
        }
        QCOMPARE(settling->text(), settlingOf(follow->sessions[item.index], LoadUnit::Kilograms));
        // The chosen day's own reading stands under the blocks', as another one.
        const QString alone = said(answers::dayAloneWords(*asked, follow->sessions[item.index]));
        QCOMPARE(alone.isEmpty(), row == 0);
        QCOMPARE(told->text(), blocks);
        QVERIFY2(under->text().startsWith(alone), qPrintable(under->text()));
        QVERIFY(page.chart().accessibleName().contains(alone));
        QCOMPARE(settling->text().isEmpty(), !cell(page.table(), row, 8).contains(u"unclear"_s));
    }
}

void TestTrustPages::aClickChoosesTheBaseline() {
    Boathouse log;
    SeasonPage page(log.book);
    page.resize(1000, 700);
    page.setAthleteAndLift(log.athletes[0], log.lift);
    page.show();
    auto& chart = const_cast<SeasonChart&>(page.chart());
    // Somewhere on the chart stands the third session's point: found as a finger finds it.
    std::optional<QPoint> place;
    const double text = QFontInfo(chart.font()).pixelSize();
    for (int x = 0; x < chart.width() && !place; x += 4)
        for (int y = 0; y < chart.height() && !place; y += 4)
            if (seasonItemAt(chart.rect(), chart.data(), text, QPointF(x, y)) ==
                SeasonItem{SeasonItem::Kind::Session, 2})
                place = QPoint(x, y);
    QVERIFY(place);
    QTest::mouseClick(&chart, Qt::LeftButton, {}, *place);
    QCOMPARE(chart.data().baseline, 2);
    QCOMPARE(cell(page.table(), 2, 8), u"baseline"_s);
    QVERIFY(cell(page.table(), 0, 8) != u"baseline"_s);
    // It stays when the log changes, and another athlete starts afresh.
    page.refresh(Logbook::What::Sets, {});
    QCOMPARE(chart.data().baseline, 2);
    page.setAthleteAndLift(log.athletes[1], log.lift);
    QCOMPARE(chart.data().baseline, -1); // the first block again
    QSignalSpy wanted(&page, &TaskPage::batteryWanted);
    for (auto* button : page.findChildren<QPushButton*>())
        if (button->isEnabled() && button->text().contains(u"changes start"_s) &&
            button->text().startsWith(u"Compare"_s))
            button->click();
    QCOMPARE(wanted.size(), 1);
}

// The latest session is the one that is chosen: its row is seen, and stays so in a lower window.
void TestTrustPages::theSeasonsLatestIsInSight() {
    Boathouse log;
    for (unsigned i = 1; i <= 20; ++i)
        log.ladder(log.athletes[0], day(2026, 3, i), 1.55);
    SeasonPage page(log.book);
    page.setAthleteAndLift(log.athletes[0], log.lift);
    page.resize(1280, 720);
    page.show();
    QVERIFY(QTest::qWaitForWindowExposed(&page));
    page.resize(1280, 480);
    QCoreApplication::processEvents();
    const auto* view = page.findChild<QTableView*>();
    QCOMPARE(view->currentIndex().row(), page.table().rowCount() - 1);
    const QRect row = view->visualRect(view->currentIndex());
    QVERIFY(row.height() > 0 && view->viewport()->rect().contains(row.center()));
}

void TestTrustPages::theSeasonWithoutSessions() {
    Boathouse log;
    SeasonPage page(log.book);
    page.setAthleteAndLift(log.athletes[8], log.lift);
    QVERIFY(page.chart().data().points.empty());
    QCOMPARE(page.table().rowCount(), 0);
    page.setAthleteAndLift({}, {});
    QVERIFY(page.chart().accessibleName().contains(u"Choose"_s));
}

void TestTrustPages::theSquadIsCoresOwn() {
    Boathouse log;
    SquadPage page(log.book);
    const QAbstractItemModelTester tester(const_cast<TextTable*>(&page.table()));
    page.setAthleteAndLift({}, log.lift);
    QTRY_VERIFY(!page.working());
    QVERIFY(page.canPrint());
    const auto& squad = *page.squad();
    QCOMPARE(squad.from.name, std::string("Autumn"));
    QCOMPARE(squad.to.name, std::string("Flood"));
    QCOMPARE(squad.parts.size(), std::size_t(2));
    QCOMPARE(column(page.table(), 0).left(13), u"Lane 2|Lane 3"_s);
    QCOMPARE(cell(page.table(), 0, 7).left(6), u"better"_s);
    QCOMPARE(cell(page.table(), 1, 7).left(5), u"worse"_s);
    QCOMPARE(page.chart().data().rows.size(), std::size_t(8)); // one was never tested
    QCOMPARE(page.chart().data().rows[0].change,
             std::optional(squad.parts[0].rows[0].read->change));
    page.showPart(1);
    QVERIFY(page.chart().data().title.contains(u"1RM"_s));
    // By dates: nobody was tested on that day.
    page.to().chooseDate(day(2026, 5, 1), 3);
    QTRY_VERIFY(!page.working());
    QCOMPARE(page.squad()->parts[0].figures(), 0);
    QVERIFY(cell(page.table(), 0, 7)
                .contains(u"no session of this lift in 1 May 2026"_s, Qt::CaseInsensitive));
    page.to().chooseDate(day(2026, 1, 22), 3);
    QTRY_VERIFY(!page.working());
    QCOMPARE(page.squad()->parts[0].figures(), 8);
}

/// The page, its chart, its figures and the command's answer are of one making: all sessions of a
/// block, the mean, each drawn to all.
void TestTrustPages::theSquadTellsItsMean() {
    Boathouse log;
    SquadPage page(log.book);
    page.setAthleteAndLift({}, log.lift);
    QTRY_VERIFY(!page.working());
    const auto blocks = log.book.log().blocks();
    const auto asked = squadOf(log.book.log(), log.lift, answers::inBlock(blocks[0].value),
                               answers::inBlock(blocks[1].value));
    QVERIFY(asked);
    for (int at = 0; at < 2; ++at) {
        page.showPart(at);
        const auto& part = asked->parts[static_cast<std::size_t>(at)];
        const bool mass = at == 1;
        const int decimals = mass ? 1 : 3;
        const auto mean = answers::squadMean(part, asked->level);
        QVERIFY(mean && mean->athletes == 8);
        const auto* sentence = page.findChild<QLabel*>(u"sentence"_s);
        QCOMPARE(sentence->text(), said(answers::squadMeanWords(part, *mean), LoadUnit::Kilograms));
        QVERIFY(!sentence->isHidden());
        // One row an athlete and one of all; both marks in the chart, its figures, and the table.
        const auto& chart = page.chart().data();
        QCOMPARE(page.table().rowCount(), 9);
        QCOMPARE(chart.rows.size(), std::size_t(8));
        QVERIFY(chart.all && chart.all->change == std::optional(mean->mean));
        QCOMPARE(cell(page.table(), 8, 0), u"All (8)"_s);
        QCOMPARE(cell(page.table(), 8, 3), signedNumber(mean->mean, decimals));
        const auto figures = page.chart().figures();
        QCOMPARE(figures.rows.size(), std::size_t(9));
        for (std::size_t i = 0; i < chart.rows.size(); ++i) {
            const auto drawn = answers::drawnOf(mean, part.rows[i].athlete);
            QVERIFY(drawn && chart.rows[i].drawn == std::optional(drawn->drawn));
            QCOMPARE(chart.rows[i].change, std::optional(part.rows[i].read->change));
            QCOMPARE(cell(page.table(), static_cast<int>(i), 5),
                     signedNumber(drawn->drawn, decimals));
            QVERIFY(!figures.rows[i][3].isEmpty());
        }
    }
    // Of a block all sessions: the first was tested three times in Autumn and twice in the flood.
    for (const answers::SquadRow& row : page.squad()->parts[0].rows)
        if (row.athlete == log.athletes[0]) {
            QCOMPARE(row.fromSessions, 3);
            QCOMPARE(row.toSessions, 2);
        }
    QVERIFY(column(page.table(), 1).contains(u"3 sessions"_s));
    bool chance = false;
    for (const auto* label : page.findChildren<QLabel*>())
        chance = chance || label->text().contains(said(answers::squadChanceWords(*asked)));
    QVERIFY(chance);
    // The row of all is nobody's: nothing is opened from it.
    auto* view = page.findChild<QTableView*>(u"squad"_s);
    view->selectRow(8);
    for (const auto* button : page.findChildren<QPushButton*>())
        if (button->text().contains(u"session"_s))
            QVERIFY(!button->isEnabled());
}

/// The days of a block, chosen as days, are that block.
void TestTrustPages::theSquadOfDays() {
    Boathouse log;
    SquadPage page(log.book);
    page.setAthleteAndLift({}, log.lift);
    QTRY_VERIFY(!page.working());
    const auto block = *page.squad();
    page.from().chooseDays({day(2025, 9, 1), day(2025, 11, 30)});
    page.to().chooseDays({day(2026, 2, 28), day(2025, 12, 1)}); // in either order
    QTRY_VERIFY(!page.working());
    QVERIFY(page.squad());
    QCOMPARE(page.squad()->from.name, std::string("2025-09-01..2025-11-30"));
    QCOMPARE(page.squad()->to.name, std::string("2025-12-01..2026-02-28"));
    for (std::size_t part = 0; part < block.parts.size(); ++part)
        for (std::size_t row = 0; row < block.parts[part].rows.size(); ++row) {
            const auto &one = block.parts[part].rows[row],
                       &other = page.squad()->parts[part].rows[row];
            QCOMPARE(one.athlete, other.athlete);
            QVERIFY(one.read->change == other.read->change &&
                    one.read->interval.low == other.read->interval.low &&
                    one.toSessions == other.toSessions);
        }
    page.refresh(Logbook::What::Everything, {}); // the choice stays
    QTRY_VERIFY(!page.working());
    QCOMPARE(page.squad()->to.name, std::string("2025-12-01..2026-02-28"));
}

/// Where noise explains all that differs, a column of one figure would read like a fault.
void TestTrustPages::whatAllAreDrawnToIsSaidOnce() {
    for (const double apart : {0.0, 0.25}) {
        Boathouse log(apart);
        SquadPage page(log.book);
        page.resize(1280, 720); // a narrow table leaves columns to the rows' tips
        page.setAthleteAndLift({}, log.lift);
        page.show();
        QTRY_VERIFY(!page.working());
        const auto* view = page.findChild<QTableView*>(u"squad"_s);
        const auto* drawn = page.findChild<QLabel*>(u"drawn"_s);
        for (int at = 0; at < 2; ++at) {
            page.showPart(at);
            const auto& part = page.squad()->parts[static_cast<std::size_t>(at)];
            const auto mean = answers::squadMean(part, page.squad()->level);
            QVERIFY(mean && mean->athletes == 8);
            std::set<QString> figures;
            for (const auto& each : mean->each)
                figures.insert(signedNumber(each.drawn, at == 1 ? 1 : 3));
            const bool alike = figures.size() == 1;
            QCOMPARE(alike, apart == 0.0);
            QCOMPARE(view->isColumnHidden(squadDrawn), alike);
            QCOMPARE(!drawn->isHidden(), alike);
            QCOMPARE(drawn->text().contains(*figures.begin()), alike);
            for (const SquadForestRow& row : page.chart().data().rows)
                QCOMPARE(row.drawn.has_value(), !alike);
            QCOMPARE(page.chart().figures().headings.contains(u"Drawn to all"_s), !alike);
            // All have a smallest change as each has, and its grey.
            QVERIFY(page.chart().data().all->smallest.has_value());
        }
        const auto file = log.folder.path("squad.pdf");
        page.writePdfTo(file);
        const QString paper = run(u"pdftotext"_s, {QString::fromStdString(file.string()), u"-"_s});
        QCOMPARE(flat(paper).count(u"every athlete comes to the mean of all"_s),
                 apart == 0.0 ? 2 : 0);
        QCOMPARE(flat(paper).contains(u"the same drawn to all"_s), apart != 0.0);
    }
}

/// Hollow dot and hollow diamond, as large in the key as in the rows, at every size of text.
void TestTrustPages::theKeysMarksAreToldApart() {
    SquadForest data;
    data.rows = {{.change = 0.1, .drawn = 0.0, .hollow = true}};
    const look::Ground ground = look::paperGround();
    for (const double text : {7.5, 14.0}) {
        constexpr double scale = 16;
        int found = 0;
        for (const charts::KeyEntry& entry : squadForestKey(data, ground, text)) {
            QImage image(
                QSize(static_cast<int>(4 * text * scale), static_cast<int>(2 * text * scale)),
                QImage::Format_RGB32);
            image.fill(ground.paper);
            QPainter painter(&image);
            painter.scale(scale, scale);
            entry.sample(painter, QRectF(0, 0, 4 * text, 2 * text));
            painter.end();
            const auto inked = [&](double right, double down) {
                return image
                           .pixelColor(QPointF((2 * text + right * text) * scale,
                                               (text + down * text) * scale)
                                           .toPoint())
                           .lightness() < 128;
            };
            const double slant = dotReach / std::numbers::sqrt2;
            if (entry.text == u"extrapolated"_s) {
                ++found;
                QVERIFY(inked(slant, slant) && inked(0, dotReach) && !inked(0, drawnReach + 0.05));
                QVERIFY(!inked(0, 0)); // hollow
            } else if (entry.text == u"the same drawn to all"_s) {
                ++found;
                QVERIFY(inked(0, drawnReach) && inked(drawnReach / 2, drawnReach / 2));
                QVERIFY(!inked(slant + 0.03, slant + 0.03) && !inked(0, 0));
            }
        }
        QCOMPARE(found, 2);
    }
}

void TestTrustPages::theSquadOnPaper() {
    Boathouse log;
    SquadPage page(log.book);
    page.setAthleteAndLift({}, log.lift);
    QTRY_VERIFY(!page.working());
    const auto file = log.folder.path("squad.pdf");
    page.writePdfTo(file);
    QVERIFY(std::filesystem::file_size(file) > 5000);
    QVERIFY_THROWS_EXCEPTION(LogError, page.writePdfTo(log.folder.path("none/squad.pdf")));
    if (QStandardPaths::findExecutable(u"pdftotext"_s).isEmpty())
        QSKIP("PDFTOTEXT IS NOT INSTALLED: the page is not read back (poppler-utils)");
    QProcess reader;
    reader.start(u"pdftotext"_s, {u"-layout"_s, QString::fromStdString(file.string()), u"-"_s});
    QVERIFY(reader.waitForFinished());
    const QString paper = QString::fromUtf8(reader.readAllStandardOutput());
    for (const auto& part : {u"Squad: Bench pull"_s, u"Lane 2"_s, u"better"_s, u"Estimated 1RM"_s,
                             u"60 kg"_s, u"stands"_s, u"page 1 of"_s, u"All (8)"_s,
                             u"Drawn to all"_s, u"Mean change of 8 athletes"_s, u"3 sessions"_s,
                             u"mean of all"_s, u"the same drawn to all"_s})
        QVERIFY2(paper.contains(part), qPrintable(part + u" is not on the page"_s));
}

void TestTrustPages::aSquadOfFortyIsStoppedWithNothingHalfDone() {
    Boathouse log;
    for (int i = 9; i < 40; ++i) {
        const AthleteId athlete = log.book.addAthlete({.name = "Lane " + std::to_string(i + 1)});
        log.book.setCheckLoads(athlete, log.lift, {Mass{60'000}});
        log.ladder(athlete, day(2025, 10, 1), 1.5);
        log.ladder(athlete, day(2026, 1, 20), 1.51);
    }
    SquadPage page(log.book);
    page.paceWork([] { std::this_thread::sleep_for(std::chrono::milliseconds(20)); });
    page.resize(1000, 700);
    page.show();
    QVERIFY(QTest::qWaitForWindowExposed(&page));
    page.setAthleteAndLift({}, log.lift);
    QVERIFY(page.working());
    // Nobody is said to be missing before it is known.
    QCOMPARE(page.chart().data().empty, u"Still at work"_s);
    auto* progress = page.findChild<QProgressBar*>();
    auto* stop = page.findChild<QPushButton*>(u"stop"_s);
    QVERIFY(progress->isVisible() && stop->isVisible() && stop->isEnabled());
    // The window is alive meanwhile, and progress is seen.
    int beats = 0;
    QTimer heart;
    connect(&heart, &QTimer::timeout, this, [&beats] { ++beats; });
    heart.start(5);
    QTRY_VERIFY(progress->value() > 0 && beats > 10);
    QVERIFY(page.working());
    QVERIFY(!page.canPrint());
    QTest::mouseClick(stop, Qt::LeftButton);
    QTRY_VERIFY(!page.working());
    // Nothing half done: no rows, no chart, nothing to print, and the page says why.
    QVERIFY(!stop->isVisible());
    QVERIFY(!page.squad());
    QCOMPARE(page.table().rowCount(), 0);
    QVERIFY(page.chart().data().rows.empty());
    QCOMPARE(page.chart().data().empty, u"Nothing compared"_s);
    QVERIFY(!page.canPrint());
    bool told = false;
    for (const auto* label : page.findChildren<QLabel*>())
        told = told || (label->isVisible() && label->text().startsWith(u"Stopped"_s));
    QVERIFY(told);
    for (const auto* button : page.findChildren<QPushButton*>())
        if (button->text().contains(u"DF"_s) || button->text().startsWith(u"&Print"_s))
            QVERIFY2(!button->isEnabled(), qPrintable(button->text()));
    // A new start completes.
    page.paceWork({});
    page.refresh(Logbook::What::Everything, {});
    QTRY_VERIFY(!page.working());
    QVERIFY(page.canPrint());
    QCOMPARE(page.squad()->parts[0].rows.size(), std::size_t(39)); // one was never tested
}

void TestTrustPages::theSeasonOnPaper_data() {
    QTest::addColumn<bool>("letter");
    QTest::newRow("on A4") << false;
    QTest::newRow("on Letter") << true;
}

void TestTrustPages::theSeasonOnPaper() {
    QFETCH(bool, letter);
    Boathouse log;
    QStringList days;
    for (unsigned i = 1; i <= 28; ++i) { // more than one page holds
        log.ladder(log.athletes[0], day(2025, 3, i), 1.5 + 0.002 * i);
        days << dateText(day(2025, 3, i));
    }
    SeasonPage page(log.book);
    QVERIFY(!page.canPrint());
    page.setAthleteAndLift(log.athletes[0], log.lift);
    QVERIFY(page.canPrint());
    const auto file = log.folder.path("season.pdf");
    page.writePdfTo({file, slopebook::log::Existing::Replace},
                    letter ? QPageSize::Letter : QPageSize::A4);
    QVERIFY_THROWS_EXCEPTION(LogError,
                             page.writePdfTo(log.folder.path("none/a.pdf"), QPageSize::A4));
    if (QStandardPaths::findExecutable(u"pdftotext"_s).isEmpty())
        QSKIP("PDFTOTEXT IS NOT INSTALLED: the page is not read back (poppler-utils)");
    QProcess reader;
    reader.start(u"pdftotext"_s, {u"-layout"_s, QString::fromStdString(file.string()), u"-"_s});
    QVERIFY(reader.waitForFinished());
    QString paper = QString::fromUtf8(reader.readAllStandardOutput());
    paper.replace(QChar(QChar::Nbsp), u' ');
    QVERIFY2(paper.count(u'\f') >= 2, qPrintable(QString::number(paper.count(u'\f'))));
    // A season is read against its first block.
    const auto season =
        seasonOf(log.book.log(), background(log.book.log(), log.athletes[0], log.lift),
                 Mass{60'000}, Baseline{log.book.log().blocks().front().id});
    QVERIFY(season);
    QString latest = signedRangeText(season->follow.sessions.back().change->read.interval, 3);
    latest.replace(QChar(QChar::Nbsp), u' ');
    for (const QString& part : {u"Season: Lane 1, Bench pull"_s, u"At 60 kg"_s, u"Flood"_s,
                                u"baseline"_s, u"m/s per week"_s, u"m/s per month"_s, latest,
                                u"Estimated 1RM"_s, u"not clearance to lift"_s, u"page 1 of"_s})
        QVERIFY2(paper.contains(part), qPrintable(part + u" is not on the page"_s));
    for (QString one : days)
        QVERIFY2(paper.contains(one.replace(QChar(QChar::Nbsp), u' ')), qPrintable(one));
    page.setAthleteAndLift(log.athletes[8], log.lift);
    QVERIFY(!page.canPrint()); // nothing of the athlete before is left to print
}

void TestTrustPages::theSeasonsTrendHasItsUnits() {
    Boathouse log;
    const auto follow = followOf(log.book.log(), log.athletes[0], log.lift, Mass{60'000});
    QVERIFY(follow && follow->trend);
    const QString said = ui::said(answers::trendWords(*follow, 0.95));
    QVERIFY2(said.contains(signedNumber(follow->trend->perWeek, 3) + u" m/s per week"_s),
             qPrintable(said));
    // A month is 365.25 / 12 days, a week 7.
    QVERIFY2(
        said.contains(signedNumber(follow->trend->perWeek * 365.25 / 84, 3) + u" m/s per month"_s),
        qPrintable(said));
}

void TestTrustPages::theSquadWithoutAnybody() {
    Boathouse log;
    const LiftId other = log.book.addLift({.name = "Front squat"});
    SquadPage page(log.book);
    page.setAthleteAndLift({}, other);
    QTRY_VERIFY(!page.working());
    QVERIFY(!page.canPrint());
    QCOMPARE(page.table().rowCount(), 0);
    page.setAthleteAndLift({}, {});
    QTRY_VERIFY(!page.working());
    QVERIFY(!page.canPrint());
}

void TestTrustPages::noiseByLiftDeviceAndLoad() {
    Boathouse log;
    NoisePage page(log.book);
    page.setAthleteAndLift(log.athletes[0], log.lift);
    const TextTable& table = page.noise().noise();
    const auto noise = noiseOf(liftContext(log.book.log(), log.lift), log.left);
    QVERIFY(noise && noise->used.size() == 3);
    QCOMPARE(cell(table, 0, 1), u"Left encoder"_s);
    // The noise of whole lines is seen without scrolling: first of its rows. What is in use is said
    // once, above the table: it need not be that of all.
    QCOMPARE(cell(table, 0, 3), u"whole line, from day to day"_s);
    int all = 0; // where everybody's begins, under the athlete's own
    while (all < table.rowCount() && cell(table, all, 2) != u"all athletes"_s)
        ++all;
    QCOMPARE(cell(table, all, 3), u"whole line, from day to day"_s);
    QCOMPARE(cell(table, all + 1, 3), u"40\u00a0kg"_s);
    QCOMPARE(cell(table, all + 1, 5), number(noise->atLoads[0].error.value, 4));
    const QString inUse = page.findChild<QLabel*>(u"inUse"_s)->text();
    QVERIFY2(inUse.contains(u"Lane 1"_s) && inUse.contains(u"Left encoder"_s), qPrintable(inUse));
    QVERIFY2(inUse.contains(cell(table, 0, 5).left(4)), qPrintable(inUse));
    QVERIFY(column(table, 3).contains(u"estimated 1RM"_s));
    QVERIFY(!column(table, 3).contains(u"in use"_s));
    QVERIFY(column(table, 10).contains(u"this log's"_s, Qt::CaseInsensitive));
    QCOMPARE(page.noise().repeats().rowCount(), 3);
    QCOMPARE(cell(page.noise().repeats(), 0, 5), u"2"_s); // days between
}

/// Of each lift and of all its devices; without an athlete, or one without repeats, nothing is own.
void TestTrustPages::ownNoiseComesFirst() {
    std::vector<NoiseGroup> groups;
    const auto add = [&](const char* lift, const char* device, const char* athlete) {
        groups.push_back({.lift = {.name = lift}, .deviceName = device, .athlete = athlete});
        groups.back().device = DeviceId{*device};
        groups.back().noise = NoAnswer{NoAnswer::Why::TooFewSessions, asIs(std::string("few"))};
    };
    for (const char* lift : {"Bench pull", "Back squat"})
        for (const char* device : {"Left", "Right"}) {
            add(lift, device, "");
            add(lift, device, "Lane 1");
        }
    add("Front squat", "Left", "");
    QStringList heads;
    for (const TextTable::Row& row : noiseRows(groups, LoadUnit::Kilograms))
        if (row.strong)
            heads << row.cells.mid(0, 3).join(u", "_s);
    QCOMPARE(heads,
             (QStringList{u"Bench pull, Left, Lane 1"_s, u"Bench pull, Right, Lane 1"_s,
                          u"Bench pull, Left, all athletes"_s, u"Bench pull, Right, all athletes"_s,
                          u"Back squat, Left, Lane 1"_s, u"Back squat, Right, Lane 1"_s,
                          u"Back squat, Left, all athletes"_s, u"Back squat, Right, all athletes"_s,
                          u"Front squat, Left, all athletes"_s}));
    Boathouse log;
    for (const int athlete : {0, 5}) { // with repeat tests, and without
        NoisePage page(log.book);
        page.setAthleteAndLift(log.athletes[static_cast<std::size_t>(athlete)], log.lift);
        const TextTable& table = page.noise().noise();
        bool others = false;
        for (int row = 0; row < table.rowCount(); ++row) {
            const bool all = cell(table, row, 2) == u"all athletes"_s;
            QVERIFY(all || !others);
            others = others || all;
        }
        QCOMPARE(cell(table, 0, 2), athlete == 0 ? u"Lane 1"_s : u"all athletes"_s);
    }
}

void TestTrustPages::noiseThatIsPublished() {
    Boathouse log;
    log.book.addLift({.name = "Back squat"});
    NoisePage page(log.book);
    page.setAthleteAndLift({}, log.lift);
    page.noise().findChild<QCheckBox*>()->setChecked(true); // every lift
    const TextTable& table = page.noise().noise();
    QVERIFY(column(table, 0).contains(u"Back squat"_s));
    QVERIFY(column(table, 3).contains(u"no noise of its own"_s));
    QVERIFY(column(table, 10).contains(u"published, not yours"_s, Qt::CaseInsensitive));
}

void TestTrustPages::agreementOfTwoDevices() {
    Boathouse log;
    NoisePage page(log.book);
    page.setAthleteAndLift({}, log.lift);
    const auto study = agreementOf(log.book.log(), log.lift, log.left, log.right);
    QVERIFY(study);
    QCOMPARE(study->figures.n, 5);
    // By hand: 0.03 less the mean wobble of 0.0004.
    QVERIFY(std::abs(study->figures.bias - 0.0296) < 1e-12);
    const AgreementData& shown = page.agreement().chart().data();
    QCOMPARE(shown.bias, study->figures.bias);
    QCOMPARE(shown.sets.size(), std::size_t(5));
    QCOMPARE(page.agreement().sets().rowCount(), 5);
    QVERIFY(column(page.agreement().figures(), 0).contains(u"least products"_s));
    QVERIFY(page.agreement().sentence().contains(u"Left encoder reads 0.030 m/s more"_s));
    // A lift that two devices never saw together.
    const LiftId other = log.book.addLift({.name = "Front squat"});
    page.setAthleteAndLift({}, other);
    QVERIFY(page.agreement().chart().data().sets.empty());
    QVERIFY(page.agreement().sentence().contains(u"two devices at once"_s));
}

void TestTrustPages::comparisonsTakeTheBiasOff() {
    Boathouse log;
    const SessionId later =
        log.ladderOf({.athlete = log.athletes[0], .date = day(2026, 3, 3)}, log.right, 1.5, {});
    const auto c = comparisonOf(log.book.log(), log.athletes[0], log.lift, log.firsts[0], later);
    QVERIFY(c && c->settings.deviceBias);
    QVERIFY(std::abs(c->settings.deviceBias->first + 0.0296) < 1e-12);
    QCOMPARE(c->settings.deviceBias->second.df, 4.0);
    QVERIFY(std::abs(answers::changeAt(*c, Mass{60'000}).read.change - 0.0296) < 1e-12);
    bool told = false;
    for (const auto& note : c->notes)
        told = told || english(note.words).find("5 sets of 1 athlete") != std::string::npos;
    QVERIFY(told);
    // Followed through the season, each device has its own correction.
    const auto follow = followOf(log.book.log(), log.athletes[0], log.lift, Mass{60'000});
    QVERIFY(follow->sessions.back().bias && !follow->sessions.front().bias);
    SeasonPage page(log.book);
    page.setAthleteAndLift(log.athletes[0], log.lift);
    QVERIFY(page.chart().data().points.back().corrected);
}

void TestTrustPages::noStudyNoCorrection() {
    Boathouse log;
    const DeviceId third = log.book.addDevice({.name = "Camera"});
    const SessionId later =
        log.ladderOf({.athlete = log.athletes[0], .date = day(2026, 3, 3)}, third, 1.5, {});
    const auto c = comparisonOf(log.book.log(), log.athletes[0], log.lift, log.firsts[0], later);
    QVERIFY(c && !c->settings.deviceBias);
    bool warned = false;
    for (const auto& note : c->notes)
        warned = warned || note.kind == answers::Note::Kind::DifferentDevices;
    QVERIFY(warned);
    QVERIFY(!agreementOf(log.book.log(), log.lift, log.left, third));
}

// Days on which both devices saw each set, each with its own difference: whatever two sessions are
// compared, what is taken off is the mean difference of the other days' sets, or nothing.
void TestTrustPages::aBiasNeverComesFromWhatItCorrects() {
    using answers::Note;
    Boathouse log;
    struct Twin {
        SessionId left, right;
        double difference; ///< mean, left - right
    };
    std::vector<Twin> twins;
    const auto first = log.sessionsOf(3);
    twins.push_back(
        {first[0].session, first[1].session, 0.0296}); // by hand: see agreementOfTwoDevices
    const auto check = [&](const Twin& from, SessionId a, SessionId b, bool sameSets) {
        double sum = 0;
        int days = 0;
        for (const Twin& twin : twins)
            if (twin.left != a && twin.right != a && twin.left != b && twin.right != b) {
                sum += twin.difference;
                ++days;
            }
        Q_UNUSED(from);
        const auto c = comparisonOf(log.book.log(), log.athletes[3], log.lift, a, b);
        QVERIFY(c);
        const auto said = [&](Note::Kind kind) {
            return std::ranges::any_of(c->notes, [&](const Note& n) { return n.kind == kind; });
        };
        QCOMPARE(c->settings.deviceBias.has_value(), days > 0);
        QCOMPARE(said(Note::Kind::DeviceCorrected), days > 0);
        QCOMPARE(said(Note::Kind::NoStudyBeside), days == 0);
        if (days > 0) // five sets a day: the mean of the days is that of the sets
            QVERIFY(std::abs(c->settings.deviceBias->first + sum / days) < 1e-12);
        else
            for (const Note& note : c->notes)
                if (note.kind == Note::Kind::NoStudyBeside) {
                    const QString told = ui::said(note.words, LoadUnit::Kilograms);
                    QVERIFY(told.contains(u"nothing is taken off"_s));
                    QCOMPARE(told.contains(u"these same sets"_s), sameSets);
                }
        // Along the season it is the same rule.
        const auto follow = followOf(log.book.log(), log.athletes[3], log.lift, Mass{60'000}, a);
        QVERIFY(follow);
        for (const auto& each : follow->sessions)
            if (each.session.session == b) {
                QCOMPARE(each.bias.has_value(), days > 0);
                if (each.bias)
                    QVERIFY(std::abs(*each.bias - c->settings.deviceBias->first) < 1e-12);
            }
    };
    for (int round = 0; round < 3; ++round) {
        for (const Twin& one : twins)
            for (const Twin& other : twins) {
                check(one, one.left, other.right, one.left == other.left);
                if (QTest::currentTestFailed())
                    return;
            }
        SessionHead head{.athlete = log.athletes[3], .date = day(2026, 3, unsigned(5 + round))};
        Twin next{log.ladderOf(head, log.left, 1.55 + 0.01 * round, {}), {}, 0.01 * (round - 1)};
        head.ordinal = 2;
        next.right = log.ladderOf(head, log.right, 1.55 + 0.01 * round - next.difference, {});
        twins.push_back(next);
    }
}

// The 1RM row, the speeds beside each load, the page, the CSV: what stands before and after differs
// by what is called the change.
void TestTrustPages::columnsAndChangeAgree() {
    Boathouse log;
    unsigned month = 2;
    for (const double v0 : {1.40, 1.50, 1.56}) {
        ++month;
        const SessionId later = log.ladderOf(
            {.athlete = log.athletes[0], .date = day(2026, month, 3)}, log.right, v0, {});
        const auto c =
            comparisonOf(log.book.log(), log.athletes[0], log.lift, log.firsts[0], later);
        QVERIFY(c && c->settings.deviceBias && c->oneRm);
        const double change = c->to.oneRm->estimate - c->from.oneRm->estimate;
        QVERIFY(std::abs(change - c->oneRm->estimate) < 1e-9);
        QVERIFY(std::abs(change - c->oneRm->read.change) < 1e-9);
        for (const auto& at : c->at) {
            const double kg = kilograms(at.load);
            QVERIFY(std::abs(c->to.line.at(kg) - c->from.line.at(kg) - at.read.change) < 1e-12);
            if (at.seenFrom && at.seenTo) // both ladders wobble alike about their lines
                QVERIFY(std::abs(*at.seenTo - *at.seenFrom - at.read.change) < 1e-9);
        }
        const auto rows = page::oneRmRows(*c, LoadUnit::Kilograms);
        QVERIFY2(rows[0].label.contains(u"taken off"_s), qPrintable(rows[0].label));
        QCOMPARE(rows[0].from, number(c->from.oneRm->estimate, 1));
        QCOMPARE(rows[0].to, number(c->from.oneRm->estimate + c->oneRm->estimate, 1));
    }
}

void TestTrustPages::chartsArePaintedEmptyAndDark() {
    QImage image(600, 400, QImage::Format_ARGB32_Premultiplied);
    QPainter painter(&image);
    QPalette dark;
    dark.setColor(QPalette::Base, QColor(0x20, 0x20, 0x20));
    dark.setColor(QPalette::Text, Qt::white);
    const look::Ground ground = look::screenGround(dark);
    const QRectF whole(image.rect());
    const auto inked = [&] {
        int count = 0;
        for (int y = 0; y < image.height(); y += 3)
            for (int x = 0; x < image.width(); x += 3)
                count += image.pixelColor(x, y).lightness() > 120;
        return count;
    };
    image.fill(ground.paper);
    paintSeason(painter, whole, {}, ground, 12);
    paintSquadForest(painter, whole, {}, ground, 12);
    paintAgreement(painter, whole, {}, ground, 12);
    QVERIFY(inked() > 0);
    // One session alone, and an athlete whose change is endless: no warning of a NaN.
    SeasonPoint point{.day = 20000, .seen = {0.9}, .line = 0.9, .oneRm = 100};
    paintSeason(painter, whole, {.points = {point}, .baseline = 0}, ground, 12,
                SeasonItem{SeasonItem::Kind::Session, 0});
    const SquadForest forest{
        .rows = {{.name = u"Lane 1"_s,
                  .change = 0.1,
                  .interval = {-std::numeric_limits<double>::infinity(), 0.3}}},
        .scale = {.from = -1, .to = 1, .step = 0.5}};
    paintSquadForest(painter, whole, forest, ground, 12, 0);
    const int before = inked();
    QVERIFY(before > 50);
}

QTEST_MAIN(TestTrustPages)
#include "tst_trustpages.moc"

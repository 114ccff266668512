// SPDX-License-Identifier: GPL-3.0-or-later
// The window in German where something goes wrong: what core says is German there, to the last
// word, with the names, lines and figures in it.
#include "core/model/phrases.h"
#include "tests/log/builders.h"
#include "tests/log/rawfile.h"
#include "tests/support/disk.h"
#include "ui/floor/entry/entrypage.h"
#include "ui/importing/importcsv.h"
#include "ui/importing/tabledialog.h"
#include "ui/window/language.h"
#include "ui/window/mainwindow.h"
#include "ui/window/messagebar.h"
#include "ui/window/welcomepage.h"
#include "ui/window/workspace.h"
#include "ui/words/said.h"

#include <QLabel>
#include <QLineEdit>
#include <QRegularExpression>
#include <QSignalSpy>
#include <QTableView>
#include <QTest>
#include <QTranslator>
#include <QUndoStack>

#include <cerrno>
#include <fstream>
#include <memory>

using namespace slopebook;
using namespace slopebook::test;
using namespace slopebook::ui;
using namespace Qt::Literals::StringLiterals;

namespace {

constexpr Date today = day(2026, 3, 14);

/// Words of English sentences that no German one has.
QString englishIn(const QString& text) {
    static const QRegularExpression words(
        u"\\b([Tt]he|[Tt]hat|[Tt]here|[Tt]his|[Nn]othing|is|are|were|not|no|cannot|could|expected|"
        u"found|of|and|or|with|has|have|as|line|column|written|changed|above|under|such)\\b"_s);
    return words.match(text).captured();
}

QString all(const QTableView& table) {
    QStringList cells;
    for (int row = 0; row < table.model()->rowCount(); ++row)
        for (int column = 0; column < table.model()->columnCount(); ++column)
            cells << table.model()->index(row, column).data().toString();
    return cells.join(u'\n');
}

} // namespace

#define VERIFY_GERMAN(text)                                                                        \
    do {                                                                                           \
        const QString shown_ = (text);                                                             \
        QVERIFY(!shown_.isEmpty());                                                                \
        QVERIFY2(englishIn(shown_).isEmpty(),                                                      \
                 qPrintable(englishIn(shown_) + QStringLiteral(" in: ") + shown_));                \
    } while (false)

class TestGerman : public QObject {
    Q_OBJECT

    Folder m_folder;
    int m_files = 0;
    std::unique_ptr<Translation> m_german;

    std::filesystem::path newPath(const char* ending) {
        return m_folder.path(("file" + std::to_string(++m_files) + ending).c_str());
    }
    std::filesystem::path newSeason(Season* season = nullptr) {
        const auto path = newPath(".slopebook");
        log::Log log = log::Log::create(path);
        const Season made = fillSeason(log);
        if (season)
            *season = made;
        return path;
    }
    static Surroundings surroundings() {
        Surroundings s;
        s.settings.language = u"de"_s;
        s.clock = [] { return today; };
        return s;
    }
    /// What the window says on opening the file: in the bar above an open log, or on the first
    /// page.
    static QString saidOnOpening(const std::filesystem::path& file) {
        MainWindow window(surroundings());
        window.openLogFile(QString::fromStdString(file.string()));
        return window.workspace() ? window.workspace()->bar().text() : window.welcome().problem();
    }
    struct Entry {
        std::unique_ptr<Logbook> book;
        std::unique_ptr<EntryPage> page;
        QString say(const QString& typed) const {
            auto* line = page->findChild<QLineEdit*>(u"setLine"_s);
            line->clear();
            QTest::keyClicks(line, typed);
            QTest::keyClick(line, Qt::Key_Return);
            return page->findChild<QLabel*>(u"setAnswer"_s)->text();
        }
    };
    static Entry entryOn(const std::filesystem::path& path, const Season& season,
                         log::Access access = log::Access::ReadWrite) {
        Entry entry{std::make_unique<Logbook>(log::Log::open(path, access)), nullptr};
        entry.page = std::make_unique<EntryPage>(*entry.book, [] { return today; });
        entry.page->setAthleteAndLift(season.lane3, season.pull);
        entry.page->resize(1200, 600);
        entry.page->show();
        return entry;
    }
    std::filesystem::path csv(const std::string& text) {
        const auto path = newPath(".csv");
        std::ofstream(path, std::ios::binary) << text;
        return path;
    }

private Q_SLOTS:
    void initTestCase() { m_german = std::make_unique<Translation>(u"de"_s); }

    /// A phrase that core can say and that the German file does not hold shows as English.
    void everyPhraseOfCoreIsTranslated() {
        QTranslator german;
        QVERIFY(german.load(u":/i18n/slopebook_de.qm"_s));
        int phrasesSeen = 0;
        for (const auto& list : phrases::lists)
            for (const std::string_view english : list) {
                const std::string text(english);
                const QString words = german.translate("Phrases", text.c_str());
                QVERIFY2(!words.isEmpty(), text.c_str());
                for (const auto* place : {"%1", "%2", "%3", "%4"})
                    QVERIFY2(words.contains(QLatin1String(place)) ==
                                 (text.find(place) != std::string::npos),
                             text.c_str());
                ++phrasesSeen;
            }
        QVERIFY(phrasesSeen > 400);
    }

    void partsAreSaidAsTheLanguageWritesThem() {
        const Words words = say("%1, as %2 says of the same set: a set has one load",
                                say("%1 kg", figure("72.5")), say("line %1", 7));
        QCOMPARE(said(words),
                 u"72,5 kg, wie Zeile 7 von demselben Satz sagt: Ein Satz hat eine Last"_s);
        QCOMPARE(said(say("the session of %1 on %2", "Lane %2", day(2026, 3, 14))),
                 u"die Einheit von Lane %2 am 14. März 2026"_s);
    }

    void refusedRowsOfATable() {
        Logbook book(log::Log::create(newPath(".slopebook")));
        ImportMaps maps;
        const auto path = csv("Datum;Name;Übung;Last;v1 (m/s);\n"
                              "14.3.2026;Ada;Rudern;40;1,12;\n"
                              "31.2.2026;Ada;Rudern;60;0,87;\n"
                              "14.3.2026;Ada;Rudern;schwer;0,87;\n"
                              "14.3.2026;Ada;Rudern;70;87;\n"
                              "14.3.2026;;Rudern;70;0,7;\n"
                              "14.3.2026;Ada;Rudern;70;0,7;;;zu viel\n");
        TableDialog dialog(book, {.file = path, .text = {}}, maps);
        dialog.show();
        QTRY_VERIFY2(dialog.summary().contains(u"abgelehnt"_s), qPrintable(dialog.summary()));
        VERIFY_GERMAN(dialog.summary());
        auto* refused = dialog.findChild<QTableView*>(u"refused"_s);
        QVERIFY(refused->model()->rowCount() >= 5);
        VERIFY_GERMAN(all(*refused));
        VERIFY_GERMAN(all(*dialog.findChild<QTableView*>(u"preview"_s)));
    }

    void aTidyFileThatCannotBeTaken_data() {
        QTest::addColumn<QByteArray>("rows");
        QTest::addColumn<QString>("says");
        QTest::newRow("a set of two loads") << QByteArray("2026-03-14,Ada,Pull,1,60,1,0.92\n"
                                                          "2026-03-14,Ada,Pull,1,62.5,2,0.9\n")
                                            << u"60 kg, wie Zeile 2"_s;
        QTest::newRow("a rep twice") << QByteArray("2026-03-14,Ada,Pull,1,60,1,0.92\n"
                                                   "2026-03-14,Ada,Pull,1,60,1,0.9\n")
                                     << u"0,92 m/s"_s;
        QTest::newRow("a speed too high")
            << QByteArray("2026-03-14,Ada,Pull,1,60,1,92\n") << u"Zeile 2, Spalte velocity"_s;
        QTest::newRow("a row too short")
            << QByteArray("2026-03-14,Ada,Pull,1,60,1\n") << u"6 Zellen"_s;
        QTest::newRow("a quote that never closes")
            << QByteArray("2026-03-14,\"Ada,Pull,1,60,1,0.9\n") << u"Anführungszeichen"_s;
    }
    void aTidyFileThatCannotBeTaken() {
        QFETCH(QByteArray, rows);
        QFETCH(QString, says);
        Logbook book(log::Log::create(newPath(".slopebook")));
        ImportDialog dialog(
            book, {csv("date,athlete,lift,set,load_kg,rep,velocity\n" + rows.toStdString())},
            nullptr);
        dialog.show();
        QTRY_VERIFY2(dialog.text().contains(says), qPrintable(dialog.text()));
        VERIFY_GERMAN(dialog.text());
    }

    void aDiskThatFailsWhileASetIsEntered_data() {
        QTest::addColumn<int>("call");
        QTest::addColumn<int>("error");
        QTest::addColumn<QString>("says");
        QTest::newRow("full") << int(Call::Write) << ENOSPC << u"kein Platz mehr"_s;
        QTest::newRow("failing") << int(Call::Write) << EIO << u"Datenträger"_s;
        QTest::newRow("a folder that takes nothing")
            << int(Call::Open) << EROFS << u"schreibgeschützt"_s;
        QTest::newRow("a folder without the right to it")
            << int(Call::Open) << EACCES << u"schreibgeschützt"_s;
    }
    void aDiskThatFailsWhileASetIsEntered() {
        QFETCH(int, call);
        QFETCH(int, error);
        QFETCH(QString, says);
        Season season;
        const auto path = newSeason(&season);
        Disk disk(path.parent_path());
        const Entry entry = entryOn(path, season);
        QVERIFY(!entry.say(u"60 0,92 0,90"_s).isEmpty());
        disk.fail({static_cast<Call>(call), 1, error, true});
        const QString told = entry.say(u"70 0,80 0,79"_s);
        QVERIFY(disk.failed());
        disk.heal();
        QVERIFY2(told.contains(says), qPrintable(told));
        VERIFY_GERMAN(told);
    }

    void aLogOpenForReadingOnly() {
        Season season;
        const auto path = newSeason(&season);
        const Entry entry = entryOn(path, season, log::Access::ReadOnly);
        const QString told = entry.say(u"70 0,80 0,79"_s);
        QVERIFY2(told.contains(u"nur zum Lesen"_s), qPrintable(told));
        VERIFY_GERMAN(told);
    }

    void anImplausibleValue() {
        Season season;
        const auto path = newSeason(&season);
        const Entry entry = entryOn(path, season);
        for (const QString& typed :
             {u"60 0,92 92"_s, u"60 9,5"_s, u"620 0,3"_s, u"60 schnell"_s, u"6000 0,5"_s, u"60"_s})
            VERIFY_GERMAN(entry.say(typed));
    }

    void aDamagedLog() {
        const auto path = newSeason();
        runSql(path, "UPDATE sets SET load_g = 61000 WHERE load_g = 60000 AND session = 1");
        VERIFY_GERMAN(saidOnOpening(path));
        const auto list = newSeason();
        runSql(list, "UPDATE athletes SET note = 'x'; UPDATE lifts SET note = 'x'; "
                     "UPDATE devices SET note = 'x'");
        VERIFY_GERMAN(saidOnOpening(list));
        for (const Words& finding : log::Log::open(list, log::Access::ReadOnly).check())
            VERIFY_GERMAN(said(finding));
    }

    void aLogOfANewerVersion() {
        const auto path = newSeason();
        runSql(path, "PRAGMA user_version = 99");
        const QString told = saidOnOpening(path);
        QVERIFY2(told.contains(u"99"_s), qPrintable(told));
        VERIFY_GERMAN(told);
    }

    void whatIsNoLogAndWhatIsNotThere() {
        VERIFY_GERMAN(saidOnOpening(csv(std::string(200, 'x'))));
        VERIFY_GERMAN(saidOnOpening(m_folder.path("keine.slopebook")));
        VERIFY_GERMAN(saidOnOpening(m_folder.path(".")));
    }

    void anEditOfWhatAnotherWindowChanged() {
        Season season;
        const auto path = newSeason(&season);
        Logbook book(log::Log::open(path));
        QSignalSpy failed(&book, &Logbook::failed);
        Athlete lane3 = book.log().athlete(season.lane3).value;
        lane3.note = "links";
        book.changeAthlete(season.lane3, lane3);
        {
            log::Log other = log::Log::open(path);
            lane3.note = "rechts";
            other.change(season.lane3, lane3);
        }
        book.undoStack()->undo();
        QCOMPARE(failed.size(), 1);
        VERIFY_GERMAN(failed[0][0].toString());
    }

    void whatIsStillInUseOrGone() {
        Season season;
        log::Log log = log::Log::open(newSeason(&season));
        const auto told = [](const auto& work) {
            try {
                work();
            } catch (const std::exception& error) {
                return said(error);
            }
            return QString();
        };
        VERIFY_GERMAN(told([&] { log.remove(season.lane3); }));
        VERIFY_GERMAN(told([&] { log.remove(season.pull); }));
        VERIFY_GERMAN(told([&] { log.change(AthleteId{4711}, Athlete{.name = "Bow"}); }));
        VERIFY_GERMAN(told([&] { log.add(Athlete{.name = " "}); }));
        VERIFY_GERMAN(told([&] { log.add(log.athlete(season.lane3).value); }));
        VERIFY_GERMAN(told([&] {
            log.add(Block{
                .name = "Winter", .first = day(2026, 3, 14), .last = day(2026, 3, 1), .note = {}});
        }));
        VERIFY_GERMAN(told([&] { validate(Equipment{.name = "Keller"}); }));
    }
};

QTEST_MAIN(TestGerman)
#include "tst_german.moc"

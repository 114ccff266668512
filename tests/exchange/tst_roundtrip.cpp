// SPDX-License-Identifier: GPL-3.0-or-later
// A whole log out as CSV and back: the log that comes back tells the same, whatever names and notes
// hold.
#include "core/exchange/csvreader.h"
#include "core/exchange/shapedimport.h"
#include "core/exchange/tidyexport.h"
#include "core/model/names.h"
#include "tests/exchange/csvfiles.h"
#include "tests/exchange/dicelog.h"
#include "tests/exchange/toldlog.h"

#include <QTest>

#include <algorithm>
#include <cstdio>
#include <map>
#include <random>
#include <rapidcheck.h>
#include <sstream>

using namespace slopebook;
using namespace slopebook::exchange;
using tests::CsvFiles;
using tests::Maker;
using tests::otherwise;
using tests::tell;

namespace {

std::vector<std::filesystem::path> csvOf(const std::vector<std::filesystem::path>& files) {
    std::vector<std::filesystem::path> csv;
    for (const auto& file : files)
        if (file.extension() == ".csv")
            csv.push_back(file);
    return csv;
}

/// How a spreadsheet program writes a table: its country's marks, and the unit of its owner.
struct Manner {
    Decimal decimal = Decimal::Point;
    DateOrder dates = DateOrder::YearMonthDay;
    MassUnit mass = MassUnit::Kilogram;
    SpeedUnit speed = SpeedUnit::MetresPerSecond;

    char delimiter() const { return decimal == Decimal::Comma ? ';' : ','; }
    std::string number(std::string digits) const {
        if (decimal == Decimal::Comma)
            std::ranges::replace(digits, '.', ',');
        return digits;
    }
    std::string day(const std::string& iso) const {
        const std::string year = iso.substr(0, 4), month = iso.substr(5, 2), day = iso.substr(8);
        switch (dates) {
        case DateOrder::DayMonthYear:
            return day + "." + month + "." + year;
        case DateOrder::MonthDayYear:
            return month + "/" + day + "/" + year;
        case DateOrder::YearMonthDay:
        default:
            break;
        }
        return iso;
    }
    /// A ten-thousandth of a pound is 0.05 g: the nearest whole gram is the one that was written.
    std::string load(const std::string& kg) const {
        if (kg.empty() || mass == MassUnit::Kilogram)
            return number(kg);
        char pounds[32];
        std::snprintf(pounds, sizeof pounds, "%.4f", std::stod(kg) * 1000.0 / gramsPerPound);
        return number(pounds);
    }
    /// Centimetres by moving the mark: a factor of 100 would round.
    std::string velocity(std::string digits) const {
        if (digits.empty() || speed == SpeedUnit::MetresPerSecond)
            return number(digits);
        const std::size_t mark = digits.find('.');
        std::string whole = digits.substr(0, mark);
        std::string rest = mark == std::string::npos ? "" : digits.substr(mark + 1);
        rest.resize(std::max<std::size_t>(rest.size(), 2), '0');
        whole += rest.substr(0, 2);
        return number(rest.size() > 2 ? whole + "." + rest.substr(2) : whole);
    }
    std::string cell(std::size_t column, const std::string& text) const {
        switch (column) {
        case TidyDate:
            return day(text);
        case TidyLoad:
        case TidyBodyMass:
            return load(text);
        case TidyVelocity:
            return velocity(text);
        default:
            return text;
        }
    }
};

const std::vector<Manner> manners{
    {.mass = MassUnit::Pound},
    {.dates = DateOrder::MonthDayYear, .mass = MassUnit::Pound},
    {.dates = DateOrder::DayMonthYear, .speed = SpeedUnit::CentimetresPerSecond},
    {.decimal = Decimal::Comma, .dates = DateOrder::DayMonthYear},
    {.decimal = Decimal::Comma, .dates = DateOrder::DayMonthYear, .mass = MassUnit::Pound},
    {.decimal = Decimal::Comma,
     .dates = DateOrder::DayMonthYear,
     .mass = MassUnit::Pound,
     .speed = SpeedUnit::CentimetresPerSecond},
};

std::string quoted(const std::string& text) {
    std::string cell = "\"";
    for (const char c : text)
        cell += c == '"' ? "\"\"" : std::string(1, c);
    return cell + '"';
}

/// The exported table of reps as that spreadsheet would save it.
std::string rewritten(const std::filesystem::path& reps, const Manner& manner) {
    std::string text;
    bool header = true;
    readCsv(reps, ',', [&](const CsvRow& row) {
        for (std::size_t i = 0; i < row.fields.size(); ++i) {
            if (i > 0)
                text += manner.delimiter();
            text += quoted(header ? row.fields[i] : manner.cell(i, row.fields[i]));
        }
        text += "\n";
        header = false;
    });
    return text;
}

/// What a coach says of such a table: which column is what and how it is written.
Shape shapeOf(const Manner& manner) {
    Shape shape;
    shape.layout.delimiter = manner.delimiter();
    shape.dates = manner.dates;
    shape.speed = manner.speed;
    shape.load = shape.bodyMass = manner.mass;
    for (std::size_t role = 0; role < TidyCount; ++role)
        if (role != TidyRepeatOf) // a session's link is not offered
            shape.columns[role] = {{.at = role,
                                    .decimal = isMeasure(static_cast<Tidy>(role))
                                                   ? std::optional(manner.decimal)
                                                   : std::nullopt}};
    return shape;
}

/// Empty where the log that went through such a spreadsheet tells the same as before.
std::string lostOnTheWay(unsigned seed, const Manner& manner) {
    const CsvFiles files;
    auto log = files.newLog();
    log.together([&] { Maker(seed).fill(log); });
    auto tables = csvOf(exportTables(log, files.path("out")));
    const auto reps = std::ranges::find(tables, files.path("out/reps.csv"));
    const Source source{.file = files.write("reps.csv", rewritten(*reps, manner)), .text = {}};
    tables.erase(reps);

    auto back = files.newLog("back.slopebook");
    importTidy(back, tables, {});
    const std::vector<std::string> headings(tidyColumns.begin(), tidyColumns.end());
    const ShapedReport report = importShaped(back, source, shapeOf(manner), headings, {});
    if (!report.refused.empty())
        return report.refused.front().what();
    if (!back.check().empty())
        return "check() finds something";
    return otherwise(tell(log), tell(back));
}

} // namespace

class TestRoundTrip : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void aLogComesBackEqual() {
        for (unsigned seed = 1; seed <= 15; ++seed) {
            const CsvFiles files;
            auto log = files.newLog();
            log.together([&] { Maker(seed).fill(log); });
            const auto written = exportTables(log, files.path("out"));
            QCOMPARE(written.size(), std::size_t(17));
            auto back = files.newLog("back.slopebook");
            const auto report = importTidy(back, csvOf(written), {});
            QVERIFY2(report.columnsNotUsed.empty(), qPrintable(QString::number(seed)));
            const std::string lost = otherwise(tell(log), tell(back));
            QVERIFY2(lost.empty(), ("seed " + std::to_string(seed) + lost).c_str());
            QVERIFY(back.check().empty());
        }
    }

    /// RC_PARAMS="max_success=10000" in the long run.
    void anyLogComesBackEqual() {
        QVERIFY(rc::check("export, then import: equal", [] {
            const auto seed = *rc::gen::arbitrary<unsigned>();
            const CsvFiles files;
            auto log = files.newLog();
            log.together([&] { Maker(seed).fill(log); });
            auto back = files.newLog("back.slopebook");
            importTidy(back, csvOf(exportTables(log, files.path("out"))), {});
            RC_ASSERT(otherwise(tell(log), tell(back)) == std::string());
            RC_ASSERT(back.check().empty());
        }));
    }

    /// German and English spreadsheets, kg and lb, m/s and cm/s: every way for each of 5 logs.
    void aLogComesBackThroughASpreadsheet() {
        for (unsigned seed = 1; seed <= 5; ++seed)
            for (std::size_t i = 0; i < manners.size(); ++i) {
                const std::string lost = lostOnTheWay(seed, manners[i]);
                QVERIFY2(lost.empty(), ("seed " + std::to_string(seed) + ", manner " +
                                        std::to_string(i) + "\n" + lost)
                                           .c_str());
            }
    }

    /// RC_PARAMS="max_success=10000" in the long run.
    void anyLogComesBackThroughAnySpreadsheet() {
        QVERIFY(rc::check("export, spreadsheet, import: equal", [] {
            const auto seed = *rc::gen::arbitrary<unsigned>();
            const Manner manner{
                .decimal = *rc::gen::element(Decimal::Point, Decimal::Comma),
                .dates = *rc::gen::element(DateOrder::YearMonthDay, DateOrder::DayMonthYear),
                .mass = *rc::gen::element(MassUnit::Kilogram, MassUnit::Pound),
                .speed =
                    *rc::gen::element(SpeedUnit::MetresPerSecond, SpeedUnit::CentimetresPerSecond)};
            RC_ASSERT(lostOnTheWay(seed, manner) == std::string());
        }));
    }

    void theSameTablesAgainAddNothing() {
        for (unsigned seed = 1; seed <= 5; ++seed) {
            const CsvFiles files;
            auto log = files.newLog();
            log.together([&] { Maker(seed).fill(log); });
            const std::string before = tell(log);
            const auto report = importTidy(log, csvOf(exportTables(log, files.path("out"))), {});
            QVERIFY2(report.addedNothing(), qPrintable(QString::number(seed)));
            QVERIFY(tell(log) == before);
        }
    }

    void writesTheWorkbookToo() {
        const CsvFiles files;
        auto log = files.newLog();
        log.together([&] { Maker(7).fill(log); });
        exportTables(log, files.path("out"));
        std::ifstream in(files.path("out") / "log.xlsx", std::ios::binary);
        char magic[2]{};
        in.read(magic, 2);
        QVERIFY(magic[0] == 'P' && magic[1] == 'K'); // a workbook is a zip archive
    }

    void anEmptyLogGivesEmptyTables() {
        const CsvFiles files;
        const auto log = files.newLog();
        auto back = files.newLog("back.slopebook");
        QVERIFY(importTidy(back, csvOf(exportTables(log, files.path("out"))), {}).addedNothing());
    }

    void neverWritesOverAFolder() {
        const CsvFiles files;
        const auto log = files.newLog();
        std::filesystem::create_directory(files.path("out"));
        std::filesystem::create_directory(files.path("mine"));
        files.write("mine/note.txt", "keep me");
        QVERIFY_THROWS_EXCEPTION(LogError, exportTables(log, files.path("mine")));
        QVERIFY(std::filesystem::exists(files.path("mine/note.txt")));
        QCOMPARE(exportTables(log, files.path("out")).size(), std::size_t(17)); // an empty one
        QVERIFY_THROWS_EXCEPTION(LogError, exportTables(log, files.path("out/athletes.csv")));
        QVERIFY_THROWS_EXCEPTION(LogError, exportTables(log, "/proc/none/here"));
        for (const auto& entry : std::filesystem::directory_iterator(files.path("")))
            QVERIFY(entry.path().string().find(".part") == std::string::npos);
    }
};

QTEST_APPLESS_MAIN(TestRoundTrip)
#include "tst_roundtrip.moc"

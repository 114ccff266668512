// SPDX-License-Identifier: GPL-3.0-or-later
// A whole log out as CSV and back: the log that comes back tells the same, whatever names and notes
// hold.
#include "core/exchange/csvreader.h"
#include "core/exchange/shapedimport.h"
#include "core/exchange/tidyexport.h"
#include "core/model/names.h"
#include "tests/exchange/csvfiles.h"

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

namespace {

// A log made at random, from a fixed seed.
class Maker {
public:
    explicit Maker(unsigned seed) : m_engine(seed) {}

    void fill(log::Log& log) {
        std::vector<DeviceId> devices;
        for (int i = 0; i < 2; ++i)
            devices.push_back(log.add(Device{.name = name("device", i), .note = text()}));
        std::vector<LiftId> lifts;
        for (int i = 0; i < 3; ++i)
            lifts.push_back(log.add(lift(i)));
        for (int i = 0; i < 3; ++i)
            block(log, i);
        for (int i = 0; i < 3; ++i) {
            const AthleteId athlete = log.add(Athlete{.name = name("athlete", i), .note = text()});
            log.setCheckLoads(athlete, lifts[0], {Mass{below(400) * 500}});
            sessions(log, athlete, devices, lifts);
        }
    }

private:
    int below(int n) { return std::uniform_int_distribution<int>(0, n - 1)(m_engine); }
    bool chance(int oneIn) { return below(oneIn) == 0; }
    double real(double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(m_engine);
    }
    Date day() {
        return Date{std::chrono::sys_days{std::chrono::year{2025} / 1 / 1} +
                    std::chrono::days{below(40)}};
    }

    std::string text() {
        static const std::vector<std::string> awkward{"",           "missed the groove",
                                                      "=1+1",       "+49 170",
                                                      "-5",         "@x",
                                                      "\t=1",       "'=1",
                                                      "''+x",       "a, b",
                                                      "say \"go\"", " blank ",
                                                      "two\nlines", "CR\r\nLF",
                                                      "\rCR first", "\xC3\xA4\xE2\x82\xAC",
                                                      "; ;",        "#1",
                                                      "'",          "\"",
                                                      "1,5",        "TRUE",
                                                      "nan",        "  =2"};
        return awkward[static_cast<std::size_t>(below(static_cast<int>(awkward.size())))];
    }
    // Names are told apart by a number; some are near enough to be asked about, were they not
    // listed as two.
    std::string name(const std::string& kind, int i) {
        if (i == 2)
            return kind == "athlete" ? "Jose" : *tidyName(text() + "x");
        return i == 1 && kind == "athlete" ? "Jos\xC3\xA9"
                                           : *tidyName(text() + kind + std::to_string(i));
    }

    Lift lift(int i) {
        Lift made;
        made.name = name("lift", i);
        made.kind = static_cast<VelocityKind>(below(3));
        made.rule = chance(2) ? PointRule::Mean : PointRule::Fastest;
        made.ballistic = chance(4);
        if (chance(2))
            made.mvt = Mvt{.value = real(0.1, 0.6),
                           .sd = chance(2) ? std::optional(real(0, 0.1)) : std::nullopt,
                           .origin = chance(2) ? Mvt::Origin::Coach : Mvt::Origin::Published,
                           .source = text()};
        if (chance(2))
            made.smallestVelocity = real(0.01, 0.1);
        if (chance(2))
            made.smallestOneRm = real(1, 5);
        made.note = text();
        return made;
    }

    // Blocks may share a name, overlap, and leave days free.
    void block(log::Log& log, int i) {
        const Date first{std::chrono::sys_days{std::chrono::year{2025} / 1 / 1} +
                         std::chrono::days{10 * i}};
        log.add(Block{.name = chance(2) ? "Winter" : *tidyName(text() + "block"),
                      .first = first,
                      .last = Date{std::chrono::sys_days{first} + std::chrono::days{below(20)}},
                      .ceiling = chance(2) ? std::optional(Mass{62'500}) : std::nullopt,
                      .note = text()});
    }

    void sessions(log::Log& log, AthleteId athlete, const std::vector<DeviceId>& devices,
                  const std::vector<LiftId>& lifts) {
        std::map<Date, int> ofDay;
        std::vector<SessionId> made;
        for (int i = below(5); i > 0; --i) {
            SessionHead head;
            head.athlete = athlete;
            head.date = day();
            head.ordinal = ++ofDay[head.date];
            if (chance(2))
                head.bodyMass = Mass{50'000 + below(60'000)};
            if (!made.empty() && chance(3))
                head.repeatOf = made.back();
            head.note = text();
            made.push_back(log.add(head));
            sets(log, made.back(), lifts);
            for (const LiftId lift : lifts)
                if (chance(2))
                    log.setConditions(made.back(), lift, conditions(devices));
        }
    }

    Conditions conditions(const std::vector<DeviceId>& devices) {
        Conditions made;
        if (chance(2))
            made.device = devices[static_cast<std::size_t>(below(2))];
        for (std::string* each :
             {&made.place, &made.surface, &made.footwear, &made.technique, &made.notComparable})
            if (chance(2))
                *each = text();
        return made;
    }

    void sets(log::Log& log, SessionId session, const std::vector<LiftId>& lifts) {
        std::vector<SetId> made;
        for (int i = below(6); i > 0; --i) {
            Set set;
            set.load = Mass{below(200'000)};
            set.trueMaximum = chance(6);
            set.excluded = chance(5) ? text() : "";
            set.note = chance(3) ? text() : "";
            if (chance(3))
                set.effort = Effort{2 + below(19)};
            if (chance(6)) {
                set.outcome = Outcome::NotLifted;
                set.reason = chance(2) ? text() : "";
            }
            for (int r = below(4); r > 0 && set.outcome == Outcome::Lifted; --r)
                set.reps.push_back({real(0.01, 9.99), chance(4) ? text() : ""});
            made.push_back(log.add(session, lifts[static_cast<std::size_t>(below(3))], set));
        }
        if (made.size() > 2) // a gap in the ordinals stays
            log.remove(made.front());
    }

    std::mt19937 m_engine;
};

// The log in words, names for keys: two logs that tell the same are equal.
class Teller {
public:
    explicit Teller(const log::Log& log) : m_log(log) {}

    std::string tell() {
        for (const auto& device : m_log.devices())
            m_devices[device.id] = device.value.name;
        for (const auto& lift : m_log.lifts())
            m_lifts[lift.id] = lift.value.name;
        for (const auto& device : m_log.devices())
            line() << "device " << q(device.value.name) << q(device.value.note);
        for (const auto& lift : m_log.lifts())
            tell(lift.value);
        for (const auto& block : m_log.blocks())
            line() << "block " << q(block.value.name) << isoDate(block.value.first) << " "
                   << isoDate(block.value.last) << " "
                   << (block.value.ceiling ? block.value.ceiling->grams : -1)
                   << q(block.value.note);
        for (const auto& athlete : m_log.athletes())
            tell(athlete);
        std::ranges::sort(m_lines);
        std::string all;
        for (const auto& text : m_lines)
            all += text + "\n";
        return all;
    }

private:
    // One line of the tale, told when it goes out of scope.
    class Line {
    public:
        explicit Line(std::vector<std::string>& lines) : m_lines(lines) { m_out.precision(17); }
        ~Line() { m_lines.push_back(m_out.str()); }
        Line(const Line&) = delete;
        Line& operator=(const Line&) = delete;
        template <class T>
        Line& operator<<(const T& part) {
            m_out << part;
            return *this;
        }

    private:
        std::vector<std::string>& m_lines;
        std::ostringstream m_out;
    };
    Line line() { return Line(m_lines); }
    static std::string q(const std::string& text) { return "<" + text + "> "; }

    void tell(const Lift& lift) {
        auto out = line();
        out << "lift " << q(lift.name) << word(lift.kind) << word(lift.rule) << lift.ballistic;
        if (lift.mvt)
            out << " mvt " << lift.mvt->value << " " << lift.mvt->sd.value_or(-1) << " "
                << static_cast<int>(lift.mvt->origin) << q(lift.mvt->source);
        out << " " << lift.smallestVelocity.value_or(-1) << " " << lift.smallestOneRm.value_or(-1)
            << q(lift.note);
    }

    void tell(const Stored<AthleteId, Athlete>& athlete) {
        const std::string who = "athlete " + q(athlete.value.name);
        line() << who << q(athlete.value.note);
        for (const auto& [id, lift] : m_lifts)
            for (const Mass load : m_log.checkLoads(athlete.id, id))
                line() << who << "check load " << q(lift) << load.grams;
        std::map<SessionId, std::string> keys;
        for (const auto& session : m_log.sessions(athlete.id))
            keys[session.id] = dateKey(session.value.date, session.value.ordinal);
        for (const auto& session : m_log.sessions(athlete.id)) {
            const SessionHead& head = session.value;
            const std::string when = who + keys[session.id] + " ";
            for (const auto& [lift, under] : m_log.session(session.id).conditions)
                line() << when << q(m_lifts[lift])
                       << (under.device ? q(m_devices[*under.device]) : "none ") << q(under.place)
                       << q(under.surface) << q(under.footwear) << q(under.technique)
                       << q(under.notComparable);
            line() << when << (head.bodyMass ? head.bodyMass->grams : -1) << " "
                   << (head.repeatOf ? keys[*head.repeatOf] : "") << q(head.note);
            for (const auto& placed : m_log.session(session.id).sets)
                tell(when, placed);
        }
    }

    void tell(const std::string& when, const log::PlacedSet& placed) {
        auto out = line();
        out << when << q(m_lifts[placed.lift]) << placed.ordinal << " " << placed.set.load.grams
            << " " << placed.set.trueMaximum << word(placed.set.outcome) << q(placed.set.reason)
            << (placed.set.effort ? placed.set.effort->halves : 0) << q(placed.set.excluded)
            << q(placed.set.note);
        for (const Rep& rep : placed.set.reps)
            out << " " << rep.velocity << q(rep.excluded);
    }

    const log::Log& m_log;
    std::map<DeviceId, std::string> m_devices;
    std::map<LiftId, std::string> m_lifts;
    std::vector<std::string> m_lines;
};

std::string tell(const log::Log& log) {
    return Teller(log).tell();
}

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
    const std::string before = tell(log);
    const std::string after = tell(back);
    return before == after ? "" : "BEFORE\n" + before + "\nBACK\n" + after;
}

} // namespace

class TestRoundTrip : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void aLogComesBackEqual() {
        for (unsigned seed = 1; seed <= 40; ++seed) {
            const CsvFiles files;
            auto log = files.newLog();
            log.together([&] { Maker(seed).fill(log); });
            const auto written = exportTables(log, files.path("out"));
            QCOMPARE(written.size(), std::size_t(13));
            auto back = files.newLog("back.slopebook");
            const auto report = importTidy(back, csvOf(written), {});
            QVERIFY2(report.columnsNotUsed.empty(), qPrintable(QString::number(seed)));
            const std::string before = tell(log);
            const std::string after = tell(back);
            QVERIFY2(before == after,
                     ("seed " + std::to_string(seed) + "\n" + before + "\nBACK\n" + after).c_str());
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
            RC_ASSERT(tell(log) == tell(back));
            RC_ASSERT(back.check().empty());
        }));
    }

    /// German and English spreadsheets, kg and lb, m/s and cm/s: every way for each of 12 logs.
    void aLogComesBackThroughASpreadsheet() {
        for (unsigned seed = 1; seed <= 12; ++seed)
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
        for (unsigned seed = 1; seed <= 10; ++seed) {
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
        QCOMPARE(exportTables(log, files.path("out")).size(), std::size_t(13)); // an empty one
        QVERIFY_THROWS_EXCEPTION(LogError, exportTables(log, files.path("out/athletes.csv")));
        QVERIFY_THROWS_EXCEPTION(LogError, exportTables(log, "/proc/none/here"));
        for (const auto& entry : std::filesystem::directory_iterator(files.path("")))
            QVERIFY(entry.path().string().find(".part") == std::string::npos);
    }
};

QTEST_APPLESS_MAIN(TestRoundTrip)
#include "tst_roundtrip.moc"

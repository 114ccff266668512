// SPDX-License-Identifier: GPL-3.0-or-later
// What an import tells sessions and sets apart by: every part of it counts, however large a file.
#include "core/exchange/staging.h"
#include "tests/exchange/csvfiles.h"

#include <QTest>

#include <limits>
#include <set>
#include <tuple>

using namespace slopebook;
using namespace slopebook::exchange;
using tests::CsvFiles;
using tests::tidyHeader;

class TestStaging : public QObject {
    Q_OBJECT

    static int athleteOf(const Staging& staging, const StagedSet& set) {
        return staging.sessions[static_cast<std::size_t>(set.session)].athlete;
    }

private Q_SLOTS:
    // More lifts than 16 bits hold: the last one's number runs into the next session where a key
    // is packed into one number (set 1 of lift 65,536 of the first session is set 1 of lift 0 of
    // the second).
    void moreLiftsThanSixteenBits() {
        constexpr int lifts = 65'537;
        std::string text = tidyHeader;
        text.reserve(4'000'000);
        for (int lift = 0; lift < lifts; ++lift)
            text += "2026-03-14,Ann,Lift " + std::to_string(lift) + ",1,40,1,1.1\n";
        text += "2026-03-15,Bob,Lift 0,1,40,2,0.9\n";
        const CsvFiles files;
        Staging staging;
        staging.readTidy(files.write("many.csv", text), {});
        staging.finish();
        QCOMPARE(staging.lifts.size(), std::size_t(lifts));
        QCOMPARE(staging.sets.size(), std::size_t(lifts) + 1);
        for (const StagedSet& set : staging.sets)
            QCOMPARE(set.reps.size(), std::size_t(1));
        QCOMPARE(staging.athletes
                     .names()[static_cast<std::size_t>(athleteOf(staging, staging.sets.back()))],
                 std::string("Bob"));
        QCOMPARE(staging.sets.back().reps[0].velocity, 0.9);
    }

    // Numbers and days at the ends of what files may hold, each with each.
    void everyPartOfAKeyCounts() {
        const std::vector<std::string> days{"0001-01-01", "1950-01-01", "2026-03-14", "9999-12-31"};
        const std::vector<int> numbers{1, 2, 65'535, 65'536, 65'537, 131'072, 999'999, 1'000'000};
        std::string text = "date,athlete,lift,session,set,load_kg,rep,velocity\n";
        std::size_t rows = 0;
        for (const std::string athlete : {"Ann", "Bob"})
            for (const std::string& day : days)
                for (const int session : numbers)
                    for (const std::string lift : {"Squat", "Row"})
                        for (const int set : numbers) {
                            text += day + "," + athlete + "," + lift + "," +
                                    std::to_string(session) + "," + std::to_string(set) +
                                    ",40,1,1.1\n";
                            ++rows;
                        }
        const CsvFiles files;
        Staging staging;
        staging.readTidy(files.write("ends.csv", text), {});
        staging.finish();
        QCOMPARE(staging.sessions.size(), 2 * days.size() * numbers.size());
        QCOMPARE(staging.sets.size(), rows);
    }

    // The keys themselves, beyond what files may hold.
    void keysAreEqualOnlyWhole() {
        std::set<std::tuple<int, int, int>> places;
        std::unordered_map<StagedPlace, int, Spread> byPlace;
        std::unordered_map<StagedDay, int, Spread> byDay;
        const std::vector<int> parts{
            0,         1,           0xFFFF,      0x1'0000,
            0x10'0000, 0x1000'0000, 0x1001'0000, std::numeric_limits<int>::max()};
        const Date first{std::chrono::year{2026} / 1 / 1};
        for (const int a : parts)
            for (const int b : parts)
                for (const int c : parts) {
                    places.insert({a, b, c});
                    byPlace[{a, b, c}] = 1;
                    byDay[{a, Date{std::chrono::sys_days{first} + std::chrono::days{b % 100'000}},
                           c}] = 1;
                }
        QCOMPARE(byPlace.size(), places.size());
        std::set<int> days;
        for (const int b : parts)
            days.insert(b % 100'000);
        QCOMPARE(byDay.size(), parts.size() * days.size() * parts.size());
    }
};

QTEST_APPLESS_MAIN(TestStaging)
#include "tst_staging.moc"

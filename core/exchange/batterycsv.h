// SPDX-License-Identifier: GPL-3.0-or-later
// The battery as CSV: tests.csv and attempts.csv, read into values that name their place, and
// brought into a log. What the log has already is left; what contradicts it is refused.
#pragma once

#include "core/exchange/identitycsv.h"
#include "core/exchange/table.h"
#include "core/exchange/whois.h"
#include "core/log/log.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace slopebook::exchange {

/// Attempts of one session as the files say them; tests and lifts by name.
struct StagedBattery {
    std::string athlete;
    Date date{};
    int ordinal = 1;
    Where where; ///< the first row that speaks of it
    /// Under what a test was made, the device by name; in files from before, all of the session.
    struct Context {
        std::string surface, device, footwear, technique, place, notComparable;
        friend bool operator==(const Context&, const Context&) = default;
    };
    Context context; ///< of the session
    struct Test {
        std::string name;
        std::vector<Attempt> attempts;
        Where where;
        Context context = {};
        std::string unit = {}; ///< of the values, where the file says it
    };
    std::vector<Test> tests;
    struct Missing {
        std::string test, lift; ///< one of them
        BodySide side = BodySide::Both;
        std::optional<Mass> load;
        std::string reason;
        Where where;
    };
    std::vector<Missing> missing;
};

struct BatteryTables {
    struct TestRow {
        TestKind kind;
        Where where;
    };
    std::vector<TestRow> tests;
    std::vector<StagedBattery> sessions;

    /// Each returns the file's columns that were not used. BadInput (file, line, column).
    std::vector<std::string> readTests(const std::filesystem::path& file);
    std::vector<std::string> readAttempts(const std::filesystem::path& file);
};

/// Whether a header is that of tests.csv, of attempts.csv.
bool isTestsHeader(const std::vector<std::string>& header);
bool isAttemptsHeader(const std::vector<std::string>& header);

struct BatteryReport {
    int attemptsAdded = 0, gapsAdded = 0, contextsFilled = 0, sessionsAdded = 0;
    int attemptsAlreadyThere = 0;
    std::vector<std::string> testsMade, athletesMade, devicesMade;
    bool addedNothing() const;
    friend bool operator==(const BatteryReport&, const BatteryReport&) = default;
};

/// The test of that name that the program knows, for names that neither log nor files explain.
using KnownTest = std::function<std::optional<TestKind>(const std::string&)>;

/// Inside a transaction of the caller's. Athletes and sessions that are not there are made.
/// BadInput for a test that nobody explains, and for what contradicts the log.
BatteryReport mergeBattery(log::Log& log, const BatteryTables& tables, const KnownTest& known,
                           const WhoIsWho& who = {}, const KnownThings& met = {});

} // namespace slopebook::exchange

// SPDX-License-Identifier: GPL-3.0-or-later
// What a coach does to a log, each through the code that the window runs: the acts that the tests
// of failing disks, kills and power losses try.
#pragma once

#include "core/exchange/tidyimport.h"
#include "core/log/backups.h"
#include "core/log/layout.h"
#include "tests/log/builders.h"
#include "ui/edits/logbook.h"

#include <fstream>
#include <functional>

namespace slopebook::test {

constexpr std::chrono::sys_seconds noon =
    std::chrono::sys_days{day(2026, 3, 14)} + std::chrono::hours{12};

/// This program's layout and one step more.
inline log::Layout layoutToCome() {
    log::Layout layout = log::Layout::ours();
    layout.steps.emplace_back("CREATE TABLE plates (grams INTEGER PRIMARY KEY) STRICT; "
                              "INSERT INTO plates VALUES (20000);");
    return layout;
}

/// Tidy rows of some sessions of Lane 3, `sessions` of them from a day on.
inline void writeCsv(const std::filesystem::path& file, Date from, int sessions) {
    std::ofstream out(file);
    out << "date,athlete,lift,set,load_kg,rep,velocity\n";
    for (int i = 0; i < sessions; ++i)
        for (int set = 1; set <= 4; ++set)
            for (int rep = 1; rep <= 3; ++rep)
                out << isoDate(Date{std::chrono::sys_days{from} + std::chrono::days{i}})
                    << ",Lane 3,Bench pull," << set << ',' << 30 + 10 * set << ',' << rep << ','
                    << 1.4 - 0.2 * set - 0.01 * rep << '\n';
}

inline void importInto(ui::Logbook& book, const std::filesystem::path& csv) {
    book.applyOutsideUndo([&](log::Log& log) { exchange::importTidy(log, {csv}, {}); });
}

} // namespace slopebook::test

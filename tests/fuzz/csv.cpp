// SPDX-License-Identifier: GPL-3.0-or-later
// Any bytes as a CSV file to import: taken or refused in words, and then nothing is written.
#include "core/exchange/tidyimport.h"
#include "tests/fuzz/workfile.h"

#include <optional>

using namespace slopebook;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    static const fuzz::WorkFile file("input.csv");
    static log::Log log = log::Log::create(file.beside("fuzz.slopebook"));
    file.write(fuzz::bytesOf(data, size));
    const long before = log.dataVersion();
    try {
        exchange::ImportSettings settings;
        settings.dryRun = true; // everything is read, put in and taken back
        exchange::importTidy(log, {file.path()}, settings);
    } catch (const BadInput& error) {
        if (std::string(error.what()).empty())
            fuzz::broken("refused without a word");
    } catch (const LogError& error) {
        if (error.kind() == LogError::Kind::Damaged)
            fuzz::broken(error.what());
    }
    if (log.dataVersion() != before || !log.athletes().empty())
        fuzz::broken("a dry run wrote");
    return 0;
}

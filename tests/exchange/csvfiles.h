// SPDX-License-Identifier: GPL-3.0-or-later
// CSV files and logs in a temporary folder, for the tests of the exchange.
#pragma once

#include "core/exchange/tidyimport.h"
#include "core/log/log.h"
#include "tests/support/bytes.h"

#include <QDir>
#include <QTemporaryDir>

#include <filesystem>
#include <fstream>
#include <string>

namespace slopebook::tests {

class CsvFiles {
public:
    std::filesystem::path path(const std::string& name) const {
        return std::filesystem::path(m_folder.path().toStdString()) / name;
    }
    std::filesystem::path write(const std::string& name, const std::string& text) const {
        std::ofstream(path(name), std::ios::binary) << text;
        return path(name);
    }
    std::string read(const std::string& name) const { return test::readBytes(path(name)); }
    log::Log newLog(const std::string& name = "test.slopebook") const {
        return log::Log::create(path(name));
    }

private:
    // In memory where there is such a folder: synced writes are not what these tests are about.
    QTemporaryDir m_folder{std::filesystem::exists("/dev/shm")
                               ? QStringLiteral("/dev/shm/slopebook-test-XXXXXX")
                               : QDir::tempPath() + QStringLiteral("/slopebook-test-XXXXXX")};
};

inline const std::string tidyHeader = "date,athlete,lift,set,load_kg,rep,velocity\n";

/// Imports one text as a file called reps.csv.
inline exchange::ImportReport import(const CsvFiles& files, log::Log& log, const std::string& text,
                                     const exchange::ImportSettings& settings = {}) {
    return exchange::importTidy(log, {files.write("reps.csv", text)}, settings);
}

} // namespace slopebook::tests

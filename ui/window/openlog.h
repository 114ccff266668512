// SPDX-License-Identifier: GPL-3.0-or-later
// Opens and makes logs for the window, and says what is the matter with one that opens all the
// same.
#pragma once

#include "ui/edits/logbook.h"

#include <filesystem>
#include <memory>

namespace slopebook::ui {

class StoreKeeper;

struct OpenedLog {
    std::unique_ptr<Logbook> logbook;
    QString notice; ///< read-only, damaged: for the bar over the pages; empty where all is well
    bool damaged = false;   ///< read only as far as it can be read: a backup is the way back
    bool unchecked = false; ///< too large to be checked before it is shown: see OpeningCheck
    std::shared_ptr<StoreKeeper> store{}; ///< that meets its store already, and knows the logbook
};

/// What a check found, in a sentence for the coach.
Words damageWords(const std::vector<Words>& findings);
/// As far as it can be read, for reading alone. notice: why. Throws LogError.
OpenedLog salvageLog(const std::filesystem::path& file, const QString& notice);

/// The same, but written to on the coach's word. notice: that it is. Throws LogError.
OpenedLog writeOnLog(const std::filesystem::path& file, const QString& notice);

/// Opens for writing, else, where that cannot be, for reading. Throws LogError for what is no log.
OpenedLog openLog(const std::filesystem::path& file);
/// Makes a new log; the file must not exist. Throws LogError.
OpenedLog createLog(const std::filesystem::path& file);

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/ontrust.h"

#include "core/log/failure.h"
#include "core/model/phrases/log.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <sqlite3.h>

namespace slopebook::log {

namespace {
// Not by PRAGMA foreign_keys, which a transaction does not heed.
void trust(const Connection& db, bool on) {
    const int enforced = on ? 0 : 1;
    int now = -1;
    if (sqlite3_db_config(db.database().getHandle(), SQLITE_DBCONFIG_ENABLE_FKEY, enforced, &now) !=
            SQLITE_OK ||
        now != enforced)
        throw LogError(LogError::Kind::Unavailable,
                       say("The SQLite library at hand refuses a safe setting."));
    db.execute(on ? "PRAGMA ignore_check_constraints = ON"
                  : "PRAGMA ignore_check_constraints = OFF");
}
} // namespace

void onTrust(const Connection& db, const std::function<void()>& work) {
    try {
        trust(db, true);
        work();
    } catch (...) {
        trust(db, false);
        throw;
    }
    trust(db, false);
}

} // namespace slopebook::log

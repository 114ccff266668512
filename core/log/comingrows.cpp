// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/comingrows.h"

#include <sqlite3.h>

#include <bit>
#include <new>
#include <string>

namespace slopebook::log {

namespace {
struct ComingTable : sqlite3_vtab {
    const ComingRows** rows = nullptr;
};
struct ComingCursor : sqlite3_vtab_cursor {
    const ComingRows* rows = nullptr;
    std::size_t at = 0;
};

int connectComing(sqlite3* db, void* rows, int /*count*/, const char* const* /*names*/,
                  sqlite3_vtab** table, char** /*error*/) {
    std::string columns;
    for (std::size_t i = 0; i < mostComing; ++i)
        columns += (columns.empty() ? "c" : ", c") + std::to_string(i);
    const int declared =
        sqlite3_declare_vtab(db, ("CREATE TABLE coming (" + columns + ")").c_str());
    if (declared != SQLITE_OK)
        return declared;
    // Never from what stands in a file: only the program's own statements read it.
    sqlite3_vtab_config(db, SQLITE_VTAB_DIRECTONLY);
    auto* const made = new (std::nothrow) ComingTable{};
    if (made == nullptr)
        return SQLITE_NOMEM;
    made->rows = static_cast<const ComingRows**>(rows);
    *table = made;
    return SQLITE_OK;
}

int disconnectComing(sqlite3_vtab* table) {
    delete static_cast<ComingTable*>(table);
    return SQLITE_OK;
}

int planComing(sqlite3_vtab* /*table*/, sqlite3_index_info* plan) {
    plan->estimatedCost = 1000;
    return SQLITE_OK;
}

int openComing(sqlite3_vtab* /*table*/, sqlite3_vtab_cursor** cursor) {
    auto* const made = new (std::nothrow) ComingCursor{};
    *cursor = made;
    return made != nullptr ? SQLITE_OK : SQLITE_NOMEM;
}

int closeComing(sqlite3_vtab_cursor* cursor) {
    delete static_cast<ComingCursor*>(cursor);
    return SQLITE_OK;
}

int beginComing(sqlite3_vtab_cursor* cursor, int /*number*/, const char* /*plan*/, int /*count*/,
                sqlite3_value** /*values*/) {
    auto* const reading = static_cast<ComingCursor*>(cursor);
    reading->rows = *static_cast<ComingTable*>(cursor->pVtab)->rows;
    reading->at = 0;
    return SQLITE_OK;
}

int nextComing(sqlite3_vtab_cursor* cursor) {
    ++static_cast<ComingCursor*>(cursor)->at;
    return SQLITE_OK;
}

int endComing(sqlite3_vtab_cursor* cursor) {
    const auto* const reading = static_cast<ComingCursor*>(cursor);
    return reading->rows == nullptr || reading->at >= reading->rows->rows() ? 1 : 0;
}

int readComing(sqlite3_vtab_cursor* cursor, sqlite3_context* context, int column) {
    using Kind = ComingRows::Cell::Kind;
    const auto* const reading = static_cast<ComingCursor*>(cursor);
    if (static_cast<std::size_t>(column) >= reading->rows->columns())
        return SQLITE_OK; // NULL
    const ComingRows::Cell& cell =
        reading->rows->cell(reading->at, static_cast<std::size_t>(column));
    switch (cell.kind) {
    case Kind::Null:
        break;
    case Kind::Integer:
        sqlite3_result_int64(context, cell.bits);
        break;
    case Kind::Real:
        sqlite3_result_double(context, std::bit_cast<double>(cell.bits));
        break;
    case Kind::Text: // an empty one is no NULL
        sqlite3_result_text(context, cell.bits == 0 ? "" : cell.bytes, static_cast<int>(cell.bits),
                            SQLITE_STATIC);
        break;
    case Kind::Blob:
        sqlite3_result_blob(context, cell.bytes, static_cast<int>(cell.bits), SQLITE_STATIC);
        break;
    }
    return SQLITE_OK;
}

int numberComing(sqlite3_vtab_cursor* cursor, sqlite3_int64* number) {
    *number = static_cast<sqlite3_int64>(static_cast<ComingCursor*>(cursor)->at);
    return SQLITE_OK;
}

const sqlite3_module comingModule = [] {
    sqlite3_module module{};
    module.xConnect = connectComing; // without xCreate: it is there, and none can be made of it
    module.xDisconnect = disconnectComing;
    module.xBestIndex = planComing;
    module.xOpen = openComing;
    module.xClose = closeComing;
    module.xFilter = beginComing;
    module.xNext = nextComing;
    module.xEof = endComing;
    module.xColumn = readComing;
    module.xRowid = numberComing;
    return module;
}();
} // namespace

bool teachComing(sqlite3* db, const ComingRows** rows) {
    return sqlite3_create_module_v2(db, "coming", &comingModule, static_cast<void*>(rows),
                                    nullptr) == SQLITE_OK;
}

} // namespace slopebook::log

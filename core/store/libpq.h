// SPDX-License-Identifier: GPL-3.0-or-later
// PostgreSQL's own library for clients, loaded when a store is first asked for: linked, it and the
// twenty libraries that it brings along made every start of the program a fifth longer.
#pragma once

#include <postgresql/libpq-fe.h>

namespace slopebook::store {

/// The calls of libpq that are used here, under libpq's names.
struct Libpq {
#define SLOPEBOOK_LIBPQ_CALLS(each)                                                                \
    each(PQconnectStartParams) each(PQconnectPoll) each(PQconninfo) each(PQconninfoFree)           \
        each(PQconninfoParse) each(PQfreemem) each(PQfinish) each(PQstatus) each(PQsocket)         \
            each(PQerrorMessage) each(PQsetErrorVerbosity) each(PQsetNoticeReceiver)               \
                each(PQsslInUse) each(PQserverVersion) each(PQconnectionNeedsPassword)             \
                    each(PQconnectionUsedPassword) each(PQsetnonblocking) each(PQflush)            \
                        each(PQsendQuery) each(PQsendQueryParams) each(PQsetSingleRowMode)         \
                            each(PQconsumeInput) each(PQisBusy) each(PQgetResult) each(PQnotifies) \
                                each(PQgetCancel) each(PQcancel) each(PQfreeCancel)                \
                                    each(PQputCopyData) each(PQputCopyEnd) each(PQresultStatus)    \
                                        each(PQresultErrorField) each(PQclear) each(PQntuples)     \
                                            each(PQgetisnull) each(PQgetvalue) each(PQgetlength)   \
                                                each(PQbackendPID)
#define SLOPEBOOK_LIBPQ_CALL(name) decltype(&::name) name = nullptr;
    SLOPEBOOK_LIBPQ_CALLS(SLOPEBOOK_LIBPQ_CALL)
#undef SLOPEBOOK_LIBPQ_CALL
};

/// Throws StoreError (NoLibrary) where it is not on this machine.
const Libpq& libpq();

} // namespace slopebook::store

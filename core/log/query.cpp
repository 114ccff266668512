// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/query.h"

#include "core/log/failure.h"
#include "core/model/phrases/log.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <cstring>

namespace slopebook::log {

Query::Query(Connection& connection, const char* sql)
    : m_connection(connection), m_sql(sql), m_statement(connection.take(sql)) {}

Query::~Query() {
    m_connection.giveBack(m_sql, std::move(m_statement));
}

void Query::bind(int index, std::int64_t value) {
    try {
        m_statement->bind(index, value);
    } catch (...) {
        m_connection.fail();
    }
}

void Query::bind(int index, double value) {
    try {
        m_statement->bind(index, value + 0.0); // -0 is 0
    } catch (...) {
        m_connection.fail();
    }
}

void Query::bind(int index, const std::string& value) {
    try {
        m_statement->bind(index, value);
    } catch (...) {
        m_connection.fail();
    }
}

void Query::bind(int index, const Sixteen& value) {
    try {
        m_statement->bind(index, value.data(), static_cast<int>(value.size()));
    } catch (...) {
        m_connection.fail();
    }
}

void Query::bind(int index, const Blob& value) {
    try {
        m_statement->bind(index, value.bytes.data(), static_cast<int>(value.bytes.size()));
    } catch (...) {
        m_connection.fail();
    }
}

void Query::bindNull(int index) {
    try {
        m_statement->bind(index);
    } catch (...) {
        m_connection.fail();
    }
}

bool Query::next() {
    try {
        return m_statement->executeStep();
    } catch (...) {
        m_connection.fail();
    }
}

int Query::run() {
    while (next()) {
    }
    return m_statement->getChanges();
}

void Query::again() {
    m_statement->tryReset();
}

bool Query::null(int column) const {
    return m_statement->isColumnNull(column);
}

std::int64_t Query::integer(int column) const {
    return m_statement->getColumn(column).getInt64();
}

double Query::real(int column) const {
    return m_statement->getColumn(column).getDouble();
}

std::string Query::text(int column) const {
    return m_statement->getColumn(column).getString();
}

Sixteen Query::sixteen(int column) const {
    const auto bytes = m_statement->getColumn(column);
    Sixteen value{};
    if (bytes.getBytes() != static_cast<int>(value.size()))
        throw damagedLog(m_connection.file(), say("it holds a UUID or a hash that is none"));
    std::memcpy(value.data(), bytes.getBlob(), value.size());
    return value;
}

Date Query::date(int column) const {
    const std::string found = text(column);
    if (const auto date = parseIsoDate(found))
        return *date;
    throw damagedLog(m_connection.file(), say("it holds a date that is none"));
}

std::optional<double> Query::optionalReal(int column) const {
    return null(column) ? std::nullopt : std::optional(real(column));
}

std::optional<Mass> Query::optionalMass(int column) const {
    return null(column) ? std::nullopt : std::optional(mass(column));
}

} // namespace slopebook::log

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/rows.h"

#include "core/model/phrases/store.h"
#include "core/store/failure.h"
#include "core/store/libpq.h"

#include <algorithm>
#include <charconv>

namespace slopebook::store {

namespace {
constexpr std::size_t uuidLength = 36;

[[noreturn]] void notAsked(std::string_view got) {
    throw StoreError(StoreError::Kind::Refused,
                     say("The store answered '%1', which it never should. Nothing was changed.",
                         std::string(got.substr(0, 40))));
}

template <class Number>
Number numberFrom(std::string_view text) {
    Number number{};
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (error != std::errc{} || end != text.data() + text.size())
        notAsked(text);
    return number;
}
} // namespace

std::string uuidsText(const std::vector<Sixteen>& uuids) {
    std::string text = "{";
    text.reserve(uuids.size() * (uuidLength + 1) + 2);
    for (const Sixteen& uuid : uuids) {
        if (text.size() > 1)
            text += ',';
        text += uuidText(uuid);
    }
    return text + "}";
}

Rows::Rows(pg_result* result) : m_result(result, libpq().PQclear) {}

int Rows::size() const {
    return libpq().PQntuples(m_result.get());
}

bool Rows::isNull(int row, int column) const {
    return libpq().PQgetisnull(m_result.get(), row, column) != 0;
}

std::string_view Rows::text(int row, int column) const {
    const Libpq& pq = libpq();
    const char* value = pq.PQgetvalue(m_result.get(), row, column);
    return {value ? value : "",
            static_cast<std::size_t>(pq.PQgetlength(m_result.get(), row, column))};
}

std::int64_t Rows::integer(int row, int column) const {
    return numberFrom<std::int64_t>(text(row, column));
}

double Rows::real(int row, int column) const {
    return numberFrom<double>(text(row, column));
}

bool Rows::yes(int row, int column) const {
    const std::string_view value = text(row, column);
    if (value != "t" && value != "f")
        notAsked(value);
    return value == "t";
}

Sixteen Rows::uuid(int row, int column) const {
    const auto uuid = parseUuid(text(row, column));
    if (!uuid)
        notAsked(text(row, column));
    return *uuid;
}

std::vector<Sixteen> Rows::uuids(int row, int column) const {
    std::vector<Sixteen> all;
    if (isNull(row, column))
        return all;
    std::string_view value = text(row, column);
    if (value.size() < 2 || value.front() != '{' || value.back() != '}')
        notAsked(value);
    value = value.substr(1, value.size() - 2);
    all.reserve(value.size() / (uuidLength + 1) + 1);
    while (!value.empty()) {
        const auto uuid = parseUuid(value.substr(0, uuidLength));
        if (!uuid)
            notAsked(value);
        all.push_back(*uuid);
        value.remove_prefix(std::min(value.size(), uuidLength + 1));
    }
    return all;
}

} // namespace slopebook::store

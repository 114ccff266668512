// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/datapackage.h"

#include "core/exchange/json.h"

#include <algorithm>
#include <vector>

namespace slopebook::exchange {

namespace {

std::vector<std::string> parts(std::string_view text, char mark) {
    std::vector<std::string> all;
    while (!text.empty()) {
        const auto end = std::min(text.find(mark), text.size());
        all.emplace_back(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return all;
}

/// As a column of that name is written.
std::string written(const TableSpec& table, const std::string& name) {
    const auto column = std::ranges::find(table.columns, name, &ColumnSpec::name);
    return column == table.columns.end() ? name : column->written();
}

std::string_view typeForPeople(Holds holds) {
    switch (holds) {
    case Holds::Text:
        return "text";
    case Holds::Number:
        return "number";
    case Holds::Whole:
        return "whole number";
    case Holds::Day:
        return "date";
    case Holds::YesNo:
        return "1 or 0";
    }
    return {};
}

std::string_view typeForPrograms(Holds holds) {
    switch (holds) {
    case Holds::Text:
        return "string";
    case Holds::Number:
        return "number";
    case Holds::Whole:
        return "integer";
    case Holds::Day:
        return "date";
    case Holds::YesNo:
        return "boolean";
    }
    return {};
}

void names(Json& json, const char* key, const std::vector<std::string>& all) {
    json.key(key).array();
    for (const std::string& each : all)
        json.value(each);
    json.endArray();
}

void field(Json& json, const ColumnSpec& column) {
    json.object()
        .field("name", column.written())
        .field("type", typeForPrograms(column.holds))
        .field("description", column.meaning);
    if (!column.unit.empty())
        json.field("unit", column.unit);
    if (column.holds == Holds::YesNo) {
        names(json, "trueValues", {"1"});
        names(json, "falseValues", {"0"});
    }
    json.key("constraints").object().field("required", column.required);
    if (!column.words.empty())
        names(json, "enum", parts(column.words, '|'));
    if (column.least)
        json.field("minimum", *column.least);
    if (column.most)
        json.field("maximum", *column.most);
    json.endObject().endObject();
}

/// "here,also=there>table" as a foreign key.
void foreignKey(Json& json, const TableSpec& table, const std::string& told) {
    const auto to = told.find('>');
    std::vector<std::string> here, there;
    for (const std::string& pair : parts(std::string_view(told).substr(0, to), ',')) {
        const auto equals = pair.find('=');
        here.push_back(written(table, pair.substr(0, equals)));
        there.push_back(equals == std::string::npos ? here.back() : pair.substr(equals + 1));
    }
    json.object();
    names(json, "fields", here);
    json.key("reference").object().field("resource", told.substr(to + 1));
    names(json, "fields", there);
    json.endObject().endObject();
}

void resource(Json& json, const TableSpec& table) {
    const std::string name(table.name);
    json.object()
        .field("name", name)
        .field("path", name + ".csv")
        .field("profile", "tabular-data-resource")
        .field("description", table.meaning)
        .field("format", "csv")
        .field("mediatype", "text/csv")
        .field("encoding", "utf-8");
    json.key("dialect").object().field("delimiter", ",").field("lineTerminator", "\n");
    json.field("quoteChar", "\"").field("doubleQuote", true).field("header", true).endObject();
    json.key("schema").object().key("fields").array();
    for (const ColumnSpec& column : table.columns)
        field(json, column);
    json.endArray();
    names(json, "missingValues", {""});
    if (!table.key.empty()) {
        std::vector<std::string> key = parts(table.key, ',');
        for (std::string& each : key)
            each = written(table, each);
        names(json, "primaryKey", key);
    }
    if (!table.refers.empty()) {
        json.key("foreignKeys").array();
        for (const std::string& told : parts(table.refers, ';'))
            foreignKey(json, table, told);
        json.endArray();
    }
    json.endObject().endObject();
}

template <class T>
Cell orEmpty(const std::optional<T>& value) {
    return value ? Cell(*value) : Cell();
}

} // namespace

std::array<Cell, DictionaryCount> dictionaryRow(const TableSpec& table, const ColumnSpec& column) {
    const auto key = parts(table.key, ',');
    std::array<Cell, DictionaryCount> row;
    row[DictionaryTable] = std::string(table.name);
    row[DictionaryName] = column.written();
    row[DictionaryType] = std::string(typeForPeople(column.holds));
    row[DictionaryUnit] = std::string(column.unit);
    row[DictionaryMeaning] = std::string(column.meaning);
    row[DictionaryNeeded] = column.required ? 1 : 0;
    row[DictionaryWords] = std::string(column.words);
    row[DictionaryLeast] = orEmpty(column.least);
    row[DictionaryMost] = orEmpty(column.most);
    row[DictionaryKey] = std::ranges::find(key, std::string(column.name)) == key.end() ? 0 : 1;
    return row;
}

std::string dataPackage(std::span<const TableSpec> tables) {
    Json json;
    json.object()
        .field("profile", "tabular-data-package")
        .field("name", "slopebook-log")
        .field("title", "A log of bar speeds, its lines and its tests")
        .field("description",
               "Text that begins, after blanks, with =, +, -, @, a tab or a line's end has an "
               "apostrophe in front, so that no spreadsheet runs it.");
    json.key("resources").array();
    for (const TableSpec& table : tables)
        resource(json, table);
    json.endArray().endObject();
    return json.text();
}

} // namespace slopebook::exchange

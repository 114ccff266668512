// SPDX-License-Identifier: GPL-3.0-or-later
// What is done with a table's columns, all from one list of them (Table<Id>::columns in tables.h):
// the texts of its SQL, reading a row, binding one, and the checksum of it. The list calls its
// visitor with each column's name and field in turn, its group() with an optional field and the
// columns that this stands in, which are NULL together, and its later() and laterGroup() with those
// that came into the table later: what they hold by default is left out of the checksum, so that
// those written before still hold.
#pragma once

#include "core/log/checksum.h"
#include "core/log/query.h"
#include "core/model/battery.h"
#include "core/model/equipment.h"
#include "core/model/lift.h"
#include "core/model/session.h"

#include <optional>
#include <string>
#include <string_view>
#include <type_traits>

namespace slopebook::log {

/// How a row of a kind of things stands in its table.
template <class Id>
struct Table;

inline std::string_view word(Mvt::Origin origin) {
    return origin == Mvt::Origin::Published ? "published" : "coach";
}

// A word that is none becomes a default here and fails the checksum right after.
inline void fromWord(const std::string& text, VelocityKind& kind) {
    kind = velocityKindFromWord(text).value_or(VelocityKind::Mean);
}
inline void fromWord(const std::string& text, PointRule& rule) {
    rule = pointRuleFromWord(text).value_or(PointRule::Fastest);
}
inline void fromWord(const std::string& text, Mvt::Origin& origin) {
    origin = text == word(Mvt::Origin::Published) ? Mvt::Origin::Published : Mvt::Origin::Coach;
}
inline void fromWord(const std::string& text, AttemptRule& rule) {
    rule = attemptRuleFromWord(text).value_or(AttemptRule::Best);
}
inline void fromWord(const std::string& text, BodySide& side) {
    side = bodySideFromWord(text).value_or(BodySide::Both);
}
inline void fromWord(const std::string& text, Outcome& outcome) {
    outcome = outcomeFromWord(text).value_or(Outcome::Lifted);
}
inline void fromWord(const std::string& text, MassUnit& unit) {
    unit = massUnitFromWord(text).value_or(MassUnit::Kilogram);
}
inline void fromWord(const std::string& text, FixedMass::Use& use) {
    use = fixedMassUseFromWord(text).value_or(FixedMass::Use::Alone);
}
inline void fromWord(const std::string& text, TestFormula& formula) {
    formula = testFormulaFromWord(text).value_or(TestFormula::Value);
}

/// Passes over columns.
struct ColumnCounter {
    int count = 0;
    template <class Field>
    void operator()(const char* /*name*/, const Field& /*field*/) {
        ++count;
    }
    template <class Field>
    void later(const char* name, const Field& field) {
        (*this)(name, field);
    }
};

/// Reads a row's columns into the fields of a value, from the given column on.
struct ColumnReader {
    const Query& row;
    int column;

    void operator()(const char* /*name*/, std::string& field) { field = row.text(column++); }
    void operator()(const char* /*name*/, bool& field) { field = row.flag(column++); }
    void operator()(const char* /*name*/, int& field) { field = row.small(column++); }
    void operator()(const char* /*name*/, double& field) { field = row.real(column++); }
    void operator()(const char* /*name*/, Date& field) { field = row.date(column++); }
    void operator()(const char* /*name*/, Mass& field) { field = row.mass(column++); }
    void operator()(const char* /*name*/, std::optional<Effort>& field) {
        if (const auto rpe = row.optionalReal(column++))
            field = effort(*rpe);
    }
    void operator()(const char* /*name*/, std::optional<double>& field) {
        field = row.optionalReal(column++);
    }
    void operator()(const char* /*name*/, std::optional<Mass>& field) {
        field = row.optionalMass(column++);
    }
    void operator()(const char* /*name*/, std::optional<ExactMass>& field) {
        if (const auto units = row.optionalInteger(column++))
            field = ExactMass{*units};
    }
    template <class Id>
    requires std::is_enum_v<Id>
    void operator()(const char* /*name*/, std::optional<Id>& field) {
        field = row.optionalId<Id>(column++);
    }
    template <class Enum>
    requires std::is_enum_v<Enum>
    void operator()(const char* /*name*/, Enum& field) { fromWord(row.text(column++), field); }
    template <class Field>
    void later(const char* name, Field& field) {
        (*this)(name, field);
    }
    template <class Value, class Columns>
    void group(std::optional<Value>& field, const Columns& columns) {
        Value value{};
        if (row.null(column)) {
            ColumnCounter passed;
            columns(value, passed);
            column += passed.count;
        } else {
            columns(value, *this);
            field = std::move(value);
        }
    }
    template <class Value, class Columns>
    void laterGroup(const char* /*name*/, std::optional<Value>& field, const Columns& columns) {
        group(field, columns);
    }
};

/// Binds the fields of a value, after the parameter of the given index.
struct ColumnBinder {
    Query& query;
    int index = 0;

    template <class Field>
    void operator()(const char* /*name*/, const Field& field) {
        if constexpr (std::is_enum_v<Field>)
            query.bind(++index, std::string(word(field)));
        else if constexpr (std::is_same_v<Field, std::optional<Effort>>)
            query.bind(++index, field ? std::optional(field->value()) : std::nullopt);
        else
            query.bind(++index, field);
    }
    template <class Field>
    void later(const char* name, const Field& field) {
        (*this)(name, field);
    }
    template <class Value, class Columns>
    void group(const std::optional<Value>& field, const Columns& columns) {
        if (field) {
            columns(*field, *this);
            return;
        }
        ColumnCounter passed; // what is not bound is NULL
        const Value none{};
        columns(none, passed);
        index += passed.count;
    }
    template <class Value, class Columns>
    void laterGroup(const char* /*name*/, const std::optional<Value>& field,
                    const Columns& columns) {
        group(field, columns);
    }
};

/// Adds the fields of a value to its checksum.
struct ColumnSum {
    Checksum& sum;

    template <class Field>
    void operator()(const char* /*name*/, const Field& field) {
        sum.add(field);
    }
    template <class Field>
    void later(const char* name, const Field& field) {
        if (field != Field{})
            sum.add(std::string_view(name)).add(field);
    }
    template <class Value, class Columns>
    void group(const std::optional<Value>& field, const Columns& columns) {
        sum.add(field.has_value());
        if (field)
            columns(*field, *this);
    }
    template <class Value, class Columns>
    void laterGroup(const char* name, const std::optional<Value>& field, const Columns& columns) {
        if (!field)
            return;
        sum.add(std::string_view(name));
        columns(*field, *this);
    }
};

/// The texts of SQL of a table: values first, then checksum, then id, where they are written; id
/// and checksum, then the values, where they are read.
struct TableSql {
    std::string rows;    ///< every row, in no order: for a condition to follow
    std::string inOrder; ///< every row in its order
    std::string one;     ///< by id
    std::string weighed; ///< by id: the name and what the row weighs in its tally
    std::string taken;   ///< whether another than that id has what must be one's own
    std::string insert;
    std::string update;
    std::string erase;
};

/// Names the columns of a table for its SQL.
struct ColumnNames {
    std::string list, places, set; ///< "name, note", "?, ?", "name = ?, note = ?"
    template <class Field>
    void operator()(const char* name, const Field& /*field*/) {
        const std::string comma = list.empty() ? "" : ", ";
        list += comma + name;
        places += comma + "?";
        set += comma + name + " = ?";
    }
    template <class Field>
    void later(const char* name, const Field& field) {
        (*this)(name, field);
    }
    template <class Value, class Columns>
    void group(const std::optional<Value>& /*field*/, const Columns& columns) {
        const Value none{};
        columns(none, *this);
    }
    template <class Value, class Columns>
    void laterGroup(const char* /*name*/, const std::optional<Value>& field,
                    const Columns& columns) {
        group(field, columns);
    }
};

/// Made once: statements are kept by their text.
template <class Id>
const TableSql& sqlOf() {
    static const TableSql made = [] {
        using T = Table<Id>;
        ColumnNames names;
        const typename T::Value none{};
        T::columns(none, names);
        const std::string table = T::table;
        const std::string from = " FROM " + table;
        const std::string byId = " WHERE id = ?";
        TableSql sql;
        sql.rows = "SELECT id, checksum, " + names.list + from;
        sql.inOrder = sql.rows + " ORDER BY " + T::order;
        sql.one = sql.rows + byId;
        const std::string also = T::alsoWeighs.empty() ? "" : ", " + std::string(T::alsoWeighs);
        sql.weighed = "SELECT name, checksum" + also + from + byId;
        sql.taken = "SELECT 1" + from + " WHERE id <> ?1 AND " + T::ownToEach;
        sql.insert = "INSERT INTO " + table + " (" + names.list + ", checksum, id" + also +
                     ") VALUES (" + names.places + ", ?, ?" + (also.empty() ? ")" : ", 0)");
        sql.update = "UPDATE " + table + " SET " + names.set + ", checksum = ?" + byId;
        sql.erase = "DELETE" + from + byId;
        return sql;
    }();
    return made;
}

/// The value of a row of id, checksum and the table's columns.
template <class Id>
typename Table<Id>::Value readValue(const Query& row) {
    typename Table<Id>::Value value{};
    ColumnReader reader{row, 2};
    Table<Id>::columns(value, reader);
    return value;
}

/// Binds a value, its checksum and its id to an insert or an update.
template <class Id>
void bindValue(Query& query, Id id, const typename Table<Id>::Value& value) {
    ColumnBinder binder{query};
    Table<Id>::columns(value, binder);
    query.bind(binder.index + 1, checksum(id, value));
    query.bind(binder.index + 2, id);
}

} // namespace slopebook::log

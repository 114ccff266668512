// SPDX-License-Identifier: GPL-3.0-or-later
// What things say, field by field, from the one list of their columns.
#include "core/desks/names.h"
#include "core/desks/valuewords.h"
#include "core/log/contentcolumns.h"
#include "core/log/contents.h"
#include "core/model/figures.h"
#include "core/model/phrases/desks.h"

#include <array>
#include <charconv>
#include <utility>

namespace slopebook::desks {

namespace {
constexpr std::array fieldWords{
    std::pair{std::string_view("name"), Phrase("name")},
    std::pair{std::string_view("note"), Phrase("note")},
    std::pair{std::string_view("kind"), Phrase("velocity")},
    std::pair{std::string_view("rule"), Phrase("what counts")},
    std::pair{std::string_view("ballistic"), Phrase("thrown or jumped")},
    std::pair{std::string_view("moves_body"), Phrase("moves the body")},
    std::pair{std::string_view("mvt"), Phrase("MVT, m/s")},
    std::pair{std::string_view("mvt_sd"), Phrase("SD of the MVT, m/s")},
    std::pair{std::string_view("mvt_origin"), Phrase("whose MVT")},
    std::pair{std::string_view("mvt_source"), Phrase("source of the MVT")},
    std::pair{std::string_view("smallest_velocity"), Phrase("smallest change, m/s")},
    std::pair{std::string_view("smallest_one_rm"), Phrase("smallest change of the 1RM, kg")},
    std::pair{std::string_view("first_day"), Phrase("first day")},
    std::pair{std::string_view("last_day"), Phrase("last day")},
    std::pair{std::string_view("ceiling_g"), Phrase("ceiling")},
    std::pair{std::string_view("ceiling_10ng"), Phrase("ceiling")},
    std::pair{std::string_view("trained"), Phrase("trained")},
    std::pair{std::string_view("fewest_a_week"), Phrase("sessions a week, fewest")},
    std::pair{std::string_view("most_a_week"), Phrase("sessions a week, most")},
    std::pair{std::string_view("unit"), Phrase("unit")},
    std::pair{std::string_view("higher_is_better"), Phrase("higher is better")},
    std::pair{std::string_view("two_sided"), Phrase("two sides")},
    std::pair{std::string_view("both_too"), Phrase("both sides too")},
    std::pair{std::string_view("best_of"), Phrase("best attempts")},
    std::pair{std::string_view("attempts"), Phrase("attempts")},
    std::pair{std::string_view("formula"), Phrase("formula")},
    std::pair{std::string_view("decimals"), Phrase("decimals")},
    std::pair{std::string_view("noise"), Phrase("typical error")},
    std::pair{std::string_view("noise_percent"), Phrase("typical error in percent")},
    std::pair{std::string_view("noise_source"), Phrase("source of the typical error")},
    std::pair{std::string_view("smallest"), Phrase("smallest change")},
    std::pair{std::string_view("smallest_source"), Phrase("source of the smallest change")},
    std::pair{std::string_view("bar"), Phrase("bar")},
    std::pair{std::string_view("plate"), Phrase("plate")},
    std::pair{std::string_view("pairs"), Phrase("pairs")},
    std::pair{std::string_view("fixed"), Phrase("alone or added")},
    std::pair{std::string_view("use"), Phrase("use")},
    std::pair{std::string_view("athlete"), Phrase("athlete")},
    std::pair{std::string_view("session"), Phrase("session")},
    std::pair{std::string_view("station"), Phrase("station")},
    std::pair{std::string_view("lift"), Phrase("lift")},
    std::pair{std::string_view("test"), Phrase("test")},
    std::pair{std::string_view("device"), Phrase("device")},
    std::pair{std::string_view("place"), Phrase("place")},
    std::pair{std::string_view("surface"), Phrase("surface")},
    std::pair{std::string_view("footwear"), Phrase("footwear")},
    std::pair{std::string_view("technique"), Phrase("technique")},
    std::pair{std::string_view("not_comparable"), Phrase("not comparable")},
    std::pair{std::string_view("sets"), Phrase("planned sets")},
    std::pair{std::string_view("rotates"), Phrase("takes turns")},
    std::pair{std::string_view("load_g"), Phrase("load")},
    std::pair{std::string_view("day"), Phrase("day")},
    std::pair{std::string_view("ordinal"), Phrase("number")},
    std::pair{std::string_view("body_mass_g"), Phrase("body mass")},
    std::pair{std::string_view("repeat_of"), Phrase("repeats")},
    std::pair{std::string_view("maximum"), Phrase("true maximum")},
    std::pair{std::string_view("outcome"), Phrase("outcome")},
    std::pair{std::string_view("reason"), Phrase("reason")},
    std::pair{std::string_view("rpe"), Phrase("RPE")},
    std::pair{std::string_view("excluded"), Phrase("left out because")},
    std::pair{std::string_view("velocity"), Phrase("speed, m/s")},
    std::pair{std::string_view("side"), Phrase("side")},
    std::pair{std::string_view("value"), Phrase("value")},
    std::pair{std::string_view("contact"), Phrase("contact time, s")},
};

Words sayField(std::string_view column) {
    for (const auto& [name, phrase] : fieldWords)
        if (name == column)
            return say(phrase);
    return asIs(std::string(column));
}

/// Visits the columns of a thing as Content does.
class FieldVisitor {
public:
    explicit FieldVisitor(const Desk& desk) : m_desk(desk) {}

    template <class Field>
    void operator()(const char* name, const Field& field) {
        add(name, shown(field));
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
        const std::size_t from = fields.size(); // the same fields on both sides
        const Value none{};
        columns(none, *this);
        for (std::size_t i = from; i < fields.size(); ++i)
            fields[i].value = say("none");
    }
    template <class Value, class Columns>
    void laterGroup(const char* /*name*/, const std::optional<Value>& field,
                    const Columns& columns) {
        group(field, columns);
    }
    template <class Id>
    void of(Id id) {
        add(log::kindOf<Id>, shown(id)); // what it belongs to is in its name already, and is equal
    }
    template <class Field>
    void always(const char* name, const Field& field) {
        add(name, shown(field));
    }
    template <class Parts, class Columns>
    void each(const char* first, const Parts& parts, const Columns& columns) {
        std::vector<Words> all;
        for (const auto& part : parts) {
            FieldVisitor one(m_desk);
            columns(part, one);
            std::vector<Words> said;
            for (SaidField& field : one.fields)
                if (!field.value.empty())
                    said.push_back(std::move(field.value));
            all.push_back(listed(std::move(said)));
        }
        add(first, clauses(std::move(all)));
    }

    std::vector<SaidField> fields;

private:
    void add(const char* name, Words value) {
        if (name == std::string_view("into")) // where it went is no word of the coach
            return;
        fields.push_back({.field = sayField(name), .value = std::move(value)});
    }
    Words shown(const std::string& field) const { return perhapsOurs(field); }
    Words shown(bool field) const { return field ? say("yes") : say("no"); }
    Words shown(int field) const { return inWords(field); }
    Words shown(double field) const {
        std::array<char, 32> text{};
        const auto end = std::to_chars(text.data(), text.data() + text.size(), field).ptr;
        return figure(std::string(text.data(), end));
    }
    Words shown(Date field) const { return inWords(field); }
    Words shown(Mass field) const { return inWords(field); }
    Words shown(ExactMass field) const { return massWords(kilograms(field)); }
    Words shown(Effort field) const { return figure(field.value(), 1); }
    Words shown(const Sixteen& field) const { return asIs(log::hexOf(log::viewOf(field))); }
    template <class Enum>
    requires std::is_enum_v<Enum> Words shown(Enum field)
    const {
        if constexpr (log::kindOf<Enum>[0] != '\0')
            return nameOnDesk(m_desk, raw(field));
        else
            return valueWords(field);
    }
    template <class Value>
    Words shown(const std::optional<Value>& field) const {
        return field ? shown(*field) : say("none");
    }

    const Desk& m_desk;
};
} // namespace

std::vector<SaidField> fieldsOf(const Desk& desk, const Thing& thing) {
    FieldVisitor visitor(desk);
    std::visit(
        [&](const auto& value) {
            log::ThingColumns<std::remove_cvref_t<decltype(value)>>::visit(value, visitor);
        },
        thing);
    return std::move(visitor.fields);
}

} // namespace slopebook::desks

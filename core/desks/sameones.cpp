// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desks/sameones.h"

#include "core/model/names.h"

namespace slopebook::desks {

namespace {
template <class Value>
bool more(const std::optional<Value>& lost, const std::optional<Value>& holder) {
    return lost && lost != holder;
}
bool more(const std::string& lost, const std::string& holder) {
    return !lost.empty() && lost != holder;
}

bool saysMoreOf(const Lift& lost, const Lift& holder) {
    return lost.rule != holder.rule || more(lost.mvt, holder.mvt) ||
           more(lost.smallestVelocity, holder.smallestVelocity) ||
           more(lost.smallestOneRm, holder.smallestOneRm) || more(lost.note, holder.note);
}
bool saysMoreOf(const TestKind& lost, const TestKind& holder) {
    return lost.rule != holder.rule || lost.bestOf != holder.bestOf ||
           lost.attempts != holder.attempts || lost.decimals != holder.decimals ||
           more(lost.noise, holder.noise) || more(lost.smallest, holder.smallest) ||
           more(lost.smallestSource, holder.smallestSource) || more(lost.note, holder.note);
}
bool saysMoreOf(const Device& lost, const Device& holder) {
    return more(lost.note, holder.note);
}
} // namespace

bool isOneByName(const Thing& thing) {
    return std::holds_alternative<Lift>(thing) || std::holds_alternative<TestKind>(thing) ||
           std::holds_alternative<Device>(thing);
}

bool canBeOne(const Thing& one, const Thing& other) {
    if (one.index() != other.index() || !isOneByName(one))
        return false;
    if (const auto* lift = std::get_if<Lift>(&one)) {
        const Lift& same = std::get<Lift>(other);
        return lift->kind == same.kind && lift->ballistic == same.ballistic &&
               lift->movesBody == same.movesBody;
    }
    if (const auto* test = std::get_if<TestKind>(&one)) {
        const TestKind& same = std::get<TestKind>(other);
        return test->unit == same.unit && test->formula == same.formula &&
               test->higherIsBetter == same.higherIsBetter && test->twoSided == same.twoSided &&
               test->bothToo == same.bothToo;
    }
    return true;
}

bool saysMoreThan(const Thing& lost, const Thing& holder) {
    if (!sameRoot(*nameOf(lost), *nameOf(holder)))
        return true;
    return std::visit(
        [&](const auto& one) {
            if constexpr (requires { saysMoreOf(one, one); })
                return saysMoreOf(one, std::get<std::remove_cvref_t<decltype(one)>>(holder));
            else
                return false;
        },
        lost);
}

Sixteen noteOf(const Sixteen& other) {
    return log::hashOf(std::string("is one with ").append(log::viewOf(other)));
}

// Behind the first step, which every copy of a thing has: where two copies last agreed is found
// among the steps after it, as if this one were not there.
void noteOne(const Slots& known, Atom& atom, const Sixteen& other) {
    const Sixteen note = noteOf(other);
    if (log::holds(atom.trail, note))
        return;
    atom.trail.insert(atom.trail.begin() + 1, {.revision = note, .hash = atom.trail.front().hash});
    extend(known, atom);
}

std::string withoutNumber(const std::string& name) {
    const auto open = name.rfind(" (");
    if (open == std::string::npos || open == 0 || name.back() != ')')
        return name;
    const auto number = std::string_view(name).substr(open + 2, name.size() - open - 3);
    const bool digits =
        !number.empty() && number.find_first_not_of("0123456789") == std::string_view::npos;
    return digits ? name.substr(0, open) : name;
}

bool sameRoot(const std::string& one, const std::string& other) {
    return nameKey(withoutNumber(one)) == nameKey(withoutNumber(other));
}

} // namespace slopebook::desks

// SPDX-License-Identifier: GPL-3.0-or-later
// The keys by which a log takes what has a name of its own.
#pragma once

#include "core/desks/thing.h"
#include "core/model/ids.h"

#include <type_traits>

namespace slopebook::desks {

template <class Value>
struct LocalIdOf {
    using Id = void;
};
template <>
struct LocalIdOf<Athlete> {
    using Id = AthleteId;
};
template <>
struct LocalIdOf<Lift> {
    using Id = LiftId;
};
template <>
struct LocalIdOf<Device> {
    using Id = DeviceId;
};
template <>
struct LocalIdOf<Block> {
    using Id = BlockId;
};
template <>
struct LocalIdOf<TestKind> {
    using Id = TestKindId;
};
template <>
struct LocalIdOf<Equipment> {
    using Id = EquipmentId;
};
template <>
struct LocalIdOf<Station> {
    using Id = StationId;
};
/// Of a value with a name; void: it has none.
template <class Value>
using LocalId = typename LocalIdOf<Value>::Id;

} // namespace slopebook::desks

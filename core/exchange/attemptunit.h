// SPDX-License-Identifier: GPL-3.0-or-later
// In which unit an attempt's first number is, as it was read.
#pragma once

#include "core/model/battery.h"

#include <string>

namespace slopebook::exchange {

/// "s" of a flight time, "m" of a jump height beside a contact time, "N" of a force per body mass,
/// else the test's own unit.
inline std::string unitAsRead(const TestKind& kind) {
    switch (kind.formula) {
    case TestFormula::FlightHeight:
    case TestFormula::FlightRsi:
        return "s";
    case TestFormula::HeightRsi:
        return "m";
    case TestFormula::PerBodyMass:
        return "N";
    case TestFormula::Value:
        break;
    }
    return kind.unit;
}

} // namespace slopebook::exchange

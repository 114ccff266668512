// SPDX-License-Identifier: GPL-3.0-or-later
// A question either has an answer or a reason why it has none; the reason is a value, not an error.
#pragma once

#include "core/model/words.h"

#include <utility>
#include <variant>

namespace slopebook {

/// Why there is no answer: what kind of reason, and the reason in words, a clause without a stop.
struct NoAnswer {
    enum class Why {
        NoPoints,         ///< no set counts
        OneLoad,          ///< points at fewer than two distinct loads
        NeedsThirdLoad,   ///< two points: a line without inference
        SlopeNotNegative, ///< speed does not fall as load rises
        NoThreshold,      ///< no MVT is known for the lift
        ThresholdAboveV0, ///< V0 <= MVT
        BallisticLift,    ///< followed by velocity at load only
        SlopeUncertain,   ///< Fieller's g >= 1
        DifferentKinds,   ///< velocities of different kinds
        NoSuchSession,
        NoBaseline,
        TooFewSessions,
        TooFewSets,
        SpeedNotReached,
        TooFewLoads,   ///< under two loads can be built
        BeyondLoads,   ///< not covered by both sessions
        NotComparable, ///< by the coach, or another device without a study
        NoRepeatTests,
        NotTested,   ///< no attempt on that day
        NotPossible, ///< written down as not possible
        NoBodyMass,  ///< the session has no body mass
        Other
    };
    Why why = Why::Other;
    Words reason;
    friend bool operator==(const NoAnswer&, const NoAnswer&) = default;
};

/// Either a T or the reason why there is none.
template <class T>
class Answer {
public:
    Answer(T value) : m_held(std::move(value)) {}          // NOLINT: made to be returned as a T
    Answer(NoAnswer reason) : m_held(std::move(reason)) {} // NOLINT: and as a reason
    explicit operator bool() const noexcept { return std::holds_alternative<T>(m_held); }
    const T& operator*() const { return std::get<T>(m_held); }
    T& operator*() { return std::get<T>(m_held); }
    const T* operator->() const { return &std::get<T>(m_held); }
    T* operator->() { return &std::get<T>(m_held); }
    /// Only where there is no answer.
    const NoAnswer& why() const { return std::get<NoAnswer>(m_held); }
    friend bool operator==(const Answer&, const Answer&) = default;

private:
    std::variant<T, NoAnswer> m_held;
};

} // namespace slopebook

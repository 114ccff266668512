// SPDX-License-Identifier: GPL-3.0-or-later
// A trace of any kind as a list of events (a push, a jump, a rep), each with marks that can be
// moved and figures that follow from trace and marks alone.
#pragma once

#include "core/traces/isometric.h"
#include "core/traces/jump.h"
#include "core/traces/liftreps.h"

#include <string_view>

namespace slopebook::traces {

enum class TraceKind {
    Isometric, ///< force N: a push or pull against something that does not give
    Jump,      ///< force N on a plate: jumps, drop jumps, hops
    Lift       ///< displacement m: reps of a lift
};
/// "isometric", "jump", "lift".
std::string_view word(TraceKind kind);
std::optional<TraceKind> traceKindFromWord(std::string_view word);

struct Mark {
    Words name;      ///< "onset", "take-off", ...
    double time = 0; ///< s
    friend bool operator==(const Mark&, const Mark&) = default;
};

struct Figure {
    std::string key; ///< for files: "peak_force_n"
    Words name;      ///< for people: "peak force, gross"
    std::string unit;
    double value = 0;
    int decimals = 0;
};

class Analysis {
public:
    /// Finds every event. A fault where there is none.
    static Found<Analysis> make(Trace trace, TraceKind kind);

    TraceKind kind() const { return m_kind; }
    const Trace& trace() const { return m_trace; }
    std::size_t events() const;
    std::vector<Mark> marks(std::size_t event) const;
    /// Puts a mark elsewhere (kept inside the trace); the order is judged by figures().
    void moveMark(std::size_t event, std::size_t mark, double time);
    /// A fault where the marks are out of order.
    Found<std::vector<Figure>> figures(std::size_t event) const;
    /// What was mended in those figures and must be said with them; empty where nothing was.
    Words remark(std::size_t event) const;

private:
    std::vector<double*> places(std::size_t event);

    TraceKind m_kind = TraceKind::Isometric;
    Trace m_trace;
    Motion m_motion; // of a lift, made once
    std::vector<IsometricMarks> m_pushes;
    std::vector<JumpMarks> m_jumps;
    std::vector<RepMarks> m_reps;
};

} // namespace slopebook::traces

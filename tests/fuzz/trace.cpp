// SPDX-License-Identifier: GPL-3.0-or-later
// Any bytes as a trace: read, evened out, analysed as each kind.
#include "core/exchange/tracecsv.h"
#include "core/model/errors.h"
#include "core/traces/analysis.h"
#include "tests/fuzz/workfile.h"

using namespace slopebook;

namespace {
void analyse(const traces::Trace& trace) {
    for (const auto kind :
         {traces::TraceKind::Isometric, traces::TraceKind::Jump, traces::TraceKind::Lift}) {
        const auto found = traces::Analysis::make(trace, kind);
        const auto* analysis = std::get_if<traces::Analysis>(&found);
        for (std::size_t event = 0; analysis && event < analysis->events(); ++event) {
            for (const traces::Mark& mark : analysis->marks(event))
                if (!trace.covers(mark.time))
                    fuzz::broken("a mark outside the trace");
            static_cast<void>(analysis->figures(event));
        }
    }
}
} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    static const fuzz::WorkFile file("input.csv");
    file.write(fuzz::bytesOf(data, size));
    try {
        const auto layout = exchange::traceFile(file.path());
        const auto [time, value] = exchange::likelyColumns(layout);
        const auto columns = exchange::readTrace(file.path(), layout, time, value);
        const auto trace = traces::makeTrace(columns.times, columns.values);
        if (const auto* made = std::get_if<traces::Trace>(&trace))
            analyse(*made);
    } catch (const BadInput&) { // NOLINT(bugprone-empty-catch): refused, as it should be
    } catch (const LogError&) { // NOLINT(bugprone-empty-catch): likewise
    }
    return 0;
}

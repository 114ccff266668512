// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/traces/analysis.h"

#include "core/model/phrases/traces.h"

#include <algorithm>
#include <cmath>

namespace slopebook::traces {
namespace {

std::vector<Figure> figuresOf(const IsometricFigures& f) {
    std::vector<Figure> list{
        {"baseline_n", say("quiet baseline"), "N", f.baseline, 1},
        {"baseline_sd_n", say("its SD"), "N", f.baselineSd, 1},
        {"peak_force_n", say("peak force, gross"), "N", f.peakGross, 0},
        {"peak_net_force_n", say("peak force, net of the baseline"), "N", f.peakNet, 0},
        {"seconds_to_peak", say("onset to peak"), "s", f.secondsToPeak, 3},
        {"impulse_ns", say("impulse, net, onset to end"), "N s", f.impulse, 1}};
    for (const WindowFigures& w : f.windows) {
        const std::string ms = std::to_string(std::lround(1000 * w.seconds));
        list.push_back(
            {"force_" + ms + "ms_n", say("force at %1 ms, gross", figure(ms)), "N", w.force, 0});
        list.push_back({"net_force_" + ms + "ms_n", say("force at %1 ms, net", figure(ms)), "N",
                        w.netForce, 0});
        list.push_back({"rfd_0_" + ms + "ms_n_per_s",
                        say("rate of force development 0 to %1 ms", figure(ms)), "N/s", w.rfd, 0});
        list.push_back({"impulse_0_" + ms + "ms_ns", say("impulse, net, 0 to %1 ms", figure(ms)),
                        "N s", w.impulse, 2});
    }
    return list;
}

std::vector<Figure> figuresOf(const JumpFigures& f) {
    std::vector<Figure> list{
        {"flight_time_s", say("flight time"), "s", f.flightTime, 3},
        {"flight_height_m", say("height by flight time"), "m", f.flightHeight, 3}};
    const auto add = [&](const char* key, Phrase name, const char* unit,
                         const std::optional<double>& value, int decimals) {
        if (value)
            list.push_back({key, say(name), unit, *value, decimals});
    };
    add("impulse_height_m", "height by impulse and momentum", "m", f.impulseHeight, 3);
    add("take_off_speed_m_per_s", "take-off speed by impulse", "m/s", f.takeOffSpeed, 3);
    add("contact_time_s", "contact time", "s", f.contactTime, 3);
    add("rsi_m_per_s", "reactive strength index", "m/s", f.rsi, 2);
    add("flight_contact_ratio", "flight time / contact time", "", f.flightContactRatio, 2);
    add("time_to_take_off_s", "movement to take-off", "s", f.secondsToTakeOff, 3);
    add("rsi_modified_m_per_s", "height / time to take-off", "m/s", f.rsiModified, 2);
    add("plate_offset_n", "force in flight, taken off the weight", "N", f.plateOffset, 1);
    add("weight_n", "weight", "N", f.weight, 1);
    add("mass_kg", "body mass", "kg", f.mass, 2);
    return list;
}

std::vector<Figure> figuresOf(const RepFigures& f) {
    return {{"mean_m_per_s", say("mean velocity"), "m/s", f.mean, 3},
            {"propulsive_m_per_s", say("mean propulsive velocity"), "m/s", f.propulsive, 3},
            {"peak_m_per_s", say("peak velocity"), "m/s", f.peak, 3},
            {"displacement_m", say("displacement"), "m", f.displacement, 3},
            {"seconds", say("start to top"), "s", f.seconds, 3}};
}

template <class Figures>
Found<std::vector<Figure>> figuresOf(const Found<Figures>& found) {
    if (const auto* fault = std::get_if<Fault>(&found))
        return *fault;
    return figuresOf(std::get<Figures>(found));
}

} // namespace

std::string_view word(TraceKind kind) {
    switch (kind) {
    case TraceKind::Isometric:
        return "isometric";
    case TraceKind::Jump:
        return "jump";
    case TraceKind::Lift:
        return "lift";
    }
    return "";
}

std::optional<TraceKind> traceKindFromWord(std::string_view text) {
    for (const TraceKind kind : {TraceKind::Isometric, TraceKind::Jump, TraceKind::Lift})
        if (word(kind) == text)
            return kind;
    return {};
}

Found<Analysis> Analysis::make(Trace trace, TraceKind kind) {
    Analysis made;
    made.m_kind = kind;
    if (kind == TraceKind::Isometric) {
        const auto found = findIsometric(trace);
        if (const auto* fault = std::get_if<Fault>(&found))
            return *fault;
        made.m_pushes = {std::get<IsometricMarks>(found)};
    } else if (kind == TraceKind::Jump) {
        auto found = findJumps(trace);
        if (const auto* fault = std::get_if<Fault>(&found))
            return *fault;
        made.m_jumps = std::move(std::get<std::vector<JumpMarks>>(found));
    } else {
        auto moved = motion(trace);
        if (const auto* fault = std::get_if<Fault>(&moved))
            return *fault;
        made.m_motion = std::move(std::get<Motion>(moved));
        auto found = findReps(made.m_motion);
        if (const auto* fault = std::get_if<Fault>(&found))
            return *fault;
        made.m_reps = std::move(std::get<std::vector<RepMarks>>(found));
    }
    made.m_trace = std::move(trace);
    return made;
}

std::size_t Analysis::events() const {
    return m_pushes.size() + m_jumps.size() + m_reps.size();
}

std::vector<Mark> Analysis::marks(std::size_t event) const {
    if (m_kind == TraceKind::Isometric) {
        const IsometricMarks& m = m_pushes.at(event);
        return {{say("quiet from"), m.quietFrom},
                {say("quiet to"), m.quietTo},
                {say("onset"), m.onset},
                {say("peak"), m.peak},
                {say("end"), m.end}};
    }
    if (m_kind == TraceKind::Lift) {
        const RepMarks& m = m_reps.at(event);
        return {
            {say("start"), m.start}, {say("propulsive end"), m.propulsiveEnd}, {say("top"), m.top}};
    }
    const JumpMarks& m = m_jumps.at(event);
    std::vector<Mark> marks;
    if (m.still) {
        marks.push_back({say("still from"), m.still->from});
        marks.push_back({say("still to"), m.still->to});
    }
    if (m.start)
        marks.push_back({say("movement"), *m.start});
    if (m.contact)
        marks.push_back({say("touch-down"), *m.contact});
    marks.push_back({say("take-off"), m.takeOff});
    marks.push_back({say("landing"), m.landing});
    return marks;
}

std::vector<double*> Analysis::places(std::size_t event) {
    if (m_kind == TraceKind::Isometric) {
        IsometricMarks& m = m_pushes.at(event);
        return {&m.quietFrom, &m.quietTo, &m.onset, &m.peak, &m.end};
    }
    if (m_kind == TraceKind::Lift) {
        RepMarks& m = m_reps.at(event);
        return {&m.start, &m.propulsiveEnd, &m.top};
    }
    JumpMarks& m = m_jumps.at(event);
    std::vector<double*> all;
    if (m.still) {
        all.push_back(&m.still->from);
        all.push_back(&m.still->to);
    }
    if (m.start)
        all.push_back(&*m.start);
    if (m.contact)
        all.push_back(&*m.contact);
    all.push_back(&m.takeOff);
    all.push_back(&m.landing);
    return all;
}

void Analysis::moveMark(std::size_t event, std::size_t mark, double time) {
    *places(event).at(mark) = std::clamp(time, m_trace.start, m_trace.end());
}

Found<std::vector<Figure>> Analysis::figures(std::size_t event) const {
    if (m_kind == TraceKind::Isometric)
        return figuresOf(isometricFigures(m_trace, m_pushes.at(event)));
    if (m_kind == TraceKind::Jump)
        return figuresOf(jumpFigures(m_trace, m_jumps.at(event)));
    return figuresOf(repFigures(m_motion, m_reps.at(event)));
}

Words Analysis::remark(std::size_t event) const {
    if (m_kind != TraceKind::Jump)
        return {};
    const auto found = jumpFigures(m_trace, m_jumps.at(event));
    const auto* f = std::get_if<JumpFigures>(&found);
    if (!f || !f->plateOffset)
        return {};
    return say(
        "The plate was not zeroed: it reads %1 N in flight, with nobody on it. That is taken "
        "off the weight and the body mass.",
        figure(std::to_string(std::lround(*f->plateOffset))));
}

} // namespace slopebook::traces

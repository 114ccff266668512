// SPDX-License-Identifier: GPL-3.0-or-later
// slopebook trace: marks and figures of a force or displacement trace.
#include "app/commands/ask.h"
#include "app/commands/commands.h"
#include "core/answers/figures.h"
#include "core/exchange/tracecsv.h"
#include "core/model/errors.h"
#include "core/traces/analysis.h"

#include <memory>

namespace slopebook::app {

namespace {

struct TraceOptions {
    std::filesystem::path file;
    std::string kind, time, value;
    bool json = false;
};

[[noreturn]] void refuse(const TraceOptions& options, const traces::Fault& fault,
                         const exchange::TraceColumns& columns) {
    const long line =
        fault.sample && *fault.sample < columns.lines.size() ? columns.lines[*fault.sample] : 0;
    throw BadInput({options.file.string(), line, {}}, fault.what,
                   asIs("evenly sampled times in s, 100 Hz to 10 kHz"));
}

std::string eventText(const traces::Analysis& analysis, std::size_t event) {
    std::string text = "\n" + std::to_string(event + 1) + ".";
    for (const traces::Mark& mark : analysis.marks(event))
        text += "  " + english(mark.name) + " " + answers::fixed(mark.time, 4) + " s";
    text += "\n";
    const auto found = analysis.figures(event);
    if (const auto* fault = std::get_if<traces::Fault>(&found))
        return text + "   no figures: " + english(fault->what) + "\n";
    for (const traces::Figure& figure : std::get<std::vector<traces::Figure>>(found))
        text += "   " + english(figure.name) + ": " +
                answers::fixed(figure.value, figure.decimals) +
                (figure.unit.empty() ? "" : " " + figure.unit) + "\n";
    if (const Words remark = analysis.remark(event); !remark.empty())
        text += "   " + english(remark) + "\n";
    return text;
}

std::string analysisJson(const TraceOptions& options, const traces::Analysis& analysis) {
    Json json;
    json.object()
        .field("file", options.file.filename().string())
        .field("kind", std::string(word(analysis.kind())))
        .field("rate_hz", analysis.trace().rate)
        .field("samples", static_cast<int>(analysis.trace().values.size()));
    json.key("events").array();
    for (std::size_t i = 0; i < analysis.events(); ++i) {
        json.object().key("marks").object();
        for (const traces::Mark& mark : analysis.marks(i))
            json.field(english(mark.name), mark.time);
        json.endObject();
        const auto found = analysis.figures(i);
        if (const auto* fault = std::get_if<traces::Fault>(&found)) {
            json.field("reason", english(fault->what));
        } else {
            json.key("figures").object();
            for (const traces::Figure& figure : std::get<std::vector<traces::Figure>>(found))
                json.field(figure.key, figure.value);
            json.endObject();
            if (const Words remark = analysis.remark(i); !remark.empty())
                json.field("remark", english(remark));
        }
        json.endObject();
    }
    json.endArray().endObject();
    return json.text();
}

int runTrace(const TraceOptions& options) {
    const auto kind = traces::traceKindFromWord(options.kind);
    if (!kind)
        throw BadInput(asIs("--kind \"" + options.kind + "\""), asIs("isometric, jump or lift"));
    const auto layout = exchange::traceFile(options.file);
    const auto [time, value] = exchange::likelyColumns(layout);
    const auto columns =
        exchange::readTrace(options.file, layout, options.time.empty() ? time : options.time,
                            options.value.empty() ? value : options.value);
    auto trace = traces::makeTrace(columns.times, columns.values);
    if (const auto* fault = std::get_if<traces::Fault>(&trace))
        refuse(options, *fault, columns);
    const auto analysis = traces::Analysis::make(std::get<traces::Trace>(trace), *kind);
    if (const auto* fault = std::get_if<traces::Fault>(&analysis)) {
        if (options.json) {
            Json json;
            json.object().field("file", options.file.filename().string());
            json.field("reason", english(fault->what)).endObject();
            print(json.text());
        } else {
            print(english(fault->what) + "\n");
        }
        return exitNoAnswer;
    }
    const auto& found = std::get<traces::Analysis>(analysis);
    if (options.json) {
        print(analysisJson(options, found));
        return exitDone;
    }
    std::string text = options.file.filename().string() + ": " +
                       std::to_string(found.trace().values.size()) + " samples at " +
                       answers::fixed(found.trace().rate, 0) + " Hz\n";
    for (std::size_t i = 0; i < found.events(); ++i)
        text += eventText(found, i);
    print(text);
    return exitDone;
}

} // namespace

void addTrace(CLI::App& app, int& exit) {
    auto* command = app.add_subcommand("trace", "What a force or displacement trace holds");
    const auto options = std::make_shared<TraceOptions>();
    command->add_option("FILE", options->file, "CSV with one row a sample")->required();
    command->add_option("--kind", options->kind, "isometric, jump or lift")->required();
    command->add_option("--time", options->time, "Column of the times in s; found where left out");
    command->add_option("--value", options->value,
                        "Column of force in N or displacement in m; found where left out");
    command->add_flag("--json", options->json, "JSON with all digits");
    command->callback([options, &exit] { exit = runTrace(*options); });
}

} // namespace slopebook::app

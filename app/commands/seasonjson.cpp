// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/seasonjson.h"

#include "app/commands/ask.h"
#include "app/commands/partsjson.h"
#include "core/answers/story.h"
#include "core/exchange/cells.h"

#include <cmath>

namespace slopebook::app {

using namespace answers;

namespace {

std::string measureUnit(const Measure& measure) {
    return measure.kind == Measure::Kind::Effort ? "RPE" : measure.unit;
}

std::optional<std::string> sideOf(const Measure& measure) {
    return measure.side == BodySide::Both ? std::nullopt
                                          : std::optional(std::string(word(measure.side)));
}

/// The change from a block with its reading; null where the cell has none.
void changeFields(Json& json, const SeasonMatrix& matrix, const std::optional<CellChange>& change) {
    const bool read = change && change->read.reading != Reading::NoFigure;
    const auto& r = change ? change->read : ReadChange{};
    json.field("reading", change ? std::optional(word(r.reading)) : std::nullopt)
        .field("against",
               change ? std::optional(matrix.blocks[change->from].block.name) : std::nullopt)
        .field("comparable", !change || change->comparable())
        .field("why",
               change && !change->why.empty() ? std::optional(english(change->why)) : std::nullopt)
        .field("change", change ? std::optional(r.change) : std::nullopt)
        .ends("low", "high", read ? std::optional(r.interval) : std::nullopt)
        .field("leans", r.leans())
        .field("by_more_than_smallest", read && r.beyondSmallest)
        .field("by_chance", change ? std::optional(change->byChance) : std::nullopt);
}

void cellJson(Json& json, const SeasonMatrix& matrix, std::size_t column, const MatrixCell& cell) {
    json.object()
        .field("block", matrix.blocks[column].block.name)
        .field("n_sessions", cell.sessions)
        .field("value", cell.value ? std::optional(*cell.value) : std::nullopt)
        .field("se", cell.interval ? std::optional(cell.se) : std::nullopt)
        .ends("value_low", "value_high", cell.interval)
        .field("extrapolated", cell.extrapolated)
        .field("better_side",
               cell.better == BodySide::Both ? std::nullopt : std::optional(word(cell.better)))
        .field("reason",
               cell.value ? std::nullopt : std::optional(english(cell.value.why().reason)));
    changeFields(json, matrix, cell.against);
    json.key("before");
    if (cell.before) {
        json.object();
        changeFields(json, matrix, cell.before);
        json.endObject();
    } else {
        json.null();
    }
    json.endObject();
}

} // namespace

std::string seasonJson(const questions::SeasonAnswer& answer) {
    const SeasonMatrix& matrix = answer.matrix;
    Json json;
    json.object()
        .field("athlete", answer.athlete.value.name)
        .field("level", matrix.level)
        .field("chosen", matrix.blocks[matrix.chosen].block.name);
    json.key("blocks").array();
    for (const MatrixBlock& each : matrix.blocks) {
        json.object()
            .field("name", each.block.name)
            .field("first", isoDate(each.block.first))
            .field("last", isoDate(each.block.last));
        storyFields(json, each.block);
        json.field("n_sessions", each.sessions)
            .field("counted_a_week", answers::countedAWeek(each))
            .endObject();
    }
    json.endArray().key("measures").array();
    for (const MatrixRow& row : matrix.rows) {
        const Measure& measure = row.measure;
        json.object()
            .field("kind", word(measure.kind))
            .field("name", measure.name)
            .field("load", measure.load ? std::optional(kilograms(*measure.load)) : std::nullopt)
            .field("side", sideOf(measure))
            .field("unit", measureUnit(measure))
            .field("smallest", row.smallest ? std::optional(row.smallest->value) : std::nullopt);
        json.key("cells").array();
        for (std::size_t j = 0; j < row.cells.size(); ++j)
            cellJson(json, matrix, j, row.cells[j]);
        json.endArray().endObject();
    }
    json.endArray()
        .field("expected_by_chance", matrix.byChance())
        .field("readings", matrix.judged())
        .field("sentence", english(matrix.sentence))
        .field("chance", english(matrix.chance));
    json.key("story").array();
    for (const Words& words : matrix.story)
        json.value(english(words));
    json.endArray().key("design").array();
    for (const Words& words : matrix.design)
        json.value(english(words));
    json.endArray();
    notesJson(json, matrix.notes);
    json.key("unread").array();
    for (const Words& what : answer.unread)
        json.value(english(what));
    json.endArray().endObject();
    return json.text();
}

std::string seasonCsv(const questions::SeasonAnswer& answer) {
    const SeasonMatrix& matrix = answer.matrix;
    std::string text = "kind,name,load_kg,side,unit,block,sessions,value,se,against,change,low,"
                       "high,reading,reading_before,why\n";
    const auto number = [](const std::optional<double>& value) {
        return value && std::isfinite(*value) ? exchange::writeNumber(*value) : std::string();
    };
    for (const MatrixRow& row : matrix.rows)
        for (std::size_t j = 0; j < row.cells.size(); ++j) {
            const MatrixCell& cell = row.cells[j];
            const Measure& measure = row.measure;
            const auto& change = cell.against;
            const bool read = change && change->read.reading != Reading::NoFigure;
            const auto readingOf = [](const std::optional<CellChange>& of) {
                return of ? english(shortReading(of->read)) : std::string();
            };
            const std::string why = !cell.value ? english(cell.value.why().reason)
                                                : (change ? english(change->why) : std::string());
            const std::string cells[]{
                std::string(word(measure.kind)),
                exchange::csvText(measure.name),
                number(measure.load ? std::optional(kilograms(*measure.load)) : std::nullopt),
                sideOf(measure).value_or(""),
                exchange::csvText(measureUnit(measure)),
                exchange::csvText(matrix.blocks[j].block.name),
                std::to_string(cell.sessions),
                number(cell.value ? std::optional(*cell.value) : std::nullopt),
                number(cell.interval ? std::optional(cell.se) : std::nullopt),
                change ? exchange::csvText(matrix.blocks[change->from].block.name) : std::string(),
                number(change ? std::optional(change->read.change) : std::nullopt),
                number(read ? std::optional(change->read.interval.low) : std::nullopt),
                number(read ? std::optional(change->read.interval.high) : std::nullopt),
                readingOf(change),
                readingOf(cell.before),
                exchange::csvText(why)};
            bool first = true;
            for (const std::string& each : cells) {
                text += (first ? "" : ",") + each;
                first = false;
            }
            text += '\n';
        }
    return text;
}

} // namespace slopebook::app

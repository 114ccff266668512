// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/typed/loads.h"

namespace slopebook::ui {

namespace {

using Wrong = LineProblem::Kind;

bool endsInMark(std::u16string_view text, std::u16string_view marks) {
    return !text.empty() && marks.find(text.back()) != std::u16string_view::npos;
}

/// What a speed without its decimal mark was probably meant to be: hundredths, else thousandths.
std::optional<std::u16string> probablyMeant(std::u16string_view digits, double typed) {
    if (digits.find_first_not_of(u"0123456789") != std::u16string_view::npos)
        return std::nullopt;
    for (const int decimals : {2, 3}) {
        const double meant = typed / (decimals == 2 ? 100 : 1000);
        if (meant >= plausibleVelocityLimit)
            continue;
        const std::string text = std::to_string(static_cast<int>(meant)) + "." +
                                 padded(static_cast<unsigned>(typed) % (decimals == 2 ? 100 : 1000),
                                        static_cast<std::size_t>(decimals));
        return std::u16string(text.begin(), text.end());
    }
    return std::nullopt;
}

} // namespace

std::variant<ReadLoadPiece, LineProblem> loadOf(const Piece& piece, MassUnit bare) {
    std::u16string_view text = piece.text;
    ReadLoadPiece result;
    result.maximum = takeSuffix(text, u"!");
    const bool saysPounds = takeSuffix(text, u"lb");
    const bool saysKilograms = !saysPounds && takeSuffix(text, u"kg");
    const bool inPounds = saysPounds || (!saysKilograms && bare == MassUnit::Pound);
    result.named = result.maximum || saysPounds || saysKilograms;
    if (endsInMark(text, u"xX"))
        return LineProblem{Wrong::LoadMark, spanOf(piece)};
    const auto value = readNumber(text);
    if (const Wrong* kind = std::get_if<Wrong>(&value))
        return LineProblem{*kind, spanOf(piece)};
    const double typed = std::get<double>(value);
    result.typed = typed;
    if (typed > 1e6)
        return LineProblem{Wrong::LoadTooHeavy, spanOf(piece)};
    result.load = inPounds ? massFromPounds(typed) : massFromKilograms(typed);
    if (result.load > storableLoadLimit)
        return LineProblem{Wrong::LoadTooHeavy, spanOf(piece)};
    return result;
}

std::optional<LineProblem> addSpeed(const Piece& piece, ReadSpeedPieces& into) {
    std::u16string_view text = piece.text;
    const bool leftOut = takeSuffix(text, u"x") || takeSuffix(text, u"X");
    if (endsInMark(text, u"!") || text.ends_with(u"kg") || text.ends_with(u"lb"))
        return LineProblem{Wrong::SpeedMark, spanOf(piece)};
    const auto value = readNumber(text);
    if (const Wrong* kind = std::get_if<Wrong>(&value))
        return LineProblem{*kind, spanOf(piece)};
    const double typed = std::get<double>(value);
    if (typed <= 0)
        return LineProblem{Wrong::SpeedZero, spanOf(piece)};
    if (typed >= storableVelocityLimit) {
        const auto meant = probablyMeant(text, typed);
        if (!meant)
            return LineProblem{Wrong::SpeedTooFast, spanOf(piece)};
        into.question.typed.emplace_back(text);
        into.question.proposed.push_back(*meant);
        into.asked.push_back({piece.start, text.size()});
    }
    into.reps.push_back({typed, leftOut});
    return std::nullopt;
}

LineQuestion askSpeeds(ReadSpeedPieces read, std::u16string_view line) {
    LineQuestion question = std::move(read.question);
    question.where = read.asked.front();
    question.meant = line;
    for (std::size_t i = read.asked.size(); i-- > 0;)
        question.meant.replace(read.asked[i].start, read.asked[i].length, question.proposed[i]);
    return question;
}

LineQuestion askLoad(const Piece& load, std::u16string_view line, MassUnit bare) {
    LineQuestion question{.kind = LineQuestion::Kind::Load,
                          .meant = std::u16string(line),
                          .typed = {std::u16string(load.text)},
                          .proposed = {},
                          .where = spanOf(load)};
    question.meant.insert(load.start + load.text.size(), bare == MassUnit::Pound ? u"lb" : u"kg");
    return question;
}

} // namespace slopebook::ui

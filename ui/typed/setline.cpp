// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/typed/setline.h"

#include "core/model/session.h"

#include <charconv>

namespace slopebook::ui {

namespace {

using Wrong = LineProblem::Kind;

struct Piece {
    std::u16string_view text;
    std::size_t start = 0;
    Span span() const { return {start, text.size()}; }
};

bool separates(char16_t c) {
    return c == u' ' || c == u'\t' || c == u';' || c == u'\u00a0' || c == u'\u202f';
}

std::vector<Piece> pieces(std::u16string_view line) {
    std::vector<Piece> found;
    for (std::size_t at = 0; at < line.size();) {
        if (separates(line[at])) {
            ++at;
            continue;
        }
        std::size_t end = at;
        while (end < line.size() && !separates(line[end]))
            ++end;
        found.push_back({line.substr(at, end - at), at});
        at = end;
    }
    return found;
}

std::u16string_view trimmed(std::u16string_view text) {
    while (!text.empty() && separates(text.front()))
        text.remove_prefix(1);
    while (!text.empty() && separates(text.back()))
        text.remove_suffix(1);
    return text;
}

/// Digits with at most one decimal mark, and digits on its right side.
std::variant<double, Wrong> readNumber(std::u16string_view text) {
    std::string plain;
    int marks = 0;
    for (const char16_t c : text) {
        if (c >= u'0' && c <= u'9') {
            plain += static_cast<char>(c);
        } else if (c == u'.' || c == u',') {
            ++marks;
            plain += '.';
        } else {
            return Wrong::NotANumber;
        }
    }
    if (marks > 1)
        return Wrong::TwoMarks;
    if (plain.empty() || plain.back() == '.')
        return plain.empty() ? Wrong::NotANumber : Wrong::BareMark;
    if (plain.front() == '.')
        plain.insert(plain.begin(), '0');
    double value = 0;
    const auto read =
        std::from_chars(plain.data(), plain.data() + plain.size(), value, std::chars_format::fixed);
    if (read.ec != std::errc{} || read.ptr != plain.data() + plain.size())
        return Wrong::NotANumber;
    return value;
}

bool takeSuffix(std::u16string_view& text, std::u16string_view suffix) {
    if (text.size() <= suffix.size() || !text.ends_with(suffix))
        return false;
    text.remove_suffix(suffix.size());
    return true;
}

bool endsInMark(std::u16string_view text, std::u16string_view marks) {
    return !text.empty() && marks.find(text.back()) != std::u16string_view::npos;
}

struct ReadLoadPiece {
    Mass load;
    bool maximum = false;
    bool named = false; ///< says its unit, or that it is a maximum: surely a load
    double typed = 0;
};

std::variant<ReadLoadPiece, LineProblem> loadOf(const Piece& piece, MassUnit bare) {
    std::u16string_view text = piece.text;
    ReadLoadPiece result;
    result.maximum = takeSuffix(text, u"!");
    const bool saysPounds = takeSuffix(text, u"lb");
    const bool saysKilograms = !saysPounds && takeSuffix(text, u"kg");
    const bool inPounds = saysPounds || (!saysKilograms && bare == MassUnit::Pound);
    result.named = result.maximum || saysPounds || saysKilograms;
    if (endsInMark(text, u"xX"))
        return LineProblem{Wrong::LoadMark, piece.span()};
    const auto value = readNumber(text);
    if (const Wrong* kind = std::get_if<Wrong>(&value))
        return LineProblem{*kind, piece.span()};
    const double typed = std::get<double>(value);
    result.typed = typed;
    if (typed > 1e6)
        return LineProblem{Wrong::LoadTooHeavy, piece.span()};
    result.load = inPounds ? massFromPounds(typed) : massFromKilograms(typed);
    if (result.load > storableLoadLimit)
        return LineProblem{Wrong::LoadTooHeavy, piece.span()};
    return result;
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

struct ReadSpeedPieces {
    std::vector<TypedRep> reps;
    LineQuestion question; ///< without the line: only its pieces
    std::vector<Span> asked;
};

std::optional<LineProblem> addSpeed(const Piece& piece, ReadSpeedPieces& into) {
    std::u16string_view text = piece.text;
    const bool leftOut = takeSuffix(text, u"x") || takeSuffix(text, u"X");
    if (endsInMark(text, u"!") || text.ends_with(u"kg") || text.ends_with(u"lb"))
        return LineProblem{Wrong::SpeedMark, piece.span()};
    const auto value = readNumber(text);
    if (const Wrong* kind = std::get_if<Wrong>(&value))
        return LineProblem{*kind, piece.span()};
    const double typed = std::get<double>(value);
    if (typed <= 0)
        return LineProblem{Wrong::SpeedZero, piece.span()};
    if (typed >= storableVelocityLimit) {
        const auto meant = probablyMeant(text, typed);
        if (!meant)
            return LineProblem{Wrong::SpeedTooFast, piece.span()};
        into.question.typed.emplace_back(text);
        into.question.proposed.push_back(*meant);
        into.asked.push_back({piece.start, text.size()});
    }
    into.reps.push_back({typed, leftOut});
    return std::nullopt;
}

/// The question about the whole line, with what was probably meant in the place of what was typed.
LineQuestion ask(ReadSpeedPieces read, std::u16string_view line) {
    LineQuestion question = std::move(read.question);
    question.where = read.asked.front();
    question.meant = line;
    for (std::size_t i = read.asked.size(); i-- > 0;)
        question.meant.replace(read.asked[i].start, read.asked[i].length, question.proposed[i]);
    return question;
}

/// A load that looks like a speed: taken only once it says that it is one.
LineQuestion askLoad(const Piece& load, std::u16string_view line, MassUnit bare) {
    LineQuestion question{.kind = LineQuestion::Kind::Load,
                          .meant = std::u16string(line),
                          .typed = {std::u16string(load.text)},
                          .proposed = {},
                          .where = load.span()};
    question.meant.insert(load.start + load.text.size(), bare == MassUnit::Pound ? u"lb" : u"kg");
    return question;
}

} // namespace

ReadLine readSetLine(std::u16string_view line, MassUnit bare) {
    const std::size_t hash = line.find(u'#');
    const std::vector<Piece> all = pieces(line.substr(0, hash));
    if (all.empty())
        return LineProblem{Wrong::Empty, {0, line.size()}};
    const auto load = loadOf(all.front(), bare);
    if (const auto* problem = std::get_if<LineProblem>(&load))
        return *problem;
    if (all.size() == 1)
        return LineProblem{Wrong::NoSpeeds, {line.size(), 0}};
    const auto& [mass, maximum, named, typed] = std::get<ReadLoadPiece>(load);
    ReadSpeedPieces read;
    for (std::size_t i = 1; i < all.size(); ++i)
        if (const auto problem = addSpeed(all[i], read))
            return *problem;
    const bool likeSpeed = !named && typed > 0 && typed < plausibleVelocityLimit;
    if (!read.asked.empty() && likeSpeed)
        return LineProblem{Wrong::SpeedsFirst, all.front().span()};
    if (maximum && read.reps.size() > 1)
        return LineProblem{
            Wrong::MaximumHasReps,
            {all[2].start, all.back().start + all.back().text.size() - all[2].start}};
    if (!read.asked.empty())
        return ask(std::move(read), line);
    if (likeSpeed)
        return askLoad(all.front(), line, bare);
    TypedSet set{mass, maximum, std::move(read.reps), {}};
    if (hash != std::u16string_view::npos)
        set.note = trimmed(line.substr(hash + 1));
    return set;
}

ReadSpeeds readSpeeds(std::u16string_view text) {
    const std::vector<Piece> all = pieces(text);
    if (all.empty())
        return LineProblem{Wrong::NoSpeeds, {0, text.size()}};
    ReadSpeedPieces read;
    for (const Piece& piece : all)
        if (const auto problem = addSpeed(piece, read))
            return *problem;
    if (!read.asked.empty())
        return ask(std::move(read), text);
    return std::move(read.reps);
}

std::variant<Mass, LineProblem> readLoad(std::u16string_view text, MassUnit bare) {
    std::u16string joined(trimmed(text));
    if (joined.empty())
        return LineProblem{Wrong::Empty, {0, text.size()}};
    // "60 kg" is one load; anything else with a blank inside is not.
    for (const std::u16string_view unit : {u"kg", u"lb"})
        if (joined.size() > 3 && joined.ends_with(unit) && separates(joined[joined.size() - 3]))
            joined.erase(joined.size() - 3, 1);
    if (joined.ends_with(u"!"))
        return LineProblem{Wrong::NotANumber, {0, text.size()}};
    const auto load = loadOf({joined, 0}, bare);
    if (const auto* problem = std::get_if<LineProblem>(&load))
        return LineProblem{problem->kind, {0, text.size()}};
    return std::get<ReadLoadPiece>(load).load;
}

std::optional<double> readDecimal(std::u16string_view text) {
    const auto value = readNumber(trimmed(text));
    if (const double* read = std::get_if<double>(&value))
        return *read;
    return std::nullopt;
}

} // namespace slopebook::ui

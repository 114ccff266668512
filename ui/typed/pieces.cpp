// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/typed/pieces.h"

#include <QChar>

#include <algorithm>
#include <charconv>

namespace slopebook::ui {

namespace {
constexpr bool isDigit(char16_t c) {
    return c >= u'0' && c <= u'9';
}
} // namespace

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

CutLine cutLine(std::u16string_view line) {
    const std::size_t hash = line.find(u'#');
    CutLine cut{pieces(line.substr(0, hash)), {}};
    if (hash != std::u16string_view::npos)
        cut.note = trimmed(line.substr(hash + 1));
    return cut;
}

std::u16string_view trimmed(std::u16string_view text) {
    while (!text.empty() && separates(text.front()))
        text.remove_prefix(1);
    while (!text.empty() && separates(text.back()))
        text.remove_suffix(1);
    return text;
}

Span spanOf(const Piece& piece) {
    return {piece.start, piece.text.size()};
}

bool isDash(std::u16string_view text) {
    return text == u"-" || text == u"\u2013" || text == u"\u2212";
}

bool takeSuffix(std::u16string_view& text, std::u16string_view suffix) {
    if (text.size() <= suffix.size() || !text.ends_with(suffix))
        return false;
    text.remove_suffix(suffix.size());
    return true;
}

std::optional<BodySide> sideOf(std::u16string_view piece) {
    if (piece.empty())
        return std::nullopt;
    const std::u16string_view rest = piece.substr(1);
    const bool alone = rest.empty() || isDigit(rest.front()) || isDash(rest) ||
                       rest.front() == u'.' || rest.front() == u',';
    if (!alone)
        return std::nullopt;
    switch (piece.front()) {
    case u'l':
    case u'L':
        return BodySide::Left;
    case u'r':
    case u'R':
        return BodySide::Right;
    case u'b':
    case u'B':
        return BodySide::Both;
    default:
        return std::nullopt;
    }
}

std::variant<double, LineProblem::Kind> readNumber(std::u16string_view text) {
    using Fault = LineProblem::Kind;
    std::string plain;
    int marks = 0;
    for (const char16_t c : text) {
        if (isDigit(c)) {
            plain += static_cast<char>(c);
        } else if (c == u'.' || c == u',') {
            ++marks;
            plain += '.';
        } else {
            return Fault::NotANumber;
        }
    }
    if (marks > 1)
        return Fault::TwoMarks;
    if (plain.empty() || plain.back() == '.')
        return plain.empty() ? Fault::NotANumber : Fault::BareMark;
    if (plain.front() == '.')
        plain.insert(plain.begin(), '0');
    double value = 0;
    const auto read =
        std::from_chars(plain.data(), plain.data() + plain.size(), value, std::chars_format::fixed);
    if (read.ec != std::errc{} || read.ptr != plain.data() + plain.size())
        return Fault::NotANumber;
    return value;
}

bool isWord(std::u16string_view text) {
    return std::ranges::none_of(text, isDigit) &&
           std::ranges::any_of(text, [](char16_t c) { return QChar(c).isLetter(); });
}

std::u16string joined(const std::vector<std::u16string>& pieces, std::u16string_view note) {
    std::u16string line;
    for (const std::u16string& piece : pieces)
        line += (line.empty() ? u"" : u" ") + piece;
    if (!note.empty())
        line.append(u" # ").append(note);
    return line;
}

} // namespace slopebook::ui

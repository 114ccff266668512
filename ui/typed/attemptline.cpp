// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/typed/attemptline.h"

#include "ui/typed/setline.h"

#include <QString>

namespace slopebook::ui {

namespace {

using Kind = AttemptProblem::Kind;

struct AttemptPiece {
    std::u16string_view text;
    std::size_t start = 0;
};

bool dividesAttempts(char16_t c) {
    return c == u' ' || c == u'\t' || c == u';' || c == u'\u00a0' || c == u'\u202f';
}

std::vector<AttemptPiece> attemptPieces(std::u16string_view line) {
    std::vector<AttemptPiece> found;
    for (std::size_t at = 0; at < line.size();) {
        if (dividesAttempts(line[at])) {
            ++at;
            continue;
        }
        std::size_t end = at;
        while (end < line.size() && !dividesAttempts(line[end]))
            ++end;
        found.push_back({line.substr(at, end - at), at});
        at = end;
    }
    return found;
}

/// A side at the piece's start is taken off it: "L", "R1.75".
std::optional<BodySide> takeSide(AttemptPiece& piece) {
    const char16_t c = piece.text.front();
    const bool left = c == u'L' || c == u'l';
    if (!left && c != u'R' && c != u'r')
        return {};
    piece.text.remove_prefix(1);
    ++piece.start;
    return left ? BodySide::Left : BodySide::Right;
}

class Reader {
public:
    explicit Reader(const TestKind& kind) : m_kind(kind) {}

    std::optional<AttemptProblem> take(AttemptPiece piece) {
        const AttemptPiece whole = piece;
        if (const auto side = takeSide(piece)) {
            if (!m_kind.twoSided)
                return problem(Kind::NoSides, whole);
            m_side = *side;
            m_sideAlone = piece.text.empty();
            m_sidePiece = whole;
            if (m_sideAlone)
                return {};
        }
        if (piece.text == u"-" || piece.text == u"\u2013") {
            m_sideAlone = false;
            typed.notPossible.push_back(m_side.value_or(BodySide::Both));
            return {};
        }
        if (m_kind.twoSided && !m_side)
            return problem(Kind::SideMissing, piece);
        m_sideAlone = false;
        return attempt(piece);
    }

    std::optional<AttemptProblem> finish(std::u16string_view note, std::size_t end) {
        if (m_sideAlone)
            return problem(Kind::SideAlone, m_sidePiece);
        const std::string reason = QStringView(note).trimmed().toString().toStdString();
        bool leftOut = false;
        for (Attempt& attempt : typed.attempts)
            leftOut = leftOut || !attempt.excluded.empty();
        if (reason.empty() && (leftOut || !typed.notPossible.empty()))
            return AttemptProblem{Kind::NoReason, end, 0};
        for (Attempt& attempt : typed.attempts) {
            if (!attempt.excluded.empty())
                attempt.excluded = reason;
            else if (!leftOut && typed.notPossible.empty())
                attempt.note = reason;
        }
        if (!typed.notPossible.empty())
            typed.reason = reason;
        return {};
    }

    TypedAttempts typed;

private:
    static AttemptProblem problem(Kind kind, const AttemptPiece& piece) {
        return {kind, piece.start, piece.text.size()};
    }

    std::optional<AttemptProblem> attempt(AttemptPiece piece) {
        const AttemptPiece whole = piece;
        Attempt attempt;
        attempt.side = m_side.value_or(BodySide::Both);
        if (piece.text.size() > 1 && (piece.text.back() == u'x' || piece.text.back() == u'X')) {
            piece.text.remove_suffix(1);
            attempt.excluded = "x";
        }
        const std::size_t slash = piece.text.find(u'/');
        const bool pair = slash != std::u16string_view::npos;
        if (pair != takesContact(m_kind.formula))
            return problem(pair ? Kind::ExtraContact : Kind::NoContact, whole);
        const auto value = readDecimal(piece.text.substr(0, slash));
        if (!value)
            return problem(Kind::NotANumber, whole);
        if (!(*value > 0))
            return problem(Kind::NotPositive, whole);
        attempt.value = *value;
        if (pair) {
            attempt.contact = readDecimal(piece.text.substr(slash + 1));
            if (!attempt.contact)
                return problem(Kind::NotANumber, whole);
            if (!(*attempt.contact > 0))
                return problem(Kind::NotPositive, whole);
        }
        typed.attempts.push_back(std::move(attempt));
        return {};
    }

    const TestKind& m_kind;
    std::optional<BodySide> m_side;
    bool m_sideAlone = false;
    AttemptPiece m_sidePiece;
};

} // namespace

std::variant<TypedAttempts, AttemptProblem> readAttemptLine(std::u16string_view line,
                                                            const TestKind& kind) {
    const std::size_t hash = line.find(u'#');
    const auto all = attemptPieces(line.substr(0, hash));
    if (all.empty())
        return AttemptProblem{Kind::Empty, 0, line.size()};
    Reader reader(kind);
    for (const AttemptPiece& piece : all)
        if (const auto problem = reader.take(piece))
            return *problem;
    const std::u16string_view note =
        hash == std::u16string_view::npos ? std::u16string_view() : line.substr(hash + 1);
    if (const auto problem = reader.finish(note, line.size()))
        return *problem;
    return std::move(reader.typed);
}

} // namespace slopebook::ui

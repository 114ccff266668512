// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/typed/attemptline.h"

#include "ui/typed/pieces.h"
#include "ui/typed/setline.h"

#include <QString>

#include <utility>

namespace slopebook::ui {

namespace {

using Kind = LineProblem::Kind;

class AttemptReader {
public:
    AttemptReader(std::u16string_view line, const TestKind& kind, std::optional<BodySide> due,
                  bool proposing)
        : m_line(line), m_kind(kind), m_due(due), m_proposing(proposing), m_cut(cutLine(line)) {}

    std::optional<LineProblem> read() {
        if (m_cut.pieces.empty())
            return LineProblem{Kind::Empty, {0, m_line.size()}};
        for (m_at = 0; m_at < m_cut.pieces.size(); ++m_at)
            if (auto problem = take(m_cut.pieces[m_at]))
                return problem;
        return finish();
    }

    TypedAttempts typed;

private:
    std::optional<LineProblem> take(Piece piece) {
        const Piece whole = piece;
        if (const auto side = sideOf(piece.text)) {
            if (!m_kind.twoSided)
                return wrong(Kind::NoSides, whole, with(piece.text.substr(1)));
            if (*side == BodySide::Both && !m_kind.bothToo)
                return wrong(Kind::NoBoth, whole, dueInPlace(piece.text.substr(1)));
            m_side = *side;
            piece.text.remove_prefix(1);
            ++piece.start;
            m_sideAlone = piece.text.empty();
            m_sidePiece = whole;
            if (m_sideAlone)
                return {};
        }
        if (isDash(piece.text)) {
            m_sideAlone = false;
            typed.notPossible.push_back(m_side.value_or(BodySide::Both));
            return {};
        }
        if (piece.text.front() == u'@')
            return wrong(Kind::EffortAtTest, whole, with({}));
        if (m_kind.twoSided && !m_side)
            return wrong(Kind::SideMissing, piece, dueInFront());
        m_sideAlone = false;
        return attempt(piece);
    }

    std::optional<LineProblem> finish() {
        if (m_sideAlone)
            return wrong(Kind::SideAlone, m_sidePiece, {});
        const std::string reason = QStringView(m_cut.note).trimmed().toString().toStdString();
        bool leftOut = false;
        for (const Attempt& attempt : typed.attempts)
            leftOut = leftOut || !attempt.excluded.empty();
        if (reason.empty() && (leftOut || !typed.notPossible.empty()))
            return LineProblem{Kind::NoReason, {m_line.size(), 0}};
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

    std::optional<LineProblem> attempt(Piece piece) {
        const Piece whole = piece;
        Attempt attempt;
        attempt.side = m_side.value_or(BodySide::Both);
        if (takeSuffix(piece.text, u"x") || takeSuffix(piece.text, u"X"))
            attempt.excluded = "x";
        const std::size_t slash = piece.text.find(u'/');
        const bool pair = slash != std::u16string_view::npos && piece.text.size() > 1;
        if (isWord(piece.text))
            return wrong(Kind::NotANumber, whole, notPossible(piece.text));
        if (pair && !takesContact(m_kind.formula))
            return wrong(Kind::ExtraContact, whole, with(piece.text.substr(0, slash)));
        const auto value = number(piece.text.substr(0, slash), whole);
        if (const auto* problem = std::get_if<LineProblem>(&value))
            return *problem;
        if (!pair && takesContact(m_kind.formula))
            return wrong(Kind::NoContact, whole, {});
        attempt.value = std::get<double>(value);
        if (pair) {
            const auto contact = number(piece.text.substr(slash + 1), whole);
            if (const auto* problem = std::get_if<LineProblem>(&contact))
                return *problem;
            attempt.contact = std::get<double>(contact);
        }
        typed.attempts.push_back(std::move(attempt));
        return {};
    }

    std::variant<double, LineProblem> number(std::u16string_view text, const Piece& piece) const {
        const auto read = readNumber(text);
        if (const Kind* kind = std::get_if<Kind>(&read)) {
            // A '!' is for loads, and no more than a slip here.
            const bool mark = text.size() > 1 && text.back() == u'!';
            return wrong(*kind, piece,
                         mark ? with(text.substr(0, text.size() - 1)) : std::u16string());
        }
        const double value = std::get<double>(read);
        if (!(value > 0))
            return wrong(Kind::NotPositive, piece, notPossible({}));
        return value;
    }

    LineProblem wrong(Kind kind, const Piece& piece, const std::u16string& instead) const {
        LineProblem problem{kind, spanOf(piece)};
        if (m_proposing || instead.empty())
            return problem;
        if (!AttemptReader(instead, m_kind, {}, true).read())
            problem.instead = instead;
        return problem;
    }

    /// The line with another text in the place of the piece that is being read, or without it.
    std::u16string with(std::u16string_view text) const {
        std::vector<std::u16string> all;
        for (std::size_t i = 0; i < m_cut.pieces.size(); ++i)
            if (i != m_at)
                all.emplace_back(m_cut.pieces[i].text);
            else if (!text.empty())
                all.emplace_back(text);
        return joined(all, m_cut.note);
    }

    std::u16string letter() const { return m_due == BodySide::Right ? u"r" : u"l"; }
    std::u16string dueInFront() const {
        return m_due ? letter().append(u" ").append(trimmed(m_line)) : std::u16string();
    }
    std::u16string dueInPlace(std::u16string_view rest) const {
        if (!m_due || m_due == BodySide::Both)
            return {};
        return with(rest.empty() ? letter() : letter().append(u" ").append(rest));
    }

    /// Not possible, where nothing else is typed; the word says why where no note does.
    std::u16string notPossible(std::u16string_view word) const {
        const bool sideBefore =
            m_at == 1 && sideOf(m_cut.pieces[0].text) && m_cut.pieces[0].text.size() == 1;
        if (m_at + 1 != m_cut.pieces.size() || (m_at > 0 && !sideBefore))
            return {};
        std::vector<std::u16string> all;
        if (m_side)
            all.emplace_back(m_cut.pieces[0].text.substr(0, 1));
        all.emplace_back(u"-");
        return joined(all, m_cut.note.empty() && word.size() > 1 ? word : m_cut.note);
    }

    std::u16string_view m_line;
    const TestKind& m_kind;
    std::optional<BodySide> m_due;
    bool m_proposing; ///< reads what would be taken, and says nothing of that again
    CutLine m_cut;
    std::size_t m_at = 0; ///< the piece that is being read
    std::optional<BodySide> m_side;
    bool m_sideAlone = false;
    Piece m_sidePiece;
};

} // namespace

std::variant<TypedAttempts, LineProblem>
readAttemptLine(std::u16string_view line, const TestKind& kind, std::optional<BodySide> due) {
    AttemptReader reader(line, kind, due, false);
    if (auto problem = reader.read())
        return *std::move(problem);
    return std::move(reader.typed);
}

} // namespace slopebook::ui

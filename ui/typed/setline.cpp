// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/typed/setline.h"

#include "ui/typed/loads.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace slopebook::ui {

namespace {

using Wrong = LineProblem::Kind;

ReadLine readAtLift(std::u16string_view line, MassUnit bare, bool proposing);

bool isEffort(const Piece& piece) {
    return piece.text.front() == u'@';
}

std::u16string str(std::u16string_view text) {
    return std::u16string(text);
}

/// One line at a lift while it is read. What would be taken in a refused line's place is only said
/// where the same reading takes it.
class SetReader {
public:
    SetReader(std::u16string_view line, MassUnit bare, bool proposing)
        : m_line(line), m_bare(bare), m_proposing(proposing), m_cut(cutLine(line)) {
        part();
    }

    ReadLine read() {
        if (m_pieces.empty())
            return LineProblem{Wrong::Empty, {0, m_line.size()}};
        const Piece& first = m_pieces.front();
        if (isDash(first.text))
            return withoutLoad();
        if (first.text == u"/")
            return wrong(Wrong::StrokeFirst, spanOf(first), line({u"-"}));
        if (isEffort(first))
            return wrong(Wrong::EffortFirst, spanOf(first), behind(first));
        if (sideOf(first.text))
            return wrong(Wrong::SideAtLift, spanOf(first), withoutSide(first));
        const auto load = loadOf(first, m_bare);
        if (const auto* problem = std::get_if<LineProblem>(&load))
            return loadProblem(*problem);
        return withLoad(std::get<ReadLoadPiece>(load));
    }

private:
    /// Pieces apart that are typed as one: "0.88@8", "100-", "100!/".
    void part() {
        for (const Piece& piece : m_cut.pieces) {
            const std::size_t at = piece.text.find(u'@');
            if (at == std::u16string_view::npos || at == 0) {
                m_pieces.push_back(piece);
                continue;
            }
            m_pieces.push_back({piece.text.substr(0, at), piece.start});
            m_pieces.push_back({piece.text.substr(at), piece.start + at});
        }
        if (m_pieces.empty() || m_pieces.front().text.size() < 2)
            return;
        Piece& first = m_pieces.front();
        const std::u16string_view last = first.text.substr(first.text.size() - 1);
        const Piece load{first.text.substr(0, first.text.size() - 1), first.start};
        if ((!isDash(last) && last != u"/") ||
            !std::holds_alternative<ReadLoadPiece>(loadOf(load, m_bare)))
            return;
        const Piece mark{last, first.start + load.text.size()};
        first = load;
        m_pieces.insert(m_pieces.begin() + 1, mark);
    }

    /// These pieces and the line's own note.
    std::u16string line(const std::vector<std::u16string>& pieces) const {
        return joined(pieces, m_cut.note);
    }

    LineProblem wrong(Wrong kind, Span where, const std::u16string& instead = {}) const {
        LineProblem problem{kind, where};
        if (m_proposing || instead.empty())
            return problem;
        const ReadLine taken = readAtLift(instead, m_bare, true);
        if (std::holds_alternative<TypedSet>(taken) || std::holds_alternative<TypedGap>(taken))
            problem.instead = instead;
        return problem;
    }

    LineProblem noReason() const { return {Wrong::NoReason, {m_line.size(), 0}}; }

    ReadLine withoutLoad() const {
        if (m_pieces.size() > 1) {
            // "- 100" is "100 -" begun at its end.
            const std::u16string instead =
                m_pieces.size() == 2 ? line({str(m_pieces[1].text), u"-"}) : std::u16string();
            return wrong(Wrong::DashFirst, spanOf(m_pieces.front()), instead);
        }
        if (m_cut.note.empty())
            return noReason();
        return TypedGap{{}, str(m_cut.note)};
    }

    /// "@8 60 0.92" with the effort behind.
    std::u16string behind(const Piece& effort) const {
        std::vector<std::u16string> all;
        for (const Piece& piece : m_pieces)
            if (piece.start != effort.start)
                all.push_back(str(piece.text));
        all.push_back(str(effort.text));
        return line(all);
    }

    std::u16string withoutSide(const Piece& side) const {
        std::vector<std::u16string> all;
        if (side.text.size() > 1)
            all.push_back(str(side.text.substr(1)));
        for (std::size_t i = 1; i < m_pieces.size(); ++i)
            all.push_back(str(m_pieces[i].text));
        return line(all);
    }

    /// "95x" and "-95" are a load that was not lifted.
    LineProblem loadProblem(const LineProblem& problem) const {
        std::u16string_view text = m_pieces.front().text;
        if (m_pieces.size() > 1)
            return problem;
        if (problem.kind == Wrong::LoadMark)
            text.remove_suffix(1);
        else if (isDash(text.substr(0, 1)))
            text.remove_prefix(1);
        else
            return problem;
        return wrong(problem.kind, problem.where, line({str(text), u"-"}));
    }

    ReadLine withLoad(const ReadLoadPiece& load) {
        std::vector<Piece> rest;
        if (auto problem = takeEffort(rest))
            return *problem;
        if (rest.empty())
            // "95 # missed": the note says why.
            return wrong(Wrong::NoSpeeds, {m_line.size(), 0},
                         m_cut.note.empty() ? std::u16string() : notLifted());
        for (const Piece& piece : rest)
            if (isDash(piece.text) || piece.text == u"/")
                return withMark(load, rest, piece);
        if (rest.size() == 1 && isWord(rest.front().text))
            return wrong(Wrong::WordAfterLoad, spanOf(rest.front()), wordsMeaning(rest.front()));
        return withSpeeds(load, rest);
    }

    /// The load and a dash, effort and note as they stand.
    std::u16string notLifted() const {
        std::vector<std::u16string> all{str(m_pieces.front().text), u"-"};
        for (const Piece& piece : m_pieces)
            if (isEffort(piece))
                all.push_back(str(piece.text));
        return line(all);
    }

    /// A word behind the load says why it was not lifted, where it says more than a letter does.
    std::u16string wordsMeaning(const Piece& word) const {
        if (!m_cut.note.empty() || word.text.size() < 2)
            return notLifted();
        return notLifted().append(u" # ").append(word.text);
    }

    std::optional<LineProblem> takeEffort(std::vector<Piece>& rest) {
        for (std::size_t i = 1; i < m_pieces.size(); ++i) {
            const Piece& piece = m_pieces[i];
            if (!isEffort(piece)) {
                rest.push_back(piece);
                continue;
            }
            if (m_effort)
                return wrong(Wrong::TwoEfforts, spanOf(piece), with(i, {}));
            m_effort = readEffort(piece.text);
            if (!m_effort)
                return wrong(Wrong::BadEffort, spanOf(piece), mendedEffort(i));
        }
        return std::nullopt;
    }

    /// The line with another text in the place of a piece, or without it.
    std::u16string with(std::size_t at, const std::u16string& text, bool alsoNext = false) const {
        std::vector<std::u16string> all;
        for (std::size_t i = 0; i < m_pieces.size(); ++i)
            if (i != at && !(alsoNext && i == at + 1))
                all.push_back(str(m_pieces[i].text));
            else if (i == at && !text.empty())
                all.push_back(text);
        return line(all);
    }

    /// "@ 8" joined, a number between two halves at the nearest.
    std::u16string mendedEffort(std::size_t at) const {
        const std::u16string_view number = m_pieces[at].text.substr(1);
        if (number.empty())
            return at + 1 < m_pieces.size() ? with(at, u"@" + str(m_pieces[at + 1].text), true)
                                            : with(at, {});
        const auto value = readNumber(number);
        const double* typed = std::get_if<double>(&value);
        if (!typed || *typed < 1 || *typed > 10)
            return with(at, {});
        const int halves = static_cast<int>(std::lround(*typed * 2));
        std::u16string text = u"@";
        for (const char c : std::to_string(halves / 2))
            text += static_cast<char16_t>(c);
        if (halves % 2 != 0)
            text.append(number.find(u',') != std::u16string_view::npos ? u",5" : u".5");
        return with(at, text);
    }

    /// A dash or a stroke among what follows the load: it stands alone.
    ReadLine withMark(const ReadLoadPiece& load, const std::vector<Piece>& rest,
                      const Piece& mark) const {
        const bool dash = isDash(mark.text);
        if (rest.size() > 1)
            return wrong(dash ? Wrong::DashAmong : Wrong::StrokeAmong, spanOf(mark));
        if (load.likeSpeed())
            return wrong(Wrong::SpeedsFirst, spanOf(m_pieces.front()), named());
        if (dash)
            return TypedSet{load.load,       load.maximum,       {},
                            str(m_cut.note), Outcome::NotLifted, m_effort};
        if (load.maximum || m_effort) {
            const Piece& first = m_pieces.front();
            const auto bareLoad = first.text.substr(0, first.text.size() - (load.maximum ? 1 : 0));
            return wrong(Wrong::StrokeAmong, spanOf(load.maximum ? first : mark),
                         line({str(bareLoad), u"/"}));
        }
        if (m_cut.note.empty())
            return noReason();
        return TypedGap{load.load, str(m_cut.note)};
    }

    /// The line, its load with its unit.
    std::u16string named() const {
        return with(0, str(m_pieces.front().text) + (m_bare == MassUnit::Pound ? u"lb" : u"kg"));
    }

    ReadLine withSpeeds(const ReadLoadPiece& load, const std::vector<Piece>& rest) const {
        ReadSpeedPieces read;
        for (const Piece& piece : rest)
            if (const auto problem = addSpeed(piece, read)) {
                const bool nothingElse = problem->kind == Wrong::SpeedZero && rest.size() == 1;
                return wrong(problem->kind, problem->where,
                             nothingElse ? notLifted() : std::u16string());
            }
        if (!read.asked.empty() && load.likeSpeed())
            return loadLast(rest);
        if (load.maximum && read.reps.size() > 1)
            return wrong(
                Wrong::MaximumHasReps,
                {rest[1].start, rest.back().start + rest.back().text.size() - rest[1].start},
                withoutMaximum());
        if (!read.asked.empty())
            return askSpeeds(std::move(read), m_line);
        if (load.likeSpeed())
            return askLoad(m_pieces.front(), m_line, m_bare);
        return TypedSet{load.load,       load.maximum,    std::move(read.reps),
                        str(m_cut.note), Outcome::Lifted, m_effort};
    }

    /// "0.92 0.90 60": the same with the load in front.
    LineProblem loadLast(const std::vector<Piece>& rest) const {
        std::vector<std::u16string> all{str(rest.back().text)};
        for (const Piece& piece : m_pieces)
            if (piece.start != rest.back().start)
                all.push_back(str(piece.text));
        return wrong(Wrong::SpeedsFirst, spanOf(m_pieces.front()), line(all));
    }

    /// The reps stay, and it is no maximum.
    std::u16string withoutMaximum() const {
        std::u16string_view load = m_pieces.front().text;
        load.remove_suffix(1);
        return with(0, str(load));
    }

    std::u16string_view m_line;
    MassUnit m_bare;
    bool m_proposing; ///< reads what would be taken, and says nothing of that again
    CutLine m_cut;
    std::vector<Piece> m_pieces;
    std::optional<Effort> m_effort;
};

ReadLine readAtLift(std::u16string_view line, MassUnit bare, bool proposing) {
    return SetReader(line, bare, proposing).read();
}

} // namespace

ReadLine readSetLine(std::u16string_view line, MassUnit bare) {
    return readAtLift(line, bare, false);
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
        return askSpeeds(std::move(read), text);
    return std::move(read.reps);
}

std::variant<Mass, LineProblem> readLoad(std::u16string_view text, MassUnit bare) {
    std::u16string load(trimmed(text));
    if (load.empty())
        return LineProblem{Wrong::Empty, {0, text.size()}};
    // "60 kg" is one load; anything else with a blank inside is not.
    for (const std::u16string_view unit : {u"kg", u"lb"})
        if (load.size() > 3 && load.ends_with(unit) && separates(load[load.size() - 3]))
            load.erase(load.size() - 3, 1);
    if (load.ends_with(u"!"))
        return LineProblem{Wrong::NotANumber, {0, text.size()}};
    const auto read = loadOf({load, 0}, bare);
    if (const auto* problem = std::get_if<LineProblem>(&read))
        return LineProblem{problem->kind, {0, text.size()}};
    return std::get<ReadLoadPiece>(read).load;
}

std::optional<Effort> readEffort(std::u16string_view text) {
    text = trimmed(text);
    if (text.starts_with(u"@"))
        text.remove_prefix(1);
    const auto value = readNumber(text);
    const double* read = std::get_if<double>(&value);
    return read ? effort(*read) : std::nullopt;
}

std::optional<double> readDecimal(std::u16string_view text) {
    const auto value = readNumber(trimmed(text));
    if (const double* read = std::get_if<double>(&value))
        return *read;
    return std::nullopt;
}

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/typed/dayline.h"

#include "core/model/names.h"
#include "ui/typed/pieces.h"

#include <QString>

#include <algorithm>

namespace slopebook::ui {

namespace {

using Wrong = LineProblem::Kind;

/// The name in front, or why there is none.
struct InFront {
    std::variant<std::monostate, std::size_t, LineProblem, WhoQuestion> who;
    std::size_t rest = 0; ///< where the line goes on
};

std::string utf8Of(std::u16string_view text) {
    return QStringView(text).toString().toStdString();
}

std::u16string nameOf(const std::string& name) {
    return QString::fromStdString(name).toStdU16String();
}

bool beginsWithLetter(std::u16string_view text) {
    return QStringView(text).front().isLetter() ||
           QStringView(text).front().isHighSurrogate(); // letters beyond the first plane
}

class NameReader {
public:
    NameReader(std::u16string_view line, const LineAt& at, std::span<const std::string> names)
        : m_line(line), m_at(at), m_names(names), m_pieces(cutLine(line).pieces) {
        for (const std::string& name : names)
            m_keys.push_back(nameKey(name));
    }

    InFront read() const {
        if (m_names.empty() || m_pieces.empty() || !beginsWithLetter(m_pieces[0].text))
            return {};
        if (const auto whole = wholeName())
            return *whole;
        if (sideOf(m_pieces[0].text))
            return {};
        return beginning();
    }

private:
    std::u16string_view upTo(std::size_t count) const {
        const Piece& last = m_pieces[count - 1];
        return m_line.substr(m_pieces[0].start, last.start + last.text.size() - m_pieces[0].start);
    }
    std::string keyUpTo(std::size_t count) const {
        std::string text = utf8Of(upTo(count));
        std::ranges::replace(text, ';', ' '); // parts pieces as blanks do
        return nameKey(text);
    }
    std::size_t after(std::size_t count) const {
        return m_pieces[count - 1].start + m_pieces[count - 1].text.size();
    }

    /// The longest run of pieces that is somebody's whole name, figures in it too ("Lane 3").
    std::optional<InFront> wholeName() const {
        constexpr std::size_t longest = 8; // words of a name
        for (std::size_t count = std::min(m_pieces.size(), longest); count > 0; --count) {
            if (sideOf(m_pieces[count - 1].text) && isSideHere(count))
                continue;
            const auto found = std::ranges::find(m_keys, keyUpTo(count));
            if (found != m_keys.end())
                return InFront{static_cast<std::size_t>(found - m_keys.begin()), after(count)};
        }
        return std::nullopt;
    }

    /// Whether the last of so many pieces is the side of an attempt rather than the end of a name:
    /// always at a test of sides, unless another side follows.
    bool isSideHere(std::size_t count) const {
        if (count == 1)
            return true;
        return m_at.test && m_at.test->twoSided &&
               !(count < m_pieces.size() && sideOf(m_pieces[count].text));
    }

    InFront beginning() const {
        std::size_t words = 1;
        while (words < m_pieces.size() && beginsWithLetter(m_pieces[words].text) &&
               !sideOf(m_pieces[words].text))
            ++words;
        for (std::size_t count = words; count > 0; --count) {
            const std::string key = keyUpTo(count);
            std::vector<std::size_t> found;
            for (std::size_t i = 0; i < m_keys.size(); ++i)
                if (m_keys[i].starts_with(key))
                    found.push_back(i);
            if (found.empty())
                continue;
            if (m_pieces[0].text.size() < 2)
                return {problem(Wrong::NameTooShort, found), 0};
            if (found.size() == 1)
                return {found.front(), after(count)};
            return {question(found, count), 0};
        }
        return {
            problem(m_pieces[0].text.size() < 2 ? Wrong::NameTooShort : Wrong::NobodyCalled, {}),
            0};
    }

    LineProblem problem(Wrong kind, const std::vector<std::size_t>& found) const {
        LineProblem problem{kind, spanOf(m_pieces[0])};
        if (found.size() == 1)
            problem.instead = lineFor(found.front(), 1);
        return problem;
    }

    std::u16string lineFor(std::size_t who, std::size_t count) const {
        return shortest(who).append(m_line.substr(after(count)));
    }

    /// As many letters of the name, at least two, as nobody else's begins with.
    std::u16string shortest(std::size_t who) const {
        const std::u16string name = nameOf(m_names[who]);
        for (std::size_t letters = 2; letters < name.size(); ++letters) {
            const std::u16string_view part = std::u16string_view(name).substr(0, letters);
            if (separates(part.back()) || QChar(part.back()).isSurrogate())
                continue;
            const std::string key = nameKey(utf8Of(part));
            if (std::ranges::count_if(
                    m_keys, [&](const std::string& one) { return one.starts_with(key); }) == 1)
                return std::u16string(part);
        }
        return name;
    }

    WhoQuestion question(const std::vector<std::size_t>& found, std::size_t count) const {
        WhoQuestion question{found, {}, {m_pieces[0].start, upTo(count).size()}};
        for (const std::size_t who : found)
            question.lines.push_back(lineFor(who, count));
        return question;
    }

    std::u16string_view m_line;
    const LineAt& m_at;
    std::span<const std::string> m_names;
    std::vector<std::string> m_keys;
    std::vector<Piece> m_pieces;
};

/// What is said of the rest of a line, of the whole.
void moveBehind(std::u16string_view front, LineProblem& problem) {
    problem.where.start += front.size();
    if (!front.empty() && !problem.instead.empty())
        problem.instead.insert(0, std::u16string(front).append(u" "));
}
void moveBehind(std::u16string_view front, LineQuestion& question) {
    question.where.start += front.size();
    question.meant.insert(0, front);
}

} // namespace

DayLine readDayLine(std::u16string_view line, const LineAt& at,
                    std::span<const std::string> names) {
    const InFront name = NameReader(line, at, names).read();
    if (const auto* problem = std::get_if<LineProblem>(&name.who))
        return {{}, *problem};
    if (const auto* question = std::get_if<WhoQuestion>(&name.who))
        return {{}, *question};
    DayLine read;
    if (const auto* who = std::get_if<std::size_t>(&name.who))
        read.who = *who;
    const std::u16string_view front = line.substr(0, name.rest), rest = line.substr(name.rest);
    if (read.who && trimmed(rest).empty())
        read.what = OnlyName{};
    else if (at.test)
        std::visit([&](auto&& what) { read.what = std::move(what); },
                   readAttemptLine(rest, *at.test, at.due));
    else
        std::visit([&](auto&& what) { read.what = std::move(what); }, readSetLine(rest, at.bare));
    if (auto* problem = std::get_if<LineProblem>(&read.what))
        moveBehind(front, *problem);
    if (auto* question = std::get_if<LineQuestion>(&read.what))
        moveBehind(front, *question);
    return read;
}

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/floor/entry/entryline.h"

#include "core/answers/ladder.h"
#include "core/answers/turnwords.h"
#include "ui/floor/entry/setwords.h"
#include "ui/parts/roomfor.h"
#include "ui/words/format.h"
#include "ui/words/readable.h"
#include "ui/words/said.h"

#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QKeyEvent>
#include <QLabel>
#include <QMenu>
#include <QMimeData>
#include <QRegularExpression>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>
#include <memory>
#include <utility>

namespace slopebook::ui {

namespace {
constexpr int longestLine = 400;

QStringList linesOf(const QString& text) {
    return text.split(QRegularExpression(QStringLiteral("[\r\n]+")), Qt::SkipEmptyParts);
}
} // namespace

void SetEdit::keyPressEvent(QKeyEvent* event) {
    if ((event->key() == Qt::Key_Up && bringBack()) ||
        (event->key() == Qt::Key_Down && takeInstead()))
        return;
    if (event->key() == Qt::Key_Up || event->key() == Qt::Key_Down) {
        Q_EMIT stepped(event->key() == Qt::Key_Up ? 1 : -1);
        return;
    }
    if (event->key() == Qt::Key_Escape) {
        Q_EMIT escaped();
        return;
    }
    if (event->matches(QKeySequence::Paste) && handOn(QApplication::clipboard()->text()))
        return;
    UndoableEdit::keyPressEvent(event);
}

bool SetEdit::handOn(const QString& text) {
    if (linesOf(text).size() < 2)
        return false;
    Q_EMIT pasted(text);
    return true;
}

// Qt's own menu, its Paste the same as the key's.
void SetEdit::contextMenuEvent(QContextMenuEvent* event) {
    const std::unique_ptr<QMenu> menu(createStandardContextMenu());
    const QString words = QCoreApplication::translate("QLineEdit", "&Paste");
    for (QAction* action : menu->actions())
        if (action->text().section(QLatin1Char('\t'), 0, 0) == words) {
            action->disconnect(this);
            connect(action, &QAction::triggered, this, [this] {
                if (!handOn(QApplication::clipboard()->text()))
                    paste();
            });
        }
    menu->exec(event->globalPos());
}

void SetEdit::mouseReleaseEvent(QMouseEvent* event) {
    const QClipboard* clipboard = QApplication::clipboard();
    if (event->button() == Qt::MiddleButton && clipboard->supportsSelection() &&
        handOn(clipboard->text(QClipboard::Selection)))
        return;
    UndoableEdit::mouseReleaseEvent(event);
}

void SetEdit::dropEvent(QDropEvent* event) {
    if (handOn(event->mimeData()->text()))
        event->acceptProposedAction();
    else
        UndoableEdit::dropEvent(event);
}

void SetEdit::inputMethodEvent(QInputMethodEvent* event) {
    if (!handOn(event->commitString()))
        UndoableEdit::inputMethodEvent(event);
}

EntryLine::EntryLine(Take take, LoadUnit unit, QWidget* parent)
    : QWidget(parent), m_take(std::move(take)), m_unit(unit), m_edit(new SetEdit),
      m_answer(new QLabel) {
    m_edit->setObjectName(QStringLiteral("setLine"));
    m_edit->setAccessibleName(tr("Set: load, then the reps' speeds"));
    setHint(*m_edit,
            tr("for example %1")
                .arg(example(unit == LoadUnit::Pounds ? QStringLiteral("135 0.92 0.90 0.88")
                                                      : QStringLiteral("60 0.92 0.90 0.88"))));
    m_edit->setMaxLength(longestLine);
    m_edit->setClearButtonEnabled(true);
    m_edit->setMinimumHeight(42);
    QFont large = m_edit->font();
    large.setPointSizeF(large.pointSizeF() * 1.5);
    m_edit->setFont(large);
    m_answer->setObjectName(QStringLiteral("setAnswer"));
    m_answer->setWordWrap(true);
    m_answer->setAccessibleDescription(tr("Answer to the typed line"));
    // Two lines are kept free, so that an answer does not push the page about.
    m_answer->setMinimumHeight(2 * m_answer->fontMetrics().lineSpacing());
    m_answer->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(2);
    layout->addWidget(m_edit);
    layout->addWidget(m_answer);
    setFocusProxy(m_edit);
    connect(m_edit, &QLineEdit::returnPressed, this, &EntryLine::submit);
    connect(m_edit, &QLineEdit::textEdited, this, &EntryLine::showHelp);
    connect(m_edit, &SetEdit::stepped, this, &EntryLine::step);
    connect(m_edit, &SetEdit::pasted, this, &EntryLine::paste);
    connect(m_edit, &SetEdit::escaped, this, [this] {
        if (m_meant.isEmpty() && m_offered.empty())
            m_edit->clear();
        showHelp();
    });
    showHelp();
}

void EntryLine::setLoads(std::vector<Mass> today, std::vector<Mass> lastTime) {
    m_today = std::move(today);
    m_lastTime = std::move(lastTime);
}

void EntryLine::setLimit(std::optional<Mass> limit, std::vector<Mass> maxima) {
    m_limit = limit;
    m_maxima = std::move(maxima);
}

void EntryLine::say(const QString& words, bool isHelp) {
    m_answer->setText(isHelp ? withWholeCodes(words) : QStringLiteral("\u26a0 ") + words);
    m_answer->setForegroundRole(isHelp ? QPalette::PlaceholderText : QPalette::WindowText);
    QFont type = font();
    type.setBold(!isHelp);
    m_answer->setFont(type);
    m_edit->setAccessibleDescription(words);
    m_words = words;
}

void EntryLine::showHelp() {
    m_meant.clear();
    m_offered.clear();
    m_doubted = false;
    say(tr("Load in %1, each rep's speed in m/s, Enter.  -: not lifted.  @8: effort.  Up: next "
           "load.  !: true maximum.  x: left out.  # note.")
            .arg(unitName(m_unit)),
        true);
}

void EntryLine::offerSpeeds(const QString& speeds) {
    m_meant.clear();
    m_edit->setText(QLatin1Char(' ') + speeds);
    m_edit->setCursorPosition(0);
    m_edit->setFocus();
    say(tr("Speeds from a trace: type the load before them, then Enter."), false);
}

void EntryLine::showProblem(const QString& why) {
    if (why.isEmpty())
        showHelp();
    else
        say(why, false);
}

/// What is typed next is another line, not the rest of this one.
void EntryLine::refuse(const QString& why) {
    say(why, false);
    m_edit->markRefused();
}

QString EntryLine::answer() const {
    return m_words;
}

void EntryLine::ask(const QString& question, QStringList meant) {
    say(question, false);
    m_meant = std::move(meant);
}

bool EntryLine::isKnown(Mass load) const {
    return std::find(m_today.begin(), m_today.end(), load) != m_today.end() ||
           std::find(m_lastTime.begin(), m_lastTime.end(), load) != m_lastTime.end();
}

void EntryLine::offerSets(const std::vector<Set>& sets, const QStringList& also) {
    QStringList asked = also;
    QString first;
    QStringList others; // told by their numbers: their words would be the first one's again
    for (std::size_t i = 0; i < sets.size() && m_doubts; ++i)
        if (const QString doubt = m_doubts(sets[i]); doubt.isEmpty())
            continue;
        else if (first.isEmpty())
            first = tr("Set %1 of what was pasted: ").arg(i + 1) + doubt;
        else
            others << QString::number(i + 1);
    if (!others.isEmpty())
        asked << tr("Doubtful as well, by their numbers: %1.").arg(others.join(u", "));
    if (!first.isEmpty())
        asked << first;
    if (asked.isEmpty()) {
        takeSets(sets);
        return;
    }
    ask(asked.join(QLatin1Char(' ')), {});
    m_offered = sets;
    m_edit->setFocus();
}

void EntryLine::dropOffer() {
    if (!m_offered.empty())
        showHelp();
}

void EntryLine::submit() {
    if (!m_offered.empty()) {
        takeSets(std::exchange(m_offered, {}));
        return;
    }
    submitLines(m_meant.isEmpty() ? QStringList{m_edit->text()} : QStringList(m_meant), m_doubted);
}

void EntryLine::paste(const QString& text) {
    if (text.contains(QLatin1Char('\t')))
        Q_EMIT blockPasted(text);
    else if (const QStringList lines = linesOf(text); !lines.isEmpty())
        submitLines(lines, false);
}

void EntryLine::submitLines(const QStringList& lines, bool sure) {
    std::vector<Set> sets;
    QStringList meant;
    QString question, doubts;
    const bool typed = lines.size() == 1 && lines.front() == m_edit->text();
    for (qsizetype i = 0; i < lines.size(); ++i) {
        const QString& line = lines[i];
        const QString place =
            lines.size() > 1 ? tr("Line %1 of what was pasted: ").arg(i + 1) : QString();
        ReadLine read = readSetLine(view(line), massUnit(m_unit));
        if (const auto* problem = std::get_if<LineProblem>(&read)) {
            say(place + problemText(*problem, line, m_unit), false);
            m_meant.clear();
            if (typed)
                m_edit->markRefused(static_cast<int>(problem->where.start),
                                    static_cast<int>(problem->where.length),
                                    QString::fromStdU16String(problem->instead));
            return;
        }
        if (const auto* asked = std::get_if<LineQuestion>(&read);
            asked && asked->kind == LineQuestion::Kind::Load) {
            // A light load that has been lifted before needs no question.
            ReadLine named = readSetLine(asked->meant);
            if (const auto* set = std::get_if<TypedSet>(&named); set && isKnown(set->load))
                read = std::move(named);
        }
        if (const auto* asked = std::get_if<LineQuestion>(&read)) {
            const bool forgotten = asked->kind == LineQuestion::Kind::Load;
            auto next = forgotten && lines.size() == 1 ? answers::nextLoad(m_today, m_lastTime)
                                                       : std::nullopt;
            if (next && m_ceiling && *next > *m_ceiling)
                next.reset();
            meant << (next ? massText(*next, m_unit) + unitName(m_unit) + QLatin1Char(' ') + line
                           : QString::fromStdU16String(asked->meant));
            if (question.isEmpty()) {
                question = place + (forgotten ? forgottenLoadText(*asked, next, m_unit)
                                              : questionText(*asked));
                if (typed)
                    m_edit->markRefused(static_cast<int>(asked->where.start),
                                        static_cast<int>(asked->where.length));
            }
            continue;
        }
        if (const auto* gap = std::get_if<TypedGap>(&read)) {
            noteGap(*gap, place, lines.size() == 1);
            return;
        }
        meant << line;
        sets.push_back(setFromTyped(std::get<TypedSet>(read)));
        if (const QString doubt = m_doubts && !sure ? m_doubts(sets.back()) : QString();
            !doubt.isEmpty() && doubts.isEmpty())
            doubts = place + doubt;
    }
    if (!question.isEmpty() || !doubts.isEmpty()) {
        ask(question.isEmpty() ? doubts : question, meant);
        m_doubted = question.isEmpty();
        if (m_doubted && typed)
            m_edit->markRefused();
        return;
    }
    takeSets(sets);
}

// Beside sets that are pasted it would be another step of undo: it is typed alone.
void EntryLine::noteGap(const TypedGap& gap, const QString& place, bool alone) {
    const QString why =
        !alone || !m_note ? place + tr("What was not possible is typed on its own.") : m_note(gap);
    if (!why.isEmpty()) {
        refuse(why);
        return;
    }
    m_edit->setText(QString());
    m_edit->forgetRefused();
    showHelp();
}

void EntryLine::takeSets(const std::vector<Set>& sets) {
    const QString why = m_take(sets);
    if (!why.isEmpty()) {
        refuse(why);
        return;
    }
    m_edit->setText(QString()); // and its own undo ends: what was taken is the log's to take back
    m_edit->forgetRefused();
    showHelp();
    for (const Set& set : sets)
        if (const QString flags = flagText(set, m_unit); !flags.isEmpty())
            say(tr("Taken, and flagged for a look: %1").arg(flags), false);
}

void EntryLine::step(int direction) {
    const QString typed = m_edit->text().trimmed();
    std::optional<Mass> load;
    if (typed.isEmpty()) {
        load = direction > 0 && m_notLifted ? m_under
               : direction > 0              ? answers::nextLoad(m_today, m_lastTime)
               : m_today.empty()            ? std::nullopt
                                            : std::optional(m_today.back());
    } else {
        const auto from = readLoad(view(typed), massUnit(m_unit));
        if (!std::holds_alternative<Mass>(from))
            return; // speeds are there already: the keys would only lose them
        load = direction > 0 ? answers::loadAfter(std::get<Mass>(from), m_today, m_lastTime)
                             : answers::loadBefore(std::get<Mass>(from), m_lastTime);
    }
    if (direction > 0 && m_notLifted && (!load || *load >= *m_notLifted)) {
        say(said(answers::notLiftedHint(*m_notLifted), m_unit), false);
        return;
    }
    if (direction > 0 && load && m_ceiling && *load > *m_ceiling) {
        say(said(answers::ceilingHint(*load, *m_ceiling), m_unit), false);
        return;
    }
    if (direction > 0 && load && !answers::notAbove(load, m_limit, m_maxima)) {
        say(said(answers::estimateHint(*load, kilograms(*m_limit)), m_unit), false);
        return;
    }
    if (load)
        m_edit->setText(massText(*load, m_unit) + QLatin1Char(' '));
}

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
// Sets: typed, refused, doubted, half typed, pasted.
#include "tests/ui/monkey/monkey.h"

#include <QAbstractScrollArea>
#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QDateEdit>
#include <QLabel>
#include <QLineEdit>
#include <QTableView>

#include <algorithm>

namespace slopebook::monkey {

namespace {
const char* const reasons[] = {"slipped", "belt", "helped up", "stopped short"};
// None of these can ever be a set.
const char* const badLines[] = {"fast",         "60",        "6o 0.80 0.79",  "60 0.9,1",
                                "60 0",         "60x 0.9",   "60 0.9!",       "3000 0.9",
                                "60 0.92 o.90", "60 - 0.80", "0.8o 0.80 0.7", "70! 0.3 0.2"};
} // namespace

Date Monkey::day() const {
    const QDate at = m_clock.now().date();
    return {std::chrono::year{at.year()}, std::chrono::month{static_cast<unsigned>(at.month())},
            std::chrono::day{static_cast<unsigned>(at.day())}};
}

std::string Monkey::today() const {
    return m_clock.now().date().toString(Qt::ISODate).toStdString();
}

// Both decimal marks are typed, whatever the language.
QString Monkey::decimal(long thousandths) {
    QString text = QStringLiteral("%1").arg(thousandths / 1000) +
                   QLatin1Char(m_dice.oneIn(3) ? ',' : '.') +
                   QStringLiteral("%1").arg(thousandths % 1000, 3, 10, QLatin1Char('0'));
    while (text.endsWith(QLatin1Char('0')))
        text.chop(1);
    if (!text.back().isDigit())
        text.chop(1);
    return text;
}

/// On a line that falls with the load, such as an athlete has.
SetEntry Monkey::plausibleSet() {
    SetEntry set{.grams = 30'000 + 2'500L * m_dice.upTo(21),
                 .maximum = false,
                 .out = {},
                 .note = {},
                 .reps = {}};
    set.maximum = set.grams >= 70'000 && m_dice.oneIn(6);
    long speed = 1'500 - set.grams * 12 / 1000 + m_dice.upTo(20);
    const int reps = set.maximum ? 1 : 1 + m_dice.upTo(4);
    for (int i = 0; i < reps; ++i, speed -= 10L * m_dice.upTo(4))
        set.reps.push_back({speed * 1000, {}});
    if (m_dice.oneIn(5))
        set.note = m_dice.of(reasons);
    if (!set.note.empty() && reps > 1 && m_dice.oneIn(2))
        set.reps.back().out = set.note; // a rep left out takes the note as its reason
    return set;
}

QString Monkey::lineOf(const SetEntry& set) {
    QString text = decimal(set.grams) + QLatin1String(set.maximum       ? "!"
                                                      : m_dice.oneIn(8) ? "kg"
                                                                        : "");
    for (const RepEntry& rep : set.reps)
        text += QLatin1Char(m_dice.oneIn(10) ? ';' : ' ') + decimal(rep.micro / 1000) +
                QLatin1String(rep.out.empty() ? "" : "x");
    return set.note.empty() ? text
                            : text + QStringLiteral(" # ") + QString::fromStdString(set.note);
}

SessionEntry& Monkey::sessionToWrite(Book& book) const {
    if (m_chosen.session != keyToCome) {
        SessionEntry& held = book.sessions.at(m_chosen.session);
        if (!held.sets.contains(m_chosen.lift)) // the first set brings along what is offered
            setUnder(held, {}, {});
        return held;
    }
    SessionEntry& session = book.sessions[keyToCome];
    const Shown now = shown();
    session.athlete = m_chosen.athlete;
    session.day = m_newDay.value_or(today());
    session.ordinal = m_book.nextOrdinal(session.athlete, session.day);
    setUnder(session, {}, {});
    session.bodyGrams = std::lround(1000 * QString(now.body).replace(u',', u'.').toDouble());
    return session;
}

Book Monkey::withSets(const std::vector<SetEntry>& sets) const {
    Book after = m_book;
    auto& held = sessionToWrite(after).sets[m_chosen.lift];
    held.insert(held.end(), sets.begin(), sets.end());
    return after;
}

void Monkey::goToLine() {
    m_hands->key(Qt::Key_L, Qt::ControlModifier);
    if (!line().hasFocus())
        fail(QStringLiteral("Ctrl+L does not come to the line"));
    m_hands->key(Qt::Key_Escape);
    if (!line().text().isEmpty())
        m_hands->typeOver({});
}

void Monkey::enter(int most) {
    for (int i = 0; i < most && !changed(); ++i)
        m_hands->key(Qt::Key_Return);
}

void Monkey::mustBeThere(const Book&, const QString& typed) {
    if (!changed())
        fail(QStringLiteral(
                 "\"%1\" was not taken, though Enter was pressed and pressed again. The line: "
                 "\"%2\". The answer: %3")
                 .arg(typed, line().text(), answer()));
}

void Monkey::typeSet() {
    goToLine();
    const SetEntry set = plausibleSet();
    const QString typed = lineOf(set);
    say(typed);
    const Book after = withSets({set});
    allow(after);
    m_hands->type(typed);
    m_hands->key(Qt::Key_Return);
    if (!changed()) {
        if (line().text() != typed)
            fail(QStringLiteral("\"%1\" was neither taken nor left to be corrected: \"%2\"")
                     .arg(typed, line().text()));
        if (m_dice.oneIn(4)) { // thinks better of it
            m_hands->typeOver({});
            return;
        }
        enter();
        mustBeThere(after, typed);
    }
    if (!line().text().isEmpty())
        fail(QStringLiteral("A set was taken, and the line still holds ") + line().text());
}

// What is typed after a refusal is what is meant, not what was refused and it together.
void Monkey::typeRefused() {
    goToLine();
    const QString bad = QLatin1String(m_dice.of(badLines));
    say(bad);
    m_hands->type(bad);
    m_hands->key(Qt::Key_Return);
    if (changed())
        return; // compared with nothing entered
    if (!answer().startsWith(QChar(0x26a0)))
        fail(QStringLiteral("\"%1\" was refused without a word: %2").arg(bad, answer()));
    if (m_dice.oneIn(4))
        return;
    const SetEntry set = plausibleSet();
    const QString typed = lineOf(set);
    say(QStringLiteral("; then ") + typed);
    allow(withSets({set}));
    m_hands->type(typed);
    const QString stands = line().text();
    enter();
    if (!changed() && stands != typed)
        fail(QStringLiteral("\"%1\" typed after the refused \"%2\" became \"%3\"")
                 .arg(typed, bad, stands));
}

// Speeds without their decimal mark: asked about, and taken as meant at the second Enter.
void Monkey::typeDoubtful() {
    goToLine();
    SetEntry set = plausibleSet();
    set.maximum = false;
    set.note.clear();
    QString typed = decimal(set.grams);
    for (RepEntry& rep : set.reps) {
        const long hundredths = std::clamp(rep.micro / 10'000, 10L, 99L);
        rep = {hundredths * 10'000, {}};
        typed += QStringLiteral(" %1").arg(hundredths);
    }
    say(typed);
    m_hands->type(typed);
    m_hands->key(Qt::Key_Return);
    if (changed())
        fail(QStringLiteral("\"%1\" was taken unasked").arg(typed));
    if (m_dice.oneIn(3)) {
        m_hands->key(Qt::Key_Escape);
        if (line().text() != typed)
            fail(QStringLiteral("Esc does not leave \"%1\" to be corrected: \"%2\"")
                     .arg(typed, line().text()));
        say(QStringLiteral("; Esc"));
        return;
    }
    const Book after = withSets({set});
    allow(after);
    enter();
    mustBeThere(after, typed);
}

// Half a set is typed for whom and what is shown; the hand on the wheel changes none of it.
void Monkey::typeUnderTheWheel() {
    goToLine();
    const SetEntry set = plausibleSet();
    const QString typed = lineOf(set);
    allow(withSets({set}));
    m_hands->type(typed);
    for (int i = 1 + m_dice.upTo(3); i > 0; --i) {
        QWidget* const all[] = {&part<QAbstractScrollArea>("indexList"), &part<QComboBox>("lift"),
                                &part<QComboBox>("sessions"), &dayField(), &deviceField()};
        QWidget& over = *m_dice.of(all);
        say(QStringLiteral("wheel over %1, ").arg(over.accessibleName()));
        m_hands->wheel(over, m_dice.oneIn(2) ? 1 : -1);
    }
    say(typed);
    enter(4);
    m_hands->typeOver({});
}

void Monkey::leaveHalfTyped() {
    goToLine();
    const QString typed = lineOf(plausibleSet());
    m_hands->type(typed.left(1 + m_dice.upTo(static_cast<int>(typed.size()))));
    say(line().text());
    const Qt::Key pages[] = {Qt::Key_2, Qt::Key_3, Qt::Key_4, Qt::Key_7};
    switch (m_dice.upTo(4)) {
    case 0:
        m_hands->key(m_dice.of(pages), Qt::ControlModifier);
        break;
    case 1:
        m_hands->click(setTable());
        break;
    case 2:
        m_hands->key(Qt::Key_Tab);
        break;
    default:
        m_hands->key(Qt::Key_F, Qt::ControlModifier);
        m_hands->key(Qt::Key_Escape);
    }
}

void Monkey::pasteLines() {
    goToLine();
    const bool cells = m_dice.oneIn(2), mouse = m_dice.oneIn(3), comma = m_dice.oneIn(2);
    std::vector<SetEntry> sets;
    QStringList lines;
    for (int i = 2 + m_dice.upTo(2); i > 0; --i) {
        SetEntry set = plausibleSet();
        set.maximum = false;
        set.note.clear();
        for (RepEntry& rep : set.reps)
            rep.out.clear();
        QString one =
            lineOf(set).replace(QLatin1Char(';'), QLatin1Char(' ')).remove(QLatin1String("kg"));
        if (cells) // a sheet has one mark
            one.replace(QLatin1Char(comma ? '.' : ','), QLatin1Char(comma ? ',' : '.'));
        lines << (cells ? QString(one).replace(QLatin1Char(' '), QLatin1Char('\t')) : one);
        sets.push_back(set);
    }
    say(lines.join(QLatin1String(" / ")) + QLatin1String(mouse ? " by the mouse" : ""));
    QApplication::clipboard()->setText(lines.join(QLatin1Char('\n')) + QLatin1Char('\n'));
    allow(withSets(sets));
    m_hands->expect([this](QWidget&) { m_hands->key(Qt::Key_Return); });
    if (mouse)
        line().paste(); // what the menu of the line does
    else
        m_hands->key(Qt::Key_V, Qt::ControlModifier);
    enter();
    goToLine();
}

} // namespace slopebook::monkey

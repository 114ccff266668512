// SPDX-License-Identifier: GPL-3.0-or-later
// Whose session, which lift, which day: what is chosen, and the head of the session.
#include "tests/ui/monkey/monkey.h"

#include <QAbstractButton>
#include <QComboBox>
#include <QDateEdit>
#include <QDialog>
#include <QLineEdit>
#include <QTest>

namespace slopebook::monkey {

namespace {
const char* const places[] = {"boathouse", "hall 2", "outdoors", "Kraftraum"};

std::string nameIn(const std::string& row) {
    const auto start = row.find('|') + 1;
    return row.substr(start, row.find('|', start) - start);
}

std::vector<std::string> names(const Book& book, const std::string& table) {
    std::vector<std::string> all;
    for (const std::string& row : book.rest)
        if (row.starts_with(table + "|"))
            all.push_back(nameIn(row));
    return all;
}
} // namespace

void Monkey::chooseAthlete() {
    const std::string name = m_dice.of(names(m_book, "athletes"));
    const QString typed = QString::fromStdString(name);
    say(typed);
    m_hands->key(Qt::Key_F, Qt::ControlModifier);
    m_hands->type(typed);
    m_hands->key(Qt::Key_Return);
    if (name == m_chosen.athlete)
        return;
    m_chosen.athlete = name;
    m_chosen.session = m_book.latest(name, today());
    // What is being lifted is gone on with, whatever its day.
    if (const Key at = shown().session; m_chosen.session == keyToCome && m_lifted.contains(at) &&
                                        m_book.sessions.at(at).athlete == name)
        m_chosen.session = at;
    m_newDay.reset();
}

void Monkey::chooseLift() {
    const std::string name = m_dice.of(names(m_book, "lifts"));
    say(QString::fromStdString(name));
    m_hands->key(Qt::Key_F, Qt::ControlModifier | Qt::ShiftModifier);
    m_hands->type(QString::fromStdString(name));
    m_hands->key(Qt::Key_Return);
    if (shown().lift != name)
        m_hands->key(Qt::Key_Return);
    m_chosen.lift = name;
}

void Monkey::chooseSession() {
    m_hands->key(Qt::Key_1, Qt::ControlModifier);
    auto& sessions = part<QComboBox>("sessions");
    m_hands->focus(sessions);
    const Qt::Key way = m_dice.oneIn(3) ? Qt::Key_Up : Qt::Key_Down;
    for (int i = 1 + m_dice.upTo(3); i > 0 && sessions.hasFocus(); --i)
        m_hands->key(way);
    const Shown now = shown();
    say(now.day);
    if (now.athlete != m_chosen.athlete || now.lift != m_chosen.lift)
        fail(QStringLiteral("Choosing a session changed athlete or lift"));
    if (now.session != m_chosen.session || now.day.toStdString() != m_newDay)
        m_newDay.reset();
    m_chosen.session = now.session;
}

void Monkey::beginSession() {
    m_hands->key(Qt::Key_N, Qt::ControlModifier | Qt::ShiftModifier);
    m_chosen.session = keyToCome;
    m_newDay.reset();
}

void Monkey::startSession() {
    if (m_chosen.session != keyToCome || m_dice.oneIn(2))
        beginSession();
    m_hands->key(Qt::Key_1, Qt::ControlModifier);
    Book after = m_book;
    sessionToWrite(after);
    allow(after);
    if (m_dice.oneIn(2)) {
        m_hands->focus(bodyField());
        m_hands->key(Qt::Key_Return);
    } else {
        m_hands->click(part<QAbstractButton>("startSession"));
    }
    if (!changed())
        fail(QStringLiteral("Start makes no session: ") + answer());
}

// A day is typed as it stands, or refused in words; never another day, never in silence.
void Monkey::typeDay() {
    goToLine();
    QString typed = m_clock.now().date().addDays(m_dice.upTo(30) - 20).toString(Qt::ISODate);
    if (m_dice.oneIn(3))
        typed.replace(0, 4, QStringLiteral("%1").arg(2022 + m_dice.upTo(4)));
    else if (m_dice.oneIn(8))
        typed.replace(8, 2, QStringLiteral("32"));
    const bool is = QDate::fromString(typed, Qt::ISODate).isValid();
    QDateEdit& field = dayField();
    const int way = m_dice.upTo(4);
    if (way == 0)
        m_hands->focus(field);
    else
        m_hands->click(field, {4 + m_dice.upTo(60), field.height() / 2});
    if (way == 2)
        m_hands->key(Qt::Key_A, Qt::ControlModifier);
    else if (way == 3)
        m_hands->key(Qt::Key_Home);
    const QString before = answer();
    Book after = m_book;
    if (is && m_chosen.session != keyToCome) {
        SessionEntry& session = after.sessions.at(m_chosen.session);
        if (session.day != typed.toStdString())
            session.ordinal = m_book.nextOrdinal(session.athlete, typed.toStdString());
        session.day = typed.toStdString();
        allow(after);
    }
    say(QStringLiteral("%1 after %2").arg(typed).arg(way));
    m_hands->type(typed);
    m_hands->key(m_dice.oneIn(2) ? Qt::Key_Return : Qt::Key_Tab);
    QCoreApplication::processEvents();
    const bool asked = m_hands->seen() > 0 || answer() != before;
    const QString stands = dayShown();
    if (m_chosen.session != keyToCome) {
        if (is && !asked && !changed() && after != m_book)
            fail(QStringLiteral("The day typed, %1, was lost in silence: %2").arg(typed, stands));
        if (!is && asked && stands == typed)
            goToLine(); // refused in words, and left to be corrected
        return;
    }
    if (is && stands == typed)
        m_newDay = typed.toStdString();
    else if (!is && asked && stands == typed)
        beginSession(); // refused in words, and left to be corrected
    else if (!asked || stands.toStdString() != m_newDay.value_or(today()))
        fail(QStringLiteral("The day typed, %1, became %2").arg(typed, stands));
}

// What is written down for the lift that is shown: what stood on disk, or what was offered where
// nothing did, with one of the two changed.
void Monkey::setUnder(SessionEntry& session, std::optional<std::string> device,
                      std::optional<std::string> place) const {
    UnderEntry under;
    if (const auto held = session.under.find(m_chosen.lift); held != session.under.end())
        under = held->second;
    else if (!session.sets.contains(m_chosen.lift))
        under = shownUnder();
    under.device = device.value_or(under.device);
    under.place = place.value_or(under.place);
    if (under == UnderEntry{})
        session.under.erase(m_chosen.lift);
    else
        session.under[m_chosen.lift] = under;
}

UnderEntry Monkey::shownUnder() const {
    const Shown now = shown();
    return {.device = now.device.toStdString(), .place = now.place.trimmed().toStdString()};
}

void Monkey::typeDevice() {
    m_hands->key(Qt::Key_1, Qt::ControlModifier);
    const std::string name = m_dice.of(names(m_book, "devices"));
    say(QString::fromStdString(name));
    Book after = m_book;
    if (m_chosen.session != keyToCome) {
        setUnder(after.sessions.at(m_chosen.session), name, {});
        allow(after);
    }
    m_hands->focus(deviceField());
    QTest::qSleep(2); // a letter at once after another one's would be looked for together with it
    m_hands->type(QString::fromStdString(name).left(1).toLower());
    QCoreApplication::processEvents();
    const bool asked = m_hands->seen() > 0;
    if (!asked && shown().device.toStdString() != name)
        fail(QStringLiteral("The device chosen, %1, became %2")
                 .arg(QString::fromStdString(name), shown().device));
    if (!asked && !changed() && after != m_book)
        fail(QStringLiteral("The device chosen was not kept"));
}

void Monkey::typePlace() {
    m_hands->key(Qt::Key_1, Qt::ControlModifier);
    const QString typed = QLatin1String(m_dice.of(places));
    say(typed);
    if (m_chosen.session != keyToCome) {
        Book after = m_book;
        setUnder(after.sessions.at(m_chosen.session), {}, typed.toStdString());
        allow(after);
    }
    m_hands->focus(placeField());
    m_hands->typeOver(typed);
    m_hands->key(m_dice.oneIn(2) ? Qt::Key_Return : Qt::Key_Tab);
    if (placeField().text() != typed)
        fail(QStringLiteral("The place typed, %1, became %2").arg(typed, placeField().text()));
}

void Monkey::typeBodyMass() {
    goToLine();
    const bool held = m_chosen.session != keyToCome;
    const long grams = 60'000 + 500L * m_dice.upTo(80);
    const QString typed = decimal(grams);
    say(typed);
    if (held && m_dice.oneIn(3)) {
        const QString before = answer();
        m_hands->focus(bodyField());
        m_hands->typeOver(QStringLiteral("heavy"));
        m_hands->key(Qt::Key_Tab);
        if (changed() || answer() == before)
            fail(QStringLiteral("A body mass of \"heavy\" was not refused in words"));
    }
    if (held) {
        Book after = m_book;
        after.sessions.at(m_chosen.session).bodyGrams = grams;
        allow(after);
    }
    m_hands->focus(bodyField());
    m_hands->typeOver(typed);
    m_hands->key(held && m_dice.oneIn(2) ? Qt::Key_Return : Qt::Key_Tab); // Enter starts a new one
}

void Monkey::changeDetails() {
    if (m_chosen.session == keyToCome)
        return;
    const QString typed = QStringLiteral("slept %1 h").arg(4 + m_dice.upTo(6));
    const bool cancelled = m_dice.oneIn(3);
    Book after = m_book;
    after.sessions.at(m_chosen.session).note = typed.toStdString();
    if (!cancelled)
        allow(after);
    say(typed + (cancelled ? QStringLiteral(", cancelled") : QString()));
    m_hands->expect([&](QWidget& dialog) {
        m_hands->focus(*dialog.findChildren<QLineEdit*>().last());
        m_hands->typeOver(typed);
        m_hands->key(cancelled ? Qt::Key_Escape : Qt::Key_Return);
    });
    m_hands->key(Qt::Key_D, Qt::ControlModifier | Qt::ShiftModifier);
}

void Monkey::removeSession() {
    if (m_chosen.session == keyToCome)
        return;
    Book after = m_book;
    after.sessions.erase(m_chosen.session);
    // A battery session's rows go with it.
    for (const char* kind : {"conditions|", "gap|"})
        std::erase_if(after.rest, [begin = kind + std::to_string(m_chosen.session) + "|"](
                                      const std::string& row) { return row.starts_with(begin); });
    allow(after);
    say(QString::fromStdString(m_book.sessions.at(m_chosen.session).day));
    m_window->actions().removeSession->trigger();
    if (changed()) {
        m_chosen.session = keyToCome;
        m_newDay.reset();
    }
}

} // namespace slopebook::monkey

// SPDX-License-Identifier: GPL-3.0-or-later
// What must change nothing, and clicks and keys anywhere.
#include "tests/ui/monkey/monkey.h"
#include "ui/window/workspace.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAbstractSpinBox>
#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QDateEdit>
#include <QLabel>
#include <QLineEdit>
#include <QMenuBar>
#include <QTabBar>
#include <QTimer>

namespace slopebook::monkey {

namespace {

constexpr Qt::Key pages[] = {Qt::Key_1, Qt::Key_2, Qt::Key_3, Qt::Key_4, Qt::Key_5,
                             Qt::Key_6, Qt::Key_7, Qt::Key_8, Qt::Key_9, Qt::Key_0};

QList<QWidget*> visibleIn(const QWidget& window) {
    QList<QWidget*> all = window.findChildren<QWidget*>();
    all.removeIf([&](const QWidget* one) {
        return !one->isVisible() || one->window() != &window || one->visibleRegion().isEmpty();
    });
    return all;
}

/// The part of a widget that a click can reach: what is scrolled away or beyond the window is not.
QRect inSight(const QWidget& one) {
    return one.visibleRegion().boundingRect();
}

/// What a control says of what is chosen in it; nothing for one that holds no choice.
std::optional<QString> valueOf(const QWidget& control) {
    if (const auto* combo = qobject_cast<const QComboBox*>(&control))
        return combo->itemText(combo->currentIndex());
    if (qobject_cast<const QAbstractSpinBox*>(&control) || qobject_cast<const QLineEdit*>(&control))
        return control.property("text").toString();
    return std::nullopt;
}

std::map<const QWidget*, QString> valuesIn(const QWidget& window) {
    std::map<const QWidget*, QString> all;
    for (const QWidget* one : visibleIn(window))
        if (const auto value = valueOf(*one))
            all[one] = *value;
    return all;
}

QString nameOf(const QWidget& one) {
    return QLatin1String(one.metaObject()->className()) +
           QStringLiteral(" \"%1\"").arg(one.accessibleName().isEmpty() ? one.objectName()
                                                                        : one.accessibleName());
}

bool hasFocus(const QWidget& one) {
    const QWidget* focus = QApplication::focusWidget();
    return focus && (focus == &one || one.isAncestorOf(focus) || focus->isAncestorOf(&one));
}

} // namespace

// No control takes the wheel that was not clicked before.
void Monkey::wheelAnywhere() {
    if (m_dice.oneIn(2))
        m_hands->key(m_dice.of(pages), Qt::ControlModifier);
    QList<QWidget*> targets = visibleIn(*m_window);
    const bool controls = !m_dice.oneIn(4);
    targets.removeIf([&](const QWidget* one) {
        return hasFocus(*one) || !one->isEnabled() || (controls && !valueOf(*one)) ||
               qobject_cast<const QTabBar*>(one);
    });
    if (targets.isEmpty())
        return;
    QWidget& over = *targets.at(m_dice.upTo(static_cast<int>(targets.size())));
    say(nameOf(over));
    const auto before = valuesIn(*m_window);
    const ui::Page page = m_window->workspace()->page();
    m_hands->wheel(over, (m_dice.oneIn(2) ? 1 : -1) * (1 + m_dice.upTo(3)));
    if (page != m_window->workspace()->page())
        fail(QStringLiteral("The wheel over %1 turned the page").arg(nameOf(over)));
    const auto after = valuesIn(*m_window);
    for (const auto& [control, value] : before)
        // A box that was empty has been filled by what its page read beside the window.
        if (const auto now = after.find(control);
            now != after.end() && now->second != value && !value.isEmpty())
            fail(QStringLiteral("The wheel over %1 changed %2 from \"%3\" to \"%4\"")
                     .arg(nameOf(over), nameOf(*control), value, now->second));
}

void Monkey::turnPage() {
    m_hands->key(m_dice.of(pages), Qt::ControlModifier);
    say(ui::entryOf(m_window->workspace()->page()).title());
}

void Monkey::walkByTab() {
    const bool back = m_dice.oneIn(3);
    for (int i = 1 + m_dice.upTo(8); i > 0; --i)
        m_hands->key(back ? Qt::Key_Backtab : Qt::Key_Tab,
                     back ? Qt::ShiftModifier : Qt::NoModifier);
    if (const QWidget* focus = QApplication::focusWidget())
        say(nameOf(*focus));
}

// A night with or without sleep, and the window's own look around after it. A session that is begun
// then is of the new day; one that is being lifted goes on.
void Monkey::sleepPastMidnight() {
    const QDateTime at = m_clock.now();
    if (at.time().hour() < 20 && m_dice.oneIn(2))
        m_clock.moveTo({at.date(), QTime(23, 40)});
    else if (at.time().hour() == 23)
        m_clock.moveOn(std::chrono::minutes{50});
    else
        m_clock.moveTo({at.date().addDays(1 + m_dice.upTo(2)), QTime(12, 0)});
    if (at.secsTo(m_clock.now()) > 7'200)
        m_lifted.clear();
    say(m_clock.now().toString(Qt::ISODate));
    for (QTimer* timer : m_window->workspace()->findChildren<QTimer*>())
        if (timer->isActive() && !timer->isSingleShot()) {
            QTimerEvent due(timer->timerId());
            QCoreApplication::sendEvent(timer, &due);
        }
    QCoreApplication::processEvents();
    const Shown now = shown();
    if (now.athlete != m_chosen.athlete || now.lift != m_chosen.lift)
        fail(QStringLiteral("The night changed athlete or lift"));
    m_chosen.session = now.session;
}

void Monkey::speakOtherwise() {
    const QString code = QLatin1String(m_dice.oneIn(2) ? "de" : "en");
    say(code);
    for (QAction* action : m_window->actions().languages->actions())
        if (action->data().toString() == code) {
            action->trigger();
            break;
        }
    QCoreApplication::processEvents();
    if (m_chosen.session == keyToCome && shown().day.toStdString() == today())
        m_newDay.reset();
}

void Monkey::clickAnywhere() {
    if (m_dice.oneIn(2))
        m_hands->key(m_dice.of(pages), Qt::ControlModifier);
    allowAnything();
    m_hands->setCurious(true);
    for (int i = 1 + m_dice.upTo(2); i > 0; --i) {
        QList<QWidget*> targets = visibleIn(*m_window);
        const bool buttons = m_dice.oneIn(2);
        targets.removeIf([buttons](const QWidget* one) {
            if (buttons && !qobject_cast<const QAbstractButton*>(one))
                return true;
            return !one->isEnabled() || qobject_cast<const QMenuBar*>(one) ||
                   qobject_cast<const QLabel*>(one) || inSight(*one).width() < 3 ||
                   inSight(*one).height() < 3;
        });
        if (targets.isEmpty())
            continue;
        QWidget& at = *targets.at(m_dice.upTo(static_cast<int>(targets.size())));
        say(nameOf(at) + QStringLiteral(", "));
        const QRect seen = inSight(at);
        m_hands->click(at, seen.topLeft() + QPoint(1 + m_dice.upTo(seen.width() - 2),
                                                   1 + m_dice.upTo(seen.height() - 2)));
    }
    m_hands->settle();
    tidyUp();
}

void Monkey::menuAnywhere() {
    const ui::Actions& all = m_window->actions();
    const QList<QAction*> some{all.changeAthlete, all.changeLift, all.checkLoads,  all.details,
                               all.editSet,       all.removeSet,  all.devices,     all.blocks,
                               all.help,          all.about,      all.showFigures, all.copyFigures,
                               all.restTimer,     all.typeSet,    all.findLift,    all.fingers};
    QAction* action = some.at(m_dice.upTo(static_cast<int>(some.size())));
    say(action->text());
    allowAnything();
    m_hands->setCurious(true);
    if (action->isEnabled())
        action->trigger();
    m_hands->settle();
    tidyUp();
}

// All but Enter and what comes with Ctrl or Alt; what is left half typed is left.
void Monkey::keysAnywhere() {
    static const std::vector<Qt::Key> some{
        Qt::Key_0,         Qt::Key_1,      Qt::Key_4,      Qt::Key_9,      Qt::Key_A,
        Qt::Key_E,         Qt::Key_X,      Qt::Key_L,      Qt::Key_Period, Qt::Key_Comma,
        Qt::Key_Space,     Qt::Key_Up,     Qt::Key_Up,     Qt::Key_Down,   Qt::Key_Down,
        Qt::Key_Left,      Qt::Key_Right,  Qt::Key_Home,   Qt::Key_End,    Qt::Key_Tab,
        Qt::Key_Backspace, Qt::Key_Delete, Qt::Key_Escape, Qt::Key_F2,     Qt::Key_PageUp,
        Qt::Key_PageDown};
    if (m_dice.oneIn(2))
        m_hands->key(m_dice.of(pages), Qt::ControlModifier);
    allowAnything();
    m_hands->setCurious(true);
    for (int i = m_dice.upTo(12); i > 0; --i)
        m_hands->key(Qt::Key_Tab);
    if (const QWidget* focus = QApplication::focusWidget())
        say(nameOf(*focus) + QLatin1Char(':'));
    for (int i = 1 + m_dice.upTo(8); i > 0; --i) {
        const Qt::Key key = m_dice.of(some);
        say(QLatin1Char(' ') + QKeySequence(key).toString());
        if (key >= Qt::Key_Space && key <= Qt::Key_Z)
            m_hands->type(QString(QChar(static_cast<char16_t>(key))).toLower());
        else
            m_hands->key(key);
    }
    m_hands->settle();
    tidyUp();
}

/// What is half typed is finished or thrown away, so that the next step begins from what stands.
void Monkey::tidyUp() {
    goToLine();
    const Shown now = shown();
    m_newDay.reset();
    if (now.session == keyToCome) {
        m_hands->key(Qt::Key_N, Qt::ControlModifier | Qt::ShiftModifier);
        return;
    }
    const auto held = disk().sessions.find(now.session);
    if (held == disk().sessions.end())
        return;
    const long grams = held->second.bodyGrams;
    m_hands->focus(bodyField());
    m_hands->typeOver(grams > 0 ? decimal(grams) : QString());
    goToLine();
}

} // namespace slopebook::monkey

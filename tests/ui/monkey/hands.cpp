// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/monkey/hands.h"

#include <QAbstractButton>
#include <QApplication>
#include <QDialog>
#include <QMessageBox>
#include <QTest>
#include <QTimer>
#include <QWheelEvent>
#include <QWindow>
#include <QtTest/qtestspontaneevent.h>

namespace slopebook::monkey {

namespace {
constexpr int notch = 120; // eighths of a degree
constexpr int lookEvery = 1;

QWindow* windowWithKeys(QWidget& window) {
    QWindow* at = QGuiApplication::focusWindow();
    if (!at || !at->isVisible()) {
        window.activateWindow();
        QCoreApplication::processEvents();
        at = QGuiApplication::focusWindow();
    }
    return at ? at : window.windowHandle();
}
} // namespace

void Hands::key(Qt::Key key, Qt::KeyboardModifiers with) {
    QTest::keyClick(windowWithKeys(m_window), key, with);
}

void Hands::type(const QString& text) {
    for (const QChar c : text) {
        QWindow* at = windowWithKeys(m_window);
        if (c.unicode() < 128)
            QTest::keyClick(at, c.toLatin1());
        else
            QTest::sendKeyEvent(QTest::Click, at, Qt::Key_unknown, QString(c), Qt::NoModifier);
    }
}

void Hands::typeOver(const QString& text) {
    key(Qt::Key_A, Qt::ControlModifier);
    if (text.isEmpty())
        key(Qt::Key_Delete);
    type(text);
}

void Hands::focus(QWidget& field) {
    field.setFocus(Qt::TabFocusReason);
    QCoreApplication::processEvents();
}

void Hands::click(QWidget& where, QPoint at) {
    if (at.isNull())
        at = where.rect().center();
    QWidget* top = where.window();
    if (QWindow* window = top->windowHandle(); window && where.isVisible())
        QTest::mouseClick(window, Qt::LeftButton, Qt::NoModifier, where.mapTo(top, at));
}

void Hands::wheel(QWidget& over, int notches) {
    QWidget* top = over.window();
    QWindow* window = top->windowHandle();
    if (!window || !over.isVisible())
        return;
    const QPointF at = over.mapTo(top, over.rect().center());
    for (int i = 0; i < std::abs(notches); ++i) {
        QWheelEvent event(at, window->mapToGlobal(at), {}, {0, notches > 0 ? notch : -notch},
                          Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
        QSpontaneKeyEvent::setSpontaneous(&event);
        QCoreApplication::instance()->notify(window, &event);
    }
    QCoreApplication::processEvents();
}

void Hands::during(const std::function<void()>& work) {
    m_watching = ++m_turn;
    watch(m_turn);
    work();
    QCoreApplication::processEvents(); // what is asked once the keys have done what they do
    m_watching = 0;
}

// A timer does not fire again within its own work: each look is a timer of its own, so that the
// dialogs of dialogs are seen as well.
void Hands::watch(int turn) {
    QTimer::singleShot(lookEvery, &m_window, [this, turn] {
        if (m_watching != turn)
            return;
        watch(turn);
        if (QWidget* popup = QApplication::activePopupWidget();
            popup && popup->inherits("QMenu")) // it holds up what opened it
            popup->close();
        QWidget* dialog = QApplication::activeModalWidget();
        if (!dialog || !dialog->isVisible() || (!m_open.empty() && m_open.back() == dialog))
            return;
        m_open.emplace_back(dialog);
        ++m_seen;
        answer(*dialog);
        m_open.pop_back();
    });
}

void Hands::answer(QWidget& dialog) {
    dialog.activateWindow();
    QCoreApplication::processEvents();
    const QPointer<QWidget> still(&dialog);
    if (!m_deeds.empty() && !qobject_cast<QMessageBox*>(&dialog)) {
        const InDialog deed = std::move(m_deeds.front());
        m_deeds.pop_front();
        deed(dialog);
    } else if (auto* box = qobject_cast<QMessageBox*>(&dialog); box && m_dice.oneIn(2)) {
        if (QAbstractButton* yes = box->button(QMessageBox::Yes))
            yes->click();
        else
            key(Qt::Key_Return);
    } else if (m_curious && !dialog.inherits("QFileDialog") &&
               !dialog.inherits("QAbstractPrintDialog")) {
        play(still);
    }
    for (int tries = 0; tries < 3 && still && still->isVisible(); ++tries)
        if (auto* box = qobject_cast<QDialog*>(still.data()); box && tries > 0)
            box->reject();
        else
            key(Qt::Key_Escape);
    if (still && still->isVisible())
        still->close();
}

void Hands::play(const QPointer<QWidget>& dialog) {
    static const std::vector<const char*> texts{"7", "1", "0.9", "40 60", "Lane", "2026", "-", "x"};
    for (int i = m_dice.upTo(6); i > 0 && dialog; --i) {
        for (int tabs = m_dice.upTo(4); tabs > 0 && dialog; --tabs)
            key(Qt::Key_Tab);
        if (!dialog)
            return;
        if (m_dice.oneIn(3))
            key(m_dice.oneIn(2) ? Qt::Key_Down : Qt::Key_Space);
        else
            type(QLatin1String(m_dice.of(texts)));
    }
    if (dialog && !m_dice.oneIn(4))
        key(Qt::Key_Return);
}

int Hands::settle() {
    m_deeds.clear();
    m_curious = false;
    for (int i = 0; i < 5 && QApplication::activePopupWidget(); ++i)
        QApplication::activePopupWidget()->close();
    const auto tops = QApplication::topLevelWidgets();
    for (QWidget* top : tops)
        if (top != &m_window && top->isVisible() && top->windowType() != Qt::ToolTip)
            top->close();
    QCoreApplication::processEvents();
    if (QGuiApplication::focusWindow() != m_window.windowHandle()) {
        m_window.activateWindow();
        QCoreApplication::processEvents();
    }
    return std::exchange(m_seen, 0);
}

} // namespace slopebook::monkey

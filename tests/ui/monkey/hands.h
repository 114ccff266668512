// SPDX-License-Identifier: GPL-3.0-or-later
// Keys, mouse and wheel as a window system sends them: to the window that has the keys, to what
// lies under the pointer; and what is done in the dialogs that come up.
#pragma once

#include <QPointer>
#include <QString>
#include <QWidget>

#include <deque>
#include <functional>
#include <random>

namespace slopebook::monkey {

/// Dice that fall alike on every machine: the standard's distributions do not.
class Dice {
public:
    explicit Dice(std::uint64_t seed) : m_random(seed) {}
    /// 0 to below - 1; below must be positive.
    int upTo(int below) { return static_cast<int>(m_random() % static_cast<std::uint64_t>(below)); }
    bool oneIn(int many) { return upTo(many) == 0; }
    template <class List>
    const auto& of(const List& list) {
        return *std::next(std::begin(list), upTo(static_cast<int>(std::size(list))));
    }

private:
    std::mt19937_64 m_random;
};

class Hands {
public:
    Hands(QWidget& window, Dice& dice) : m_window(window), m_dice(dice) {}

    // Keys go to the window that has them, whatever has the focus there.
    void key(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier);
    void type(const QString& text);
    /// Replaces what stands in the field that has the focus.
    void typeOver(const QString& text);
    /// Into a field as by its Alt key or by Tab.
    void focus(QWidget& field);
    void click(QWidget& where, QPoint at = {});
    /// Over the middle of it, notches up (or down where negative); nothing is clicked before.
    void wheel(QWidget& over, int notches);

    /// What is done in the next dialog that comes up while something is worked; each is handed the
    /// dialog once it has the keys. Dialogs that nobody waits for are answered by throwing dice.
    using InDialog = std::function<void(QWidget& dialog)>;
    void expect(InDialog deed) { m_deeds.push_back(std::move(deed)); }
    /// From now on dialogs that nobody waits for are worked in: keys at random, then Enter or Esc.
    void setCurious(bool curious) { m_curious = curious; }
    /// Watches for dialogs while work is done.
    void during(const std::function<void()>& work);
    /// Closes what is still open beside the window, which has the keys again. How many dialogs came
    /// up since the last time.
    int settle();
    /// How many so far.
    int seen() const { return m_seen; }

private:
    void watch(int turn);
    void answer(QWidget& dialog);
    void play(const QPointer<QWidget>& dialog);

    QWidget& m_window;
    Dice& m_dice;
    std::deque<InDialog> m_deeds;
    std::vector<QPointer<QWidget>> m_open; ///< dialogs that are being worked in, the last on top
    int m_turn = 0;                        ///< of watching: an old turn's last look does nothing
    int m_watching = 0;                    ///< the turn under way, or 0
    bool m_curious = false;
    int m_seen = 0;
};

} // namespace slopebook::monkey

// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/tutorial/follower.h"

#include "ui/squad/changes/squadpage.h"
#include "ui/window/mainwindow.h"
#include "ui/window/menudeeds.h"
#include "ui/window/workspace.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QApplication>
#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QMenuBar>
#include <QRegularExpression>
#include <QTabBar>
#include <QTest>
#include <QTextDocumentFragment>

#include <algorithm>
#include <tuple>
#include <utility>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::app {

using namespace slopebook::ui;

namespace {

QString plain(QString words) {
    return words.remove(u'&').trimmed();
}

template <class Widget>
QList<Widget*> visible(const QWidget& window) {
    QList<Widget*> all = window.findChildren<Widget*>();
    all.removeIf([](const Widget* one) { return !one->isVisible(); });
    return all;
}

int tabCalled(const QTabBar& bar, const QString& words) {
    for (int i = 0; i < bar.count(); ++i)
        if (plain(bar.tabText(i)) == words)
            return i;
    return -1;
}

/// Every cell and heading of a table that has something to say.
void readTable(const QAbstractItemView& view, QStringList& read) {
    const QAbstractItemModel* model = view.model();
    if (!model)
        return;
    for (int column = 0; column < model->columnCount(); ++column) {
        read << model->headerData(column, Qt::Horizontal).toString();
        for (int row = 0; row < model->rowCount(); ++row)
            read << model->index(row, column).data().toString();
    }
}

QStringList shownIn(const QWidget& window) {
    QStringList read;
    for (const auto* label : visible<QLabel>(window))
        read << label->text();
    for (const auto* button : visible<QAbstractButton>(window))
        read << button->text();
    for (const auto* view : visible<QAbstractItemView>(window))
        readTable(*view, read);
    for (const auto* other : visible<QWidget>(window)) // charts, and words that are painted
        read << other->accessibleName() << other->accessibleDescription();
    return read;
}

} // namespace

bool isShown(const MainWindow& window, const QString& words) {
    const QStringList read = shownIn(window);
    return std::ranges::any_of(read, [&](const QString& text) {
        return plain(text).contains(words, Qt::CaseInsensitive);
    });
}

QString Follower::follow(const TutorialStep& step) {
    static const QRegularExpression marked(u"<(b|strong|code|kbd|i)>(.*?)</\\1>"_s);
    for (auto found = marked.globalMatch(step.html); found.hasNext();) {
        const auto one = found.next();
        const QString words = QTextDocumentFragment::fromHtml(one.captured(2)).toPlainText();
        if (const QString problem = obey(one.captured(1), words); !problem.isEmpty())
            return u"%1: %2 \"%3\""_s.arg(step.title, problem, words);
        settle();
    }
    m_named = nullptr;
    return {};
}

QString Follower::obey(const QString& mark, const QString& words) {
    if (mark == u"b")
        return press(words) ? QString() : u"nothing to press is called"_s;
    if (mark == u"strong")
        return pressMenu(words, false) ? QString() : u"no menu offers"_s;
    if (mark == u"i")
        return QTest::qWaitFor([&] { return isShown(m_window, words); }) ? QString()
                                                                         : u"nothing shows"_s;
    auto* line = m_window.findChild<QLineEdit*>(u"setLine"_s);
    if (!line || !line->isVisible())
        return u"no line takes"_s;
    if (mark == u"kbd") {
        const auto key = QKeySequence::fromString(words, QKeySequence::NativeText)[0];
        QTest::keyClick(line, key.key(), key.keyboardModifiers());
        return {};
    }
    line->selectAll();
    QTest::keyClicks(line, words);
    QTest::keyClick(line, Qt::Key_Return);
    return {};
}

// As a reader looks for it: in the menus where a way is told, else among what can be seen.
bool Follower::press(const QString& words) {
    if (words.contains(u" \u203a "_s))
        return pressMenu(words, true);
    if (m_named)
        return choose(*std::exchange(m_named, nullptr), words);
    for (auto* button : visible<QAbstractButton>(m_window))
        if (plain(button->text()) == words && button->isEnabled()) {
            QTest::mouseClick(button, Qt::LeftButton);
            return true;
        }
    for (auto* bar : visible<QTabBar>(m_window))
        if (const int tab = tabCalled(*bar, words); tab >= 0) {
            QTest::mouseClick(bar, Qt::LeftButton, {}, bar->tabRect(tab).center());
            return true;
        }
    for (const auto* label : visible<QLabel>(m_window))
        if (auto* box = qobject_cast<QComboBox*>(label->buddy());
            box && plain(label->text()) == words) {
            m_named = box;
            return true;
        }
    if (pressInLists(words))
        return true;
    const auto boxes = visible<QComboBox>(m_window);
    return std::ranges::any_of(boxes, [&](QComboBox* box) { return choose(*box, words); });
}

bool Follower::pressMenu(const QString& way, bool really) {
    for (const QAction* title : m_window.menuBar()->actions())
        for (QAction* entry : title->menu() ? title->menu()->actions() : QList<QAction*>())
            if (wayTo(title->text(), entry->text()) == way.toHtmlEscaped() && entry->isEnabled() &&
                entry->isVisible()) {
                if (really)
                    entry->trigger();
                return true;
            }
    return false;
}

bool Follower::choose(QComboBox& box, const QString& words) const {
    for (int i = 0; i < box.count(); ++i)
        if (box.itemText(i).startsWith(words)) {
            box.setCurrentIndex(i);
            Q_EMIT box.activated(i);
            return true;
        }
    return false;
}

bool Follower::pressInLists(const QString& words) const {
    for (auto* view : visible<QAbstractItemView>(m_window)) {
        const QAbstractItemModel* model = view->model();
        for (int row = 0; model && row < model->rowCount(); ++row) {
            const QModelIndex cell = model->index(row, 0);
            if (cell.data().toString() != words)
                continue;
            view->scrollTo(cell);
            QTest::mouseClick(view->viewport(), Qt::LeftButton, {},
                              view->visualRect(cell).center());
            return true;
        }
    }
    return false;
}

// Until nothing is worked out any more.
void Follower::settle() const {
    QTest::qWait(50);
    if (const auto* squad = m_window.findChild<SquadPage*>())
        std::ignore = QTest::qWaitFor([squad] { return !squad->working(); }, 30000);
    QCoreApplication::sendPostedEvents(nullptr, QEvent::LayoutRequest);
    QCoreApplication::processEvents();
}

} // namespace slopebook::app

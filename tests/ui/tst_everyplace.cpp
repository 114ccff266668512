// SPDX-License-Identifier: GPL-3.0-or-later
// What must hold on every page and in every dialog: controls fit a finger where that is wanted, and
// a pointer else; no two share an Alt key, all are reached by Tab, and all have a name and a role
// for those who hear the window.
#include "tests/ui/everyplace.h"
#include "ui/charts/chartout.h"
#include "ui/parts/fingers.h"
#include "ui/window/workspace.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAbstractScrollArea>
#include <QAbstractSpinBox>
#include <QAccessible>
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QGroupBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QMainWindow>
#include <QMenu>
#include <QMenuBar>
#include <QScrollArea>
#include <QSplitterHandle>
#include <QTabBar>
#include <QTableView>
#include <QTest>
#include <QTextEdit>
#include <QToolTip>

using namespace slopebook;
using namespace slopebook::test;
using namespace slopebook::ui;

namespace {

/// Controls made of several: only the whole is one.
bool isPart(const QWidget& widget) {
    for (const QWidget* at = widget.parentWidget(); at; at = at->parentWidget())
        if (qobject_cast<const QComboBox*>(at) || qobject_cast<const QAbstractSpinBox*>(at) ||
            qobject_cast<const QLineEdit*>(at) || qobject_cast<const QTabBar*>(at) ||
            qobject_cast<const QAbstractItemView*>(at))
            return true;
    return false;
}

bool isControl(const QWidget& widget) {
    if (isPart(widget))
        return false;
    return qobject_cast<const QAbstractButton*>(&widget) ||
           qobject_cast<const QLineEdit*>(&widget) || qobject_cast<const QComboBox*>(&widget) ||
           qobject_cast<const QAbstractSpinBox*>(&widget) ||
           qobject_cast<const QTabBar*>(&widget) ||
           qobject_cast<const QAbstractItemView*>(&widget) ||
           dynamic_cast<const charts::ChartOut*>(&widget);
}

struct Findings {
    QStringList wrong;
    int seen = 0;
    void take(bool good, const QString& place, const QString& what) {
        ++seen;
        if (!good)
            wrong << place + QStringLiteral(": ") + what;
    }
    /// All of it: a failure's message holds the beginning alone.
    QByteArray text() const {
        for (const QString& one : wrong)
            qInfo("%s", qPrintable(one));
        return QByteArray::number(wrong.size()) + " are wrong";
    }
};

// --- sizes ---

void measureRows(const QString& place, const QAbstractItemView& view, int least, Findings& found) {
    const QString name = described(view);
    const auto* table = qobject_cast<const QTableView*>(&view);
    for (const auto* header : view.findChildren<QHeaderView*>())
        if (header->isVisible() && header->orientation() == Qt::Horizontal && header->count() > 0)
            found.take(header->height() >= least, place, name + QStringLiteral(", headings"));
    if (!view.model())
        return;
    for (int row = 0; row < std::min(view.model()->rowCount(), 30); ++row) {
        if (table && !table->isRowHidden(row))
            found.take(
                table->rowHeight(row) >= least, place,
                QStringLiteral("%1, row %2: %3").arg(name).arg(row).arg(table->rowHeight(row)));
        else if (!table)
            found.take(view.visualRect(view.model()->index(row, 0)).height() >= least, place,
                       QStringLiteral("%1, row %2").arg(name).arg(row));
    }
}

void measureList(const QString& place, QComboBox& combo, int least, Findings& found) {
    if (combo.count() == 0)
        return;
    combo.showPopup();
    const QRect first = combo.view()->visualRect(combo.model()->index(0, combo.modelColumn()));
    combo.hidePopup();
    found.take(first.height() >= least, place, described(combo) + QStringLiteral(", list"));
}

void measureMenus(const QString& place, const QWidget& shown, int least, Findings& found) {
    for (auto* menu : shown.findChildren<QMenu*>()) {
        menu->ensurePolished();
        const QSize whole = menu->sizeHint();
        if (whole.isEmpty())
            continue;
        for (QAction* action : menu->actions())
            if (!action->isSeparator() && action->isVisible())
                found.take(menu->actionGeometry(action).height() >= least, place,
                           QStringLiteral("menu item ") + action->text());
    }
}

/// Whether each control is as large as that either way, and each row and tab as high: px.
void measure(const QString& place, QWidget& shown, int least, Findings& found) {
    for (QWidget* widget : controlsOf(shown)) {
        if (const auto* bar = qobject_cast<QMenuBar*>(widget))
            for (QAction* title : bar->actions())
                found.take(bar->actionGeometry(title).height() >= least, place,
                           QStringLiteral("menu ") + title->text());
        if (!widget->isVisible() || !isControl(*widget))
            continue;
        if (const auto* view = qobject_cast<QAbstractItemView*>(widget)) {
            measureRows(place, *view, least, found);
        } else if (const auto* bar = qobject_cast<QTabBar*>(widget)) {
            for (int tab = 0; tab < bar->count(); ++tab)
                found.take(bar->tabRect(tab).height() >= least, place,
                           QStringLiteral("tab ") + bar->tabText(tab));
        } else {
            const bool button = qobject_cast<QAbstractButton*>(widget) != nullptr;
            if (dynamic_cast<charts::ChartOut*>(widget))
                continue;
            found.take(widget->height() >= least && (!button || widget->width() >= least), place,
                       described(*widget));
        }
        if (auto* combo = qobject_cast<QComboBox*>(widget); combo && combo->isEnabled())
            measureList(place, *combo, least, found);
    }
    measureMenus(place, shown, least, found);
}

// --- Alt keys ---

struct Mnemonics {
    QString place;
    QMap<QString, QString> taken{};
    void take(const QString& words, Findings& found) {
        const QString key = QKeySequence::mnemonic(words).toString();
        if (key.isEmpty())
            return;
        found.take(
            !taken.contains(key), place,
            QStringLiteral("%1 of \"%2\" is \"%3\"'s too").arg(key, words, taken.value(key)));
        taken[key] = words;
    }
};

void gatherMenus(const QString& place, const QWidget& shown, Findings& found) {
    for (const auto* menu : shown.findChildren<QMenu*>()) {
        Mnemonics in{place + QStringLiteral(", menu ") + menu->title()};
        for (const QAction* action : menu->actions())
            if (action->isVisible())
                in.take(action->text(), found);
    }
}

void gatherKeys(const QString& place, QWidget& shown, Findings& found) {
    Mnemonics keys{place};
    for (QWidget* widget : controlsOf(shown)) {
        if (const auto* bar = qobject_cast<QMenuBar*>(widget))
            for (const QAction* title : bar->actions())
                keys.take(title->text(), found);
        if (const auto* button = qobject_cast<QAbstractButton*>(widget))
            keys.take(button->text(), found);
        if (const auto* label = qobject_cast<QLabel*>(widget); label && label->buddy())
            keys.take(label->text(), found);
        if (const auto* group = qobject_cast<QGroupBox*>(widget))
            keys.take(group->title(), found);
        if (const auto* bar = qobject_cast<QTabBar*>(widget))
            for (int tab = 0; tab < bar->count(); ++tab)
                keys.take(bar->tabText(tab), found);
    }
    gatherMenus(place, shown, found);
}

/// Each box to tick, and each field with a name beside it, has one.
void requireKeys(const QString& place, QWidget& shown, Findings& found) {
    for (QWidget* widget : controlsOf(shown)) {
        const auto* box = qobject_cast<const QCheckBox*>(widget);
        const auto* label = qobject_cast<const QLabel*>(widget);
        const QString words = box                       ? box->text()
                              : label && label->buddy() ? label->text()
                                                        : QString();
        if (!words.isEmpty() && widget->isVisible())
            found.take(!QKeySequence::mnemonic(words).isEmpty(), place,
                       QStringLiteral("\"%1\" has no Alt key").arg(words));
    }
}

/// What two buttons of a page do alike, one of them does.
void findTwins(const QString& place, const QWidget& shown, Findings& found) {
    QMap<QString, const QWidget*> seen;
    for (const auto* button : shown.findChildren<QAbstractButton*>()) {
        QString words = button->text();
        words.remove(QLatin1Char('&'));
        if (words.isEmpty() || !button->isVisible() || isPart(*button))
            continue;
        found.take(!seen.contains(words), place, described(*button) + QStringLiteral(" twice"));
        seen[words] = button;
    }
}

// --- Tab and names ---

bool takesTab(const QWidget& widget) {
    return widget.isVisible() && widget.isEnabled() && (widget.focusPolicy() & Qt::TabFocus) &&
           !widget.focusProxy() && !isPart(widget);
}

/// A table whose cells are boxes: they are what Tab comes to.
bool holdsControls(const QWidget& widget) {
    const auto* view = qobject_cast<const QAbstractItemView*>(&widget);
    if (!view || !view->model() || view->model()->rowCount() == 0)
        return false;
    for (int column = 0; column < view->model()->columnCount(); ++column)
        if (view->indexWidget(view->model()->index(0, column)))
            return true;
    return false;
}

void walkByTab(const QString& place, QWidget& shown, Findings& found) {
    QSet<const QWidget*> wanted;
    for (const QWidget* widget : controlsOf(shown)) {
        if (widget->isVisible() && widget->isEnabled() && isControl(*widget) &&
            !holdsControls(*widget))
            found.take(widget->focusPolicy() & Qt::TabFocus, place,
                       QStringLiteral("no Tab to ") + described(*widget));
        if (takesTab(*widget))
            wanted.insert(widget);
    }
    QSet<const QWidget*> reached;
    for (qsizetype i = 0; i < 3 * wanted.size() + 10; ++i) {
        QWidget* focus = QApplication::focusWidget();
        if (!focus) {
            shown.setFocus();
            focus = &shown;
        }
        for (const QWidget* at = focus; at; at = at->parentWidget())
            reached.insert(at); // the field of a combo box is the combo box
        QTest::keyClick(focus, Qt::Key_Tab);
    }
    for (const QWidget* widget : wanted)
        found.take(reached.contains(widget), place,
                   QStringLiteral("Tab never comes to ") + described(*widget));
}

/// Arrow keys read a figure: beside the chart, in its description, or in a table that follows.
bool readsByKeys(QWidget& chart) {
    const QString before = chart.accessibleDescription();
    QToolTip::hideText();
    QTest::keyClick(&chart, Qt::Key_Home);
    QTest::keyClick(&chart, Qt::Key_Right);
    const bool beside = QToolTip::isVisible() && !QToolTip::text().isEmpty();
    QToolTip::hideText();
    return beside || chart.accessibleDescription() != before;
}

void hear(const QString& place, QWidget& shown, Findings& found) {
    for (QWidget* widget : controlsOf(shown)) {
        const bool control = isControl(*widget);
        if (!widget->isVisible() || (!control && !takesTab(*widget)))
            continue;
        QAccessibleInterface* heard = QAccessible::queryAccessibleInterface(widget);
        const QString what = described(*widget) + QLatin1Char(' ') + widget->objectName();
        if (!heard) {
            found.take(false, place, what + QStringLiteral(" is not heard at all"));
            continue;
        }
        found.take(!heard->text(QAccessible::Name).trimmed().isEmpty(), place,
                   what + QStringLiteral(" has no name"));
        found.take(heard->role() != QAccessible::NoRole, place,
                   what + QStringLiteral(" has no role"));
        if (const auto* chart = dynamic_cast<charts::ChartOut*>(widget)) {
            const charts::FigureTable figures = chart->figures();
            found.take(!figures.headings.isEmpty(), place,
                       what + QStringLiteral(" has no figures"));
            found.take(figures.rows.empty() || !widget->accessibleDescription().isEmpty(), place,
                       what + QStringLiteral(" does not say its figures"));
            if (!figures.rows.empty() && !qobject_cast<const QTableView*>(widget))
                found.take(readsByKeys(*widget), place,
                           what + QStringLiteral(" is not read by arrow keys"));
        }
    }
}

} // namespace

class TestEveryPlace : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init() { QTest::failOnWarning(QRegularExpression(QStringLiteral("nan|NaN"))); }
    void cleanup() { fitFingers(false); }

    void controlsFitAFinger() {
        Findings found;
        inEveryPlace(QStringLiteral("en"), true, [&](const QString& place, QWidget& shown) {
            measure(place, shown, fingerSize, found);
        });
        QVERIFY2(found.wrong.isEmpty(), found.text());
        QVERIFY2(found.seen > 1000, qPrintable(QString::number(found.seen)));
    }

    void controlsAreHitWithAPointer() {
        constexpr int least = 24; // px: WCAG 2.2, criterion 2.5.8
        Findings found, small;
        inEveryPlace(QStringLiteral("en"), false, [&](const QString& place, QWidget& shown) {
            measure(place, shown, least, found);
            measure(place, shown, fingerSize, small);
        });
        QVERIFY2(found.wrong.isEmpty(), found.text());
        QVERIFY2(found.seen > 1000, qPrintable(QString::number(found.seen)));
        QVERIFY(small.wrong.size() > 200); // the measure sees what is small
    }

    void noTwoShareAnAltKeyOrDoTheSame_data() {
        QTest::addColumn<QString>("language");
        QTest::newRow("in English") << QStringLiteral("en");
        QTest::newRow("in German") << QStringLiteral("de");
    }
    void noTwoShareAnAltKeyOrDoTheSame() {
        QFETCH(QString, language);
        Findings found;
        inEveryPlace(language, false, [&](const QString& place, QWidget& shown) {
            gatherKeys(place, shown, found);
            if (qobject_cast<const QMainWindow*>(&shown)) // a dialog may have a button a group
                findTwins(place, shown, found);
            if (place.startsWith(QLatin1String("dialog: odd table")))
                requireKeys(place, shown, found);
        });
        found.wrong.removeDuplicates();
        QVERIFY2(found.wrong.isEmpty(), found.text());
        QVERIFY2(found.seen > 400, qPrintable(QString::number(found.seen)));
    }

    void everyControlIsReachedByTab() {
        Findings found;
        inEveryPlace(QStringLiteral("en"), false,
                     [&](const QString& place, QWidget& shown) { walkByTab(place, shown, found); });
        QVERIFY2(found.wrong.isEmpty(), found.text());
        QVERIFY2(found.seen > 500, qPrintable(QString::number(found.seen)));
    }

    void everyControlIsHeard() {
        Findings found;
        inEveryPlace(QStringLiteral("en"), false,
                     [&](const QString& place, QWidget& shown) { hear(place, shown, found); });
        QVERIFY2(found.wrong.isEmpty(), found.text());
        QVERIFY2(found.seen > 800, qPrintable(QString::number(found.seen)));
    }
};

QTEST_MAIN(TestEveryPlace)
#include "tst_everyplace.moc"

// SPDX-License-Identifier: GPL-3.0-or-later
// The wheel, turned over every control of every page and dialog that was never clicked, changes no
// value and nothing on disk; what lies around the control scrolls.
#include "tests/log/builders.h"
#include "tests/ui/everyplace.h"
#include "tests/ui/wheel.h"
#include "ui/parts/dayedit.h"
#include "ui/window/wheelguard.h"
#include "ui/window/workspace.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QFile>
#include <QLineEdit>
#include <QScrollArea>
#include <QScrollBar>
#include <QSlider>
#include <QTabBar>
#include <QTableWidget>
#include <QTest>
#include <QVBoxLayout>

using namespace slopebook;
using namespace slopebook::test;
using namespace slopebook::ui;

namespace {

/// What a widget holds that a coach could lose, in words; empty for what holds nothing.
QString valueOf(const QWidget& widget) {
    if (const auto* combo = qobject_cast<const QComboBox*>(&widget))
        return QString::number(combo->currentIndex()) + combo->currentText();
    if (const auto* line = qobject_cast<const QLineEdit*>(&widget))
        return line->text();
    if (const auto* spin = qobject_cast<const QAbstractSpinBox*>(&widget))
        return spin->text();
    if (const auto* slider = qobject_cast<const QAbstractSlider*>(&widget))
        return qobject_cast<const QScrollBar*>(&widget) ? QString()
                                                        : QString::number(slider->value());
    if (const auto* tabs = qobject_cast<const QTabBar*>(&widget))
        return QString::number(tabs->currentIndex());
    if (const auto* button = qobject_cast<const QAbstractButton*>(&widget))
        return button->isChecked() ? QStringLiteral("on") : QString();
    if (const auto* view = qobject_cast<const QAbstractItemView*>(&widget))
        return QString::number(view->currentIndex().row());
    return {};
}

QMap<const QWidget*, QString> valuesIn(const QWidget& shown) {
    QMap<const QWidget*, QString> values;
    for (const QWidget* widget : controlsOf(shown))
        values[widget] = valueOf(*widget);
    return values;
}

QByteArray bytesOf(const QString& file) {
    QFile in(file);
    return in.open(QIODevice::ReadOnly) ? in.readAll() : QByteArray();
}

} // namespace

class TestWheel : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void noControlTakesItUnclicked() {
        int turned = 0, couldChange = 0;
        QStringList wrong;
        QString file;
        inEveryPlace(QStringLiteral("en"), false, [&](const QString& place, QWidget& shown) {
            if (const auto* window = qobject_cast<MainWindow*>(&shown);
                window && const_cast<MainWindow*>(window)->workspace() && file.isEmpty()) {
                file = QString::fromStdString(
                    const_cast<MainWindow*>(window)->workspace()->logbook().log().file().string());
                QVERIFY(!bytesOf(file).isEmpty());
            }
            // as it is now: some places are made by writing what they show
            const QByteArray before = bytesOf(file);
            if (QWidget* focus = QApplication::focusWidget())
                focus->clearFocus();
            const auto values = valuesIn(shown);
            for (QWidget* widget : controlsOf(shown)) {
                if (!widget->isVisible() || !widget->isEnabled())
                    continue;
                for (const int notches : {1, -1, -1, 1}) {
                    // Down and up again would hide a change.
                    turnWheel(*widget, notches);
                    ++turned;
                    if (WheelGuard::controlAt(widget))
                        ++couldChange;
                    const QString now = valueOf(*widget);
                    if (now != values[widget])
                        wrong << QStringLiteral("%1: %2 became %3")
                                     .arg(place, described(*widget), now);
                    const QWidget* focus = QApplication::focusWidget();
                    if (focus && WheelGuard::controlAt(const_cast<QWidget*>(focus)))
                        wrong
                            << QStringLiteral("%1: %2 got the focus").arg(place, described(*focus));
                }
            }
            if (valuesIn(shown) != values)
                wrong << place + QStringLiteral(": another control changed");
            if (!file.isEmpty() && bytesOf(file) != before)
                wrong << place + QStringLiteral(": the log on disk changed");
        });
        for (const QString& one : wrong)
            qInfo("%s", qPrintable(one));
        QVERIFY(wrong.isEmpty());
        QVERIFY2(couldChange > 400, qPrintable(QString::number(couldChange)));
        QVERIFY(turned > couldChange);
    }

    /// Of every kind that Qt has, also such as no page holds yet, and those made before the guard.
    void everyKindOfControl() {
        QWidget page;
        auto* column = new QVBoxLayout(&page);
        auto* combo = new QComboBox;
        combo->addItems({QStringLiteral("a"), QStringLiteral("b"), QStringLiteral("c")});
        auto* typed = new QComboBox;
        typed->setEditable(true);
        typed->addItems({QStringLiteral("a"), QStringLiteral("b"), QStringLiteral("c")});
        auto* slider = new QSlider(Qt::Horizontal);
        auto* table = new QTableWidget(1, 1);
        auto* inTable = new QComboBox;
        inTable->addItems({QStringLiteral("a"), QStringLiteral("b"), QStringLiteral("c")});
        table->setCellWidget(0, 0, inTable);
        combo->setCurrentIndex(1);
        typed->setCurrentIndex(1);
        inTable->setCurrentIndex(1);
        slider->setValue(50);
        auto* tabs = new QTabBar;
        for (int i = 0; i < 3; ++i)
            tabs->addTab(QString::number(i));
        tabs->setCurrentIndex(1);
        for (QWidget* one : std::initializer_list<QWidget*>{
                 combo, typed, new QSpinBox, new QDoubleSpinBox, new QDateTimeEdit,
                 new DayEdit(day(2026, 3, 14)), slider, table, tabs})
            column->addWidget(one);
        auto* away = new QLineEdit;
        column->addWidget(away);
        const WheelGuard guard(nullptr);
        page.show();
        QVERIFY(QTest::qWaitForWindowActive(&page));
        away->setFocus();
        const auto values = valuesIn(page);
        for (QWidget* widget : controlsOf(page))
            for (const int notches : {1, -1, -1})
                if (widget->isVisible()) {
                    turnWheel(*widget, notches);
                    QCOMPARE(valueOf(*widget), values[widget]);
                    QVERIFY(away->hasFocus());
                }
        // With the focus it is the control's.
        combo->setFocus();
        turnWheel(*combo, -1);
        QCOMPARE(combo->currentIndex(), 2);
        auto* edit = page.findChild<DayEdit*>();
        edit->setFocus();
        turnWheel(*edit, 1);
        QCOMPARE(edit->date(), QDate(2026, 3, 15));
    }

    void whatLiesAroundScrolls() {
        QScrollArea area;
        auto* inner = new QWidget;
        auto* column = new QVBoxLayout(inner);
        auto* combo = new QComboBox;
        combo->addItems({QStringLiteral("a"), QStringLiteral("b"), QStringLiteral("c")});
        column->addWidget(combo);
        auto* spin = new QSpinBox;
        column->addWidget(spin);
        auto* tall = new QWidget;
        tall->setMinimumHeight(2000);
        column->addWidget(tall);
        area.setWidget(inner);
        const WheelGuard guard(nullptr);
        area.resize(200, 200);
        area.show();
        QVERIFY(QTest::qWaitForWindowActive(&area));
        area.setFocus();
        for (QWidget* over : std::initializer_list<QWidget*>{combo, spin}) {
            area.verticalScrollBar()->setValue(0);
            turnWheel(*over, -1);
            QVERIFY(area.verticalScrollBar()->value() > 0);
        }
        QCOMPARE(combo->currentIndex(), 0);
        QCOMPARE(spin->value(), 0);
    }

    /// The list that hangs below a box is scrolled as ever.
    void theListOfABoxScrolls() {
        QComboBox combo;
        for (int i = 0; i < 200; ++i)
            combo.addItem(QString::number(i));
        combo.setMaxVisibleItems(5);
        const WheelGuard guard(nullptr);
        combo.show();
        QVERIFY(QTest::qWaitForWindowActive(&combo));
        combo.showPopup();
        QTRY_VERIFY(combo.view()->isVisible());
        QVERIFY(!WheelGuard::controlAt(combo.view()->viewport()));
        combo.hidePopup();
    }
};

QTEST_MAIN(TestWheel)
#include "tst_wheel.moc"

// SPDX-License-Identifier: GPL-3.0-or-later
// The chooser of names over a list that is too long to be held.
#include "ui/window/namecombo.h"

#include <QAbstractItemModelTester>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTest>

#include <stdexcept>

using namespace slopebook::ui;

namespace {

constexpr int many = 5000;

Names numbered() {
    Names names;
    for (int i = 0; i < many; ++i)
        names.emplace_back(i + 1, QStringLiteral("Rower %1").arg(i, 4, 10, QLatin1Char('0')));
    return names;
}

} // namespace

class TestNameCombo : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void readsNoMoreThanIsLookedAt() {
        int asked = 0;
        NameModel model;
        QAbstractItemModelTester tester(&model,
                                        QAbstractItemModelTester::FailureReportingMode::Fatal);
        tester.setUseFetchMore(false); // it would fetch while a reset is told of
        model.setSource([&asked, all = sourceOf(numbered())](const auto&... question) {
            ++asked;
            return all(question...);
        });
        QCOMPARE(model.rowCount(), NameModel::pageRows);
        QCOMPARE(asked, 1);
        QCOMPARE(model.rowOf(1), 0);
        QCOMPARE(asked, 1);
        QCOMPARE(model.rowOf(many), many - 1);
        QCOMPARE(model.rowCount(), many);
        QVERIFY(asked < 10); // not one for every hundred
        QCOMPARE(model.rowOf(many + 1), -1);
        QVERIFY(!model.canFetchMore({}));
    }

    void findsWhatWasNotReadYet() {
        NameCombo combo;
        combo.setNames(numbered());
        combo.show();
        QVERIFY(QTest::qWaitForWindowExposed(&combo));
        QCOMPARE(combo.currentText(), QStringLiteral("Rower 0000"));
        QSignalSpy changed(&combo, &NameCombo::chosenChanged);
        combo.lineEdit()->selectAll();
        QTest::keyClicks(combo.lineEdit(), QStringLiteral("rower 432"));
        QTest::keyClick(combo.lineEdit(), Qt::Key_Return);
        QCOMPARE(combo.currentText(), QStringLiteral("Rower 4320"));
        QCOMPARE(combo.chosen(), std::optional<qint64>(4321));
        QCOMPARE(changed.count(), 1);
        combo.choose(3001);
        QCOMPARE(combo.currentText(), QStringLiteral("Rower 3000"));
        combo.choose(many + 1); // no such key
        QCOMPARE(combo.chosen(), std::optional<qint64>(3001));
    }

    void readsOnePageToBeginWithAndOneToFind() {
        int asked = 0;
        NameCombo combo;
        combo.show();
        combo.setNames([&asked, all = sourceOf(numbered())](const auto&... question) {
            ++asked;
            return all(question...);
        });
        QCOMPARE(asked, 1);
        QTest::keyClicks(combo.lineEdit(), QStringLiteral("r")); // all of them hold it
        QCOMPARE(asked, 2);
    }

    void theWholeNameGoesBeforeAPart() {
        NameCombo combo;
        combo.setNames(Names{{1, QStringLiteral("Adriann")}, {2, QStringLiteral("Ann")}});
        combo.lineEdit()->setText(QStringLiteral("ann"));
        QTest::keyClick(combo.lineEdit(), Qt::Key_Return);
        QCOMPARE(combo.chosen(), std::optional<qint64>(2));
        combo.lineEdit()->setText(QStringLiteral("nobody"));
        QTest::keyClick(combo.lineEdit(), Qt::Key_Return);
        QCOMPARE(combo.currentText(), QStringLiteral("Ann"));
    }

    void keepsTheChosenOneOverANewList() {
        NameCombo combo;
        combo.setNames(numbered());
        combo.choose(2500);
        QSignalSpy changed(&combo, &NameCombo::chosenChanged);
        combo.setNames(numbered());
        QCOMPARE(combo.chosen(), std::optional<qint64>(2500));
        QCOMPARE(changed.count(), 0);
        combo.setNames(Names{});
        QVERIFY(!combo.chosen());
        QVERIFY(!combo.isEnabled());
        QCOMPARE(changed.count(), 1);
    }

    void aSourceThatFailsLeavesAnEmptyList() {
        NameModel model;
        const auto fails = [](const QString&, const std::optional<QString>&, int) -> Names {
            throw std::runtime_error("gone");
        };
        QVERIFY_THROWS_EXCEPTION(std::runtime_error, model.setSource(fails));
        QCOMPARE(model.rowCount(), 0);
        model.setFind(QStringLiteral("a"));
        QCOMPARE(model.rowCount(), 0);
        QVERIFY(!model.canFetchMore({}));
    }
};

QTEST_MAIN(TestNameCombo)
#include "tst_namecombo.moc"

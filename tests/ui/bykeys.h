// SPDX-License-Identifier: GPL-3.0-or-later
// What tests of dialogs do alike: choosing by keys, answering a dialog that opens, pictures.
#pragma once

#include <QApplication>
#include <QComboBox>
#include <QTest>
#include <QTimer>

#include <functional>

namespace slopebook::test {

using namespace Qt::Literals::StringLiterals;

/// Goes through a box's choices by the down key, as hands do.
inline void chooseByKeys(QComboBox* box, const QString& wanted) {
    QVERIFY(box);
    box->setFocus();
    QTest::keyClick(box, Qt::Key_Home);
    for (int i = 0; i < box->count() && box->currentText() != wanted; ++i)
        QTest::keyClick(box, Qt::Key_Down);
    QCOMPARE(box->currentText(), wanted);
}

inline void inNextDialog(const std::function<void(QWidget*)>& work, int tries = 200) {
    QTimer::singleShot(20, qApp, [work, tries] {
        QWidget* dialog = QApplication::activeModalWidget();
        if (dialog && dialog->isActiveWindow())
            work(dialog);
        else if (tries > 0)
            inNextDialog(work, tries - 1);
    });
}

/// Kept where SLOPEBOOK_PICTURES names a folder, to be looked at.
inline void keepPicture(QWidget& widget, const QString& name) {
    if (const QString folder = qEnvironmentVariable("SLOPEBOOK_PICTURES"); !folder.isEmpty())
        QVERIFY(widget.grab().save(folder + u'/' + name + u".png"_s));
}

} // namespace slopebook::test

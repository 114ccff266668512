// SPDX-License-Identifier: GPL-3.0-or-later
// By what a desktop knows the windows: its own file of the program, its icon, the class that X11
// names. Held against resources/desktop, which the package installs.
#include "ui/window/application.h"

#include <QApplication>
#include <QFile>
#include <QIcon>
#include <QRegularExpression>
#include <QTest>

using namespace slopebook::ui;

namespace {

QString desktopFile() {
    QFile file(QStringLiteral(SLOPEBOOK_SOURCE "/resources/desktop/%1.desktop")
                   .arg(QApplication::desktopFileName()));
    return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString();
}

QString valueOf(const QString& key) {
    const QRegularExpression line(QStringLiteral("^%1=(.*)$").arg(key),
                                  QRegularExpression::MultilineOption);
    return line.match(desktopFile()).captured(1);
}

} // namespace

class TestDesktop : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void theWindowsNameTheFileOfTheProgram() {
        QVERIFY(!QApplication::desktopFileName().isEmpty());
        QCOMPARE(valueOf(QStringLiteral("Name")), QStringLiteral("Slopebook"));
    }
    /// Qt makes the class of the program's name (its own documentation of X11's WM_CLASS).
    void theFileNamesTheirClass() {
        QFile window(QStringLiteral(SLOPEBOOK_SOURCE "/app/window.cpp"));
        QVERIFY(window.open(QIODevice::ReadOnly));
        const QString name = valueOf(QStringLiteral("StartupWMClass"));
        QVERIFY(!name.isEmpty());
        QVERIFY(window.readAll().contains("setApplicationName(QStringLiteral(\"" + name.toUtf8() +
                                          "\"))"));
    }
    /// Drawn, and not one colour, where no theme has it.
    void theyHaveAnIcon() {
        const QIcon icon = QApplication::windowIcon();
        QVERIFY(!icon.isNull());
        for (const int size : {16, 48, 256}) {
            const QImage drawn = icon.pixmap(size, size).toImage();
            QCOMPARE(drawn.width(), size);
            QVERIFY(drawn.pixelColor(size / 2, size / 8) != drawn.pixelColor(0, 0));
        }
    }
};

int main(int argc, char** argv) {
    const auto application = makeApplication(argc, argv);
    TestDesktop test;
    return QTest::qExec(&test, argc, argv);
}

#include "tst_desktop.moc"

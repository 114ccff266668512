// SPDX-License-Identifier: GPL-3.0-or-later
// Light and dark by a switch beside the desktop's own, and hints that are read in whatever colours
// are in use.
#include "tests/log/builders.h"
#include "ui/window/framelook.h"
#include "ui/window/mainwindow.h"
#include "ui/window/scheme.h"
#include "ui/window/workspace.h"

#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QTest>

using namespace slopebook;
using namespace slopebook::test;
using namespace slopebook::ui;

namespace {

QPalette foreign(const QColor& window, const QColor& base, const QColor& ink, const QColor& hint) {
    QPalette palette(window);
    palette.setColor(QPalette::Base, base);
    for (const auto role : {QPalette::Text, QPalette::WindowText, QPalette::ButtonText})
        palette.setColor(role, ink);
    palette.setColor(QPalette::PlaceholderText, hint);
    return palette;
}

constexpr std::array groups{QPalette::Active, QPalette::Inactive};

} // namespace

class TestScheme : public QObject {
    Q_OBJECT

    Folder m_folder;
    std::optional<Settings> m_kept;

    std::unique_ptr<MainWindow> opened(const Settings& settings = {}) {
        if (!std::filesystem::exists(m_folder.path())) {
            log::Log log = log::Log::create(m_folder.path());
            fillSeason(log);
        }
        Surroundings given;
        given.settings = settings;
        given.keepSettings = [this](const Settings& kept) { m_kept = kept; };
        given.clock = [] { return day(2026, 3, 14); };
        auto window = std::make_unique<MainWindow>(given);
        window->openLogFile(QString::fromStdString(m_folder.path().string()));
        window->resize(1280, 720);
        window->show();
        QCoreApplication::processEvents();
        return window;
    }

private Q_SLOTS:
    void cleanup() {
        QApplication::setPalette(QPalette());
        QCoreApplication::processEvents();
    }

    // Black on white is 21, one colour on itself 1, and #767676 the palest grey that is read on
    // white: of 0x76 / 255 the linear part is ((0.46275 + 0.055) / 1.055)^2.4 = 0.18116, and
    // 1.05 / 0.23116 = 4.542 (formulas: WCAG 2.1).
    void contrastIsThatOfTheStandard() {
        QCOMPARE(contrast(Qt::black, Qt::white), 21.0);
        QCOMPARE(contrast(Qt::red, Qt::red), 1.0);
        QVERIFY(std::abs(contrast(QColor(0x76, 0x76, 0x76), Qt::white) - 4.542) < 0.001);
        QVERIFY(contrast(QColor(0x77, 0x77, 0x77), Qt::white) < readableContrast);
    }

    void hintsAreReadUnderAnyDesktop_data() {
        QTest::addColumn<QPalette>("desktop");
        QTest::newRow("plain") << QPalette(QColor(0xef, 0xef, 0xef));
        QTest::newRow("dark, hints as dark")
            << foreign(QColor(0x2a, 0x2e, 0x32), QColor(0x1b, 0x1e, 0x20), QColor(0xfc, 0xfc, 0xfc),
                       QColor(0x31, 0x36, 0x3b));
        QTest::newRow("dark, hints black and half transparent")
            << foreign(QColor(0x31, 0x36, 0x3b), QColor(0x23, 0x26, 0x29), QColor(0xef, 0xf0, 0xf1),
                       QColor(0, 0, 0, 128));
        QTest::newRow("light, hints as light")
            << foreign(QColor(0xef, 0xf0, 0xf1), Qt::white, QColor(0x23, 0x26, 0x29),
                       QColor(0xe0, 0xe0, 0xe0));
        QTest::newRow("white windows on a dark page")
            << foreign(QColor(0x80, 0x80, 0x80), QColor(0x10, 0x10, 0x10), Qt::white,
                       QColor(0x30, 0x30, 0x30));
        QTest::newRow("high contrast") << foreign(Qt::black, Qt::black, Qt::white, Qt::black);
    }
    void hintsAreReadUnderAnyDesktop() {
        QFETCH(QPalette, desktop);
        const auto window = opened();
        for (const PageEntry& entry : pages())
            window->workspace()->showPage(entry.page);
        QApplication::setPalette(desktop);
        QCoreApplication::processEvents();
        QCoreApplication::processEvents();
        const QPalette now = QApplication::palette();
        // What the desktop said of all else stands.
        QCOMPARE(now.color(QPalette::Window), desktop.color(QPalette::Window));
        QCOMPARE(now.color(QPalette::Text), desktop.color(QPalette::Text));
        // No colour at all is read on both of such grounds: then the text's own is taken.
        const QColor ink = now.color(QPalette::Text);
        const bool possible = contrast(ink, now.color(QPalette::Window)) >= quietContrast &&
                              contrast(ink, now.color(QPalette::Base)) >= quietContrast;
        const auto read = [&](const QPalette& of, QPalette::ColorRole role,
                              QPalette::ColorRole ground) {
            for (const auto group : groups) {
                const QColor colour = of.color(group, role);
                if (colour.alpha() != 255)
                    return false;
                if (colour != ink && contrast(colour, of.color(group, ground)) < quietContrast)
                    return false;
            }
            return true;
        };
        int seen = 0;
        for (const auto* label : window->findChildren<QLabel*>())
            if (label->foregroundRole() == QPalette::PlaceholderText && ++seen > 0)
                QVERIFY2(
                    read(label->palette(), QPalette::PlaceholderText, QPalette::Window),
                    qPrintable(QStringLiteral("%1: %2 on %3, the program's %4")
                                   .arg(label->text(),
                                        label->palette().color(QPalette::PlaceholderText).name(),
                                        label->palette().color(QPalette::Window).name(),
                                        now.color(QPalette::PlaceholderText).name())));
        for (const auto* field : window->findChildren<QLineEdit*>())
            if (!field->placeholderText().isEmpty() && ++seen > 0)
                QVERIFY2(read(field->palette(), QPalette::PlaceholderText, QPalette::Base),
                         qPrintable(field->placeholderText()));
        QVERIFY(seen > 8);
        // Who cannot be pressed now says so, and is read all the same.
        if (possible)
            for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
                for (const auto ground : {QPalette::Base, QPalette::Window})
                    QVERIFY(contrast(now.color(QPalette::Disabled, role),
                                     now.color(QPalette::Active, ground)) >= disabledContrast);
        if (possible) {
            const FrameLook look = frameLook(now);
            QVERIFY(contrast(look.second, look.page) >= quietContrast);
            QVERIFY(contrast(look.second, look.index) >= quietContrast);
        }
    }

    void theSwitchDressesEverythingAndIsKept() {
        const QColor before = QApplication::palette().color(QPalette::Base);
        {
            const auto window = opened();
            const auto choose = [&](Scheme scheme) {
                for (QAction* action : window->actions().schemes->actions())
                    if (action->data().toInt() == int(scheme))
                        action->trigger();
                QCoreApplication::processEvents();
            };
            QVERIFY(window->actions().schemes->checkedAction()->data().toInt() ==
                    int(Scheme::Desktop));
            choose(Scheme::Dark);
            QVERIFY(window->workspace()->palette().color(QPalette::Base).lightness() < 60);
            QVERIFY(window->menuWidget()->palette().color(QPalette::Window).lightness() < 60);
            QVERIFY(m_kept->scheme == Scheme::Dark);
            choose(Scheme::Light);
            QVERIFY(window->workspace()->palette().color(QPalette::Base).lightness() > 240);
            choose(Scheme::Desktop);
            QCOMPARE(QApplication::palette().color(QPalette::Base), before);
            choose(Scheme::Dark);
        }
        QApplication::setPalette(QPalette());
        const auto again = opened(*m_kept);
        QVERIFY(again->workspace()->palette().color(QPalette::Base).lightness() < 60);
        QVERIFY(again->actions().schemes->checkedAction()->data().toInt() == int(Scheme::Dark));
        again->wear(Scheme::Desktop);
        QCOMPARE(QApplication::palette().color(QPalette::Base), before);
    }

    // Text, the chosen, and links on their grounds, of our own two.
    void ourOwnTwoAreReadable() {
        for (const Scheme scheme : {Scheme::Light, Scheme::Dark}) {
            const QPalette palette = paletteOf(scheme);
            for (const auto& [ink, ground] : {std::pair{QPalette::Text, QPalette::Base},
                                              {QPalette::WindowText, QPalette::Window},
                                              {QPalette::ButtonText, QPalette::Button},
                                              {QPalette::HighlightedText, QPalette::Highlight},
                                              {QPalette::ToolTipText, QPalette::ToolTipBase},
                                              {QPalette::Link, QPalette::Base},
                                              {QPalette::Link, QPalette::Window}})
                QVERIFY(contrast(palette.color(ink), palette.color(ground)) >= readableContrast);
            QCOMPARE(schemeCalled(wordOf(scheme)), scheme);
        }
        QCOMPARE(schemeCalled(u"violet"), Scheme::Desktop);
    }
};

QTEST_MAIN(TestScheme)
#include "tst_scheme.moc"

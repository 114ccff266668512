// SPDX-License-Identifier: GPL-3.0-or-later
// Every place of the window that asks for a file: none lets a file be deleted, renamed or dragged
// away, and none writes over one before it has asked.
#include "core/log/backups.h"
#include "tests/log/builders.h"
#include "tests/log/rawfile.h"
#include "ui/athlete/battery/batterypage.h"
#include "ui/athlete/battery/beforeafterview.h"
#include "ui/athlete/battery/tracedialog.h"
#include "ui/paper/paperwork.h"
#include "ui/parts/filedialog.h"
#include "ui/window/mainwindow.h"
#include "ui/window/workspace.h"

#include <QAbstractItemView>
#include <QApplication>
#include <QFile>
#include <QFileDialog>
#include <QLineEdit>
#include <QMessageBox>
#include <QPrintDialog>
#include <QPrintPreviewDialog>
#include <QPushButton>
#include <QTimer>

using namespace slopebook;
using namespace slopebook::test;
using namespace slopebook::ui;
using namespace Qt::Literals::StringLiterals;

namespace {

/// Looks at each modal window that work opens, until work returns.
class Watch {
public:
    explicit Watch(std::function<void(QWidget&)> look) : m_look(std::move(look)) {
        QObject::connect(&m_timer, &QTimer::timeout, [this] {
            if (QWidget* shown = QApplication::activeModalWidget())
                m_look(*shown);
        });
        m_timer.start(20);
    }

private:
    QTimer m_timer;
    std::function<void(QWidget&)> m_look;
};

/// Everything by which a file could be harmed in it.
QString harm(QFileDialog& dialog) {
    if (!dialog.testOption(QFileDialog::ReadOnly))
        return u"deletes and renames"_s;
    if (!dialog.testOption(QFileDialog::DontUseNativeDialog))
        return u"is the desktop's"_s;
    for (const auto* view : dialog.findChildren<QAbstractItemView*>())
        if (view->dragEnabled() || view->dragDropMode() != QAbstractItemView::NoDragDrop)
            return u"drags from "_s + view->objectName();
    for (const QAction* action : dialog.findChildren<QAction*>())
        if (action->isEnabled() && (action->objectName() == u"qt_delete_action"_s ||
                                    action->objectName() == u"qt_rename_action"_s))
            return action->objectName();
    return {};
}

} // namespace

class TestFileDialogs : public QObject {
    Q_OBJECT
    Folder m_folder;
    Surroundings m_surroundings;
    std::unique_ptr<MainWindow> m_window;

    QString in(const char* name) const {
        return QString::fromStdString(m_folder.path(name).string());
    }
    void write(const char* name, const QByteArray& bytes) const {
        QFile file(in(name));
        QVERIFY(file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size());
    }

    /// How often work opens a file dialog, each harmless; it is tried with the keys, too.
    int dialogs(const std::function<void()>& work, const QByteArray& place) {
        int seen = 0;
        const Watch watch([&](QWidget& shown) {
            auto* dialog = qobject_cast<QFileDialog*>(&shown);
            if (!dialog) {
                shown.close();
                return;
            }
            ++seen;
            if (const QString found = harm(*dialog); !found.isEmpty())
                QFAIL(place + ": " + qPrintable(found));
            auto* view = dialog->findChild<QAbstractItemView*>(u"listView"_s);
            dialog->setDirectory(in(""));
            dialog->selectFile(in("precious.txt"));
            if (view) {
                view->setFocus();
                view->selectAll();
                for (const auto key : {Qt::Key_Delete, Qt::Key_F2, Qt::Key_Backspace})
                    QTest::keyClick(view, key);
            }
            dialog->reject();
        });
        work();
        return seen;
    }

private Q_SLOTS:
    void initTestCase() {
        QVERIFY(QFile::copy(QStringLiteral(SLOPEBOOK_SAMPLE_LOG), in("season.slopebook")));
        write("precious.txt", "precious");
        m_surroundings.clock = [] { return day(2026, 5, 11); };
        m_window = std::make_unique<MainWindow>(m_surroundings);
        m_window->resize(1280, 720);
        m_window->show();
        m_window->openLogFile(in("season.slopebook"));
        QVERIFY(m_window->workspace());
    }

    void noneHarmsAFile() {
        const QByteArray log = QByteArray::fromStdString(readBytes(m_folder.path()));
        const auto& actions = m_window->actions();
        int seen = 0;
        const auto one = [&](QAction* action) {
            const QByteArray place = action->text().toUtf8();
            const int opened = dialogs([&] { action->trigger(); }, place);
            QVERIFY2(opened == 1, place + ": " + QByteArray::number(opened));
            ++seen;
        };
        for (QAction* action : {actions.newLog, actions.openLog, actions.importCsv,
                                actions.exportAll, actions.backUp})
            one(action);
        for (const PageEntry& entry : pages()) {
            m_window->workspace()->showPage(entry.page);
            QTRY_VERIFY(m_window->workspace()->page() == entry.page);
            QTest::qWait(0);
            for (QAction* action : {actions.pdf, actions.chartPng, actions.chartSvg})
                if (action->isEnabled())
                    seen += dialogs([&] { action->trigger(); }, action->text().toUtf8());
        }
        auto& battery = *m_window->workspace()->findChild<BeforeAfterView*>();
        seen += dialogs([&] { battery.writePdf(); }, "battery, PDF");
        seen += dialogs([&] { battery.writeCsv(); }, "battery, CSV");
        TraceDialog trace;
        trace.show();
        for (auto* button : trace.findChildren<QPushButton*>())
            if (button->text() == u"&File..."_s)
                seen += dialogs([&] { button->click(); }, "trace");
        qInfo("%d file dialogs", seen);
        QVERIFY2(seen >= 14, QByteArray::number(seen));
        QVERIFY(QFile::exists(in("precious.txt")));
        QCOMPARE(QByteArray::fromStdString(readBytes(m_folder.path())), log);
    }

    // Qt's dialogs for printing write over any file: they offer none.
    void printersWriteNoFile() {
        const page::Print print{.title = u"x"_s, .fill = [](page::Flow&) {}};
        int seen = 0;
        bool pressed = false;
        const Watch watch([&](QWidget& shown) {
            if (auto* dialog = qobject_cast<QPrintDialog*>(&shown)) {
                QVERIFY(!dialog->testOption(QAbstractPrintDialog::PrintToFile));
                ++seen;
                dialog->reject();
            } else if (auto* preview = qobject_cast<QPrintPreviewDialog*>(&shown)) {
                if (seen == 2) {
                    preview->reject();
                } else if (!pressed) {
                    pressed = true; // from outside this, which is not called within itself
                    for (QAction* action : preview->findChildren<QAction*>())
                        if (action->text() == u"Print"_s)
                            QTimer::singleShot(0, action, &QAction::trigger);
                }
            } else {
                QFAIL(shown.metaObject()->className());
            }
        });
        paperwork::print(m_window.get(), print);
        QCOMPARE(seen, 1);
        paperwork::preview(m_window.get(), u"x"_s, print);
        QCOMPARE(seen, 2);
    }

    void itAsksBeforeItReplaces_data() {
        QTest::addColumn<QString>("file");
        QTest::addColumn<bool>("replace"); // what is pressed
        QTest::addColumn<bool>("asks");
        QTest::addColumn<bool>("given");
        QTest::newRow("a new one") << in("fresh.pdf") << false << false << true;
        QTest::newRow("one that is there") << in("old.pdf") << true << true << true;
        QTest::newRow("rather not") << in("old.pdf") << false << true << false;
        QTest::newRow("without its ending") << in("old") << false << true << false;
        QTest::newRow("a log") << in("season.slopebook.pdf") << true << false << false;
    }
    void itAsksBeforeItReplaces() {
        QFETCH(QString, file);
        QFETCH(bool, replace);
        QFETCH(bool, asks);
        QFETCH(bool, given);
        write("old.pdf", "old");
        QFile::remove(in("season.slopebook.pdf"));
        QVERIFY(QFile::copy(in("season.slopebook"), in("season.slopebook.pdf")));
        int asked = 0, warned = 0, opened = 0;
        const Watch watch([&](QWidget& shown) {
            if (auto* dialog = qobject_cast<QFileDialog*>(&shown)) {
                if (opened++ > 0) {
                    dialog->reject();
                    return;
                }
                dialog->findChild<QLineEdit*>(u"fileNameEdit"_s)->setText(file);
                static_cast<QDialog*>(dialog)->accept();
            } else if (auto* box = qobject_cast<QMessageBox*>(&shown)) {
                const auto buttons = box->buttons();
                if (buttons.size() == 1) {
                    ++warned;
                    box->accept();
                    return;
                }
                ++asked;
                QVERIFY(box->defaultButton() == box->button(QMessageBox::Cancel));
                for (auto* button : buttons)
                    if ((box->buttonRole(button) == QMessageBox::DestructiveRole) == replace) {
                        button->click();
                        return;
                    }
            }
        });
        const auto to = filedialog::save(
            m_window.get(), {.title = u"Save"_s, .start = in("x.pdf"), .ending = u".pdf"_s});
        QCOMPARE(asked, asks ? 1 : 0);
        QCOMPARE(warned, !asks && !given ? 1 : 0);
        QCOMPARE(to.has_value(), given);
        if (to)
            QCOMPARE(to->existing == log::Existing::Replace, asks);
    }
};

QTEST_MAIN(TestFileDialogs)
#include "tst_filedialogs.moc"

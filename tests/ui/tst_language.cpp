// SPDX-License-Identifier: GPL-3.0-or-later
// The window in another language: what is chosen is spoken, by menus, standard buttons and numbers,
// and the open log stays as it is.
#include "tests/log/builders.h"
#include "ui/floor/entry/entrypage.h"
#include "ui/window/language.h"
#include "ui/window/mainwindow.h"
#include "ui/window/workspace.h"
#include "ui/words/units.h"

#include <QDialogButtonBox>
#include <QFile>
#include <QMenuBar>
#include <QProcess>
#include <QPushButton>
#include <QTest>
#include <QUndoStack>
#include <QXmlStreamReader>

using namespace slopebook;
using namespace slopebook::test;
using namespace slopebook::ui;

namespace {

Surroundings surroundings(const QString& language, std::optional<Settings>* kept = nullptr) {
    Surroundings s;
    s.settings.language = language;
    s.keepSettings = [kept](const Settings& now) {
        if (kept)
            *kept = now;
    };
    s.clock = [] { return day(2026, 3, 14); };
    return s;
}

QString firstMenu(const MainWindow& window) {
    return window.menuBar()->actions().value(0)->text();
}

QAction* languageAction(const MainWindow& window, const QString& code) {
    for (QAction* action : window.actions().languages->actions())
        if (action->data().toString() == code)
            return action;
    return nullptr;
}

} // namespace

class TestLanguage : public QObject {
    Q_OBJECT

    Folder m_folder;

private Q_SLOTS:
    void thereAreEnglishAndGerman() {
        const std::vector<Language> expected{{QStringLiteral("en"), QStringLiteral("English")},
                                             {QStringLiteral("de"), QStringLiteral("Deutsch")}};
        QCOMPARE(languages(), expected);
    }

    void theDesktopsLanguageIsSpokenWhereThereIsOne_data() {
        QTest::addColumn<QString>("chosen");
        QTest::addColumn<QString>("desktop");
        QTest::addColumn<QString>("spoken");
        QTest::newRow("a German desktop") << ""
                                          << "de_AT"
                                          << "de";
        QTest::newRow("an English desktop") << ""
                                            << "en_GB"
                                            << "en";
        QTest::newRow("a desktop in a language that is not there") << ""
                                                                   << "fr_FR"
                                                                   << "en";
        QTest::newRow("no language at all") << ""
                                            << "C"
                                            << "en";
        QTest::newRow("chosen against the desktop") << "de"
                                                    << "en_GB"
                                                    << "de";
        QTest::newRow("English chosen on a German desktop") << "en"
                                                            << "de_DE"
                                                            << "en";
        QTest::newRow("chosen, but not there") << "xx"
                                               << "de_DE"
                                               << "de";
    }
    void theDesktopsLanguageIsSpokenWhereThereIsOne() {
        QFETCH(QString, chosen);
        QFETCH(QString, desktop);
        QFETCH(QString, spoken);
        QCOMPARE(languageFor(chosen, QLocale(desktop)), spoken);
    }

    void numbersAreThoseOfTheLanguage() {
        {
            const Translation german(QStringLiteral("de"), QLocale(QStringLiteral("en_GB")));
            QCOMPARE(number(72.5, 1), QStringLiteral("72,5"));
            QVERIFY(dateText(day(2026, 3, 14)).contains(QStringLiteral("14. März")));
        }
        {
            const Translation english(QStringLiteral("en"), QLocale(QStringLiteral("de_DE")));
            QCOMPARE(number(72.5, 1), QStringLiteral("72.5"));
        }
        // The desktop's own way of writing stays where its language is spoken.
        const Translation swiss(QString(), QLocale(QStringLiteral("de_CH")));
        QCOMPARE(swiss.language(), QStringLiteral("de"));
        QCOMPARE(QLocale().name(), QStringLiteral("de_CH"));
    }

    void pluralsOfEnglishAreLookedUp() {
        const Translation english(QStringLiteral("en"));
        for (const auto& [count, words] : {std::pair(1, u"1 day away"), {2, u"2 days away"}}) {
            const QString text = QCoreApplication::translate(
                "SessionChange", "Move the session from %1 to %2, %n day(s) away?", nullptr, count);
            QVERIFY2(text.contains(words), qPrintable(text));
        }
    }

    void germanMenusAndButtons() {
        MainWindow window(surroundings(QStringLiteral("de")));
        QCOMPARE(firstMenu(window), QStringLiteral("&Protokoll"));
        QVERIFY(languageAction(window, QStringLiteral("de"))->isChecked());
        const QDialogButtonBox box(QDialogButtonBox::Cancel);
        QCOMPARE(box.button(QDialogButtonBox::Cancel)->text().remove(QLatin1Char('&')),
                 QStringLiteral("Abbrechen"));
    }

    void theChoiceInTheMenuIsSpokenAtOnceAndKept() {
        const auto path = m_folder.path("season.slopebook");
        {
            log::Log log = log::Log::create(path);
            fillSeason(log);
        }
        std::optional<Settings> kept;
        MainWindow window(surroundings(QStringLiteral("en"), &kept));
        window.openLogFile(QString::fromStdString(path.string()));
        window.workspace()->logbook().addAthlete({.name = "Cox", .note = {}});
        window.workspace()->showPage(Page::History);
        const auto athlete = window.workspace()->athlete();
        QVERIFY(athlete);

        languageAction(window, QStringLiteral("de"))->trigger();
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        QCoreApplication::processEvents();
        QCOMPARE(firstMenu(window), QStringLiteral("&Protokoll"));
        QCOMPARE(kept.value().language, QStringLiteral("de"));
        QVERIFY(window.workspace());
        QVERIFY(window.workspace()->page() == Page::History);
        QCOMPARE(window.workspace()->athlete(), athlete);
        QVERIFY(window.actions().undo->isEnabled());
        window.actions().undo->trigger();
        QCOMPARE(log::Log::open(path, log::Access::ReadOnly).athletes().size(), 2U);

        languageAction(window, QStringLiteral("en"))->trigger();
        QCOMPARE(firstMenu(window), QStringLiteral("&Log"));
        QCOMPARE(QLocale().decimalPoint(), QStringLiteral("."));
    }

    // Began anew beside today's session: the next set is not the earlier one's in another language.
    void aSessionAboutToBeginStaysSo() {
        const auto path = m_folder.path("about-to-begin.slopebook");
        {
            log::Log log = log::Log::create(path);
            const Season season = fillSeason(log);
            log.add(SessionHead{.athlete = season.lane3, .date = day(2026, 3, 14)});
        }
        MainWindow window(surroundings(QStringLiteral("en")));
        window.openLogFile(QString::fromStdString(path.string()));
        QVERIFY(window.workspace()->entry().session()); // today's
        window.workspace()->entry().beginSession();
        for (const char* code : {"de", "en"}) {
            languageAction(window, QLatin1String(code))->trigger();
            QVERIFY(!window.workspace()->entry().session());
        }
        window.countIn(LoadUnit::Pounds);
        QVERIFY(!window.workspace()->entry().session());
    }

    /// A sentence that lupdate finds no class for is spoken in English for ever.
    void everySentenceHasItsPlace() {
        QProcess lupdate;
        lupdate.setProcessChannelMode(QProcess::MergedChannels);
        lupdate.setWorkingDirectory(QStringLiteral(SLOPEBOOK_SOURCE));
        lupdate.start(QStringLiteral(SLOPEBOOK_LUPDATE),
                      {QStringLiteral("-I"), QStringLiteral("."), QStringLiteral("ui"),
                       QStringLiteral("-ts"),
                       QString::fromStdString(m_folder.path("all_de.ts").string())});
        QVERIFY(lupdate.waitForFinished(60000));
        const QString said = QString::fromUtf8(lupdate.readAll());
        QCOMPARE(lupdate.exitCode(), 0);
        QVERIFY2(!said.contains(QLatin1String("lacks Q_OBJECT")), qPrintable(said));
        QVERIFY2(!said.contains(QLatin1String("without context")), qPrintable(said));
    }

    /// No sentence of the German file is empty or unfinished, and of the English one, which holds
    /// plurals, no form; what lupdate has not seen yet shows as English: ninja update_translations.
    void filesAreComplete_data() {
        QTest::addColumn<QString>("language");
        QTest::addColumn<int>("least");
        QTest::newRow("German") << "de" << 1000;
        QTest::newRow("English plurals") << "en" << 2;
    }
    void filesAreComplete() {
        QFETCH(QString, language);
        QFETCH(int, least);
        QFile file(QStringLiteral(SLOPEBOOK_SOURCE "/resources/translations/slopebook_%1.ts")
                       .arg(language));
        QVERIFY(file.open(QIODevice::ReadOnly));
        QXmlStreamReader xml(&file);
        QString context, source;
        int read = 0;
        while (!xml.atEnd()) {
            xml.readNext();
            if (!xml.isStartElement())
                continue;
            if (xml.name() == QLatin1String("name")) {
                context = xml.readElementText();
            } else if (xml.name() == QLatin1String("source")) {
                source = xml.readElementText();
            } else if (xml.name() == QLatin1String("translation")) {
                const QString type = xml.attributes().value(QLatin1String("type")).toString();
                QString words;
                bool formIsEmpty = false;
                for (int depth = 1; depth > 0 && !xml.atEnd();) {
                    const auto token = xml.readNext();
                    if (token == QXmlStreamReader::StartElement) {
                        const QString form = xml.readElementText();
                        formIsEmpty = formIsEmpty || form.trimmed().isEmpty();
                        words += form;
                    } else if (token == QXmlStreamReader::Characters) {
                        words += xml.text();
                    } else if (token == QXmlStreamReader::EndElement) {
                        --depth;
                    }
                }
                QVERIFY2(type.isEmpty() && !words.trimmed().isEmpty() && !formIsEmpty,
                         qPrintable(context + QStringLiteral(": ") + source));
                ++read;
            }
        }
        QVERIFY(read >= least);
    }
};

QTEST_MAIN(TestLanguage)
#include "tst_language.moc"

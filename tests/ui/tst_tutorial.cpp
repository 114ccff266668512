// SPDX-License-Identifier: GPL-3.0-or-later
// The tutorial can be followed by somebody who does what it says and nothing else; it has its
// pictures, in every language, and the help shows them. What is new is told from the one list.
#include "app/tutorial/follower.h"
#include "ui/window/changes.h"
#include "ui/window/helpdialog.h"
#include "ui/window/language.h"
#include "ui/window/mainwindow.h"
#include "ui/window/menudeeds.h"
#include "ui/window/workspace.h"
#include "ui/words/format.h"

#include <QDir>
#include <QImage>
#include <QRegularExpression>
#include <QSignalSpy>
#include <QTabWidget>
#include <QTemporaryDir>
#include <QTest>
#include <QTextBrowser>

using namespace slopebook;
using namespace slopebook::ui;
using namespace Qt::Literals::StringLiterals;

namespace {

const QString tutorialFolder = QStringLiteral(SLOPEBOOK_TUTORIAL);

Date today() {
    return Date{std::chrono::year{2026}, std::chrono::month{5}, std::chrono::day{11}};
}

QString textOf(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString();
}

} // namespace

class TestTutorial : public QObject {
    Q_OBJECT

    QTemporaryDir m_own;

    std::unique_ptr<MainWindow> window(const QString& language = u"en"_s) {
        Surroundings s;
        s.settings.language = language;
        s.clock = today;
        s.sampleLog = SLOPEBOOK_SAMPLE_LOG;
        s.dataFolder = pathOf(m_own.path());
        s.tutorial = SLOPEBOOK_TUTORIAL;
        auto made = std::make_unique<MainWindow>(s);
        made->resize(1120, 640);
        made->show();
        made->activateWindow();
        return QTest::qWaitForWindowActive(made.get()) ? std::move(made) : nullptr;
    }

private Q_SLOTS:
    void itIsFollowedToTheLetter() {
        const auto at = window();
        QVERIFY(at);
        app::Follower follower(*at);
        for (const TutorialStep& step : tutorialSteps(at->actions())) {
            const QString problem = follower.follow(step);
            QVERIFY2(problem.isEmpty(), qPrintable(problem));
        }
        // Four sets were typed as it says, a slip was declined, and what it was put right to
        // undone.
        const log::Log& log = at->workspace()->logbook().log();
        const auto athlete = at->workspace()->athlete();
        QVERIFY(athlete);
        QCOMPARE(log.athlete(*athlete).value.name, std::string("Cora"));
        const auto lifts = log.lifts();
        const auto pull = std::ranges::find_if(
            lifts, [](const auto& one) { return one.value.name == "Bench pull"; });
        std::vector<double> loads;
        for (const auto& session : log.sessions(*athlete))
            if (session.value.date == today())
                for (const auto& set : log.sets(session.id, pull->id))
                    loads.push_back(kilograms(set.set.load));
        QCOMPARE(loads, (std::vector<double>{30, 40, 50, 60}));
    }

    /// What it names must be there: a step that cannot be done, or shows something else, is told.
    void whatCannotBeFollowedIsTold_data() {
        QTest::addColumn<QString>("html");
        QTest::addColumn<QString>("told");
        QTest::newRow("a page") << u"<b>Comparisons</b>"_s << u"Comparisons"_s;
        QTest::newRow("a menu entry") << u"<b>Log › Open a sample</b>"_s << u"Open a sample"_s;
        QTest::newRow("an entry for later") << u"<strong>Log › Buy…</strong>"_s << u"Buy"_s;
        QTest::newRow("a day in a choice")
            << u"<b>Athlete</b><b>Comparison</b><b>To</b> <b>5 May 2026</b>"_s << u"5 May"_s;
        QTest::newRow("what is shown") << u"<i>no such words</i>"_s << u"no such words"_s;
        QTest::newRow("a line where there is none")
            << u"<b>Squad</b> <b>Changes</b> <code>60 0.9</code>"_s << u"60 0.9"_s;
    }
    void whatCannotBeFollowedIsTold() {
        QFETCH(QString, html);
        QFETCH(QString, told);
        const auto at = window();
        QVERIFY(at);
        at->openSample();
        const QString problem = app::Follower(*at).follow({{}, u"A step"_s, html});
        QVERIFY2(problem.contains(told), qPrintable(problem));
    }

    void itHasItsPicturesInEveryLanguage_data() {
        QTest::addColumn<QString>("language");
        for (const Language& one : languages())
            QTest::newRow(qPrintable(one.code)) << one.code;
    }
    void itHasItsPicturesInEveryLanguage() {
        QFETCH(QString, language);
        const auto at = window(language);
        QVERIFY(at);
        const QDir folder(tutorialFolder + u'/' + language);
        const QString page = textOf(folder.filePath(u"index.html"_s));
        QVERIFY2(page.contains(u"<html lang=\"%1\">"_s.arg(language)), qPrintable(folder.path()));
        QVERIFY(page.contains(u"Slopebook " SLOPEBOOK_VERSION ""_s));
        QStringList wanted{u"index.html"_s};
        QImage before;
        for (const TutorialStep& step : tutorialSteps(at->actions())) {
            QVERIFY2(page.contains(step.title), qPrintable(step.title));
            QVERIFY2(page.contains(step.html), qPrintable(step.title));
            if (step.picture.isEmpty())
                continue;
            wanted << step.picture + u".png"_s;
            const QImage picture(folder.filePath(wanted.last()));
            QCOMPARE(picture.size(), QSize(1120, 640));
            QVERIFY2(picture != before, qPrintable(step.picture)); // each step shows something new
            before = picture;
            QVERIFY(page.contains(u"<img src=\"%1\""_s.arg(wanted.last())));
        }
        wanted.sort();
        QCOMPARE(folder.entryList(QDir::Files, QDir::Name), wanted);
    }

    void theHelpShowsIt() {
        const auto at = window();
        QVERIFY(at);
        at->actions().tutorial->trigger();
        auto* help = at->findChild<HelpDialog*>();
        QVERIFY(help);
        auto* text = qobject_cast<QTextBrowser*>(help->findChild<QTabWidget*>()->currentWidget());
        static const QRegularExpression image(u"src=\"(file:[^\"]+)\""_s);
        int pictures = 0;
        for (auto found = image.globalMatch(helpOf(*at).tutorial); found.hasNext(); ++pictures) {
            const auto shown =
                text->document()
                    ->resource(QTextDocument::ImageResource, QUrl(found.next().captured(1)))
                    .value<QImage>();
            QVERIFY(!shown.isNull());
            QVERIFY(shown.width() <= 700 * shown.devicePixelRatio());
        }
        QCOMPARE(pictures, 9);
    }

    void withoutPicturesItIsThereAllTheSame() {
        const auto at = window();
        QVERIFY(at);
        at->surroundings().tutorial.clear();
        const QString told = helpOf(*at).tutorial;
        QVERIFY(!told.contains(u"<img"_s));
        for (const TutorialStep& step : tutorialSteps(at->actions()))
            QVERIFY(told.contains(step.html));
    }

    void whatIsNewBeginsWithThisVersion() {
        const QString english = changesHelp(u"en"_s), german = changesHelp(u"de"_s);
        QVERIFY(english.startsWith(u"<h3>" SLOPEBOOK_VERSION "</h3>"_s));
        QVERIFY(german.startsWith(u"<h3>" SLOPEBOOK_VERSION "</h3>"_s));
        static const QRegularExpression item(u"<li>(.*?)</li>"_s);
        auto inEnglish = item.globalMatch(english), inGerman = item.globalMatch(german);
        int items = 0;
        for (; inEnglish.hasNext(); ++items) {
            QVERIFY(inGerman.hasNext());
            const QString told = inEnglish.next().captured(1);
            QVERIFY2(told != inGerman.next().captured(1), qPrintable(told));
        }
        QVERIFY(!inGerman.hasNext());
        QVERIFY(items >= 8);
        // A language that it does not speak reads English.
        QCOMPARE(changesHelp(u"fi"_s), english);
    }

    void theMenuShowsWhatIsNew() {
        const auto at = window();
        QVERIFY(at);
        at->actions().changes->trigger();
        const auto* tabs = at->findChild<HelpDialog*>()->findChild<QTabWidget*>();
        QVERIFY(qobject_cast<QTextBrowser*>(tabs->currentWidget())
                    ->toPlainText()
                    .startsWith(QStringLiteral(SLOPEBOOK_VERSION)));
    }
};

QTEST_MAIN(TestTutorial)
#include "tst_tutorial.moc"

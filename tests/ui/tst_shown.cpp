// SPDX-License-Identifier: GPL-3.0-or-later
// What is shown anywhere, read as a whole: loads stand in the coach's unit on every page, paper and
// command; no p value of nothing, no error of nothing, no doubt about a source in a sentence; and
// every label says to those who hear the window what it shows to those who see it.
#include "core/answers/figures.h"
#include "core/answers/planbounds.h"
#include "core/answers/profile.h"
#include "core/questions/followquestions.h"
#include "core/questions/planquestions.h"
#include "tests/log/builders.h"
#include "tests/system/program.h"
#include "tests/ui/everyplace.h"
#include "ui/athlete/season/seasonprint.h"
#include "ui/charts/chartout.h"
#include "ui/paper/batteryprint.h"
#include "ui/paper/comparisonrows.h"
#include "ui/paper/printedcomparison.h"
#include "ui/parts/sentence.h"
#include "ui/squad/changes/squadpage.h"
#include "ui/squad/changes/squadprint.h"
#include "ui/window/workspace.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAccessible>
#include <QComboBox>
#include <QGroupBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QProcess>
#include <QStandardPaths>
#include <QTest>
#include <QTextDocument>
#include <QTextEdit>

using namespace slopebook;
using namespace slopebook::test;
using namespace slopebook::questions;
using namespace slopebook::ui;
using namespace Qt::Literals::StringLiterals;

namespace {

/// Whatever a person may read of a widget: its words, tips, cells, and what a chart says.
QStringList textsOf(const QWidget& widget) {
    QStringList texts{widget.toolTip(), widget.accessibleName(), widget.accessibleDescription()};
    if (const auto* label = qobject_cast<const QLabel*>(&widget))
        texts << label->text().split(u"</p>"_s, Qt::SkipEmptyParts);
    if (const auto* button = qobject_cast<const QAbstractButton*>(&widget))
        texts << button->text();
    if (const auto* group = qobject_cast<const QGroupBox*>(&widget))
        texts << group->title();
    if (const auto* line = qobject_cast<const QLineEdit*>(&widget))
        texts << line->text() << line->placeholderText();
    if (const auto* text = qobject_cast<const QTextEdit*>(&widget))
        texts << text->toPlainText();
    if (const auto* combo = qobject_cast<const QComboBox*>(&widget))
        for (int i = 0; i < combo->count(); ++i)
            texts << combo->itemText(i);
    if (const auto* chart = dynamic_cast<const charts::ChartOut*>(&widget)) {
        const charts::FigureTable table = chart->figures();
        texts << table.headings;
        for (const QStringList& row : table.rows)
            texts << row;
    }
    const auto* view = qobject_cast<const QAbstractItemView*>(&widget);
    const QAbstractItemModel* model =
        view && !qobject_cast<const QHeaderView*>(view) ? view->model() : nullptr;
    for (int column = 0; model && column < model->columnCount(); ++column) {
        // What each side takes: plates in their own unit.
        if (model->headerData(column, Qt::Horizontal).toString().startsWith(u"Put on"_s))
            continue;
        texts << model->headerData(column, Qt::Horizontal).toString();
        for (int row = 0; row < std::min(60, model->rowCount()); ++row)
            for (const int role : {Qt::DisplayRole, Qt::ToolTipRole})
                texts << model->index(row, column).data(role).toString();
    }
    texts.removeAll(QString());
    return texts;
}

/// A mass in kilograms, or a heading of some.
const QRegularExpression kilogramsShown(u"[0-9][\\s\u00a0]*kg\\b(?! m/s)|[(,][\\s\u00a0]*kg\\b"_s);

struct Found {
    QStringList wrong{};
    int seen = 0;
    void take(bool good, const QString& place, const QString& what) {
        ++seen;
        if (!good)
            wrong << place + u": "_s + what;
    }
    QByteArray text() {
        wrong.removeDuplicates();
        for (const QString& one : wrong)
            qInfo("%s", qPrintable(one));
        return QByteArray::number(wrong.size()) + " are wrong";
    }
};

/// Where kilograms are meant whatever the coach's unit is: plates and bars as they were typed, what
/// to write behind a number, a column of a file, a trace's own figures.
bool sayKilograms(const QString& place, const QWidget& widget, const QString& text) {
    const QStringList places{u"dialog: equipment"_s, u"dialog: table"_s, u"dialog: odd table"_s,
                             u"dialog: import"_s,    u"dialog: help"_s,  u"dialog: trace"_s,
                             u"dialog: about"_s};
    if (std::ranges::any_of(places, [&](const QString& one) { return place.startsWith(one); }))
        return true;
    if (text.contains(u"N/kg"_s) || text.contains(u"per kg of body mass"_s))
        return true;
    // Pieces of equipment, in their own unit.
    return qobject_cast<const QComboBox*>(&widget) && text.contains(u"bar"_s, Qt::CaseInsensitive);
}

/// A citation says a mass as its source does, a coach's own note as it was written (that of the
/// sample's flood).
QString uncited(QString text) {
    static const QRegularExpression cited(
        u"[0-9.]+ of [0-9.]+ kg|[0-9.]+ kg \\(Banyard|nothing above 70 kg, lifted fast"_s);
    return text.remove(cited);
}

bool doubtful(const QString& text) {
    static const QRegularExpression nothing(
        u"p = [0]?[.,]0+\\b|\\b0[.,]0000\\b|from memory|aus dem Ged\u00e4chtnis"_s);
    return nothing.match(text).hasMatch();
}

/// A speed with a point, a day as a file has it, the name of a test that the program knows: none of
/// them as a German coach reads.
bool english(const QString& text) {
    static const QRegularExpression foreign(
        u"(?<![0-9.])[0-9]{1,3}\\.[0-9]{1,2}(?![0-9.])|\\b20[0-9]{2}-[0-9]{2}-[0-9]{2}\\b|"
        "Countermovement|Drop jump|Single hop|Triple hop|ball throw|Isometric pull"_s);
    return foreign.match(text).hasMatch();
}

/// A file's own cells and columns, licences, the citations of sources in their own language; a day
/// that is being typed.
bool asItStandsElsewhere(const QString& place, const QWidget& widget) {
    const QStringList places{u"dialog: table"_s, u"dialog: odd table"_s, u"dialog: import"_s,
                             u"dialog: about"_s, u"dialog: trace"_s,     u"dialog: test"_s};
    if (std::ranges::any_of(places, [&](const QString& one) { return place.startsWith(one); }))
        return true;
    return widget.hasFocus() || (widget.parentWidget() && widget.parentWidget()->hasFocus());
}

/// Where sources stand: the comparison's paragraphs of them, a column, the field that asks for one.
bool isSource(const QString& place, const QWidget& widget, const QString& text) {
    const bool published = text.contains(u"published"_s) || text.contains(u"ver\u00f6ffentlicht"_s);
    if (qobject_cast<const QAbstractItemView*>(&widget))
        return published;
    if (qobject_cast<const QLabel*>(&widget))
        return published && (place.contains(u"Comparison"_s) || place.contains(u"Vergleich"_s));
    return qobject_cast<const QLineEdit*>(&widget) && !text.contains(u"p = "_s);
}

QString plainOf(const QLabel& label) {
    QString text = label.text();
    if (Qt::mightBeRichText(text)) {
        QTextDocument document;
        document.setHtml(text);
        text = document.toPlainText();
    }
    if (label.buddy())
        text.remove(u'&');
    return text.simplified();
}

void hearLabels(const QString& place, QWidget& shown, Found& found) {
    for (QWidget* widget : controlsOf(shown)) {
        const auto* label = qobject_cast<QLabel*>(widget);
        if (!label || !label->isVisible() || label->text().trimmed().isEmpty())
            continue;
        QAccessibleInterface* heard = QAccessible::queryAccessibleInterface(widget);
        const QString name = heard ? heard->text(QAccessible::Name) : QString();
        QString plain = name;
        if (Qt::mightBeRichText(plain)) {
            QTextDocument document;
            document.setHtml(plain);
            plain = document.toPlainText();
        }
        found.take(
            plain.simplified() == plainOf(*label), place,
            u"\"%1\" is heard as \"%2\" (%3)"_s.arg(plainOf(*label), name, label->objectName()));
        if (heard)
            found.take(heard->role() == QAccessible::StaticText, place,
                       plainOf(*label) + u" role"_s);
    }
}

QString paperText(const page::Print& print, const QTemporaryDir& folder) {
    const QString file = folder.filePath(u"paper.pdf"_s);
    QFile::remove(file); // a page is never written over another
    page::writePagesPdf(print, page::Paper::A4, std::filesystem::path(file.toStdString()));
    QProcess reader;
    reader.start(u"pdftotext"_s, {u"-layout"_s, file, u"-"_s});
    return reader.waitForFinished() ? QString::fromUtf8(reader.readAllStandardOutput()) : QString();
}

} // namespace

class TestShown : public QObject {
    Q_OBJECT

    std::filesystem::path m_sample{SLOPEBOOK_SAMPLE_LOG};

private Q_SLOTS:
    void everyPageInPounds() {
        Found found;
        int pounds = 0;
        inEveryPlace(u"en"_s, false, LoadUnit::Pounds, [&](const QString& place, QWidget& shown) {
            for (const QWidget* widget : controlsOf(shown))
                for (const QString& text : textsOf(*widget)) {
                    found.take(!kilogramsShown.match(uncited(text)).hasMatch() ||
                                   sayKilograms(place, *widget, text),
                               place,
                               QLatin1String(widget->metaObject()->className()) + u": "_s + text);
                    pounds += text.contains(QRegularExpression(u"[0-9][\\s\u00a0]lb\\b"_s));
                    found.take(!doubtful(text) || isSource(place, *widget, text), place, text);
                }
            hearLabels(place, shown, found);
        });
        QVERIFY2(found.wrong.isEmpty(), found.text());
        QVERIFY2(found.seen > 5000, qPrintable(QString::number(found.seen)));
        QVERIFY2(pounds > 50, qPrintable(QString::number(pounds)));
    }

    void everyPageInGerman() {
        Found found;
        inEveryPlace(u"de"_s, false, [&](const QString& place, QWidget& shown) {
            for (const QWidget* widget : controlsOf(shown))
                for (const QString& text : textsOf(*widget)) {
                    found.take(!doubtful(text) || isSource(place, *widget, text), place, text);
                    found.take(!english(text) || asItStandsElsewhere(place, *widget), place, text);
                }
            hearLabels(place, shown, found);
        });
        QVERIFY2(found.wrong.isEmpty(), found.text());
    }

    /// Unclear comes with what such tests could have shown, wherever it stands.
    void unclearIsNeverABareWord() {
        Found found;
        int unclear = 0;
        // What a page's readings are held against stands in what it says first, in the same words.
        const QMap<QString, QString> against{
            {u"Overview"_s, u"all blocks at once"_s},
            {u"Whole season"_s, u"all blocks at once"_s},
            {u"Season"_s, u"all blocks at once"_s},
            {u"Comparison"_s, u"all blocks at once"_s},
            {u"Battery, Before and after"_s, u"all blocks at once"_s},
            {u"Changes"_s, u"each change alone"_s}};
        int told = 0;
        inEveryPlace(u"en"_s, false, [&](const QString& place, QWidget& shown) {
            if (const auto words = against.find(QString(place).remove(u'&'));
                words != against.end()) {
                ++told;
                QStringList leading;
                for (const QLabel* label : shown.findChildren<QLabel*>())
                    if (label->isVisible() && (qobject_cast<const Sentence*>(label) ||
                                               label->objectName() == u"counts"_s))
                        leading << label->text();
                found.take(leading.join(u' ').contains(*words, Qt::CaseInsensitive), place,
                           leading.join(u' '));
            }
            for (const QWidget* widget : controlsOf(shown))
                for (const QString& text : textsOf(*widget)) {
                    found.take(!text.contains(u"shows from"_s) && !text.contains(u"tests show"_s),
                               place, text);
                    unclear +=
                        text.contains(u"unclear; clear"_s) || text.contains(u"unclear, leaning"_s);
                    found.take(text != u"unclear"_s && !text.endsWith(u"leaning to better"_s) &&
                                   !text.endsWith(u"leaning to worse"_s),
                               place, text);
                }
        });
        QVERIFY2(found.wrong.isEmpty(), found.text());
        QVERIFY(unclear > 0);
        QCOMPARE(told, int(against.size()));
    }

    /// The walk sees what it looks for: the same pages in kilograms are full of them.
    void theWalkSeesKilograms() {
        int seen = 0;
        inEveryPlace(u"en"_s, false, [&](const QString& place, QWidget& shown) {
            if (!place.startsWith(u"dialog"_s))
                for (const QWidget* widget : controlsOf(shown))
                    for (const QString& text : textsOf(*widget))
                        seen += kilogramsShown.match(text).hasMatch() &&
                                !sayKilograms(place, *widget, text);
        });
        QVERIFY2(seen > 50, qPrintable(QString::number(seen)));
    }

    void everyPaperInPounds() {
        if (QStandardPaths::findExecutable(u"pdftotext"_s).isEmpty())
            QSKIP("PDFTOTEXT IS NOT INSTALLED: paper is not read back (poppler-utils)");
        const QTemporaryDir folder;
        const QString copy = folder.filePath(u"log.slopebook"_s);
        QVERIFY(QFile::copy(QString::fromStdString(m_sample.string()), copy));
        Logbook book(log::Log::open(copy.toStdString()));
        book.setLoadUnit(LoadUnit::Pounds);
        const log::Log& log = book.log();
        const auto athlete = log.athletes().front().id;
        const auto lift = log.liftsOf(athlete).front();
        const Background about = background(log, athlete, lift);
        std::vector<QString> papers;
        const auto comparison =
            comparisonOf(log, about, about.sessions.front(), about.sessions.back());
        QVERIFY(comparison);
        PageHeader header = pageHeader(log, about, *comparison);
        header.unit = LoadUnit::Pounds;
        papers.push_back(paperText(comparisonPrint(*comparison, header), folder));
        const auto battery =
            batteryOf(log, athlete, batterySide(log, "Autumn"), batterySide(log, "Spring"));
        QVERIFY(battery);
        QVERIFY(!battery->lifts.empty());
        papers.push_back(paperText(batteryPrint(*battery, LoadUnit::Pounds), folder));
        const Mass load =
            about.checkLoads.empty() ? massFromKilograms(60) : about.checkLoads.front();
        const auto season = seasonOf(log, about, load);
        QVERIFY(season);
        papers.push_back(
            paperText(seasonPrint({.athlete = u"A"_s,
                                   .lift = u"B"_s,
                                   .season = *season,
                                   .chart = seasonData(*season, log.blocks(), about.lift.value.kind,
                                                       0.95, LoadUnit::Pounds),
                                   .blocks = log.blocks()}),
                      folder));
        SquadPage squad(book);
        squad.setAthleteAndLift({}, lift);
        QTRY_VERIFY_WITH_TIMEOUT(squad.squad().has_value(), 20000);
        papers.push_back(paperText(squadPrint(*squad.squad(), u"B"_s, LoadUnit::Pounds), folder));
        for (const QString& text : papers) {
            QVERIFY(text.size() > 300);
            for (const QString& line : text.split(u'\n')) {
                QVERIFY2(!kilogramsShown.match(uncited(line)).hasMatch() ||
                             line.contains(u"N/kg"_s),
                         qPrintable(line));
                QVERIFY2(!doubtful(line) || line.contains(u"published"_s) ||
                             line.contains(u"Sources"_s) || !line.contains(u"p = "_s),
                         qPrintable(line));
            }
            QVERIFY2(text.contains(QRegularExpression(u"\\blb\\b"_s)), qPrintable(text.left(400)));
        }
    }

    void planCommandInPounds() {
        const QString sample = QString::fromStdString(m_sample.string());
        const auto told = [&](const QString& words) {
            QStringList arguments = QProcess::splitCommand(words);
            arguments.replaceInStrings(u"LOG"_s, sample);
            return QString::fromUtf8(tests::runProgram(arguments).out);
        };
        for (const char* words :
             {"plan LOG --athlete Cora --lift \"Back squat\" --percent 70-80 --loss 20 --history "
              "--next-test 4 --lb --bar 45 --plates 45x3,25x2,10x2,5x2,2.5x1",
              "plan LOG --athlete Cora --lift \"Back squat\" --percent 70 --next-test 4 --lb --bar "
              "45 "
              "--plates 45x3 --ceiling 46"}) {
            const QString text = told(QString::fromLatin1(words));
            QVERIFY2(text.contains(u" lb"_s), qPrintable(text));
            static const QRegularExpression mass(u"[0-9] kg\\b"_s);
            for (const QString& line : text.split(u'\n'))
                QVERIFY2(!mass.match(line).hasMatch(), qPrintable(line));
        }
    }

    /// What holds days and bend is one interval on paper and in a command, whatever is planned
    /// with: what the log's own maxima say of it is another one.
    void commandAndPaperTellOneInterval() {
        const log::Log log = log::Log::open(m_sample, log::Access::ReadOnly);
        const auto dashed = [](QString shown) { return shown.replace(u'–', u'-'); };
        for (const auto& athlete : log.athletes())
            for (const LiftId lift : log.liftsOf(athlete.id)) {
                const Background about = background(log, athlete.id, lift);
                if (about.sessions.size() < 2)
                    continue;
                const LiftSession &from = about.sessions.front(), &to = about.sessions.back();
                const auto c = comparisonOf(log, about, from, to);
                const auto context = liftContext(log, lift);
                const auto asked = profileOf(within(context, about, to.conditions.device), to);
                if (!c || !asked || !asked->oneRm || !answers::plansCalibrated(*asked->oneRm))
                    continue;
                const tests::Ran ran =
                    tests::runProgram({u"compare"_s, QString::fromStdString(m_sample.string()),
                                       u"--athlete"_s, QString::fromStdString(athlete.value.name),
                                       u"--lift"_s, QString::fromStdString(about.lift.value.name),
                                       u"--from"_s, QString::fromStdString(isoDate(from.date)),
                                       u"--to"_s, QString::fromStdString(isoDate(to.date))});
                QCOMPARE(ran.exit, 0);
                QString row;
                for (const QString& line : QString::fromUtf8(ran.out).split(u'\n'))
                    if (line.contains(u"days and bend"_s))
                        row = line.simplified();
                for (const page::OneRmRow& shown : page::oneRmRows(*c, LoadUnit::Kilograms))
                    if (shown.label.contains(u"days and bend"_s))
                        QVERIFY2(row.contains(dashed(shown.from)) && row.contains(dashed(shown.to)),
                                 qPrintable(row + u" | "_s + shown.from + u" | "_s + shown.to));
                QVERIFY(!row.isEmpty());
                return;
            }
        QFAIL("no session of the sample is planned with another interval");
    }

    void commandsSayNoDoubtInASentence() {
        const QString sample = QString::fromStdString(m_sample.string());
        for (const char* words :
             {"profile LOG --athlete Cora --lift \"Bench pull\"", "noise LOG",
              "compare LOG --athlete Cora --lift \"Bench pull\" --from 2025-09-22 --to 2026-05-04",
              "follow LOG --athlete Cora --lift \"Bench pull\" --load 50",
              "battery LOG --athlete Cora --from Autumn --to Spring",
              "plan LOG --athlete Cora --lift \"Bench pull\" --percent 70 --restricted-flow "
              "--relation published --bar 20 --plates 20x2,10x2"}) {
            QStringList arguments = QProcess::splitCommand(QString::fromLatin1(words));
            arguments.replaceInStrings(u"LOG"_s, sample);
            const tests::Ran ran = tests::runProgram(arguments);
            QVERIFY2(ran.exit == 0 || ran.exit == 1, ran.err);
            for (const QString& line : QString::fromUtf8(ran.out).split(u'\n'))
                QVERIFY2(!doubtful(line), qPrintable(line));
        }
    }

    /// Each reason with a load in it, in both units and where no unit is at hand.
    void reasonsInTheCoachesUnit() {
        const QChar nbsp(QChar::Nbsp);
        const Mass load = massFromKilograms(62.5); // 137.789 lb
        for (const Words& words :
             {filled("every point is at %1: a line needs two loads", load),
              filled("%1 lies beyond the loads that both sessions cover", load),
              filled("fewer than two loads can be built up to %1", load),
              filled("%1, speed at %2", std::string("Back squat"), load),
              filled("%1: %2", filled("%1, speed at %2", std::string("Pull"), load),
                     filled("no smallest change that matters is known"))}) {
            const QString kg = u"62.5"_s + nbsp + u"kg"_s, lb = u"137.8"_s + nbsp + u"lb"_s;
            QVERIFY(said(words, LoadUnit::Kilograms).contains(kg));
            QVERIFY(said(words, LoadUnit::Pounds).contains(lb));
            QVERIFY(!said(words, LoadUnit::Pounds).contains(u"kg"_s));
            QVERIFY(said(words).contains(kg + u" ("_s + lb + u')'));
            QVERIFY(english(words).find("62.5 kg") != std::string::npos);
            QVERIFY(english(words, MassUnit::Pound).find("137.8 lb") != std::string::npos);
            QVERIFY(
                noAnswerText(NoAnswer{NoAnswer::Why::Other, words}, LoadUnit::Pounds).contains(lb));
        }
    }

    void pValues() {
        const auto pText = [](double p) { return said(figure(answers::pText(p))); };
        // By hand: three decimals, and below half of the last one it is not nothing.
        QCOMPARE(pText(0.0431), u"p = 0.043"_s);
        QCOMPARE(pText(0.9996), u"p = 1.000"_s);
        QCOMPARE(pText(0.001), u"p = 0.001"_s);
        for (const double small : {0.00099, 0.0004, 1e-12, 0.0})
            QCOMPARE(pText(small), u"p < 0.001"_s);
        QLocale::setDefault(QLocale(QLocale::German));
        QCOMPARE(pText(0.0431), u"p = 0,043"_s);
        QLocale::setDefault(QLocale::c());
    }

    void sourcesAreCitedWithoutTheirDoubt() {
        const std::pair<const char*, const char*> cases[]{
            {"Helms et al. 2017 (powerlifters), from memory", "Helms et al. 2017 (powerlifters)"},
            {"A and B 2010 (from memory); then C", "A and B 2010; then C"},
            {"(Banyard et al. 2018, from memory) / 2.77", "(Banyard et al. 2018) / 2.77"},
            {"17.74 cm read, which test has which from memory)", "17.74 cm read)"},
            {"B 2014, coefficients from memory", "B 2014"},
            {"under 5 % (Comfort 2019, from memory); the upper end",
             "under 5 % (Comfort 2019); the upper end"},
            {"read in its text", "read in its text"}};
        for (const auto& [whole, cited] : cases)
            QCOMPARE(answers::cited(whole), std::string(cited));
    }
};

QTEST_MAIN(TestShown)
#include "tst_shown.moc"

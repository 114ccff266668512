// SPDX-License-Identifier: GPL-3.0-or-later
// On a desktop whose C locale writes 1,06 the program writes 1.06 where a file is meant, and 1,06
// where a person is: commands, the window, the card and the workbook under a de_DE made for this
// test by localedef, and the check that keeps the C locale out of the sources.
#include "core/answers/plates.h"
#include "core/log/log.h"
#include "core/questions/wholeexport.h"
#include "tests/log/builders.h"
#include "tests/system/program.h"
#include "ui/window/application.h"
#include "ui/window/mainwindow.h"
#include "ui/window/workspace.h"
#include "ui/words/said.h"

#include <QAbstractItemView>
#include <QApplication>
#include <QDirIterator>
#include <QLabel>
#include <QProcess>
#include <QTest>

#include <clocale>
#include <cstdlib>

using namespace slopebook;
using namespace slopebook::test;
using namespace slopebook::ui;
using tests::Ran;

namespace {

const char* const comma = "de_DE.UTF-8";

QByteArray outOf(const QString& tool, const QStringList& arguments) {
    QProcess process;
    process.start(tool, arguments);
    if (!process.waitForStarted() || !process.waitForFinished(60'000) || process.exitCode() != 0)
        return {};
    return process.readAllStandardOutput();
}

/// Runs the program under that locale.
Ran runIn(const QByteArray& locale, const QStringList& arguments) {
    qputenv("LC_ALL", locale);
    const Ran ran = tests::runProgram(arguments);
    qputenv("LC_ALL", comma);
    return ran;
}

/// The numbers of all sheets of a workbook, as they stand in it.
QStringList numbersIn(const QString& workbook) {
    const QString text =
        QString::fromUtf8(outOf(QStringLiteral("unzip"), {QStringLiteral("-p"), workbook,
                                                          QStringLiteral("xl/worksheets/*.xml")}));
    QStringList numbers;
    // A cell of a string or a truth says so by its type; its value is an index.
    static const QRegularExpression cell(
        QStringLiteral("<c (?![^>]*t=\"(?:s|b|str)\")[^>]*><v>([^<]*)</v>"));
    for (auto found = cell.globalMatch(text); found.hasNext();)
        numbers << found.next().captured(1);
    return numbers;
}

QMap<QString, QByteArray> filesOf(const QString& folder) {
    QMap<QString, QByteArray> files;
    for (QDirIterator each(folder, QDir::Files); each.hasNext();) {
        QFile file(each.next());
        if (file.fileName().endsWith(u".csv") && file.open(QIODevice::ReadOnly))
            files[QFileInfo(file).fileName()] = file.readAll();
    }
    return files;
}

} // namespace

class TestNumbers : public QObject {
    Q_OBJECT
public:
    bool made = false; ///< the comma locale

private Q_SLOTS:
    void initTestCase() {
        if (!made)
            QSKIP("localedef cannot make de_DE here (package locales)");
        // The desktop's locale is German, and its C locale would write a comma.
        QCOMPARE(QString::fromLatin1(std::setlocale(LC_CTYPE, nullptr)), QLatin1String(comma));
        std::setlocale(LC_NUMERIC, comma);
        char text[16];
        std::snprintf(text, sizeof text, "%.2f", 1.06);
        QCOMPARE(QByteArray(text), QByteArray("1,06"));
        std::setlocale(LC_NUMERIC, "C");
    }

    void theApplicationLeavesThePoint() {
        QCOMPARE(QByteArray(std::localeconv()->decimal_point), QByteArray("."));
        QCOMPARE(QLocale().toString(1.06, 'f', 2), QStringLiteral("1,06"));
    }

    void commandsSayTheSame_data() {
        QTest::addColumn<QStringList>("arguments");
        const QString athlete = QStringLiteral("--athlete Cora --lift \"Back squat\" ");
        const auto row = [](const char* name, const QString& words) {
            QTest::newRow(name) << QProcess::splitCommand(words);
        };
        row("list", QStringLiteral("list LOG"));
        row("list, JSON", QStringLiteral("list LOG --json"));
        row("profile", QStringLiteral("profile LOG ") + athlete);
        row("profile, JSON", QStringLiteral("profile LOG --json ") + athlete);
        row("compare",
            QStringLiteral("compare LOG --from 2025-09-22 --to 2026-05-04 --pdf PDF ") + athlete);
        row("compare, JSON",
            QStringLiteral("compare LOG --from 2025-09-22 --to 2026-05-04 --json --pdf PDF ") +
                athlete);
        row("follow", QStringLiteral("follow LOG --load 62.5 ") + athlete);
        row("noise", QStringLiteral("noise LOG"));
        row("noise, JSON", QStringLiteral("noise LOG --json"));
        row("battery",
            QStringLiteral("battery LOG --athlete Cora --from Autumn --to Spring --pdf PDF "
                           "--csv CSV"));
        row("battery, JSON",
            QStringLiteral("battery LOG --athlete Cora --from Autumn --to Spring --json"));
        row("plan", QStringLiteral("plan LOG --percent 70-80 --loss 20 --history --next-test 4 "
                                   "--bar 20 --plates 20x2,10x2,2.5x1,1.25x1 --pdf PDF ") +
                        athlete);
        row("plan, JSON",
            QStringLiteral("plan LOG --percent 70-80 --next-test 4 --json --bar 20 --plates "
                           "20x2,10x2,2.5x1,1.25x1 --pdf PDF ") +
                athlete);
        row("check", QStringLiteral("check LOG"));
    }
    /// To the byte, with a page painted in the same run and without: what a page is painted by sets
    /// the C locale.
    void commandsSayTheSame() {
        QFETCH(QStringList, arguments);
        const Folder folder;
        const auto in = [&](const char* name) {
            return QString::fromStdString(folder.path(name).string());
        };
        arguments.replaceInStrings(QStringLiteral("LOG"), QStringLiteral(SLOPEBOOK_SAMPLE_LOG));
        const auto told = [&](const char* locale, const char* pdf, const char* csv) {
            QStringList with = arguments;
            with.replaceInStrings(QStringLiteral("PDF"), in(pdf));
            with.replaceInStrings(QStringLiteral("CSV"), in(csv));
            return runIn(locale, with);
        };
        const Ran plain = told("C.UTF-8", "a.pdf", "a.csv");
        const Ran german = told(comma, "b.pdf", "b.csv");
        QCOMPARE(plain.exit, 0);
        QCOMPARE(german.exit, 0);
        QCOMPARE(german.out, plain.out);
        if (arguments.contains(QStringLiteral("PDF"))) {
            const qsizetype at = arguments.indexOf(QStringLiteral("PDF"));
            QStringList without = arguments;
            without.remove(at - 1, 2);
            without.replaceInStrings(QStringLiteral("CSV"), in("c.csv"));
            QCOMPARE(runIn(comma, without).out, plain.out);
            const QByteArray text =
                outOf(QStringLiteral("pdftotext"), {in("a.pdf"), QStringLiteral("-")});
            QVERIFY(!text.isEmpty());
            QCOMPARE(outOf(QStringLiteral("pdftotext"), {in("b.pdf"), QStringLiteral("-")}), text);
        }
        if (arguments.contains(QStringLiteral("CSV"))) {
            QFile a(in("a.csv")), b(in("b.csv"));
            QVERIFY(a.open(QIODevice::ReadOnly) && b.open(QIODevice::ReadOnly));
            QCOMPARE(b.readAll(), a.readAll());
        }
    }

    void tablesAndWorkbook() {
        const Folder folder;
        const auto in = [&](const char* name) {
            return QString::fromStdString(folder.path(name).string());
        };
        const QString sample = QStringLiteral(SLOPEBOOK_SAMPLE_LOG);
        QCOMPARE(
            runIn("C.UTF-8", {QStringLiteral("export"), sample, QStringLiteral("--to"), in("a")})
                .exit,
            0);
        QCOMPARE(
            runIn(comma, {QStringLiteral("export"), sample, QStringLiteral("--to"), in("b")}).exit,
            0);
        // The window's own export: in this process, that has an application.
        questions::exportWhole(log::Log::open(SLOPEBOOK_SAMPLE_LOG, log::Access::ReadOnly),
                               folder.path("c"));
        const QStringList numbers = numbersIn(in("a/log.xlsx"));
        QVERIFY(numbers.size() > 1000);
        for (const char* other : {"b", "c"}) {
            QCOMPARE(filesOf(in(other)), filesOf(in("a")));
            const QStringList read = numbersIn(in(other) + QStringLiteral("/log.xlsx"));
            QCOMPARE(read, numbers);
            for (const QString& number : read) {
                bool good = false;
                number.toDouble(&good); // in the C locale
                QVERIFY2(good, qPrintable(number));
            }
        }
    }

    void theCard() {
        // Exact masses as a person writes them, zeros trimmed: 25 kg was "25,000".
        const auto kg = [](const char* mass) {
            Plate plate;
            plate.mass = *parseExactMass(mass, MassUnit::Kilogram);
            return answers::PlateCount{plate, 1};
        };
        answers::BuiltLoad load;
        load.bar = Bar{.name = "bar", .mass = *parseExactMass("20", MassUnit::Kilogram)};
        load.perSide = {kg("25"), kg("2.5")};
        const QString text = said(answers::putOnWords(load));
        QVERIFY2(text.contains(u"25 + 2,5") && !text.contains(u"25,0"), qPrintable(text));
    }

    /// Every task of the window in German: no trailing zeros of a kilogram, no number with a point.
    void theWindow() {
        const Folder folder;
        QVERIFY(QFile::copy(QStringLiteral(SLOPEBOOK_SAMPLE_LOG),
                            QString::fromStdString(folder.path().string())));
        Surroundings around;
        around.settings.language = QStringLiteral("de");
        around.clock = [] { return day(2026, 5, 11); };
        MainWindow window(around);
        window.show();
        window.openLogFile(QString::fromStdString(folder.path().string()));
        QVERIFY(window.workspace());
        static const QRegularExpression zeros(QStringLiteral("[0-9],000 (kg|lb)")),
            point(QStringLiteral("[0-9]\\.[0-9]+\\s?(kg|lb|m/s)"));
        int seen = 0;
        // A published source keeps its own words.
        static const QRegularExpression cited(
            QStringLiteral("[0-9.]+ kg \\(Banyard|0\\.0155 m/s per %|"
                           "0\\.035 m/s \\(0\\.026|0\\.025 m/s \\(the middle of both ends"));
        const auto look = [&](QString text) {
            text.remove(cited);
            QVERIFY2(!zeros.match(text).hasMatch() && !point.match(text).hasMatch(),
                     qPrintable(text));
            seen += text.contains(QRegularExpression(QStringLiteral("[0-9],[0-9]")));
        };
        for (const PageEntry& entry : pages()) {
            window.workspace()->showPage(entry.page);
            QCoreApplication::processEvents();
            const QWidget* page = window.workspace()->currentPage();
            for (const auto* label : page->findChildren<QLabel*>())
                look(label->text());
            for (const auto* view : page->findChildren<QAbstractItemView*>())
                for (int row = 0; view->model() && row < std::min(20, view->model()->rowCount());
                     ++row)
                    for (int column = 0; column < view->model()->columnCount(); ++column)
                        look(view->model()->index(row, column).data().toString());
        }
        QVERIFY2(seen > 50, qPrintable(QString::number(seen)));
    }

    void theCheckOfTheSources_data() {
        QTest::addColumn<QByteArray>("line");
        QTest::addColumn<bool>("good");
        const auto row = [](const char* line, bool good) {
            QTest::newRow(line) << QByteArray(line) << good;
        };
        row("std::snprintf(text, sizeof text, \"%d\", 3);", false);
        row("sprintf(text, \"%s\", name);", false);
        row("std::fprintf(stderr, \"%.2f\", 1.06);", false);
        row("const char* const format = \"%.3g kg\";", false);
        row("return std::strtod(text, &end);", false);
        row("return std::stod(text);", false);
        row("return atof(text);", false);
        row("return stof(text) + 1;", false);
        row("std::sscanf(text, \"%lf\", &value);", false);
        row("std::ostringstream out;", false);
        row("out << std::setprecision(3) << value;", false);
        row("std::cout << value;", false);
        row("text += std::to_string(kilograms(load));", false);
        row("text += std::to_string(1.5);", false);
        row("return std::format(\"{:L}\", value);", false);
        row("std::setlocale(LC_ALL, \"\");", false);
        row("QApplication application(argc, argv);", false);
        row("auto made = std::make_unique<QApplication>(argc, argv);", false);
        row("text += std::to_string(count);", true);
        row("std::fprintf(stderr, \"slopebook: %s\\n\", what);", true);
        row("// what printf(\"%f\") would write", true);
        row("return tr(\"%1 % of %2\").arg(share);", true);
        row("const auto end = std::to_chars(text, text + 32, value);", true);
    }
    void theCheckOfTheSources() {
        QFETCH(QByteArray, line);
        QFETCH(bool, good);
        const Folder folder;
        QFile source(QString::fromStdString(folder.path("one.cpp").string()));
        QVERIFY(source.open(QIODevice::WriteOnly));
        source.write("// SPDX\n" + line + '\n');
        source.close();
        QProcess check;
        check.start(QStringLiteral("sh"), {QStringLiteral(SLOPEBOOK_SOURCE "/tests/numbers.sh"),
                                           QString::fromStdString(folder.path("").string())});
        QVERIFY(check.waitForFinished());
        QCOMPARE(check.exitCode() == 0, good);
    }
};

int main(int argc, char** argv) {
    const QTemporaryDir locales;
    const std::string made = locales.filePath(QLatin1String(comma)).toStdString();
    const std::string make = "localedef -i de_DE -f UTF-8 '" + made + "' >/dev/null 2>&1";
    TestNumbers test;
    test.made = std::system(make.c_str()) == 0 && std::filesystem::exists(made + "/LC_NUMERIC");
    qputenv("LOCPATH", locales.path().toUtf8());
    qputenv("LC_ALL", comma);
    qputenv("LANGUAGE", "de");
    const auto application = makeApplication(argc, argv);
    return QTest::qExec(&test, argc, argv);
}

#include "tst_numbers.moc"

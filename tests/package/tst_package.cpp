// SPDX-License-Identifier: GPL-3.0-or-later
// The package: made by cpack, installed into a root of its own, and started from there; its desktop
// file, metainfo, man page and file type hold before the tools that read them.
#include <QDir>
#include <QDirIterator>
#include <QFile>
#include <QFileInfo>
#include <QLocale>
#include <QMimeDatabase>
#include <QProcess>
#include <QRegularExpression>
#include <QSet>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>
#include <QXmlStreamReader>

namespace {

struct Ran {
    int exit = -1;
    QString out, err;
};

Ran run(const QString& program, const QStringList& arguments,
        const QProcessEnvironment& surroundings = QProcessEnvironment::systemEnvironment(),
        int seconds = 300) {
    QProcess process;
    process.setProcessEnvironment(surroundings);
    process.start(program, arguments);
    if (!process.waitForFinished(seconds * 1000)) {
        process.kill();
        process.waitForFinished(5000);
        return {-1, QString(), QStringLiteral("did not end")};
    }
    return {process.exitStatus() == QProcess::NormalExit ? process.exitCode() : -1,
            QString::fromUtf8(process.readAllStandardOutput()),
            QString::fromUtf8(process.readAllStandardError())};
}

bool have(const QString& tool) {
    return !QStandardPaths::findExecutable(tool).isEmpty();
}

#define NEED(tool)                                                                                 \
    if (!have(QStringLiteral(tool)))                                                               \
    QSKIP(tool " IS NOT INSTALLED")

} // namespace

class TestPackage : public QObject {
    Q_OBJECT

    QTemporaryDir m_folder;
    QString m_deb, m_root;

    QString installed(const QString& path) const { return m_root + path; }
    /// What stands under "Subcommands:" in its help.
    QStringList subcommandsOf(const QStringList& command) const {
        const QString help = run(program(), command + QStringList{QStringLiteral("--help")}).out;
        if (!help.contains(QStringLiteral("Subcommands:")))
            return {};
        static const QRegularExpression one(QStringLiteral("^  ([a-z-]+) +[A-Z]"),
                                            QRegularExpression::MultilineOption);
        QStringList names;
        for (auto match = one.globalMatch(help.section(QStringLiteral("Subcommands:"), 1));
             match.hasNext();)
            names << match.next().captured(1);
        return names;
    }
    void namesOptions(const QString& page, const QStringList& command) const {
        static const QRegularExpression option(QStringLiteral("--[a-z][a-z-]+"));
        const Ran about = run(program(), command + QStringList{QStringLiteral("--help")});
        for (auto match = option.globalMatch(about.out); match.hasNext();) {
            const QString name = match.next().captured();
            QVERIFY2(page.contains(name), qPrintable(command.join(QLatin1Char(' ')) + name));
        }
    }

    QString program() const { return installed(QStringLiteral("/usr/bin/slopebook")); }

private Q_SLOTS:
    void initTestCase() {
        NEED("dpkg-deb");
        QVERIFY(m_folder.isValid());
        const QString made = m_folder.filePath(QStringLiteral("deb"));
        const Ran cpack =
            run(QStringLiteral(SLOPEBOOK_CPACK),
                {QStringLiteral("--config"), QStringLiteral(SLOPEBOOK_BUILD "/CPackConfig.cmake"),
                 QStringLiteral("-G"), QStringLiteral("DEB"), QStringLiteral("-B"), made},
                QProcessEnvironment::systemEnvironment(), 500);
        QVERIFY2(cpack.exit == 0, qPrintable(cpack.out + cpack.err));
        const QStringList debs = QDir(made).entryList({QStringLiteral("*.deb")}, QDir::Files);
        QCOMPARE(debs.size(), 1);
        m_deb = made + QLatin1Char('/') + debs.first();

        // Installed by dpkg itself, with a list of packages of its own: what it needs is looked at
        // below.
        m_root = m_folder.filePath(QStringLiteral("root"));
        QDir root(m_root);
        for (const char* folder :
             {"var/lib/dpkg/info", "var/lib/dpkg/updates", "var/lib/dpkg/triggers"})
            QVERIFY(root.mkpath(QLatin1String(folder)));
        for (const char* name : {"var/lib/dpkg/status", "var/lib/dpkg/available"}) {
            QFile file(root.filePath(QLatin1String(name)));
            QVERIFY(file.open(QIODevice::WriteOnly));
        }
        const Ran dpkg = run(QStringLiteral("dpkg"),
                             {QStringLiteral("--root=") + m_root, QStringLiteral("--log=/dev/null"),
                              QStringLiteral("--force-not-root"), QStringLiteral("--force-depends"),
                              QStringLiteral("--force-bad-path"), QStringLiteral("--no-triggers"),
                              QStringLiteral("-i"), m_deb});
        QVERIFY2(dpkg.exit == 0, qPrintable(dpkg.out + dpkg.err));
    }

    void dpkgKnowsItAsInstalled() {
        const Ran dpkg =
            run(QStringLiteral("dpkg-query"),
                {QStringLiteral("--admindir=") + m_root + QStringLiteral("/var/lib/dpkg"),
                 QStringLiteral("-W"), QStringLiteral("-f"),
                 QStringLiteral("${db:Status-Status} ${Version}"), QStringLiteral("slopebook")});
        QCOMPARE(dpkg.exit, 0);
        QCOMPARE(dpkg.out, QStringLiteral("installed " SLOPEBOOK_VERSION));
    }

    void whatItNeedsIsNamed() {
        const Ran field = run(QStringLiteral("dpkg-deb"),
                              {QStringLiteral("-f"), m_deb, QStringLiteral("Depends")});
        QCOMPARE(field.exit, 0);
        for (const char* needed :
             {"libqt6widgets6", "libqt6charts6", "libqt6printsupport6", "libqt6svg6",
              "libsqlite3-0", "libcsv3", "libxlsxwriter4", "libutf8proc2", "libzip4", "libexpat1",
              "fonts-dejavu-core", "qt6-translations-l10n"})
            QVERIFY2(field.out.contains(QLatin1String(needed)), needed);
    }

    void everyFileIsThereAndRootsOwn_data() {
        QTest::addColumn<QString>("path");
        for (const char* path :
             {"/usr/bin/slopebook", "/usr/share/applications/org.slopebook.Slopebook.desktop",
              "/usr/share/metainfo/org.slopebook.Slopebook.metainfo.xml",
              "/usr/share/mime/packages/org.slopebook.Slopebook.xml",
              "/usr/share/icons/hicolor/scalable/apps/slopebook.svg",
              "/usr/share/icons/hicolor/scalable/mimetypes/application-x-slopebook.svg",
              "/usr/share/doc/slopebook/screenshots/session.png",
              "/usr/share/doc/slopebook/screenshots/comparison.png",
              "/usr/share/slopebook/sample.slopebook", "/usr/share/man/man1/slopebook.1.gz",
              "/usr/share/doc/slopebook/copyright", "/usr/share/doc/slopebook/changelog.gz",
              "/usr/share/slopebook/tutorial/en/index.html",
              "/usr/share/slopebook/tutorial/en/comparison.png",
              "/usr/share/slopebook/tutorial/de/index.html",
              "/usr/share/slopebook/tutorial/de/comparison.png"})
            QTest::newRow(path) << QString::fromLatin1(path);
    }
    void everyFileIsThereAndRootsOwn() {
        QFETCH(QString, path);
        QVERIFY(QFileInfo(installed(path)).size() > 0);
        const Ran list = run(QStringLiteral("dpkg-deb"), {QStringLiteral("-c"), m_deb});
        const QRegularExpression line(
            QStringLiteral("^-rwxr-xr-x root/root .* \\.%1$|^-rw-r--r-- root/root .* \\.%1$")
                .arg(QRegularExpression::escape(path)),
            QRegularExpression::MultilineOption);
        QVERIFY2(line.match(list.out).hasMatch(), qPrintable(list.out));
    }

    void theInstalledProgramSaysItsVersion() {
        const Ran version = run(program(), {QStringLiteral("--version")});
        QCOMPARE(version.exit, 0);
        QCOMPARE(version.out.trimmed(), QStringLiteral(SLOPEBOOK_VERSION));
    }

    void theInstalledProgramReadsTheInstalledSample() {
        const QString copy = m_folder.filePath(QStringLiteral("copy.slopebook"));
        QVERIFY(
            QFile::copy(installed(QStringLiteral("/usr/share/slopebook/sample.slopebook")), copy));
        const Ran list = run(program(), {QStringLiteral("list"), copy, QStringLiteral("--athlete"),
                                         QStringLiteral("Ada")});
        QVERIFY2(list.exit == 0, qPrintable(list.err));
        QVERIFY(list.out.contains(QStringLiteral("Bench pull")));
        const Ran check = run(program(), {QStringLiteral("check"), copy});
        QVERIFY2(check.exit == 0, qPrintable(check.out + check.err));
    }

    /// It opens on a log, stays open, and complains of nothing.
    void theInstalledWindowOpens() {
        const QString copy = m_folder.filePath(QStringLiteral("window.slopebook"));
        QVERIFY(
            QFile::copy(installed(QStringLiteral("/usr/share/slopebook/sample.slopebook")), copy));
        QProcessEnvironment surroundings = QProcessEnvironment::systemEnvironment();
        surroundings.insert(QStringLiteral("QT_QPA_PLATFORM"), QStringLiteral("offscreen"));
        QProcess window;
        window.setProcessEnvironment(surroundings);
        window.start(program(), {copy});
        QVERIFY(window.waitForStarted());
        QVERIFY2(!window.waitForFinished(4000),
                 qPrintable(QString::fromUtf8(window.readAllStandardError())));
        window.kill();
        QVERIFY(window.waitForFinished());
        const QString said = QString::fromUtf8(window.readAllStandardError());
        QVERIFY2(!said.contains(QLatin1String("error"), Qt::CaseInsensitive), qPrintable(said));
    }

    /// Debian's changelog, the catalogue's and the man page's head all say what the one list says.
    void whatChangedIsSaidAlikeEverywhere() {
        QFile list(QStringLiteral(SLOPEBOOK_SOURCE "/resources/changes.xml"));
        QVERIFY(list.open(QIODevice::ReadOnly));
        QXmlStreamReader xml(&list);
        QStringList versions, days, told;
        while (!xml.atEnd()) {
            xml.readNext();
            const auto facts = xml.attributes();
            if (xml.isStartElement() && xml.name() == QLatin1String("release")) {
                versions << facts.value(QLatin1String("version")).toString();
                days << facts.value(QLatin1String("date")).toString();
            } else if (xml.isStartElement() && xml.name() == QLatin1String("li") &&
                       facts.isEmpty()) {
                told << xml.readElementText().simplified();
            }
        }
        QVERIFY2(!xml.hasError(), qPrintable(xml.errorString()));
        QCOMPARE(versions.first(), QStringLiteral(SLOPEBOOK_VERSION));
        QVERIFY(versions.size() >= 2 && told.size() >= 8);

        const auto unpacked = [this](const char* path) {
            return run(QStringLiteral("zcat"), {installed(QLatin1String(path))}).out;
        };
        const QString changelog = unpacked("/usr/share/doc/slopebook/changelog.gz").simplified();
        QFile metainfo(
            installed(QStringLiteral("/usr/share/metainfo/org.slopebook.Slopebook.metainfo.xml")));
        QVERIFY(metainfo.open(QIODevice::ReadOnly));
        const QString catalogue = QString::fromUtf8(metainfo.readAll());
        for (qsizetype i = 0; i < versions.size(); ++i) {
            QVERIFY(changelog.contains(QStringLiteral("slopebook (%1)").arg(versions[i])));
            QVERIFY(changelog.contains(
                QLocale::c().toString(QDate::fromString(days[i], Qt::ISODate),
                                      QStringLiteral("ddd, dd MMM yyyy 00:00:00 +0000"))));
            QVERIFY(catalogue.contains(
                QStringLiteral("<release version=\"%1\" date=\"%2\">").arg(versions[i], days[i])));
        }
        for (const QString& one : told) {
            QVERIFY2(catalogue.contains(one), qPrintable(one));
            QVERIFY2(changelog.contains(QStringLiteral("* ") + one), qPrintable(one));
        }
        QVERIFY(
            unpacked("/usr/share/man/man1/slopebook.1.gz")
                .contains(
                    QStringLiteral("\"%1\" \"Slopebook %2\"").arg(days.first(), versions.first())));
    }

    void debiansOwnToolReadsTheChangelog() {
        NEED("dpkg-parsechangelog");
        const QString plain = m_folder.filePath(QStringLiteral("changelog"));
        QFile file(plain);
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write(run(QStringLiteral("zcat"),
                       {installed(QStringLiteral("/usr/share/doc/slopebook/changelog.gz"))})
                       .out.toUtf8());
        file.close();
        const Ran read = run(QStringLiteral("dpkg-parsechangelog"),
                             {QStringLiteral("-l"), plain, QStringLiteral("--all"),
                              QStringLiteral("-S"), QStringLiteral("Version")});
        QVERIFY2(read.exit == 0 && read.err.isEmpty(), qPrintable(read.err));
        QCOMPARE(read.out.trimmed().section(QLatin1Char('\n'), 0, 0),
                 QStringLiteral(SLOPEBOOK_VERSION));
    }

    /// Where a document reader looks it is as well, and its pictures with it.
    void theTutorialStandsAmongTheDocuments() {
        const QString folder = installed(QStringLiteral("/usr/share/doc/slopebook/tutorial"));
        QVERIFY(QFileInfo(folder).isSymLink());
        QFile page(folder + QStringLiteral("/en/index.html"));
        QVERIFY(page.open(QIODevice::ReadOnly));
        static const QRegularExpression image(QStringLiteral("<img src=\"([^\"]+)\""));
        int pictures = 0;
        for (auto found = image.globalMatch(QString::fromUtf8(page.readAll())); found.hasNext();
             ++pictures)
            QVERIFY(QFileInfo::exists(folder + QStringLiteral("/en/") + found.next().captured(1)));
        QVERIFY(pictures >= 8);
    }

    void theDesktopFileIsValid() {
        NEED("desktop-file-validate");
        const Ran said = run(QStringLiteral("desktop-file-validate"),
                             {installed(QStringLiteral("/usr/share/applications/"
                                                       "org.slopebook.Slopebook.desktop"))});
        QVERIFY2(said.exit == 0 && said.out.isEmpty(), qPrintable(said.out + said.err));
    }

    void theMetainfoIsValid() {
        NEED("appstreamcli");
        const Ran said = run(QStringLiteral("appstreamcli"),
                             {QStringLiteral("validate"), QStringLiteral("--no-net"),
                              installed(QStringLiteral(
                                  "/usr/share/metainfo/org.slopebook.Slopebook.metainfo.xml"))});
        QVERIFY2(said.exit == 0, qPrintable(said.out + said.err));
    }

    /// As whoever publishes the pictures builds it: each is one that the package holds as well.
    void theMetainfoWithPicturesIsValid() {
        NEED("appstreamcli");
        const QString path = QStringLiteral(
            SLOPEBOOK_BUILD "/app/packaging/with-pictures/org.slopebook.Slopebook.metainfo.xml");
        const Ran said = run(QStringLiteral("appstreamcli"),
                             {QStringLiteral("validate"), QStringLiteral("--no-net"), path});
        QVERIFY2(said.exit == 0, qPrintable(said.out + said.err));
        QFile file(path);
        QVERIFY(file.open(QIODevice::ReadOnly));
        const QString text = QString::fromUtf8(file.readAll());
        auto images =
            QRegularExpression(QStringLiteral("<image[^>]*>.*/([^/<]+)</image>")).globalMatch(text);
        int count = 0;
        for (; images.hasNext(); ++count)
            QVERIFY(QFileInfo::exists(
                installed(QStringLiteral("/usr/share/doc/slopebook/screenshots/") +
                          images.next().captured(1))));
        QCOMPARE(count, 2);
    }

    void theManPageIsWellFormed() {
        const QString page = installed(QStringLiteral("/usr/share/man/man1/slopebook.1.gz"));
        NEED("man");
        QProcessEnvironment surroundings = QProcessEnvironment::systemEnvironment();
        surroundings.insert(QStringLiteral("MANWIDTH"), QStringLiteral("80"));
        const Ran man =
            run(QStringLiteral("man"),
                {QStringLiteral("--warnings"), QStringLiteral("-E"), QStringLiteral("UTF-8"),
                 QStringLiteral("-l"), QStringLiteral("-Tutf8"), QStringLiteral("-Z"), page},
                surroundings);
        QVERIFY2(man.exit == 0 && man.err.isEmpty(), qPrintable(man.err));
    }

    void theManPageHoldsToTheRules() {
        NEED("mandoc");
        const Ran lint =
            run(QStringLiteral("mandoc"), {QStringLiteral("-Tlint"), QStringLiteral("-Wwarning"),
                                           QStringLiteral(SLOPEBOOK_MAN)});
        QVERIFY2(lint.exit == 0, qPrintable(lint.out + lint.err));
    }

    /// Every command and every option that the program offers stands in the man page.
    void theManPageNamesEveryOption() {
        QFile file(QStringLiteral(SLOPEBOOK_MAN));
        QVERIFY(file.open(QIODevice::ReadOnly));
        const QString page =
            QString::fromUtf8(file.readAll()).replace(QLatin1String("\\-"), QLatin1String("-"));
        const QStringList commands = subcommandsOf({});
        QVERIFY2(commands.size() >= 20, qPrintable(commands.join(QLatin1Char(' '))));
        for (const QString& name : commands) {
            const QRegularExpression heading(
                QStringLiteral("^\\.SS ([a-z, ]+, )?%1(,|$)").arg(name),
                QRegularExpression::MultilineOption);
            QVERIFY2(page.contains(heading), qPrintable(name));
            namesOptions(page, {name});
            for (const QString& below : subcommandsOf({name})) {
                QVERIFY2(page.contains(below), qPrintable(name + QLatin1Char(' ') + below));
                namesOptions(page, {name, below});
            }
        }
    }

    void aLogIsKnownByItsContent() {
        NEED("update-mime-database");
        const QString share = installed(QStringLiteral("/usr/share/mime"));
        // Beside the desktop's own types, as where it is installed.
        const QString known = QStringLiteral("/freedesktop.org.xml");
        QVERIFY(QFile::copy(QStringLiteral("/usr/share/mime/packages") + known,
                            share + QStringLiteral("/packages") + known));
        const Ran made = run(QStringLiteral("update-mime-database"), {share});
        QCOMPARE(made.exit, 0);
        qputenv("XDG_DATA_DIRS", installed(QStringLiteral("/usr/share")).toUtf8());
        const QString noEnding = m_folder.filePath(QStringLiteral("a copy without its ending"));
        QVERIFY(QFile::copy(installed(QStringLiteral("/usr/share/slopebook/sample.slopebook")),
                            noEnding));
        const QMimeDatabase types;
        QCOMPARE(types.mimeTypeForFile(noEnding).name(), QStringLiteral("application/x-slopebook"));
        QCOMPARE(
            types.mimeTypeForFile(QStringLiteral("new.slopebook"), QMimeDatabase::MatchExtension)
                .name(),
            QStringLiteral("application/x-slopebook"));
        QVERIFY(types.mimeTypeForName(QStringLiteral("application/x-slopebook"))
                    .inherits(QStringLiteral("application/vnd.sqlite3")));
    }

    void thePackageHoldsToDebiansRules() {
        NEED("lintian");
        const Ran said =
            run(QStringLiteral("lintian"),
                {QStringLiteral("--allow-root"), QStringLiteral("--fail-on"),
                 QStringLiteral("error"), QStringLiteral("--suppress-tags"),
                 // Not made from a Debian source package; "unstable" has no upload of it.
                 QStringLiteral("no-copyright-file,initial-upload-closes-no-bugs"), m_deb});
        QVERIFY2(said.exit == 0, qPrintable(said.out + said.err));
    }
};

QTEST_GUILESS_MAIN(TestPackage)
#include "tst_package.moc"

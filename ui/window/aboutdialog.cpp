// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/aboutdialog.h"

#include "ui/parts/cautions.h"

#include <QDialogButtonBox>
#include <QFile>
#include <QLabel>
#include <QLibraryInfo>
#include <QTabWidget>
#include <QTextBrowser>
#include <QVBoxLayout>

namespace slopebook::ui {

namespace {

struct UsedLibrary {
    const char* name;
    const char* version; ///< empty where it states none
    const char* licence;
};

// Versions of what was built with (the program's own is SLOPEBOOK_VERSION); Qt's own is asked while
// running.
constexpr UsedLibrary parts[] = {
    {"Qt Charts", "", "GPL 3"},
    {"Eigen", SLOPEBOOK_EIGEN, "MPL 2.0"},
    {"Boost", SLOPEBOOK_BOOST, "Boost Software License 1.0"},
    {"SQLite", SLOPEBOOK_SQLITE, "public domain"},
    {"SQLiteCpp", SLOPEBOOK_SQLITECPP, "MIT"},
    {"libcsv", "", "LGPL 2.1 or later"},
    {"libxlsxwriter", "", "BSD 2-Clause"},
    {"libzip", "", "BSD 3-Clause"},
    {"Expat", "", "MIT"},
    {"utf8proc", "", "MIT, Unicode data files"},
    {"CLI11", SLOPEBOOK_CLI11, "BSD 3-Clause"},
};

QString partsTable() {
    const QString row = QStringLiteral("<tr><td>%1</td><td>%2</td><td>%3</td></tr>");
    QString html = QStringLiteral("<table cellpadding=\"3\">") +
                   row.arg(QStringLiteral("Qt"), QLibraryInfo::version().toString(),
                           QStringLiteral("LGPL 3, GPL 3"));
    for (const UsedLibrary& part : parts)
        html += row.arg(QLatin1String(part.name), QLatin1String(part.version),
                        QLatin1String(part.licence));
    return html + QStringLiteral("</table>");
}

QString licence() {
    QFile file(QStringLiteral(":/licence/LICENSE"));
    return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString();
}

/// As README tells it: the same in every language.
QString citation() {
    return QStringLiteral(
               "The Slopebook contributors (2026). Slopebook, version %1 [computer program]. "
               "GPL-3.0-or-later.")
        .arg(QStringLiteral(SLOPEBOOK_VERSION));
}

} // namespace

AboutDialog::AboutDialog(QWidget* parent) : QDialog(parent) {
    setWindowTitle(tr("About Slopebook"));
    auto* pages = new QTabWidget;
    const auto add = [pages](const QString& name) {
        auto* text = new QTextBrowser;
        text->setAccessibleName(name);
        pages->addTab(text, name);
        return text;
    };
    add(tr("Slopebook"))
        ->setHtml(
            QStringLiteral("<h2>Slopebook %1</h2><p>%2</p><p>%3</p><p>%4 %5</p><p>%6</p>")
                .arg(QStringLiteral(SLOPEBOOK_VERSION),
                     tr("Load-velocity lines, estimated 1RM with an honest interval, and what "
                        "changed between sessions."),
                     tr("Free software under the GNU General Public License, version 3 or "
                        "later, without any warranty."),
                     tr("To cite it:"), citation(), fullCautions().toHtmlEscaped()));
    add(tr("Made with"))->setHtml(partsTable());
    add(tr("Licence"))->setPlainText(licence());
    auto* close = new QDialogButtonBox(QDialogButtonBox::Close);
    connect(close, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(pages, 1);
    layout->addWidget(close);
    resize(600, 440);
}

} // namespace slopebook::ui

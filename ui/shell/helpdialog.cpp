// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/helpdialog.h"

#include "ui/shell/cautions.h"

#include <QDialogButtonBox>
#include <QTextBrowser>
#include <QVBoxLayout>

namespace slopebook::ui {

namespace {
QString typedLine() {
    return HelpDialog::tr(
        "<h3>One line a set</h3>"
        "<p><code>60 0.92 0.90 0.88</code> and Enter: 60 kg and three reps. It is on disk when the "
        "line is empty again.</p>"
        "<ul><li>Point and comma are both the decimal mark; there are no marks for thousands. "
        "Blanks, tabs or ; go between the numbers.</li>"
        "<li>Up puts the next load there: the ladder of last time, above its top the same rise "
        "again. Down steps back.</li>"
        "<li><code>92.5! 0.18</code>: a successful true maximum, one rep.</li>"
        "<li><code>60 0.92 0.71x # slipped</code>: the second rep is left out; what follows # is "
        "the "
        "note and the reason. It stays in the log and is drawn hollow.</li>"
        "<li><code>60 92</code>: the line asks whether 0.92 was meant; Enter says yes, Esc no.</li>"
        "<li>Several lines pasted from a spreadsheet go in at once, all or none.</li>"
        "<li>In the table F2 changes a cell and Delete removes the set.</li></ul>");
}

QString method() {
    return HelpDialog::tr(
        "<h3>The method in plain words</h3>"
        "<p>Each set gives one point: its fastest rep, or the mean of its reps, as the lift says. "
        "The <b>line</b> is the ordinary least-squares regression of velocity on load through the "
        "session's points.</p>"
        "<p>The <b>estimated 1RM</b> is the load at which the line meets the minimal-velocity "
        "threshold (MVT): the athlete's own true maxima where there are any, else the coach's "
        "figure, else a published one. Its interval is Fieller's (1954; Draper and Smith, Applied "
        "Regression Analysis). <b>Reach</b> is the heaviest load divided by that estimate: under "
        "0.80 it is extrapolated far, under 0.50 the interval stands first. Individual estimates "
        "of "
        "free-weight maxima run high even with loads to 90 % (Banyard, Nosaka and Haff 2017).</p>"
        "<p>A <b>comparison</b> of two sessions takes both lines together, and adds the noise from "
        "day to day (Hopkins 2000), which one day's scatter does not show. A change is better or "
        "worse when its interval leaves out zero, held when it surely lies within the smallest "
        "change that matters, else unclear. Where lines differ is found as by Johnson and Neyman "
        "(1936); the change of 1RM as by Zou and Donner (2008).</p>");
}
} // namespace

HelpDialog::HelpDialog(const QStringList& keys, QWidget* parent) : QDialog(parent) {
    setWindowTitle(tr("Keys and method"));
    QString html = tr("<h3>Keys</h3>") + QStringLiteral("<table cellpadding=\"3\">");
    for (const QString& line : keys) {
        const QStringList parts = line.split(QLatin1Char('\t'));
        html += QStringLiteral("<tr><td><b>%1</b></td><td>%2</td></tr>")
                    .arg(parts.value(0).toHtmlEscaped(), parts.value(1).toHtmlEscaped());
    }
    html += QStringLiteral("</table>") + typedLine() + method() + tr("<h3>Cautions</h3>") +
            QStringLiteral("<p>%1</p>").arg(fullCautions().toHtmlEscaped());
    auto* text = new QTextBrowser;
    text->setHtml(html);
    text->setAccessibleName(windowTitle());
    auto* close = new QDialogButtonBox(QDialogButtonBox::Close);
    connect(close, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(text, 1);
    layout->addWidget(close);
    resize(680, 560);
}

} // namespace slopebook::ui

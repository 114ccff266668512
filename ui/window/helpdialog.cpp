// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/helpdialog.h"

#include "ui/parts/cautions.h"
#include "ui/window/helptexts.h"

#include <QDialogButtonBox>
#include <QImage>
#include <QTabWidget>
#include <QTextBrowser>
#include <QUrl>
#include <QVBoxLayout>

namespace slopebook::ui {

namespace {

QString keysTable(const QStringList& keys) {
    QString html = QStringLiteral("<table cellpadding=\"3\">");
    for (const QString& line : keys) {
        const QStringList parts = line.split(QLatin1Char('\t'));
        html += QStringLiteral("<tr><td><b>%1</b></td><td>%2</td></tr>")
                    .arg(parts.value(0).toHtmlEscaped(), parts.value(1).toHtmlEscaped());
    }
    const QStringList more{
        HelpDialog::tr("Letters typed into the index at the left find an athlete, the arrows go on "
                       "to the next, Enter takes one. F9 folds the index away; Ctrl+F then opens "
                       "it for one choice."),
        HelpDialog::tr("Alt and an underlined letter go to that control. Tab reaches every "
                       "control, the charts too: on a chart Ctrl+C copies its picture and the menu "
                       "key opens what else can be done with it."),
        HelpDialog::tr("Where a table has no room for a column, F4 shows under the chosen row what "
                       "stands in it, and what else its tip tells; Esc puts it away.")};
    return html + QStringLiteral("</table><p>%1</p>").arg(more.join(QLatin1String("</p><p>")));
}

/// Its pictures smoothly made as small as they stand between the words.
class HelpText final : public QTextBrowser {
public:
    QVariant loadResource(int type, const QUrl& name) override {
        if (type != QTextDocument::ImageResource || !name.isLocalFile())
            return QTextBrowser::loadResource(type, name);
        QImage picture(name.toLocalFile());
        const qreal sharp = devicePixelRatio();
        const int wide = qRound(pictureWidth * sharp);
        if (picture.width() > wide)
            picture = picture.scaledToWidth(wide, Qt::SmoothTransformation);
        picture.setDevicePixelRatio(sharp);
        return picture;
    }

private:
    static constexpr int pictureWidth = 700;
};

} // namespace

HelpDialog::HelpDialog(const Told& told, QWidget* parent)
    : QDialog(parent), m_pages(new QTabWidget) {
    setWindowTitle(tr("Help"));
    const auto add = [this](const QString& name, const QString& html) {
        auto* text = new HelpText;
        text->setHtml(html);
        QString plain = name;
        text->setAccessibleName(plain.remove(QLatin1Char('&')));
        m_pages->addTab(text, name);
    };
    add(tr("&Method"), methodHelp() + sourcesHelp());
    add(tr("&Typing"), typingHelp());
    add(tr("&Keys"), keysTable(told.keys));
    add(tr("T&utorial"), told.tutorial);
    add(tr("The &file"), fileHelp());
    add(tr("&New"), told.changes);
    add(tr("C&autions"), QStringLiteral("<p>%1</p>").arg(fullCautions().toHtmlEscaped()));
    auto* close = new QDialogButtonBox(QDialogButtonBox::Close);
    connect(close, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(m_pages, 1);
    layout->addWidget(close);
    resize(780, 560);
}

void HelpDialog::showPage(Page page) {
    m_pages->setCurrentIndex(page);
    m_pages->currentWidget()->setFocus();
}

} // namespace slopebook::ui

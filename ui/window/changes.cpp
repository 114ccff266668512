// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/changes.h"

#include "ui/words/format.h"

#include <QDate>
#include <QFile>
#include <QLocale>
#include <QXmlStreamReader>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

namespace {

/// The changes of one version: in English, and beside each its translation where there is one.
QString changesOf(QXmlStreamReader& xml, const QString& language) {
    QStringList told;
    while (!xml.atEnd() && !(xml.isEndElement() && xml.name() == u"release")) {
        xml.readNext();
        if (!xml.isStartElement() || xml.name() != u"li")
            continue;
        const QString spoken = xml.attributes().value("xml:lang"_L1).toString();
        const QString words = xml.readElementText().simplified().toHtmlEscaped();
        if (spoken.isEmpty())
            told << words;
        else if (spoken == language && !told.isEmpty())
            told.last() = words;
    }
    return u"<ul><li>%1</li></ul>"_s.arg(told.join("</li><li>"_L1));
}

} // namespace

QString changesHelp(const QString& language) {
    QFile file(u":/changes/changes.xml"_s);
    if (!file.open(QIODevice::ReadOnly))
        return {};
    QXmlStreamReader xml(&file);
    QString html;
    while (!xml.atEnd()) {
        xml.readNext();
        if (!xml.isStartElement() || xml.name() != u"release")
            continue;
        const auto facts = xml.attributes();
        const QDate day = QDate::fromString(facts.value("date"_L1).toString(), Qt::ISODate);
        html += u"<h3>%1</h3><p>%2</p>"_s.arg(facts.value("version"_L1).toString().toHtmlEscaped(),
                                              QLocale().toString(day, QLocale::LongFormat));
        html += changesOf(xml, language);
    }
    return html;
}

} // namespace slopebook::ui

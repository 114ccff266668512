// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/language.h"

#include <QCoreApplication>
#include <QDir>
#include <QLibraryInfo>

#include <algorithm>

namespace slopebook::ui {

namespace {

const QString translations = QStringLiteral(":/i18n");
const QString english = QStringLiteral("en");

QString nameIn(const QString& code) {
    QString name = QLocale(code).nativeLanguageName();
    // Qt names plain English by its country.
    if (code == english)
        name = QStringLiteral("English");
    return name;
}

bool isSpoken(const QString& code) {
    const auto all = languages();
    return std::any_of(all.begin(), all.end(),
                       [&](const Language& one) { return one.code == code; });
}

} // namespace

std::vector<Language> languages() {
    std::vector<Language> all{{english, nameIn(english)}};
    const QString stem = QStringLiteral("slopebook_");
    for (QString file :
         QDir(translations).entryList({stem + QStringLiteral("*.qm")}, QDir::Files)) {
        const QString code = file.remove(stem).remove(QStringLiteral(".qm"));
        if (code != english)
            all.push_back({code, nameIn(code)});
    }
    return all;
}

QString languageFor(const QString& chosen, const QLocale& desktop) {
    if (isSpoken(chosen))
        return chosen;
    for (const QString& wanted : desktop.uiLanguages()) {
        const QString code = QLocale(wanted).name().section(QLatin1Char('_'), 0, 0);
        if (isSpoken(code))
            return code;
    }
    return english;
}

QString spokenCode() {
    const QString code = QLocale().name().section(QLatin1Char('_'), 0, 0);
    return isSpoken(code) ? code : english;
}

namespace {

/// How that language writes numbers and dates: as the desktop does where it is the desktop's own.
QLocale localeFor(const QString& language, const QLocale& desktop) {
    const QLocale plain(language);
    const bool own = desktop.language() == plain.language() ||
                     (desktop.language() == QLocale::C && language == english);
    return own ? desktop : plain;
}

} // namespace

Translation::Translation(const QString& chosen, const QLocale& desktop)
    : m_language(languageFor(chosen, desktop)) {
    QLocale::setDefault(localeFor(m_language, desktop));
    if (m_qtWords.load(QStringLiteral("qtbase_") + m_language,
                       QLibraryInfo::path(QLibraryInfo::TranslationsPath)))
        QCoreApplication::installTranslator(&m_qtWords);
    if (m_words.load(QStringLiteral("slopebook_") + m_language, translations))
        QCoreApplication::installTranslator(&m_words);
}

Translation::~Translation() {
    QCoreApplication::removeTranslator(&m_words);
    QCoreApplication::removeTranslator(&m_qtWords);
    QLocale::setDefault(m_before);
}

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
// The languages that the window speaks, and the one that is spoken now.
#pragma once

#include <QLocale>
#include <QString>
#include <QTranslator>

#include <vector>

namespace slopebook::ui {

struct Language {
    QString code; ///< "en", "de"
    QString name; ///< in the language itself: "Deutsch"
    friend bool operator==(const Language&, const Language&) = default;
};

/// English, in which the program is written, then those it is translated into, by code.
std::vector<Language> languages();

/// The code of the language to speak: the chosen one where there is such a translation, else the
/// first of the desktop's languages that there is, else English.
QString languageFor(const QString& chosen, const QLocale& desktop);

/// The code of the language that is spoken now.
QString spokenCode();

/// Speaks a language from when it is made to when it goes: our words, those of Qt's own buttons,
/// and the default QLocale.
class Translation final {
public:
    /// chosen: a code; empty: as the desktop.
    explicit Translation(const QString& chosen, const QLocale& desktop = QLocale::system());
    ~Translation();
    Translation(const Translation&) = delete;
    Translation& operator=(const Translation&) = delete;

    QString language() const { return m_language; }

private:
    QString m_language;
    QLocale m_before;
    QTranslator m_words, m_qtWords;
};

} // namespace slopebook::ui

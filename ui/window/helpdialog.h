// SPDX-License-Identifier: GPL-3.0-or-later
// The method in plain words with its sources, the typed line, keys, the tutorial, the log's file,
// what is new, and the cautions: a page each.
#pragma once

#include <QDialog>

class QTabWidget;

namespace slopebook::ui {

class HelpDialog final : public QDialog {
    Q_OBJECT
public:
    enum Page { Method, Typing, Keys, Tutorial, File, Changes, Cautions, PageCount };
    /// What the pages hold that the window knows.
    struct Told {
        QStringList keys; ///< lines "keys<TAB>words"
        QString tutorial; ///< HTML, its pictures named by file URLs
        QString changes;  ///< HTML
    };

    HelpDialog(const Told& told, QWidget* parent);
    void showPage(Page page);

private:
    QTabWidget* m_pages;
};

} // namespace slopebook::ui

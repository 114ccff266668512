// SPDX-License-Identifier: GPL-3.0-or-later
// Keys, the typed line, the method in plain words with its sources, and the cautions: a page each.
#pragma once

#include <QDialog>

class QTabWidget;

namespace slopebook::ui {

class HelpDialog final : public QDialog {
    Q_OBJECT
public:
    enum Page { Keys, Typing, Method, Sources, Cautions, PageCount };

    /// keys: lines "keys<TAB>words".
    HelpDialog(const QStringList& keys, QWidget* parent);
    void showPage(Page page);

private:
    QTabWidget* m_pages;
};

} // namespace slopebook::ui

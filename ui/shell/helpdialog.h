// SPDX-License-Identifier: GPL-3.0-or-later
// Keys, the typed line, the method in plain words with its sources, and the cautions.
#pragma once

#include <QDialog>

namespace slopebook::ui {

class HelpDialog final : public QDialog {
    Q_OBJECT
public:
    /// keys: lines "keys<TAB>words".
    HelpDialog(const QStringList& keys, QWidget* parent);
};

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
// The cautions that stand where work can hurt, and the quiet label that shows them.
#pragma once

#include <QLabel>

namespace slopebook::ui {

/// One line, for beside an estimate.
QString shortCaution();
/// The whole text, for the help page, the tool tip and screen readers.
QString fullCautions();

/// shortCaution() in small muted type, the full text as its tool tip.
class CautionLabel final : public QLabel {
    Q_OBJECT
public:
    explicit CautionLabel(QWidget* parent = nullptr);
};

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
// What this program is, which version, made with what, under which licence.
#pragma once

#include <QDialog>

namespace slopebook::ui {

class AboutDialog final : public QDialog {
    Q_OBJECT
public:
    explicit AboutDialog(QWidget* parent);
};

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
// The copies that a log can go back to: when made, how large, what they hold, whether sound.
#pragma once

#include "core/log/backups.h"

#include <QDialog>

#include <vector>

class QPushButton;
class QTreeWidget;

namespace slopebook::ui {

class BackupsDialog final : public QDialog {
    Q_OBJECT
public:
    /// Looks into every copy at once. Changes nothing: the caller goes back to what was chosen.
    explicit BackupsDialog(const std::filesystem::path& log, QWidget* parent = nullptr);

    /// What was chosen; nothing before that.
    std::filesystem::path chosen() const;

private:
    void build(const std::filesystem::path& log);
    void fill();
    void fit();

    std::vector<log::KeptCopy> m_copies;
    QTreeWidget* m_list;
    QPushButton* m_goBack = nullptr;
};

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
// What another log would bring, before it is taken: how much, and all that is not simply added.
// The same of what it brought, where that is something else.
#pragma once

#include "core/desks/merge.h"

#include <QDialog>

class QTreeWidget;

namespace slopebook::ui {

class Logbook;

class MergeDialog final : public QDialog {
    Q_OBJECT
public:
    enum class When { Before, Done };
    MergeDialog(const desks::MergeReport& report, const QString& file, const Logbook& logbook,
                QWidget* parent = nullptr, When when = When::Before);

private:
    void fill(const desks::MergeReport& report, const Logbook& logbook);
    void build(const desks::MergeReport& report, const QString& file, const QString& folder);

    QTreeWidget* m_list;
    When m_when;
};

} // namespace slopebook::ui

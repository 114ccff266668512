// SPDX-License-Identifier: GPL-3.0-or-later
// A date field with a calendar, the same everywhere.
#pragma once

#include "core/model/date.h"

#include <QDateEdit>

namespace slopebook::ui {

/// Shows yyyy-MM-dd and takes a date typed with or without its marks: 2026-11-24 and 20261124.
class DayEdit final : public QDateEdit {
    Q_OBJECT
public:
    explicit DayEdit(QWidget* parent = nullptr);
    explicit DayEdit(Date date, QWidget* parent = nullptr);

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    bool m_movedOn = false; ///< a digit filled its part: the field is in the next one already
};

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
// The squad on paper: each question with its chart and its table.
#pragma once

#include "core/answers/squad.h"
#include "ui/paper/pages.h"
#include "ui/squad/changes/squadrows.h"
#include "ui/words/units.h"

namespace slopebook::ui {

/// lift: its name with the velocity kind, as titles write it.
page::Print squadPrint(const answers::Squad& squad, const QString& lift, LoadUnit unit);

} // namespace slopebook::ui

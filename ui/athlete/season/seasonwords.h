// SPDX-License-Identifier: GPL-3.0-or-later
// What the sentences of the season's chart belong to, for translation.
#pragma once

#include <QCoreApplication>

namespace slopebook::ui {

struct SeasonWords {
    Q_DECLARE_TR_FUNCTIONS(SeasonWords)
};

} // namespace slopebook::ui

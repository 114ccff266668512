// SPDX-License-Identifier: GPL-3.0-or-later
// What the sentences of the printed page belong to, for translation.
#pragma once

#include <QCoreApplication>

namespace slopebook::ui::page {

struct Page {
    Q_DECLARE_TR_FUNCTIONS(Page)
};

} // namespace slopebook::ui::page

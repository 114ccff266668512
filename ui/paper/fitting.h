// SPDX-License-Identifier: GPL-3.0-or-later
// How closely a print is laid out on a paper: as usual, unless a little closer saves a page.
#pragma once

#include "ui/paper/pages.h"

namespace slopebook::ui::page {

/// The print on paper of that size in points: with somewhat smaller pictures and spaces where that
/// saves a page, in smaller type where Print::fitting asks for it, and what is noted on a page of
/// its own where there are more pages than one and the print knows how to.
Flow fitted(const Print& print, const QSizeF& paper);

} // namespace slopebook::ui::page

// SPDX-License-Identifier: GPL-3.0-or-later
// What the overview and the whole season have in common on paper: type that gives way to many
// measures, lists under their names, and notes that may go to a page of their own.
#pragma once

#include "ui/paper/pages.h"

#include <QStringList>

namespace slopebook::ui {

/// So many measures stand on one page.
constexpr std::size_t measuresAPage = 25;

page::Fitting seasonFitting(std::size_t measures);
/// In type as small as the flow asks for, within what can be read.
QFont sized(const page::Flow& flow, double size, bool bold = false);
QFont sizedHeadline(const page::Flow& flow);
void addList(page::Flow& flow, const QString& title, const QStringList& lines);
/// Where what is noted has a page of its own in that way, it begins here, under its name.
void beginNotes(page::Flow& flow, int way, const QString& name);

} // namespace slopebook::ui

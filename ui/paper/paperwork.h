// SPDX-License-Identifier: GPL-3.0-or-later
// How a page goes out on paper: the desktop's dialogs for printer, preview and PDF, the same from
// every task.
#pragma once

#include "ui/paper/pages.h"

#include <QString>

class QWidget;

namespace slopebook::ui::paperwork {

/// What the desktop's country prints on.
page::Paper desktopPaper();

/// Words as the name of a file: what file systems forbid becomes a hyphen.
QString fileName(QString words);

/// Asks for a printer and prints; what goes wrong is said in a window over parent.
void print(QWidget* parent, const page::Print& print);

/// Shows the pages as they are printed, in a window with that title; what it prints goes by
/// print().
void preview(QWidget* parent, const QString& title, const page::Print& print);

/// Asks for a name, proposing one without its ending, and has the PDF written. What was done as a
/// sentence; nothing where the coach took it back or it went wrong, which is said over parent.
QString savePdf(QWidget* parent, const QString& title, const QString& proposed,
                const std::function<void(const log::Destination&)>& write);

} // namespace slopebook::ui::paperwork

// SPDX-License-Identifier: GPL-3.0-or-later
// Goes to every page and opens every dialog of the window on the sample log, so that what must hold
// everywhere is looked at everywhere.
#pragma once

#include "ui/window/mainwindow.h"

#include <QWidget>

#include <functional>

namespace slopebook::test {

/// Called with the name of the place and what is shown there: the whole window for a page, else the
/// dialog. It stands, is active, and has done its first work.
using Look = std::function<void(const QString& place, QWidget& shown)>;

/// The welcome page, each task with each of its inner tabs, and each dialog. language: its code.
/// fingers: whether the controls fit one. unit: of the loads; kilograms where it is not said.
void inEveryPlace(const QString& language, bool fingers, const Look& look);
void inEveryPlace(const QString& language, bool fingers, ui::LoadUnit unit, const Look& look);

/// Those below root that stand there or may come to: all but what lies on another tab.
QList<QWidget*> controlsOf(const QWidget& root);
/// The class, and what it says: for messages.
QString described(const QWidget& widget);

} // namespace slopebook::test

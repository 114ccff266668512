// SPDX-License-Identifier: GPL-3.0-or-later
// The dialogs of records over an open log: for who and what is chosen there.
#pragma once

namespace slopebook::ui {

class Workspace;

/// A new one is chosen, and a set may be typed.
void addAthlete(Workspace& work);
void addLift(Workspace& work);
void changeAthlete(Workspace& work);
void changeLift(Workspace& work);
void setCheckLoads(Workspace& work);
void keepDevices(Workspace& work);
void keepBlocks(Workspace& work);

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/recorddialogs.h"

#include "ui/records/athletedialog.h"
#include "ui/records/blocksdialog.h"
#include "ui/records/checkloadsdialog.h"
#include "ui/records/devicesdialog.h"
#include "ui/records/liftdialog.h"
#include "ui/window/workspace.h"

namespace slopebook::ui {

void addAthlete(Workspace& work) {
    AthleteDialog dialog(work.logbook(), std::nullopt, &work);
    if (dialog.exec() == QDialog::Accepted)
        work.choose(dialog.id(), {});
    work.focusEntry();
}

void changeAthlete(Workspace& work) {
    work.guarded([&] {
        if (work.athlete())
            AthleteDialog(work.logbook(), work.athlete(), &work).exec();
    });
}

void addLift(Workspace& work) {
    LiftDialog dialog(work.logbook(), std::nullopt, &work);
    if (dialog.exec() == QDialog::Accepted)
        work.choose({}, dialog.id());
    work.focusEntry();
}

void changeLift(Workspace& work) {
    work.guarded([&] {
        if (work.lift())
            LiftDialog(work.logbook(), work.lift(), &work).exec();
    });
}

void setCheckLoads(Workspace& work) {
    work.guarded([&] {
        if (work.athlete() && work.lift())
            CheckLoadsDialog(work.logbook(), *work.athlete(), *work.lift(), &work).exec();
    });
}

void keepDevices(Workspace& work) {
    work.guarded([&] { DevicesDialog(work.logbook(), &work).exec(); });
}

void keepBlocks(Workspace& work) {
    work.guarded([&] { BlocksDialog(work.logbook(), work.clock(), &work).exec(); });
}

} // namespace slopebook::ui

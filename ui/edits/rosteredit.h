// SPDX-License-Identifier: GPL-3.0-or-later
// Edits of stations that are more than their value: who is there on a day, and all of it gone.
#pragma once

#include "ui/edits/edit.h"
#include "ui/words/format.h"

#include <QCoreApplication>

namespace slopebook::ui {

class RosterEdit final : public Edit {
public:
    RosterEdit(EditHost& host, Roster before, Roster after)
        : Edit(host, QCoreApplication::translate("Edit", "change who is here")),
          m_before(std::move(before)), m_after(std::move(after)) {}
    Logbook::What what() const override { return Logbook::What::Stations; }
    QString object(LoadUnit /*unit*/) const override { return dateText(m_after.day); }

protected:
    void apply() override { turn(m_before, m_after); }
    void takeBack() override { turn(m_after, m_before); }

private:
    void turn(const Roster& from, const Roster& to) {
        if (log().roster(m_after.station, m_after.day) != from)
            refuseChangedElsewhere();
        log().setRoster(to);
    }

    Roster m_before, m_after;
};

class RemoveStationEdit final : public Edit {
public:
    RemoveStationEdit(EditHost& host, StationId id, Station station, std::vector<Roster> rosters)
        : Edit(host, QCoreApplication::translate("Edit", "remove station")), m_id(id),
          m_station(std::move(station)), m_rosters(std::move(rosters)) {}
    Logbook::What what() const override { return Logbook::What::Stations; }
    QString object(LoadUnit /*unit*/) const override { return slopebook::ui::text(m_station.name); }

protected:
    void apply() override { log().remove(m_id); }
    void takeBack() override {
        log().together([this] {
            log().add(m_station, m_id);
            for (const Roster& roster : m_rosters)
                log().setRoster(roster);
        });
    }

private:
    StationId m_id;
    Station m_station;
    std::vector<Roster> m_rosters;
};

} // namespace slopebook::ui

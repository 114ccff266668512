// SPDX-License-Identifier: GPL-3.0-or-later
// A log in a folder of its own, with Wren's ladders typed in.
#pragma once

#include "tests/support/ladders.h"
#include "ui/edits/logbook.h"

#include <QTemporaryDir>

#include <vector>

namespace slopebook::test {

struct TypedLadders {
    QTemporaryDir folder;
    ui::Logbook book{
        log::Log::create((folder.path() + QStringLiteral("/a.slopebook")).toStdString())};
    AthleteId athlete = book.addAthlete({.name = "Wren", .note = {}});
    LiftId lift = book.addLift(benchPull());
    std::vector<SessionId> sessions;

    explicit TypedLadders(const std::vector<LiftSession>& ladders = {autumn(), winter()}) {
        for (const LiftSession& s : ladders) {
            sessions.push_back(book.addSession({.athlete = athlete, .date = s.date}));
            for (const Point& p : s.points)
                book.addSets(sessions.back(), lift,
                             {{.load = massFromKilograms(p.load),
                               .reps = {{.velocity = p.velocity, .excluded = {}}}}});
        }
    }
};

} // namespace slopebook::test

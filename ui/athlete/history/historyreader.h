// SPDX-License-Identifier: GPL-3.0-or-later
// Reads a lift's history for the table that shows it: the order from SQLite, or, for figures that
// core makes of a session's points, from one pass over the log that keeps a number a session.
#pragma once

#include "core/log/history.h"
#include "ui/athlete/history/historymodel.h"

#include <QString>

#include <map>
#include <memory>

namespace slopebook::ui {

class HistoryReader {
public:
    /// athlete: absent, everybody's sessions. find: see log::HistoryQuestion. Throws LogError.
    HistoryReader(const log::Log& log, LiftId lift, std::optional<AthleteId> athlete,
                  const QString& find);

    std::vector<SessionId> order(int column, Qt::SortOrder direction) const;
    /// Each session alone with what its profile needs; in their order.
    std::vector<questions::Background> read(std::span<const SessionId> sessions);
    std::vector<HistoryRow> rows(std::span<const SessionId> sessions);
    /// The newest sessions of one athlete, newest first, whatever is looked for.
    std::vector<LiftSession> newest(AthleteId athlete, std::size_t most) const;

    const std::vector<Mass>& checkLoads() const { return m_checkLoads; }
    const Lift& lift() const { return m_lift.value; }

private:
    struct Known {
        Stored<AthleteId, Athlete> athlete;
        Answer<Mvt> mvt = NoAnswer{};
    };
    const Known& known(AthleteId athlete);
    std::vector<SessionId> byFigure(int column, Qt::SortOrder direction) const;
    std::optional<double> figure(const answers::Profile& profile, int column) const;

    const log::Log& m_log;
    Stored<LiftId, Lift> m_lift;
    log::HistoryQuestion m_question;
    std::vector<Mass> m_checkLoads; ///< of the one athlete
    std::vector<Stored<BlockId, Block>> m_blocks;
    std::vector<Stored<DeviceId, Device>> m_devices;
    std::map<AthleteId, Known> m_known;
};

HistorySource sourceOf(const std::shared_ptr<HistoryReader>& reader);

} // namespace slopebook::ui

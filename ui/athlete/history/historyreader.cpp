// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/history/historyreader.h"

#include "core/answers/threshold.h"
#include "ui/athlete/history/historyfields.h"
#include "ui/words/format.h"

#include <QLocale>

#include <algorithm>
#include <unordered_map>

namespace slopebook::ui {

HistoryReader::HistoryReader(const log::Log& log, LiftId lift, std::optional<AthleteId> athlete,
                             const QString& find)
    : m_log(log), m_lift(log.lift(lift)), m_blocks(log.blocks()), m_devices(log.devices()) {
    m_question.lift = lift;
    m_question.athlete = athlete;
    m_question.find = utf8(find.simplified());
    for (int month = 1; month <= 12; ++month)
        m_question.months[static_cast<std::size_t>(month - 1)] =
            utf8(QLocale().monthName(month, QLocale::ShortFormat));
    if (!athlete)
        return;
    m_checkLoads = log.checkLoads(*athlete, lift);
    known(*athlete); // throws where there is no such athlete
}

std::vector<SessionId> HistoryReader::order(int column, Qt::SortOrder direction) const {
    const auto at = static_cast<std::size_t>(column);
    if (at >= historyFields().size() || !historyFields()[at].stored)
        return byFigure(column, direction);
    log::HistoryQuestion question = m_question;
    question.column = *historyFields()[at].stored;
    question.descending = direction == Qt::DescendingOrder;
    return log::historyOrder(m_log, question);
}

std::optional<double> HistoryReader::figure(const answers::Profile& profile, int column) const {
    if (column < HistoryModel::FirstCheckLoad)
        return historyFields()[static_cast<std::size_t>(column)].figure(profile);
    const auto load = static_cast<std::size_t>(column - HistoryModel::FirstCheckLoad);
    if (load >= m_checkLoads.size())
        return std::nullopt;
    return profile.line.at(kilograms(m_checkLoads[load]));
}

// One athlete's sessions are held at a time: the threshold is made of all of them.
std::vector<SessionId> HistoryReader::byFigure(int column, Qt::SortOrder direction) const {
    std::unordered_map<std::int64_t, double> figures;
    questions::Background about{.athlete = {}, .lift = m_lift, .sessions = {}, .checkLoads = {}};
    const auto take = [&] {
        about.mvt = answers::mvtOf(m_lift.value, about.sessions);
        for (const LiftSession& session : about.sessions)
            if (const auto profile = questions::profileOf(about, session))
                if (const auto value = figure(*profile, column))
                    figures.emplace(raw(session.session), *value);
        about.sessions.clear();
    };
    m_log.scan({.athlete = m_question.athlete, .lift = m_lift.id}, [&](const LiftSession& one) {
        if (!about.sessions.empty() && about.sessions.front().athlete != one.athlete)
            take();
        about.sessions.push_back(one);
    });
    take();
    std::vector<SessionId> sessions = log::historyOrder(m_log, m_question);
    const bool descending = direction == Qt::DescendingOrder;
    std::ranges::stable_sort(sessions, [&](SessionId a, SessionId b) {
        const auto first = figures.find(raw(a)), second = figures.find(raw(b));
        if (first == figures.end() || second == figures.end()) // what is missing counts as least
            return descending ? second == figures.end() && first != figures.end()
                              : first == figures.end() && second != figures.end();
        return descending ? first->second > second->second : first->second < second->second;
    });
    return sessions;
}

const HistoryReader::Known& HistoryReader::known(AthleteId athlete) {
    const auto found = m_known.find(athlete);
    if (found != m_known.end())
        return found->second;
    std::vector<Point> maxima;
    m_log.scan({.athlete = athlete, .lift = m_lift.id}, [&](const LiftSession& session) {
        maxima.insert(maxima.end(), session.maxima.begin(), session.maxima.end());
    });
    return m_known
        .emplace(athlete, Known{.athlete = m_log.athlete(athlete),
                                .mvt = answers::chooseMvt(m_lift.value, maxima)})
        .first->second;
}

std::vector<questions::Background> HistoryReader::read(std::span<const SessionId> sessions) {
    std::vector<questions::Background> all;
    all.reserve(sessions.size());
    for (LiftSession& session : log::liftSessions(m_log, m_lift.id, sessions)) {
        const Known& of = known(session.athlete);
        all.push_back({.athlete = of.athlete,
                       .lift = m_lift,
                       .sessions = {std::move(session)},
                       .mvt = of.mvt,
                       .checkLoads = m_checkLoads});
    }
    return all;
}

std::vector<HistoryRow> HistoryReader::rows(std::span<const SessionId> sessions) {
    std::vector<HistoryRow> all;
    all.reserve(sessions.size());
    std::vector<SessionId> shown;
    for (const questions::Background& about : read(sessions))
        for (HistoryRow& row : historyRows(about, m_blocks, m_devices)) {
            shown.push_back(row.session);
            all.push_back(std::move(row));
        }
    const std::vector<std::string> notes = log::sessionNotes(m_log, shown);
    for (std::size_t i = 0; i < all.size(); ++i)
        all[i].note = text(notes[i]);
    return all;
}

std::vector<LiftSession> HistoryReader::newest(AthleteId athlete, std::size_t most) const {
    auto sessions =
        log::historyOrder(m_log, {.lift = m_lift.id, .athlete = athlete, .find = {}, .months = {}});
    sessions.resize(std::min(sessions.size(), most));
    return log::liftSessions(m_log, m_lift.id, sessions);
}

HistorySource sourceOf(const std::shared_ptr<HistoryReader>& reader) {
    return {
        .order = [reader](int column,
                          Qt::SortOrder direction) { return reader->order(column, direction); },
        .rows = [reader](std::span<const SessionId> sessions) { return reader->rows(sessions); }};
}

} // namespace slopebook::ui

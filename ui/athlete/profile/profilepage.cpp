// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/profile/profilepage.h"

#include "core/questions/liftcontext.h"
#include "ui/parts/figurespanel.h"
#include "ui/parts/fold.h"
#include "ui/parts/roomfor.h"
#include "ui/parts/rowtable.h"
#include "ui/parts/sentence.h"
#include "ui/parts/wayon.h"
#include "ui/words/format.h"
#include "ui/words/planwords.h"
#include "ui/words/said.h"

#include <QCheckBox>
#include <QEvent>
#include <QHeaderView>
#include <QLabel>
#include <QTableView>

#include <algorithm>
#include <map>

namespace slopebook::ui {

namespace {
constexpr std::size_t shownAtFirst = 3;
constexpr int lowProfile =
    480; // under this height chart and tables come before the smaller figures

} // namespace

ProfilePage::ProfilePage(Logbook& logbook, QWidget* parent) : TaskPage(parent), m_logbook(logbook) {
    build();
    connectParts();
    showNothing(tr("Choose an athlete and a lift."));
}

void ProfilePage::changeEvent(QEvent* event) {
    TaskPage::changeEvent(event);
    if (event->type() == QEvent::PaletteChange)
        m_lines->setGround(look::screenGround(palette()));
}

void ProfilePage::resizeEvent(QResizeEvent* event) {
    TaskPage::resizeEvent(event);
    m_figures->setCompact(height() < lowProfile);
    constexpr int lines = 17; // lines, maxima and what they are called
    m_chart->setMinimumHeight(pictureHeight(*this, lines));
}

void ProfilePage::setAthleteAndLift(std::optional<AthleteId> athlete, std::optional<LiftId> lift) {
    const bool same = athlete == m_athlete && lift == m_lift;
    m_athlete = athlete;
    m_lift = lift;
    if (!same)
        m_lines->setRows({});
    reload();
}

void ProfilePage::refresh(Logbook::What, SessionId) {
    reload();
}

void ProfilePage::reload() {
    try {
        if (!m_athlete || !m_lift) {
            showNothing(tr("Choose an athlete and a lift."));
            return;
        }
        m_about = questions::background(m_logbook.log(), *m_athlete, *m_lift);
        readRows();
        if (m_lines->rows().empty())
            showNothing(tr("No sets of this lift yet: type the first under Floor."));
    } catch (const std::exception& error) {
        showNothing(said(error));
    }
}

void ProfilePage::showNothing(const QString& why) {
    if (!m_lines->rows().empty())
        m_lines->setRows({});
    m_points->setRows({});
    m_history.reset();
    m_drawBorrowed->hide();
    m_borrowedText->hide();
    m_pointTitle->clear();
    m_figures->clear();
    m_empty->setText(m_way->sayMissing(m_logbook.log(), why));
    m_empty->show();
    m_figures->headline()->hide();
    m_chart->parentWidget()->hide();
    m_wellFits->hide();
}

void ProfilePage::readRows() {
    std::vector<SessionId> shown;
    for (const LineRow& row : m_lines->rows())
        if (row.shown)
            shown.push_back(row.session.session);
    const bool fresh = m_lines->rows().empty();
    const int current = currentLine();
    // Noise by the session's device, and the log's own calibration of estimates.
    std::map<std::optional<DeviceId>, questions::Background> byDevice;
    const auto aboutOn = [&](std::optional<DeviceId> device) -> const questions::Background& {
        const auto known = byDevice.find(device);
        return known != byDevice.end()
                   ? known->second
                   : byDevice
                         .emplace(device,
                                  questions::within(m_logbook.context(*m_lift), *m_about, device))
                         .first->second;
    };
    std::vector<LineRow> rows;
    for (auto session = m_about->sessions.rbegin(); session != m_about->sessions.rend();
         ++session) {
        LineRow row{*session, questions::profileOf(aboutOn(session->conditions.device), *session),
                    false};
        row.shown = fresh ? rows.size() < shownAtFirst
                          : std::find(shown.begin(), shown.end(), session->session) != shown.end();
        rows.push_back(std::move(row));
    }
    const bool any = !rows.empty();
    m_lines->setRows(std::move(rows));
    if (!any)
        return;
    m_empty->hide();
    m_figures->headline()->show();
    m_way->hide();
    m_wellFits->show();
    m_chart->parentWidget()->show();
    shareWidth(*m_lineTable);
    m_lineTable->selectRow(current >= 0 && current < m_lines->rowCount() ? current : 0);
    showPoints();
}

int ProfilePage::currentLine() const {
    const QModelIndex current = m_lineTable->currentIndex();
    return current.isValid() ? current.row() : -1;
}

charts::LineEntry ProfilePage::entryOf(const LineRow& row, const look::Role& role) const {
    const QString label = dateText(row.session.date);
    // One band at most: the newest session's, so that overlays stay legible.
    const bool newest = role.index + 1 == role.count;
    charts::LineEntry entry =
        row.profile ? charts::entryOf(*row.profile, label, role, {.band = newest, .toPlan = true})
                    : charts::entryOf(row.session, label, role);
    std::vector<Set> sets;
    for (const log::PlacedSet& placed : m_logbook.log().sets(row.session.session, *m_lift))
        sets.push_back(placed.set);
    for (const auto& hollow : charts::excludedPoints(sets, m_about->lift.value.rule))
        entry.points.push_back(hollow);
    return entry;
}

void ProfilePage::showChart() {
    try {
        charts::LineData shown;
        shown.unit = m_logbook.loadUnit();
        m_drawn.clear();
        if (m_about && m_athlete && m_lift) {
            const QString kind = kindText(m_about->lift.value.kind);
            shown.velocityTitle = tr("%1 (m/s)").arg(kind.left(1).toUpper() + kind.mid(1));
            if (m_about->mvt)
                shown.mvt = m_about->mvt->value;
            for (const Mass load : m_about->checkLoads)
                shown.checkLoads.push_back(kilograms(load));
            for (int row = m_lines->rowCount(); row-- > 0;) {
                const auto role = m_lines->roleOf(row);
                if (!role)
                    continue;
                const LineRow& line = m_lines->rows()[static_cast<std::size_t>(row)];
                shown.sessions.push_back(entryOf(line, *role));
                m_drawn.push_back(line.session.session);
            }
            if (auto borrowed = borrowedEntry())
                shown.sessions.push_back(std::move(*borrowed));
        }
        m_chart->setData(shown);
        highlight();
    } catch (const std::exception& error) {
        Q_EMIT message(said(error));
    }
}

void ProfilePage::showPoints() {
    const int at = currentLine();
    if (at < 0 || !m_about || at >= m_lines->rowCount())
        return;
    try {
        const LineRow& line = m_lines->rows()[static_cast<std::size_t>(at)];
        std::vector<PointRow> counting, leftOut;
        for (const log::PlacedSet& placed : m_logbook.log().sets(line.session.session, *m_lift)) {
            const Set& set = placed.set;
            const auto velocity = pointVelocity(set, m_about->lift.value.rule);
            PointRow row{placed.ordinal, kilograms(set.load), velocity.value_or(0), {}, {},
                         set.note};
            if (velocity && line.profile)
                for (const answers::ProfilePoint& point : line.profile->points)
                    if (point.point.set == placed.ordinal)
                        row.figures = point;
            if (velocity)
                counting.push_back(row);
            for (const auto& hollow :
                 charts::excludedPoints(std::span(&set, 1), m_about->lift.value.rule)) {
                row.figures.reset();
                row.velocity = hollow.velocity;
                row.leftOut = set.excluded;
                for (const Rep& rep : set.reps)
                    if (set.excluded.empty() && rep.velocity == hollow.velocity &&
                        !rep.excluded.empty())
                        row.leftOut = rep.excluded;
                leftOut.push_back(row);
            }
        }
        counting.insert(counting.end(), leftOut.begin(), leftOut.end());
        m_points->setRows(std::move(counting));
        for (int column = 0; column < PointsModel::Remarks; ++column)
            m_pointTable->resizeColumnToContents(column);
        m_pointTitle->setText(tr("Points of %1").arg(dateText(line.session.date)));
        m_figures->showProfile(line.session, line.profile);
        readBorrowed();
        m_chart->setSpokenText(m_figures->sentence());
        highlight();
    } catch (const std::exception& error) {
        Q_EMIT message(said(error));
    }
}

// The current session's line as the athlete's own history sees it.
void ProfilePage::readBorrowed() {
    const LineRow& row = m_lines->rows()[static_cast<std::size_t>(currentLine())];
    m_history =
        answers::borrow(m_about->lift.value, m_about->mvt, m_about->sessions, row.session.session);
    const bool there = *m_history && row.profile;
    m_drawBorrowed->setVisible(there);
    m_borrowedText->setVisible(there);
    if (there)
        m_borrowedText->setText(
            planwords::borrowedText(*m_history, *row.profile, m_logbook.loadUnit()));
    drawBorrowed();
}

// Beside the session's own line, so that one has to be on the chart.
void ProfilePage::drawBorrowed() {
    const int at = currentLine();
    if (m_drawBorrowed->isChecked() && at >= 0 && !m_lines->roleOf(at))
        m_lines->setShown(at, true); // draws
    else
        showChart();
}

/// Dotted, because nobody lifted on it; nothing where it is not asked for.
std::optional<charts::LineEntry> ProfilePage::borrowedEntry() const {
    const int at = currentLine();
    if (!m_drawBorrowed->isChecked() || !m_history || !*m_history || at < 0)
        return std::nullopt;
    const LineRow& row = m_lines->rows()[static_cast<std::size_t>(at)];
    const auto role = m_lines->roleOf(at);
    const answers::BorrowedLine* line = (*m_history)->of(row.session.session);
    if (!line || !row.profile || !role)
        return std::nullopt;
    const double from = row.profile->lightest;
    charts::LineEntry entry{.key = QStringLiteral("borrowed"),
                            .label = tr("borrowed, %1").arg(dateText(row.session.date)),
                            .role = *role};
    entry.line = charts::LineSegment{.intercept = line->line.intercept,
                                     .slope = line->line.slope,
                                     .from = from,
                                     .to = from,
                                     .start = from,
                                     .end = row.profile->heaviest};
    if (line->oneRm) {
        entry.line->end = std::max(row.profile->heaviest, line->oneRm->estimate);
        entry.oneRm =
            charts::OneRmMark{.estimate = line->oneRm->estimate, .interval = line->oneRm->interval};
    }
    return entry;
}

void ProfilePage::highlight() {
    const int line = currentLine();
    const QModelIndex point = m_pointTable->currentIndex();
    std::optional<charts::PointRef> ring;
    if (line >= 0 && line < m_lines->rowCount() && point.isValid()) {
        const SessionId session = m_lines->rows()[static_cast<std::size_t>(line)].session.session;
        const auto drawn = std::find(m_drawn.begin(), m_drawn.end(), session);
        if (drawn != m_drawn.end())
            ring = charts::PointRef{int(drawn - m_drawn.begin()), point.row()};
    }
    m_chart->setHighlight(ring);
}

void ProfilePage::openCurrent() {
    if (const int line = currentLine(); line >= 0)
        Q_EMIT sessionWanted(m_lines->rows()[static_cast<std::size_t>(line)].session.session);
}

} // namespace slopebook::ui

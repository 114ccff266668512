// SPDX-License-Identifier: GPL-3.0-or-later
// The season in blocks: timeline, what each block was, which sessions fall in it, what was missing.
#pragma once

#include "core/questions/batteryquestions.h"
#include "ui/parts/clock.h"
#include "ui/parts/taskpage.h"
#include "ui/parts/texttable.h"
#include "ui/squad/blocks/timeline.h"

#include <functional>

class QBoxLayout;
class QLabel;
class QPushButton;
class QTableView;

namespace slopebook::ui {

class Sentence;

class BlocksPage final : public TaskPage {
    Q_OBJECT
public:
    BlocksPage(Logbook& logbook, Clock clock, QWidget* parent = nullptr);

    void setAthleteAndLift(std::optional<AthleteId> athlete, std::optional<LiftId> lift) override;
    void refresh(Logbook::What what, SessionId session) override;

    /// The control line: the lift stands first in it.
    QBoxLayout* strip() const { return m_strip; }
    const Timeline& timeline() const { return *m_timeline; }
    const TextTable& blocks() const { return *m_blockRows; }
    const TextTable& sessions() const { return *m_sessionRows; }
    void selectBlock(int row);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void build();
    void connectParts();
    QStringList blockColumns() const;
    void showBlocksWhole();
    void fitTimeline();
    static QStringList sessionColumns();
    void reload();
    void showBlocks();
    void showSessions();
    bool within(const questions::BlockSession& session, int row) const;
    QString blockText(const Block& block) const;
    QString whatWas(const questions::BlockSession& session) const;
    QString whatWasMissing(const questions::BlockSession& session) const;
    static QString missedOf(const QStringList& missing, int sessions);
    QString liftName(LiftId id) const;
    QString testName(TestKindId id) const;

    Logbook& m_logbook;
    Clock m_clock;
    std::optional<AthleteId> m_athlete;
    std::vector<Stored<BlockId, Block>> m_blocks;
    std::vector<Stored<LiftId, Lift>> m_lifts;
    std::vector<Stored<TestKindId, TestKind>> m_kinds;
    std::vector<questions::BlockSession> m_season;
    std::vector<SessionId> m_shown; ///< sessions of the lower table
    QBoxLayout* m_strip = nullptr;
    Timeline* m_timeline;
    TextTable* m_blockRows;
    TextTable* m_sessionRows;
    QTableView* m_blockTable;
    QTableView* m_sessionTable;
    Sentence* m_sentence;
    QLabel *m_title, *m_legend;
    QString m_name; ///< of the athlete whose sessions are shown
    QLabel* m_problem;
    QPushButton* m_keep;
};

} // namespace slopebook::ui

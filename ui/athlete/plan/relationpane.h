// SPDX-License-Identifier: GPL-3.0-or-later
// Relations of other people: the squad's own beside the published equation, and whether the coach
// wants shares of the 1RM by one of them in the plan.
#pragma once

#include "ui/athlete/plan/relationchart.h"
#include "ui/words/units.h"

#include <QWidget>

class QComboBox;
class QLabel;

namespace slopebook::ui {

class Sentence;
class SettledLabel;

class RelationPane : public QWidget {
    Q_OBJECT
public:
    explicit RelationPane(QWidget* parent = nullptr);

    /// What there is for a lift, from all athletes' sessions of it.
    void setRelations(const Answer<answers::SquadRelation>& squad, LoadUnit unit,
                      const std::optional<answers::PublishedRelation>& published);

    /// Shares of the plan's loads by the relation that the coach asked for; empty where none is.
    std::vector<answers::RelatedLoad> related(const answers::Plan& plan) const;
    /// Its name in plain English; empty where none is asked for.
    Words name() const;
    /// The same for the head of a column.
    QString heading() const;

Q_SIGNALS:
    void useChanged();

private:
    enum Use { Nobody, Squad, Published };

    QComboBox* m_use;
    Sentence* m_sentence;
    SettledLabel* m_under;
    charts::RelationChart* m_chart;
    std::optional<answers::SquadRelation> m_squad;
    std::optional<answers::PublishedRelation> m_published;
};

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/plan/relationpane.h"

#include "core/answers/plansummary.h"
#include "ui/parts/sentence.h"
#include "ui/words/format.h"
#include "ui/words/said.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QStandardItemModel>
#include <QVBoxLayout>

namespace slopebook::ui {

RelationPane::RelationPane(QWidget* parent)
    : QWidget(parent), m_use(new QComboBox), m_sentence(new Sentence), m_under(new SettledLabel),
      m_chart(new charts::RelationChart) {
    m_use->addItems({tr("not used"), tr("the squad's own"), tr("the published equation")});
    auto* label = new QLabel(tr("Use in &the table of loads"));
    label->setBuddy(m_use);
    auto* row = new QHBoxLayout;
    row->addWidget(label);
    row->addWidget(m_use);
    row->addStretch(1);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_sentence);
    layout->addWidget(m_under);
    layout->addWidget(m_chart, 1);
    layout->addLayout(row);
    connect(m_use, &QComboBox::currentIndexChanged, this, &RelationPane::useChanged);
}

void RelationPane::setRelations(const Answer<answers::SquadRelation>& squad, LoadUnit unit,
                                const std::optional<answers::PublishedRelation>& published) {
    m_squad = squad ? std::optional(*squad) : std::nullopt;
    m_published = published;
    QStringList told = said(answers::relationWords(squad, published), unit);
    const QString spoken = told.join(QLatin1Char(' '));
    m_sentence->setText(told.takeFirst());
    m_under->setText(told.join(QLatin1Char(' ')));
    m_chart->setData({.squad = m_squad, .published = m_published});
    m_chart->setSpokenText(spoken);
    auto* items = qobject_cast<QStandardItemModel*>(m_use->model());
    items->item(Squad)->setEnabled(m_squad.has_value());
    items->item(Published)->setEnabled(m_published.has_value());
    const int use = m_use->currentIndex();
    if ((use == Squad && !m_squad) || (use == Published && !m_published))
        m_use->setCurrentIndex(Nobody);
}

std::vector<answers::RelatedLoad> RelationPane::related(const answers::Plan& plan) const {
    if (m_use->currentIndex() == Squad && m_squad)
        return answers::relatedLoads(plan, *m_squad);
    if (m_use->currentIndex() == Published && m_published)
        return answers::relatedLoads(plan, *m_published);
    return {};
}

QString RelationPane::heading() const {
    return m_use->currentIndex() == Squad ? tr("Of 1RM, by the squad's relation")
                                          : tr("Of 1RM, by the published equation");
}

Words RelationPane::name() const {
    if (m_use->currentIndex() == Squad && m_squad)
        return m_squad->name();
    if (m_use->currentIndex() == Published && m_published)
        return answers::nameOf(*m_published);
    return {};
}

} // namespace slopebook::ui

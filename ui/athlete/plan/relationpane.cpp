// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/plan/relationpane.h"

#include "core/answers/figures.h"
#include "ui/words/format.h"
#include "ui/words/wording.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QStandardItemModel>
#include <QVBoxLayout>

namespace slopebook::ui {

RelationPane::RelationPane(QWidget* parent)
    : QWidget(parent), m_use(new QComboBox), m_sentence(new QLabel),
      m_chart(new charts::RelationChart) {
    m_use->addItems({tr("not used"), tr("the squad's own"), tr("the published equation")});
    m_sentence->setWordWrap(true);
    auto* label = new QLabel(tr("Use in &the table of loads"));
    label->setBuddy(m_use);
    auto* row = new QHBoxLayout;
    row->addWidget(label);
    row->addWidget(m_use);
    row->addStretch(1);
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(row);
    layout->addWidget(m_sentence);
    layout->addWidget(m_chart, 1);
    connect(m_use, &QComboBox::currentIndexChanged, this, &RelationPane::useChanged);
}

void RelationPane::setRelations(const Answer<answers::SquadRelation>& squad, LoadUnit unit,
                                const std::optional<answers::PublishedRelation>& published) {
    m_squad = squad ? std::optional(*squad) : std::nullopt;
    m_published = published;
    QString said;
    if (m_squad)
        said = tr("The squad: %1 athletes, %2 points; one point scatters by %3 % of the 1RM about "
                  "the curve.")
                   .arg(m_squad->athletes)
                   .arg(m_squad->points.size())
                   .arg(number(m_squad->used().s(), 1));
    else
        said = asSentence(noAnswerText(squad.why(), unit));
    said += u' ';
    said += m_published
                ? tr("Published: %1.").arg(text(answers::cited(std::string(m_published->source))))
                : tr("No published equation is known for this lift and kind of velocity.");
    said += u' ' + tr("People differ: such a share is of others, never of this athlete.");
    m_sentence->setText(said);
    m_chart->setData({.squad = m_squad, .published = m_published});
    m_chart->setSpokenText(said);
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

std::string RelationPane::name() const {
    if (m_use->currentIndex() == Squad && m_squad)
        return utf8(tr("the squad's own relation (%1 athletes, %2 points)")
                        .arg(m_squad->athletes)
                        .arg(m_squad->points.size()));
    if (m_use->currentIndex() == Published && m_published)
        return utf8(tr("the published equation (%1)")
                        .arg(text(answers::cited(std::string(m_published->source)))));
    return {};
}

} // namespace slopebook::ui

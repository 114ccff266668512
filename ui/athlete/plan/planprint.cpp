// SPDX-License-Identifier: GPL-3.0-or-later
// The card for the bar goes out on paper: preview, printer, PDF.
#include "ui/athlete/plan/planpage.h"
#include "ui/athlete/plan/relationpane.h"
#include "ui/paper/paperwork.h"
#include "ui/words/format.h"

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

bool PlanPage::canPrint() const {
    return m_model->plan() && !m_model->plan()->chosen.empty();
}

PlanCard PlanPage::card() const {
    PlanCard card{.athlete = text(m_about->athlete.value.name),
                  .lift = text(m_about->lift.value.name),
                  .plan = *m_model->plan(),
                  .related = m_relations->related(*m_model->plan()),
                  .relation = m_relations->name(),
                  .unit = m_choice.unit,
                  .sets = m_choice.sets,
                  .reps = m_choice.reps};
    card.paper = paperwork::desktopPaper();
    return card;
}

void PlanPage::writePdfTo(const log::Destination& to) const {
    writePlanCardPdf(card(), to);
}

void PlanPage::writePdf() {
    if (!canPrint())
        return;
    const PlanCard shown = card();
    const QString said = paperwork::savePdf(this, tr("Save the card as PDF"),
                                            shown.athlete + u' ' + shown.lift + u" plan"_s,
                                            [this](const auto& to) { writePdfTo(to); });
    if (!said.isEmpty())
        Q_EMIT message(said);
}

void PlanPage::print() {
    if (canPrint())
        paperwork::print(this, planCardPrint(card()));
}

void PlanPage::printPreview() {
    if (canPrint())
        paperwork::preview(this, tr("The card as it is printed"), planCardPrint(card()));
}

} // namespace slopebook::ui

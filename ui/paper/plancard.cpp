// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/plancard.h"

#include "core/answers/plansummary.h"
#include "core/answers/restrictedflow.h"
#include "ui/words/format.h"
#include "ui/words/planwords.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QCoreApplication>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

namespace {

struct Card {
    Q_DECLARE_TR_FUNCTIONS(Card)
};

constexpr page::PageStyle style{.margin = 40, .foot = 14, .footSize = 8, .numberInFoot = true};
constexpr double titleSize = 24, loadSize = 40, putOnSize = 22, cardTextSize = 14, cautionSize = 11;

QString workText(const PlanCard& card) {
    const QString sets = card.sets == 1 ? Card::tr("1 set") : Card::tr("%1 sets").arg(card.sets);
    return card.reps > 0 ? Card::tr("%1 of %2").arg(sets).arg(card.reps) : sets;
}

/// One load: the figure that is read first is the largest.
void addLoad(page::Flow& flow, const PlanCard& card, std::size_t at) {
    const answers::PlannedLoad& load = card.plan.loads[at];
    flow.leading(
        Card::tr("%1   %2").arg(planwords::loadText(load.built.exact, card.unit), workText(card)),
        page::pageFont(loadSize, true), 14, true);
    const QString bar = load.built.bar ? said(answers::barWords(*load.built.bar)) : QString();
    const QString putOn = said(answers::putOnWords(load.built));
    flow.leading(bar.isEmpty() ? putOn : Card::tr("%1, each side: %2").arg(bar, putOn),
                 page::pageFont(putOnSize), 2, true);
    if (load.percent)
        flow.leading(Card::tr("%1 of the estimated 1RM").arg(planwords::percentText(load)),
                     page::pageFont(cardTextSize), 4, true);
    if (!card.related.empty())
        flow.text(
            Card::tr("%1 by %2").arg(planwords::relatedText(card.related[at]), said(card.relation)),
            page::pageFont(cautionSize), 2, true);
    flow.leading(Card::tr("Fastest rep expected: %1").arg(planwords::speedText(load)),
                 page::pageFont(cardTextSize), 2, load.stop.has_value());
    if (load.stop)
        flow.leading(
            said(asSentence(answers::stopRule(load, *card.plan.settings.lossPercent)), card.unit),
            page::pageFont(cardTextSize, true), 2);
}

/// Room to write down what was done.
void addWriteIn(page::Flow& flow, const PlanCard& card) {
    std::vector<std::vector<page::Cell>> rows;
    for (const std::size_t i : card.plan.chosen)
        for (int set = 1; set <= card.sets; ++set)
            rows.push_back(
                {{.text = QString::number(set)},
                 {.text = planwords::loadText(card.plan.loads[i].built.exact, card.unit)},
                 {.text = u"…………"_s},
                 {.text = u"…………"_s},
                 {.text = u"…………"_s}});
    const double part = flow.width() / 5;
    flow.table({{.width = part * 0.6},
                {.width = part * 1.1},
                {.width = part * 1.1},
                {.width = part * 1.1},
                {.width = part * 1.1}},
               {{.text = Card::tr("Set"), .bold = true},
                {.text = Card::tr("Load"), .bold = true},
                {.text = Card::tr("Fastest"), .bold = true},
                {.text = Card::tr("Last"), .bold = true},
                {.text = Card::tr("Reps"), .bold = true}},
               rows, page::pageFont(cardTextSize), 18);
}

void fillCard(page::Flow& flow, const PlanCard& card) {
    flow.leading(Card::tr("%1: %2").arg(card.athlete, card.lift), page::pageFont(titleSize, true));
    flow.text(Card::tr("From the test of %1; equipment: %2")
                  .arg(dateText(card.plan.profile.session.date),
                       QString::fromStdString(card.plan.settings.equipment.name)),
              page::pageFont(cautionSize), 2);
    for (const std::size_t i : card.plan.chosen)
        addLoad(flow, card, i);
    addWriteIn(flow, card);
    bool first = true;
    std::vector<answers::Caution> cautions = answers::cautionsOfSets(card.plan);
    if (!card.related.empty())
        cautions.push_back(answers::relationCaution(card.relation));
    for (const QString& caution : planwords::allCautionTexts(cautions, card.unit)) {
        flow.text(caution, page::pageFont(cautionSize), first ? 16 : 3);
        first = false;
    }
    if (card.plan.restrictedFlow) {
        flow.text(Card::tr("Restricted-flow training"), page::pageFont(cautionSize, true), 8, true);
        for (const QString& paragraph : said(answers::restrictedFlowSentences(), card.unit))
            flow.text(paragraph, page::pageFont(cautionSize), 3);
    }
}

} // namespace

page::Print planCardPrint(const PlanCard& card) {
    return {.title = card.athlete + u": "_s + card.lift,
            .foot = Card::tr("%1, %2").arg(card.athlete, card.lift),
            .fill = [card](page::Flow& flow) { fillCard(flow, card); },
            .style = style};
}

void writePlanCardPdf(const PlanCard& card, const log::Destination& to) {
    page::writePagesPdf(planCardPrint(card), card.paper, to);
}

} // namespace slopebook::ui

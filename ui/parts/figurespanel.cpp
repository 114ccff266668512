// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/figurespanel.h"

#include "core/answers/bendwords.h"
#include "core/answers/comparisonnotes.h"
#include "core/answers/figures.h"
#include "core/answers/maxwords.h"
#include "core/answers/method.h"
#include "core/answers/planbounds.h"
#include "core/answers/sources.h"
#include "ui/parts/cautions.h"
#include "ui/words/format.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QLabel>
#include <QVBoxLayout>

#include <cmath>

namespace slopebook::ui {

FiguresPanel::FiguresPanel(LoadUnit unit, QWidget* parent)
    : QWidget(parent), m_headline(new QLabel), m_detail(new QLabel), m_line(new QLabel),
      m_notes(new QLabel), m_unit(unit) {
    m_headline->setObjectName(QStringLiteral("oneRm"));
    m_headline->setAccessibleDescription(tr("Estimated 1RM"));
    m_detail->setAccessibleDescription(tr("About the estimate"));
    m_line->setAccessibleDescription(tr("Figures of the line"));
    m_notes->setAccessibleDescription(tr("Notes on the line"));
    QFont large = m_headline->font();
    large.setPointSizeF(large.pointSizeF() * 1.5);
    m_headline->setFont(large);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(2);
    for (QLabel* label : {m_headline, m_detail, m_line, m_notes}) {
        label->setWordWrap(true);
        label->setTextInteractionFlags(Qt::TextSelectableByMouse);
        layout->addWidget(label);
    }
    for (QLabel* label : {m_detail, m_line, m_notes})
        label->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    auto* caution = new CautionLabel;
    caution->setForegroundRole(QPalette::PlaceholderText);
    layout->addWidget(caution);
    clear();
}

// All at once: a label that comes and goes lays the whole page out anew.
void FiguresPanel::say(const Words& words) {
    m_said = words;
    m_headline->setText(words.headline);
    m_headline->setForegroundRole(words.muted ? QPalette::PlaceholderText : QPalette::WindowText);
    m_line->setText(words.line);
    m_notes->setText(words.notes);
    fit();
}

// What is to come with the next sets keeps its room, three lines about the estimate among it: the
// chart beside it neither jumps nor is laid out anew while a ladder is typed.
void FiguresPanel::fit() {
    const int line = fontMetrics().height();
    m_detail->setText(m_compact && !m_said.brief.isEmpty() ? m_said.brief : m_said.detail);
    m_detail->setMinimumHeight(m_compact ? 0 : 3 * line);
    m_notes->setMinimumHeight(m_compact ? 0 : line);
    for (QLabel* label : {m_detail, m_line, m_notes}) {
        QSizePolicy policy = label->sizePolicy();
        policy.setRetainSizeWhenHidden(label == m_detail || !m_compact);
        label->setSizePolicy(policy);
    }
    m_detail->setVisible(!m_detail->text().isEmpty());
    m_line->setVisible(!m_compact && !m_line->text().isEmpty());
    m_notes->setVisible(!m_compact && !m_notes->text().isEmpty());
}

void FiguresPanel::setCompact(bool compact) {
    if (compact == m_compact)
        return;
    m_compact = compact;
    fit();
}

void FiguresPanel::clear() {
    say({.headline = tr("Estimated 1RM: no sets yet")});
}

QString FiguresPanel::sentence() const {
    return m_headline->text() + QStringLiteral(". ") + m_line->text();
}

void FiguresPanel::showProfile(const std::optional<LiftSession>& session,
                               const std::optional<Answer<answers::Profile>>& profile) {
    if (!session || !profile)
        clear();
    else if (!*profile)
        say({.headline = tr("Estimated 1RM: no figure"),
             .detail = noAnswerText(profile->why(), m_unit)});
    else
        say(wordsOf(**profile));
}

FiguresPanel::Words FiguresPanel::wordsOf(const answers::Profile& profile) const {
    Words words;
    addOneRm(words, profile);
    addLine(words, profile);
    return words;
}

// The interval to plan with leads: line, MVT, days and bend. That as if the line were straight
// stands beside it; that of the line alone is for comparing sessions, where the MVT is the same.
QString FiguresPanel::headline(const answers::Profile& profile, const QString& estimate) const {
    const answers::OneRm& oneRm = *profile.oneRm;
    const QString level = levelText(profile.level), unit = unitName(m_unit);
    const auto& whole = answers::toPlanWith(oneRm);
    if (!whole)
        return tr("Estimated 1RM %1 %2, no interval").arg(estimate, unit);
    const QString interval = rangeText(inUnit(*whole, m_unit), 1);
    if (oneRm.extrapolatedVeryFar())
        return tr("Estimated 1RM %1 %4 (%2), middle %3").arg(interval, level, estimate, unit);
    if (oneRm.toPlan)
        return tr("Estimated 1RM %1 %4 (%2 to plan with: %3)").arg(estimate, level, interval, unit);
    return oneRm.withMvt ? tr("Estimated 1RM %1 %4 (%2 for a maximum that day: %3)")
                               .arg(estimate, level, interval, unit)
                         : tr("Estimated 1RM %1 %4 (%2 of the line alone: %3)")
                               .arg(estimate, level, interval, unit);
}

void FiguresPanel::addOneRm(Words& words, const answers::Profile& profile) const {
    if (!profile.oneRm) {
        words.headline = tr("Estimated 1RM: no figure");
        words.detail = noAnswerText(profile.oneRm.why(), m_unit);
        return;
    }
    const answers::OneRm& oneRm = *profile.oneRm;
    // In large type a figure is believed: none where the line cannot bound it, or where two loads
    // lie far below it.
    if (const slopebook::Words why = answers::tooUncertainWords(profile); !why.empty()) {
        words.headline = tr("Estimated 1RM: no figure");
        words.detail = said(why, m_unit);
        return;
    }
    QStringList detail;
    const QString unit = unitName(m_unit);
    const QString estimate = number(inUnit(answers::estimateToPlanWith(oneRm), m_unit), 1);
    words.headline = headline(profile, estimate);
    if (!profile.line.hasInference())
        detail << tr("the interval needs a third load");
    if (answers::plansCalibrated(oneRm))
        detail << tr("by the log's own maxima; the line reads %1")
                      .arg(loadWithUnit(std::round(10 * oneRm.estimate) / 10, m_unit));
    else if (oneRm.toPlan && oneRm.straight)
        detail << tr("as if the line were straight: %1 %2")
                      .arg(rangeText(inUnit(*oneRm.straight, m_unit), 1), unit);
    if (m_sources && oneRm.withMvt)
        detail << tr("of the line alone, for comparing sessions: %1 to %2 %3")
                      .arg(number(inUnit(oneRm.interval->low, m_unit), 1),
                           number(inUnit(oneRm.interval->high, m_unit), 1), unit);
    const QString reach = oneRm.extrapolatedVeryFar() ? tr("reach %1, extrapolated very far")
                          : oneRm.extrapolatedFar()   ? tr("reach %1, extrapolated far")
                                                      : tr("reach %1");
    detail << reach.arg(number(oneRm.reach, 2));
    QStringList brief = detail;
    if (profile.mvt) {
        detail << tr("MVT %1").arg(said(answers::mvtWords(*profile.mvt)));
        brief << tr("MVT %1").arg(number(profile.mvt->value, 2) + QStringLiteral(" m/s"));
    }
    QStringList lifted{said(answers::liftedWords(profile), m_unit)};
    if (profile.session.measuredOneRm)
        lifted << tr("measured 1RM %1").arg(massWithUnit(*profile.session.measuredOneRm, m_unit));
    words.detail = (detail + lifted).join(QStringLiteral("  \u00b7  "));
    words.brief = (brief + lifted).join(QStringLiteral("  \u00b7  "));
    words.muted = oneRm.extrapolatedVeryFar();
}

void FiguresPanel::addLine(Words& words, const answers::Profile& profile) const {
    const stats::Line& line = profile.line;
    QStringList figures{
        tr("V0 %1 m/s").arg(number(line.intercept, 2)),
        tr("slope %1 m/s per %2")
            .arg(signedNumber(line.slope / inUnit(1, m_unit), 4), unitName(m_unit)),
        line.hasInference() ? tr("R\u00b2 %1").arg(number(line.r2, 3)) : QString(),
        line.n == 1 ? tr("1 point") : tr("%1 points").arg(line.n),
        tr("%1 to %2")
            .arg(loadNumber(profile.lightest, m_unit), loadWithUnit(profile.heaviest, m_unit))};
    figures.removeAll(QString());
    words.line = figures.join(QStringLiteral("  \u00b7  "));
    QStringList notes;
    for (const answers::Note& note : profile.notes) {
        using Kind = answers::Note::Kind;
        const bool saidAbove = note.kind == Kind::TwoPointLine ||
                               note.kind == Kind::ExtrapolatedFar ||
                               note.kind == Kind::ExtrapolatedVeryFar;
        if (!saidAbove)
            notes << said(asSentence(note.words), m_unit);
    }
    if (m_sources && profile.oneRm && profile.oneRm->toPlan)
        for (const slopebook::Words& each :
             {answers::bendWords(profile), answers::dayNoiseNote(profile.beyond.day).words,
              answers::tiltWords(profile.beyond.day), answers::bendSource(profile.beyond.bend),
              answers::citationOf(answers::asCited(profile.beyond.day))})
            if (!each.empty())
                notes << said(asSentence(each), m_unit);
    if (m_sources && profile.mvt)
        if (const auto behind = answers::citationOf(answers::asCited(*profile.mvt));
            !behind.empty())
            notes << said(asSentence(behind), m_unit);
    words.notes = notes.join(QLatin1Char(' '));
}

} // namespace slopebook::ui

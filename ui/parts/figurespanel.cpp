// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/figurespanel.h"

#include "core/answers/bendwords.h"
#include "core/answers/comparisonnotes.h"
#include "core/answers/figures.h"
#include "core/answers/maxpanel.h"
#include "core/answers/method.h"
#include "core/answers/sources.h"
#include "ui/parts/cautions.h"
#include "ui/parts/fold.h"
#include "ui/parts/sentence.h"
#include "ui/parts/settledlabel.h"
#include "ui/words/format.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QVBoxLayout>

namespace slopebook::ui {

FiguresPanel::FiguresPanel(LoadUnit unit, QWidget* parent)
    : QWidget(parent), m_headline(new Sentence), m_detail(new SettledLabel),
      m_line(new SettledLabel), m_notes(new SettledLabel), m_from(new SettledLabel),
      m_fold(new SourcesFold(m_from)), m_unit(unit) {
    m_headline->setObjectName(QStringLiteral("oneRm"));
    m_headline->setSteady(true);
    m_headline->setAccessibleDescription(tr("Estimated 1RM"));
    m_detail->setAccessibleDescription(tr("About the estimate"));
    m_line->setAccessibleDescription(tr("Figures of the line"));
    m_notes->setAccessibleDescription(tr("Notes on the line"));
    m_from->setAccessibleDescription(tr("Where the figures come from"));
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(2);
    layout->addWidget(m_headline);
    for (SettledLabel* label : {m_detail, m_line, m_notes})
        layout->addWidget(label);
    for (SettledLabel* label : {m_detail, m_line, m_notes, m_from})
        label->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    auto* caution = new CautionLabel;
    layout->addWidget(caution);
    layout->addWidget(m_fold);
    clear();
}

// All at once: a label that comes and goes lays the whole page out anew.
void FiguresPanel::say(const Words& words) {
    m_said = words;
    m_headline->setText(words.headline);
    m_headline->setForegroundRole(words.muted ? QPalette::PlaceholderText : QPalette::WindowText);
    m_line->setText(words.line);
    m_notes->setText(words.notes);
    m_from->setText(words.sources);
    fit();
}

void FiguresPanel::setSources(bool sources) {
    m_sources = sources;
    m_headline->setSteady(!sources); // a page of its own, where nothing is typed
    fit();
}

// What is to come with the next sets keeps its room, three lines about the estimate among it: the
// chart beside it neither jumps nor is laid out anew while a ladder is typed.
void FiguresPanel::fit() {
    const int line = fontMetrics().height();
    m_detail->setText(m_compact && !m_said.brief.isEmpty() ? m_said.brief : m_said.detail);
    m_detail->setMinimumHeight(m_compact ? 0 : 3 * line);
    m_notes->setMinimumHeight(m_compact ? 0 : line);
    for (SettledLabel* label : {m_detail, m_line, m_notes}) {
        QSizePolicy policy = label->sizePolicy();
        policy.setRetainSizeWhenHidden(label == m_detail || !m_compact);
        label->setSizePolicy(policy);
    }
    m_detail->setVisible(!m_detail->text().isEmpty());
    m_line->setVisible(!m_compact && !m_line->text().isEmpty());
    m_notes->setVisible(!m_compact && !m_notes->text().isEmpty());
    m_fold->setVisible(m_sources && !m_from->text().isEmpty());
}

void FiguresPanel::setCompact(bool compact) {
    if (compact == m_compact)
        return;
    m_compact = compact;
    fit();
}

void FiguresPanel::clear() {
    say({.headline = said(answers::noSetsYet())});
}

QWidget* FiguresPanel::headline() const {
    return m_headline;
}

QString FiguresPanel::sentence() const {
    return m_headline->text() + QStringLiteral(". ") + m_line->text();
}

void FiguresPanel::showProfile(const std::optional<LiftSession>& session,
                               const std::optional<Answer<answers::Profile>>& profile) {
    if (!session || !profile)
        clear();
    else if (!*profile)
        say({.headline = said(answers::noMaxHeadline()),
             .detail = noAnswerText(profile->why(), m_unit)});
    else
        say(wordsOf(**profile));
}

FiguresPanel::Words FiguresPanel::wordsOf(const answers::Profile& profile) const {
    Words words;
    addOneRm(words, profile);
    if (m_sources) // a page of many days
        words.headline = tr("%1, on %2", "an estimate, its day")
                             .arg(words.headline, dateText(profile.session.date));
    addLine(words, profile);
    return words;
}

void FiguresPanel::addOneRm(Words& words, const answers::Profile& profile) const {
    const answers::MaxPanel panel = answers::maxPanel(profile, m_sources);
    const auto joined = [this](const std::vector<slopebook::Words>& clauses) {
        return said(clauses, m_unit).join(QStringLiteral("  \u00b7  "));
    };
    words.headline = said(panel.headline, m_unit);
    words.detail = profile.oneRm ? joined(panel.detail) : noAnswerText(profile.oneRm.why(), m_unit);
    words.brief = joined(panel.brief);
    words.muted = panel.muted;
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
    QStringList sources;
    if (const auto bent = m_sources && profile.oneRm && profile.oneRm->toPlan
                              ? answers::bendWords(profile)
                              : slopebook::Words();
        !bent.empty())
        notes << said(asSentence(bent), m_unit);
    if (m_sources && profile.oneRm && profile.oneRm->toPlan)
        for (const slopebook::Words& each :
             {answers::dayNoiseNote(profile.beyond.day).words,
              answers::tiltWords(profile.beyond.day), answers::bendSource(profile.beyond.bend),
              answers::citationOf(answers::asCited(profile.beyond.day))})
            if (!each.empty())
                sources << said(asSentence(each), m_unit);
    if (m_sources && profile.mvt)
        if (const auto behind = answers::citationOf(answers::asCited(*profile.mvt));
            !behind.empty())
            sources << said(asSentence(behind), m_unit);
    words.notes = notes.join(QLatin1Char(' '));
    words.sources = sources.join(QLatin1Char(' '));
}

} // namespace slopebook::ui

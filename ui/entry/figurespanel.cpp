// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/entry/figurespanel.h"

#include "ui/shell/cautions.h"
#include "ui/shell/format.h"
#include "ui/wording.h"

#include <QLabel>
#include <QVBoxLayout>

namespace slopebook::ui {

FiguresPanel::FiguresPanel(QWidget* parent)
    : QWidget(parent), m_headline(new QLabel), m_detail(new QLabel), m_line(new QLabel),
      m_notes(new QLabel) {
    m_headline->setObjectName(QStringLiteral("oneRm"));
    m_headline->setAccessibleName(tr("Estimated 1RM"));
    m_detail->setAccessibleName(tr("About the estimate"));
    m_line->setAccessibleName(tr("Figures of the line"));
    m_notes->setAccessibleName(tr("Notes on the line"));
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
    auto* caution = new CautionLabel;
    caution->setForegroundRole(QPalette::PlaceholderText);
    layout->addWidget(caution);
    clear();
}

void FiguresPanel::say(const QString& headline, const QString& detail, bool muted) {
    m_headline->setText(headline);
    m_headline->setForegroundRole(muted ? QPalette::PlaceholderText : QPalette::WindowText);
    m_detail->setText(detail);
    fit();
}

void FiguresPanel::fit() {
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
    m_line->clear();
    m_notes->clear();
    say(tr("Estimated 1RM: no sets yet"), QString(), true);
}

QString FiguresPanel::sentence() const {
    return m_headline->text() + QStringLiteral(". ") + m_line->text();
}

void FiguresPanel::showProfile(const std::optional<LiftSession>& session,
                               const std::optional<Answer<answers::Profile>>& profile) {
    clear();
    if (!session || !profile)
        return;
    if (!*profile) {
        say(tr("Estimated 1RM: no figure"), noAnswerText(profile->why()), true);
        return;
    }
    showOneRm(**profile);
    showLine(**profile);
}

void FiguresPanel::showOneRm(const answers::Profile& profile) {
    QStringList detail;
    if (!profile.oneRm) {
        say(tr("Estimated 1RM: no figure"), noAnswerText(profile.oneRm.why()), true);
        return;
    }
    const answers::OneRm& oneRm = *profile.oneRm;
    const QString level = levelText(profile.level);
    const QString estimate = number(oneRm.estimate, 1);
    const QString interval = oneRm.interval ? rangeText(*oneRm.interval, 1) : QString();
    QString headline;
    if (interval.isEmpty())
        headline = tr("Estimated 1RM %1 kg, no interval").arg(estimate);
    else if (oneRm.extrapolatedVeryFar())
        headline = tr("Estimated 1RM %1 kg (%2), middle %3").arg(interval, level, estimate);
    else
        headline = tr("Estimated 1RM %1 kg (%2: %3)").arg(estimate, level, interval);
    if (!profile.line.hasInference())
        detail << tr("the interval needs a third load");
    detail << tr("reach %1").arg(number(oneRm.reach, 2)) +
                  (oneRm.extrapolatedVeryFar() ? tr(", extrapolated very far")
                   : oneRm.extrapolatedFar()   ? tr(", extrapolated far")
                                               : QString());
    if (profile.mvt)
        detail << tr("MVT %1").arg(mvtText(*profile.mvt));
    if (oneRm.withMvt)
        detail << tr("with the MVT's own spread %1").arg(rangeText(*oneRm.withMvt, 1));
    if (profile.session.measuredOneRm)
        detail << tr("measured 1RM %1 kg").arg(massText(*profile.session.measuredOneRm));
    say(headline, detail.join(QStringLiteral("  \u00b7  ")), oneRm.extrapolatedVeryFar());
}

void FiguresPanel::showLine(const answers::Profile& profile) {
    const stats::Line& line = profile.line;
    QStringList figures{
        tr("V0 %1 m/s").arg(number(line.intercept, 2)),
        tr("slope %1 m/s per kg").arg(signedNumber(line.slope, 4)),
        line.hasInference() ? tr("R\u00b2 %1").arg(number(line.r2, 3)) : QString(),
        line.n == 1 ? tr("1 point") : tr("%1 points").arg(line.n),
        tr("%1 to %2 kg").arg(loadNumber(profile.lightest), loadNumber(profile.heaviest))};
    figures.removeAll(QString());
    m_line->setText(figures.join(QStringLiteral("  \u00b7  ")));
    QStringList notes;
    for (const answers::Note& note : profile.notes) {
        using Kind = answers::Note::Kind;
        const bool saidAbove = note.kind == Kind::TwoPointLine ||
                               note.kind == Kind::ExtrapolatedFar ||
                               note.kind == Kind::ExtrapolatedVeryFar;
        if (!saidAbove)
            notes << noteText(note);
    }
    m_notes->setText(notes.join(QLatin1Char(' ')));
    fit();
}

} // namespace slopebook::ui

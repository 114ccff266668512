// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/records/liftdialog.h"

#include "core/answers/published.h"
#include "ui/edits/valueedits.h"
#include "ui/parts/roomfor.h"
#include "ui/words/format.h"

#include <QCheckBox>
#include <QComboBox>
#include <QCompleter>
#include <QLineEdit>
#include <QLocale>

namespace slopebook::ui {

namespace {
QString optionalFigure(const std::optional<double>& value) {
    return value ? QLocale().toString(*value, 'g', 6) : QString();
}

QStringList publishedNames() {
    QStringList names;
    for (const answers::PublishedLift& lift : answers::publishedLifts())
        if (lift.lift != "*" && !names.contains(text(lift.lift)))
            names << text(lift.lift);
    return names;
}
} // namespace

LiftDialog::LiftDialog(Logbook& logbook, std::optional<LiftId> id, QWidget* parent)
    : FormDialog(logbook, id ? tr("Change lift") : tr("Add lift"), parent), m_id(id) {
    if (id)
        m_lift = stored(logbook.log(), *id);
    build();
    connectFields();
    offerPublished();
    fitToBallistic();
}

void LiftDialog::build() {
    m_name = addLine(tr("&Name"), text(m_lift.name));
    auto* completer = new QCompleter(publishedNames(), m_name);
    completer->setCaseSensitivity(Qt::CaseInsensitive);
    completer->setFilterMode(Qt::MatchContains);
    m_name->setCompleter(completer);

    m_kind = new QComboBox;
    for (const auto kind : {VelocityKind::Mean, VelocityKind::Propulsive, VelocityKind::Peak})
        m_kind->addItem(kindText(kind), static_cast<int>(kind));
    m_kind->setCurrentIndex(m_kind->findData(static_cast<int>(m_lift.kind)));
    addField(tr("&Measured as"), m_kind,
             m_id ? tr("Changing this relabels the speeds that the log already holds.")
                  : QString());

    m_rule = new QComboBox;
    m_rule->addItem(tr("the fastest rep of the set"), static_cast<int>(PointRule::Fastest));
    m_rule->addItem(tr("the mean of the set's reps"), static_cast<int>(PointRule::Mean));
    m_rule->setCurrentIndex(m_rule->findData(static_cast<int>(m_lift.rule)));
    addField(tr("A set's &point"), m_rule);

    m_ballistic = new QCheckBox(tr("thrown or jumped: a line, and no 1RM"));
    m_ballistic->setChecked(m_lift.ballistic);
    addField(tr("&Ballistic"), m_ballistic);
    m_movesBody = new QCheckBox(tr("its load is what is added and the body's own mass"));
    m_movesBody->setObjectName(QStringLiteral("movesBody"));
    m_movesBody->setChecked(m_lift.movesBody);
    addField(tr("Mo&ves the body"), m_movesBody);

    m_mvt = addLine(tr("MV&T, m/s"), m_lift.mvt ? optionalFigure(m_lift.mvt->value) : QString());
    m_mvtSd = addLine(tr("Its S&D, m/s"), m_lift.mvt ? optionalFigure(m_lift.mvt->sd) : QString());
    m_mvtSource =
        addLine(tr("Its so&urce"), m_lift.mvt ? text(m_lift.mvt->source) : QString(),
                tr("The minimal-velocity threshold: the speed at which the 1RM is lifted. "
                   "An athlete's own true maxima come before it."));

    m_smallestVelocity =
        addLine(tr("Smallest change, m/&s"), optionalFigure(m_lift.smallestVelocity));
    m_smallestOneRm = addLine(tr("Smallest change, 1&RM, %1").arg(unit()), smallestOneRmShown(),
                              tr("The smallest changes that matter to you, of a speed and of the "
                                 "1RM. Empty: published defaults, named as such."));
    m_note = addLine(tr("N&ote"), text(m_lift.note));
    finish();
}

void LiftDialog::connectFields() {
    connect(m_name, &QLineEdit::textChanged, this, &LiftDialog::offerPublished);
    connect(m_kind, &QComboBox::currentIndexChanged, this, &LiftDialog::offerPublished);
    connect(m_ballistic, &QCheckBox::toggled, this, &LiftDialog::fitToBallistic);
    for (QLineEdit* field : {m_mvt, m_mvtSd, m_mvtSource})
        connect(field, &QLineEdit::textEdited, this, [this] { m_mvtIsOffered = false; });
}

VelocityKind LiftDialog::kind() const {
    return static_cast<VelocityKind>(m_kind->currentData().toInt());
}

void LiftDialog::offerPublished() {
    const auto row = answers::published(utf8(m_name->text().trimmed()), kind());
    m_published = row ? row->mvt : std::nullopt;
    setHint(*m_smallestVelocity, row && row->smallestVelocity
                                     ? tr("published: %1").arg(number(*row->smallestVelocity, 3))
                                     : QString());
    setHint(*m_smallestOneRm,
            row && row->smallestOneRmPercent
                ? tr("published: %1 % of the estimate").arg(number(*row->smallestOneRmPercent, 1))
                : QString());
    const bool untouched = m_mvt->text().isEmpty() || m_mvtIsOffered;
    if (m_id || !untouched)
        return;
    m_mvt->setText(m_published ? optionalFigure(m_published->value) : QString());
    m_mvtSd->setText(m_published ? optionalFigure(m_published->sd) : QString());
    m_mvtSource->setText(m_published ? text(m_published->source) : QString());
    m_mvtIsOffered = m_published.has_value();
}

void LiftDialog::fitToBallistic() {
    for (QLineEdit* field : {m_mvt, m_mvtSd, m_mvtSource, m_smallestOneRm})
        field->setEnabled(!m_ballistic->isChecked());
}

std::optional<Mvt> LiftDialog::typedMvt() const {
    const auto value =
        decimal(m_mvt, 0, 2, tr("Expected a speed between 0 and 2 m/s, such as 0.17."));
    if (!value)
        return std::nullopt;
    const Mvt typed{
        .value = *value,
        .sd = decimal(m_mvtSd, 0, 1, tr("Expected a spread in m/s, such as 0.03, or nothing.")),
        .origin = Mvt::Origin::Coach,
        .source = utf8(m_mvtSource->text().trimmed())};
    const auto same = [&](const std::optional<Mvt>& known) {
        return known && known->value == typed.value && known->sd == typed.sd &&
               known->source == typed.source;
    };
    if (same(m_published))
        return m_published;
    if (same(m_lift.mvt))
        return m_lift.mvt;
    return typed;
}

QString LiftDialog::smallestOneRmShown() const {
    if (!m_lift.smallestOneRm)
        return {};
    return optionalFigure(inUnit(*m_lift.smallestOneRm, logbook().loadUnit()));
}

std::optional<double> LiftDialog::typedSmallestOneRm() const {
    // What was only shown rounded stays as it was.
    if (m_smallestOneRm->text() == smallestOneRmShown())
        return m_lift.smallestOneRm;
    const auto typed = decimal(m_smallestOneRm, 0, inUnit(100, logbook().loadUnit()),
                               tr("Expected a change in %1, such as 2.5, or nothing.").arg(unit()));
    return typed ? std::optional(*typed / inUnit(1, logbook().loadUnit())) : std::nullopt;
}

void LiftDialog::save() {
    Lift lift = m_lift;
    lift.name = required(m_name, tr("Expected a name."));
    lift.kind = kind();
    lift.rule = static_cast<PointRule>(m_rule->currentData().toInt());
    lift.ballistic = m_ballistic->isChecked();
    lift.movesBody = m_movesBody->isChecked();
    lift.mvt = lift.ballistic ? std::nullopt : typedMvt();
    lift.smallestVelocity = decimal(m_smallestVelocity, 0, 1,
                                    tr("Expected a change in m/s, such as 0.05, or nothing."));
    lift.smallestOneRm = lift.ballistic ? std::nullopt : typedSmallestOneRm();
    lift.note = utf8(m_note->text().trimmed());
    if (m_id)
        logbook().changeLift(*m_id, lift);
    else
        m_id = logbook().addLift(lift);
}

} // namespace slopebook::ui

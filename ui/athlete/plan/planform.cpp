// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/plan/planform.h"

#include "core/answers/share.h"
#include "core/model/errors.h"
#include "core/model/phrases/questions.h"
#include "ui/parts/roomfor.h"
#include "ui/records/equipmentdialog.h"
#include "ui/typed/setline.h"
#include "ui/words/format.h"
#include "ui/words/planwords.h"
#include "ui/words/said.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QPushButton>
#include <QSpinBox>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

namespace {

enum Aim { Everything, PercentAim, SpeedAim };

std::optional<double> readField(const QLineEdit* field, const QString& what) {
    const QString typed = field->text().trimmed();
    if (typed.isEmpty())
        return std::nullopt;
    const auto value = readDecimal(std::u16string_view(
        reinterpret_cast<const char16_t*>(typed.utf16()), static_cast<std::size_t>(typed.size())));
    if (!value)
        throw BadInput(questions::say("\"%1\"", utf8(typed)),
                       asIs(utf8(PlanForm::tr("a number for %1").arg(what))));
    return value;
}

} // namespace

void PlanForm::setUnit(LoadUnit unit) {
    m_unit->setCurrentIndex(unit == LoadUnit::Pounds ? 1 : 0);
}

PlanForm::PlanForm(QWidget* parent)
    : QWidget(parent), m_session(new QComboBox), m_equipment(new QComboBox), m_bar(new QComboBox),
      m_new(new QPushButton(tr("Ne&w…"))), m_change(new QPushButton(tr("Cha&nge…"))),
      m_remove(new QPushButton(tr("&Remove"))), m_ceiling(new QLineEdit), m_aim(new QComboBox),
      m_from(new QLineEdit), m_to(new QLineEdit), m_side(new QComboBox), m_loss(new QLineEdit),
      m_sets(new QSpinBox), m_reps(new QSpinBox), m_unit(new QComboBox),
      m_restricted(new QCheckBox(tr("Restricted-flow window"))),
      m_history(new QCheckBox(tr("B&orrow from earlier sessions"))), m_aimUnit(new QLabel),
      m_fieldsHold(PercentAim) {
    build();
    connectFields();
    fitFields();
}

void PlanForm::build() {
    m_aim->addItems({tr("Every load"), tr("Share of the 1RM"), tr("Speed of the fastest rep")});
    m_aim->setCurrentIndex(PercentAim);
    m_from->setText(u"70"_s);
    m_from->setAccessibleName(tr("Aim, from"));
    m_to->setAccessibleName(tr("Aim, to"));
    setHint(*m_to, tr("to"));
    m_to->setToolTip(tr("With a second figure: a window from one to the other"));
    m_side->addItem(tr("nearest"), static_cast<int>(answers::Side::Nearest));
    m_side->addItem(tr("at most"), static_cast<int>(answers::Side::Below));
    m_side->addItem(tr("at least"), static_cast<int>(answers::Side::Above));
    m_loss->setText(u"20"_s);
    setHint(*m_loss, tr("none"));
    setHint(*m_ceiling, tr("the set's own"));
    m_sets->setRange(1, 20);
    m_sets->setValue(3);
    m_reps->setRange(0, 50);
    m_reps->setSpecialValueText(tr("by speed"));
    m_unit->addItem(unitName(LoadUnit::Kilograms));
    m_unit->addItem(unitName(LoadUnit::Pounds));

    nameFields();

    auto* form = new QFormLayout(this);
    form->setVerticalSpacing(4); // all rows stand in a window of 720 at a scale of 1.5
    form->addRow(tr("Sess&ion of the line"), m_session);
    form->addRow(tr("Eq&uipment"), m_equipment);
    auto* buttons = new QHBoxLayout;
    for (QPushButton* button : {m_new, m_change, m_remove})
        buttons->addWidget(button);
    form->addRow(QString(), buttons);
    form->addRow(tr("Bar"), m_bar);
    form->addRow(tr("Ceiling toda&y"), m_ceiling);
    form->addRow(tr("Ai&m at"), m_aim);
    auto* window = new QHBoxLayout;
    window->addWidget(m_from);
    window->addWidget(m_to);
    window->addWidget(m_aimUnit);
    form->addRow(tr("From, to"), window);
    form->addRow(tr("Load"), m_side);
    form->addRow(tr("Sto&p after losing (%)"), m_loss);
    form->addRow(tr("Sets"), m_sets);
    form->addRow(tr("Reps"), m_reps);
    form->addRow(tr("Show loads in"), m_unit);
    form->addRow(m_restricted);
    form->addRow(m_history);
    form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    form->setRowWrapPolicy(QFormLayout::WrapLongRows); // fields stay in sight in a narrow window
    for (QComboBox* box : {m_session, m_equipment, m_bar, m_aim}) {
        box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        box->setMinimumContentsLength(14);
    }
}

void PlanForm::nameFields() {
    m_session->setAccessibleName(tr("Session of the line"));
    m_equipment->setAccessibleName(tr("Equipment"));
    m_bar->setAccessibleName(tr("Bar"));
    m_ceiling->setAccessibleName(tr("Ceiling today"));
    m_aim->setAccessibleName(tr("Aim at"));
    m_side->setAccessibleName(tr("Load: which side of the aim"));
    m_loss->setAccessibleName(tr("Stop after losing, percent"));
    m_sets->setAccessibleName(tr("Sets"));
    m_reps->setAccessibleName(tr("Reps"));
    m_unit->setAccessibleName(tr("Show loads in"));
}

void PlanForm::connectFields() {
    connect(m_equipment, &QComboBox::currentIndexChanged, this, &PlanForm::listBars);
    connect(m_aim, &QComboBox::currentIndexChanged, this, &PlanForm::putOverAim);
    connect(m_bar, &QComboBox::currentIndexChanged, this,
            [this] { m_barOf[m_lift] = m_bar->currentText(); });
    for (QComboBox* box : {m_session, m_equipment, m_bar, m_aim, m_side, m_unit})
        connect(box, &QComboBox::currentIndexChanged, this, [this] {
            fitFields();
            Q_EMIT changed();
        });
    for (QLineEdit* field : {m_ceiling, m_from, m_to, m_loss})
        connect(field, &QLineEdit::textEdited, this, &PlanForm::changed);
    for (QSpinBox* box : {m_sets, m_reps})
        connect(box, &QSpinBox::valueChanged, this, &PlanForm::changed);
    for (QCheckBox* box : {m_restricted, m_history})
        connect(box, &QCheckBox::toggled, this, &PlanForm::changed);
    connect(m_new, &QPushButton::clicked, this, &PlanForm::newEquipmentWanted);
    connect(m_change, &QPushButton::clicked, this, [this] {
        if (const auto id = equipmentId())
            Q_EMIT changeEquipmentWanted(*id);
    });
    connect(m_remove, &QPushButton::clicked, this, [this] {
        if (const auto id = equipmentId())
            Q_EMIT removeEquipmentWanted(*id);
    });
}

// 70 is a share; as a speed it would be nonsense. Every load asks for neither and changes nothing.
void PlanForm::putOverAim() {
    const int aim = m_aim->currentIndex();
    if (aim == Everything || aim == m_fieldsHold)
        return;
    m_fieldsHold = aim;
    for (QLineEdit* field : {m_from, m_to})
        field->setText(putOver(field->text(), aim));
}

QString PlanForm::putOver(const QString& typed, int aim) const {
    const std::u16string words = typed.trimmed().toStdU16String();
    const auto value = readDecimal(words);
    if (!value || !m_line)
        return {};
    const auto other = aim == SpeedAim ? answers::speedAtShare(*m_line, *value)
                                       : answers::shareAtSpeed(*m_line, *value);
    if (!other || *other <= 0)
        return {};
    return QLocale().toString(*other, 'f', aim == SpeedAim ? 2 : 0);
}

void PlanForm::fitFields() {
    const int aim = m_aim->currentIndex();
    for (QWidget* field : std::initializer_list<QWidget*>{m_from, m_to, m_side})
        field->setEnabled(aim != Everything);
    m_aimUnit->setText(aim == SpeedAim ? tr("m/s") : u"%"_s);
    m_change->setEnabled(equipmentId().has_value());
    m_remove->setEnabled(equipmentId().has_value());
}

std::optional<EquipmentId> PlanForm::equipmentId() const {
    if (m_equipment->currentIndex() < 0)
        return std::nullopt;
    return EquipmentId{m_equipment->currentData().toLongLong()};
}

void PlanForm::setSessions(const std::vector<LiftSession>& sessions) {
    const QSignalBlocker quiet(m_session);
    const QVariant before = m_session->currentData();
    m_session->clear();
    for (auto session = sessions.rbegin(); session != sessions.rend(); ++session)
        m_session->addItem(sessionText(*session), qlonglong{raw(session->session)});
    const int at = before.isValid() ? m_session->findData(before) : -1;
    m_session->setCurrentIndex(at >= 0 ? at : (m_session->count() > 0 ? 0 : -1));
}

void PlanForm::setEquipment(const std::vector<Stored<EquipmentId, Equipment>>& equipment) {
    {
        const QSignalBlocker quiet(m_equipment);
        const QVariant before = m_equipment->currentData();
        m_equipment->clear();
        for (const auto& each : equipment)
            m_equipment->addItem(text(each.value.name), qlonglong{raw(each.id)});
        const int at = before.isValid() ? m_equipment->findData(before) : -1;
        m_equipment->setCurrentIndex(at >= 0 ? at : (m_equipment->count() > 0 ? 0 : -1));
        m_known = equipment;
    }
    listBars();
    fitFields();
}

void PlanForm::setLift(std::string lift, std::vector<std::string> lifts) {
    m_lift = std::move(lift);
    m_lifts = std::move(lifts);
}

QString PlanForm::barName(const Bar& bar, const answers::BarFit& fit) const {
    const QString name = said(answers::barWords(bar));
    if (fit.fit != answers::BarFit::Fit::OfOthers)
        return name;
    return fit.lift.empty() ? tr("%1 (for other lifts)").arg(name)
                            : tr("%1 (for %2)").arg(name, text(fit.lift));
}

// The bar that was last chosen for the lift stays chosen where the set has one of that name; else
// the first that goes with the lift. The plates of a load differ from bar to bar, so a plan is for
// one of them.
void PlanForm::listBars() {
    const QSignalBlocker quiet(m_bar);
    m_bar->clear();
    const auto id = equipmentId();
    const auto set = std::ranges::find_if(m_known, [&](const auto& each) { return each.id == id; });
    if (set != m_known.end())
        for (const answers::BarFit& fit : answers::barsFor(set->value, m_lift, m_lifts))
            m_bar->addItem(barName(set->value.bars[fit.bar], fit), static_cast<int>(fit.bar));
    if (set != m_known.end() && (m_bar->count() != 1 || !set->value.fixed.empty()))
        m_bar->addItem(m_bar->count() > 0 ? tr("any, or none") : tr("none"));
    const auto before = m_barOf.find(m_lift);
    m_bar->setCurrentIndex(
        std::max(0, before == m_barOf.end() ? 0 : m_bar->findText(before->second)));
    m_bar->setEnabled(m_bar->count() > 1);
}

void PlanForm::chooseEquipment(EquipmentId id) {
    m_equipment->setCurrentIndex(m_equipment->findData(qlonglong{raw(id)}));
}

PlanChoice PlanForm::choice() const {
    PlanChoice choice;
    if (m_session->currentIndex() >= 0)
        choice.session = SessionId{m_session->currentData().toLongLong()};
    choice.equipment = equipmentId();
    if (m_bar->currentData().isValid())
        choice.bar = static_cast<std::size_t>(m_bar->currentData().toInt());
    if (!m_ceiling->text().trimmed().isEmpty())
        choice.ceiling = readMassWithUnit(m_ceiling->text(), tr("the ceiling")).first;
    if (m_aim->currentIndex() != Everything)
        if (const auto from = readField(m_from, tr("the aim")))
            choice.target = answers::Target{.kind = m_aim->currentIndex() == SpeedAim
                                                        ? answers::Target::Kind::Velocity
                                                        : answers::Target::Kind::Percent,
                                            .from = *from,
                                            .to = readField(m_to, tr("the aim")).value_or(*from)};
    choice.side = static_cast<answers::Side>(m_side->currentData().toInt());
    choice.lossPercent = readField(m_loss, tr("the velocity loss"));
    choice.restrictedFlow = m_restricted->isChecked();
    choice.history = m_history->isChecked();
    choice.unit = m_unit->currentIndex() == 1 ? LoadUnit::Pounds : LoadUnit::Kilograms;
    choice.sets = m_sets->value();
    choice.reps = m_reps->value();
    return choice;
}

} // namespace slopebook::ui

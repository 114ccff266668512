// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/floor/station/stationdialog.h"

#include "ui/edits/valueedits.h"
#include "ui/parts/roomfor.h"
#include "ui/typed/pieces.h"
#include "ui/typed/setline.h"
#include "ui/words/format.h"
#include "ui/words/readable.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QListWidget>
#include <QSpinBox>

#include <algorithm>

namespace slopebook::ui {

namespace {
constexpr int mostSets = 50;
constexpr int testsHeight = 110; // px
} // namespace

StationDialog::StationDialog(Logbook& logbook, std::optional<StationId> id, QWidget* parent)
    : FormDialog(logbook, id ? tr("Change station") : tr("New station"), parent), m_id(id) {
    const Station station = id ? stored(logbook.log(), *id) : Station{};
    m_name = addLine(tr("&Name"), text(station.name));
    setHint(*m_name, tr("Rack 1"));
    buildWhat(station);
    buildConditions(station.conditions);
    buildPlan(station);
    m_note = addLine(tr("N&ote"), text(station.note));
    finish();
    fitWhat();
}

void StationDialog::buildWhat(const Station& station) {
    m_lift = new QComboBox;
    m_lift->setObjectName(QStringLiteral("stationLift"));
    for (const auto& lift : logbook().log().lifts())
        m_lift->addItem(text(lift.value.name), qint64(raw(lift.id)));
    m_lift->addItem(tr("Tests:"), QVariant());
    m_lift->setCurrentIndex(station.lift            ? m_lift->findData(qint64(raw(*station.lift)))
                            : station.tests.empty() ? 0
                                                    : m_lift->count() - 1);
    addField(tr("&What is done"), m_lift);
    m_tests = new QListWidget;
    m_tests->setObjectName(QStringLiteral("stationTests"));
    m_tests->setMaximumHeight(testsHeight);
    m_offered = questions::offeredTests(logbook().log());
    for (const questions::OfferedTest& offered : m_offered) {
        auto* item = new QListWidgetItem(testText(offered.kind.name), m_tests);
        const bool here =
            offered.id && std::ranges::find(station.tests, *offered.id) != station.tests.end();
        item->setCheckState(here ? Qt::Checked : Qt::Unchecked);
    }
    m_tests->setCurrentRow(0);
    addField(tr("&Tests"), m_tests, tr("Space takes one or leaves it out."));
    connect(m_lift, &QComboBox::currentIndexChanged, this, &StationDialog::fitWhat);
}

void StationDialog::buildConditions(const Conditions& conditions) {
    m_device = new QComboBox;
    m_device->setObjectName(QStringLiteral("stationDevice"));
    m_device->addItem(tr("not noted"));
    for (const auto& device : logbook().log().devices())
        m_device->addItem(text(device.value.name), qint64(raw(device.id)));
    if (conditions.device)
        m_device->setCurrentIndex(std::max(0, m_device->findData(qint64(raw(*conditions.device)))));
    addField(tr("&Device"), m_device);
    m_surface = addLine(tr("S&urface"), text(conditions.surface));
    m_footwear = addLine(tr("&Footwear"), text(conditions.footwear));
    m_place = addLine(tr("&Place"), text(conditions.place));
    m_technique = addLine(tr("Techni&que"), text(conditions.technique));
    m_notComparable =
        addLine(tr("Not compara&ble, because"), text(conditions.notComparable),
                tr("With a reason here, what is measured at it stands beside no other day."));
}

void StationDialog::buildPlan(const Station& station) {
    QStringList loads;
    for (const Mass load : station.ladder)
        loads << massText(load, logbook().loadUnit());
    m_ladder = addLine(tr("&Ladder, %1").arg(unit()), loads.join(QLatin1Char(' ')),
                       tr("Loads from light to heavy; empty: each athlete's own of last time."));
    m_sets = new QSpinBox;
    m_sets->setObjectName(QStringLiteral("stationSets"));
    m_sets->setRange(0, mostSets);
    m_sets->setSpecialValueText(tr("as many as the ladder or the test has"));
    m_sets->setValue(station.sets);
    addField(tr("&Sets or attempts"), m_sets);
    m_rotates = new QCheckBox(tr("a set that is written makes it the next one's turn"));
    m_rotates->setChecked(station.rotates);
    addField(tr("Whose turn &is it"), m_rotates);
}

void StationDialog::fitWhat() {
    const bool lift = m_lift->currentData().isValid();
    m_tests->setEnabled(!lift);
    m_ladder->setEnabled(lift);
}

std::vector<Mass> StationDialog::ladder() const {
    std::vector<Mass> loads;
    const std::u16string typed = m_ladder->text().toStdU16String();
    for (const Piece& piece : pieces(typed)) {
        const auto load = readLoad(piece.text, massUnit(logbook().loadUnit()));
        if (!std::holds_alternative<Mass>(load) ||
            (!loads.empty() && std::get<Mass>(load) <= loads.back()))
            throw FieldProblem{m_ladder, tr("Expected loads from light to heavy with blanks "
                                            "between them, such as 40 60 80.")};
        loads.push_back(std::get<Mass>(load));
    }
    return loads;
}

// A built-in test comes into the log with the first station that takes it.
std::vector<TestKindId> StationDialog::tests() {
    std::vector<TestKindId> chosen;
    for (int row = 0; row < m_tests->count(); ++row) {
        if (m_tests->item(row)->checkState() != Qt::Checked)
            continue;
        questions::OfferedTest& offered = m_offered[static_cast<std::size_t>(row)];
        if (!offered.id)
            offered.id = logbook().addTestKind(offered.kind);
        chosen.push_back(*offered.id);
    }
    if (chosen.empty())
        throw FieldProblem{m_tests, tr("Expected a test, or a lift above.")};
    return chosen;
}

void StationDialog::save() {
    Station station;
    station.name = required(m_name, tr("Expected a name, such as Rack 1."));
    const QVariant device = m_device->currentData();
    station.conditions.device =
        device.isValid() ? std::optional(DeviceId{device.toLongLong()}) : std::nullopt;
    station.conditions.surface = utf8(m_surface->text().trimmed());
    station.conditions.footwear = utf8(m_footwear->text().trimmed());
    station.conditions.place = utf8(m_place->text().trimmed());
    station.conditions.technique = utf8(m_technique->text().trimmed());
    station.conditions.notComparable = utf8(m_notComparable->text().trimmed());
    station.sets = m_sets->value();
    station.rotates = m_rotates->isChecked();
    station.note = utf8(m_note->text().trimmed());
    const QVariant lift = m_lift->currentData();
    if (lift.isValid()) {
        station.lift = LiftId{lift.toLongLong()};
        station.ladder = ladder();
    } else {
        station.tests = tests();
    }
    if (m_id)
        logbook().changeStation(*m_id, station);
    else
        m_id = logbook().addStation(station);
}

} // namespace slopebook::ui

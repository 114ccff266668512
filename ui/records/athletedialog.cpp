// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/records/athletedialog.h"

#include "core/model/nearnames.h"
#include "ui/edits/valueedits.h"
#include "ui/words/format.h"

#include <QLineEdit>

namespace slopebook::ui {

AthleteDialog::AthleteDialog(Logbook& logbook, std::optional<AthleteId> id, QWidget* parent)
    : FormDialog(logbook, id ? tr("Change athlete") : tr("Add athlete"), parent), m_id(id) {
    const Athlete athlete = id ? stored(logbook.log(), *id) : Athlete{};
    m_name = addLine(tr("&Name"), text(athlete.name));
    m_note = addLine(tr("N&ote"), text(athlete.note));
    finish();
}

// Somebody new who is nearly another: said once, and OK a second time means it.
void AthleteDialog::askNear(const std::string& name) {
    if (name == m_meant)
        return;
    NearNames others;
    for (const auto& stored : logbook().log().athletes())
        if (stored.id != m_id)
            others.add(stored.value.name);
    const auto near = others.nearTo(name);
    if (near.empty() || (m_id && stored(logbook().log(), *m_id).name == name))
        return;
    m_meant = name;
    throw FieldProblem{m_name,
                       tr("The log has %1: is that the same athlete? If not, OK again takes "
                          "the name as it stands.")
                           .arg(text(near.front()))};
}

void AthleteDialog::save() {
    const Athlete athlete{.name = required(m_name, tr("Expected a name.")),
                          .note = utf8(m_note->text().trimmed())};
    askNear(athlete.name);
    if (m_id)
        logbook().changeAthlete(*m_id, athlete);
    else
        m_id = logbook().addAthlete(athlete);
}

} // namespace slopebook::ui

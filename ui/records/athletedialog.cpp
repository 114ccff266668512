// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/records/athletedialog.h"

#include "ui/edits/valueedits.h"
#include "ui/shell/format.h"

#include <QLineEdit>

namespace slopebook::ui {

AthleteDialog::AthleteDialog(Logbook& logbook, std::optional<AthleteId> id, QWidget* parent)
    : FormDialog(logbook, id ? tr("Change athlete") : tr("Add athlete"), parent), m_id(id) {
    const Athlete athlete = id ? stored(logbook.log(), *id) : Athlete{};
    m_name = addLine(tr("&Name"), text(athlete.name));
    m_note = addLine(tr("N&ote"), text(athlete.note));
    finish();
}

void AthleteDialog::save() {
    const Athlete athlete{.name = required(m_name, tr("Expected a name.")),
                          .note = utf8(m_note->text().trimmed())};
    if (m_id)
        logbook().changeAthlete(*m_id, athlete);
    else
        m_id = logbook().addAthlete(athlete);
}

} // namespace slopebook::ui

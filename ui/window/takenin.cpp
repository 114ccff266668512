// SPDX-License-Identifier: GPL-3.0-or-later
// What is taken into the open log: tables from files and from the clipboard.
#include "core/log/hold.h"
#include "ui/floor/entry/entrypage.h"
#include "ui/importing/importtables.h"
#include "ui/importing/tabledialog.h"
#include "ui/window/workspace.h"
#include "ui/words/format.h"

namespace slopebook::ui {

void Workspace::importCsv(const QStringList& files, ImportMaps& maps) {
    guarded([&] {
        if (importTables(*m_logbook, files, maps, this))
            say(tr("Imported."));
    });
}

void Workspace::importText(const QString& pasted, ImportMaps& maps) {
    guarded([&] {
        log::passHold(m_logbook->log());
        ShownInWindow shown;
        if (athlete())
            shown.athlete = m_logbook->log().athlete(*athlete()).value.name;
        if (lift())
            shown.lift = m_logbook->log().lift(*lift()).value.name;
        const auto session = m_entry ? m_entry->session() : std::nullopt;
        shown.day =
            isoDate(session ? m_logbook->log().session(*session).head.value.date : m_clock.today());
        if (TableDialog(*m_logbook, {.file = {}, .text = utf8(pasted)}, maps, this, shown).exec() ==
            QDialog::Accepted)
            say(tr("Imported."));
    });
}

} // namespace slopebook::ui

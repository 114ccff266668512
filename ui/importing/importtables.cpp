// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/importing/importtables.h"

#include "core/log/hold.h"
#include "ui/importing/importcsv.h"
#include "ui/importing/tabledialog.h"
#include "ui/words/format.h"

namespace slopebook::ui {

bool importTables(Logbook& logbook, const QStringList& files, ImportMaps& maps, QWidget* parent) {
    log::passHold(logbook.log()); // an import writes by a connection of its own
    std::vector<std::filesystem::path> asIs, others;
    for (const QString& file : files) {
        const auto path = pathOf(file);
        (exchange::readsAsIs(path) ? asIs : others).push_back(path);
    }
    bool any =
        !asIs.empty() && ImportDialog(logbook, std::move(asIs), parent).exec() == QDialog::Accepted;
    for (const auto& file : others)
        any = TableDialog(logbook, {.file = file, .text = {}}, maps, parent).exec() ==
                  QDialog::Accepted ||
              any;
    return any;
}

} // namespace slopebook::ui

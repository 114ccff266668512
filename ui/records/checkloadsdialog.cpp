// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/records/checkloadsdialog.h"

#include "ui/edits/valueedits.h"
#include "ui/typed/setline.h"
#include "ui/words/format.h"

#include <QLineEdit>
#include <QRegularExpression>

#include <algorithm>

namespace slopebook::ui {

CheckLoadsDialog::CheckLoadsDialog(Logbook& logbook, AthleteId athlete, LiftId lift,
                                   QWidget* parent)
    : FormDialog(logbook, tr("Check loads"), parent), m_athlete(athlete), m_lift(lift) {
    QStringList loads;
    for (const Mass load : logbook.log().checkLoads(athlete, lift))
        loads << massText(load, logbook.loadUnit());
    m_loads = addLine(tr("&Loads, %1").arg(unit()), loads.join(QLatin1Char(' ')),
                      tr("The submaximal loads of %1's %2 to follow through the season, such as "
                         "40 60. Empty: none.")
                          .arg(text(stored(logbook.log(), athlete).name),
                               text(stored(logbook.log(), lift).name)));
    finish();
}

void CheckLoadsDialog::save() {
    std::vector<Mass> loads;
    const QStringList typed =
        m_loads->text().split(QRegularExpression(QStringLiteral("[\\s;]+")), Qt::SkipEmptyParts);
    for (const QString& one : typed) {
        const auto load = readLoad(one.toStdU16String(), massUnit(logbook().loadUnit()));
        if (!std::holds_alternative<Mass>(load))
            throw FieldProblem{m_loads,
                               tr("Found %1, expected loads in %2 with blanks between them, such "
                                  "as 40 60 72.5.")
                                   .arg(one, unit())};
        loads.push_back(std::get<Mass>(load));
    }
    std::sort(loads.begin(), loads.end());
    loads.erase(std::unique(loads.begin(), loads.end()), loads.end());
    logbook().setCheckLoads(m_athlete, m_lift, loads);
}

} // namespace slopebook::ui

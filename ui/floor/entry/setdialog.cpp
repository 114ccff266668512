// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/floor/entry/setdialog.h"

#include "ui/floor/entry/setwords.h"
#include "ui/parts/roomfor.h"
#include "ui/words/format.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLineEdit>

namespace slopebook::ui {

SetDialog::SetDialog(Logbook& logbook, SetId id, QWidget* parent)
    : FormDialog(logbook, tr("Set"), parent), m_placed(logbook.log().set(id)) {
    const Set& set = m_placed.set;
    setWindowTitle(
        tr("Set %1, %2").arg(m_placed.ordinal).arg(massWithUnit(set.load, logbook.loadUnit())));
    m_whole = addCounts(tr("&Whole set"), tr("counts"), set.excluded);
    for (std::size_t i = 0; i < set.reps.size(); ++i)
        m_reps.push_back(addCounts(i < 9 ? tr("Rep &%1").arg(i + 1) : tr("Rep %1").arg(i + 1),
                                   tr("%1 m/s counts").arg(speedText(set.reps[i].velocity)),
                                   set.reps[i].excluded));
    const bool lifted = set.outcome == Outcome::Lifted;
    if (!lifted)
        m_reason = addLine(tr("Not &lifted"), text(set.reason), tr("Why, where you want to say."));
    m_effort = addLine(tr("&RPE"), set.effort ? effortText(*set.effort) : QString());
    setHint(*m_effort, tr("1 to 10 in halves, or nothing"));
    m_maximum = new QCheckBox(lifted ? tr("a successful true maximum (1RM)")
                                     : tr("a true maximum (1RM) was tried"));
    m_maximum->setChecked(set.trueMaximum);
    addField(tr("&Maximum"), m_maximum);
    m_note = addLine(tr("N&ote"), text(set.note));
    finish();
    m_whole.reason->setFocus(); // most come to leave the set out: the reason, Enter
}

SetDialog::Counts SetDialog::addCounts(const QString& label, const QString& what,
                                       const std::string& excluded) {
    auto* row = new QWidget;
    auto* layout = new QHBoxLayout(row);
    layout->setContentsMargins(0, 0, 0, 0);
    const Counts counts{new QCheckBox(what), new QLineEdit(text(excluded))};
    layout->addWidget(counts.box);
    layout->addWidget(counts.reason, 1);
    counts.box->setChecked(excluded.empty());
    setHint(*counts.reason, tr("reason for leaving it out"));
    // A reason leaves it out; the box takes the reason back, or asks for one.
    connect(counts.reason, &QLineEdit::textEdited, counts.box,
            [counts](const QString& why) { counts.box->setChecked(why.trimmed().isEmpty()); });
    connect(counts.box, &QCheckBox::clicked, counts.reason, [counts](bool on) {
        if (on)
            counts.reason->clear();
        else
            counts.reason->setFocus();
    });
    addField(label, row);
    row->setFocusProxy(counts.box);
    QString name = label;
    name.remove(QLatin1Char('&'));
    counts.box->setAccessibleName(QStringLiteral("%1: %2").arg(name, what));
    counts.reason->setAccessibleName(tr("%1: reason").arg(name));
    return counts;
}

std::string SetDialog::reasonOf(const Counts& counts) {
    if (counts.box->isChecked())
        return {};
    return required(counts.reason, tr("Expected a reason: it stays with what is left out."));
}

void SetDialog::save() {
    Set set = m_placed.set;
    set.excluded = reasonOf(m_whole);
    for (std::size_t i = 0; i < m_reps.size(); ++i)
        set.reps[i].excluded = reasonOf(m_reps[i]);
    if (m_maximum->isChecked() && set.reps.size() > 1)
        throw FieldProblem{
            m_maximum,
            tr("Expected one rep in a true maximum; this set has %1.").arg(set.reps.size())};
    set.trueMaximum = m_maximum->isChecked();
    if (m_reason)
        set.reason = utf8(m_reason->text().trimmed());
    const QString felt = m_effort->text().trimmed();
    set.effort = readEffort(view(felt));
    if (!felt.isEmpty() && !set.effort)
        throw FieldProblem{m_effort,
                           tr("Expected an effort from 1 to 10 in halves, such as 8 or 8.5.")};
    set.note = utf8(m_note->text().trimmed());
    logbook().changeSet(m_placed.id, set);
}

} // namespace slopebook::ui

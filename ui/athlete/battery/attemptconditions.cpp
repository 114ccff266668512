// SPDX-License-Identifier: GPL-3.0-or-later
// Under what the chosen test was made: shown, kept field by field, taken over from the last time.
#include "core/model/names.h"
#include "ui/athlete/battery/attemptsview.h"
#include "ui/parts/fold.h"
#include "ui/words/format.h"

#include <QLineEdit>

namespace slopebook::ui {

void AttemptsView::showConditions() {
    Conditions shown;
    const questions::OfferedTest* chosen = offered();
    for (const BatterySession& one : m_sessions)
        if (session() == one.session && chosen && chosen->id)
            if (const TestAttempts* test = one.battery.test(*chosen->id))
                shown = test->conditions;
    m_surface->setText(text(shown.surface));
    m_device->clear();
    for (const auto& device : m_logbook.log().devices())
        if (shown.device == device.id)
            m_device->setText(text(device.value.name));
    m_footwear->setText(text(shown.footwear));
    m_technique->setText(text(shown.technique));
    m_place->setText(text(shown.place));
    m_notComparable->setText(text(shown.notComparable));
    nameConditions();
}

// The first of them in words: the rest is one press away.
void AttemptsView::nameConditions() {
    QStringList set;
    for (const QLineEdit* field :
         {m_notComparable, m_surface, m_device, m_footwear, m_technique, m_place})
        if (!field->text().isEmpty())
            set << field->text();
    constexpr qsizetype longest = 24; // letters: a longer one is counted, not cut
    const bool named = !set.isEmpty() && set.first().size() <= longest;
    const auto more = set.size() - (named ? 1 : 0);
    m_conditions->setText(set.isEmpty() ? tr("No conditions yet")
                          : !named      ? tr("Conditions: %1").arg(more)
                          : more == 0
                              ? tr("Conditions: %1").arg(set.first())
                              : tr("Conditions: %1, and %2 more").arg(set.first()).arg(more));
    m_conditions->setToolTip(set.join(QStringLiteral(" \u00b7 ")));
}

// Each field is kept alone, and only where the coach changed it; of the chosen test alone.
void AttemptsView::keepCondition(const QLineEdit* field) {
    guarded([&] {
        const questions::OfferedTest* test = offered();
        if (!session() || !test || !field->isModified())
            return;
        // Read first: a test that is used for the first time comes into the log, and what is in
        // the log is shown anew.
        const std::string typed = utf8(field->text().trimmed());
        const SessionId into = *session();
        const TestKindId kind = keyOf(TestKind(test->kind));
        Battery battery = m_logbook.log().battery(into);
        Conditions& conditions = conditionsOf(battery, kind);
        const Conditions before = conditions;
        if (field == m_device)
            conditions.device = deviceNamed(typed);
        else
            (field == m_surface     ? conditions.surface
             : field == m_footwear  ? conditions.footwear
             : field == m_place     ? conditions.place
             : field == m_technique ? conditions.technique
                                    : conditions.notComparable) = typed;
        if (conditions == before)
            return;
        keep(battery, tr("change conditions"));
    });
}

/// The device of that name, made where there is none; nothing without a name.
std::optional<DeviceId> AttemptsView::deviceNamed(const std::string& name) {
    if (name.empty())
        return std::nullopt;
    for (const auto& device : m_logbook.log().devices())
        if (nameKey(device.value.name) == nameKey(name))
            return device.id;
    return m_logbook.addDevice({.name = tidyName(name).value_or(name)});
}

// Those of the newest session are the likely ones, test by test; it is said, so that what differs
// is changed.
void AttemptsView::takeConditionsOver(SessionId into) {
    for (const BatterySession& one : m_sessions) {
        if (one.session == into)
            continue;
        Battery battery = m_logbook.log().battery(into);
        bool any = false;
        for (const TestAttempts& test : one.battery.tests)
            if (Conditions taken = test.conditions; taken != Conditions{}) {
                taken.notComparable.clear(); // was of that day
                conditionsOf(battery, test.kind) = taken;
                any = any || taken != Conditions{};
            }
        if (!any)
            continue;
        const QString day = dateText(one.date);
        keep(battery, tr("take the conditions over"));
        say(tr("The conditions of the tests are taken over from %1: change what differs.").arg(day),
            false);
        return;
    }
}

} // namespace slopebook::ui

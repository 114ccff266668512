// SPDX-License-Identifier: GPL-3.0-or-later
// The athlete's mass, where the work of the station is of it.
#include "core/model/errors.h"
#include "ui/floor/station/bodyfield.h"
#include "ui/floor/station/stationpage.h"
#include "ui/words/format.h"

#include <QLabel>

#include <algorithm>

namespace slopebook::ui {

bool StationPage::needsBody() const {
    return m_work && ((m_work->lift && m_work->lift->value.movesBody) ||
                      std::ranges::any_of(m_work->tests, [](const auto& test) {
                          return test.value.formula == TestFormula::PerBodyMass;
                      }));
}

// Where the set goes, the session's own; before it is begun what was typed here, or what another
// session of the day says.
std::optional<Mass> StationPage::bodyMass(std::size_t who) const {
    const questions::AtStation& at = m_here[who];
    if (at.session)
        return m_logbook.log().session(*at.session).head.value.bodyMass;
    if (const auto typed = m_bodies.find(at.athlete.id); typed != m_bodies.end())
        return typed->second;
    std::optional<Mass> known;
    for (const auto& session : m_logbook.log().sessions(at.athlete.id))
        if (session.value.date == m_day && session.value.bodyMass)
            known = session.value.bodyMass;
    return known;
}

void StationPage::showBody() {
    const bool needed = m_turn && needsBody();
    m_body->setVisible(needed);
    if (!needed)
        return;
    const AthleteId athlete = m_here[*m_turn].athlete.id;
    const auto known = bodyMass(*m_turn);
    if (!known && m_work->lift)
        m_reason->setText(
            (m_reason->text() + QLatin1Char(' ') +
             tr("No body mass of today yet: without it this lift's sets are on no line."))
                .trimmed());
    if (m_bodyOf == athlete && m_body->isTyped())
        return; // what is being typed stays
    m_bodyOf = athlete;
    std::optional<Mass> last;
    for (const auto& session : m_logbook.log().sessions(athlete))
        if (session.value.date < m_day && session.value.bodyMass)
            last = session.value.bodyMass;
    m_body->showMass(known, last, m_logbook.loadUnit());
}

void StationPage::takeBody() {
    if (!m_turn || !m_body->isTyped() || !m_bodyOf)
        return;
    guarded([this] {
        const auto mass = m_body->typed();
        const auto who = rowOf(*m_bodyOf);
        m_body->taken();
        if (!who)
            return;
        if (const auto session = m_here[*who].session) {
            SessionHead head = m_logbook.log().session(*session).head.value;
            head.bodyMass = mass;
            m_logbook.changeSession(*session, head);
        } else if (mass) {
            m_bodies[*m_bodyOf] = *mass;
            showTurn();
            say(tr("Goes in with the first set of %1.").arg(text(m_here[*who].athlete.value.name)),
                false);
        } else {
            m_bodies.erase(*m_bodyOf);
            showTurn();
        }
    });
}

} // namespace slopebook::ui

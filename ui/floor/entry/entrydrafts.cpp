// SPDX-License-Identifier: GPL-3.0-or-later
// What stands in the line and is not written yet: it waits for its athlete, and for the next
// window.
#include "ui/floor/entry/entryline.h"
#include "ui/floor/entry/entrypage.h"
#include "ui/words/format.h"

namespace slopebook::ui {

void EntryPage::changeDraft(std::optional<AthleteId> next) {
    if (m_athlete) {
        if (m_line->edit()->text().isEmpty())
            m_drafts.erase(*m_athlete);
        else
            m_drafts[*m_athlete] = m_line->edit()->text();
    }
    const auto draft = next ? m_drafts.find(*next) : m_drafts.end();
    m_line->edit()->setText(draft == m_drafts.end() ? QString() : draft->second);
}

QStringList EntryPage::unwritten() const {
    auto all = m_drafts;
    if (m_athlete)
        all[*m_athlete] = m_line->edit()->text();
    QStringList kept;
    for (const auto& [athlete, line] : all)
        if (!line.isEmpty())
            kept << QStringList{nameOf(m_logbook.log().file()), text(isoDate(m_clock.today())),
                                QString::number(raw(athlete)), line}
                        .join(QLatin1Char('\n'));
    return kept;
}

void EntryPage::takeUnwritten(const QStringList& kept) {
    for (const QString& one : kept) {
        const QStringList parts = one.split(QLatin1Char('\n'));
        if (parts.size() == 4 && parts[0] == nameOf(m_logbook.log().file()) &&
            parts[1] == text(isoDate(m_clock.today())))
            m_drafts[AthleteId{parts[2].toLongLong()}] = parts[3];
    }
    if (!m_athlete || !m_line->edit()->text().isEmpty())
        return;
    if (const auto own = m_drafts.find(*m_athlete); own != m_drafts.end())
        m_line->edit()->setText(own->second);
}

} // namespace slopebook::ui

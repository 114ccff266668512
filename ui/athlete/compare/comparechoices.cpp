// SPDX-License-Identifier: GPL-3.0-or-later
// Which sessions and blocks may be compared, what they are called, and which two are compared
// first.
#include "core/questions/blockquestions.h"
#include "core/questions/liftcontext.h"
#include "ui/athlete/compare/comparepage.h"
#include "ui/parts/shortcombo.h"
#include "ui/parts/sidekey.h"
#include "ui/words/counts.h"
#include "ui/words/format.h"
#include "ui/words/wording.h"

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

namespace {
constexpr std::size_t fewestPoints = 5; // two lines take four of them
}

QString ComparePage::choiceText(const LiftSession& s) const {
    QStringList parts{sessionText(s)};
    if (const auto block = questions::blockOn(m_blocks, s.date))
        parts << text(block->name);
    for (const auto& device : m_devices)
        if (s.conditions.device && device.id == *s.conditions.device)
            parts << text(device.value.name);
    parts << (s.points.size() == 1 ? tr("1 point") : tr("%1 points").arg(s.points.size()));
    return parts.join(u" · "_s);
}

bool ComparePage::isOffered(const std::optional<questions::LiftSide>& side) const {
    return side && !questions::sessionsOf(*side, m_blocks, m_about->sessions).sessions.empty();
}

void ComparePage::offerBlocks(QComboBox* box) const {
    const auto add = [&](const questions::LiftSide& side, const QString& name) {
        const auto found = questions::sessionsOf(side, m_blocks, m_about->sessions);
        if (found.sessions.empty() || box->findData(keyOf(side)) >= 0)
            return;
        const QString what =
            name + u" \u00b7 "_s + sessionsText(static_cast<int>(found.sessions.size()));
        box->addItem(what, keyOf(side));
        box->setItemData(box->count() - 1, what, Qt::ToolTipRole);
    };
    for (const auto& side : {m_from, m_to}) // days that another page asked for
        if (const auto* days = side ? std::get_if<DayStretch>(&*side) : nullptr)
            add(*days, QString::fromStdString(isoStretch(*days)));
    auto blocks = m_blocks;
    std::ranges::stable_sort(blocks, [](const auto& a, const auto& b) {
        return std::pair(b.value.last, b.value.first) < std::pair(a.value.last, a.value.first);
    });
    for (const auto& block : blocks)
        add(block.id, text(block.value.name));
}

// The newest test against the last one of the block before; where no blocks are kept, against the
// one before it that it is no repeat of. Of those only that can be compared: a day with one load
// has no line.
void ComparePage::chooseDefaults() {
    m_from = m_to = std::nullopt;
    const LiftSession* later = nullptr;
    const LiftSession* before = nullptr;
    for (auto s = m_about->sessions.rbegin(); s != m_about->sessions.rend(); ++s) {
        if (!questions::profileOf(*m_about, *s))
            continue;
        if (!later) {
            later = &*s;
            continue;
        }
        const auto first = [](const LiftSession& one) {
            return one.repeatOf.value_or(one.session);
        };
        if (first(*later) == first(*s) || later->points.size() + s->points.size() < fewestPoints)
            continue;
        if (!before)
            before = &*s;
        if (questions::blockOn(m_blocks, s->date) != questions::blockOn(m_blocks, later->date)) {
            before = &*s;
            break;
        }
    }
    if (later)
        m_to = later->session;
    if (before)
        m_from = before->session;
}

} // namespace slopebook::ui

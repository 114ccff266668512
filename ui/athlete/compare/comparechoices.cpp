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

// From the block that was chosen on another page, else the last step from one block to another, as
// Overview and Battery begin; where the newest test lies in no such block it is compared itself.
void ComparePage::chooseDefaults() {
    m_from = m_to = std::nullopt;
    chooseFromStart();
    if (!m_from)
        chooseLastStep();
    if (!m_from)
        chooseNewestDays();
}

// Of blocks only that can be compared: days with one load have no line.
void ComparePage::chooseLastStep() {
    std::vector<Stored<BlockId, Block>> with;
    for (const auto& block : m_blocks)
        if (std::ranges::any_of(m_about->sessions, [&](const LiftSession& session) {
                return block.value.holds(session.date) && questions::profileOf(*m_about, session);
            }))
            with.push_back(block);
    std::ranges::stable_sort(
        with, {}, [](const auto& block) { return std::pair(block.value.last, block.value.first); });
    if (with.size() < 2 || !with.back().value.holds(m_about->sessions.back().date) ||
        with[with.size() - 2].value.last >= with.back().value.first)
        return;
    m_from = with[with.size() - 2].id;
    m_to = with.back().id;
}

// The newest test against the last one of the block before; where no blocks are kept, against the
// one before it that it is no repeat of.
void ComparePage::chooseNewestDays() {
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

// From the block that was chosen on another page to the last one after it.
void ComparePage::chooseFromStart() {
    const auto of = [this](BlockId id) {
        return std::ranges::find(m_blocks, id, &Stored<BlockId, Block>::id);
    };
    const auto start = m_start ? of(*m_start) : m_blocks.end();
    if (start == m_blocks.end() || !isOffered(start->id))
        return;
    const Stored<BlockId, Block>* last = nullptr;
    for (const auto& block : m_blocks)
        if (block.value.first > start->value.last && isOffered(block.id) &&
            (!last || last->value.first < block.value.first))
            last = &block;
    if (!last)
        return;
    m_from = start->id;
    m_to = last->id;
}

} // namespace slopebook::ui

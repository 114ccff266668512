// SPDX-License-Identifier: GPL-3.0-or-later
// Where the pages of a flow end.
#include "ui/paper/flow.h"

namespace slopebook::ui::page {

namespace {

constexpr double little = 0.2; // of a page: less than that stands on none, but what has a title
constexpr double leastBefore = 0.5; // of a page: so much stays where a title goes on to the next

} // namespace

double Flow::groupHeight(std::size_t first) const {
    double sum = m_blocks[first].height;
    for (std::size_t i = first; m_blocks[i].keepWithNext && i + 1 < m_blocks.size(); ++i)
        sum += m_blocks[i + 1].before + m_blocks[i + 1].height;
    return sum;
}

double Flow::filled(const std::vector<Placed>& page) const {
    return page.empty() ? 0 : (page.back().top + page.back().block->height - m_margin) / room();
}

double Flow::lastFilled() const {
    return filled(pages().back());
}

/// early: a block that begins a page though the one before it had room.
std::vector<std::vector<Flow::Placed>> Flow::broken(const Block* early) const {
    std::vector<std::vector<Placed>> pages(1);
    const double bottom = m_margin + room() + 0.01;
    double y = m_margin;
    bool whole = false; // the block belongs to a group that is known to fit
    for (std::size_t i = 0; i < m_blocks.size(); ++i) {
        const Block& b = m_blocks[i];
        const bool first = pages.back().empty();
        const double before = first ? 0 : b.before;
        const double need = whole ? b.height : groupHeight(i);
        const double head = b.onNextPage ? b.onNextPage->height : 0;
        // A group taller than a page is broken wherever it must.
        const bool fits = need + head <= room();
        const double must = fits ? need : b.height;
        if (!first && (b.newPage || &b == early || y + before + must > bottom)) {
            pages.emplace_back();
            y = m_margin;
            if (b.onNextPage) {
                pages.back().push_back({y, b.onNextPage.get()});
                y += b.onNextPage->height;
            }
        } else {
            y += before;
        }
        pages.back().push_back({y, &b});
        y += b.height;
        whole = b.keepWithNext && fits;
    }
    return pages;
}

std::vector<std::vector<Flow::Placed>> Flow::pages() const {
    auto usual = broken(nullptr);
    if (usual.size() < 2 || filled(usual.back()) >= little || usual.back().front().block->title)
        return usual;
    // What would stand there alone takes with it what it belongs to.
    const std::vector<Placed>& before = usual[usual.size() - 2];
    for (std::size_t i = before.size(); i-- > 1;)
        if (before[i].block->title) {
            auto moved = broken(before[i].block);
            const bool good =
                moved.size() == usual.size() && filled(moved[moved.size() - 2]) >= leastBefore;
            return good ? moved : usual;
        }
    return usual;
}

} // namespace slopebook::ui::page

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/changewords.h"

#include <algorithm>
#include <optional>

namespace slopebook::ui::charts {

namespace {

QRectF wordBox(double left, double width, const QRectF& area, double height, bool over) {
    return {left, over ? area.top() + 1 : area.bottom() - height, width, height};
}

/// At the top or at the foot, wherever no bar under it reaches.
std::optional<QRectF> roomOver(const std::vector<WordedBar>& bars, double left, double width,
                               const QRectF& area, double height) {
    if (left < area.left() || left + width > area.right())
        return std::nullopt;
    for (const bool over : {true, false})
        if (std::ranges::none_of(bars, [&](const WordedBar& bar) {
                const bool under = bar.x >= left && bar.x <= left + width;
                return under &&
                       (over ? bar.top < area.top() + height : bar.bottom > area.bottom() - height);
            }))
            return wordBox(left, width, area, height, over);
    return std::nullopt;
}

/// Of all in one; nothing where they differ or there is no room.
std::optional<PlacedWord> oneOfAll(const std::vector<WordedBar>& bars, const QRectF& area,
                                   const QString& word, double width, double height) {
    if (bars.size() < 2 || std::ranges::any_of(bars, [&](const WordedBar& bar) {
            return bar.word != bars.front().word;
        }))
        return std::nullopt;
    const auto [first, last] = std::ranges::minmax(bars, {}, &WordedBar::x);
    const double left = std::clamp((first.x + last.x - width) / 2, area.left(),
                                   std::max(area.left(), area.right() - width));
    if (const auto box = roomOver(bars, left, width, area, height))
        return PlacedWord{word, *box};
    return std::nullopt;
}

} // namespace

std::vector<PlacedWord> placeWords(const std::vector<WordedBar>& bars, const QRectF& area,
                                   const std::function<QString(const QString& word)>& once,
                                   const std::function<double(const QString&)>& width,
                                   double height, double gap) {
    if (!bars.empty()) {
        const QString all = once(bars.front().word);
        if (auto one = oneOfAll(bars, area, all, width(all), height))
            return {std::move(*one)};
    }
    std::vector<PlacedWord> placed;
    for (const bool checkLoads : {true, false})
        for (const WordedBar& bar : bars) {
            if (bar.checkLoad != checkLoads)
                continue;
            const double wide = width(bar.word);
            const auto box = roomOver({bar}, bar.x - wide / 2, wide, area, height);
            // Whether at the top or at the foot: words in two rows are read as one line.
            if (box && std::ranges::none_of(placed, [&](const PlacedWord& other) {
                    return box->left() < other.box.right() + gap &&
                           other.box.left() < box->right() + gap;
                }))
                placed.push_back({bar.word, *box});
        }
    std::ranges::sort(placed, {}, [](const PlacedWord& word) { return word.box.left(); });
    return placed;
}

} // namespace slopebook::ui::charts

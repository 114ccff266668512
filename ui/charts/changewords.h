// SPDX-License-Identifier: GPL-3.0-or-later
// Where the readings' words stand over their bars: once where all read alike, else check loads
// first.
#pragma once

#include <QRectF>
#include <QString>

#include <functional>
#include <vector>

namespace slopebook::ui::charts {

/// A reading's bar, as it is painted.
struct WordedBar {
    double x = 0, top = 0, bottom = 0;
    QString word{};
    bool checkLoad = false;
};

struct PlacedWord {
    QString word{};
    QRectF box{};
};

/// Words at the top of the area, over their bars, else at its foot, from the left. Where all bars
/// have one word it is written once, by once, over the middle of them. One that would run into its
/// bar or another word is left to the table: those of check loads last. gap: between two words.
std::vector<PlacedWord> placeWords(const std::vector<WordedBar>& bars, const QRectF& area,
                                   const std::function<QString(const QString& word)>& once,
                                   const std::function<double(const QString&)>& width,
                                   double height, double gap);

} // namespace slopebook::ui::charts

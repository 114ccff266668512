// SPDX-License-Identifier: GPL-3.0-or-later
// The marks of a squad's changes, and the key that tells what each means: drawn alike in both.
#pragma once

#include "ui/charts/key.h"
#include "ui/squad/changes/squadforest.h"

#include <QCoreApplication>

namespace slopebook::ui {

/// The words of that chart.
struct SquadForestWords {
    Q_DECLARE_TR_FUNCTIONS(SquadForestWords)
};

// Of the text's size, in rows and key alike: a dot, what is drawn to all, the mean of all.
constexpr double dotReach = 0.28, drawnReach = 0.36, allReach = 0.45;

/// The mark of a change: a dot, hollow where it is extrapolated.
void paintChangeDot(QPainter& painter, const QPointF& at, double half, const look::Ground& ground,
                    bool hollow);
/// The mark of what is drawn to all, and larger that of all: a diamond.
void paintDiamond(QPainter& painter, const QPointF& at, double half, const look::Ground& ground,
                  bool filled);

std::vector<charts::KeyEntry> squadForestKey(const SquadForest& data, const look::Ground& ground,
                                             double textSize);

} // namespace slopebook::ui

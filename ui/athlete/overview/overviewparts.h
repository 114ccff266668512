// SPDX-License-Identifier: GPL-3.0-or-later
// What both pages of a season are put together from: their labels, and what scrolls beside.
#pragma once

#include <QString>

class QLabel;
class QScrollArea;
class QWidget;

namespace slopebook::ui {

class Sentence;

/// A label with the page's sentence, the largest of its type.
Sentence* sentenceLabel();
/// A label whose words can be taken out and that wraps.
QLabel* wordsLabel();
/// A bold line over some words; it wraps.
QLabel* titleLabel(const QString& words);
/// Scrolls it up and down, on the page's own ground, without a frame.
QScrollArea* scrolled(QWidget* inside);

} // namespace slopebook::ui

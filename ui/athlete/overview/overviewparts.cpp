// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/overview/overviewparts.h"

#include "ui/parts/downscroll.h"
#include "ui/parts/sentence.h"

#include <QLabel>
#include <QScrollArea>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

QLabel* wordsLabel() {
    auto* label = new QLabel;
    label->setWordWrap(true);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    return label;
}

Sentence* sentenceLabel() {
    auto* label = new Sentence;
    label->setObjectName(u"sentence"_s);
    return label;
}

QLabel* titleLabel(const QString& words) {
    auto* label = new QLabel(words);
    QFont bold = label->font();
    bold.setBold(true);
    label->setFont(bold);
    label->setWordWrap(true);
    return label;
}

QScrollArea* scrolled(QWidget* inside) {
    auto* scroll = new QScrollArea;
    holdDownwards(*scroll, inside);
    return scroll;
}

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/importing/importmaps.h"

#include "core/exchange/proposal.h"
#include "core/model/errors.h"

namespace slopebook::ui {

namespace {
constexpr qsizetype mostKept = 100;

QString keyOf(const exchange::FileFacts& facts) {
    return QString::fromStdString(exchange::headingSignature(facts.headings())) + QLatin1Char('\n');
}
} // namespace

ChosenShape shapeFor(const ImportMaps& maps, const exchange::FileFacts& facts) {
    const QString key = keyOf(facts);
    for (const QString& entry : maps)
        if (facts.layout.header && entry.startsWith(key)) {
            try {
                return {exchange::fitted(entry.mid(key.size()).toStdString(), facts), true};
            } catch (const BadInput&) { // NOLINT(bugprone-empty-catch): proposed afresh instead
            }
        }
    return {exchange::propose(facts), false};
}

void remember(ImportMaps& maps, const exchange::Shape& shape, const exchange::FileFacts& facts) {
    if (!facts.layout.header)
        return; // nothing to know it by
    const QString key = keyOf(facts);
    maps.removeIf([&](const QString& entry) { return entry.startsWith(key); });
    maps.prepend(key + QString::fromStdString(
                           exchange::shapeText(exchange::worthKeeping(shape), facts.headings())));
    maps = maps.mid(0, mostKept);
}

} // namespace slopebook::ui

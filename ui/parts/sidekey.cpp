// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/sidekey.h"

namespace slopebook::ui {

QString keyOf(const questions::LiftSide& side) {
    if (const auto* session = std::get_if<SessionId>(&side))
        return QLatin1Char('s') + QString::number(raw(*session));
    if (const auto* block = std::get_if<BlockId>(&side))
        return QLatin1Char('b') + QString::number(raw(*block));
    return QLatin1Char('d') + QString::fromStdString(isoStretch(std::get<DayStretch>(side)));
}

questions::LiftSide sideFrom(const QString& key) {
    const QString rest = key.mid(1);
    if (key.startsWith(QLatin1Char('d')))
        if (const auto days = parseStretch(rest.toStdString()))
            return *days;
    const qlonglong id = rest.toLongLong();
    return key.startsWith(QLatin1Char('b')) ? questions::LiftSide(BlockId{id})
                                            : questions::LiftSide(SessionId{id});
}

} // namespace slopebook::ui

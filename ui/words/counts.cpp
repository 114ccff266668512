// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/counts.h"

#include <QCoreApplication>

namespace slopebook::ui {

namespace {
struct Counts {
    Q_DECLARE_TR_FUNCTIONS(Counts)
};
} // namespace

QString sessionsText(int count) {
    return count == 1 ? Counts::tr("1 session") : Counts::tr("%1 sessions").arg(count);
}

} // namespace slopebook::ui

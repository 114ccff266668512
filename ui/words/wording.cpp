// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/wording.h"

#include "core/answers/method.h"
#include "ui/words/said.h"

#include <QCoreApplication>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

namespace {

// lupdate reads the names of such functions through this context.
struct Wording {
    Q_DECLARE_TR_FUNCTIONS(Wording)
};

} // namespace

QString asSentence(QString text) {
    if (!text.isEmpty())
        text[0] = text[0].toUpper();
    return text;
}

QString noAnswerText(const NoAnswer& why, LoadUnit unit) {
    const QString text = said(asSentence(why.reason), unit);
    return why.why == NoAnswer::Why::NoThreshold
               ? text + u' ' + Wording::tr("Set one with the lift.")
               : text;
}

QString readAgainst(const QString& interval, bool allAtOnce) {
    return QStringLiteral("%1 (%2)").arg(interval, said(answers::heldAgainst(allAtOnce)));
}

} // namespace slopebook::ui

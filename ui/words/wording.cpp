// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/wording.h"

#include "core/answers/figures.h"
#include "core/answers/sources.h"
#include "ui/words/said.h"

#include <QCoreApplication>

#include <cmath>

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

QString pText(double p) {
    return said(figure(answers::pText(p)));
}

QString mvtText(const Mvt& mvt) {
    const QString source = said(answers::sourceOf(mvt));
    if (mvt.sd)
        return Wording::tr("%1 m/s (SD %2; %3)")
            .arg(number(mvt.value, 2), number(*mvt.sd, 2), source);
    return Wording::tr("%1 m/s (%2)").arg(number(mvt.value, 2), source);
}

QString dayNoiseText(const answers::DayNoise& noise) {
    if (noise.origin == answers::DayNoise::Origin::None)
        return Wording::tr("not known: the readings are made from these two days alone, which "
                           "calls too much a change");
    const QString source = said(answers::sourceOf(noise));
    if (answers::noneFound(noise)) // no SD of 0.000: it is the scatter that explains all
        return Wording::tr("none found beyond the scatter within a day (%1)").arg(source);
    return Wording::tr("SD %1 m/s (%2)").arg(number(std::sqrt(noise.variance.value), 3), source);
}

QString dayNoiseCitation(const answers::DayNoise& noise) {
    return said(asSentence(answers::citationOf(noise)));
}

QString noAnswerText(const NoAnswer& why, LoadUnit unit) {
    const QString text = said(asSentence(why.reason), unit);
    return why.why == NoAnswer::Why::NoThreshold
               ? text + u' ' + Wording::tr("Set one with the lift.")
               : text;
}

} // namespace slopebook::ui

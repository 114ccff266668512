// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/cautionwords.h"

#include "ui/words/wording.h"

#include <QCoreApplication>

#include <array>
#include <cmath>
#include <string>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

namespace {

using Of = answers::Caution::Kind;

struct Cautions {
    Q_DECLARE_TR_FUNCTIONS(Cautions)
};

// core/answers/restrictedflow.cpp holds the text; here it is only shown to lupdate.
constexpr std::array flowSources{
    QT_TRANSLATE_NOOP("RestrictedFlow",
                      "After Patterson et al. 2019 (Front Physiol 10:533) and the clinical "
                      "literature: have a clinician review it before relying on it."),
    QT_TRANSLATE_NOOP(
        "RestrictedFlow",
        "This plan is not medical advice. Restricted-flow training needs medical screening and "
        "trained, licensed supervision. Restriction pressure must be set by a trained person from "
        "a measured occlusion pressure, never by elastic wraps at a guessed tightness. Local rules "
        "come first."),
    QT_TRANSLATE_NOOP("RestrictedFlow", "load 20 to 40 % of 1RM"),
    QT_TRANSLATE_NOOP("RestrictedFlow",
                      "pressure 40 to 80 % of the occlusion pressure measured on that limb, with "
                      "that cuff, in that posture; a wider cuff needs less"),
    QT_TRANSLATE_NOOP("RestrictedFlow",
                      "2 to 4 sets, often 30, 15, 15 and 15 reps, 1 to 2 s up and 1 to 2 s down"),
    QT_TRANSLATE_NOOP("RestrictedFlow",
                      "30 to 60 s between sets; about 5 to 10 min of restriction for an exercise, "
                      "then deflate"),
    QT_TRANSLATE_NOOP(
        "RestrictedFlow",
        "a deep-vein thrombosis, pulmonary embolism or clotting disorder, now or before"),
    QT_TRANSLATE_NOOP("RestrictedFlow", "medicines that raise the risk of clots or of bleeding"),
    QT_TRANSLATE_NOOP("RestrictedFlow", "pregnancy"),
    QT_TRANSLATE_NOOP("RestrictedFlow", "high blood pressure that is not under control"),
    QT_TRANSLATE_NOOP("RestrictedFlow", "unstable heart disease, a recent heart attack or stroke"),
    QT_TRANSLATE_NOOP("RestrictedFlow",
                      "peripheral arterial disease or poor circulation; varicose veins"),
    QT_TRANSLATE_NOOP("RestrictedFlow", "sickle-cell disease or trait"),
    QT_TRANSLATE_NOOP("RestrictedFlow", "active cancer"),
    QT_TRANSLATE_NOOP(
        "RestrictedFlow",
        "an open wound, infection, recent fracture or surgery of the limb; a vascular "
        "graft or dialysis access; lymphoedema or removed lymph nodes"),
    QT_TRANSLATE_NOOP("RestrictedFlow", "diabetes with damage to vessels or nerves"),
    QT_TRANSLATE_NOOP("RestrictedFlow", "severe obesity"),
    QT_TRANSLATE_NOOP("RestrictedFlow", "long bed rest or recent long travel"),
    QT_TRANSLATE_NOOP("RestrictedFlow", "rhabdomyolysis before"),
    QT_TRANSLATE_NOOP("RestrictedFlow", "numbness or tingling"),
    QT_TRANSLATE_NOOP("RestrictedFlow", "sharp pain"),
    QT_TRANSLATE_NOOP("RestrictedFlow", "unusual swelling or colour"),
    QT_TRANSLATE_NOOP("RestrictedFlow", "dizziness, chest pain or shortness of breath"),
    QT_TRANSLATE_NOOP("RestrictedFlow", "dark urine"),
    QT_TRANSLATE_NOOP("RestrictedFlow", "soreness out of all proportion"),
};

/// The figures of one caution as its sentence shows them.
class Figures {
public:
    Figures(const answers::Caution& caution, LoadUnit unit)
        : m_figures(caution.figures), m_unit(unit) {}

    bool has(std::size_t count) const { return m_figures.size() >= count; }
    double at(std::size_t i) const { return m_figures[i]; }
    LoadUnit unit() const { return m_unit; }
    QString fixed(std::size_t i, int decimals) const { return number(m_figures[i], decimals); }
    QString mass(std::size_t i) const {
        // A tenth in the unit: what loadNumber is given is that number already.
        const double value = std::round(inUnit(m_figures[i], m_unit) * 10) / 10;
        return loadNumber(value, LoadUnit::Kilograms) + u' ' + unitName(m_unit);
    }
    QString range(std::size_t low, std::size_t high, int decimals) const {
        return rangeText({m_figures[low], m_figures[high]}, decimals);
    }
    /// Percents; one figure where both are the same.
    QString share(std::size_t low, std::size_t high) const {
        return at(low) == at(high) ? fixed(low, 0) : range(low, high, 0);
    }

private:
    const std::vector<double>& m_figures;
    LoadUnit m_unit;
};

QString lineCaution(const answers::Caution& caution, const Figures& f) {
    switch (caution.kind) {
    case Of::NoOneRm:
        return Cautions::tr("No estimated 1RM: %1.").arg(noAnswerClause(caution.why, f.unit()));
    case Of::ExtrapolatedFar:
        return f.has(2) ? Cautions::tr("The estimated 1RM lies %1 beyond the heaviest load lifted "
                                       "(reach %2): every percent here leans on that.")
                              .arg(f.mass(1), f.fixed(0, 2))
                        : QString();
    case Of::ExtrapolatedVeryFar:
        return f.has(2) ? Cautions::tr("The estimated 1RM lies %1 beyond the heaviest load lifted "
                                       "(reach %2): every percent here leans on that, so read the "
                                       "intervals first.")
                              .arg(f.mass(1), f.fixed(0, 2))
                        : QString();
    case Of::NoInterval:
        return caution.why.why == NoAnswer::Why::SlopeUncertain
                   ? Cautions::tr("The slope is not certain enough to bound the 1RM, so its "
                                  "percents have no interval.")
                   : Cautions::tr("Two points give no intervals: the line needs a third load.");
    case Of::NoDayNoise:
        return Cautions::tr("No repeat tests are known: the expected speeds' intervals lack the "
                            "scatter from day to day and are too narrow.");
    case Of::MeanOfReps:
        return Cautions::tr("This lift's line is of set means: take the stop speed from the day's "
                            "fastest rep.");
    default:
        return {};
    }
}

QString loadCaution(const answers::Caution& caution, const Figures& f) {
    switch (caution.kind) {
    case Of::NearMaximal:
        return Cautions::tr("Near-maximal lifts need a competent spotter or safeties, and a "
                            "coach's eye.");
    case Of::AboveEstimate:
        return f.has(3) ? Cautions::tr("%1 is %2 % of this athlete's estimated 1RM: it may be more "
                                       "than the athlete can lift that day.")
                              .arg(f.mass(0), f.share(1, 2))
                        : QString();
    case Of::BeyondTestedLoads:
        return f.has(3) ? Cautions::tr("%1 lies outside the loads of the test (%2 to %3): its "
                                       "speed is the line drawn on.")
                              .arg(f.mass(0), f.mass(1), f.mass(2))
                        : QString();
    case Of::StopUnderThreshold:
        return f.has(3) ? Cautions::tr("The stop speed of %1 m/s at %2 lies under the MVT of %3 "
                                       "m/s: the set would end by failure; choose less loss.")
                              .arg(f.fixed(1, 2), f.mass(0), f.fixed(2, 2))
                        : QString();
    default:
        return {};
    }
}

QString ceilingCaution(const answers::Caution& caution, const Figures& f) {
    if (caution.kind == Of::CeilingBelowTarget && f.has(4))
        return f.at(2) > 0 ? Cautions::tr("%1 is %2 % of this athlete's estimated 1RM; the target "
                                          "is %3.")
                                 .arg(f.mass(0), f.share(1, 2), f.mass(3))
                           : Cautions::tr("%1 is the heaviest load at hand; the target is %2.")
                                 .arg(f.mass(0), f.mass(3));
    if (caution.kind == Of::LightestAboveTarget && f.has(2))
        return Cautions::tr("%1 is the lightest load at hand; the target is %2.")
            .arg(f.mass(0), f.mass(1));
    if (caution.kind == Of::SpeedAtCeiling && f.has(4))
        return Cautions::tr("Possible there: every rep of %1 as fast as it will go, the day judged "
                            "by its speed (expected %2 m/s, %3).")
            .arg(f.mass(0), f.fixed(1, 2), f.range(2, 3, 2));
    if (caution.kind == Of::SpeedAtCeiling && f.has(2))
        return Cautions::tr("Possible there: every rep of %1 as fast as it will go, the day judged "
                            "by its speed (expected %2 m/s).")
            .arg(f.mass(0), f.fixed(1, 2));
    if (caution.kind == Of::RepsAtCeiling && f.has(3))
        return Cautions::tr("Or more reps of it, ending each set when speed has fallen by %1 % "
                            "(about %2 m/s): more work, not more load.")
            .arg(f.fixed(1, 0), f.fixed(2, 2));
    if (caution.kind == Of::RestrictedFlowWindow && f.has(2))
        return Cautions::tr("Restricted-flow work uses 20 to 40 % of 1RM, here %1 to %2: only "
                            "after screening and under trained, licensed supervision, as its "
                            "caution says.")
            .arg(f.mass(0), f.mass(1));
    return {};
}

/// Where the list of loads ends, and why.
QString endCaution(const answers::Caution& caution, const Figures& f) {
    if (!f.has(1))
        return {};
    switch (caution.kind) {
    case Of::EndsAtInterval:
        return Cautions::tr("The loads end at the upper end of the estimated 1RM (%1).")
            .arg(f.mass(0));
    case Of::EndsAtEstimate:
        return Cautions::tr("The loads end at the estimated 1RM (%1), which has no interval.")
            .arg(f.mass(0));
    case Of::EndsWithSpeed:
        return Cautions::tr("The loads end where the line gives no speed any more (%1).")
            .arg(f.mass(0));
    case Of::EndsBeyondLadder:
        return Cautions::tr("Without an estimated 1RM the loads end a quarter beyond the heaviest "
                            "load lifted (%1).")
            .arg(f.mass(0));
    case Of::EndsAtBlock:
        return Cautions::tr("The loads keep to the ceiling of the block %1 (%2).")
            .arg(QString::fromStdString(caution.block), f.mass(0));
    case Of::EndsUnderFailure:
        return Cautions::tr("The loads stay under %1, which was not lifted.").arg(f.mass(0));
    default:
        return {};
    }
}

QString generalCaution(const answers::Caution& caution) {
    switch (caution.kind) {
    case Of::Estimates:
        return Cautions::tr("Loads are estimates, not clearance to lift.");
    case Of::Practitioner:
        return Cautions::tr("Pain, illness or return from injury: a qualified practitioner "
                            "decides; local rules come first.");
    case Of::GroupRelation:
        return Cautions::tr("Shares of the 1RM marked so are by %1, not by this athlete's own "
                            "line: people differ.")
            .arg(QString::fromStdString(caution.relation));
    default:
        return {};
    }
}

} // namespace

QString cautionText(const answers::Caution& caution, LoadUnit unit) {
    const Figures figures(caution, unit);
    for (const QString& said :
         {lineCaution(caution, figures), loadCaution(caution, figures),
          ceilingCaution(caution, figures), endCaution(caution, figures), generalCaution(caution)})
        if (!said.isEmpty())
            return said;
    const QString english = asSentence(QString::fromStdString(caution.text));
    return english.endsWith(u'.') ? english : english + u'.';
}

QString restrictedFlowWords(std::string_view english) {
    return QCoreApplication::translate("RestrictedFlow", std::string(english).c_str());
}

QStringList restrictedFlowSources() {
    QStringList all;
    for (const char* source : flowSources)
        all << QString::fromUtf8(source);
    return all;
}

} // namespace slopebook::ui

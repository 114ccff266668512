// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/history/historyfields.h"

#include "ui/words/format.h"

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

namespace {

using InLog = log::HistoryColumn;
using answers::Profile;

template <class Value>
auto plainly(Value HistoryRow::*member) {
    return [member](const HistoryRow& row, LoadUnit) { return row.*member; };
}

auto rounded(std::optional<double> HistoryRow::*member, int decimals) {
    return [member, decimals](const HistoryRow& row, LoadUnit) {
        return row.*member ? number(*(row.*member), decimals) : QString();
    };
}

QString estimateText(const HistoryRow& row, LoadUnit unit) {
    if (!row.oneRm)
        return {};
    const QString estimate = number(inUnit(row.oneRm->estimate, unit), 1);
    if (!row.oneRm->interval)
        return HistoryModel::tr("%1 (no bound)").arg(estimate);
    const QString range = rangeText(inUnit(*row.oneRm->interval, unit), 1);
    // Far from any load lifted the interval comes first.
    return row.oneRm->extrapolatedVeryFar()
               ? HistoryModel::tr("%1; estimate %2").arg(range, estimate)
               : HistoryModel::tr("%1 (%2)").arg(estimate, range);
}

QString reachText(const HistoryRow& row, LoadUnit /*unit*/) {
    if (!row.oneRm)
        return {};
    const QString reach = number(row.oneRm->reach, 2);
    return row.oneRm->extrapolatedFar() ? HistoryModel::tr("%1 far").arg(reach) : reach;
}

QString loadsText(const HistoryRow& row, LoadUnit unit) {
    const QString lifted =
        row.n == 0 ? QString()
                   : loadNumber(row.lightest, unit) + u'–' + loadNumber(row.heaviest, unit);
    if (!row.notLifted)
        return lifted;
    const QString tried =
        HistoryModel::tr("%1 not lifted").arg(loadNumber(kilograms(*row.notLifted), unit));
    return lifted.isEmpty() ? tried : lifted + u", "_s + tried;
}

} // namespace

const std::array<HistoryField, HistoryModel::FirstCheckLoad>& historyFields() {
    static const std::array<HistoryField, HistoryModel::FirstCheckLoad> fields{{
        {[](const QString&) { return HistoryModel::tr("Date"); },
         [](const QString&) { return HistoryModel::tr("Day of the session"); },
         [](const HistoryRow& row, LoadUnit) { return sessionText(row.date, row.ordinal); },
         InLog::Day},
        {[](const QString&) { return HistoryModel::tr("Athlete"); },
         [](const QString&) { return HistoryModel::tr("Who was tested"); },
         plainly(&HistoryRow::athlete), InLog::Athlete},
        {[](const QString&) { return HistoryModel::tr("Block"); },
         [](const QString&) { return HistoryModel::tr("Training block that the day lies in"); },
         plainly(&HistoryRow::block), InLog::Block},
        {[](const QString&) { return HistoryModel::tr("Device"); },
         [](const QString&) { return HistoryModel::tr("What measured the bar speed"); },
         plainly(&HistoryRow::device), InLog::Device},
        {[](const QString&) { return HistoryModel::tr("n"); },
         [](const QString&) { return HistoryModel::tr("Sets that count"); },
         [](const HistoryRow& row, LoadUnit) { return QString::number(row.n); }, InLog::Points},
        {[](const QString& unit) { return HistoryModel::tr("Loads, %1").arg(unit); },
         [](const QString&) {
             return HistoryModel::tr("Lightest and heaviest load, and what was tried above it");
         },
         loadsText, InLog::Loads},
        {[](const QString&) { return HistoryModel::tr("V0, m/s"); },
         [](const QString&) { return HistoryModel::tr("Velocity at zero load, from the line"); },
         rounded(&HistoryRow::v0, 2),
         {},
         [](const Profile& p) { return std::optional(p.line.intercept); }},
        {[](const QString&) { return HistoryModel::tr("Slope"); },
         [](const QString& unit) { return HistoryModel::tr("m/s per %1").arg(unit); },
         [](const HistoryRow& row, LoadUnit unit) {
             return row.slope ? number(*row.slope / inUnit(1, unit), 4) : QString();
         },
         {},
         [](const Profile& p) { return std::optional(p.line.slope); }},
        {[](const QString&) { return HistoryModel::tr("R²"); },
         [](const QString&) {
             return HistoryModel::tr("Share of the scatter that the line explains");
         },
         rounded(&HistoryRow::r2, 3),
         {},
         [](const Profile& p) { return std::optional(p.line.r2); }},
        {[](const QString& unit) { return HistoryModel::tr("Est. 1RM, %1").arg(unit); },
         [](const QString&) {
             return HistoryModel::tr(
                 "Estimated 1RM with the interval of the line alone, to compare with other days; "
                 "Plan and Lines have the one to plan with");
         },
         estimateText,
         {},
         [](const Profile& p) {
             return p.oneRm ? std::optional(p.oneRm->estimate) : std::nullopt;
         }},
        {[](const QString&) { return HistoryModel::tr("Reach"); },
         [](const QString&) { return HistoryModel::tr("Heaviest load / estimated 1RM"); },
         reachText,
         {},
         [](const Profile& p) { return p.oneRm ? std::optional(p.oneRm->reach) : std::nullopt; }},
        {[](const QString&) { return HistoryModel::tr("Lifted 1RM"); },
         [](const QString&) { return HistoryModel::tr("A true maximum that was lifted"); },
         [](const HistoryRow& row, LoadUnit unit) {
             return row.measured ? loadNumber(*row.measured, unit) : QString();
         },
         InLog::Measured},
        {[](const QString&) { return HistoryModel::tr("Note"); },
         [](const QString&) { return HistoryModel::tr("What was written of the session"); },
         plainly(&HistoryRow::note), InLog::Note},
    }};
    return fields;
}

} // namespace slopebook::ui

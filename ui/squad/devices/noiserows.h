// SPDX-License-Identifier: GPL-3.0-or-later
// Noise and agreement in words and rows.
#pragma once

#include "core/answers/agreement.h"
#include "core/model/people.h"
#include "core/questions/liftcontext.h"
#include "ui/parts/texttable.h"
#include "ui/words/units.h"

#include <map>
#include <span>

namespace slopebook::ui {

QStringList noiseHeadings(LoadUnit unit);
/// Lift, device, whose, at which load, pairs, typical error, interval, CV, smallest detectable.
std::vector<TextTable::Row> noiseRows(std::span<const questions::NoiseGroup> groups, LoadUnit unit);

/// The figure that readings are made with, one line a lift and device: the chosen athlete's where
/// there is one.
QString inUseText(std::span<const questions::NoiseGroup> groups);
/// What that comes to between single tests, and between several.
QString rulesOfThumb(std::span<const questions::NoiseGroup> groups);
/// Where the noise in use comes from, each group's on a line of its own.
QString noiseSources(std::span<const questions::NoiseGroup> groups);

QStringList repeatHeadings();
/// The repeat tests behind the groups.
std::vector<TextTable::Row> repeatRows(std::span<const questions::NoiseGroup> groups,
                                       const std::map<AthleteId, QString>& athletes);

QStringList agreementHeadings();
/// Bias, limits, least products and what comparisons take off, one figure a row.
std::vector<TextTable::Row> agreementRows(const answers::AgreementStudy& study);

QStringList pairedHeadings(const QString& first, const QString& second, LoadUnit unit);
std::vector<TextTable::Row> pairedRows(const answers::AgreementStudy& study,
                                       const std::map<AthleteId, QString>& athletes, LoadUnit unit);

/// "Left reads 0.020 m/s more than right (95 % 0.010 to 0.030); ...".
QString agreementSentence(const answers::AgreementStudy& study, const QString& first,
                          const QString& second, LoadUnit unit);

} // namespace slopebook::ui

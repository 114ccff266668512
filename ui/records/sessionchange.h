// SPDX-License-Identifier: GPL-3.0-or-later
// What a change of a session's day or device does to more than the field shows: asked about before
// where it is much, told of after where it is less.
#pragma once

#include "ui/edits/logbook.h"

#include <QString>

#include <optional>

class QWidget;

namespace slopebook::ui {

/// A question for the coach where the day moves by more than a month, or the device is another one
/// for sets of several lifts; empty where nothing needs to be asked. shown: the lift that the coach
/// sees, which alone needs no question. Throws LogError.
QString changeQuestion(const log::Log& log, SessionId session, const SessionHead& now,
                       std::optional<LiftId> shown);
/// What has been changed of a session with sets, and how it comes back; empty where there is
/// nothing to tell. before: as it was.
QString changeNews(const log::Log& log, SessionId session, const SessionHead& before,
                   const SessionHead& now);
/// Asks; true for yes. "No" is what Enter and Escape choose.
bool isSure(const QString& question, QWidget* parent);

} // namespace slopebook::ui

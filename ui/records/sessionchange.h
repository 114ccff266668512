// SPDX-License-Identifier: GPL-3.0-or-later
// What a change of a session's day or device does to more than the field shows: asked about before
// where it is much, told of after where it is less.
#pragma once

#include "ui/edits/logbook.h"

#include <QString>

#include <optional>

class QWidget;

namespace slopebook::ui {

/// A question for the coach where the day moves by more than a month; empty where nothing needs to
/// be asked. Throws LogError.
QString changeQuestion(const log::Log& log, SessionId session, const SessionHead& now);
/// What another device of a lift has been written to, and how it comes back; empty likewise.
QString deviceNews(const log::Log& log, SessionId session, LiftId lift, const Conditions& before,
                   const Conditions& now);
/// What has been changed of a session with sets, and how it comes back; empty where there is
/// nothing to tell. before: as it was.
QString changeNews(const log::Log& log, SessionId session, const SessionHead& before,
                   const SessionHead& now);
/// Asks; true for yes. "No" is what Enter and Escape choose.
bool isSure(const QString& question, QWidget* parent);

} // namespace slopebook::ui

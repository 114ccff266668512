// SPDX-License-Identifier: GPL-3.0-or-later
// What may stand in the log. Each throws BadInput with what was found and what was expected.
#pragma once

#include "core/log/log.h"

namespace slopebook::log {

void requireValid(const Athlete& athlete);
void requireValid(const Device& device);
void requireValid(const Block& block);
void requireValid(const Lift& lift);
void requireValid(const Equipment& equipment);
void requireValid(const TestKind& kind);
void requireValid(const SessionHead& session);
void requireValid(const Conditions& conditions);
void requireValid(const Station& station);
void requireValid(const Roster& roster);
void requireValid(const Set& set);
void requireStorableLoad(Mass load);
/// A name that is new to the log is spelled as tidyName() spells it.
void requireTidy(const std::string& name);

/// Text that the log takes: UTF-8 without NUL, at most 100,000 bytes.
bool storableText(const std::string& text);

} // namespace slopebook::log

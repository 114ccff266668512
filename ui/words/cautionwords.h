// SPDX-License-Identifier: GPL-3.0-or-later
// The plan's cautions and the restricted-flow lists in the window's language; English as in
// core/answers, word for word.
#pragma once

#include "core/answers/caution.h"
#include "ui/words/units.h"

#include <QString>
#include <QStringList>

#include <string_view>

namespace slopebook::ui {

/// The caution as a sentence; loads in the unit. What has no words here says the caution's own.
QString cautionText(const answers::Caution& caution, LoadUnit unit);

/// A piece of answers::restrictedFlowText() in the window's language.
QString restrictedFlowWords(std::string_view english);
/// The pieces that translators are given: every one of answers::restrictedFlowText().
QStringList restrictedFlowSources();

} // namespace slopebook::ui

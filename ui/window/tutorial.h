// SPDX-License-Identifier: GPL-3.0-or-later
// Ten minutes with the sample log, step by step. What is pressed is named by the program's own
// words, and each step is followed to the letter when its picture is taken (app/tutorial).
#pragma once

#include <QString>

#include <filesystem>
#include <vector>

namespace slopebook::ui {

struct Actions;

/// In the text: <b> is pressed or chosen, in that order; <code> is typed into the line, with Enter;
/// <kbd> is a key; <i> is then shown; <strong> is there for later.
struct TutorialStep {
    QString picture; ///< the name of its picture's file, without its ending
    QString title;
    QString html;
};
/// In the language that is spoken now.
std::vector<TutorialStep> tutorialSteps(const Actions& actions);

/// How it is read, over all steps.
QString tutorialLead();

/// A menu entry as the tutorial names it: "Log › Open the sample".
QString wayTo(const QString& menu, const QString& entry);

/// As HTML, with the pictures that the folder holds; a folder without them gives the text alone.
QString tutorialHelp(const Actions& actions, const std::filesystem::path& pictures);

} // namespace slopebook::ui

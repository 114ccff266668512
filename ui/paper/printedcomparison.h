// SPDX-License-Identifier: GPL-3.0-or-later
// The printed comparison of two sessions: one page for the usual one, more where it needs them. The
// same painting serves preview, printer and PDF, always black on white. Needs a QApplication (the
// offscreen platform will do).
#pragma once

#include "core/answers/comparison.h"
#include "core/questions/questions.h"
#include "ui/paper/pages.h"
#include "ui/words/units.h"

#include <filesystem>

namespace slopebook::ui {

/// What a session was filed under; empty where unknown.
struct PageDay {
    QString block{}, device{}, place{}, note{};
    friend bool operator==(const PageDay&, const PageDay&) = default;
};

/// Which parts are printed. Sentence, cautions and sources always are.
struct PageParts {
    bool lineChart = true;
    bool changeChart = true;
    bool byLoad = true;
    bool oneRm = true;
    bool method = true;
    friend bool operator==(const PageParts&, const PageParts&) = default;
};

struct PageHeader {
    QString athlete{}, lift{};
    VelocityKind kind = VelocityKind::Mean;
    PointRule rule = PointRule::Fastest;
    PageDay from{}, to{};
    page::Paper paper = page::Paper::A4; ///< of a PDF; a printer has its own
    LoadUnit unit = LoadUnit::Kilograms;
    PageParts parts{};
    friend bool operator==(const PageHeader&, const PageHeader&) = default;
};

/// What the log knows of the two sessions. Throws LogError.
PageHeader pageHeader(const log::Log& log, const Background& about,
                      const answers::Comparison& comparison);

/// The pages for a printer, a preview or a PDF.
page::Print comparisonPrint(const answers::Comparison& comparison, const PageHeader& header);

/// Writes the PDF, whole or not at all. Throws LogError.
void writeComparisonPdf(const answers::Comparison& comparison, const PageHeader& header,
                        const log::Destination& to);

} // namespace slopebook::ui

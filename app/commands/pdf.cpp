// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/pdf.h"

#include "app/commands/offscreen.h"
#include "ui/page/comparisonpage.h"

namespace slopebook::app {

void writePdf(const log::Log& log, const ui::Background& about,
              const answers::Comparison& comparison, const std::filesystem::path& file) {
    paintOffscreen(
        [&] { ui::writeComparisonPdf(comparison, ui::pageHeader(log, about, comparison), file); });
}

} // namespace slopebook::app

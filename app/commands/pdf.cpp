// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/pdf.h"

#include "ui/page/comparisonpage.h"

#include <QApplication>

namespace slopebook::app {

void writePdf(const log::Log& log, const ui::Background& about,
              const answers::Comparison& comparison, const std::filesystem::path& file) {
    // Fonts and painting need an application; a page needs no display.
    qputenv("QT_QPA_PLATFORM", "offscreen");
    int argc = 1;
    char name[] = "slopebook";
    char* argv[] = {name, nullptr};
    const QApplication application(argc, argv);
    ui::writeComparisonPdf(comparison, ui::pageHeader(log, about, comparison), file);
}

} // namespace slopebook::app

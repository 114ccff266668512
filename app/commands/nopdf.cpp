// SPDX-License-Identifier: GPL-3.0-or-later
// Stands in for pdf.cpp until ui/page is there.
#include "app/commands/pdf.h"
#include "core/model/errors.h"

namespace slopebook::app {

void writePdf(const log::Log&, const ui::Background&, const answers::Comparison&,
              const std::filesystem::path&) {
    throw BadInput("--pdf", "a build with the page");
}

} // namespace slopebook::app

// SPDX-License-Identifier: GPL-3.0-or-later
// A flow as pages with a foot, on a printer, a preview or in a PDF: one way of painting for all.
#pragma once

#include "ui/page/flow.h"

#include <QPageSize>
#include <QPagedPaintDevice>

#include <filesystem>
#include <functional>

namespace slopebook::ui::page {

/// What is to be printed: fills a flow that is as wide as the paper allows. foot stands at the
/// bottom of each page, beside its number.
struct Print {
    QString title{}; ///< of the document
    QString foot{};
    std::function<void(Flow&)> fill{};
};

/// How many pages that makes on a paper of that size in points.
int pageCount(const Print& print, const QSizeF& paper);
/// Paints all pages at the device's own page size. False where it cannot be painted on.
bool paintPages(QPagedPaintDevice& device, const Print& print);
/// Writes the PDF under a temporary name beside file, then renames it: file is whole or what it
/// was. Throws LogError.
void writePagesPdf(const Print& print, QPageSize::PageSizeId paper,
                   const std::filesystem::path& file);

} // namespace slopebook::ui::page

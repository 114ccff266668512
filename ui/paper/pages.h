// SPDX-License-Identifier: GPL-3.0-or-later
// A flow as pages with a foot, on a printer, a preview or in a PDF: one way of painting for all.
#pragma once

#include "core/log/target.h"
#include "ui/paper/flow.h"

#include <QByteArray>
#include <QPageSize>
#include <QPagedPaintDevice>

#include <functional>
#include <vector>

namespace slopebook::ui::page {

/// A4 or Letter here; a printer has its own.
using Paper = QPageSize::PageSizeId;

/// Sizes in points.
struct PageStyle {
    double margin = 36;
    double foot = 14; ///< kept free for it
    double footSize = 7;
    bool numberInFoot = false; ///< the page's number follows the foot's words; else it stands right
};

/// A file that a PDF carries inside it.
struct Attached {
    QString name{}, type{}; ///< "figures.csv", "text/csv"
    QByteArray bytes{};
};

/// What may be done so that it stands on fewer pages, and no page holds little. Pictures and spaces
/// give way a little for every print.
struct Fitting {
    std::size_t most = 0; ///< type is made smaller while there are more pages; 0: never
    int ways = 0;         ///< Closeness::apart is tried from 1 to that
};

/// What is to be printed: fills a flow that is as wide as the paper allows. foot stands at the
/// bottom of each page, with its number.
struct Print {
    QString title{}; ///< of the document
    QString foot{};
    std::function<void(Flow&)> fill{};
    PageStyle style{};
    std::vector<Attached> attached{}; ///< to a PDF alone
    Fitting fitting{};
};

/// How many pages that makes on a paper of that size in points.
int pageCount(const Print& print, const QSizeF& paper);
/// Paints all pages at the device's own page size. False where it cannot be painted on.
bool paintPages(QPagedPaintDevice& device, const Print& print);
/// The PDF, whole or not at all. Throws LogError (core/log/target.h).
void writePagesPdf(const Print& print, Paper paper, const log::Destination& to);

} // namespace slopebook::ui::page

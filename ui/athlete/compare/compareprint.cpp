// SPDX-License-Identifier: GPL-3.0-or-later
// The comparison goes out on paper: preview, printer, PDF.
#include "ui/athlete/compare/comparepage.h"
#include "ui/paper/paperwork.h"
#include "ui/words/format.h"

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

namespace {

// The name of a file that says what it holds: "Wren Bench pull 2026-01-10 to 2026-03-14".
QString proposedName(const PageHeader& h, const answers::Comparison& c) {
    return h.athlete + u' ' + h.lift + u' ' +
           ComparePage::tr("%1 to %2", "the days of a comparison, in a file's name")
               .arg(text(dateKey(c.from.session.date, c.from.session.ordinal)),
                    text(dateKey(c.to.session.date, c.to.session.ordinal)));
}

} // namespace

bool ComparePage::canPrint() const {
    return m_comparison.has_value();
}

void ComparePage::writePdfTo(const log::Destination& to) const {
    writeComparisonPdf(*m_comparison, header(), to);
}

void ComparePage::writePdf() {
    if (!canPrint())
        return;
    const QString said = paperwork::savePdf(this, tr("Save the comparison as PDF"),
                                            proposedName(header(), *m_comparison),
                                            [this](const auto& to) { writePdfTo(to); });
    if (!said.isEmpty())
        Q_EMIT message(said);
}

void ComparePage::print() {
    if (canPrint())
        paperwork::print(this, comparisonPrint(*m_comparison, header()));
}

void ComparePage::printPreview() {
    if (canPrint())
        paperwork::preview(this, tr("The page as it is printed"),
                           comparisonPrint(*m_comparison, header()));
}

} // namespace slopebook::ui

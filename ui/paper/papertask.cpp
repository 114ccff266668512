// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/papertask.h"

namespace slopebook::ui {

void PaperTask::writePdfTo(const log::Destination& to, page::Paper paper) const {
    page::writePagesPdf(pages(), paper, to);
}

void PaperTask::writePdf() {
    if (!canPrint())
        return;
    const PdfWords words = pdfWords();
    const QString said = paperwork::savePdf(this, words.title, words.name,
                                            [this](const auto& to) { writePdfTo(to); });
    if (!said.isEmpty())
        Q_EMIT message(said);
}

void PaperTask::print() {
    if (canPrint())
        paperwork::print(this, pages());
}

void PaperTask::printPreview() {
    if (canPrint())
        paperwork::preview(this, tr("The page as it is printed"), pages());
}

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
// A task whose page goes out on paper as it is: printer, preview and PDF are the same for each.
#pragma once

#include "ui/paper/paperwork.h"
#include "ui/parts/taskpage.h"

namespace slopebook::ui {

/// canPrint() says whether there is a page; what is asked without one does nothing.
class PaperTask : public TaskPage, public Prints {
    Q_OBJECT
public:
    using TaskPage::TaskPage;

    void print() override;
    void printPreview() override;
    void writePdf() override;
    /// Without asking for a name. Throws LogError; canPrint() must hold.
    void writePdfTo(const log::Destination& to,
                    page::Paper paper = paperwork::desktopPaper()) const;
    /// What goes on paper; canPrint() must hold.
    virtual page::Print pages() const = 0;

protected:
    /// What the window that asks for a name says, and the name it proposes, without its ending.
    struct PdfWords {
        QString title, name;
    };
    virtual PdfWords pdfWords() const = 0;
};

} // namespace slopebook::ui

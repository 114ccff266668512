// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/paperwork.h"

#include "ui/parts/filedialog.h"
#include "ui/words/format.h"
#include "ui/words/said.h"

#include <QAction>
#include <QCoreApplication>
#include <QLocale>
#include <QMessageBox>
#include <QPrintDialog>
#include <QPrintPreviewDialog>
#include <QPrinter>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui::paperwork {

namespace {

struct Paperwork {
    Q_DECLARE_TR_FUNCTIONS(Paperwork)
};

} // namespace

page::Paper desktopPaper() {
    return QLocale::system().measurementSystem() == QLocale::ImperialUSSystem ? page::Paper::Letter
                                                                              : page::Paper::A4;
}

QString fileName(QString words) {
    for (const QChar forbidden : u"/\\:*?\"<>|#"_s)
        words.replace(forbidden, u'-');
    return words;
}

void print(QWidget* parent, const page::Print& print) {
    try {
        QPrinter printer(QPrinter::HighResolution);
        QPrintDialog dialog(&printer, parent);
        // Qt would write over any file, a log too; a PDF is saved by savePdf.
        dialog.setOption(QAbstractPrintDialog::PrintToFile, false);
        if (dialog.exec() != QDialog::Accepted)
            return;
        if (!page::paintPages(printer, print))
            QMessageBox::warning(parent, Paperwork::tr("Print"),
                                 Paperwork::tr("The printer took nothing."));
    } catch (const std::exception& error) {
        QMessageBox::warning(parent, Paperwork::tr("Print"), said(error));
    }
}

void preview(QWidget* parent, const QString& title, const page::Print& print) {
    try {
        QPrinter printer(QPrinter::HighResolution);
        QPrintPreviewDialog dialog(&printer, parent);
        dialog.setWindowTitle(title);
        dialog.resize(900, 680);
        // Its own print dialog offers files to write over.
        for (QAction* action : dialog.findChildren<QAction*>())
            if (action->text() == QCoreApplication::translate("QPrintPreviewDialog", "Print")) {
                QObject::disconnect(action, nullptr, &dialog, nullptr);
                QObject::connect(action, &QAction::triggered, &dialog,
                                 [&] { paperwork::print(&dialog, print); });
            }
        QObject::connect(&dialog, &QPrintPreviewDialog::paintRequested, &dialog,
                         [&print](QPrinter* target) { page::paintPages(*target, print); });
        dialog.exec();
    } catch (const std::exception& error) {
        QMessageBox::warning(parent, Paperwork::tr("Print preview"), said(error));
    }
}

QString savePdf(QWidget* parent, const QString& title, const QString& proposed,
                const std::function<void(const log::Destination&)>& write) {
    try {
        const auto to = filedialog::save(parent, {.title = title,
                                                  .start = fileName(proposed) + ".pdf"_L1,
                                                  .filter = Paperwork::tr("PDF files (*.pdf)"),
                                                  .ending = u".pdf"_s});
        if (!to)
            return {};
        write(*to);
        return Paperwork::tr("Written: %1").arg(nameOf(to->file));
    } catch (const std::exception& error) {
        QMessageBox::warning(parent, Paperwork::tr("Save PDF"), said(error));
        return {};
    }
}

} // namespace slopebook::ui::paperwork

// SPDX-License-Identifier: GPL-3.0-or-later
// The comparison goes out on paper: preview, printer, PDF.
#include "core/model/errors.h"
#include "ui/compare/comparepage.h"
#include "ui/shell/format.h"

#include <QFile>
#include <QFileDialog>
#include <QMessageBox>
#include <QPrintDialog>
#include <QPrintPreviewDialog>
#include <QPrinter>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

namespace {

// The name of a file that says what it holds: "Wren Bench pull 2026-01-10 to 2026-03-14.pdf".
QString proposedName(const PageHeader& h, const answers::Comparison& c) {
    QString name = h.athlete + u' ' + h.lift + u' ' +
                   text(dateKey(c.from.session.date, c.from.session.ordinal)) + " to "_L1 +
                   text(dateKey(c.to.session.date, c.to.session.ordinal));
    for (const QChar forbidden : u"/\\:*?\"<>|#"_s)
        name.replace(forbidden, u'-');
    return name + ".pdf"_L1;
}

} // namespace

bool ComparePage::canPrint() const {
    return m_comparison.has_value();
}

void ComparePage::writePdfTo(const std::filesystem::path& file) const {
    writeComparisonPdf(*m_comparison, header(), file);
}

void ComparePage::writePdf() {
    if (!canPrint())
        return;
    try {
        const QString file = QFileDialog::getSaveFileName(this, tr("Save the comparison as PDF"),
                                                          proposedName(header(), *m_comparison),
                                                          tr("PDF files (*.pdf)"));
        if (file.isEmpty())
            return;
        writePdfTo(std::filesystem::path(QFile::encodeName(file).toStdString()));
        Q_EMIT message(tr("Written: %1").arg(file));
    } catch (const std::exception& error) {
        QMessageBox::warning(this, tr("Save PDF"), QString::fromUtf8(error.what()));
    }
}

void ComparePage::print() {
    if (!canPrint())
        return;
    try {
        QPrinter printer(QPrinter::HighResolution);
        QPrintDialog dialog(&printer, this);
        if (dialog.exec() != QDialog::Accepted)
            return;
        if (!paintComparison(printer, *m_comparison, header()))
            QMessageBox::warning(this, tr("Print"), tr("The printer took nothing."));
    } catch (const std::exception& error) {
        QMessageBox::warning(this, tr("Print"), QString::fromUtf8(error.what()));
    }
}

void ComparePage::printPreview() {
    if (!canPrint())
        return;
    try {
        QPrinter printer(QPrinter::HighResolution);
        QPrintPreviewDialog dialog(&printer, this);
        dialog.setWindowTitle(tr("The page as it is printed"));
        dialog.resize(900, 680);
        const PageHeader shown = header();
        connect(
            &dialog, &QPrintPreviewDialog::paintRequested, this,
            [this, &shown](QPrinter* target) { paintComparison(*target, *m_comparison, shown); });
        dialog.exec();
    } catch (const std::exception& error) {
        QMessageBox::warning(this, tr("Print preview"), QString::fromUtf8(error.what()));
    }
}

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
// The card for the bar goes out on paper: preview, printer, PDF.
#include "core/model/errors.h"
#include "ui/plan/planpage.h"
#include "ui/plan/relationpane.h"
#include "ui/shell/format.h"

#include <QFile>
#include <QFileDialog>
#include <QLocale>
#include <QMessageBox>
#include <QPrintDialog>
#include <QPrintPreviewDialog>
#include <QPrinter>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

namespace {

QString proposedName(const PlanCard& card) {
    QString name = card.athlete + u' ' + card.lift + u" plan"_s;
    for (const QChar forbidden : u"/\\:*?\"<>|#"_s)
        name.replace(forbidden, u'-');
    return name + ".pdf"_L1;
}

} // namespace

bool PlanPage::canPrint() const {
    return m_model->plan() && !m_model->plan()->chosen.empty();
}

PlanCard PlanPage::card() const {
    PlanCard card{.athlete = text(m_about->athlete.value.name),
                  .lift = text(m_about->lift.value.name),
                  .plan = *m_model->plan(),
                  .related = m_relations->related(*m_model->plan()),
                  .relation = m_relations->name(),
                  .unit = m_choice.unit,
                  .sets = m_choice.sets,
                  .reps = m_choice.reps};
    card.paper = QLocale::system().measurementSystem() == QLocale::ImperialUSSystem
                     ? QPageSize::Letter
                     : QPageSize::A4;
    return card;
}

void PlanPage::writePdfTo(const std::filesystem::path& file) const {
    writePlanCardPdf(card(), file);
}

void PlanPage::writePdf() {
    if (!canPrint())
        return;
    try {
        const QString file = QFileDialog::getSaveFileName(
            this, tr("Save the card as PDF"), proposedName(card()), tr("PDF files (*.pdf)"));
        if (file.isEmpty())
            return;
        writePdfTo(std::filesystem::path(QFile::encodeName(file).toStdString()));
        Q_EMIT message(tr("Written: %1").arg(file));
    } catch (const std::exception& error) {
        QMessageBox::warning(this, tr("Save PDF"), QString::fromUtf8(error.what()));
    }
}

void PlanPage::print() {
    if (!canPrint())
        return;
    try {
        QPrinter printer(QPrinter::HighResolution);
        QPrintDialog dialog(&printer, this);
        if (dialog.exec() != QDialog::Accepted)
            return;
        if (!paintPlanCard(printer, card()))
            QMessageBox::warning(this, tr("Print"), tr("The printer took nothing."));
    } catch (const std::exception& error) {
        QMessageBox::warning(this, tr("Print"), QString::fromUtf8(error.what()));
    }
}

void PlanPage::printPreview() {
    if (!canPrint())
        return;
    try {
        QPrinter printer(QPrinter::HighResolution);
        QPrintPreviewDialog dialog(&printer, this);
        dialog.setWindowTitle(tr("The card as it is printed"));
        dialog.resize(900, 680);
        const PlanCard shown = card();
        connect(&dialog, &QPrintPreviewDialog::paintRequested, this,
                [&shown](QPrinter* target) { paintPlanCard(*target, shown); });
        dialog.exec();
    } catch (const std::exception& error) {
        QMessageBox::warning(this, tr("Print preview"), QString::fromUtf8(error.what()));
    }
}

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/jobdialog.h"

#include <QDialogButtonBox>
#include <QLabel>
#include <QProgressBar>
#include <QVBoxLayout>

#include <utility>

namespace slopebook::ui {

namespace {
constexpr int aMoment = 300; // ms
}

JobDialog::JobDialog(QWidget* parent, const QString& text) : QDialog(parent) {
    setWindowTitle(tr("Please wait"));
    auto* label = new QLabel(text);
    label->setTextFormat(Qt::PlainText); // a file may be called anything
    label->setWordWrap(true);
    auto* bar = new QProgressBar;
    bar->setRange(0, 1000);
    bar->setAccessibleName(text);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(&m_job, &Job::progressed, bar, &QProgressBar::setValue);
    connect(&m_job, &Job::finished, this, [this] {
        m_done = true;
        accept();
    });
    connect(&m_job, &Job::stopped, this, [this] { done(Rejected); });
    connect(&m_job, &Job::failed, this, [this](const QString& why) {
        m_problem = why;
        done(Rejected);
    });
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(label);
    layout->addWidget(bar);
    layout->addWidget(buttons);
    resize(480, 120);
}

bool JobDialog::run(QWidget* parent, const QString& text, Job::Work work) {
    JobDialog dialog(parent, text);
    dialog.m_job.start(std::move(work));
    dialog.m_job.waitFor(aMoment);
    if (dialog.m_job.running())
        dialog.exec();
    if (!dialog.m_problem.isEmpty())
        throw Failed{dialog.m_problem};
    return dialog.m_done;
}

// It closes when the work has taken back what it had begun.
void JobDialog::reject() {
    m_job.stop();
}

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/longwork.h"

#include <QEventLoop>
#include <QProgressDialog>

#include <stdexcept>

namespace slopebook::ui {

bool doLongWork(QWidget* parent, const QString& what, Job::Work work) {
    QProgressDialog shown(what, QProgressDialog::tr("&Stop"), 0, 1000, parent);
    shown.setWindowModality(Qt::WindowModal);
    shown.setAutoClose(false);
    shown.setAutoReset(false);
    shown.setMinimumDuration(300); // ms: short work shows nothing
    QEventLoop wait;
    bool done = false;
    QString problem;
    Job job;
    QObject::connect(&job, &Job::progressed, &shown, [&shown](int thousandths) {
        if (!shown.wasCanceled())
            shown.setValue(thousandths);
    });
    QObject::connect(&shown, &QProgressDialog::canceled, &job, &Job::stop);
    QObject::connect(&job, &Job::finished, &wait, [&] {
        done = true;
        wait.quit();
    });
    QObject::connect(&job, &Job::stopped, &wait, &QEventLoop::quit);
    QObject::connect(&job, &Job::failed, &wait, [&](const QString& why) {
        problem = why;
        wait.quit();
    });
    shown.setValue(0);
    job.start(std::move(work));
    wait.exec();
    if (!problem.isEmpty())
        throw std::runtime_error(problem.toStdString());
    return done;
}

} // namespace slopebook::ui

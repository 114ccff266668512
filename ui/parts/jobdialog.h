// SPDX-License-Identifier: GPL-3.0-or-later
// Long work that everything else waits for: how far it is, and Cancel.
#pragma once

#include "ui/parts/job.h"

#include <QDialog>

namespace slopebook::ui {

class JobDialog final : public QDialog {
    Q_OBJECT
public:
    /// Runs the work on a thread of its own and comes back when it has ended; what is over in a
    /// moment shows nothing. false: the coach stopped it, and what it had begun has been taken
    /// back. Throws Failed.
    static bool run(QWidget* parent, const QString& text, Job::Work work);

    /// What the work said when it failed, as a sentence for the coach.
    struct Failed {
        QString why{};
    };

    void reject() override; ///< asks the work to stop

private:
    JobDialog(QWidget* parent, const QString& text);

    QString m_problem;
    bool m_done = false;
    Job m_job; // last: its work ends before what it tells goes
};

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
// Long work behind a small window that shows how far it is and can stop it.
#pragma once

#include "ui/parts/job.h"

#include <QString>

class QWidget;

namespace slopebook::ui {

/// Does the work on a thread of its own and returns when it has ended: whether it was done. Stopped
/// by the coach: false. Throws std::runtime_error with a sentence for the coach where it failed.
bool doLongWork(QWidget* parent, const QString& what, Job::Work work);

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/openingcheck.h"

#include "core/log/hold.h"
#include "core/log/sound.h"
#include "core/model/errors.h"
#include "ui/window/openlog.h"
#include "ui/words/said.h"

#include <QCursor>
#include <QGuiApplication>

#include <future>
#include <memory>

namespace slopebook::ui {

namespace {
using Findings = std::vector<Words>;

/// What the check beside found, once it is done.
Findings awaited(const std::shared_future<Findings>& checked, const std::filesystem::path& file) {
    const bool waits = checked.wait_for(std::chrono::seconds(0)) != std::future_status::ready;
    if (waits)
        QGuiApplication::setOverrideCursor(Qt::WaitCursor);
    checked.wait();
    if (waits)
        QGuiApplication::restoreOverrideCursor();
    try {
        return checked.get();
    } catch (const std::exception&) {
        return log::findingsOf(file);
    }
}
} // namespace

OpeningCheck::OpeningCheck(const Logbook& logbook, QObject* parent) : QObject(parent) {
    const std::filesystem::path file = logbook.log().file();
    const auto found = std::make_shared<std::promise<Findings>>();
    const std::shared_future<Findings> checked = found->get_future().share();
    log::holdWrites(logbook.log(), [checked, file] {
        if (const Findings findings = awaited(checked, file); !findings.empty())
            throw LogError(LogError::Kind::Damaged, damageWords(findings));
    });
    connect(&m_job, &Job::finished, this, [this, checked] {
        if (const Findings& findings = checked.get(); findings.empty())
            Q_EMIT sound();
        else
            Q_EMIT damaged(said(damageWords(findings)));
    });
    m_job.start([found, file](const Progress&) {
        try {
            found->set_value(log::findingsOf(file));
        } catch (...) {
            found->set_exception(std::current_exception());
            throw;
        }
    });
}

} // namespace slopebook::ui

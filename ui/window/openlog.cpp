// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/openlog.h"

#include "core/exchange/twins.h"
#include "core/model/errors.h"
#include "core/model/phrases/questions.h"
#include "ui/words/said.h"

#include <QCoreApplication>

namespace slopebook::ui {

namespace {
// A check reads everything. A log up to the first size is checked before it is shown, up to the
// second meanwhile, and a larger one by its daily backup or `slopebook check`.
constexpr std::uintmax_t checkedBefore = 330'000;
constexpr std::uintmax_t checkedMeanwhile = 16'000'000;

struct Opening {
    Q_DECLARE_TR_FUNCTIONS(OpenLog)
};

/// Spellings of one name, from before names were compared by their keys.
QString twinsText(const log::Log& log) {
    QStringList sentences;
    try {
        for (const Words& each : exchange::twins(log))
            sentences << said(each);
    } catch (const LogError&) { // NOLINT(bugprone-empty-catch): told when the pages read it
    }
    return sentences.join(QLatin1Char(' '));
}

OpenedLog wrap(log::Log log, const QString& notice) {
    const std::filesystem::path file = log.file();
    std::error_code unknown;
    const auto size = std::filesystem::file_size(file, unknown);
    const bool mayCheck = !unknown && size <= checkedMeanwhile;
    const bool checks = mayCheck && size <= checkedBefore;
    const auto findings = checks ? log.check() : std::vector<Words>{};
    if (findings.empty()) {
        const QString told = notice.isEmpty() ? twinsText(log) : notice;
        return {.logbook = std::make_unique<Logbook>(std::move(log)),
                .notice = told,
                .unchecked = mayCheck && !checks};
    }
    const QString damage = said(damageWords(findings));
    return salvageLog(file, notice.isEmpty() ? damage : notice + QLatin1Char(' ') + damage);
}
} // namespace

Words damageWords(const std::vector<Words>& findings) {
    return questions::say(
        "This log is damaged (%1 found, the first: %2). It is open for reading only, "
        "and what is damaged is left out. Go back to a backup to go on.",
        findings.size(), findings.front());
}

OpenedLog salvageLog(const std::filesystem::path& file, const QString& notice) {
    return {.logbook = std::make_unique<Logbook>(log::Log::open(file, log::Access::Salvage)),
            .notice = notice,
            .damaged = true};
}

OpenedLog writeOnLog(const std::filesystem::path& file, const QString& notice) {
    return {.logbook =
                std::make_unique<Logbook>(log::Log::open(file, log::Access::SalvageAndWrite)),
            .notice = notice,
            .damaged = true};
}

OpenedLog openLog(const std::filesystem::path& file) {
    try {
        return wrap(log::Log::open(file), QString());
    } catch (const LogError& error) {
        const bool mayRead = error.kind() == LogError::Kind::ReadOnly ||
                             error.kind() == LogError::Kind::Damaged ||
                             error.kind() == LogError::Kind::Unavailable;
        if (!mayRead || !std::filesystem::exists(file))
            throw;
        if (error.kind() == LogError::Kind::Damaged)
            return salvageLog(file, said(error));
        return wrap(log::Log::open(file, log::Access::ReadOnly),
                    Opening::tr("This log can only be read: nothing typed here would be kept."));
    }
}

OpenedLog createLog(const std::filesystem::path& file) {
    return wrap(log::Log::create(file), QString());
}

} // namespace slopebook::ui

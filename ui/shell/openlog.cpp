// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/openlog.h"

#include "core/model/errors.h"

#include <QCoreApplication>
#include <QFile>

namespace slopebook::ui {

namespace {
// A check reads everything: a log over this size is checked by `slopebook check`.
constexpr std::uintmax_t checkedAtOpening = 16'000'000;

struct Opening {
    Q_DECLARE_TR_FUNCTIONS(OpenLog)
};

QString damageIn(const log::Log& log) {
    std::error_code unknown;
    const auto size = std::filesystem::file_size(log.file(), unknown);
    if (unknown || size > checkedAtOpening)
        return {};
    const std::vector<std::string> found = log.check();
    if (found.empty())
        return {};
    return Opening::tr(
               "This log is damaged (%1 found, the first: %2). It is open for reading only, "
               "and what is damaged is left out. Go back to a backup to go on.")
        .arg(found.size())
        .arg(QString::fromStdString(found.front()));
}

OpenedLog wrap(log::Log log, const QString& notice) {
    const QString damage = damageIn(log);
    if (damage.isEmpty())
        return {std::make_unique<Logbook>(std::move(log)), notice};
    const std::filesystem::path file = log.file();
    log = log::Log::open(file, log::Access::Salvage);
    return {.logbook = std::make_unique<Logbook>(std::move(log)),
            .notice = notice.isEmpty() ? damage : notice + QLatin1Char(' ') + damage,
            .damaged = true};
}
} // namespace

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
            return {.logbook =
                        std::make_unique<Logbook>(log::Log::open(file, log::Access::Salvage)),
                    .notice = QString::fromStdString(error.what()),
                    .damaged = true};
        return wrap(log::Log::open(file, log::Access::ReadOnly),
                    Opening::tr("This log can only be read: nothing typed here would be kept."));
    }
}

OpenedLog createLog(const std::filesystem::path& file) {
    return wrap(log::Log::create(file), QString());
}

std::filesystem::path pathOf(const QString& file) {
    return QFile::encodeName(file).toStdString();
}

QString nameOf(const std::filesystem::path& file) {
    return QFile::decodeName(QByteArray::fromStdString(file.string()));
}

} // namespace slopebook::ui

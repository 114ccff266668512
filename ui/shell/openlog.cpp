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
               "This log is damaged (%1 found, the first: %2). What still reads is shown; go back "
               "to "
               "a backup before anything is added.")
        .arg(found.size())
        .arg(QString::fromStdString(found.front()));
}

OpenedLog wrap(log::Log log, const QString& notice) {
    QString all = notice;
    if (const QString damage = damageIn(log); !damage.isEmpty())
        all += (all.isEmpty() ? QString() : QStringLiteral(" ")) + damage;
    return {std::make_unique<Logbook>(std::move(log)), all};
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
        const QString why =
            error.kind() == LogError::Kind::Damaged
                ? QString::fromStdString(error.what())
                : Opening::tr("This log can only be read: nothing typed here would be kept.");
        return wrap(log::Log::open(file, log::Access::ReadOnly), why);
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

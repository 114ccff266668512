// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/records/sessionchange.h"

#include "ui/words/format.h"

#include <QCoreApplication>
#include <QMessageBox>

#include <cstdlib>
#include <map>

namespace slopebook::ui {

namespace {

constexpr long monthOfDays = 31;

struct SessionChange {
    Q_DECLARE_TR_FUNCTIONS(SessionChange)
};

std::map<LiftId, int> setsPerLift(const log::Log& log, SessionId session) {
    std::map<LiftId, int> count;
    for (const log::PlacedSet& set : log.session(session).sets)
        ++count[set.lift];
    return count;
}

QString deviceNamed(const log::Log& log, const std::optional<DeviceId>& device) {
    for (const auto& known : log.devices())
        if (device == known.id)
            return text(known.value.name);
    return SessionChange::tr("not noted");
}

} // namespace

QString changeQuestion(const log::Log& log, SessionId session, const SessionHead& now) {
    const SessionHead before = log.session(session).head.value;
    QStringList asked;
    const long days = daysBetween(before.date, now.date);
    if (std::abs(days) > monthOfDays)
        asked << SessionChange::tr("Move the session from %1 to %2, %n day(s) away?", nullptr,
                                   static_cast<int>(std::abs(days)))
                     .arg(dateText(before.date), dateText(now.date));
    return asked.join(QStringLiteral("\n\n"));
}

QString changeNews(const log::Log& log, SessionId session, const SessionHead& before,
                   const SessionHead& now) {
    int sets = 0;
    for (const auto& [lift, count] : setsPerLift(log, session))
        sets += count;
    if (sets == 0)
        return {};
    QStringList news;
    if (before.date != now.date)
        news << SessionChange::tr("Moved to %1 with %n set(s), from %2. Ctrl+Z moves it back.",
                                  nullptr, sets)
                    .arg(dateText(now.date), dateText(before.date));
    return news.join(QLatin1Char(' '));
}

QString deviceNews(const log::Log& log, SessionId session, LiftId lift, const Conditions& before,
                   const Conditions& now) {
    const int sets = setsPerLift(log, session)[lift];
    if (sets == 0 || before.device == now.device)
        return {};
    return SessionChange::tr("Device of %n set(s): now %1, was %2. Ctrl+Z changes it back.",
                             nullptr, sets)
        .arg(deviceNamed(log, now.device), deviceNamed(log, before.device));
}

bool isSure(const QString& question, QWidget* parent) {
    return QMessageBox::question(parent, SessionChange::tr("Change the session"), question,
                                 QMessageBox::Yes | QMessageBox::No,
                                 QMessageBox::No) == QMessageBox::Yes;
}

} // namespace slopebook::ui

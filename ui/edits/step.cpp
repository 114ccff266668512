// SPDX-License-Identifier: GPL-3.0-or-later
// What an undo or redo is of, in words: what was done, to what, and whose it is.
#include "core/model/errors.h"
#include "ui/edits/edit.h"
#include "ui/words/format.h"

namespace slopebook::ui {

namespace {

/// The head of a session; nothing where it does not stand in the log just now.
std::optional<SessionHead> headOf(const log::Log& log, qint64 session) {
    try {
        return log.session(SessionId{session}).head.value;
    } catch (const LogError& error) {
        if (error.kind() != LogError::Kind::Conflict)
            throw;
        return std::nullopt;
    }
}

/// By its key alone: a log may hold thousands, and this is asked after every set. Nothing where it
/// does not stand in the log just now.
template <class Id, class OneOf>
QString storedName(const std::optional<Id>& id, const OneOf& oneOf) {
    if (!id)
        return {};
    try {
        return text(oneOf(*id).value.name);
    } catch (const LogError& error) {
        if (error.kind() != LogError::Kind::Conflict)
            throw;
        return {};
    }
}

} // namespace

Logbook::Step stepOf(const Edit& edit, const log::Log& log, LoadUnit unit) {
    Logbook::Step step{.what = edit.what(), .athlete = edit.athlete(), .lift = edit.lift()};
    QString day;
    if (edit.session() != 0) {
        if (const auto head = headOf(log, edit.session())) {
            step.session = SessionId{edit.session()};
            step.athlete = head->athlete;
            day = dateText(head->date);
        }
    }
    QStringList of{edit.object(unit),
                   storedName(step.lift, [&](LiftId id) { return log.lift(id); }),
                   storedName(step.athlete, [&](AthleteId id) { return log.athlete(id); }), day};
    of.removeAll(QString());
    of.removeDuplicates(); // a session's own day
    step.words = of.isEmpty()
                     ? edit.text()
                     : QStringLiteral("%1 (%2)").arg(edit.text(), of.join(QStringLiteral(", ")));
    return step;
}

} // namespace slopebook::ui

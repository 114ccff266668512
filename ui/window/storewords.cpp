// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/storewords.h"

#include "core/meetings/patience.h"
#include "core/store/failure.h"
#include "ui/window/mergerows.h"
#include "ui/words/format.h"
#include "ui/words/said.h"

#include <QCoreApplication>
#include <QLocale>
#include <QTreeWidget>

namespace slopebook::ui {

namespace {
struct Store {
    Q_DECLARE_TR_FUNCTIONS(Store)
};

QString briefly(store::StoreError::Kind kind) {
    using Kind = store::StoreError::Kind;
    switch (kind) {
    case Kind::NoLibrary:
        return Store::tr("PostgreSQL's library is not on this machine");
    case Kind::Unresolved:
        return Store::tr("no machine of that name is known");
    case Kind::Unreachable:
        return Store::tr("nobody answers there");
    case Kind::Starting:
        return Store::tr("it is starting, or full");
    case Kind::WrongPassword:
        return Store::tr("wrong password, or no such login");
    case Kind::NoPassword:
        return Store::tr("no password was found");
    case Kind::NotLetIn:
        return Store::tr("it does not let this login in");
    case Kind::NoSuchDatabase:
        return Store::tr("no such database");
    case Kind::Certificate:
        return Store::tr("its certificate does not fit");
    case Kind::NoEncryption:
        return Store::tr("it does not encrypt");
    case Kind::NoStore:
        return Store::tr("there is no store of this log");
    case Kind::OtherLayout:
        return Store::tr("it is of another version");
    case Kind::NotAllowed:
        return Store::tr("this login has no right to it");
    case Kind::Full:
        return Store::tr("its disk is full");
    case Kind::Busy:
        return Store::tr("it is busy");
    case Kind::Lost:
        return Store::tr("the connection was lost");
    case Kind::Taken:
    case Kind::Orphan:
    case Kind::Refused:
        break;
    }
    return Store::tr("it refused");
}

QString briefly(LogError::Kind kind) {
    switch (kind) {
    case LogError::Kind::ReadOnly:
        return Store::tr("the log is open for reading only");
    case LogError::Kind::Damaged:
        return Store::tr("the log is damaged");
    case LogError::Kind::Full:
        return Store::tr("this disk is full");
    case LogError::Kind::Busy:
        return Store::tr("the log is busy");
    default:
        return Store::tr("the log could not be read or written");
    }
}

/// Whether it is the store, or its server, that says so: else nobody answered.
bool answered(store::StoreError::Kind kind) {
    using Kind = store::StoreError::Kind;
    switch (kind) {
    case Kind::NoLibrary:
    case Kind::Unresolved:
    case Kind::Unreachable:
    case Kind::Lost:
        return false;
    default:
        return true;
    }
}

/// Who asks once more with the same password is refused once more, and at some servers shut out.
/// Who is not let in may stand in another network: asked again by itself.
bool isOfLogin(store::StoreError::Kind kind) {
    using Kind = store::StoreError::Kind;
    return kind == Kind::WrongPassword || kind == Kind::NoPassword;
}

/// "14:05", of another day with that.
QString timeText(const QDateTime& at, const QDateTime& now) {
    const QDateTime here = at.toLocalTime();
    const QString time = here.time().toString(QStringLiteral("HH:mm"));
    if (here.date() == now.toLocalTime().date())
        return time;
    return QLocale().toString(here.date(), QLocale::ShortFormat) + u' ' + time;
}

/// What stands behind the first clauses of the line.
QString withMore(QStringList clauses, const StoreState& state) {
    if (state.joined.waiting > 0)
        clauses << Store::tr("%n things wait", nullptr, static_cast<int>(state.joined.waiting));
    if (state.choices > 0)
        clauses << Store::tr("%n choices are open", nullptr, static_cast<int>(state.choices));
    return clauses.join(QStringLiteral("; "));
}

/// Where it is, and as whom; as it was given, where it cannot be read just now.
QString whereText(const meetings::Joined& joined) {
    try {
        const store::Asked asked = store::Address::read(joined.connection).asked();
        if (joined.squad.empty()) // the names of squads come with the first meeting
            return Store::tr("This log meets the store %1 at %2 as %3.")
                .arg(text(asked.database), text(asked.place), text(asked.login));
        return Store::tr("This log meets the store %1 at %2 as %3; what is new here goes to %4.")
            .arg(text(asked.database), text(asked.place), text(asked.login), text(joined.squad));
    } catch (const std::exception&) {
        return Store::tr("This log meets the store %1.").arg(text(joined.connection));
    }
}
} // namespace

StoreTrouble unableToMeet(log::Access access, const QDateTime& at) {
    return {.error = {}, .access = access, .reached = true, .waitsForCoach = true, .since = at};
}

StoreTrouble troubleOf(const std::exception_ptr& error, const QDateTime& at) {
    StoreTrouble trouble{.error = error, .since = at};
    try {
        std::rethrow_exception(error);
    } catch (const store::StoreError& failure) {
        trouble.reached = answered(failure.kind());
        trouble.waitsForCoach = isOfLogin(failure.kind());
    } catch (const std::exception&) { // NOLINT(bugprone-empty-catch): something here
    }
    return trouble;
}

QString StoreTrouble::brief() const {
    if (!error)
        return briefly(access == log::Access::ReadOnly ? LogError::Kind::ReadOnly
                                                       : LogError::Kind::Damaged);
    try {
        std::rethrow_exception(error);
    } catch (const store::StoreError& failure) {
        return briefly(failure.kind());
    } catch (const meetings::WaitsForPause&) {
        return Store::tr("it waits until nothing is entered for a moment");
    } catch (const LogError& failure) {
        return briefly(failure.kind());
    } catch (const std::exception&) {
        return Store::tr("something is wrong");
    }
}

QString StoreTrouble::whole() const {
    if (!error)
        return access == log::Access::ReadOnly
                   ? Store::tr("This log is open for reading only: it meets no store.")
                   : Store::tr("This log is damaged: it meets no store, so that nothing of the "
                               "damage goes to others.");
    try {
        std::rethrow_exception(error);
    } catch (const std::exception& failure) {
        QString words = said(failure);
        if (waitsForCoach)
            words +=
                u' ' + Store::tr("It is not tried again by itself: Log, Shared store, Meet now "
                                 "does.");
        return words;
    }
}

QString storeLine(const StoreState& state, const QDateTime& now) {
    if (state.meets)
        return Store::tr("Meeting the store…");
    const QString at = timeText(state.met, now);
    if (state.trouble) {
        const StoreTrouble& trouble = *state.trouble;
        const QString why = (trouble.reached ? Store::tr("Store not met since %1: %2")
                                             : Store::tr("Store not reached since %1: %2"))
                                .arg(timeText(trouble.since, now), trouble.brief());
        return withMore({why, state.met.isValid() ? Store::tr("last met: %1").arg(at)
                                                  : Store::tr("it was not met yet")},
                        state) +
               QStringLiteral("; ") + Store::tr("work goes on");
    }
    if (!state.met.isValid())
        return withMore({Store::tr("The store was not met yet")}, state);
    const QDateTime here = state.met.toLocalTime();
    return withMore({(here.date() == now.toLocalTime().date() ? Store::tr("Met the store at %1")
                                                              : Store::tr("Met the store on %1"))
                         .arg(at)},
                    state);
}

QString briefStoreLine(const StoreState& state) {
    if (state.meets)
        return Store::tr("Meeting…");
    const bool choices = state.choices > 0;
    if (state.trouble)
        return choices ? Store::tr("Store not met; choices are open") : Store::tr("Store not met");
    return choices ? Store::tr("Store: choices are open") : Store::tr("Store met");
}

QStringList storeSentences(const StoreState& state, const QDateTime& now) {
    QStringList all{whereText(state.joined)};
    if (state.trouble)
        all << Store::tr("It was not met since %1. %2")
                   .arg(timeText(state.trouble->since, now), state.trouble->whole());
    if (state.met.isValid())
        all << Store::tr("Last meeting: %1.").arg(timeText(state.met, now));
    if (state.choices > 0)
        all << Store::tr("%n choices are open", nullptr, static_cast<int>(state.choices)) + u'.';
    if (const auto waiting = state.joined.waiting; waiting > 0)
        all << (state.held > 0
                    ? Store::tr("%n things wait, %1 of them not this login's to write: they stay "
                                "in this log alone.",
                                nullptr, static_cast<int>(waiting))
                          .arg(state.held)
                    : Store::tr("%n things wait for the next meeting.", nullptr,
                                static_cast<int>(waiting)));
    else if (state.met.isValid())
        all << Store::tr("Nothing waits.");
    if (!state.newsAt.isValid())
        return all;
    const QLocale locale;
    const desks::MergeReport& taken = state.news.taken;
    const auto number = [&](auto count) { return locale.toString(static_cast<qulonglong>(count)); };
    const bool counted = taken.added + taken.changed + taken.removed > 0 || state.news.went > 0;
    if (counted)
        all << Store::tr("Last news, %1: %2 new, %3 changed, %4 removed came; %5 went out "
                         "(athletes, sessions, sets and all else together).")
                   .arg(timeText(state.newsAt, now), number(taken.added), number(taken.changed),
                        number(taken.removed), number(state.news.went));
    else // a squad that was opened, an athlete who went
        all << Store::tr("Last news, %1: in the list.").arg(timeText(state.newsAt, now));
    if (state.news.wentBack)
        all << Store::tr("The store had gone back to a backup, and was told again what it lacked.");
    return all;
}

bool isNews(const meetings::MeetingReport& report) {
    return report.came > 0 || report.went > 0 || !report.taken.nothingNew ||
           !report.leftOut.empty() || !report.departed.empty() || !report.squadsCame.empty() ||
           !report.squadsWent.empty() || report.wentBack;
}

void fillNews(QTreeWidget& list, const meetings::MeetingReport& report, LoadUnit unit) {
    const auto add = [&](const QString& what, const QString& thing, const QString& more) {
        addMergeRow(list, {what, thing, more});
    };
    fillMergeRows(list, report.taken, unit);
    for (const meetings::Departing& one : report.departed)
        add(Store::tr("departed"), text(one.name),
            one.stayed ? Store::tr("to another squad; what was not sent stays here")
                       : Store::tr("to another squad"));
    for (const std::string& squad : report.squadsCame)
        add(Store::tr("opened"), text(squad), Store::tr("a squad that this login sees now"));
    for (const std::string& squad : report.squadsWent)
        add(Store::tr("closed"), text(squad),
            Store::tr("a squad that this login sees no more; what came of it stays"));
    for (const Words& one : report.leftOut)
        add(Store::tr("left out"), said(one, unit),
            Store::tr("stays in the store, and is looked at again next time"));
}

} // namespace slopebook::ui

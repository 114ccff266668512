// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/monkey/rounds.h"

#include "tests/log/builders.h"

#include <QElapsedTimer>

#include <algorithm>

namespace slopebook::monkey {

namespace {
constexpr qsizetype beginning = 24; // of what was found, before what it was found of

QStringList listIn(const char* variable) {
    return qEnvironmentVariable(variable).split(QLatin1Char(','), Qt::SkipEmptyParts);
}

bool alike(const Found& one, const Found& other) {
    return one.kind == other.kind && one.what.left(beginning) == other.what.left(beginning);
}
} // namespace

Plan plannedByHand() {
    Plan plan;
    for (const QString& kind : listIn("SLOPEBOOK_MONKEY_ONLY"))
        plan.only.insert(kind.toStdString());
    const QStringList kept = listIn("SLOPEBOOK_MONKEY_KEPT");
    if (!kept.isEmpty())
        plan.steps = kept.last().toInt() + 1;
    for (int step = 0; !kept.isEmpty() && step < plan.steps; ++step)
        if (!kept.contains(QString::number(step)))
            plan.without.insert(step);
    return plan;
}

std::optional<Found> go(const Plan& plan, std::map<std::string, Tally>& tally) {
    const test::Folder folder;
    fillDesk(folder.path());
    Monkey monkey(folder.path(), plan);
    std::optional<Found> found;
    try {
        monkey.run();
    } catch (const Finding& finding) {
        found = Found{.step = monkey.step(),
                      .kind = monkey.kind(),
                      .what = QString::fromStdString(finding.what()),
                      .trace = {monkey.trace().begin(), monkey.trace().end()}};
    }
    for (const auto& [kind, one] : monkey.tally()) {
        tally[kind].steps += one.steps;
        tally[kind].edits += one.edits;
    }
    return found;
}

std::pair<Plan, Found> shortened(Plan plan, Found found, int seconds) {
    QElapsedTimer since;
    since.start();
    std::map<std::string, Tally> unused;
    plan.steps = found.step + 1;
    for (int size = std::max(1, found.step / 2); size >= 1; size /= 2)
        for (int from = found.step - size; from > -size; from -= size) {
            if (since.elapsed() > seconds * 1000LL)
                return {plan, found};
            Plan less = plan;
            for (int i = std::max(0, from); i < from + size; ++i)
                less.without.insert(i);
            if (less.without == plan.without)
                continue;
            const auto still = go(less, unused);
            if (!still || !alike(*still, found))
                continue;
            less.steps = still->step + 1;
            plan = less;
            found = *still;
        }
    return {plan, found};
}

QString told(const Plan& plan, const Found& found) {
    QStringList kept;
    for (int step = 0; step < plan.steps; ++step)
        if (!plan.without.contains(step))
            kept << QString::number(step);
    const QString again = plan.without.empty()
                              ? QStringLiteral("SLOPEBOOK_MONKEY_STEPS=%1").arg(plan.steps)
                              : QStringLiteral("SLOPEBOOK_MONKEY_KEPT=") + kept.join(u',');
    return QStringLiteral("Found by seed %1 at step %2, \"%3\":\n%4\nIts steps:\n%5\n"
                          "Again: SLOPEBOOK_MONKEY_SEED=%1 %6")
        .arg(plan.seed)
        .arg(found.step)
        .arg(QString::fromStdString(found.kind), found.what, found.trace.join(u'\n'), again);
}

Tally sum(const std::map<std::string, Tally>& tally) {
    Tally all;
    for (const auto& [kind, one] : tally) {
        all.steps += one.steps;
        all.edits += one.edits;
    }
    return all;
}

QString table(const std::map<std::string, Tally>& tally) {
    const auto row = [](const std::string& kind, const Tally& one) {
        return QStringLiteral("%1 %2 steps, %3 edits (%4 %)\n")
            .arg(QString::fromStdString(kind), -30)
            .arg(one.steps, 7)
            .arg(one.edits, 7)
            .arg(one.steps > 0 ? 100.0 * one.edits / one.steps : 0, 0, 'f', 1);
    };
    QString all = row("all", sum(tally));
    for (const auto& [kind, one] : tally)
        all += row(kind, one);
    return all;
}

} // namespace slopebook::monkey

// SPDX-License-Identifier: GPL-3.0-or-later
// What is done with attempts that stand: left out, changed, removed.
#include "ui/athlete/battery/attemptsview.h"
#include "ui/athlete/battery/attemptwords.h"
#include "ui/typed/attemptline.h"
#include "ui/words/format.h"
#include "ui/words/readable.h"

#include <QInputDialog>
#include <QTableView>

namespace slopebook::ui {

std::optional<AttemptsView::Row> AttemptsView::selected() const {
    const QModelIndex at = m_attemptTable->currentIndex();
    if (!at.isValid() || static_cast<std::size_t>(at.row()) >= m_rows.size())
        return std::nullopt;
    return m_rows[static_cast<std::size_t>(at.row())];
}

void AttemptsView::selectAttempt(int row) {
    m_attemptTable->selectRow(row);
}

void AttemptsView::askReason() {
    const auto row = selected();
    if (!row || !row->test)
        return;
    const Battery battery = m_logbook.log().battery(session().value());
    if (!battery.tests[*row->test].attempts[row->attempt].excluded.empty()) {
        leaveOut({});
        return;
    }
    bool given = false;
    const QString reason =
        QInputDialog::getText(this, tr("Leave the attempt out"), tr("Why does it not count?"),
                              QLineEdit::Normal, {}, &given);
    if (given && !reason.trimmed().isEmpty())
        leaveOut(reason.trimmed());
}

void AttemptsView::leaveOut(const QString& reason) {
    guarded([&] {
        const auto row = selected();
        if (!row || !row->test)
            return;
        Battery battery = m_logbook.log().battery(session().value());
        battery.tests.at(*row->test).attempts.at(row->attempt).excluded = utf8(reason);
        keep(battery, reason.isEmpty() ? tr("include attempt") : tr("exclude attempt"));
    });
}

void AttemptsView::askChange() {
    const auto row = selected();
    if (!row || !row->test)
        return;
    const Battery battery = m_logbook.log().battery(session().value());
    const TestAttempts& test = battery.tests[*row->test];
    const auto* kind = kindOf(test.kind);
    if (!kind)
        return;
    QString typed = attemptText(test.attempts[row->attempt]);
    for (bool given = true; given;) {
        typed = QInputDialog::getText(
            this, tr("Change the attempt"),
            tr("%1, attempt %2:").arg(testText(kind->value.name)).arg(row->attempt + 1),
            QLineEdit::Normal, typed, &given);
        if (given && changeSelected(typed))
            return;
    }
}

bool AttemptsView::changeSelected(const QString& typed) {
    bool changed = false;
    guarded([&] {
        const auto row = selected();
        if (!row || !row->test)
            return;
        Battery battery = m_logbook.log().battery(session().value());
        TestAttempts& test = battery.tests.at(*row->test);
        Attempt& attempt = test.attempts.at(row->attempt);
        TestKind kind = kindOf(test.kind)->value;
        kind.twoSided = false; // the side stays
        const auto read = readAttemptLine(typed.toStdU16String(), kind);
        if (const auto* problem = std::get_if<LineProblem>(&read)) {
            LineProblem told = *problem;
            told.instead.clear(); // the dialog has no way to put it there
            say(problemText(told, typed, kind, m_logbook.loadUnit()), true);
            return;
        }
        const auto& attempts = std::get<TypedAttempts>(read).attempts;
        if (attempts.size() != 1) {
            say(tr("One attempt was expected."), true);
            return;
        }
        Attempt now = attempts.front();
        now.side = attempt.side;
        changed = true;
        if (now == attempt)
            return;
        attempt = now;
        keep(battery, tr("change attempt"));
    });
    return changed;
}

void AttemptsView::removeSelected() {
    guarded([this] {
        const auto row = selected();
        if (!row)
            return;
        Battery battery = m_logbook.log().battery(session().value());
        if (row->test) {
            auto& attempts = battery.tests.at(*row->test).attempts;
            attempts.erase(attempts.begin() + static_cast<long>(row->attempt));
        } else {
            battery.gaps.erase(battery.gaps.begin() + static_cast<long>(row->attempt));
        }
        keep(battery, row->test ? tr("remove attempt") : tr("remove gap"));
    });
}

} // namespace slopebook::ui

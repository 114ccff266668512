// SPDX-License-Identifier: GPL-3.0-or-later
// What the window shows, and whether it is what was chosen and what is on disk.
#include "tests/ui/monkey/monkey.h"
#include "ui/floor/entry/setmodel.h"
#include "ui/window/workspace.h"
#include "ui/words/format.h"
#include "ui/words/units.h"

#include <QComboBox>
#include <QDateEdit>
#include <QLabel>
#include <QLineEdit>
#include <QTableView>
#include <QUndoStack>

#include <cmath>

namespace slopebook::monkey {

namespace {
/// "62.5" and "62,5" as grams; 0 for nothing.
long gramsOf(QString text) {
    return std::lround(1000 * text.remove(QLatin1Char('!')).replace(u',', u'.').toDouble());
}

QString told(const Shown& one) {
    return QStringLiteral("%1, %2, session %3 of %4, %5, %6, %7 kg")
        .arg(QString::fromStdString(one.athlete), QString::fromStdString(one.lift))
        .arg(one.session)
        .arg(one.day, one.device, one.place, one.body);
}
} // namespace

QWidget& Monkey::bar() const {
    return *part<QComboBox>("sessions").parentWidget();
}

QLineEdit& Monkey::line() const {
    return part<QLineEdit>("setLine");
}

QDateEdit& Monkey::dayField() const {
    return *bar().findChild<QDateEdit*>();
}

QComboBox& Monkey::deviceField() const {
    for (auto* combo : bar().findChildren<QComboBox*>(Qt::FindDirectChildrenOnly))
        if (combo->objectName() != QLatin1String("sessions"))
            return *combo;
    fail(QStringLiteral("The window has no device"));
}

QLineEdit& Monkey::placeField() const {
    for (auto* field : bar().findChildren<QLineEdit*>(Qt::FindDirectChildrenOnly))
        if (field->objectName() != QLatin1String("bodyMass"))
            return *field;
    fail(QStringLiteral("The window has no place"));
}

QLineEdit& Monkey::bodyField() const {
    return part<QLineEdit>("bodyMass");
}

QTableView& Monkey::setTable() const {
    return part<QTableView>("sets");
}

QString Monkey::answer() const {
    return part<QLabel>("setAnswer").text();
}

int Monkey::undoIndex() const {
    return m_window->workspace()->logbook().undoStack()->index();
}

QString Monkey::dayShown() const {
    // A field without the keys writes its day as the window does.
    const QDateEdit& day = dayField();
    const bool written = day.text() == ui::dateText(ui::modelDate(day.date()));
    return written ? day.date().toString(Qt::ISODate) : day.text();
}

Shown Monkey::shown() const {
    const auto& sessions = part<QComboBox>("sessions");
    const bool noDevice = deviceField().currentIndex() <= 0;
    return {.athlete = m_window->workspace()->athleteName().toStdString(),
            .lift = m_window->workspace()->liftName().toStdString(),
            .session = sessions.currentData().toLongLong(),
            .day = dayShown(),
            .device = noDevice ? QString() : deviceField().currentText(),
            .place = placeField().text(),
            .body = bodyField().text()};
}

void Monkey::compareShown() {
    const Shown now = shown();
    const bool other = now.athlete != m_chosen.athlete || now.lift != m_chosen.lift ||
                       now.session != m_chosen.session;
    if (!m_free && other)
        fail(QStringLiteral("Nobody chose what is shown. Chosen: %1\nShown: %2")
                 .arg(told(m_chosen), told(now)));
    m_chosen = now;
    // A day typed for a session to come stays for as long as it stands there.
    if (now.session != keyToCome || (m_free && now.day.toStdString() != m_newDay))
        m_newDay.reset();
    if (now.session == keyToCome)
        return;
    const auto found = m_book.sessions.find(now.session);
    if (found == m_book.sessions.end())
        fail(QStringLiteral("A session is shown that is not on disk"));
    const SessionEntry& session = found->second;
    // Where a lift has neither sets nor conditions yet, another's are offered.
    const auto held = session.under.find(now.lift);
    const UnderEntry under = held != session.under.end() ? held->second
                             : session.sets.contains(now.lift)
                                 ? UnderEntry{}
                                 : UnderEntry{now.device.toStdString(), now.place.toStdString()};
    if (session.athlete != now.athlete || session.day != now.day.toStdString() ||
        under.device != now.device.toStdString() || under.place != now.place.toStdString() ||
        session.bodyGrams != gramsOf(now.body))
        fail(
            QStringLiteral("What is shown is not on disk. Shown: %1\nOn disk: %2, %3, %4, %5, %6 g")
                .arg(told(now), QString::fromStdString(session.athlete),
                     QString::fromStdString(session.day), QString::fromStdString(under.device),
                     QString::fromStdString(under.place))
                .arg(session.bodyGrams));
    const auto sets = session.sets.find(now.lift);
    const auto* model = setTable().model();
    const int wanted = sets == session.sets.end() ? 0 : static_cast<int>(sets->second.size());
    bool alike = model->rowCount() == wanted;
    for (int row = 0; alike && row < wanted; ++row)
        alike = gramsOf(model->index(row, ui::SetModel::Load).data().toString()) ==
                sets->second[static_cast<std::size_t>(row)].grams;
    if (!alike)
        fail(QStringLiteral("The table of sets does not show what is on disk: %1 rows for %2")
                 .arg(model->rowCount())
                 .arg(wanted));
}

} // namespace slopebook::monkey

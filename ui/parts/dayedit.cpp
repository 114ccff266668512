// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/dayedit.h"

#include "ui/words/format.h"
#include "ui/words/readable.h"

#include <QKeyEvent>
#include <QLineEdit>
#include <QLocale>
#include <QRegularExpression>

#include <utility>

namespace slopebook::ui {

namespace {

constexpr int longestDay = 40, firstYear = 1900, lastYear = 2199;

bool isMark(QChar c) {
    return c == QLatin1Char('-') || c == QLatin1Char('.') || c == QLatin1Char('/');
}

/// How the desktop writes a day short, its year last.
struct ShortForm {
    QString mark;
    bool dayFirst = true;
};
ShortForm shortForm() {
    static const QRegularExpression form(QStringLiteral("^(d+|M+)([-./]) ?(d+|M+)\\2 ?y"));
    const auto m = form.match(QLocale().dateFormat(QLocale::ShortFormat));
    return {m.captured(2), m.captured(1).startsWith(QLatin1Char('d'))};
}

std::optional<QDate> validDay(int year, int month, int day) {
    const QDate date(year, month, day);
    return date.isValid() && year >= firstYear && year <= lastYear ? std::optional(date)
                                                                   : std::nullopt;
}

/// A day as it is typed: 2026-11-24 (also with points or strokes, and 20261124), or as the desktop
/// writes it short (24.11.2026, 11/24/2026; two digits of a year are of this century). Nothing for
/// what is neither, or no day.
std::optional<QDate> readDigits(const QString& typed) {
    static const QRegularExpression plain(QStringLiteral("^(\\d{4})(\\d\\d)(\\d\\d)$"));
    static const QRegularExpression yearFirst(
        QStringLiteral("^(\\d{4})([-./])(\\d{1,2})\\2(\\d{1,2})$"));
    static const QRegularExpression yearLast(
        QStringLiteral("^(\\d{1,2})([-./]) ?(\\d{1,2})\\2 ?(\\d{4}|\\d\\d)$"));
    const QString text = typed.trimmed();
    if (const auto m = plain.match(text); m.hasMatch())
        return validDay(m.captured(1).toInt(), m.captured(2).toInt(), m.captured(3).toInt());
    if (const auto m = yearFirst.match(text); m.hasMatch())
        return validDay(m.captured(1).toInt(), m.captured(3).toInt(), m.captured(4).toInt());
    if (const auto m = yearLast.match(text); m.hasMatch()) {
        const int one = m.captured(1).toInt(), two = m.captured(3).toInt();
        const bool century = m.capturedLength(4) == 2; // left away
        const int year = m.captured(4).toInt() + (century ? 2000 : 0);
        const ShortForm own = shortForm();
        // With points the day stands first everywhere; any other mark means the desktop's form.
        if (m.captured(2) == own.mark)
            return own.dayFirst ? validDay(year, two, one) : validDay(year, one, two);
        if (m.captured(2) == QLatin1String(".") && !century)
            return validDay(year, two, one);
    }
    return std::nullopt;
}

/// As digits, or as the window writes days ("4 May 2026").
std::optional<QDate> readDay(const QString& typed) {
    if (const auto day = readDigits(typed))
        return day;
    const auto written = dateFromText(typed);
    return written ? std::optional(qtDate(*written)) : std::nullopt;
}

} // namespace

DayEdit::DayEdit(QWidget* parent) : QDateEdit(parent) {
    setCalendarPopup(true);
    setDisplayFormat(QStringLiteral("yyyy-MM-dd"));
    setKeyboardTracking(false);
    lineEdit()->setMaxLength(longestDay);
    // Qt's own field knows parts: it moves the cursor between them, and takes what is in one for
    // itself when the next is reached. This one is a line like any other.
    disconnect(lineEdit(), SIGNAL(cursorPositionChanged(int, int)), this, nullptr);
    lineEdit()->installEventFilter(this);
    connect(lineEdit(), &QLineEdit::textEdited, this, [this] { m_typed = true; });
}

DayEdit::DayEdit(Date date, QWidget* parent) : DayEdit(parent) {
    setDate(qtDate(date));
}

QValidator::State DayEdit::validate(QString& input, int& /*at*/) const {
    return dayOf(input) ? QValidator::Acceptable : QValidator::Intermediate;
}

QDateTime DayEdit::dateTimeFromText(const QString& typed) const {
    return dayOf(typed).value_or(date()).startOfDay();
}

/// What stands there unchanged is its day, whatever the language writes.
std::optional<QDate> DayEdit::dayOf(const QString& typed) const {
    return typed == dateText(modelDate(date())) ? std::optional(date()) : readDay(typed);
}

QString DayEdit::textFromDateTime(const QDateTime& day) const {
    return hasFocus() ? QDateEdit::textFromDateTime(day) : dateText(modelDate(day.date()));
}

bool DayEdit::take() {
    const auto day = dayOf(lineEdit()->text());
    if (!day)
        return false;
    m_typed = false;
    const QSignalBlocker quiet(lineEdit());
    setDate(*day);
    takeBack(); // typed in another form it is shown in the field's
    return true;
}

void DayEdit::takeBack() {
    const QSignalBlocker quiet(lineEdit());
    m_typed = false;
    m_over = true;
    lineEdit()->setText(textFromDateTime(dateTime()));
    if (hasFocus())
        lineEdit()->selectAll();
}

QString DayEdit::problem() const {
    const QString typed = lineEdit()->text().trimmed();
    if (dayOf(typed))
        return {};
    return tr("\"%1\" is no day: expected one such as %2 or %3.")
        .arg(typed, QDateEdit::textFromDateTime(dateTime()),
             QLocale().toString(date(), QLocale::ShortFormat));
}

QAbstractSpinBox::StepEnabled DayEdit::stepEnabled() const {
    return isReadOnly() ? StepNone : StepUpEnabled | StepDownEnabled;
}

// A day at a time, whatever part the cursor is in.
void DayEdit::stepBy(int steps) {
    if (take())
        setDate(date().addDays(steps));
}

bool DayEdit::eventFilter(QObject* watched, QEvent* event) {
    // The click that comes into the field marks the day; the next one places the cursor.
    if (watched == lineEdit() && event->type() == QEvent::MouseButtonPress) {
        m_over = true;
        if (std::exchange(m_justClicked, false)) {
            lineEdit()->selectAll();
            return true;
        }
    }
    return QDateEdit::eventFilter(watched, event);
}

void DayEdit::focusInEvent(QFocusEvent* event) {
    QAbstractSpinBox::focusInEvent(event); // not the part of it that Qt would select
    if (!m_typed) {                        // in digits, to be typed over
        const QSignalBlocker quiet(lineEdit());
        lineEdit()->setText(textFromDateTime(dateTime()));
    }
    m_over = true;
    m_justClicked = event->reason() == Qt::MouseFocusReason;
    if (event->reason() != Qt::PopupFocusReason && event->reason() != Qt::ActiveWindowFocusReason)
        lineEdit()->selectAll();
}

void DayEdit::focusOutEvent(QFocusEvent* event) {
    const QString typed = lineEdit()->text();
    const QString why = take() ? QString() : problem();
    if (!why.isEmpty())
        takeBack(); // Qt would make a day of it
    QAbstractSpinBox::focusOutEvent(event);
    if (why.isEmpty())
        return;
    {
        // What was typed is not thrown away: it is for the coach to mend.
        const QSignalBlocker quiet(lineEdit());
        lineEdit()->setText(typed);
    }
    m_typed = true;
    Q_EMIT refused(why);
}

void DayEdit::hideEvent(QHideEvent* event) {
    if (!take())
        takeBack();
    QDateEdit::hideEvent(event);
}

void DayEdit::put(int from, int length, const QString& with) {
    lineEdit()->setSelection(from, length);
    lineEdit()->insert(with);
    m_typed = true;
}

void DayEdit::keyPressEvent(QKeyEvent* event) {
    m_justClicked = false;
    const QString typed = event->text();
    const bool plain = !(event->modifiers() & (Qt::ControlModifier | Qt::AltModifier));
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        if (take()) {
            QAbstractSpinBox::keyPressEvent(event);
            return;
        }
        lineEdit()->selectAll();
        Q_EMIT refused(problem());
        return;
    }
    if (plain && typed.size() == 1 && !isReadOnly() &&
        (typed.front().isDigit() || isMark(typed.front()))) {
        if (typed.front().isDigit())
            typeDigit(typed.front());
        else
            typeMark(typed.front());
        return;
    }
    switch (event->key()) {
    case Qt::Key_Up:
    case Qt::Key_Down:
    case Qt::Key_PageUp:
    case Qt::Key_PageDown:
        QAbstractSpinBox::keyPressEvent(event);
        return;
    case Qt::Key_Backspace:
    case Qt::Key_Delete:
        m_over = false;
        break;
    case Qt::Key_Home:
    case Qt::Key_End:
    case Qt::Key_Left:
    case Qt::Key_Right:
        m_over = true;
        break;
    case Qt::Key_Escape:
        if (m_typed) {
            takeBack();
            lineEdit()->selectAll();
            return;
        }
        break;
    default:
        break;
    }
    QAbstractSpinBox::keyPressEvent(event);
}

void DayEdit::typeDigit(QChar digit) {
    if (lineEdit()->hasSelectedText()) {
        m_over = false;
        put(lineEdit()->selectionStart(), static_cast<int>(lineEdit()->selectedText().size()),
            digit);
        return;
    }
    const QString text = lineEdit()->text();
    int at = lineEdit()->cursorPosition();
    const auto markAt = [&](int i) { return i < text.size() && isMark(text[i]); };
    // A part that is full is followed by the next one.
    static const QRegularExpression year(QStringLiteral("^\\d{4}$"));
    m_over = m_over || (markAt(at) && year.match(text.left(at)).hasMatch());
    if (!m_over) {
        put(at, 0, digit);
        return;
    }
    if (markAt(at))
        ++at;
    put(at, at < text.size() ? 1 : 0, digit);
}

void DayEdit::typeMark(QChar mark) {
    if (lineEdit()->hasSelectedText()) {
        m_over = false;
        put(lineEdit()->selectionStart(), static_cast<int>(lineEdit()->selectedText().size()),
            mark);
        return;
    }
    const QString text = lineEdit()->text();
    const int at = lineEdit()->cursorPosition();
    int next = at;
    while (next < text.size() && text[next].isDigit())
        ++next;
    // At a part's beginning the digit typed last has moved over its mark already.
    if (m_over && at > 0 && isMark(text[at - 1]))
        return;
    if (!m_over && !(next == at && at < text.size())) {
        put(at, 0, mark);
        return;
    }
    // What is left of the part goes. A date that does not begin with its year is another one
    // altogether: nothing of the old one may become a part of it.
    static const QRegularExpression begun(QStringLiteral("^\\d{4}([-./]\\d{1,2})?$"));
    if (!begun.match(text.left(at)).hasMatch()) {
        put(at, static_cast<int>(text.size()) - at, mark);
        m_over = false;
        return;
    }
    put(at, next - at + (next < text.size() ? 1 : 0), mark);
    m_over = true;
}

} // namespace slopebook::ui

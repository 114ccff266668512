// SPDX-License-Identifier: GPL-3.0-or-later
// A date field with a calendar, the same everywhere.
#pragma once

#include "core/model/date.h"

#include <QDateEdit>

#include <optional>

namespace slopebook::ui {

/// Shows the day as the window writes days, and while it has the keys as yyyy-MM-dd. What is typed
/// is taken as it stands, or refused in words: never half of it. The first click marks the whole
/// day, so that what is typed next takes its place; keys typed from Home or within the day take the
/// place of what stands there, part by part.
class DayEdit final : public QDateEdit {
    Q_OBJECT
public:
    explicit DayEdit(QWidget* parent = nullptr);
    explicit DayEdit(Date date, QWidget* parent = nullptr);

    /// Takes what is typed; false where it is no day: it stays in the field, the day is as it was.
    bool take();
    /// Why what stands in the field is no day; empty where it is one.
    QString problem() const;
    /// Shows the day that holds again, in place of what was refused.
    void takeBack();
    /// Whether the coach is typing into it.
    bool isTyping() const { return m_typed; }

    void stepBy(int steps) override;
    QValidator::State validate(QString& input, int& at) const override;
    QDateTime dateTimeFromText(const QString& typed) const override;
    QString textFromDateTime(const QDateTime& day) const override;

Q_SIGNALS:
    /// The field was left with what is no day. It still stands there.
    void refused(const QString& why);

protected:
    StepEnabled stepEnabled() const override;
    bool eventFilter(QObject* watched, QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    std::optional<QDate> dayOf(const QString& typed) const;
    void typeDigit(QChar digit);
    void typeMark(QChar mark);
    void put(int from, int length, const QString& with);

    bool m_typed = false; ///< the coach's keys stand in the field, not taken yet
    bool m_over = true;   ///< keys take the place of what stands at the cursor
    bool m_justClicked = false;
};

} // namespace slopebook::ui

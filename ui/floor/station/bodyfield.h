// SPDX-License-Identifier: GPL-3.0-or-later
// The athlete's mass at a station, where the lift moves the body or a test is taken per kilogram of
// it.
#pragma once

#include "core/model/mass.h"
#include "ui/words/units.h"

#include <QWidget>

#include <optional>

class QLabel;
class QLineEdit;

namespace slopebook::ui {

class BodyField final : public QWidget {
    Q_OBJECT
public:
    explicit BodyField(LoadUnit unit, QWidget* parent = nullptr);

    /// known: of the day; last: of an earlier one, offered where none is.
    void showMass(std::optional<Mass> known, std::optional<Mass> last, LoadUnit unit);
    /// Nothing where nothing is typed. Throws BadInput for what is no mass.
    std::optional<Mass> typed() const;
    bool isTyped() const; ///< by the coach, and not taken yet
    void taken();

Q_SIGNALS:
    void left();   ///< with Enter, or for another field: what is typed is to be taken
    void goesOn(); ///< with Enter

private:
    LoadUnit m_unit;
    QLabel* m_label;
    QLineEdit* m_line;
};

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
// A choice among many names, found by typing any part of one. Knows only the names that are looked
// at.
#pragma once

#include "ui/window/namemodel.h"

#include <QComboBox>

namespace slopebook::ui {

class NameCombo final : public QComboBox {
    Q_OBJECT
public:
    explicit NameCombo(QWidget* parent = nullptr);

    /// Keeps the chosen one where it is still there, else takes the first. Throws what the source
    /// throws.
    void setNames(NameSource source);
    void setNames(Names names) { setNames(sourceOf(std::move(names))); }
    std::optional<qint64> chosen() const;
    /// Says nothing where no such key is there.
    void choose(qint64 key);

Q_SIGNALS:
    void chosenChanged();
    void entered(); ///< a name was typed, with Enter

protected:
    void paintEvent(QPaintEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    void takeTyped();

    NameModel* m_names;
    NameModel* m_matches; ///< of what is being typed
    std::optional<qint64> m_last;
};

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
// A choice among many names, found by typing any part of one.
#pragma once

#include <QComboBox>

#include <optional>
#include <utility>
#include <vector>

namespace slopebook::ui {

class NameCombo final : public QComboBox {
    Q_OBJECT
public:
    explicit NameCombo(QWidget* parent = nullptr);

    /// Keeps the chosen one where it is still there, else takes the first.
    void setNames(const std::vector<std::pair<qint64, QString>>& names);
    std::optional<qint64> chosen() const;
    /// Says nothing where no such key is there.
    void choose(qint64 key);

Q_SIGNALS:
    void chosenChanged();
    void entered(); ///< a name was typed, with Enter

protected:
    void focusOutEvent(QFocusEvent* event) override;

private:
    void takeTyped();

    std::optional<qint64> m_last;
};

} // namespace slopebook::ui

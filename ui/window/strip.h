// SPDX-License-Identifier: GPL-3.0-or-later
// What stands first in the control line of the page that is shown: where the index is folded away
// its choice, then the lift where the page is about one. There is one, which goes from page to
// page.
#pragma once

#include <QWidget>

class QLabel;
class QToolButton;

namespace slopebook::ui {

class NameCombo;

class Strip final : public QWidget {
    Q_OBJECT
public:
    explicit Strip(QWidget* parent = nullptr);

    NameCombo& lift() { return *m_lift; }
    /// place: the choice of the folded index in words, or empty. Whether there is anything to show.
    bool fit(const QString& place, bool lift);
    void focusLift();

Q_SIGNALS:
    void placeWanted(); ///< the folded index is asked for
    void addLiftWanted();

private:
    QToolButton* m_place;
    QLabel* m_label;
    NameCombo* m_lift;
    QToolButton* m_add;
};

} // namespace slopebook::ui

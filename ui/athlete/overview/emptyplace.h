// SPDX-License-Identifier: GPL-3.0-or-later
// A page with nothing to show: what is missing, what to do next, and the button that does it.
#pragma once

#include "ui/athlete/overview/seasonasking.h"

class QLabel;
class QPushButton;

namespace slopebook::ui {

class Sentence;

class EmptyPlace final : public QWidget {
    Q_OBJECT
public:
    explicit EmptyPlace(QWidget* parent = nullptr);
    void say(const NothingThere& nothing);

Q_SIGNALS:
    void placeWanted(slopebook::ui::TaskPage::Place place);

private:
    Sentence* m_title;
    QLabel* m_why;
    QPushButton* m_way;
    std::optional<TaskPage::Place> m_place;
};

} // namespace slopebook::ui

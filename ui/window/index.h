// SPDX-License-Identifier: GPL-3.0-or-later
// The left side of the window: the three parts, and of the shown one its list, athletes found by
// typing and pages. Knows only the names that are looked at.
#pragma once

#include "ui/window/namemodel.h"
#include "ui/window/pagetable.h"

#include <QWidget>

class QLabel;
class QLineEdit;
class QListView;
class QToolButton;

namespace slopebook::ui {

class IndexDelegate;
class IndexRows;
class PartBar;

class Index final : public QWidget {
    Q_OBJECT
public:
    explicit Index(QWidget* parent = nullptr);
    /// In the program's colours as they are now: no widget is told of a change of them by itself.
    void dress();
    ~Index() override;

    /// Keeps the chosen athlete where it is still there, else takes the first. Throws what the
    /// source throws.
    void setNames(NameSource source);
    std::optional<qint64> chosen() const { return m_chosen; }
    QString chosenName() const;
    /// Says nothing where no such key is there.
    void choose(qint64 key);
    /// The part and the place in it of what is shown.
    void showPage(Page page);
    /// The next keys find an athlete. There must be some to find (ofAthlete of the page).
    void findName();
    /// The next keys go where this page's choice is made: to the name, else to the list.
    void takeKeys();
    const NameModel& names() const { return m_names; }

Q_SIGNALS:
    void chosenChanged();
    void pageWanted(slopebook::ui::Page page);
    void partWanted(slopebook::ui::Part part);
    void addWanted();
    void taken(); ///< an athlete was chosen, by hand: the keys may go on
    void left();  ///< nothing more is wanted here

protected:
    void paintEvent(QPaintEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void build();
    void connectParts();
    void showRows();
    void find(const QString& part);
    void forget();
    void sayNobody(const QString& typed);
    void sayUsual();
    void takeFound();
    void take(const QModelIndex& row);
    void step(int by);
    bool keyInFind(int key);
    bool keyInList(int key, const QString& text);
    void focusMoved(const QWidget* now);
    void setChosen(std::optional<qint64> key);

    NameModel m_names, m_found;
    std::optional<qint64> m_chosen;
    Page m_page = Page::Session;
    bool m_stepped = false; ///< with the arrows, since the rows were shown
    bool m_inside = false;  ///< whether the keys are here
    PartBar* m_parts;
    QWidget* m_findBox;
    QLabel* m_findLabel;
    QLineEdit* m_find;
    IndexRows* m_rows;
    IndexDelegate* m_delegate;
    QListView* m_list;
    QToolButton* m_add;
    QLabel* m_foot;
};

} // namespace slopebook::ui

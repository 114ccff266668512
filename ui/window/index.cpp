// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/index.h"

#include "ui/parts/roomfor.h"
#include "ui/window/framelook.h"
#include "ui/window/indexrows.h"

#include <QApplication>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QPainter>
#include <QSignalBlocker>
#include <QToolButton>

namespace slopebook::ui {

namespace {
constexpr int least = 160; // px wide

std::vector<Page> pagesOf(Part part) {
    std::vector<Page> own;
    for (const PageEntry& entry : pages())
        if (entry.part == part)
            own.push_back(entry.page);
    return own;
}
} // namespace

Index::Index(QWidget* parent)
    : QWidget(parent), m_parts(new PartBar), m_findBox(new QWidget), m_findLabel(new QLabel),
      m_find(new QLineEdit), m_rows(new IndexRows(this)), m_delegate(new IndexDelegate(this)),
      m_list(new QListView), m_add(new QToolButton), m_foot(new QLabel) {
    build();
    connectParts();
    dress();
    showRows();
}

Index::~Index() = default;

void Index::build() {
    setObjectName(QStringLiteral("index"));
    setMinimumWidth(least);
    setAutoFillBackground(true);
    m_parts->setAccessibleName(tr("Parts"));
    for (const Part part : parts)
        m_parts->addTab(titleOf(part));
    m_findLabel->setBuddy(m_find);
    m_find->setObjectName(QStringLiteral("findAthlete"));
    m_find->setAccessibleName(tr("Find an athlete"));
    m_find->setFrame(false);
    m_find->setAlignment(Qt::AlignRight);
    setHint(*m_find, tr("Ctrl+F"));
    m_find->installEventFilter(this);
    auto* finding = new QHBoxLayout(m_findBox);
    finding->setContentsMargins(frameMargin, 4, frameMargin, 4);
    finding->addWidget(m_findLabel);
    finding->addWidget(m_find, 1);
    QSizePolicy keepsRoom = m_find->sizePolicy(); // the list stands still from page to page
    keepsRoom.setRetainSizeWhenHidden(true);
    m_find->setSizePolicy(keepsRoom);
    m_list->setObjectName(QStringLiteral("indexList"));
    m_list->setAccessibleName(tr("Index"));
    m_list->setModel(m_rows);
    m_list->setItemDelegate(m_delegate);
    m_list->setFrameShape(QFrame::NoFrame);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_list->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_list->setUniformItemSizes(true);
    m_list->viewport()->setAutoFillBackground(false);
    m_list->installEventFilter(this);
    m_add->setText(tr("Add athlete…"));
    m_add->setAutoRaise(true);
    sayUsual();
    m_foot->setObjectName(QStringLiteral("indexFoot"));
    m_foot->setTextFormat(Qt::PlainText);
    m_foot->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Minimum); // whatever is typed
    m_foot->setWordWrap(true);
    auto* foot = new QHBoxLayout;
    foot->setContentsMargins(frameMargin / 2, 0, frameMargin, 0);
    foot->addWidget(m_add);
    foot->addStretch();
    auto* hint = new QHBoxLayout;
    hint->setContentsMargins(frameMargin, 4, frameMargin, 8);
    hint->addWidget(m_foot, 1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_parts);
    column->setAlignment(m_parts, Qt::AlignLeft);
    column->addWidget(m_findBox);
    column->addSpacing(8);
    column->addWidget(m_list, 1);
    column->addLayout(foot);
    column->addLayout(hint);
}

void Index::connectParts() {
    connect(m_parts, &QTabBar::currentChanged, this,
            [this](int at) { Q_EMIT partWanted(parts.at(static_cast<std::size_t>(at))); });
    connect(m_find, &QLineEdit::textEdited, this, &Index::find);
    connect(m_list, &QListView::clicked, this, &Index::take);
    connect(m_add, &QToolButton::clicked, this, &Index::addWanted);
    connect(qApp, &QApplication::focusChanged, this,
            [this](const QWidget*, const QWidget* now) { focusMoved(now); });
}

void Index::dress() {
    QPalette own = QApplication::palette();
    const FrameLook look = frameLook(own);
    own.setColor(QPalette::Window, look.index);
    own.setColor(QPalette::Base, look.page);
    setPalette(own);
    QPalette second = own;
    second.setColor(QPalette::WindowText, look.second);
    for (QLabel* label : {m_findLabel, m_foot})
        label->setPalette(second);
    QPalette clear = own;
    clear.setColor(QPalette::Base, look.index);
    clear.setColor(QPalette::PlaceholderText, look.second);
    m_find->setPalette(clear);
}

// A hair rule towards the page, which the chosen row covers, and one under what is typed.
void Index::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    const FrameLook look = frameLook(palette());
    painter.fillRect(QRect(width() - 1, 0, 1, height()), look.hair);
    if (!m_find->isHidden())
        painter.fillRect(QRect(frameMargin, m_findBox->geometry().bottom(),
                               width() - 2 * frameMargin, m_find->hasFocus() ? 2 : 1),
                         m_find->hasFocus() ? look.chosen : look.second);
}

void Index::setNames(NameSource source) {
    const auto kept = m_chosen;
    m_names.setSource(std::move(source));
    m_found.setSameAs(m_names);
    if (!m_find->text().isEmpty())
        m_found.setFind(m_find->text().trimmed());
    const bool still = kept && m_names.rowOf(*kept) >= 0;
    if (!still) {
        const QVariant first = m_names.index(0).data(Qt::UserRole);
        m_chosen = first.isValid() ? std::optional(first.toLongLong()) : std::nullopt;
    }
    m_find->setEnabled(m_names.rowCount() > 0);
    showRows();
    if (m_chosen != kept)
        Q_EMIT chosenChanged();
}

QString Index::chosenName() const {
    for (int row = 0; m_chosen && row < m_names.rowCount(); ++row)
        if (const QModelIndex at = m_names.index(row);
            at.data(Qt::UserRole).toLongLong() == *m_chosen)
            return at.data().toString();
    return {};
}

void Index::choose(qint64 key) {
    if (m_names.rowOf(key) >= 0)
        setChosen(key);
}

void Index::setChosen(std::optional<qint64> key) {
    if (key == m_chosen)
        return;
    m_chosen = key;
    showRows();
    Q_EMIT chosenChanged();
}

void Index::showPage(Page page) {
    m_page = page;
    const QSignalBlocker quiet(m_parts);
    m_parts->setCurrentIndex(static_cast<int>(entryOf(page).part));
    const bool ofAthlete = entryOf(page).ofAthlete;
    m_find->setVisible(ofAthlete);
    m_findLabel->setText(ofAthlete ? tr("Find an &athlete") : tr("Of everybody"));
    showRows();
}

void Index::showRows() {
    m_stepped = false; // the rows may be others
    const PageEntry& entry = entryOf(m_page);
    const bool finding = !m_find->text().isEmpty();
    const bool unfolded = entry.part == Part::Athlete && m_chosen;
    std::vector<Page> own = pagesOf(entry.part);
    if (own.size() == 1 || finding)
        own.clear();
    m_rows->show({.names = !entry.ofAthlete ? nullptr
                           : finding        ? &m_found
                                            : &m_names,
                  .chosen = m_chosen,
                  .pages = std::move(own),
                  .unfolded = unfolded,
                  .page = m_page});
    const int page = m_rows->rowOf(m_page);
    const int athlete = m_rows->rowOf(m_chosen);
    // On the floor the arrows go from athlete to athlete, and pages stand above them.
    const bool amongNames = entry.part == Part::Floor && athlete >= 0;
    const int at = finding                    ? (m_rows->rowCount() > 0 ? 0 : -1)
                   : page >= 0 && !amongNames ? page
                                              : athlete;
    m_list->setCurrentIndex(m_rows->index(at));
    if (unfolded && athlete >= 0) // with all of its pages
        m_list->scrollTo(m_rows->index(std::min(
            athlete + static_cast<int>(pagesOf(entry.part).size()), m_rows->rowCount() - 1)));
    m_list->scrollTo(m_rows->index(athlete >= 0 ? athlete : at));
}

void Index::findName() {
    m_find->setFocus(Qt::ShortcutFocusReason);
    m_find->selectAll();
}

void Index::takeKeys() {
    if (entryOf(m_page).ofAthlete && m_find->isEnabled())
        findName();
    else
        m_list->setFocus(Qt::ShortcutFocusReason);
}

void Index::sayUsual() {
    m_foot->setText(tr("F9 folds this away"));
}

// What was typed stays, to be mended.
void Index::sayNobody(const QString& typed) {
    m_foot->setText(tr("Nobody here is called “%1”.").arg(typed));
}

void Index::find(const QString& part) {
    sayUsual();
    m_found.setFind(part.trimmed());
    showRows();
}

// With the row that the arrows went to: it is nobody's choice the next time.
void Index::forget() {
    sayUsual();
    m_find->clear();
    showRows();
}

// The name itself, letter case aside, else the row that the arrows went to, else the first that
// holds what was typed.
void Index::takeFound() {
    const QString typed = m_find->text().trimmed();
    const QVariant current = m_list->currentIndex().data(IndexRows::KeyRole);
    std::optional<qint64> key;
    if (m_stepped && current.isValid())
        key = current.toLongLong();
    else if (!typed.isEmpty())
        key = m_found.bestMatch(typed);
    else
        key = m_chosen;
    if (!key) {
        if (!typed.isEmpty())
            sayNobody(typed);
        return;
    }
    forget();
    choose(*key);
    Q_EMIT taken();
}

void Index::take(const QModelIndex& row) {
    const QVariant key = row.data(IndexRows::KeyRole), page = row.data(IndexRows::PageRole);
    if (page.isValid()) {
        Q_EMIT pageWanted(static_cast<Page>(page.toInt()));
        Q_EMIT left();
    } else if (key.isValid()) {
        forget();
        choose(key.toLongLong());
        Q_EMIT taken();
    }
}

/// From athlete to athlete, as far as they are read, without choosing one.
void Index::step(int by) {
    for (int row = m_list->currentIndex().row() + by; row >= 0 && row < m_rows->rowCount();
         row += by)
        if (m_rows->index(row).data(IndexRows::KeyRole).isValid()) {
            m_stepped = true;
            m_list->setCurrentIndex(m_rows->index(row));
            if (row + 1 == m_rows->rowCount()) // a key steps on from here
                m_rows->fetchMore({});
            return;
        }
}

bool Index::keyInFind(int key) {
    switch (key) {
    case Qt::Key_Down:
    case Qt::Key_Up:
        step(key == Qt::Key_Down ? 1 : -1);
        return true;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        takeFound();
        return true;
    case Qt::Key_Escape:
        forget();
        Q_EMIT left();
        return true;
    default:
        return false;
    }
}

bool Index::keyInList(int key, const QString& text) {
    switch (key) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Space:
        take(m_list->currentIndex());
        return true;
    case Qt::Key_Escape:
        forget();
        Q_EMIT left();
        return true;
    default:
        break;
    }
    // A letter begins a name.
    if (text.isEmpty() || !text.front().isLetterOrNumber() || m_find->isHidden() ||
        !m_find->isEnabled())
        return false;
    m_find->setFocus(Qt::OtherFocusReason);
    m_find->setText(text);
    find(text);
    return true;
}

bool Index::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::KeyPress)
        return false;
    const auto& pressed = static_cast<const QKeyEvent&>(*event);
    if (pressed.modifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier))
        return false;
    return watched == m_find ? keyInFind(pressed.key()) : keyInList(pressed.key(), pressed.text());
}

void Index::focusMoved(const QWidget* now) {
    m_delegate->setKeysHere(now == m_list || now == m_find);
    m_list->viewport()->update();
    update();
    if (!now)
        return; // to another window
    const bool inside = isAncestorOf(now);
    if (std::exchange(m_inside, inside) && !inside) {
        forget();
        Q_EMIT left();
    }
}

} // namespace slopebook::ui

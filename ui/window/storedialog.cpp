// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/storedialog.h"

#include "ui/window/mergerows.h"

#include <QDialogButtonBox>
#include <QLabel>
#include <QPushButton>
#include <QTreeWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace slopebook::ui {

namespace {
constexpr int newsWide = 720, newsHigh = 400; // px, with a list
} // namespace

StoreDialog::StoreDialog(StoreKeeper& keeper, const Logbook& logbook, QWidget* parent)
    : QDialog(parent), m_keeper(keeper), m_logbook(logbook), m_sentences(new QLabel),
      m_list(new QTreeWidget) {
    setWindowTitle(tr("Shared store"));
    build();
    fill();
    connect(&m_keeper, &StoreKeeper::changed, this, &StoreDialog::fill);
}

void StoreDialog::build() {
    m_sentences->setTextFormat(Qt::PlainText); // names are anything
    m_sentences->setWordWrap(true);
    m_sentences->setObjectName(QStringLiteral("storeSentences"));
    layOutMergeRows(*m_list);
    m_list->setObjectName(QStringLiteral("storeNews"));
    m_list->hide(); // until there is something in it
    auto* buttons = new QDialogButtonBox;
    const auto button = [&](const QString& words, const char* name, auto deed) {
        auto* made = buttons->addButton(words, QDialogButtonBox::ActionRole);
        made->setObjectName(QLatin1String(name));
        made->setAutoDefault(false);
        connect(made, &QPushButton::clicked, this, deed);
        return made;
    };
    m_meet = button(tr("&Meet now"), "meetNow", [this] { m_keeper.meetNow(); });
    m_choose = button(tr("C&hoose…"), "chooseSides", [this] { Q_EMIT choicesWanted(); });
    button(tr("&Address…"), "storeAddress", [this] { Q_EMIT addressWanted(); });
    button(tr("&Leave…"), "leaveStore", [this] { Q_EMIT leaveWanted(); });
    buttons->addButton(QDialogButtonBox::Close); // last: Tab comes to none that came before others
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(m_sentences);
    layout->addWidget(m_list, 1);
    layout->addWidget(buttons);
    resize(newsWide, layout->totalMinimumSize().height());
}

void StoreDialog::fill() {
    const StoreState& state = m_keeper.state();
    QStringList sentences = storeSentences(state, m_keeper.now());
    if (state.meets)
        sentences << tr("Meeting the store…");
    m_sentences->setText(sentences.join(u'\n'));
    m_meet->setEnabled(!state.meets);
    m_choose->setEnabled(state.choices > 0);
    if (m_shown != state.newsAt) { // who reads in the list keeps their place until there is more
        m_shown = state.newsAt;
        m_list->clear();
        fillNews(*m_list, state.news, m_logbook.loadUnit());
        m_list->setVisible(m_list->topLevelItemCount() > 0);
        if (m_list->topLevelItemCount() > 0)
            m_list->setCurrentItem(m_list->topLevelItem(0));
    }
    const int needed = layout()->totalHeightForWidth(width());
    const int wanted = m_list->isHidden() ? needed : std::max(needed, newsHigh);
    if (height() < wanted)
        resize(width(), wanted);
}

} // namespace slopebook::ui

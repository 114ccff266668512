// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/importing/nearnamespanel.h"

#include "core/model/few.h"
#include "ui/words/format.h"
#include "ui/words/wording.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

using exchange::NearName;

namespace {
enum NearAnswer { NearOpen, NearSame, NearNew };
}

NearNamesPanel::NearNamesPanel(QWidget* parent)
    : QWidget(parent), m_rows(new QGridLayout), m_scroll(new QScrollArea) {
    auto* about = new QLabel(tr("Nearly the same names. Nothing is taken in before this is said:"));
    about->setWordWrap(true);
    auto* rows = new QWidget;
    rows->setLayout(m_rows);
    m_rows->setContentsMargins(0, 0, 0, 0);
    m_rows->setColumnStretch(0, 1);
    m_scroll->setWidget(rows);
    m_scroll->setWidgetResizable(true);
    m_scroll->setFrameShape(QFrame::NoFrame);
    m_scroll->setFocusPolicy(Qt::NoFocus);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(about);
    layout->addWidget(m_scroll);
    hide();
}

QComboBox* NearNamesPanel::addQuestion(const QString& question, const QString& objectName) {
    auto* box = new QComboBox;
    box->setObjectName(objectName);
    box->setAccessibleName(question);
    box->setFocusPolicy(Qt::StrongFocus);
    box->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    box->addItem(tr("Choose…"), NearOpen);
    auto* label = new QLabel(question);
    label->setWordWrap(true);
    label->setBuddy(box);
    const int row = m_rows->rowCount();
    m_rows->addWidget(label, row, 0);
    m_rows->addWidget(box, row, 1);
    connect(box, &QComboBox::currentIndexChanged, this, &NearNamesPanel::changed);
    return box;
}

void NearNamesPanel::ask(const std::vector<NearName>& names) {
    for (const NearName& name : names) {
        const auto isThis = [&](const NearName& each) { return each.name == name.name; };
        if (std::ranges::any_of(m_asked, [&](const Asked& each) { return isThis(each.name); }) ||
            std::ranges::any_of(m_rest, isThis))
            continue;
        if (m_asked.size() == fewNamed) {
            m_rest.push_back(name);
            continue;
        }
        QComboBox* box = addQuestion((name.inLog ? tr("%1 is new; the log has %2. It is")
                                                 : tr("%1 and %2 are both new. It is"))
                                         .arg(text(name.name), text(name.like)),
                                     u"near%1"_s.arg(m_asked.size()));
        box->addItem(tr("the same athlete: %1").arg(text(name.like)), NearSame);
        box->addItem(tr("somebody new: %1").arg(text(name.name)), NearNew);
        m_asked.push_back({name, box});
    }
    if (!m_rest.empty() && !m_ofRest) {
        m_ofRest =
            addQuestion(tr("So many more names are nearly others: %1. They are").arg(m_rest.size()),
                        u"nearRest"_s);
        m_ofRest->addItem(tr("all the same athletes as those"), NearSame);
        m_ofRest->addItem(tr("all somebody new"), NearNew);
    }
    constexpr int rowsInSight = 3;
    const auto rows = std::min<std::size_t>(m_asked.size() + (m_ofRest ? 1 : 0), rowsInSight);
    if (rows > 0)
        m_scroll->setFixedHeight(
            static_cast<int>(rows) *
                (m_asked.front().answer->sizeHint().height() + m_rows->verticalSpacing()) +
            m_rows->verticalSpacing());
    setVisible(rows > 0);
}

bool NearNamesPanel::answered() const {
    return std::ranges::all_of(
               m_asked,
               [](const Asked& each) { return each.answer->currentData().toInt() != NearOpen; }) &&
           (!m_ofRest || m_ofRest->currentData().toInt() != NearOpen);
}

exchange::WhoIsWho NearNamesPanel::who() const {
    exchange::WhoIsWho who;
    const auto take = [&](const NearName& name, int answer) {
        if (answer == NearSame)
            who.same[name.name] = name.like;
        else if (answer == NearNew)
            who.somebodyNew.insert(name.name);
    };
    for (const Asked& each : m_asked)
        take(each.name, each.answer->currentData().toInt());
    for (const NearName& name : m_rest)
        take(name, m_ofRest->currentData().toInt());
    return who;
}

} // namespace slopebook::ui

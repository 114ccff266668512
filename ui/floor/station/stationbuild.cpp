// SPDX-License-Identifier: GPL-3.0-or-later
// How the station's page is laid out.
#include "ui/floor/station/bodyfield.h"
#include "ui/floor/station/stationpage.h"
#include "ui/parts/cautions.h"
#include "ui/parts/fingers.h"
#include "ui/parts/givesway.h"
#include "ui/parts/roomfor.h"
#include "ui/parts/rowtable.h"
#include "ui/parts/sentence.h"
#include "ui/parts/shortcombo.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QSplitter>
#include <QTableView>

namespace slopebook::ui {

namespace {
constexpr int rosterWidth = 300;   // px
constexpr int scrollBarWidth = 24; // px, and the frame
constexpr int longestLine = 400;   // letters

QLabel* scaled(QLabel* label, double by) {
    label->setFont(sentenceFont(label->font(), by));
    return label;
}
} // namespace

void StationPage::build() {
    m_strip = new QHBoxLayout;
    m_stations = new ShortCombo;
    m_stations->setObjectName(QStringLiteral("stations"));
    m_stations->setAccessibleName(tr("Station"));
    m_stations->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_stations->setMinimumContentsLength(14);
    m_new = new QPushButton;
    m_new->setToolTip(tr("Set up a station: a lift or tests, with their conditions"));
    m_change = new QPushButton(tr("Cha&nge…"));
    m_change->setToolTip(tr("This station: conditions, ladder, turns"));
    m_who = new QPushButton;
    m_rotates = new QCheckBox(tr("In t&urn"));
    m_rotates->setToolTip(tr("A set that is written makes it the next one's turn"));
    auto* caption = new QLabel(tr("Stati&on"));
    caption->setBuddy(m_stations);
    m_strip->addWidget(caption);
    m_strip->addWidget(m_stations, 1);
    for (QWidget* part : std::initializer_list<QWidget*>{m_new, m_change, m_who, m_rotates}) {
        part->setMinimumHeight(fingerSize);
        m_strip->addWidget(part);
    }
    m_stations->setMinimumHeight(fingerSize);

    auto* right = new QWidget;
    auto* column = new QVBoxLayout(right);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    column->addWidget(buildLine());
    column->addWidget(buildPicture(), 1);
    auto* split = new QSplitter(Qt::Horizontal);
    split->setChildrenCollapsible(false);
    split->addWidget(buildRoster());
    split->addWidget(right);
    split->setStretchFactor(1, 1);
    split->setSizes({rosterWidth, 700});

    auto* layout = new QVBoxLayout(this);
    layout->setSpacing(6);
    layout->setContentsMargins(8, 8, 8, 8);
    layout->addLayout(m_strip);
    layout->addWidget(split, 1);
    layout->addWidget(new GivesWay(new CautionLabel, 1));
}

QWidget* StationPage::buildRoster() {
    m_roster = new RosterModel(this);
    m_rosterTable = rowTable(m_roster, tr("Who is here, in the order of their turns"),
                             {.compact = true, .wraps = false});
    m_rosterTable->setObjectName(QStringLiteral("roster"));
    m_rosterTable->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    m_rosterTable->horizontalHeader()->setSectionResizeMode(RosterModel::Name,
                                                            QHeaderView::Stretch);
    m_rosterTable->setMinimumWidth(190);
    m_rosterTable->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_next = new QLabel;
    m_next->setObjectName(QStringLiteral("comesThen"));
    m_next->setWordWrap(true);
    m_next->setAccessibleDescription(tr("Who comes then"));
    auto* box = new QWidget;
    auto* layout = new QVBoxLayout(box);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_rosterTable, 1);
    layout->addWidget(m_next);
    return box;
}

QWidget* StationPage::buildLine() {
    m_sentence = scaled(new QLabel, 1.7);
    m_sentence->setObjectName(QStringLiteral("turn"));
    m_sentence->setAccessibleDescription(tr("Whose turn it is"));
    m_sentence->setWordWrap(true);
    m_rest = scaled(new QLabel, 1.7);
    m_rest->setObjectName(QStringLiteral("rest"));
    m_rest->setAccessibleDescription(tr("Time since their last set"));
    m_rest->setAlignment(Qt::AlignRight | Qt::AlignTop);
    m_reason = new QLabel;
    m_reason->setObjectName(QStringLiteral("reason"));
    m_reason->setWordWrap(true);
    m_conditions = new QLabel;
    m_conditions->setObjectName(QStringLiteral("conditions"));
    m_conditions->setForegroundRole(QPalette::PlaceholderText);
    m_conditions->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    m_conditions->setTextFormat(Qt::PlainText);
    m_body = new BodyField(m_logbook.loadUnit());
    m_tests = new QComboBox;
    m_tests->setObjectName(QStringLiteral("stationTest"));
    m_tests->setAccessibleName(tr("Test"));
    m_line = new StationEdit;
    m_line->setObjectName(QStringLiteral("stationLine"));
    m_line->setAccessibleName(tr("Line of the station"));
    m_line->setMaxLength(longestLine);
    m_line->setMinimumHeight(42);
    QFont large = m_line->font();
    large.setPointSizeF(large.pointSizeF() * 1.5);
    m_line->setFont(large);
    m_answer = new QLabel;
    m_answer->setObjectName(QStringLiteral("stationAnswer"));
    m_answer->setWordWrap(true);
    m_answer->setTextFormat(Qt::PlainText);
    m_answer->setAccessibleDescription(tr("Answer to the typed line"));
    m_answer->setMinimumHeight(2 * m_answer->fontMetrics().lineSpacing());
    m_answer->setAlignment(Qt::AlignTop | Qt::AlignLeft);

    auto* head = new QHBoxLayout;
    head->addWidget(m_sentence, 1);
    head->addWidget(m_rest);
    auto* second = new QHBoxLayout;
    second->addWidget(m_reason, 1);
    second->addWidget(m_conditions);
    second->addWidget(m_body);
    auto* typing = new QHBoxLayout;
    typing->addWidget(m_tests);
    typing->addWidget(m_line, 1);
    auto* box = new QWidget;
    auto* layout = new QVBoxLayout(box);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(2);
    layout->addLayout(head);
    layout->addLayout(second);
    layout->addLayout(typing);
    layout->addWidget(m_answer);
    return box;
}

QWidget* StationPage::buildPicture() {
    m_chart = new charts::LineChart;
    m_chart->setAccessibleName(tr("Chart of load and velocity"));
    m_done = new TextTable(this);
    m_doneTable = rowTable(m_done, tr("Done here today"),
                           {.compact = true, .wraps = false, .lastTakesRest = true});
    m_doneTable->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_doneTable->setObjectName(QStringLiteral("doneHere"));
    m_undo = new QLabel;
    m_undo->setObjectName(QStringLiteral("takesBack"));
    m_undo->setForegroundRole(QPalette::PlaceholderText);
    m_undo->setTextFormat(Qt::PlainText);
    m_undo->setWordWrap(true);
    m_begin = new QPushButton;
    m_begin->setObjectName(QStringLiteral("begin"));
    m_begin->setMinimumSize(4 * fingerSize, fingerSize);
    m_begin->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    auto* split = new QSplitter(Qt::Horizontal);
    split->setChildrenCollapsible(false);
    split->addWidget(m_chart);
    split->addWidget(m_doneTable);
    split->setStretchFactor(0, 1);
    split->setSizes({460, 240});
    auto* box = new QWidget;
    auto* layout = new QVBoxLayout(box);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_begin, 0, Qt::AlignTop | Qt::AlignLeft);
    layout->addWidget(split, 1);
    layout->addWidget(m_undo);
    return box;
}

void StationPage::resizeEvent(QResizeEvent* event) {
    TaskPage::resizeEvent(event);
    constexpr int narrow = 900; // px: then the roster holds who and what is next
    for (const int column : {RosterModel::Last, RosterModel::Rest})
        m_rosterTable->setColumnHidden(column, width() < narrow);
    fitRoster();
    // Beside it the list of what is done would leave the picture no room for its names.
    if (auto* split = qobject_cast<QSplitter*>(m_chart->parentWidget()))
        split->setOrientation(width() < narrow ? Qt::Vertical : Qt::Horizontal);
    m_chart->setMinimumHeight(pictureHeight(*this));
    m_doneTable->setMinimumHeight(leastHeight(*m_doneTable));
}

// No column of it is lost: it has no bar to scroll with.
void StationPage::fitRoster() {
    const QHeaderView& columns = *m_rosterTable->horizontalHeader();
    int width = m_rosterTable->fontMetrics().averageCharWidth() * 12 + scrollBarWidth;
    for (int column = 0; column < columns.count(); ++column)
        if (column != RosterModel::Name && !columns.isSectionHidden(column))
            width += columns.sectionSize(column);
    m_rosterTable->setMinimumWidth(width);
}

} // namespace slopebook::ui

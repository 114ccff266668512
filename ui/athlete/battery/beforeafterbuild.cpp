// SPDX-License-Identifier: GPL-3.0-or-later
// How the battery's comparison is laid out.
#include "core/answers/method.h"
#include "ui/athlete/battery/beforeafterview.h"
#include "ui/parts/cautions.h"
#include "ui/parts/downscroll.h"
#include "ui/parts/keepwhole.h"
#include "ui/parts/rowtable.h"
#include "ui/parts/sentence.h"
#include "ui/words/said.h"

#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

namespace slopebook::ui {

namespace {

QLabel* heading(const QString& words, QWidget* buddy) {
    auto* label = new QLabel(QStringLiteral("<b>%1</b>").arg(words.toHtmlEscaped()));
    label->setBuddy(buddy);
    return label;
}

QLabel* paragraph(const QString& name) {
    auto* label = new QLabel;
    label->setWordWrap(true);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    label->setAccessibleDescription(name);
    return label;
}

} // namespace

QWidget* BeforeAfterView::buildChoices() {
    auto* row = new QWidget;
    auto* layout = new QHBoxLayout(row);
    layout->setContentsMargins(0, 0, 0, 0);
    const auto box = [&](const QString& label, const QString& name) {
        auto* combo = new QComboBox;
        combo->setAccessibleName(name);
        combo->setSizeAdjustPolicy(QComboBox::AdjustToContents);
        auto* caption = new QLabel(label);
        caption->setBuddy(combo);
        keepWhole(*caption);
        layout->addWidget(caption);
        layout->addWidget(combo);
        return combo;
    };
    m_from = box(tr("Fro&m"), tr("Before"));
    m_from->setObjectName(QStringLiteral("countedFrom"));
    m_to = box(tr("&To"), tr("After"));
    layout->addStretch(1);
    return row;
}

QWidget* BeforeAfterView::buildButtons() {
    auto* row = new QWidget;
    auto* layout = new QHBoxLayout(row);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addStretch(1);
    const auto button = [&](const QString& label) {
        auto* push = new QPushButton(label);
        layout->addWidget(push);
        return push;
    };
    m_preview = button(tr("P&review..."));
    m_print = button(tr("&Print..."));
    m_pdf = button(tr("P&DF..."));
    m_csv = button(tr("C&SV..."));
    return row;
}

QWidget* BeforeAfterView::buildBody() {
    m_body = new QWidget;
    auto* layout = new QVBoxLayout(m_body);
    layout->setContentsMargins(0, 0, 8, 0);
    m_summary = new Sentence;
    m_summary->setObjectName(QStringLiteral("sentence"));
    m_summary->setAccessibleDescription(tr("What the battery says"));
    m_alone = paragraph(tr("What the intervals hold for"));
    m_alone->setObjectName(QStringLiteral("alone"));
    m_lifts = paragraph(tr("What the lifts say"));
    m_notes = paragraph(tr("Notes and sources"));
    m_tests = new TextTable(this);
    m_leftRight = new TextTable(this);
    m_missing = new TextTable(this);
    RowStyle style{.compact = true, .lastTakesRest = true};
    style.giving = {7, 0, 1, 2};  // reading, test, and why a side has no figure
    style.leaving = {8, 6, 4, 5}; // remark, which the notes have; typical error, per cent, interval
    m_testTable = rowTable(m_tests, tr("Tests before and after"), style);
    style.giving = {3, 0};
    style.leaving = {};
    m_leftRightTable = rowTable(m_leftRight, tr("Left and right"), style);
    m_missingTable = rowTable(m_missing, tr("What was missing"), style);
    m_testTable->setObjectName(QStringLiteral("tests"));
    m_leftRightTable->setObjectName(QStringLiteral("leftRight"));
    m_missingTable->setObjectName(QStringLiteral("missing"));
    m_leftRightTitle =
        heading(tr("Left and right: the better side, and by how much of it"), m_leftRightTable);
    m_missingTitle = heading(tr("What was missing"), m_missingTable);
    m_forest = new ForestChart;
    layout->addWidget(m_summary);
    m_type = new QPushButton(tr("Type attempts"));
    m_type->setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Fixed);
    layout->addWidget(m_type);
    layout->addWidget(m_forest);
    layout->addWidget(m_alone);
    layout->addWidget(m_testTable);
    layout->addWidget(m_leftRightTitle);
    layout->addWidget(m_leftRightTable);
    layout->addWidget(m_lifts);
    layout->addWidget(m_missingTitle);
    layout->addWidget(m_missingTable);
    layout->addWidget(m_notes);
    layout->addWidget(new CautionLabel);
    layout->addStretch(1);
    auto* scroll = new QScrollArea;
    scroll->setAccessibleName(tr("Tests before and after"));
    holdInside(*scroll, m_body);
    return scroll;
}

} // namespace slopebook::ui

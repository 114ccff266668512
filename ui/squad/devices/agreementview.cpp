// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squad/devices/agreementview.h"

#include "core/answers/squadsummary.h"
#include "core/questions/liftcontext.h"
#include "ui/parts/rowtable.h"
#include "ui/parts/sentence.h"
#include "ui/parts/wayon.h"
#include "ui/squad/devices/noiserows.h"
#include "ui/words/format.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QItemSelectionModel>
#include <QLabel>
#include <QSplitter>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

namespace slopebook::ui {

AgreementView::AgreementView(Logbook& logbook, QWidget* parent)
    : QWidget(parent), m_logbook(logbook) {
    build();
    connect(m_which, &QComboBox::activated, this, &AgreementView::ask);
    connect(m_setView->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex& index) {
                m_chart->setRinged(index.isValid() ? std::optional(index.row()) : std::nullopt);
            });
}

void AgreementView::build() {
    m_which = new QComboBox;
    m_which->setAccessibleName(tr("Devices compared"));
    m_which->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    m_sentence = new Sentence;
    m_sentence->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    m_sentence->setAccessibleDescription(tr("What the devices differ by"));
    m_chart = new AgreementChart;
    m_figures = new TextTable(this);
    m_sets = new TextTable(this);
    m_figureView = textRowTable(m_figures, tr("Figures of the agreement"));
    m_setView = textRowTable(m_sets, tr("Sets seen by both devices"));
    m_whichRow = new QWidget;
    auto* row = new QHBoxLayout(m_whichRow);
    row->setContentsMargins(0, 0, 0, 0);
    auto* label = new QLabel(tr("&Devices"));
    label->setBuddy(m_which);
    row->addWidget(label);
    row->addWidget(m_which);
    row->addStretch(1);
    auto* tables = new QSplitter(Qt::Vertical);
    tables->setChildrenCollapsible(false);
    tables->addWidget(m_figureView);
    tables->addWidget(m_setView);
    auto* split = new QSplitter(Qt::Horizontal);
    split->setChildrenCollapsible(false);
    split->addWidget(m_chart);
    split->addWidget(tables);
    split->setSizes({640, 560});
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_sentence);
    layout->addWidget(split, 1);
    layout->addWidget(m_whichRow); // the answer first
    layout->addStretch();          // where there is nothing to show
}

QString AgreementView::sentence() const {
    return m_sentence->text();
}

void AgreementView::setLift(std::optional<LiftId> lift) {
    m_lift = lift;
    reload();
}

void AgreementView::setWay(WayOn* way) {
    m_way = way;
    qobject_cast<QVBoxLayout*>(layout())->insertWidget(1, way);
}

QString AgreementView::nameOf(DeviceId device) const {
    const auto found = std::ranges::find(m_devices, device, &Stored<DeviceId, Device>::id);
    return found == m_devices.end() ? QString() : text(found->value.name);
}

void AgreementView::reload() {
    try {
        const QString kept = m_which->currentText();
        m_which->clear();
        m_pairs.clear();
        if (!m_lift) {
            showNothing(tr("Choose a lift."));
            return;
        }
        m_devices = m_logbook.log().devices();
        m_pairs = questions::devicesCompared(m_logbook.context(*m_lift));
        for (const auto& [first, second] : m_pairs)
            m_which->addItem(tr("%1 and %2").arg(nameOf(first), nameOf(second)));
        m_which->setEnabled(!m_pairs.empty());
        if (m_pairs.empty()) {
            showNothing(said(answers::noAgreementWords()));
            return;
        }
        m_which->setCurrentIndex(std::max(0, m_which->findText(kept)));
        ask();
    } catch (const std::exception& error) {
        showNothing(said(error));
    }
}

void AgreementView::ask() {
    const int at = m_which->currentIndex();
    if (!m_lift || at < 0 || at >= static_cast<int>(m_pairs.size()))
        return;
    try {
        const auto& [first, second] = m_pairs[static_cast<std::size_t>(at)];
        const auto study = questions::agreementOf(m_logbook.context(*m_lift), first, second);
        if (!study) {
            showNothing(noAnswerText(study.why(), m_logbook.loadUnit()));
            return;
        }
        std::map<AthleteId, QString> athletes;
        for (const answers::PairedSet& set : study->sets)
            if (const auto [named, fresh] = athletes.try_emplace(set.athlete); fresh)
                named->second = text(m_logbook.log().athlete(set.athlete).value.name);
        m_chart->setData(agreementData(*study, nameOf(first), nameOf(second)));
        m_figures->setTable(agreementHeadings(), agreementRows(*study), 1, 3);
        m_sets->setTable(pairedHeadings(nameOf(first), nameOf(second), m_logbook.loadUnit()),
                         pairedRows(*study, athletes, m_logbook.loadUnit()), 2, 7);
        m_chart->parentWidget()->show();
        m_whichRow->show();
        if (m_way)
            m_way->hide();
        for (QTableView* view : {m_figureView, m_setView}) {
            const WidthsFirst widths(*view);
            view->resizeColumnsToContents();
        }
        m_sentence->setText(
            agreementSentence(*study, nameOf(first), nameOf(second), m_logbook.loadUnit()));
        m_chart->setSpokenText(m_sentence->text());
    } catch (const std::exception& error) {
        showNothing(said(error));
    }
}

void AgreementView::showNothing(const QString& why) {
    m_which->setEnabled(!m_pairs.empty());
    m_chart->setData({});
    m_figures->setTable({}, {}, 0, 0);
    m_sets->setTable({}, {}, 0, 0);
    m_sentence->setText(m_way ? m_way->sayMissing(m_logbook.log(), why) : why);
    m_whichRow->setVisible(!m_pairs.empty()); // nothing to choose from
    m_chart->setSpokenText(why);
    m_chart->parentWidget()->hide(); // an empty picture and empty tables say nothing
}

} // namespace slopebook::ui

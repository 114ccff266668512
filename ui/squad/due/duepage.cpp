// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squad/due/duepage.h"

#include "core/questions/duequestions.h"
#include "ui/parts/rowtable.h"
#include "ui/parts/sentence.h"
#include "ui/parts/wayon.h"
#include "ui/squad/due/dueprint.h"
#include "ui/words/format.h"
#include "ui/words/said.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QSpinBox>
#include <QTableView>
#include <QVBoxLayout>

#include <array>

using namespace Qt::Literals::StringLiterals;

namespace slopebook::ui {

DuePage::DuePage(Logbook& logbook, Clock clock, QWidget* parent)
    : PaperTask(parent), m_logbook(logbook), m_clock(std::move(clock)), m_weeks(new QSpinBox),
      m_sentence(new Sentence), m_notes(new QLabel), m_rows(new TextTable(this)),
      m_view(rowTable(m_rows, tr("Who is due for what"), {.lastTakesRest = true, .growing = true})),
      m_open(new QPushButton(tr("&Open the athlete's overview"))),
      m_stations(new QPushButton(tr("&Test it at a station"))),
      m_preview(new QPushButton(tr("Pri&nt preview…"))), m_print(new QPushButton(tr("&Print…"))),
      m_pdf(new QPushButton(tr("Save P&DF…"))) {
    build();
    connectParts();
    reload();
}

void DuePage::build() {
    m_weeks->setRange(1, 520);
    m_weeks->setValue(answers::DueQuestion{}.weeks);
    m_weeks->setSuffix(tr(" weeks"));
    m_weeks->setAccessibleName(tr("Weeks after which a test is due"));
    auto* label = new QLabel(tr("D&ue after"));
    label->setBuddy(m_weeks);
    auto* strip = new QHBoxLayout;
    m_strip = strip;
    strip->addWidget(label);
    strip->addWidget(m_weeks);
    strip->addStretch(1);
    m_sentence->setObjectName(u"sentence"_s);
    m_sentence->setAccessibleDescription(tr("What is due"));
    m_notes->setAccessibleDescription(tr("Notes"));
    m_notes->setWordWrap(true);
    m_notes->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    for (QLabel* each : std::initializer_list<QLabel*>{m_sentence, m_notes})
        each->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
    m_view->setObjectName(u"due"_s);
    m_view->setToolTip(tr("A double click or Enter opens the athlete's overview"));
    m_stations->setToolTip(tr("The stations, where it can be tested"));
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(m_open);
    buttons->addWidget(m_stations);
    buttons->addStretch(1);
    for (QPushButton* button : {m_preview, m_print, m_pdf})
        buttons->addWidget(button);
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(strip);
    layout->addWidget(m_sentence);
    layout->addWidget(m_way = new WayOn(*this, Place::Stations));
    layout->addWidget(m_view, 1);
    layout->addWidget(m_notes);
    m_rest = new QWidget; // the room that a table with rows would take
    layout->addWidget(m_rest, 1);
    layout->addLayout(buttons);
}

void DuePage::connectParts() {
    connect(m_weeks, &QSpinBox::valueChanged, this, &DuePage::reload);
    connect(m_view, &QTableView::activated, this, &DuePage::openAthlete);
    connect(m_view->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this] { m_open->setEnabled(current().has_value()); });
    connect(m_open, &QPushButton::clicked, this, &DuePage::openAthlete);
    connect(m_stations, &QPushButton::clicked, this,
            [this] { Q_EMIT placeWanted(Place::Stations); });
    connect(m_preview, &QPushButton::clicked, this, &DuePage::printPreview);
    connect(m_print, &QPushButton::clicked, this, &DuePage::print);
    connect(m_pdf, &QPushButton::clicked, this, &DuePage::writePdf);
}

void DuePage::setAthleteAndLift(std::optional<AthleteId> /*athlete*/,
                                std::optional<LiftId> /*lift*/) {
    reload();
}

void DuePage::refresh(Logbook::What /*what*/, SessionId /*session*/) {
    reload();
}

void DuePage::reload() {
    const auto kept = current();
    try {
        m_due = questions::squadDueOn(m_logbook.log(), m_clock.today(), {}, m_weeks->value());
        m_sentence->setText(m_way->sayMissing(
            m_logbook.log(), said(answers::dueWords(*m_due), m_logbook.loadUnit()),
            m_due->rows.empty())); // where nothing is due, the next test begins there
        m_rows->setTable(dueHeadings(), dueRows(*m_due, m_logbook.loadUnit()), 3, 4);
        m_notes->setText(dueNotes(*m_due, m_logbook.loadUnit()).join(u'\n'));
    } catch (const std::exception& error) {
        m_due.reset();
        m_sentence->setText(said(error));
        m_rows->setTable({}, {}, 0, 0);
        m_notes->clear();
    }
    m_view->resizeColumnsToContents();
    m_view->resizeRowsToContents();
    m_view->setVisible(m_rows->rowCount() > 0);
    m_rest->setVisible(m_rows->rowCount() == 0);
    for (int row = 0; m_due && row < m_rows->rowCount(); ++row)
        if (kept == m_due->rows[static_cast<std::size_t>(row)].athlete) {
            m_view->selectRow(row);
            break;
        }
    m_open->setEnabled(current().has_value());
    m_stations->setEnabled(m_rows->rowCount() > 0); // where nothing is due, nothing goes there
    for (QPushButton* button : {m_preview, m_print, m_pdf}) {
        button->setEnabled(canPrint());
        button->setToolTip(canPrint() ? QString()
                                      : tr("Nothing is due: there is nothing to print."));
    }
}

std::optional<AthleteId> DuePage::current() const {
    const int row = m_view->currentIndex().row();
    if (!m_due || row < 0 || row >= static_cast<int>(m_due->rows.size()))
        return std::nullopt;
    return m_due->rows[static_cast<std::size_t>(row)].athlete;
}

void DuePage::openAthlete() {
    if (const auto athlete = current()) {
        Q_EMIT athleteWanted(*athlete);
        Q_EMIT placeWanted(Place::Overview);
    }
}

page::Print DuePage::pages() const {
    return duePrint(*m_due, m_logbook.loadUnit());
}

PaperTask::PdfWords DuePage::pdfWords() const {
    return {tr("Save what is due as PDF"),
            tr("What is due on %1").arg(dateText(m_due->question.today))};
}

} // namespace slopebook::ui

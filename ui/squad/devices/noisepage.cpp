// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squad/devices/noisepage.h"

#include "ui/parts/striptabs.h"
#include "ui/parts/wayon.h"
#include "ui/squad/devices/agreementview.h"
#include "ui/squad/devices/noiseview.h"

#include <QHBoxLayout>
#include <QTabBar>
#include <QTabWidget>
#include <QVBoxLayout>

namespace slopebook::ui {

NoisePage::NoisePage(Logbook& logbook, QWidget* parent)
    : TaskPage(parent), m_noise(new NoiseView(logbook)), m_agreement(new AgreementView(logbook)) {
    auto* tabs = new StripTabs;
    tabs->addTab(m_noise, tr("From &repeat tests"));
    tabs->addTab(m_agreement, tr("&Between devices"));
    m_strip = new QHBoxLayout;
    m_strip->setSpacing(12);
    m_strip->addWidget(barInStrip(*tabs, tr("Kinds of noise")));
    m_strip->addStretch(1);
    m_noise->setWay(new WayOn(*this, Place::Session));
    m_agreement->setWay(new WayOn(*this, Place::Session));
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(m_strip);
    layout->addWidget(tabs, 1);
}

void NoisePage::setAthleteAndLift(std::optional<AthleteId> athlete, std::optional<LiftId> lift) {
    m_athlete = athlete;
    m_lift = lift;
    m_noise->setAthleteAndLift(athlete, lift);
    m_agreement->setLift(lift);
}

void NoisePage::refresh(Logbook::What /*what*/, SessionId /*session*/) {
    setAthleteAndLift(m_athlete, m_lift);
}

} // namespace slopebook::ui

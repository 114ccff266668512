// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/floor/station/bodyfield.h"

#include "core/model/errors.h"
#include "ui/floor/entry/setwords.h"
#include "ui/parts/fingers.h"
#include "ui/parts/roomfor.h"
#include "ui/typed/loads.h"
#include "ui/words/format.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>

namespace slopebook::ui {

BodyField::BodyField(LoadUnit unit, QWidget* parent)
    : QWidget(parent), m_unit(unit), m_label(new QLabel), m_line(new QLineEdit) {
    m_line->setObjectName(QStringLiteral("stationBody"));
    m_line->setFixedWidth(m_line->fontMetrics().horizontalAdvance(QStringLiteral("100.00")) + 18);
    m_line->setMinimumHeight(fingerSize);
    m_label->setBuddy(m_line);
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_label);
    layout->addWidget(m_line);
    connect(m_line, &QLineEdit::editingFinished, this, &BodyField::left);
    // Before it is known to be finished, and so taken first.
    connect(m_line, &QLineEdit::returnPressed, this, [this] {
        Q_EMIT left();
        Q_EMIT goesOn();
    });
    showMass({}, {}, unit);
}

void BodyField::showMass(std::optional<Mass> known, std::optional<Mass> last, LoadUnit unit) {
    m_unit = unit;
    m_label->setText(tr("&Body, %1").arg(unitName(unit)));
    m_line->setAccessibleName(tr("Body mass, %1").arg(unitName(unit)));
    m_line->setToolTip(tr("Of this athlete on this day, without what is added"));
    m_line->setText(known ? massText(*known, unit) : QString());
    setHint(*m_line, last ? massText(*last, unit) : QString());
}

std::optional<Mass> BodyField::typed() const {
    const QString words = m_line->text().trimmed();
    if (words.isEmpty())
        return std::nullopt;
    const auto mass = readLoad(view(words), massUnit(m_unit));
    if (!std::holds_alternative<Mass>(mass) || std::get<Mass>(mass).grams == 0)
        throw BadInput(asIs(utf8(tr("a body mass of %1").arg(words))),
                       asIs(utf8(tr("%1, such as 74.5, or nothing").arg(unitName(m_unit)))));
    return std::get<Mass>(mass);
}

bool BodyField::isTyped() const {
    return m_line->isModified();
}

void BodyField::taken() {
    m_line->setModified(false);
}

} // namespace slopebook::ui

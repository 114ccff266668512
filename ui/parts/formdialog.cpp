// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/formdialog.h"

#include "core/model/errors.h"
#include "core/model/names.h"
#include "ui/parts/dayedit.h"
#include "ui/parts/downscroll.h"
#include "ui/typed/setline.h"
#include "ui/words/format.h"
#include "ui/words/said.h"
#include "ui/words/wording.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QScreen>
#include <QScrollBar>
#include <QVBoxLayout>

namespace slopebook::ui {

namespace {

constexpr int fieldWidth = 360;
constexpr int windowFrame = 40; // about what the desktop puts around it

// Asks for all that the form likes; a scroll area alone asks for a few lines of it.
class FormArea final : public DownScroll {
public:
    explicit FormArea(QWidget* form) : DownScroll(form) { setFocusPolicy(Qt::NoFocus); }
    QSize sizeHint() const override {
        const QSize best = widget()->sizeHint();
        return {best.width() + verticalScrollBar()->sizeHint().width(),
                widget()->layout()->totalHeightForWidth(best.width())};
    }
};

} // namespace

FormDialog::FormDialog(Logbook& logbook, const QString& title, QWidget* parent)
    : QDialog(parent), m_logbook(logbook), m_form(new QFormLayout), m_problem(new QLabel) {
    setWindowTitle(title);
    m_form->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    m_form->setRowWrapPolicy(QFormLayout::DontWrapRows);
    auto* form = new QWidget;
    form->setLayout(m_form);
    m_form->setContentsMargins(0, 0, 0, 0);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(new FormArea(form), 1);
}

void FormDialog::addField(const QString& label, QWidget* field, const QString& hint) {
    QString name = label;
    field->setAccessibleName(name.remove(QLatin1Char('&')));
    field->setMinimumWidth(fieldWidth);
    m_form->addRow(label, field);
    if (hint.isEmpty())
        return;
    auto* below = new QLabel(hint);
    below->setWordWrap(true);
    below->setMinimumWidth(fieldWidth);
    below->setForegroundRole(QPalette::PlaceholderText);
    field->setAccessibleDescription(hint);
    m_form->addRow(QString(), below);
}

QLineEdit* FormDialog::addLine(const QString& label, const QString& value, const QString& hint) {
    auto* field = new QLineEdit(value);
    addField(label, field, hint);
    return field;
}

void FormDialog::finish() {
    m_problem->setWordWrap(true);
    m_problem->setVisible(false);
    m_problem->setAccessibleDescription(tr("What is wrong"));
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    layout()->addWidget(m_problem);
    layout()->addWidget(buttons);
    // All of it where the screen has the room; else the fields scroll and the buttons stay.
    resize(sizeHint().boundedTo(screen()->availableSize() - QSize(0, windowFrame)));
}

void FormDialog::accept() {
    for (DayEdit* day : findChildren<DayEdit*>())
        if (!day->take()) {
            refuse(day, day->problem());
            return;
        }
    try {
        save();
        QDialog::accept();
    } catch (const FieldProblem& problem) {
        refuse(problem.field, problem.expected);
    } catch (const BadInput& error) {
        refuse(nullptr,
               tr("Found %1, expected %2.").arg(said(error.found()), said(error.expected())));
    } catch (const std::exception& error) {
        refuse(nullptr, said(error));
    }
}

void FormDialog::refuse(QWidget* field, const QString& why) {
    m_problem->setText(QStringLiteral("\u26a0 ") + why);
    m_problem->setVisible(true);
    if (!field)
        return;
    field->setFocus();
    if (auto* line = qobject_cast<QLineEdit*>(field))
        line->selectAll();
    else if (auto* day = qobject_cast<DayEdit*>(field))
        day->selectAll();
}

std::string FormDialog::required(QLineEdit* field, const QString& expected) {
    const auto typed = tidyName(utf8(field->text()));
    if (!typed)
        throw FieldProblem{field, expected};
    return *typed;
}

std::optional<double> FormDialog::decimal(QLineEdit* field, double low, double high,
                                          const QString& expected) {
    const std::u16string typed = field->text().trimmed().toStdU16String();
    if (typed.empty())
        return std::nullopt;
    const auto value = readDecimal(typed);
    if (!value || *value <= low || *value >= high)
        throw FieldProblem{field, expected};
    return value;
}

QString FormDialog::unit() const {
    return unitName(m_logbook.loadUnit());
}

QString FormDialog::shown(const std::optional<Mass>& mass) const {
    return mass ? massText(*mass, m_logbook.loadUnit()) : QString();
}

std::optional<Mass> FormDialog::mass(QLineEdit* field, const QString& expected) const {
    const std::u16string typed = field->text().trimmed().toStdU16String();
    if (typed.empty())
        return std::nullopt;
    const auto value = readLoad(typed, massUnit(m_logbook.loadUnit()));
    if (!std::holds_alternative<Mass>(value) || std::get<Mass>(value).grams == 0)
        throw FieldProblem{field, expected};
    return std::get<Mass>(value);
}

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
// The base of the dialogs that write one thing into the log: labelled fields, and what is wrong
// said under them, with the field at fault selected.
#pragma once

#include "core/model/mass.h"
#include "ui/edits/logbook.h"

#include <QDialog>

#include <optional>

class QFormLayout;
class QLabel;
class QLineEdit;

namespace slopebook::ui {

/// A field cannot be taken: which, and what was expected.
struct FieldProblem {
    QWidget* field;
    QString expected;
};

class FormDialog : public QDialog {
    Q_OBJECT
public:
    void accept() override;

protected:
    FormDialog(Logbook& logbook, const QString& title, QWidget* parent);

    Logbook& logbook() const { return m_logbook; }
    /// label with its mnemonic; also becomes the field's accessible name. hint: a line below it.
    void addField(const QString& label, QWidget* field, const QString& hint = {});
    QLineEdit* addLine(const QString& label, const QString& value, const QString& hint = {});
    /// After the last field: the place for errors and the buttons.
    void finish();

    /// Reads the fields and makes the edit; throws FieldProblem, BadInput or LogError.
    virtual void save() = 0;

    /// In one spelling (core/model/names.h). Throws FieldProblem where nothing visible is typed.
    static std::string required(QLineEdit* field, const QString& expected);
    /// Empty is missing. Throws FieldProblem for what is no number in low < value < high.
    static std::optional<double> decimal(QLineEdit* field, double low, double high,
                                         const QString& expected);
    /// A bare number is in the unit of the window.
    std::optional<Mass> mass(QLineEdit* field, const QString& expected) const;
    QString shown(const std::optional<Mass>& mass) const;
    QString unit() const;

private:
    void refuse(QWidget* field, const QString& why);

    Logbook& m_logbook;
    QFormLayout* m_form;
    QLabel* m_problem;
};

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
// Adds an athlete, or changes one.
#pragma once

#include "ui/parts/formdialog.h"

namespace slopebook::ui {

class AthleteDialog final : public FormDialog {
    Q_OBJECT
public:
    /// Nothing in id: a new athlete.
    AthleteDialog(Logbook& logbook, std::optional<AthleteId> id, QWidget* parent);
    /// The athlete that was added or changed, once accepted.
    AthleteId id() const { return *m_id; }

protected:
    void save() override;

private:
    void askNear(const std::string& name);

    std::string m_meant; ///< the name that was asked about last
    std::optional<AthleteId> m_id;
    QLineEdit* m_name;
    QLineEdit* m_note;
};

} // namespace slopebook::ui

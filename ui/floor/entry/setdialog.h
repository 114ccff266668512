// SPDX-License-Identifier: GPL-3.0-or-later
// What counts of a set: the whole set and each rep, the reason where not, a true maximum, the note.
#pragma once

#include "core/log/log.h"
#include "ui/parts/formdialog.h"

#include <vector>

class QCheckBox;

namespace slopebook::ui {

class SetDialog final : public FormDialog {
    Q_OBJECT
public:
    SetDialog(Logbook& logbook, SetId id, QWidget* parent);

protected:
    void save() override;

private:
    /// A check box "counts" and a field for the reason why not.
    struct Counts {
        QCheckBox* box;
        QLineEdit* reason;
    };
    Counts addCounts(const QString& label, const QString& what, const std::string& excluded);
    static std::string reasonOf(const Counts& counts);

    log::PlacedSet m_placed;
    Counts m_whole;
    std::vector<Counts> m_reps;
    QLineEdit* m_reason = nullptr; ///< of a load that was not lifted
    QLineEdit* m_effort;
    QCheckBox* m_maximum;
    QLineEdit* m_note;
};

} // namespace slopebook::ui

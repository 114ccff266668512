// SPDX-License-Identifier: GPL-3.0-or-later
// The devices that speeds are measured with: the list, and the form for one.
#pragma once

#include "ui/parts/formdialog.h"

class QListWidget;

namespace slopebook::ui {

class DeviceDialog final : public FormDialog {
    Q_OBJECT
public:
    /// Nothing in id: a new device.
    DeviceDialog(Logbook& logbook, std::optional<DeviceId> id, QWidget* parent);
    DeviceId id() const { return *m_id; }

protected:
    void save() override;

private:
    std::optional<DeviceId> m_id;
    QLineEdit* m_name;
    QLineEdit* m_note;
};

class DevicesDialog final : public QDialog {
    Q_OBJECT
public:
    DevicesDialog(Logbook& logbook, QWidget* parent);

private:
    void fill();
    void add();
    void change();

    Logbook& m_logbook;
    QListWidget* m_list;
};

} // namespace slopebook::ui

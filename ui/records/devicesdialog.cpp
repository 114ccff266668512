// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/records/devicesdialog.h"

#include "ui/edits/valueedits.h"
#include "ui/parts/listlayout.h"
#include "ui/words/format.h"

#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>

namespace slopebook::ui {

DeviceDialog::DeviceDialog(Logbook& logbook, std::optional<DeviceId> id, QWidget* parent)
    : FormDialog(logbook, id ? tr("Change device") : tr("Add device"), parent), m_id(id) {
    const Device device = id ? stored(logbook.log(), *id) : Device{};
    m_name = addLine(tr("&Name"), text(device.name));
    m_note = addLine(tr("N&ote"), text(device.note));
    finish();
}

void DeviceDialog::save() {
    const Device device{.name = required(m_name, tr("Expected a name.")),
                        .note = utf8(m_note->text().trimmed())};
    if (m_id)
        logbook().changeDevice(*m_id, device);
    else
        m_id = logbook().addDevice(device);
}

DevicesDialog::DevicesDialog(Logbook& logbook, QWidget* parent)
    : QDialog(parent), m_logbook(logbook), m_list(new QListWidget) {
    setWindowTitle(tr("Devices"));
    m_list->setAccessibleName(tr("Devices"));
    auto* addButton = new QPushButton(tr("&Add…"));
    auto* changeButton = new QPushButton(tr("Cha&nge…"));
    layOutList(*this, m_list, {addButton, changeButton});
    connect(addButton, &QPushButton::clicked, this, &DevicesDialog::add);
    connect(changeButton, &QPushButton::clicked, this, &DevicesDialog::change);
    connect(m_list, &QListWidget::itemActivated, this, &DevicesDialog::change);
    fill();
}

void DevicesDialog::fill() {
    const int row = m_list->currentRow();
    m_list->clear();
    for (const auto& device : m_logbook.log().devices()) {
        const QString note = text(device.value.note);
        auto* item = new QListWidgetItem(
            note.isEmpty() ? text(device.value.name)
                           : QStringLiteral("%1 (%2)").arg(text(device.value.name), note),
            m_list);
        item->setData(Qt::UserRole, qint64(raw(device.id)));
    }
    m_list->setCurrentRow(row < 0 && m_list->count() > 0 ? 0 : row);
}

void DevicesDialog::add() {
    DeviceDialog dialog(m_logbook, std::nullopt, this);
    if (dialog.exec() == Accepted)
        fill();
}

void DevicesDialog::change() {
    const QListWidgetItem* item = m_list->currentItem();
    if (!item)
        return;
    DeviceDialog dialog(m_logbook, DeviceId{item->data(Qt::UserRole).toLongLong()}, this);
    if (dialog.exec() == Accepted)
        fill();
}

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
// How it stands with the store, at the foot of the window; what is behind it is a click away. There
// is none where the log meets no store.
#pragma once

#include "ui/window/storekeeper.h"

#include <QPushButton>

namespace slopebook::ui {

class StoreLine final : public QPushButton {
    Q_OBJECT
public:
    explicit StoreLine(std::shared_ptr<StoreKeeper> keeper);

    StoreKeeper& keeper() { return *m_keeper; }
    /// For the line of a window that is built anew: what is known of the store lives on.
    const std::shared_ptr<StoreKeeper>& kept() const { return m_keeper; }
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void tell();
    void fit();
    QSize sizeOf(const QString& words) const;

    std::shared_ptr<StoreKeeper> m_keeper;
    QString m_whole, m_brief; ///< the latter where there is no room
};

} // namespace slopebook::ui

// SPDX-License-Identifier: GPL-3.0-or-later
// When the window looks for what others wrote into its log: what it then shows anew takes as long
// as a page takes, and is not to stand between two keys of somebody who types.
#pragma once

#include <QElapsedTimer>
#include <QObject>
#include <QTimer>

#include <functional>

namespace slopebook::ui {

class QuietLook final : public QObject {
    Q_OBJECT
public:
    explicit QuietLook(std::function<void()> look, QObject* parent = nullptr);

    /// Soon, once however often it is wanted until then: after a pause in the typing, and at the
    /// latest after a few seconds of it.
    void want();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    std::function<void()> m_look;
    QTimer m_due;
    QElapsedTimer m_wanted; ///< since when
};

} // namespace slopebook::ui

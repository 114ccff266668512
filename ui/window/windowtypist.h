// SPDX-License-Identifier: GPL-3.0-or-later
// Whether a set is just being typed in this window: what cannot give way to it once it has begun
// waits for that, in this program or another (log/typists.h).
#pragma once

#include "core/log/typists.h"

#include <QObject>
#include <QPointer>
#include <QTimer>

#include <chrono>
#include <filesystem>
#include <vector>

class QLineEdit;
class QWidget;

namespace slopebook::ui {

class WindowTypist final : public QObject {
    Q_OBJECT
public:
    /// A test has less of it.
    struct Times {
        std::chrono::milliseconds key{500}; ///< after any key
        /// What stands in a line and is not touched for so long is left: nobody types.
        std::chrono::milliseconds line{60'000};
    };

    explicit WindowTypist(const std::filesystem::path& log, QObject* parent = nullptr)
        : WindowTypist(log, Times(), parent) {}
    WindowTypist(const std::filesystem::path& log, Times times, QObject* parent);

    /// Those lines of it that are typed and taken by Enter: who has begun one is not done.
    void watch(const QWidget& page);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void tell();

    log::Typist m_typist;
    QTimer m_key, m_line; ///< run as long as that counts
    std::vector<QPointer<QLineEdit>> m_lines;
};

} // namespace slopebook::ui

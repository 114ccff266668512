// SPDX-License-Identifier: GPL-3.0-or-later
// Work on a thread of its own that may hang where nobody can stop it (a name is looked up, a
// network is gone): its owner never waits for it longer than a moment.
#pragma once

#include "core/model/progress.h"

#include <QObject>

#include <functional>
#include <future>
#include <memory>

namespace slopebook::ui {

/// What the work touches must be its own: it may live on after its owner, until it sees that it was
/// stopped. Of such work nothing more is heard.
class LooseWork final : public QObject {
    Q_OBJECT
public:
    using Told = std::function<void()>;
    /// What it returns is called on the owner's thread, once it has ended; it throws nothing but
    /// Cancelled.
    using Work = std::function<Told(const Progress&)>;

    explicit LooseWork(QObject* parent = nullptr) : QObject(parent) {}
    ~LooseWork() override; ///< as leave()

    /// Begins; what ran before is left.
    void start(Work work);
    /// Asks the work to stop; its end is told, by stopped() where it heard of it.
    void stop();
    /// Asks the work to stop, waits for a moment, and hears nothing more of it.
    void leave();
    bool running() const { return m_run != nullptr; }

Q_SIGNALS:
    void progressed(int thousandths);
    void stopped();

private:
    struct Run;
    void ended(const Run* run, const Told& told);

    std::shared_ptr<Run> m_run; ///< nothing where none runs
    std::future<void> m_ended;
};

} // namespace slopebook::ui

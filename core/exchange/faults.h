// SPDX-License-Identifier: GPL-3.0-or-later
// Everything that is wrong with what is read, each with its place, instead of the first alone.
#pragma once

#include "core/model/errors.h"

#include <cstddef>
#include <string>
#include <vector>

namespace slopebook::exchange {

constexpr std::size_t faultsKept = 100;

/// Several faults at once. As a BadInput it is the first of them by file and line.
class Faults : public BadInput {
public:
    Faults(std::vector<BadInput> kept, std::size_t total)
        : BadInput(kept.front()), m_kept(std::move(kept)), m_total(total) {}
    /// At most faultsKept, in the order of their places.
    const std::vector<BadInput>& kept() const noexcept { return m_kept; }
    std::size_t total() const noexcept { return m_total; }

private:
    std::vector<BadInput> m_kept;
    std::size_t m_total;
};

/// Collects them.
class FaultList {
public:
    void add(const BadInput& fault);
    /// Does work; what it refuses is kept. Whether it refused nothing.
    template <class Work>
    bool collect(const Work& work) {
        try {
            work();
            return true;
        } catch (const BadInput& fault) {
            add(fault);
            return false;
        }
    }
    bool empty() const { return m_total == 0; }
    /// The fault, or Faults where there are several; files: in the order in which they are told.
    void throwIfAny() const;

private:
    std::vector<BadInput> m_kept;
    std::vector<std::string> m_files; ///< as they were first met
    std::size_t m_total = 0;
};

} // namespace slopebook::exchange

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/faults.h"

#include <algorithm>
#include <utility>

namespace slopebook::exchange {

void FaultList::add(const BadInput& fault) {
    if (const auto* several = dynamic_cast<const Faults*>(&fault)) {
        for (const BadInput& each : several->kept())
            add(each);
        m_total += several->total() - several->kept().size();
        return;
    }
    ++m_total;
    if (m_kept.size() >= faultsKept)
        return;
    m_kept.push_back(fault);
    if (std::ranges::find(m_files, fault.where().file) == m_files.end())
        m_files.push_back(fault.where().file);
}

void FaultList::throwIfAny() const {
    if (m_kept.empty())
        return;
    if (m_total == 1)
        throw BadInput(m_kept.front());
    std::vector<BadInput> inOrder = m_kept;
    std::ranges::stable_sort(inOrder, {}, [&](const BadInput& fault) {
        return std::pair(std::ranges::find(m_files, fault.where().file) - m_files.begin(),
                         fault.where().line);
    });
    throw Faults(std::move(inOrder), m_total);
}

} // namespace slopebook::exchange

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/otherswatch.h"

#include "core/log/impl.h"
#include "core/log/query.h"
#include "core/log/snapshot.h"

#include <bit>
#include <utility>

namespace slopebook::log {

namespace {
/// Of everything but what is known of the store; nothing where a damaged log has none to read.
std::optional<std::uint64_t> sumOfTallies(Log::Impl& impl) {
    try {
        std::uint64_t sum = 0;
        Query rows(impl.db, "SELECT owner, things, sum FROM tallies WHERE kind NOT IN "
                            "('store', 'squad', 'mark', 'sent', 'unsent')");
        while (rows.next()) {
            const auto owner =
                std::bit_cast<std::int64_t>(weight(rows.integer(0), rows.integer(1)));
            sum += weight(owner, rows.integer(2));
        }
        return sum;
    } catch (const LogError& error) {
        if (error.kind() != LogError::Kind::Damaged)
            throw;
        return std::nullopt;
    }
}

/// Of what others committed alone.
long versionOf(const Log& log) {
    return log.dataVersion() - log.impl().commits;
}
} // namespace

OthersWatch::OthersWatch(const Log& log) : m_known{.others = versionOf(log)} {}

// All of one moment: what comes after it is seen at the next call.
OthersWatch::State OthersWatch::read(const Log& log) const {
    const Moment moment(log);
    Log::Impl& impl = log.impl();
    State now{.others = versionOf(log), .own = impl.commits, .sum = m_known.sum};
    if (now.others != m_known.others || now.own != m_known.own)
        now.sum = sumOfTallies(impl);
    return now;
}

bool OthersWatch::wrote(const Log& log) {
    const State now = read(log);
    const State before = std::exchange(m_known, now);
    return now.others != before.others &&
           (now.own != before.own || !now.sum || now.sum != before.sum);
}

void OthersWatch::pass(const Log& log) {
    m_known = read(log);
}

} // namespace slopebook::log

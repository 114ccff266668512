// SPDX-License-Identifier: GPL-3.0-or-later
// The names and trails of a log's things as a table: written beside the others by an export, and
// taken by an import, so that a log that went out and came back is the same to other logs. What was
// removed does not go out.
#pragma once

#include "core/exchange/table.h"
#include "core/exchange/tableout.h"
#include "core/log/identities.h"
#include "core/log/log.h"
#include "core/model/ids.h"

#include <filesystem>
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <tuple>
#include <vector>

namespace slopebook::exchange {

void exportIdentities(const log::Log& log, TableOut& table);

/// Hands over what each row says, no more than one at a time. A long trail goes on in rows of the
/// same uuid: a cell of a workbook ends. Returns the file's columns that were not used. BadInput
/// (file, line, column).
std::vector<std::string> readIdentities(const std::filesystem::path& file,
                                        const std::function<void(const log::Identity&)>& take);
bool isIdentitiesHeader(const std::vector<std::string>& header);

/// What a file's names mean here: things that live in this log, whatever they are called now.
class KnownThings {
public:
    KnownThings() = default;
    void add(const log::Log& log, const log::Identity& identity);

    /// By the file's name: "lift", "Bench".
    template <class Id, class Use>
    void each(const std::string& kind, const Use& use) const {
        if (const auto found = m_named.find(kind); found != m_named.end())
            for (const auto& [name, key] : found->second)
                use(name, Id{key});
    }
    /// What the file says of that day and number of the athlete is of this session.
    template <class Use>
    void eachSession(AthleteId athlete, const Use& use) const {
        if (const auto found = m_sessions.find(athlete); found != m_sessions.end())
            for (const auto& [day, session] : found->second)
                use(day, session);
    }

private:
    std::map<std::string, std::map<std::string, std::int64_t>> m_named;
    std::map<AthleteId, std::map<std::pair<Date, int>, SessionId>> m_sessions;
};

} // namespace slopebook::exchange

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/newfolder.h"

#include "core/log/durable.h"
#include "core/log/failure.h"
#include "core/log/strays.h"

#include <algorithm>
#include <cerrno>
#include <sys/stat.h>
#include <unistd.h>

namespace slopebook::log {

namespace {
namespace fs = std::filesystem;

// Without the slash at its end, and where links lead to.
fs::path folderMeant(const fs::path& target) {
    const auto folder = (fs::absolute(target) / "").parent_path();
    std::error_code error;
    const auto real = fs::canonical(folder, error);
    return error ? folder : real;
}

void requireFillable(const fs::path& folder, Existing existing, const fs::path& named) {
    std::error_code error;
    const auto status = fs::symlink_status(folder, error);
    if (!fs::exists(status))
        return;
    if (!fs::is_directory(status))
        throw AlreadyThere(named);
    if (fs::is_empty(folder, error) && !error)
        return;
    if (existing == Existing::Refuse)
        throw AlreadyThere(named);
}
} // namespace

NewFolder::NewFolder(const fs::path& target, Existing existing)
    : m_target(folderMeant(target)), m_existing(existing) {
    requireNoLogsOwn(m_target);
    requireFillable(m_target, existing, target);
    makeParents();
    sweepStrays(folderOf(m_target));
    for (int attempt = 0;; ++attempt) {
        m_path = nameUnderWay(m_target, attempt);
        if (::mkdir(m_path.c_str(), 0777) == 0)
            return;
        if (const int error = errno; error != EEXIST) {
            for (auto it = m_parents.rbegin(); it != m_parents.rend(); ++it)
                ::rmdir(it->c_str());
            throw systemFailure(error, Doing::Make, m_target);
        }
    }
}

void NewFolder::makeParents() {
    std::vector<fs::path> missing;
    for (auto folder = folderOf(m_target); !fs::exists(folder) && folder.has_relative_path();
         folder = folder.parent_path())
        missing.push_back(folder);
    std::ranges::reverse(missing);
    for (const auto& folder : missing) {
        if (::mkdir(folder.c_str(), 0777) != 0) {
            const int error = errno;
            for (auto it = m_parents.rbegin(); it != m_parents.rend(); ++it)
                ::rmdir(it->c_str());
            throw systemFailure(error, Doing::Make, folder);
        }
        m_parents.push_back(folder);
    }
}

NewFolder::~NewFolder() {
    std::error_code ignored;
    if (!m_path.empty())
        fs::remove_all(m_path, ignored);
    if (!m_named)
        for (auto it = m_parents.rbegin(); it != m_parents.rend(); ++it)
            ::rmdir(it->c_str()); // stays where another program put something into it
}

void NewFolder::giveName() {
    for (const auto& entry : fs::directory_iterator(m_path))
        syncFile(entry.path());
    syncFolder(m_path);
    if (fs::exists(fs::symlink_status(m_target))) {
        fill();
    } else {
        renameToFree(m_path, m_target);
        m_path.clear();
    }
    m_named = true;
    syncFolder(folderOf(m_target));
}

void NewFolder::fill() {
    std::vector<fs::path> names;
    for (const auto& entry : fs::directory_iterator(m_path))
        names.push_back(entry.path().filename());
    std::ranges::sort(names);
    for (const auto& name : names)
        requireWritable(m_target / name, m_existing);
    std::vector<fs::path> placed;
    try {
        for (const auto& name : names) {
            NewFile file(m_target / name, m_existing);
            fs::rename(m_path / name, file.path()); // over our own empty file, beside the target
            const bool fresh = !fs::exists(fs::symlink_status(m_target / name));
            file.giveName();
            if (fresh)
                placed.push_back(m_target / name);
        }
    } catch (...) {
        std::error_code ignored;
        for (const auto& file : placed)
            fs::remove(file, ignored);
        throw;
    }
    syncFolder(m_target);
}

} // namespace slopebook::log

// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/disk.h"

#include "tests/support/bytes.h"

#include <cerrno>
#include <cstdlib>

namespace slopebook::test {

namespace {
Disk* active = nullptr; // the calls of C have no other way to find it

std::string absolute(const std::string& path) {
    return std::filesystem::absolute(path).lexically_normal().string();
}
} // namespace

Disk::Disk(const std::filesystem::path& folder) : m_folder(absolute(folder.string())) {
    if (active != nullptr)
        std::abort();
    for (const auto& entry : std::filesystem::recursive_directory_iterator(folder))
        if (entry.is_regular_file()) {
            m_recording.contents[m_files] = readBytes(entry.path());
            m_names[entry.path().string()] = m_files++;
        }
    m_recording.names = m_names;
    active = this;
}

Disk::~Disk() {
    active = nullptr;
}

void Disk::fail(const Fault& fault) {
    m_fault = fault;
    m_failed = false;
    m_counts.clear();
}

Disk* Disk::watching(const char* path) {
    if (active == nullptr || path == nullptr)
        return nullptr;
    Disk* const disk = active;
    active = nullptr; // what follows may itself ask the system
    const bool inside = absolute(path).starts_with(disk->m_folder);
    active = disk;
    return inside ? disk : nullptr;
}

Disk* Disk::watching(int descriptor) {
    return active != nullptr && active->m_open.contains(descriptor) ? active : nullptr;
}

bool Disk::meets(Call call) {
    if (!m_fault || m_fault->call != call)
        return false;
    const int count = ++m_counts[call];
    if (count != m_fault->nth && !(m_fault->forEver && count > m_fault->nth))
        return false;
    m_failed = true;
    errno = m_fault->error;
    return true;
}

void Disk::opened(int descriptor, const std::string& path, bool made) {
    const std::string name = absolute(path);
    if (std::filesystem::is_directory(name)) {
        m_open[descriptor] = {-1, name};
        return;
    }
    if (made || !m_names.contains(name)) {
        m_names[name] = m_files++;
        m_recording.ops.push_back(
            {.kind = DiskOp::Kind::Create, .file = m_names[name], .name = name});
    }
    m_open[descriptor] = {m_names[name], name};
}

void Disk::wrote(int descriptor, std::size_t at, const void* bytes, std::size_t size) {
    m_recording.ops.push_back({.kind = DiskOp::Kind::Write,
                               .file = m_open.at(descriptor).file,
                               .at = at,
                               .bytes = {static_cast<const char*>(bytes), size}});
}

void Disk::truncated(int descriptor, std::size_t size) {
    m_recording.ops.push_back(
        {.kind = DiskOp::Kind::Truncate, .file = m_open.at(descriptor).file, .at = size});
}

void Disk::synced(int descriptor) {
    const Descriptor& what = m_open.at(descriptor);
    if (what.file < 0)
        m_recording.ops.push_back({.kind = DiskOp::Kind::SyncFolder, .name = what.path});
    else
        m_recording.ops.push_back({.kind = DiskOp::Kind::SyncFile, .file = what.file});
}

void Disk::unlinked(const std::string& path) {
    const std::string name = absolute(path);
    m_recording.ops.push_back({.kind = DiskOp::Kind::Unlink, .file = m_names[name], .name = name});
    m_names.erase(name);
}

void Disk::renamed(const std::string& from, const std::string& to) {
    const std::string name = absolute(from);
    const int file = m_names[name];
    m_recording.ops.push_back(
        {.kind = DiskOp::Kind::Rename, .file = file, .name = name, .to = absolute(to)});
    m_names.erase(name);
    m_names[absolute(to)] = file;
}

} // namespace slopebook::test

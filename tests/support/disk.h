// SPDX-License-Identifier: GPL-3.0-or-later
// The system calls that this program, SQLite and the C++ library make in one folder: watched, made
// to fail, and recorded for powerloss.h. Works by defining those calls in the test program, so it
// sees what a VFS of SQLite's would see and the files that are made beside SQLite as well.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace slopebook::test {

enum class Call { Open, Read, Write, Sync, Truncate, Remove, Rename, Folder };
constexpr std::array<const char*, 8> callNames{"open",     "read",   "write",  "sync",
                                               "truncate", "remove", "rename", "make a folder"};

/// The nth call of a kind (from 1) fails with that errno; or that one and all after it.
struct Fault {
    Call call = Call::Write;
    int nth = 1;
    int error = 0;
    bool forEver = false;
};

/// One thing that was asked of the disk. Files are numbered; a name is taken off one and given to
/// another.
struct DiskOp {
    enum class Kind { Create, Write, Truncate, SyncFile, SyncFolder, Unlink, Rename };
    Kind kind = Kind::Write;
    int file = -1;
    std::string name{}; ///< of Create, Unlink, Rename (from), SyncFolder (the folder)
    std::string to{};   ///< of Rename
    std::size_t at = 0; ///< of Write; the new size of Truncate
    std::string bytes{};
};

struct Recording {
    std::map<std::string, int> names{};    ///< what was there when it began
    std::map<int, std::string> contents{}; ///< likewise, by number
    std::vector<DiskOp> ops{};
};

/// Watches a folder from its making to its end; one at a time.
class Disk {
public:
    explicit Disk(const std::filesystem::path& folder);
    ~Disk();
    Disk(const Disk&) = delete;
    Disk& operator=(const Disk&) = delete;

    /// From now on; calls are counted anew.
    void fail(const Fault& fault);
    /// Whether the fault was met.
    bool failed() const { return m_failed; }
    void heal() { m_fault.reset(); }

    const Recording& recording() const { return m_recording; }

    // For the calls themselves.
    static Disk* watching(const char* path);
    static Disk* watching(int descriptor);
    /// True, and errno set, where this call is to fail.
    bool meets(Call call);
    void opened(int descriptor, const std::string& path, bool made);
    void closed(int descriptor) { m_open.erase(descriptor); }
    void wrote(int descriptor, std::size_t at, const void* bytes, std::size_t size);
    void truncated(int descriptor, std::size_t size);
    void synced(int descriptor);
    void unlinked(const std::string& path);
    void renamed(const std::string& from, const std::string& to);

private:
    struct Descriptor {
        int file = -1; ///< -1: a folder
        std::string path;
    };
    std::string m_folder;
    std::optional<Fault> m_fault;
    std::map<Call, int> m_counts;
    bool m_failed = false;
    Recording m_recording;
    std::map<std::string, int> m_names;
    int m_files = 0;
    std::map<int, Descriptor> m_open;
};

} // namespace slopebook::test

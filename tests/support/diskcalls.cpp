// SPDX-License-Identifier: GPL-3.0-or-later
// Stands in the test program before the C library's own calls of these names; each asks the watched
// disk first and passes on to the next of its name. Those that SQLite and the C++ library make come
// here too: a shared library takes what the program defines.
#include "tests/support/disk.h"

#include <cerrno>
#include <cstdarg>
#include <cstdio>
#include <dlfcn.h>
#include <fcntl.h>
#include <sys/stat.h>
#include <sys/uio.h>
#include <unistd.h>

using slopebook::test::Call;
using slopebook::test::Disk;

namespace {

template <class Function>
Function* next(const char* name) {
    return reinterpret_cast<Function*>(::dlsym(RTLD_NEXT, name));
}

int openAs(const char* name, const char* path, int flags, unsigned mode) {
    Disk* const disk = Disk::watching(path);
    if (disk != nullptr && disk->meets(Call::Open))
        return -1;
    struct stat there {};
    const bool making = disk != nullptr && (flags & O_CREAT) != 0 && ::stat(path, &there) != 0;
    const int result = next<int(const char*, int, ...)>(name)(path, flags, mode);
    if (disk != nullptr && result >= 0)
        disk->opened(result, path, making);
    return result;
}

ssize_t writeAs(const char* name, int file, const void* bytes, size_t size, off_t at) {
    Disk* const disk = Disk::watching(file);
    if (disk != nullptr && disk->meets(Call::Write))
        return -1;
    const ssize_t result =
        next<ssize_t(int, const void*, size_t, off_t)>(name)(file, bytes, size, at);
    if (disk != nullptr && result > 0)
        disk->wrote(file, static_cast<std::size_t>(at), bytes, static_cast<std::size_t>(result));
    return result;
}

ssize_t readAs(const char* name, int file, void* bytes, size_t size, off_t at) {
    Disk* const disk = Disk::watching(file);
    if (disk != nullptr && disk->meets(Call::Read))
        return -1;
    return next<ssize_t(int, void*, size_t, off_t)>(name)(file, bytes, size, at);
}

int syncAs(const char* name, int file) {
    Disk* const disk = Disk::watching(file);
    if (disk != nullptr && disk->meets(Call::Sync))
        return -1;
    const int result = next<int(int)>(name)(file);
    if (disk != nullptr && result == 0)
        disk->synced(file);
    return result;
}

int truncateAs(const char* name, int file, off_t size) {
    Disk* const disk = Disk::watching(file);
    if (disk != nullptr && disk->meets(Call::Truncate))
        return -1;
    const int result = next<int(int, off_t)>(name)(file, size);
    if (disk != nullptr && result == 0)
        disk->truncated(file, static_cast<std::size_t>(size));
    return result;
}

int removeAs(const char* name, const char* path) {
    Disk* const disk = Disk::watching(path);
    if (disk != nullptr && disk->meets(Call::Remove))
        return -1;
    const int result = next<int(const char*)>(name)(path);
    if (disk != nullptr && result == 0)
        disk->unlinked(path);
    return result;
}

} // namespace

// NOLINTBEGIN(readability-inconsistent-declaration-parameter-name): the names are the C library's
extern "C" {

int open(const char* path, int flags, ...) {
    va_list more;
    va_start(more, flags);
    const unsigned mode = (flags & O_CREAT) != 0 ? va_arg(more, unsigned) : 0;
    va_end(more);
    return openAs("open", path, flags, mode);
}

int open64(const char* path, int flags, ...) {
    va_list more;
    va_start(more, flags);
    const unsigned mode = (flags & O_CREAT) != 0 ? va_arg(more, unsigned) : 0;
    va_end(more);
    return openAs("open64", path, flags, mode);
}

int close(int file) {
    if (Disk* const disk = Disk::watching(file))
        disk->closed(file);
    return next<int(int)>("close")(file);
}

ssize_t pwrite(int file, const void* bytes, size_t size, off_t at) {
    return writeAs("pwrite", file, bytes, size, at);
}

ssize_t pwrite64(int file, const void* bytes, size_t size, off_t at) {
    return writeAs("pwrite64", file, bytes, size, at);
}

ssize_t write(int file, const void* bytes, size_t size) {
    Disk* const disk = Disk::watching(file);
    if (disk == nullptr)
        return next<ssize_t(int, const void*, size_t)>("write")(file, bytes, size);
    return writeAs("pwrite", file, bytes, size, ::lseek(file, 0, SEEK_CUR));
}

ssize_t pread(int file, void* bytes, size_t size, off_t at) {
    return readAs("pread", file, bytes, size, at);
}

ssize_t pread64(int file, void* bytes, size_t size, off_t at) {
    return readAs("pread64", file, bytes, size, at);
}

int fsync(int file) {
    return syncAs("fsync", file);
}

int fdatasync(int file) {
    return syncAs("fdatasync", file);
}

int ftruncate(int file, off_t size) noexcept {
    return truncateAs("ftruncate", file, size);
}

int ftruncate64(int file, off_t size) noexcept {
    return truncateAs("ftruncate64", file, size);
}

int unlink(const char* path) noexcept {
    return removeAs("unlink", path);
}

int remove(const char* path) noexcept {
    return removeAs("remove", path);
}

int mkdir(const char* path, mode_t mode) noexcept {
    Disk* const disk = Disk::watching(path);
    if (disk != nullptr && disk->meets(Call::Folder))
        return -1;
    return next<int(const char*, mode_t)>("mkdir")(path, mode);
}

int rename(const char* from, const char* to) noexcept {
    Disk* const disk = Disk::watching(from);
    if (disk != nullptr && disk->meets(Call::Rename))
        return -1;
    const int result = next<int(const char*, const char*)>("rename")(from, to);
    if (disk != nullptr && result == 0)
        disk->renamed(from, to);
    return result;
}

int renameat2(int inFrom, const char* from, int inTo, const char* to, unsigned flags) noexcept {
    Disk* const disk = Disk::watching(from);
    if (disk != nullptr && disk->meets(Call::Rename))
        return -1;
    const int result = next<int(int, const char*, int, const char*, unsigned)>("renameat2")(
        inFrom, from, inTo, to, flags);
    if (disk != nullptr && result == 0)
        disk->renamed(from, to);
    return result;
}
}
// NOLINTEND(readability-inconsistent-declaration-parameter-name)

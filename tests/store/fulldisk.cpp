// SPDX-License-Identifier: GPL-3.0-or-later
// Loaded into a test's PostgreSQL (LD_PRELOAD): while the file "full" is in its folder, no table
// grows any more, as on a disk that is full.
#include <cerrno>
#include <cstdio>
#include <cstring>
#include <dlfcn.h>
#include <sys/stat.h>
#include <unistd.h>

namespace {
bool isFull(int file, off_t at) {
    struct stat held {};
    if (::access("full", F_OK) != 0 || ::fstat(file, &held) != 0 || at < held.st_size)
        return false;
    char link[64], path[512];
    std::snprintf(link, sizeof link, "/proc/self/fd/%d", file);
    const ssize_t length = ::readlink(link, path, sizeof path - 1);
    if (length <= 0)
        return false;
    path[length] = '\0';
    return std::strstr(path, "/base/") != nullptr;
}

using Write = ssize_t (*)(int, const void*, size_t, off_t);
ssize_t writeUnlessFull(int file, const void* bytes, size_t size, off_t at) {
    static const auto real = reinterpret_cast<Write>(::dlsym(RTLD_NEXT, "pwrite"));
    if (isFull(file, at)) {
        errno = ENOSPC;
        return -1;
    }
    return real(file, bytes, size, at);
}
} // namespace

extern "C" ssize_t pwrite(int file, const void* bytes, size_t size, off_t at) {
    return writeUnlessFull(file, bytes, size, at);
}
extern "C" ssize_t pwrite64(int file, const void* bytes, size_t size, off_t at) {
    return writeUnlessFull(file, bytes, size, at);
}

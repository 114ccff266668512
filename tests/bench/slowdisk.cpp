// SPDX-License-Identifier: GPL-3.0-or-later
// A disk that takes long to be sure of what it holds: each fsync of a program takes so many
// milliseconds more.
//   LD_PRELOAD=.../libslopebook_slowdisk.so SLOPEBOOK_SYNC_MS=60 PROGRAM ...
#include <cstdlib>
#include <ctime>
#include <dlfcn.h>

namespace {
using Sync = int (*)(int);

int slowly(const char* name, int file) {
    const char* ms = std::getenv("SLOPEBOOK_SYNC_MS");
    if (const long more = ms == nullptr ? 0 : std::atol(ms); more > 0) {
        const timespec wait{.tv_sec = more / 1000, .tv_nsec = more % 1000 * 1'000'000};
        ::nanosleep(&wait, nullptr);
    }
    return reinterpret_cast<Sync>(::dlsym(RTLD_NEXT, name))(file);
}
} // namespace

extern "C" int fsync(int file) {
    return slowly("fsync", file);
}
extern "C" int fdatasync(int file) {
    return slowly("fdatasync", file);
}

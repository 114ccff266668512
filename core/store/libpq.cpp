// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/libpq.h"

#include "core/model/phrases/store.h"
#include "core/store/failure.h"

#include <dlfcn.h>

namespace slopebook::store {

namespace {
Libpq loaded() {
    void* library = ::dlopen("libpq.so.5", RTLD_NOW | RTLD_LOCAL); // stays to the end
    Libpq calls;
    bool whole = library != nullptr;
    const auto look = [&](const char* name) -> void* {
        void* found = library ? ::dlsym(library, name) : nullptr;
        whole = whole && found;
        return found;
    };
#define SLOPEBOOK_LIBPQ_CALL(name) calls.name = reinterpret_cast<decltype(calls.name)>(look(#name));
    SLOPEBOOK_LIBPQ_CALLS(SLOPEBOOK_LIBPQ_CALL)
#undef SLOPEBOOK_LIBPQ_CALL
    if (!whole)
        throw StoreError(StoreError::Kind::NoLibrary,
                         say("A shared store needs PostgreSQL's library for clients (libpq.so.5), "
                             "which is not on this machine."));
    return calls;
}
} // namespace

const Libpq& libpq() {
    static const Libpq calls = loaded(); // tried again where it failed
    return calls;
}

} // namespace slopebook::store

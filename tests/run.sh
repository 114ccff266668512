#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Installs what is missing, builds with warnings as errors, and runs every test.
# Arguments go to ctest: tests/run.sh -L exchange
# tests/run.sh --sanitize [...]: the same under the address and undefined-behaviour sanitizers.
# tests/run.sh --alone [all | FILE...]: runs nothing, but compiles what has changed source by source.
set -eu
cd "$(dirname "$0")/.."

if [ "${1:-}" = --alone ]; then
    shift
    cmake --preset debug >/dev/null
    exec python3 tests/alone.py build/debug "$@"
fi

preset=ci
if [ "${1:-}" = --sanitize ]; then
    preset=sanitize
    shift
    # What Qt and the font library hold to the end is theirs.
    # Of a thread's stack a sixteenth is watched after its return, of each allocation ten callers noted.
    ASAN_OPTIONS=detect_leaks=0:detect_stack_use_after_return=1:max_uar_stack_size_log=18:malloc_context_size=10
    export ASAN_OPTIONS UBSAN_OPTIONS=print_stacktrace=1
fi

sh app/install.sh app/packages.txt tests/packages.txt
cmake --preset "$preset" >/dev/null
cmake --build --preset "$preset"
sh tests/rooms.sh
sh tests/numbers.sh

log=build/$preset/tests.txt
status=0
ctest --test-dir "build/$preset" --output-on-failure --no-tests=error \
    --parallel "$(getconf _NPROCESSORS_ONLN)" "$@" || status=$?

# What a test left out for want of a tool is said aloud, not passed over.
if grep -h "^SKIP" "build/$preset"/Testing/Temporary/LastTest.log >"$log" 2>/dev/null; then
    echo
    echo "SKIPPED:"
    sort "$log" | uniq -c
fi
exit $status

#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Installs what is missing, builds with warnings as errors, and runs every test.
# Arguments go to ctest: tests/run.sh -L exchange
set -eu
cd "$(dirname "$0")/.."

sh app/install.sh app/packages.txt tests/packages.txt
cmake --preset ci >/dev/null
cmake --build --preset ci
sh tests/rooms.sh

log=build/ci/tests.txt
status=0
ctest --test-dir build/ci --output-on-failure --no-tests=error \
    --parallel "$(getconf _NPROCESSORS_ONLN)" "$@" || status=$?

# What a test left out for want of a tool is said aloud, not passed over.
if grep -h "^SKIP" build/ci/Testing/Temporary/LastTest.log >"$log" 2>/dev/null; then
    echo
    echo "SKIPPED:"
    sort "$log" | uniq -c
fi
exit $status

#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# The long run, about an hour and a half: thousands of kills and power losses, 100,000 damages, 10,000 round trips,
# 100,000 steps of a monkey at the window and 1,000 kills of it, every failing call, and the fuzzers for 60 s each.
# Builds what it needs (preset ci).
set -eu
cd "$(dirname "$0")/.."

tests="crash/tst_failingdisk crash/tst_powerloss crash/tst_kills log/tst_durability log/tst_damage
       exchange/tst_roundtrip exchange/tst_snapshot crash/tst_twowindows system/tst_commandlines
       ui/tst_monkey ui/tst_monkeykills"
sh app/install.sh app/packages.txt tests/packages.txt
cmake --preset ci >/dev/null
targets=$(for test in $tests; do basename "$test"; done)
# shellcheck disable=SC2086 # one word a target
cmake --build --preset ci --target $targets

export SLOPEBOOK_LONG=1 RC_PARAMS="max_success=10000" QT_QPA_PLATFORM=offscreen TZ=UTC LC_ALL=C.UTF-8
export QTEST_FUNCTION_TIMEOUT=36000000
status=0
for test in $tests; do
    echo "== $test"
    "build/ci/tests/$test" >build/ci/long.txt 2>&1 || status=1
    grep -Ev "^(PASS|Config|\*\*\*)" build/ci/long.txt
done
tests/fuzz/run.sh 60 || status=1
exit $status

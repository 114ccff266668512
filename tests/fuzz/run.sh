#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Fuzzes CSV, traces, log files and workbooks: tests/fuzz/run.sh [SECONDS EACH]. A finding stays in build/fuzz.
set -eu
cd "$(dirname "$0")/../.."
seconds=${1:-60}
sh app/install.sh app/packages.txt tests/packages.txt
cmake --preset fuzz >/dev/null
cmake --build --preset fuzz
for target in csv trace logfile sheets; do
    new=build/fuzz/corpus/$target
    mkdir -p "$new"
    echo "FUZZING $target for $seconds s"
    build/fuzz/tests/fuzz/fuzz_$target -max_total_time="$seconds" -timeout=20 -rss_limit_mb=2048 \
        -artifact_prefix=build/fuzz/finding_${target}_ -print_final_stats=1 \
        "$new" "tests/fuzz/corpus/$target" >"build/fuzz/$target.txt" 2>&1 || {
        tail -40 "build/fuzz/$target.txt"
        exit 1
    }
    grep -E "Done|number_of_executed_units|new_units_added" "build/fuzz/$target.txt"
done

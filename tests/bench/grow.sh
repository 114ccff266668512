#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# How the log and the window grow with the number of sessions: prints the tables of DEVELOPERS.md.
#   tests/bench/grow.sh 1000 10000 100000 1000000
# Needs the tests built (preset ci), no display, and 3 KB of disk a session in TMPDIR, which is also
# the disk that is measured: 3 GB for a million.
set -eu
cd "$(dirname "$0")/../.."
bin=$(pwd)/build/ci
[ $# -gt 0 ] || set -- 1000 10000 100000
folder=$(mktemp -d "${TMPDIR:-/tmp}/slopebook-grow.XXXXXX")
trap 'rm -rf "$folder"' EXIT INT TERM
cd "$folder"
export QT_QPA_PLATFORM=offscreen HOME="$folder" XDG_CONFIG_HOME="$folder" XDG_RUNTIME_DIR="$folder"
chmod 700 "$folder"

"$bin/tests/bench/slopebook_bench_log" "$@"
cp "$bin/sample_db/sample.slopebook" sample.slopebook
for sessions in "$@"; do
    athlete=$((sessions / 40))
    "$bin/tests/bench/slopebook_make_log" log.slopebook "$sessions"
    "$bin/tests/bench/slopebook_make_log" lone.slopebook "$sessions" "$athlete"
    printf '\n%s sessions\n' "$sessions"
    "$bin/tests/bench/slopebook_bench_window" log.slopebook sample.slopebook lone.slopebook \
        "$(printf 'Athlete %05d' "$athlete")" 2>/dev/null
    lift=$((athlete % 6)) # the first by name of the two that this athlete does
    "$bin/tests/bench/slopebook_make_log" squad.slopebook "$sessions" lift "$lift"
    printf '\nthe pages of everybody, against the log of those who do the lift alone\n'
    "$bin/tests/bench/slopebook_bench_window" log.slopebook sample.slopebook squad.slopebook \
        "$(printf 'Athlete %05d' "$athlete")" everybody 2>/dev/null
    rm log.slopebook lone.slopebook squad.slopebook
done

#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Installs what is missing, builds the program and opens it on a copy of the sample log. Where there
# is no display it prints the sample comparison and writes its page as PDF.
set -eu
cd "$(dirname "$0")/.."

sh app/install.sh app/packages.txt
[ -f build/release/build.ninja ] || cmake --preset release
cmake --build --preset release

data="${XDG_DATA_HOME:-$HOME/.local/share}/slopebook"
sample="$data/sample.slopebook"
mkdir -p "$data"
# A copy that the user has worked in is theirs: it is never written over.
if [ ! -e "$sample" ]; then
    build/release/app/slopebook backup build/release/sample_db/sample.slopebook "$sample"
fi

if [ -n "${DISPLAY:-}" ] || [ -n "${WAYLAND_DISPLAY:-}" ]; then
    exec build/release/app/slopebook "$sample"
fi
echo "No display: here is the sample comparison as text."
echo
page="$data/comparison.pdf"
build/release/app/slopebook compare "$sample" --athlete Cora --lift "Bench pull" \
    --from 2025-12-01 --to 2026-05-04 --pdf "$page" --replace # its own, of an earlier run
echo
echo "Its page, ready to print: $page"
echo "The log: $sample"

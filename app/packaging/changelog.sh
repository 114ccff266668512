#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# changelog.sh CHANGES.XML : what changed, as Debian writes it. One <li> a line; German ones are left out.
set -eu
by="Slopebook contributors <slopebook@example.org>"
sed -n -e 's/.*<release version="\([^"]*\)" date="\([^"]*\)".*/R \1 \2/p' \
       -e 's/^ *<li>\(.*\)<\/li>$/L \1/p' -e 's/^ *<\/release>.*/E/p' "$1" |
    sed -e 's/&lt;/</g' -e 's/&gt;/>/g' -e 's/&quot;/"/g' -e "s/&apos;/'/g" -e 's/&amp;/\&/g' |
    while read -r kind rest; do
        case $kind in
        R)
            day=${rest#* }
            printf 'slopebook (%s) unstable; urgency=medium\n\n' "${rest%% *}"
            ;;
        L) printf '%s\n' "$rest" | fold -s -w 74 | sed -e '1s/^/  * /' -e '2,$s/^/    /' -e 's/ *$//' ;;
        E) printf '\n -- %s  %s\n\n' "$by" "$(LC_ALL=C date -u -R -d "$day")" ;;
        esac
    done

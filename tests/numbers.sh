#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# No number goes through the C locale, under which a German desktop writes 1,06: fails on what
# formats or reads one by it in core, ui and app. Numbers go by std::to_chars and std::from_chars,
# those for people by QLocale.
set -eu
cd "$(dirname "$0")/.."
[ $# -gt 0 ] || set -- core ui app

broken=0

# never PATTERN WHY [EXCEPT]: no line of the sources may match, comments aside and but for EXCEPT.
never() {
    bad=$(grep -rnE --include='*.h' --include='*.cpp' "$1" $folders |
        grep -vE '^[^:]*:[0-9]*:[[:space:]]*//' || true)
    [ -z "${3:-}" ] || bad=$(printf '%s' "$bad" | grep -vE "$3" || true)
    if [ -n "$bad" ]; then
        echo "$2:" >&2
        echo "$bad" >&2
        broken=1
    fi
}
folders=$*

never '\b(v?s?n?printf|v?asprintf|[vsf]*scanf)[[:space:]]*\(' \
    "a format of C's reads the locale" \
    '(fprintf|std::fprintf)\((stderr|stdout),'
never '%[-+#0-9.*]*(l|L)?[eEfFgG]([^A-Za-z]|$)' \
    "%f and its like read the locale" \
    '^ui/charts/figure\.cpp:[0-9]*:.*setLabelFormat'
never '\b(strto(d|f|ld|l|ul|ll|ull|imax|umax)|ato(f|i|l|ll)|sto(d|f|ld|i|l|ul|ll|ull)|localeconv)[[:space:]]*\(' \
    "reads a number by the locale"
never '\bstd::to_string\((static_cast<(double|float)>|[0-9]*\.[0-9]|std::(round|floor|ceil|sqrt|abs|pow|log|exp)\(|kilograms\(|pounds\()' \
    "std::to_string of a double reads the locale"
never '\b(o|i)?stringstream\b|\bset(precision|w|fill)\(|\bstd::(fixed|scientific|hexfloat|cout|cerr|clog|put_money|get_money|put_time|get_time)\b' \
    "a stream writes numbers by a locale that others may set" \
    '^app/main\.cpp:[0-9]*:.*std::ostringstream out, err;' # the options' own help
never '\bstd::v?format(_to|_to_n)?\(|\bstd::locale\b|\bimbue\(' \
    "std::format with L and streams with locales: by the locale"
never '\bsetlocale[[:space:]]*\(' \
    "the locale is set in one place" \
    '^ui/window/application\.cpp:'
# One function makes the application, and puts LC_NUMERIC back behind it.
never '(new |make_unique<|make_shared<)Q(Gui|Core)?Application\b|\bQ(Gui|Core)?Application +[a-z][A-Za-z]*[({]' \
    "the application is made in ui/window/application.cpp" \
    '^ui/window/application\.cpp:'

[ $broken -eq 0 ] && echo "No number goes through the C locale."
exit $broken

#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Which room may include which: fails on an include that breaks the table. Rooms and table as in
# DEVELOPERS.md.
set -eu
cd "$(dirname "$0")/.."

broken=0
rooms=

# room FOLDER ALLOWED...: includes of the project ("...") must begin with one of ALLOWED or FOLDER.
room() {
    folder=$1
    rooms="$rooms $folder"
    shift
    [ -d "$folder" ] || return 0
    pattern="$folder/"
    for allowed in "$@"; do pattern="$pattern|$allowed/"; done
    bad=$(grep -rnE --include='*.h' --include='*.cpp' '^[[:space:]]*#[[:space:]]*include[[:space:]]*"' "$folder" |
        grep -vE "include[[:space:]]*\"($pattern)" | grep -vE 'include[[:space:]]*"[^"/]*\.moc"' || true)
    if [ -n "$bad" ]; then
        echo "$folder may include only: $folder $*" >&2
        echo "$bad" >&2
        broken=1
    fi
}

# never FOLDER PATTERN WHY: no include of the folder may match.
never() {
    [ -d "$1" ] || return 0
    bad=$(grep -rnE --include='*.h' --include='*.cpp' "^[[:space:]]*#[[:space:]]*include[[:space:]]*[<\"]($2)" "$1" || true)
    if [ -n "$bad" ]; then
        echo "$1: $3" >&2
        echo "$bad" >&2
        broken=1
    fi
}

# only_in FOLDERS PATTERN WHY: the include may stand in those folders' sources alone.
only_in() {
    bad=$(grep -rnE --include='*.h' --include='*.cpp' "^[[:space:]]*#[[:space:]]*include[[:space:]]*<($2)" core ui app |
        grep -vE "^($1)/[^:]*\.cpp:" || true)
    if [ -n "$bad" ]; then
        echo "$3" >&2
        echo "$bad" >&2
        broken=1
    fi
}

room core/model
room core/stats
# Of model only what it says its refusals in: words.h.
room core/traces core/model core/stats
room core/answers core/model core/stats resources
room core/log core/model resources
room core/desks core/model core/log
room core/exchange core/model core/log resources
room core/questions core/model core/stats core/answers core/log core/exchange
room core/store core/model core/log resources
# A log and its store.
room core/meetings core/model core/log core/desks core/store
room ui/typed core
room ui/words core
room ui/edits core ui/words
room ui/parts core ui/typed ui/words ui/edits
room ui/charts core ui/words ui/parts
room ui/paper core ui/words ui/parts ui/charts
room ui/records core ui/typed ui/words ui/edits ui/parts
room ui/importing core ui/words ui/edits ui/parts
# A task knows every room below it, and no other task.
for task in ui/floor/entry ui/athlete/battery ui/athlete/compare ui/athlete/history ui/athlete/overview ui/athlete/plan \
    ui/athlete/profile ui/athlete/season ui/squad/blocks ui/squad/changes ui/squad/devices ui/squad/due; do
    room $task core ui/typed ui/words ui/edits ui/parts ui/charts ui/paper ui/records ui/importing
done
# The stations type by the same line and show the same chart.
room ui/floor/station core ui/typed ui/words ui/edits ui/parts ui/charts ui/paper ui/records ui/importing ui/floor/entry
room ui/window core ui
room app/commands core
room app ui core resources

for folder in $(find core ui -name '*.cpp' -o -name '*.h' | sed 's,/[^/]*$,,' | sort -u); do
    case "$rooms " in
    *" $folder "*) ;;
    *" ${folder%/*} "*) ;; # a folder within a room
    *)
        echo "$folder is no room: give it a line in tests/rooms.sh and in DEVELOPERS.md" >&2
        broken=1
        ;;
    esac
done

never core 'Q[A-Z]|Qt' "core has no Qt at all"
never core/model 'Eigen|boost|SQLiteCpp|sqlite3|csv\.h|xlsxwriter' "core/model: the standard library only"
never core/stats 'SQLiteCpp|sqlite3|csv\.h|xlsxwriter' "core/stats: Eigen and Boost.Math only"
never core/answers 'SQLiteCpp|sqlite3|xlsxwriter' "core/answers knows no file"
never app/commands 'Q[A-Z]|Qt' "the commands have no Qt: who prints is handed in (app/commands/pages.h)"
never ui 'CLI/|SQLiteCpp|sqlite3' "ui: core and Qt only"
only_in 'core/log' 'SQLiteCpp|sqlite3' "SQLite appears in core/log's sources only"
only_in 'core/model' 'utf8proc' "libutf8proc appears in core/model alone"
only_in 'core/exchange' 'xlsxwriter' "libxlsxwriter appears in core/exchange's sources only"
only_in 'core/exchange' 'zip\.h|expat\.h' "libzip and Expat appear in core/exchange's sources only"

# Only the age of a file left behind goes by the system's. A window stays open over midnight: it goes by the clock handed to it, and tests hand in one that moves.
bad=$(grep -rnE --include='*.h' --include='*.cpp' 'current(Date|Time|DateTime|(M)?SecsSinceEpoch)(Utc)?\(|system_clock::now|[^_a-z]time\((0|NULL|nullptr)\)' core ui | grep -v '^core/log/strays.cpp:' || true)
if [ -n "$bad" ]; then
    echo "Day and time come from the clock that is handed in (ui/parts/clock.h):" >&2
    echo "$bad" >&2
    broken=1
fi
# files_only PATTERN FILE...: how files come to stand on disk, or are asked for, in one place each.
files_only() {
    pattern=$1
    shift
    allowed=$(printf '%s|' "$@")
    bad=$(grep -rnE --include='*.h' --include='*.cpp' "$pattern" core ui app | grep -vE "^(${allowed%|}):" || true)
    if [ -n "$bad" ]; then
        echo "only in $*:" >&2
        echo "$bad" >&2
        broken=1
    fi
}

files_only 'QSaveFile|setOutputFileName|QPdfWriter [a-z]+\(("|q|Q)' none
files_only 'libpq-fe' core/store/libpq.h
files_only 'QFileDialog' ui/parts/filedialog.cpp ui/parts/filedialog.h
files_only 'Q(Print|PrintPreview)Dialog' ui/paper/paperwork.cpp
files_only 'ofstream|workbook_new' core/exchange/tableout.cpp core/exchange/tableout.h core/log/ownfiles.cpp
files_only '::(rename|renameat2|link|unlink)\(|[^_]fs::rename|filesystem::rename' core/log/durable.cpp core/log/strays.cpp \
    core/log/snapshot.cpp core/log/newfolder.cpp core/log/ownfiles.cpp

# C++ takes four digits after \u, lupdate as many as follow: then what is translated is another text.
bad=$(grep -rnE --include='*.h' --include='*.cpp' '\\u[0-9a-fA-F]{4}[0-9a-fA-F]' ui app/tutorial app/main.cpp core/model/phrases || true)
if [ -n "$bad" ]; then
    echo "A letter or digit right after the four of \\u is read otherwise by lupdate:" >&2
    echo "$bad" >&2
    broken=1
fi

[ $broken -eq 0 ] && echo "Every include keeps to its room."
exit $broken

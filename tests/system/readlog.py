# SPDX-License-Identifier: GPL-3.0-or-later
# Reads a log as somebody does in ten years: with python3 and sqlite3 alone, by what
# `slopebook schema` says. Works out every checksum from the recipe, runs the SQL that the page
# gives, and holds the page's list of tables and columns against the file's.
#   readlog.py LOG PAGE RESULT.csv      RESULT: what the first query gives
import csv
import re
import sqlite3
import struct
import sys

log, page, result = sys.argv[1:]
text = open(page, encoding="utf-8").read()
db = sqlite3.connect("file:" + log + "?mode=ro", uri=True)
db.row_factory = sqlite3.Row
faults = []

exec(re.search(r"```python\n(.*?)```", text, re.S).group(1))  # crc64, as the page has it


def whole(value):
    return struct.pack("<q", value)


def number(value):
    return struct.pack("<d", value)


def words(value):
    data = value.encode("utf-8")
    return whole(len(data)) + data


def day(value):
    return whole(int(value.replace("-", "")))


def maybe(value, write):
    return b"\0" if value is None else b"\1" + write(value)


def place(list_):
    names = [name.strip() for name in list_.split(",")]
    return lambda value: whole(names.index(value))


kind = place("mean, propulsive, peak")
point_rule = place("fastest, mean")
test_rule = place("best, mean")
side = place("both, left, right")
outcome = place("lifted, not lifted")
formula = place("value, flight height, height rsi, flight rsi, per body mass")
origin = place("athlete, coach, published")
use = place("alone, added")
unit = place("kg, lb")


def later(name, value, write, default=0):
    return b"" if value == default else words(name) + write(value)


def rows(sql, *values):
    return db.execute(sql, values).fetchall()


checked = 0


def hold(stored, mark, data, what):
    global checked
    checked += 1
    if stored % 2**64 != crc64(mark + data):
        faults.append("the checksum of " + what)


def conditions(row):
    return (maybe(row["device"], whole) +
            b"".join(words(row[c]) for c in ("place", "surface", "footwear", "technique", "not_comparable")))


for a in rows("SELECT * FROM athletes"):
    hold(a["checksum"], b"A", whole(a["id"]) + words(a["name"]) + words(a["note"]), "athlete " + a["name"])
    loads = rows("SELECT * FROM check_loads WHERE athlete = ? ORDER BY lift, load_g", a["id"])
    hold(a["loads_checksum"], b"C", whole(a["id"]) + b"".join(whole(c["lift"]) + whole(c["load_g"]) for c in loads),
         "check loads of " + a["name"])
for r in rows("SELECT * FROM lifts"):
    mvt = whole(0) if r["mvt"] is None else \
        whole(1) + number(r["mvt"]) + maybe(r["mvt_sd"], number) + origin(r["mvt_origin"]) + words(r["mvt_source"])
    hold(r["checksum"], b"L", whole(r["id"]) + words(r["name"]) + kind(r["kind"]) + point_rule(r["rule"]) +
         whole(r["ballistic"]) + later("moves_body", r["moves_body"], whole) + mvt +
         maybe(r["smallest_velocity"], number) + maybe(r["smallest_one_rm"], number) + words(r["note"]),
         "lift " + r["name"])
for r in rows("SELECT * FROM devices"):
    hold(r["checksum"], b"D", whole(r["id"]) + words(r["name"]) + words(r["note"]), "device " + r["name"])
for r in rows("SELECT * FROM blocks"):
    a_week = b"" if r["fewest_a_week"] is None else \
        words("a_week") + number(r["fewest_a_week"]) + number(r["most_a_week"])
    hold(r["checksum"], b"B", whole(r["id"]) + words(r["name"]) + day(r["first_day"]) + day(r["last_day"]) +
         maybe(r["ceiling_g"], whole) + words(r["note"]) + later("trained", r["trained"], words, "") + a_week,
         "block " + r["name"])
for r in rows("SELECT * FROM tests"):
    noise = whole(0) if r["noise"] is None else \
        whole(1) + number(r["noise"]) + whole(r["noise_percent"]) + words(r["noise_source"])
    hold(r["checksum"], b"K", whole(r["id"]) + words(r["name"]) + words(r["unit"]) + whole(r["higher_is_better"]) +
         whole(r["two_sided"]) + later("both_too", r["both_too"], whole) + test_rule(r["rule"]) +
         later("best_of", r["best_of"], whole) + whole(r["attempts"]) + formula(r["formula"]) + whole(r["decimals"]) +
         noise + maybe(r["smallest"], number) + words(r["smallest_source"]) + words(r["note"]), "test " + r["name"])
for r in rows("SELECT * FROM equipment"):
    pieces = rows("SELECT * FROM equipment_pieces WHERE equipment = ? ORDER BY ordinal", r["id"])
    bars = [p for p in pieces if p["kind"] == "bar"]
    plates = [p for p in pieces if p["kind"] == "plate"]
    others = [p for p in pieces if p["kind"] not in ("bar", "plate")]
    data = whole(r["id"]) + words(r["name"]) + maybe(r["ceiling_10ng"], whole) + words(r["note"])
    data += whole(len(bars)) + b"".join(words(p["name"]) + whole(p["mass_10ng"]) + unit(p["unit"]) for p in bars)
    data += whole(len(plates)) + b"".join(whole(p["mass_10ng"]) + whole(p["pairs"]) + unit(p["unit"]) for p in plates)
    data += whole(len(others)) + b"".join(
        words(p["name"]) + whole(p["mass_10ng"]) + use(p["kind"]) + unit(p["unit"]) for p in others)
    hold(r["checksum"], b"E", data, "equipment " + r["name"])
for r in rows("SELECT * FROM stations"):
    tests = rows("SELECT test FROM station_tests WHERE station = ? ORDER BY ordinal", r["id"])
    loads = rows("SELECT load_g FROM station_loads WHERE station = ? ORDER BY ordinal", r["id"])
    hold(r["checksum"], b"N", whole(r["id"]) + words(r["name"]) + maybe(r["lift"], whole) + conditions(r) +
         whole(r["sets"]) + whole(r["rotates"]) + words(r["note"]) + whole(len(tests)) +
         b"".join(whole(t["test"]) for t in tests) + b"".join(whole(t["load_g"]) for t in loads),
         "station " + r["name"])
for r in rows("SELECT * FROM rosters"):
    there = rows("SELECT athlete FROM roster_athletes WHERE station = ? AND day = ? ORDER BY ordinal",
                 r["station"], r["day"])
    hold(r["checksum"], b"R", whole(r["station"]) + day(r["day"]) + b"".join(whole(t["athlete"]) for t in there),
         "a roster of " + r["day"])
for s in rows("SELECT * FROM sessions"):
    what = "the session of " + s["day"]
    under = b"".join(whole(c["lift"]) + conditions(c)
                     for c in rows("SELECT * FROM lift_conditions WHERE session = ? ORDER BY lift", s["id"]))
    head = whole(s["id"]) + whole(s["athlete"]) + day(s["day"]) + whole(s["ordinal"]) + \
        maybe(s["body_mass_g"], whole) + maybe(s["repeat_of"], whole)
    sets = line = b""
    for r in rows("SELECT * FROM sets WHERE session = ? ORDER BY lift, ordinal", s["id"]):
        reps = rows("SELECT * FROM reps WHERE set_id = ? ORDER BY ordinal", r["id"])
        sets += whole(r["lift"]) + whole(r["ordinal"]) + whole(r["id"]) + maybe(r["point"], number) + \
            whole(r["counting"]) + whole(r["load_g"]) + whole(r["maximum"]) + outcome(r["outcome"]) + \
            words(r["reason"]) + maybe(r["rpe"], lambda v: whole(round(v * 2))) + words(r["excluded"]) + \
            words(r["note"]) + whole(len(reps)) + \
            b"".join(number(p["velocity"]) + words(p["excluded"]) for p in reps)
        line += whole(r["lift"]) + whole(r["ordinal"] * 2**32 + r["load_g"]) + \
            whole(r["counting"] * 8 + 4 * (r["outcome"] == "not lifted") + 2 * r["maximum"] +
                  (r["point"] is not None)) + number(r["point"] or 0.0)
    hold(s["checksum"], b"S", head + words(s["note"]) + under + sets, what)
    hold(s["line_checksum"], b"P", head + under + line, "the lines of " + what)
    if s["battery_checksum"] is None:
        continue
    attempts = {}
    for r in rows("SELECT * FROM attempts WHERE session = ? ORDER BY ordinal", s["id"]):
        attempts.setdefault(r["test"], []).append(r)
    tests = {c["test"]: c for c in rows("SELECT * FROM test_conditions WHERE session = ? ORDER BY test", s["id"])}
    data = whole(s["id"])
    nothing = {"device": None, "place": "", "surface": "", "footwear": "", "technique": "", "not_comparable": ""}
    for test in list(attempts) + [t for t in tests if t not in attempts]:
        made = attempts.get(test, [])
        data += whole(test) + whole(len(made)) + conditions(tests.get(test, nothing))
        for r in made:
            data += side(r["side"]) + number(r["value"]) + maybe(r["contact"], number) + words(r["note"]) + \
                words(r["excluded"])
    gaps = rows("SELECT * FROM gaps WHERE session = ? ORDER BY ordinal", s["id"])
    data += whole(len(gaps))
    for r in gaps:
        data += maybe(r["test"], whole) + maybe(r["lift"], whole) + maybe(r["load_g"], whole) + side(r["side"]) + \
            words(r["reason"])
    hold(s["battery_checksum"], b"T", data, "the battery of " + what)

# Every table and column of the file has its line, and no other.
told = {}
for part in re.split(r"^### ", text, flags=re.M)[1:]:
    name = part.split("\n", 1)[0].strip()
    told[name] = re.findall(r"^- (\w+): ", part.split("\n## ")[0], flags=re.M)
held = {}
for table in rows("SELECT name FROM sqlite_master WHERE type = 'table'"):
    held[table["name"]] = [c["name"] for c in rows("SELECT name FROM pragma_table_info(?)", table["name"])]
for name in sorted(set(told) | set(held)):
    if sorted(told.get(name, [])) != sorted(held.get(name, [])):
        faults.append("the table %s: told %s, held %s" % (name, told.get(name), held.get(name)))

queries = re.findall(r"```sql\n(.*?)```", text, re.S)
with open(result, "w", newline="", encoding="utf-8") as out:
    writer = csv.writer(out, lineterminator="\n")
    found = db.execute(queries[0])
    writer.writerow([c[0] for c in found.description])
    writer.writerows(found)
points = len(db.execute(queries[1]).fetchall())

# The SQL that the page ends with makes the same tables anew.
made = sqlite3.connect(":memory:")
made.executescript(text.split("## The SQL of it", 1)[1])
again = sorted(r[0] for r in made.execute("SELECT sql FROM sqlite_master WHERE sql IS NOT NULL"))
if again != sorted(r["sql"] for r in rows("SELECT sql FROM sqlite_master WHERE sql IS NOT NULL")):
    faults.append("the SQL does not make the tables that the log has")

for fault in faults[:20]:
    print(fault)
print("checksums: %d, points: %d, faults: %d" % (checked, points, len(faults)))
sys.exit(1 if faults else 0)

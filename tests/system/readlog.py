# SPDX-License-Identifier: GPL-3.0-or-later
# Reads a log as somebody does in ten years: with python3 and sqlite3 alone, by what
# `slopebook schema` says. Works out every checksum from the recipe, runs the SQL that the page
# gives, and holds the page's list of tables and columns against the file's.
#   readlog.py LOG PAGE RESULT.csv      RESULT: what the first query gives
import csv
import hashlib
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

# What each thing says to other logs, hashed; and that its trail ends with it.
uuids = {(r["kind"], r["one"]): r["uuid"] for r in rows("SELECT * FROM atoms WHERE two = 0")}


def cell(name, value, write, default):
    return b"" if value == default else words(name) + write(value)


def text_of(row, *names):
    return b"".join(cell(name, row[name], words, "") for name in names)


def whole_of(row, *names):
    return b"".join(cell(name, row[name], whole, 0) for name in names)


def perhaps(name, value, write):
    return b"" if value is None else words(name) + whole(1) + write(value)


def optional(value, write):
    return whole(0) if value is None else whole(1) + write(value)


def ref(kind_, key):
    return words(kind_) + uuids[kind_, key]


def perhaps_ref(name, key, kind_=None):
    return perhaps(name, key, lambda key: uuids[kind_ or name, key])


def under(row):
    return perhaps_ref("device", row["device"]) + \
        text_of(row, "place", "surface", "footwear", "technique", "not_comparable")


said = {}
for r in rows("SELECT * FROM athletes"):
    said["athlete", r["id"], 0, 0] = text_of(r, "name", "note")
for r in rows("SELECT * FROM devices"):
    said["device", r["id"], 0, 0] = text_of(r, "name", "note")
for r in rows("SELECT * FROM lifts"):
    mvt = b"" if r["mvt"] is None else \
        words("mvt") + number(r["mvt"]) + words("mvt_sd") + optional(r["mvt_sd"], number) + \
        words("mvt_origin") + words(r["mvt_origin"]) + words("mvt_source") + words(r["mvt_source"])
    said["lift", r["id"], 0, 0] = text_of(r, "name") + cell("kind", r["kind"], words, "mean") + \
        cell("rule", r["rule"], words, "fastest") + whole_of(r, "ballistic", "moves_body") + mvt + \
        perhaps("smallest_velocity", r["smallest_velocity"], number) + \
        perhaps("smallest_one_rm", r["smallest_one_rm"], number) + text_of(r, "note")
for r in rows("SELECT * FROM tests"):
    noise = b"" if r["noise"] is None else \
        words("noise") + number(r["noise"]) + words("noise_percent") + whole(r["noise_percent"]) + \
        words("noise_source") + words(r["noise_source"])
    said["test", r["id"], 0, 0] = text_of(r, "name", "unit") + \
        whole_of(r, "higher_is_better", "two_sided", "both_too") + cell("rule", r["rule"], words, "best") + \
        whole_of(r, "best_of", "attempts") + cell("formula", r["formula"], words, "value") + \
        whole_of(r, "decimals") + noise + perhaps("smallest", r["smallest"], number) + \
        text_of(r, "smallest_source", "note")
for r in rows("SELECT * FROM blocks"):
    a_week = b"" if r["fewest_a_week"] is None else \
        words("fewest_a_week") + number(r["fewest_a_week"]) + words("most_a_week") + number(r["most_a_week"])
    said["block", r["id"], 0, 0] = text_of(r, "name", "first_day", "last_day") + \
        perhaps("ceiling_g", r["ceiling_g"], whole) + text_of(r, "note", "trained") + a_week
for r in rows("SELECT * FROM equipment"):
    pieces = rows("SELECT * FROM equipment_pieces WHERE equipment = ? ORDER BY ordinal", r["id"])
    data = text_of(r, "name") + perhaps("ceiling_10ng", r["ceiling_10ng"], whole) + text_of(r, "note")
    for p in pieces:
        if p["kind"] == "bar":
            data += cell("bar", p["mass_10ng"], whole, 0) + text_of(p, "name") + cell("unit", p["unit"], words, "kg")
    for p in pieces:
        if p["kind"] == "plate":
            data += cell("plate", p["mass_10ng"], whole, 0) + whole_of(p, "pairs") + \
                cell("unit", p["unit"], words, "kg")
    for p in pieces:
        if p["kind"] not in ("bar", "plate"):
            data += cell("fixed", p["mass_10ng"], whole, 0) + cell("use", p["kind"], words, "alone") + \
                text_of(p, "name") + cell("unit", p["unit"], words, "kg")
    said["equipment", r["id"], 0, 0] = data
for r in rows("SELECT * FROM stations"):
    said["station", r["id"], 0, 0] = text_of(r, "name") + perhaps_ref("lift", r["lift"]) + under(r) + \
        whole_of(r, "sets", "rotates") + text_of(r, "note") + \
        b"".join(ref("test", t["test"]) for t in
                 rows("SELECT test FROM station_tests WHERE station = ? ORDER BY ordinal", r["id"])) + \
        b"".join(words("load_g") + whole(1) + whole(t["load_g"]) for t in
                 rows("SELECT load_g FROM station_loads WHERE station = ? ORDER BY ordinal", r["id"]))
for r in rows("SELECT * FROM sessions"):
    said["session", r["id"], 0, 0] = ref("athlete", r["athlete"]) + perhaps("day", r["day"], words) + \
        whole_of(r, "ordinal") + perhaps("body_mass_g", r["body_mass_g"], whole) + \
        perhaps_ref("repeat_of", r["repeat_of"], "session") + text_of(r, "note")
for r in rows("SELECT * FROM lift_conditions"):
    said["lift conditions", r["session"], r["lift"], 0] = \
        ref("session", r["session"]) + ref("lift", r["lift"]) + under(r)
for r in rows("SELECT * FROM test_conditions"):
    said["test conditions", r["session"], r["test"], 0] = \
        ref("session", r["session"]) + ref("test", r["test"]) + under(r)
for r in rows("SELECT * FROM sets"):
    said["set", r["id"], 0, 0] = ref("session", r["session"]) + ref("lift", r["lift"]) + \
        whole_of(r, "ordinal", "load_g", "maximum") + cell("outcome", r["outcome"], words, "lifted") + \
        text_of(r, "reason") + perhaps("rpe", r["rpe"], lambda v: whole(round(v * 2))) + \
        text_of(r, "excluded", "note") + \
        b"".join(words("velocity") + whole(1) + number(p["velocity"]) + text_of(p, "excluded") for p in
                 rows("SELECT * FROM reps WHERE set_id = ? ORDER BY ordinal", r["id"]))
for s in rows("SELECT id FROM sessions"):
    # Numbered over the tests of the session, each test's together, in the order of their first.
    made = rows("SELECT * FROM attempts WHERE session = ? ORDER BY ordinal", s["id"])
    order = list(dict.fromkeys(r["test"] for r in made))
    made = [r for test in order for r in made if r["test"] == test]
    for n, r in enumerate(made, 1):
        said["attempt", s["id"], n, 0] = ref("session", s["id"]) + ref("test", r["test"]) + \
            words("ordinal") + whole(n) + cell("side", r["side"], words, "both") + \
            cell("value", r["value"], number, 0.0) + perhaps("contact", r["contact"], number) + \
            text_of(r, "note", "excluded")
for r in rows("SELECT * FROM gaps"):
    said["gap", r["session"], r["ordinal"], 0] = ref("session", r["session"]) + whole_of(r, "ordinal") + \
        perhaps_ref("test", r["test"]) + perhaps_ref("lift", r["lift"]) + \
        perhaps("load_g", r["load_g"], whole) + cell("side", r["side"], words, "both") + text_of(r, "reason")
for r in rows("SELECT * FROM check_loads"):
    said["check load", r["athlete"], r["lift"], r["load_g"]] = ref("athlete", r["athlete"]) + \
        ref("lift", r["lift"]) + words("load_g") + whole(1) + whole(r["load_g"])
for r in rows("SELECT * FROM roster_athletes"):
    said["roster", r["station"], int(r["day"].replace("-", "")), r["athlete"]] = \
        ref("station", r["station"]) + perhaps("day", r["day"], words) + whole_of(r, "ordinal") + \
        ref("athlete", r["athlete"])
for r in rows("SELECT * FROM conflicts"):
    said["conflict", r["id"], 0, 0] = words("about") + r["about"] + words("revision") + r["revision"] + \
        text_of(r, "why") + whole_of(r, "lived") + \
        (b"" if not r["content"] else words("content") + whole(len(r["content"])) + r["content"])


def half(data):
    return hashlib.sha256(data).digest()[:16]


def steps(row, alive):
    gone = half(b"removed" + row["hash"])
    if row["trail"] is not None:
        return [row["trail"][i:i + 32] for i in range(0, len(row["trail"]), 32)]
    first = half(row["hash"]) + row["hash"]
    return [first] if alive else [first, half(gone + first[:16]) + gone]


named = 0
for r in rows("SELECT * FROM atoms"):
    key = (r["kind"], r["one"], r["two"], r["three"])
    named += 1
    if key not in said or half(words(r["kind"]) + said[key]) != r["hash"]:
        faults.append("the content of %s %d, %d, %d" % key)
    if steps(r, True)[-1][16:] != r["hash"]:
        faults.append("the trail of %s %d, %d, %d" % key)
for r in rows("SELECT * FROM removed_atoms"):
    if r["content"] is not None and half(r["content"]) != r["hash"]:
        faults.append("the content of a removed " + r["kind"])
    if steps(r, False)[-1][16:] != half(b"removed" + r["hash"]):
        faults.append("the trail of a removed " + r["kind"])
for r in list(rows("SELECT * FROM atoms WHERE trail IS NOT NULL")):
    made = steps(r, True)
    for before, after in zip(made, made[1:]): # no two logs met here
        if after[:16] != half(after[16:] + before[:16]):
            faults.append("a step of %s %d" % (r["kind"], r["one"]))
if named != len(said):
    faults.append("%d names of %d things" % (named, len(said)))

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
        faults.insert(0, "the table %s: told %s, held %s" % (name, told.get(name), held.get(name)))

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
print("checksums: %d, names: %d, points: %d, faults: %d" % (checked, named, points, len(faults)))
sys.exit(1 if faults else 0)

# SPDX-License-Identifier: GPL-3.0-or-later
# Holds an exported folder against its datapackage.json (Frictionless Data Package and Table Schema,
# version 1) and against dictionary.csv: the files, their headers, types, constraints, keys that no
# two rows share, and rows meant in other tables.
#   checkpackage.py FOLDER
import csv
import datetime
import json
import pathlib
import sys

folder = pathlib.Path(sys.argv[1])
package = json.loads((folder / "datapackage.json").read_text(encoding="utf-8"))
faults, cells = [], 0
tables = {}
for resource in package["resources"]:
    with open(folder / resource["path"], newline="", encoding="utf-8") as file:
        rows = list(csv.reader(file))
    names = [field["name"] for field in resource["schema"]["fields"]]
    if rows[0] != names:
        faults.append("%s: header %s, told %s" % (resource["path"], rows[0], names))
    tables[resource["name"]] = [dict(zip(names, row)) for row in rows[1:]]

read = {
    "string": str,
    "number": float,
    "integer": int,
    "date": datetime.date.fromisoformat,
    "boolean": lambda cell: {"1": True, "0": False}[cell],
}
for resource in package["resources"]:
    name, schema = resource["name"], resource["schema"]
    for field in schema["fields"]:
        rule = field["constraints"]
        if not field["description"]:
            faults.append(name + "." + field["name"] + ": no meaning")
        for row in tables[name]:
            cell = row[field["name"]]
            cells += 1
            if cell == "":
                if rule["required"]:
                    faults.append(name + "." + field["name"] + ": empty")
                continue
            try:
                value = read[field["type"]](cell)
            except (ValueError, KeyError):
                faults.append("%s.%s: %r is no %s" % (name, field["name"], cell, field["type"]))
                continue
            if "enum" in rule and cell not in rule["enum"]:
                faults.append("%s.%s: %r is none of %s" % (name, field["name"], cell, rule["enum"]))
            if "minimum" in rule and value < rule["minimum"] or "maximum" in rule and value > rule["maximum"]:
                faults.append("%s.%s: %r is out of bounds" % (name, field["name"], cell))
    if "primaryKey" in schema:
        keys = [tuple(row[k] for k in schema["primaryKey"]) for row in tables[name]]
        if len(keys) != len(set(keys)):
            faults.append(name + ": a key stands twice")
    for foreign in schema.get("foreignKeys", []):
        there = {tuple(row[k] for k in foreign["reference"]["fields"])
                 for row in tables[foreign["reference"]["resource"]]}
        for row in tables[name]:
            key = tuple(row[k] for k in foreign["fields"])
            if "" not in key and key not in there:
                faults.append("%s: %s is not in %s" % (name, key, foreign["reference"]["resource"]))

told = {(row["table"], row["column"]): row for row in tables["dictionary"]}
fields = {(r["name"], f["name"]): f for r in package["resources"] for f in r["schema"]["fields"]}
if set(told) != set(fields):
    faults.append("dictionary and descriptor differ: %s" % sorted(set(told) ^ set(fields)))
for key, row in told.items():
    if row["unit"] != fields[key].get("unit", "") or row["meaning"] != fields[key]["description"]:
        faults.append("dictionary and descriptor differ at %s" % (key,))
for fault in faults[:40]:
    print(fault)
print("tables: %d, cells: %d, faults: %d" % (len(tables), cells, len(faults)))
sys.exit(1 if faults else 0)

# SPDX-License-Identifier: GPL-3.0-or-later
# Holds what commands print against the JSON Schemas that `slopebook schema --json` prints.
#   checkjson.py FOLDER     FOLDER/<command>.schema.json, and outputs FOLDER/<command>-<name>.json
# Each output must fit; and mangled (a key gone, one too many, a value of another type, wherever it
# stands) it must not, or the schema says nothing.
import copy
import json
import pathlib
import sys

import jsonschema

folder = pathlib.Path(sys.argv[1])
# Keys that stand there only where they were asked for, or where there is such a thing.
OPTIONAL = {"plan": {"relation", "history", "next_test"}, "follow": {"reason"}, "trace": {"remark"}}
faults, outputs, mangled = [], 0, 0
checked = None
done = set()  # kinds of objects that were mangled


def places(value, path=()):
    """Every object of a value, by the way to it."""
    if isinstance(value, dict):
        yield path
        for key, held in value.items():
            yield from places(held, path + (key,))
    elif isinstance(value, list):
        for i, held in enumerate(value[:2]):
            yield from places(held, path + (i,))


def trimmed(value):
    """The same with no more than two items of each list: what is mangled need not be long."""
    if isinstance(value, dict):
        return {key: trimmed(held) for key, held in value.items()}
    return [trimmed(held) for held in value[:2]] if isinstance(value, list) else value


def at(value, path):
    for step in path:
        value = value[step]
    return value


for file in sorted(folder.glob("*.schema.json")):
    command = file.name.split(".")[0]
    schema = json.loads(file.read_text())
    parts = schema["$defs"]  # the same in all
    jsonschema.Draft202012Validator.check_schema({**schema, "$defs": {} if parts == checked else parts})
    checked = parts
    held = jsonschema.Draft202012Validator(schema)
    seen = sorted(folder.glob(command + "-*.json"))
    if not seen:
        faults.append(command + ": no output")
    for output in seen:
        value = json.loads(output.read_text())
        outputs += 1
        for error in list(held.iter_errors(value))[:5]:
            faults.append("%s: %s: %s" % (output.name, "/".join(map(str, error.path)), error.message[:300]))
        if value.get("slopebook") != 1 or value.get("units", {}).get("load") != "kg":
            faults.append(output.name + ": no version or units")
        value = trimmed(value)
        for path in places(value):
            kind = (command if not path else "", tuple(at(value, path)))
            if path[:1] == ("units",) or kind in done:
                continue
            done.add(kind)
            # What a key is called is free in those alone.
            free = path and path[-1] in ("marks", "figures") and command == "trace"
            ways = [lambda o: o.update(not_in_any_schema=1)] if not free else []
            for key, inner in at(value, path).items():
                if not free and key not in OPTIONAL.get(command, ()):
                    ways.append(lambda o, k=key: o.pop(k))
                ways.append(lambda o, k=key: o.update({k: {"not": "this"}}))
            for way in ways:
                changed = copy.deepcopy(value)
                way(at(changed, path))
                mangled += 1
                if held.is_valid(changed):
                    before, after = at(value, path), at(changed, path)
                    what = [k for k in before if k not in after] or [k for k in after if after[k] != before.get(k)]
                    faults.append("%s: %s mangled at %s fits as well" % (output.name, what, "/".join(map(str, path))))
for fault in faults[:40]:
    print(fault)
print("outputs: %d, mangled: %d, faults: %d" % (outputs, mangled, len(faults)))
sys.exit(1 if faults or not outputs else 0)

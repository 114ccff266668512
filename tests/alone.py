#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Compiles sources alone: no precompiled header, none united with its neighbours, nothing written.

tests/alone.py BUILD [all | FILE...]: by the compile commands of BUILD (preset debug). Without names: what
differs from the branch main, and what is not committed; a header is compiled as a source of its room."""
import concurrent.futures
import json
import os
import shlex
import subprocess
import sys

ROOTS = ("app/", "core/", "resources/", "sample_db/", "tests/", "ui/")


def lines(*command):
    return subprocess.run(command, check=True, capture_output=True, text=True).stdout.splitlines()


def changed():
    base = subprocess.run(["git", "merge-base", "HEAD", "main"], capture_output=True, text=True).stdout.strip()
    return lines("git", "diff", "--name-only", base or "HEAD") + lines("git", "ls-files", "--others", "--exclude-standard")


def flags(command):
    """What the compiler is told, but for what it would write and what it would read beforehand."""
    words = shlex.split(command)
    while os.path.basename(words[0]) == "ccache":
        words.pop(0)
    kept, skip = [], 0
    for word in words:
        if skip:
            skip -= 1
        elif word in ("-o", "-MT", "-MF", "-include"):
            skip = 1
        elif word not in ("-c", "-MD", "-Winvalid-pch") and "cmake_pch" not in word:
            kept.append(word)
    return kept


def main(build, names):
    top = os.getcwd()
    known = {}
    for entry in json.load(open(os.path.join(build, "compile_commands.json"), encoding="utf-8")):
        name = os.path.relpath(entry["file"], top)
        if not name.startswith(os.path.relpath(build, top)):
            known.setdefault(name, entry)
    if names == ["all"]:
        names = sorted(known)
    wanted = [n for n in names or changed() if n.startswith(ROOTS) and n.endswith((".cpp", ".h")) and os.path.exists(n)]

    def compile_alone(name):
        entry = known.get(name)
        if entry:
            command = flags(entry["command"])
        else:
            kin = sorted(n for n in known if os.path.dirname(n) == os.path.dirname(name))
            if not kin:
                return 0, "" if name.endswith(".h") else name + ": no target compiles it"
            command = [w for w in flags(known[kin[0]]["command"]) if os.path.relpath(w, top) != kin[0]]
            command += ["-x", "c++", "-Wno-pragma-once-outside-header", os.path.join(top, name)]
            entry = known[kin[0]]
        run = subprocess.run(command + ["-fsyntax-only"], cwd=entry["directory"], capture_output=True, text=True)
        return run.returncode, run.stderr

    mocs = [n for n in wanted if os.path.basename(n).startswith("tst_") and n in known]
    if mocs:
        made = [os.path.splitext(n)[0] + ".moc" for n in mocs]
        subprocess.run(["cmake", "--build", build, "--target", *made], check=True, stdout=subprocess.DEVNULL)
    bad = 0
    with concurrent.futures.ThreadPoolExecutor(os.cpu_count()) as several:
        for name, (status, said) in zip(wanted, several.map(compile_alone, wanted)):
            if status or said:
                print(f"{name}:\n{said}", file=sys.stderr, flush=True)
                bad += 1
    print(f"{len(wanted)} compiled alone, {bad} of them with faults.")
    return bad > 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1], sys.argv[2:]))

#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Installs the package where nothing else is: into a root of its own that holds Debian's essential packages,
what slopebook depends on, and what any desktop has to open files by their type. Every dependency is dpkg's to
find. There the package of the version before is brought up to this one, a command and the window run, a log is
opened by its type, and the package goes again, with all that it brought.

    python3 tests/package/cleanroot.py BUILD [--from OLD.deb] [--pictures FOLDER]

BUILD has been built (build/release, say). Without --from the version before is this package under an older
number, with a file that this one no longer has. Takes root, or a system where anyone may be root in a user
namespace; exits with 77 where this machine has neither, or lacks a tool. Takes a minute or less.
"""
import argparse
import contextlib
import hashlib
import os
import re
import shutil
import subprocess
import sys
import tempfile
import time

SKIP = 77
OF_A_DESKTOP = ["desktop-file-utils", "libglib2.0-bin", "xdg-utils"]
LEFT_OUT = ("/usr/share/doc/", "/usr/share/man/", "/usr/share/locale/", "/usr/share/info/", "/usr/share/lintian/")
SAMPLE = "/usr/share/slopebook/sample.slopebook"
TYPE = "application/x-slopebook"
DESKTOP = "org.slopebook.Slopebook.desktop"
MINE = "/home/coach/mine.slopebook"


class Failed(Exception):
    pass


def ran(command, **more):
    return subprocess.run(command, capture_output=True, text=True, **more)


def must(command, **more):
    done = ran(command, **more)
    if done.returncode != 0:
        raise Failed(f"{' '.join(command)}: exit {done.returncode}\n{done.stdout}{done.stderr}")
    return done.stdout


def expect(true, what):
    if not true:
        raise Failed(what)


def skip(why):
    print(f"SKIP   cleanroot.py: {why}")
    sys.exit(SKIP)


def installed_packages():
    """Name to its record, of what this system has."""
    fields = "${db:Status-Status}\t${binary:Package}\t${Package}\t${Essential}\t${Pre-Depends}, ${Depends}\t${Provides}\n"
    packages, provided = {}, {}
    for line in must(["dpkg-query", "-W", "-f", fields]).splitlines():
        status, full, name, essential, needs, provides = line.split("\t")
        if status != "installed" or name in packages:
            continue
        packages[name] = (full, essential == "yes", needs)
        for one in provides.split(","):
            if one.strip():
                provided.setdefault(re.split(r"[ (:]", one.strip())[0], name)
    return packages, provided


def names_in(needs):
    """The alternatives of each dependency."""
    for clause in needs.split(","):
        names = [re.split(r"[ (:]", one.strip())[0] for one in clause.split("|") if one.strip()]
        if names:
            yield names


def closure(needs):
    """Every package that those need, and the essential ones. Says what this system lacks."""
    packages, provided = installed_packages()
    wanted, todo = set(), [name for name, (_, essential, _) in packages.items() if essential]

    def take(clauses):
        for names in clauses:
            found = next((n if n in packages else provided.get(n) for n in names if n in packages or n in provided), None)
            if found is None:
                skip(f"{' or '.join(names)} is not installed here to be taken into the root")
            todo.append(found)

    take(names_in(needs))
    take([[name] for name in OF_A_DESKTOP])
    while todo:
        name = todo.pop()
        if name not in wanted:
            wanted.add(name)
            take(names_in(packages[name][2]))
    return {name: packages[name][0] for name in wanted}


def copy(source, target):
    if os.path.lexists(target):
        return
    os.makedirs(os.path.dirname(target), exist_ok=True)
    if os.path.islink(source):
        os.symlink(os.readlink(source), target)
    elif os.path.isfile(source):
        shutil.copy2(source, target)
    elif os.path.isdir(source):
        os.makedirs(target, exist_ok=True)


def fill(root, packages):
    """The files of those packages, and dpkg's records of them alone."""
    os.makedirs(f"{root}/usr", exist_ok=True)
    for folder in ("bin", "sbin", "lib", "lib32", "lib64", "libx32"):
        if os.path.islink(f"/{folder}"):
            os.makedirs(f"{root}/usr/{folder}", exist_ok=True)
            os.symlink(os.readlink(f"/{folder}"), f"{root}/{folder}")
    for path in sorted(set(must(["dpkg", "-L", *packages.values()]).splitlines())):
        if path.startswith("/") and path != "/." and not path.startswith(LEFT_OUT):
            copy(path, root + path)
    for folder in ("/etc/alternatives", "/etc/fonts/conf.d", "/etc/ld.so.conf.d"):
        for name in os.listdir(folder):
            copy(f"{folder}/{name}", f"{root}{folder}/{name}")
    for file in ("etc/passwd", "etc/group", "etc/nsswitch.conf", "etc/ld.so.conf"):
        if os.path.exists(f"/{file}"):
            shutil.copy2(f"/{file}", f"{root}/{file}")
    # Links that packages make when they are configured: those of alternatives.
    for name in os.listdir(f"{root}/etc/alternatives"):
        for folder in ("usr/bin", "usr/sbin", "usr/lib"):
            link = f"/{folder}/{name}"
            if os.path.islink(link) and os.readlink(link).startswith("/etc/alternatives/"):
                copy(link, root + link)
    for folder in ("dev", "proc", "sys", "tmp", "run", "home/coach", "var/lib/dpkg/info", "var/lib/dpkg/updates",
                   "var/lib/dpkg/triggers", "var/log"):
        os.makedirs(f"{root}/{folder}", exist_ok=True)
    os.chmod(f"{root}/tmp", 0o1777)
    records(f"{root}/var/lib/dpkg", packages)


def records(admin, packages):
    with open("/var/lib/dpkg/status", encoding="utf-8") as file:
        stanzas = file.read().split("\n\n")
    kept = [s for s in stanzas if (m := re.match(r"Package: (\S+)", s)) and m[1] in packages]
    with open(f"{admin}/status", "w", encoding="utf-8") as file:
        file.write("\n\n".join(kept).rstrip("\n") + "\n")
    for name in os.listdir("/var/lib/dpkg/info"):
        if name == "format" or re.sub(r"(:[a-z0-9-]+)?\.[a-z0-9]+$", "", name) in packages:
            shutil.copy2(f"/var/lib/dpkg/info/{name}", f"{admin}/info/{name}")
    for name in ("File", "Unincorp"):
        source = f"/var/lib/dpkg/triggers/{name}"
        lines = []
        if name == "File" and os.path.exists(source):
            with open(source, encoding="utf-8") as file:
                lines = [line for line in file if re.split(r"[:/]", line.split()[1])[0] in packages]
        with open(f"{admin}/triggers/{name}", "w", encoding="utf-8") as file:
            file.writelines(lines)
    open(f"{admin}/available", "w").close()


class Root:
    """What runs within it, as its administrator or as a coach."""

    def __init__(self, folder):
        self.folder = folder
        # Where the system's own root runs this there are other users; in a user namespace there are none.
        with open("/proc/self/uid_map", encoding="ascii") as file:
            self.users = int(file.read().split()[2]) > 1000
        self.surroundings = {"PATH": "/usr/local/sbin:/usr/local/bin:/usr/sbin:/usr/bin:/sbin:/bin", "HOME": "/root",
                             "LC_ALL": "C.UTF-8", "DEBIAN_FRONTEND": "noninteractive"}

    def command(self, command, coach):
        as_whom = ["--userspec=1000:1000"] if coach and self.users else []
        return ["chroot", *as_whom, self.folder, *command]

    def env(self, coach, more=None):
        mine = dict(self.surroundings)
        if coach:
            mine.update(HOME="/home/coach", XDG_RUNTIME_DIR="/run/coach", QT_QPA_PLATFORM="offscreen")
        mine.update(more or {})
        return mine

    def admin(self, *command):
        return must(self.command(command, False), env=self.env(False))

    def install(self, deb):
        shutil.copy2(deb, self.path("/tmp/slopebook.deb"))
        self.admin("dpkg", "-i", "/tmp/slopebook.deb")
        expect(self.admin("dpkg-query", "-W", "-f", "${db:Status-Status} ${Version}", "slopebook")
               == f"installed {version_of(deb)}", f"{deb} is not what is installed")

    def coach(self, *command, more=None):
        return must(self.command(command, True), env=self.env(True, more))

    def begin(self, *command, more=None):
        return subprocess.Popen(self.command(command, True), env=self.env(True, more), stdout=subprocess.PIPE,
                                stderr=subprocess.PIPE, text=True)

    def path(self, inside):
        return self.folder + inside

    def everything(self):
        """Every path, but what is the system's own at work, the coach's, or dpkg's record of it."""
        paths = set()
        for folder, folders, files in os.walk(self.folder):
            at = folder[len(self.folder):]
            folders[:] = [f for f in folders if f"{at}/{f}" not in ("/proc", "/sys", "/dev", "/home", "/tmp", "/run",
                                                                     "/root", "/var/log", "/var/lib/dpkg")]
            paths.update(f"{at}/{name}" for name in folders + files)
        return paths

    def ready(self):
        for folder in ("home/coach", "run/coach"):
            os.makedirs(f"{self.folder}/{folder}", exist_ok=True)
            os.chmod(f"{self.folder}/{folder}", 0o700)
            if self.users:
                os.chown(f"{self.folder}/{folder}", 1000, 1000)
        # What configuring those packages would have made.
        self.admin("ldconfig")
        self.admin("update-mime-database", "/usr/share/mime")
        os.makedirs(self.path("/usr/share/applications"), exist_ok=True)
        self.admin("update-desktop-database", "/usr/share/applications")


def digest(path):
    with open(path, "rb") as file:
        return hashlib.sha256(file.read()).hexdigest()


def version_of(deb):
    return must(["dpkg-deb", "-f", deb, "Version"]).strip()


def made_older(deb, into):
    """This package as if it were an older one."""
    tree = f"{into}/older"
    must(["dpkg-deb", "-R", deb, tree])
    control = f"{tree}/DEBIAN/control"
    with open(control, encoding="utf-8") as file:
        text = file.read()
    with open(control, "w", encoding="utf-8") as file:
        file.write(re.sub(r"(?m)^Version: .*$", "Version: 0.1.0", text))
    with open(f"{tree}/usr/share/slopebook/of-the-older-version", "w", encoding="utf-8") as file:
        file.write("This version has it no longer.\n")
    older = f"{into}/slopebook_0.1.0.deb"
    must(["dpkg-deb", "--root-owner-group", "-Zgzip", "-z1", "-b", tree, older])
    return older


def installing_the_version_before(root, older):
    root.install(older)
    root.coach("slopebook", "backup", SAMPLE, MINE)


def upgrading(root, deb):
    before = digest(root.path(MINE))
    root.install(deb)
    expect(not os.path.exists(root.path("/usr/share/slopebook/of-the-older-version")),
           "a file of the version before stayed")
    expect(digest(root.path(MINE)) == before, "a log was touched")
    expect((found := root.admin("dpkg", "--audit")) == "", f"dpkg finds packages half installed: {found}")
    expect(root.admin("dpkg", "--verify", "slopebook") == "", "a file is not the package's")


def running_commands(root, deb):
    expect(root.coach("slopebook", "--version").strip() == version_of(deb), "it says another version")
    root.coach("slopebook", "check", MINE)
    said = root.coach("slopebook", "compare", MINE, "--athlete", "Cora", "--lift", "Bench pull", "--from",
                      "2025-12-01", "--to", "2026-05-04", "--pdf", "/home/coach/page.pdf")
    expect("kg" in said, f"the comparison says: {said}")
    with open(root.path("/home/coach/page.pdf"), "rb") as file:
        expect(file.read(5) == b"%PDF-", "the page is no PDF")


def opening_the_window_without_a_display(root):
    window = root.begin("slopebook", MINE)
    try:
        window.wait(3)
    except subprocess.TimeoutExpired:
        window.terminate()
        _, said = window.communicate(timeout=10)
        said = re.sub(r"This plugin does not support propagateSizeHints\(\)\n", "", said)
        expect(said == "", f"the window says on its way: {said}")
        return
    raise Failed(f"the window did not stay open: {window.communicate()}")


@contextlib.contextmanager
def display(root):
    """A screen beside the root, which looks in through its socket."""
    reading, writing = os.pipe()
    screen = subprocess.Popen(["Xvfb", "-displayfd", str(writing), "-screen", "0", "1280x720x24", "-ac", "-nolisten", "tcp"],
                              pass_fds=[writing], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    os.close(writing)
    try:
        with os.fdopen(reading) as told:
            number = told.readline().strip()
        expect(number != "", "Xvfb did not start")
        os.makedirs(root.path("/tmp/.X11-unix"), exist_ok=True)
        must(["mount", "--bind", "/tmp/.X11-unix", root.path("/tmp/.X11-unix")])
        yield f":{number}"
    finally:
        screen.terminate()
        screen.wait()
        ran(["umount", root.path("/tmp/.X11-unix")])


def opening_a_log_by_its_type(root, pictures):
    nameless = "/home/coach/a copy without its ending"
    shutil.copy2(root.path(MINE), root.path(nameless))
    for file in (MINE, nameless):
        expect(f"standard::content-type: {TYPE}" in root.coach("gio", "info", "-a", "standard::content-type", file),
               f"{file} is taken for something else")
    expect(DESKTOP in root.coach("gio", "mime", TYPE), "no program opens a log")
    expect(root.coach("xdg-mime", "query", "default", TYPE).strip() == DESKTOP, "xdg-mime knows another program")
    with display(root) as screen:
        here = {**os.environ, "DISPLAY": screen}
        on_screen = {"DISPLAY": screen, "QT_QPA_PLATFORM": "xcb"}
        opener = root.begin("gio", "open", MINE, more=on_screen)
        found = must(["timeout", "30", "xdotool", "search", "--sync", "--onlyvisible", "--name", "^mine .* Slopebook$"],
                     env=here).split()
        expect(opener.wait(30) == 0, "gio open failed")
        time.sleep(1)
        if pictures:
            must(["import", "-window", "root", f"{pictures}/opened.png"], env=here)
        kind = must(["xprop", "-id", found[-1], "WM_CLASS"], env=here) if shutil.which("xprop") else "slopebook"
        expect("slopebook" in kind, f"the window is {kind}")
        must(["xdotool", "windowfocus", "--sync", found[-1]], env=here)
        # The window may be gone before the key is let up again: whether it went is asked below.
        ran(["xdotool", "key", "--window", found[-1], "ctrl+q"], env=here)
        for _ in range(100):
            if ran(["xdotool", "search", "--onlyvisible", "--name", "Slopebook$"], env=here).stdout == "":
                break
            time.sleep(0.1)
        else:
            raise Failed("the window did not close")
    root.coach("slopebook", "check", MINE)


def removing(root, before):
    mine = digest(root.path(MINE))
    root.admin("dpkg", "--purge", "slopebook")
    left = root.everything() - before
    expect(not left, f"left behind: {sorted(left)}")
    gone = before - root.everything()
    expect(not gone, f"taken along: {sorted(gone)}")
    for folder in ("/usr/share/mime", "/usr/share/applications"):
        named = ran(["grep", "-rli", "slopebook", root.path(folder)]).stdout
        expect(named == "", f"still named in {named}")
    expect(digest(root.path(MINE)) == mine, "a log was touched")


def inside(options, work):
    root = Root(f"{work}/root")
    ran(["mount", "--make-rprivate", "/"])
    began = time.monotonic()

    def step(work_of, *arguments):
        work_of(*arguments)
        print(f"ok     {work_of.__name__.replace('_', ' ')} ({time.monotonic() - began:.0f} s)", flush=True)

    packages = closure(must(["dpkg-deb", "-f", options.deb, "Depends"]).strip())
    step(fill, root.folder, packages)
    for source, target, kind in (("/dev", "dev", "--rbind"), ("/proc", "proc", "--rbind")):
        if ran(["mount", kind, source, root.path(f"/{target}")]).returncode != 0:
            skip("nothing may be mounted here")
    step(root.ready)
    before = root.everything()
    print(f"       {len(packages)} packages, {len(before)} files")
    step(installing_the_version_before, root, options.older or made_older(options.deb, work))
    step(upgrading, root, options.deb)
    step(running_commands, root, options.deb)
    step(opening_the_window_without_a_display, root)
    step(opening_a_log_by_its_type, root, options.pictures)
    step(removing, root, before)


def main():
    asked = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    asked.add_argument("build")
    asked.add_argument("--from", dest="older", help="the package of the version before")
    asked.add_argument("--pictures", help="a folder for a picture of the window")
    asked.add_argument("--inside", help=argparse.SUPPRESS)
    options = asked.parse_args()
    if options.inside:
        options.deb = options.build
        inside(options, options.inside)
        return
    for tool in ("unshare", "dpkg-deb", "cpack", "Xvfb", "xdotool"):
        if not shutil.which(tool):
            skip(f"{tool} is not installed")
    enter = ["unshare", "--mount"] + ([] if os.geteuid() == 0 else ["--user", "--map-root-user"])
    if ran([*enter, "true"]).returncode != 0:
        skip("neither root nor user namespaces")
    work = tempfile.mkdtemp(prefix="slopebook-root-")
    try:
        must(["cpack", "--config", f"{options.build}/CPackConfig.cmake", "-G", "DEB", "-B", f"{work}/deb"])
        debs = [name for name in os.listdir(f"{work}/deb") if name.endswith(".deb")]
        expect(len(debs) == 1, f"cpack made {debs}")
        again = [sys.executable, os.path.abspath(__file__), f"{work}/deb/{debs[0]}", "--inside", work]
        for name, value in (("--from", options.older), ("--pictures", options.pictures)):
            if value:
                again += [name, os.path.abspath(value)]
        sys.exit(subprocess.run([*enter, *again], check=False).returncode)
    finally:
        # The namespace and what was mounted in it are gone: what is left is ours.
        shutil.rmtree(work, ignore_errors=True)


if __name__ == "__main__":
    try:
        main()
    except Failed as problem:
        print(f"FAIL!  cleanroot.py: {problem}", file=sys.stderr)
        sys.exit(1)

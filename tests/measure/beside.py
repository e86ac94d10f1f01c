#!/usr/bin/env python3
"""Measures commands of two builds of the program beside each other: processor time and time gone by, medians.

    python3 tests/measure/beside.py OLD NEW FOLDER... [-- COMMAND...]

OLD and NEW are published programs. Each FOLDER holds a book, of which each program gets a copy of its own. They run in
turns, OLD and NEW and NEW and OLD, so that whatever else the machine does meets both alike. Each COMMAND is one word with
its arguments, "show pots" for instance. Without any, those below are run; none of them stores anything.
"""
import os
import shutil
import statistics
import subprocess
import sys
import tempfile
import time

PAIRS = int(os.environ.get("PAIRS", "21"))
COMMANDS = ["status", "show pots", "show bills", "run", "export"]


def once(program, command, folder):
    """Milliseconds of processor time and of time gone by."""
    began = time.monotonic()
    child = subprocess.Popen([program, *command.split(), "--data", folder], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    _, _, used = os.wait4(child.pid, 0)
    return (used.ru_utime + used.ru_stime) * 1000, (time.monotonic() - began) * 1000


def main():
    words = sys.argv[1:]
    commands = words[words.index("--") + 1:] if "--" in words else COMMANDS
    old, new, *folders = words[:words.index("--")] if "--" in words else words
    print("| book | command | processor, before | now | | gone by, before | now | |\n| --- | --- | --- | --- | --- | --- | --- | --- |")
    with tempfile.TemporaryDirectory() as scratch:
        for folder in folders:
            copies = {}
            for name, program in (("old", old), ("new", new)):
                copies[name] = os.path.join(scratch, os.path.basename(folder.rstrip("/")) + "-" + name)
                shutil.copytree(folder, copies[name])
                os.chmod(copies[name], 0o700)
                once(program, "status", copies[name])
            for command in commands:
                seen = {"old": [], "new": []}
                for pair in range(PAIRS):
                    for name in ("old", "new") if pair % 2 == 0 else ("new", "old"):
                        seen[name].append(once(old if name == "old" else new, command, copies[name]))
                cells = []
                for at in (0, 1):
                    before, now = (statistics.median(run[at] for run in seen[name]) for name in ("old", "new"))
                    # The middle of what each pair says for itself: a load that comes and goes meets both of a pair.
                    turn = statistics.median(n[at] / o[at] for o, n in zip(seen["old"], seen["new"]))
                    cells += [f"{before:.1f} ms", f"{now:.1f} ms", f"{100 * (turn - 1):+.1f} %"]
                print(f"| {os.path.basename(folder.rstrip('/'))} | `{command}` | {' | '.join(cells)} |", flush=True)


if __name__ == "__main__":
    main()
